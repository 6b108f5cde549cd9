/**
 * What a bracket is, told by its content and by what follows: counts, "counts as", a remark, a
 * group worked in one place, or a repeat (survey of the notation: brackets).
 */
import { W } from './dictionary.ts';
import { readCountsAs, readStandsFor } from './counts-as.ts';
import { readCounts } from './count.ts';
import { readEnding } from './ending.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { fromOf, isWord, kindAt, MAX_DEPTH, type Reader, spelled, toOf, wordAt } from './reader.ts';
import { putWords, type Run } from './run.ts';
import { isRepeatOrder, readOrder } from './repeat.ts';
import { MISSING, readTimes } from './times.ts';
import { T } from './tokens.ts';
import type { CountsAs, Place, Step } from './tree.ts';
import { mayBeStitch } from './work.ts';

/** A bracket where a step may begin. */
export function readBracket(r: Reader, run: Run): void {
  const start = r.at;
  const partner = r.partner[start] ?? -1;
  const close = partner < 0 ? lastToken(r) : partner;
  const closed = partner >= 0;
  if (closed && close === start + 1) {
    r.at = close + 1;
    return;
  }
  if (aboutChain(r, run, start, close, closed)) return;
  if (countBracket(r, run, start, close, closed)) return;
  if (isAside(r, start, close)) return remark(r, run, start, close, closed);
  if (r.depth >= MAX_DEPTH) {
    r.at = closed ? close + 1 : close;
    return putWords(r, run, start, 'unread');
  }
  workBracket(r, run, start, close, closed);
}

const lastToken = (r: Reader): number => r.kind.length - 1;

function after(r: Reader, close: number, closed: boolean): void {
  r.at = closed ? close + 1 : close;
}

/** "(counts as dc)" belongs to the chain or stitch before it. */
function aboutChain(r: Reader, run: Run, start: number, close: number, closed: boolean): boolean {
  const last = run.out.at(-1);
  if (r.at + 40 < close) return false;
  r.at = start + 1;
  const said = readCountsAs(r, close) ?? (last?.kind === 'chain' ? readStandsFor(r, close) : null);
  if (!said || (last?.kind === 'chain' && last.countsAs === null && !followable(r, close, said))) {
    r.at = start;
    return false;
  }
  after(r, close, closed);
  putCountsAs(r, run, said, start);
  return true;
}

/** "ch 3, (1 dc, ch 1) in next": a group, though it looks like what a chain may stand for. */
function followable(r: Reader, close: number, said: CountsAs): boolean {
  if (said.to < 0) return false;
  const sense = wordAt(r, close + 1 - r.at);
  return sense !== W.in && sense !== W.times && sense !== W.around && !isTimesSign(r, close + 1);
}

const isTimesSign = (r: Reader, token: number): boolean =>
  r.kind[token] === T.times || (r.kind[token] === T.number && r.value[token + 1] === W.times) ||
  (r.kind[token] === T.word && (r.value[token] === W.x || r.value[token] === W.twice)); // biome-ignore format: one condition

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
  if (step && (step.kind === 'chain' || step.kind === 'work')) {
    run.out[at] = { ...step, countsAs: said, to: at === run.out.length - 1 ? span.to : step.to };
  } else run.out.push({ kind: 'remark', ...span });
}

const isPassing = (step: Step | undefined): boolean =>
  step?.kind === 'turn' || step?.kind === 'remark';

function countBracket(r: Reader, run: Run, start: number, close: number, closed: boolean): boolean {
  r.at = start + 1;
  const counts = close - start < 60 ? readCounts(r, close) : null;
  if (counts && r.at === close) {
    after(r, close, closed);
    if (!worksOn(r, run)) {
      const from = run.out.length;
      if (run.aside) putWords(r, run, start, 'remark');
      else for (const count of counts) r.counts.push({ count, from });
      return true;
    }
  }
  r.at = start;
  return false;
}

/** "(2 sc) in next", "(3 dc) twice": stitch words with a place or a number behind are work. */
function worksOn(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  if (sense === W.in && !isWord(r, W.all, 1)) return true;
  if (sense === W.all && isWord(r, W.in, 1)) return true;
  if (isTimesSign(r, r.at) || sense === W.once || sense === W.twice) return run.aside === false;
  return false;
}

/** A remark in brackets: nothing worked in it, or it says what something is. */
function isAside(r: Reader, start: number, close: number): boolean {
  const first = r.kind[start + 1] === T.word ? (r.value[start + 1] ?? 0) : -1;
  if (ASIDES.has(first)) return true;
  const word = r.kind[start + 1] === T.word ? spelled(r, start + 1) : '';
  if (ASIDE_WORDS.has(word)) return true;
  const last = r.kind[close - 1] === T.word ? r.value[close - 1] : 0;
  if (last === W.made || last === W.row || last === W.round || last === W.throughout) return true;
  let works = false;
  for (let i = start + 1; i < close && !works; i++) {
    const sense = r.kind[i] === T.word ? (r.value[i] ?? 0) : 0;
    const kind = r.kind[i];
    works = kind === T.star || kind === T.open || sense === W.ch || sense === W.skip || mayBeStitch(sense) ||
      sense === W.box || sense === W.mesh || sense === W.block || sense === W.sp || sense === W.turn ||
      sense === W.x || sense === W.v || sense === W.om || sense === W.repeat; // biome-ignore format: one condition
  }
  return !works;
}

const ASIDES = new Set([
  W.note, W.rs, W.ws, W.right, W.wrong, W.you, W.there, W.dont, W.does, W.place, W.stuff, W.marker,
  W.here, W.the, W.these, W.so, W.for, W.leave, W.as, W.continue, W.color, W.like, W.not, W.or,
  W.first_word, W.made, W.count,
]); // biome-ignore format: a list

const ASIDE_WORDS = new Set(
  (
    'see if it be is are use using optional when where make sure this that mark note instead after ' +
    'i my we your refer check ie eg remember keep keeping do don do_not also only always because'
  ).split(' '),
);

function remark(r: Reader, run: Run, start: number, close: number, closed: boolean): void {
  after(r, close, closed);
  putWords(r, run, start, 'remark');
}

function workBracket(r: Reader, run: Run, start: number, close: number, closed: boolean): void {
  r.at = start + 1;
  r.depth++;
  const counted = r.counts.length;
  const steps = r.run(r, 'bracket');
  r.depth--;
  if (r.at < close && closed) unfinished(r, close, steps);
  // Counts inside a bracket are running ones and no totals.
  if (closed) r.counts.length = counted;
  after(r, close, closed);
  const mark = r.text[r.base + fromOf(r, start)] ?? '(';
  const from = fromOf(r, start);
  const place = closed ? groupPlace(r) : null;
  if (place) {
    run.out.push({ kind: 'group', steps, place, loose: false, from, to: toOf(r) });
    return;
  }
  const orderAt = r.at;
  const times = closed ? bracketTimes(r) : null;
  if (!times) {
    const at = toOf(r);
    const order = { from: at, to: at };
    run.out.push({
      kind: 'repeat',
      mark,
      steps,
      times: MISSING,
      ending: null,
      again: false,
      order,
      from,
      to: at,
    });
    return;
  }
  const order = { from: fromOf(r, orderAt), to: toOf(r) };
  const ending = readEnding(r);
  run.out.push({
    kind: 'repeat',
    mark,
    steps,
    times,
    ending,
    again: false,
    order,
    from,
    to: toOf(r),
  });
}

/** What the run left inside the bracket. */
function unfinished(r: Reader, close: number, steps: Step[]): void {
  const from = fromOf(r, r.at);
  r.at = close;
  steps.push({ kind: 'unread', from, to: toOf(r) });
}

/** "in next sp", "all in same st", "all into ring" behind the bracket. */
function groupPlace(r: Reader): Place | null {
  const start = r.at;
  if (isWord(r, W.work) || isWord(r, W.made)) r.at++;
  const sense = wordAt(r);
  const bare = sense === W.next || sense === W.same;
  if (sense === W.around || sense === W.round || sense === W.across) return null;
  const place = bare ? null : readPlaceAfterPreposition(r);
  if (place) return place;
  r.at = start;
  return null;
}

function bracketTimes(r: Reader): ReturnType<typeof readTimes> {
  const start = r.at;
  const direct = readTimes(r, false);
  if (direct) {
    if (direct.kind === 'until' && isWord(r, W.times)) r.at++;
    return direct;
  }
  while (kindAt(r) === T.comma || kindAt(r) === T.semicolon) r.at++;
  if (isRepeatOrder(r) && r.at <= start + 1) return readOrder(r).times;
  r.at = start;
  if (kindAt(r) === T.number && isEndOfRow(r)) return bareNumber(r);
  return null;
}

/** "(sc, inc)6": a number glued to the bracket. */
function isEndOfRow(r: Reader): boolean {
  return r.from[r.at] === r.to[r.at - 1] && r.kind[r.at + 1] !== T.word;
}

function bareNumber(r: Reader): ReturnType<typeof readTimes> {
  const n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [r.value[r.at] ?? 0] };
  r.at++;
  return { kind: 'times', n, more: false, from: n.from, to: n.to };
}
