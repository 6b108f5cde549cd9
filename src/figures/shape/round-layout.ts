/** One round on its outline, turned so that its stitches stand above what they are worked into. */

import { PI, sin } from '../../units/index.ts';
import type { Layout } from './layout.ts';
import { type Outline, pointOn, shareAt } from './outline.ts';
import type { ProfileRound } from './profile.ts';
import { firstAnchorOf, type GraphRow, rowLengthMm } from './stitch-graph.ts';

export function placeRound(
  layout: Layout,
  row: GraphRow,
  round: ProfileRound,
  straightMm: number,
): void {
  const { graph, at, way, share, isPlaced } = layout;
  const outline: Outline = { radiusMm: round.radiusMm, straightMm };
  const { start, turn } = startOf(layout, row, outline);
  const length = Math.max(rowLengthMm(graph, row), 1e-6);
  let along = 0;
  for (let i = row.from; i < row.to; i++) {
    if (i > row.from) along += (graph.widthMm[i]! + graph.widthMm[i - 1]!) / 2;
    const t = start + (turn * along) / length;
    share[i] = t - Math.floor(t);
    const { x, y, nx, ny } = pointOn(outline, t);
    at.set([x, y, round.upMm + round.waveMm * sin(2 * PI * round.waves * t)], 3 * i);
    way.set([round.out * nx, round.out * ny, round.up], 3 * i);
    isPlaced[i] = 1;
    layout.keepsCurve[i] = 1;
    const foot = firstAnchorOf(graph, i);
    if (foot >= 0) layout.user[foot] = i;
  }
}

interface Start {
  /** Share of the girth at which the first stitch stands. */
  readonly start: number;
  /** 1: clockwise seen from above; -1 for rounds that were turned. */
  readonly turn: 1 | -1;
}

function startOf(layout: Layout, row: GraphRow, outline: Outline): Start {
  const wanted = wantedShares(layout, row, outline);
  if (wanted.length === 0) return { start: 0, turn: 1 };
  const length = Math.max(rowLengthMm(layout.graph, row), 1e-6);
  const [as, turned] = ([1, -1] as const).map((turn) => {
    const off = wanted.map(({ alongMm, share }) => share - (turn * alongMm) / length);
    return { turn, ...meanShare(off) };
  });
  const best = turned!.spread < as!.spread - 1e-9 ? turned! : as!;
  return { start: best.mean, turn: best.turn };
}

interface Wanted {
  readonly alongMm: number;
  readonly share: number;
}

/** Where the feet of the round's stitches are, as shares of its girth. */
function wantedShares(layout: Layout, row: GraphRow, outline: Outline): readonly Wanted[] {
  const { graph, share, at } = layout;
  const wanted: Wanted[] = [];
  // A leaning round stands so far behind its feet: its places are sought that much further on.
  const { leanMm } = row;
  const [foundation] = graph.rows;
  const isOnChain = foundation && !foundation.record && !foundation.isRing && graph.ring < 0;
  let side: 1 | -1 = 1;
  let along = 0;
  for (let i = row.from; i < row.to; i++) {
    if (i > row.from) along += (graph.widthMm[i]! + graph.widthMm[i - 1]!) / 2;
    const foot = firstAnchorOf(graph, i);
    if (foot < 0 || foot === graph.ring) continue;
    if (!isOnChain || graph.row[foot] !== 0) {
      wanted.push({ alongMm: along + leanMm, share: share[foot]! });
    } else if (foot === foundation.from) side = -1;
    else if (foot !== foundation.to - 1) {
      wanted.push({ alongMm: along + leanMm, share: shareAt(outline, at[3 * foot]!, side) });
    }
  }
  return wanted;
}

/** Mean of shares that run round: taken against the first, so that 0.99 and 0.01 are neighbours. */
function meanShare(shares: readonly number[]): { readonly mean: number; readonly spread: number } {
  const [first = 0] = shares;
  const apart = shares.map((share) => share - first - Math.round(share - first));
  const mean = apart.reduce((sum, off) => sum + off, 0) / apart.length;
  const spread = apart.reduce((sum, off) => sum + (off - mean) ** 2, 0) / apart.length;
  return { mean: first + mean, spread };
}
