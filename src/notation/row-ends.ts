/** The edge that rows make at their ends: "each row end", "end of each row", "sides of rows". */
import { endsInS, isWord, kindAt, type Reader } from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Words from the reader on that name row ends by the noun: "row end", "rowends", "row edges"; or 0. */
export function rowEndWords(r: Reader, ahead = 0): number {
  if (isWord(r, W.row_end, ahead)) return 1;
  if (!isWord(r, W.row, ahead)) return 0;
  return isWord(r, W.end, ahead + 1) || isWord(r, W.side, ahead + 1) ? 2 : 0;
}

/** Whether row ends are named here as an edge: "the row ends", "ends of rows", "side of the rows". */
export function namesRowEnds(r: Reader, ahead: number): boolean {
  const k = isWord(r, W.the, ahead) ? ahead + 1 : ahead;
  if (rowEndWords(r, k) > 0) return true;
  if (!isSideOf(r, k)) return false;
  const of = isWord(r, W.the, k + 2) ? k + 3 : k + 2;
  return isRow(r, of) && endsInS(r, r.at + of);
}

/**
 * Passes "side of", "end of each" up to what tells which rows: the ends of rows, each named by the row
 * or by a stitch of it. "End of row" is the end of the row at hand.
 */
export function passSideOf(r: Reader): boolean {
  if (!isSideOf(r, 0)) return false;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  // "sc in end of 6 rows" counts them too.
  const numbered = kindAt(r, k) === T.number && isRow(r, k + 1);
  const counted = numbered || isWord(r, W.each, k) || isWord(r, W.every, k) || isWord(r, W.next, k);
  if (isWord(r, W.end) && !counted) return false;
  // "Side of rows" is all of it, "side of row" the end of one.
  if (!counted && isRow(r, k) && !endsInS(r, r.at + k)) return false;
  r.at += k;
  return true;
}

const isSideOf = (r: Reader, k: number): boolean =>
  (isWord(r, W.side, k) || isWord(r, W.end, k)) && isWord(r, W.of, k + 1);

const isRow = (r: Reader, k: number): boolean => isWord(r, W.row, k) || isWord(r, W.round, k);
