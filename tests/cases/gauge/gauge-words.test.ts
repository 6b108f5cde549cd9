/** Gauges as people write them. Widths and heights in millimetres of one unit. Common practice. */
import { describe, expect, test } from 'vitest';
import { gaugeFromWords } from '../../../src/gauge/index.ts';

function read(words: string, terms: 'US' | 'UK' = 'US') {
  const found = gaugeFromWords(words, terms);
  if (!found) return null;
  const { across, up } = found;
  const wide = across ? `${(across.mm / across.n).toFixed(3)} a ${across.unit}` : '-';
  return [wide, up ? `${(up.mm / up.n).toFixed(3)} in ${up.worked}` : '-', found.fabric];
}

describe('a gauge in words', () => {
  test.each([
    ['16 sts x 18 rnds = 10 cm', ['6.250 a stitch', '5.556 in rounds', null]],
    ['8 boxes x 7.5 rnds = 10 cm', ['12.500 a box', '13.333 in rounds', 'mesh']],
    ['16 sts and 18 rows = 4 in in sc', ['6.350 a stitch', '5.644 in rows', 'sc']],
    ['Gauge: 12 hdc = 4", 8 rows = 3½"', ['8.467 a stitch', '11.112 in rows', 'hdc']],
    ['14 dc x 8 rows = 4" [10 cm]', ['7.257 a stitch', '12.700 in rows', 'dc']],
    ['4 sts = 1 inch; 4 rows = 1 inch', ['6.350 a stitch', '6.350 in rows', null]],
    ['10 cm = 16 sts and 18 rows', ['6.250 a stitch', '5.556 in rows', null]],
    ['17 sts x 20 rows over 12.5 x 12 cm', ['7.353 a stitch', '6.000 in rows', null]],
    ['16 single crochet and 18 rows to 10 cm square', ['6.250 a stitch', '5.556 in rows', 'single crochet']],
    ['14-16 sts = 10 cm', ['6.667 a stitch', '-', null]],
    ['Rnds 1-3 = 9 cm across', ['-', '15.000 in rounds', null]],
    ['12 sts x 6.5 rows = 10 cm, blocked', ['8.333 a stitch', '15.385 in rows', null]],
    ['16 sts x 18 rows = 4 in with 5 mm hook', ['6.350 a stitch', '5.644 in rows', null]],
    ['25 sts = 4.5 in', ['4.572 a stitch', '-', null]],
  ])('%s', (words, expected) => {
    expect(read(words)).toEqual(expected);
  });

  test('a UK double crochet is a US single one', () => {
    expect(read('16 double crochet = 10 cm', 'UK')).toEqual(['6.250 a stitch', '-', 'double crochet']);
  });

  test.each(['', 'to be tested', '16 sts', '10 cm', 'use a 5 mm hook'])('none: "%s"', (words) => {
    expect(gaugeFromWords(words)).toBeNull();
  });

  test('tells the state and the size of the swatch', () => {
    const found = gaugeFromWords('16 sts x 18 rows = 10 cm, swatch 12 x 13 cm, before blocking');
    expect(found).toMatchObject({ blocking: 'before', swatch: { widthMm: 120, heightMm: 130 } });
    expect(found?.across).toEqual({ n: 16, unit: 'stitch', mm: 100 });
  });
});
