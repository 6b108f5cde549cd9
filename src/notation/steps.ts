/** One step after the other: what begins here is told by its first word or sign. */

import { fillsCorners, inNextRound, namesTheRound, passWorking, youWork } from './before-work.ts';
import { readBracket } from './bracket.ts';
import { readChain, startsChain } from './chain.ts';
import {
  chainsEnough,
  dependsOnBeneath,
  nameWithDash,
  purpose,
  saying,
  tellsChain,
  yarnAlone,
  yarnByCode,
} from './clauses-of-talk.ts';
import { formOf, mayBeStitch, PROSE, TOGETHER } from './dictionary.ts';
import { shapesEnds, shapingOfRows } from './end-shaping.ts';
import { KNIT, readEven } from './even.ts';
import { readGoOn } from './go-on.ts';
import { goesOnSo } from './go-on-so.ts';
import { placeAlone, placeFirst } from './groups.ts';
import { leftOver } from './left-over.ts';
import { startsMultiple } from './multiple.ts';
import { numberStep } from './number-step.ts';
import { otherCraft } from './other-craft.ts';
import { asLongAs, otherBeginning, passClause, passSentence } from './other-way.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { angleCount, countBehindTurn, countOrSign } from './plain-count.ts';
import { putStep, workStep } from './put-step.ts';
import {
  clauseEnds,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  type RunEnd,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { opensRemark, passSameTime, remarkClause } from './remark.ts';
import { readFromStar, readLooseOrder, readStar } from './repeat.ts';
import { isRepeatOrder } from './repeat-order.ts';
import { readRowsAgain, readThisAgain } from './rows-again.ts';
import { endRun, endSentence, newRun, putWords, type Run } from './run.ts';
import { runEnds } from './run-ends.ts';
import { forgetScan } from './scan.ts';
import { seams } from './seam.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { sentenceTimes } from './sentence-repeat.ts';
import { readSeparated } from './separated.ts';
import { specialHere } from './stitch.ts';
import { timesInAll } from './times-in-all.ts';
import { T } from './tokens.ts';
import { toldCount } from './told-count.ts';
import { doubles, toldShaping } from './told-shaping.ts';
import type { Step, StitchTerm, WorkStep } from './tree.ts';
import {
  asFollows,
  CHAINED,
  castsOn,
  putsStitches,
  SIMPLY,
  startsChainAhead,
  tellsIncrease,
  verbAlone,
} from './verbs.ts';
import { changesRows, mayWork, opensOrder, readOrder } from './word-orders.ts';
import { readWork } from './work.ts';

/** Reads steps until the run ends; the reader then stands on what ended it. */
export function readRun(r: Reader, end: RunEnd): Step[] {
  if (end === 'list') return readList(r);
  const run = newRun(end);
  while (kindAt(r) !== T.end && !runEnds(r, run)) oneStep(r, run);
  return endRun(run);
}

/** Reads steps of the text as long as what was read so far leaves a question open. */
export function readWhile(r: Reader, open: (out: readonly Step[]) => boolean): Step[] {
  const run = newRun('text');
  while (kindAt(r) !== T.end && open(run.out)) oneStep(r, run);
  return endRun(run);
}

function oneStep(r: Reader, run: Run): void {
  const before = r.at;
  stepHere(r, run);
  if (r.at !== before) return;
  r.at++;
  putWords(r, run, before, 'unread');
}

/**
 * What is named behind a place, "in next sp 2 dc, ch 2, 2 dc": stitches and chains up to the first
 * step that has a place of its own; a chain before that step leads on to it.
 */
function readList(r: Reader): Step[] {
  const run = newRun('list');
  let good = r.at;
  // A step with a place takes those before it into its group: what was good is kept apart.
  let kept: readonly Step[] = [];
  let seen: Step | undefined;
  while (kindAt(r) !== T.end && !runEnds(r, run)) {
    const before = r.at;
    stepHere(r, run);
    if (r.at === before) break;
    const last = run.out.at(-1);
    if (last === seen) continue;
    seen = last;
    if (isPlaceless(last) || endsPetal(r, last) || isOfPetal(r, run)) {
      good = r.at;
      kept = run.out.slice();
    } else if (last?.kind !== 'chain' || run.out.length > kept.length + 1) break;
  }
  run.out.length = 0;
  run.out.push(...kept);
  r.at = good;
  return endRun(run);
}

/** "in next st, dc, ch 2, sl st. Ch 2, …": the petal ends where its sentence does, and work goes on. */
const endsPetal = (r: Reader, step: Step | undefined): boolean =>
  step?.kind === 'work' &&
  step.stitch.stem === 'ss' &&
  !step.place &&
  !step.until &&
  kindAt(r) === T.stop &&
  (isWord(r, W.ch, 1) || kindAt(r, 1) === T.star || isWord(r, W.in, 1) || isWord(r, W.repeat, 1));

/** "in each st: sl st, ch 2, 2 dc, ch 2, sl st.": a petal that begins and ends on the same stitch. */
function isOfPetal(r: Reader, { out }: Run): boolean {
  const last = out.at(-1);
  if (last?.kind !== 'work' || last.stitch.stem !== 'ss' || last.place || last.until) return false;
  if (out.length === 1) return kindAt(r) === T.comma && isWord(r, W.ch, 1);
  const [first] = out;
  return first?.kind === 'work' && first.stitch.stem === 'ss' && clauseEnds(r);
}

const isPlaceless = (step: Step | undefined): boolean =>
  (step?.kind === 'work' && !step.place && !step.until && step.stitch.stem !== 'ss') ||
  (step?.kind === 'repeat' && step.times.kind === 'times');

/** What is attached to a toy's face: "Attach the eyes". */
const FACE = new Set(['eyes', 'eye', 'safety', 'nose', 'snout', 'muzzle', 'buttons', 'beads']);

/** What a finished piece is joined by: "Join edges of the band with sl st". */
const EDGES = wordsOf('edges sides seams');

/** "Next, ch 1 and …": then, where a sentence begins. */
const linksAsNext = (r: Reader, run: Run): boolean =>
  kindAt(r, 1) === T.comma &&
  (run.out.length === 0 || kindAt(r, -1) === T.stop) &&
  (isWord(r, W.ch, 2) || isWord(r, W.work, 2) || isWord(r, W.skip, 2) || mayBeStitch(wordAt(r, 2)));

/** Words that only link clauses. */
const LINKS: SenseSet = new SenseSet([W.and, W.afterwards, W.now, W.or]);

const isFirst = ({ out }: Run): boolean =>
  out.every(({ kind }) => kind === 'remark' || kind === 'yarn');

const COMPLETE = wordsOf('complete');

/** "…; complete a total of 12 times": the sentence before. */
const timesTold = (r: Reader): boolean => {
  if (!isOneOf(r, COMPLETE)) return false;
  const k = isWord(r, W.a, 1) ? 2 : 1;
  const total = isWord(r, W.total, k) && isWord(r, W.of, k + 1) ? k + 2 : 1;
  return kindAt(r, total) === T.number && isWord(r, W.times, total + 1);
};

/** "Repeat this for 7 more rows": a sentence of its own, in the row or below it. */
function thisAgain(r: Reader, run: Run): boolean {
  const rows = run.end === 'text' ? readThisAgain(r) : null;
  if (rows) run.out.push(rows);
  return rows !== null;
}

/** A word that names a stitch and nothing else, by far the most frequent. */
function stitchWord(r: Reader, run: Run, shape: StitchTerm['shape']): void {
  if (shape === 'increase' && tellsIncrease(r)) {
    r.at += 2;
    return;
  }
  if (doubles(r, run)) return;
  const shapes = shape === 'increase' || shape === 'together';
  if (shapes && run.out.length === 0 && namesShaping(r, run)) return;
  if (shapes && (shapesEnds(r, run) || toldShaping(r, run))) return;
  // "Hdc2tog at each end"
  if (isWord(r, W.at, 3) && kindAt(r, 1) === T.number && shapesEnds(r, run)) return;
  if (stitchStep(r, run)) return;
  if (opensRemark(r)) return remarkClause(r, run);
  leftOver(r, run);
}

function wordStep(r: Reader, run: Run): void {
  const sense = wordAt(r);
  // "… across. Ending dc.", which the pattern defines.
  if (sense === W.ending && r.specials?.has(r.hash[r.at] ?? 0) && stitchStep(r, run)) return;
  const form = opensOrder(sense) ? null : formOf(sense);
  if (form) return stitchWord(r, run, form.shape);
  // "Ending dc" may be a stitch of the designer's own.
  if (r.specials !== null && opensOrder(sense) && specialHere(r) && stitchStep(r, run)) return;
  if (toldCount(r, run) || dependsOnBeneath(r, run)) return;
  if (goesOnSo(r, run) || purpose(r, run) || nameWithDash(r, run)) return;
  if (sense === W.working && passWorking(r, run)) return;
  const says = sense === W.each || sense === W.you || sense === W.round || sense === W.row;
  if (says && saying(r, run)) return;
  if (run.out.length === 0 && yarnAlone(r, run)) return;
  if (sense <= 0 && r.known.yarns.size > 0 && yarnByCode(r, run)) return;
  if ((sense <= 0 || sense === W.place || sense === W.add || sense === PROSE) && putsStitches(r)) {
    r.at++;
    return;
  }
  const knits = isOneOf(r, KNIT) ? readEven(r) : null;
  if (knits) return putStep(r, run, knits);
  if (sense === 0 && castsOn(r)) {
    r.at += 2;
    return;
  }
  if (asFollows(r, run)) return;
  if (sense <= 0 || sense === PROSE) {
    if (isOneOf(r, SIMPLY) && (startsChainAhead(r) || mayBeStitch(wordAt(r, 1)))) {
      r.at++;
      return;
    }
  }
  // "Next *5 dc in next st, …": then
  if (sense === W.each && isWord(r, W.round, 1) && kindAt(r, 2) === T.number) {
    const start = r.at;
    r.at += 2;
    return putWords(r, run, start, 'remark');
  }
  if (sense === W.join && isWord(r, W.the, 1) && FACE.has(spelled(r, r.at + 2)))
    return remarkClause(r, run);
  if (sense === W.join && isOneOf(r, EDGES, isWord(r, W.the, 1) ? 2 : 1))
    return remarkClause(r, run);
  if (sense === W.with && fillsCorners(r, run)) {
    r.at++;
    return;
  }
  // "I chained 33": what somebody did is what is to be done.
  if (sense === W.you && isOneOf(r, CHAINED, 1) && kindAt(r, 2) === T.number) {
    r.at++;
    return;
  }
  // "next 2 sc together": the stitches that are worked as one.
  const next = sense === W.next && kindAt(r, 1) === T.number && wordAt(r, 3) === TOGETHER;
  if (next && mayBeStitch(wordAt(r, 2))) {
    r.at++;
    return;
  }
  // "3 sc in next sc–center sc of corner": where that lies.
  if (sense === W.centre && kindAt(r, -1) === T.dash && run.out.length > 0)
    return remarkClause(r, run);
  if (sense === W.next && (kindAt(r, 1) === T.star || linksAsNext(r, run))) {
    r.at++;
    return;
  }
  if (verbAlone(r, run)) return;
  if (!opensOrder(sense) && mayBeStitch(sense)) {
    if (stitchStep(r, run)) return;
  } else {
    if (changesRows(r, run) || thisAgain(r, run) || readGoOn(r, run)) return;
    if (isRepeatOrder(r)) return readLooseOrder(r, run);
    if (sense === W.from && readFromStar(r, run)) return;
    const step = readOrder(r, run);
    if (step === 'done') return;
    if (step) return putStep(r, run, step);
    if (LINKS.has(sense)) {
      if (sense === W.or && otherBeginning(r, run)) return passSentence(r, run);
      if (sense === W.or && asLongAs(r, run)) return passClause(r, run);
      r.at++;
      return;
    }
    if (tellsChain(r) || chainsEnough(r, run)) return remarkClause(r, run);
    if (startsChain(r) || (startsMultiple(r) && isFirst(run))) return putStep(r, run, readChain(r));
    if (mayWork(r) && stitchStep(r, run)) return;
  }
  if ((sense <= 0 || sense === PROSE) && otherCraft(r, run)) return;
  if ((sense <= 0 || sense === W.each) && readSeparated(r, run)) return;
  if (run.out.length > 0 && timesTold(r) && sentenceTimes(r, run, r.at)) return;
  if (placeFirst(r, run) || passSameTime(r)) return;
  if (inNextRound(r, run)) return;
  const any = startsAnywhere(r, run);
  if (any) return putStep(r, run, any);
  if (opensRemark(r)) return youWork(r, run) ? undefined : remarkClause(r, run);
  leftOver(r, run);
}

/** "Increase - 2 hdc in first sc and in each sc across": what the row does, before its work. */
function namesShaping(r: Reader, run: Run): boolean {
  const sign = kindAt(r, 1) === T.colon || (kindAt(r, 1) === T.dash && !isGlued(r));
  const works = kindAt(r, 2) === T.number ? wordAt(r, 3) : wordAt(r, 2);
  if (!sign || run.end !== 'text' || !mayBeStitch(works)) return false;
  const start = r.at++;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

/** "In any ch-2 sp, ch 3, …": the yarn is taken up there. */
function startsAnywhere(r: Reader, run: Run): Step | null {
  if (run.out.length > 0 || !isWord(r, W.in) || !isWord(r, W.any, 1)) return null;
  const start = r.at;
  const place = readPlaceAfterPreposition(r);
  if (place && (kindAt(r) === T.comma || kindAt(r) === T.colon)) {
    const span = { from: place.from, to: place.to };
    return { kind: 'join', place, with: null, ring: false, yarn: 'yarn', ...span };
  }
  r.at = start;
  return null;
}

/**
 * "Sc around. Sc in first sc of this round.": the round's start moves on by a stitch that lies on its
 * first, so that a change of colour shows less.
 */
function shiftsStart(r: Reader, run: Run, { place, from, n }: WorkStep): boolean {
  if (place?.pick !== 'first' || n !== null || run.out.length === 0) return false;
  const around = run.out.some(
    (step) => step.kind === 'repeat' || (step.kind === 'work' && (step.until ?? step.place?.until)),
  );
  if (!around) return false;
  const words = r.text.slice(r.base + from, r.base + from + 60);
  return OF_ROUND.test(words);
}

const OF_ROUND =
  /^sc in (?:the )?first s(?:c|t|titch) of (?:this |the )?(?:round|rnd)(?: \d{1,3})?[.,;]?(?:\s|$)/i;

/** A stitch with its places; "sc even for 5 rows" is an order to go on. */
function stitchStep(r: Reader, run: Run): boolean {
  if (run.out.length === 0 && namesTheRound(r)) {
    remarkClause(r, run);
    return true;
  }
  if (seams(r, run)) return true;
  const start = r.at;
  const work = readWork(r);
  const next = wordAt(r);
  if (!work || next === W.even || next === W.straight || next === W.for) {
    const end = r.at;
    r.at = start;
    const even = readEven(r);
    if (even) {
      putStep(r, run, even);
      return true;
    }
    r.at = end;
  }
  if (!work) return false;
  if (shiftsStart(r, run, work)) {
    r.at = start;
    while (!clauseEnds(r)) r.at++;
    putWords(r, run, start, 'remark');
    return true;
  }
  workStep(r, run, work);
  return true;
}

function stepHere(r: Reader, run: Run): void {
  switch (kindAt(r)) {
    case T.word:
      return wordStep(r, run);
    case T.number:
      return countBehindTurn(r, run) || timesInAll(r, run) ? undefined : numberStep(r, run);
    case T.open:
      if (sizedWork(r, run) || shapingOfRows(r, run) || timesInAll(r, run)) return;
      return readBracket(r, run);
    case T.star:
      return readStar(r, run);
    case T.pipe:
      return readPipe(r, run);
    case T.comma:
      r.at++;
      // "dc2tog, twice."
      if ((isWord(r, W.twice) || isWord(r, W.thrice)) && clauseEnds(r, 1) && run.out.length > 0)
        sentenceTimes(r, run, r.at);
      return;
    case T.semicolon:
    case T.slash:
    case T.plus:
      r.at++;
      return;
    case T.other:
      if (!angleCount(r, run)) r.at++;
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

/** "(30, 36, 42) fsc", "(20, 24) sc in next ch": the numbers of all sizes stand in a bracket. */
function sizedWork(r: Reader, run: Run): boolean {
  if (r.known.sizes < 2 || kindAt(r, 1) !== T.number) return false;
  const behind = (r.partner[r.at] ?? -1) + 1;
  if (behind !== r.at + 2 * r.known.sizes + 1 || !mayBeStitch(r.word[behind]!)) return false;
  const work = readWork(r);
  if (work) workStep(r, run, work);
  return work !== null;
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
  forgetScan();
  r.kind[start] = T.open;
  r.kind[close] = T.close;
  r.partner[start] = close;
  r.partner[close] = start;
  readBracket(r, run);
}

function ordinalStep(r: Reader, run: Run): void {
  const rows = readRowsAgain(r);
  if (rows) return putStep(r, run, rows);
  if (placeAlone(r, run)) return;
  leftOver(r, run);
}
