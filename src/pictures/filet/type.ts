/** Sizes of type on charts in mm: none under 7 pt, so that prints can be read. */
import { points } from '../text.ts';

export const TYPE: {
  readonly titleMm: number;
  readonly textMm: number;
  readonly numberMm: number;
  readonly smallMm: number;
  /** Of lines of text. */
  readonly leading: number;
} = {
  titleMm: points(15),
  textMm: points(9),
  numberMm: points(8),
  smallMm: points(7.5),
  leading: 1.3,
};
