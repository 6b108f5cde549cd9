/**
 * Strain of a piece at rest. Where all stitches can have their width and height at once, they come to it:
 * flat rows, tubes. Where they cannot (increases stacked in corners, a square that cups, filling), each
 * gives a little, and that is how the piece is; it is not the same as a piece that would still move.
 */
import { sqrt } from '../../units/index.ts';
import { isStitchLong, type Springs } from './springs.ts';
import type { StitchGraph } from './stitch-graph.ts';

export interface Strain {
  /** How far stitches are from their width and height in the mean, mm. */
  readonly meanMm: number;
  /** The same as a share of their size. */
  readonly meanShare: number;
  /** Label of the row with the largest mean share, and that share; `null` where nothing is strained. */
  readonly most: { readonly row: string; readonly share: number } | null;
}

/** Under this a piece has no strain worth a word, mm (judgement: a fiftieth of a millimetre). */
const STRAINED_MM = 0.02;

interface Sum {
  mm: number;
  share: number;
  n: number;
}

export function strainOf(graph: StitchGraph, at: Float64Array, springs: Springs): Strain {
  const all: Sum = { mm: 0, share: 0, n: 0 };
  const rows: Sum[] = graph.rows.map(() => ({ mm: 0, share: 0, n: 0 }));
  for (let i = 0; i < springs.n; i++) {
    if (!isStitchLong(springs, i)) continue;
    const [p, q] = [springs.a[i]!, springs.b[i]!];
    const mm = Math.abs(lengthMm(at, 3 * p, 3 * q) - springs.restMm[i]!);
    for (const sum of [all, rows[graph.row[Math.max(p, q)]!]!]) {
      sum.mm += mm;
      sum.share += mm / springs.restMm[i]!;
      sum.n++;
    }
  }
  const n = Math.max(1, all.n);
  return { meanMm: all.mm / n, meanShare: all.share / n, most: mostStrained(graph, rows) };
}

function mostStrained(graph: StitchGraph, rows: readonly Sum[]): Strain['most'] {
  let most: Strain['most'] = null;
  rows.forEach(({ mm, share, n }, r) => {
    if (n === 0 || mm / n < STRAINED_MM || share / n <= (most?.share ?? 0)) return;
    most = { row: graph.rows[r]!.record?.label ?? '', share: share / n };
  });
  return most;
}

function lengthMm(at: Float64Array, p: number, q: number): number {
  const [x, y, z] = [at[q]! - at[p]!, at[q + 1]! - at[p + 1]!, at[q + 2]! - at[p + 2]!];
  return sqrt(x * x + y * y + z * z);
}
