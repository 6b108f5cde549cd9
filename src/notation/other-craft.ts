/**
 * Tunisian crochet: its rows go forth and back with loops held on the hook, which the worker does not
 * follow. They are told as such, never taken for rows of the common kind.
 */
import { hashOf } from './dictionary.ts';
import { fromOf, kindAt, type Reader, spelled, toOf } from './reader.ts';
import type { Run } from './run.ts';
import { T } from './tokens.ts';

/** Stitch names of the craft, and the words for its two passes (common practice). */
const NAMES = new Set(
  ['tss', 'tks', 'tps', 'tfs', 'tunisian', 'afghan_st', 'retp', 'fwdp'].map(hashOf),
);
const PASSES = new Set(['forward', 'return', 'reverse'].map(hashOf));

/** Whether the words here are of that craft; the sentence is put down as not worked then. */
export function otherCraft(r: Reader, run: Run): boolean {
  const hash = r.hash[r.at] ?? 0;
  const pass = PASSES.has(hash) && kindAt(r, 1) === T.word && spelled(r, r.at + 1) === 'pass';
  if (!pass && !NAMES.has(hash)) return false;
  const start = r.at;
  while (
    kindAt(r) !== T.end &&
    kindAt(r) !== T.stop &&
    kindAt(r) !== T.open &&
    kindAt(r) !== T.close
  )
    r.at++;
  if (r.at === start) return false;
  run.out.push({
    kind: 'not-worked',
    work: null,
    what: 'Tunisian crochet',
    from: fromOf(r, start),
    to: toOf(r),
  });
  return true;
}
