/** Words that carry on what was begun: "continue with B", "continue increasing", "and around". */
import { countItem } from './count.ts';
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
  const told = shapedUntil(r, run);
  if (told) return told;
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

/**
 * "Continue in this manner, increasing 6 sc in each round, until you have 60 sc": how many rounds, and
 * where they increase, is left to the maker; what they end with is the count.
 */
function shapedUntil(r: Reader, run: Run): 'done' | null {
  let shapes = false;
  let end = r.at + 1;
  let until = -1;
  for (; r.kind[end] !== T.end && r.kind[end] !== T.stop && r.kind[end] !== T.open; end++) {
    shapes ||= isShaping(r, end - r.at);
    if (r.word[end] === W.to && spelled(r, end) === 'until') until = end;
  }
  if (!shapes || until < 0) return null;
  const start = r.at;
  r.at = until + 1;
  while (isWord(r, W.you) || isWord(r, W.have) || isWord(r, W.there) || isWord(r, W.is)) r.at++;
  const count = kindAt(r) === T.number ? countItem(r) : null;
  if (!count || r.at > end) {
    r.at = start;
    return null;
  }
  r.at = end;
  const span = { from: fromOf(r, start), to: toOf(r) };
  run.out.push({ kind: 'not-worked', what: 'rounds shaped as those before', work: null, ...span });
  r.counts.push({ count, from: run.out.length });
  return 'done';
}

/** "hdc in same st and around": the stitch just named goes on, one in each. */
export function onAround(r: Reader, run: Run): Step | null {
  const work = lastWork(run);
  const linked = isWord(r, W.and, -1) || isWord(r, W.afterwards, -1);
  // "and across the row"
  const named = isWord(r, W.the, 1) && (isWord(r, W.row, 2) || isWord(r, W.round, 2)) ? 2 : 0;
  const k = 1 + named;
  const ends = clauseEnds(r, k) || (named > 0 && kindAt(r, k) === T.open);
  if (!linked || !work?.place || work.until || work.n !== null || !ends) return null;
  const word = spelled(r, r.at);
  const start = r.at;
  r.at += k;
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { ...work, ...span, place: null, until: { kind: 'end', word, ...span } };
}
