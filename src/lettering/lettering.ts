/** What lettering gives: the grid, and which letter stands where in it. No algorithm here. */
import type { Grid } from '../filet/index.ts';
import type { Span } from '../source/index.ts';

/** How much of each box an outline or a tone covers, 0 to 1; row by row from the top left. */
export interface Coverage {
  readonly width: number;
  readonly height: number;
  readonly shares: Float64Array;
  /** A box is filled from this share on. */
  readonly threshold: number;
}

/** One letter in the grid; its span is counted in the words asked for. */
export interface PlacedLetter extends Span {
  readonly sign: string;
  /** Corner at the top left and size, in boxes of the grid. */
  readonly column: number;
  readonly row: number;
  readonly width: number;
  readonly height: number;
}

export interface Lettering {
  readonly grid: Grid;
  /** In the order of the words. */
  readonly letters: readonly PlacedLetter[];
  /** Of an outline font; `null` for our own alphabets, whose boxes are drawn whole. */
  readonly coverage: Coverage | null;
}
