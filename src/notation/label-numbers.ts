/** The numbers of a label: "7", "7-12", "25 & 26", "6, 7 and 8", "12+", "5-end", "2-6 (8, 9)". */

import { mayBeStitch } from './dictionary.ts';
import { sizeList } from './numbers.ts';
import {
  endsInS,
  isGlued,
  isWord,
  kindAt,
  onNewLine,
  type Reader,
  spelled,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { RowLabel } from './tree.ts';

type LabelDraft = { -readonly [K in keyof RowLabel]: RowLabel[K] };

/** A range longer than this is a slip; it stays as its first number with an open end. */
const LONGEST_RANGE = 2000;

/** Whether numbers (or ordinals) stand here; they go into the draft. */
export function readLabelNumbers(r: Reader, draft: LabelDraft): boolean {
  const kind = kindAt(r);
  draft.lastBySize = null;
  draft.firstBySize = null;
  if (kind === T.open) return allInBracket(r, draft);
  if (kind !== T.number && kind !== T.ordinal) return false;
  const numbers = [valueAt(r)];
  r.at++;
  while (numbers.length < LONGEST_RANGE && more(r, numbers, kind, draft));
  draft.numbers = numbers;
  sizesOf(r, draft);
  return true;
}

/** "Row (22, 24, 26):": a number for each size; with one size, rows of these numbers. */
function allInBracket(r: Reader, draft: LabelDraft): boolean {
  const start = r.at;
  const listed: (number | null)[] = [];
  const { sizes } = r.known;
  const found = sizeList(r, listed) && (sizes < 2 ? listed.length > 1 : listed.length === sizes);
  if (!found || listed.includes(null)) {
    r.at = start;
    return false;
  }
  const rows = listed.map((n) => n ?? 0);
  draft.numbers = [...new Set(rows)].sort((a, b) => a - b);
  if (sizes < 2) return true;
  draft.firstBySize = rows;
  draft.lastBySize = rows;
  return true;
}

/** "Row 4 - (21, 23, 25):": a last row for each size, behind the dash at the reader's place. */
function lastInBracket(r: Reader, k: number, numbers: number[], draft: LabelDraft): boolean {
  const start = r.at;
  const lasts: (number | null)[] = [];
  r.at += k;
  const first = numbers[0] ?? 0;
  const { sizes } = r.known;
  const found = sizeList(r, lasts) && (sizes < 2 ? lasts.length > 1 : lasts.length === sizes);
  const most = Math.max(...lasts.map((n) => n ?? 0));
  if (!found || most <= first || most - first > LONGEST_RANGE) {
    r.at = start;
    return false;
  }
  for (let n = first + 1; n <= most; n++) numbers.push(n);
  if (sizes > 1) {
    draft.firstBySize = lasts.map(() => first);
    draft.lastBySize = lasts.map((n) => n ?? 0);
  }
  return true;
}

function more(r: Reader, numbers: number[], kind: number, draft: LabelDraft): boolean {
  if (kindAt(r) === T.plus) {
    // "R13+14: …": two rounds.
    if (kindAt(r, 1) === kind && kindAt(r, 2) !== T.word) {
      numbers.push(valueAt(r, 1));
      r.at += 2;
      return true;
    }
    draft.openEnd = true;
    r.at++;
    return false;
  }
  let k = 0;
  // "11.-14."
  if (kindAt(r) === T.stop && kindAt(r, 1) === T.dash && kindAt(r, 2) === kind) k = 1;
  if (isRow(r, k)) k++;
  while (kindAt(r, k) === T.comma && (kindAt(r, k + 1) === kind || isWord(r, W.and, k + 1))) k++;
  const range =
    kindAt(r, k) === T.dash || isWord(r, W.to, k) || isWord(r, W.through, k) || isWord(r, W.a, k);
  // "7-12 rows / 6 rows": behind the word a bar parts how many they are.
  const slash = kindAt(r, k) === T.slash && k === 0;
  const and = isWord(r, W.and, k) || isWord(r, W.or, k) || slash;
  if (!range && !and && (k === 0 || kindAt(r, k - 1) !== T.comma)) return false;
  if (range || and) k++;
  while (isWord(r, W.the, k)) k++;
  // "R: 3 – R: 5"
  if (isWord(r, W.r, k) && kindAt(r, k + 1) === T.colon && kindAt(r, k + 2) === T.number) k += 2;
  else if (isRow(r, k)) k++;
  if (range && opensEnd(r, k)) {
    draft.openEnd = true;
    r.at += k + 1;
    return false;
  }
  if (range && kindAt(r, k) === T.open && numbers.length === 1) {
    lastInBracket(r, k, numbers, draft);
    return false;
  }
  if (kindAt(r, k) !== kind || (!range && worksOn(r, k))) return false;
  const first = numbers.at(-1) ?? 0;
  const value = valueAt(r, k);
  if (range && (numberOfWork(r, k) || (worksOn(r, k) && value <= first))) return false;
  r.at += k + 1;
  if (!range) numbers.push(value);
  else if (value - first > LONGEST_RANGE) draft.openEnd = true;
  else for (let n = first + 1; n <= value; n++) numbers.push(n);
  return true;
}

/** "Rnd 1 - 6 sc in ring": a dash that stands free before the number of a stitch closes the label. */
const numberOfWork = (r: Reader, k: number): boolean =>
  kindAt(r, k - 1) === T.dash &&
  !isGlued(r, k - 1) &&
  !endsInS(r, r.at - 2) &&
  !isCapitalised(r, k + 1) &&
  (isWord(r, W.ch, k + 1) || mayBeStitch(wordAt(r, k + 1)));

/** "R5 - 9 Sc in each st": the work begins behind the second number. */
function isCapitalised(r: Reader, k: number): boolean {
  const at = r.base + (r.from[r.at + k] ?? 0);
  return /^[A-Z][a-z]/.test(r.text.slice(at, at + 2));
}

const isRow = (r: Reader, k: number): boolean =>
  isWord(r, W.row, k) ||
  isWord(r, W.round, k) ||
  (isWord(r, W.r, k) && kindAt(r, k + 1) === T.number);

/** "Rows 4-x", "5-end", "3-?" */
function opensEnd(r: Reader, k: number): boolean {
  if (isWord(r, W.end, k)) return true;
  const one = kindAt(r, k) === T.word && /^[xn?]$/.test(spelled(r, r.at + k));
  return one || (kindAt(r, k) === T.stop && spelled(r, r.at + k).startsWith('?'));
}

/** "R4, 5 sc": the five belong to the work. */
function worksOn(r: Reader, k: number): boolean {
  return (
    kindAt(r, k + 1) === T.word &&
    // "Round 3 and 4" above its work
    !onNewLine(r, r.at + k + 1) &&
    !isWord(r, W.and, k + 1) &&
    // "Rounds 2, 3 and 4 are worked the same"
    !isWord(r, W.is, k + 1) &&
    !isWord(r, W.to, k + 1) &&
    !isRow(r, k + 1) &&
    !isWord(r, W.include, k + 1) &&
    !isWord(r, W.rs, k + 1) &&
    !isWord(r, W.ws, k + 1) &&
    !isWord(r, W.through, k + 1)
  );
}

/** "Rows 2-6 (8, 9)", "Rnds 4-9 [11]", "Round 11(13)": the last row in the other sizes. */
function sizesOf(r: Reader, draft: LabelDraft): void {
  if (kindAt(r) !== T.open || draft.lastBySize !== null) return;
  const start = r.at;
  if (rangesOf(r, draft)) return;
  const others: (number | null)[] = [];
  if (!sizeList(r, others)) return;
  const last = draft.numbers.at(-1) ?? 0;
  const fits =
    others.length + 1 === r.known.sizes || (others.length > 1 && draft.numbers.length > 1);
  if (!fits) {
    r.at = start;
    return;
  }
  const lasts = [last, ...others.map((n) => n ?? 0)];
  draft.lastBySize = lasts;
  const most = Math.min(Math.max(...lasts), last + LONGEST_RANGE);
  const all = [...draft.numbers];
  if (draft.numbers.length > 1) for (let n = last + 1; n <= most; n++) all.push(n);
  draft.numbers = all;
}

/** "Rows 42-60 (44-62, 46-64)": a range of its own for each size. */
function rangesOf(r: Reader, draft: LabelDraft): boolean {
  const close = r.partner[r.at] ?? -1;
  const { sizes } = r.known;
  if (sizes < 2 || close !== r.at + 4 * (sizes - 1)) return false;
  const firsts = [draft.numbers[0] ?? 0];
  const lasts = [draft.numbers.at(-1) ?? 0];
  for (let k = 1; k < close - r.at; k += 4) {
    const isRange =
      kindAt(r, k) === T.number && kindAt(r, k + 1) === T.dash && kindAt(r, k + 2) === T.number;
    const [first, last] = [valueAt(r, k), valueAt(r, k + 2)];
    const parts = k + 3 === close - r.at || LIST_SIGNS.has(kindAt(r, k + 3));
    if (!isRange || !parts || last < first || last - first > LONGEST_RANGE) return false;
    firsts.push(first);
    lasts.push(last);
  }
  draft.firstBySize = firsts;
  draft.lastBySize = lasts;
  const all = new Set<number>();
  firsts.forEach((first, at) => {
    for (let n = first; n <= lasts[at]!; n++) all.add(n);
  });
  draft.numbers = [...all].sort((a, b) => a - b);
  r.at = close + 1;
  return true;
}

const LIST_SIGNS: ReadonlySet<number> = new Set([T.comma, T.semicolon, T.slash]);
