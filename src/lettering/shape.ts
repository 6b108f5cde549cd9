/** What hangs together in a field of boxes: its pieces, and the counters inside them. */
import { type Boxes, isFilled } from './boxes.ts';

export interface Region {
  /** Indices of its boxes in the field. */
  readonly boxes: readonly number[];
  readonly touchesEdge: boolean;
}

/** edges: only boxes side by side or one above the other hang together; corners: those that meet at a corner too. */
export type Touch = 'edges' | 'corners';

/** The pieces of filled or of open boxes, from the top left. */
export function regionsOf(field: Boxes, kind: 'filled' | 'open', touch: Touch): Region[] {
  const wanted = kind === 'filled' ? 1 : 0;
  const seen = new Uint8Array(field.filled.length);
  const regions: Region[] = [];
  for (let at = 0; at < seen.length; at++) {
    if (seen[at] === 1 || field.filled[at] !== wanted) continue;
    regions.push(regionAt(field, at, seen, touch));
  }
  return regions;
}

function regionAt(field: Boxes, start: number, seen: Uint8Array, touch: Touch): Region {
  const { width, height, filled } = field;
  const boxes = [start];
  let touchesEdge = false;
  seen[start] = 1;
  for (let i = 0; i < boxes.length; i++) {
    const x = boxes[i]! % width;
    const y = Math.floor(boxes[i]! / width);
    if (x === 0 || y === 0 || x === width - 1 || y === height - 1) touchesEdge = true;
    for (const [dx, dy] of touch === 'edges' ? EDGES : CORNERS) {
      const [nx, ny] = [x + dx, y + dy];
      if (nx < 0 || ny < 0 || nx >= width || ny >= height) continue;
      const next = ny * width + nx;
      if (seen[next] === 1 || filled[next] !== filled[start]) continue;
      seen[next] = 1;
      boxes.push(next);
    }
  }
  return { boxes, touchesEdge };
}

const EDGES: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];
const CORNERS: readonly (readonly [number, number])[] = [
  ...EDGES,
  [1, 1],
  [1, -1],
  [-1, 1],
  [-1, -1],
];

/** Open regions that filled boxes shut in. */
export function countersOf(field: Boxes): Region[] {
  return regionsOf(field, 'open', 'edges').filter(({ touchesEdge }) => !touchesEdge);
}

/** Places where two filled boxes meet only at a corner: the column and row of the corner's upper left box. */
export function cornerTouches(field: Boxes): { readonly x: number; readonly y: number }[] {
  const found: { x: number; y: number }[] = [];
  for (let y = 0; y + 1 < field.height; y++) {
    for (let x = 0; x + 1 < field.width; x++) {
      const falling = isFilled(field, x, y) && isFilled(field, x + 1, y + 1);
      const rising = isFilled(field, x + 1, y) && isFilled(field, x, y + 1);
      if (falling !== rising && countOf(field, x, y) === 2) found.push({ x, y });
    }
  }
  return found;
}

function countOf(field: Boxes, x: number, y: number): number {
  const boxes = [isFilled(field, x, y), isFilled(field, x + 1, y)];
  boxes.push(isFilled(field, x, y + 1), isFilled(field, x + 1, y + 1));
  return boxes.filter(Boolean).length;
}
