/** The measures of every part: what a maker would lay the tape to. */
import type { Cloth, Fabric, KindTable } from '../fabric/index.ts';
import type { Gauges } from '../gauge/index.ts';
import { ballOf } from './ball.ts';
import { blocksLength, type CornerBlocks, cornerBlocks } from './corner-blocks.ts';
import { withEdgings } from './edgings.ts';
import { type Figure, sumOf, times } from './figure.ts';
import { cornersIn, type MotifForm, motifForm, motifMeasures } from './motif.ts';
import { ovalPart } from './oval.ts';
import { acrossRound, liesFlat, type Phase, phasesOf, riseOf } from './phases.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { type RowSpan, rowOutline } from './row-outline.ts';
import { newSizeTable, type RowSize, rowSize, type SizeTable } from './row-size.ts';

export type Form =
  | 'round base'
  | 'oval base'
  | 'closed end'
  | MotifForm
  | 'tube'
  | 'cone'
  | 'closing'
  | 'ball'
  | 'flat piece'
  | 'shaped piece'
  | 'centre-out piece'
  | 'corner to corner'
  | 'edging'
  | 'straps';

/**
 * around: a circumference; flat: half of it, as the piece lies; high: along the work, standing up;
 * across: a diameter or the distance between sides; deep: from the start of a shawl to its last edge; side:
 * one of a motif; strap, opening: of one handle. middle to edge:
 * along the fabric from the middle of a round base, as the depth of a hat is measured.
 */
export type MeasureName =
  | 'around'
  | 'flat'
  | 'high'
  | 'across'
  | 'long'
  | 'wide'
  | 'first edge'
  | 'last edge'
  | 'deep'
  | 'side'
  | 'strap'
  | 'opening'
  | 'middle to edge';

export type Measures = Partial<Record<MeasureName, Figure>>;

export interface PartSize {
  readonly name: string;
  readonly form: Form;
  readonly rows: number;
  /** "Rnds 4-24", by the pattern's own labels. */
  readonly labels: string;
  readonly measures: Measures;
  /** Of a shaped piece: its rows above each other, the first at the bottom. */
  readonly outline?: readonly RowSpan[];
  /** Of a centre-out piece: points that open from its start, between its two ends; 0: none known. */
  readonly points?: number;
}

export interface PieceSize {
  readonly name: string;
  readonly copies: number;
  readonly parts: readonly PartSize[];
  /** Of the whole piece where it is more than its parts: height to the rim, a ball's. */
  readonly whole: Measures;
}

/** Sizes of all pieces in one size of the pattern. */
export function pieceSizes(cloth: Cloth, fabric: Fabric, gauges: Gauges): readonly PieceSize[] {
  const table = newSizeTable(gauges, fabric.kinds);
  const pieces = piecesOf(cloth, fabric.kinds);
  return withEdgings(
    pieces,
    pieces.map((piece) => withoutNothing(pieceSize(piece, table, cloth))),
  );
}

/** Rows of which nothing was read have no width: that is no length of nought. */
function withoutNothing(piece: PieceSize): PieceSize {
  const parts = piece.parts.map((part) => {
    const known = Object.entries(part.measures).filter(([, { mm }]) => mm > 0);
    return { ...part, measures: Object.fromEntries(known) };
  });
  return { ...piece, parts };
}

function pieceSize(piece: Piece, table: SizeTable, cloth: Cloth): PieceSize {
  const sizes = piece.rows.map((row) => rowSize(row, table));
  const { name, copies } = piece;
  const growsOn = piece.start === 'edge' && isOnPart(piece, sizes, table);
  if (piece.start === 'edge' && !growsOn)
    return { name, copies, parts: [edging(piece, sizes)], whole: {} };
  if (piece.start === 'chain' || growsOn)
    return { name, copies, parts: [flat(piece, sizes, { cloth, kinds: table.kinds })], whole: {} };
  const phases = phasesOf(piece, sizes);
  const measures = ballOf(piece, phases);
  if (measures) {
    const rows = phases.flatMap((phase) => phase.rows);
    const ball = { name, form: 'ball' as const, rows: rows.length, labels: labelsOf({ rows }) };
    return { name, copies, parts: [{ ...ball, measures }], whole: {} };
  }
  const parts = phases.map((phase, at) => ringPart(phase, { piece, table, isFirst: at === 0 }));
  return { name, copies, parts, whole: wholeOf(piece, parts, phases) };
}

/**
 * Rows on part of a row go on from it, as a lobe, a strap or one side of a neck does; along most of it
 * they are an edging.
 */
function isOnPart(
  { rows, beneath }: Piece,
  [first]: readonly RowSize[],
  table: SizeTable,
): boolean {
  if (!first || !beneath || rows[0]!.ring || rows.length < 2) return false;
  return first.places < ON_PART * rowSize(beneath, table).places;
}

/** Ours: an edging leaves out less than this of what it goes along. */
const ON_PART = 0.7;

const labelsOf = (piece: Pick<Phase, 'rows'>): string => {
  const first = piece.rows[0]!.row.label;
  const last = piece.rows.at(-1)!.row.label;
  // "Rep Row 2 until it measures" has rows without a label of their own.
  if (last === '') return `${first} on, ${piece.rows.length} rows in all`;
  if (first === last) return first;
  const [, word = '', n = ''] = /^(.*?)(\d+)$/.exec(first) ?? [];
  const end = /\d+$/.exec(last)?.[0];
  if (!n || !end) return `${first} to ${last}`;
  // "R1-30" and "1-30", as they are written.
  return /^r?$/i.test(word) ? `${word}${n}-${end}` : `${word.trim()}s ${n}-${end}`;
};

interface RingContext {
  readonly piece: Piece;
  readonly table: SizeTable;
  readonly isFirst: boolean;
}

function ringPart(phase: Phase, context: RingContext): PartSize {
  const rest = { name: phase.name, rows: phase.rows.length, labels: labelsOf(phase) };
  if (phase.growth === 'straps') return { ...rest, form: 'straps', measures: straps(phase) };
  if (phase.growth === 'even') {
    const around = typicalWidth(phase.rows.map(({ size }) => size));
    const measures = { around, flat: times(around, 1 / 2), high: phase.along };
    return { ...rest, form: 'tube', measures };
  }
  if (context.isFirst && phase.growth === 'grows') return { ...rest, ...base(phase, context) };
  const { end, widest, along } = phase;
  const form = phase.growth === 'grows' ? 'cone' : 'closing';
  const rise = riseOf(phase);
  // A yoke that lies flat has a depth and no height.
  const height = rise.mm === 0 ? { deep: along } : { high: rise };
  // One round that closes has no other girth than its own.
  const around = widest.mm === end.mm && form === 'closing' ? {} : { around: widest };
  return { ...rest, form, measures: { ...around, 'last edge': end, ...height } };
}

function base(phase: Phase, { piece, table }: RingContext): Pick<PartSize, 'form' | 'measures'> {
  const { end } = phase;
  if (piece.start === 'oval') return ovalPart(phase, piece.foundation, table);
  const motif = motifForm(phase);
  if (motif) return { form: motif, measures: motifMeasures(phase, motif) };
  if (!liesFlat(phase)) {
    return {
      form: 'cone',
      measures: { around: end, across: times(end, 1 / Math.PI), high: riseOf(phase) },
    };
  }
  const across = acrossRound(phase);
  const isLace = phase.rows.some(({ size }) => size.isLoose);
  return { form: 'round base', measures: isLace ? { across } : { across, around: end } };
}

function straps(phase: Phase): Measures {
  const strapRow = phase.rows.find(({ size }) => size.strapChains > 0)!;
  const { row, size } = strapRow;
  const perPlace = times(size.width, 1 / size.places);
  const strap = times(perPlace, size.strapChains / size.straps);
  const skipped = row.available - row.tally.stitches;
  return {
    strap,
    ...(skipped > 0 && { opening: times(perPlace, skipped / size.straps) }),
    high: phase.along,
  };
}

/** Height of all that stands, and from the middle of a round base down to the last row but straps. */
function wholeOf({ start }: Piece, parts: readonly PartSize[], phases: readonly Phase[]): Measures {
  const standing = parts.flatMap(({ form, measures }) =>
    FLAT.has(form) ? [] : (measures.high ?? []),
  );
  const high = standing.length < 2 ? {} : { high: sumOf(standing) };
  const cloth = phases.filter(({ growth }) => growth !== 'straps');
  const isCrown =
    start === 'ring' &&
    phases[0]!.growth === 'grows' &&
    cloth.length > 1 &&
    cloth.length === phases.length;
  if (!isCrown) return high;
  return { ...high, 'middle to edge': sumOf(cloth.map(({ along }) => along)) };
}

/** Forms that lie on the table, and what stands on them begins anew. */
const FLAT: ReadonlySet<Form> = new Set<Form>([
  'round base',
  'oval base',
  'triangle',
  'square',
  'pentagon',
  'hexagon',
]);

/** Widths within a hundredth are one width (ours). */
const ALIKE = 0.01;

/** Rows may alternate between fabrics: the tape shows what the counted fabric gives. */
function typicalWidth(sizes: readonly RowSize[]): Figure {
  const sure = sizes.filter(({ width }) => width.how === 'swatch');
  const some = (sure.length > 0 ? sure : sizes).map(({ width }) => width);
  const sorted = [...some].sort((a, b) => a.mm - b.mm);
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  // Of fabrics that are as wide, the one that was counted more surely.
  const isAlike = ({ mm }: Figure): boolean => Math.abs(mm - middle.mm) < ALIKE * middle.mm;
  return sorted.reduce((a, b) => (isAlike(b) && b.spread < a.spread ? b : a), middle);
}

/** Loops hang from the row beneath, which is as long as the edge is. */
const edgeOf = (sizes: readonly RowSize[]): Figure =>
  (sizes.findLast(({ isLoops }) => !isLoops) ?? sizes.at(-1)!).width;

/** Rows that differ by no more than this are edges that wave, not shaping (ours). */
const SHAPED = 1.08;

function flat(piece: Piece, sizes: readonly RowSize[], ground: Ground): PartSize {
  const rows = piece.rows.map((row, at) => ({ row, size: sizes[at]! }));
  const counts = sizes.map(({ places }) => places);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const long = sumOf(sizes.map(({ height }) => height));
  const rest = { name: piece.name, rows: rows.length, labels: labelsOf({ rows }) };
  const blocks = cornerBlocks(rows);
  if (blocks) return { ...rest, ...fromCorner(blocks, sizes.at(-1)!) };
  if (most <= SHAPED * least) {
    return { ...rest, form: 'flat piece', measures: { wide: typicalWidth(sizes), long } };
  }
  const plain = sizes.filter(({ isLoops }) => !isLoops);
  const widest = (plain.length > 0 ? plain : sizes).reduce((a, b) =>
    b.places > a.places ? b : a,
  ).width;
  const [first, last] = [sizes[0]!.width, edgeOf(sizes)];
  const { rows: outline, isFan } = rowOutline(rows, ground);
  // Laid out, a fan is as wide as its corner is open: only its edge and its depth are known.
  if (isFan) {
    const measures = { 'last edge': last, deep: long };
    return { ...rest, form: 'centre-out piece', measures, points: cornersIn(rows) };
  }
  const measures = { 'first edge': first, wide: widest, 'last edge': last, long };
  return { ...rest, form: 'shaped piece', measures, outline };
}

function fromCorner(blocks: CornerBlocks, last: RowSize): Pick<PartSize, 'form' | 'measures'> {
  const one = times(last.width, 1 / last.places);
  const [wide, long] = [blocks.wide, blocks.long].map((n) => blocksLength(n, blocks.stitches, one));
  const measures = blocks.isHalf ? { side: wide! } : { wide: wide!, long: long! };
  return { form: 'corner to corner', measures };
}

interface Ground {
  readonly cloth: Cloth;
  readonly kinds: KindTable;
}

function edging(piece: Piece, sizes: readonly RowSize[]): PartSize {
  const rows = piece.rows.map((row, at) => ({ row, size: sizes[at]! }));
  const long = edgeOf(sizes);
  const wide = sumOf(sizes.map(({ height }) => height));
  const rest = { name: piece.name, rows: rows.length, labels: labelsOf({ rows }) };
  return { ...rest, form: 'edging', measures: { long, wide } };
}
