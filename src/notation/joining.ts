/** Joins told by a verb: "join with sc", "rejoin", "close with an invisible join". */

import { startsChain } from './chain.ts';
import { readJoin, settleTarget } from './join.ts';
import { clauseEnds, fromOf, isOneOf, isWord, kindAt, type Reader, wordsOf } from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';

export function joined(r: Reader): Step | null {
  const join = readJoin(r);
  return join ? settleTarget(join) : null;
}

/** "Sk 33 sts, add new yarn into next st": yarn joined there, in another verb. */
export function addsYarn(r: Reader): Step | null {
  let k = isWord(r, W.a, 1) || isWord(r, W.the, 1) ? 2 : 1;
  if (isOneOf(r, NEW, k)) k++;
  if (!isOneOf(r, YARN, k) && !isWord(r, W.color, k)) return null;
  const start = r.at;
  const join = readJoin(r);
  if (join?.yarn && join.place) return settleTarget(join);
  r.at = start;
  return null;
}

const NEW = wordsOf('new');
const YARN = wordsOf('yarn thread');

/** "to form a ring", "to make a magic ring" */
export function ringAhead(r: Reader): boolean {
  if (!isWord(r, W.form, 2) && !isWord(r, W.work, 2)) return false;
  for (let k = 3; k < 7 && !clauseEnds(r, k); k++) if (isWord(r, W.ring, k)) return true;
  return false;
}

/** "Re-join". */
export function joinedAgain(r: Reader): Step | null {
  if (kindAt(r, 1) !== T.dash || !isWord(r, W.join, 2)) return null;
  const start = r.at;
  r.at += 2;
  const join = joined(r);
  if (join) return { ...join, from: fromOf(r, start) };
  r.at = start;
  return null;
}

export function invisibleJoin(r: Reader): Step | null {
  if (!isWord(r, W.join, 1)) return null;
  const start = r.at++;
  const join = readJoin(r);
  return join ? { ...join, from: fromOf(r, start) } : null;
}

/** "Join with ch 1 and dc in first sc": the chain and the stitch close the round by themselves. */
export function joinByStitch(r: Reader): boolean {
  const k = isWord(r, W.round, 1) ? 2 : 1;
  if (!isWord(r, W.with, k) && !isWord(r, W.by, k)) return false;
  const start = r.at;
  r.at += k + 1;
  if (startsChain(r)) return true;
  r.at = start;
  return false;
}
