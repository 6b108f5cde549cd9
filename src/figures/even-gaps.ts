/** Shares that are as even as whole numbers allow. */

/**
 * `n` gaps that sum to `total`, each the floor or the ceiling of the mean, and any run of k
 * neighbours no more than one off any other run of k: a balanced word, drawn as Bresenham (1965)
 * draws a straight line.
 */
const evenGaps = (total: number, n: number): readonly number[] =>
  Array.from(
    { length: n },
    (_, at) => Math.floor(((at + 1) * total) / n) - Math.floor((at * total) / n),
  );

/** Where in its gap the round begins: in the middle, or a quarter in from either side. */
export type Shift = 'middle' | 'early' | 'late';

const SHARE: Readonly<Record<Shift, number>> = { middle: 1 / 2, early: 1 / 4, late: 3 / 4 };

/**
 * The plain stitches before, between and after `n` places of shaping in a round or row: n + 1 numbers.
 * The gap that holds the join is cut so that both its ends have a stitch where it has two.
 */
export function cutGaps(total: number, n: number, shift: Shift): readonly number[] {
  const gaps = [...evenGaps(total, n)];
  // The largest gap is last in a balanced word of this form, so it is the one to cut.
  const wrap = gaps.pop() ?? 0;
  const least = wrap >= 2 ? 1 : 0;
  const before = Math.min(wrap - least, Math.max(least, Math.round(wrap * SHARE[shift])));
  return [before, ...gaps, wrap - before];
}
