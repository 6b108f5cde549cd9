/** Places and counts of a chart, against sums worked out by hand. */
import { describe, expect, test } from 'vitest';
import { filledMiddle, fitChart } from '../../src/filet/index.ts';

const bag = {
  boxes: 52,
  gap: 1,
  closing: 'round',
  width: 21,
  filledMiddle: null,
  margin: 2,
} as const;

describe('a chart on a piece', () => {
  // Worked out by hand: 52 boxes of 2 are 104 stitches, the front 52; boxes 3-23 show from stitch 5
  // to 47, so 4 stand before and 5 after; one box on it would be 6 and 3.
  test('the bag: half a stitch from the middle is the best there is', () => {
    const { exact, frontStitches, fits } = fitChart(bag);
    expect(frontStitches).toBe(52);
    expect(exact).toEqual([{ firstBox: 3, lastBox: 23, before: 4, after: 5 }]);
    // Posts are shared: half a stitch is no fault of the count, so it fits.
    expect(fits).toBe(true);
  });

  test('flat: as many before as after, where the boxes allow it', () => {
    const flat = { ...bag, closing: 'flat', boxes: 31, gap: 2, margin: 3 } as const;
    expect(fitChart(flat)).toMatchObject({
      exact: [{ firstBox: 6, lastBox: 26, before: 15, after: 15 }],
      fits: true,
      below: 29,
      above: 33,
    });
  });

  test('flat, odd rest: two places are alike, and both are told', () => {
    const flat = { ...bag, closing: 'flat', boxes: 30, gap: 2 } as const;
    expect(fitChart(flat).exact.map(({ firstBox }) => firstBox)).toEqual([5, 6]);
  });

  test('too wide: no place, and the least count that holds it with margins and two faces', () => {
    const wide = fitChart({ ...bag, width: 30 });
    expect(wide).toMatchObject({ exact: [], below: null, above: 68 });
  });

  test('by eye: what is filled stands in the middle, not the edges', () => {
    // Filled boxes at the far end of the order of work: the chart moves towards the start.
    const rows = [['filled', 'open', 'open', 'open']] as const;
    expect(filledMiddle(rows)).toBe(3.5);
    const seen = fitChart({ ...bag, closing: 'flat', boxes: 9, width: 4, filledMiddle: 3.5 });
    // 9 boxes of 2 and a post are 19 stitches, the middle is 9.5; 2 + 3.5 x 2 + 0.5 is 9.5.
    expect(seen.byEye.map(({ firstBox }) => firstBox)).toEqual([2]);
  });

  // 104 stitches, the front 78 to 130, that is 26 across the join: box 42 begins at stitch 82.
  test('in the round whose start lies in the middle of the front, it runs across the join', () => {
    expect(fitChart({ ...bag, frontMiddle: 0 }).exact).toEqual([
      { firstBox: 42, lastBox: 62, before: 4, after: 5 },
    ]);
  });

  test('by eye: left hands meet the chart from its other edge', () => {
    const rows = [['filled', 'open', 'open', 'open']] as const;
    expect(filledMiddle(rows, 'left')).toBe(0.5);
  });
});
