/**
 * The nearest other counts at another gauge. Counts that keep every demand which the pattern's own
 * count meets lie a fixed step apart: mesh, equal faces, a word in the middle, handles, the rounds of
 * a base, a repeat. They are searched for the size that the pattern has at its own gauge.
 */
import type { Cloth, Fabric } from '../fabric/index.ts';
import type { Gauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { chartOver } from './chart-row.ts';
import { phasesOf, type SizedRow } from './phases.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { newSizeTable, rowSize } from './row-size.ts';

/** One thing that the count must keep, as a step and a sentence. */
export interface Demand {
  readonly step: number;
  readonly because: string;
}

export interface OtherCount {
  readonly count: number;
  readonly mm: number;
  /** Chains to begin an oval or rows with; `null` elsewhere. */
  readonly chains: number | null;
}

export interface Refit {
  readonly name: string;
  readonly count: number;
  /** Size at the pattern's own gauge: what is aimed at. */
  readonly wantedMm: number;
  /** Size that the same count gives at the other gauge. */
  readonly sameCountMm: number;
  readonly demands: readonly Demand[];
  /** The least count that holds the motif; 0 where there is none. */
  readonly least: number;
  /** Nearest below and above the size wanted, nearest first; empty: none is within a tenth. */
  readonly others: readonly OtherCount[];
}

/** A count further off than this makes another piece (ours). */
const FURTHEST = 0.1;

export function refit(
  cloth: Cloth,
  scene: { manuscript: Manuscript; fabric: Fabric; own: Gauges; other: Gauges },
): readonly Refit[] {
  const { manuscript, fabric, own, other } = scene;
  const tables = [newSizeTable(own, fabric.kinds), newSizeTable(other, fabric.kinds)] as const;
  return piecesOf(cloth, fabric.kinds).flatMap((piece) => {
    if (piece.start === 'edge') return [];
    const sized = tables.map((table) =>
      piece.rows.map((row) => ({ row, size: rowSize(row, table) })),
    ) as [SizedRow[], SizedRow[]];
    const at = typicalRow(piece, sized[0]);
    if (at === null) return [];
    return [
      refitPiece(piece, { manuscript, rows: sized[0], mine: sized[0][at]!, theirs: sized[1][at]! }),
    ];
  });
}

/** A row of the longest even run: what the tape is laid round. */
function typicalRow(piece: Piece, rows: readonly SizedRow[]): number | null {
  const phases = phasesOf(
    piece,
    rows.map(({ size }) => size),
  );
  let best: SizedRow | null = null;
  let most = 0;
  for (const phase of phases) {
    const isEven = phase.growth === 'even' || !phase.isRing;
    if (isEven && phase.rows.length > most) [best, most] = [phase.rows[0]!, phase.rows.length];
  }
  return best ? rows.indexOf(rows.find(({ row }) => row === best.row)!) : null;
}

interface Context {
  readonly manuscript: Manuscript;
  readonly rows: readonly SizedRow[];
  readonly mine: SizedRow;
  readonly theirs: SizedRow;
}

function refitPiece(piece: Piece, { manuscript, rows, mine, theirs }: Context): Refit {
  const count = mine.size.places;
  const demands = demandsOf(piece, rows, manuscript);
  const step = demands.reduce((sum, demand) => leastCommon(sum, demand.step), 1);
  const perStitch = theirs.size.width.mm / count;
  const least = leastFor(rows, manuscript);
  const wantedMm = mine.size.width.mm;
  const others = nearest({ count, step, least, wanted: wantedMm / perStitch })
    .map((other) => ({
      count: other,
      mm: other * perStitch,
      chains: chainsFor(piece, other - count),
    }))
    .filter(({ mm }) => Math.abs(mm / wantedMm - 1) <= FURTHEST);
  return {
    name: piece.name,
    count,
    wantedMm,
    sameCountMm: theirs.size.width.mm,
    demands,
    least,
    others,
  };
}

const leastCommon = (a: number, b: number): number => (a * b) / greatestCommon(a, b);
const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/** The two counts of the ladder that lie around the wanted one, the nearer first. */
function nearest(ladder: { count: number; step: number; least: number; wanted: number }): number[] {
  const { count, step, least, wanted } = ladder;
  const rungs = Math.floor((wanted - count) / step);
  const two = [count + rungs * step, count + (rungs + 1) * step];
  return two
    .filter((each) => each > 0 && each >= least)
    .sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
}

/** Two stitches of an oval's round are one chain; in rows a stitch is a chain. */
function chainsFor(piece: Piece, more: number): number | null {
  if (piece.start === 'oval') return piece.foundation + more / 2;
  return piece.start === 'chain' || piece.start === 'loop' ? piece.foundation + more : null;
}

function demandsOf(
  piece: Piece,
  rows: readonly SizedRow[],
  manuscript: Manuscript,
): readonly Demand[] {
  const demands: Demand[] = [];
  const isRing = rows[0]!.row.ring;
  const perBox = boxStitches(rows);
  if (perBox > 1)
    demands.push({ step: perBox, because: `a box of the mesh is ${perBox} stitches` });
  const hasChart = rows.some(({ row }) => chartOver(row, manuscript) !== null);
  const straps = rows.find(({ size }) => size.straps > 0);
  if (isRing && (hasChart || straps)) {
    demands.push({ step: 2 * perBox, because: 'front and back are alike' });
  }
  if (hasChart) {
    const faces = isRing ? 2 : 1;
    demands.push({
      step: 2 * faces * perBox,
      because: 'the motif stays as near the middle as it is',
    });
  }
  if (straps) {
    demands.push({ step: 2 * straps.size.straps, because: 'both ends of each handle stand alike' });
  }
  const growth = growthOf(piece, rows);
  if (growth > 1) demands.push({ step: growth, because: `the base grows by ${growth} a round` });
  if (piece.start === 'oval')
    demands.push({ step: 2, because: 'both sides of the chain are alike' });
  const repeat = repeatSaid(manuscript.text);
  if (repeat > 1)
    demands.push({ step: repeat, because: `the pattern repeats over ${repeat} stitches` });
  return demands;
}

/** Stitches that the boxes of a mesh take; 1 without a mesh. */
function boxStitches(rows: readonly SizedRow[]): number {
  const mesh = rows.filter(({ size }) => size.isMesh);
  const gaps = mesh.flatMap(({ row }) => row.tally.spaces.map(({ chains }) => chains + 1));
  return gaps.length === 0 ? 1 : Math.min(...gaps);
}

/** A face must hold the motif and a box on either side. */
function leastFor(rows: readonly SizedRow[], manuscript: Manuscript): number {
  let widest = 0;
  for (const { row } of rows) widest = Math.max(widest, chartOver(row, manuscript) ?? 0);
  if (widest === 0) return 0;
  return (rows[0]!.row.ring ? 2 : 1) * (widest + 2) * boxStitches(rows);
}

/** A round base that grows by the same number a round: a round more or less is such a step. */
function growthOf(piece: Piece, rows: readonly SizedRow[]): number {
  if (piece.start !== 'ring') return 1;
  const growths: number[] = [];
  for (let at = 1; at < rows.length; at++) {
    const by = rows[at]!.size.places - rows[at - 1]!.size.places;
    if (by <= 0) break;
    growths.push(by);
  }
  const [first = 1] = growths;
  return growths.every((by) => by === first) ? first : 1;
}

/** "Multiple of 14 plus 2" in the notes. */
function repeatSaid(text: string): number {
  const found = /\bmultiples? of (\d{1,3})\b/i.exec(text.slice(0, 100_000));
  return found ? Number(found[1]) : 1;
}
