/** Rows that work nothing: a foundation chain, a ring, yarn joined, fastening off. */
import type { Hands } from './hands.ts';
import type { RowResult } from './row.ts';
import type { RowShape } from './shape.ts';

/** Did the row leave the hands where they were, so that the next row begins there? */
export const isMoveless = (hands: Hands, shape: RowShape, result: RowResult): boolean =>
  (shape.idle || (shape.onlySlips && hands.pieces !== null)) &&
  hands.nodes.n === result.from &&
  result.tally.stitches === 0;
