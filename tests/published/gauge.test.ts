/**
 * Yarns and hooks as published. Yarn council: the eight-step system as reprinted in Crochet World,
 * October 2018. Tex: ISO 1144 (from memory) and the conversion table of a yarn-machinery firm, tex =
 * 1000 / Nm. Hooks: what most of six shop charts share, see docs/sources.md.
 */
import { describe, expect, test } from 'vitest';
import {
  classRow,
  fabricGauge,
  hookFromWords,
  putUpFromWords,
  readGauges,
  texOf,
  weightClassNamed,
  yarnDiameterMm,
} from '../../src/gauge/index.ts';
import { readManuscript } from '../../src/index.ts';

describe('the yarn council classes', () => {
  test.each([
    [0, 32, 42],
    [1, 21, 32],
    [2, 16, 20],
    [3, 12, 17],
    [4, 11, 14],
    [5, 8, 11],
    [6, 6, 9],
  ] as const)('weight %i: %i to %i sc over 4 in', (weightClass, from, to) => {
    expect(classRow(weightClass).scPer4In).toEqual([from, to]);
  });

  test.each([
    ['DK', 3],
    ['worsted weight (4)', 4],
    ['#5', 5],
    ['sock', 1],
    ['super bulky', 6],
    ['aran', 4],
    ['size 10 thread', 0],
  ] as const)('"%s" is weight %i', (words, weightClass) => {
    expect(weightClassNamed(words)).toBe(weightClass);
  });
});

describe('tex', () => {
  test.each([
    // metres to 100 g, tex: Nm 10, 25, 80 and 100 of the table, then ball bands by arithmetic.
    [1000, 100],
    [2500, 40],
    [8000, 12.5],
    [10_000, 10],
    [50, 2000],
    [85, 1176.47],
    [125, 800],
    [200, 500],
    [420, 238.1],
  ])('%f m to 100 g is %f tex', (metres, tex) => {
    expect(texOf(metres)).toBeCloseTo(tex, 1);
  });

  test('put-ups in ounces and yards', () => {
    const ball = putUpFromWords('1.75 oz / 120 yds')!;
    expect(ball.grams).toBeCloseTo(49.6117, 3);
    expect(ball.metres).toBeCloseTo(109.728, 3);
  });
});

describe('hooks', () => {
  test.each([
    ['4 mm', 4],
    ['G-6', 4],
    ['US H/8 (5 mm)', 5],
    ['I-9', 5.5],
    ['K-10½', 6.5],
    ['US 7', 4.5],
    ['steel 7', 1.65],
    ['1.75 mm', 1.75],
  ])('%s is %f mm', (words, mm) => {
    expect(hookFromWords(words)?.mm).toBe(mm);
  });

  test('a G may be 4.25 mm too, and is said to', () => {
    expect(hookFromWords('G')?.orMm).toEqual([4.25]);
  });
});

describe('wraps to the inch, Spin-Off yarn sheet: middles of weights 2 to 5', () => {
  test.each([
    [312, 14.5],
    [212, 12.5],
    [151, 10.5],
    [101, 8.5],
  ])('%i m to 100 g: %f wraps', (metres, wraps) => {
    const span = { from: 0, to: 0 };
    const yarn = { name: '', weightClass: null, fibre: null, wrapsPerInch: null, span };
    const diameter = yarnDiameterMm({ ...yarn, ball: { grams: 100, metres } })!;
    expect(Math.abs(25.4 / diameter.mm / wraps - 1)).toBeLessThan(0.05);
  });
});

describe('flat circles follow from the proportions: 2 pi times height by width', () => {
  // Published: 6 sc, 8 hdc, 12 dc and 16 to 18 tr a round lie flat (shop and designer pages).
  test.each([
    ['sc', 6, 6],
    ['hdc', 8, 9],
    ['dc', 11, 12],
    ['tr', 16, 18],
  ])('%s: %i to %i', (stitch, from, to) => {
    const text = '---\nterms: US\ngauge: { sc: 25 sts x 27 rows = 10 cm }\n---\nCh 5.\n';
    const { stitchWidthMm, rowHeightMm } = fabricGauge(
      readGauges(readManuscript(text).value),
      stitch,
    );
    const increases = (2 * Math.PI * rowHeightMm) / stitchWidthMm;
    expect(increases).toBeGreaterThan(from - 0.5);
    expect(increases).toBeLessThan(to + 0.5);
  });
});
