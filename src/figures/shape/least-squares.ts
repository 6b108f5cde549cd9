/**
 * Places from wished differences: numbers x for which x[to] - x[from] comes as near as may be to what is
 * wished, in the sense of weighted squares. The normal equations are a graph's Laplacian; they are
 * solved by conjugate gradients (Hestenes and Stiefel, 1952) with the diagonal taken out.
 */
import { sqrt } from '../../units/index.ts';

export interface Wishes {
  readonly n: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly weight: Float64Array;
  readonly difference: Float64Array;
}

/** Residual, against the first one, at which a solution is near enough: layouts are settled afterwards. */
const NEAR = 1e-7;

/** Improves `x` in place. Its mean stays as it was: differences say nothing of it. */
export function solveWishes(wishes: Wishes, x: Float64Array): void {
  const n = x.length;
  const inverse = inverseDiagonal(wishes, n);
  const residual = new Float64Array(n);
  pull(wishes, x, residual);
  const step = new Float64Array(n);
  const image = new Float64Array(n);
  let rho = 0;
  for (let i = 0; i < n; i++) {
    step[i] = inverse[i]! * residual[i]!;
    rho += step[i]! * residual[i]!;
  }
  const enough = NEAR * NEAR * rho;
  // A chain of n nodes needs n steps; nets need far fewer, and end by the residual.
  const most = 200 + 12 * Math.ceil(sqrt(n));
  for (let k = 0; k < most && rho > enough && rho > 1e-18; k++) {
    multiply(wishes, step, image);
    let curve = 0;
    for (let i = 0; i < n; i++) curve += step[i]! * image[i]!;
    if (!(curve > 0)) return;
    const alpha = rho / curve;
    let next = 0;
    for (let i = 0; i < n; i++) {
      x[i]! += alpha * step[i]!;
      residual[i]! -= alpha * image[i]!;
      next += inverse[i]! * residual[i]! * residual[i]!;
    }
    const beta = next / rho;
    rho = next;
    for (let i = 0; i < n; i++) step[i] = inverse[i]! * residual[i]! + beta * step[i]!;
  }
}

function inverseDiagonal(wishes: Wishes, n: number): Float64Array {
  const inverse = new Float64Array(n);
  for (let k = 0; k < wishes.n; k++) {
    inverse[wishes.from[k]!]! += wishes.weight[k]!;
    inverse[wishes.to[k]!]! += wishes.weight[k]!;
  }
  for (let i = 0; i < n; i++) inverse[i] = inverse[i]! > 0 ? 1 / inverse[i]! : 0;
  return inverse;
}

/** What is left of the wishes at `x`, pulled together at each node. */
function pull(wishes: Wishes, x: Float64Array, out: Float64Array): void {
  for (let k = 0; k < wishes.n; k++) {
    const [a, b] = [wishes.from[k]!, wishes.to[k]!];
    const left = wishes.weight[k]! * (wishes.difference[k]! - (x[b]! - x[a]!));
    out[b]! += left;
    out[a]! -= left;
  }
}

function multiply({ n, from, to, weight }: Wishes, x: Float64Array, out: Float64Array): void {
  out.fill(0);
  for (let k = 0; k < n; k++) {
    const a = from[k]!;
    const b = to[k]!;
    const apart = weight[k]! * (x[b]! - x[a]!);
    out[b]! += apart;
    out[a]! -= apart;
  }
}
