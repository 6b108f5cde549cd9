/** "Work pattern in back loops", "work all rows in back loops only": loops that hold from here on. */
import { readLoopOrder } from './loop-orders.ts';
import { clauseEnds, fromOf, isWord, type Reader } from './reader.ts';
import { putWords, type Run } from './run.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';

/** Reads such an order into the orders of the instruction; `false` leaves the reader where it was. */
export function standingLoops(r: Reader, run: Run): boolean {
  const start = r.at;
  const k = isWord(r, W.pattern, 1)
    ? 2
    : isWord(r, W.all, 1) && ROWS.has(r.word[start + 2]!)
      ? 3
      : 0;
  if (k === 0 || !(isWord(r, W.in, k) || isWord(r, W.through, k))) return false;
  r.at += k;
  const order = readLoopOrder(r);
  if (order === null || !clauseEnds(r)) {
    r.at = start;
    return false;
  }
  r.orders.push({ kind: 'loops', loop: order.loop, from: fromOf(r, start), to: order.to });
  putWords(r, run, start, 'remark');
  return true;
}

const ROWS: SenseSet = new SenseSet([W.row, W.round, W.st]);
