/** Words that carry on what was begun: "continue with B", "continue increasing", "and around". */
import { isShaping } from './even.ts';
import { clauseEnds, fromOf, isWord, kindAt, type Reader, spelled, toOf } from './reader.ts';
import { lastWork, putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';
import { readWork } from './work.ts';
import { readWithYarn } from './yarn.ts';

/** "Continuing in Colour B", "continue with white". */
export function goesOnWith(r: Reader): Step | null {
  if (!isWord(r, W.in, 1) && !isWord(r, W.with, 1) && !isWord(r, W.using, 1)) return null;
  const start = r.at++;
  const yarn = readWithYarn(r);
  if (yarn) return { ...yarn, from: fromOf(r, start) };
  r.at = start;
  return null;
}

/**
 * "Continue increasing 6 sts every round as set" tells how many; "continue to decrease as before"
 * does not, and what the rows before did to whom is not known: it is put down as unread.
 */
export function goesOnShaping(r: Reader, run: Run): Step | 'done' | null {
  const start = r.at;
  const k = isWord(r, W.to, 1) ? 2 : 1;
  if (!isShaping(r, k)) return null;
  r.at += k;
  const work = readWork(r);
  if (work?.evenly) return { ...work, from: fromOf(r, start) };
  r.at = start + k;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop && kindAt(r) !== T.open) r.at++;
  putWords(r, run, start, 'unread');
  return 'done';
}

/** "hdc in same st and around": the stitch just named goes on, one in each. */
export function onAround(r: Reader, run: Run): Step | null {
  const work = lastWork(run);
  const linked = isWord(r, W.and, -1) || isWord(r, W.afterwards, -1);
  if (!linked || !work?.place || work.until || work.n !== null || !clauseEnds(r, 1)) return null;
  r.at++;
  const span = { from: fromOf(r, r.at - 1), to: toOf(r) };
  const word = spelled(r, r.at - 1);
  return { ...work, ...span, place: null, until: { kind: 'end', word, ...span } };
}
