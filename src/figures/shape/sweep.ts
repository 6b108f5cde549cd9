/**
 * The constraint loop: every spring in turn pulls both its ends to its length, wholly or in part. One
 * sweep takes about 10 ns a spring; it settles stitch against stitch at once and large bends slowly,
 * which is why the layout comes before it and `settle` after.
 */
import { sqrt } from '../../units/index.ts';
import type { Springs } from './springs.ts';

/** Moves both ends of each spring by its stiffness' share of what it is out. `at`: x, y, z by node. */
export function sweep(at: Float64Array, springs: Springs): void {
  const { a, b, restMm, stiffness, pushes, n } = springs;
  for (let i = 0; i < n; i++) {
    const p = 3 * a[i]!;
    const q = 3 * b[i]!;
    const x = at[q]! - at[p]!;
    const y = at[q + 1]! - at[p + 1]!;
    const z = at[q + 2]! - at[p + 2]!;
    const length = sqrt(x * x + y * y + z * z);
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

/** The same for a part of the springs, with nodes before `fixed` held in place. */
export function sweepSome(
  at: Float64Array,
  springs: Springs,
  some: { readonly from: number; readonly to: number; readonly fixed: number },
): void {
  const { a, b, restMm, stiffness } = springs;
  for (let i = some.from; i < some.to; i++) {
    const p = a[i]!;
    const q = b[i]!;
    const free = (p >= some.fixed ? 1 : 0) + (q >= some.fixed ? 1 : 0);
    if (free > 0) pull(at, [p, q], { restMm: restMm[i]!, share: stiffness[i]! / free, ...some });
  }
}

function pull(
  at: Float64Array,
  [p, q]: readonly [number, number],
  by: { readonly restMm: number; readonly share: number; readonly fixed: number },
): void {
  const x = at[3 * q]! - at[3 * p]!;
  const y = at[3 * q + 1]! - at[3 * p + 1]!;
  const z = at[3 * q + 2]! - at[3 * p + 2]!;
  const length = sqrt(x * x + y * y + z * z);
  if (length < 1e-9) return;
  const move = (by.share * (length - by.restMm)) / length;
  if (p >= by.fixed) add(at, p, [move * x, move * y, move * z]);
  if (q >= by.fixed) add(at, q, [-move * x, -move * y, -move * z]);
}

function add(at: Float64Array, node: number, [x, y, z]: readonly [number, number, number]): void {
  at[3 * node]! += x;
  at[3 * node + 1]! += y;
  at[3 * node + 2]! += z;
}
