/** Shorter orders: skip, leave unworked, turn, ring, loops, opposite side, spiral. */

import { mayBeStitch, PROSE } from './dictionary.ts';
import { readLoop } from './loops.ts';
import { PLAIN_NOUN, readNoun } from './noun.ts';
import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
import { placeDraft, placeWith } from './place-draft.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  endsInS,
  fromOf,
  isGlued,
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
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import type {
  LoopStep,
  Noun,
  Numbers,
  OtherSideStep,
  Place,
  RemarkStep,
  RingStep,
  SkipStep,
  Step,
  TurnStep,
  UnworkedStep,
} from './tree.ts';
import { readUntil } from './until.ts';

/** "miss first tr and 1ch, …", "sk next ch-2 sp, next 9 sts and next ch-2 sp": all of the list is skipped. */
export function readSkips(r: Reader): SkipStep[] | null {
  const list = skippedList(r) ?? countedList(r);
  if (list) return list;
  const first = readSkip(r);
  if (!first) return null;
  const start = r.at;
  const listed: SkipStep[] = [first];
  while (kindAt(r) === T.comma && isWord(r, W.next, 1)) {
    r.at++;
    const more = skippedToo(r);
    if (!more) break;
    listed.push(more);
  }
  const last = eatWord(r, W.and) ? skippedToo(r) : null;
  if (last && clauseEnds(r)) return [...listed, last];
  r.at = start;
  return [first];
}

/** "sk next (2 dc, ch 1, sc, ch 1, 2 dc)": what the bracket lists is passed, one after the other. */
function skippedList(r: Reader): SkipStep[] | null {
  let k = 1;
  while (isWord(r, W.next, k) || isWord(r, W.the, k)) k++;
  const open = r.at + k;
  const close = r.kind[open] === T.open ? (r.partner[open] ?? -1) : -1;
  if (close < 0) return null;
  const start = r.at;
  r.at = open + 1;
  const skips: SkipStep[] = [];
  while (r.at < close) {
    const skip = skippedItem(r);
    if (!skip || !(kindAt(r) === T.comma || r.at === close)) {
      r.at = start;
      return null;
    }
    skips.push(skip);
    if (kindAt(r) === T.comma) r.at++;
  }
  r.at = close + 1;
  return skips.length > 0 ? skips : null;
}

/**
 * "skip 2 ch and 1 tr, sc in next tr", "skip 1 tr, 1 ch and 1 tr": several, each with its number, the last
 * behind "and" and before the clause ends. What has a place of its own is worked, and none of them.
 */
function countedList(r: Reader): SkipStep[] | null {
  const start = r.at++;
  if (isWord(r, W.next)) r.at++;
  const skips: SkipStep[] = [];
  let isLast = false;
  while (kindAt(r) === T.number && skips.length < MOST_LISTED) {
    const item = skippedItem(r);
    if (!item) break;
    skips.push(item);
    if (isLast && clauseEnds(r)) return skips;
    isLast = isWord(r, W.and);
    if (!isLast && kindAt(r) !== T.comma) break;
    r.at++;
  }
  r.at = start;
  return null;
}

const MOST_LISTED = 8;

/** "2 dc", "ch 1", "1 ch", "picot" of such a list. */
function skippedItem(r: Reader): SkipStep | null {
  const from = fromOf(r, r.at);
  const chain = isWord(r, W.ch);
  if (chain) r.at++;
  let n = kindAt(r) === T.number ? readNumbers(r) : null;
  const noun = chain ? ONE_CHAIN : readNoun(r);
  if (!noun) return null;
  const single = noun.kind === 'space' && noun.word === 'ch' ? ONE_CHAIN : noun;
  if (single !== noun) n = noun.chains;
  const place = placeWith({ from, to: toOf(r) }, { pick: 'next', n, nouns: [single] });
  return { kind: 'skip', place, countsAs: null, from, to: toOf(r) };
}

const ONE_CHAIN: Noun = { ...PLAIN_NOUN, kind: 'chain' };

function skippedToo(r: Reader): SkipStep | null {
  const from = fromOf(r, r.at);
  const chain = kindAt(r) === T.number && isWord(r, W.ch, 1) && clauseEnds(r, 2);
  const place = chain || isWord(r, W.next) ? readPlace(r) : null;
  return place?.nouns.length ? { kind: 'skip', place, countsAs: null, from, to: toOf(r) } : null;
}

/** "sk next 2 sts", "miss 2", "skip st", "pass over 3". */
function readSkip(r: Reader): SkipStep | null {
  const start = r.at;
  r.at++;
  if (isWord(r, W.over)) r.at++;
  // "sk-2 sts", "sk-next st"
  if (kindAt(r) === T.dash && isGlued(r) && (kindAt(r, 1) === T.number || isWord(r, W.next, 1)))
    r.at++;
  // "skip (sk) 3 sc"
  if (kindAt(r) === T.open && isWord(r, W.skip, 1) && kindAt(r, 2) === T.close) r.at += 3;
  const toSpace = skipTo(r, start);
  if (toSpace) return toSpace;
  const placeAt = r.at;
  const found = (isWord(r, W.in) ? null : readPlace(r)) ?? bareNumber(r, placeAt);
  // "skip 2 more stitches"
  if (found && isWord(r, W.more) && isWord(r, W.st, 1)) r.at += 2;
  const place = found ? alongRow(r, found) : skippedOne(r, start);
  if (!place) {
    r.at = start;
    return null;
  }
  return { kind: 'skip', place, countsAs: null, from: fromOf(r, start), to: toOf(r) };
}

/** "*sc, ch, sk*": one, where no number is told. */
const skippedOne = (r: Reader, start: number): Place | null =>
  r.at === start + 1 && (clauseEnds(r) || kindAt(r) === T.star)
    ? { ...placeDraft(r, start), pick: 'next' }
    : null;

/** "skip to next ch-1 sp": all the stitches before it. */
function skipTo(r: Reader, start: number): SkipStep | null {
  if (!isWord(r, W.to)) return null;
  const from = r.at;
  const until = readUntil(r, readPlace);
  const space = until?.kind === 'place' && until.place.nouns[0]?.kind === 'space';
  if (!space) {
    r.at = from;
    return null;
  }
  const place: Place = {
    ...placeDraft(r, from),
    pick: 'each',
    each: true,
    nouns: [PLAIN_NOUN],
    until,
    to: until.to,
  };
  return { kind: 'skip', place, countsAs: null, from: fromOf(r, start), to: toOf(r) };
}

/** "skip 16 sts from 1st ear flap along Rnd 14": the row that they are of. */
function alongRow(r: Reader, place: Place): Place {
  let k = 0;
  if (isWord(r, W.from)) {
    while (k < 5 && !isWord(r, W.along, k) && !isWord(r, W.on, k) && !clauseEnds(r, k)) k++;
  }
  const linked = isWord(r, W.along, k) || isWord(r, W.on, k);
  const row = isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1);
  if (place.row !== null || !linked || !row || kindAt(r, k + 2) !== T.number) return place;
  r.at += k + 3;
  return { ...place, row: r.value[r.at - 1] ?? null, to: toOf(r) };
}

function bareNumber(r: Reader, at: number): Place | null {
  r.at = at;
  const n: Numbers | null = readNumbers(r);
  if (!n && !clauseEnds(r) && !isWord(r, W.and)) return null;
  const from = n?.from ?? toOf(r);
  return placeWith({ from, to: toOf(r) }, { pick: 'next', n });
}

/** "leave 3 sts unworked", "leaving rem sts unworked". Otherwise `null`. */
export function readUnworked(r: Reader): UnworkedStep | null {
  const start = r.at++;
  eatThe(r);
  let n: Numbers | null = null;
  for (let guard = 0; guard < 8; guard++) {
    if (isWord(r, W.unworked) || isWord(r, W.skipped)) {
      r.at++;
      return { kind: 'unworked', n, from: fromOf(r, start), to: toOf(r) };
    }
    if (kindAt(r) === T.number) n = readNumbers(r);
    else if (isWord(r, W.last) && isOneStitch(r)) {
      const at = fromOf(r, r.at++);
      n = { from: at, to: toOf(r), values: [1] };
    } else if (isWord(r, W.remaining) && clauseEnds(r, 1)) {
      r.at++;
      return { kind: 'unworked', n, from: fromOf(r, start), to: toOf(r) };
    } else if (kindAt(r) === T.word) r.at++;
    else break;
  }
  r.at = start;
  return null;
}

/** "the last st", "last sc": one of them, though no number says so. */
const isOneStitch = (r: Reader): boolean =>
  kindAt(r, 1) === T.word &&
  (isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1))) &&
  !endsInS(r, r.at + 1);

/** "turn work reversed side", "turn to the wrong side" */
const namesOther = (r: Reader, k: number): boolean =>
  isWord(r, W.wrong, k) || isWord(r, W.other, k) || /^revers/.test(wordOn(r, k));

const PIECE = wordsOf('piece it');

export function readTurn(r: Reader, not: boolean, start: number): TurnStep {
  r.at++;
  while (isWord(r, W.work) || isWord(r, W.the) || isOneOf(r, PIECE)) r.at++;
  if (isWord(r, W.round) && clauseEnds(r, 1)) r.at++;
  const k = isWord(r, W.to) ? (isWord(r, W.the, 1) ? 2 : 1) : 0;
  if (isWord(r, W.side, k + 1) && namesOther(r, k)) r.at += k + 2;
  if (isWord(r, W.each) && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) r.at += 2;
  return { kind: 'turn', not, from: fromOf(r, start), to: toOf(r) };
}

const wordOn = (r: Reader, ahead: number): string =>
  kindAt(r, ahead) === T.word ? spelled(r, r.at + ahead) : '';

const word = (r: Reader): string => wordOn(r, 0);

/** "MC" is a yarn too: the ring behind "in", "make a", and before a lone number, "MC 8 (8)". */
function isMagicCircle(r: Reader, start: number): boolean {
  if (!isWord(r, W.mc)) return false;
  const numbered = kindAt(r, 1) === T.number;
  // "Using MC, ch 5": the main colour.
  if (isWord(r, W.using, -1) && kindAt(r, 1) === T.comma && isWord(r, W.ch, 2)) return false;
  if (r.at > start) return numbered || clauseEnds(r, 1);
  // "R1: mc with 6 sts"
  const holds = isWord(r, W.with, 1) && kindAt(r, 2) === T.number;
  if (holds && /^(?:sc|dc|hdc|sts?|stitches)$/.test(wordOn(r, 3))) return true;
  // "1. MC (4)": what stands in the bracket alone is made in it.
  const counted = kindAt(r, 1) === T.open && kindAt(r, 2) === T.number && kindAt(r, 3) === T.close;
  if (counted && r.at > FIRST) return kindAt(r, 4) === T.end;
  return numbered && (clauseEnds(r, 2) || kindAt(r, 2) === T.open);
}

/** "magic ring", "MR", "adjustable loop", "sl knot". */
export function readRing(r: Reader): RingStep | RemarkStep | null {
  const start = r.at;
  passWords(r, BEFORE_RING);
  // "Work into a magic ring, ch 3"
  if (isWord(r, W.in) && isWord(r, W.work, -1)) {
    const k = isWord(r, W.a, 1) || isWord(r, W.the, 1) ? 2 : 1;
    if (isWord(r, W.mr, k) || isWord(r, W.magic, k)) r.at += k;
  }
  // "form 1 ring"
  if (kindAt(r) === T.number && isWord(r, W.form, -1) && isWord(r, W.ring, 1)) r.at++;
  if (isWord(r, W.mr) || isWord(r, W.slip_knot)) r.at++;
  else if (isMagicCircle(r, start)) r.at++;
  else if (isWord(r, W.magic) && (isWord(r, W.ring, 1) || isWord(r, W.loop, 1))) r.at += 2;
  // "make a magic adjustable ring"
  else if (isWord(r, W.magic) && isWord(r, W.magic, 1) && isWord(r, W.ring, 2)) r.at += 3;
  else if (isWord(r, W.ring) && r.at > start) r.at++;
  else if (/^(sl|slip)$/.test(word(r)) && isWord(r, W.knot, 1)) r.at += 2;
  else {
    r.at = start;
    return null;
  }
  // "using the magic ring technique"
  if (kindAt(r) === T.word && /^(?:technique|method)$/.test(word(r))) r.at++;
  const to = toOf(r);
  if (beforeLongChain(r)) return { kind: 'remark', from: fromOf(r, start), to };
  // "magic ring (see how it is made) with 6 sc"
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) + 1 - r.at : 0;
  if (close > 0 && isWord(r, W.with, close) && kindAt(r, close + 1) === T.number) r.at += close;
  // "make a ring with 6 sc", "magic ring of 7 sc": the stitches are work.
  const linked = isWord(r, W.with) || isWord(r, W.of) || isWord(r, W.in);
  if (linked && kindAt(r, 1) === T.number) r.at++;
  // "magic circle with a base of 6 sc"
  const based =
    isWord(r, W.with) && isWord(r, W.a, 1) && isWord(r, W.base, 2) && isWord(r, W.of, 3);
  if (based && kindAt(r, 4) === T.number) r.at += 4;
  return { kind: 'ring', from: fromOf(r, start), to };
}

/** "Slip knot and chain 45", "make a slip knot, ch 20": the loop on the hook is no ring. */
function beforeLongChain(r: Reader): boolean {
  if (!isWord(r, W.knot, -1) && !isWord(r, W.slip_knot, -1)) return false;
  let k = kindAt(r) === T.comma || kindAt(r) === T.stop ? 1 : 0;
  if (isWord(r, W.and, k) || isWord(r, W.afterwards, k)) k++;
  if (!isWord(r, W.ch, k) || kindAt(r, k + 1) !== T.number) return false;
  // "Slip knot. Chain 4 and slip st to join": the chain is the ring.
  return (r.value[r.at + k + 1] ?? 0) > 5 || isJoined(r, k + 2);
}

function isJoined(r: Reader, k: number): boolean {
  for (let i = k; i < k + 8 && kindAt(r, i) !== T.stop && kindAt(r, i) !== T.end; i++)
    if (isWord(r, W.join, i)) return true;
  return false;
}

const BEFORE_RING: SenseSet = new SenseSet([
  W.work,
  W.a,
  W.form,
  W.with,
  W.using,
  W.beginning,
  W.the,
]);

/** "BLO:", "in back loops only", "working in front loops", "through both loops" on their own. */
export function readLoopOrder(r: Reader): LoopStep | null {
  const start = r.at;
  passWords(r, BEFORE_LOOP);
  allOfRound(r);
  // "working only into the back loop"
  if (isWord(r, W.only) && (isWord(r, W.in, 1) || isWord(r, W.through, 1))) {
    r.at++;
    passWords(r, BEFORE_LOOP);
  }
  const loop = readLoop(r);
  if (loop === null) {
    r.at = start;
    return null;
  }
  const row = ofRowBefore(r);
  // "working in back of chain", "working in top loops of ch, sc in …"
  const ofChain = isWord(r, W.of, -1) || (isWord(r, W.the, -1) && isWord(r, W.of, -2));
  if ((loop === 'third' || (ofChain && clauseEnds(r, 1))) && isWord(r, W.ch)) r.at++;
  // "in 3rd loop of hdc,"
  if (isWord(r, W.of, -1) && mayBeStitch(wordAt(r)) && clauseEnds(r, 1)) r.at++;
  if (isWord(r, W.throughout) || isWord(r, W.around) || isWord(r, W.across)) r.at++;
  // "work into back loops of each st for this rnd only", "…, working into the back loop of each st, turn"
  const each = isWord(r, W.each) && (isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1)));
  const works = r.value[start] === W.work || r.value[start] === W.working;
  if (each && (isWord(r, W.for, 2) || (works && clauseEnds(r, 2)))) r.at += 2;
  if (isWord(r, W.for) && isWord(r, W.these, 1) && isWord(r, W.round, 2)) {
    r.at += isWord(r, W.only, 3) ? 4 : 3;
  }
  return { kind: 'loop', loop, row, from: fromOf(r, start), to: toOf(r) };
}

/** "working in unused front loops of rnd 2": those that the rows above left. */
export function readLoopsOfRow(r: Reader): LoopStep | null {
  const start = r.at;
  passWords(r, BEFORE_LOOP);
  const left = isWord(r, W.unworked) || isWord(r, W.skipped) || isWord(r, W.remaining);
  if (left) r.at++;
  const step = left ? readLoopOrder(r) : null;
  if (step && step.row !== null) return { ...step, from: fromOf(r, start) };
  r.at = start;
  return null;
}

/** "in front loops of previous row", "in BLO of rnd 3": the number of the row where it is told. */
function ofRowBefore(r: Reader): number | null {
  let k = isWord(r, W.of) ? 1 : 0;
  if (k === 0 && !isWord(r, W.of, -1) && !isWord(r, W.the, -1)) return null;
  // "flo of the sts of rnd 1", "front loops of sc's from round 1"
  const sts = mayBeStitch(wordAt(r, k)) || isWord(r, W.st, k);
  const possessive = sts && kindAt(r, k + 1) === T.word && spelled(r, r.at + k + 1) === 's' ? 1 : 0;
  const from = k + 1 + possessive;
  if (sts && (isWord(r, W.of, from) || isWord(r, W.from, from))) k = from + 1;
  if (isWord(r, W.the, k)) k++;
  const named = isWord(r, W.previous, k) || isWord(r, W.last, k);
  if (named) k++;
  if (!isWord(r, W.round, k) && !isWord(r, W.row, k)) return null;
  k++;
  if (!named && kindAt(r, k) !== T.number) return null;
  const number = kindAt(r, k) === T.number && !named;
  r.at += number ? k + 1 : k;
  return number ? r.value[r.at - 1]! : null;
}

/** "working all sts for this round in 3rd loop" */
function allOfRound(r: Reader): void {
  // "working this rnd in back loops"
  const into = isWord(r, W.in, 2) || isWord(r, W.through, 2);
  if (into && (isWord(r, W.round, 1) || isWord(r, W.row, 1)) && spelled(r, r.at) === 'this') {
    r.at += 2;
    passWords(r, BEFORE_LOOP);
  }
  if (!isWord(r, W.all)) return;
  let k = isWord(r, W.the, 1) ? 2 : 1;
  if (!isWord(r, W.st, k)) return;
  k++;
  if (
    (isWord(r, W.in, k) || isWord(r, W.of, k) || isWord(r, W.for, k)) &&
    spelled(r, r.at + k + 1) === 'this'
  ) {
    if (isWord(r, W.round, k + 2) || isWord(r, W.row, k + 2)) k += 3;
  }
  if (!isWord(r, W.in, k) && !isWord(r, W.through, k)) return;
  r.at += k;
  passWords(r, BEFORE_LOOP);
}

const BEFORE_LOOP: SenseSet = new SenseSet([
  W.for,
  W.work,
  W.working,
  W.in,
  W.through,
  W.the,
  W.now,
]);

/** "working along opposite side of foundation ch", "on other side of chain", "along row ends". */
export function readOtherSide(r: Reader): OtherSideStep | null {
  const start = r.at;
  let side = false;
  let rowEnds = false;
  let chains: Numbers | null = null;
  let verb = false;
  for (let guard = 0; guard < 18; guard++) {
    const sense = wordAt(r);
    const kind = kindAt(r);
    // "along opposite side of ch work 2 sc": the number is the stitches'.
    if (kind === T.number && mayBeStitch(wordAt(r, 1))) break;
    if (kind === T.number && !chains && side) chains = readNumbers(r);
    else if (kind === T.dash && side) r.at++;
    else if (kind !== T.word) break;
    else if (
      sense === W.opposite ||
      sense === W.opposite_side ||
      sense === W.unworked ||
      sense === W.skipped ||
      (sense === W.other && isWord(r, W.side, 1)) ||
      (sense === W.other && isWord(r, W.end, 1)) ||
      (sense === W.remaining && isLoopsOfChain(r))
    ) {
      side = true;
      // "Rejoin yarn to opposite side of foundation chain"
      verb ||= behindYarn(r);
      r.at++;
    } else if (isCastOn(r)) {
      side = true;
      verb ||= behindYarn(r);
      r.at += kindAt(r, 1) === T.dash ? 4 : 3;
    } else if (isRowEnds(r)) {
      rowEnds = true;
      r.at++;
    } else if (sense === W.part && isWord(r, W.rotate, -1)) {
      r.at++;
    } else if (mayBeStitch(sense) && !side) break;
    else if (mayBeStitch(sense) || sense === W.skip || (sense === W.ch && chains)) break;
    else if (
      OTHER_SIDE_WORDS.has(sense) ||
      /^(now|back|continue|long|starting|across|down)$/.test(word(r))
    ) {
      verb ||=
        sense === W.working ||
        sense === W.work ||
        sense === W.continue ||
        sense === W.along ||
        sense === W.on ||
        sense === W.rotate ||
        sense === W.in ||
        sense === W.up;
      r.at++;
      if (sense === W.ch && kindAt(r) === T.dash && kindAt(r, 1) === T.number) r.at++;
    } else break;
  }
  if (rowEnds && verb) passPieceName(r);
  if ((!side && !rowEnds) || !verb) {
    if (!(side && r.value[start] === W.opposite_side)) {
      r.at = start;
      return null;
    }
  }
  return { kind: 'other-side', chains, rowEnds, from: fromOf(r, start), to: toOf(r) };
}

/** "along row ends of cuff": the piece by its name, to the clause's end. */
function passPieceName(r: Reader): void {
  let k = isWord(r, W.of) ? 1 : 0;
  if (isWord(r, W.of, -1)) k = 0;
  else if (k === 0) return;
  if (isWord(r, W.the, k)) k++;
  const sense = wordAt(r, k);
  if (kindAt(r, k) === T.word && (sense === 0 || sense === PROSE) && clauseEnds(r, k + 1))
    r.at += k + 1;
}

/** "in remaining loops of foundation ch": no other loops of a chain are left. */
function isLoopsOfChain(r: Reader): boolean {
  if (!isWord(r, W.loop, 1)) return false;
  for (let k = 2; k < 6 && kindAt(r, k) === T.word; k++) if (isWord(r, W.ch, k)) return true;
  return false;
}

/** "cast on edge": the foundation chain's other side. */
function isCastOn(r: Reader): boolean {
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  return word(r) === 'cast' && isWord(r, W.on, k) && /^edges?$/.test(spelled(r, r.at + k + 1));
}

const behindYarn = (r: Reader): boolean => isWord(r, W.to, -1) && spelled(r, r.at - 2) === 'yarn';

const isRowEnds = (r: Reader): boolean =>
  (isWord(r, W.row) && isWord(r, W.end, 1)) ||
  isWord(r, W.row_end) ||
  (isWord(r, W.end) &&
    isWord(r, W.of, 1) &&
    (isWord(r, W.row, 2) || (isWord(r, W.the, 2) && isWord(r, W.row, 3))));

const OTHER_SIDE_WORDS: SenseSet = new SenseSet([
  W.work,
  W.working,
  W.continue,
  W.along,
  W.on,
  W.in,
  W.the,
  W.of,
  W.side,
  W.foundation,
  W.ch,
  W.beginning,
  W.loop,
  W.st,
  W.to,
  W.up,
  W.at,
  W.rotate,
  W.and,
  W.now,
  W.remaining,
  W.row,
  W.end,
  W.other,
  W.around,
  W.across,
  W.base,
  W.front,
  W.back,
  W.over,
  W.from,
  W.round,
  W.turn,
  W.for,
  W.next,
]);

/** "do not turn / join / fasten off", "work in continuous rounds", "in a spiral". */
export function readNot(r: Reader): Step | null {
  const start = r.at;
  while (
    isWord(r, W.work) ||
    isWord(r, W.dont) ||
    isWord(r, W.not) ||
    isWord(r, W.without) ||
    /^do$/.test(word(r))
  )
    r.at++;
  const negative =
    r.value[r.at - 1] === W.not || r.value[r.at - 1] === W.dont || r.value[r.at - 1] === W.without;
  if (!negative) {
    r.at = start;
    return null;
  }
  if (isWord(r, W.turn) || isWord(r, W.turning)) return readTurn(r, true, start);
  if (isWord(r, W.join)) {
    r.at++;
    passWords(r, BEFORE_END);
    laterToo(r);
    return { kind: 'spiral', from: fromOf(r, start), to: toOf(r) };
  }
  const letters = isWord(r, W.letter_f) && kindAt(r, 1) === T.stop && /^o$/i.test(letterAt(r, 2));
  if (isWord(r, W.fasten) || isWord(r, W.fo) || letters) {
    r.at += letters ? 3 : 1;
    if (isWord(r, W.off)) r.at++;
    if (isWord(r, W.color)) r.at++;
    // "3 sc. Do not finish row.": it is left there.
    if ((isWord(r, W.row) || isWord(r, W.round)) && clauseEnds(r, 1)) r.at++;
    return { kind: 'fasten-off', not: true, from: fromOf(r, start), to: toOf(r) };
  }
  r.at = start;
  return null;
}

/** "in this or following rnds" */
function laterToo(r: Reader): void {
  let k = 0;
  while (k < 6 && (kindAt(r, k) === T.word || isWord(r, W.and, k))) {
    if (isWord(r, W.round, k) || isWord(r, W.row, k)) {
      r.at += k + 1;
      return;
    }
    k++;
  }
}

const BEFORE_END: SenseSet = new SenseSet([W.round, W.the, W.row, W.at]);

const letterAt = (r: Reader, ahead: number): string =>
  kindAt(r, ahead) === T.word ? spelled(r, r.at + ahead) : '';

/** "continuous rounds", "in a spiral", "in spiral rounds". */
export function readSpiral(r: Reader): Step | null {
  const start = r.at;
  let spiral = false;
  let rows = false;
  for (let guard = 0; guard < 8 && kindAt(r) === T.word; guard++) {
    const sense = wordAt(r);
    if (sense === W.spiral || /^continuous/.test(word(r))) spiral = true;
    else if (sense === W.round || sense === W.row) rows = true;
    else if (!SPIRAL_WORDS.has(sense)) break;
    r.at++;
  }
  // "in spiral working the first hdc in …": the order ends before the next verb.
  while (isWord(r, W.working, -1) || isWord(r, W.the, -1)) r.at--;
  if (!spiral || (!rows && !isSpiralWord(r, start))) {
    r.at = start;
    return null;
  }
  return { kind: 'spiral', from: fromOf(r, start), to: toOf(r) };
}

function isSpiralWord(r: Reader, start: number): boolean {
  for (let i = start; i < r.at; i++) if (r.value[i] === W.spiral) return true;
  return false;
}

const SPIRAL_WORDS: SenseSet = new SenseSet([
  W.work,
  W.working,
  W.continue,
  W.in,
  W.a,
  W.the,
  W.now,
]);
