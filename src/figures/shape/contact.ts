/**
 * Thickness: pairs of nodes that lie closer than the fabric is thick, and are not held together by a
 * spring. Found by cells of that size, sorted, so that the list is the same on every run.
 */
import type { Contacts } from './energy.ts';
import type { Springs } from './springs.ts';

export interface Neighbours {
  readonly from: Int32Array;
  readonly list: Int32Array;
}

/** Who is tied to whom by any spring. */
export function neighboursOf(springs: Springs, nodes: number): Neighbours {
  const from = new Int32Array(nodes + 1);
  for (let i = 0; i < springs.n; i++) {
    from[springs.a[i]! + 1]!++;
    from[springs.b[i]! + 1]!++;
  }
  for (let i = 0; i < nodes; i++) from[i + 1]! += from[i]!;
  const fill = from.slice(0, nodes);
  const list = new Int32Array(2 * springs.n);
  for (let i = 0; i < springs.n; i++) {
    list[fill[springs.a[i]!]!++] = springs.b[i]!;
    list[fill[springs.b[i]!]!++] = springs.a[i]!;
  }
  return { from, list };
}

export const noContacts = (nodes: number, thicknessMm: number, stiffness: number): Contacts => ({
  n: 0,
  a: new Int32Array(4 * nodes),
  b: new Int32Array(4 * nodes),
  thicknessMm,
  stiffness,
});

/** Cells a side at most: numbers of cells stay whole in a double. */
const CELLS = 1 << 16;

/** Fills the list of contacts for where the nodes are now; what the list cannot hold is left out. */
export function findContacts(at: Float64Array, tied: Neighbours, contacts: Contacts): void {
  const nodes = at.length / 3;
  const size = contacts.thicknessMm;
  const cell = new Float64Array(nodes);
  const key = (x: number, y: number, z: number): number => (x * CELLS + y) * CELLS + z;
  const index = (v: number): number => Math.floor(v / size) + CELLS / 2;
  for (let i = 0; i < nodes; i++) {
    cell[i] = key(index(at[3 * i]!), index(at[3 * i + 1]!), index(at[3 * i + 2]!));
  }
  const order = Int32Array.from({ length: nodes }, (_, i) => i).sort(
    (p, q) => cell[p]! - cell[q]! || p - q,
  );
  const first = new Map<number, number>();
  for (let k = nodes - 1; k >= 0; k--) first.set(cell[order[k]!]!, k);
  contacts.n = 0;
  for (let i = 0; i < nodes; i++) {
    for (const near of NEAR) {
      const there = cell[i]! + key(near[0], near[1], near[2]);
      for (let k = first.get(there) ?? nodes; k < nodes && cell[order[k]!] === there; k++) {
        const j = order[k]!;
        if (j > i && isNear(at, i, j, size) && !isTied(tied, i, j)) add(contacts, i, j);
      }
    }
  }
}

const NEAR: readonly (readonly [number, number, number])[] = [-1, 0, 1].flatMap((x) =>
  [-1, 0, 1].flatMap((y) => [-1, 0, 1].map((z) => [x, y, z] as const)),
);

function add(contacts: Contacts, i: number, j: number): void {
  if (contacts.n === contacts.a.length) return;
  contacts.a[contacts.n] = i;
  contacts.b[contacts.n++] = j;
}

function isNear(at: Float64Array, i: number, j: number, mm: number): boolean {
  const x = at[3 * i]! - at[3 * j]!;
  const y = at[3 * i + 1]! - at[3 * j + 1]!;
  const z = at[3 * i + 2]! - at[3 * j + 2]!;
  return x * x + y * y + z * z < mm * mm;
}

function isTied(tied: Neighbours, i: number, j: number): boolean {
  for (let k = tied.from[i]!; k < tied.from[i + 1]!; k++) if (tied.list[k] === j) return true;
  return false;
}
