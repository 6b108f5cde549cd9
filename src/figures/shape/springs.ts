/** Springs between stitches: flat columns, so that a sweep over 100,000 of them stays in the cache. */

export interface Springs {
  readonly n: number;
  /** Node numbers of both ends. */
  readonly a: Int32Array;
  readonly b: Int32Array;
  /** Length at which the spring is at rest, mm. */
  readonly restMm: Float64Array;
  /** Force per mm, in units of the stiffness of a stitch along its row. */
  readonly stiffness: Float64Array;
  /** Share of the stiffness with which it resists being pushed together: chains in a loop hardly do. */
  readonly pushes: Float64Array;
}

/** A chain in an open loop, pushed together: enough to keep it from crumpling, no more (ours). */
const SLACK = 0.05;

/** Springs under way; `finish` cuts the columns to size. */
export class SpringList {
  private readonly ends: number[] = [];
  private readonly rests: number[] = [];
  private readonly stiff: number[] = [];
  private readonly pushes: number[] = [];

  get n(): number {
    return this.rests.length;
  }

  add(a: number, b: number, restMm: number, stiffness: number): void {
    if (a === b || a < 0 || b < 0 || !(restMm > 0)) return;
    this.ends.push(a, b);
    this.rests.push(restMm);
    this.stiff.push(stiffness);
    this.pushes.push(1);
  }

  /** A spring that holds against a pull and gives way to a push. */
  addSlack(a: number, b: number, restMm: number, stiffness: number): void {
    const before = this.n;
    this.add(a, b, restMm, stiffness);
    if (this.n > before) this.pushes[before] = SLACK;
  }

  finish(): Springs {
    const { n } = this;
    const a = new Int32Array(n);
    const b = new Int32Array(n);
    for (let i = 0; i < n; i++) {
      a[i] = this.ends[2 * i]!;
      b[i] = this.ends[2 * i + 1]!;
    }
    return {
      n,
      a,
      b,
      restMm: Float64Array.from(this.rests),
      stiffness: Float64Array.from(this.stiff),
      pushes: Float64Array.from(this.pushes),
    };
  }
}

/** Does this spring carry a stitch's own width or height? Neither those across do, nor a chain that hangs loose. */
export const isStitchLong = ({ stiffness, pushes }: Springs, i: number): boolean =>
  stiffness[i]! >= 1 && pushes[i]! >= 1;

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
