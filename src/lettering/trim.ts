/** Cuts off the open rows and columns around letters, which outlines reach into without filling them. */
import { isFilled, openBoxes, stamp } from './boxes.ts';
import type { Coverage } from './lettering.ts';
import type { Block } from './line.ts';

export interface Cut {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The smallest field that holds all filled boxes; the whole field where none is filled. */
export function cutOf({ boxes }: Block): Cut {
  let [left, top, right, bottom] = [boxes.width, boxes.height, -1, -1];
  for (let y = 0; y < boxes.height; y++) {
    for (let x = 0; x < boxes.width; x++) {
      if (!isFilled(boxes, x, y)) continue;
      [left, right] = [Math.min(left, x), Math.max(right, x)];
      [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
    }
  }
  if (right < 0) return { x: 0, y: 0, width: boxes.width, height: boxes.height };
  return { x: left, y: top, width: right - left + 1, height: bottom - top + 1 };
}

export function cutBlock({ boxes, placed }: Block, cut: Cut): Block {
  const small = openBoxes(cut.width, cut.height);
  stamp(small, boxes, -cut.x, -cut.y);
  const moved = placed.map((piece) => ({
    ...piece,
    column: piece.column - cut.x,
    row: piece.row - cut.y,
  }));
  return { boxes: small, placed: moved };
}

export function cutCoverage(coverage: Coverage, cut: Cut): Coverage {
  const shares = new Float64Array(cut.width * cut.height);
  for (let y = 0; y < cut.height; y++) {
    const from = (cut.y + y) * coverage.width + cut.x;
    shares.set(coverage.shares.subarray(from, from + cut.width), y * cut.width);
  }
  return { ...coverage, width: cut.width, height: cut.height, shares };
}
