/** Outlines as polygons: curves cut into straight pieces to a stated tolerance. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A closed line; the last point is joined to the first. Inside is what winds around, whichever way. */
export type Contour = readonly Point[];

/** One order of a drawn outline, as font files have them. */
export type Stroke =
  | { readonly type: 'M'; readonly x: number; readonly y: number }
  | { readonly type: 'L'; readonly x: number; readonly y: number }
  | {
      readonly type: 'Q';
      readonly x1: number;
      readonly y1: number;
      readonly x: number;
      readonly y: number;
    }
  | {
      readonly type: 'C';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly type: 'Z' };

/** A curve strays from its straight pieces by at most this, in boxes: a 256th of a box (ours). */
const TOLERANCE = 1 / 256;

/** Turns orders into polygons; `place` puts each point of the outline where it belongs, in boxes. */
export function contoursOf(strokes: readonly Stroke[], place: (point: Point) => Point): Contour[] {
  const contours: Point[][] = [];
  let open: Point[] = [];
  for (const stroke of strokes) {
    if (stroke.type === 'M' || stroke.type === 'Z') {
      if (open.length > 2) contours.push(open);
      open = stroke.type === 'M' ? [place(stroke)] : [];
      continue;
    }
    const from = open.at(-1);
    if (from === undefined) continue;
    open.push(...piecesOf(from, controlsOf(stroke).map(place)));
  }
  if (open.length > 2) contours.push(open);
  return contours;
}

function controlsOf(stroke: Exclude<Stroke, { type: 'M' | 'Z' }>): Point[] {
  const end = { x: stroke.x, y: stroke.y };
  if (stroke.type === 'L') return [end];
  const first = { x: stroke.x1, y: stroke.y1 };
  return stroke.type === 'Q' ? [first, end] : [first, { x: stroke.x2, y: stroke.y2 }, end];
}

/**
 * A Bezier curve of degree n strays from its chord by at most n(n-1)/8 times the largest second
 * difference of its control points; in k equal steps, by that over k squared (mathematics: the error
 * of linear interpolation is at most h²/8 times the second derivative).
 */
function piecesOf(from: Point, controls: readonly Point[]): Point[] {
  const points = [from, ...controls];
  const degree = controls.length;
  let bend = 0;
  for (let i = 2; i < points.length; i++) {
    const [a, b, c] = [points[i - 2]!, points[i - 1]!, points[i]!];
    bend = Math.max(bend, Math.abs(a.x - 2 * b.x + c.x) + Math.abs(a.y - 2 * b.y + c.y));
  }
  const stray = ((degree * (degree - 1)) / 8) * bend;
  const steps = Math.max(1, Math.min(MOST_STEPS, Math.ceil(Math.sqrt(stray / TOLERANCE))));
  return Array.from({ length: steps }, (_, i) => pointAt(points, (i + 1) / steps));
}

/** A curve of this many steps is larger than any letter; broken fonts ask for more. */
const MOST_STEPS = 512;

/** De Casteljau: halves, thirds and so on of the lines between control points. */
function pointAt(points: readonly Point[], t: number): Point {
  let row = points;
  while (row.length > 1) {
    row = row.slice(1).map((to, i) => {
      const at = row[i]!;
      return { x: at.x + (to.x - at.x) * t, y: at.y + (to.y - at.y) * t };
    });
  }
  return row[0]!;
}

/** The smallest rectangle around all points; all 0 where there are none. */
export function boundsOf(contours: readonly Contour[]): {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
} {
  let [left, right, top, bottom] = [0, 0, 0, 0];
  let isFirst = true;
  for (const { x, y } of contours.flat()) {
    left = isFirst ? x : Math.min(left, x);
    right = isFirst ? x : Math.max(right, x);
    top = isFirst ? y : Math.min(top, y);
    bottom = isFirst ? y : Math.max(bottom, y);
    isFirst = false;
  }
  return { left, right, top, bottom };
}
