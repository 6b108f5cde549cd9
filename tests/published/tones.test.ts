/** Thresholds and tones of traced pictures, against printed figures and arithmetic. */
import { describe, expect, test } from 'vitest';
import { meansOf } from '../../src/tracing/average.ts';
import { partTones } from '../../src/tracing/otsu.ts';
import { tonesOf } from '../../src/tracing/picture.ts';

/** Pixels of each level. */
const tones = (counts: readonly number[]): Uint8Array =>
  Uint8Array.from(counts.flatMap((n, level) => new Array<number>(n).fill(level)));

describe('the threshold of Otsu', () => {
  // A. Greensted, "Otsu Thresholding", The Lab Book Pages (2010): 36 pixels of six levels, best
  // threshold 3, variance within the classes 0.4909. Figures from memory, checked by hand.
  const counts = [8, 7, 2, 6, 9, 4];

  test('parts the six levels below 3', () => {
    expect(partTones(tones(counts)).tone).toBe(2.5);
  });

  test('leaves 0.4909 of variance within the classes', () => {
    const all = [...tones(counts)];
    const mean = all.reduce((sum, tone) => sum + tone, 0) / all.length;
    const variance = all.reduce((sum, tone) => sum + (tone - mean) ** 2, 0) / all.length;
    const { clearness } = partTones(tones(counts));
    expect(variance * (1 - clearness)).toBeCloseTo(0.4909, 4);
  });

  test('gives an even run of tones 3/4 (mathematics: 1 - (1/2)² for a uniform spread), black and white 1', () => {
    expect(partTones(tones(new Array(256).fill(4))).clearness).toBeCloseTo(0.75, 4);
    const half = Uint8Array.from({ length: 100 }, (_, i) => (i < 50 ? 0 : 255));
    expect(partTones(half)).toEqual({ tone: 127.5, clearness: 1 });
  });

  test('one tone has no parting', () => {
    expect(partTones(new Uint8Array(9).fill(80)).clearness).toBe(0);
  });
});

describe('tones', () => {
  const tone = (...rgba: number[]) =>
    tonesOf({ width: 1, height: 1, rgba: Uint8Array.from(rgba) }, 'white')[0];

  test('have the weights of Rec. ITU-R BT.709: 0.2126, 0.7152, 0.0722', () => {
    expect([tone(255, 0, 0, 255), tone(0, 255, 0, 255), tone(0, 0, 255, 255)]).toEqual([
      54, 182, 18,
    ]);
  });

  test('let the ground show through where the picture is transparent', () => {
    expect(tone(0, 0, 0, 0)).toBe(255);
    expect(tone(0, 0, 0, 128)).toBe(127);
    const clear = { width: 1, height: 1, rgba: Uint8Array.from([255, 255, 255, 0]) };
    expect(tonesOf(clear, 'black')[0]).toBe(0);
  });
});

describe('means of boxes', () => {
  test('count a shared pixel in each box by its part', () => {
    const means = meansOf(
      Uint8Array.from([0, 90, 255]),
      { width: 3, height: 1 },
      { width: 2, height: 1 },
    );
    expect(means[0]).toBeCloseTo((0 + 45) / 1.5, 9);
    expect(means[1]).toBeCloseTo((45 + 255) / 1.5, 9);
  });

  test('of a box smaller than a pixel are the pixel', () => {
    const means = meansOf(
      Uint8Array.from([10, 20]),
      { width: 2, height: 1 },
      { width: 5, height: 3 },
    );
    expect([...means.slice(0, 5)].map((mean) => Math.round(mean * 1e6) / 1e6)).toEqual([
      10, 10, 15, 20, 20,
    ]);
  });
});
