/**
 * What a bracket is, told by its content and by what follows: counts, "counts as", a remark, a
 * group worked in one place, or a repeat (survey of the notation: brackets).
 */

import type { Span } from '../source/index.ts';
import { isAside } from './aside.ts';
import { increaseBracket } from './bracket-increase.ts';
import {
  isPassedByJoin,
  nameBracket,
  placeBracket,
  renames,
  shapingBracket,
  sideBracket,
  timesBracket,
  translates,
  turnsToSide,
} from './bracket-of-step.ts';
import { type Bracket, leave } from './bracket-span.ts';
import { readCounts } from './count.ts';
import { readCountsAs, readStandsFor } from './counts-as.ts';
import { readEnding } from './ending.ts';
import { madeIntoCluster } from './held.ts';
import { readLoopOrder } from './loop-orders.ts';
import { readUnworked } from './orders.ts';
import { readPlace, readPlaceAfterPreposition } from './place.ts';
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
  wordAt,
} from './reader.ts';
import { readLooseOrder } from './repeat.ts';
import { isRepeatOrder, namesStar, orderOnly, readOrder } from './repeat-order.ts';
import { noOrder, repeatOf } from './repeat-step.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { STAR, starRole } from './star.ts';
import { withItsList } from './timed-list.ts';
import { readTimes } from './times.ts';
import { T } from './tokens.ts';
import type { CountsAs, GroupStep, Place, RepeatStep, Step, Times, WorkStep } from './tree.ts';
import { unreadStep } from './unread-words.ts';
import { circleWords } from './until.ts';

/** "ch 3 (count as 1st dc *2 dc in …": what the chain stands for ends at the next sign; else the end. */
function unclosedEnd(r: Reader, start: number): number {
  if (r.kind[start + 1] !== T.word) return r.count - 1;
  if (r.value[start + 1] !== W.count) {
    // "3 sc in next (which is the middle one. Rep from *": talk ends with its sentence.
    const stop = r.kind.indexOf(T.stop, start + 1);
    const talks = stop > 0 && stop < r.count && stop - start < 40 && isAside(r, start, stop);
    return talks ? stop : r.count - 1;
  }
  for (let i = start + 2; i < r.count; i++) if (ENDS_TALK.has(r.kind[i] ?? 0)) return i;
  return r.count - 1;
}

const ENDS_TALK: ReadonlySet<number> = new Set([T.comma, T.semicolon, T.stop, T.star]);

/** A bracket where a step may begin. */
export function readBracket(r: Reader, run: Run): void {
  const start = r.at;
  const partner = r.partner[start] ?? -1;
  const closed = partner >= 0;
  const b: Bracket = { start, close: closed ? partner : unclosedEnd(r, start), closed };
  if (isPassedByJoin(r, run, b)) {
    leave(r, b);
    putWords(r, run, start, 'remark');
  } else if (closed && partner === start + 1) leave(r, b);
  else if (
    orderBracket(r, run, b) ||
    timesBracket(r, run, b) ||
    placeBracket(r, run, b) ||
    sideBracket(r, run, b) ||
    turnsToSide(r, run, b) ||
    translates(r, run, b) ||
    renames(r, run, b) ||
    nameBracket(r, run, b) ||
    shapingBracket(r, run, b) ||
    loopBracket(r, run, b) ||
    leaveBracket(r, run, b) ||
    aboutChain(r, run, b) ||
    increaseBracket(r, run, b) ||
    countBracket(r, run, b)
  )
    return;
  else if (isAside(r, start, b.close)) {
    if (r.word[start + 1] === W.plus) besidesChain(r, run);
    leave(r, b);
    putWords(r, run, start, 'remark');
  } else if (r.depth >= MAX_DEPTH) {
    leave(r, b);
    putWords(r, run, start, 'unread');
  } else workBracket(r, run, b);
}

/** "18 sts (plus the beginning chain)": the chain is none of them. */
function besidesChain(r: Reader, run: Run): void {
  const last = r.counts.at(-1);
  if (last?.from !== run.out.length) return;
  r.counts[r.counts.length - 1] = {
    ...last,
    count: { ...last.count, startChainIncluded: false },
  };
}

/** "*sc in first st, 2 sc in next* (repeat from * to * around)", "sc, inc (repeat around)": the order itself. */
function orderBracket(r: Reader, run: Run, b: Bracket): boolean {
  r.at = b.start + 1;
  const isShort = b.close - b.start < 6;
  const order = b.closed && run.out.length > 0 && isRepeatOrder(r) && (isShort || namesStar(r));
  if (order) {
    readOrder(r);
    const count = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
    if (r.at === b.close || count === b.close - 1) {
      r.at = b.start + 1;
      readLooseOrder(r, run);
      if (count > 0) readBracket(r, run);
      leave(r, b);
      return true;
    }
  }
  r.at = b.start;
  return false;
}

/** "(in back loops only) 2 hdc in each st" */
function loopBracket(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || b.close - b.start > 14 || r.kind[b.start + 1] === T.number) return false;
  r.at = b.start + 1;
  const loop = readLoopOrder(r);
  if (!loop || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  run.out.push({ ...loop, from: fromOf(r, b.start), to: toOf(r) });
  return true;
}

/** "sc in next 20, (leave remaining 24 unworked)" */
function leaveBracket(r: Reader, run: Run, b: Bracket): boolean {
  if (!b.closed || r.word[b.start + 1] !== W.leave) return false;
  r.at = b.start + 1;
  const step = readUnworked(r);
  if (step && kindAt(r) === T.stop) r.at++;
  if (!step || r.at !== b.close) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  run.out.push({ ...step, from: fromOf(r, b.start), to: toOf(r) });
  return true;
}

/** "(counts as dc)" belongs to the chain or stitch before it. */
function aboutChain(r: Reader, run: Run, b: Bracket): boolean {
  const last = run.out.at(-1);
  const chain = last?.kind === 'chain';
  if (b.start + 40 < b.close) return false;
  r.at = b.start + 1;
  const counts = readCountsAs(r, b.close);
  const open = chain && last.countsAs === null && r.kind[b.start - 1] !== T.stop;
  const stands = counts === null && open ? readStandsFor(r, b.close) : null;
  const said = counts ?? (stands && isInChain(stands, last) ? stands : null);
  if (!said || (open && !standsAlone(r, b.close))) {
    r.at = b.start;
    return false;
  }
  leave(r, b);
  if (namesWorkedChain(r, last, b)) putWords(r, run, b.start, 'remark');
  else putCountsAs(r, run, said, b.start);
  return true;
}

/** "sc in 2nd ch from hook (first 2 chs count as first sc)": the chain that was worked is among them. */
function namesWorkedChain(r: Reader, last: Step | undefined, { start, close }: Bracket): boolean {
  if (last?.kind !== 'work' || !last.place?.fromHook || last.place.nth === null) return false;
  for (let i = start + 1; i < close; i++)
    if (r.kind[i] === T.number && r.word[i + 1] === W.ch) return r.value[i] === last.place.nth;
  return false;
}

/** "ch 5 (1 dc + ch 2)": a chain holds the chains that it stands for; "ch 2, [3 dc, ch 2]" is more work. */
const isInChain = ({ stitches, chains }: CountsAs, chain: Step | undefined): boolean =>
  chains === 0 ||
  (stitches === 1 && chain?.kind === 'chain' && chains < (chain.n?.values[0] ?? Infinity));

/** "ch 3, (1 dc, ch 1) in next": a group, though it looks like what a chain may stand for. */
function standsAlone(r: Reader, close: number): boolean {
  const sense = wordAt(r, close + 1 - r.at);
  return (
    sense !== W.in &&
    sense !== W.times &&
    sense !== W.around &&
    sense !== W.between &&
    sense !== W.over &&
    !isTimesSign(r, close + 1)
  );
}

/** The token behind the sizes of a number: "(2 sc, 3 dc) 6 (7, 8) times". */
const sizesEnd = (r: Reader, token: number): number =>
  r.kind[token] === T.open ? (r.partner[token] ?? -1) + 1 : token;

const isTimesSign = (r: Reader, token: number): boolean =>
  r.kind[token] === T.times ||
  (r.kind[token] === T.number && isTimesWord(r, sizesEnd(r, token + 1))) ||
  (r.kind[token] === T.word && (r.value[token] === W.x || r.value[token] === W.twice));

/** "(1 sc, 1 inc) – 6 times": no count, but a list and how often. */
const isDashTimes = (r: Reader): boolean =>
  kindAt(r) === T.dash &&
  (isWord(r, W.twice, 1) || (kindAt(r, 1) === T.number && isTimesWord(r, sizesEnd(r, r.at + 2))));

/** "times", "x", "more times" */
function isTimesWord(r: Reader, token: number): boolean {
  if (r.kind[token] !== T.word) return false;
  const sense = r.value[token];
  return sense === W.times || sense === W.x || (sense === W.more && isTimesWord(r, token + 1));
}

/** Puts what was said of a chain on the step before, and down as an order if it is to hold on. */
export function putCountsAs(r: Reader, run: Run, said: CountsAs, start: number): void {
  let at = run.out.length - 1;
  while (at >= 0 && isPassing(run.out[at])) at--;
  const step = run.out[at];
  const span = { from: fromOf(r, start), to: toOf(r) };
  if (said.throughout) {
    const [n] = step?.kind === 'chain' ? (step.n?.values ?? []) : [];
    r.orders.push({ kind: 'start-chain', n: n ?? null, countsAs: said, ...span });
  }
  if (step && (step.kind === 'chain' || step.kind === 'work' || step.kind === 'skip')) {
    run.out[at] = { ...step, countsAs: said, to: at === run.out.length - 1 ? span.to : step.to };
  } else run.out.push({ kind: 'remark', ...span });
}

const isPassing = (step: Step | undefined): boolean =>
  step?.kind === 'turn' || step?.kind === 'remark';

function countBracket(r: Reader, run: Run, b: Bracket): boolean {
  r.at = b.start + 1;
  const end = talkBehind(r, b) ?? b.close;
  if (isInOne(r, b)) return explainsOne(r, run, b);
  const counts = end - b.start < 60 && !goesOn(r, b) ? readCounts(r, end) : null;
  if (counts && r.at === end) {
    if (end < b.close) tellOfChain(r, run, { from: end + 1, to: b.close });
    leave(r, b);
    // "Rnd 2: (6 inc)" is all the round has; so is "(1 dec, 4 sc) (15)", whose count stands behind.
    const alone = run.out.length === 0 && (kindAt(r) === T.end || kindAt(r) === T.open);
    const shapes =
      alone &&
      (counts.every(({ word }) => /^(?:inc|dec|v-st)/i.test(word)) ||
        (counts.length > 1 && counts.some(({ unit }) => unit === 'decrease')));
    if (
      !shapes &&
      !worksOn(r, run) &&
      !(counts.length > 1 && (goesRound(r) || isRepeatOrder(r) || isDashTimes(r)))
    ) {
      const from = run.out.length;
      if (run.aside && !closesRow(r, run)) putWords(r, run, b.start, 'remark');
      else for (const count of counts) r.counts.push({ count, from });
      return true;
    }
  }
  r.at = b.start;
  return false;
}

/** "(3 sc in one st)": no count, though it begins as one. */
const isInOne = (r: Reader, { start }: Bracket): boolean =>
  r.kind[start + 1] === T.number &&
  r.word[start + 3] === W.in &&
  r.kind[start + 4] === T.number &&
  r.value[start + 4] === 1 &&
  r.word[start + 5] === W.st;

/** "5 sc, (3 sc in one st), 5 sc" is worked; behind a name, "inc (2 sc in one st)", it explains that. */
function explainsOne(r: Reader, run: Run, b: Bracket): boolean {
  r.at = b.start;
  if (run.out.length === 0 || r.kind[b.start - 1] === T.comma) return false;
  leave(r, b);
  const isWorked = worksOn(r, run);
  r.at = b.start;
  if (isWorked) return false;
  leave(r, b);
  putWords(r, run, b.start, 'remark');
  return true;
}

/** "(8 sts, ch 3 does not count)": what is said of the chain with which the row begins, and the others. */
function tellOfChain(r: Reader, run: Run, { from, to }: Span): void {
  r.at = from;
  const said = readCountsAs(r, to);
  const at = run.out.findIndex(({ kind }) => kind !== 'yarn' && kind !== 'remark');
  const chain = run.out[at];
  const n = r.value[r.kind.indexOf(T.number, from)];
  if (
    !run.out.some(isWorked) ||
    !said?.named ||
    chain?.kind !== 'chain' ||
    chain.countsAs ||
    chain.n?.values[0] !== n
  )
    return;
  run.out[at] = { ...chain, countsAs: said };
  r.orders.push({
    kind: 'start-chain',
    n: n ?? null,
    countsAs: said,
    from: said.from,
    to: said.to,
  });
}

/** "[2 dc in each st around]": work to the row's end, in brackets of somebody's habit. */
const goesOn = (r: Reader, b: Bracket): boolean =>
  ROUND.has(r.word[b.close - 1]!) && r.word.slice(b.start, b.close).includes(W.each);

const ROUND: SenseSet = new SenseSet([W.around, W.across]);

/** "pull to close, do not join (6)": talk stands between the work and the count at the row's end. */
function closesRow(r: Reader, run: Run): boolean {
  const ends = kindAt(r) === T.end || (kindAt(r) === T.stop && kindAt(r, 1) === T.end);
  return ends && r.counts.length === 0 && run.out.some(isWorked);
}

/** "(21 sts – remember that the ch 2 counts)", "(21 sts, ch 3 counts as dc)": where the bracket talks. */
function talkBehind(r: Reader, b: Bracket): number | null {
  if (r.kind[b.start + 1] !== T.number) return null;
  for (let i = b.start + 2; i < b.close - 2; i++) {
    const kind = r.kind[i];
    if (kind === T.dash && TALKS.has(spelled(r, i + 1))) return i;
    const parts = kind === T.dash || kind === T.comma || kind === T.semicolon || kind === T.stop;
    if (parts && (tellsOfChain(r, i + 1, b.close) || talks(r, i + 1, kind))) return i;
    if (kind === T.comma || kind === T.open) return null;
  }
  return null;
}

/** Behind a full stop any talk; behind a comma what speaks to the reader. */
const talks = (r: Reader, token: number, sign: number): boolean =>
  sign !== T.dash &&
  r.kind[token] === T.word &&
  (sign === T.stop ? TALKS : SPEAKS).has(spelled(r, token));

const SPEAKS = new Set('remember note dont you your this if'.split(' '));

/** "ch 3 counts as a dc", "the beginning chain is your first dc" */
function tellsOfChain(r: Reader, from: number, close: number): boolean {
  let i = from;
  while (i < from + 3 && r.kind[i] === T.word && r.word[i] !== W.ch && r.word[i] !== W.tch) i++;
  if (r.word[i] !== W.ch && r.word[i] !== W.tch) return false;
  for (i++; i < close && i < from + 7; i++) {
    if (r.kind[i] === T.number || r.kind[i] === T.dash) continue;
    return r.word[i] === W.count || r.word[i] === W.is || isNot(r, i);
  }
  return false;
}

const isNot = (r: Reader, token: number): boolean =>
  r.word[token] === W.not ||
  r.word[token] === W.dont ||
  /^(?:does|never|stands)$/.test(spelled(r, token));

const TALKS = new Set('remember note be do dont the this that you your if it make'.split(' '));

/** "(2 sc, 3 dc) around": a list of stitches that goes on to the end is worked. */
const goesRound = (r: Reader): boolean =>
  isWord(r, W.around) || isWord(r, W.across) || isWord(r, W.to) || isWord(r, W.between);

/** "(2 sc) in next", "(3 dc) twice": stitch words with a place or a number behind are work. */
function worksOn(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  if ((sense === W.in && !isWord(r, W.all, 1)) || inSame(r)) return true;
  // "[1 dc; 1 ch; 1 dc] worked into ch space"
  if (sense === W.made && isWord(r, W.in, 1)) return true;
  if (sense === W.between && (isWord(r, W.next, 1) || isWord(r, W.each, 1))) return true;
  if (sense === W.all && isWord(r, W.in, 1)) return true;
  const multiplied = kindAt(r) === T.star && starRole(r, r.at) === STAR.times;
  if (multiplied || isTimesSign(r, r.at) || sense === W.once || sense === W.twice)
    return run.aside === false;
  return false;
}

/** "(1 dtr, 2 ch, 2 dtr) same st": the "in" is left out. */
const inSame = (r: Reader): boolean =>
  isWord(r, W.same) && (isWord(r, W.st, 1) || isWord(r, W.sp, 1) || isWord(r, W.place, 1));

function workBracket(r: Reader, run: Run, b: Bracket): void {
  r.at = b.start + 1;
  r.depth++;
  const counted = r.counts.length;
  const steps = r.run(r, 'bracket');
  r.depth--;
  if (r.at < b.close && b.closed) unfinished(r, b.close, steps);
  // Counts inside a bracket are running ones and no totals.
  if (b.closed) r.counts.length = counted;
  leave(r, b);
  // "[skip next 6 sts and place a marker]": what is marked, and not worked.
  if (steps.length > 1 && steps.every(isMarking) && steps.some(({ kind }) => kind === 'remark')) {
    const words = r.text.slice(r.base + (r.from[b.start] ?? 0), r.base + toOf(r));
    if (/\bmarker\b/i.test(words)) return putWords(r, run, b.start, 'remark');
  }
  if (b.closed && explainsOwn(run, steps) && (clauseEnds(r) || kindAt(r) === T.star))
    return putWords(r, run, b.start, 'remark');
  // "(Make it wider if you like. The pattern is a multiple of 4.)": talk alone.
  if (steps.length > 0 && steps.every(({ kind }) => kind === 'remark') && !isTimesSign(r, r.at))
    return putWords(r, run, b.start, 'remark');
  // "6 sc in ring (sl st into first sc)": the join, which no bracket repeats.
  const [only] = steps;
  if (b.closed && steps.length === 1 && only && joins(only) && !isTimesSign(r, r.at)) {
    run.out.push(only);
    return;
  }
  const cluster = b.closed ? madeIntoCluster(r, steps, fromOf(r, b.start)) : null;
  if (cluster) {
    run.out.push(cluster);
    return;
  }
  // "(ch 3, sc in next lp. rep rnd, join": a bracket typed for a star.
  if (!b.closed && steps.some((one) => one.kind === 'repeat' && one.times.kind !== 'missing')) {
    run.out.push(...steps);
    return;
  }
  const made = b.closed ? groupOrRepeat(r, b, steps) : openRepeat(r, b, steps);
  const step = made.kind === 'group' ? withItsList(run, made) : made;
  const named = step.kind === 'group' ? withLegs(r, run, b, step) : null;
  if (named) {
    run.out[run.out.length - 1] = named;
    return;
  }
  if (step.kind === 'group') dropName(r, run, b);
  const isOnce = step.kind === 'repeat' && step.times.kind === 'missing';
  if (isOnce && (spreadsOut(run, steps) || (run.out.length === 0 && beginsRow(steps)))) {
    run.out.push(...steps);
  } else run.out.push(step);
  if (step.kind === 'group') alsoThere(r, run, step);
}

/** "Wave in next st [1 sc, 1 hdc, 1 dc]": behind a stitch of the list, what it is made of once more. */
function explainsOwn({ out }: Run, steps: readonly Step[]): boolean {
  const own = out.at(-1);
  if (own?.kind !== 'work' || own.stitch.special === null || !own.place) return false;
  return (
    steps.length > 1 &&
    steps.every(
      (step) => step.kind === 'chain' || (step.kind === 'work' && !step.place && !step.until),
    )
  );
}

const joins = (step: Step): boolean =>
  step.kind === 'join' ||
  (step.kind === 'work' && step.stitch.stem === 'ss' && step.place?.pick === 'first');

const isMarking = ({ kind }: Step): boolean => kind === 'remark' || kind === 'skip';

/** "(cluster, ch 2) in same sp and in each ch-1 sp around": the group once more, there. */
function alsoThere(r: Reader, run: Run, group: GroupStep): void {
  const each = isWord(r, W.each, 1) || isWord(r, W.every, 1);
  if (!isWord(r, W.and) || !(isWord(r, W.in, 1) || each)) return;
  const start = r.at++;
  const place = each ? readPlace(r) : readPlaceAfterPreposition(r);
  if (place && (clauseEnds(r) || kindAt(r) === T.open))
    run.out.push({ ...group, place, from: fromOf(r, start), to: toOf(r) });
  else r.at = start;
}

/**
 * "2 sc (1 sc in dc, 1 sc in ch sp)" tells where the two go, and "ch 10 (skip 15 …)" goes on: what
 * the bracket holds stands for itself, and for the step that it explains.
 */
function spreadsOut(run: Run, steps: readonly Step[]): boolean {
  const last = run.out.at(-1);
  if (steps[0]?.kind === 'skip' && last?.kind === 'chain') return true;
  if (last?.kind !== 'work' || last.place || !last.n || steps.length < 2) return false;
  let sum = 0;
  for (const step of steps) {
    if (step.kind !== 'work' || step.stitch.stem !== last.stitch.stem || !step.place) return false;
    sum += (step.n?.values[0] ?? 1) * (step.n ? 1 : (step.place.n?.values[0] ?? 1));
  }
  if (sum !== last.n.values[0]) return false;
  run.out.pop();
  return true;
}

/** "(Ch 3, dc in same st), [2 dc in each st around]": the beginning of a round, in brackets of its own. */
const beginsRow = ([chain, work, ...more]: readonly Step[]): boolean =>
  chain?.kind === 'chain' &&
  work?.kind === 'work' &&
  work.place?.pick === 'same' &&
  more.length === 0;

/** "half shell (3 dc) in last sc": the bracket says what the name before it means. */
function dropName(r: Reader, run: Run, b: Bracket): void {
  const last = nameBefore(r, run, b);
  if (last) run.out[run.out.length - 1] = { kind: 'remark', from: last.from, to: last.to };
}

/** "Cluster (3 tr) in next st": the bracket says how many legs the one stitch has. */
function withLegs(r: Reader, run: Run, b: Bracket, group: GroupStep): WorkStep | null {
  const last = nameBefore(r, run, b);
  const [legs, ...more] = group.steps;
  if (!last || !ONE_STITCH.has(last.stitch.shape) || legs?.kind !== 'work' || more.length > 0)
    return null;
  const n = legs.n?.values[0];
  if (legs.place || legs.stitch.shape !== 'one' || typeof n !== 'number' || n < 2) return null;
  const stitch = { ...last.stitch, stem: legs.stitch.stem, legs: n };
  return { ...last, stitch, place: group.place, to: group.to };
}

const ONE_STITCH: ReadonlySet<string> = new Set(['cluster', 'bobble', 'puff', 'popcorn']);

/** The stitch of many legs that is named right before the bracket, with nothing said of it yet. */
function nameBefore(r: Reader, run: Run, b: Bracket): WorkStep | null {
  const last = run.out.at(-1);
  if (last?.kind !== 'work' || last.place || last.n || last.to !== r.to[b.start - 1]) return null;
  const { shape } = last.stitch;
  return shape === 'one' || shape === 'increase' || shape === 'together' ? null : last;
}

const markOf = (r: Reader, b: Bracket): string => r.text[r.base + fromOf(r, b.start)] ?? '(';

/** A bracket with nothing behind it that says how often. */
const openRepeat = (r: Reader, b: Bracket, steps: Step[]): RepeatStep =>
  repeatOf(markOf(r, b), steps, noOrder(toOf(r)), { from: fromOf(r, b.start), to: toOf(r) });

function groupOrRepeat(r: Reader, b: Bracket, steps: Step[]): Step {
  const from = fromOf(r, b.start);
  const place = groupPlace(r);
  if (place) return { kind: 'group', steps, place, loose: false, from, to: toOf(r) };
  const orderAt = r.at;
  const times = bracketTimes(r);
  if (!times) {
    const inner = innerTimes(steps);
    const all = inner ? [...steps.slice(0, -1), ...inner.steps] : steps;
    const bare = inner
      ? { times: inner.times, ending: null, order: inner.order }
      : noOrder(toOf(r));
    return repeatOf(markOf(r, b), all, bare, { from, to: toOf(r) });
  }
  const order = { from: fromOf(r, orderAt), to: toOf(r) };
  const [only] = steps;
  if (steps.length === 1 && only?.kind === 'rows-again' && times.kind === 'times')
    return { ...only, times: only.times ?? times.n, from, to: order.to };
  // "(dc, ch 1) twice in next st": all passes go into one place.
  const placed = isWord(r, W.in) || (isWord(r, W.all) && isWord(r, W.in, 1));
  const common = times.kind === 'times' && placed ? readPlaceAfterPreposition(r) : null;
  if (common) {
    const timed = repeatOf(
      markOf(r, b),
      steps,
      { times, ending: null, order },
      { from, to: order.to },
    );
    return { kind: 'group', steps: [timed], place: common, loose: false, from, to: toOf(r) };
  }
  const ending = readEnding(r);
  return repeatOf(markOf(r, b), steps, { times, ending, order }, { from, to: toOf(r) });
}

/** Old style, "(4 ch, miss 3, 1 dc 5 times)": the number of the whole stands inside. */
function innerTimes(steps: readonly Step[]): RepeatStep | null {
  const last = steps.at(-1);
  if (steps.length < 2 || last?.kind !== 'repeat' || last.mark !== '') return null;
  return last.times.kind === 'times' && last.steps.length === 1 ? last : null;
}

/** What the run left inside the bracket. */
function unfinished(r: Reader, close: number, steps: Step[]): void {
  const start = r.at;
  r.at = close;
  steps.push(unreadStep(r, start));
}

/** "in next sp", "all in same st", "all into ring" behind the bracket. */
function groupPlace(r: Reader): Place | null {
  const start = r.at;
  if (isWord(r, W.work) || isWord(r, W.made)) r.at++;
  forName(r);
  const sense = wordAt(r);
  const bare = sense === W.next || sense === W.same;
  if (inSame(r)) return readPlace(r);
  if (sense === W.around || sense === W.round || sense === W.across) return null;
  if (sense === W.in && circleWords(r) > 0) return null;
  const place = bare ? null : readPlaceAfterPreposition(r);
  if (place) return place;
  r.at = start;
  return null;
}

/** "(3 dc, ch 1, 3 dc) for a shell in next sp": what the group is called says no more. */
function forName(r: Reader): void {
  if (!isWord(r, W.for) || !(isWord(r, W.a, 1) || isWord(r, W.first_word, 1))) return;
  let k = 2;
  while (k < 5 && kindAt(r, k) === T.word && !isWord(r, W.in, k)) k++;
  if (isWord(r, W.in, k)) r.at += k;
}

function bracketTimes(r: Reader): ReturnType<typeof readTimes> {
  const start = r.at;
  const direct = readTimes(r, false);
  if (direct) {
    if (direct.kind === 'until' && isWord(r, W.times)) r.at++;
    return direct;
  }
  while (kindAt(r) === T.comma || kindAt(r) === T.semicolon || kindAt(r) === T.stop) r.at++;
  // "(…)* repeat 5 times": a star left over from another habit.
  if (r.at === start && kindAt(r) === T.star && isRepeatOrder(r, 1)) r.at++;
  // "rep from *" speaks of the star around the bracket.
  if (isRepeatOrder(r) && r.at <= start + 1 && !namesStar(r)) return inAll(orderOnly(r));
  // "(sc in 1st st, 2 sc in 2nd st); continue this pattern around"
  if (isWord(r, W.continue) && isWord(r, W.pattern, 2) && isWord(r, W.around, 3)) {
    r.at += 3;
    return readTimes(r, false);
  }
  r.at = start;
  if (kindAt(r) === T.number && isEndOfRow(r)) return bareNumber(r);
  return null;
}

/** "(sc, inc) repeat 6 times": the bracket itself is worked six times, as in "(sc, inc) 6 times". */
const inAll = (times: Times): Times =>
  times.kind === 'times' && times.more === null ? { ...times, more: false } : times;

/** "(sc, inc)6": a number glued to the bracket. */
function isEndOfRow(r: Reader): boolean {
  return r.from[r.at] === r.to[r.at - 1] && r.kind[r.at + 1] !== T.word;
}

function bareNumber(r: Reader): ReturnType<typeof readTimes> {
  const n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [r.value[r.at] ?? 0] };
  r.at++;
  return { kind: 'times', n, more: false, from: n.from, to: n.to };
}
