/**
 * How many rows keep a part's height at another gauge. Rows of a chart stay as many as it has, so only
 * plain rows are counted more or fewer.
 */
import type { Manuscript } from '../manuscript/index.ts';
import { type StemId, wordFor } from '../notation/index.ts';
import { chartOver } from './chart-row.ts';
import { phasesOf, type SizedRow } from './phases.ts';
import type { Piece } from './pieces.ts';

export interface PartRows {
  /** Heading and labels of its first and last row. */
  readonly name: string;
  readonly first: string;
  readonly last: string;
  readonly rows: number;
  readonly wantedMm: number;
  readonly sameRowsMm: number;
  /** Word of the stitch whose rows are counted, in the pattern's terms. */
  readonly stitch: string;
  readonly worked: 'rounds' | 'rows';
  /** Rows more that come nearest to the height wanted; negative for fewer. */
  readonly more: number;
  readonly mm: number;
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
    // A growing or closing part has as many rounds as its counts ask for.
    if (phase.isRing && phase.growth !== 'even') return [];
    // What is worked to a length keeps it by itself.
    if (own.some(({ row }) => row.facts.some(({ kind }) => kind === 'to-length'))) return [];
    return rowsOf(own, other, manuscript) ?? [];
  });
}

function rowsOf(
  mine: readonly SizedRow[],
  theirs: readonly SizedRow[],
  manuscript: Manuscript,
): PartRows | null {
  const free = theirs.filter(({ row, size }) => !size.isMesh && !chartOver(row, manuscript));
  const stem = commonest(free);
  if (stem === null) return null;
  const plain = free.filter(({ size }) => size.stem === stem);
  const height = plain[0]!.size.height.mm;
  const sum = (rows: readonly SizedRow[]): number =>
    rows.reduce((mm, { size }) => mm + size.height.mm, 0);
  const [wantedMm, sameRowsMm] = [sum(mine), sum(theirs)];
  const more = Math.max(-plain.length, Math.round((wantedMm - sameRowsMm) / height));
  if (more === 0) return null;
  const [first, last] = [mine[0]!.row, mine.at(-1)!.row];
  return {
    name: first.part,
    first: first.label,
    last: last.label,
    rows: mine.length,
    wantedMm,
    sameRowsMm,
    worked: first.ring ? 'rounds' : 'rows',
    stitch: wordFor(stem, manuscript.terms.terms),
    more,
    mm: sameRowsMm + more * height,
  };
}

function commonest(rows: readonly SizedRow[]): StemId | null {
  const tally = new Map<StemId, number>();
  for (const { size } of rows) tally.set(size.stem, (tally.get(size.stem) ?? 0) + 1);
  let best: StemId | null = null;
  for (const [stem, n] of tally) if (n > (best ? (tally.get(best) ?? 0) : 0)) best = stem;
  return best;
}
