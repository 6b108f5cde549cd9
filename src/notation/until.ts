/** How far: "around", "across", "to end of row", "to last 3 sts", "until 2 sts remain", "to corner". */
import { namesSideByLength } from './along-side.ts';
import { formOf, PROSE, type SenseId } from './dictionary.ts';
import { frontOf } from './loops.ts';
import { readNoun } from './noun.ts';
import { readNumbers } from './numbers.ts';
import { placeWith } from './place-draft.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  onNewLine,
  passWords,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { namesRowEnds } from './row-ends.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Noun, Place, Until } from './tree.ts';

/** Reads a place without its preposition; handed in by `place.ts`. */
export type PlaceReader = (r: Reader) => Place | null;

export function readUntil(r: Reader, place: PlaceReader): Until | null {
  const start = r.at;
  // "all around", "all the way across", "rest of the way around"
  if (eatWord(r, W.all)) {
    eatThe(r);
    if (isWay(r)) r.at++;
  } else if (isWord(r, W.even)) r.at++;
  if (isWord(r, W.for) && isWord(r, W.the, 1) && isWord(r, W.remaining, 2)) r.at += 3;
  const until = untilHere(r, start, place);
  if (!until) r.at = start;
  return until;
}

const BUT = wordsOf('but except');
// "All the away around" is a slip of typing.
const WAY = wordsOf('way away');
const AFTERWARDS = wordsOf('afterwards afterward thereafter');

const isWay = (r: Reader): boolean => isOneOf(r, WAY);

const isAround = (sense: SenseId): boolean =>
  sense === W.around ||
  sense === W.across ||
  sense === W.round ||
  sense === W.along ||
  sense === W.throughout;

function untilHere(r: Reader, start: number, place: PlaceReader): Until | null {
  const sense = wordAt(r);
  if (isAround(sense)) return aroundHere(r, start, place);
  if (sense === W.back && acrossChain(r)) return end(r, start);
  if (sense === W.to || (sense === W.up && isWord(r, W.to, 1))) {
    if (sense === W.up) r.at++;
    r.at++;
    return toHere(r, start, place);
  }
  // "rep from * the length of the row"
  if (sense === W.the || sense === W.long) {
    const k = sense === W.the ? 1 : 0;
    if (!isOneOf(r, LENGTH, k) || !isWord(r, W.of, k + 1)) return null;
    const row = isWord(r, W.the, k + 2) ? k + 3 : k + 2;
    if (!isWord(r, W.row, row) && !isWord(r, W.ch, row)) return null;
    r.at += row + 1;
    return end(r, start);
  }
  // "sc in every st afterwards"
  if (sense <= 0 && isOneOf(r, AFTERWARDS) && clauseEnds(r, 1)) {
    r.at++;
    return end(r, start);
  }
  // "all but the last 4 sts", "except last 2 sts"
  if (sense >= 0 && isOneOf(r, BUT)) {
    r.at++;
    eatWord(r, W.for);
    return lastHere(r, start);
  }
  const circle = sense === W.in ? circleWords(r) : 0;
  if (circle > 0) {
    r.at += circle;
    return end(r, start);
  }
  // "sc in each st in the round"
  const the = isWord(r, W.the, 1) && isWord(r, W.st, -1) ? 1 : 0;
  const row = isWord(r, W.round, 1 + the) || isWord(r, W.row, 1 + the);
  if (sense === W.in && row && (clauseEnds(r, 2 + the) || kindAt(r, 2 + the) === T.open)) {
    r.at += 2 + the;
    return end(r, start);
  }
  return null;
}

/**
 * "sc in each st in a circle": the way round, as other languages say it; but "6 sc in circle" begins it. How
 * many words, or 0.
 */
export function circleWords(r: Reader): number {
  const k = isWord(r, W.a, 1) || isWord(r, W.the, 1) ? 2 : 1;
  if (!isOneOf(r, CIRCLE, k) || !(clauseEnds(r, k + 1) || kindAt(r, k + 1) === T.open)) return 0;
  const isPlaced = isWord(r, W.each, -2) || isWord(r, W.every, -2) || kindAt(r, -2) === T.number;
  return isPlaced || (k === 2 && isWord(r, W.a, 1) && kindAt(r, -1) === T.close) ? k + 1 : 0;
}

/** "around to last 3 sts" stops short; "across the row", "along the row" do not. */
function aroundHere(r: Reader, start: number, place: PlaceReader): Until | null {
  if (acrossChain(r)) return end(r, start);
  if (namesPlace(r) || namesSideByLength(r)) return null;
  const along = isWord(r, W.along);
  r.at++;
  const after = r.at;
  eatWord(r, W.all);
  eatThe(r);
  if (eatWord(r, W.remaining) && isWord(r, W.of)) {
    r.at++;
    eatThe(r);
  }
  if (isWord(r, W.row) || isWord(r, W.round)) r.at++;
  else if (isSide(r) && !along) r.at++;
  else if (along && !clauseEnds(r)) return null;
  else if (!aroundPiece(r)) r.at = after;
  const close = r.at;
  if (isWord(r, W.to) || isWord(r, W.up)) {
    const further = readUntil(r, place);
    // "around until you reach the marked stitch": where the round began.
    if (further?.kind === 'place' && MARKED.test(textOf(r, further))) return end(r, start);
    if (further) return { ...further, from: fromOf(r, start) };
    r.at = close;
  }
  return end(r, start);
}

const MARKED = /\bmark/i;

const textOf = (r: Reader, { from, to }: Until): string => r.text.slice(r.base + from, r.base + to);

const LENGTH = wordsOf('length');
const CIRCLE = wordsOf('circle circles');

/**
 * "rep from * across ch", "across length of ch – 22 sts", "sc across the foundation chain", "9 sc back down
 * the ch": to its end.
 */
function acrossChain(r: Reader): boolean {
  const way = isWord(r, W.back) ? 1 : 0;
  if (!isWord(r, W.across, way) && !isWord(r, W.along, way)) return false;
  let k = isWord(r, W.the, way + 1) ? way + 2 : way + 1;
  const whole = isOneOf(r, LENGTH, k) && isWord(r, W.of, k + 1);
  if (whole) k += isWord(r, W.the, k + 2) ? 3 : 2;
  if (isWord(r, W.foundation, k) || isWord(r, W.beginning, k)) k++;
  const named = isWord(r, W.ch, k) || (whole && (isWord(r, W.row, k) || isWord(r, W.round, k)));
  const sign = kindAt(r, k + 1);
  const counted = sign === T.open || (whole && (sign === T.dash || sign === T.equals));
  if (!named || !(clauseEnds(r, k + 1) || counted)) return false;
  r.at += k + 1;
  return true;
}

/** "around the sole of the shoe", "around entire blanket": the piece by its name, to the clause's end. */
function aroundPiece(r: Reader): boolean {
  let k = 0;
  let named = false;
  for (; k < 6 && !clauseEnds(r, k) && kindAt(r, k) !== T.open && !isWord(r, W.evenly, k); k++) {
    // "around all 4 sides"
    if (kindAt(r, k) === T.number && /^(sides|edges)$/.test(spelled(r, r.at + k + 1))) {
      named = true;
      continue;
    }
    if (kindAt(r, k) !== T.word) return false;
    const sense = wordAt(r, k);
    if (sense !== 0 && sense !== PROSE && !PIECE_WORDS.has(sense)) return false;
    if (sense === PROSE && /^(and|but|working|with|using)$/.test(spelled(r, r.at + k)))
      return false;
    named ||= sense === 0 || sense === PROSE;
  }
  if (!named || k === 6) return false;
  r.at += k;
  return true;
}

const PIECE_WORDS: SenseSet = new SenseSet([
  W.end,
  W.the,
  W.of,
  W.all,
  W.side,
  W.part,
  W.a,
  W.top,
  W.base,
]);

const isSide = (r: Reader): boolean => isWord(r, W.side) || isWord(r, W.base) || isWord(r, W.ring);

/** "Sc across ch 1, turn", "sc around ch 1.": a comma is missing before the chain of the next row. */
function isNextChain(r: Reader, k: number): boolean {
  if (k !== 1 || kindAt(r, 2) !== T.number || valueAt(r, 2) > 4) return false;
  if (isWord(r, W.around) && kindAt(r, -2) === T.number) return false;
  return clauseEnds(r, 3) || isWord(r, W.turn, 3) || isWord(r, W.join, 3) || isWord(r, W.and, 3);
}

/** "sc around" above "24 stitches": the count has a line of its own, and is no place. */
const countBelow = (r: Reader): boolean =>
  (clauseEnds(r, isOneOf(r, CROCHETS, 3) ? 4 : 3) || isWord(r, W.total, 3) || isWord(r, W.in, 3)) &&
  onNewLine(r, r.at + 1);

const CROCHETS = wordsOf('crochet crochets');

/** "around next dc", "around the post", "around each": a place, not the way round. */
export function namesPlace(r: Reader): boolean {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  // "FPdc around pop": a stitch of the designer's own.
  if (kindAt(r, k) === T.word && r.specials?.has(r.hash[r.at + k] ?? 0)) return true;
  const sense = wordAt(r, k);
  if (kindAt(r, k) === T.ordinal) return true;
  if (kindAt(r, k) === T.number) {
    // "across 20 (22, 24) sts"
    const sizes = kindAt(r, k + 1) === T.open && r.known.sizes > 1 ? r.partner[r.at + k + 1]! : -1;
    if (sizes > 0) return isWord(r, W.st, sizes + 1 - r.at);
    return (k === 2 || !countBelow(r)) && wordAt(r, k + 1) > 0 && !isWord(r, W.times, k + 1);
  }
  return (
    namesRowEnds(r, 1) ||
    isPreviousRows(r, k) ||
    frontOf(r, k) ||
    PICKS.has(sense) ||
    isWord(r, W.post, k + 1) ||
    (isWord(r, W.bar, k + 1) && isWord(r, W.of, k + 2)) ||
    // "across remaining 18 sc"
    (sense === W.remaining && kindAt(r, k + 1) === T.number) ||
    // "around st 2 rows below"
    (sense === W.st && kindAt(r, k + 1) === T.number && isWord(r, W.row, k + 2)) ||
    (sense === W.ch && !isNextChain(r, k)) ||
    isStitch(sense) ||
    (k === 2 && sense === W.join) ||
    (sense === W.join &&
      wordAt(r, k + 1) > 0 &&
      r.kind[r.at + k + 1] === T.word &&
      !isWord(r, W.with, k + 1) &&
      !isWord(r, W.to, k + 1) &&
      !isWord(r, W.in, k + 1))
  );
}

/** Words that pick a place, and so tell "around" it from "around" to the end. */
const PICKS: SenseSet = new SenseSet([
  ...[W.next, W.same, W.each, W.every, W.any, W.both, W.last],
  ...[W.post, W.skipped, W.chsp, W.beginning],
]);

/** "around previous round's dc" */
const isPreviousRows = (r: Reader, k: number): boolean =>
  isWord(r, W.previous, k) &&
  (isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1)) &&
  !clauseEnds(r, k + 2);

/** "around dc", "around pop": by stem or by shape; a slip stitch has no post. */
const isStitch = (sense: SenseId): boolean => {
  const form = sense > 0 ? formOf(sense) : null;
  return !!form && form.stem !== 'ss' && (!!form.stem || POSTS.has(form.shape));
};

const POSTS: ReadonlySet<string> = new Set(['cluster', 'bobble', 'puff', 'popcorn']);

function end(r: Reader, start: number): Until {
  const from = fromOf(r, start);
  const to = toOf(r);
  return { kind: 'end', word: r.text.slice(r.base + from, r.base + to).toLowerCase(), from, to };
}

/** Behind "to", "until", "till". */
function toHere(r: Reader, start: number, place: PlaceReader): Until | null {
  // "to join", "to form a ring" tell what for.
  if (isWord(r, W.join) || isWord(r, W.form) || isWord(r, W.close) || isWord(r, W.work))
    return null;
  const made = untilMade(r, start) ?? untilLeft(r, start) ?? untilWorked(r, start);
  if (made) return made;
  if (isWord(r, W.you) && /^(reach|get|are)$/.test(spelled(r, r.at + 1))) {
    r.at += 2;
    eatWord(r, W.to);
  }
  eatThe(r);
  if (eatWord(r, W.end) || isWay(r)) {
    ofRow(r);
    return end(r, start);
  }
  if (isWord(r, W.around) && clauseEnds(r, 1)) {
    r.at++;
    return end(r, start);
  }
  if (isWord(r, W.beginning) && (clauseEnds(r, 1) || isWord(r, W.of, 1))) {
    r.at++;
    ofRow(r);
    return end(r, start);
  }
  if (isWord(r, W.in) || spelled(r, r.at) === 'within') r.at++;
  const last = isWord(r, W.last) || isWord(r, W.remaining) || kindAt(r) === T.number;
  const short = kindAt(r) === T.number ? shortOf(r, start, place) : null;
  if (short) return short;
  const group = toGroup(r, start);
  if (group) return group;
  if (last) return lastHere(r, start);
  const before = r.at;
  const stop = place(r);
  if (stop && isWord(r, W.before)) {
    r.at++;
    place(r);
  }
  if (!stop || r.at === before) return null;
  return { kind: 'place', place: stop, before: null, from: fromOf(r, start), to: toOf(r) };
}

/** "1 dc in each dc to 3-dc group": the next one. */
function toGroup(r: Reader, start: number): Until | null {
  if (kindAt(r) !== T.number) return null;
  const from = r.at;
  const noun = readNoun(r);
  if (noun?.kind === 'group' && !noun.plural && clauseEnds(r)) {
    const span = { from: fromOf(r, from), to: toOf(r) };
    const stop = placeWith(span, { pick: 'next', nouns: [noun] });
    return { kind: 'place', place: stop, before: null, from: fromOf(r, start), to: toOf(r) };
  }
  r.at = from;
  return null;
}

/** "to 1 st before centre st", "to 2 sts before marker": so many stitches sooner than the place. */
function shortOf(r: Reader, start: number, place: PlaceReader): Until | null {
  const from = r.at;
  const n = readNumbers(r);
  const noun = n ? readNoun(r) : null;
  const stop = noun && eatWord(r, W.before) ? place(r) : null;
  if (n && stop)
    return { kind: 'place', place: stop, before: n, from: fromOf(r, start), to: toOf(r) };
  r.at = from;
  return null;
}

/** "until you have 16 sts", "until there are 38 loops in all": the end; "… 2 sts left" stops short. */
function untilMade(r: Reader, start: number): Until | null {
  const you = isWord(r, W.you) && isWord(r, W.have, 1);
  if (!you && !(isWord(r, W.there) && isWord(r, W.is, 1))) return null;
  const from = r.at;
  r.at += 2;
  const n = readNumbers(r);
  const noun = n ? readNoun(r) : null;
  if (!n || !noun) {
    r.at = from;
    return null;
  }
  if (eatWord(r, W.remaining))
    return { kind: 'last', n, noun, chain: false, from: fromOf(r, start), to: toOf(r) };
  if (isWord(r, W.in) && isWord(r, W.all, 1)) r.at += 2;
  else eatWord(r, W.total);
  passMore(r);
  return end(r, start);
}

/** "until there are 9 clusters of 3 dc and 9 ch-1 spaces between clusters": what else there is by then. */
function passMore(r: Reader): void {
  for (let guard = 0; guard < 3; guard++) {
    const start = r.at;
    if (isWord(r, W.of) || isWord(r, W.and)) {
      r.at++;
      if (readNumbers(r) && readNoun(r)) continue;
      r.at = start;
    } else if (isWord(r, W.between)) {
      r.at++;
      readNumbers(r);
      if (readNoun(r)) continue;
      r.at = start;
    }
    return;
  }
}

/** "until 3 stitches are left unworked", "until 1 st is left undone": short of them. */
function untilLeft(r: Reader, start: number): Until | null {
  if (kindAt(r) !== T.number || spelled(r, r.at - 1) !== 'until') return null;
  const from = r.at;
  const n = readNumbers(r);
  const noun = n ? readNoun(r) : null;
  if (n && noun && isWord(r, W.is) && spelled(r, r.at + 1) === 'left') {
    r.at += 2;
    if (isOneOf(r, UNWORKED)) r.at++;
    return { kind: 'last', n, noun, chain: false, from: fromOf(r, start), to: toOf(r) };
  }
  r.at = from;
  return null;
}

const UNWORKED = wordsOf('unworked undone over');

/** "until 13 shells have been made", "until 12 sps are worked": the end, as the row shows. */
function untilWorked(r: Reader, start: number): Until | null {
  if (kindAt(r) !== T.number || spelled(r, r.at - 1) !== 'until') return null;
  for (let k = 1; k < 7 && kindAt(r, k) === T.word; k++) {
    if (!/^(?:made|worked|completed|formed)$/.test(spelled(r, r.at + k))) continue;
    if (!/^(?:been|are|were|is)$/.test(spelled(r, r.at + k - 1))) return null;
    r.at += k + 1;
    return end(r, start);
  }
  return null;
}

/** "of row", "of the round". */
function ofRow(r: Reader): void {
  if (!isWord(r, W.of) && !isWord(r, W.in)) return;
  const start = r.at++;
  eatThe(r);
  if (eatWord(r, W.row) || eatWord(r, W.round) || eatWord(r, W.side)) return;
  if (eatWord(r, W.ch) || eatWord(r, W.foundation)) {
    eatWord(r, W.ch);
    // "to end of chain 65": how long it was
    if (kindAt(r) === T.number && clauseEnds(r, 1)) r.at++;
    return;
  }
  r.at = start;
}

/** "last 3 sts", "2 sts remain", "4 sc of end". */
function lastHere(r: Reader, start: number): Until | null {
  eatThe(r);
  const named = eatWord(r, W.last) || eatWord(r, W.remaining);
  const numberAt = r.at;
  const written = readNumbers(r);
  const noun = readNoun(r);
  if (!written && !noun && !(named && clauseEnds(r))) return null;
  const counted = named || isWord(r, W.remaining) || isWord(r, W.from) || isWord(r, W.of);
  if (!counted && !isWord(r, W.before)) return null;
  if (noun && isWord(r, W.of)) ofGroup(r);
  if (isWord(r, W.remaining)) r.at++;
  else if (isWord(r, W.from) || isWord(r, W.of) || isWord(r, W.before)) endBehind(r);
  const at = fromOf(r, numberAt);
  // "to last 3dc group": one of them, and what it is made of.
  const one = noun?.kind === 'group' && noun.word === 'group' && !noun.plural;
  const n = written && !one ? written : { from: at, to: at, values: [1] };
  if (named && !written && noun) lastOfTwo(r, noun);
  const chain = written !== null && noun !== null && andStartChain(r);
  return { kind: 'last', n, noun, chain, from: fromOf(r, start), to: toOf(r) };
}

/** "to last 2 dc and ch 3 to turn with", "to last 2 sts and turning ch": the row's start chain too. */
function andStartChain(r: Reader): boolean {
  if (!isWord(r, W.and) && kindAt(r) !== T.plus) return false;
  const and = r.at++;
  eatThe(r);
  const noun = readNoun(r);
  const toTurn = isWord(r, W.to) && isWord(r, W.turn, 1);
  if (toTurn) r.at += 2;
  const chain = noun?.kind === 'start-chain' || (noun?.kind === 'space' && noun.word === 'ch');
  if (chain && clauseEnds(r)) return true;
  r.at = and;
  return false;
}

/** "to last sc and ch-1 sp": two places of two kinds; the first of them is where it ends. */
function lastOfTwo(r: Reader, first: Noun): void {
  if (!isWord(r, W.and)) return;
  const and = r.at++;
  eatWord(r, W.last);
  const other = readNoun(r);
  const spaces = (first.kind === 'space') !== (other?.kind === 'space');
  if (!other || !spaces || isWord(r, W.in)) r.at = and;
}

/** "to last dc of this group": the end of what is being worked over. */
function ofGroup(r: Reader): void {
  const start = r.at++;
  passWords(r, BEFORE_GROUP);
  if (isWord(r, W.end) || isWord(r, W.row) || isWord(r, W.round) || !readNoun(r)) r.at = start;
}

const BEFORE_GROUP: SenseSet = new SenseSet([W.the, W.these, W.next]);

/** "of end", "from the end", "before end of row". */
function endBehind(r: Reader): void {
  const start = r.at++;
  eatThe(r);
  if (eatWord(r, W.end)) ofRow(r);
  else if (!eatWord(r, W.row) && !eatWord(r, W.round)) r.at = start;
}
