/** "2 rows below", "in row 3", "in the row below" behind a place. */

import type { PlaceDraft } from './place-draft.ts';
import { isWord, kindAt, type Reader, spelled, valueAt, wordAt } from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

const isRow = (r: Reader, ahead: number): boolean =>
  isWord(r, W.row, ahead) || isWord(r, W.round, ahead) || isWord(r, W.r, ahead);

/** Whether such words stood here. */
export function belowAfter(r: Reader, draft: PlaceDraft): boolean {
  if (isWord(r, W.below)) {
    draft.rowsBelow = Math.max(1, draft.rowsBelow);
    r.at++;
    return true;
  }
  let k = 0;
  if (isPlaceLink(wordAt(r))) k = 1;
  if (isWord(r, W.the, k)) k++;
  if (kindAt(r, k) === T.number && isRow(r, k + 1)) return rowsBelow(r, draft, k);
  if (k === 0) return false;
  if (isWord(r, W.previous, k) || isWord(r, W.last, k)) k++;
  if (kindAt(r, k) === T.ordinal && isRow(r, k + 1)) {
    draft.row = valueAt(r, k);
    r.at += k + 2;
    return true;
  }
  if (!isRow(r, k)) return false;
  if (kindAt(r, k + 1) === T.number) {
    draft.row = valueAt(r, k + 1);
    r.at += k + 2;
    return true;
  }
  if (isWord(r, W.below, k + 1)) {
    // "from row below previous row"
    const two = (isWord(r, W.previous, k + 2) || isWord(r, W.last, k + 2)) && isRow(r, k + 3);
    draft.rowsBelow = two ? 2 : 1;
    r.at += two ? k + 4 : k + 2;
    return true;
  }
  if (!isWord(r, W.previous, k - 1) && !isWord(r, W.last, k - 1)) return false;
  r.at += k + 1;
  return true;
}

const isPlaceLink = (sense: number): boolean =>
  sense === W.in || sense === W.from || sense === W.on || sense === W.of || sense === W.at;

const word = (r: Reader, k: number): string =>
  kindAt(r, k) === T.word ? spelled(r, r.at + k) : '';

function rowsBelow(r: Reader, draft: PlaceDraft, k: number): boolean {
  const down = isWord(r, W.below, k + 2) || isWord(r, W.along, k + 2) || isWord(r, W.before, k + 2);
  if (!down && !/^(prior|earlier|back|previous|ago)$/.test(word(r, k + 2))) return false;
  draft.rowsBelow = valueAt(r, k);
  r.at += k + 3;
  return true;
}
