/**
 * Rows as lines: a row with the chains that lengthen it, and for each stitch how far along it stands. All
 * lines are told in one sense, that of the first row, whichever way each was worked.
 */
import { firstAnchorOf, type GraphRow, type StitchGraph } from './stitch-graph.ts';

export interface Line {
  /** In the common sense, from one end to the other. */
  readonly nodes: readonly number[];
  readonly isRing: boolean;
  /** Beneath all rows: a foundation chain, a ring, or nothing but a magic ring. */
  readonly isFoundation: boolean;
}

export interface Lines {
  readonly lines: readonly Line[];
  /** Line of each node; -1 for nodes of rows that are not among the lines. */
  readonly of: Int32Array;
  /** Length along the line in the common sense, mm. */
  readonly alongMm: Float64Array;
}

/** Lines of the rows before `rowsTo`. */
export function linesOf(graph: StitchGraph, rowsTo: number): Lines {
  const of = new Int32Array(graph.n).fill(-1);
  const alongMm = new Float64Array(graph.n);
  const lines: Line[] = [];
  for (const [r, row] of graph.rows.entries()) {
    if (r >= rowsTo) break;
    if (row.isExtension && of[row.from]! >= 0) continue;
    const nodes = walked(graph, row, rowsTo);
    if (runsBackwards(graph, r)) nodes.reverse();
    let sum = 0;
    nodes.forEach((node, k) => {
      if (k > 0) sum += (graph.widthMm[node]! + graph.widthMm[nodes[k - 1]!]!) / 2;
      of[node] = lines.length;
      alongMm[node] = sum;
    });
    lines.push({ nodes, isRing: row.isRing, isFoundation: !row.record && !row.isExtension });
  }
  return { lines, of, alongMm };
}

/** From the row's first end on, extensions at both ends included. */
function walked(graph: StitchGraph, row: GraphRow, rowsTo: number): number[] {
  const nodes = Array.from({ length: row.to - row.from }, (_, k) => row.from + k);
  if (row.isRing) return nodes;
  const isKept = (node: number): boolean => node >= 0 && graph.row[node]! < rowsTo;
  for (let at = graph.before[row.from]!; isKept(at); at = graph.before[at]!) nodes.unshift(at);
  for (let at = graph.after[row.to - 1]!; isKept(at); at = graph.after[at]!) nodes.push(at);
  return nodes;
}

/** Against the first row: told for rows, and for a foundation by what stands on it. */
export function runsBackwards(graph: StitchGraph, r: number): boolean {
  const row = graph.rows[r]!;
  if (row.record) return row.isTurned;
  const above = graph.rows.find(
    (each) => each.record && each.from >= row.to && standsOn(graph, each, r),
  );
  if (!above) return false;
  let votes = 0;
  let last = -1;
  for (let i = above.from; i < above.to; i++) {
    const foot = firstAnchorOf(graph, i);
    if (foot < 0 || graph.row[foot] !== r) continue;
    if (last >= 0 && foot !== last) votes += foot > last ? 1 : -1;
    last = foot;
  }
  return votes < 0 !== above.isTurned;
}

function standsOn(graph: StitchGraph, above: GraphRow, r: number): boolean {
  for (let i = above.from; i < above.to; i++) {
    const foot = firstAnchorOf(graph, i);
    if (foot >= 0 && graph.row[foot] === r) return true;
  }
  return false;
}
