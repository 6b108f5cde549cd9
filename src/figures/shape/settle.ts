/**
 * From near to at rest: the energy is brought to its minimum by the limited-memory method of Nocedal
 * (Mathematics of Computation 35, 1980), with seven steps remembered and a backtracking line search. What
 * `sweep` leaves in the order of its springs and in large bends goes away here. Deterministic: sums run
 * in node order.
 */

import { sqrt } from '../../units/index.ts';
import { energyOf, type Load } from './energy.ts';

const MEMORY = 7;
/** A step has to win this share of what its slope promises (Armijo's rule; the usual 1e-4). */
const WORTH = 1e-4;
const MOST_HALVINGS = 20;

export interface Settling {
  readonly load: Load;
  at: Float64Array;
  gradient: Float64Array;
  energy: number;
  /** No step lowers the energy any more. */
  stuck: boolean;
  readonly memory: Memory;
  readonly next: { at: Float64Array; gradient: Float64Array };
  readonly direction: Float64Array;
}

interface Memory {
  readonly steps: Float64Array[];
  readonly changes: Float64Array[];
  readonly inverse: Float64Array;
  readonly alpha: Float64Array;
  /** Squared length of each change. */
  readonly curve: Float64Array;
  n: number;
  newest: number;
}

const columns = (size: number): Float64Array[] =>
  Array.from({ length: MEMORY }, () => new Float64Array(size));

export function startSettling(at: Float64Array, load: Load): Settling {
  const size = at.length;
  const gradient = new Float64Array(size);
  return {
    load,
    at,
    gradient,
    energy: energyOf(at, load, gradient),
    stuck: false,
    memory: {
      steps: columns(size),
      changes: columns(size),
      inverse: new Float64Array(MEMORY),
      alpha: new Float64Array(MEMORY),
      curve: new Float64Array(MEMORY),
      n: 0,
      newest: -1,
    },
    next: { at: new Float64Array(size), gradient: new Float64Array(size) },
    direction: new Float64Array(size),
  };
}

/** One step downhill. */
export function settle(settling: Settling): void {
  chooseDirection(settling);
  let slope = dot(settling.gradient, settling.direction);
  if (!(slope < 0)) {
    settling.memory.n = 0;
    chooseDirection(settling);
    slope = dot(settling.gradient, settling.direction);
  }
  if (!(slope < 0)) {
    settling.stuck = true;
    return;
  }
  const length = settling.memory.n === 0 ? firstStep(settling.direction) : 1;
  if (!search(settling, slope, length)) {
    settling.stuck = settling.memory.n === 0;
    settling.memory.n = 0;
  }
}

/**
 * The contacts were found anew: energy and forces as they are now. What the last steps showed is kept, for
 * few nodes touch: forgetting it cost a third more steps (measured on a bag of 2,500 stitches).
 */
export function restart(settling: Settling): void {
  settling.energy = energyOf(settling.at, settling.load, settling.gradient);
  settling.stuck = false;
}

/** Without memory the slope has no scale: no node moves more than a quarter of what pulls at it. */
function firstStep(direction: Float64Array): number {
  let most = 0;
  for (let i = 0; i < direction.length; i++) most = Math.max(most, Math.abs(direction[i]!));
  return most > 0 ? Math.min(0.25, 1 / most) : 0;
}

function search(settling: Settling, slope: number, first: number): boolean {
  const { at, direction, next, load } = settling;
  let length = first;
  for (let i = 0; i < MOST_HALVINGS; i++) {
    for (let k = 0; k < at.length; k++) next.at[k] = at[k]! + length * direction[k]!;
    const energy = energyOf(next.at, load, next.gradient);
    if (energy <= settling.energy + WORTH * length * slope) {
      accept(settling, energy);
      return true;
    }
    length *= 0.5;
  }
  return false;
}

function accept(settling: Settling, energy: number): void {
  const { memory, next } = settling;
  const slot = (memory.newest + 1) % MEMORY;
  const step = memory.steps[slot]!;
  const change = memory.changes[slot]!;
  let met = 0;
  let square = 0;
  for (let k = 0; k < step.length; k++) {
    const moved = next.at[k]! - settling.at[k]!;
    const changed = next.gradient[k]! - settling.gradient[k]!;
    step[k] = moved;
    change[k] = changed;
    met += moved * changed;
    square += changed * changed;
  }
  if (met > 1e-14 * square) {
    memory.inverse[slot] = 1 / met;
    memory.curve[slot] = square;
    memory.newest = slot;
    memory.n = Math.min(MEMORY, memory.n + 1);
  }
  const { at, gradient } = settling;
  settling.at = next.at;
  settling.gradient = next.gradient;
  settling.energy = energy;
  next.at = at;
  next.gradient = gradient;
}

/**
 * The two loops of the method: minus the gradient, bent by what the last steps showed. Each pass over the
 * columns changes the direction and meets it with the next column at once: memory is what takes the time.
 */
function chooseDirection({ memory, direction, gradient }: Settling): void {
  const { steps, changes, inverse, alpha, curve, newest } = memory;
  for (let k = 0; k < direction.length; k++) direction[k] = -gradient[k]!;
  if (memory.n === 0) return;
  const slots = Array.from({ length: memory.n }, (_, i) => (newest - i + MEMORY) % MEMORY);
  let met = dot(steps[newest]!, direction);
  slots.forEach((slot, i) => {
    alpha[slot] = inverse[slot]! * met;
    const older = slots[i + 1];
    const by = -alpha[slot]!;
    if (older !== undefined) met = pass(direction, { by, what: changes[slot]! }, steps[older]!);
    else {
      const scale = 1 / (inverse[newest]! * curve[newest]!);
      met = pass(direction, { by, what: changes[slot]!, scale }, changes[slot]!);
    }
  });
  for (let i = slots.length - 1; i >= 0; i--) {
    const slot = slots[i]!;
    const by = alpha[slot]! - inverse[slot]! * met;
    met = pass(direction, { by, what: steps[slot]! }, changes[slots[i - 1] ?? slot]!);
  }
}

interface Change {
  readonly by: number;
  readonly what: Float64Array;
  readonly scale?: number;
}

/** Adds `by` times a column, scales, and returns the product with the next column. */
function pass(to: Float64Array, { by, what, scale = 1 }: Change, next: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < to.length; k++) {
    const v = scale * (to[k]! + by * what[k]!);
    to[k] = v;
    sum += v * next[k]!;
  }
  return sum;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
}

/** Largest force on any node, in mm of a stretched stitch: what is not settled. */
export function unsettledMm(gradient: Float64Array): number {
  let most = 0;
  for (let k = 0; k < gradient.length; k += 3) {
    const square = gradient[k]! ** 2 + gradient[k + 1]! ** 2 + gradient[k + 2]! ** 2;
    if (square > most) most = square;
  }
  return sqrt(most);
}
