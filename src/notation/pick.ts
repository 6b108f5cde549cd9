/** Which place of its kind: "next 5", "same", "each of next 3", "2nd", "top of", "every other". */

import { mayBeStitch } from './dictionary.ts';
import { PLAIN_NOUN } from './noun.ts';
import { opensDashed, readNumbers } from './numbers.ts';
import type { PlaceDraft } from './place-draft.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { specialHere } from './stitch.ts';
import { T } from './tokens.ts';

const SINGLE = wordsOf('single');
const isPlainNoun = (r: Reader, ahead: number): boolean =>
  isWord(r, W.st, ahead) ||
  isWord(r, W.sp, ahead) ||
  isWord(r, W.loop, ahead) ||
  isWord(r, W.ch, ahead);

const VERY = wordsOf('very');
const FORTH = wordsOf('forth');
const ITS = wordsOf('its these those their');

/** Whether a determiner was read. */
export function readPick(r: Reader, draft: PlaceDraft): boolean {
  if (isOneOf(r, VERY)) r.at++;
  // "in this first corner sp"
  if (isWord(r, W.these) && kindAt(r, 1) === T.ordinal) r.at++;
  const kind = kindAt(r);
  if (kind === T.ordinal) return ordinalPick(r, draft);
  if (kind === T.number) return numberPick(r, draft);
  if (kind === T.open && r.known.sizes > 1) return sizesPick(r, draft);
  switch (wordAt(r)) {
    case W.next:
      r.at++;
      draft.pick = 'next';
      if (eatWord(r, W.each)) draft.each = true;
      numberOf(r, draft);
      if (kindAt(r) === T.ordinal) nextOrdinal(r, draft);
      return true;
    case W.same:
      r.at++;
      draft.pick = 'same';
      // "dc in same first st": the first is that one.
      if (kindAt(r) === T.ordinal && valueAt(r) === 1) r.at++;
      else numberOf(r, draft);
      return true;
    case W.other:
      // "sk 1 st, sc into the other chs": all the others.
      if (!(isWord(r, W.ch, 1) || isWord(r, W.st, 1)) || !isWord(r, W.the, -1)) return false;
      if (!clauseEnds(r, 2) && kindAt(r, 2) !== T.open && !isWord(r, W.across, 2)) return false;
      r.at++;
      draft.pick = 'each';
      draft.each = true;
      return true;
    case W.last:
    case W.final:
    case W.remaining:
      return lastPick(r, draft);
    case W.each:
    case W.every:
    case W.alternate:
      // "into every single stitch"
      if (isOneOf(r, SINGLE, 1) && isPlainNoun(r, 2)) r.at++;
      // "in each centre ch-1 sp of each shell"
      if (isWord(r, W.centre, 1) && kindAt(r, 2) !== T.end) r.at++;
      return isWord(r, W.centre) ? centrePick(r, draft) : eachPick(r, draft);
    case W.all:
    case W.both:
      return allPick(r, draft);
    case W.point:
      return isWord(r, W.of, 1) && topPick(r, draft);
    case W.base:
      if (underside(r, draft)) return true;
      return topPick(r, draft);
    case W.top:
      return topPick(r, draft);
    case W.centre:
      return centrePick(r, draft);
    default:
      return rarePick(r, draft);
  }
}

const UNDERSIDE = wordsOf('underside');

/** "in underside of 5 ch", "in the underside of the ch-5": each of them, from beneath. */
function underside(r: Reader, draft: PlaceDraft): boolean {
  if (!isOneOf(r, UNDERSIDE) || !isWord(r, W.of, 1)) return false;
  let k = isWord(r, W.the, 2) ? 3 : 2;
  if (isWord(r, W.next, k)) k++;
  const length = isWord(r, W.ch, k) && kindAt(r, k + 1) === T.dash ? k + 2 : k;
  if (kindAt(r, length) !== T.number || (length === k && !isWord(r, W.ch, k + 1))) return false;
  r.at += length;
  draft.pick = 'next';
  draft.n = readNumbers(r);
  draft.nouns = [{ ...PLAIN_NOUN, kind: 'chain', plural: true }];
  if (length === k) r.at++;
  return true;
}

function rarePick(r: Reader, draft: PlaceDraft): boolean {
  const sense = wordAt(r);
  // "around previous rounds dc": every place is of the row before.
  if (sense === W.previous && (isWord(r, W.row, 1) || isWord(r, W.round, 1)) && !clauseEnds(r, 2)) {
    r.at += 2;
    draft.pick = 'next';
    return true;
  }
  if (sense === W.any || sense === W.previous || sense === W.other || sense === W.another) {
    draft.pick = sense === W.any ? 'any' : sense === W.previous ? 'previous' : 'next';
    r.at++;
    // "in any first sc of a pair"
    if (draft.pick === 'any' && kindAt(r) === T.ordinal && valueAt(r) === 1) r.at++;
    numberOf(r, draft);
    return true;
  }
  // "3 hdc in beg st": the first; "in beg ch" is a starting chain and stays for the noun.
  if (sense === W.beginning && (isWord(r, W.st, 1) || isWord(r, W.place, 1))) {
    draft.pick = 'first';
    r.at++;
    return true;
  }
  // "3 dc in same sp as beginning 3 dc": as the first three.
  if (sense === W.beginning && kindAt(r, 1) === T.number && mayBeStitch(wordAt(r, 2))) {
    draft.pick = 'first';
    r.at++;
    numberOf(r, draft);
    return true;
  }
  // "in beginning 4th ch": that of the chain which begins the round.
  if (sense === W.beginning && kindAt(r, 1) === T.ordinal) {
    r.at++;
    return ordinalPick(r, draft);
  }
  // "in forth ch from hook": a slip for the ordinal; "back and forth" has no stitch behind it.
  const noun = isWord(r, W.ch, 1) || isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1));
  if (kindAt(r) === T.word && noun && isOneOf(r, FORTH)) {
    draft.pick = 'nth';
    draft.nth = 4;
    r.at++;
    return true;
  }
  // "in end st", "in end (toe) st"
  const aside = sense === W.end && kindAt(r, 1) === T.open && kindAt(r, 3) === T.close ? 3 : 0;
  if (sense === W.end && (isWord(r, W.ch, aside + 1) || isWord(r, W.st, aside + 1))) {
    draft.pick = 'last';
    r.at += aside + 1;
    return true;
  }
  if (sense === W.a) {
    draft.pick = 'next';
    r.at++;
    return true;
  }
  // "in beg of row" is no place; "in its 14 sts", "in these 3 sts" are.
  if (kindAt(r, 1) === T.number && isOneOf(r, ITS)) {
    r.at++;
    draft.pick = 'next';
    draft.n = readNumbers(r);
    return true;
  }
  return false;
}

/** A number that says how many places; "2-ch sp" and "3ch sp" keep theirs for the noun. */
function numberOf(r: Reader, draft: PlaceDraft): void {
  // "first (20, 22, 24) sts": a bracket of one number a size.
  const bracket = kindAt(r) === T.open && r.known.sizes > 1 && kindAt(r, 1) === T.number;
  if (!bracket && !opensDashed(r) && (kindAt(r) !== T.number || belongsToNoun(r))) return;
  draft.n = readNumbers(r);
}

/** "2-ch sp", "2ch sp", "2 ch sp", "3-dc group"; "2 ch sps" is two spaces. */
function belongsToNoun(r: Reader): boolean {
  if (specialHere(r)) return true;
  const dashed = kindAt(r, 1) === T.dash && isGlued(r, 0);
  const k = dashed ? 2 : 1;
  if (dashed && kindAt(r, 2) === T.word) return true;
  const chain = isWord(r, W.ch, k) || isWord(r, W.chsp, k);
  if (!chain) return false;
  if (isWord(r, W.chsp, k)) return isGlued(r, 0) && !plural(r, k);
  const after = kindAt(r, k + 1) === T.dash ? k + 2 : k + 1;
  const space =
    wordAt(r, after) === W.sp || wordAt(r, after) === W.loop || wordAt(r, after) === W.arch;
  if (!dashed && isOfRowBeneath(r)) return true;
  return space && (isGlued(r, 0) || !plural(r, after));
}

/** "1 plain in the 3 chain of the last row": the loop that they make, and none of its chains. */
function isOfRowBeneath(r: Reader): boolean {
  if (!isWord(r, W.of, 2) || plural(r, 1)) return false;
  const k = isWord(r, W.the, 3) ? 4 : 3;
  if (!isWord(r, W.last, k) && !isWord(r, W.previous, k)) return false;
  return isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1);
}

const plural = (r: Reader, ahead: number): boolean =>
  (r.text.charCodeAt(r.base + (r.to[r.at + ahead] ?? 0) - 1) | 32) === 115;

function numberPick(r: Reader, draft: PlaceDraft): boolean {
  if (belongsToNoun(r)) return false;
  // "in 3 ch" of the start is a chain by length; "in 5 sts" are the next five.
  draft.n = readNumbers(r);
  draft.pick = 'next';
  if (eatWord(r, W.each)) draft.each = true;
  else numberBefore(r, draft);
  return true;
}

/** "each of 2 first dc", "the 3 last sts", "the two end stitches": the number stands before the word. */
function numberBefore(r: Reader, draft: PlaceDraft): void {
  const isFirst = kindAt(r) === T.ordinal && valueAt(r) === 1;
  const isLast = !isFirst && (isWord(r, W.last) || isWord(r, W.end));
  if (
    !(isFirst || isLast) ||
    !(isWord(r, W.st, 1) || isWord(r, W.ch, 1) || mayBeStitch(wordAt(r, 1)))
  )
    return;
  draft.pick = isFirst ? 'first' : 'last';
  r.at++;
}

/** "dc in (50, 54, 58) sts": the numbers of all sizes stand in the bracket. */
function sizesPick(r: Reader, draft: PlaceDraft): boolean {
  const n = readNumbers(r);
  if (!n) return false;
  draft.n = n;
  draft.pick = 'next';
  return true;
}

/** "in 5th (the last one) chain from hook": said of it before it is named. */
function passAside(r: Reader): void {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || close - r.at > 5) return;
  for (let i = r.at + 1; i < close; i++)
    if (r.kind[i] !== T.word && spelled(r, i) !== 'one') return;
  const behind = close + 1 - r.at;
  if (isWord(r, W.ch, behind) || isWord(r, W.st, behind)) r.at = close + 1;
}

function ordinalPick(r: Reader, draft: PlaceDraft): boolean {
  const nth = valueAt(r);
  r.at++;
  passAside(r);
  if (nth === 1) {
    draft.pick = 'first';
    numberOf(r, draft);
    if (isWord(r, W.st) && isWord(r, W.of, 1)) return true;
    return true;
  }
  draft.pick = 'nth';
  draft.nth = nth;
  // "2nd and 3rd sts" is not one place: the second is left for the next clause.
  return true;
}

function nextOrdinal(r: Reader, draft: PlaceDraft): void {
  draft.nth = valueAt(r);
  draft.pick = 'nth';
  r.at++;
}

function lastPick(r: Reader, draft: PlaceDraft): boolean {
  const rest = isWord(r, W.remaining);
  r.at++;
  draft.pick = rest ? 'each' : 'last';
  numberOf(r, draft);
  if (!rest && isWord(r, W.remaining)) r.at++;
  if (rest && isWord(r, W.of)) {
    const row = isWord(r, W.row, 1) || isWord(r, W.round, 1);
    r.at += row ? 2 : 1;
    eatThe(r);
  }
  if (rest && draft.n) draft.pick = 'next';
  return true;
}

const IF = wordsOf('if');

/** "each", "each of the next 5", "every other", "every second". */
function eachPick(r: Reader, draft: PlaceDraft): boolean {
  const alternate = isWord(r, W.alternate);
  if (kindAt(r, 1) === T.ordinal && valueAt(r, 1) > 2 && !isWord(r, W.in, -1)) return false;
  r.at++;
  draft.pick = alternate ? 'every-other' : 'each';
  draft.each = true;
  const nth = kindAt(r) === T.ordinal ? valueAt(r) : 0;
  if (!alternate && (isWord(r, W.other) || isWord(r, W.alternate) || nth > 1)) {
    draft.pick = 'every-other';
    if (nth > 2) draft.nth = nth;
    r.at++;
    return true;
  }
  // "each in next 8": a slip for "each of next 8".
  const slip = isWord(r, W.in) && (isWord(r, W.next, 1) || kindAt(r, 1) === T.number);
  // "each if next 2 ch": so is this.
  const typed = isOneOf(r, IF) && isWord(r, W.next, 1);
  if (typed) r.at++;
  if (eatWord(r, W.of) || (slip && eatWord(r, W.in))) eatThe(r);
  // "each of the other ch-1 spaces"
  if (isWord(r, W.other) && isWord(r, W.of, -2)) r.at++;
  if (/its|these/i.test(shortWord(r))) r.at++;
  const sense = wordAt(r);
  // "each of your beginning 6 sc"
  const beginning = sense === W.beginning && kindAt(r, 1) === T.number;
  const previous = sense === W.previous && kindAt(r, 1) === T.number;
  if (
    sense === W.next ||
    sense === W.last ||
    sense === W.remaining ||
    previous ||
    beginning ||
    kindAt(r) === T.ordinal
  ) {
    const before = r.at;
    r.at++;
    draft.pick =
      sense === W.last
        ? 'last'
        : sense === W.next || previous
          ? 'next'
          : sense === W.remaining
            ? 'each'
            : 'first';
    if (sense === W.remaining || kindAt(r) !== T.number) {
      // "each of the remaining 11 sts": so many, and no more.
      if (sense === W.remaining && kindAt(r) === T.number) {
        draft.n = readNumbers(r);
        draft.pick = 'next';
      }
      // "each of the rest of the sps"
      if (sense === W.remaining && eatWord(r, W.of)) eatThe(r);
      if (sense === -1 && r.value[before] !== 1) r.at = before;
      return true;
    }
    numberOf(r, draft);
    return true;
  }
  if (kindAt(r) === T.number && !belongsToNoun(r)) {
    draft.n = readNumbers(r);
    draft.pick = 'next';
    numberBefore(r, draft);
  }
  return true;
}

const shortWord = (r: Reader): string =>
  kindAt(r) === T.word && (r.to[r.at] ?? 0) - (r.from[r.at] ?? 0) < 6
    ? r.text.slice(r.base + (r.from[r.at] ?? 0), r.base + (r.to[r.at] ?? 0))
    : '';

/** "all 36 sts", "all sts", "both sts". */
function allPick(r: Reader, draft: PlaceDraft): boolean {
  const both = isWord(r, W.both);
  const sense = wordAt(r, 1);
  if (sense === W.around || sense === W.across || sense === W.in || sense === W.along) return false;
  if (clauseEnds(r, 1)) return false;
  r.at++;
  if (eatWord(r, W.of)) eatThe(r);
  eatThe(r);
  if (!eatWord(r, W.remaining)) eatWord(r, W.next);
  draft.pick = both ? 'next' : 'each';
  draft.each = true;
  if (kindAt(r) === T.number && !belongsToNoun(r)) draft.n = readNumbers(r);
  return true;
}

/** "top of ch-3", "base of ch 3", "foot of the chain". */
function topPick(r: Reader, draft: PlaceDraft): boolean {
  const top = isWord(r, W.top) || isWord(r, W.point);
  r.at++;
  draft.pick = top ? 'top' : 'same';
  return true;
}

/** "centre st of next shell", "centre of shell", "centre ch-2 sp". */
function centrePick(r: Reader, draft: PlaceDraft): boolean {
  r.at++;
  draft.pick = 'centre';
  numberOf(r, draft);
  return true;
}
