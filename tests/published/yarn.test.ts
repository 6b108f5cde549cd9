/**
 * Yarn figures that others have measured. E1: twenty stitches and rows in bulky yarn, weighed
 * (Interweave). E2: strips and squares in worsted (a technical blog). E5: a blanket of 13 stitches
 * and 7.5 rows to 4 in (a craft page). E7: a bulky single crochet (a yarn vendor).
 */
import { describe, expect, test } from 'vitest';
import { yarnPerStitch } from '../../src/figures/calibrate.ts';
import { wholeBalls } from '../../src/figures/yarn-need.ts';
import { metresPerSc, PATH_SPREAD, ratioOf } from '../../src/figures/yarn-path.ts';

const INCH = 25.4;
const had = { how: 'swatch', because: '', spread: 0 } as const;
const gauge = (widthMm: number, heightMm: number) => ({
  fabric: 'sc',
  stitchWidthMm: widthMm,
  rowHeightMm: heightMm,
  width: had,
  height: had,
  ...had,
});

describe('yarn for a stitch', () => {
  test('hdc against sc: 1.474 by weight (E1), 1.481 by a row (E2)', () => {
    expect(ratioOf('w1h') / (28 / 19)).toBeCloseTo(1, 1);
    expect(ratioOf('w1h') / (78.5 / 53)).toBeCloseTo(1, 2);
  });

  test('dc against sc: 1.925 by a row (E2)', () => {
    expect(ratioOf('w1') / (102 / 53)).toBeCloseTo(1, 2);
  });

  test('a chain against sc: 5.1 and 10.6 in to an inch of width (E2)', () => {
    expect(ratioOf('chain') / (5.1 / 10.6)).toBeCloseTo(1, 2);
  });

  test('the model lies within twice its spread of a bulky sc: 2.75 in at 10 to 4 in (E7)', () => {
    const width = (4 * INCH) / 10;
    const model = metresPerSc(gauge(width, 0.92 * width)) * 1000;
    expect(Math.abs(Math.log(model / (2.75 * INCH)))).toBeLessThan(2 * PATH_SPREAD);
  });

  test('and of a row of worsted: 10.6 in to an inch of width (E2)', () => {
    const model = metresPerSc(gauge(INCH, 0.92 * INCH)) * 1000;
    expect(Math.abs(Math.log(model / (10.6 * INCH)))).toBeLessThan(2 * PATH_SPREAD);
  });

  test('weighed swatches of E1 give back their own weights', () => {
    // 400 stitches of each; a gram of this yarn taken as a metre, since only ratios matter.
    const per = yarnPerStitch(0.06, [
      { amounts: new Map([['w0', 400]]), metres: 19 },
      { amounts: new Map([['w1h', 400]]), metres: 28 },
    ]);
    expect(400 * per.metresOf('w0')).toBeCloseTo(19, 0);
    expect(400 * per.metresOf('w1h')).toBeCloseTo(28, 0);
    expect(per.spread).toBeLessThan(0.06);
  });

  test('one weighed swatch moves all stitches alike', () => {
    const per = yarnPerStitch(0.1, [{ amounts: new Map([['w0', 100]]), metres: 8 }]);
    expect(per.metresOf('w0')).toBeCloseTo(0.08, 9);
    expect(per.metresOf('w1')).toBeCloseTo(0.08 * ratioOf('w1'), 9);
  });
});

describe('a blanket of 50 x 60 in at 13 stitches and 7.5 rows to 4 in (E5)', () => {
  test('has 162 stitches in 112 rows: 18,144', () => {
    const across = Math.floor((50 * 13) / 4);
    const rows = Math.floor((60 * 7.5) / 4);
    expect([across, rows, across * rows]).toEqual([162, 112, 18_144]);
  });
});

describe('whole balls', () => {
  test('are rounded up, with one more where a twentieth or less would be left', () => {
    expect(wholeBalls(200, 110)).toBe(2);
    expect(wholeBalls(215, 110)).toBe(3);
    expect(wholeBalls(221, 110)).toBe(3);
    expect(wholeBalls(10, 110)).toBe(1);
  });

  test('never fall when more is needed', () => {
    let last = 0;
    for (let metres = 1; metres < 2000; metres += 7) {
      const balls = wholeBalls(metres, 85);
      expect(balls).toBeGreaterThanOrEqual(last);
      last = balls;
    }
  });
});
