/**
 * Every stitch, chain and slip stitch in the order made, in columns: no object per stitch, about
 * 15 bytes each. Append-only; a trial that fails is taken back with `truncate`.
 */

/** The place that does not exist: worked into nothing. */
export const NOWHERE = -1;

/** Where no yarn is named. */
export const NO_YARN = 255;

export interface Nodes {
  n: number;
  /** Index into the kind table. */
  kind: Uint16Array;
  /** Index into the yarns; `NO_YARN` where none is named. */
  yarn: Uint8Array;
  /** Index into the origins: the words that made it. */
  origin: Int32Array;
  /** Where this node's anchors start; they end where the next node's start. */
  anchorFrom: Int32Array;
  /** Nodes worked into; a space is named by its first chain. */
  anchors: Int32Array;
  anchorsN: number;
  /** 1: the anchor is a space, not a chain or a stitch. */
  flags: Uint8Array;
}

export const INTO_SPACE = 1;

export function newNodes(capacity = 256): Nodes {
  return {
    n: 0,
    kind: new Uint16Array(capacity),
    yarn: new Uint8Array(capacity),
    origin: new Int32Array(capacity),
    anchorFrom: new Int32Array(capacity + 1),
    anchors: new Int32Array(capacity),
    anchorsN: 0,
    flags: new Uint8Array(capacity),
  };
}

function grown<T extends Uint8Array | Uint16Array | Int32Array>(column: T, length: number): T {
  const bigger = new (column.constructor as new (n: number) => T)(length);
  bigger.set(column as never);
  return bigger;
}

function makeRoom(nodes: Nodes): void {
  if (nodes.n < nodes.kind.length) return;
  const capacity = nodes.kind.length * 2;
  nodes.kind = grown(nodes.kind, capacity);
  nodes.yarn = grown(nodes.yarn, capacity);
  nodes.origin = grown(nodes.origin, capacity);
  nodes.flags = grown(nodes.flags, capacity);
  nodes.anchorFrom = grown(nodes.anchorFrom, capacity + 1);
}

/** Adds a node and returns its number; its anchors are added afterwards. */
export function addNode(
  nodes: Nodes,
  made: { kind: number; yarn: number; origin: number; flags: number },
): number {
  makeRoom(nodes);
  const id = nodes.n++;
  nodes.kind[id] = made.kind;
  nodes.yarn[id] = made.yarn;
  nodes.origin[id] = made.origin;
  nodes.flags[id] = made.flags;
  nodes.anchorFrom[id] = nodes.anchorsN;
  nodes.anchorFrom[id + 1] = nodes.anchorsN;
  return id;
}

/** Anchors the node added last. */
export function addAnchor(nodes: Nodes, place: number): void {
  if (nodes.anchorsN === nodes.anchors.length) {
    nodes.anchors = grown(nodes.anchors, Math.max(16, nodes.anchors.length * 2));
  }
  nodes.anchors[nodes.anchorsN++] = place;
  nodes.anchorFrom[nodes.n] = nodes.anchorsN;
}

/** The first place that a node is worked into; `NOWHERE` for none. */
export function firstAnchor(nodes: Nodes, id: number): number {
  const from = nodes.anchorFrom[id] ?? 0;
  return from < (nodes.anchorFrom[id + 1] ?? 0) ? (nodes.anchors[from] ?? NOWHERE) : NOWHERE;
}

/** Forgets all nodes from number `n` on. */
export function truncate(nodes: Nodes, n: number): void {
  nodes.n = n;
  nodes.anchorsN = n === 0 ? 0 : (nodes.anchorFrom[n] ?? 0);
}
