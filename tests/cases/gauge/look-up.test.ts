/** From a pattern's gauges to the size of a stitch or a box, and how it was had. */
import { describe, expect, test } from 'vitest';
import { boxSize, fabricGauge, plainGauge, putUpFromWords, readGauges } from '../../../src/gauge/index.ts';
import { readManuscript } from '../../../src/index.ts';

const gaugesOf = (...head: string[]) =>
  readGauges(readManuscript(['---', 'terms: US', ...head, '---', 'Ch 5.', ''].join('\n')).value);
const pasted = (text: string) => readGauges(readManuscript(text).value);

describe('a put-up', () => {
  test.each([
    ['50 g / 110 m', [50, 110]],
    ['110 m/50 g', [50, 110]],
    ['200 m to 100 g', [100, 200]],
    ['50 g balls, 110 m each', [50, 110]],
    ['about 400 m, 50 g / 110 m a ball', [50, 110]],
    ['100 g / 200 m (219 yd)', [100, 200]],
    ['200 m, about 2 balls of 50 g', null],
    ['50 g', null],
  ])('%s', (words, put) => {
    const ball = putUpFromWords(words);
    expect(ball && [ball.grams, ball.metres]).toEqual(put);
  });
});

describe('the size of a stitch', () => {
  const bag = gaugesOf('gauge:', '  sc: 16 sts x 18 rnds = 10 cm', '  mesh: 8 boxes x 7.5 rnds = 10 cm');

  test('is her own where she counted it', () => {
    const sc = fabricGauge(bag, 'sc');
    expect(sc).toMatchObject({ stitchWidthMm: 6.25, how: 'swatch' });
    expect(sc.rowHeightMm).toBeCloseTo(5.556, 3);
    expect(sc.spread).toBeGreaterThan(0.02);
    expect(sc.spread).toBeLessThan(0.04);
    expect(fabricGauge(bag, 'w0').stitchWidthMm).toBe(6.25);
  });

  test('of a fabric she did not count is estimated, and says so', () => {
    const hdc = fabricGauge(bag, 'hdc');
    expect(hdc.how).toBe('estimate');
    expect(hdc.because).toContain('No gauge in hdc is given');
    expect(hdc.rowHeightMm / fabricGauge(bag, 'sc').rowHeightMm).toBeCloseTo(1.5, 6);
  });

  test('rounds of a motif measured across are half as high together, as sure as a ruler is', () => {
    const square = pasted('US terms\nGauge: Rnds 1-3 = 9 cm across\n\nCh 4, join to form a ring.\nRnd 1: Ch 3, 11 dc in ring; join. (12 dc)');
    const dc = fabricGauge(square, 'dc');
    expect([dc.height.how, dc.rowHeightMm]).toEqual(['swatch', 15]);
    expect(dc.height.spread).toBeCloseTo(0.025, 6);
  });

  test('a gauge "in pattern" is that of the stitch that the pattern names most', () => {
    const text = '---\nterms: US\ngauge: { square: Rnds 1-3 = 9 cm across }\n---\nRnd 1: 12 dc in ring; join. (12 dc)';
    expect(fabricGauge(pasted(text), 'dc').rowHeightMm).toBe(15);
  });

  test('counted in pattern is that of every row, and tells a plain stitch by what the pattern names', () => {
    const text = '---\nterms: US\ngauge: 12 sts and 10 rows = 4 in in pattern\n---\nCh 22.\n\nRow 1: Sc in 2nd ch from hook, *dc in next ch, sc in next ch; rep from * across.\n\nRow 2: Ch 3, dc across.\n';
    const gauges = pasted(text);
    const [sc, dc] = ['sc', 'dc'].map((word) => fabricGauge(gauges, word));
    expect([sc!.rowHeightMm, dc!.rowHeightMm]).toEqual([10.16, 10.16]);
    expect(sc!.how).toBe('swatch');
    // Two sc and two dc are named: 1.5 of an sc high on the mean.
    expect(plainGauge(gauges, 'sc').rowHeightMm).toBeCloseTo(10.16 / 1.5, 6);
    expect(plainGauge(gauges, 'sc').how).toBe('estimate');
  });

  test('of a box is the counted one', () => {
    const box = boxSize(bag, { post: 'dc', gap: 1 });
    expect(box).toMatchObject({ widthMm: 12.5, how: 'swatch' });
    expect(box.heightMm).toBeCloseTo(13.333, 3);
  });

  test('of a box without a mesh gauge comes from its post, marked as an estimate', () => {
    const dc = gaugesOf('gauge:', '  dc: 14 sts x 7.5 rnds = 10 cm');
    const box = boxSize(dc, { post: 'dc', gap: 2 });
    expect(box.how).toBe('estimate');
    expect(box.widthMm).toBeCloseTo(300 / 14, 6);
  });

  test('from several swatches is their mean, with a spread from how they differ', () => {
    const three = gaugesOf('gauge:', '  sc: [16 sts = 10 cm, 15 sts = 10 cm, 17 sts = 10 cm]');
    const { stitchWidthMm, width } = fabricGauge(three, 'sc');
    expect(stitchWidthMm).toBeCloseTo((100 / 16 + 100 / 15 + 100 / 17) / 3, 9);
    expect(width.spread).toBeGreaterThan(0.1);
  });

  test('is taken after blocking where both are told', () => {
    const both = gaugesOf('gauge:', '  sc:', '    before: 17 sts = 10 cm', '    after: 16 sts = 10 cm');
    expect(fabricGauge(both, 'sc').stitchWidthMm).toBe(6.25);
  });

  test('without any gauge is the middle of the council range of the yarn', () => {
    const yarn = gaugesOf('yarn: { A: { weight: 3, ball: 50 g / 110 m } }');
    const sc = fabricGauge(yarn, 'sc');
    expect(sc.how).toBe('estimate');
    expect(sc.stitchWidthMm).toBeCloseTo(101.6 / 14.5, 6);
  });

  test('without gauge and yarn is assumed', () => {
    expect(fabricGauge(gaugesOf('title: x'), 'sc').how).toBe('assumed');
  });

  test('is found in the words of a pasted pattern', () => {
    const text = 'Scarf\n\nGauge: 16 sts and 18 rows = 4 in in sc\n\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20)\n';
    expect(fabricGauge(pasted(text), 'sc').stitchWidthMm).toBeCloseTo(6.35, 6);
  });

  test('of a gauge that names no stitch is that of the stitch most named', () => {
    const text = 'Scarf\n\nGauge: 12 sts = 4 in\n\nCh 21.\nRow 1: Hdc in 3rd ch from hook, hdc in each ch across. (20 hdc)\n';
    expect(fabricGauge(pasted(text), 'hdc')).toMatchObject({ how: 'estimate' });
    expect(fabricGauge(pasted(text), 'hdc').width.how).toBe('swatch');
  });
});
