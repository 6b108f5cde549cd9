/** One step after the other: what begins here is told by its first word or sign. */
import { readBoxes, readChart } from './boxes.ts';
import { putCountsAs, readBracket } from './bracket.ts';
import { readChain, startsChain } from './chain.ts';
import { countItem, isPlainCount, readCounts } from './count.ts';
import { readCountsAs } from './counts-as.ts';
import { formOf, phrasesOf, W } from './dictionary.ts';
import { readEven } from './even.ts';
import { looseGroup, placeFirst } from './groups.ts';
import { readHeld } from './held.ts';
import { joinBehind, readJoin, settleTarget } from './join.ts';
import { readMeasure } from './measure.ts';
import {
  readLoopOrder,
  readNot,
  readOtherSide,
  readRing,
  readSkip,
  readSpiral,
  readTurn,
  readUnworked,
} from './orders.ts';
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  type RunEnd,
  spelled,
  toOf,
  wordAt,
} from './reader.ts';
import { leftOver, opensRemark, remarkClause } from './remark.ts';
import { isRepeatOrder, readLooseOrder, readStar, sentenceTimes } from './repeat.ts';
import { readRowsAgain } from './rows-again.ts';
import { endSentence, newRun, putWords, type Run } from './run.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';
import { mayBeStitch, readWork } from './work.ts';
import { readChange, readDrop, readFastenOff, readWithYarn, startsFastenOff } from './yarn.ts';

/** Reads steps until the run ends; the reader then stands on what ended it. */
export function readRun(r: Reader, end: RunEnd): Step[] {
  if (end === 'list') return readList(r);
  const run = newRun(end);
  while (kindAt(r) !== T.end && !runEnds(r, run)) {
    const before = r.at;
    stepHere(r, run);
    if (r.at === before) {
      r.at++;
      putWords(r, run, before, 'unread');
    }
  }
  return run.out;
}

/**
 * What is named behind a place, "in next sp 2 dc, ch 2, 2 dc": stitches and chains up to the first
 * step that has a place of its own; a chain before that step leads on to it.
 */
function readList(r: Reader): Step[] {
  const run = newRun('list');
  let good = r.at;
  let length = 0;
  while (kindAt(r) !== T.end && !runEnds(r, run)) {
    const before = r.at;
    stepHere(r, run);
    if (r.at === before) break;
    const last = run.out.at(-1);
    if (run.out.length === length) continue;
    if (last?.kind === 'work' && !last.place && !last.until && last.stitch.stem !== 'ss') {
      good = r.at;
      length = run.out.length;
    } else if (last?.kind !== 'chain' || run.out.length > length + 1) break;
  }
  run.out.length = length;
  r.at = good;
  return run.out;
}

function runEnds(r: Reader, run: Run): boolean {
  const kind = kindAt(r);
  switch (run.end) {
    case 'text':
      return false;
    case 'bracket':
      return kind === T.close;
    case 'star':
      if (kind === T.close) return true;
      if (kind === T.star) return starRole(r, r.at) === STAR.close;
      return kind === T.word && isRepeatOrder(r) && run.out.length > 0;
    case 'list':
      return (
        kind === T.stop ||
        kind === T.close ||
        kind === T.semicolon ||
        kind === T.star ||
        kind === T.open
      );
    case 'ending':
      return endingEnds(r, run);
  }
}

/** The ending of a repeat goes to the full stop, to the join, or to the next order. */
function endingEnds(r: Reader, run: Run): boolean {
  const kind = kindAt(r);
  if (kind === T.stop || kind === T.close || kind === T.semicolon || kind === T.star) return true;
  if (kind === T.dash || kind === T.equals || kind === T.colon) return true;
  if (kind === T.open)
    return run.out.length > 0 && (r.kind[r.at + 1] === T.number || isWord(r, W.total, 1));
  const k = kind === T.comma || isWord(r, W.and) ? 1 : 0;
  const sense = wordAt(r, k);
  if (run.out.length === 0) return false;
  if (sense === W.ch && isWord(r, W.turn, k + 2)) return true;
  if (kindAt(r, k) === T.number && isWord(r, W.ch, k + 1) && isWord(r, W.turn, k + 2)) return true;
  if (sense === W.join || sense === W.turn || sense === W.fasten || sense === W.repeat) return true;
  if (sense === W.on || sense === W.at || sense === W.of || sense === W.from) return true;
  return (
    formOf(sense)?.stem === 'ss' ||
    phrasesOf(sense)?.some((p) => formOf(p.sense)?.stem === 'ss') === true
  );
}

function stepHere(r: Reader, run: Run): void {
  switch (kindAt(r)) {
    case T.word:
      return wordStep(r, run);
    case T.number:
      return numberStep(r, run);
    case T.open:
      return readBracket(r, run);
    case T.star:
      return readStar(r, run);
    case T.pipe:
      return readPipe(r, run);
    case T.comma:
    case T.semicolon:
    case T.slash:
    case T.plus:
    case T.other:
      r.at++;
      return;
    case T.stop:
      r.at++;
      endSentence(run);
      return;
    case T.dash:
    case T.equals:
    case T.colon:
      return countOrSign(r, run);
    case T.times:
      if (!sentenceTimes(r, run, r.at)) r.at++;
      return;
    case T.ordinal:
      return ordinalStep(r, run);
    default:
      r.at++;
  }
}

/** "|inc, 2 sc| x 6": bars as brackets, known by the number behind the second. */
function readPipe(r: Reader, run: Run): void {
  const start = r.at;
  let close = start + 1;
  while (close - start < 40 && r.kind[close] !== T.end && r.kind[close] !== T.pipe) close++;
  const sign = r.kind[close + 1];
  const times =
    r.kind[close] === T.pipe &&
    r.kind[close + 2] === T.number &&
    (sign === T.times || r.value[close + 1] === W.x);
  const counted = sign === T.number && r.value[close + 2] === W.times;
  if (!times && !(r.kind[close] === T.pipe && counted)) {
    r.at++;
    return;
  }
  r.kind[start] = T.open;
  r.kind[close] = T.close;
  r.partner[start] = close;
  r.partner[close] = start;
  readBracket(r, run);
}

/** "- 28 sts", "= 12", ": 28 sc" behind work; else the sign only parts clauses. */
function countOrSign(r: Reader, run: Run): void {
  const start = r.at;
  r.at++;
  const worked = run.out.some(isMaking) && !run.aside;
  if (worked && (kindAt(r) === T.number || isWord(r, W.total) || isWord(r, W.you))) {
    if (plainCounts(r, run)) return;
  }
  r.at = start + 1;
}

const isMaking = (step: Step): boolean =>
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

/** Stitches, not only chains and turns: "Ch 1. 9 hdc." tells of work, not of a count. */
const isWorked = (step: Step): boolean =>
  isMaking(step) && step.kind !== 'chain' && step.kind !== 'turn' && step.kind !== 'join';

/** Counts without brackets up to the sentence's end, followed by nothing but joins and turns. */
function plainCounts(r: Reader, run: Run): boolean {
  const start = r.at;
  let end = r.at;
  const kinds = r.kind;
  while (
    end - start < 24 &&
    kinds[end] !== T.end &&
    kinds[end] !== T.stop &&
    kinds[end] !== T.close
  ) {
    if (kinds[end] === T.open && end > start) break;
    if (kinds[end] === T.comma && !isCountComma(r, end)) break;
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

/** "16 dc, 8 ch-1 sps": a number goes on with the list; anything else ends it. */
const isCountComma = (r: Reader, at: number): boolean => r.kind[at + 1] === T.number;

function numberStep(r: Reader, run: Run): void {
  const start = r.at;
  const sense = wordAt(r, 1);
  if (
    run.out.length > 0 &&
    (sense === W.times || kindAt(r, 1) === T.times || sense === W.x || sense === W.more)
  ) {
    if (
      kindAt(r, 2) !== T.open &&
      kindAt(r, 2) !== T.number &&
      !mayBeStitch(wordAt(r, 2)) &&
      sentenceTimes(r, run, start)
    )
      return;
  }
  if (multipliedBracket(r, run)) return;
  if (barePlainCount(r, run)) return;
  if (startsChain(r)) return putStep(r, run, readChain(r));
  const boxes =
    sense === W.open || sense === W.filled || BOX_WORDS.has(sense) ? readBoxes(r) : null;
  if (boxes) return putStep(r, run, boxes);
  const work = readWork(r);
  if (work) return workStep(r, run, work);
  if (numberedRows(r, run)) return;
  if (isPlainCount(r) && plainCounts(r, run)) return;
  if (trailingNumber(r, run)) return;
  leftOver(r, run);
}

const BOX_WORDS = new Set([
  W.om,
  W.sm,
  W.sp,
  W.block,
  W.mesh,
  W.box,
  W.lacet,
  W.bar,
  W.letter_m,
  W.letter_b,
]);

/** "6 x (sc, inc)", "5 times (…)". */
function multipliedBracket(r: Reader, run: Run): boolean {
  const start = r.at;
  const sign = kindAt(r, 1) === T.times || isWord(r, W.x, 1) || isWord(r, W.times, 1);
  if (!sign || kindAt(r, 2) !== T.open) return false;
  const n = { from: fromOf(r, start), to: r.to[start] ?? 0, values: [r.value[start] ?? 0] };
  const order = { from: n.from, to: r.to[start + 1] ?? 0 };
  r.at = start + 2;
  const before = run.out.length;
  readBracket(r, run);
  const step = run.out[before];
  if (run.out.length === before + 1 && step?.kind === 'repeat' && step.times.kind === 'missing') {
    run.out[before] = {
      ...step,
      from: n.from,
      times: { kind: 'times', n, more: false, ...order },
      order,
    };
  } else if (run.out.length === before + 1 && step?.kind === 'group') {
    const times = { kind: 'times', n, more: false, ...order } as const;
    run.out[before] = {
      kind: 'repeat',
      mark: '',
      steps: [step],
      times,
      ending: null,
      again: false,
      order,
      from: n.from,
      to: step.to,
    };
  }
  return true;
}

/** "28 sc." as the last sentence, and "24 sts": counts, for there is work before and none behind. */
function barePlainCount(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || run.aside || !run.out.some(isWorked)) return false;
  const fresh = run.sentence === run.out.length && r.kind[r.at - 1] !== T.comma;
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
    isWord(r, W.in);
  r.at = start;
  if (!item || !ends) return false;
  if (!unit && (item.unit === null || !atLast(r))) return false;
  return plainCounts(r, run);
}

/** Whether only this sentence, a join or a turn is left. */
function atLast(r: Reader): boolean {
  for (let i = r.at; i < r.kind.length && i < r.at + 16; i++) {
    if (r.kind[i] === T.end) return true;
    if (r.kind[i] === T.stop && r.kind[i + 1] !== T.end && r.kind[i + 1] !== T.open) return false;
  }
  return false;
}

/** "(4 rows)" without brackets: how many rows this is worked. */
function numberedRows(r: Reader, run: Run): boolean {
  if (!isWord(r, W.row, 1) && !isWord(r, W.round, 1)) return false;
  const even = readEven(r);
  if (even) {
    putStep(r, run, even);
    return true;
  }
  const count = countItem(r);
  if (!count) return false;
  r.counts.push({ count, from: run.out.length });
  return true;
}

/** "28 sc 28", "… around 36": a lone number at the very end restates the count. */
function trailingNumber(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || run.aside || !run.out.some(isMaking)) return false;
  const next = kindAt(r, 1);
  if (next !== T.end && !(next === T.stop && kindAt(r, 2) === T.end)) return false;
  const count = countItem(r);
  if (!count) return false;
  r.counts.push({ count, from: run.out.length });
  return true;
}

function ordinalStep(r: Reader, run: Run): void {
  const rows = readRowsAgain(r);
  if (rows) return putStep(r, run, rows);
  leftOver(r, run);
}

function putStep(r: Reader, run: Run, step: Step | null): void {
  if (step) {
    run.out.push(step);
    if (isMaking(step)) run.aside = false;
  } else leftOver(r, run);
}

function workStep(r: Reader, run: Run, work: Step & { kind: 'work' }): void {
  const join =
    work.stitch.stem === 'ss' && work.stitch.shape === 'one' ? joinBehind(r, work) : null;
  run.aside = false;
  if (join) run.out.push(settleTarget(join));
  else {
    run.out.push(work);
    looseGroup(run);
    if (kindAt(r) === T.star && starRole(r, r.at) === STAR.times) return;
    const k = kindAt(r);
    if (
      k === T.number ||
      k === T.times ||
      isWord(r, W.x) ||
      isWord(r, W.once) ||
      isWord(r, W.twice) ||
      isWord(r, W.thrice)
    ) {
      sentenceTimes(r, run, r.at);
    }
  }
}

/**
 * "Rep rnd 4, working ch 3 in place of ch 2": the rows are worked again, but not as they were. What
 * changes is not understood, and must not pass for work or for a remark.
 */
function changesRows(r: Reader, run: Run): boolean {
  if (run.out.at(-1)?.kind !== 'rows-again' || run.sentence === run.out.length) return false;
  if (
    !/^(making|having|working|but|except|using|with|only|increasing|decreasing|and|changing)$/.test(
      spelled(r, r.at),
    )
  )
    return false;
  if (
    isWord(r, W.and) &&
    !/^(making|having|working|increasing|decreasing)$/.test(spelled(r, r.at + 1))
  )
    return false;
  if (isWord(r, W.with) && readYarnAhead(r)) return false;
  const start = r.at;
  while (
    kindAt(r) !== T.end &&
    kindAt(r) !== T.stop &&
    kindAt(r) !== T.semicolon &&
    kindAt(r) !== T.close
  ) {
    if (kindAt(r) === T.open && r.kind[r.at + 1] === T.number) break;
    r.at++;
  }
  putWords(r, run, start, 'unread');
  return true;
}

function readYarnAhead(r: Reader): boolean {
  const start = r.at;
  const step = readWithYarn(r);
  r.at = start;
  return step !== null;
}

/** "end with a tr in last tr", "finish with 3 sc" where no repeat stands before. */
function endsWith(r: Reader): boolean {
  if (!isWord(r, W.ending) && !isWord(r, W.end) && !isWord(r, W.fasten) && !isWord(r, W.beginning))
    return false;
  let k = 1;
  if (isWord(r, W.round, k) || isWord(r, W.row, k)) k++;
  if (isWord(r, W.the, k) && (isWord(r, W.round, k + 1) || isWord(r, W.row, k + 1))) k += 2;
  if (isWord(r, W.last, k) && isWord(r, W.repeat, k + 1)) k += 2;
  if (isWord(r, W.by, k)) k++;
  if (isWord(r, W.with, k)) k++;
  else if (!isWord(r, W.ending)) return false;
  const start = r.at;
  r.at += k;
  while (isWord(r, W.a) || isWord(r, W.the)) r.at++;
  const works = startsChain(r) || (kindAt(r) === T.number ? mayBeStitch(wordAt(r, 1)) : mayWork(r));
  if (!works) r.at = start;
  return works;
}

/** Words that only link clauses. */
const LINKS = new Set([W.and, W.then, W.now, W.a, W.the, W.of, W.or]);

function wordStep(r: Reader, run: Run): void {
  const sense = wordAt(r);
  if (readHeld(r, run) || endsWith(r)) return;
  if (changesRows(r, run)) return;
  if (isRepeatOrder(r)) return readLooseOrder(r, run);
  if (LINKS.has(sense) && !mayBeStitchAfter(r) && !isWord(r, W.note, 1)) {
    if (sense === W.and || sense === W.then || sense === W.now || sense === W.or) {
      r.at++;
      return;
    }
  }
  const step = tryOrder(r, run);
  if (step === 'done') return;
  if (step) return putStep(r, run, step);
  if (startsChain(r)) return putStep(r, run, readChain(r));
  if (mayWork(r)) {
    const work = readWork(r);
    if (work) return workStep(r, run, work);
  }
  if (placeFirst(r, run)) return;
  if (opensRemark(r)) return remarkClause(r, run);
  leftOver(r, run);
}

const mayBeStitchAfter = (r: Reader): boolean =>
  mayBeStitch(wordAt(r, 1)) &&
  !isWord(r, W.and) &&
  !isWord(r, W.then) &&
  !isWord(r, W.now) &&
  !isWord(r, W.or);

/** A clause that opens with a stitch or with "work 2 dc", "a dc". */
function mayWork(r: Reader): boolean {
  const sense = wordAt(r);
  if (mayBeStitch(sense) || sense === W.x || sense === W.v || sense === W.letter_l) return true;
  if (r.specials?.has(r.hash[r.at] ?? 0)) return true;
  return (
    sense === W.work ||
    sense === W.working ||
    sense === W.a ||
    sense === W.blo ||
    sense === W.flo ||
    sense === W.foundation ||
    sense === W.front ||
    sense === W.back ||
    sense === W.another ||
    sense === W.the ||
    sense === W.letter_p
  );
}

/** Orders told by their first word. `'done'`: put down already. */
function tryOrder(r: Reader, run: Run): Step | 'done' | null {
  const start = r.at;
  const sense = wordAt(r);
  switch (sense) {
    case W.skip:
    case W.pass:
      return readSkip(r);
    case W.turn:
      return readTurn(r, false, start);
    case W.leave:
      return readUnworked(r);
    case W.change:
      return readChange(r);
    case W.drop:
    case W.pick:
    case W.carry:
      return readDrop(r);
    case W.using:
      return readWithYarn(r);
    case W.to:
      return measured(r);
    case W.with:
      return readWithYarn(r) ?? withSide(r, run);
    case W.in:
      return readLoopOrder(r) ?? yarnIn(r);
    case W.blo:
    case W.flo:
    case W.through:
      return mayBeStitch(wordAt(r, 1)) ? null : readLoopOrder(r);
    case W.not:
    case W.dont:
    case W.without:
      return readCountsHere(r, run) ?? readNot(r) ?? readEven(r);
    case W.join:
    case W.close: {
      if (joinByStitch(r)) return 'done';
      const join = readJoin(r);
      return join ? settleTarget(join) : null;
    }
    default:
      return tryMore(r, run);
  }
}

/** "Join with ch 1 and dc in first sc": the chain and the stitch close the round by themselves. */
function joinByStitch(r: Reader): boolean {
  const k = isWord(r, W.round, 1) ? 2 : 1;
  if (!isWord(r, W.with, k) && !isWord(r, W.by, k)) return false;
  const start = r.at;
  r.at += k + 1;
  if (startsChain(r)) return true;
  r.at = start;
  return false;
}

function tryMore(r: Reader, run: Run): Step | 'done' | null {
  const start = r.at;
  const sense = wordAt(r);
  if (startsFastenOff(r)) return readFastenOff(r, false, start);
  if (sense === W.count || (sense === W.does && isWord(r, W.not, 1)) || isWord(r, W.stands))
    return readCountsHere(r, run);
  if (
    sense === W.you ||
    sense === W.have ||
    sense === W.total ||
    sense === W.there ||
    sense === W.for
  ) {
    if (plainCountAhead(r, run)) return 'done';
  }
  if (RING_WORDS.has(sense)) {
    const ring = readRing(r);
    if (ring) return ring;
  }
  if (isInvisibleJoin(r)) {
    r.at++;
    const join = readJoin(r);
    return join ? { ...join, from: fromOf(r, start) } : null;
  }
  const order = OTHER_SIDE_STARTS.has(sense) ? readOtherSide(r) : null;
  if (order) return order;
  if (sense === W.working || sense === W.work) {
    const loop = readLoopOrder(r);
    if (loop) return loop;
  }
  return tryRows(r, sense);
}

function tryRows(r: Reader, sense: number): Step | null {
  if (
    sense === W.work ||
    sense === W.chart ||
    sense === W.continue ||
    sense === W.working ||
    sense === W.like ||
    /^(follow|following)$/.test(spelled(r, r.at))
  ) {
    const chart = readChart(r);
    if (chart) return chart;
  }
  const not = sense === W.work || /^do$/.test(spelled(r, r.at)) ? readNot(r) : null;
  if (not) return not;
  if (ROWS_WORDS.has(sense) || /^(are|is)$/.test(spelled(r, r.at))) {
    const rows = readRowsAgain(r);
    if (rows) return rows;
    const spiral = readSpiral(r);
    if (spiral) return spiral;
  }
  if (
    ROWS_WORDS.has(sense) ||
    sense === W.even ||
    sense === W.no ||
    sense === W.unchanged ||
    sense === W.straight
  ) {
    const even = readEven(r);
    if (even) return even;
  }
  if (mayBeStitch(sense)) {
    const even = readEven(r);
    if (even) return even;
  }
  return BOX_WORDS.has(sense) || sense === W.open || sense === W.filled || sense === W.work
    ? readBoxes(r)
    : null;
}

const ROWS_WORDS = new Set([
  W.repeat,
  W.as,
  W.same,
  W.like,
  W.alternate,
  W.work,
  W.continue,
  W.working,
  W.to,
  W.row,
  W.round,
]);

const RING_WORDS = new Set([
  W.mr,
  W.magic,
  W.work,
  W.a,
  W.form,
  W.with,
  W.slip_knot,
  W.beginning,
  W.ring,
  W.mc,
]);

const OTHER_SIDE_STARTS = new Set([
  W.working,
  W.work,
  W.continue,
  W.on,
  W.along,
  W.opposite_side,
  W.rotate,
  W.now,
  W.in,
  W.up,
  W.opposite,
  W.turn,
]);

const isInvisibleJoin = (r: Reader): boolean =>
  /^(invisible|invisibly)$/.test(spelled(r, r.at)) && isWord(r, W.join, 1);

/** "Counts as first dc" without brackets. */
function readCountsHere(r: Reader, run: Run): 'done' | null {
  const start = r.at;
  let end = r.at;
  while (
    end - start < 24 &&
    r.kind[end] !== T.end &&
    r.kind[end] !== T.stop &&
    r.kind[end] !== T.comma &&
    r.kind[end] !== T.semicolon &&
    r.kind[end] !== T.close &&
    r.kind[end] !== T.star
  )
    end++;
  const said = readCountsAs(r, end);
  if (!said) return null;
  putCountsAs(r, run, said, start);
  return 'done';
}

/** "You should have 24 sts", "total of 28", "for a total of 28 sc". */
function plainCountAhead(r: Reader, run: Run): boolean {
  if (run.aside || !run.out.some(isMaking)) return false;
  return plainCounts(r, run);
}

/** "With RS facing": the side is told; nothing is worked. */
function withSide(r: Reader, run: Run): 'done' | null {
  const start = r.at;
  const k = isWord(r, W.the, 1) ? 2 : 1;
  const sense = wordAt(r, k);
  if (sense !== W.rs && sense !== W.ws && sense !== W.right && sense !== W.wrong) return null;
  while (!clauseEnds(r)) r.at++;
  putWords(r, run, start, 'remark');
  return 'done';
}

/** "until piece measures 20 cm" behind the work: rows go on to that length. */
function measured(r: Reader): Step | null {
  const start = r.at;
  const measure = readMeasure(r);
  if (!measure) return null;
  while (
    isWord(r, W.from) ||
    isWord(r, W.beginning) ||
    isWord(r, W.foundation) ||
    isWord(r, W.the) ||
    isWord(r, W.long)
  )
    r.at++;
  return { kind: 'even', stitch: null, rows: null, measure, from: fromOf(r, start), to: toOf(r) };
}

/** "in A 3 sc", "In MC, …". */
function yarnIn(r: Reader): Step | null {
  const step = readWithYarn(r);
  if (!step) return null;
  return toOf(r) > step.from ? step : null;
}
