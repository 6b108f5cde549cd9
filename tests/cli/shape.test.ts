// `loopwright shape` as people run it: built, in a process of its own.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const bin = fileURLToPath(new URL('../../bin/loopwright.js', import.meta.url));
const disc = `---
title: Disc
terms: US
gauge: 20 sc x 20 rnds = 10 cm
sizes: [small, large]
---
## Disc

Rnd 1: 6 sc in magic ring. (6 sc)

Rnd 2: 2 sc in each st around. (12 sc)
`;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-shape-'));
  writeFileSync(join(folder, 'disc.md'), disc);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const shape = (...args: string[]) =>
  spawnSync(process.execPath, [bin, 'shape', ...args], { cwd: folder, encoding: 'utf8' });

test('says how large it is and how sure that is, how it lies, and how it was had', () => {
  const { status, stdout } = shape('disc.md', '--units', 'metric');
  expect(status).toBe(0);
  expect(stdout).toBe(`Size: small

Disc
  about 2 cm (1.8-2.1) across
  Rounds from the start: 1-2 flat.

How this was had:
  Gauge in sc: 20 sc x 20 rnds = 10 cm.
  A fabric of springs as long as the gauge says; crochet gives, so measure the finished piece.
`);
});

test.each([
  ['svg', '<?xml'],
  ['png', '\u0089PNG'],
  ['glb', 'glTF'],
])('writes .%s', (ending, start) => {
  const { status, stdout } = shape('disc.md', '-o', `disc.${ending}`);
  expect([status, stdout.split('\n').at(-2)]).toEqual([0, `Written: disc.${ending}`]);
  expect(readFileSync(join(folder, `disc.${ending}`), 'latin1').slice(0, start.length)).toBe(start);
});

describe('says what it cannot do, and ends with status 2', () => {
  test.each([
    [['gone.md'], 'gone.md: no such file or folder'],
    [['disc.md', '-o', 'disc.pdf'], 'disc.pdf: the name has to end in .svg, .png or .glb'],
    [['disc.md', '-o', 'no/where.svg'], 'no/where.svg: no such file or folder'],
    [['disc.md', '--size', 'huge'], '--size: there is no size "huge"; the sizes are small, large'],
    [['disc.md', '--part', 'wing'], '--part: no piece has a part "wing"; the parts are Disc'],
    [
      ['disc.md', '--gauge', 'snug'],
      '--gauge: the words "snug" hold no count over a length, such as "16 sts x 18 rnds = 10 cm in sc"',
    ],
  ])('%j', (args, said) => {
    const { status, stderr } = shape(...args);
    expect([status, stderr]).toEqual([2, `loopwright: ${said}\n`]);
  });
});

test('another gauge, another size', () => {
  const { stdout } = shape('disc.md', '--gauge', '10 sc x 10 rnds = 10 cm', '--units', 'metric');
  expect(stdout).toContain('about 3.9 cm');
});

test('as JSON: every key is documented', () => {
  const { status, stdout } = shape('disc.md', '--format', 'json');
  expect(status).toBe(0);
  const report = JSON.parse(stdout);
  const page = readFileSync(new URL('../../docs/shape-json.md', import.meta.url), 'utf8');
  const keys = new Set<string>();
  JSON.stringify(report, (key, value) => {
    if (key !== '' && !/^\d+$/.test(key)) keys.add(key);
    return value;
  });
  for (const key of keys) expect(page, key).toMatch(new RegExp(`["\`]${key}["\`]`));
  expect(report).toMatchObject({ version: 1, file: 'disc.md', title: 'Disc', size: 'small' });
  expect(report.pieces[0]).toMatchObject({
    pose: 'flat',
    measures: { across: { cm: { value: 2 } } },
    rest: { settled: true },
    hasHandles: false,
  });
});
