/** Outlines of what opens from a start: motifs with corners, and shawls as their rows lie. */
import { CORNERS, type MotifForm, type PartSize } from '../../figures/index.ts';
import { cos, PI, sin, sqrt, tan } from '../../units/index.ts';
import type { Mark, Point } from '../drawing.ts';
import { INNER, polygon, type Said, type Sketch, titleOf } from './sketch.ts';

interface Outline {
  readonly corners: readonly Point[];
  readonly widthMm: number;
  readonly heightMm: number;
  /** Where the piece starts. */
  readonly start: Point;
}

/** Moves corners so that their box begins at nought. */
function boxed(corners: readonly Point[], start: Point): Outline {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const moved = ([x, y]: Point): Point => [x - left, y - top];
  return {
    corners: corners.map(moved),
    widthMm: Math.max(...xs) - left,
    heightMm: Math.max(...ys) - top,
    start: moved(start),
  };
}

/** A motif of three, five or six sides, one of them at the bottom. */
export function motifSketch(part: PartSize, form: MotifForm, said: Said): Sketch | null {
  const { side, across } = part.measures;
  const toSide = part.measures['middle to edge'];
  const middle = toSide?.mm ?? (across ? across.mm / 2 : null);
  if (!side || middle === null) return null;
  const corners = CORNERS[form];
  const radius = middle / cos(PI / corners);
  const outline = boxed(
    Array.from({ length: corners }, (_, at): Point => {
      const angle = ((2 * at + 1) * PI) / corners;
      return [radius * sin(angle), radius * cos(angle)];
    }),
    [0, 0],
  );
  const { widthMm, heightMm, start } = outline;
  const lines = across
    ? [`${said(across)} from side to side`]
    : [`${said(toSide!)} from the middle to a side`];
  return {
    title: titleOf(part),
    widthMm,
    heightMm,
    marks: (corner, scale) => [polygon(outline.corners, { corner, scale })],
    notes: [{ fromMm: across ? 0 : start[1], toMm: heightMm, lines }],
    beneath: {
      fromMm: (widthMm - side.mm) / 2,
      toMm: (widthMm + side.mm) / 2,
      text: `${said(side)} each side`,
    },
  };
}

/** Corners of the arc of a shawl without points: enough to look round. */
const ARC = 64;

/**
 * A shawl from its start at the top: one triangle for each stretch between its points, as high as the rows
 * and as wide as its share of the last edge; without points a sector. `null`: it would go round more than
 * once, and so ruffles.
 */
export function fanSketch(part: PartSize, said: Said): Sketch | null {
  const { deep } = part.measures;
  const edge = part.measures['last edge'];
  if (!deep || !edge || deep.mm <= 0) return null;
  const points = part.points ?? 0;
  const rim = points > 0 ? pointedRim(deep.mm, edge.mm, points + 1) : roundRim(deep.mm, edge.mm);
  if (!rim) return null;
  const outline = boxed([[0, 0], ...rim], [0, 0]);
  const { widthMm, heightMm, start } = outline;
  return {
    title: titleOf(part),
    widthMm,
    heightMm,
    marks: (corner, scale) => [
      polygon(outline.corners, { corner, scale }),
      depthLine(outline, points, { corner, scale }),
    ],
    notes: [
      { fromMm: start[1], toMm: start[1], lines: [`start; ${said(deep)} to the last edge`] },
      { fromMm: heightMm, toMm: heightMm, lines: [`${said(edge)} along the last edge`] },
    ],
    beneath: null,
  };
}

function roundRim(deep: number, edge: number): readonly Point[] | null {
  const angle = edge / deep;
  if (angle > 2 * PI) return null;
  return Array.from({ length: ARC + 1 }, (_, at): Point => {
    const turn = angle * (at / ARC - 1 / 2);
    return [deep * sin(turn), deep * cos(turn)];
  });
}

function pointedRim(deep: number, edge: number, sections: number): readonly Point[] | null {
  const half = edge / sections / 2;
  if (sections > 2 && half / deep > tan(PI / sections)) return null;
  const side = sqrt(half * half + deep * deep);
  // A turn by half a section, as cosine and sine.
  const [c, s] = [deep / side, half / side];
  const turned = ([x, y]: Point, way: 1 | -1): Point => [x * c + way * y * s, y * c - way * x * s];
  let at: Point = [0, side];
  for (let n = 0; n < sections; n++) at = turned(at, -1);
  const rim: Point[] = [at];
  for (let n = 0; n < sections; n++) {
    at = turned(turned(at, 1), 1);
    rim.push(at);
  }
  return rim;
}

/** From the start to the middle of the lowest stretch of the last edge, as the depth is measured. */
function depthLine(
  { corners: [start, ...rim] }: Outline,
  points: number,
  frame: { readonly corner: Point; readonly scale: number },
): Mark {
  const { corner, scale } = frame;
  const onPaper = ([x, y]: Point): Point => [corner[0] + x * scale, corner[1] + y * scale];
  const nth = points > 0 ? Math.floor((points + 1) / 2) : rim.length / 2;
  const [a, b] = [rim[Math.floor(nth)]!, rim[Math.floor(nth) + (points > 0 ? 1 : 0)]!];
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return { kind: 'line', from: onPaper(start!), to: onPaper(middle), ...INNER };
}
