/** What belongs to a label behind its numbers: sides, sizes, "and all even rows", its name, its colon. */

import { readCounts } from './count.ts';
import { formOf, mayBeStitch } from './dictionary.ts';
import type { LabelDraft } from './label-draft.ts';
import {
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  passWords,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { isRowName, NAMERS } from './row-words.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Side } from './tree.ts';

/** "inclusive", "(RS)", "[WS]", "and all even rows", "(dec row)", "- Drawstring". */
export function afterNumbers(r: Reader, draft: LabelDraft): void {
  for (let guard = 0; guard < 6; guard++) {
    const before = r.at;
    onlySizes(r, draft);
    if (isWord(r, W.include) || (isWord(r, W.only) && draft.sizes !== '')) r.at++;
    everyBehind(r, draft);
    sideBehind(r, draft);
    wordsBehind(r, draft);
    if (r.at === before) return;
  }
}

/** "Rnd 7 (L and XL only):", "Row 3 (size M only):" */
function onlySizes(r: Reader, draft: LabelDraft): void {
  if (kindAt(r) !== T.open || draft.sizes !== '') return;
  const close = r.partner[r.at] ?? -1;
  if (close < 0 || close - r.at > 14 || r.value[close - 1] !== W.only) return;
  draft.sizes = r.text.slice(r.base + fromOf(r, r.at + 1), r.base + (r.to[close - 1] ?? 0));
  r.at = close + 1;
}

/** "and all odd rows", "& every even row", "and every other row", "and alt rows". */
function everyBehind(r: Reader, draft: LabelDraft): void {
  if (!isWord(r, W.and)) return;
  const start = r.at++;
  passWords(r, BEFORE_EVEN);
  const even = isWord(r, W.even);
  const odd = isWord(r, W.odd);
  const other = isWord(r, W.other) || isWord(r, W.alternate) || passSide(r);
  if (even || odd || (other && !isRowName(r))) r.at++;
  while (
    isWord(r, W.next) ||
    isWord(r, W.remaining) ||
    /^numbered$/.test(spelled(r, r.at)) ||
    kindAt(r) === T.dash
  )
    r.at++;
  if ((!even && !odd && !other) || !isRowName(r)) {
    r.at = start;
    return;
  }
  r.at++;
  const first = draft.numbers[0] ?? 0;
  draft.every = even ? 'even' : odd ? 'odd' : first % 2 === 0 ? 'even' : 'odd';
}

/** "and every right side row", "& all WS rows" */
function passSide(r: Reader): boolean {
  if (isWord(r, W.rs) || isWord(r, W.ws)) r.at++;
  else if ((isWord(r, W.right) || isWord(r, W.wrong)) && isWord(r, W.side, 1)) r.at += 2;
  else return false;
  return isRowName(r);
}

const BEFORE_EVEN: SenseSet = new SenseSet([W.all, W.every, W.each, W.the, W.next]);

function sideBehind(r: Reader, draft: LabelDraft): void {
  const bracket = kindAt(r) === T.open;
  const start = r.at;
  if (bracket) r.at++;
  const side = sideHere(r);
  if (side === null || (bracket && kindAt(r) !== T.close)) {
    r.at = start;
    return;
  }
  if (bracket) r.at++;
  else if (kindAt(r) !== T.colon && kindAt(r) !== T.comma && kindAt(r) !== T.stop) {
    r.at = start;
    return;
  }
  draft.side = side;
}

function sideHere(r: Reader): Side | null {
  const sense = wordAt(r);
  if (sense === W.rs || sense === W.ws) {
    r.at++;
    if (isRowName(r)) r.at++;
    return sense === W.rs ? 'RS' : 'WS';
  }
  if ((sense !== W.right && sense !== W.wrong) || !isWord(r, W.side, 1)) return null;
  r.at += 2;
  if (isRowName(r)) r.at++;
  return sense === W.right ? 'RS' : 'WS';
}

/** A remark that shares the label: "Row 6 (dec row):", "Rnd 14 - Drawstring:". */
function wordsBehind(r: Reader, draft: LabelDraft): void {
  let k = 0;
  if (kindAt(r) === T.open) {
    const close = r.partner[r.at] ?? -1;
    if (close < 0 || close - r.at > 8) return;
    if (r.kind[close + 1] !== T.colon && !namesAlone(r, close)) return;
    // "(WS, colour B)", "[24 sc]"
    r.at++;
    draft.side ??= sideHere(r);
    if (kindAt(r) === T.number) countInLabel(r, close);
    r.at = close + 1;
    return;
  }
  const dash = kindAt(r) === T.dash;
  if (dash || kindAt(r) === T.comma) k = 1;
  const from = k;
  while (k < from + 5 && kindAt(r, k) === T.word) k++;
  if (k > from && kindAt(r, k) === T.colon && !hasWork(r, from, k)) r.at += k;
}

/** "Round 2 (24 sc): Ch 1, …": so many it has. */
function countInLabel(r: Reader, close: number): void {
  const [count, ...more] = readCounts(r, close) ?? [];
  const isStated = count?.unit === 'stem' || count?.unit === 'stitch';
  if (count && isStated && more.length === 0 && r.at === close) r.counts.push({ count, from: 0 });
}

/** "Row 2 (One Row Repeat)" with the work on the lines below: words alone, to the line's end. */
function namesAlone(r: Reader, close: number): boolean {
  const end = r.base + r.to[close]!;
  if (!/^[ \t]*\r?\n/.test(r.text.slice(end, end + 8))) return false;
  for (let i = r.at + 1; i < close; i++) {
    // "One" is a word of talk; figures are work's.
    if (r.hash[i] === 0 || mayBeStitch(r.word[i]!) || r.word[i] === W.ch) return false;
  }
  return !hasWork(r, 1, close - r.at) || r.word[close - 1] === W.repeat;
}

const WORK: SenseSet = new SenseSet([W.ch, W.repeat, W.skip, W.turn, W.blo, W.flo, W.in]);

/** Work may stand before a colon too: "Row 3 - ch 3: …" is not a title. */
function hasWork(r: Reader, from: number, to: number): boolean {
  for (let k = from; k < to; k++) {
    if (WORK.has(wordAt(r, k))) return true;
  }
  return false;
}

export function skipBracket(r: Reader): void {
  const close = r.partner[r.at] ?? -1;
  if (close > 0 && close < r.at + 8) r.at = close + 1;
}

/** Colon, stop, dash or bar behind the label, and a side mark behind that. */
export function closeLabel(r: Reader, draft: LabelDraft): void {
  for (let guard = 0; guard < 4; guard++) {
    const kind = kindAt(r);
    const closes =
      kind === T.colon ||
      kind === T.stop ||
      kind === T.dash ||
      kind === T.equals ||
      (kind === T.pipe && kindAt(r, -1) !== T.colon) ||
      kind === T.comma ||
      (kind === T.close && (r.partner[r.at] ?? -1) < 0) ||
      (kind === T.star && valueAt(r) === 2 && draft.to === toOf(r));
    if (closes) r.at++;
    else if (draft.side === null) {
      const before = r.at;
      sideBehind(r, draft);
      if (r.at === before) break;
    } else break;
  }
  rowNameBehind(r);
  titleBehind(r);
}

/** "Round 1 — Centre circle" with its work on the lines below. */
function titleBehind(r: Reader): void {
  if (kindAt(r, -1) !== T.dash && kindAt(r, -1) !== T.colon) return;
  let k = 0;
  while (
    k < 6 &&
    (kindAt(r, k) === T.word || kindAt(r, k) === T.number || kindAt(r, k) === T.ordinal)
  ) {
    if (k > 0 && opensLine(r, k)) break;
    if (mayBeStitch(wordAt(r, k)) || hasWork(r, k, k + 1)) return;
    k++;
  }
  if (k > 0 && k < 6 && opensLine(r, k)) r.at += k;
}

/** Whether a line end stands before the token; only asked behind a label. */
const opensLine = (r: Reader, ahead: number): boolean => {
  const at = r.at + ahead;
  return r.text.slice(r.base + (r.to[at - 1] ?? 0), r.base + (r.from[at] ?? 0)).includes('\n');
};

/** "Row 3 - (Inc) ch 1, 2 sc in next sc": what the row does; "(inc) x 6" and "(inc), sc 2" are work. */
function namesShaping(r: Reader): boolean {
  const form = formOf(wordAt(r, 1));
  if (!form || form.stem || (form.shape !== 'increase' && form.shape !== 'together')) return false;
  if (isWord(r, W.ch, 3)) return true;
  const k = kindAt(r, 3) === T.number ? 4 : 3;
  return mayBeStitch(wordAt(r, k)) && isWord(r, W.in, k + 1);
}

/** "Row 5 (WS): - Decrease row - ch 1": what the row is, behind its number. */
function rowNameBehind(r: Reader): void {
  let k = kindAt(r) === T.dash ? 1 : 0;
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) - r.at : -1;
  if (close > 0 && isRowName(r, close + 1) && kindAt(r, close + 2) === T.colon) {
    r.at += close + 3;
    return;
  }
  if (close === 2 && namesShaping(r)) {
    r.at += 3;
    return;
  }
  if (kindAt(r, k) !== T.word || (!isOneOf(r, NAMERS, k) && kindAt(r, -1) !== T.dash)) return;
  const from = k;
  while (k < from + 4 && kindAt(r, k) === T.word && !isRowName(r, k)) k++;
  const sign = kindAt(r, k + 1);
  if (k > from && isRowName(r, k) && (sign === T.dash || sign === T.colon)) r.at += k + 2;
}
