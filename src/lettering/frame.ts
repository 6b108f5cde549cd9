/**
 * Open boxes around a design, and borders. A border runs from each corner to the middle of its side,
 * so it closes and is symmetrical whatever the number of boxes.
 */
import { type Boxes, openBoxes, stamp } from './boxes.ts';

export type Border = 'none' | 'line' | 'double' | 'dashes' | 'dots' | 'steps' | 'points';

/** The names, in the order in which they are offered. */
export const BORDERS: readonly Border[] = [
  'none',
  'line',
  'double',
  'dashes',
  'dots',
  'steps',
  'points',
];

export interface Frame {
  /** Open boxes around the design on all sides, inside the border. */
  readonly margin: number;
  readonly border: Border;
}

/**
 * Whether a box of the border is filled: `depth` counted from the outer edge, `along` from the
 * nearer corner.
 */
type Motif = (depth: number, along: number) => boolean;

const MOTIFS: Readonly<Record<Border, { readonly deep: number; readonly isFilled: Motif }>> = {
  none: { deep: 0, isFilled: () => false },
  line: { deep: 1, isFilled: () => true },
  double: { deep: 3, isFilled: (depth) => depth !== 1 },
  dashes: { deep: 1, isFilled: (_, along) => along % 4 !== 3 },
  dots: { deep: 1, isFilled: (_, along) => along % 2 === 0 },
  steps: { deep: 2, isFilled: (depth, along) => depth === 0 || along % 4 < 2 },
  // Teeth of three boxes and one, an open box between them at the root.
  points: {
    deep: 3,
    isFilled: (depth, along) => depth === 0 || (depth === 1 ? along % 4 > 0 : along % 4 === 2),
  },
};

/** Boxes that a frame adds on each side. */
export const frameWidth = ({ margin, border }: Frame): number => margin + MOTIFS[border].deep;

/** The design in its frame. */
export function framed(design: Boxes, frame: Frame): Boxes {
  const wide = frameWidth(frame);
  const all = openBoxes(design.width + 2 * wide, design.height + 2 * wide);
  const { deep, isFilled } = MOTIFS[frame.border];
  for (let y = 0; y < all.height; y++) {
    for (let x = 0; x < all.width; x++) {
      const [fromSide, fromEnd] = [nearer(x, all.width), nearer(y, all.height)];
      const depth = Math.min(fromSide, fromEnd);
      const along = Math.max(fromSide, fromEnd);
      if (depth < deep && isFilled(depth, along)) {
        all.filled[y * all.width + x] = 1;
      }
    }
  }
  stamp(all, design, wide, wide);
  return all;
}

const nearer = (at: number, length: number): number => Math.min(at, length - 1 - at);
