/** Clauses that open with a number: "5 sc", "3 ch", "6 x (…)", "9 times", "5 sps", "24 sts". */

import { readBoxes } from './boxes.ts';
import { readBracket } from './bracket.ts';
import { readChain, startsChain } from './chain.ts';
import { countItem, isPlainCount } from './count.ts';
import { formOf, mayBeStitch } from './dictionary.ts';
import { readEven, readRowsOf } from './even.ts';
import { leftOver } from './left-over.ts';
import { isBareCount } from './letter-stitch.ts';
import { barePlainCount, isWorked, plainCounts, trailingNumber } from './plain-count.ts';
import { putStep, workStep } from './put-step.ts';
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  wordAt,
  wordsOf,
} from './reader.ts';
import { remarkClause } from './remark.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { sentenceTimes } from './sentence-repeat.ts';
import { PLAIN_TERM } from './stitch-term.ts';
import { T } from './tokens.ts';
import { toldNumber } from './told-count.ts';
import { readWork } from './work.ts';
import { plainWork } from './work-draft.ts';

export function numberStep(r: Reader, run: Run): void {
  if (onceMore(r)) return;
  const start = r.at;
  const sense = wordAt(r, 1);
  if (
    run.out.length > 0 &&
    (sense === W.times || kindAt(r, 1) === T.times || sense === W.x || sense === W.more)
  ) {
    if (
      (kindAt(r, 2) !== T.open || isBareCount(r, 2)) &&
      kindAt(r, 2) !== T.number &&
      !mayBeStitch(wordAt(r, 2)) &&
      sentenceTimes(r, run, start)
    )
      return;
  }
  // "inc (0, dec) 1 st on last row – 96 (104, 112) sts": how the row is shaped, and no count.
  if (sense === W.st && isWord(r, W.on, 2) && isWord(r, W.last, 3) && isWord(r, W.row, 4)) {
    r.at += 5;
    return putWords(r, run, start, 'unread');
  }
  if (multipliedBracket(r, run)) return;
  const rows = sense === W.row || sense === W.round || sense === W.more ? readRowsOf(r) : null;
  if (rows) return putStep(r, run, rows);
  if (liesApart(r)) return remarkClause(r, run);
  if (stitchesInRing(r, run)) return;
  // "Treble to the end of the row. 3 ch. Turn.": the turning chain, and no count.
  const turns = sense === W.ch && (clauseEnds(r, 2) || isWord(r, W.and, 2)) && isWord(r, W.turn, 3);
  if (turns) return putStep(r, run, readChain(r));
  if (barePlainCount(r, run) || countBehindRound(r, run)) return;
  if (startsChain(r)) return putStep(r, run, readChain(r));
  if (turningChain(r, run)) return;
  const boxes =
    sense === W.open || sense === W.filled || BOX_WORDS.has(sense) ? readBoxes(r) : null;
  if (boxes) return putStep(r, run, boxes);
  const work = readWork(r);
  if (work) return workStep(r, run, work);
  if (numberedRows(r, run)) return;
  if (isPlainCount(r) && plainCounts(r, run)) return;
  if (numbersPart(r)) return putNumber(r, run);
  if (bareStitches(r, run)) return;
  if (closesCount(r, run)) return;
  if (toldNumber(r, run) || startsRound(r, run)) return;
  if (trailingNumber(r, run)) return;
  leftOver(r, run);
}

/** "Fasten off. 2. Arms (make 2)": the number of the part that comes next. */
function numbersPart(r: Reader): boolean {
  const before = kindAt(r, -1);
  if (kindAt(r, 1) !== T.stop || (before !== T.stop && before !== T.close)) return false;
  if (kindAt(r, 2) === T.end) return true;
  const code = r.text.charCodeAt(r.base + fromOf(r, r.at + 2));
  const name = kindAt(r, 2) === T.word && !mayBeStitch(wordAt(r, 2)) && !isWord(r, W.ch, 2);
  return name && code >= 65 && code <= 90;
}

/** "3, inc, 6, inc (20)": a number alone among increases is one of plain stitches. */
function bareStitches(r: Reader, run: Run): boolean {
  const opens = run.out.length === 0 && run.end === 'text';
  if (!(opens || isListEnd(r, -1)) || !isListEnd(r, 1) || !shapesBeside(r)) return false;
  const n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [r.value[r.at] ?? 0] };
  const work = plainWork(PLAIN_TERM, n);
  work.n = n;
  r.at++;
  run.out.push(work);
  return true;
}

/** A comma, a bracket or a star; or the count behind. */
function isListEnd(r: Reader, k: number): boolean {
  const kind = kindAt(r, k);
  if (kind === T.comma || kind === T.star) return true;
  if (k < 0) return kind === T.open;
  return kind === T.close || (kind === T.open && kindAt(r, k + 1) === T.number);
}

/** "inc, 5", "5, dec": an increase or a decrease with nothing said of it, next in the list. */
function shapesBeside(r: Reader): boolean {
  return isShape(r, 2) || isShape(r, -2);
}

function isShape(r: Reader, k: number): boolean {
  const shape = kindAt(r, k) === T.word ? formOf(wordAt(r, k))?.shape : undefined;
  return shape === 'increase' || shape === 'together';
}

function putNumber(r: Reader, run: Run): void {
  const start = r.at++;
  putWords(r, run, start, 'remark');
}

/** "7 sc apart", "about 8 sts apart": how far eyes or legs lie from each other. */
const liesApart = (r: Reader): boolean =>
  isOneOf(r, APART, 2) && (isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1)));

const APART = wordsOf('apart');

/** "One more time make another 3 dc in the ring": only that it is worked, as before. */
function onceMore(r: Reader): boolean {
  if (r.value[r.at] !== 1 || !isWord(r, W.more, 1) || !isWord(r, W.times, 2)) return false;
  const k = kindAt(r, 3) === T.comma ? 4 : 3;
  const verb = isWord(r, W.work, k);
  const works = kindAt(r, k) === T.number && mayBeStitch(wordAt(r, k + 1));
  if (!verb && !works) return false;
  r.at += k;
  return true;
}

/** "(sc, inc) repeat around 18 sc": with nothing between, a number with which the row ends counts it. */
function countBehindRound(r: Reader, run: Run): boolean {
  const round = isWord(r, W.around, -1) || isWord(r, W.across, -1);
  const ends = kindAt(r, 2) === T.end || (kindAt(r, 2) === T.stop && kindAt(r, 3) === T.end);
  return round && ends && run.end === 'text' && run.out.length > 0 && plainCounts(r, run);
}

/** "dec * 2, 1 turning chain": the chain and the turn. */
function turningChain(r: Reader, run: Run): boolean {
  const works = run.out.length > 0 && isWord(r, W.turning, 1) && isWord(r, W.ch, 2);
  if (!works || !(clauseEnds(r, 3) || kindAt(r, 3) === T.open)) return false;
  const span = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0 };
  const n = { ...span, values: [r.value[r.at] ?? 0] };
  const turn = { from: fromOf(r, r.at + 1), to: r.to[r.at + 2] ?? 0 };
  r.at += 3;
  putStep(r, run, { kind: 'chain', n, countsAs: null, open: false, multiple: null, ...span });
  putStep(r, run, { kind: 'turn', not: false, ...turn });
  return true;
}

const BOX_WORDS: SenseSet = new SenseSet([
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
  if (!sign || kindAt(r, 2) !== T.open || isBareCount(r, 2)) return false;
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

/** "MR 7 (7)": so many stitches go into the ring, whatever they are called. */
function startsRound(r: Reader, run: Run): boolean {
  const ring = run.out.at(-1);
  if (ring?.kind !== 'ring' || run.out.length > 1 || r.kind[r.at - 1] !== T.word) return false;
  const counted = kindAt(r, 1) === T.dash && kindAt(r, 2) === T.number;
  if (!clauseEnds(r, 1) && kindAt(r, 1) !== T.open && !counted) return false;
  const n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [r.value[r.at] ?? 0] };
  const work = plainWork(PLAIN_TERM, n);
  work.n = n;
  run.out.push(work);
  r.at++;
  return true;
}

/** "Sc in each st. 24 sts)": the bracket that opened the count was lost, as is told elsewhere. */
function closesCount(r: Reader, run: Run): boolean {
  if (run.end !== 'text' || !run.out.some(isWorked) || kindAt(r, -1) !== T.stop) return false;
  const start = r.at;
  const count = countItem(r);
  const stated = count?.unit === 'stitch' || count?.unit === 'stem';
  const lone = kindAt(r) === T.close && (r.partner[r.at] ?? -1) < 0;
  if (!count || !stated || !lone) {
    r.at = start;
    return false;
  }
  r.at++;
  r.counts.push({ count, from: run.out.length });
  return true;
}

/** "Magic loop with 6 stitches", "magic ring of 8 sts": whatever they are called, they go into it. */
function stitchesInRing(r: Reader, run: Run): boolean {
  const [ring] = run.out;
  if (ring?.kind !== 'ring' || run.out.length > 1 || !isWord(r, W.st, 1)) return false;
  if (!isWord(r, W.with, -1) && !isWord(r, W.of, -1) && !isWord(r, W.in, -1)) return false;
  const counted = kindAt(r, 2) === T.open || kindAt(r, 2) === T.equals;
  if (!clauseEnds(r, 2) && !counted) return false;
  const n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [r.value[r.at] ?? 0] };
  const work = plainWork(PLAIN_TERM, n);
  work.n = n;
  run.out.push(work);
  r.at += 2;
  return true;
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
