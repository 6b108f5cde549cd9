/** A letter as boxes, with where it stands on its line. */
import type { Boxes } from './boxes.ts';

export interface Glyph {
  /** The sign as drawn: a capital where an alphabet has no small letters. */
  readonly sign: string;
  readonly boxes: Boxes;
  /** Rows that stand on the line; all further rows hang below it. */
  readonly above: number;
}
