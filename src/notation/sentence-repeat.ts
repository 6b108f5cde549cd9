/** A sentence that repeats as a whole: "Sc in next 8, 2 sc in next. Rep around", "sc, inc, 9 times". */

import { readEnding } from './ending.ts';
import { kindAt, type Reader, toOf } from './reader.ts';
import type { RepeatOrder } from './repeat-step.ts';
import { type Run, sentenceOf } from './run.ts';
import { W } from './senses.ts';
import { readTimes } from './times.ts';
import { T } from './tokens.ts';
import type { Step, WorkStep } from './tree.ts';

/** Steps that open a row and are not repeated with its sentence. */
const opensRow = (step: Step | undefined): boolean =>
  step !== undefined &&
  (step.kind === 'chain' ||
    step.kind === 'turn' ||
    step.kind === 'join' ||
    step.kind === 'ring' ||
    step.kind === 'yarn' ||
    step.kind === 'remark' ||
    step.kind === 'loop');

/** "Sl st to centre of ch, ch 5, sc in next lp, …, repeat around": the way to the start is gone once. */
const isMove = (steps: readonly Step[], at: number): boolean => {
  const [step, next] = [steps[at], steps[at + 1]];
  return step?.kind === 'work' && step.stitch.stem === 'ss' && next?.kind === 'chain';
};

/**
 * "Ch 8, sc in ring, repeat 4 more times", "ch 5, sc in lp, ch 5, sc between 2 dc, repeat around": a chain
 * too long for the turning chain of what it leads to is the first loop.
 */
function isLoop(steps: readonly Step[], at: number): boolean {
  const chain = steps[at];
  const n = chain?.kind === 'chain' ? (chain.n?.values[0] ?? 1) : 0;
  const works = steps.slice(at + 1).filter((step) => step.kind === 'work');
  const short = works.filter(({ stitch }) => stitch.stem === 'sc');
  if (short.length === 0 || short[0] !== works[0]) return false;
  return n >= (short.length === works.length ? SHORTEST_LOOP : SHORTEST_BESIDE_TALL);
}

/**
 * Chains of a loop before a sc; where taller stitches follow, fewer may be the first of those
 * (common practice).
 */
const SHORTEST_LOOP = 3;

const SHORTEST_BESIDE_TALL = 5;

/** "Ch 3, skip 2 sts, dc in next st, repeat to end": nothing but this chain can lead over what is skipped. */
const isBridge = (steps: readonly Step[], at: number): boolean =>
  steps[at + 1]?.kind === 'skip' &&
  steps.slice(at + 1).every((step) => !isChain(step) && !(step.kind === 'work' && isSlip(step)));

const isSlip = ({ stitch }: WorkStep): boolean => stitch.stem === 'ss';

/** "Ch 6, sc in next lp, ch 6, sc in next lp, repeat around": of steps said twice only the last are repeated. */
function lastOfAlike(r: Reader, steps: readonly Step[], first: number): number {
  const words = steps.slice(first).map((step) => wordsOfStep(r, step));
  const n = words.length;
  for (let half = 2; half <= n / 2; half++) {
    if (n % half === 0 && words.every((word, i) => word === words[i % half]))
      return first + n - half;
  }
  return first;
}

/**
 * "Sk 3, 5 dc in next, sk 3, sc in next, sk 3, 5 dc in next … continue this pattern": where the steps begin
 * that are told again, and how many there are before they are; at least two are told twice.
 */
function toldAgainIn(
  r: Reader,
  steps: readonly Step[],
  first: number,
): { readonly at: number; readonly n: number } | null {
  if (steps.length - first < 4) return null;
  // "Skip 3 chs" and then "skip 3" are the same.
  const words = steps.map((step) =>
    step.kind === 'skip' ? `skip ${step.place.n?.values[0] ?? 1}` : wordsOfStep(r, step),
  );
  for (let at = first; at <= steps.length - 4; at++) {
    for (let n = 2; at + n + 2 <= steps.length; n++) {
      let i = at + n;
      while (i < words.length && words[i] === words[i - n]) i++;
      if (i === words.length) return { at, n };
    }
  }
  return null;
}

/** "Sc in 2nd ch from hook", "ch 1, sc in first st, ch 3, sk 1, sc in next": it begins a row once. */
function isOnce(steps: readonly Step[], at: number): boolean {
  const step = steps[at];
  if (step?.kind !== 'work' || !step.place) return false;
  if (step.place.fromHook) return true;
  const isLead = step.place.pick === 'first' && !step.place.of;
  const next = steps.slice(at + 1).find(({ kind }) => kind !== 'remark');
  if (!isLead || !isChain(steps[at - 1]) || !isChain(next)) return false;
  return steps
    .slice(at + 1)
    .some(
      (other) =>
        other.kind === 'work' &&
        other.place?.pick === 'next' &&
        other.stitch.stem === step.stitch.stem,
    );
}

/**
 * "Sc in same sc as join, 9 dc in next lp, skip next sc, sc in next sc, repeat to end": the place of the join is
 * there once, and each pass ends with the stitch that the next one starts from.
 */
function isAnchor(steps: readonly Step[], at: number): boolean {
  const [step, last] = [steps[at], steps.at(-1)];
  if (step?.kind !== 'work' || last?.kind !== 'work' || steps.length - at < 4) return false;
  const { place } = step;
  if (place?.pick !== 'same' || place.of?.nouns[0]?.kind !== 'join') return false;
  const isAlike = last.stitch.stem === step.stitch.stem && last.stitch.shape === step.stitch.shape;
  return isAlike && last.n === null && step.n === null && last.place?.pick === 'next';
}

const wordsOfStep = (r: Reader, { from, to }: Step): string =>
  r.text
    .slice(r.base + from, r.base + to)
    .toLowerCase()
    .replace(/\s+/g, ' ');

const isChain = (step: Step | undefined): boolean => step?.kind === 'chain';

/** Makes the sentence before the order into a repeat: "Sc in next 8, 2 sc in next. Rep around". */
export function wrapSentence(r: Reader, run: Run, order: RepeatOrder, mark: string): void {
  let first = sentenceOf(run);
  const last = run.out.length;
  // A chain in the midst of a row is one of the steps: "… in next sp. Ch 1, sk 3 dc, … Repeat twice".
  const within = run.out.slice(0, first).some((step) => !opensRow(step));
  while (
    first < last - 1 &&
    (opensRow(run.out[first]) ||
      isMove(run.out, first) ||
      isOnce(run.out, first) ||
      isAnchor(run.out, first)) &&
    !(isChain(run.out[first]) && (within || isLoop(run.out, first) || isBridge(run.out, first)))
  )
    first++;
  const whole = lastOfAlike(r, run.out, first);
  const told = whole === first ? toldAgainIn(r, run.out, first) : null;
  first = told?.at ?? whole;
  const steps = run.out.slice(first, told ? first + told.n : undefined);
  firstOfEach(steps, run.out[first - 1]);
  const [head] = steps;
  if (!head) return;
  // "The pattern is a multiple of 4, and 2 more for the turning chain.": nothing that could be repeated.
  if (steps.every(({ kind }) => kind === 'remark')) {
    run.out.push({ kind: 'remark', from: order.order.from, to: toOf(r) });
    return;
  }
  // "In next st work (dc, ch 1, dc). Skip 2 sts. Repeat across.": from where on is not told.
  if (mark === '' && steps.every(({ kind }) => kind === 'skip' || kind === 'remark')) {
    run.out.push({ kind: 'unread', says: 'work', from: order.order.from, to: toOf(r) });
    return;
  }
  run.out.length = first;
  run.out.push({
    kind: 'repeat',
    mark,
    steps,
    ...order,
    again: false,
    from: head.from,
    to: toOf(r),
  });
  run.sentence = Math.min(run.sentence, first);
}

/**
 * "Ch 1, 2 sc in same st, 2 sc in next st, repeat to end": behind a chain that is none of the stitches
 * the first place is the same as the next, and in each later pass it can only be that.
 */
function firstOfEach(steps: Step[], before: Step | undefined): void {
  const [head] = steps;
  if (before?.kind !== 'chain' || before.n?.values[0] !== 1 || steps.length < 2) return;
  if (head?.kind !== 'work' || head.place?.pick !== 'same' || head.place.of) return;
  const [noun] = head.place.nouns;
  if (noun?.kind !== 'stitch' && !(noun?.kind === 'space' && noun.chains === null)) return;
  const nouns = [{ ...noun, kind: 'stitch' as const }];
  steps[0] = { ...head, place: { ...head.place, pick: 'next', nouns } };
}

/** "Ch 4, dc, ch 1 11 times": a stitch and its chain, and nothing else behind the chain of the start. */
function isPair({ out, sentence }: Run): boolean {
  const steps = out.slice(sentence);
  while (steps.length > 2 && opensRow(steps[0])) steps.shift();
  const [stitch] = steps;
  return steps.length === 2 && stitch?.kind === 'work' && !stitch.place && !stitch.until;
}

/** "2 sc, 1 inc x 7", "dc, ch 1 x 6": nobody writes "1 inc" seven times, so the list is meant. */
function lastIsOne(run: Run): boolean {
  const last = run.out.at(-1);
  // "In next sp work dc, ch 1 six times": six chains would be a ch 6.
  if (last?.kind === 'chain') return (run.end === 'list' && run.out.length > 1) || isPair(run);
  const shaped = last?.kind === 'work' && !last.place && last.stitch.shape !== 'one';
  return shaped && !last.numberAfter && last.n?.values[0] === 1;
}

/** "Sc in first 2 sts, 2 sc in third st x 7": the third of those told before it, which each pass has. */
function countsPlaces({ out, sentence }: Run): boolean {
  const last = out.at(-1);
  if (last?.kind !== 'work' || last.place?.pick !== 'nth' || (last.place.nth ?? 0) < 2)
    return false;
  const { fromHook, of, row, rowsBelow, nouns } = last.place;
  const plain = !fromHook && !of && row === null && rowsBelow === 0 && nouns[0]?.kind === 'stitch';
  return plain && out.slice(sentence, -1).some(({ kind }) => kind === 'work');
}

/** ", 9 times" and "sc, inc * 6": the whole sentence; "… in next st twice": only its last step. */
export function sentenceTimes(r: Reader, run: Run, start: number): boolean {
  r.at = start;
  const times = readTimes(r, false);
  if (times?.kind !== 'times') {
    r.at = start;
    return false;
  }
  const order: RepeatOrder = {
    times,
    ending: readEnding(r),
    order: { from: times.from, to: times.to },
  };
  const before = r.kind[start - 1];
  const whole =
    before === T.comma ||
    before === T.semicolon ||
    (r.kind[start] === T.star && kindAt(r) !== T.comma) ||
    before === T.star ||
    r.word[start] === W.for ||
    lastIsOne(run) ||
    countsPlaces(run);
  const saved = run.sentence;
  if (!whole && run.out.length > 0) run.sentence = run.out.length - 1;
  wrapSentence(r, run, order, '');
  run.sentence = Math.min(saved, run.out.length);
  return true;
}
