/** Where talk ends: at the work, the chain, the ring or the count that stands in its clause. */

import { isAside } from './aside.ts';
import { startsChain } from './chain.ts';
import { mayBeStitch } from './dictionary.ts';
import { readOtherSide } from './other-side.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  onNewLine,
  type Reader,
  spelled,
  type Words,
  wordAt,
  wordsOf,
} from './reader.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';

/** "but begin working hdc in each sc around", "now start to work dc in each st": the work that begins. */
export const LEADS_TO_WORK: Words = wordsOf('but begin beginning start starting');

/** "When you arrive at the end continue working down the opposite side": the order behind the advice. */
export function sideHere(r: Reader): boolean {
  if (!isWord(r, W.continue) && !isWord(r, W.working) && !isWord(r, W.work)) return false;
  const from = r.at;
  const side = readOtherSide(r);
  r.at = from;
  return side !== null;
}

export const WHEN: Words = wordsOf('when once after');

/** "When you complete the round you should have 72 sts": the count behind the clause. */
export function totalHere(r: Reader): boolean {
  if (!isWord(r, W.you)) return false;
  const k = /^(?:should|will|must|now)$/.test(spelled(r, r.at + 1)) ? 2 : 1;
  return isWord(r, W.have, k) && kindAt(r, k + 1) === T.number;
}

export function workHere(r: Reader): boolean {
  if (!mayBeStitch(wordAt(r)) || !isWord(r, W.in, 1)) return false;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  return isWord(r, W.each, k) || isWord(r, W.every, k) || isWord(r, W.next, k);
}

/** "Using a 4 mm hook make 75 ch", "with main colour ch 40": the remark ends where the chain begins. */
export const LEADS_TO_CHAIN: RegExp =
  /^(us(e|ing)|with|start(ing)?|begin(ning)?|commenc(e|ing)|holding|taking)$/;

/** "To begin ch 65 and join": as "begin with" does. */
export const toBegin = (r: Reader): boolean =>
  isWord(r, W.to) && /^(?:begin|start)$/.test(spelled(r, r.at + 1));

/** "For the cuff make a chain of 44 stitches": the piece before its chain; no size, and no other way. */
export function forPiece(r: Reader, run: Run): boolean {
  if (run.out.length > 0 || r.at !== FIRST || !isWord(r, W.for)) return false;
  if (!isWord(r, W.the, 1) && !isOneOf(r, EACH, 1)) return false;
  for (let k = 2; k < 7; k++) {
    if (isWord(r, W.ch, k) || isWord(r, W.work, k)) return k > 2;
    if (kindAt(r, k) !== T.word || isWord(r, W.size, k) || isWord(r, W.more, k))
      return k > 2 && kindAt(r, k) === T.comma;
    if (/..er$|est$/.test(spelled(r, r.at + k)) && !isOneOf(r, NAMES_IN_ER, k)) return false;
  }
  return false;
}

const EACH = wordsOf('each');

const NAMES_IN_ER = wordsOf('border flower center corner lower upper cover runner under');

export function chainHere(r: Reader): boolean {
  // "chain (ch) 24"
  const twice = isWord(r, W.ch) && kindAt(r, 1) === T.open && isWord(r, W.ch, 2);
  if (twice && kindAt(r, 3) === T.close) return kindAt(r, 4) === T.number;
  if (isWord(r, W.work) || kindAt(r) === T.number) return startsChain(r) && !isWord(r, W.ch);
  // "start with chain of 14 stitches"
  const k = isWord(r, W.of, 1) ? 2 : 1;
  const ends =
    clauseEnds(r, k + 1) ||
    kindAt(r, k + 1) === T.open ||
    isWord(r, W.st, k + 1) ||
    (isWord(r, W.and, k + 1) && (isWord(r, W.join, k + 2) || isWord(r, W.turn, k + 2))) ||
    /^loos/.test(spelled(r, r.at + k + 1));
  return isWord(r, W.ch) && kindAt(r, k) === T.number && ends;
}

/** "(ch 5) with the larger hook and form a ring": the remark ends where the ring is formed. */
export const ringHere = (r: Reader): boolean =>
  isWord(r, W.and) &&
  isWord(r, W.form, 1) &&
  (isWord(r, W.a, 2) || kindAt(r, 2) === T.number) &&
  isWord(r, W.ring, 3);

/** "pull ring taut – 12 sc" */
export const countHere = (r: Reader): boolean =>
  kindAt(r, 1) === T.number &&
  (kindAt(r) === T.equals
    ? kindAt(r, 2) === T.end || isUnit(r)
    : kindAt(r) === T.dash && isUnit(r));

const isUnit = (r: Reader): boolean =>
  (isWord(r, W.st, 2) || mayBeStitch(wordAt(r, 2))) && clauseEnds(r, 3);

/** "- Pull the ring closed" above "- Join": the next of a list; and "… and join with a sl st". */
export const nextItemHere = (r: Reader): boolean =>
  kindAt(r) === T.dash
    ? onNewLine(r, r.at)
    : isWord(r, W.and) && isWord(r, W.join, 1) && (isWord(r, W.with, 2) || clauseEnds(r, 2));

/** "Work 3 ch as 1 dc and then work 11 more dc into the ring": the order behind what is said of the chain. */
export function orderBehind(r: Reader): boolean {
  if (!isWord(r, W.and) && !isWord(r, W.afterwards)) return false;
  let k = 1;
  const then = isWord(r, W.afterwards) || isWord(r, W.afterwards, 1);
  while (isWord(r, W.and, k) || isWord(r, W.afterwards, k) || isWord(r, W.now, k)) k++;
  const verb = isWord(r, W.work, k);
  if (verb) k++;
  if (isWord(r, W.ch, k)) return (verb || then) && kindAt(r, k + 1) === T.number;
  if (kindAt(r, k) !== T.number) return false;
  const at = isWord(r, W.more, k + 1) ? k + 2 : k + 1;
  if (!mayBeStitch(wordAt(r, at)) || isWord(r, W.st, at)) return false;
  return isWord(r, W.in, at + 1) && !isWord(r, W.total, at + 2) && !isWord(r, W.all, at + 2);
}

/** A bracket of work ends the remark; one that tells more of it does not. */
export function workBracketHere(r: Reader): boolean {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  return close > r.at && !isAside(r, r.at, close);
}

/** "pull tight (6)", "pull to close (6 sc)": the count at the row's end is none of the remark's. */
export function countBracketHere(r: Reader): boolean {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || kindAt(r, 1) !== T.number) return false;
  const behind = r.kind[close + 1];
  if (behind !== T.end && behind !== T.stop) return false;
  const unit = r.at + 2;
  const sense = r.word[unit] ?? 0;
  return unit === close || (unit + 1 === close && (sense === W.st || mayBeStitch(sense)));
}

/** One token, or a whole bracket. */
export function skipToken(r: Reader): void {
  const partner = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  r.at = partner > r.at ? partner + 1 : r.at + 1;
}
