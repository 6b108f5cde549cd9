// `loopwright letter` as people run it: built, in a process of its own.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compile } from '../../src/index.ts';
import { fontBytes } from '../finding/command-example.ts';
import { runner } from './run.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-letter-'));
  writeFileSync(join(folder, 'sans.ttf'), fontBytes('sans.ttf'));
  writeFileSync(join(folder, 'broken.ttf'), fontBytes('broken.ttf'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const letter = (...args: string[]) => runner(folder)('letter', ...args);

test('prints a chart block that a pattern can hold', () => {
  const { status, stdout, stderr } = letter('TIDE', '--mesh', 'dc, ch 1');
  expect(status).toBe(0);
  expect(stderr).toBe('23 boxes x 7 rows; 47 stitches flat, 46 in the round\n');
  const chart = compile(`Rnd 1: 6 sc in magic ring. (6)\n\n${stdout}`).manuscript.charts[0];
  expect(chart?.name).toBe('TIDE');
  expect(chart?.mesh).toEqual({ post: 'dc', gap: 1 });
  expect(chart?.rows.map((row) => row.length)).toEqual(new Array(7).fill(23));
});

test('sets lines, each an argument or behind \\n', () => {
  const lines = letter('Low', 'Tide', '--align', 'left').stdout;
  expect(lines).toContain('```chart Low Tide\n');
  expect(letter('Low\\nTide', '--align', 'left').stdout).toBe(lines);
});

test('tells the size by the gauge', () => {
  const { stderr } = letter('TIDE', '--gauge', '8 boxes x 7.5 rnds = 10 cm');
  // 23 boxes of 1.25 cm and 7 rows of 1.33 cm, rounded to the half.
  expect(stderr).toBe('23 boxes x 7 rows, about 29 x 9.5 cm\n');
});

test('says when boxes that are far from square will stretch our letters', () => {
  const { stderr } = letter('TIDE', '--gauge', '8 boxes x 15 rows = 10 cm');
  // 1.25 cm wide and 0.667 cm high.
  expect(stderr).toContain('Letters come out 1.9 times wider than drawn');
});

test('with a font, boxes take the shape that the gauge tells, or are called square', () => {
  const square = letter('TIDE', '--font', 'sans.ttf', '--height', '12');
  expect(square.stderr).toContain('Boxes were taken as square');
  const wide = letter(
    'TIDE',
    '--font',
    'sans.ttf',
    '--height',
    '12',
    '--gauge',
    '5 boxes x 10 rows = 10 cm',
  );
  expect(wide.stderr).not.toContain('square');
  const widthOf = (text: string) => text.trimEnd().split('\n').at(-2)?.length ?? 0;
  expect(widthOf(wide.stdout)).toBeLessThan(0.6 * widthOf(square.stdout));
});

test('findings go to standard error, with marks', () => {
  const { stderr, stdout } = letter('me', '--font', 'sans.ttf', '--height', '5');
  expect(stderr).toContain('warning[stroke-under-box]');
  expect(stderr).toMatch(/1 \| me\n {4}\| \^/);
  expect(stdout).not.toContain('warning');
});

test('writes to a file that is named', () => {
  expect(letter('TIDE', '-o', 'tide.md').stdout).toBe('');
  expect(readFileSync(join(folder, 'tide.md'), 'utf8')).toBe(letter('TIDE').stdout);
});

describe('the exit status', () => {
  test.each([
    ['of words', ['TIDE'], 0, ''],
    ['of a letter that is missing', ['Ω1'], 1, 'error[letter-missing]'],
    ['of a height that is not drawn', ['TIDE', '--height', '8'], 1, 'error[height-not-drawn]'],
    ['of a broken font', ['TIDE', '--font', 'broken.ttf'], 1, 'damaged or cut off'],
    ['of a font that is not there', ['TIDE', '--font', 'gone.ttf'], 2, 'gone.ttf: no such file'],
    ['of no words', [], 2, 'words'],
    ['of a mesh that is none', ['TIDE', '--mesh', 'sc'], 2, '--mesh "sc"'],
    ['of a gauge that is none', ['TIDE', '--gauge', 'tight'], 2, '--gauge "tight"'],
    ['of half a height', ['TIDE', '--height', '7.5'], 2, 'whole number'],
    ['of a border there is not', ['TIDE', '--border', 'lace'], 2, 'dashes'],
    ['of a file that cannot be written', ['TIDE', '-o', 'no/where.md'], 2, 'no/where.md'],
  ])('%s', (_, args, status, told) => {
    const run = letter(...args);
    expect(run.stderr).toContain(told);
    expect(run.status).toBe(status);
  });
});
