/** Numbers of rows: "row 4", "rnds 2 and 3", "rows 4-7", "2nd to 5th rows", "R1 & R2". */

import { mayBeStitch } from './dictionary.ts';
import { isHinted } from './hints.ts';
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  rareWords,
  spelled,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** A range longer than this is a slip, and is not written out. */
const LONGEST_RANGE = 2000;

const isRow = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.row, ahead) ||
  isWord(r, W.round, ahead) ||
  isWord(r, W.r, ahead) ||
  namesSteps(r, ahead);

/** "5. Repeat steps 3-4": the rows of a list whose numbers are the rows' own, as this one's is. */
export function namesSteps(r: Reader, ahead: number): boolean {
  if (!isHinted(r, STEPS.hint) || !isOneOf(r, STEPS, ahead)) return false;
  return kindAt(r, ahead + 1) === T.number && /^\s*\d/.test(r.text.slice(r.base, r.base + 4));
}
const STEPS = rareWords('steps');

/** Rows named here, or `null`, which leaves the reader where it was. */
export function readRowNumbers(r: Reader): number[] | null {
  const start = r.at;
  while (isWord(r, W.the)) r.at++;
  const ordinal = kindAt(r) === T.ordinal;
  if (!ordinal) {
    if (!isRow(r)) return fail(r, start);
    r.at++;
  }
  const rows: number[] = [];
  // "rows 1st to 4th rows"
  const kind = ordinal || kindAt(r) === T.ordinal ? T.ordinal : T.number;
  if (isWord(r, W.no)) r.at++;
  // "Repeat R: 2"
  if (kindAt(r) === T.colon && isWord(r, W.r, -1)) r.at++;
  // "row (2)"
  const held = kindAt(r) === T.open && kindAt(r, 1) === kind && kindAt(r, 2) === T.close;
  if (held) r.at++;
  if (kindAt(r) !== kind) return fail(r, start);
  rows.push(valueAt(r));
  r.at += held ? 2 : 1;
  while (rows.length < LONGEST_RANGE && nextRow(r, rows, kind));
  if (ordinal && !isRow(r)) return fail(r, start);
  if (kind === T.ordinal && isRow(r)) r.at++;
  return rows;
}

/** "Rows 3 and 4 form pat": what is told of rows, with the reader on the first word. */
export function formsPattern(r: Reader): boolean {
  if (!isRow(r) || kindAt(r, 1) !== T.number) return false;
  // So most labels end, and such a sentence has none of these signs before its verb.
  const next = kindAt(r, 2);
  if (next === T.colon || next === T.stop || next === T.open) return false;
  const from = r.base + fromOf(r, r.at);
  return FORM_PATTERN.test(r.text.slice(from, from + 60));
}

const FORM_PATTERN =
  /^(?:row|rnd|round)s? ?\d[\d\s,&–-]*(?:(?:and|to|through)\s+\d+ )?(?:forms?|sets?|make up|establish(?:es)?) (?:the )?(?:st(?:itch)? )?pat/i;

/** "Rep 3 and 4", "repeat 2-5": numbers of steps, where nothing says that they are times. */
export function readBareRows(r: Reader): number[] | null {
  if (!namesBareRows(r, 0)) return null;
  const rows = [valueAt(r)];
  r.at++;
  while (rows.length < LONGEST_RANGE && nextRow(r, rows, T.number));
  return rows;
}

/** Whether two bare numbers stand here that the clause leaves alone. */
export function namesBareRows(r: Reader, ahead: number): boolean {
  const link = kindAt(r, ahead + 1) === T.dash || isWord(r, W.to, ahead + 1);
  if (kindAt(r, ahead) !== T.number || kindAt(r, ahead + 2) !== T.number) return false;
  if (!link && !isWord(r, W.and, ahead + 1)) return false;
  // "Rep 7-10 for 3 more times"
  if (isWord(r, W.for, ahead + 3) && kindAt(r, ahead + 4) === T.number) return true;
  return clauseEnds(r, ahead + 3) || kindAt(r, ahead + 3) === T.open || isWord(r, W.to, ahead + 3);
}

function fail(r: Reader, start: number): null {
  r.at = start;
  return null;
}

/** "-7", "to 7", ", 5", "and 6", "& rnd 7" behind a row number. */
function nextRow(r: Reader, rows: number[], kind: number): boolean {
  let k = 0;
  while (kindAt(r, k) === T.comma) k++;
  // "rep rows 5-8 until row 17": the last row that there is to be, behind those that are repeated.
  if (rows.length > 1 && isWord(r, W.to, k) && spelled(r, r.at + k) === 'until') return false;
  const to = isWord(r, W.to, k);
  // "rep row 2 until 24 (30) rows": how many rows there are to be, not the last one named.
  if (to && k === 0 && !isRow(r, 1) && countsElse(r)) return false;
  const range = kindAt(r, k) === T.dash || to || isWord(r, W.through, k);
  const and = kindAt(r, k) === T.plus || isWord(r, W.and, k) || isWord(r, W.or, k);
  if (!range && !and && k === 0) return false;
  if (range || and) k++;
  while (isWord(r, W.the, k)) k++;
  // "rows 2-3, and row 2 once more": another order.
  if (isRow(r, k) && isWord(r, W.once, k + 2)) return false;
  if (isRow(r, k)) k++;
  if (kindAt(r, k) !== kind) return false;
  // "rep row 2, 3 more times" and "rep row 2, 24 sc" name no second row.
  if (kind === T.number && !range && takesElse(r, k + 1)) return false;
  // "rep rnd 5 – 54 sts": a count behind a dash.
  if (range && !to && countsBehind(r, k)) return false;
  const value = valueAt(r, k);
  const first = rows.at(-1) ?? value;
  r.at += k + 1;
  if (!range) rows.push(value);
  else for (let n = first + 1; n <= value && n - first < LONGEST_RANGE; n++) rows.push(n);
  return true;
}

/** "– 54 sts", "– 67 dc", "– 67 (71, 75) dc": what is counted stands behind the number at a token ahead. */
function countsBehind(r: Reader, ahead: number): boolean {
  const close = kindAt(r, ahead + 1) === T.open ? (r.partner[r.at + ahead + 1] ?? -1) : -1;
  const k = close > 0 ? close + 1 - r.at : ahead + 1;
  return isWord(r, W.st, k) || mayBeStitch(wordAt(r, k)) || isWord(r, W.group, k);
}

/** A unit of length, or the sign of inches, `ahead`; or the fraction before it. */
function isLength(r: Reader, ahead: number): boolean {
  const k = kindAt(r, ahead) === T.number && kindAt(r, ahead + 1) === T.slash ? ahead + 3 : ahead;
  const sense = wordAt(r, k);
  if (sense === W.inch || sense === W.cm || sense === W.mm) return true;
  return kindAt(r, k) === T.other && /["”″]/.test(spelled(r, r.at + k));
}

/** "until 24 rows", "to 24 (30, 36) rows", "until 9 sts remain", with the reader on the first word. */
function countsElse(r: Reader): boolean {
  if (kindAt(r, 1) !== T.number) return false;
  const close = kindAt(r, 2) === T.open ? (r.partner[r.at + 2] ?? -1) : -1;
  const k = close > 0 ? close + 1 - r.at : 2;
  if (isWord(r, W.row, k) || isWord(r, W.round, k)) return true;
  // "rep row 2 until 8 (10½, 12)\" from beg"
  if (isLength(r, k)) return true;
  return isWord(r, W.st, k) || mayBeStitch(wordAt(r, k)) || isWord(r, W.remaining, k);
}

function takesElse(r: Reader, ahead: number): boolean {
  if (kindAt(r, ahead) !== T.word) return kindAt(r, ahead) === T.times;
  return (
    isWord(r, W.times, ahead) ||
    isWord(r, W.more, ahead) ||
    isWord(r, W.st, ahead) ||
    isWord(r, W.x, ahead) ||
    isWord(r, W.ch, ahead)
  );
}
