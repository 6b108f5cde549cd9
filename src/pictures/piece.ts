/**
 * The pieces of a pattern as they stand or lie, drawn stitch by stitch: plainly a drawing. What is nearer
 * covers what is behind; rows are lines; what turns away from the light is hatched along its stitches,
 * and the wrong side is tinted, so that an inside is told from an outside in any print.
 */
import type { Fabric } from '../fabric/index.ts';
import { type Patches, patchesOf, type Shape, type ShapedPiece } from '../figures/index.ts';
import { sqrt } from '../units/index.ts';
import type { Drawing, Group, Mark, Path, PathStep, Stroke } from './drawing.ts';
import { type StartEdge, startEdges, startLineNotes } from './start-line.ts';
import { measureText, points, wrapText } from './text.ts';
import { project, type View, viewOf } from './view.ts';

export interface PieceDrawingOptions {
  readonly id?: string;
  readonly title: string;
  /** Widest the drawing may be, mm. */
  readonly widthMm?: number;
  /** Words under each piece, from the top line down. */
  readonly captionFor: (piece: ShapedPiece) => readonly string[];
}

const MARGIN = 6;
const GAP = 10;
const CAPTION = points(8);
const LINE = points(11);
const NOTE = points(7);
const NOTE_LINE = points(9.5);

/** Scales a drawing may have, 1 to so many: those of a ruler. */
const SCALES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];

/** All pieces in one drawing, at one scale. */
export function drawPieces(shape: Shape, fabric: Fabric, options: PieceDrawingOptions): Drawing {
  const most = (options.widthMm ?? 170) - 2 * MARGIN;
  const seen = shape.pieces.map((piece) =>
    see(piece, fabric, shape.sizeIndex, options.captionFor(piece)),
  );
  const scale = SCALES.find((each) => fits(seen, each, most)) ?? SCALES.at(-1)!;
  const sheet = arranged(seen, scale, most);
  const note = [
    `A drawing worked out from the stitches, 1:${scale}.`,
    ...(shape.hand === 'left' ? ['As a left-handed maker works it.'] : []),
    ...startLineNotes(shape),
  ].join(' ');
  const lines = wrapText(note, (sheet.widthMm - 2 * MARGIN) / 1.1, { sizeMm: NOTE });
  const heightMm = sheet.heightMm + lines.length * NOTE_LINE + MARGIN;
  return {
    id: options.id ?? 'piece',
    widthMm: sheet.widthMm,
    heightMm,
    title: options.title,
    description: descriptionOf(shape, options, note),
    language: 'en',
    marks: [...sheet.marks, ...noteMarks(lines, sheet.heightMm)],
  };
}

const noteMarks = (lines: readonly string[], y: number): Mark[] =>
  lines.map((text, i) => ({
    kind: 'text',
    at: [MARGIN, y + (i + 1) * NOTE_LINE],
    text,
    sizeMm: NOTE,
    ink: 'soft',
  }));

function descriptionOf(shape: Shape, { captionFor }: PieceDrawingOptions, note: string): string {
  return [...shape.pieces.map((piece) => captionFor(piece).join(', ')), note].join('\n');
}

/** A piece seen: its patches in mm of fabric, right and down, from far to near. */
interface Seen {
  readonly piece: ShapedPiece;
  readonly caption: readonly string[];
  readonly patches: readonly SeenPatch[];
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

interface SeenPatch {
  readonly node: number;
  /** x, y of the four corners: bottom first, top first, top second, bottom second. */
  readonly corners: Float64Array;
  readonly depth: number;
  /** 0: square to the light; 1: turned away from it. */
  readonly shade: number;
  readonly isWrongSide: boolean;
  readonly origin: { readonly from: number; readonly to: number };
  readonly edges: { readonly first: boolean; readonly second: boolean };
  readonly start: StartEdge | null;
}

function see(
  piece: ShapedPiece,
  fabric: Fabric,
  sizeIndex: number,
  caption: readonly string[],
): Seen {
  const view = viewOf(piece);
  const patches = patchesOf(piece.graph, piece.at);
  const nodes = fabric.cloths[sizeIndex]!.nodes;
  const starts = startEdges(piece);
  const out: SeenPatch[] = [];
  for (let i = 0; i < piece.graph.n; i++) {
    if (patches.isBare[i]) continue;
    const origin = fabric.origins[nodes.origin[piece.graph.cloth[i]!]!] ?? { from: 0, to: 0 };
    const start = starts.get(i) ?? null;
    out.push({ ...seePatch(patches, i, view), node: i, origin, start });
  }
  out.sort((a, b) => b.depth - a.depth || a.node - b.node);
  return { piece, caption, patches: out, ...boundsOf(out) };
}

type SeenSides = Omit<SeenPatch, 'node' | 'origin' | 'start'>;

/** From the upper left, towards the viewer: right, down, away. */
const LIGHT = [-0.45, -0.55, -0.7] as const;

function seePatch(patches: Patches, i: number, view: View): SeenSides {
  const corners = new Float64Array(8);
  const away = new Float64Array(4);
  for (let c = 0; c < 4; c++) {
    const from = 12 * i + 3 * c;
    corners[2 * c] = project(view.right, patches.corners, from);
    corners[2 * c + 1] = project(view.down, patches.corners, from);
    away[c] = project(view.away, patches.corners, from);
  }
  const normal = normalOf(corners, away);
  const facing = normal[2] > 0 ? -1 : 1;
  const lit = facing * (normal[0] * LIGHT[0] + normal[1] * LIGHT[1] + normal[2] * LIGHT[2]);
  return {
    corners,
    depth: (away[0]! + away[1]! + away[2]! + away[3]!) / 4,
    shade: Math.min(1, Math.max(0, 1 - lit)),
    isWrongSide: normal[2] > 0,
    edges: { first: patches.openFirst[i] === 1, second: patches.openSecond[i] === 1 },
  };
}

/** Of the two diagonals; in the frame right, down, away. */
function normalOf(c: Float64Array, away: Float64Array): readonly [number, number, number] {
  const [ax, ay, az] = [c[4]! - c[0]!, c[5]! - c[1]!, away[2]! - away[0]!];
  const [bx, by, bz] = [c[6]! - c[2]!, c[7]! - c[3]!, away[3]! - away[1]!];
  const [x, y, z] = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  const length = sqrt(x * x + y * y + z * z);
  return length > 0 ? [x / length, y / length, z / length] : [0, 0, -1];
}

function boundsOf(patches: readonly SeenPatch[]): Pick<Seen, 'left' | 'top' | 'width' | 'height'> {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { corners } of patches) {
    for (let c = 0; c < 8; c += 2) {
      [left, right] = [Math.min(left, corners[c]!), Math.max(right, corners[c]!)];
      [top, bottom] = [Math.min(top, corners[c + 1]!), Math.max(bottom, corners[c + 1]!)];
    }
  }
  return { left, top, width: right - left, height: bottom - top };
}

/** Lines under a piece at most. */
const CAPTION_LINES = 5;

/** Tallest a drawing may be: what an A4 or Letter page holds under a heading. */
const TALLEST = 215;

function fits(seen: readonly Seen[], scale: number, most: number): boolean {
  if (seen.some(({ width }) => width / scale > most)) return false;
  const rows = inRows(seen, scale, most);
  const height = rows.reduce((sum, row) => sum + row.height + GAP + CAPTION_LINES * LINE, 0);
  return height <= TALLEST;
}

interface SheetRow {
  readonly pieces: readonly Seen[];
  readonly height: number;
}

/** As wide as the piece or the words under it, with the air that other faces need. */
const cellWidth = (one: Seen, scale: number): number =>
  Math.max(
    one.width / scale,
    ...one.caption.map((line) => 1.1 * measureText(line, CAPTION, 'bold')),
  );

function inRows(seen: readonly Seen[], scale: number, most: number): readonly SheetRow[] {
  const rows: { pieces: Seen[]; width: number; height: number }[] = [];
  for (const one of seen) {
    const width = cellWidth(one, scale);
    const row = rows.at(-1);
    if (row && row.width + GAP + width <= most) {
      row.pieces.push(one);
      row.width += GAP + width;
      row.height = Math.max(row.height, one.height / scale);
    } else rows.push({ pieces: [one], width, height: one.height / scale });
  }
  return rows;
}

function arranged(
  seen: readonly Seen[],
  scale: number,
  most: number,
): { readonly marks: readonly Mark[]; readonly widthMm: number; readonly heightMm: number } {
  const marks: Mark[] = [];
  let y = MARGIN;
  let widest = 0;
  for (const row of inRows(seen, scale, most)) {
    let x = MARGIN;
    let lines = 0;
    for (const one of row.pieces) {
      const width = cellWidth(one, scale);
      const left = x + (width - one.width / scale) / 2;
      const top = y + row.height - one.height / scale;
      marks.push(pieceGroup(one, { scale, left, top }));
      const { caption } = one;
      marks.push(...captionMarks(caption, x + width / 2, y + row.height + 2));
      lines = Math.max(lines, caption.length);
      x += width + GAP;
    }
    widest = Math.max(widest, x - GAP + MARGIN);
    y += row.height + 2 + lines * LINE + GAP / 2;
  }
  return { marks, widthMm: Math.max(widest, 70), heightMm: y };
}

const captionMarks = (lines: readonly string[], x: number, y: number): Mark[] =>
  lines.map((text, i) => ({
    kind: 'text',
    at: [x, y + (i + 1) * LINE - 1],
    text,
    sizeMm: CAPTION,
    align: 'middle',
    weight: i === 0 ? 'bold' : 'regular',
  }));

interface Placing {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

function pieceGroup(seen: Seen, { scale, left, top }: Placing): Group {
  const at = (patch: SeenPatch, corner: number): readonly [number, number] => [
    (patch.corners[2 * corner]! - seen.left) / scale,
    (patch.corners[2 * corner + 1]! - seen.top) / scale,
  ];
  return {
    kind: 'group',
    at: [left, top],
    title: seen.piece.name,
    stroke: { ink: 'faint', widthMm: 0.07, ends: 'round' },
    marks: inOrder(
      seen.piece,
      seen.patches.map((patch) => patchMarks(patch, (corner) => at(patch, corner))),
    ),
  };
}

/**
 * Nearer stitches cover those behind, lines and all. In plain rounds that lie flat nothing is behind, and a
 * stitch would only cover half the line beside it: there all areas come first. Chains do lie over stitches.
 */
function inOrder(piece: ShapedPiece, patches: readonly (readonly Mark[])[]): readonly Mark[] {
  const { dimensions, foldedShare, girths, graph } = piece;
  const isSheet =
    dimensions.pose === 'flat' &&
    foldedShare === 0 &&
    girths.length === graph.rows.filter(({ record }) => record).length &&
    girths.every(({ lies, hasSpaces }) => lies === 'flat' && !hasSpaces);
  if (!isSheet) return patches.flat();
  return [...patches.map(([area]) => area!), ...patches.flatMap((marks) => marks.slice(1))];
}

type Corner = (corner: number) => readonly [number, number];

/** The patch, then its row line and open sides, then hatching. */
function patchMarks(patch: SeenPatch, at: Corner): readonly Mark[] {
  const [a, b, c, d] = [at(0), at(1), at(2), at(3)];
  const area: Path = {
    kind: 'path',
    steps: [['M', ...a], ['L', ...b], ['L', ...c], ['L', ...d], ['Z']],
    fill: patch.isWrongSide ? 'wash' : 'paper',
    origin: patch.origin,
  };
  const lines: PathStep[] = [
    ['M', ...b],
    ['L', ...c],
  ];
  if (patch.edges.first) lines.push(['M', ...a], ['L', ...b]);
  if (patch.edges.second) lines.push(['M', ...d], ['L', ...c]);
  const row: Path = {
    kind: 'path',
    steps: lines,
    fill: 'none',
    stroke: { ink: 'soft', widthMm: 0.12, ends: 'round' },
  };
  const start = patch.start && startMark(patch.start, at);
  return [area, row, ...hatching(patch.shade, [a, b, c, d]), ...(start ? [start] : [])];
}

/** From bottom to top at either side, so that the two stitches beside it draw the same dashes. */
function startMark({ side, isKnown }: StartEdge, at: Corner): Path {
  const [bottom, top] = side === 'first' ? [at(0), at(1)] : [at(3), at(2)];
  const stroke: Stroke = {
    ink: 'ink',
    widthMm: 0.35,
    ends: isKnown ? 'round' : 'flat',
    ...(!isKnown && { dashMm: [0.6, 0.6] }),
  };
  return {
    kind: 'path',
    steps: [
      ['M', ...bottom],
      ['L', ...top],
    ],
    fill: 'none',
    stroke,
  };
}

/** Shade from which one, two and three lines are drawn along the stitch. */
const HATCH = [0.45, 0.65, 0.85] as const;

function hatching(shade: number, corners: readonly (readonly [number, number])[]): readonly Mark[] {
  const n = HATCH.filter((from) => shade > from).length;
  if (n === 0) return [];
  const [a, b, c, d] = corners as [Place, Place, Place, Place];
  const steps: PathStep[] = [];
  for (let k = 1; k <= n; k++) {
    const t = k / (n + 1);
    steps.push(['M', ...between(a, d, t)], ['L', ...between(b, c, t)]);
  }
  return [{ kind: 'path', steps, fill: 'none', stroke: { ink: 'soft', widthMm: 0.08 } }];
}

type Place = readonly [number, number];

const between = (a: Place, b: Place, t: number): Place => [
  a[0] + t * (b[0] - a[0]),
  a[1] + t * (b[1] - a[1]),
];
