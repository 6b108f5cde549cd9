/**
 * A row is worked as the part reads it; only where it does not come out are other readings tried,
 * one doubt at a time, and the first that comes out is kept for this row.
 */
import { type Fact, MISFITS } from './facts.ts';
import type { Hands } from './hands.ts';
import { type Mark, mark, restore } from './mark.ts';
import type { Asked, Choices } from './readings.ts';
import { comesOutAsMade } from './resumes.ts';
import { workRow } from './row.ts';
import type { Before, RowResult, RowSetting } from './row-setting.ts';
import type { Task } from './task.ts';

/** A doubt read otherwise in one row than in the rest of the part. */
export interface Exception {
  readonly asked: Asked;
  readonly reading: string;
}

export interface Attempted {
  readonly result: RowResult;
  readonly asked: readonly Asked[];
  readonly exceptions: readonly Exception[];
  /**
   * The row comes out on both counts of the row beneath, the one made and the one stated: the name of
   * this doubt, which only later rows can settle; else `null`.
   */
  readonly carries: string | null;
  /** It did not come out on what a row that was not understood is taken to leave: see `supposed`. */
  readonly refutes?: true;
}

/** At most so many readings are tried on one row. */
const MOST_READINGS = 8;

const NONE: Choices = new Map();

interface Trial {
  readonly hands: Hands;
  readonly task: Task;
  readonly before: Before;
  readonly setting: Omit<RowSetting, 'beneath' | 'choices'> & { readonly part: Choices };
  readonly start: Mark;
}

/** Works the row in the reading that fits best. */
export function attemptRow(
  hands: Hands,
  task: Task,
  before: Before,
  setting: Trial['setting'],
): Attempted {
  const trial: Trial = { hands, task, before, setting, start: mark(hands) };
  const resumed = before.open && before.unreadOnKnown ? onWhatWasMade(trial) : null;
  if (resumed) return resumed;
  if (before.supposed !== null) return onSupposed(trial);
  if (before.statedInstead === null) return { ...tryReadings(trial, 'made'), carries: null };
  // Both counts, the one made and the one stated, go on for one row: the one that it fits is kept.
  const fitsStated = !tryReadings(trial, 'stated').result.misfit;
  restore(hands, trial.start);
  const made = tryReadings(trial, 'made').result;
  // The count of a range, "Rnds 7-13 (37)", says no more in its second row than in its first.
  const isSame = statedAt(task) === before.statedAt && !before.openCount;
  const fitsMade = !made.misfit || (isSame && !made.facts.some(isOtherMisfit));
  if (isSame && fitsMade) {
    restore(hands, trial.start);
    return { ...tryReadings(trial, 'made'), carries: null };
  }
  restore(hands, trial.start);
  const carries = nameOf(before.statedAt);
  const isMade = setting.part.get(carries) === MADE;
  if (fitsStated && fitsMade) {
    return { ...tryReadings(trial, isMade ? 'made' : 'stated'), carries };
  }
  if (fitsStated) return { ...tryReadings(trial, 'stated'), carries: null };
  if (fitsMade) return { ...tryReadings(trial, 'made'), carries: null };
  const worked = tryReadings(trial, 'stated');
  return { ...worked, result: withoutWalk(worked.result), carries: null };
}

/** On an edge that is not known: the row worked on what was made there, if that is no accident; or `null`. */
function onWhatWasMade(trial: Trial): Attempted | null {
  const { hands, task, before } = trial;
  const closed = { ...trial, before: { ...before, open: false, guessed: false } };
  const tried = tryReadings(closed, 'made');
  const isSure = tried.exceptions.length === 0;
  if (isSure && comesOutAsMade(hands, tried.result, task.instruction.steps))
    return { ...tried, carries: null };
  restore(hands, trial.start);
  return null;
}

/** On a number that is only supposed: the row as it is custom to read, or on an edge that is not known. */
function onSupposed(trial: Trial): Attempted {
  const { hands, before } = trial;
  const first = once(trial, 'stated', NONE);
  // A row that was not understood tells nothing of the one beneath.
  if (!first.result.misfit || first.result.verdict === 'unread') return { ...first, carries: null };
  restore(hands, trial.start);
  const open = { ...before, supposed: null, statedInstead: null, open: true };
  return { ...tryReadings({ ...trial, before: open }, 'made'), carries: null, refutes: true };
}

const isOtherMisfit = ({ kind }: Fact): boolean => kind !== 'count' && MISFITS.has(kind);

/** The reading of a carried count in which what was made goes on, and not what is stated. */
export const MADE = 'made';

const nameOf = (at: number): string => `count at ${at}`;

/** The name of the doubt whether a row's stated count goes on, or what it made. */
export const carriedName = (task: Task): string => nameOf(statedAt(task));

/** Where the first stated count of a row stands in the text; -1 for none. */
export const statedAt = ({ asks, asksBase }: Task): number =>
  asks.counts[0] ? asksBase + asks.counts[0].from : -1;

const WALK: ReadonlySet<string> = new Set([
  'overrun',
  'left',
  'spaces-left',
  'remainder',
  'no-place',
]);

/**
 * Where the row beneath has one stitch too many or too few is not known, only that it has; that this
 * row's walk does not end on it follows from that, and is not this row's fault.
 */
function withoutWalk(result: RowResult): RowResult {
  const facts = result.facts.filter((what) => !WALK.has(what.kind));
  const misfit = facts.some((what) => MISFITS.has(what.kind));
  const verdict = result.verdict === 'mismatch' && !misfit ? 'unchecked' : result.verdict;
  return { ...result, facts, misfit, verdict };
}

type Tried = Omit<Attempted, 'carries'>;

function once(trial: Trial, beneath: 'made' | 'stated', row: Choices): Tried {
  const { hands, task, before, setting } = trial;
  const { part, ...given } = setting;
  const result = workRow(hands, task, before, { ...given, beneath, choices: { part, row } });
  return { result, asked: [...hands.readings.asked.values()], exceptions: [] };
}

/** Worse rows first lose to better ones by how much does not come out. */
const weight = (result: RowResult): number =>
  (result.misfit ? 1 : 0) + (result.verdict === 'unread' ? 1 : 0);

function tryReadings(trial: Trial, beneath: 'made' | 'stated'): Tried {
  const first = once(trial, beneath, NONE);
  if (!first.result.misfit) return fitsBetter(trial, beneath, first);
  if (first.asked.length === 0) return first;
  let tries = 1;
  let near: Exception[] | null = null;
  const queue = flips(first.asked, []);
  for (let i = 0; i < queue.length && tries < MOST_READINGS * 2; i++) {
    const chosen = queue[i];
    if (!chosen) break;
    tries++;
    restore(trial.hands, trial.start);
    const attempt = once(trial, beneath, new Map(chosen.map((e) => [e.asked.doubt, e.reading])));
    // No reading is better for leaving a count aside.
    const isHeld = attempt.result.uncompared.length <= first.result.uncompared.length;
    if (weight(attempt.result) === 0 && isHeld) return { ...attempt, exceptions: chosen };
    if (near === null && isHeld && isNearer(attempt.result, first.result)) near = chosen;
    // A reading may bring up a new doubt, or need company: pairs are tried after all single ones.
    if (chosen.length === 1) queue.push(...flips(attempt.asked, chosen));
  }
  restore(trial.hands, trial.start);
  if (near === null) return once(trial, beneath, NONE);
  const readings = new Map(near.map((e) => [e.asked.doubt, e.reading]));
  return { ...once(trial, beneath, readings), exceptions: near };
}

/**
 * The row's walk ends where it should, and of its several counts all but one are met, where by custom it
 * does not even end there: the words are meant so, and that one count is wrong.
 */
function isNearer(other: RowResult, first: RowResult): boolean {
  const misfits = other.facts.filter(({ kind }) => MISFITS.has(kind));
  return (
    misfits.length === 1 &&
    misfits[0]?.kind === 'count' &&
    other.compared > 1 &&
    first.facts.some(isOtherMisfit) &&
    !first.facts.some(({ kind }) => kind === 'remainder')
  );
}

/**
 * A row that comes out, by no count of its own, and yet names stitches that are not where it names them, or
 * passes places without a word: if another reading of just that comes out with nothing amiss, it is meant.
 */
function fitsBetter(trial: Trial, beneath: 'made' | 'stated', first: Tried): Tried {
  const { result, asked } = first;
  if (result.verdict !== 'unstated' || amissIn(result) === 0) return first;
  for (const doubt of asked) {
    const [reading] = TELLING.has(doubt.doubt) ? doubt.alternatives : [];
    if (reading === undefined) continue;
    restore(trial.hands, trial.start);
    const other = once(trial, beneath, new Map([[doubt.doubt, reading]]));
    const { misfit, verdict } = other.result;
    if (!misfit && verdict === 'unstated' && amissIn(other.result) === 0)
      return { ...other, exceptions: [{ asked: doubt, reading }] };
  }
  restore(trial.hands, trial.start);
  return once(trial, beneath, NONE);
}

/** Readings that send the walk to other places of the same row. */
const TELLING: ReadonlySet<string> = new Set(['noun', 'same space']);

/** Stitches that are not what they are called; where all are, places that are passed in a round. */
const amissIn = ({ facts, used, available, edge }: RowResult): number => {
  const misnamed = facts.filter(({ kind }) => kind === 'noun').length;
  return misnamed > 0 || !edge.ring ? misnamed : Math.max(0, available - used);
};

/** Each open doubt read otherwise, on top of what is chosen already. Local wording first. */
function flips(asked: readonly Asked[], chosen: readonly Exception[]): Exception[][] {
  const open = asked.filter((a) => !a.whole && !chosen.some((c) => c.asked.doubt === a.doubt));
  const ordered = [...open].sort((a, b) => Number(a.local) - Number(b.local));
  return ordered.flatMap((a) =>
    a.alternatives
      .concat(a.custom)
      .filter((reading) => reading !== a.reading)
      .map((reading) => [...chosen, { asked: a, reading }]),
  );
}
