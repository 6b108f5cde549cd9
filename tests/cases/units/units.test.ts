import { describe, expect, test } from 'vitest';
import {
  findLength,
  findWeight,
  length,
  lengthIn,
  printLength,
  roundedCm,
  roundedInches,
  roundedWeight,
  weight,
  weightIn,
} from '../../../src/units/index.ts';

describe('lengths', () => {
  test.each([
    ['until piece measures 20 cm from start', 200],
    ['8 in', 203.2],
    ['8 in wide', 203.2],
    ['8"', 203.2],
    ['8”', 203.2],
    ['7½ inches', 190.5],
    ['7 1/2 inches', 190.5],
    ['7-1/2"', 190.5],
    ['½ yd', 457.2],
    ['12in/30cm', 304.8],
    ['4mm', 4],
    ['3.5 mm hook', 3.5],
    ['7,5 cm', 75],
    ['110 m', 110_000],
    ['2 metres', 2000],
    ['a 10cm square', 100],
  ])('%s', (text, mm) => {
    expect(findLength(text)?.mm).toBeCloseTo(mm, 9);
  });

  test.each(['12 inside stitches', '5 mesh', 'sc in next 5 sts', '3 in 1', 'sc 3 in next st', '8 cmx', ''])(
    'no length in "%s"',
    (text) => {
      expect(findLength(text)).toBeNull();
    },
  );

  test('the span is that of the words', () => {
    const text = 'about 20 cm long';
    const found = findLength(text);
    expect(text.slice(found?.from, found?.to)).toBe('20 cm');
  });

  // International yard and pound agreement, 1959: 1 yd = 0.9144 m, so 1 in = 25.4 mm.
  test('inch and yard', () => {
    expect(length(1, 'in')).toBe(25.4);
    expect(lengthIn(length(36, 'in'), 'yd')).toBeCloseTo(1, 12);
  });

  test('rounding as printed: half centimetres, quarter inches', () => {
    expect(roundedCm(length(23.3, 'cm'))).toBe(23.5);
    expect(roundedCm(length(23.2, 'cm'))).toBe(23);
    expect(roundedInches(length(9.13, 'in'))).toBe(9.25);
    expect(printLength(length(235, 'mm'), 'cm')).toBe('23.5 cm');
    expect(printLength(length(235, 'mm'), 'in')).toBe('9¼ in');
    expect(printLength(length(0.5, 'in'), 'in')).toBe('½ in');
    expect(printLength(length(0, 'in'), 'in')).toBe('0 in');
  });
});

describe('weights', () => {
  test.each([
    ['50 g', 50],
    ['100g / 220m', 100],
    ['1¾ oz', 49.6116654],
    ['2 ounces', 56.69904625],
    ['0.1 kg', 100],
  ])('%s', (text, grams) => {
    expect(findWeight(text)?.grams).toBeCloseTo(grams, 6);
  });

  test('no weight without a unit', () => {
    expect(findWeight('3 granny squares')).toBeNull();
  });

  // 1 lb = 453.59237 g (agreement of 1959), and 16 oz are 1 lb.
  test('ounce', () => {
    expect(weight(16, 'oz')).toBeCloseTo(453.59237, 10);
    expect(weightIn(weight(3, 'oz'), 'oz')).toBeCloseTo(3, 12);
    expect(roundedWeight(weight(50, 'g'), 'oz')).toBe(1.75);
    expect(roundedWeight(weight(49.7, 'g'), 'g')).toBe(50);
  });
});
