/** A run of steps while it is being read, and how steps are put on it. */
import { fromOf, type Reader, type RunEnd, toOf } from './reader.ts';
import type { Step, UnreadStep, WorkStep } from './tree.ts';
import { unreadStep } from './unread-words.ts';

export interface Run {
  readonly out: Step[];
  readonly end: RunEnd;
  /** Index in `out` at which this sentence, and the one before it, began. */
  sentence: number;
  previous: number;
  /** A side job is being told ("place eyes …"): numbers that follow in the sentence are its own. */
  aside: boolean;
}

/** Runs that ended: a run lies within another or behind it, so that few are ever made. */
const idle: { -readonly [K in keyof Run]: Run[K] }[] = [];

export function newRun(end: RunEnd): Run {
  const run = idle.pop();
  if (!run) return { out: [], end, sentence: 0, previous: 0, aside: false };
  run.end = end;
  run.sentence = 0;
  run.previous = 0;
  run.aside = false;
  return run;
}

/** The steps of a run that is over, in a list no longer than they are. */
export function endRun(run: Run): Step[] {
  const steps = run.out.slice();
  while (run.out.length > 0) run.out.pop();
  idle.push(run);
  return steps;
}

/** Notes a full stop: what follows is another sentence. */
export function endSentence(run: Run): void {
  run.aside = false;
  if (run.sentence === run.out.length) return;
  run.previous = run.sentence;
  run.sentence = run.out.length;
}

/** Where the sentence began that an order to repeat speaks of. */
export const sentenceOf = (run: Run): number =>
  run.sentence < run.out.length ? run.sentence : run.previous;

/** Puts the words from a token to here down as a remark or as not understood; joins neighbours. */
export function putWords(r: Reader, run: Run, start: number, kind: 'remark' | 'unread'): void {
  const from = fromOf(r, start);
  const to = toOf(r);
  const last = run.out.at(-1);
  if (kind === 'remark' && to - from < LONGEST_BEHIND && saysBehind(r, from, to)) {
    run.out.push({ kind, behind: true, from, to });
    return;
  }
  const joins = last?.kind === kind && run.out.length > run.sentence;
  if (kind === 'unread') {
    const step = unreadStep(r, start, endsOrder(r, run, start));
    if (!joins || last.kind !== 'unread') run.out.push(step);
    else
      run.out[run.out.length - 1] = {
        ...step,
        says: lesser(last.says, step.says),
        from: last.from,
      };
  } else if (joins) run.out[run.out.length - 1] = { kind, from: last.from, to };
  else run.out.push({ kind, from, to });
}

/** Right behind "rep from *", which says no number: words there can only tell how far it goes. */
function endsOrder(r: Reader, { out }: Run, start: number): boolean {
  const last = out.at(-1);
  if (last?.kind !== 'repeat' || last.ending || last.to !== r.to[start - 1]) return false;
  return last.times.kind === 'until' && last.times.from === last.times.to;
}

const lesser = (one: UnreadStep['says'], other: UnreadStep['says']): UnreadStep['says'] =>
  one === 'work' || other === 'nothing' ? one : other;

/** The last step if it is work. */
export function lastWork(run: Run): WorkStep | null {
  const last = run.out.at(-1);
  return last?.kind === 'work' ? last : null;
}

const LONGEST_BEHIND = 70;

/** "working behind petals", "(in back of flower)", "keeping ch behind petal" */
const saysBehind = (r: Reader, from: number, to: number): boolean =>
  BEHIND.test(r.text.slice(r.base + from, r.base + to));

const BEHIND = /\b(?:behind|back of) (?:the )?(?:\w+ ){0,2}(?:petals?|flower|rose|leaves)\b/i;
