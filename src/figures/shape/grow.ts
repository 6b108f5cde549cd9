/**
 * Rows that grow out of what they are worked into: each stitch a height away from its foot, in the way
 * in which the fabric runs there; several in one place as a fan; chains between them straight, or as an
 * arch where they are longer than the gap. Then the last rows settle before the next is laid.
 */

import { cos, PI, sin } from '../../units/index.ts';
import { placeArch } from './arch.ts';
import type { Layout } from './layout.ts';
import type { PieceSprings } from './spring-model.ts';
import {
  firstAnchorOf,
  firstIsWrongSide,
  type GraphRow,
  leanMmOf,
  rowLengthMm,
} from './stitch-graph.ts';
import { sweepSome } from './sweep.ts';
import {
  across,
  dot,
  lengthOf,
  minus,
  plus,
  times,
  unit,
  type Vector,
  vectorAt,
} from './vector.ts';

const NORTH: Vector = [0, 1, 0];

export function growRow(layout: Layout, row: GraphRow): void {
  const { graph } = layout;
  for (let i = row.from; i < row.to; ) {
    const end = fanEnd(layout, row, i);
    const middle = alongMm(layout, i, end - 1) / 2;
    for (let k = i; k < end; k++) placeStitch(layout, k, alongMm(layout, i, k) - middle);
    i = end;
  }
  placeLoose(layout, row);
  for (let i = row.from; i < row.to; i++) {
    const foot = firstAnchorOf(graph, i);
    if (foot >= 0) layout.user[foot] = i;
  }
}

function alongMm({ graph }: Layout, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += (graph.widthMm[i]! + graph.widthMm[i + 1]!) / 2;
  return sum;
}

/** End of the run of stitches worked into the place of node `i`, with the chains between them. */
function fanEnd({ graph }: Layout, row: GraphRow, i: number): number {
  const place = graph.place[i]!;
  let end = i + 1;
  if (graph.isChain[i] || place < 0) return end;
  for (let k = end; k < row.to && (graph.isChain[k] || graph.place[k] === place); k++) {
    if (graph.place[k] === place) end = k + 1;
  }
  return end;
}

/** `besideMm`: how far along the row it stands from the middle of those in its place. */
function placeStitch(layout: Layout, i: number, besideMm: number): void {
  const { graph, at, way, isPlaced } = layout;
  const feet = [...graph.anchors.subarray(graph.anchorFrom[i]!, graph.anchorFrom[i + 1]!)].filter(
    (foot) => isPlaced[foot],
  );
  if (feet.length === 0) return;
  const height = graph.heightMm[i]!;
  const share = 1 / feet.length;
  let from: Vector = [0, 0, 0];
  let out: Vector = [0, 0, 0];
  for (const foot of feet) {
    from = plus(from, times(share, vectorAt(at, foot)));
    out = plus(out, times(sideOf(layout, i, foot), vectorAt(way, foot)));
  }
  out = unit(out, NORTH);
  const radius = ringRadiusMm(layout, i, feet[0]!);
  if (radius !== null) [from, out] = [[0, 0, 0], NORTH];
  const side = radius !== null ? ringSide(layout) : sideways(layout, i, out);
  const lean = radius !== null ? ringLean(layout, i, radius) : leanOf(besideMm, height);
  const towards = plus(times(cos(lean), out), times(sin(lean), side));
  const top = plus(from, times(height + (radius ?? 0), towards));
  at.set(plus(top, times(radius === null ? -leanMmOf(graph, i) : 0, side)), 3 * i);
  way.set(towards, 3 * i);
  isPlaced[i] = 1;
}

/** Fans are laid narrower than they become, so that they do not fold over their neighbours. */
const FAN = 0.6;

const leanOf = (besideMm: number, heightMm: number): number =>
  Math.max(-1.1, Math.min(1.1, (FAN * besideMm) / Math.max(heightMm, 0.1)));

/** Radius of the ring that a flat first row comes out of, mm; null where it comes out of none. */
function ringRadiusMm({ graph }: Layout, i: number, foot: number): number | null {
  if (foot === graph.ring) return 0;
  const beneath = graph.rows[graph.row[foot]!]!;
  const isFlatOnRing = !beneath.record && beneath.isRing && !graph.rows[graph.row[i]!]!.isRing;
  return isFlatOnRing ? rowLengthMm(graph, beneath) / (2 * PI) : null;
}

/** A flat first row out of a ring is a fan as wide as it is long, with a gap left open. */
function ringLean(layout: Layout, i: number, radiusMm: number): number {
  const row = layout.graph.rows[layout.graph.row[i]!]!;
  const total = Math.max(alongMm(layout, row.from, row.to - 1), 1e-6);
  const share = alongMm(layout, row.from, i) / total - 0.5;
  const wide = row.isRing ? 2 * PI : 1.8 * PI;
  return share * Math.min(wide, total / Math.max(layout.graph.heightMm[i]! + radiusMm, 0.1));
}

const ringSide = ({ graph }: Layout): Vector => (firstIsWrongSide(graph) ? [-1, 0, 0] : [1, 0, 0]);

/** 1, or -1 where the chain beneath already has a row on its other side. */
function sideOf({ graph, user }: Layout, i: number, foot: number): 1 | -1 {
  const before = user[foot]!;
  if (!graph.isChain[foot] || before < 0) return 1;
  return graph.row[before] === graph.row[i] && i - before <= 1 ? 1 : -1;
}

/** The way along the row beneath in which this row is worked, as far as it can be told from the feet. */
function sideways(layout: Layout, i: number, out: Vector): Vector {
  const { graph, at } = layout;
  const foot = firstAnchorOf(graph, i);
  const ahead = otherFoot(layout, i, graph.after);
  const behind = otherFoot(layout, i, graph.before);
  const a = behind >= 0 ? vectorAt(at, behind) : vectorAt(at, foot);
  const b = ahead >= 0 ? vectorAt(at, ahead) : vectorAt(at, foot);
  const along = across(minus(b, a), out);
  if (lengthOf(along) > 1e-6) return unit(along, [1, 0, 0]);
  const [p, q] = [graph.before[foot]!, graph.after[foot]!];
  const beneath = minus(vectorAt(at, q >= 0 ? q : foot), vectorAt(at, p >= 0 ? p : foot));
  return unit(across(beneath, out), [out[1], -out[0], 0]);
}

/** Foot of the nearest neighbour that stands elsewhere, a few stitches on. */
function otherFoot({ graph, isPlaced }: Layout, i: number, step: Int32Array): number {
  const foot = firstAnchorOf(graph, i);
  for (let at = step[i]!, n = 0; at >= 0 && n < 8; at = step[at]!, n++) {
    const other = firstAnchorOf(graph, at);
    if (other >= 0 && other !== foot && isPlaced[other]) return other;
  }
  return -1;
}

/** Chains and stitches that stand on nothing: between their neighbours, or as a line of their own. */
function placeLoose(layout: Layout, row: GraphRow): void {
  const { graph, isPlaced } = layout;
  const first = firstPlaced(layout, row);
  if (first < 0) return placeAlone(layout, row);
  for (let i = row.from; i < row.to; ) {
    if (isPlaced[i]) {
      i++;
      continue;
    }
    let end = i;
    while (end < row.to && !isPlaced[end]) end++;
    const before = graph.before[i]!;
    const after = graph.after[end - 1]!;
    const isEnd = before < 0 || after < 0 || !isPlaced[before] || !isPlaced[after];
    if (!isEnd) placeArch(layout, { from: i, to: end, before, after });
    else placeTail(layout, i, end);
    i = Math.max(end, i + 1);
  }
}

function firstPlaced({ isPlaced }: Layout, row: GraphRow): number {
  for (let i = row.from; i < row.to; i++) if (isPlaced[i]) return i;
  return -1;
}

/** Nothing beneath: a line along x, as a foundation is. */
function placeAlone({ graph, at, way, isPlaced }: Layout, row: GraphRow): void {
  let x = -rowLengthMm(graph, row) / 2;
  for (let i = row.from; i < row.to; i++) {
    at[3 * i] = x;
    way[3 * i + 1] = 1;
    isPlaced[i] = 1;
    x += graph.widthMm[i]!;
  }
}

/** Chains at a row's end hang from its last stitch and go on as the row went. */
function placeTail(layout: Layout, from: number, to: number): void {
  const { graph, at, way, isPlaced } = layout;
  const isAtEnd = from > 0 && graph.before[from]! >= 0 && isPlaced[graph.before[from]!];
  const step = isAtEnd ? 1 : -1;
  for (let i = isAtEnd ? from : to - 1; i >= from && i < to; i += step) {
    const last = isAtEnd ? graph.before[i]! : graph.after[i]!;
    if (last < 0) continue;
    const beyond = isAtEnd ? graph.before[last]! : graph.after[last]!;
    const along =
      beyond >= 0 ? minus(vectorAt(at, last), vectorAt(at, beyond)) : vectorAt(way, last);
    at.set(plus(vectorAt(at, last), times(graph.widthMm[i]!, unit(along, [1, 0, 0]))), 3 * i);
    way.set(vectorAt(way, last), 3 * i);
    isPlaced[i] = 1;
  }
}

const ROWS_AT_A_TIME = 5;
const SWEEPS_A_ROW = 24;

/** Settles the last rows with those before held, and turns their ways square to the rows. */
export function settleRow(layout: Layout, { springs, rowFrom }: PieceSprings, r: number): void {
  const { graph, at } = layout;
  const low = Math.min(r, Math.max(1, r - ROWS_AT_A_TIME + 1));
  const some = { from: rowFrom[low]!, to: rowFrom[r + 1]!, fixed: graph.rows[low]!.from };
  for (let n = 0; n < SWEEPS_A_ROW; n++) sweepSome(at, springs, some);
  for (let k = low; k <= r; k++) turnWays(layout, graph.rows[k]!);
}

function turnWays({ graph, at, way }: Layout, row: GraphRow): void {
  for (let i = row.from; i < row.to; i++) {
    const [p, q] = [graph.before[i]!, graph.after[i]!];
    const along = unit(
      minus(vectorAt(at, q >= 0 ? q : i), vectorAt(at, p >= 0 ? p : i)),
      [0, 0, 0],
    );
    const was = vectorAt(way, i);
    const turned = across(was, along);
    if (lengthOf(turned) > 0.2 && dot(turned, was) > 0) way.set(unit(turned, was), 3 * i);
  }
}
