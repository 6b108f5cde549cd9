/**
 * Thickness: pairs of nodes that lie closer than the fabric is thick, and are not held together by a
 * spring. Pairs that are still a little further apart are listed too, so that none comes in unseen and is
 * thrown back when the list is made anew (L. Verlet, Physical Review 159, 1967). Found by cells, sorted, so
 * that the list is the same on every run.
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

const MOST_A_NODE = 12;

export const noContacts = (nodes: number, thicknessMm: number, stiffness: number): Contacts => ({
  n: 0,
  a: new Int32Array(MOST_A_NODE * nodes),
  b: new Int32Array(MOST_A_NODE * nodes),
  thicknessMm,
  stiffness,
});

/** Pairs are listed up to so many thicknesses apart (ours). */
const LISTED = 1.6;

/** May a pair that is not on the list have come to touch since the nodes were at `then`? */
export function isStale(at: Float64Array, then: Float64Array, { thicknessMm }: Contacts): boolean {
  const most = ((LISTED - 1) * thicknessMm) / 2;
  for (let i = 0; i < at.length; i += 3) {
    const [x, y, z] = [at[i]! - then[i]!, at[i + 1]! - then[i + 1]!, at[i + 2]! - then[i + 2]!];
    if (x * x + y * y + z * z > most * most) return true;
  }
  return false;
}

/** Fills the list of contacts for where the nodes are now; what the list cannot hold is left out. */
export function findContacts(at: Float64Array, tied: Neighbours, contacts: Contacts): void {
  const nodes = at.length / 3;
  const size = LISTED * contacts.thicknessMm;
  const cells = cellsOf(at, size);
  const { cell, from, order } = cells;
  contacts.n = 0;
  for (let i = 0; i < nodes; i++) {
    const [x, y, z] = [cell[3 * i]!, cell[3 * i + 1]!, cell[3 * i + 2]!];
    for (let near = 0; near < 27; near++) {
      const cx = x + (near % 3) - 1;
      const cy = y + (Math.floor(near / 3) % 3) - 1;
      const cz = z + Math.floor(near / 9) - 1;
      const bucket = bucketOf(cells, cx, cy, cz);
      for (let k = from[bucket]!; k < from[bucket + 1]!; k++) {
        const j = order[k]!;
        // Cells far apart may share a bucket.
        if (j <= i || cell[3 * j] !== cx || cell[3 * j + 1] !== cy || cell[3 * j + 2] !== cz)
          continue;
        if (isNear(at, i, j, size) && !isTied(tied, i, j)) add(contacts, i, j);
      }
    }
  }
}

/** Nodes by the cell that they lie in: bucket b holds `order` from `from[b]` to `from[b + 1]`. */
interface Cells {
  /** Three numbers a node. */
  readonly cell: Int32Array;
  readonly from: Int32Array;
  readonly order: Int32Array;
  readonly mask: number;
}

function cellsOf(at: Float64Array, size: number): Cells {
  const nodes = at.length / 3;
  const cell = new Int32Array(at.length);
  for (let k = 0; k < at.length; k++) cell[k] = Math.floor(at[k]! / size);
  let buckets = 1;
  while (buckets < 2 * nodes) buckets *= 2;
  const from = new Int32Array(buckets + 1);
  const order = new Int32Array(nodes);
  const cells: Cells = { cell, from, order, mask: buckets - 1 };
  const bucket = new Int32Array(nodes);
  for (let i = 0; i < nodes; i++) {
    bucket[i] = bucketOf(cells, cell[3 * i]!, cell[3 * i + 1]!, cell[3 * i + 2]!);
    from[bucket[i]! + 1]!++;
  }
  for (let b = 0; b < buckets; b++) from[b + 1]! += from[b]!;
  const fill = from.slice(0, buckets);
  for (let i = 0; i < nodes; i++) order[fill[bucket[i]!]!++] = i;
  return cells;
}

/** Three large primes scatter cells over the buckets (the usual hash of a grid, from memory). */
const bucketOf = ({ mask }: Pick<Cells, 'mask'>, x: number, y: number, z: number): number =>
  (Math.imul(x, 73_856_093) ^ Math.imul(y, 19_349_663) ^ Math.imul(z, 83_492_791)) & mask;

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
