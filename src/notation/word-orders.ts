/**
 * Orders by the word that opens them. A word may open several: they are tried in the order of this
 * table, and each leaves the reader alone when it is not meant.
 */

import { readAlternating } from './alternating.ts';
import { readBoxes, readSlippedBoxes } from './boxes.ts';
import { putCountsAs } from './bracket.ts';
import { goesOnShaping, goesOnWith, onAround } from './carry-on.ts';
import { readSomeChains, startsChain } from './chain.ts';
import { readChangedNumber } from './changed-numbers.ts';
import { readChart } from './chart-order.ts';
import { readCountsAs } from './counts-as.ts';
import { mayBeStitch, SENSES, type SenseId, senseOfWord } from './dictionary.ts';
import { readDropped } from './dropped.ts';
import { readEven, readRowsOf, unchangedBehind } from './even.ts';
import { readHeld } from './held.ts';
import { ringBySlip } from './join.ts';
import {
  addsYarn,
  invisibleJoin,
  joinByStitch,
  joined,
  joinedAgain,
  ringAhead,
} from './joining.ts';
import { layersAhead, readLayers } from './layers.ts';
import { readLoopOrder, readLoopsOfRow } from './loop-orders.ts';
import { readMeasure } from './measure.ts';
import { readNot, readRing, readSpiral, readTurn, readUnworked } from './orders.ts';
import { readOtherSide } from './other-side.ts';
import { plainCountAhead } from './plain-count.ts';
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  passWords,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { readRowsAgain } from './rows-again.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { readSeparated } from './separated.ts';
import { readSkips } from './skips.ts';
import { standingLoops } from './standing-loops.ts';
import { fromHook, startsIn } from './starting-at.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';
import { rotated, toTurn, turnsPiece } from './turning.ts';
import { readWork } from './work.ts';
import { readChange, readDrop, readFastenOff, readWithYarn, startsFastenOff } from './yarn.ts';

/** A step, `'done'` where it was put down already, or `null` where the order is not meant. */
type Tried = Step | 'done' | null;
type Try = (r: Reader, run: Run) => Tried;

/** By sense; a list without holes, for it is asked at every word. */
const TRIES: (Try[] | null)[] = Array.from({ length: SENSES }, () => null);

function opens(attempt: Try, ...senses: SenseId[]): void {
  for (const sense of senses) {
    const list = TRIES[sense] ?? [];
    list.push(attempt);
    TRIES[sense] = list;
  }
}

/** The order that opens with the word here, if any. */
export function readOrder(r: Reader, run: Run): Tried {
  const sense = wordAt(r);
  const tries = sense < 0 ? null : TRIES[sense];
  if (!tries) return null;
  for (const attempt of tries) {
    const step = attempt(r, run);
    if (step) return step;
  }
  return null;
}

/** Whether any order may open with this word. */
export const opensOrder = (sense: SenseId): boolean => sense >= 0 && TRIES[sense] !== null;

const done = (is: boolean): Tried => (is ? 'done' : null);

opens((r, run) => done(readHeld(r, run)), W.hold, W.leave);
opens((r, run) => done(endsMarked(r, run) || endsWith(r)), W.ending, W.end, W.fasten, W.beginning);
opens((r) => startsIn(r), W.beginning, W.working);
opens((r, run) => fromHook(r, run), W.from);
opens(
  (r, run) => {
    const skips = readSkips(r);
    if (skips) run.out.push(...skips.slice(0, -1));
    return skips?.at(-1) ?? null;
  },
  W.skip,
  W.pass,
);
opens((r, run) => turnsPiece(r, run), W.turn, W.rotate);
opens((r) => readTurn(r, false, r.at), W.turn);
opens((r) => readUnworked(r), W.leave);
opens((r) => readChange(r), W.change);
opens((r, run) => done(readDropped(r, run)), W.drop);
opens((r) => readDrop(r), W.drop, W.pick, W.carry);
opens((r, run) => done(readSeparated(r, run)), W.with);
opens((r) => readRing(r), W.using);
opens((r) => readWithYarn(r), W.using, W.with);
opens((r) => goesOnWith(r), W.continue);
opens((r, run) => goesOnShaping(r, run), W.continue);
opens((r, run) => (isWord(r, W.count, 1) ? readCountsHere(r, run) : null), W.to);
opens((r) => toTurn(r), W.to);
// "Rejoin yarn to opposite side of chain"
opens((r) => (spelled(r, r.at - 1) === 'yarn' ? readOtherSide(r) : null), W.to);
opens((r, run) => measured(r, run), W.to);
opens((r) => orLength(r), W.or);
opens((r, run) => withSide(r, run), W.with);
opens((r) => layers(r), W.through, W.working);
opens((r) => (mayBeStitch(wordAt(r, 1)) ? null : readLoopOrder(r)), W.blo, W.flo, W.through);
opens((r) => readLoopOrder(r), W.in, W.for);
opens((r) => yarnIn(r), W.in);
opens((r, run) => readCountsHere(r, run), W.not, W.dont, W.without, W.count, W.stands);
opens((r, run) => (isWord(r, W.not, 1) ? readCountsHere(r, run) : null), W.does);
opens(
  (r, run) => (isWord(r, W.ch, 1) && isWord(r, W.count, 2) ? readCountsHere(r, run) : null),
  W.turning,
);
// "DNT" is short for "do not turn".
opens((r) => readTurn(r, true, r.at), W.dnt);
opens((r) => readNot(r), W.not, W.dont, W.without);
opens((r) => done(joinByStitch(r)), W.join, W.close);
opens((r) => joined(r), W.join, W.close);
// "Ch 5 and loop to make a ring"
opens((r) => (isWord(r, W.to, 1) && ringAhead(r) ? joined(r) : null), W.loop);
opens((r) => joinedAgain(r), W.re);
opens((r, run) => onAround(r, run), W.around, W.across);
opens(
  (r) => (startsFastenOff(r) ? readFastenOff(r, false, r.at) : null),
  W.fasten,
  W.fo,
  W.end,
  W.letter_f,
);
opens((r, run) => done(rowMakes(r, run)), W.these, W.the);
opens((r, run) => done(plainCountAhead(r, run)), W.you, W.have, W.total, W.there, W.for, W.form);
opens((r) => ringBySlip(r), W.form, W.work);
opens(
  (r) => readRing(r),
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
);
opens((r) => (isWord(r, W.knot, 1) ? readRing(r) : null), senseOfWord('sl'), senseOfWord('slip'));
opens((r) => invisibleJoin(r), senseOfWord('invisible'));
opens((r) => readLoopsOfRow(r), W.working, W.work, W.in);
opens((r) => backAlong(r), W.working, W.work);
opens((r) => readSomeChains(r), W.work);
opens((r) => aboutLength(r), W.about);
opens((r, run) => countsOff(r, run), W.count);
opens(
  (r, run) => otherSide(r, run),
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
);
opens((r) => rotated(r), W.rotate);
opens((r) => readLoopOrder(r), W.working, W.work);
opens((r) => readChart(r), W.work, W.chart, W.continue, W.working, W.like, W.next);
opens((r, run) => done(standingLoops(r, run)), W.work);
opens((r) => readNot(r), W.work);
opens((r) => readRowsOf(r), W.work);
const ROWS = [
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
  W.r,
  W.is,
];
opens((r, run) => done(readAlternating(r, run)), W.alternate);
opens((r) => readRowsAgain(r), ...ROWS, W.next);
opens((r) => readSpiral(r), ...ROWS);
opens(
  (r, run) => unchangedBehind(r, run.out) ?? readEven(r),
  ...ROWS,
  W.even,
  W.no,
  W.unchanged,
  W.straight,
  W.without,
);
opens(
  (r) => readBoxes(r),
  W.om,
  W.sm,
  W.sp,
  W.block,
  W.mesh,
  W.box,
  W.lacet,
  W.bar,
  W.open,
  W.filled,
  W.work,
  W.add,
);
opens((r) => addsYarn(r), W.add);
opens((r) => readSlippedBoxes(r), senseOfWord('sl'), senseOfWord('slip'), senseOfWord('ss'));

/** "This round makes 16 sc.": a count in a sentence of its own. */
function rowMakes(r: Reader, run: Run): boolean {
  const k = isWord(r, W.round, 1) || isWord(r, W.row, 1) ? 2 : 1;
  if (kindAt(r, k + 1) !== T.number) return false;
  if (!/^(?:makes|gives|has|equals)$/.test(spelled(r, r.at + k))) return false;
  const start = r.at;
  r.at += k + 1;
  if (plainCountAhead(r, run)) return true;
  r.at = start;
  return false;
}

/** "Count 5 sts from the start and join yarn": where it is joined is found by counting; it is joined. */
function countsOff(r: Reader, run: Run): 'done' | null {
  if (kindAt(r, 1) !== T.number) return null;
  let k = 2;
  while (k < 12 && kindAt(r, k) === T.word && !isWord(r, W.and, k)) k++;
  if (!isWord(r, W.and, k) || !isWord(r, W.join, k + 1)) return null;
  const start = r.at;
  r.at += k;
  putWords(r, run, start, 'remark');
  return 'done';
}

/** "Chain long enough to go around your head. Approx 18 in.": told beside it, in a sentence of its own. */
function aboutLength(r: Reader): Step | null {
  const before = kindAt(r, -1);
  if ((before !== T.stop && before !== T.comma) || kindAt(r, 1) !== T.number) return null;
  const unit = spelled(r, r.at + 2);
  if (!/^(?:in|inch(?:es)?|cm|mm|ins|metres?|yards?|["”″])$/.test(unit)) return null;
  let k = 3;
  while (kindAt(r, k) === T.word && /^(?:long|wide|or|so)$/.test(spelled(r, r.at + k))) k++;
  if (!clauseEnds(r, k)) return null;
  const start = r.at;
  r.at += k;
  return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
}

/** "Working back along the chain, sc in 2nd ch": the way that any row goes. */
function backAlong(r: Reader): Step | null {
  if (!isWord(r, W.back, 1) || kindAt(r, 2) !== T.word) return null;
  const k = isWord(r, W.the, 3) || isWord(r, W.a, 3) ? 4 : 3;
  const way = /^(?:along|down|across|over|up|on)$/.test(spelled(r, r.at + 2));
  if (!way || !isWord(r, W.ch, k) || !clauseEnds(r, k + 1)) return null;
  const start = r.at;
  r.at += k + 1;
  return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
}

/** "Through both layers, sc in each st": the sentence is one seam. */
function layers(r: Reader): Step | null {
  const start = r.at;
  const k = isWord(r, W.working) ? 1 : 0;
  if (!layersAhead(r, k)) return null;
  const step = readLayers(r, start, null);
  if (kindAt(r) !== T.comma) return step;
  r.at++;
  const work = readWork(r);
  if (work) return { ...step, work, to: toOf(r) };
  r.at--;
  return step;
}

/** "sc in each of 11 ch on the other side": the words of the same clause tell first what is done there. */
function otherSide(r: Reader, run: Run): Tried {
  const start = r.at;
  const step = readOtherSide(r);
  const last = run.out.at(-1);
  const behind =
    r.kind[start - 1] === T.word && r.kind[start - 2] !== T.end && isWord(r, W.on, start - r.at);
  // "…, on the other side: 9 sc, inc": what the colon leads to is work, and no count.
  const opensClause = r.kind[start - 1] === T.comma || r.kind[start - 1] === T.stop;
  if (step && opensClause && kindAt(r) === T.colon && kindAt(r, 1) === T.number) r.at++;
  if (!step || !behind || last?.kind !== 'work' || last.place?.nouns[0]?.kind !== 'chain')
    return step;
  run.out.splice(-1, 1, step, last);
  return 'done';
}

/**
 * "Rep rnd 4, working ch 3 in place of ch 2": the rows are worked again, but not as they were. What
 * changes is not understood, and must not pass for work or for a remark.
 */
export function changesRows(r: Reader, run: Run): boolean {
  const last = run.out.at(-1);
  if (last?.kind !== 'rows-again' || run.sentence === run.out.length) return false;
  const change = readChangedNumber(r);
  if (change) {
    const changes = [...last.changes, change];
    run.out[run.out.length - 1] = { ...last, changes, to: toOf(r) };
    return true;
  }
  if (
    !/^(making|having|working|but|except|using|with|only|increasing|decreasing|and|changing|however|instead|replacing)$/.test(
      spelled(r, r.at),
    )
  )
    return false;
  if (
    isWord(r, W.and) &&
    !/^(making|having|working|increasing|decreasing)$/.test(spelled(r, r.at + 1))
  )
    return false;
  if ((isWord(r, W.with) || isWord(r, W.using)) && readYarnAhead(r)) return false;
  const start = r.at;
  if (inOtherLoops(r)) {
    putWords(r, run, start, 'remark');
    return true;
  }
  while (
    kindAt(r) !== T.end &&
    kindAt(r) !== T.stop &&
    kindAt(r) !== T.semicolon &&
    kindAt(r) !== T.close
  ) {
    const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
    if (close > 0 && r.kind[r.at + 1] === T.number && r.kind[close + 1] !== T.word) break;
    r.at = Math.max(r.at, close) + 1;
  }
  putWords(r, run, start, 'unread');
  return true;
}

/** "but in back loops only", "except work into back loops": as many stitches in the same places. */
function inOtherLoops(r: Reader): boolean {
  const start = r.at;
  while (!clauseEnds(r) && isOneOf(r, BUT)) r.at++;
  if (r.at > start && readLoopOrder(r) !== null && (clauseEnds(r) || kindAt(r) === T.open))
    return true;
  r.at = start;
  return false;
}

const BUT = wordsOf('but except only this time');

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
  const the = isWord(r, W.the, k) || isWord(r, W.these, k);
  if (the && (isWord(r, W.round, k + 1) || isWord(r, W.row, k + 1))) k += 2;
  if (isWord(r, W.last, k) && isWord(r, W.repeat, k + 1)) k += 2;
  const by = isWord(r, W.by, k);
  if (by) k++;
  if (isWord(r, W.with, k)) k++;
  else if (!isWord(r, W.ending) && !(by && isWord(r, W.ch, k))) return false;
  const start = r.at;
  r.at += k;
  while (isWord(r, W.a) || isWord(r, W.the)) r.at++;
  const works = startsChain(r) || (kindAt(r) === T.number ? mayBeStitch(wordAt(r, 1)) : mayWork(r));
  if (!works) r.at = start;
  return works;
}

/** "sc across, ending with a sc in the marked st", "… in the turning chain": where the last of them goes. */
function endsMarked(r: Reader, run: Run): boolean {
  const all = run.out.at(-1);
  if (all?.kind !== 'work' || (all.until ?? all.place?.until)?.kind !== 'end') return false;
  const start = r.at;
  const work = endsWith(r) ? readWork(r) : null;
  const kind = work?.place?.nouns[0]?.kind;
  const one = !work?.n || work.n.values.every((n) => n === 1);
  if (
    one &&
    work?.stitch.stem === all.stitch.stem &&
    (kind === 'marker' || kind === 'start-chain')
  ) {
    putWords(r, run, start, 'remark');
    return true;
  }
  r.at = start;
  return false;
}

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
    r.kind[end] !== T.star &&
    !worksBehind(r, end)
  )
    end++;
  const said = readCountsAs(r, end);
  if (!said) return null;
  putCountsAs(r, run, said, start);
  return 'done';
}

/** "…to count as the first dc and work 15 more dc into the ring": there the chain is told of. */
const worksBehind = (r: Reader, token: number): boolean =>
  r.kind[token] === T.word &&
  r.value[token] === W.and &&
  (r.value[token + 1] === W.work ||
    (r.value[token + 1] === W.afterwards && r.value[token + 2] === W.work));

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
function measured(r: Reader, run: Run): Step | null {
  const start = r.at;
  const measure = readMeasure(r);
  if (!measure) return null;
  // "ch 64 loosely to measure about 50 cm": how long the chain comes out.
  if (run.out.at(-1)?.kind === 'chain')
    return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  passWords(r, BEHIND_MEASURE);
  return { ...everyRow(), measure, from: fromOf(r, start), to: toOf(r) };
}

const everyRow = () => ({ kind: 'even', stitch: null, until: null, rows: null }) as const;

/** "for 3 rounds or up to desired length": the maker may choose. */
function orLength(r: Reader): Step | null {
  const start = r.at++;
  if (isWord(r, W.up)) r.at++;
  if (passShortOf(r) || readMeasure(r))
    return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  // "ch 54 or desired width of shawl"
  if (isWord(r, W.the)) r.at++;
  if (isWord(r, W.desired)) {
    while (kindAt(r) === T.word) r.at++;
    if (clauseEnds(r)) return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  }
  r.at = start;
  return null;
}

/** "or 0.25" less than desired foot length", "1 cm before the tip of the toe": how far short of a length. */
function passShortOf(r: Reader): boolean {
  if (kindAt(r) !== T.number || !isUnit(r, 1) || !isOneOf(r, SHORT_OF, 2)) return false;
  while (!clauseEnds(r)) r.at++;
  return true;
}

const isUnit = (r: Reader, k: number): boolean =>
  isWord(r, W.inch, k) || isWord(r, W.cm, k) || isWord(r, W.mm, k) || isWord(r, W.in, k);

const SHORT_OF = wordsOf('less shorter short before more longer');

const BEHIND_MEASURE: SenseSet = new SenseSet([W.from, W.beginning, W.foundation, W.the, W.long]);

/** "in A 3 sc", "In MC, …". */
function yarnIn(r: Reader): Step | null {
  const step = readWithYarn(r);
  if (!step) return null;
  return toOf(r) > step.from ? step : null;
}

/** Words that open work where no stitch does. */
const WORKERS: SenseSet = new SenseSet([
  W.work,
  W.working,
  W.evenly,
  W.a,
  W.blo,
  W.flo,
  W.foundation,
  W.front,
  W.back,
  W.another,
  W.the,
  W.letter_p,
]);

/** A clause that opens with a stitch or with "work 2 dc", "a dc". */
export function mayWork(r: Reader): boolean {
  const sense = wordAt(r);
  if (sense === W.working && (isWord(r, W.last, 1) || isWord(r, W.last, 2))) return false;
  if (mayBeStitch(sense) || sense === W.x || sense === W.v || sense === W.letter_l) return true;
  if (r.specials?.has(r.hash[r.at] ?? 0)) return true;
  return (
    WORKERS.has(sense) ||
    // "hdc in next st and twice in the second"
    (isWord(r, W.and, -1) && (sense === W.twice || sense === W.once || sense === W.thrice))
  );
}
