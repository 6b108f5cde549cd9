/**
 * Behind a row that was not understood and states no count nobody knows how many places there are. Most rows
 * leave as many as they stand on, so the part is worked once more as if this one did, and that is kept only
 * where rows behind it show it: one states a count, and its words come to that count on just so many places;
 * or its repeat, of several places and several passes, ends just with the last of them. No row is found at fault
 * on such a number: one that does not come out on it is worked on an unknown edge, as it was before.
 */
import type { Step } from '../notation/index.ts';
import { type Hands, numberFor } from './hands.ts';
import { comesOutAsMade } from './resumes.ts';
import type { Before, RowResult } from './row-setting.ts';
import type { Task } from './task.ts';

/** The convention that tells of it. */
export const UNREAD_ROW = 'row not understood';

/** The reading of such a row in which it leaves what it stands on. */
export const AS_BENEATH = 'as many as beneath';

/** The name of the doubt, one for all passes of a row that is repeated. */
export const supposedName = ({ base }: Pick<Task, 'base'>): string => `unread row at ${base}`;

/** What a run of the part found out about rows that were not understood. */
export interface Supposing {
  /** Rows that left the edge open though it is known what they stand on, by name. */
  readonly openings: Set<string>;
  /** Those that rows behind them bear out. */
  readonly borneOut: Set<string>;
  /** Those on which a row behind them does not come out. */
  readonly refuted: Set<string>;
}

export const newSupposing = (): Supposing => ({
  openings: new Set(),
  borneOut: new Set(),
  refuted: new Set(),
});

/** It is known what the row stands on, and not what it leaves; a count of spaces or groups is of those there. */
export function isOpening(hands: Hands, { edge }: RowResult, before: Before, task: Task): boolean {
  if (before.row === null || edge.kind !== 'row' || edge.open || edge.counted === 0) return false;
  const there = [edge.counted, edge.spaces, edge.counted + edge.spaces];
  return task.asks.counts.every(({ n }) => there.includes(numberFor(hands, n) ?? -1));
}

/**
 * What the next row meets if this one leaves what it stands on: as many places, or, where spaces lie between
 * the stitches, the very places of the row beneath, met from the other end.
 */
export function asBeneath(
  after: Before,
  before: Before,
  { edge }: RowResult,
  name: string,
): Before {
  const supposed = { ...after, supposed: name, open: false, guessed: true, statedAt: NOWHERE };
  if (edge.spaces === 0 || before.row === null) return { ...supposed, statedInstead: edge.counted };
  const row = { ...before.row, mirrored: !(before.row.mirrored ?? false) };
  return { ...supposed, row, rest: before.rest, statedInstead: null };
}

/**
 * "Rep rows 2-5", whose row 5 was not understood and stated its count: on as many places as the first time it
 * leaves as many again. `null`: nothing tells so.
 */
export function asBefore(
  { unread, statedStitches }: Hands,
  after: Before,
  { edge }: RowResult,
  { task, left }: { readonly task: Task; readonly left: Map<number, Left> },
): Before | null {
  if (!unread || edge.open || edge.kind !== 'row') return null;
  if (statedStitches > 0) left.set(task.base, { on: edge.counted, leaves: statedStitches });
  const before = left.get(task.base);
  if (!after.open || before?.on !== edge.counted) return null;
  const name = supposedName(task);
  const { leaves } = before;
  return { ...after, supposed: name, open: false, statedInstead: leaves, statedAt: NOWHERE };
}

/** How many places a row that was not understood stood on, and how many it said that it leaves. */
export interface Left {
  readonly on: number;
  readonly leaves: number;
}

/** In no row's text: the number is none that stands there. */
const NOWHERE = -2;

/** Whether a row that came out on such a number shows by its count, or by how its repeat ends, that it is right. */
export function bearsOut(hands: Hands, result: RowResult, steps: readonly Step[]): boolean {
  if (result.verdict === 'proven') return result.used > 0 && !leavesSome(result);
  return comesOutAsMade(hands, result, steps);
}

/** "Sc in next 12 sts (12)" comes to its count on any number of places. */
const leavesSome = ({ used, available }: RowResult): boolean => used < available;
