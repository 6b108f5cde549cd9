/**
 * How far the start of round has wandered where it matters: at the first round of a motif, at the
 * handles, else at the last round of a piece.
 */
import type { Cloth, Fabric, RowRecord } from '../fabric/index.ts';
import { type Gauges, readGauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { chartOver } from './chart-row.ts';
import type { Figure } from './figure.ts';
import { type Lean, leanOf, readLean } from './lean.ts';
import { LEAST_LEAN, type LeanPlace, type Remedy, remediesFor } from './lean-remedies.ts';
import { phasesOf, type SizedRow } from './phases.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { newSizeTable, rowSize } from './row-size.ts';

export interface PieceLean {
  readonly name: string;
  readonly what: LeanPlace['what'];
  /** Label of the first round of the motif or the handles; of the last round of all at the end. */
  readonly at: string;
  /** Label of the last round counted. */
  readonly until: string;
  /** Label of the first round counted. */
  readonly from: string;
  /** From the rim of the base up to it. */
  readonly upMm: number;
  readonly lean: Lean;
  readonly remedies: readonly Remedy[];
}

/** The lean as lengths that are printed: no finer than stitches are known. */
export const leanFigures = ({ lean: { mm } }: PieceLean): { from: Figure; to: Figure } => ({
  from: leanFigure(mm.from),
  to: leanFigure(mm.to),
});

const leanFigure = (mm: number): Figure => ({
  mm: Math.abs(mm),
  spread: 0.03,
  how: 'estimate',
  because: [],
});

export interface LeanScene {
  readonly manuscript: Manuscript;
  readonly fabric: Fabric;
  readonly gauges: Gauges;
}

/** Of every piece worked in rounds whose start wanders by a stitch or more. */
export function leansOf(cloth: Cloth, scene: LeanScene): readonly PieceLean[] {
  return sizedPieces(cloth, scene).flatMap(({ piece, rows }) => {
    const marks = marksIn(rows, scene.manuscript, hasFront(piece));
    return marks.flatMap((mark) => leanAt(piece, { ...mark, rows, scene }) ?? []);
  });
}

/**
 * How far the start has wandered before this row, by the rounds of its piece beneath it; `null` for
 * rows that are no rounds, on round bases, and where it is less than a stitch.
 */
export function leanBefore(
  row: RowRecord,
  { manuscript, fabric }: Pick<LeanScene, 'manuscript' | 'fabric'>,
): PieceLean | null {
  const cloth = fabric.cloths[row.sizeIndex];
  if (!cloth || !row.ring) return null;
  const scene = { manuscript, fabric, gauges: readGauges(manuscript) };
  for (const { piece, rows } of sizedPieces(cloth, scene)) {
    const before = rows.findIndex((one) => one.row === row);
    if (before > 0 && hasFront(piece)) {
      return leanAt(piece, { rows, what: 'motif', from: 0, before, scene });
    }
  }
  return null;
}

function sizedPieces(
  cloth: Cloth,
  { fabric, gauges }: LeanScene,
): readonly { piece: Piece; rows: readonly SizedRow[] }[] {
  const table = newSizeTable(gauges, fabric.kinds);
  return piecesOf(cloth, fabric.kinds).map((piece) => ({
    piece,
    rows: piece.rows.map((row) => ({ row, size: rowSize(row, table) })),
  }));
}

/** An oval has a front; a round base has none of its own, so a motif may stand anywhere on it. */
const hasFront = ({ start }: Piece): boolean => start === 'oval';

interface LeanMark {
  readonly what: LeanPlace['what'];
  /** Rows counted: the first, and the one that the mark stands on. */
  readonly from: number;
  readonly before: number;
}

function marksIn(
  rows: readonly SizedRow[],
  manuscript: Manuscript,
  hasFront: boolean,
): readonly LeanMark[] {
  const motif = rows.findIndex(({ row }) => chartOver(row, manuscript) !== null);
  const handles = rows.findIndex(({ size }) => size.straps > 0);
  // Where nothing tells the front, it only shows how far motif and handles come apart.
  const from = hasFront ? 0 : motif;
  const marks: LeanMark[] = [
    ...(motif > 0 && hasFront ? [{ what: 'motif' as const, from: 0, before: motif }] : []),
    ...(handles > 0 && from >= 0 ? [{ what: 'handles' as const, from, before: handles }] : []),
  ];
  return marks.length > 0 ? marks : [{ what: 'end', from: 0, before: rows.length }];
}

interface MarkAt extends LeanMark {
  readonly rows: readonly SizedRow[];
  readonly scene: LeanScene;
}

function leanAt(piece: Piece, { rows, what, from, before, scene }: MarkAt): PieceLean | null {
  const { manuscript } = scene;
  const beneath = rows.slice(from, before);
  const { terms } = manuscript.terms;
  const lean = leanOf(beneath, readLean(manuscript.head.data.lean, terms), terms);
  const last = beneath.at(-1);
  if (!lean || !last || !isWorthSaying(lean, what)) return null;
  const gap = last.row.tally.spaces[0]?.chains ?? 1;
  const place: LeanPlace = {
    what,
    at: rows[before]?.row.label ?? last.row.label,
    count: last.size.places,
    rounds: lean.knownRounds,
    isSpiral: !beneath.some(({ row }) => row.joined),
    boxStitches: last.size.isMesh ? gap + 1 : 1,
  };
  return {
    name: piece.name,
    what,
    at: place.at,
    from: beneath[0]!.row.label,
    until: last.row.label,
    upMm: upTo(piece, rows, before),
    lean,
    remedies: remediesFor(lean, place),
  };
}

/**
 * A stitch and more; and what is not known, where something has a place that it would move. Of lace,
 * where hardly a round is known, a sum would say nothing.
 */
function isWorthSaying(lean: Lean, what: LeanPlace['what']): boolean {
  if (what === 'end') return isLeanFelt(lean);
  return Math.abs(lean.stitches.to) >= LEAST_LEAN || lean.unknownRounds >= MANY_UNKNOWN;
}

/** Does the start of round wander by a stitch and more, as far as it is known of most rounds? */
export const isLeanFelt = ({ stitches, unknownRounds, knownRounds }: Lean): boolean =>
  Math.abs(stitches.to) >= LEAST_LEAN && unknownRounds <= knownRounds;

/** So many rounds of unknown lean may add up to a stitch, if they lean as sc does. */
const MANY_UNKNOWN = 3;

/** Height of the rows beneath that stand up: those of a base lie. */
function upTo(piece: Piece, rows: readonly SizedRow[], before: number): number {
  const sizes = rows.map(({ size }) => size);
  const [base] = phasesOf(piece, sizes);
  const from = base?.growth === 'grows' ? base.rows.length : 0;
  return sizes.slice(from, before).reduce((mm, { height }) => mm + height.mm, 0);
}
