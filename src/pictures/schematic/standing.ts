/**
 * Outlines of what stands on a base: tubes, cones and closings one upon the other, laid flat, the first
 * round at the bottom, with handles as arcs and the line of the start's lean.
 */
import { leanFigures, type PartSize, type PieceLean, type PieceSize } from '../../figures/index.ts';
import type { Mark, Point } from '../drawing.ts';
import {
  ARM,
  INNER,
  type Note,
  OUTLINE,
  polygon,
  type Said,
  type Sketch,
  titleOf,
} from './sketch.ts';

/** One part of the stack: half its girths, bottom and top. */
interface Band {
  readonly part: PartSize;
  readonly belowMm: number;
  readonly aboveMm: number;
  readonly heightMm: number;
}

/** `null` where nothing stands. */
export function standingSketch(
  piece: PieceSize,
  leans: readonly PieceLean[],
  said: Said,
): Sketch | null {
  const bands = bandsOf(piece.parts);
  if (bands.length === 0) return null;
  const widthMm = Math.max(...bands.flatMap(({ belowMm, aboveMm }) => [belowMm, aboveMm]));
  const standing = bands.reduce((mm, { heightMm }) => mm + heightMm, 0);
  const arc = arcOf(bands.at(-1)!.part);
  const top = arc?.heightMm ?? 0;
  const placed = leans.filter(
    ({ name, what, lean }) => name === piece.name && what !== 'end' && lean.stitches.to !== 0,
  );
  const bottom = top + standing;
  const lowest = bands[0]!;
  const { flat } = lowest.part.measures;
  const fold = lowest.part.measures['first edge'];
  const text = fold ? `${said(fold)} at the first edge` : flat ? `${said(flat)} laid flat` : null;
  const edge = (widthMm - (fold ? fold.mm : Math.max(lowest.belowMm, lowest.aboveMm))) / 2;
  return {
    title: [...new Set(bands.map(({ part }) => part.name))].join(', ') || titleOf(lowest.part),
    widthMm,
    heightMm: bottom,
    marks: (corner, scale) => [
      ...bandMarks(bands, { widthMm, bottom, corner, scale }),
      ...(arc ? [arcMark(arc, { middle: widthMm / 2, corner, scale })] : []),
      ...leanMarks(placed, { middle: widthMm / 2, bottom, corner, scale }),
    ],
    notes: [...bandNotes(bands, bottom, said), ...leanNotes(placed, bottom, said)].sort(
      (a, b) => a.fromMm + a.toMm - b.fromMm - b.toMm,
    ),
    beneath: text === null ? null : { fromMm: edge, toMm: widthMm - edge, text },
  };
}

const STANDING: ReadonlySet<PartSize['form']> = new Set([
  'closed end',
  'tube',
  'cone',
  'closing',
  'straps',
]);

/** Does it stand in the stack of its piece? */
export const isStanding = ({ form, measures }: PartSize): boolean =>
  STANDING.has(form) && measures.high !== undefined;

function bandsOf(parts: readonly PartSize[]): readonly Band[] {
  const bands: Band[] = [];
  let below = 0;
  for (const part of parts) {
    const { around, high } = part.measures;
    const half = around ? around.mm / 2 : below;
    const lies = ['round base', 'oval base', 'square'].includes(part.form);
    if (lies) below = half;
    if (lies || !high || !STANDING.has(part.form)) continue;
    const aboveMm = part.form === 'closing' ? (part.measures['last edge']?.mm ?? 0) / 2 : half;
    const fold = part.measures['first edge'];
    const isStraight = part.form === 'tube' || part.form === 'straps';
    const belowMm = fold ? fold.mm : isStraight ? half : below;
    bands.push({ part, belowMm, aboveMm, heightMm: high.mm });
    below = aboveMm;
  }
  return bands;
}

interface Frame {
  readonly corner: Point;
  readonly scale: number;
}

function bandMarks(
  bands: readonly Band[],
  { widthMm, bottom, ...frame }: Frame & { readonly widthMm: number; readonly bottom: number },
): readonly Mark[] {
  let y = bottom;
  return bands.map(({ belowMm, aboveMm, heightMm }) => {
    const middle = widthMm / 2;
    const mark = polygon(
      [
        [middle - belowMm / 2, y],
        [middle + belowMm / 2, y],
        [middle + aboveMm / 2, y - heightMm],
        [middle - aboveMm / 2, y - heightMm],
      ],
      frame,
    );
    y -= heightMm;
    return mark;
  });
}

function bandNotes(bands: readonly Band[], bottom: number, said: Said): readonly Note[] {
  let y = bottom;
  return bands.map(({ part, heightMm }) => {
    const { around, high, strap, opening } = part.measures;
    const end = part.form === 'closing' ? part.measures['last edge'] : undefined;
    const girth = around ? `, ${said(around)} around` : '';
    const closing = end ? `, ${said(end)} at the last edge` : '';
    const note: Note = {
      fromMm: y - heightMm,
      toMm: y,
      lines: [
        titleOf(part),
        `${said(high!)} high${girth}${closing}`,
        ...(strap ? [`each strap ${said(strap)}`] : []),
        ...(opening ? [`each opening ${said(opening)}`] : []),
      ],
    };
    y -= heightMm;
    return note;
  });
}

interface Arc {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A handle: half an ellipse over its opening, as long as the strap; `null` without both. */
function arcOf({ measures: { strap, opening } }: PartSize): Arc | null {
  if (!strap || !opening || strap.mm <= opening.mm) return null;
  const a = opening.mm / 2;
  let [low, high] = [0, strap.mm];
  for (let step = 0; step < 40; step++) {
    const b = (low + high) / 2;
    if (halfEllipse(a, b) < strap.mm) low = b;
    else high = b;
  }
  return { widthMm: opening.mm, heightMm: low };
}

/** Ramanujan's first approximation, 1914: within 0.5 % for any flat ellipse. */
const halfEllipse = (a: number, b: number): number =>
  (Math.PI / 2) * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));

function arcMark(
  { widthMm, heightMm }: Arc,
  { middle, corner: [x, y], scale }: Frame & { readonly middle: number },
): Mark {
  const cx = x + middle * scale;
  const base = y + heightMm * scale;
  const [rx, ry] = [(widthMm * scale) / 2, heightMm * scale];
  return {
    kind: 'path',
    steps: [
      ['M', cx - rx, base],
      ['C', cx - rx, base - ry * ARM, cx - rx * ARM, y, cx, y],
      ['C', cx + rx * ARM, y, cx + rx, base - ry * ARM, cx + rx, base],
    ],
    ...OUTLINE,
  };
}

/** Where the middle by count comes to stand: a wedge from the least to the most lean. */
function leanMarks(
  leans: readonly PieceLean[],
  {
    middle,
    bottom,
    corner: [x, y],
    scale,
  }: Frame & { readonly middle: number; readonly bottom: number },
): readonly Mark[] {
  const last = leans.at(-1);
  if (!last) return [];
  const at = (shift: number, up: number): Point => [
    x + (middle + shift) * scale,
    y + (bottom - up) * scale,
  ];
  const dashed = { stroke: { ink: 'soft', widthMm: 0.25, dashMm: [1.2, 0.8] } } as const;
  const side = (which: 'from' | 'to'): Mark => ({
    kind: 'path',
    steps: [
      ['M', ...at(0, 0)],
      ...leans.map(({ lean, upMm }) => ['L', ...at(lean.mm[which], upMm)] as const),
    ],
    ...dashed,
    fill: 'none',
  });
  const upright: Mark = { kind: 'line', from: at(0, 0), to: at(0, last.upMm), ...INNER };
  const across = leans.map(
    ({ lean, upMm }): Mark => ({
      kind: 'line',
      from: at(0, upMm),
      to: at(lean.mm.to, upMm),
      ...INNER,
    }),
  );
  return [upright, side('from'), side('to'), ...across];
}

function leanNotes(leans: readonly PieceLean[], bottom: number, said: Said): readonly Note[] {
  return leans.map((one) => {
    const { from, to } = leanFigures(one);
    const way = one.lean.stitches.to > 0 ? 'right' : 'left';
    return {
      fromMm: bottom - one.upMm,
      toMm: bottom - one.upMm,
      lines: [
        `middle by count at ${one.at}: ${said(from)} to ${said(to)} to the ${way} (right-handers)`,
      ],
    };
  });
}
