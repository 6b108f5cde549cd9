/**
 * The nearest other counts at another gauge. Counts that keep every demand which the pattern's own
 * count meets lie a fixed step apart: mesh, equal faces, a word in the middle, handles, the rounds of
 * a base, a repeat. They are searched for the size that the pattern has at its own gauge.
 */
import type { Cloth, Fabric } from '../fabric/index.ts';
import type { Gauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { type Demand, demandsOf, leastFor } from './demands.ts';
import { phasesOf, type SizedRow } from './phases.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { type PartRows, partRows } from './refit-rows.ts';
import { newSizeTable, rowSize } from './row-size.ts';

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
  /** The least count that holds the motif as the pattern does; 0 where there is none. */
  readonly least: number;
  /** Nearest below and above the size wanted, nearest first; empty: none is within a tenth. */
  readonly others: readonly OtherCount[];
  /** Where none is: the nearest all the same; `null` where none holds the motif. */
  readonly nearest: OtherCount | null;
  /** Parts whose height changes by half a row and more, with the rows that would keep it. */
  readonly rows: readonly PartRows[];
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
      refitPiece(piece, {
        manuscript,
        rows: sized[0],
        theirRows: sized[1],
        mine: sized[0][at]!,
        theirs: sized[1][at]!,
      }),
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
  readonly theirRows: readonly SizedRow[];
  readonly mine: SizedRow;
  readonly theirs: SizedRow;
}

function refitPiece(piece: Piece, context: Context): Refit {
  const { manuscript, rows, mine, theirs } = context;
  const count = mine.size.places;
  const demands = demandsOf(piece, rows, { manuscript, count });
  const step = demands.reduce((sum, demand) => leastCommon(sum, demand.step), 1);
  const perStitch = theirs.size.width.mm / count;
  const least = leastFor(rows, manuscript);
  const wantedMm = mine.size.width.mm;
  const found = nearest({ count, step, least, wanted: wantedMm / perStitch }).map((other) => ({
    count: other,
    mm: other * perStitch,
    chains: chainsFor(piece, other - count),
  }));
  const others = found.filter(({ mm }) => Math.abs(mm / wantedMm - 1) <= FURTHEST);
  return {
    name: piece.name,
    count,
    wantedMm,
    sameCountMm: theirs.size.width.mm,
    demands,
    least,
    others,
    nearest: others.length === 0 ? (found[0] ?? null) : null,
    rows: partRows(piece, { mine: context.rows, theirs: context.theirRows, manuscript }),
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
