/**
 * The schematic: every piece in outline, all to one scale, with its lengths. The numbers are those of
 * the sheet, printed by the same function, so that drawing and text cannot differ.
 */
import {
  type Figure,
  type PartSize,
  type PieceSize,
  type SizeSheet,
  shortFigure,
  type Units,
} from '../../figures/index.ts';
import type { Drawing, Mark, Point } from '../drawing.ts';
import { measureText, points, wrapText } from '../text.ts';
import { edgedSketch, lyingSketch } from './lying.ts';
import { type Note, type Said, type Sketch, titleOf } from './sketch.ts';
import { isStanding, standingSketch } from './standing.ts';

export interface SchematicOptions {
  readonly title: string;
  readonly units: Units;
  /** BCP 47 tag; default "en". */
  readonly language?: string;
}

const PAGE_MM = 180;
const MARGIN_MM = 8;
const GAP_MM = 10;
/** The longest side of the largest outline on paper, and the room for words beside one. */
const LARGEST_MM = 90;
/** The same where there are many: then two stand side by side. */
const LARGEST_OF_MANY_MM = 55;
const MANY = 4;
const TYPE_MM = points(9);
const LINE_MM = 1.35 * TYPE_MM;

/** `null` where nothing has an outline that is known, or sizes are only assumed. */
export function drawSchematic(sheet: SizeSheet, options: SchematicOptions): Drawing | null {
  const said = (figure: Figure): string => shortFigure(figure, options.units);
  const sketches = sheet.pieces
    .filter(isMeasured)
    .flatMap((piece) => sketchesOf(piece, sheet, said));
  if (sketches.length === 0) return null;
  const longest = Math.max(...sketches.map(({ widthMm, heightMm }) => Math.max(widthMm, heightMm)));
  const scale = (sketches.length > MANY ? LARGEST_OF_MANY_MM : LARGEST_MM) / longest;
  const size = sheet.size === '' ? '' : `, ${sheet.size}`;
  const { marks, heightMm } = laidOut(sketches, scale);
  const foot = footOf(sheet, scale, said).flatMap((line) =>
    wrapText(line, PAGE_MM - 2 * MARGIN_MM, { sizeMm: TYPE_MM }),
  );
  const below = heightMm + MARGIN_MM;
  return {
    id: 'schematic',
    widthMm: PAGE_MM,
    heightMm: below + foot.length * LINE_MM,
    title: `${options.title}${size}: schematic`,
    description: [...footOf(sheet, scale, said), ...sketches.map(inWords)].join('\n'),
    language: options.language ?? 'en',
    marks: [
      label(`${options.title}${size}`, [MARGIN_MM, MARGIN_MM + TYPE_MM], 'bold'),
      ...marks,
      ...foot.map((line, at) => label(line, [MARGIN_MM, below + at * LINE_MM])),
    ],
  };
}

const isMeasured = ({ parts }: PieceSize): boolean =>
  parts.every(({ measures }) => Object.values(measures).every(({ how }) => how !== 'assumed'));

function sketchesOf(piece: PieceSize, { leans }: SizeSheet, said: Said): readonly Sketch[] {
  const standing = standingSketch(piece, leans, said);
  const edged = edgedSketch(piece, said);
  return [
    ...piece.parts.flatMap((part) => lyingSketch(part, said) ?? []),
    ...(standing ? [standing] : []),
    ...(edged ? [edged] : []),
  ];
}

/** A sketch for those who cannot see it. */
const inWords = ({ title, beneath, notes }: Sketch): string =>
  `${title}: ${[beneath?.text ?? '', ...notes.flatMap(({ lines }) => lines)].filter(Boolean).join('; ')}.`;

/** The scale, how it is drawn, and what is not. */
function footOf(sheet: SizeSheet, scale: number, said: Said): readonly string[] {
  const isLarger = scale > 1.05;
  const ratio = isLarger ? `${short(scale)} : 1, larger than life` : `1 : ${short(1 / scale)}`;
  const parts = sheet.pieces.filter(isMeasured).flatMap((piece) => piece.parts);
  const has = (...forms: readonly PartSize['form'][]): boolean =>
    parts.some(({ form }) => forms.includes(form));
  const isRound = has('closed end', 'tube', 'cone', 'closing', 'straps');
  const isEstimated = parts.some(({ measures }) =>
    Object.values(measures).some(({ how }) => how === 'estimate'),
  );
  return [
    [
      `All outlines to one scale, ${ratio}.`,
      ...(isRound || has('flat piece', 'shaped piece') ? ['First rows are at the bottom.'] : []),
      ...(isRound ? ['Rounds are laid flat.'] : []),
      ...(has('centre-out piece')
        ? [
            'What opens from its start is drawn as its rows lie: pinned out, it takes another shape.',
          ]
        : []),
      ...(isEstimated ? ['Some lengths are estimates: the sheet tells which.'] : []),
    ].join(' '),
    ...sheet.pieces.flatMap((piece) => notDrawn(piece, said)),
  ];
}

/** Each part that has no sketch, with its lengths and the reason. */
function notDrawn(piece: PieceSize, said: Said): readonly string[] {
  if (!isMeasured(piece) || edgedSketch(piece, said)) return [];
  return piece.parts
    .filter((part) => !isStanding(part) && !lyingSketch(part, said))
    .map(
      (part) =>
        `Not drawn: ${titleOf(part)}${lengthsOf(part, said)}: ${WHY[part.form] ?? UNKNOWN}.`,
    );
}

const UNKNOWN = 'its outline is not known';
const WHY: Partial<Record<PartSize['form'], string>> = {
  edging: 'it follows what it is worked along',
  'centre-out piece': 'its edge is longer than its depth lets it lie flat',
  'corner to corner': 'half of it is still to be worked',
  cone: 'it lies flat around what it grows from',
  closing: 'it lies flat',
};

/** ", 43 cm long, 0.6 cm wide" */
const lengthsOf = ({ measures }: PartSize, said: Said): string =>
  (
    [
      ['long', 'long'],
      ['wide', 'wide'],
      ['deep', 'deep'],
      ['side', 'each side'],
      ['last edge', 'along the last edge'],
    ] as const
  )
    .flatMap(([name, words]) => (measures[name] ? [`, ${said(measures[name])} ${words}`] : []))
    .join('');

const short = (n: number): string => String(Number(n.toPrecision(2)));

/** Outlines side by side, wrapped like words. */
function laidOut(
  sketches: readonly Sketch[],
  scale: number,
): { readonly marks: readonly Mark[]; readonly heightMm: number } {
  const marks: Mark[] = [];
  let x = MARGIN_MM;
  let y = 2 * MARGIN_MM + LINE_MM;
  let rowMm = 0;
  for (const sketch of sketches) {
    const cell = cellOf(sketch, scale);
    if (x > MARGIN_MM && x + cell.widthMm > PAGE_MM - MARGIN_MM) {
      x = MARGIN_MM;
      y += rowMm + GAP_MM;
      rowMm = 0;
    }
    marks.push({ kind: 'group', at: [x, y], marks: cell.marks });
    x += cell.widthMm + GAP_MM;
    rowMm = Math.max(rowMm, cell.heightMm);
  }
  return { marks, heightMm: y + rowMm };
}

interface Cell {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly Mark[];
}

const THIN = { stroke: { ink: 'soft', widthMm: 0.2 } } as const;
/** Viewers with another face run a tenth wider. */
const widthOfText = (text: string): number => 1.1 * measureText(text, TYPE_MM);

function cellOf(sketch: Sketch, scale: number): Cell {
  const [w, h] = [sketch.widthMm * scale, sketch.heightMm * scale];
  const top = 1.8 * LINE_MM;
  const notes = noteColumn(sketch.notes, { scale, top, left: w + 2 });
  const y = top + h + 2;
  const isWide = widthOfText(sketch.beneath?.text ?? '') > w + 2;
  // Words wider than their outline go beneath those beside it.
  const textY = Math.max(y + LINE_MM, isWide ? notes.bottomMm + LINE_MM / 2 : 0);
  const under = sketch.beneath ? underOf(sketch.beneath, { scale, y, textY }) : null;
  const widths = [sketch.title, under?.text ?? ''].map(widthOfText);
  return {
    widthMm: Math.max(...widths, w + 2 + notes.widthMm),
    heightMm: Math.max(under ? textY : top + h, notes.bottomMm),
    marks: [
      label(sketch.title, [0, TYPE_MM], 'bold'),
      ...sketch.marks([0, top], scale),
      ...(under?.marks ?? []),
      ...notes.marks,
    ],
  };
}

const TICK_MM = 0.8;

/** A line along what is measured, with a tick at either end. */
function stretch(from: Point, to: Point): readonly Mark[] {
  const isUpright = from[0] === to[0];
  const [dx, dy] = isUpright ? [TICK_MM, 0] : [0, TICK_MM];
  const tick = ([x, y]: Point): Mark => ({
    kind: 'line',
    from: [x - dx, y - dy],
    to: [x + dx, y + dy],
    ...THIN,
  });
  return [{ kind: 'line', from, to, ...THIN }, tick(from), tick(to)];
}

function underOf(
  { fromMm, toMm, text }: NonNullable<Sketch['beneath']>,
  { scale, y, textY }: { readonly scale: number; readonly y: number; readonly textY: number },
): { readonly text: string; readonly marks: readonly Mark[] } {
  const [from, to] = [fromMm * scale, toMm * scale];
  return {
    text,
    marks: [
      ...stretch([from, y], [to, y]),
      label(text, [Math.max(0, (from + to) / 2 - measureText(text, TYPE_MM) / 2), textY]),
    ],
  };
}

/** Words beside the outline, moved down where they would run into each other, with a line to their place. */
function noteColumn(
  notes: readonly Note[],
  { scale, top, left }: { readonly scale: number; readonly top: number; readonly left: number },
): { readonly marks: readonly Mark[]; readonly widthMm: number; readonly bottomMm: number } {
  const marks: Mark[] = [];
  const room = PAGE_MM - 2 * MARGIN_MM - left - 4;
  let free = top - LINE_MM;
  let widthMm = 0;
  for (const { fromMm, toMm, lines } of notes) {
    const [from, to] = [top + fromMm * scale, top + toMm * scale];
    const middle = (from + to) / 2;
    const words = lines.flatMap((line) => wrapText(line, room, { sizeMm: 1.1 * TYPE_MM }));
    const tall = words.length * LINE_MM;
    const y = Math.max(free, middle - tall / 2);
    if (to > from) marks.push(...stretch([left, from], [left, to]));
    marks.push({ kind: 'line', from: [left, middle], to: [left + 3, y + tall / 2], ...THIN });
    words.forEach((line, at) => {
      marks.push(label(line, [left + 4, y + at * LINE_MM + TYPE_MM]));
      widthMm = Math.max(widthMm, 4 + widthOfText(line));
    });
    free = y + tall + 0.4 * LINE_MM;
  }
  return { marks, widthMm, bottomMm: free };
}

const label = (text: string, at: Point, weight: 'regular' | 'bold' = 'regular'): Mark => ({
  kind: 'text',
  at,
  text,
  sizeMm: TYPE_MM,
  weight,
  align: 'start',
});
