/**
 * Repeats: stars, "rep from *", and a sentence that repeats as a whole. Brackets are in
 * `bracket.ts`; rows that repeat are in `rows-again.ts`.
 */

import { readEnding } from './ending.ts';
import { readMeasure } from './measure.ts';
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
  wordAt,
} from './reader.ts';
import { noOrder, type RepeatOrder, repeatOf } from './repeat-step.ts';
import { namesBareRows } from './row-numbers.ts';
import { putWords, type Run, sentenceOf } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { AROUND, closeAround, isNote, markOf, STAR, starRole } from './star.ts';
import { readTimes, toTheEnd } from './times.ts';
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
  if (role === STAR.open && r.depth < MAX_DEPTH) return openStar(r, run);
  r.at++;
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

/** "*Do not tie off, continue to the first leg": told behind a star, to the full stop. */
function passNote(r: Reader, run: Run): void {
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop) r.at++;
  putWords(r, run, start, 'remark');
}

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
  // A star that nobody refers to: a mark that was left behind, or one for another piece.
  if (!order)
    run.out.push({ kind: 'mark', mark: markOf(mark), from, to: r.to[start] ?? from }, ...steps);
  else run.out.push(repeatOf(markOf(mark), unwrapped(steps), order, { from, to: toOf(r) }));
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
    const counted = kindAt(r, 2) === T.number && isWord(r, W.times, 3);
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
  r.at = start;
  if (isWord(r, W.around) || isWord(r, W.across) || isWord(r, W.to)) return readTimes(r, false);
  return readTimes(r, false);
}

/** Whether a bracket of steps, not of a number or a star, stands here. */
export const holdsWork = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.open &&
  (r.partner[r.at + ahead] ?? -1) > r.at + ahead + 3 &&
  (kindAt(r, ahead + 1) === T.word || wordAt(r, ahead + 2) > 0) &&
  kindAt(r, ahead + 1) !== T.star;

/** "Repeat (rep) from *": how many tokens its short form takes. */
const shortForm = (r: Reader, ahead: number): number =>
  kindAt(r, ahead) === T.open && isWord(r, W.repeat, ahead + 1) && kindAt(r, ahead + 2) === T.close
    ? 3
    : 0;

/** "Complete 6 times from *". */
const completesFrom = (r: Reader, k: number): boolean =>
  kindAt(r, k + 1) === T.number &&
  isWord(r, W.times, k + 2) &&
  isWord(r, W.from, k + 3) &&
  kindAt(r, k + 4) === T.star &&
  /^(complete|do|work|make)$/.test(spelled(r, r.at + k));

/** "Rep", or "continue from *", "work from *", "continue * to *". */
const isAgain = (r: Reader, k: number): boolean =>
  isWord(r, W.repeat, k) ||
  completesFrom(r, k) ||
  ((isWord(r, W.continue, k) || isWord(r, W.work, k)) &&
    (isWord(r, W.from, k + 1)
      ? kindAt(r, k + 2) === T.star
      : kindAt(r, k + 1) === T.star && isWord(r, W.to, k + 2)));

/** Whether "rep" stands here and speaks of stitches rather than of rows. */
export function isRepeatOrder(r: Reader, ahead = 0): boolean {
  let k = ahead;
  while (isWord(r, W.and, k) || isWord(r, W.afterwards, k) || isWord(r, W.now, k)) k++;
  if (!isAgain(r, k)) return false;
  k += 1 + shortForm(r, k + 1);
  // "then repeat (2 dc in next st, dc in next st) to the end": the bracket is the repeat.
  if (holdsWork(r, k)) return false;
  while (isWord(r, W.the, k) || isWord(r, W.from, k) || isWord(r, W.all, k)) k++;
  if (kindAt(r, k) === T.star) return starRole(r, r.at + k) !== STAR.open;
  const sense = wordAt(r, k);
  // "*ch 4, sc in next loop, repeat rnd, join": around.
  if (sense === W.round && (r.depth > 0 || r.stars) && clauseEnds(r, k + 1)) return true;
  if (sense === W.row || sense === W.round || sense === W.r || sense === W.as) return false;
  // "repeat and follow rounds 6 and 7"
  if (sense === W.and && isWord(r, W.next, k + 1) && isWord(r, W.round, k + 2)) return false;
  if (kindAt(r, k) === T.ordinal) return false;
  // "(sc in next 2 sts, inc) repeat pattern": the bracket's.
  if (sense === W.pattern && ahead === 0 && kindAt(r, -1) === T.close) return true;
  if (sense === W.last || sense === W.previous || sense === W.pattern || sense === W.these) {
    return false;
  }
  // "rep Dec row", "repeat the increase round"
  if (isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1)) return false;
  if (namesBareRows(r, k)) return false;
  if (kindAt(r, k) === T.number) return !isWord(r, W.row, k + 1) && !isWord(r, W.round, k + 1);
  return true;
}

/** The order to repeat with its ending, with `isRepeatOrder` true. */
export function readOrder(r: Reader): RepeatOrder {
  const start = r.at;
  const { times } = readOrderHead(r);
  const order = { from: fromOf(r, start), to: toOf(r) };
  return { times, ending: readEnding(r), order };
}

/** How often the order asks for; its ending is left to be read. */
export const orderOnly = (r: Reader): Times => readOrderHead(r).times;

function readOrderHead(r: Reader): { times: Times; mark: number } {
  while (!isAgain(r, 0)) r.at++;
  r.at += 1 + shortForm(r, 1);
  if (isWord(r, W.pattern)) r.at++;
  const mark = eatMarks(r);
  if (isWord(r, W.round) && clauseEnds(r, 1)) r.at++;
  const start = r.at;
  const length = toLength(r);
  if (length) return { times: length, mark };
  const times = orderTimes(r);
  // "repeat all around from * to last sc": the star is named behind.
  if (times && isWord(r, W.from) && kindAt(r, 1) === T.star) {
    const named = eatMarks(r);
    return { times: orderTimes(r) ?? times, mark: named };
  }
  if (times) return { times, mark };
  const places = inNextPlaces(r);
  if (places) return { times: places, mark };
  if (kindAt(r) === T.comma && !isWord(r, W.ending, 1)) {
    r.at++;
    const later = readTimes(r, null);
    if (later) return { times: later, mark };
    r.at = start;
  }
  // "repeat in each ch sp": as often as there are.
  const every = isWord(r, W.each, 1) || isWord(r, W.every, 1);
  if (every && (isWord(r, W.in) || isWord(r, W.for) || isWord(r, W.on)) && eachOfThem(r)) {
    return { times: toTheEnd(r), mark };
  }
  // "repeat from * all ending with …"
  if (isWord(r, W.all) && (isWord(r, W.ending, 1) || isWord(r, W.end, 1))) r.at++;
  return { times: toTheEnd(r), mark };
}

/** "repeat from * into the next 5 sps", "in all the next sps": once more for each of them. */
function inNextPlaces(r: Reader): Times | null {
  if (!isWord(r, W.in)) return null;
  const start = r.at;
  const from = fromOf(r, start);
  const place = readPlaceAfterPreposition(r);
  const [n] = place?.n?.values ?? [];
  const ends = clauseEnds(r) || isWord(r, W.around) || kindAt(r) === T.open;
  if (place?.pick === 'each' && !place.n && ends) return toTheEnd(r);
  if (place?.pick === 'next' && place.n && typeof n === 'number' && n > 1 && ends)
    return { kind: 'times', n: place.n, more: true, from, to: toOf(r) };
  r.at = start;
  return null;
}

/** "Repeat from * for length required", "… to desired length". */
function toLength(r: Reader): Times | null {
  const start = r.at;
  const measure = readMeasure(r);
  if (!measure) {
    r.at = start;
    return null;
  }
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'until', until: { kind: 'length', ...span }, ...span };
}

/** "in each ch sp around", "for each side": up to what follows. */
function eachOfThem(r: Reader): boolean {
  const start = r.at;
  while (kindAt(r) === T.word && !isWord(r, W.and) && !isWord(r, W.around) && r.at < start + 6)
    r.at++;
  if (isWord(r, W.around) || clauseEnds(r) || isWord(r, W.and)) return true;
  r.at = start;
  return false;
}

/** "14 times around": the way round says no more than the number. */
function orderTimes(r: Reader): Times | null {
  const times = readTimes(r, null);
  const round = isWord(r, W.around) || isWord(r, W.across);
  if (times?.kind === 'times' && round && clauseEnds(r, 1)) r.at++;
  return times;
}

/** "from * to *", "between * and *", "*-*", "from beginning", "instructions between stars". */
function eatMarks(r: Reader): number {
  let mark = 0;
  for (let guard = 0; guard < 10; guard++) {
    const sense = wordAt(r);
    if (kindAt(r) === T.star) {
      mark ||= valueAt(r);
      // "between *s once"
      if (kindAt(r, 1) === T.word && spelled(r, r.at + 1) === 's') r.at++;
    } else if (kindAt(r) === T.dash && (mark > 0 || kindAt(r, 1) === T.star)) {
      if (kindAt(r, 1) !== T.star) break;
    } else if (sense === W.to || sense === W.and) {
      if (kindAt(r, 1) !== T.star) break;
    } else if (sense === W.from) {
      const k = isWord(r, W.the, 1) ? 2 : 1;
      if (isWord(r, W.beginning, k) || isWord(r, W.star_word, k)) r.at += k;
    } else if (sense === W.all && kindAt(r, 1) !== T.star && !isWord(r, W.from, 1)) break;
    else if (kindAt(r) === T.open && kindAt(r, 1) === T.star) {
      const close = r.partner[r.at] ?? -1;
      if (close > 0 && close < r.at + 6) {
        mark ||= valueAt(r, 1);
        r.at = close;
      }
    } else if (kindAt(r) === T.open && kindAt(r, 1) === T.close) r.at++;
    else if (inBrackets(r) > 0) r.at += inBrackets(r) - 1;
    else if (!FILLERS.has(sense)) break;
    r.at++;
  }
  return mark;
}

/** "the steps in brackets", "what is within the parentheses": how many tokens name the bracket just read. */
function inBrackets(r: Reader): number {
  let k = /^(steps?|part|what)$/.test(spelled(r, r.at)) ? 1 : 0;
  // "repeat the two stitches in parentheses"
  if (kindAt(r) === T.number && isWord(r, W.st, 1)) k = 2;
  if (k > 0 && isWord(r, W.is, k)) k++;
  if (!isWord(r, W.in, k) && !/^(within|inside)$/.test(spelled(r, r.at + k))) return 0;
  k += isWord(r, W.the, k + 1) ? 2 : 1;
  return kindAt(r, k) === T.word && /^(brackets?|parenthes[ei]s)$/.test(spelled(r, r.at + k))
    ? k + 1
    : 0;
}

const FILLERS: SenseSet = new SenseSet([
  W.between,
  W.the,
  W.all,
  W.star_word,
  W.instructions,
  W.these,
  W.sequence,
  W.st,
]);

/** "rep …" where no star is open: a closed repeat once more, or the sentence before. */
export function readLooseOrder(r: Reader, run: Run): void {
  const start = r.at;
  while (!isAgain(r, 0)) r.at++;
  const named = namesStar(r);
  r.at = start;
  const { times, ending, order } = readOrder(r);
  const former = lastRepeat(run, named);
  if (former >= 0 && onlyRemarks(run, former)) return again(run, former, { times, ending, order });
  if (former >= 0 && named) {
    const old = run.out[former] as RepeatStep;
    const steps = passage(old.steps, endMark(r, start));
    putAgain(r, run, steps, { times, ending, order });
    return;
  }
  wrapSentence(r, run, { times, ending, order }, named ? '*' : '');
  if (run.out.length === 0) putWords(r, run, start, 'unread');
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

/** "again" is once; so is silence at a clause's end. */
function onceAgain(r: Reader): Times | null {
  if (spelled(r, r.at) === 'again') r.at++;
  if (!clauseEnds(r)) return null;
  const at = toOf(r);
  const n = { from: at, to: at, values: [1] };
  return { kind: 'times', n, more: false, from: at, to: at };
}

/** The mark up to which an order goes: the "**" of "from * to **", read from token `start` on. */
function endMark(r: Reader, start: number): string {
  for (let i = start; i < r.at; i++) {
    if (r.kind[i] === T.star && r.kind[i - 1] === T.word && r.value[i - 1] === W.to)
      return markOf(r.value[i] ?? 1);
  }
  return '';
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

/** Whether the order to repeat here names a star. */
export function namesStar(r: Reader): boolean {
  for (let k = 1; k < 5; k++) if (kindAt(r, k) === T.star) return true;
  return false;
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
    (opensRow(run.out[first]) || isMove(run.out, first)) &&
    !(isChain(run.out[first]) && (within || isLoop(run.out, first)))
  )
    first++;
  first = lastOfAlike(r, run.out, first);
  const steps = run.out.slice(first);
  firstOfEach(steps, run.out[first - 1]);
  const [head] = steps;
  if (!head) return;
  // "The pattern is a multiple of 4, and 2 more for the turning chain.": nothing that could be repeated.
  if (steps.every(({ kind }) => kind === 'remark')) {
    run.out.push({ kind: 'remark', from: order.order.from, to: toOf(r) });
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
    r.word[start] === W.for ||
    lastIsOne(run);
  const saved = run.sentence;
  if (!whole && run.out.length > 0) run.sentence = run.out.length - 1;
  wrapSentence(r, run, order, '');
  run.sentence = Math.min(saved, run.out.length);
  return true;
}
