/**
 * How many rows keep a part's height at another gauge. Rows of a chart stay as many as it has, so only
 * plain rows are counted more or fewer.
 */
import type { Manuscript } from '../manuscript/index.ts';
import { type StemId, wordFor } from '../notation/index.ts';
import { chartOver } from './chart-row.ts';
import { type Figure, sumOf, times } from './figure.ts';
import { type Phase, phasesOf, type SizedRow } from './phases.ts';
import type { Piece } from './pieces.ts';

export interface PartRows {
  /** Heading and labels of its first and last row. */
  readonly name: string;
  readonly first: string;
  readonly last: string;
  readonly rows: number;
  readonly wanted: Figure;
  readonly sameRows: Figure;
  /** Word of the stitch whose rows are counted, in the pattern's terms. */
  readonly stitch: string;
  readonly worked: 'rounds' | 'rows';
  /** Rows more that come nearest to the height wanted; negative for fewer. */
  readonly more: number;
  readonly size: Figure;
  /** high: along rows or rounds that run even; deep: from the start of a shawl; across: of a motif. */
  readonly way: 'high' | 'deep' | 'across';
}

interface Both {
  readonly mine: readonly SizedRow[];
  readonly theirs: readonly SizedRow[];
  readonly manuscript: Manuscript;
}

export function partRows(piece: Piece, { mine, theirs, manuscript }: Both): readonly PartRows[] {
  const sizes = mine.map(({ size }) => size);
  const phases = phasesOf(piece, sizes);
  let from = 0;
  return phases.flatMap((phase) => {
    const own = mine.slice(from, from + phase.rows.length);
    const other = theirs.slice(from, from + phase.rows.length);
    from += phase.rows.length;
    const way = wayOf(phase, phases, piece);
    // The base of a bag has as many rounds as its counts ask for.
    if (way === null) return [];
    // What is worked to a length keeps it by itself.
    if (own.some(({ row }) => row.facts.some(({ kind }) => kind === 'to-length'))) return [];
    const isLast = phase === phases.at(-1);
    return rowsOf({ mine: own, theirs: other, way, isLast, manuscript }) ?? [];
  });
}

/** What more rows or fewer change; `null`: not the size alone. */
function wayOf(phase: Phase, phases: readonly Phase[], { start }: Piece): PartRows['way'] | null {
  if (phase.growth === 'even') return 'high';
  const isAlone = phases.length === 1 && phase.growth === 'grows';
  if (!isAlone) return null;
  return start === 'ring' || start === 'oval' ? 'across' : 'deep';
}

/** Fewer rows than this are no stretch that could be shortened: ours. */
const LEAST_ROWS = 3;

interface Stretch extends Both {
  readonly way: PartRows['way'];
  /** No rows follow it. */
  readonly isLast: boolean;
}

function rowsOf({ mine, theirs, way, isLast, manuscript }: Stretch): PartRows | null {
  const free = theirs.filter(({ row, size }) => !size.isMesh && !chartOver(row, manuscript));
  const stem = commonest(free);
  if (stem === null || mine.length < LEAST_ROWS) return null;
  const plain = free.filter(({ size }) => size.stem === stem);
  const { height } = plain[0]!.size;
  const sides = way === 'across' ? 2 : 1;
  const sum = (rows: readonly SizedRow[]): Figure =>
    times(sumOf(rows.map(({ size }) => size.height)), sides);
  const [wanted, sameRows] = [sum(mine), sum(theirs)];
  // Turned rows change in twos where more rows follow, so that these keep their side.
  const isTurned = mine.some(({ row }) => row.side !== mine[0]!.row.side);
  const step = isTurned && !isLast ? 2 : 1;
  const more = step * Math.round((wanted.mm - sameRows.mm) / (sides * height.mm) / step);
  if (more === 0 || more <= -plain.length) return null;
  const [first, last] = [mine[0]!.row, mine.at(-1)!.row];
  const mm = sameRows.mm + more * sides * height.mm;
  return {
    name: first.part,
    first: first.label,
    last: last.label,
    rows: mine.length,
    wanted,
    sameRows,
    worked: first.ring ? 'rounds' : 'rows',
    stitch: wordFor(stem, manuscript.terms.terms),
    more,
    size: { ...sameRows, mm },
    way,
  };
}

function commonest(rows: readonly SizedRow[]): StemId | null {
  const tally = new Map<StemId, number>();
  for (const { size } of rows) tally.set(size.stem, (tally.get(size.stem) ?? 0) + 1);
  let best: StemId | null = null;
  for (const [stem, n] of tally) if (n > (best ? (tally.get(best) ?? 0) : 0)) best = stem;
  return best;
}
