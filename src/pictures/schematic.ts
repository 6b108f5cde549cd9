/**
 * The schematic: the parts of a piece in outline, all to one scale, each with its lengths. The numbers
 * are those of the sheet, printed by the same function, so that drawing and text cannot differ.
 */
import {
  type Figure,
  type PartSize,
  type SizeSheet,
  shortFigure,
  type Units,
} from '../figures/index.ts';
import type { Drawing, Mark } from './drawing.ts';
import { measureText, points } from './text.ts';

export interface SchematicOptions {
  readonly title: string;
  readonly units: Units;
  /** BCP 47 tag; default "en". */
  readonly language?: string;
}

const PAGE_MM = 180;
const MARGIN_MM = 8;
const GAP_MM = 14;
/** The longest side of the largest part on paper. */
const LARGEST_MM = 90;
const TYPE_MM = points(9);
const LINE_MM = 1.4 * TYPE_MM;

interface Outline {
  readonly part: PartSize;
  readonly wide: Figure;
  readonly high: Figure;
  readonly mark: (box: { x: number; y: number; w: number; h: number }) => Mark;
}

/** `null` where nothing has two lengths to draw, or sizes are only assumed. */
export function drawSchematic(sheet: SizeSheet, options: SchematicOptions): Drawing | null {
  const outlines = sheet.pieces
    .flatMap(({ parts }) => parts)
    .flatMap((part) => outlineOf(part) ?? [])
    .filter(({ wide, high }) => wide.how !== 'assumed' && high.how !== 'assumed');
  if (outlines.length === 0) return null;
  const longest = Math.max(...outlines.map(({ wide, high }) => Math.max(wide.mm, high.mm)));
  const scale = LARGEST_MM / longest;
  const { marks, heightMm } = laidOut(outlines, scale, options.units);
  const size = sheet.size === '' ? '' : `, ${sheet.size}`;
  const said = outlines.map(
    ({ part, wide, high }) =>
      `${nameOf(part)}: ${shortFigure(wide, options.units)} by ${shortFigure(high, options.units)}.`,
  );
  const scaleSaid = `All parts to one scale, 1 : ${Number((1 / scale).toPrecision(2))}.`;
  return {
    id: 'schematic',
    widthMm: PAGE_MM,
    heightMm,
    title: `${options.title}${size}: schematic`,
    description: [scaleSaid, ...said].join('\n'),
    language: options.language ?? 'en',
    marks: [
      label(`${options.title}${size}`, MARGIN_MM, MARGIN_MM + TYPE_MM, {
        bold: 'bold',
        align: 'start',
      }),
      ...marks,
      label(scaleSaid, MARGIN_MM, heightMm - MARGIN_MM / 2, { align: 'start' }),
    ],
  };
}

const nameOf = ({ name, labels }: PartSize): string =>
  name === '' ? labels : `${name}, ${labels}`;

/** Parts side by side, wrapped like words. */
function laidOut(
  outlines: readonly Outline[],
  scale: number,
  units: Units,
): { marks: readonly Mark[]; heightMm: number } {
  const marks: Mark[] = [];
  let x = MARGIN_MM;
  let y = 2 * MARGIN_MM + LINE_MM;
  let rowHeight = 0;
  for (const outline of outlines) {
    const [w, h] = [outline.wide.mm * scale, outline.high.mm * scale];
    const texts = [nameOf(outline.part), shortFigure(outline.wide, units)];
    const side = measureText(shortFigure(outline.high, units), TYPE_MM) + 4;
    const cell = Math.max(w + side, ...texts.map((text) => measureText(text, TYPE_MM) * 1.1));
    if (x > MARGIN_MM && x + cell > PAGE_MM - MARGIN_MM) {
      x = MARGIN_MM;
      y += rowHeight + GAP_MM;
      rowHeight = 0;
    }
    marks.push(...cellMarks(outline, { x, y, w, h }, units));
    x += cell + GAP_MM / 2;
    rowHeight = Math.max(rowHeight, h + 2.5 * LINE_MM);
  }
  return { marks, heightMm: y + rowHeight + 2 * MARGIN_MM };
}

function cellMarks(
  { part, wide, high, mark }: Outline,
  { x, y, w, h }: { x: number; y: number; w: number; h: number },
  units: Units,
): Mark[] {
  const top = y + LINE_MM;
  const below = top + h + 2;
  const beside = x + w + 2;
  const thin = { ink: 'soft', widthMm: 0.2 } as const;
  return [
    label(nameOf(part), x, y, { align: 'start' }),
    mark({ x, y: top, w, h }),
    { kind: 'line', from: [x, below], to: [x + w, below], stroke: thin },
    label(shortFigure(wide, units), x, below + LINE_MM, { align: 'start' }),
    { kind: 'line', from: [beside, top], to: [beside, top + h], stroke: thin },
    label(shortFigure(high, units), beside + 1.5, top + h / 2 + TYPE_MM / 3, { align: 'start' }),
  ];
}

const label = (
  text: string,
  x: number,
  y: number,
  { bold = 'regular', align }: { bold?: 'regular' | 'bold'; align: 'start' | 'middle' },
): Mark => ({ kind: 'text', at: [x, y], text, sizeMm: TYPE_MM, weight: bold, align });

const LOOK = { stroke: { ink: 'ink', widthMm: 0.4 }, fill: 'none' } as const;

/** The outline of a part; `null` for parts that are drawn with another, or have no two lengths. */
function outlineOf(part: PartSize): Outline | null {
  const { across, wide, long, flat, high } = part.measures;
  const first = part.measures['first edge'];
  const last = part.measures['last edge'];
  if (part.form === 'round base' && across)
    return { part, wide: across, high: across, mark: round };
  if (part.form === 'square' && across) return { part, wide: across, high: across, mark: box };
  if (part.form === 'oval base' && long && wide)
    return { part, wide: long, high: wide, mark: stadium };
  if (part.form === 'ball' && across && high) return { part, wide: across, high, mark: round };
  if (part.form === 'tube' && flat && high) return { part, wide: flat, high, mark: box };
  if (part.form === 'flat piece' && wide && long) return { part, wide, high: long, mark: box };
  if (part.form === 'shaped piece' && wide && long && first && last) {
    const [from, to] = [first.mm / wide.mm, last.mm / wide.mm];
    return { part, wide, high: long, mark: (at) => trapeze(at, from, to) };
  }
  return null;
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const box = ({ x, y, w, h }: Place): Mark => ({
  kind: 'rect',
  at: [x, y],
  widthMm: w,
  heightMm: h,
  ...LOOK,
});

const stadium = ({ x, y, w, h }: Place): Mark => ({
  kind: 'rect',
  at: [x, y],
  widthMm: w,
  heightMm: h,
  cornerMm: Math.min(w, h) / 2,
  ...LOOK,
});

/** Share of the radius at which the arms of a quarter circle's cubic stand: 4/3 (sqrt 2 - 1). */
const ARM = 0.5522847498;

function round({ x, y, w, h }: Place): Mark {
  const [rx, ry] = [w / 2, h / 2];
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
    ...LOOK,
  };
}

/** The first row lies at the bottom, as fabric grows. */
function trapeze({ x, y, w, h }: Place, first: number, last: number): Mark {
  const middle = x + w / 2;
  return {
    kind: 'path',
    steps: [
      ['M', middle - (w * first) / 2, y + h],
      ['L', middle + (w * first) / 2, y + h],
      ['L', middle + (w * last) / 2, y],
      ['L', middle - (w * last) / 2, y],
      ['Z'],
    ],
    ...LOOK,
  };
}
