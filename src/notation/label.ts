/**
 * Labels: "Rnd 4:", "Rows 7 to 12 incl", "R4:", "4.", "4th rnd:", "Row 4 (RS):", "Next row:",
 * "Set-up row", "Row 2 and all even rows", "Size 5 only: 11th round:".
 */

import { hashOf, mayBeStitch, PROSE, senseOfWord } from './dictionary.ts';
import { afterNumbers, closeLabel, skipBracket } from './label-behind.ts';
import { clearedLabel, copyOfLabel, type LabelDraft } from './label-draft.ts';
import { readLabelNumbers } from './label-numbers.ts';
import { nearRowWord } from './near-words.ts';
import { readNumbers, sizeList } from './numbers.ts';
import {
  clauseEnds,
  fromOf,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { formsPattern } from './row-numbers.ts';
import { isRowName, NAMERS } from './row-words.ts';
import { forgetScan } from './scan.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import type { Numbers, RowLabel, Side } from './tree.ts';
import { yarnSaid } from './yarn-said.ts';

/** The label with which the text begins, or `null`, which leaves the reader where it was. */
export function readLabel(r: Reader): RowLabel | null {
  const start = r.at;
  skipBullets(r);
  if (formsPattern(r)) {
    r.at = start;
    return null;
  }
  const draft = clearedLabel();
  draft.from = fromOf(r, r.at);
  const first = r.at;
  mendRowWord(r);
  draft.sizes = sizesHere(r);
  draft.side = sideWord(r);
  const found =
    numbered(r, draft) ||
    numberFirst(r, draft) ||
    ordinal(r, draft) ||
    named(r, draft) ||
    bare(r, draft);
  if (!found) {
    r.at = start;
    return null;
  }
  afterNumbers(r, draft);
  draft.to = toOf(r);
  draft.text = labelText(r, first);
  if (!endsPlainly(draft.text)) draft.yarn = yarnSaid(draft.text, r.known.yarns);
  closeLabel(r, draft);
  return copyOfLabel(draft);
}

/** "Rnd 4", "Row 3 (RS)": a number or a side, and no yarn, stands last. */
function endsPlainly(words: string): boolean {
  const last = words.charCodeAt(words.length - 1);
  return (last >= 48 && last <= 57) || SIDE_LAST.test(words);
}

const SIDE_LAST = /^(?!.*\s-)[^([–—:,]*\d [([][RW]S[)\]]$/;

/** Bullets and the stars of bold type that lists and pages leave behind. */
function skipBullets(r: Reader): void {
  for (let k = 0; k < 3; k++) {
    const kind = kindAt(r);
    if (kind === T.dash || kind === T.other || kind === T.pipe || kind === T.times) r.at++;
    else if (kind === T.star && labelBehind(r)) r.at++;
    else break;
  }
}

const labelBehind = (r: Reader): boolean =>
  isRowWord(r, 1) ||
  (kindAt(r, 1) === T.ordinal && isRowWord(r, 2)) ||
  isWord(r, W.size, 1) ||
  kindAt(r, 1) === T.star;

const isRowWord = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.row, ahead) ||
  isWord(r, W.round, ahead) ||
  (isWord(r, W.r, ahead) &&
    (kindAt(r, ahead + 1) === T.number ||
      (kindAt(r, ahead + 1) === T.colon && kindAt(r, ahead + 2) === T.number)));

/** "Rwo 4:", "Rouond 3:": the word that names the row, told by the number and the colon behind it. */
function mendRowWord(r: Reader): void {
  if (kindAt(r) !== T.word || wordAt(r) !== 0 || kindAt(r, 1) !== T.number) return;
  let k = 2;
  while (kindAt(r, k) === T.dash || kindAt(r, k) === T.number) k++;
  if (kindAt(r, k) !== T.colon) return;
  const reading = nearRowWord(spelled(r, r.at));
  if (reading === null) return;
  r.word[r.at] = senseOfWord(reading);
  r.value[r.at] = senseOfWord(reading);
  r.hash[r.at] = hashOf(reading);
  forgetScan();
  r.slips.push({ from: fromOf(r, r.at), to: r.to[r.at]!, reading });
}

/** "Size M only:", "Sizes L and XL:", "Small:"; needs a colon before the row or the work. */
function sizesHere(r: Reader): string {
  const all = isWord(r, W.all) && isWord(r, W.size, 1);
  if (!isWord(r, W.size) && !all && !onlyAhead(r)) return '';
  const start = r.at;
  for (let k = 1; k < 12; k++) {
    const kind = kindAt(r, k);
    if (kind === T.colon) {
      const from = fromOf(r, start);
      r.at = start + k;
      const text = r.text.slice(r.base + from, r.base + toOf(r));
      r.at++;
      return text;
    }
    if (kind === T.end || kind === T.stop || kind === T.semicolon) break;
  }
  return '';
}

/** "S only:", "M and L only:", in front of a row. */
function onlyAhead(r: Reader): boolean {
  if (kindAt(r) !== T.word) return false;
  for (let k = 1; k < 6; k++) {
    if (isWord(r, W.only, k)) return kindAt(r, k + 1) === T.colon;
    const kind = kindAt(r, k);
    if (kind !== T.word && kind !== T.comma && kind !== T.slash) return false;
  }
  return false;
}

/** "RS Round 11", "WS row 3". */
function sideWord(r: Reader): Side | null {
  const side = isWord(r, W.rs) ? 'RS' : isWord(r, W.ws) ? 'WS' : null;
  if (side === null || !isRowWord(r, 1)) return null;
  r.at++;
  return side;
}

/** "Row 4", "Rnds 7-12", "R4", "Edge round 1". */
function numbered(r: Reader, draft: LabelDraft): boolean {
  const start = r.at;
  // "Border Rnd 1:", "Border-Rnd 1:"
  const row = kindAt(r, 1) === T.dash ? 2 : 1;
  if (isOneOf(r, PLACES) && isRowWord(r, row) && kindAt(r, row + 1) === T.number) r.at += row;
  r.at += chainAndRow(r);
  const told = inRow(r);
  r.at += told;
  if (!isRowWord(r)) return undo(r, start);
  draft.word = isWord(r, W.round) ? 'round' : isWord(r, W.row) ? 'row' : letterWord(r);
  r.at++;
  if (
    kindAt(r) === T.stop ||
    isWord(r, W.no) ||
    (kindAt(r) === T.other && kindAt(r, 1) === T.number)
  )
    r.at++;
  // "Rows: 3 and 4 :"
  if (kindAt(r) === T.colon && kindAt(r, 1) === T.number && colonBehindNumbers(r)) r.at++;
  // "R: 1 – ch 5"
  if (kindAt(r) === T.colon && kindAt(r, 1) === T.number && kindAt(r, 2) === T.dash) r.at++;
  if (kindAt(r) === T.open && kindAt(r, 1) === T.word) skipBracket(r);
  if (kindAt(r) === T.dash && isGlued(r)) r.at++;
  if (!readLabelNumbers(r, draft)) {
    r.at = start;
    return false;
  }
  if (told > 0 && kindAt(r) !== T.comma && kindAt(r) !== T.colon && !isWord(r, W.you))
    return undo(r, start);
  return true;
}

const TELLING = wordsOf('in for on');

/** "In round 2, work …", "For round 3 you will …": how many words lead to the row. */
function inRow(r: Reader): number {
  if (r.at !== FIRST || !isOneOf(r, TELLING)) return 0;
  return isRowWord(r, 1) && kindAt(r, 2) === T.number ? 1 : 0;
}

/** Nothing but numbers up to a second colon. */
function colonBehindNumbers(r: Reader): boolean {
  for (let k = 1; k < 9; k++) {
    const kind = kindAt(r, k);
    if (kind === T.colon) return true;
    const linked = isWord(r, W.and, k) || isWord(r, W.to, k) || kind === T.comma || kind === T.dash;
    if (kind !== T.number && !linked) return false;
  }
  return false;
}

/** "Foundation ch and row 1:", "Foundation & Row 1": words before the row that the chain shares with it. */
function chainAndRow(r: Reader): number {
  if (!isOneOf(r, FIRST_CHAIN)) return 0;
  const k = isWord(r, W.ch, 1) ? 2 : 1;
  const linked = isWord(r, W.and, k) || kindAt(r, k) === T.plus || kindAt(r, k) === T.slash;
  return linked && isRowWord(r, k + 1) && kindAt(r, k + 2) === T.number ? k + 1 : 0;
}

/** "R4": a round or a row, nobody can tell. */
const letterWord = (_: Reader): RowLabel['word'] => '';

/** "4th rnd", "7th to 12th rows", "6th, 7th, and 8th rows". */
function ordinal(r: Reader, draft: LabelDraft): boolean {
  if (kindAt(r) !== T.ordinal) return false;
  const start = r.at;
  const read = readLabelNumbers(r, draft);
  // "2nd.--1 chain": old books name the rows only once.
  if (read && (kindAt(r) === T.stop || kindAt(r) === T.colon)) return true;
  if (!read || !isRowName(r)) {
    r.at = start;
    draft.numbers = [];
    return false;
  }
  draft.word = isWord(r, W.round) ? 'round' : 'row';
  r.at++;
  return true;
}

/** "1 row:", "9-14 row:", "4 - 8 rows / 5 rows /", "1. row:" as many languages number. */
function numberFirst(r: Reader, draft: LabelDraft): boolean {
  if (kindAt(r) !== T.number) return false;
  const start = r.at;
  const read = readLabelNumbers(r, draft);
  if (read && kindAt(r) === T.stop && isRowWord(r, 1)) r.at++;
  const closes = read && isRowName(r) ? kindAt(r, 1) : T.end;
  const sign =
    closes === T.colon || closes === T.stop || closes === T.dash || (read && worksBehind(r, draft));
  if (!sign && closes !== T.close && closes !== T.slash) {
    r.at = start;
    draft.numbers = [];
    return false;
  }
  draft.word = isWord(r, W.round) ? 'round' : 'row';
  r.at++;
  return true;
}

/** "2 row 6 inc (12)", "5-8 row sc around", "3 rows (sc, inc) x 6": no "3 rows of sc". */
function worksBehind(r: Reader, { numbers }: LabelDraft): boolean {
  if (r.at > FIRST + 4 || !isRowName(r)) return false;
  if (numbers.length < 2 && /s$/i.test(spelled(r, r.at))) return false;
  if (kindAt(r, 1) === T.number) return mayBeStitch(wordAt(r, 2)) || isWord(r, W.ch, 2);
  return kindAt(r, 1) === T.open && kindAt(r, 2) === T.number && mayBeStitch(wordAt(r, 3));
}

const SHAPES = wordsOf('dec inc decrease increase decreasing increasing');

/** "Next row:", "Next 6 rows:", "Set-up row:", "Foundation row:", "Start:", "Last rnd:". */
function named(r: Reader, draft: LabelDraft): boolean {
  const start = r.at;
  let k = 0;
  let n: Numbers | null = null;
  while (
    k < 6 &&
    (kindAt(r, k) === T.word || kindAt(r, k) === T.dash || kindAt(r, k) === T.number)
  ) {
    if (isRowName(r, k)) break;
    if (kindAt(r, k) === T.number) {
      r.at = start + k;
      n = numberOfRows(r);
      k = r.at - start;
      r.at = start;
    } else k++;
  }
  const row = k > 0 && isRowName(r, k);
  if (row) {
    // "Last open box of a row:" tells of a box.
    for (let i = 1; i < k; i++) if (isWord(r, W.of, i)) return false;
    if (!isOneOf(r, NAMERS) && !isNameOfRow(r, k)) return false;
    // "Last row of each side": only a label when a colon or a stop closes it.
    r.at += k + 1;
    // "Dec row 1:": counted by itself, and not among the rows.
    if (k === 1 && isOneOf(r, SHAPES, -2) && kindAt(r) === T.number) r.at++;
    if (!closesSoon(r)) return undo(r, start);
    draft.word = isWord(r, W.round, -1) ? 'round' : 'row';
    if (isWord(r, W.next, k < 1 ? 0 : start - r.at)) draft.next = n;
    return true;
  }
  if (isWord(r, W.to) && isWord(r, W.beginning, 1) && kindAt(r, 2) === T.colon) {
    r.at += 2;
    return true;
  }
  if (isWord(r, W.next) && kindAt(r, 1) === T.colon && r.at === FIRST) {
    draft.word = 'row';
    r.at++;
    return true;
  }
  // "Row: 6 inc (12)": a list that lost the number.
  if (isRowName(r) && kindAt(r, 1) === T.colon && r.at === FIRST) {
    draft.word = isWord(r, W.round) ? 'round' : 'row';
    r.at++;
    return true;
  }
  const single = isOneOf(r, SINGLES);
  // "Chain: (ch) 8" gives the short form.
  const chain =
    isWord(r, W.ch) && kindAt(r, 2) !== T.open && (isWord(r, W.ch, 2) || isWord(r, W.ch, 3));
  // "Chain: Start by making a slip knot and chaining 16."
  if (isWord(r, W.ch) && kindAt(r, 1) === T.colon && isWord(r, W.beginning, 2)) {
    r.at++;
    return true;
  }
  // "Starting chain: ch 24", "Foundation chain: 24": without its word the chain of the label is meant.
  if (isOneOf(r, FIRST_CHAIN) && isWord(r, W.ch, 1) && kindAt(r, 2) === T.colon) {
    const alone = kindAt(r, 3) === T.number && (clauseEnds(r, 4) || isWord(r, W.st, 4));
    r.at += alone ? 1 : 2;
    return true;
  }
  if ((single || chain) && kindAt(r, 1) === T.colon) {
    r.at++;
    return true;
  }
  return draft.sizes !== '';
}

/** "Next 4 rows", "Next 1 (2) Rounds": a bracket before the row's name has other sizes, however many they are. */
function numberOfRows(r: Reader): Numbers | null {
  const start = r.at;
  const values: (number | null)[] = [r.value[start] ?? 0];
  r.at++;
  if (kindAt(r) === T.open && sizeList(r, values) && isRowName(r))
    return { from: fromOf(r, start), to: toOf(r), values };
  r.at = start;
  return readNumbers(r);
}

/** "Armhole row:", "First half round:": a name of up to three words, told by its colon. */
const isNameOfRow = (r: Reader, k: number): boolean =>
  k <= 3 &&
  kindAt(r, k + 1) === T.colon &&
  kindAt(r) === T.word &&
  (wordAt(r) <= 0 || wordAt(r) === PROSE);

/** Parts whose rows are labelled with their name. */
const PLACES = wordsOf('edge edging border trim band cuff collar brim hem pattern ruffle strap');

const SINGLES = wordsOf(
  'start setup foundation base edging border begin finishing edge center centre',
);

const FIRST_CHAIN = wordsOf('foundation base beginning starting setup start');

function undo(r: Reader, start: number): false {
  r.at = start;
  return false;
}

/** A colon, or a side mark and a colon, comes next. */
function closesSoon(r: Reader): boolean {
  for (let k = 0; k < 6; k++) {
    const kind = kindAt(r, k);
    // "All rounds are right-side rounds" has only a hyphen.
    const hyphen = kind === T.dash && isGlued(r, k) && isGlued(r, k - 1);
    if ((kind === T.colon || kind === T.dash || kind === T.equals) && !hyphen) return true;
    // "Last row, sl st in each st", "Next row, sc in each st"
    if (kind === T.comma) return k === 0 && (isWord(r, W.last, -2) || isWord(r, W.next, -2));
    if (kind === T.stop) return k === 0;
    if (kind === T.open) {
      const close = r.partner[r.at + k] ?? -1;
      if (close < 0 || close > r.at + k + 6) return false;
      k = close - r.at;
    } else if (kind !== T.word) return false;
  }
  return false;
}

/** "4.", "4)", "11.-14.", "4:". */
function bare(r: Reader, draft: LabelDraft): boolean {
  if (kindAt(r) !== T.number) return false;
  const start = r.at;
  if (!readLabelNumbers(r, draft)) return false;
  const kind = kindAt(r);
  // "11 thru 15 - Turn": a range told with a word needs no other sign than a dash.
  const range = draft.numbers.length > 1 && kindAt(r, -2) === T.word;
  const dash =
    kind === T.dash &&
    (range || (isGlued(r, -1) && startsHigh(r)) || (start === FIRST && !isGlued(r) && opensRow(r)));
  const closed =
    dash || kind === T.stop || kind === T.close || kind === T.colon || kind === T.equals;
  if (!closed || draft.numbers.some((n) => n < 1 || n > 999 || n !== Math.floor(n))) {
    r.at = start;
    draft.numbers = [];
    return false;
  }
  return true;
}

/** "7 – Rep rnd 3", "3 – Going through back loops", "2 - 2 sc in each": work behind the dash; no "2 - 4 sc". */
function opensRow(r: Reader): boolean {
  const kind = kindAt(r, 1);
  if (kind === T.open || kind === T.star) return true;
  const sense = wordAt(r, 1);
  if (kind === T.number) return mayBeStitch(wordAt(r, 2)) && isWord(r, W.in, 3);
  if (kind !== T.word) return false;
  if (mayBeStitch(sense) || OPENS_ROW.has(sense)) return true;
  return isOneOf(r, GOING, 1) && (isWord(r, W.through, 2) || isWord(r, W.in, 2));
}

const OPENS_ROW: SenseSet = new SenseSet([W.repeat, W.ch, W.turn, W.skip, W.working, W.blo, W.flo]);
const GOING = wordsOf('going');

/** "1-Slip knot ring": a capital behind the hyphen; "3-dc cluster" has none. */
function startsHigh(r: Reader): boolean {
  const code = r.text.charCodeAt(r.base + (r.from[r.at + 1] ?? 0));
  return code >= 65 && code <= 90;
}

function labelText(r: Reader, first: number): string {
  const text = r.text.slice(r.base + fromOf(r, first), r.base + toOf(r)).trim();
  return text.includes('\n') ? text.replace(/\s+/g, ' ') : text;
}
