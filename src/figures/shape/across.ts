/**
 * A gauge over waves ("hdc ripple") is counted with a ruler laid across them, so a stitch along its wave is
 * longer than the gauge says, and a row along its slope thinner. How much the waves take up only the shape
 * shows: it is brought to rest once, drawn out to the gauge, and settled again.
 */
import { sqrt } from '../../units/index.ts';
import { flatRowsTo } from './flat-rows.ts';
import type { Springs } from './springs.ts';
import { rowLengthMm, type StitchGraph } from './stitch-graph.ts';

/** Names of fabrics whose rows run in waves (common practice). */
const WAVES = /\b(?:ripples?|chevrons?|waves?|wavy|zig-?zags?)\b/i;

export const isWaved = (fabric: string): boolean => WAVES.test(fabric);

export const COUNTED_ACROSS = 'A gauge over waves is taken as counted across them.';

export interface Stretch {
  readonly across: number;
  readonly up: number;
}

/** Beyond these a gauge and a shape have nothing to do with each other. */
const LIKELY = { least: 0.6, most: 1.7 } as const;

/** What the piece has to be drawn out by to have its gauge across and up; null where it cannot be told. */
export function stretchFor(graph: StitchGraph, at: Float64Array): Stretch | null {
  if (flatRowsTo(graph) < graph.rows.length) return null;
  const worked = graph.rows.filter(({ record }) => record);
  let [wide, wantedWide, high, wantedHigh] = [0, 0, 0, 0];
  worked.forEach((row, k) => {
    const { from, to } = row;
    const xs = Array.from({ length: to - from }, (_, i) => at[3 * (from + i)]!);
    wide += Math.max(...xs) - Math.min(...xs);
    wantedWide += rowLengthMm(graph, row);
    const below = worked[k - 1];
    if (!below) return;
    high += meanUp(at, from, to) - meanUp(at, below.from, below.to);
    for (let i = from; i < to; i++) wantedHigh += graph.heightMm[i]! / (to - from);
  });
  const stretch = { across: wantedWide / wide, up: wantedHigh / high };
  return isLikely(stretch.across) && isLikely(stretch.up) ? stretch : null;
}

const isLikely = (by: number): boolean => by > LIKELY.least && by < LIKELY.most;

function meanUp(at: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += at[3 * i + 1]!;
  return sum / (to - from);
}

export function stretched(at: Float64Array, { across, up }: Stretch): Float64Array {
  return at.map((v, k) => (k % 3 === 0 ? across * v : k % 3 === 1 ? up * v : v));
}

/** Springs as long against their length as they were before the piece was drawn out. */
export function springsAt(springs: Springs, before: Float64Array, after: Float64Array): Springs {
  const restMm = springs.restMm.map((mm, i) => {
    const was = lengthMm(springs, before, i);
    return was > 1e-6 ? (mm * lengthMm(springs, after, i)) / was : mm;
  });
  return { ...springs, restMm };
}

function lengthMm({ a, b }: Springs, at: Float64Array, i: number): number {
  const [p, q] = [3 * a[i]!, 3 * b[i]!];
  return sqrt(
    (at[q]! - at[p]!) ** 2 + (at[q + 1]! - at[p + 1]!) ** 2 + (at[q + 2]! - at[p + 2]!) ** 2,
  );
}
