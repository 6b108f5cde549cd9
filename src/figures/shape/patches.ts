/**
 * The fabric as patches: a four-cornered one for each stitch, from the tops beneath to its own top and
 * half-way to its neighbours; a thin bar for each chain. Where chains lie between posts the fabric stays
 * open. One patch a node, so that a point in a picture leads back to its stitch.
 */
import { beneathMm } from './spring-model.ts';
import { firstAnchorOf, lastAnchorOf, type StitchGraph } from './stitch-graph.ts';
import { across, lengthOf, minus, plus, times, unit, type Vector, vectorAt } from './vector.ts';

export interface Patches {
  /** Twelve numbers a node: corners bottom first, top first, top second, bottom second, x y z in mm. */
  readonly corners: Float64Array;
  /** 1: the node has no patch (a magic ring). */
  readonly isBare: Uint8Array;
  /** 1: a side is open (a chain or an end is beside it), so it wants a line there: first corners, second. */
  readonly openFirst: Uint8Array;
  readonly openSecond: Uint8Array;
}

/** Half the thickness of a post beside a gap, and of a chain, against the stitch's width (ours). */
const POST_HALF = 0.32;
const CHAIN_HALF = 0.2;

export function patchesOf(graph: StitchGraph, at: Float64Array): Patches {
  const patches: Patches = {
    corners: new Float64Array(12 * graph.n),
    isBare: new Uint8Array(graph.n),
    openFirst: new Uint8Array(graph.n),
    openSecond: new Uint8Array(graph.n),
  };
  for (let i = 0; i < graph.n; i++) {
    if (i === graph.ring) patches.isBare[i] = 1;
    else if (graph.isChain[i] || firstAnchorOf(graph, i) < 0) addBar(patches, graph, at, i);
    else addStitch(patches, graph, at, i);
  }
  return patches;
}

function addStitch(patches: Patches, graph: StitchGraph, at: Float64Array, i: number): void {
  const before = sideOf(graph, at, i, 'before');
  const after = sideOf(graph, at, i, 'after');
  put(patches, graph, i, {
    corners: [before.bottom, before.top, after.top, after.bottom],
    isOpen: [before.isOpen, after.isOpen],
  });
}

interface Sides {
  readonly corners: readonly [Vector, Vector, Vector, Vector];
  /** Before and after, in the order of work. */
  readonly isOpen: readonly [boolean, boolean];
}

/** The patches of turned rows are turned too, so that all face one way. */
function put(patches: Patches, graph: StitchGraph, i: number, { corners, isOpen }: Sides): void {
  const { isTurned } = graph.rows[graph.row[i]!]!;
  const [a, b, c, d] = corners;
  const [first, second] = isTurned ? [isOpen[1], isOpen[0]] : isOpen;
  patches.corners.set((isTurned ? [d, c, b, a] : [a, b, c, d]).flat(), 12 * i);
  patches.openFirst[i] = first ? 1 : 0;
  patches.openSecond[i] = second ? 1 : 0;
}

interface PatchSide {
  readonly top: Vector;
  readonly bottom: Vector;
  readonly isOpen: boolean;
}

/** One side of a stitch: shared with its neighbour where fabric lies between, else close to itself. */
function sideOf(
  graph: StitchGraph,
  at: Float64Array,
  i: number,
  which: 'before' | 'after',
): PatchSide {
  const beside = graph[which][i]!;
  const top = vectorAt(at, i);
  const foot = which === 'before' ? firstAnchorOf(graph, i) : lastAnchorOf(graph, i);
  const under = vectorAt(at, foot);
  const otherFoot =
    beside < 0
      ? -1
      : which === 'before'
        ? lastAnchorOf(graph, beside)
        : firstAnchorOf(graph, beside);
  const isOpen = otherFoot < 0 || graph.isChain[beside] === 1 || isApart(graph, foot, otherFoot);
  if (!isOpen) {
    return {
      top: middle(top, vectorAt(at, beside)),
      bottom: middle(under, vectorAt(at, otherFoot)),
      isOpen,
    };
  }
  const off = times(POST_HALF * graph.widthMm[i]!, sideways(graph, at, i, which));
  return { top: plus(top, off), bottom: plus(under, off), isOpen };
}

/** In chain spaces feet crowd; further apart than neighbours they belong to different places. */
const isApart = (graph: StitchGraph, a: number, b: number): boolean =>
  a !== b && beneathMm(graph, a, b) === null;

const middle = (a: Vector, b: Vector): Vector => times(0.5, plus(a, b));

function sideways(
  graph: StitchGraph,
  at: Float64Array,
  i: number,
  which: 'before' | 'after',
): Vector {
  const beside = graph[which][i]!;
  const other = graph[which === 'before' ? 'after' : 'before'][i]!;
  const way = columnWay(graph, at, i);
  if (beside >= 0)
    return unit(across(minus(vectorAt(at, beside), vectorAt(at, i)), way), [0, 0, 0]);
  if (other < 0) return [0, 0, 0];
  return unit(across(minus(vectorAt(at, i), vectorAt(at, other)), way), [0, 0, 0]);
}

/** From foot to top. */
function columnWay(graph: StitchGraph, at: Float64Array, i: number): Vector {
  const foot = firstAnchorOf(graph, i);
  return foot < 0 ? [0, 0, 0] : unit(minus(vectorAt(at, i), vectorAt(at, foot)), [0, 0, 0]);
}

/** A chain is a bar along the row, a little higher and lower than its middle line. */
function addBar(patches: Patches, graph: StitchGraph, at: Float64Array, i: number): void {
  const own = vectorAt(at, i);
  const [b, a] = [graph.before[i]!, graph.after[i]!];
  const from = barEnd(graph, at, b, own);
  const to = barEnd(graph, at, a, own);
  const along = unit(minus(to, from), [1, 0, 0]);
  const up = times(CHAIN_HALF * graph.widthMm[i]!, barWay(graph, at, i, along));
  put(patches, graph, i, {
    corners: [minus(from, up), plus(from, up), plus(to, up), minus(to, up)],
    isOpen: [b < 0, a < 0],
  });
}

/** Half-way to a chain beside it, and all the way to a stitch: chains hang from its top. */
function barEnd(graph: StitchGraph, at: Float64Array, beside: number, own: Vector): Vector {
  if (beside < 0) return own;
  const there = vectorAt(at, beside);
  return graph.isChain[beside] ? middle(there, own) : there;
}

/**
 * Square to the chain, in the face of the nearest stitch of its row: so a loop that turns back on itself still
 * shows the side that its neighbours show.
 */
function barWay(graph: StitchGraph, at: Float64Array, i: number, along: Vector): Vector {
  for (const k of nearStitches(graph, i)) {
    const runsWith = isTurnedAt(graph, k) === isTurnedAt(graph, i);
    const way = times(runsWith ? 1 : -1, crossed(faceOf(graph, at, k), along));
    if (lengthOf(way) > 0.3) return unit(way, way);
  }
  return unit(across([0, 1, 0], along), [0, 0, 1]);
}

const isTurnedAt = (graph: StitchGraph, i: number): boolean => graph.rows[graph.row[i]!]!.isTurned;

const NEAR = 40;

/** Along the row to both sides; a foundation has none of its own, but bears the first row. */
function* nearStitches(graph: StitchGraph, i: number): Generator<number> {
  for (const step of [graph.before, graph.after]) {
    for (let k = step[i]!, n = 0; k >= 0 && n < NEAR; k = step[k]!, n++) yield k;
  }
  const above = graph.rows[graph.row[i]! + 1];
  if (!above) return;
  let nearest = above.from;
  for (let k = above.from; k < above.to; k++) {
    const [foot, best] = [firstAnchorOf(graph, k), firstAnchorOf(graph, nearest)];
    if (foot >= 0 && (best < 0 || Math.abs(foot - i) < Math.abs(best - i))) nearest = k;
  }
  yield nearest;
  for (let k = above.from; k < above.to && k < above.from + NEAR; k++) yield k;
}

/** Square to the row and to the stitch; no length for chains and where there is no direction. */
function faceOf(graph: StitchGraph, at: Float64Array, k: number): Vector {
  if (graph.isChain[k] || firstAnchorOf(graph, k) < 0) return [0, 0, 0];
  const [p, q] = [graph.before[k]!, graph.after[k]!];
  const row = minus(vectorAt(at, q >= 0 ? q : k), vectorAt(at, p >= 0 ? p : k));
  return unit(crossed(row, columnWay(graph, at, k)), [0, 0, 0]);
}

const crossed = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
