/** Yarn of whole patterns: what is counted, by colour and size, and other put-ups. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, type MeasureOptions, measure } from '../../../src/index.ts';
import { metresPerSc } from '../../../src/figures/yarn-path.ts';
import { fabricGauge, readGauges } from '../../../src/gauge/index.ts';

const sheetOf = (text: string, options: MeasureOptions = {}) => {
  const { manuscript, fabric } = compile(text, { fixes: false });
  return measure(manuscript, fabric, options);
};
const exampleOf = (name: string, options?: MeasureOptions) =>
  sheetOf(readFileSync(`examples/${name}.pattern.md`, 'utf8'), options);

const HEAD = 'terms: US\nyarn: { A: { ball: 50 g / 110 m }, B: { ball: 50 g / 110 m } }\ngauge: { sc: 16 sts x 18 rnds = 10 cm }';
const TUBE = `---\n${HEAD}\n---\nWith A, ch 40; join with sl st in first ch.\n\nRnd 1: Ch 1, sc in each ch around; join. (40 sc)\n\nRnds 2-10: Ch 1, sc in each st around; join. (40 sc)\n`;

describe('what is counted', () => {
  const { manuscript } = compile(TUBE, { fixes: false });
  const sc = metresPerSc(fabricGauge(readGauges(manuscript), 'w0'));
  const [need] = sheetOf(TUBE).sizes[0]!.yarns;

  test('the foundation: 40 chains of 0.48 sc', () => {
    expect(need!.foundation).toBeCloseTo(40 * 0.48 * sc, 9);
  });

  test('the joins: ten slip stitches of 0.55 sc', () => {
    expect(need!.joins).toBeCloseTo(10 * 0.55 * sc, 9);
  });

  test('and both are part of the whole: 400 sc, 10 start chains, tails', () => {
    const stitches = 400 * sc + 10 * 0.48 * sc + need!.foundation + need!.joins;
    expect(need!.stitches.value).toBeCloseTo(stitches, 6);
    expect(need!.metres.value).toBeCloseTo(stitches + 0.3, 6);
  });

  test('rounds that are not joined have no joins', () => {
    expect(sheetOf(TUBE.replaceAll('around; join.', 'around.')).sizes[0]!.yarns[0]!.joins).toBe(0);
  });

  test('seams where pieces are sewn, a margin that is not in the metres', () => {
    const otter = exampleOf('estuary-otter').sizes[0]!.yarns[0]!;
    expect(otter.seams).toBeGreaterThan(0.5);
    expect(otter.metres.value).toBeCloseTo(otter.stitches.value + otter.tails + otter.seams, 6);
    expect(otter.margin.metres).toBeCloseTo(otter.metres.value * 0.1, 9);
  });
});

describe('colours and sizes', () => {
  test('each colour by itself, and together as much as one yarn', () => {
    const striped = TUBE.replace('Rnds 2-10: Ch 1', 'Rnds 2-10: With B, ch 1');
    const [a, b] = sheetOf(striped).sizes[0]!.yarns;
    const [one] = sheetOf(TUBE).sizes[0]!.yarns;
    expect([a!.name, b!.name]).toEqual(['A', 'B']);
    expect(a!.stitches.value + b!.stitches.value).toBeCloseTo(one!.stitches.value, 6);
  });

  const rowsIn = (words: string): Record<string, number> => {
    const text = `---\n${HEAD}\n---\n${words}`;
    const { yarns } = sheetOf(text).sizes[0]!;
    return Object.fromEntries(yarns.map(({ name, stitches }) => [name, stitches.value]));
  };
  const ROW = 'Ch 1, sc in each sc across, turn. (20 sc)';
  const strip = (heading: string, label = 'Rows 2-5') =>
    `## ${heading}\n\nCh 21.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n\n${label}: ${ROW}\n`;

  test.each(['Strip (in B)', 'Strip (with colour B)', 'Strip in B', 'Strip (make 1, B)'])(
    'the yarn that a heading names: %s',
    (heading) => {
      expect(Object.keys(rowsIn(strip(heading)))).toEqual(['B']);
    },
  );

  test('the yarn that a label names, and that of rows worked again', () => {
    const named = rowsIn(`${strip('Strip (in A)')}\nRow 6 (B): ${ROW}\n`);
    const again = rowsIn(`${strip('Strip (in A)')}\nRow 6: Rep row 5 in B. (20 sc)\n`);
    expect(named.B).toBeCloseTo(rowsIn(strip('Strip (in B)', 'Row 2')).B! / 2, 0);
    expect(again).toEqual(named);
  });

  test('rounds worked again are joined as the first is', () => {
    const again = TUBE.replace('Rnds 2-10: Ch 1, sc in each st around; join.', 'Rnds 2-10: Rep rnd 1.');
    const [told, written] = [again, TUBE].map((text) => sheetOf(text).sizes[0]!.yarns[0]!);
    expect(told!.joins).toBe(written!.joins);
  });

  test('what no word names is said', () => {
    const said = (words: string): string =>
      sheetOf(`---\n${HEAD}\n---\n${words}`).notKnown.join(' ');
    expect(said(strip('Strip'))).toContain('No yarn is named for Strip: told with A.');
    expect(said(strip('Strip (in A)'))).toContain('No row was read as worked with B');
    expect(said(`${strip('Strip (in A)')}\nRow 6 (B): ${ROW}\n`)).not.toMatch(/No yarn|No row/);
  });

  test('larger sizes take more', () => {
    const metres = exampleOf('weather-watch-hat').sizes.map(({ yarns }) => yarns[0]!.metres.value);
    expect([...metres].sort((x, y) => x - y)).toEqual(metres);
    expect(new Set(metres).size).toBe(4);
  });
});

describe('strands held together', () => {
  const strip = (words: string, notes = '') =>
    `---\n${HEAD}\n---\n${notes}\n\n## Strip\n\n${words}\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n\nRows 2-5: Ch 1, sc in each sc across, turn. (20 sc)\n`;
  const metresIn = (words: string, notes?: string): Record<string, number> =>
    Object.fromEntries(
      sheetOf(strip(words, notes)).sizes[0]!.yarns.map(({ name, stitches }) => [
        name,
        stitches.value,
      ]),
    );
  const { A: alone } = metresIn('With A, ch 21.');

  test.each([
    'With 2 strands of A held together, ch 21.',
    'With A held double, ch 21.',
    'With A, ch 21. Yarn is doubled throughout.',
  ])('twice the yarn: %s', (words) => {
    expect(metresIn(words).A! / alone!).toBeCloseTo(2, 6);
  });

  test('a strand each of two yarns: as much of both, and one set of stitches for the time', () => {
    const words = 'With A and B held together, ch 21.';
    expect(metresIn(words).A!).toBeCloseTo(alone!, 6);
    expect(metresIn(words).B!).toBeCloseTo(alone!, 6);
    const [one, two] = ['With A, ch 21.', words].map((each) => sheetOf(strip(each)).sizes[0]!);
    expect(two!.stitches).toBe(one!.stitches);
    expect(two!.hours.to).toBeCloseTo(one!.hours.to, 9);
    expect(two!.yarns[1]!.because.join(' ')).toContain('A strand each of A and B held together');
  });

  test('in the notes holds for all parts that do not say one strand', () => {
    const notes = 'Two strands are held together throughout.';
    expect(metresIn('With A, ch 21.', notes).A! / alone!).toBeCloseTo(2, 6);
    expect(metresIn('With one strand of A, ch 21.', notes).A!).toBeCloseTo(alone!, 6);
  });

  test('double crochet and stitches worked together are no strands', () => {
    expect(metresIn('With A, ch 21.', 'Hold the pieces with right sides together.').A).toBe(alone);
    expect(metresIn('With A, ch 21.', 'Used double crochet before.').A).toBe(alone);
  });
});

describe('pieces weighed that do not agree', () => {
  const weighed = (swatches: string) =>
    sheetOf(TUBE.replace(HEAD, `${HEAD}\nswatches: [${swatches}]`)).sizes[0]!.yarns[0]!;

  test('are said to, widen the range and keep the usual margin', () => {
    const need = weighed('400 sc weigh 19 g, 380 sc weigh 26 g');
    expect(need.because[0]).toMatch(/^Weighed: 2 pieces, which agree within about \d+ % only\.$/);
    expect(need.metres.spread).toBeGreaterThan(0.1);
    expect(need.margin.share).toBe(0.1);
  });

  test('where they agree the margin is smaller', () => {
    const need = weighed('400 sc weigh 20 g, 200 sc weigh 10 g');
    expect(need.because[0]).toBe('Weighed: 2 pieces.');
    expect(need.margin.share).toBe(0.05);
  });

  test('ten stitches unravelled say less than four hundred weighed', () => {
    const [few, many] = [10, 400].map(
      (n) => weighed(`400 sc weigh 20 g, ${n} sc weigh ${(n * 26) / 400} g`).stitches.value,
    );
    expect(few!).toBeLessThan(many!);
  });
});

describe('many copies', () => {
  const square = (heading: string) =>
    `---\n${HEAD}\n---\n## ${heading}\n\nRnd 1: 6 sc in magic ring; join. (6 sc)\n\nRnd 2: Ch 1, 2 sc in each st around; join. (12 sc)\n`;
  const metresOf = (heading: string) =>
    sheetOf(square(heading)).sizes[0]!.yarns.map(({ stitches }) => stitches.value);

  test('are all counted: fifty take fifty times the yarn of one', () => {
    expect(metresOf('Dot (make 50)')[0]! / metresOf('Dot')[0]!).toBeCloseTo(50, 6);
  });

  test('each in its own yarn', () => {
    const [a, b] = metresOf('Dots (make 30 in A, 12 in B)');
    expect(a! / b!).toBeCloseTo(30 / 12, 6);
  });

  test('that were not worked are said', () => {
    const { notKnown } = sheetOf(square('Dot (make 5000)'));
    expect(notKnown).toContain('Dot (make 5000): 1000 of 5000 copies were worked.');
  });
});

describe('another put-up', () => {
  const substitutes = [{ yarn: 'B', ball: { grams: 50, metres: 55 } }];
  const own = exampleOf('estuary-otter').sizes[0]!.yarns;
  const other = exampleOf('estuary-otter', { substitutes }).sizes[0]!.yarns;

  test('for one colour leaves the others', () => {
    expect(other[0]).toEqual(own[0]);
    expect(other[1]!.metres).toEqual(own[1]!.metres);
    expect(other[1]!.grams!.value).toBeCloseTo(2 * own[1]!.grams!.value, 6);
  });

  test('of another thickness is said to need a swatch', () => {
    expect(other[1]!.cautions[0]).toContain('This yarn is thicker (110 m to 100 g in place of 220)');
  });

  test('of the same thickness is not', () => {
    const alike = [{ yarn: null, ball: { grams: 100, metres: 230 } }];
    const needs = exampleOf('estuary-otter', { substitutes: alike }).sizes[0]!.yarns;
    expect(needs.map(({ cautions }) => cautions)).toEqual([[], []]);
  });
});
