/**
 * How far apart two letters stand. Each row of boxes has a gap between the two shapes; so has each
 * row with the rows next to it, since boxes that meet at a corner read as joined. Letters whose
 * nearest boxes lie far apart, such as L and T, are drawn together until the nearest gap is the
 * space asked for, and no further than `mostKern`.
 */
import { isFilled } from './boxes.ts';
import type { Glyph } from './glyph.ts';

export interface Kerning {
  /** Open boxes wanted between neighbours. */
  readonly space: number;
  /** Boxes that a letter may be drawn in at most. */
  readonly mostKern: number;
}

/** Open columns from the right side of `left` to the left side of `right`; negative where they interlock. */
export function columnsBetween(left: Glyph, right: Glyph, { space, mostKern }: Kerning): number {
  // On a slant, as from the arm of a T to the shoulder of an A, a box less looks as wide.
  const nearest = nearestGap(left, right, space >= 2 ? 1 : 0);
  // Shapes that never face each other, such as an accent over nothing, keep the plain space.
  if (nearest === Number.POSITIVE_INFINITY) return space;
  return space - Math.min(nearest, mostKern);
}

/**
 * The smallest gap over all rows, and between each row and the next, when the sides of both letters
 * touch; endless for shapes that never face each other. `slant` is added to gaps from row to next row.
 */
export function nearestGap(left: Glyph, right: Glyph, slant = 0): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let y = 0; y < left.boxes.height; y++) {
    const own = openAtRight(left, y);
    if (own === null) continue;
    for (const step of [-1, 0, 1]) {
      const other = openAtLeft(right, y - left.above + right.above + step);
      if (other !== null) nearest = Math.min(nearest, own + other + (step === 0 ? 0 : slant));
    }
  }
  return nearest;
}

/** Open boxes at the end of a row; `null` for a row without a filled box. */
function openAtRight({ boxes }: Glyph, y: number): number | null {
  for (let x = boxes.width - 1; x >= 0; x--) if (isFilled(boxes, x, y)) return boxes.width - 1 - x;
  return null;
}

function openAtLeft({ boxes }: Glyph, y: number): number | null {
  for (let x = 0; x < boxes.width; x++) if (isFilled(boxes, x, y)) return x;
  return null;
}
