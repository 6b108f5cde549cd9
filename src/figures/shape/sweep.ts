/**
 * Some springs pulled to their length in turn, while a layout grows. It settles stitch against stitch at
 * once and large bends slowly, which is left to `settle`.
 */
import { sqrt } from '../../units/index.ts';
import type { Springs } from './springs.ts';

/** Springs from `from` to `to` move their ends by their stiffness' share of what they are out; nodes before `fixed` stay. */
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
