/**
 * A row is worked as the part reads it; only where it does not come out are other readings tried,
 * one doubt at a time, and the first that comes out is kept for this row.
 */
import { MISFITS } from './facts.ts';
import type { Hands } from './hands.ts';
import { type Mark, mark, restore } from './mark.ts';
import type { Asked, Choices } from './readings.ts';
import { type Before, type RowResult, type RowSetting, workRow } from './row.ts';
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
  /** Which count of the row beneath this row fits; null where that row states what it makes. */
  readonly beneath: 'made' | 'stated' | null;
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
  if (before.statedInstead === null) {
    const { attempted } = tryReadings(trial, 'made');
    return { ...attempted, beneath: null };
  }
  // Both counts, the one made and the one stated, go on for one row: the one that it fits is kept.
  const stated = tryReadings(trial, 'stated');
  if (!stated.attempted.result.misfit) {
    restore(hands, trial.start);
    const made = tryReadings(trial, 'made');
    if (!made.attempted.result.misfit) {
      restore(hands, trial.start);
      return { ...tryReadings(trial, 'stated').attempted, beneath: null };
    }
    restore(hands, trial.start);
    return { ...tryReadings(trial, 'stated').attempted, beneath: 'stated' };
  }
  restore(hands, trial.start);
  const made = tryReadings(trial, 'made');
  if (!made.attempted.result.misfit) return { ...made.attempted, beneath: 'made' };
  restore(hands, trial.start);
  const { attempted } = tryReadings(trial, 'stated');
  return { ...attempted, result: withoutWalk(attempted.result), beneath: null };
}

const WALK: ReadonlySet<string> = new Set(['overrun', 'left', 'remainder', 'no-place']);

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

type Tried = { readonly attempted: Omit<Attempted, 'beneath'> };

function once(trial: Trial, beneath: 'made' | 'stated', row: Choices): Omit<Attempted, 'beneath'> {
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
  if (!first.result.misfit || first.asked.length === 0) return { attempted: first };
  let tries = 1;
  const queue = flips(first.asked, []);
  for (let i = 0; i < queue.length && tries < MOST_READINGS * 2; i++) {
    const chosen = queue[i];
    if (!chosen) break;
    tries++;
    restore(trial.hands, trial.start);
    const attempt = once(trial, beneath, new Map(chosen.map((e) => [e.asked.doubt, e.reading])));
    if (weight(attempt.result) === 0) return { attempted: { ...attempt, exceptions: chosen } };
    // A reading may bring up a new doubt, or need company: pairs are tried after all single ones.
    if (chosen.length === 1) queue.push(...flips(attempt.asked, chosen));
  }
  restore(trial.hands, trial.start);
  return { attempted: once(trial, beneath, NONE) };
}

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
