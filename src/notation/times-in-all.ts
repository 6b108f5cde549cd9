/** "rep from * 9 times (10 times in all)", "9 more times, 10 total": the number of a repeat, said again. */
import { clauseEnds, isWord, kindAt, type Reader, valueAt } from './reader.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Whether it is said here, in a bracket or not; which of two readings the number before has is settled by it. */
export function timesInAll(r: Reader, run: Run): boolean {
  const last = run.out.at(-1);
  if (last?.kind !== 'repeat' || last.times.kind !== 'times') return false;
  const open = kindAt(r) === T.open ? 1 : 0;
  const end = kindAt(r, open) === T.number ? behindInAll(r, open + 1) : 0;
  const closes = open
    ? kindAt(r, end) === T.close
    : clauseEnds(r, end) || kindAt(r, end) === T.open;
  if (end === 0 || !closes) return false;
  const [said = null, ...sizes] = last.times.n.values;
  const all = valueAt(r, open);
  if (sizes.length > 0 || said === null || (all !== said && all !== said + 1)) return false;
  // "(2 sc, inc) x 6 (7 total)" may count the stitches; only behind a star the number is one more in all.
  const isTimes = isWord(r, W.times, open + 1) || kindAt(r, open + 1) === T.times;
  if (all === said ? !isTimes : last.mark !== '*') return false;
  run.out[run.out.length - 1] = { ...last, times: { ...last.times, more: all !== said } };
  r.at += end + open;
  return true;
}

/** Tokens up to behind "times in all", "total", "times altogether"; 0 where no such words stand. */
function behindInAll(r: Reader, at: number): number {
  const k = isWord(r, W.times, at) || kindAt(r, at) === T.times ? at + 1 : at;
  if (isWord(r, W.total, k)) return k + 1;
  return isWord(r, W.in, k) && (isWord(r, W.all, k + 1) || isWord(r, W.total, k + 1)) ? k + 2 : 0;
}
