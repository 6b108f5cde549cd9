/**
 * The nearest other counts at another gauge. Counts that keep every demand which the pattern's own
 * count meets lie a fixed step apart: mesh, equal faces, a word in the middle, handles, the rounds of
 * a base, a repeat. They are searched for the size that the pattern has at its own gauge.
 */
import type { Cloth, Fabric } from '../fabric/index.ts';
import type { Gauges } from '../gauge/index.ts';
import type { Manuscript } from '../manuscript/index.ts';
import { ballOf } from './ball.ts';
import { type Demand, demandsOf, leastFor } from './demands.ts';
import { type Figure, times } from './figure.ts';
import { phasesOf, type SizedRow } from './phases.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { type PartRows, partRows } from './refit-rows.ts';
import { newSizeTable, rowSize } from './row-size.ts';

export interface OtherCount {
  readonly count: number;
  readonly size: Figure;
  /** Chains to make, with those skipped at the start; `null` where it begins with none. */
  readonly chains: number | null;
}

export interface Refit {
  readonly name: string;
  /** `null` where no row runs even: a shawl, a motif, a filled ball. */
  readonly counts: CountRefit | null;
  /** Parts whose height changes by half a row and more, with the rows that would keep it. */
  readonly rows: readonly PartRows[];
}

export interface CountRefit {
  readonly count: number;
  /** Size at the pattern's own gauge: what is aimed at. */
  readonly wanted: Figure;
  /** Size that the same count gives at the other gauge. */
  readonly sameCount: Figure;
  readonly demands: readonly Demand[];
  /** The least count that holds the motif as the pattern does; 0 where there is none. */
  readonly least: number;
  /** Nearest below and above the size wanted, nearest first; empty: none is within a tenth. */
  readonly others: readonly OtherCount[];
  /** Where none is: the nearest all the same; `null` where none holds the motif. */
  readonly nearest: OtherCount | null;
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
    const [mine, theirs] = tables.map((table) =>
      piece.rows.map((row) => ({ row, size: rowSize(row, table) })),
    ) as [SizedRow[], SizedRow[]];
    const sizes = mine.map(({ size }) => size);
    // A filled piece is what its counts make of it: at another gauge it is larger or smaller.
    if (ballOf(piece, phasesOf(piece, sizes))) return [];
    const at = typicalRow(piece, mine);
    const rows = partRows(piece, { mine, theirs, manuscript });
    const context = { manuscript, rows: mine, theirs: theirs[at ?? 0]! };
    const counts = at === null ? null : countRefit(piece, { ...context, mine: mine[at]! });
    return counts || rows.length > 0 ? [{ name: piece.name, counts, rows }] : [];
  });
}

/** Fewer even rows than this, and under half of all, are no stretch that a tape is laid to: ours. */
const LEAST_EVEN = 3;

/** A row of the longest even run: what the tape is laid to. `null`: every row is shaped. */
function typicalRow(piece: Piece, rows: readonly SizedRow[]): number | null {
  const phases = phasesOf(
    piece,
    rows.map(({ size }) => size),
  );
  let best: SizedRow | null = null;
  let most = 0;
  for (const phase of phases) {
    const isKnown = phase.rows[0]!.size.places > 0;
    if (isKnown && phase.growth === 'even' && phase.rows.length > most)
      [best, most] = [phase.rows[0]!, phase.rows.length];
  }
  const isTypical = most >= LEAST_EVEN || 2 * most >= rows.length;
  return best && isTypical ? rows.findIndex(({ row }) => row === best.row) : null;
}

interface Context {
  readonly manuscript: Manuscript;
  readonly rows: readonly SizedRow[];
  readonly mine: SizedRow;
  readonly theirs: SizedRow;
}

function countRefit(piece: Piece, { manuscript, rows, mine, theirs }: Context): CountRefit {
  const count = mine.size.places;
  const demands = demandsOf(piece, rows, { manuscript, count });
  const step = demands.reduce((sum, demand) => leastCommon(sum, demand.step), 1);
  const perStitch = times(theirs.size.width, 1 / count);
  const least = leastFor(rows, manuscript);
  const wanted = mine.size.width;
  const found = nearest({ count, step, least, wanted: wanted.mm / perStitch.mm }).map((other) => ({
    count: other,
    size: times(perStitch, other),
    chains: chainsFor(piece, other - count),
  }));
  const possible = found.filter(({ chains }) => !begins(piece) || chains !== null);
  const others = possible.filter(({ size }) => Math.abs(size.mm / wanted.mm - 1) <= FURTHEST);
  const near = others.length === 0 ? (possible[0] ?? null) : null;
  return { count, wanted, sameCount: theirs.size.width, demands, least, others, nearest: near };
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
  const chains = piece.chains + (piece.start === 'oval' ? more / 2 : more);
  return begins(piece) && chains > 1 ? chains : null;
}

const begins = ({ start, chains }: Piece): boolean =>
  chains > 0 && (start === 'chain' || start === 'loop' || start === 'oval');
