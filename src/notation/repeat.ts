/**
 * Repeats: stars, "rep from *", and a sentence that repeats as a whole. Brackets are in
 * `bracket.ts`; rows that repeat are in `rows-again.ts`.
 */

import { readEnding } from './ending.ts';
import { goesOnOrder } from './goes-on.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { isWorked } from './plain-count.ts';
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  MAX_DEPTH,
  type Reader,
  spelled,
  toOf,
  valueAt,
} from './reader.ts';
import {
  eatMarks,
  endMark,
  isAgain,
  isRepeatOrder,
  namesStar,
  onceAgain,
  readOrder,
  readOrderHead,
} from './repeat-order.ts';
import { noOrder, type RepeatOrder, repeatOf } from './repeat-step.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { sentenceTimes, wrapSentence } from './sentence-repeat.ts';
import { AROUND, closeAround, isFirst, isNote, markOf, STAR, starRole } from './star.ts';
import { readTimes } from './times.ts';
import { T } from './tokens.ts';
import type { Place, RepeatStep, Step, Times } from './tree.ts';

/** A star where a step may begin. */
export function readStar(r: Reader, run: Run): void {
  const role = starRole(r, r.at);
  const start = r.at;
  if (role === STAR.open && isStray(r)) {
    r.at++;
    return;
  }
  if (role === STAR.open && run.out.length > 0 && timesInStars(r)) {
    sentenceTimes(r, run, start + 1);
    if (kindAt(r) === T.star) r.at++;
    return;
  }
  if (role === STAR.open && r.depth < MAX_DEPTH) return openStar(r, run);
  r.at++;
  if (role === STAR.whole) return repeatWhole(r, run);
  if (role === STAR.mark) {
    run.out.push({
      kind: 'mark',
      mark: markOf(valueAt(r, -1)),
      from: fromOf(r, start),
      to: toOf(r),
    });
  } else if (role === STAR.times && kindAt(r) === T.number) sentenceTimes(r, run, start);
  else if (role === STAR.none && isNote(r, start, -1)) passNote(r, run);
  else if (role !== STAR.close && role !== STAR.named && role !== STAR.aside)
    putWords(r, run, start, 'unread');
}

/** "Sc 1. 2 sc in next sc*. Rep 6 times.": the row so far, whatever sentences it has. */
function repeatWhole(r: Reader, run: Run): void {
  const start = r.at;
  const times = timesBehindPair(r);
  if (!times) return;
  run.sentence = 0;
  const order = { from: fromOf(r, start), to: toOf(r) };
  wrapSentence(r, run, { times, ending: readEnding(r), order }, '*');
}

/** "*Do not tie off, continue to the first leg": told behind a star, to the full stop. */
function passNote(r: Reader, run: Run): void {
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop) r.at++;
  putWords(r, run, start, 'remark');
}

/** "sc in two stitches, 2 sc in third stitch *7x*", "*7 times*": how often, between stars of its own. */
const timesInStars = (r: Reader): boolean =>
  kindAt(r, 1) === T.number &&
  (isWord(r, W.x, 2) || isWord(r, W.times, 2) || kindAt(r, 2) === T.times) &&
  kindAt(r, 3) === T.star;

/** "*dec 1, sc 1* repeat around* (12)": nothing stands behind the last star but the count. */
function isStray(r: Reader): boolean {
  if (r.to[r.at - 1] !== r.from[r.at] || kindAt(r, -1) !== T.word) return false;
  const close = kindAt(r, 1) === T.open ? (r.partner[r.at + 1] ?? -1) : -1;
  const k = close > 0 && kindAt(r, 2) === T.number ? close + 1 - r.at : 1;
  return kindAt(r, k) === T.end || (kindAt(r, k) === T.stop && kindAt(r, k + 1) === T.end);
}

function openStar(r: Reader, run: Run): void {
  const start = r.at;
  const mark = valueAt(r);
  closeAround(r);
  r.at++;
  r.depth++;
  const counted = r.counts.length;
  const steps = r.run(r, 'star');
  r.depth--;
  const from = fromOf(r, start);
  runningCounts(r, steps, counted);
  const place = eachBehindPair(r, steps);
  if (place) {
    run.out.push({ kind: 'group', steps, place, loose: true, from, to: toOf(r) });
    return;
  }
  const order = orderBehindStar(r, r.counts.length > counted);
  const each = order || !run.out.some(isWorked) ? null : chainBeforeEach(steps);
  if (each) run.out.push(...each);
  // A star that nobody refers to: a mark that was left behind, or one for another piece.
  else if (!order)
    run.out.push({ kind: 'mark', mark: markOf(mark), from, to: r.to[start] ?? from }, ...steps);
  else run.out.push(repeatOf(markOf(mark), unwrapped(steps), order, { from, to: toOf(r) }));
}

/** "*Ch 3 and work a sc in each sp, then dc in last st": the star says that each has its chain; `null`: no such. */
function chainBeforeEach([chain, work, ...more]: readonly Step[]): Step[] | null {
  if (chain?.kind !== 'chain' || !chain.n || work?.kind !== 'work') return null;
  const { place } = work;
  if (place?.pick !== 'each' || place.n) return null;
  const steps = [chain, { ...work, place: null }];
  return [{ kind: 'group', steps, place, loose: false, from: chain.from, to: work.to }, ...more];
}

/** "*3 dc, ch 2, 3 dc* repeat from * to * in every lp around": where each pass goes. */
function eachBehindPair(r: Reader, steps: readonly Step[]): Place | null {
  if (kindAt(r) !== T.star || starRole(r, r.at) !== STAR.close || !steps.every(hasNoPlace))
    return null;
  const start = r.at++;
  while (kindAt(r) === T.comma || kindAt(r) === T.stop) r.at++;
  if (isWord(r, W.repeat)) {
    r.at++;
    eatMarks(r);
    const every = isWord(r, W.each, 1) || isWord(r, W.every, 1) || isWord(r, W.all, 1);
    const place = isWord(r, W.in) && every ? readPlaceAfterPreposition(r) : null;
    if (place?.pick === 'each' && place.n === null && clauseEnds(r)) return place;
  }
  r.at = start;
  return null;
}

const hasNoPlace = (step: Step): boolean =>
  step.kind === 'chain' || (step.kind === 'work' && !step.place && !step.until);

/** "*3 sc in each ch (33 sc), sc in next 2 sts; rep from *": a count in the midst of a pass is no total. */
function runningCounts(r: Reader, steps: Step[], since: number): void {
  for (let i = r.counts.length - 1; i >= since; i--) {
    const { count } = r.counts[i]!;
    const { from, to } = count;
    if (!steps.some((step) => step.to > to && step.kind !== 'chain' && isWorked(step))) continue;
    r.counts.splice(i, 1);
    const behind = steps.findIndex((step) => step.from >= to);
    const within = steps.some((step) => step.from < from && step.to > to);
    if (!within) steps.splice(behind < 0 ? steps.length : behind, 0, { kind: 'remark', from, to });
  }
}

/** What follows a star's steps: a closing star with its number, "rep from *", or only a count. */
function orderBehindStar(r: Reader, counted: boolean): RepeatOrder | null {
  if (kindAt(r) === T.star && starRole(r, r.at) === STAR.close) {
    const around = valueAt(r) === AROUND ? r.at : -1;
    r.at++;
    if (around >= 0) return aroundOrder(r, around);
    const orderAt = r.at;
    const times = timesBehindPair(r);
    if (!times) return noOrder(toOf(r));
    const order = { from: fromOf(r, orderAt), to: toOf(r) };
    return { times, ending: readEnding(r), order };
  }
  if (isRepeatOrder(r)) return readOrder(r);
  const on = goesOnOrder(r);
  if (on) return { ...on, ending: readEnding(r) };
  if (kindAt(r) === T.number && isWord(r, W.times, 1)) {
    const from = fromOf(r, r.at);
    const times = readTimes(r, false);
    if (times) return { times, ending: readEnding(r), order: { from, to: toOf(r) } };
  }
  return counted ? noOrder(toOf(r)) : null;
}

/** "*sc in next 2 sts, inc around": the word closes the star and says how often. */
function aroundOrder(r: Reader, token: number): RepeatOrder {
  const span = { from: fromOf(r, token), to: toOf(r) };
  const until = { kind: 'end' as const, word: spelled(r, token), ...span };
  return { times: { kind: 'until', until, ...span }, ending: readEnding(r), order: span };
}

/** "*[2 dc in next st, dc in next], repeat from *": the bracket inside the star says no more. */
function unwrapped(steps: Step[]): readonly Step[] {
  const [only] = steps;
  const bare = steps.length === 1 && only?.kind === 'repeat' && only.times.kind === 'missing';
  return bare && only.mark !== '*' ? only.steps : steps;
}

/** "around", "x 7", "repeat 3 more times" behind a closed pair of stars. */
function timesBehindPair(r: Reader): Times | null {
  const start = r.at;
  while (kindAt(r) === T.comma || kindAt(r) === T.semicolon || kindAt(r) === T.stop) {
    const k = isWord(r, W.these, 2) ? 3 : 2;
    const counted = kindAt(r, k) === T.number && isWord(r, W.times, k + 1);
    // "*1 sc, inc*, x 6"
    const signed = (kindAt(r, 1) === T.times || isWord(r, W.x, 1)) && kindAt(r, 2) === T.number;
    if (!isRepeatOrder(r, 1) && !(counted && kindAt(r, 1) === T.word) && !signed) break;
    r.at++;
    if (signed) return readTimes(r, false);
  }
  if (isRepeatOrder(r)) {
    const { times } = readOrderHead(r);
    return times;
  }
  // "*…*. Do this 6 times in total."
  const all = isWord(r, W.work) && isWord(r, W.these, 1) ? readTimes(r, false) : null;
  if (all) return all;
  r.at = start;
  if (isWord(r, W.around) || isWord(r, W.across) || isWord(r, W.to)) return readTimes(r, false);
  return readTimes(r, false);
}

/** "rep …" where no star is open: a closed repeat once more, or the sentence before. */
export function readLooseOrder(r: Reader, run: Run): void {
  const start = r.at;
  while (!isAgain(r, 0)) r.at++;
  const named = namesStar(r);
  r.at = start;
  const { times, ending, order } = readOrder(r);
  const outer = namesFirst(r, start) ? firstRepeat(run) : -1;
  const former = outer < 0 ? lastRepeat(run, named) : outer;
  if (former >= 0 && onlyRemarks(run, former)) return again(run, former, { times, ending, order });
  if (former >= 0 && named) {
    const old = run.out[former] as RepeatStep;
    if (outer < 0 && takesAllSince(r, start, old, times))
      return repeatSince(r, run, former, { times, ending, order });
    const end = endMark(r, start);
    if (outer >= 0 || (end === '' && !namesPair(r, start) && repeatsAll(run, former, times))) {
      const all = run.out.splice(former);
      // By two stars: here no other reading is open.
      const mark = outer >= 0 ? '**' : '*';
      run.out.push(repeatOf(mark, all, { times, ending, order }, { from: old.from, to: toOf(r) }));
      return;
    }
    const steps = passage(old.steps, end);
    putAgain(r, run, steps, { times, ending, order });
    return;
  }
  wrapSentence(r, run, { times, ending, order }, named ? '*' : '');
  if (run.out.length === 0) putWords(r, run, start, 'unread');
}

/**
 * "*Dc in next st, ch 1; rep from * twice, tr in next st; rep from * around": the first order has a number, so
 * that the second, which goes on to the end, is of all behind the star.
 */
function takesAllSince(
  r: Reader,
  start: number,
  { times: first }: RepeatStep,
  times: Times,
): boolean {
  if (first.kind !== 'times' || times.kind !== 'until' || times.until.kind !== 'end') return false;
  let stars = 0;
  for (let i = start; i < r.at; i++) {
    if (r.kind[i] !== T.star) continue;
    if (r.kind[i - 1] !== T.word || r.value[i - 1] !== W.from) return false;
    stars++;
  }
  return stars === 1;
}

/** All from a closed repeat on becomes a pass; with two such repeats it is not told from which star. */
function repeatSince(r: Reader, run: Run, former: number, order: RepeatOrder): void {
  const isClosed = (step: Step): boolean =>
    step.kind === 'repeat' && step.mark === '*' && step.times.kind === 'times' && !step.again;
  const span = { from: order.order.from, to: toOf(r) };
  if (run.out.slice(0, former).some(isClosed)) {
    run.out.push({ kind: 'unread', says: 'work', ...span });
    return;
  }
  const steps = run.out.splice(former);
  run.out.push(repeatOf('*', steps, order, { from: steps[0]?.from ?? span.from, to: span.to }));
}

/** "Rep from first * around": of several stars in the row the first. */
function namesFirst(r: Reader, start: number): boolean {
  for (let i = start; i < r.at; i++) if (r.kind[i + 1] === T.star && isFirst(r, i)) return true;
  return false;
}

/** "Rep between * and *", "rep from * to *": what stands between these alone. */
function namesPair(r: Reader, start: number): boolean {
  let stars = 0;
  for (let i = start; i < r.at; i++) if (r.kind[i] === T.star) stars++;
  return stars > 1;
}

const firstRepeat = (run: Run): number =>
  run.out.findIndex((step) => step.kind === 'repeat' && step.mark === '*' && !step.again);

/**
 * "*Dc in next st, ch 1, rep from * once, tr in next st, ch 2, rep from * 3 times": one star for both, and the
 * second order goes back over the first and all behind it.
 */
function repeatsAll(run: Run, former: number, times: Times): boolean {
  const old = run.out[former] as RepeatStep;
  if (old.mark !== '*' || old.times.kind !== 'times' || old.ending) return false;
  if (times.kind !== 'times') return false;
  const behind = run.out.slice(former + 1);
  return (
    behind.some(({ kind }) => kind === 'work' || kind === 'group') &&
    behind.every(({ kind }) => kind !== 'repeat' && kind !== 'turn' && kind !== 'join')
  );
}

/** Steps of a repeat that was worked before, once more. */
function putAgain(r: Reader, run: Run, steps: readonly Step[], order: RepeatOrder): void {
  const span = { from: order.order.from, to: toOf(r) };
  run.out.push({ ...repeatOf('*', steps, order, span), again: true });
}

/** "…, then from * to ** once more": a repeat is worked again, up to the mark in it. */
export function readFromStar(r: Reader, run: Run): boolean {
  const former = lastRepeat(run, true);
  const repeat = run.out[former];
  if (repeat?.kind !== 'repeat' || !isWord(r, W.from) || kindAt(r, 1) !== T.star) return false;
  const start = r.at;
  r.at++;
  eatMarks(r);
  const end = endMark(r, start);
  const times = readTimes(r, null) ?? onceAgain(r);
  if (end === '' || !times) {
    r.at = start;
    return false;
  }
  const order = { from: fromOf(r, start), to: toOf(r) };
  putAgain(r, run, passage(repeat.steps, end), { times, ending: readEnding(r), order });
  return true;
}

/**
 * "rep from * to ** once more": what stands before the second mark, and after the first where that
 * stands inside the repeat too.
 */
function passage(steps: readonly Step[], end: string): readonly Step[] {
  const first = steps.findIndex((step) => step.kind === 'mark' && step.mark === '*');
  const last = steps.findIndex((step) => step.kind === 'mark' && step.mark === (end || '**'));
  if (last <= first) return steps;
  return first >= 0 || end !== '' ? steps.slice(first + 1, last) : steps;
}

const onlyRemarks = (run: Run, after: number): boolean =>
  run.out.slice(after + 1).every((step) => step.kind === 'remark');

function lastRepeat(run: Run, named: boolean): number {
  for (let i = run.out.length - 1; i >= 0; i--) {
    const step = run.out[i];
    if (step?.kind === 'repeat' && !step.again) return i;
    if (!named && step?.kind !== 'remark') return -1;
  }
  return -1;
}

/** "(…), rep around", "*…* … rep": the repeat just read gets its number. */
function again(run: Run, at: number, { times, ending, order }: RepeatOrder): void {
  const old = run.out[at] as RepeatStep;
  if (old.times.kind === 'missing') {
    run.out[at] = { ...old, times, ending, order, to: Math.max(order.to, ending?.to ?? 0) };
  } else {
    const { mark, steps } = old;
    run.out.push({ kind: 'repeat', mark, steps, times, ending, again: true, order, ...order });
  }
}
