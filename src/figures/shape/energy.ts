/**
 * The energy of a shape and the force on every node: springs, contact between layers, and stuffing
 * that presses outwards. Energy in stiffness times mm squared, force in stiffness times mm.
 */
import { sqrt } from '../../units/index.ts';
import type { Bends } from './bends.ts';
import type { Springs } from './springs.ts';

export interface Load {
  readonly springs: Springs;
  readonly bends: Bends | null;
  /** Pairs that may come no closer than the fabric's thickness. */
  readonly contacts: Contacts | null;
  /** Closed surface and the pressure inside it. */
  readonly stuffing: Stuffing | null;
}

export interface Contacts {
  n: number;
  readonly a: Int32Array;
  readonly b: Int32Array;
  readonly thicknessMm: number;
  readonly stiffness: number;
}

export interface Stuffing {
  /** Three node numbers a triangle, all turned the same way. */
  readonly triangles: Int32Array;
  /** Stiffness per mm: pressure times area is a force. Positive presses out of the given turn. */
  readonly pressure: number;
}

/** Writes the gradient (the force, turned round) and returns the energy. */
export function energyOf(at: Float64Array, load: Load, gradient: Float64Array): number {
  gradient.fill(0);
  let energy = springEnergy(at, load.springs, gradient);
  if (load.bends) energy += bendEnergy(at, load.bends, gradient);
  if (load.contacts) energy += contactEnergy(at, load.contacts, gradient);
  if (load.stuffing) energy += stuffingEnergy(at, load.stuffing, gradient);
  return energy;
}

function springEnergy(at: Float64Array, springs: Springs, gradient: Float64Array): number {
  const { a, b, restMm, stiffness, pushes, n } = springs;
  let energy = 0;
  for (let i = 0; i < n; i++) {
    const p = 3 * a[i]!;
    const q = 3 * b[i]!;
    const x = at[q]! - at[p]!;
    const y = at[q + 1]! - at[p + 1]!;
    const z = at[q + 2]! - at[p + 2]!;
    const length = sqrt(x * x + y * y + z * z);
    if (length < 1e-9) continue;
    const out = length - restMm[i]!;
    const force = (out < 0 ? pushes[i]! * stiffness[i]! : stiffness[i]!) * out;
    energy += 0.5 * force * out;
    const per = force / length;
    gradient[p]! -= per * x;
    gradient[p + 1]! -= per * y;
    gradient[p + 2]! -= per * z;
    gradient[q]! += per * x;
    gradient[q + 1]! += per * y;
    gradient[q + 2]! += per * z;
  }
  return energy;
}

function bendEnergy(at: Float64Array, bends: Bends, gradient: Float64Array): number {
  const { nodes, rest, stiffness, n } = bends;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const p = 3 * nodes[3 * k]!;
    const q = 3 * nodes[3 * k + 1]!;
    const r = 3 * nodes[3 * k + 2]!;
    for (let c = 0; c < 3; c++) {
      const off = at[p + c]! - 2 * at[q + c]! + at[r + c]! - rest[3 * k + c]!;
      sum += off * off;
      const force = stiffness * off;
      gradient[p + c]! += force;
      gradient[q + c]! -= 2 * force;
      gradient[r + c]! += force;
    }
  }
  return 0.5 * stiffness * sum;
}

function contactEnergy(at: Float64Array, contacts: Contacts, gradient: Float64Array): number {
  const { a, b, thicknessMm, stiffness, n } = contacts;
  let energy = 0;
  for (let i = 0; i < n; i++) {
    const p = 3 * a[i]!;
    const q = 3 * b[i]!;
    const x = at[q]! - at[p]!;
    const y = at[q + 1]! - at[p + 1]!;
    const z = at[q + 2]! - at[p + 2]!;
    const square = x * x + y * y + z * z;
    if (square >= thicknessMm * thicknessMm || square < 1e-12) continue;
    const length = sqrt(square);
    const out = length - thicknessMm;
    energy += 0.5 * stiffness * out * out;
    const per = (stiffness * out) / length;
    gradient[p]! -= per * x;
    gradient[p + 1]! -= per * y;
    gradient[p + 2]! -= per * z;
    gradient[q]! += per * x;
    gradient[q + 1]! += per * y;
    gradient[q + 2]! += per * z;
  }
  return energy;
}

/** Minus pressure times volume; the gradient of a triangle's volume is a sixth of a cross product. */
function stuffingEnergy(at: Float64Array, stuffing: Stuffing, gradient: Float64Array): number {
  const { triangles, pressure } = stuffing;
  const by = -pressure / 6;
  let six = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const p = 3 * triangles[i]!;
    const q = 3 * triangles[i + 1]!;
    const r = 3 * triangles[i + 2]!;
    six += addCross(at, gradient, [q, r, p, by]);
    addCross(at, gradient, [r, p, q, by]);
    addCross(at, gradient, [p, q, r, by]);
  }
  return by * six;
}

/** Adds `by` times q x r to the gradient of p; returns p . (q x r). */
function addCross(
  at: Float64Array,
  gradient: Float64Array,
  [q, r, p, by]: readonly [number, number, number, number],
): number {
  const x = at[q + 1]! * at[r + 2]! - at[q + 2]! * at[r + 1]!;
  const y = at[q + 2]! * at[r]! - at[q]! * at[r + 2]!;
  const z = at[q]! * at[r + 1]! - at[q + 1]! * at[r]!;
  gradient[p]! += by * x;
  gradient[p + 1]! += by * y;
  gradient[p + 2]! += by * z;
  return at[p]! * x + at[p + 1]! * y + at[p + 2]! * z;
}
