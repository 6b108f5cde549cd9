/** The mean tone of each box, by exact area: a pixel that two boxes share counts in each by its part. */

export interface Field {
  readonly width: number;
  readonly height: number;
}

/** One box of a row or column: the pixels it covers and their parts, `weights[i]` of pixel `first + i`. */
interface Stretch {
  readonly first: number;
  readonly weights: readonly number[];
}

/** Means of `tones` (a field of `pixels`) over `boxes`, row by row from the top left. */
export function meansOf(tones: Uint8Array, pixels: Field, boxes: Field): Float64Array {
  const columns = stretchesOf(pixels.width, boxes.width);
  const rows = stretchesOf(pixels.height, boxes.height);
  const means = new Float64Array(boxes.width * boxes.height);
  const line = new Float64Array(pixels.width);
  for (const [y, row] of rows.entries()) {
    line.fill(0);
    for (const [i, weight] of row.weights.entries()) {
      const from = (row.first + i) * pixels.width;
      for (let x = 0; x < pixels.width; x++) line[x]! += weight * tones[from + x]!;
    }
    for (const [x, { first, weights }] of columns.entries()) {
      let sum = 0;
      for (const [i, weight] of weights.entries()) sum += weight * line[first + i]!;
      means[y * boxes.width + x] = sum;
    }
  }
  return means;
}

/** Pixels cut into boxes of equal length; the weights of a box sum to 1. */
function stretchesOf(pixels: number, boxes: number): Stretch[] {
  const length = pixels / boxes;
  return Array.from({ length: boxes }, (_, box) => {
    const [from, to] = [(box * pixels) / boxes, ((box + 1) * pixels) / boxes];
    const first = Math.min(pixels - 1, Math.floor(from));
    const behind = Math.max(first + 1, Math.min(pixels, Math.ceil(to)));
    const weights = Array.from({ length: behind - first }, (_, i) => {
      const part = Math.min(to, first + i + 1) - Math.max(from, first + i);
      return Math.max(0, part) / length;
    });
    return { first, weights };
  });
}
