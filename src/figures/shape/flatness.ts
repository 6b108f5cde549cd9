/**
 * Flat, cupping or ruffling, by arithmetic: what a round is round, against what it would have to be to
 * lie flat. Each round adds its height to the radius, so a flat circle grows by 2 pi h, a flat figure
 * with c corners by 2 c tan(pi / c) h, and straight sides (an oval round a chain) stay as they are.
 */
import { PI, tan } from './numeric.ts';
import { firstAnchorOf, type GraphRow, rowLengthMm, type StitchGraph } from './stitch-graph.ts';

export interface RoundGirth {
  readonly row: GraphRow;
  /** Length round, mm. */
  readonly girthMm: number;
  /** From the round beneath, mm; the mean height of its stitches. */
  readonly heightMm: number;
  /** Corners that this round makes; 0 in a circle. */
  readonly corners: number;
  /** Chains stand in it: it gives, and its girth says little. */
  readonly hasSpaces: boolean;
  /** A long chain bridges the round beneath (a handle, a loop of lace). */
  readonly hasArches: boolean;
  /** What the girth grows by against what lies flat: 1 flat, 0 straight up, negative closing. */
  readonly growth: number;
}

/** Length of the straight sides of all rounds, mm: the chain of an oval. */
export function straightMm(graph: StitchGraph): number {
  const [foundation] = graph.rows;
  if (!foundation || foundation.record || foundation.isRing || !graph.rows[1]?.isRing) return 0;
  return rowLengthMm(graph, foundation);
}

/** Rounds from the start on, as long as each goes round on the one beneath. */
export function roundGirths(graph: StitchGraph): readonly RoundGirth[] {
  const girths: RoundGirth[] = [];
  let before = startGirthMm(graph);
  let corners = 0;
  for (const row of graph.rows) {
    if (!row.record) continue;
    if (!row.isRing) break;
    const traits = traitsOf(graph, row);
    corners = traits.corners || (corners && traits.grows ? corners : 0);
    const girthMm = rowLengthMm(graph, row);
    const flat = flatGrowthMm(traits.heightMm, corners);
    const growth = flat > 0 ? (girthMm - before) / flat : 0;
    girths.push({ row, girthMm, ...traits, corners, growth });
    before = girthMm;
  }
  return girths;
}

/** What lies beneath the first round: nothing, a ring of chains, or both sides of a chain. */
function startGirthMm(graph: StitchGraph): number {
  const [first] = graph.rows;
  if (!first || first.record) return 0;
  return first.isRing ? rowLengthMm(graph, first) : 2 * straightMm(graph);
}

/** What a flat round grows by, mm. */
export const flatGrowthMm = (heightMm: number, corners: number): number =>
  corners >= 3 ? 2 * corners * tan(PI / corners) * heightMm : 2 * PI * heightMm;

interface Traits {
  readonly heightMm: number;
  readonly corners: number;
  readonly hasSpaces: boolean;
  readonly hasArches: boolean;
  readonly grows: boolean;
}

function traitsOf(graph: StitchGraph, row: GraphRow): Traits {
  let height = 0;
  let standing = 0;
  let chains = 0;
  let longest = 0;
  for (let i = row.from, run = 0; i < row.to; i++) {
    run = graph.isChain[i] ? run + 1 : 0;
    longest = Math.max(longest, run);
    chains += graph.isChain[i]!;
    if (firstAnchorOf(graph, i) < 0) continue;
    height += graph.heightMm[i]!;
    standing++;
  }
  return {
    heightMm: standing > 0 ? height / standing : 0,
    corners: cornersOf(graph, row),
    hasSpaces: chains > 0,
    hasArches: longest > LONGEST_SPACE,
    grows: standing > 0 && row.to - row.from > 0,
  };
}

/** A chain longer than this stands up from the round beneath instead of lying along it. */
const LONGEST_SPACE = 2;

/** A corner is a place that holds at least two more than the others, its chains among them. */
function cornersOf(graph: StitchGraph, row: GraphRow): number {
  const sizes: number[] = [];
  for (let i = row.from; i < row.to; ) {
    const place = graph.place[i]!;
    let end = i + 1;
    let last = i + 1;
    while (end < row.to && (graph.isChain[end] || graph.place[end] === place)) {
      end++;
      if (graph.place[end - 1] === place) last = end;
    }
    if (place >= 0 && !graph.isChain[i]) sizes.push(last - i);
    i = Math.max(last, i + 1);
  }
  if (sizes.length < 3) return 0;
  const usual = [...sizes].sort((a, b) => a - b)[sizes.length >> 1]!;
  const corners = sizes.filter((size) => size >= Math.max(3, usual + 2)).length;
  return corners >= 3 && corners <= 8 ? corners : 0;
}
