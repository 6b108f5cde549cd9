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
