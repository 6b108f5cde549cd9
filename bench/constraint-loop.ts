/**
 * The plain constraint loop, as the limit of what such a loop can do: every spring in turn pulls both its
 * ends to its length, in an order in which none waits for the one before it. About 10 ns a spring.
 */
import type { Springs } from '../src/figures/shape/springs.ts';

/** Moves both ends of each spring by its stiffness' share of what it is out. `at`: x, y, z by node. */
export function sweep(at: Float64Array, springs: Springs): void {
  const { a, b, restMm, stiffness, pushes, n } = springs;
  for (let i = 0; i < n; i++) {
    const p = 3 * a[i]!;
    const q = 3 * b[i]!;
    const x = at[q]! - at[p]!;
    const y = at[q + 1]! - at[p + 1]!;
    const z = at[q + 2]! - at[p + 2]!;
    const length = Math.sqrt(x * x + y * y + z * z);
    if (length < 1e-9) continue;
    const out = length - restMm[i]!;
    const firm = out < 0 ? pushes[i]! * stiffness[i]! : stiffness[i]!;
    const share = (0.5 * firm * out) / length;
    at[p]! += share * x;
    at[p + 1]! += share * y;
    at[p + 2]! += share * z;
    at[q]! -= share * x;
    at[q + 1]! -= share * y;
    at[q + 2]! -= share * z;
  }
}

/** The springs in this order. */
function reordered(springs: Springs, order: Int32Array): Springs {
  const n = order.length;
  const out = {
    n,
    a: new Int32Array(n),
    b: new Int32Array(n),
    restMm: new Float64Array(n),
    stiffness: new Float64Array(n),
    pushes: new Float64Array(n),
  };
  for (let i = 0; i < n; i++) {
    const from = order[i]!;
    out.a[i] = springs.a[from]!;
    out.b[i] = springs.b[from]!;
    out.restMm[i] = springs.restMm[from]!;
    out.stiffness[i] = springs.stiffness[from]!;
    out.pushes[i] = springs.pushes[from]!;
  }
  return out;
}

/**
 * Sorted so that springs beside each other in the list share no node: a sweep that moves both ends of
 * each spring in turn then never waits for the move before it. Greedy, in list order; a node of degree
 * d takes part in at least d colours, and 64 are enough for any stitch (what is over goes last).
 */
export function byColour(springs: Springs, nodes: number): Springs {
  const low = new Int32Array(nodes);
  const high = new Int32Array(nodes);
  const colour = new Uint8Array(springs.n);
  const size = new Int32Array(65);
  for (let i = 0; i < springs.n; i++) {
    const a = springs.a[i]!;
    const b = springs.b[i]!;
    const c = lowestZero(low[a]! | low[b]!, high[a]! | high[b]!);
    colour[i] = c;
    size[c]!++;
    const taken = c < 32 ? low : high;
    if (c === 64) continue;
    taken[a]! |= 1 << (c & 31);
    taken[b]! |= 1 << (c & 31);
  }
  const start = new Int32Array(65);
  for (let c = 1; c <= 64; c++) start[c] = start[c - 1]! + size[c - 1]!;
  const order = new Int32Array(springs.n);
  for (let i = 0; i < springs.n; i++) order[start[colour[i]!]!++] = i;
  return reordered(springs, order);
}

/** Of 64 bits in two words; 64 where all are set. */
function lowestZero(low: number, high: number): number {
  if (low !== -1) return 31 - Math.clz32(~low & (low + 1));
  return high === -1 ? 64 : 32 + 31 - Math.clz32(~high & (high + 1));
}
