/**
 * A quick picture of an outline: a box is filled where its middle lies inside. For measuring on fine
 * boxes only; what is worked goes by exact area (`coverage.ts`).
 */
import { type Boxes, openBoxes } from './boxes.ts';
import type { Contour } from './outline.ts';

/** Where a contour crosses a row's middle, and which way: 1 down, -1 up. */
interface Crossing {
  readonly x: number;
  readonly turn: 1 | -1;
}

export function sampledBoxes(contours: readonly Contour[], width: number, height: number): Boxes {
  const rows = Array.from({ length: height }, (): Crossing[] => []);
  for (const contour of contours) {
    for (const [i, a] of contour.entries()) {
      const b = contour[(i + 1) % contour.length]!;
      const [upper, lower] = a.y < b.y ? [a, b] : [b, a];
      const slope = (lower.x - upper.x) / (lower.y - upper.y);
      const turn = a.y < b.y ? 1 : -1;
      const last = Math.min(height, Math.ceil(lower.y - 0.5));
      for (let y = Math.max(0, Math.ceil(upper.y - 0.5)); y < last; y++) {
        rows[y]!.push({ x: upper.x + (y + 0.5 - upper.y) * slope, turn });
      }
    }
  }
  const boxes = openBoxes(width, height);
  for (const [y, crossings] of rows.entries()) {
    fillRow(boxes.filled.subarray(y * width, (y + 1) * width), crossings);
  }
  return boxes;
}

/** Fills between the crossing at which the outline begins and the one at which it ends. */
function fillRow(row: Uint8Array, crossings: Crossing[]): void {
  crossings.sort((a, b) => a.x - b.x);
  let winding = 0;
  for (const [i, { x, turn }] of crossings.entries()) {
    winding += turn;
    if (winding === 0) continue;
    const from = Math.max(0, Math.ceil(x - 0.5));
    row.fill(1, from, Math.max(from, Math.ceil((crossings[i + 1]?.x ?? x) - 0.5)));
  }
}
