/**
 * Bending: a fabric keeps the curve in which it was laid, weakly. For three nodes in a line the second
 * difference, before - 2 middle + after, costs energy as it departs from the layout's. Springs cannot do
 * this: a flat sheet of them has nothing that resists the first push out of its plane.
 */
import type { Layout } from './layout.ts';
import { firstAnchorOf, type StitchGraph } from './stitch-graph.ts';

export interface Bends {
  readonly n: number;
  /** Three nodes a bend: before, middle, after. */
  readonly nodes: Int32Array;
  /** Second difference at rest, x y z, mm: the layout's, until the fabric has taken its set. */
  readonly rest: Float64Array;
  readonly stiffness: number;
}

/** Against the stiffness along a row. Ours: enough that a base does not crumple, too little to hold a shape. */
const BENDING = 0.02;
/** Filling lies behind the fabric and lets no crease in. */
const FILLED = 0.05;

/** What the bends are now is what they keep. */
export function takeSet(at: Float64Array, bends: Bends | null): void {
  if (!bends) return;
  const { nodes, rest, n } = bends;
  for (let k = 0; k < n; k++) {
    const [p, q, r] = [nodes[3 * k]!, nodes[3 * k + 1]!, nodes[3 * k + 2]!];
    for (let c = 0; c < 3; c++) {
      rest[3 * k + c] = at[3 * p + c]! - 2 * at[3 * q + c]! + at[3 * r + c]!;
    }
  }
}

/** Along the rows and along the columns; straight but for rounds, which keep their curve. */
export function bendsOf({ graph, at, keepsCurve }: Layout, isFilled: boolean): Bends {
  const nodes: number[] = acrossFoundation(graph);
  for (let i = 0; i < graph.n; i++) {
    const [before, after] = [graph.before[i]!, graph.after[i]!];
    if (before >= 0 && after >= 0 && before !== after) nodes.push(before, i, after);
    const foot = onlyFoot(graph, i);
    const under = foot >= 0 ? onlyFoot(graph, foot) : -1;
    if (under >= 0 && under !== i) nodes.push(under, foot, i);
  }
  const n = nodes.length / 3;
  const rest = new Float64Array(3 * n);
  for (let k = 0; k < n; k++) {
    const [p, q, r] = [nodes[3 * k]!, nodes[3 * k + 1]!, nodes[3 * k + 2]!];
    // What was grown row by row has creases that nobody means: it is smoothed, not kept.
    if (!keepsCurve[q] || !keepsCurve[r]) continue;
    // Neither does filling keep the step between a round and a shorter one.
    if (isFilled && graph.row[p] !== graph.row[q]) continue;
    for (let c = 0; c < 3; c++)
      rest[3 * k + c] = at[3 * p + c]! - 2 * at[3 * q + c]! + at[3 * r + c]!;
  }
  return { n, nodes: Int32Array.from(nodes), rest, stiffness: isFilled ? FILLED : BENDING };
}

/** A chain worked on both its sides lies within the fabric, which must not hinge there. */
function acrossFoundation(graph: StitchGraph): number[] {
  const [row] = graph.rows;
  const nodes: number[] = [];
  if (!row || row.record || row.isRing || graph.ring >= 0) return nodes;
  const first = new Int32Array(row.to).fill(-1);
  for (let i = row.to; i < graph.n; i++) {
    const foot = onlyFoot(graph, i);
    if (foot < row.from || foot >= row.to) continue;
    if (first[foot]! < 0) first[foot] = i;
    else if (i - first[foot]! > 1) nodes.push(first[foot]!, foot, i);
  }
  return nodes;
}

const onlyFoot = (graph: StitchGraph, node: number): number =>
  graph.anchorFrom[node + 1]! - graph.anchorFrom[node]! === 1 ? firstAnchorOf(graph, node) : -1;
