/** Words behind a count that belong to it: "in all", "at the end of this round", "made". */

import type { Draft } from './count-unit.ts';
import { PROSE } from './dictionary.ts';
import { isOneOf, isWord, kindAt, type Reader, spelled, toOf, wordAt, wordsOf } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { StatedCount } from './tree.ts';

/** Words behind a number: "total", "in all", "not counting the ch", "each side", "increased". */
export function readTrail(r: Reader, counts: StatedCount[], end: number): boolean {
  const start = r.at;
  const last = counts.at(-1);
  if (!last || kindAt(r) !== T.word) return false;
  const draft: Draft = { ...last };
  while (r.at < end && kindAt(r) === T.word && trailWord(r, draft, end));
  if (r.at === start) return false;
  draft.to = toOf(r);
  counts[counts.length - 1] = draft;
  return true;
}

function trailWord(r: Reader, draft: Draft, end: number): boolean {
  const sense = wordAt(r);
  const last = lastRowWords(r);
  if (last > 0) {
    r.at += last;
    return true;
  }
  if (sense === W.increased || sense === W.decreased || sense === W.added) {
    draft.unit = 'decrease';
  } else if (sense === W.per || sense === W.each || sense === W.between) {
    const row = isWord(r, W.row, 1) || isWord(r, W.round, 1);
    draft.partial ||= !row;
    r.at = Math.min(end, r.at + 2);
    return true;
  } else if (sense === W.before && draft.unit !== null) {
    // "4 sts before centre ch-2 sp"
    draft.partial = true;
    restOfClause(r, end);
    return true;
  } else if (sense === W.after || sense === W.form || (sense === W.by && isEndOfRow(r))) {
    // "(11 sts after last repeat)", "12 sps forming 6 ripples"
    restOfClause(r, end);
    return true;
  } else if (sense === W.not || sense === W.excluding || sense === W.count || sense === W.include) {
    draft.startChainIncluded = sense === W.include || sense === W.count;
    // "12 ch-1 spaces, not including those of the V-sts"
    if (draft.unit === 'space' && (sense === W.not || sense === W.excluding)) draft.partial = true;
    restOfClause(r, end);
    return true;
  } else if (sense === W.with && isWord(r, W.ch, 1)) {
    // "20 tr with ch 1 between every tr"
    restOfClause(r, end);
    return true;
  } else if (sense === PROSE && draft.unit !== null && spelled(r, r.at) === 'when') {
    // "5 petals when you finish this round"
    restOfClause(r, end);
    return true;
  } else if (sense === W.for && draft.unit !== null && kindAt(r, 1) === T.word) {
    // "26 sts for hood"
    restOfClause(r, end);
    return true;
  } else if (sense === W.all && isOneOf(r, TOGETHER, 1)) {
    // "24 sc all together"
    r.at++;
  } else if (sense === W.at && draft.unit !== null && isPlaceOfPiece(r)) {
    // "8 sts at shoulder"
    restOfClause(r, end);
    return true;
  } else if (!TRAILS.has(sense) && !isOneOf(r, COMPLETE)) return false;
  r.at++;
  // "114 dc at end of row 8"
  if ((sense === W.row || sense === W.round) && kindAt(r) === T.number) r.at++;
  return true;
}

const TOGETHER = wordsOf('together');

/** "on last row worked", "at end of the last row", "after Row 10": which row of several has the count. */
function lastRowWords(r: Reader): number {
  let k = 0;
  if (isWord(r, W.at) && isWord(r, W.end, 1)) k = isWord(r, W.of, 2) ? 3 : 2;
  else if (isWord(r, W.on) || isWord(r, W.in)) k = 1;
  if (k === 0) return 0;
  if (isWord(r, W.the, k)) k++;
  if (!isWord(r, W.last, k) && !isWord(r, W.final, k)) return 0;
  k++;
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k)) return 0;
  k++;
  return isWord(r, W.work, k) || isWord(r, W.made, k) || spelled(r, r.at + k) === 'worked'
    ? k + 1
    : k;
}

/** "(24 sts by the end of row 9)" */
const isEndOfRow = (r: Reader): boolean => isWord(r, W.end, isWord(r, W.the, 1) ? 2 : 1);

const isPlaceOfPiece = (r: Reader): boolean =>
  /^(shoulders?|neck|neckline|armholes?|underarms?|waist|top|bottom|hem|cuff|wrist|yoke)$/.test(
    spelled(r, r.at + (isWord(r, W.the, 1) ? 2 : 1)),
  );

const COMPLETE = wordsOf('complete completed');

const TRAILS: SenseSet = new SenseSet([
  W.total,
  W.these,
  W.in,
  W.all,
  W.made,
  W.now,
  W.around,
  W.across,
  W.on,
  W.centre,
  W.ring,
  W.remaining,
  W.st,
  W.round,
  W.row,
  W.beginning,
  W.at,
  W.end,
  W.of,
  W.the,
  W.so,
  W.for,
  W.work,
  W.side,
  W.long,
  W.corner,
  W.every,
]);

function restOfClause(r: Reader, end: number): void {
  while (r.at < end && kindAt(r) !== T.comma && kindAt(r) !== T.semicolon) r.at++;
}
