/**
 * "Sc in first st, 2 sc in next st, around", "…, and continue this way to end": the sentence before
 * is worked over and over, though no word says "repeat".
 */
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
} from './reader.ts';
import { type Run, sentenceOf } from './run.ts';
import { W } from './senses.ts';
import { wrapSentence } from './sentence-repeat.ts';
import { T } from './tokens.ts';
import type { Place, Step } from './tree.ts';

/** Whether such words stand here; the sentence is made into a repeat then. */
export function readGoOn(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  if (sense !== W.continue && sense !== W.around && sense !== W.across && sense !== W.to)
    return false;
  if (run.end !== 'text' || !standsOff(r)) return false;
  const start = r.at;
  const length = phrase(r);
  const first = sentenceOf(run);
  if (length === 0 || !isList(run.out.slice(first))) return false;
  r.at += length;
  const span = { from: fromOf(r, start), to: toOf(r) };
  for (let i = first; i < run.out.length; i++) run.out[i] = taken(run.out[i]!);
  const until = {
    kind: 'end',
    word: r.text.slice(r.base + span.from, r.base + span.to),
    ...span,
  } as const;
  const order = { times: { kind: 'until', until, ...span } as const, ending: null, order: span };
  wrapSentence(r, run, order, '');
  return true;
}

const standsOff = (r: Reader): boolean =>
  kindAt(r, -1) === T.comma || kindAt(r, -1) === T.stop || isWord(r, W.and, -1);

/** Tokens of "continue this way to the end", "around"; 0: something else stands here. */
function phrase(r: Reader): number {
  let k = 0;
  if (isWord(r, W.continue)) k++;
  while (k > 0 && k < 6 && kindAt(r, k) === T.word && MANNER.test(spelled(r, r.at + k))) k++;
  if (isWord(r, W.to, k)) {
    k++;
    while (isWord(r, W.the, k)) k++;
    if (!isWord(r, W.end, k)) return 0;
    if (isWord(r, W.of, k + 1) && (isWord(r, W.row, k + 2) || isWord(r, W.round, k + 2))) k += 2;
  } else if (!isWord(r, W.around, k) && !isWord(r, W.across, k)) return 0;
  k++;
  return clauseEnds(r, k) || kindAt(r, k) === T.open || kindAt(r, k) === T.dash ? k : 0;
}

const MANNER = /^(in|this|that|the|same|way|manner|like|so|on|as|established)$/;

/** Stitches each in its own place, more than one: what goes on by itself is no list. */
function isList(steps: readonly Step[]): boolean {
  let works = 0;
  for (const step of steps) {
    if (step.kind === 'work') {
      if (step.until || step.evenly || step.stitch.stem === 'ss' || goesFar(step.place))
        return false;
      works += step.stitch.shape === 'one' ? 1 : 2;
    } else if (step.kind === 'skip') works++;
    else if (step.kind !== 'chain' && step.kind !== 'remark' && step.kind !== 'yarn') return false;
  }
  return works > 1;
}

const goesFar = (place: Place | null): boolean =>
  place !== null &&
  (place.fromHook ||
    place.pick === 'last' ||
    place.pick === 'every-other' ||
    (place.pick === 'each' && !place.n));

/** "First st, second st" of the first pass are the next ones of every pass. */
function taken(step: Step): Step {
  if (step.kind !== 'work' || !step.place) return step;
  const { pick } = step.place;
  if (pick !== 'first' && pick !== 'nth') return step;
  return { ...step, place: { ...step.place, pick: 'next', nth: null } };
}
