/** One step after the other: what begins here is told by its first word or sign. */

import { fillsCorners, inNextRound, namesTheRound, passWorking, willWork } from './before-work.ts';
import { readBracket } from './bracket.ts';
import { readChain, startsChain } from './chain.ts';
import { formOf, mayBeStitch, PROSE, phrasesOf, TOGETHER } from './dictionary.ts';
import { KNIT, readEven } from './even.ts';
import { readGoOn } from './go-on.ts';
import { placeFirst, workPlaceFirst } from './groups.ts';
import { numberStep } from './number-step.ts';
import { otherCraft } from './other-craft.ts';
import { readPlaceAfterPreposition } from './place.ts';
import { angleCount, countBehindTurn, countOrSign } from './plain-count.ts';
import { putStep, workStep } from './put-step.ts';
import {
  clauseEnds,
  fromOf,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  type RunEnd,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { leftOver, opensRemark, passSameTime, remarkClause } from './remark.ts';
import {
  holdsWork,
  isRepeatOrder,
  readFromStar,
  readLooseOrder,
  readStar,
  sentenceTimes,
} from './repeat.ts';
import { readRowsAgain, readThisAgain } from './rows-again.ts';
import { endRun, endSentence, newRun, putWords, type Run } from './run.ts';
import { forgetScan } from './scan.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { readSeparated } from './separated.ts';
import { STAR, starRole } from './star.ts';
import { FIRST, T } from './tokens.ts';
import { toldCount } from './told-count.ts';
import { doubles, toldShaping } from './told-shaping.ts';
import type { Step, WorkStep } from './tree.ts';
import { changesRows, mayWork, opensOrder, readOrder } from './word-orders.ts';
import { readWork } from './work.ts';
import { isColour } from './yarn-name.ts';

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
    if (isPlaceless(last) || endsPetal(r, last)) {
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

const isPlaceless = (step: Step | undefined): boolean =>
  (step?.kind === 'work' && !step.place && !step.until && step.stitch.stem !== 'ss') ||
  (step?.kind === 'repeat' && step.times.kind === 'times');

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
      if (kind === T.number) return timesAlone(r, run);
      return kind === T.word && isRepeatOrder(r) && run.out.length > 0;
    case 'list':
      return (
        kind === T.stop ||
        kind === T.close ||
        kind === T.semicolon ||
        kind === T.star ||
        (run.out.length > 0 && (kind === T.open || (kind === T.word && isRepeatOrder(r))))
      );
    case 'ending':
      return endingEnds(r, run);
  }
}

/** "*3 tr in next sp, no gaps skipped. 11 times.": a number with a sentence of its own is the star's. */
const timesAlone = (r: Reader, run: Run): boolean =>
  isWord(r, W.times, 1) &&
  r.kind[r.at - 1] === T.stop &&
  run.out.length > 0 &&
  run.out.slice(run.sentence).every(({ kind }) => kind === 'remark');

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

/** "8 sc in magic ring OR ch 2, 8 sc in 2nd ch from hook": the same beginning, told another way. */
const otherBeginning = (r: Reader, run: Run): boolean =>
  isWord(r, W.ch, 1) &&
  run.out.some(
    (step) =>
      step.kind === 'work' && (step.stitch.foundation || step.place?.nouns[0]?.kind === 'ring'),
  );

/** All behind this word, up to the end of its clause. */
function passClause(r: Reader, run: Run): void {
  const start = ++r.at;
  while (!clauseEnds(r)) r.at++;
  putWords(r, run, start, 'remark');
}

/** "Ch 42, or enough to measure 28 cm", "ch 30 or as long as you wish": the number stands before. */
const asLongAs = (r: Reader, run: Run): boolean =>
  run.out.at(-1)?.kind === 'chain' && isOneOf(r, LONG_ENOUGH, 1);

const LONG_ENOUGH = wordsOf('enough as any until desired whatever however more length long');

/** All up to the full stop, or the count. */
function passSentence(r: Reader, run: Run): void {
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop && kindAt(r) !== T.open) r.at++;
  putWords(r, run, start, 'remark');
}

/** "Work in 12 dc", "work in a sc": the stitches are worked, and not into anything. */
const worksIn = (r: Reader): boolean =>
  isWord(r, W.in, 1) &&
  (kindAt(r, 2) === T.number || isWord(r, W.a, 2)) &&
  mayBeStitch(wordAt(r, 3));

/** What is attached to a toy's face: "Attach the eyes". */
const FACE = new Set(['eyes', 'eye', 'safety', 'nose', 'snout', 'muzzle', 'buttons', 'beads']);

/** Words that only link clauses. */
const LINKS: SenseSet = new SenseSet([W.and, W.afterwards, W.now, W.or]);

/** "Place 2 dc in first sp", "add another 5 dc", "knit 20 sc": the verb says no more than "work". */
function putsStitches(r: Reader): boolean {
  const sense = wordAt(r);
  const verb = sense === W.place || sense === W.add || isOneOf(r, KNIT);
  const k = isWord(r, W.another, 1) ? 2 : 1;
  return verb && kindAt(r, k) === T.number && mayBeStitch(wordAt(r, k + 1));
}

const opensWork = (r: Reader, k: number): boolean =>
  kindAt(r, k) === T.star || kindAt(r, k) === T.open;

/** "Simply ch 1 and turn", "just sc in each st" */
const SIMPLY = wordsOf('simply just');
const startsChainAhead = (r: Reader): boolean =>
  isWord(r, W.ch, 1) || (kindAt(r, 1) === T.number && isWord(r, W.ch, 2));

const CHAINED = wordsOf('chained');
const AGAIN = wordsOf('again another');
const CAST = wordsOf('cast');

/** "Cast on 4 ch", "cast on 10 dc": a translator's word for making them. */
const castsOn = (r: Reader): boolean =>
  isOneOf(r, CAST) &&
  isWord(r, W.on, 1) &&
  (isWord(r, W.ch, 2) ||
    (kindAt(r, 2) === T.number && (isWord(r, W.ch, 3) || mayBeStitch(wordAt(r, 3)))));

/** "Increase by making 2 hdc in each st": what is told behind is the increase. */
const tellsIncrease = (r: Reader): boolean =>
  isWord(r, W.by, 1) &&
  (isWord(r, W.work, 2) || isWord(r, W.working, 2)) &&
  kindAt(r, 3) === T.number;

/** "…; complete a total of 12 times": the sentence before. */
const timesTold = (r: Reader): boolean => {
  if (spelled(r, r.at) !== 'complete') return false;
  const k = isWord(r, W.a, 1) ? 2 : 1;
  const total = isWord(r, W.total, k) && isWord(r, W.of, k + 1) ? k + 2 : 1;
  return kindAt(r, total) === T.number && isWord(r, W.times, total + 1);
};

/** "Mine are ch 60": the chain is told of, not made. */
const tellsChain = (r: Reader): boolean =>
  isWord(r, W.is, -1) && (isWord(r, W.ch) || kindAt(r) === T.number);

/** "(work) as follows": what is to be done stands behind. */
function asFollows(r: Reader): boolean {
  const k = isWord(r, W.work) || isWord(r, W.working) || isWord(r, W.continue) ? 1 : 0;
  if (!isWord(r, W.as, k) || kindAt(r, k + 1) !== T.word) return false;
  if (!/^follows?$/.test(spelled(r, r.at + k + 1))) return false;
  r.at += k + 2;
  return true;
}

/**
 * "Each block consists of ch 3 and 3 dc.", "You may add 1 increase (2 sc in same st) here.": a clause
 * that says what something is, or what may be done, does nothing.
 */
function saying(r: Reader, run: Run): boolean {
  const before = r.kind[r.at - 1];
  if (before !== T.stop && before !== T.semicolon) return false;
  // "Rnd 6 will be on the outside when the cuff is turned down."
  const ofRow = (isWord(r, W.round) || isWord(r, W.row)) && kindAt(r, 1) === T.number;
  if (ofRow) {
    if (!/^(will|should|may)$/.test(spelled(r, r.at + 2))) return false;
  } else if (
    !(isWord(r, W.each)
      ? explains(r)
      : isWord(r, W.you) && /^(may|can|could|might)$/.test(spelled(r, r.at + 1)))
  )
    return false;
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop) r.at++;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Rows 4-5: CC2, as rows 2-3": the colour, with nothing said of it. */
function yarnAlone(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  if (sense > 0 && sense !== PROSE && !isOneOf(r, YARN_CODES)) return false;
  const word = spelled(r, r.at);
  const k = kindAt(r, 1) === T.number && (isGlued(r) || isWord(r, W.color)) ? 2 : 1;
  const coded = k === 2 ? /^(?:c|cc|mc|colou?r|yarn)$/.test(word) : /^(?:cc|mc)$/.test(word);
  if (!coded && !(k === 1 && isColour(word))) return false;
  const sign = kindAt(r, k);
  if (sign !== T.comma && sign !== T.colon && sign !== T.dash && sign !== T.stop) return false;
  const start = r.at;
  r.at += sign === T.dash ? k + 1 : k;
  putWords(r, run, start, 'remark');
  return true;
}

const YARN_CODES = wordsOf('c cc mc color colour yarn');

/** "each block consists of", "each pair counts as". */
function explains(r: Reader): boolean {
  let k = 1;
  while (k < 5 && kindAt(r, k) === T.word && !EXPLAINS.test(spelled(r, r.at + k))) k++;
  return k > 1 && EXPLAINS.test(spelled(r, r.at + k));
}

const EXPLAINS = /^(is|are|consists?|equals?|counts?|will|means?|contains?|has|should)$/;

/** "Rounds 6-9 create the toe of the slipper. 30 sc around.": what they are for, before the work. */
function purpose(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at === FIRST || !isOneOf(r, PURPOSE)) return false;
  let k = 1;
  for (; kindAt(r, k) === T.word || kindAt(r, k) === T.slash; k++)
    if (mayBeStitch(wordAt(r, k))) return false;
  if (k < 3 || kindAt(r, k) !== T.stop) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  return true;
}

/** "Base - With 6 mm hook ch 51": the part's name before its first row, parted by a dash. */
function nameWithDash(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at !== FIRST || run.end !== 'text') return false;
  let k = 0;
  while (k < 3 && kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k)) && !isWord(r, W.ch, k)) k++;
  if (k > 0 && kindAt(r, k) === T.colon) return nameWithColon(r, run, k);
  if (k === 0 || kindAt(r, k) !== T.dash) return false;
  // "Doily—Starting at center": a long dash parts words without blanks; a hyphen joins them.
  const isLong = /[–—]/.test(r.text[r.base + fromOf(r, r.at + k)] ?? '');
  if (!isLong && (isGlued(r, k) || isGlued(r, k - 1))) return false;
  const code = r.text.charCodeAt(r.base + (r.from[r.at] ?? 0));
  if (code < 65 || code > 90) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

/** "Finish: sl st in next 3 sts", "Hanging loop: ch 6, …": what is worked, by its name. */
function nameWithColon(r: Reader, run: Run, k: number): boolean {
  const code = r.text.charCodeAt(r.base + fromOf(r, r.at));
  const at = kindAt(r, k + 1) === T.number ? k + 2 : k + 1;
  const works = mayBeStitch(wordAt(r, at)) || isWord(r, W.ch, at);
  if (code < 65 || code > 90 || !works) return false;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  r.at++;
  return true;
}

const IF = wordsOf('if');
const PURPOSE = wordsOf('create creates form forms shape shapes starts begins completes makes');

/** "If next dc was a FPdc, work a BPdc around it": what is worked hangs on what is there. */
function dependsOnBeneath(r: Reader, run: Run): boolean {
  if (!isOneOf(r, IF) || isWord(r, W.you, 1)) return false;
  const start = r.at;
  let stitches = 0;
  let end = start + 1;
  for (; r.kind[end] !== T.end && r.kind[end] !== T.stop && r.kind[end] !== T.close; end++)
    if (r.kind[end] === T.word && mayBeStitch(r.word[end]!) && r.word[end] !== W.st) stitches++;
  if (stitches < 2) return false;
  r.at = end;
  const span = { from: fromOf(r, start), to: toOf(r) };
  run.out.push({ kind: 'not-worked', what: 'stitches that hang on those beneath', ...span });
  return true;
}

/** "Work in 12 dc", "make *6 dc …", "working into the ch-3 sps, *…*": what the verb leads to is all. */
function verbAlone(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  const work = sense === W.work;
  // "Work again 3 dc in ring"
  if (work && isOneOf(r, AGAIN, 1) && kindAt(r, 2) === T.number && mayBeStitch(wordAt(r, 3))) {
    r.at += 2;
    return true;
  }
  if (work && worksIn(r)) {
    r.at += 2;
    return true;
  }
  if ((work || sense === W.working) && workPlaceFirst(r, run)) return true;
  const k = isWord(r, W.a, 1) ? 2 : 1;
  // "make * 6 dc in next sp; rep from *", "work (3 dc, ch 1, 3 dc) in corner"
  const opens = work
    ? opensWork(r, k)
    : sense === W.repeat &&
      (holdsWork(r, 1) || (kindAt(r, 1) === T.star && starRole(r, r.at + 1) === STAR.open));
  if (opens) r.at += k;
  return opens;
}

/** "Repeat this for 7 more rows": a sentence of its own, in the row or below it. */
function thisAgain(r: Reader, run: Run): boolean {
  const rows = run.end === 'text' ? readThisAgain(r) : null;
  if (rows) run.out.push(rows);
  return rows !== null;
}

function wordStep(r: Reader, run: Run): void {
  const sense = wordAt(r);
  if (toldCount(r, run) || dependsOnBeneath(r, run)) return;
  if (purpose(r, run) || nameWithDash(r, run)) return;
  if (sense === W.working && passWorking(r, run)) return;
  const says = sense === W.each || sense === W.you || sense === W.round || sense === W.row;
  if (says && saying(r, run)) return;
  if (run.out.length === 0 && yarnAlone(r, run)) return;
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
  if (formOf(sense)?.shape === 'increase' && tellsIncrease(r)) {
    r.at += 2;
    return;
  }
  if (doubles(r, run)) return;
  const shape = formOf(sense)?.shape;
  if ((shape === 'increase' || shape === 'together') && toldShaping(r, run)) return;
  if (asFollows(r)) return;
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
  if (sense === W.with && fillsCorners(r, run)) {
    r.at++;
    return;
  }
  if (sense === W.you && willWork(r, run)) return;
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
  if (sense === W.next && kindAt(r, 1) === T.star) {
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
    if (tellsChain(r)) return remarkClause(r, run);
    if (startsChain(r)) return putStep(r, run, readChain(r));
    if (mayWork(r) && stitchStep(r, run)) return;
  }
  if ((sense <= 0 || sense === PROSE) && otherCraft(r, run)) return;
  if ((sense <= 0 || sense === W.each) && readSeparated(r, run)) return;
  if (run.out.length > 0 && timesTold(r) && sentenceTimes(r, run, r.at)) return;
  if (placeFirst(r, run) || passSameTime(r)) return;
  if (inNextRound(r, run)) return;
  const any = startsAnywhere(r, run);
  if (any) return putStep(r, run, any);
  if (opensRemark(r)) return remarkClause(r, run);
  leftOver(r, run);
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
      return countBehindTurn(r, run) ? undefined : numberStep(r, run);
    case T.open:
      return sizedWork(r, run) ? undefined : readBracket(r, run);
    case T.star:
      return readStar(r, run);
    case T.pipe:
      return readPipe(r, run);
    case T.comma:
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
  leftOver(r, run);
}
