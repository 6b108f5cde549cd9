/**
 * The edge: the places that the next row meets, in the order in which it meets them. A stitch is
 * one entry; a run of chains is one entry too, a space, with its chains as places inside it.
 */
import { heightOf, type StemId } from '../notation/index.ts';
import type { KindTable } from './kinds.ts';
import { firstAnchor, NOWHERE, type Nodes } from './nodes.ts';

/** named: taken only when named (picots, chains that do not count, slip stitches). */
export const NAMED = 0;
export const COUNTED = 1;
export const SPACE = 2;

export interface Edge {
  readonly n: number;
  /** Node of the entry; for a space its chain with the lowest number. */
  readonly node: Int32Array;
  /** Chains of a space; 0 for a stitch. */
  readonly run: Int32Array;
  /** NAMED, COUNTED or SPACE. */
  readonly type: Uint8Array;
  /** Entries of type COUNTED. */
  readonly counted: number;
  readonly spaces: number;
  /** The end meets the start: a round, not a row. */
  readonly ring: boolean;
  /** Met in the opposite order to that in which it was made: chains of a space run down. */
  readonly reversed: boolean;
  /**
   * row: a row of stitches; foundation: chains with nothing worked yet; into: a ring that holds any
   * number of stitches; none: nothing has been made yet.
   */
  readonly kind: 'row' | 'foundation' | 'into' | 'none';
  /** How many places there are is not known (after words that were not understood). */
  readonly open: boolean;
}

const EMPTY = new Int32Array(0);

export const bareEdge = (kind: 'into' | 'none', node: number = NOWHERE): Edge => ({
  n: 0,
  node: node === NOWHERE ? EMPTY : Int32Array.of(node),
  run: EMPTY,
  type: new Uint8Array(0),
  counted: 0,
  spaces: 0,
  ring: true,
  reversed: false,
  kind,
  open: kind === 'none',
});

/** The edge of a piece to which yarn is joined where nobody knows its places: "at underarm", "at left shoulder". */
export const unknownEdge = (): Edge => ({ ...bareEdge('none'), ring: false, kind: 'row' });

/** Chain `k` (from 0) of the space at `entry`, as this row meets it. */
export function chainAt(edge: Edge, entry: number, k: number): number {
  const first = edge.node[entry] ?? NOWHERE;
  return edge.reversed ? first + (edge.run[entry] ?? 1) - 1 - k : first + k;
}

interface Draft {
  node: Int32Array;
  run: Int32Array;
  type: Uint8Array;
  n: number;
  counted: number;
  spaces: number;
}

function push(draft: Draft, node: number, run: number, type: number): void {
  draft.node[draft.n] = node;
  draft.run[draft.n] = run;
  draft.type[draft.n++] = type;
  if (type === COUNTED) draft.counted++;
  else if (type === SPACE) draft.spaces++;
}

function finish(draft: Draft, traits: Pick<Edge, 'ring' | 'reversed' | 'kind' | 'open'>): Edge {
  const node = draft.node.subarray(0, draft.n);
  const run = draft.run.subarray(0, draft.n);
  const type = draft.type.subarray(0, draft.n);
  if (traits.reversed) {
    node.reverse();
    run.reverse();
    type.reverse();
  }
  const { n, counted, spaces } = draft;
  return { n, node, run, type, counted, spaces, ...traits };
}

const newDraft = (size: number): Draft => ({
  node: new Int32Array(size),
  run: new Int32Array(size),
  type: new Uint8Array(size),
  n: 0,
  counted: 0,
  spaces: 0,
});

/** Chains that a stitch closing a space stands for: its height. */
export const closerChains = (stem: StemId | null): number =>
  stem === null ? 1 : Math.floor(heightOf(stem));

/**
 * End of the chains that begin at `id`. `through`: also those behind a picot that stands on them, which
 * is no end of their loop.
 */
function chainsEnd(
  { kind }: Nodes,
  table: KindTable,
  at: { readonly id: number; readonly to: number; readonly through: boolean },
): { readonly end: number; readonly run: number } {
  const chain = kind[at.id];
  let end = at.id + 1;
  while (end < at.to && kind[end] === chain) end++;
  let run = end - at.id;
  while (at.through) {
    let next = end;
    while (next < at.to && table.kinds[kind[next] ?? 0]?.class === 'picot') next++;
    if (next === end || next >= at.to || kind[next] !== chain) break;
    end = next;
    while (end < at.to && kind[end] === chain) end++;
    run += end - next;
  }
  return { end, run };
}

/** The edge that the nodes `from` to `to` (exclusive) make. `throughPicots`: a loop with picots is one space. */
export function edgeOf(
  nodes: Nodes,
  table: KindTable,
  range: {
    from: number;
    to: number;
    ring: boolean;
    reversed: boolean;
    open: boolean;
    throughPicots?: boolean;
  },
): Edge {
  const through = range.throughPicots === true;
  const draft = newDraft(range.to - range.from);
  for (let id = range.from; id < range.to; ) {
    const kind = table.kinds[nodes.kind[id] ?? 0];
    if (kind?.class === 'chain') {
      const { end, run } = chainsEnd(nodes, table, { id, to: range.to, through });
      // A stitch that closes the space lengthens it and is no place of its own.
      const next = end < range.to ? table.kinds[nodes.kind[end] ?? 0] : undefined;
      const closed = next?.class === 'closer';
      push(draft, id, run + (closed ? closerChains(next.stem) : 0), SPACE);
      id = closed ? end + 1 : end;
      continue;
    }
    if (kind?.class === 'closer') push(draft, id, closerChains(kind.stem), SPACE);
    else push(draft, id, 0, kind?.counted ? COUNTED : NAMED);
    id++;
  }
  const { ring, reversed, open } = range;
  return finish(draft, { ring, reversed, kind: 'row', open });
}

/** Chains as places of a first row: one entry each. `reversed`: from the hook back. */
export function foundationEdge(
  from: number,
  to: number,
  traits: { ring: boolean; reversed: boolean; open: boolean },
): Edge {
  const draft = newDraft(to - from);
  for (let id = from; id < to; id++) push(draft, id, 0, COUNTED);
  return finish(draft, { ...traits, kind: 'foundation' });
}

/** An edge of the given nodes, all counted, in this order; `foundation` where they are chains. */
export function edgeOfPlaces(
  places: readonly number[],
  ring: boolean,
  kind: 'row' | 'foundation' = 'row',
): Edge {
  const draft = newDraft(places.length);
  for (const place of places) push(draft, place, 0, COUNTED);
  return finish(draft, { ring, reversed: false, kind, open: false });
}

/** One edge behind the other, as kind and direction of the second. */
export function edgeBehind(first: Edge, second: Edge): Edge {
  const n = first.n + second.n;
  const join = <T extends Int32Array | Uint8Array>(into: T, a: T, b: T): T => {
    into.set(a.subarray(0, first.n) as never, 0);
    into.set(b.subarray(0, second.n) as never, first.n);
    return into;
  };
  return {
    ...second,
    n,
    node: join(new Int32Array(n), first.node, second.node),
    run: join(new Int32Array(n), first.run, second.run),
    type: join(new Uint8Array(n), first.type, second.type),
    counted: first.counted + second.counted,
    spaces: first.spaces + second.spaces,
  };
}

/** The same ring begun at another entry. */
export function rotated(edge: Edge, start: number): Edge {
  if (start === 0 || edge.n === 0) return edge;
  const turn = <T extends Int32Array | Uint8Array>(column: T): T => {
    const out = column.slice() as T;
    out.set(column.subarray(start) as never, 0);
    out.set(column.subarray(0, start) as never, edge.n - start);
    return out;
  };
  return { ...edge, node: turn(edge.node), run: turn(edge.run), type: turn(edge.type) };
}

/** The same ring met the other way round, from its last entry. */
export function turnedRing(edge: Edge): Edge {
  const turn = <T extends Int32Array | Uint8Array>(column: T): T => column.slice().reverse() as T;
  const { node, run, type, reversed } = edge;
  return {
    ...edge,
    node: turn(node),
    run: turn(run),
    type: turn(type),
    reversed: !reversed,
  };
}

/** Entries [from, to) of an edge, in rows. */
export function cutEdge(edge: Edge, from: number, to: number): Edge {
  const draft = newDraft(to - from);
  for (let i = from; i < to; i++)
    push(draft, edge.node[i] ?? 0, edge.run[i] ?? 0, edge.type[i] ?? 0);
  const { kind, open, reversed } = edge;
  // The entries stand in the order in which they are met already.
  return { ...finish(draft, { ring: false, reversed: false, kind, open }), reversed };
}

/** Entries of `a` from `from` on, then all of `b`: a spiral goes on where it stopped. */
export function queued(a: Edge, from: number, b: Edge): Edge {
  if (from >= a.n) return b;
  const draft = newDraft(a.n - from + b.n);
  for (let i = from; i < a.n; i++) push(draft, a.node[i] ?? 0, a.run[i] ?? 0, a.type[i] ?? 0);
  for (let i = 0; i < b.n; i++) push(draft, b.node[i] ?? 0, b.run[i] ?? 0, b.type[i] ?? 0);
  return finish(draft, { ring: b.ring, reversed: false, kind: 'row', open: b.open });
}

/**
 * End (exclusive) of the run of stitches worked into the same place that holds `entry`: a shell, a
 * corner, a box. Spaces inside it belong to it. A stitch alone is a run of one.
 */
export function groupEnd(edge: Edge, nodes: Nodes, entry: number): number {
  const foot = firstAnchor(nodes, edge.node[entry] ?? 0);
  if (foot === NOWHERE || edge.type[entry] === SPACE) return entry + 1;
  let end = entry + 1;
  for (let i = entry + 1; i < edge.n; i++) {
    if (edge.type[i] === SPACE) continue;
    if (firstAnchor(nodes, edge.node[i] ?? 0) !== foot) break;
    end = i + 1;
  }
  return end;
}

/** The stitches in one place around that at `entry`: how many, and which of them it is, from 0. */
export function groupAround(
  { ring, type, node, n }: Edge,
  nodes: Nodes,
  entry: number,
): { readonly size: number; readonly at: number } {
  const foot = type[entry] === COUNTED ? firstAnchor(nodes, node[entry] ?? 0) : NOWHERE;
  if (foot === NOWHERE) return { size: 1, at: 0 };
  const along = (step: number): number => {
    let found = 0;
    for (let k = 1; k < n; k++) {
      const i = entry + step * k;
      if (!ring && (i < 0 || i >= n)) break;
      const place = (i + n) % n;
      if (type[place] === SPACE) continue;
      if (firstAnchor(nodes, node[place] ?? 0) !== foot) break;
      if (type[place] === COUNTED) found++;
    }
    return found;
  };
  const before = along(-1);
  return { size: Math.min(n, before + 1 + along(1)), at: before };
}

/** Is the space at `entry` inside a group: both its neighbours worked into the same place? */
export function isCorner(edge: Edge, nodes: Nodes, entry: number): boolean {
  if (edge.type[entry] !== SPACE || edge.n < 3) return false;
  const before = edge.node[(entry + edge.n - 1) % edge.n] ?? 0;
  const after = edge.node[(entry + 1) % edge.n] ?? 0;
  const foot = firstAnchor(nodes, before);
  return foot !== NOWHERE && foot === firstAnchor(nodes, after);
}
