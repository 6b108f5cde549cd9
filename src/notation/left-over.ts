/** Words that begin no step: talk, where they are such as rows have none of, or unread. */

import { mayBeStitch, PROSE, type SenseId } from './dictionary.ts';
import { hintOf, isHinted } from './hints.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  onNewLine,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { rowEndWords } from './row-ends.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';

/** Words that begin no step: up to the clause's end or to the next word that does. */
export function leftOver(r: Reader, run: Run): void {
  const start = r.at;
  if (passHeading(r, run)) return putWords(r, run, start, 'remark');
  if (isHinted(r, SIDES) && (passSideName(r) || passWay(r)))
    return putWords(r, run, start, 'remark');
  let known = isKnown(r);
  r.at++;
  // "12 sc on the second leg = 24 sc": the count is none of the words before its sign.
  const counts = (): boolean => kindAt(r) === T.equals && kindAt(r, 1) === T.number;
  while (!clauseEnds(r) && !beginsStep(r) && !counts()) {
    known &&= isKnown(r);
    r.at++;
  }
  const alone = r.at === start + 1 && kindAt(r, -1) !== T.word && kindAt(r, -1) !== T.number;
  if (alone && kindAt(r, -1) !== T.ordinal) {
    // A stray sign is a slip of typing and says nothing.
    return;
  }
  const aside =
    (known && !tellsPlace(r, run, start)) ||
    run.aside ||
    isTitle(r, run, start) ||
    isProseSentence(r, run, start) ||
    leadsByDoing(r, start) ||
    isLead(r, run, start) ||
    isCry(r, run, start) ||
    isInSequence(r, start);
  putWords(r, run, start, aside ? 'remark' : 'unread');
}

/**
 * "Row 1: Establishing the Pattern" above the row's own lines: what it is called. No stitch, number or order
 * stands in it, and it has no stop at its end.
 */
function passHeading(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || run.end !== 'text') return false;
  for (let k = 0; k < 8 && kindAt(r, k) === T.word; k++) {
    if (k > 0 && onNewLine(r, r.at + k)) {
      r.at += k;
      return true;
    }
    if (mayBeStitch(wordAt(r, k)) || ORDERS.has(wordAt(r, k))) return false;
  }
  return false;
}

/** "First long side - turn …", "Corner: (sc, ch 2, sc)": what the work behind it goes along. */
function passSideName(r: Reader): boolean {
  let k = 0;
  while (k < 4 && (kindAt(r, k) === T.ordinal || isOneOf(r, WHICH, k))) k++;
  if (!isWord(r, W.side, k) && !isWord(r, W.corner, k)) return false;
  k++;
  if (kindAt(r, k) === T.number) k++;
  const dash = kindAt(r, k) === T.dash && kindAt(r, k + 1) !== T.number;
  if (!dash && kindAt(r, k) !== T.colon) return false;
  r.at += dash ? k + 1 : k;
  return true;
}

/** "Now work along the left edge:", "Rotate to work down the side of the piece": where the work behind it goes. */
function passWay(r: Reader): boolean {
  let way = false;
  let side = false;
  let k = 0;
  for (; k < 14 && !clauseEnds(r, k); k++) {
    if (kindAt(r, k) === T.ordinal) continue;
    if (kindAt(r, k) !== T.word || mayBeStitch(wordAt(r, k)) || isWord(r, W.ch, k)) return false;
    way ||= WAYS.has(wordAt(r, k)) || isOneOf(r, DOWN, k);
    side ||= way && (isWord(r, W.side, k) || rowEndWords(r, k) > 0);
  }
  if (!side || !(isWord(r, W.work) || isWord(r, W.working) || isOneOf(r, MOVES))) return false;
  if (kindAt(r, k) === T.end) return false;
  r.at += k;
  return true;
}

const SIDES = hintOf([W.side, W.corner, W.row_end, W.end]);
const WHICH = wordsOf(
  'first second third fourth next last other opposite long short top bottom left right',
);
const WAYS: SenseSet = new SenseSet([W.along, W.up, W.across]);
const DOWN = wordsOf('down');
const MOVES = wordsOf('rotate pivot go continue move now turn');

/**
 * A sentence of its own behind the work, of several words and none of them notation: talk. One word,
 * or one with a number or a stitch in it, might be work.
 */
function isProseSentence(r: Reader, run: Run, start: number): boolean {
  if (!beginsSentence(r, run, start) || r.at - start < 3) return false;
  const ends = kindAt(r) === T.stop || kindAt(r) === T.end;
  if (!ends && kindAt(r) !== T.comma) return false;
  let strange = 0;
  let talk = 0;
  for (let i = start; i < r.at; i++) {
    const sense = r.word[i] ?? 0;
    if (r.kind[i] !== T.word ? !tellsRow(r, i) : mayBeStitch(sense)) return false;
    if (ORDERS.has(sense) && !isRowWord(sense)) return false;
    if (sense === 0) strange++;
    else if (TALK.has(sense)) talk++;
  }
  const least = r.kind[start - 1] === T.stop ? 1 : 2;
  if (talk < least || (talk + strange) * 3 < r.at - start) return false;
  if (!ends) run.aside = true;
  return true;
}

/** "Sc in next picot loop", "sc in next dc space": what stands right behind a place and names one changes it. */
function tellsPlace(r: Reader, run: Run, start: number): boolean {
  const last = run.out.at(-1);
  const behind = last?.kind === 'work' && last.place !== null && last.to === r.to[start - 1];
  if (!behind) return false;
  for (let i = start; i < r.at; i++) if (PLACES.has(r.word[i] ?? 0)) return true;
  return false;
}

/** Nouns of places. */
const PLACES: SenseSet = new SenseSet([
  W.sp,
  W.loop,
  W.arch,
  W.hole,
  W.gap,
  W.st,
  W.corner,
  W.centre,
  W.group,
]);

/** "Work directly into next round by doing 2 sc in …": the work stands behind. */
const leadsByDoing = (r: Reader, start: number): boolean =>
  r.at - start > 2 &&
  kindAt(r) === T.number &&
  spelled(r, r.at - 2) === 'by' &&
  /^(?:doing|making|working|putting)$/.test(spelled(r, r.at - 1));

/** Behind a full stop, or behind the count that closes the row. */
const beginsSentence = (r: Reader, run: Run, start: number): boolean =>
  (r.kind[start - 1] === T.stop && run.out.length > 0 && run.sentence === run.out.length) ||
  (r.kind[start - 1] === T.close && r.counts.at(-1)?.from === run.out.length) ||
  r.kind[start - 1] === T.star ||
  (run.out.length === 0 && run.end === 'text');

/** Words of sentences; rows have none of them, however they are misspelt. */
const TALK: ReadonlySet<SenseId> = new Set([
  PROSE,
  W.you,
  W.is,
  W.have,
  W.measures,
  W.there,
  W.so,
  W.like,
]);

const isRowWord = (sense: SenseId): boolean =>
  sense === W.row || sense === W.round || sense === W.work;

/** "round 13", "20 cm": a number that counts no stitches. */
function tellsRow(r: Reader, token: number): boolean {
  if (r.kind[token] !== T.number) return false;
  const before = r.word[token - 1] ?? 0;
  const after = r.word[token + 1] ?? 0;
  if (before === W.row || before === W.round) return true;
  return after === W.row || after === W.round || LENGTHS.has(after);
}

const LENGTHS: SenseSet = new SenseSet([W.cm, W.mm, W.inch, W.metre]);

/** "Motif. Ch 6, join": the name of the piece before its first row, up to three words and no number. */
function isTitle(r: Reader, run: Run, start: number): boolean {
  if (namesItsRow(r, run, start)) return true;
  if (run.out.length > 0 || start > FIRST || r.at > FIRST + 3) return false;
  if (kindAt(r) !== T.stop && kindAt(r) !== T.colon) return false;
  for (let i = FIRST; i < r.at; i++) {
    const sense = r.value[i] ?? 0;
    if (r.kind[i] !== T.word || mayBeStitch(sense) || ORDERS.has(sense)) return false;
  }
  return true;
}

/** "Ta-da!", "Voila!": a word or two that cry out behind the work. */
function isCry(r: Reader, run: Run, start: number): boolean {
  if (kindAt(r) !== T.stop || r.at - start > 3 || !beginsSentence(r, run, start)) return false;
  if (run.out.length === 0 || spelled(r, r.at)[0] !== '!') return false;
  for (let i = start; i < r.at; i++)
    if ((r.kind[i] !== T.word && r.kind[i] !== T.dash) || (r.word[i] ?? 0) > 0) return false;
  return true;
}

/** "in this colour order: A, B, C, D": one letter among others of yarns. */
function isInSequence(r: Reader, start: number): boolean {
  if (r.at !== start + 1 || !isYarnLetter(r, start)) return false;
  if (r.kind[start - 1] === T.comma && isYarnLetter(r, start - 2)) return true;
  return r.kind[start + 1] === T.comma && isYarnLetter(r, start + 2);
}

function isYarnLetter(r: Reader, token: number): boolean {
  if (r.kind[token] !== T.word || r.to[token]! - r.from[token]! !== 1) return false;
  const code = r.text.charCodeAt(r.base + r.from[token]!);
  return code >= 65 && code <= 90;
}

/** "Turning the second corner: in last ch …": what the clause behind the colon is for. */
function isLead(r: Reader, run: Run, start: number): boolean {
  if (kindAt(r) !== T.colon || r.at - start > 5 || r.at - start < 2) return false;
  if (r.kind[start - 1] !== T.stop && start !== FIRST && run.out.length > 0) return false;
  for (let i = start; i < r.at; i++) {
    if (r.kind[i] !== T.word && r.kind[i] !== T.ordinal) return false;
    if (mayBeStitch(r.word[i]!) || ORDERS.has(r.word[i]!)) return false;
  }
  return true;
}

/** "Row 6: Beading row. *2 dc in next st …": what the row is, in words that order nothing. */
function namesItsRow(r: Reader, run: Run, start: number): boolean {
  const last = r.at - 1;
  if (run.out.length > 0 || last === start || last > start + 2 || kindAt(r) !== T.stop)
    return false;
  if (r.word[last] !== W.row && r.word[last] !== W.round) return false;
  for (let i = start; i < last; i++)
    if (r.kind[i] !== T.word || mayBeStitch(r.word[i]!) || ORDERS.has(r.word[i]!)) return false;
  return true;
}

function isKnown(r: Reader): boolean {
  const kind = kindAt(r);
  if (kind !== T.word) return kind !== T.number && kind !== T.ordinal;
  const sense = r.value[r.at] ?? 0;
  return sense === PROSE || (sense > 0 && !mayBeStitch(sense) && !ORDERS.has(sense));
}

/** Words of orders: left over, they mean that an order was not understood. */
const ORDERS: SenseSet = new SenseSet([
  W.skip,
  W.ch,
  W.repeat,
  W.times,
  W.each,
  W.every,
  W.next,
  W.tch,
  W.chart,
  W.box,
  W.mesh,
  W.omit,
  W.twice,
  W.once,
  W.thrice,
  W.more,
  W.x,
  W.v,
  W.fasten,
  W.join,
  W.yo,
  W.row,
  W.round,
  W.work,
]);

function beginsStep(r: Reader): boolean {
  const kind = kindAt(r);
  if (kind === T.open || kind === T.star) return true;
  if (kind === T.number) {
    const sense = wordAt(r, 1);
    return sense === W.ch || mayBeStitch(sense);
  }
  const sense = wordAt(r);
  if (sense <= 0) return false;
  if (sense === W.ch) return kindAt(r, 1) === T.number || kindAt(r, 1) === T.dash;
  return (
    mayBeStitch(sense) ||
    sense === W.skip ||
    sense === W.turn ||
    sense === W.fasten ||
    sense === W.repeat ||
    (sense === W.join && !isWord(r, W.of, -1))
  );
}
