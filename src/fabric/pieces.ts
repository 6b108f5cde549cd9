/**
 * One row over several pieces: legs into a body, sleeves into a yoke. The hands keep their place on
 * each piece and on both sides of the chains between; the row ends when all are used up.
 */
import { COUNTED, type Edge, edgeOfPlaces, SPACE } from './edge.ts';
import type { Hands } from './hands.ts';
import type { Parked } from './parked.ts';

/** Where the hands stand on one piece, while they work on another. */
export interface Stand {
  readonly edge: Edge;
  readonly pos: number;
  readonly inner: number;
  readonly limit: number;
}

/** A chain between two pieces. Made before the row's stitches, both its sides belong to this row. */
export interface Bridge {
  readonly from: number;
  readonly n: number;
  /** Sides that this row may work along; the other side of a chain in mid-row is the next row's. */
  readonly sides: number;
  readonly taken: number;
}

/** Never changed in place: a trial that fails puts the former value back. */
export interface Pieces {
  readonly stands: ReadonlyMap<string, Stand>;
  readonly at: string;
  readonly bound: ReadonlyMap<string, string>;
  readonly bridges: readonly Bridge[];
  /**
   * joining: just come to a piece, where a join or a slip stitch takes no place. within: the step at
   * hand is for this piece alone. free: it may go on to the next.
   */
  readonly manner: 'joining' | 'within' | 'free';
}

const standOf = (hands: Hands): Stand => ({
  edge: hands.edge,
  pos: hands.pos,
  inner: hands.inner,
  limit: hands.limit,
});

/** The pieces of this row; the first is the one on the hook. */
export const piecesOf = (hands: Hands): Pieces =>
  hands.pieces ?? {
    stands: new Map(),
    at: hands.ownPiece,
    bound: new Map(),
    bridges: [],
    manner: 'free',
  };

/** Leaves the piece at hand where it is and goes on with another. */
export function switchTo(hands: Hands, key: string, fresh: Edge): void {
  const pieces = piecesOf(hands);
  const stands = new Map(pieces.stands);
  if (hands.edge.kind !== 'none') stands.set(pieces.at, standOf(hands));
  const stand = stands.get(key) ?? { edge: fresh, pos: 0, inner: 0, limit: fresh.n };
  hands.edge = stand.edge;
  hands.pos = stand.pos;
  hands.inner = stand.inner;
  hands.limit = stand.limit;
  hands.last = null;
  stands.set(key, stand);
  hands.pieces = { ...pieces, stands, at: key };
}

/** Key of several pieces taken as one edge. */
const ALL = 'all';

/** Both pieces one after the other as one edge: "sc around both legs". */
export function standOnAll(hands: Hands, parked: readonly Parked[]): void {
  const edge = concat(parked.map((piece) => ({ edge: piece.edge, from: 0, to: piece.edge.n })));
  hands.edge = edge;
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = edge.n;
  const bound = new Map(parked.map(({ key }) => [`all ${key}`, key]));
  hands.pieces = { ...piecesOf(hands), stands: new Map(), at: ALL, bound };
}

type Stretch = { readonly edge: Edge; readonly from: number; readonly to: number };

function concat(stretches: readonly Stretch[]): Edge {
  const n = stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  const node = new Int32Array(n);
  const run = new Int32Array(n);
  const type = new Uint8Array(n);
  let at = 0;
  for (const { edge, from, to } of stretches) {
    node.set(edge.node.subarray(from, to), at);
    run.set(edge.run.subarray(from, to), at);
    type.set(edge.type.subarray(from, to), at);
    at += to - from;
  }
  const count = (wanted: number): number => type.reduce((sum, t) => sum + Number(t === wanted), 0);
  return {
    n,
    node,
    run,
    type,
    counted: count(COUNTED),
    spaces: count(SPACE),
    ring: true,
    reversed: false,
    kind: 'row',
    open: stretches.some(({ edge }) => edge.open),
  };
}

/** The chain just made lies between two pieces; before all stitches, it is none of the row's own. */
export function bridge(hands: Hands, chain: { from: number; n: number; before: boolean }): void {
  const { from, n, before } = chain;
  const pieces = piecesOf(hands);
  const one: Bridge = { from, n, sides: before ? 2 : 1, taken: 0 };
  hands.pieces = { ...pieces, bridges: [...pieces.bridges, one] };
  if (before) hands.rowFrom = hands.nodes.n;
}

/** Goes on along a side of the chain that is free, unless the hands stand on one. */
export function toBridge(hands: Hands): boolean {
  const { pieces } = hands;
  if (!pieces) return false;
  if (pieces.at.startsWith('bridge') && hands.pos < hands.limit) return true;
  const at = pieces.bridges.findIndex(({ sides, taken }) => taken < sides);
  const free = pieces.bridges[at];
  if (!free) return false;
  const chains = Array.from({ length: free.n }, (_, i) => free.from + i);
  // The far side of a chain, and the side of one made in mid-row, is met from its end.
  if (free.taken > 0 || free.sides === 1) chains.reverse();
  switchTo(hands, `bridge ${at} ${free.taken}`, edgeOfPlaces(chains, false, 'foundation'));
  const now = piecesOf(hands);
  const bridges = now.bridges.map((b, i) => (i === at ? { ...b, taken: b.taken + 1 } : b));
  hands.pieces = { ...now, bridges };
  return true;
}

const left = ({ edge, pos }: Stand): number => {
  let n = 0;
  for (let i = pos; i < edge.n; i++) if (edge.type[i] === COUNTED) n++;
  return n;
};

/** The piece at hand is used up: the work goes on along the chain, then on the next piece. */
export function goesOnElsewhere(hands: Hands): boolean {
  const { pieces } = hands;
  if (!pieces || pieces.manner === 'within') return false;
  if (hands.limit < hands.edge.n || hands.into) return false;
  if (!pieces.at.startsWith('bridge') && toBridge(hands)) return true;
  for (const [key, stand] of [...pieces.stands].reverse()) {
    if (key === pieces.at || left(stand) === 0) continue;
    switchTo(hands, key, stand.edge);
    return true;
  }
  return pieces.at.startsWith('bridge') && toBridge(hands);
}

/**
 * All pieces as one edge at the row's end: what was taken first, then what is left of the piece that
 * was on the hook. What is left of the others stays where it is (stitches beneath an arm).
 */
export function gather(hands: Hands): void {
  const { pieces } = hands;
  if (!pieces) return;
  const stands = new Map(pieces.stands).set(pieces.at, standOf(hands));
  const own = stands.get(hands.ownPiece) ?? stands.get(ALL);
  const taken = [...stands.values()].map(({ edge, pos }) => ({ edge, from: 0, to: pos }));
  const rest = own ? [{ edge: own.edge, from: own.pos, to: own.edge.n }] : [];
  hands.edge = concat([...taken, ...rest]);
  hands.pos = own ? hands.edge.n - (own.edge.n - own.pos) : hands.edge.n;
  hands.inner = 0;
  hands.limit = hands.edge.n;
  // One side of the chain was worked: the next row meets the other.
  const half = pieces.bridges.find((b) => b.sides === 2 && b.taken < 2);
  if (half) hands.rowFrom = Math.min(hands.rowFrom, half.from);
}

/**
 * Chains that are left of a side along which the row went, stitch by stitch. All of the stitches in
 * one chain ("3 sc in the ch") go into the space beneath it, and leave nothing.
 */
export function chainsLeft(hands: Hands): number {
  const { pieces } = hands;
  if (!pieces) return 0;
  const stands = new Map(pieces.stands);
  if (stands.has(pieces.at)) stands.set(pieces.at, standOf(hands));
  let n = 0;
  for (const [key, stand] of stands) {
    if (key.startsWith('bridge') && stand.pos > 1) n += left(stand);
  }
  return n;
}

/** Keys of the pieces that this row worked on beside its own. */
export const joinedBy = (hands: Hands): string[] =>
  hands.pieces
    ? [...new Set(hands.pieces.bound.values())].filter((key) => key !== hands.ownPiece)
    : [];

export const atJoin = (hands: Hands): boolean => hands.pieces?.manner === 'joining';

export function arrived(hands: Hands, manner: Pieces['manner']): void {
  if (hands.pieces && hands.pieces.manner !== manner) hands.pieces = { ...hands.pieces, manner };
}
