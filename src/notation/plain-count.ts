/** Counts that no bracket marks: "- 28 sts", "= 12", "28 sc." at the end, "28 in all", "28 sc 28". */

import { countItem, isPlainCount, opensExtent, readCounts } from './count.ts';
import { formOf, mayBeStitch, PROSE } from './dictionary.ts';
import { stopBefore } from './noun.ts';
import { sizesBehindComma } from './numbers.ts';
import {
  clauseEnds,
  isWord,
  kindAt,
  onNewLine,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';

/** "- 28 sts", "= 12", ": 28 sc" behind work; else the sign only parts clauses. */
export function countOrSign(r: Reader, run: Run): void {
  const start = r.at;
  r.at++;
  // "Ch 1: 2 sc in every st" goes on working.
  const listed = onNewLine(r, start) && !isWord(r, W.total, 3) && !isWord(r, W.all, 3);
  const works = mayBeStitch(wordAt(r, 1)) && isWord(r, W.in, 2) && (listed || placeAhead(r, 3));
  const worked = !works && run.out.some(isMaking) && (!run.aside || lastNumber(r));
  if (worked && (kindAt(r) === T.number || isWord(r, W.total) || isWord(r, W.you))) {
    if (plainCounts(r, run)) return moreCounted(r, run);
  }
  r.at = start + 1;
  if (worked && kindAt(r) === T.number && countsSomething(r, run, start))
    return moreCounted(r, run);
  if (worked) madeBehind(r, run);
}

/** "- 32 knot loops." behind work: so many of what has no name of the trade, which nothing is held against. */
function countsSomething(r: Reader, run: Run, start: number): boolean {
  let k = 1;
  let strange = 0;
  for (; k < 6 && !clauseEnds(r, k); k++) {
    const kind = kindAt(r, k);
    const sense = wordAt(r, k);
    if (
      (kind !== T.word && kind !== T.dash) ||
      (mayBeStitch(sense) && sense !== W.st) ||
      NO_THING.has(sense)
    )
      return false;
    if (kind === T.word && (sense === 0 || sense === PROSE)) strange++;
  }
  if (strange === 0 || k === 6) return false;
  r.at += k;
  putWords(r, run, start, 'remark');
  return true;
}

/**
 * "– 22 ch-1 sps, turning ch and 5 hdc at beg, 5 hdc at end", "– 5 stripes of A, and 4 stripes of C": what
 * else is counted there. No word orders work, and the row ends with it.
 */
function moreCounted(r: Reader, run: Run): void {
  const leads = kindAt(r) === T.comma || kindAt(r) === T.semicolon || isWord(r, W.and);
  if (!leads || run.end !== 'text') return;
  let end = r.at + 1;
  let numbers = 0;
  for (; r.kind[end] !== T.end && r.kind[end] !== T.stop; end++) {
    const kind = r.kind[end]!;
    const isMark = kind === T.comma || kind === T.semicolon || kind === T.dash;
    if (kind === T.number) numbers++;
    else if (kind !== T.word && !isMark) return;
    const sense = r.word[end]!;
    if (kind === T.word && (ORDERS_WORK.has(sense) || startsLength(r, end))) return;
  }
  if (numbers === 0 || (r.kind[end] === T.stop && r.kind[end + 1] !== T.end)) return;
  const start = r.at;
  r.at = end;
  putWords(r, run, start, 'remark');
}

/** "ch 3", "ch-3" that is no space. */
const startsLength = (r: Reader, token: number): boolean =>
  r.word[token] === W.ch && r.kind[token + 1] === T.number && r.word[token + 2] !== W.sp;

const ORDERS_WORK: SenseSet = new SenseSet([
  ...[W.in, W.each, W.every, W.next, W.same, W.times, W.more, W.x, W.skip, W.turn, W.join],
  ...[W.repeat, W.row, W.round, W.yo, W.fasten, W.work, W.around, W.across, W.last],
]);

/** Words that tell of places and of work, and name no thing that is counted. */
const NO_THING: SenseSet = new SenseSet([
  ...[W.in, W.each, W.every, W.next, W.last, W.same, W.times, W.more, W.x, W.ch, W.skip, W.turn],
  ...[W.repeat, W.row, W.round, W.yo, W.join, W.around, W.across],
]);

/** "– shell made", "-- X-stitch made" behind work: its name, and nothing more to work. */
function madeBehind(r: Reader, run: Run): void {
  const start = r.at;
  let k = 0;
  while (kindAt(r, k) === T.dash) k++;
  for (const first = k; k < first + 5; k++) {
    // "-shell made-"
    const signs = kindAt(r, k + 1) === T.dash ? 1 : 0;
    if (k > first && isWord(r, W.made, k) && clauseEnds(r, k + 1 + signs)) {
      r.at += k + 1 + signs;
      return putWords(r, run, start, 'remark');
    }
    if (kindAt(r, k) !== T.word && kindAt(r, k) !== T.dash) return;
  }
}

/** "… across; turn 18 ch-3 spaces.", "rep from * across 9 sc and 8 ch-2 sps": a count whose sign was lost. */
export function countBehindTurn(r: Reader, run: Run): boolean {
  const behind = isWord(r, W.turn, -1) ? run.out.some(isWorked) : endsRepeat(r, run);
  if (!behind) return false;
  const start = r.at;
  if (plainCounts(r, run)) return true;
  r.at = start;
  return false;
}

/** Behind a repeat that goes to the end nothing is left to work. */
function endsRepeat(r: Reader, { out, end }: Run): boolean {
  const last = out.at(-1);
  if (end !== 'text' || last?.kind !== 'repeat' || last.ending || last.to !== toOf(r)) return false;
  const { times, mark } = last;
  return times.kind === 'until'
    ? times.until.kind === 'end'
    : times.kind === 'missing' && mark === '*';
}

const placeAhead = (r: Reader, k: number): boolean =>
  isWord(r, W.each, k) || isWord(r, W.every, k) || isWord(r, W.next, k) || isWord(r, W.same, k);

export const isMaking = (step: Step): boolean =>
  step.kind === 'work' ||
  step.kind === 'repeat' ||
  step.kind === 'group' ||
  step.kind === 'boxes' ||
  step.kind === 'rows-again' ||
  step.kind === 'even' ||
  step.kind === 'chart' ||
  step.kind === 'chain' ||
  step.kind === 'join' ||
  step.kind === 'turn';

/** "<10>", "<10 petals total>": a count between the signs of less and more. */
export function angleCount(r: Reader, run: Run): boolean {
  if (kindAt(r, 1) !== T.number || spelled(r, r.at) !== '<') return false;
  const start = r.at;
  let close = start + 2;
  while (close < start + 16 && r.kind[close] !== T.other && r.kind[close] !== T.end) close++;
  if (r.kind[close] !== T.other || spelled(r, close) !== '>') return false;
  r.at = start + 1;
  const counts = readCounts(r, close);
  if (counts) for (const count of counts) r.counts.push({ count, from: run.out.length });
  r.at = counts ? close + 1 : start;
  return counts !== null;
}

/** Stitches, not only chains and turns: "Ch 1. 9 hdc." tells of work, not of a count. */
export const isWorked = (step: Step): boolean =>
  isMaking(step) && step.kind !== 'chain' && step.kind !== 'turn' && step.kind !== 'join';

/** "Pull tight – 12 sc.": a number with which the text ends is no part of the side job. */
const lastNumber = (r: Reader): boolean => {
  for (let i = r.at; i < r.at + 6; i++) {
    if (r.kind[i] === T.end) return true;
    if (r.kind[i] === T.comma) return false;
  }
  return false;
};

/** Counts without brackets up to the sentence's end, followed by nothing but joins and turns. */
export function plainCounts(r: Reader, run: Run): boolean {
  const start = r.at;
  let end = r.at;
  const kinds = r.kind;
  // "Magic ring with 6 sts = 6": the stitches are made, and the number behind the sign counts them.
  const inRing = run.out.at(-1)?.kind === 'ring';
  if (inRing && kinds[start] === T.number && kinds[start + 2] === T.equals) return false;
  while (
    end - start < 24 &&
    kinds[end] !== T.end &&
    kinds[end] !== T.stop &&
    kinds[end] !== T.close
  ) {
    // "47, (63, 71) sc": a comma too many.
    if (kinds[end] === T.comma && kinds[end + 1] === T.open && sizesBehindComma(r, end)) {
      end = r.partner[end + 1]! + 1;
      continue;
    }
    if (kinds[end] === T.open && (end > start || listsSizes(r, end))) {
      const close = r.partner[end] ?? -1;
      const isList = close > 0 && isNumbers(r, end, close);
      if (!isList || !(kinds[end - 1] === T.number || listsSizes(r, end))) break;
      end = close;
    }
    if ((kinds[end] === T.comma || kinds[end] === T.semicolon) && !isCountComma(r, end)) break;
    if (end > start + 1 && opensOrder(r, end)) break;
    // "31 tr," above "14 ch-1 sps": a column broke within the list.
    const goesOn = kinds[end - 1] === T.comma || unitBelow(r, end);
    if (end > start && onNewLine(r, end) && !goesOn) break;
    end++;
  }
  if (kinds[end] === T.close && run.end === 'text') return false;
  const counts = readCounts(r, end);
  if (!counts || r.at !== end) {
    r.at = start;
    return false;
  }
  for (const count of counts) r.counts.push({ count, from: run.out.length });
  return true;
}

/** "… turn. 112" above "sts.", "24 dc," above "3 ch-3 sps": the line broke between a number and what it counts, or within the list. */
const unitBelow = (r: Reader, token: number): boolean =>
  (r.kind[token - 1] === T.number &&
    (UNITS_BELOW.has(r.word[token]!) || mayBeStitch(r.word[token] ?? 0)) &&
    (r.kind[token + 1] === T.stop || r.kind[token + 1] === T.end)) ||
  (r.kind[token - 1] === T.comma && isCountComma(r, token - 1));

const UNITS_BELOW: SenseSet = new SenseSet([W.st, W.sp, W.loop]);

/** "47 (51, 55)" is one list of sizes; "47 (7 bobbles)" is two counts, the second in brackets. */
function isNumbers(r: Reader, open: number, close: number): boolean {
  for (let i = open + 1; i < close; i++) if (r.kind[i] === T.word) return false;
  return true;
}

/** "16 dc, 8 ch-1 sps": a number goes on with the list; anything else ends it. */
const isCountComma = (r: Reader, at: number): boolean =>
  r.kind[at + 1] === T.number || opensExtent(r, at) || listsSizes(r, at + 1);

/** "(50, 54, 58) dc": a number for each size, and what is counted. */
export function listsSizes(r: Reader, open: number): boolean {
  const close = r.kind[open] === T.open ? (r.partner[open] ?? -1) : -1;
  const { sizes } = r.known;
  if (sizes < 2 || close !== open + 2 * sizes || !isNumbers(r, open, close)) return false;
  return r.word[close + 1] === W.st || mayBeStitch(r.word[close + 1] ?? 0);
}

/** "28 sc." as the last sentence, and "24 sts": counts, for there is work before and none behind. */
export function barePlainCount(r: Reader, run: Run): boolean {
  if (restatesRow(r, run) || countsParted(r, run) || remains(r, run)) return plainCounts(r, run);
  // "End with 1 sc.": the last stitch.
  const last = isWord(r, W.with, -1) && (isWord(r, W.end, -2) || isWord(r, W.ending, -2));
  if (last && !isPlainCount(r)) return false;
  // "2 sc in next st": work, by far the most frequent case.
  const more = (isWord(r, W.and, 2) || isWord(r, W.form, 2)) && kindAt(r, 3) === T.number;
  if (mayBeStitch(wordAt(r, 1)) && !clauseEnds(r, 2) && !isWord(r, W.total, 2) && !more) {
    // "13 single crochets."
    if (!clauseEnds(r, 3) || !/^crochets?$/.test(spelled(r, r.at + 2))) return false;
  }
  if (run.end !== 'text' || run.aside || !run.out.some(isWorked)) return false;
  // "1 st in same st, then 2 sts in each st around"
  if (isWord(r, W.in, 2) && placeAhead(r, 3) && (isWord(r, W.st, 4) || mayBeStitch(wordAt(r, 4))))
    return false;
  const listed = kindAt(r, 1) === T.open && onNewLine(r, r.at);
  // "…, 1 sc in last sc; 20 sc.": behind a semicolon, at the very end.
  const closes = kindAt(r, -1) === T.semicolon && run.out.at(-1)?.kind === 'work' && isLastItem(r);
  // "… dc in last ch. 24 dc": the scanner took the stop for that of a short form.
  const begins = run.sentence === run.out.length && r.kind[r.at - 1] !== T.comma;
  const fresh = listed || closes || begins || isLastLine(r) || stopBefore(r, r.at);
  const inAll = isWord(r, W.in, 1) && (isWord(r, W.all, 2) || isWord(r, W.total, 2));
  const unit = isPlainCount(r) || inAll;
  if (!fresh && !unit) return false;
  const start = r.at;
  const item = countItem(r);
  const close = kindAt(r);
  const ends =
    close === T.end ||
    close === T.stop ||
    close === T.comma ||
    close === T.semicolon ||
    isWord(r, W.total) ||
    isWord(r, W.in) ||
    (more && fresh && kindAt(r, 1) === T.number) ||
    (fresh && unit && opensOrder(r, r.at));
  // "(1ch, 3 tr) 3 times. 1ch, join": a chain that leads on to the join.
  const leadsOn = item?.unit === 'chain' && close === T.comma;
  r.at = start;
  // "6 sc in ring. 1 ss, 1 ch [6]": slip stitches join, and nobody counts them.
  if (!item || !ends || leadsOn || item.stem === 'ss') return false;
  if (!unit && !listed && (item.unit === null || !atLast(r))) return false;
  return plainCounts(r, run);
}

/** "18 sc" below the row's other lines, which no comma leads on to. */
const isLastLine = (r: Reader): boolean =>
  kindAt(r, -1) !== T.comma && onNewLine(r, r.at) && (isLastItem(r) || isLongLast(r));

/** "18 single crochets" */
const isLongLast = (r: Reader): boolean =>
  mayBeStitch(wordAt(r, 1)) &&
  kindAt(r, 2) === T.word &&
  /^crochets?$/.test(spelled(r, r.at + 2)) &&
  (kindAt(r, 3) === T.stop || kindAt(r, 3) === T.end);

/** A number, a stitch and the end of the sentence: what stands behind a semicolon is no step. */
const isLastItem = (r: Reader): boolean =>
  kindAt(r, 1) === T.word &&
  formOf(wordAt(r, 1))?.shape === 'one' &&
  (kindAt(r, 2) === T.stop || kindAt(r, 2) === T.end);

/**
 * "dc in each st across, 18 dc.", "dc in each st; 18 dc; ch 3, turn": the row is full, and the number
 * behind the sign is its count.
 */
function restatesRow(r: Reader, run: Run): boolean {
  const parted = kindAt(r, -1) === T.semicolon;
  if (run.end !== 'text' || kindAt(r) !== T.number) return false;
  if (!parted && kindAt(r, -1) !== T.comma) return false;
  const last = run.out.at(-1);
  if (last?.kind !== 'work' || last.stitch.stem === null) return false;
  const until = last.until ?? last.place?.until ?? last.alsoIn.at(-1)?.until;
  const sizes = kindAt(r, 1) === T.open ? (r.partner[r.at + 1] ?? -1) : -1;
  const k = sizes > 0 ? sizes + 1 - r.at : 1;
  // "sc in each sc, 24 sc.": into each is to the end.
  const each = last.place?.pick === 'each' && !last.place.n && !last.place.of && !until;
  const full = until?.kind === 'end' || (each && last.alsoIn.length === 0);
  if (!full || formOf(wordAt(r, k))?.stem !== last.stitch.stem) return false;
  if (parted && kindAt(r, k + 1) === T.semicolon) return true;
  const sign = kindAt(r, k + 1);
  if (sign === T.end) return true;
  if (sign === T.comma) return turnsNext(r, k + 2);
  if (sign !== T.stop) return false;
  return kindAt(r, k + 2) === T.end || turnsNext(r, k + 2) || endsWork(r, k + 2);
}

/** "Ch 1, turn", "turn" at a token ahead: the row is over. */
function turnsNext(r: Reader, k: number): boolean {
  if (isWord(r, W.turn, k)) return true;
  if (!isWord(r, W.ch, k) || kindAt(r, k + 1) !== T.number) return false;
  return isWord(r, W.turn, kindAt(r, k + 2) === T.comma || isWord(r, W.and, k + 2) ? k + 3 : k + 2);
}

const endsWork = (r: Reader, k: number): boolean =>
  isWord(r, W.fasten, k) || isWord(r, W.fo, k) || isWord(r, W.join, k);

/** "Dec 1 sc at beg of next 4 rows. 26 sc remain.": a sentence of its own. */
function remains(r: Reader, run: Run): boolean {
  if (run.sentence !== run.out.length || !run.out.some(isWorked) || run.end !== 'text')
    return false;
  if (!isWord(r, W.st, 1) && !mayBeStitch(wordAt(r, 1))) return false;
  return isWord(r, W.remaining, 2) && (kindAt(r, 3) === T.stop || kindAt(r, 3) === T.end);
}

/** "… ch 3, turn. 29 sc with ch 1 between.": told of the row, as its last sentence. */
function countsParted(r: Reader, run: Run): boolean {
  if (!isWord(r, W.with, 2) || !isWord(r, W.ch, 3) || !mayBeStitch(wordAt(r, 1))) return false;
  if (kindAt(r, 4) !== T.number || !isWord(r, W.between, 5)) return false;
  const ends = kindAt(r, 6) === T.end || (kindAt(r, 6) === T.stop && kindAt(r, 7) === T.end);
  const begins = run.sentence === run.out.length && kindAt(r, -1) === T.stop;
  return ends && begins && run.end === 'text' && run.out.some(isWorked);
}

const ORDERS: SenseSet = new SenseSet([W.repeat, W.fasten, W.turn, W.join, W.work, W.ch]);

/** "36 sts Fasten off": an order behind a line end that was lost, told by its capital. */
function opensOrder(r: Reader, at: number): boolean {
  if (r.kind[at] !== T.word || r.kind[at - 1] !== T.word) return false;
  const code = r.text.charCodeAt(r.base + (r.from[at] ?? 0));
  return code >= 65 && code <= 90 && ORDERS.has(r.value[at] ?? 0);
}

/** Whether only this sentence, a join, a turn, or talk is left. */
function atLast(r: Reader): boolean {
  for (let i = r.at; i < r.count && i < r.at + 80; i++) {
    if (r.kind[i] === T.end) return true;
    if (r.kind[i] !== T.stop) continue;
    const next = r.kind[i + 1] === T.word ? (r.value[i + 1] ?? 0) : -1;
    if (!BEHIND_COUNT.has(next) && r.kind[i + 1] !== T.end && r.kind[i + 1] !== T.open)
      return false;
  }
  return false;
}

/** What opens a sentence behind the row's count: its end, the next row's chain, or a side job. */
const BEHIND_COUNT: ReadonlySet<number> = new Set([
  W.turn,
  W.join,
  W.fasten,
  W.ch,
  W.place,
  W.note,
  W.stuff,
  W.dont,
  PROSE,
]);

/** "28 sc 28", "… around 36", "turn. 41 (45, 51)": numbers at the very end restate the count. */
export function trailingNumber(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || run.aside || !run.out.some(isMaking)) return false;
  const start = r.at;
  const sizes = kindAt(r, 1) === T.open ? (r.partner[start + 1] ?? -1) : start;
  const next = sizes < start ? T.other : r.kind[sizes + 1];
  if (next !== T.end && !(next === T.stop && r.kind[sizes + 2] === T.end)) return false;
  const count = countItem(r);
  // "6 (12)": two numbers, and not one a size.
  if (!count || r.at !== sizes + 1) {
    r.at = start;
    return false;
  }
  r.counts.push({ count, from: run.out.length });
  return true;
}

/** "You should have 24 sts", "total of 28", "for a total of 28 sc". */
export function plainCountAhead(r: Reader, run: Run): boolean {
  if (run.aside || !run.out.some(isMaking)) return false;
  // "forming 20 loops"
  if (isWord(r, W.form)) {
    if (kindAt(r, 1) !== T.number) return false;
    r.at++;
    if (plainCounts(r, run)) return true;
    r.at--;
    return false;
  }
  return !leavesFew(r) && plainCounts(r, run);
}

/** "You should have one stitch left": what is still to be worked, and no count of the row. */
function leavesFew(r: Reader): boolean {
  let k = 0;
  while (k < 8 && kindAt(r, k) === T.word) k++;
  if (kindAt(r, k) !== T.number || valueAt(r, k) > 3) return false;
  for (k++; !clauseEnds(r, k); k++)
    if (/^(?:left|unworked|remaining)$/.test(spelled(r, r.at + k))) return true;
  return false;
}
