/** Outlines of what lies flat by itself: bases, squares, filled pieces as seen from the side, flat cloth. */
import type { Figure, PartSize, PieceSize, RowSpan } from '../../figures/index.ts';
import type { Point } from '../drawing.ts';
import { fanSketch, motifSketch } from './opened.ts';
import {
  ellipse,
  INNER,
  type Note,
  OUTLINE,
  polygon,
  type Said,
  type Sketch,
  titleOf,
} from './sketch.ts';

/** `null` for parts that stand on others, and for those whose outline is not known. */
export function lyingSketch(part: PartSize, said: Said): Sketch | null {
  const { across, wide, long, high } = part.measures;
  if (part.form === 'round base' && across) return round(part, [across, across], said);
  if (part.form === 'ball' && across && high) return round(part, [across, high], said);
  if (part.form === 'square' && across) return box(part, [across, across], said);
  if (part.form === 'centre-out piece') return fanSketch(part, said);
  if (part.form === 'triangle' || part.form === 'pentagon' || part.form === 'hexagon')
    return motifSketch(part, part.form, said);
  if (part.form === 'oval base' && long && wide) return oval(part, [long, wide], said);
  const isFlat = part.form === 'flat piece' || part.form === 'corner to corner';
  if (isFlat && wide && long) return box(part, [wide, long], said);
  if (part.form === 'shaped piece' && part.outline) return shaped(part, part.outline, said);
  return null;
}

/** A flat piece with the edging all round it; `null` for other edgings, which follow what they edge. */
export function edgedSketch({ parts, whole }: PieceSize, said: Said): Sketch | null {
  const [part] = parts;
  const { wide, long, across } = whole;
  const sides: Sides | null = across ? [across, across] : wide && long ? [wide, long] : null;
  const edge = part?.measures.wide;
  if (part?.form !== 'edging' || !sides || !edge) return null;
  const { size, ...rest } = sketchOf({ ...part, form: 'flat piece', measures: {} }, sides, said);
  const inset = (mm: number): number => mm - 2 * edge.mm;
  return {
    ...rest,
    title: `${titleOf(part)}, all round`,
    marks: ([x, y], scale) => [
      { ...OUTLINE, kind: 'rect', at: [x, y], ...sized(size, scale) },
      {
        ...INNER,
        kind: 'rect',
        at: [x + edge.mm * scale, y + edge.mm * scale],
        ...sized([inset(size[0]), inset(size[1])], scale),
      },
    ],
  };
}

const sized = ([wide, high]: Point, scale: number) => ({
  widthMm: wide * scale,
  heightMm: high * scale,
});

type Sides = readonly [wide: Figure, high: Figure];

/** Circumference and height on the right, the width beneath. */
function sketchOf(
  part: PartSize,
  [wide, high]: Sides,
  said: Said,
): Omit<Sketch, 'marks'> & { readonly size: Point } {
  const { around } = part.measures;
  const isRound = wide === high;
  const lines = [
    ...(isRound ? [] : [`${said(high)} ${HIGH[part.form] ?? 'high'}`]),
    ...(around ? [`${said(around)} around`] : []),
  ];
  return {
    title: titleOf(part),
    widthMm: wide.mm,
    heightMm: high.mm,
    size: [wide.mm, high.mm],
    // A girth stands beside the middle: its line would measure the way across.
    notes:
      lines.length === 0
        ? []
        : [{ fromMm: isRound ? high.mm / 2 : 0, toMm: isRound ? high.mm / 2 : high.mm, lines }],
    beneath: { fromMm: 0, toMm: wide.mm, text: said(wide) },
  };
}

const HIGH: Partial<Record<PartSize['form'], string>> = {
  'oval base': 'wide',
  'flat piece': 'long',
  'corner to corner': 'long',
};

function round(part: PartSize, sides: Sides, said: Said): Sketch {
  const { size, ...rest } = sketchOf(part, sides, said);
  return { ...rest, marks: (corner, scale) => [ellipse(size, { corner, scale })] };
}

function box(part: PartSize, sides: Sides, said: Said): Sketch {
  const { size, ...rest } = sketchOf(part, sides, said);
  return {
    ...rest,
    marks: (corner, scale) => [
      {
        kind: 'rect',
        at: corner,
        widthMm: size[0] * scale,
        heightMm: size[1] * scale,
        ...OUTLINE,
      },
    ],
  };
}

function oval(part: PartSize, sides: Sides, said: Said): Sketch {
  const { size, ...rest } = sketchOf(part, sides, said);
  return {
    ...rest,
    marks: (corner, scale) => [
      {
        kind: 'rect',
        at: corner,
        widthMm: size[0] * scale,
        heightMm: size[1] * scale,
        cornerMm: (Math.min(...size) * scale) / 2,
        ...OUTLINE,
      },
    ],
  };
}

/** Row upon row, as they stand: steps where boxes come and go, slants where stitches do. */
function shaped(part: PartSize, rows: readonly RowSpan[], said: Said): Sketch {
  const left = Math.min(...rows.map(({ leftMm }) => leftMm));
  const right = Math.max(...rows.map(({ rightMm }) => rightMm));
  const high = rows.reduce((mm, { heightMm }) => mm + heightMm, 0);
  const first = rows[0]!;
  return {
    title: titleOf(part),
    widthMm: right - left,
    heightMm: high,
    marks: (corner, scale) => [polygon(corners(rows, { left, high }), { corner, scale })],
    notes: shapedNotes(part, high, said),
    beneath: {
      fromMm: first.leftMm - left,
      toMm: first.rightMm - left,
      text: said(part.measures['first edge']!),
    },
  };
}

/** Once round: up the right side of the rows, down the left. */
function corners(
  rows: readonly RowSpan[],
  { left, high }: { readonly left: number; readonly high: number },
): readonly Point[] {
  const up: Point[] = [];
  const down: Point[] = [];
  let y = high;
  for (const { leftMm, rightMm, heightMm } of rows) {
    up.push([rightMm - left, y], [rightMm - left, y - heightMm]);
    down.push([leftMm - left, y], [leftMm - left, y - heightMm]);
    y -= heightMm;
  }
  return [...up, ...down.reverse()];
}

function shapedNotes({ measures }: PartSize, high: number, said: Said): readonly Note[] {
  const { wide, long } = measures;
  const last = measures['last edge'];
  return [
    ...(last ? [{ fromMm: 0, toMm: 0, lines: [`${said(last)} at the last edge`] }] : []),
    {
      fromMm: 0,
      toMm: high,
      lines: [
        ...(long ? [`${said(long)} long`] : []),
        ...(wide ? [`${said(wide)} at the widest`] : []),
      ],
    },
  ];
}
