import { expect, test } from 'vitest';
import { table } from '../../cli/text/table.ts';
import { plain, widthOf } from '../../src/index.ts';
import { processorMs } from '../processor-time.ts';
import { row, rowsOfRange } from './sample.ts';

const shown = (rows: Parameters<typeof table>[0], sizes: readonly string[] = [''], width = 100) =>
  `\n${table(rows, sizes, { width, paint: plain, text: '' }).join('\n')}\n`;

test('rows alike under one label are one line, parts have headings, the faulty row is marked', () => {
  const rows = [
    row('Rnd 1', { part: 'Base', used: 0, made: 88 }),
    ...rowsOfRange(4, 9, { part: 'Sides', used: 104, made: 104 }),
    row('Rnd 10', {
      part: 'Sides',
      used: 104,
      made: 52,
      boxes: 52,
      stated: [{ n: 52, unit: 'boxes', compared: true }],
    }),
    row('Rnd 11', {
      part: 'Sides',
      made: 51,
      boxes: 51,
      stated: [{ n: 52, unit: 'boxes', compared: true }],
      verdict: 'mismatch',
    }),
    row('Rnd 12', {
      part: 'Rim',
      made: 68,
      spaces: [{ chains: 50, n: 2 }],
      stated: [{ n: 68, unit: null, compared: true }],
    }),
    row('Rnd 13', { part: 'Rim', used: 68, made: 168, stated: [], verdict: 'unstated' }),
  ];
  expect(shown(rows)).toBe(`
            used  made  also         stated    verdict
Base
  Rnd 1        0    88               88 sc     proven
Sides
  Rnds 4-9   104   104               104 sc    proven
  Rnd 10     104    52  52 boxes     52 boxes  proven
> Rnd 11       6    51  51 boxes     52 boxes  mismatch
Rim
  Rnd 12       6    68  2 ch-50 sps  68        proven
  Rnd 13      68   168                         unstated
`);
});

test('rows told in turns are no whole range', () => {
  const rows = rowsOfRange(4, 8).filter((_, at) => at % 2 === 0);
  const own = rows.map((one, at) => ({
    ...one,
    range: one.range && { ...one.range, nth: at + 1 },
  }));
  expect(shown(own)).toContain('Rnds 4, …, 8');
});

test('a row that is not like its sisters stands by itself', () => {
  const rows = rowsOfRange(4, 7).map((one, at) =>
    at === 2 ? { ...one, used: 7, verdict: 'mismatch' as const } : one,
  );
  expect(shown(rows)).toBe(`
            used  made  stated  verdict
  Rnds 4-5     6     6  6 sc    proven
> Rnd 6        7     6  6 sc    mismatch
  Rnd 7        6     6  6 sc    proven
`);
});

test('sizes stand side by side as the trade writes them; a row may be in some sizes only', () => {
  const sizes = ['S', 'M', 'L'];
  const rows = [
    ...sizes.map((size, at) => row('Rnd 1', { size, used: 0, made: 6 + at })),
    ...sizes.map((size) =>
      row('Rnd 2', { size, verdict: size === 'M' ? 'mismatch' : 'proven', made: 12 }),
    ),
    row('Rnd 3', { size: 'L', from: 40 }),
    row('Rnd 4', { size: 'S', from: 60, verdict: 'omitted' }),
    row('Rnd 4', { size: 'M', from: 60 }),
    row('Rnd 4', { size: 'L', from: 60 }),
  ];
  expect(shown(rows, sizes)).toBe(`
             used      made  stated       verdict
  Rnd 1         0  6 (7, 8)  6 (7, 8) sc  proven
> Rnd 2         6        12  12 sc        mismatch (M)
  Rnd 3  – (–, 6)  – (–, 6)  – (–, 6) sc  proven
  Rnd 4  – (6, 6)  – (6, 6)  – (6, 6) sc  proven
`);
});

test('copies alike are shown once, others each', () => {
  const ear = (instance: number, made: number) => row('Rnd 1', { part: 'Ear', instance, made });
  expect(shown([ear(1, 6), ear(2, 6)])).toContain('\nEar, both alike\n  Rnd 1');
  expect(shown([ear(1, 6), ear(2, 7)])).toMatch(/\nEar\n {2}Rnd 1 .*\nEar, number 2\n {2}Rnd 1/);
});

test('a row without a label is called by its first words, one with "R" alone as it is written', () => {
  const text = 'Join A to first\nskipped st, ch 1.';
  const rows = [row('', { to: text.length }), ...rowsOfRange(6, 8)].map((one) => ({
    ...one,
    label: one.label.replace('Rnd ', 'R'),
  }));
  const lines = table(rows, [''], { width: 80, paint: plain, text });
  expect(lines[1]).toMatch(/^ {2}Join A to first … {2}/);
  expect(lines[2]).toMatch(/^ {2}R6-8 /);
});

test('groups stand in the plural, names of stitches do not', () => {
  const stated = [
    { n: 8, unit: 'picot', compared: true },
    { n: 1, unit: 'popcorn', compared: true },
    { n: 2, unit: 'stitch', compared: true },
    { n: 3, unit: 'dc', compared: true },
    { n: 4, unit: 'treble crochet', compared: true },
    { n: 5, unit: 'V-stitch', compared: true },
  ];
  expect(shown([row('Rnd 1', { stated })])).toContain(
    '8 picots, 1 popcorn, 2 sts, 3 dc, 4 treble crochet, 5 V-stitches',
  );
});

test('rows worked again without numbers of their own are one line, as far as they are alike', () => {
  const text = 'Repeat Rows 2-7, 8 more times.';
  const again = (made: number) => row('', { to: text.length, made, stated: [] });
  const lines = table([again(6), again(6), again(6), again(8)], [''], {
    width: 80,
    paint: plain,
    text,
  });
  expect(lines.slice(1).map((line) => line.trim().split(/ {2,}/)[0])).toEqual([
    'Repeat Rows 2-7, 8 … (3 rows)',
    'Repeat Rows 2-7, 8 …',
  ]);
});

test('two rows with one label are both shown', () => {
  const lines = shown([row('Rnd 2', { made: 6 }), row('Rnd 2', { made: 12 })])
    .trim()
    .split('\n');
  expect(lines).toHaveLength(3);
});

test('long and wide labels are cut to the terminal, and the verdict never is', () => {
  const long = row('Set-up round for the very long handle of the bag 持ち手 (right side)', {
    stated: [
      { n: 68, unit: 'sc', compared: true },
      { n: 2, unit: 'ch-50 sps', compared: true },
      { n: 12, unit: 'dc bobbles', compared: true },
    ],
    verdict: 'unchecked',
  });
  for (const width of [60, 80]) {
    for (const line of table([long], [''], { width, paint: plain, text: '' })) {
      expect(widthOf(line)).toBeLessThanOrEqual(width);
    }
    expect(shown([long], [''], width)).toContain('unchecked');
  }
});

test('rows told by how many they are are one line, whose label says it', () => {
  const rows = Array.from({ length: 5 }, () => row('Next 5 Rows', { from: 40 }));
  expect(shown(rows).match(/Next 5 Rows/g)).toHaveLength(1);
  const apart = [row('Next row', { from: 40 }), row('Next row', { from: 60 })];
  expect(shown(apart).match(/Next row/g)).toHaveLength(2);
});

test('no rows, no table', () => {
  expect(table([], [''], { width: 80, paint: plain, text: '' })).toEqual([]);
});

test('ten thousand rows in one column take no time that grows with their square', () => {
  const rows = Array.from({ length: 10_000 }, (_, at) => row(`Row ${at + 1}`, { from: at }));
  const ms = processorMs(() => {
    expect(table(rows, [''], { width: 80, paint: plain, text: '' })).toHaveLength(10_001);
  });
  expect(ms).toBeLessThan(5000);
});
