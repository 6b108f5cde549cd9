import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CheckedFile } from '../../cli/checked.ts';
import { followers } from '../../cli/text/followers.ts';
import { closing, report, shortReport } from '../../cli/text/report.ts';
import { sentenceFor } from '../../cli/text/sentences.ts';
import { assumptions, rowsSummary, statusOf } from '../../cli/text/summary.ts';
import { countMismatch, noInstructions, noun } from '../../src/finding/index.ts';
import { type Finding, plain, type RowAccount } from '../../src/index.ts';
import { checked, row, total } from './sample.ts';

const layout = { width: 80, color: false, paint: plain, table: 'shown' } as const;

test('the report on one file, whole', () => {
  const text = 'Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: Inc in each st around. (10 sc)\n';
  const at = { from: text.indexOf('(10'), to: text.indexOf('(10') + 7 };
  const words = { row: 'round 2', made: 12, unit: noun('sc'), stated: 10 };
  const shown = report(
    checked({
      text,
      rows: [
        row('Rnd 1', { used: 0 }),
        row('Rnd 2', {
          made: 12,
          stated: [{ n: 10, unit: 'sc', compared: true }],
          verdict: 'mismatch',
        }),
      ],
      findings: [countMismatch(at, words, { sum: '6 increases make 12.', rows: ['/Rnd 2/'] })],
      conventions: [
        {
          what: 'start-chain 2',
          part: '',
          reading: 'does not count',
          alternatives: ['counts'],
          because: 'custom',
          from: 0,
        },
      ],
      totals: [total({ rows: 2, proven: 1, mismatched: 1 })],
      notChecked: ['How the eyes are placed.'],
    }),
    layout,
  );
  expect(`\n${shown}`).toBe(`
disc.pattern.md  US terms

error[count-mismatch]  Round 2 makes 12 sc; the pattern says 10.
  disc.pattern.md:2:31
  2 | Rnd 2: Inc in each st around. (10 sc)
    |                               ^^^^^^^
  Sum: 6 increases make 12.
  To do: If the words are right, change the count. If the count is right, look
         for the stitch, the repeat or the increase that is missing or one too
         many.

         used  made  stated  verdict
  Rnd 1     0     6  6 sc    proven
> Rnd 2     6    12  10 sc   mismatch

Taken for granted. A sentence among the notes would state it:
  - The ch 2 at the start of a round does not count as a stitch. (by custom)

Not checked:
  - How the eyes are placed.

2 rows: 1 proven, 1 with a count that differs. 1 error.
`);
});

test('what to do is told once for each kind, and not where a change was tried and holds', () => {
  const words = { row: 'round 2', made: 12, unit: noun('sc'), stated: 10 };
  const one = countMismatch({ from: 0, to: 1 }, words);
  const fix = { title: 'change "10" to "12"', edits: [] };
  const times = (findings: readonly Finding[]) =>
    report(checked({ findings }), layout).split('To do:').length - 1;
  expect(times([one, { ...one, from: 2 }])).toBe(1);
  expect(
    times([
      { ...one, fixes: [fix] },
      { ...one, fixes: [fix] },
    ]),
  ).toBe(0);
  expect(times([{ ...one, fixes: [fix] }, one])).toBe(1);
});

test('marked rows of which no error speaks are told to follow from one that has', () => {
  const bad = (label: string, at: number) =>
    row(label, { from: at, to: at + 9, verdict: 'mismatch' });
  const at = { from: 10, to: 12 };
  const words = { row: 'round 2', made: 12, unit: noun('sc'), stated: 10 };
  const of = (rows: readonly RowAccount[]) =>
    followers(checked({ rows, findings: [countMismatch(at, words)] }), 200);
  expect(of([row('Rnd 1'), bad('Rnd 2', 9)])).toEqual([]);
  expect(of([bad('Rnd 2', 9), bad('Rnd 3', 20)])).toEqual([
    'Rnd 3 is marked and has no error of its own. It may be right: it leans on a row that has one. Mend that first, then check again.',
  ]);
  const many = of([2, 3, 4, 5, 6, 7].map((n) => bad(`Rnd ${n}`, 9 + 20 * (n - 2))));
  expect(many.join()).toMatch(/^Rnd 3, Rnd 4, Rnd 5, Rnd 6 and 1 more are marked/);
});

test('of a good file among many there is one line', () => {
  const { line, rest } = shortReport(checked(), { ...layout, table: 'left-out' });
  expect(line).toBe('disc.pattern.md  1 row, proven. Nothing found.');
  expect(rest).toBe('');
});

describe('what many files came to', () => {
  const good = { status: 0, findings: [], totals: [total({ rows: 3, proven: 3 })] } as const;
  const bad = { ...good, status: 1, findings: [{ severity: 'error' }] } as const;
  test.each([
    [[good, good], 0, '2 files: all come out. 6 rows, all proven. Nothing found.\n'],
    [[good, bad], 0, '2 files: 1 comes out, 1 does not. 6 rows, all proven. 1 error.\n'],
    [
      [bad],
      1,
      '2 files: 1 does not come out, 1 could not be checked. 3 rows, all proven. 1 error.\n',
    ],
    [[bad, bad], 0, '2 files: none comes out. 6 rows, all proven. 2 errors.\n'],
    [
      [good],
      1,
      '2 files: 1 comes out, 1 could not be checked. 3 rows, all proven. Nothing found.\n',
    ],
  ])('%#', (outcomes, faults, line) => {
    expect(closing(outcomes, faults, plain)).toBe(line);
  });
});

describe('rows in words', () => {
  test.each([
    [[], ['No row was worked.']],
    [[total({ rows: 4, unstated: 4 })], ['4 rows, all without a stated count.']],
    [
      [total({ rows: 4, proven: 2, unread: 1, unchecked: 1 })],
      ['4 rows: 2 proven, 1 not understood, 1 not checked.'],
    ],
    [
      [total({ size: 'S', rows: 4, proven: 4 }), total({ size: 'M', rows: 4, proven: 4 })],
      ['4 rows in each of 2 sizes, all proven.'],
    ],
    [
      [total({ size: 'S', rows: 4, proven: 4 }), total({ size: 'M', rows: 5, proven: 5 })],
      ['Size S, 4 rows, all proven.', 'Size M, 5 rows, all proven.'],
    ],
  ])('%#', (totals, lines) => {
    expect(rowsSummary({ totals })).toEqual(lines);
  });
});

describe('readings taken for granted', () => {
  type Because = 'note' | 'custom' | 'count';
  const one = (what: string, reading: string, because: Because, part = '') => ({
    ...{ what, reading, because, part },
    alternatives: [],
    from: 0,
  });

  test('are those that the pattern does not state, each told once', () => {
    const conventions = [
      one('start-chain 3', 'counts', 'note', 'A'),
      one('start-chain 2', 'does not count', 'custom', 'B'),
      one('start-chain 2', 'does not count', 'custom', 'C'),
      one('rep from * n times', 'n in all', 'count', 'D'),
      one('gaps', 'passed', 'custom', 'D'),
      one('gaps', 'one', 'count', 'D'),
    ];
    const rows = [row('Rnd 1', { part: 'B' }), row('Row 1', { part: 'C' })];
    const told = assumptions({ conventions, rows });
    expect(told).toEqual([
      'The ch 2 at the start of a round does not count as a stitch. (by custom; B)',
      'The ch 2 at the start of a row does not count as a stitch. (by custom; C)',
      '"Rep from * 5 times" means 5 times in all. (the counts ask for it; D)',
      '"St" means a stitch or a chain space. (the counts ask for it; D)',
    ]);
  });

  test('have a sentence for each question that the engine asks, whichever way it is settled', () => {
    const folder = new URL('../../src/fabric/', import.meta.url);
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
    const code = files
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(new URL(name, folder), 'utf8'))
      .join('\n');
    const questions = [
      ...code.matchAll(/doubt: (?:'([^']+)'|`([^`$]+)\$\{[^}`]*\}([^`]*)`),([^}]*?)local:/g),
    ];
    expect(questions.length).toBeGreaterThan(5);
    for (const [, plainName, numbered, after, rest = ''] of questions) {
      const what = plainName ?? `${numbered}2${after}`;
      const readings = [...rest.matchAll(/(?:[:?,] |\[)'([^']+)'/g)].map(
        ([, reading = '']) => reading,
      );
      for (const reading of readings) {
        const sentence = sentenceFor(what, reading, 'row');
        expect(sentence, `${what}, ${reading}`).not.toBe(`${what}: ${reading}`);
        expect(sentence).not.toMatch(/[{}#]/);
      }
    }
  });
});

describe('the exit status', () => {
  const empty = noInstructions({ from: 0, to: 1 });
  const notes = (file: string): CheckedFile => ({
    ...checked({ rows: [], findings: [empty] }),
    file,
    found: 'in-folder',
  });
  const note = countMismatch(
    { from: 0, to: 1 },
    { row: 'a', made: 1, unit: noun('sc'), stated: 2 },
  );
  test.each([
    ['all proven', checked(), 0],
    ['a count that is not stated', checked({ rows: [row('Rnd 1', { verdict: 'unstated' })] }), 0],
    [
      'a foundation without a number',
      checked({ rows: [row('Row 1', { verdict: 'unchecked' })] }),
      0,
    ],
    ['a row that was not understood', checked({ rows: [row('Rnd 1', { verdict: 'unread' })] }), 1],
    ['a warning', checked({ findings: [{ ...note, severity: 'warning' }] }), 0],
    ['an error', checked({ findings: [note] }), 1],
    ['no row', checked({ rows: [], findings: [empty] }), 1],
    ['no row in notes beside patterns', notes('README.md'), 0],
    ['no row in what is called a pattern', notes('patterns/bag.pattern.md'), 1],
    [
      'a row that is not worked yet',
      checked({ findings: [{ ...note, code: 'not-worked', severity: 'note' }] }),
      1,
    ],
  ])('%s', (_, report, status) => {
    expect(statusOf(report)).toBe(status);
  });
});
