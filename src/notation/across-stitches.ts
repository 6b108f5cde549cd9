/** "Work across first 14 sc", "work in patt over 20 (22, 24) sts": so many, in the stitches of the row beneath. */
import { mayBeStitch } from './dictionary.ts';
import { clauseEnds, isWord, kindAt, type Reader, spelled, valueAt, wordAt } from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Passes "in pattern", "in est patt", "in pattern as established". */
export function passPattern(r: Reader): void {
  if (!isWord(r, W.in)) return;
  let k = isWord(r, W.the, 1) ? 2 : 1;
  if (kindAt(r, k) === T.word && /^est(?:ablished)?$/.test(spelled(r, r.at + k))) k++;
  if (!isWord(r, W.pattern, k)) return;
  k++;
  if (isWord(r, W.as, k) && /^(?:est|established|set)$/.test(spelled(r, r.at + k + 1))) k += 2;
  r.at += k;
}

/** Whether "across 20 sts", "over the next 14 (16) dc" stands here, and no rows are told behind it. */
export function namesAcross(r: Reader): boolean {
  if (!isWord(r, W.across) && !isWord(r, W.over)) return false;
  const k = isWord(r, W.the, 1) ? 2 : 1;
  const first = kindAt(r, k) === T.ordinal && valueAt(r, k) === 1;
  const picked =
    first || isWord(r, W.next, k) || isWord(r, W.first_word, k) || isWord(r, W.last, k);
  const number = picked ? k + 1 : k;
  if (kindAt(r, number) !== T.number) return false;
  const sizes = kindAt(r, number + 1) === T.open ? (r.partner[r.at + number + 1] ?? -1) : -1;
  const noun = sizes > 0 ? sizes + 1 - r.at : number + 1;
  if (!isWord(r, W.st, noun) && !mayBeStitch(wordAt(r, noun))) return false;
  return clauseEnds(r, noun + 1) || !isWord(r, W.for, noun + 1);
}
