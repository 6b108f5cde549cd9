/**
 * How much of each box a polygon covers: exact area, by bands. The plane is cut at every height at
 * which an edge begins, ends, crosses another or meets a line between rows. Inside such a band no two
 * edges cross, so from left to right each edge enters or leaves the shape, and the shape is a row of
 * trapezoids. Overlapping contours are covered once (non-zero winding, as font formats have it).
 */
import type { Contour } from './outline.ts';

/** A slanting or upright edge, its upper end first; `turn` is 1 if the contour runs down along it. */
interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly turn: 1 | -1;
}

/** Shares from 0 to 1, row by row from the top left; what lies outside of the field is left out. */
export function coverageOf(
  contours: readonly Contour[],
  width: number,
  height: number,
): Float64Array {
  const edges = edgesOf(contours).sort((a, b) => a.y0 - b.y0);
  const cuts = cutsOf(edges, height);
  const shares = new Float64Array(width * height);
  // What an edge adds to all boxes right of those that it runs through.
  const steps = new Float64Array((width + 1) * height);
  let active: Edge[] = [];
  let next = 0;
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [top, bottom] = [cuts[i]!, cuts[i + 1]!];
    active = active.filter((edge) => edge.y1 > top);
    for (; next < edges.length && edges[next]!.y0 <= top; next++) {
      if (edges[next]!.y1 > top) active.push(edges[next]!);
    }
    const row = Math.floor((top + bottom) / 2);
    if (row < 0 || row >= height) continue;
    const field = { shares: shares.subarray(row * width, (row + 1) * width), width };
    addBand(active, { top, bottom }, field, steps.subarray(row * (width + 1)));
  }
  return summed(shares, steps, width, height);
}

function edgesOf(contours: readonly Contour[]): Edge[] {
  return contours.flatMap((contour) =>
    contour.flatMap((a, i): Edge[] => {
      const b = contour[(i + 1) % contour.length]!;
      if (a.y === b.y) return [];
      return a.y < b.y
        ? [{ x0: a.x, y0: a.y, x1: b.x, y1: b.y, turn: 1 }]
        : [{ x0: b.x, y0: b.y, x1: a.x, y1: a.y, turn: -1 }];
    }),
  );
}

/** The heights at which bands begin and end, each once, from the top down. */
function cutsOf(edges: readonly Edge[], height: number): number[] {
  const cuts: number[] = [];
  for (let y = 0; y <= height; y++) cuts.push(y);
  for (const [i, a] of edges.entries()) {
    cuts.push(a.y0, a.y1);
    // Edges are sorted by their upper ends, so all that can cross this one follow until it ends.
    for (let j = i + 1; j < edges.length && edges[j]!.y0 < a.y1; j++) {
      const y = crossing(a, edges[j]!);
      if (y !== null) cuts.push(y);
    }
  }
  return [...new Set(cuts)].sort((a, b) => a - b);
}

/** The height at which two edges cross; `null` if they do not, or lie along each other. */
function crossing(a: Edge, b: Edge): number | null {
  const [slopeA, slopeB] = [slopeOf(a), slopeOf(b)];
  if (slopeA === slopeB) return null;
  const y = (b.x0 - a.x0 + slopeA * a.y0 - slopeB * b.y0) / (slopeA - slopeB);
  return y > Math.max(a.y0, b.y0) && y < Math.min(a.y1, b.y1) ? y : null;
}

const slopeOf = ({ x0, y0, x1, y1 }: Edge): number => (x1 - x0) / (y1 - y0);

const xAt = (edge: Edge, y: number): number => {
  if (y === edge.y1) return edge.x1;
  return edge.x0 + (y - edge.y0) * slopeOf(edge);
};

interface Band {
  readonly top: number;
  readonly bottom: number;
}

interface RowField {
  readonly shares: Float64Array;
  readonly width: number;
}

function addBand(active: readonly Edge[], band: Band, field: RowField, steps: Float64Array): void {
  const deep = band.bottom - band.top;
  const sides = active
    .map((edge) => ({ a: xAt(edge, band.top), b: xAt(edge, band.bottom), turn: edge.turn }))
    .sort((p, q) => p.a + p.b - q.a - q.b);
  let winding = 0;
  for (const { a, b, turn } of sides) {
    const before = winding;
    winding += turn;
    if (before === 0) addSide({ a, b, deep, sign: 1 }, field, steps);
    else if (winding === 0) addSide({ a, b, deep, sign: -1 }, field, steps);
  }
}

/** A side of the shape inside a band: at `a` above and `b` below, `sign` 1 where the shape begins. */
interface Side {
  readonly a: number;
  readonly b: number;
  readonly deep: number;
  readonly sign: 1 | -1;
}

function addSide(side: Side, { shares, width }: RowField, steps: Float64Array): void {
  const left = Math.min(side.a, side.b);
  const right = Math.max(side.a, side.b);
  const first = Math.max(0, Math.floor(left));
  const behind = Math.min(width, Math.max(first, Math.ceil(right)));
  let before = areaTo(first, left, right);
  for (let x = first; x < behind; x++) {
    const area = areaTo(x + 1, left, right);
    shares[x]! += side.sign * side.deep * (area - before);
    before = area;
  }
  steps[behind]! += side.sign * side.deep;
}

/** Area between an upright line at x and the side to its left, which runs from `left` to `right`; for a band of depth 1. */
function areaTo(x: number, left: number, right: number): number {
  if (x <= left) return 0;
  if (x >= right) return x - (left + right) / 2;
  return (x - left) ** 2 / (2 * (right - left));
}

function summed(
  shares: Float64Array,
  steps: Float64Array,
  width: number,
  height: number,
): Float64Array {
  for (let y = 0; y < height; y++) {
    let carried = 0;
    for (let x = 0; x < width; x++) {
      carried += steps[y * (width + 1) + x]!;
      const share = shares[y * width + x]! + carried;
      // Sums of many bands may stray from 0 and 1 by their last digits.
      shares[y * width + x] = Math.min(1, Math.max(0, Math.round(share * 1e9) / 1e9));
    }
  }
  return shares;
}
