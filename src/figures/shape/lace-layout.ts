/**
 * A flat round of lace. Its girth says little, for chains give: each stitch lies as far out as its foot and
 * its own height, and chains longer than their gap stand out as arches, as when a doily is pinned out.
 */
import { PI, sqrt } from '../../units/index.ts';
import { archMm, riseFor } from './arch.ts';
import type { Layout } from './layout.ts';
import { placeRound } from './round-layout.ts';
import type { GraphRow, StitchGraph } from './stitch-graph.ts';

export function placeLaceRound(layout: Layout, row: GraphRow): void {
  const { graph, at, share } = layout;
  const radii = new Float64Array(row.to - row.from);
  const standing: number[] = [];
  let upMm = 0;
  for (let i = row.from; i < row.to; i++) {
    const feet = graph.anchors.subarray(graph.anchorFrom[i]!, graph.anchorFrom[i + 1]!);
    if (feet.length === 0) continue;
    standing.push(i);
    for (const foot of feet) {
      radii[i - row.from]! += radiusOf(at, foot) / feet.length;
      upMm = at[3 * foot + 2]!;
    }
    radii[i - row.from]! += graph.heightMm[i]!;
  }
  if (standing.length === 0) return;
  const radiusMm = standing.reduce((sum, i) => sum + radii[i - row.from]!, 0) / standing.length;
  placeRound(layout, row, { radiusMm, upMm, out: 1, up: 0, waveMm: 0, waves: 0 }, 0);
  standing.forEach((from, k) => {
    const to = standing[(k + 1) % standing.length]!;
    placeChains(graph, row, { from, to, share, radii });
  });
  for (let i = row.from; i < row.to; i++) {
    const by = radii[i - row.from]! / Math.max(radiusMm, 1e-6);
    at[3 * i]! *= by;
    at[3 * i + 1]! *= by;
  }
}

const radiusOf = (at: Float64Array, node: number): number =>
  sqrt(at[3 * node]! ** 2 + at[3 * node + 1]! ** 2);

interface Gap {
  /** Stitches with feet before and behind the chains. */
  readonly from: number;
  readonly to: number;
  readonly share: Float64Array;
  /** By place in the row; those of the chains are written. */
  readonly radii: Float64Array;
}

function placeChains(graph: StitchGraph, row: GraphRow, { from, to, share, radii }: Gap): void {
  const between: number[] = [];
  for (let i = graph.after[from]!; i >= 0 && i !== to; i = graph.after[i]!) between.push(i);
  if (between.length === 0) return;
  const [low, high] = [radii[from - row.from]!, radii[to - row.from]!];
  const apart = share[to]! - share[from]!;
  const gapMm = Math.abs(apart - Math.round(apart)) * PI * (low + high);
  const ends = [from, ...between, to];
  const steps = ends
    .slice(1)
    .map((node, k) => (graph.widthMm[node]! + graph.widthMm[ends[k]!]!) / 2);
  const lengthMm = steps.reduce((sum, step) => sum + step, 0);
  const rise = lengthMm > 1.02 * gapMm ? riseFor(gapMm / 2, lengthMm) : 0;
  let done = 0;
  between.forEach((node, k) => {
    done += steps[k]! / lengthMm;
    radii[node - row.from] = low + done * (high - low) + archMm(rise, done);
  });
}
