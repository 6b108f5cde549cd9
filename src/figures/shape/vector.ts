/** Vectors of three, for layouts, where a row's worth of small objects costs nothing that matters. */
import { sqrt } from '../../units/index.ts';

export type Vector = readonly [number, number, number];

export const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (by: number, a: Vector): Vector => [by * a[0], by * a[1], by * a[2]];
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const lengthOf = (a: Vector): number => sqrt(dot(a, a));

/** Of length one; `otherwise` where there is no direction. */
export function unit(a: Vector, otherwise: Vector): Vector {
  const length = lengthOf(a);
  return length > 1e-9 ? times(1 / length, a) : otherwise;
}

/** What of `a` stands square to the unit vector `b`. */
export const across = (a: Vector, b: Vector): Vector => minus(a, times(dot(a, b), b));

export const vectorAt = (column: Float64Array, node: number): Vector => [
  column[3 * node]!,
  column[3 * node + 1]!,
  column[3 * node + 2]!,
];
