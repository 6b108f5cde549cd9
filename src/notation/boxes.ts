/** Boxes of mesh: "52 open boxes", "5 sps, 2 bls". */

import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import type { BoxStep, Numbers } from './tree.ts';
import { readUntil } from './until.ts';

/** A run of boxes, or `null`, which leaves the reader where it was. */
export function readBoxes(r: Reader): BoxStep | null {
  const start = r.at;
  const edge = eatWord(r, W.add) ? 'added' : null;
  while (eatWord(r, W.work) || eatWord(r, W.a));
  const n = readNumbers(r);
  const box = boxKind(r, n);
  if (box === null) {
    r.at = start;
    return null;
  }
  const until = readUntil(r, readPlace);
  // "sp over sp", "bl over bl"
  if (isWord(r, W.over)) overSame(r);
  if (isWord(r, W.in) || (n === null && !until && !clauseEnds(r) && kindAt(r) !== T.open)) {
    r.at = start;
    return null;
  }
  return { kind: 'boxes', n, box, edge, until, from: fromOf(r, start), to: toOf(r) };
}

const ONE_STITCH = wordsOf('st stitch');

/** "Sl st over first 2 boxes", "sl st across 1 bl": boxes dropped at the row's start. */
export function readSlippedBoxes(r: Reader): BoxStep | null {
  const start = r.at++;
  // "sl st" is one word or two.
  if (isOneOf(r, ONE_STITCH)) r.at++;
  if (eatWord(r, W.over) || eatWord(r, W.across)) {
    eatThe(r);
    eatWord(r, W.next);
    const n = readNumbers(r);
    if (n && isBox(r)) {
      r.at++;
      const span = { from: fromOf(r, start), to: toOf(r) };
      return { kind: 'boxes', n, box: 'open', edge: 'slipped', until: null, ...span };
    }
  }
  r.at = start;
  return null;
}

function overSame(r: Reader): void {
  const start = r.at++;
  if (isWord(r, W.open) || isWord(r, W.filled)) r.at++;
  if (isBox(r)) r.at++;
  else r.at = start;
}

export const isBox = (r: Reader): boolean =>
  isWord(r, W.box) ||
  isWord(r, W.mesh) ||
  isWord(r, W.block) ||
  isWord(r, W.square) ||
  isWord(r, W.sp) ||
  (isWord(r, W.letter_m) && r.at > FIRST);

function boxKind(r: Reader, n: Numbers | null): BoxStep['box'] | null {
  const sense = wordAt(r);
  if (sense === W.open || sense === W.filled) {
    r.at++;
    // "2 open, 1 filled": the noun may be left out of a run.
    const bare = n !== null && (clauseEnds(r) || kindAt(r) === T.star || isWord(r, W.repeat));
    if (!isBox(r) && !bare) return null;
    if (!bare) r.at++;
    return sense === W.open ? 'open' : 'filled';
  }
  const bare = n !== null || isWord(r, W.over, 1);
  if (!bare) return null;
  let box: BoxStep['box'] | null = null;
  if (sense === W.om || sense === W.sp || sense === W.letter_m || sense === W.mesh) box = 'open';
  else if (sense === W.sm || sense === W.block || sense === W.letter_b) box = 'filled';
  else if (sense === W.lacet) box = 'lacet';
  else if (sense === W.bar) box = 'bar';
  else if (sense === W.box) box = 'open';
  if (box === null) return null;
  if (sense === W.letter_m && !/^m$/.test(spelled(r, r.at))) return null;
  r.at++;
  return box;
}
