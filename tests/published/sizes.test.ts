/**
 * Sizes of heads, bodies and household pieces as published, against the sheet of plain pieces worked to
 * them. Z1: a hat maker's size chart. Z3, Z6: two question pages on hats. Z9: a shop's to-fit bust in the
 * council's women's sizes with its finished bust, 2 in more. Z12 to Z15: four guides to blankets. Z16: a
 * leaflet of a yarn company, 2016. E5: a blanket counted on a craft page. "Common practice" where said.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, type Figure, measure, rounded, shortFigure } from '../../src/index.ts';
import { length, lengthIn } from '../../src/units/index.ts';

const partsOf = (text: string) => {
  const { manuscript, fabric, findings } = compile(text, { fixes: false });
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  return measure(manuscript, fabric).sizes[0]!.pieces[0]!;
};
const inches = ({ mm }: Figure): number => lengthIn(length(mm, 'mm'), 'in');

const tube = (stitches: number, rounds: number, gauge: string): string =>
  `---\nterms: US\ngauge: { sc: "${gauge}" }\n---\nCh ${stitches}; join with sl st in first ch.\n\nRnd 1: Ch 1, sc in each ch around; join. (${stitches} sc)\n\nRnds 2-${rounds}: Ch 1, sc in each st around; join. (${stitches} sc)\n`;

const panel = (stitches: number, rows: number, gauge: string): string =>
  `---\nterms: US\ngauge: { sc: "${gauge}" }\n---\nCh ${stitches + 1}.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (${stitches} sc)\n\nRows 2-${rows}: Ch 1, sc in each st across, turn. (${stitches} sc)\n`;

describe('heads and hats', () => {
  test('a newborn head of 33 cm is 13 in (Z3)', () => {
    expect(lengthIn(length(33, 'cm'), 'in')).toBeCloseTo(12.99, 2);
  });

  test('a hat of 18 in around has a crown of 18 / pi = 5.73 in', () => {
    // 72 sc at 4 to the inch; twelve rounds that grow by 6 at 4.2 rounds to the inch lie flat.
    const rounds = Array.from(
      { length: 11 },
      (_, at) =>
        `Rnd ${at + 2}: *${at === 0 ? '' : `Sc in next ${at === 1 ? 'st' : `${at} sts`}, `}2 sc in next st; rep from * around. (${6 * (at + 2)})`,
    );
    const hat = `---\nterms: US\ngauge: { sc: 40 sts x 42 rnds = 10 in }\n---\nRnd 1: 6 sc in magic ring. (6)\n\n${rounds.join('\n\n')}\n\nRnds 13-30: Sc in each st around. (72)\n`;
    const [crown] = partsOf(hat).parts;
    expect(inches(crown!.measures.around!)).toBeCloseTo(18, 6);
    expect(Math.abs(inches(crown!.measures.across!) / 5.73 - 1)).toBeLessThan(0.03);
    expect(crown!.form).toBe('round base');
  });

  describe('the weather watch hat', () => {
    const { manuscript, fabric } = compile(
      readFileSync('examples/weather-watch-hat.pattern.md', 'utf8'),
      { fixes: false },
    );
    // The heads that it says it fits, in cm.
    const heads = [46, 50, 55, 59];
    const wholes = measure(manuscript, fabric).sizes.map(({ pieces }) => pieces[0]!);

    test('is 1 to 3 in smaller than the heads that it fits (Z6: 1, Z3: 1 to 3)', () => {
      wholes.forEach(({ parts }, at) => {
        const smaller = heads[at]! / 2.54 - inches(parts.at(-1)!.measures.around!);
        expect(smaller).toBeGreaterThan(1);
        expect(smaller).toBeLessThan(3);
      });
    });

    test('is 0.4 of the head deep, within a centimetre (Z6)', () => {
      wholes.forEach(({ whole }, at) => {
        expect(Math.abs(whole['middle to edge']!.mm / 10 - 0.4 * heads[at]!)).toBeLessThan(1);
      });
    });

    test('stands among the published steps: heads of 18 to 23 in from child to large (Z1, Z7)', () => {
      expect(heads.map((cm) => Math.round(cm / 2.54))).toEqual([18, 20, 22, 23]);
    });
  });

  test.each([
    // Z1: who, snug hat in inches (middle of the range).
    ['0-3 months', 13.25],
    ['6-9 months', 15],
    ['12-18 months', 16],
    ['18-24 months', 17],
  ])('a hat for %s, %f in, comes to that in whole stitches', (_, around) => {
    const stitches = Math.round(around * 4);
    const { parts } = partsOf(tube(stitches, 20, '16 sts x 17 rnds = 4 in'));
    expect(Math.abs(inches(parts[0]!.measures.around!) - around)).toBeLessThanOrEqual(0.125);
  });
});

describe('to-fit bust and finished garment, 2 in more (Z9)', () => {
  test.each([30, 34, 38, 42, 46, 50, 54, 58, 62])('bust %i', (bust) => {
    const { parts } = partsOf(tube(4 * (bust + 2), 10, '16 sts x 17 rnds = 4 in'));
    const { around } = parts[0]!.measures;
    expect(inches(around!)).toBeCloseTo(bust + 2, 6);
    // Never finer than it is known: the print is within half of its own bounds.
    const { value, from, to } = rounded(around!, 'in');
    expect(from).toBeLessThanOrEqual(bust + 2);
    expect(to).toBeGreaterThanOrEqual(bust + 2);
    expect(Math.abs(value - bust - 2)).toBeLessThanOrEqual((to - from) / 2);
  });
});

describe('blankets (Z12 to Z15)', () => {
  test.each([
    ['lovey', 12, 12, '30.5 x 30.5'],
    ['stroller', 30, 36, '76.2 x 91.4'],
    ['lap', 36, 48, '91.4 x 121.9'],
    ['throw', 50, 60, '127.0 x 152.4'],
  ])('%s: %i x %i in is %s cm', (_, wide, long, cm) => {
    const { parts } = partsOf(panel(3 * wide, 3 * long, '12 sts x 12 rows = 4 in'));
    const { measures } = parts[0]!;
    const centimetres = [measures.wide!, measures.long!].map(({ mm }) => (mm / 10).toFixed(1));
    expect(centimetres.join(' x ')).toBe(cm);
  });

  test('13 stitches and 7.5 rows to 4 in: 162 x 112 make 50 x 60 in (E5)', () => {
    const { parts } = partsOf(
      panel(162, 112, '13 sts x 7.5 rows = 4 in')
        .replaceAll('sc', 'dc')
        .replace('Sc', 'Dc')
        .replace('Ch 163', 'Ch 164')
        .replace('2nd ch', '3rd ch')
        .replace('Ch 1, dc', 'Ch 2, dc'),
    );
    expect(inches(parts[0]!.measures.wide!)).toBeCloseTo(49.85, 2);
    expect(inches(parts[0]!.measures.long!)).toBeCloseTo(59.73, 2);
    expect(shortFigure(parts[0]!.measures.wide!, 'us')).toBe('50 in');
    expect(shortFigure(parts[0]!.measures.long!, 'us')).toBe('60 in');
  });
});

describe('bags and small things', () => {
  test('a knot bag of 18 in around and 8 in high (Z16) is 9 in as it lies', () => {
    const { parts } = partsOf(tube(72, 32, '16 sts x 16 rnds = 4 in'));
    const { around, flat, high } = parts[0]!.measures;
    expect([around!, flat!, high!].map(inches)).toEqual([
      expect.closeTo(18, 6),
      expect.closeTo(9, 6),
      expect.closeTo(8, 6),
    ]);
  });

  test('our pot holder is 18 to 20 cm across, as pot holders are (common practice)', () => {
    const { parts } = partsOf(readFileSync('examples/kettle-hot-pad.pattern.md', 'utf8'));
    const { value } = rounded(parts[0]!.measures.across!, 'cm');
    expect(value).toBeGreaterThanOrEqual(18);
    expect(value).toBeLessThanOrEqual(20);
  });

  test('our bag hangs from straps of a hand-held drop, 10 to 15 cm (common practice)', () => {
    const { parts } = partsOf(readFileSync('examples/low-tide-errand-bag.pattern.md', 'utf8'));
    const { strap, opening } = parts.find(({ form }) => form === 'straps')!.measures;
    // Strap length is twice the drop and the spread between its ends.
    const drop = (strap!.mm - opening!.mm) / 2;
    expect(drop).toBeGreaterThanOrEqual(100);
    expect(drop).toBeLessThanOrEqual(150);
  });
});
