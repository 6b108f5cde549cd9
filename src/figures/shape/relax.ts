/**
 * Brings springs to rest from a layout. A generator: it yields how far it has come, so that a host may
 * show that, give other work a turn, or stop; the engine itself has no clock. Limits count steps,
 * never time, so that an unstopped run gives the same bytes on every machine.
 */

import { sqrt } from '../../units/index.ts';
import { type Bends, takeSet } from './bends.ts';
import { findContacts, isStale, neighboursOf, noContacts } from './contact.ts';
import type { Contacts, Load, Stuffing } from './energy.ts';
import { restart, settle, startSettling, unsettledMm } from './settle.ts';
import { isStitchLong, type Springs } from './springs.ts';

export interface Relaxing {
  readonly springs: Springs;
  readonly bends?: Bends;
  /** x, y, z of every node in mm; not changed. */
  readonly at: Float64Array;
  /** Layers come no closer than this; 0 where they may. */
  readonly thicknessMm?: number;
  readonly stuffing?: Stuffing | null;
  readonly limits?: RelaxLimits;
}

export interface RelaxLimits {
  readonly steps: number;
  /** At rest when no node is pulled by more than this many mm of a stretched stitch. */
  readonly restMm: number;
}

/**
 * The layout is the coarse start: from it bags of 2,880, 10,320 and 25,440 stitches rest after 680, 1,000 and
 * 1,260 steps (bench/shape.ts). Sweeps of the constraint loop before that won nothing: they settle one side
 * before the other, which turned straight pieces and left large bags to buckle, for twice the steps.
 */
export const LIMITS: RelaxLimits = { steps: 3000, restMm: 0.002 };

export interface RelaxProgress {
  /** Share of the limit that is used up, 0 to 1: it may end sooner. */
  readonly done: number;
  /** Largest pull on a node, in mm of a stretched stitch. */
  readonly unsettledMm: number;
}

export interface Relaxed {
  readonly at: Float64Array;
  readonly settled: boolean;
  /** Largest pull that is left on a node, in mm of a stretched stitch. */
  readonly unsettledMm: number;
  /** How far springs along and between rows are from their length, in the mean. */
  readonly edgeErrorMm: number;
  readonly energy: number;
  readonly steps: number;
}

/** Steps between two reports. */
const REPORT = 20;
/**
 * After so many steps the fabric takes the set that it has: bends are there to keep it from crumpling, and
 * hold no strain of their own. Else a layout's curve goes on pulling, and a bag that has no shape of its
 * own opens for thousands of steps.
 */
const SET = 100;
export function* relax(asked: Relaxing): Generator<RelaxProgress, Relaxed, undefined> {
  const { steps, restMm } = asked.limits ?? LIMITS;
  const { springs } = asked;
  const at = asked.at.slice();
  const layers = asked.thicknessMm ? layersOf(at, springs, asked.thicknessMm) : null;
  const load: Load = {
    springs,
    bends: asked.bends ? { ...asked.bends, rest: asked.bends.rest.slice() } : null,
    contacts: layers?.contacts ?? null,
    stuffing: asked.stuffing ?? null,
  };
  const settling = startSettling(at, load);
  let step = 0;
  let hasSet = load.bends === null;
  for (; step < steps && !settling.stuck; step++) {
    if (step % REPORT === 0) {
      const left = unsettledMm(settling.gradient);
      yield { done: step / steps, unsettledMm: left };
      if (left < restMm && hasSet) break;
      if (!hasSet && (left < restMm || step >= SET)) {
        takeSet(settling.at, load.bends);
        restart(settling);
        hasSet = true;
      }
      if (layers && isStale(settling.at, layers.foundAt, layers.contacts)) {
        lookAgain(settling.at, layers);
        restart(settling);
      }
    }
    settle(settling);
  }
  const left = unsettledMm(settling.gradient);
  return {
    at: settling.at,
    settled: left < restMm,
    unsettledMm: left,
    edgeErrorMm: edgeErrorMm(settling.at, springs),
    energy: settling.energy,
    steps: step,
  };
}

/** Who may touch, and where the nodes were when that was found. */
interface Layers {
  readonly contacts: Contacts;
  readonly tied: ReturnType<typeof neighboursOf>;
  readonly foundAt: Float64Array;
}

function layersOf(at: Float64Array, springs: Springs, thicknessMm: number): Layers {
  const nodes = at.length / 3;
  const tied = neighboursOf(springs, nodes);
  const layers = { contacts: noContacts(nodes, thicknessMm, 1), tied, foundAt: at.slice() };
  findContacts(at, tied, layers.contacts);
  return layers;
}

function lookAgain(at: Float64Array, { contacts, tied, foundAt }: Layers): void {
  findContacts(at, tied, contacts);
  foundAt.set(at);
}

/** Mean error of the stiff springs: those that carry a stitch's own width and height. */
export function edgeErrorMm(at: Float64Array, springs: Springs): number {
  let sum = 0;
  let n = 0;
  for (let i = 0; i < springs.n; i++) {
    if (!isStitchLong(springs, i)) continue;
    const p = 3 * springs.a[i]!;
    const q = 3 * springs.b[i]!;
    const square =
      (at[q]! - at[p]!) ** 2 + (at[q + 1]! - at[p + 1]!) ** 2 + (at[q + 2]! - at[p + 2]!) ** 2;
    sum += Math.abs(sqrt(square) - springs.restMm[i]!);
    n++;
  }
  return n === 0 ? 0 : sum / n;
}

/** Runs to the end without a look in between. */
export function relaxWhole(asked: Relaxing): Relaxed {
  const run = relax(asked);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value;
  }
}
