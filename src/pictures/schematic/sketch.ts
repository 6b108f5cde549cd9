/**
 * One outline of a schematic before it is laid on paper: in millimetres of the fabric, x to the right,
 * y down, the origin at its top left. Types, and the marks that all outlines share.
 */
import type { Figure, PartSize } from '../../figures/index.ts';
import type { Look, Mark, PathStep, Point } from '../drawing.ts';

export type Said = (figure: Figure) => string;

export const titleOf = ({ name, labels, form }: PartSize): string =>
  `${name === '' ? '' : `${name}, `}${labels} (${form})`;

/** Words beside an outline, at the height that they speak of. */
export interface Note {
  /** The stretch of height that they measure; both alike for a place. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly lines: readonly string[];
}

export interface Sketch {
  /** "Sides, Rnds 4-24". */
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Draws it at that scale, paper over fabric, from that corner. */
  readonly marks: (corner: Point, scale: number) => readonly Mark[];
  /** Beside it, from top to bottom. */
  readonly notes: readonly Note[];
  /** Beneath its bottom edge, and that edge; above its top edge. */
  readonly beneath: {
    readonly fromMm: number;
    readonly toMm: number;
    readonly text: string;
  } | null;
}

export const OUTLINE: Look = { stroke: { ink: 'ink', widthMm: 0.4 }, fill: 'none' };
export const INNER: Look = { stroke: { ink: 'soft', widthMm: 0.25 }, fill: 'none' };

/** A closed outline through these corners, in fabric millimetres. */
export function polygon(
  corners: readonly Point[],
  { corner, scale, look = OUTLINE }: { corner: Point; scale: number; look?: Look },
): Mark {
  const steps = corners.map(
    ([x, y], at): PathStep => [at === 0 ? 'M' : 'L', corner[0] + x * scale, corner[1] + y * scale],
  );
  return { kind: 'path', steps: [...steps, ['Z']], ...look };
}

/** Share of the radius at which the arms of a quarter circle's cubic stand: 4/3 (sqrt 2 - 1). */
export const ARM = 0.5522847498;

/** An ellipse that fills a box of this size, in fabric millimetres. */
export function ellipse(
  [w, h]: Point,
  { corner: [x, y], scale }: { corner: Point; scale: number },
): Mark {
  const [rx, ry] = [(w * scale) / 2, (h * scale) / 2];
  const [cx, cy] = [x + rx, y + ry];
  const [ax, ay] = [rx * ARM, ry * ARM];
  return {
    kind: 'path',
    steps: [
      ['M', cx + rx, cy],
      ['C', cx + rx, cy + ay, cx + ax, cy + ry, cx, cy + ry],
      ['C', cx - ax, cy + ry, cx - rx, cy + ay, cx - rx, cy],
      ['C', cx - rx, cy - ay, cx - ax, cy - ry, cx, cy - ry],
      ['C', cx + ax, cy - ry, cx + rx, cy - ay, cx + rx, cy],
      ['Z'],
    ],
    ...OUTLINE,
  };
}
