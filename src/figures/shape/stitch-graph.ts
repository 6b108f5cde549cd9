/**
 * A piece as a graph: every stitch and chain that has a place of its own, who stands beside it in its
 * row, and what it is worked into. A read-only value; `piece-graph.ts` makes it from the cloth.
 */
import type { RowRecord } from '../../fabric/index.ts';
import type { StemId } from '../../notation/index.ts';

export interface StitchGraph {
  /** Heading of the first part, and those that go on with it. */
  readonly parts: readonly string[];
  readonly partIndex: number;
  /** Which copy of the part, from 1. */
  readonly instance: number;
  readonly n: number;
  /** Node number in the cloth. */
  readonly cloth: Int32Array;
  /** Index into `rows`. */
  readonly row: Int32Array;
  readonly isChain: Uint8Array;
  readonly widthMm: Float64Array;
  /** From the top of what it is worked into to its own top. */
  readonly heightMm: Float64Array;
  /** Neighbours in the row in the order of work; -1 at the ends of a flat row. */
  readonly before: Int32Array;
  readonly after: Int32Array;
  /** Nodes worked into: from `anchorFrom[i]` to `anchorFrom[i + 1]`. */
  readonly anchorFrom: Int32Array;
  readonly anchors: Int32Array;
  /**
   * Place in the pattern's sense, for each node: stitches in one space have one place, though their
   * feet are spread along its chains. -1 for none.
   */
  readonly place: Int32Array;
  readonly rows: readonly GraphRow[];
  /** Node of the magic ring, if the piece begins with one; -1 otherwise. */
  readonly ring: number;
  /** What could not be placed, as sentences. */
  readonly leftOut: readonly string[];
}

export interface GraphRow {
  /** null: a foundation chain or a ring. */
  readonly record: RowRecord | null;
  /** Nodes in the order made, [from, to). */
  /** What most of its stitches are; `null` beneath all rows. */
  readonly stem: StemId | null;
  readonly from: number;
  readonly to: number;
  readonly isRing: boolean;
  /** Runs the other way than the first row, as turned rows do: its wrong side is the piece's right side. */
  readonly isTurned: boolean;
  /** Chains that lengthen the row beneath, made by the row that stands on them (more boxes, "5 fdc"). */
  readonly isExtension: boolean;
  /** How far its stitches' tops stand from their feet, against the order of work, mm; 0 for upright. */
  readonly leanMm: number;
  /** Whether its lean is known; rounds of which nobody knows it stand upright. */
  readonly knowsLean: boolean;
}

/** Width and height of stitches and chains, from the gauge of the row's fabric. */
export interface SizesOfRow {
  readonly widthMm: (kind: number) => number;
  readonly heightMm: (kind: number) => number;
}

export const firstAnchorOf = (graph: StitchGraph, node: number): number =>
  graph.anchorFrom[node]! < graph.anchorFrom[node + 1]!
    ? graph.anchors[graph.anchorFrom[node]!]!
    : -1;

export const lastAnchorOf = (graph: StitchGraph, node: number): number =>
  graph.anchorFrom[node]! < graph.anchorFrom[node + 1]!
    ? graph.anchors[graph.anchorFrom[node + 1]! - 1]!
    : -1;

/** Lean of a stitch against the order of work, mm: out of a magic ring there is no side to lean to. */
export const leanMmOf = (graph: StitchGraph, node: number): number =>
  graph.ring >= 0 && firstAnchorOf(graph, node) === graph.ring
    ? 0
    : graph.rows[graph.row[node]!]!.leanMm;

/** Length along a row, from its first node to its last, and back to the first in a ring. */
export function rowLengthMm(graph: StitchGraph, row: GraphRow): number {
  let sum = 0;
  for (let i = row.from; i < row.to; i++) sum += graph.widthMm[i]!;
  if (row.isRing || row.to === row.from) return sum;
  return sum - (graph.widthMm[row.from]! + graph.widthMm[row.to - 1]!) / 2;
}

/** A first row that shows its wrong side runs the other way, seen from the right side. */
export const firstIsWrongSide = (graph: StitchGraph): boolean =>
  graph.rows.find(({ record }) => record)?.record?.side === 'WS';
