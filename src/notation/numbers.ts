/**
 * Numbers, alone or one a size: "20", "20 (24, 28)", "3 (5-7-9)", "28 [30]", "20-24-24". What looks
 * like sizes is read so only when the piece has sizes or the shape leaves no doubt, for "6 (36)" is
 * a number and a count.
 */

import { formOf, mayBeStitch } from './dictionary.ts';
import {
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Numbers } from './tree.ts';

type Values = (number | null)[];

/**
 * Lists of one small number, by that number. Nearly every number of a pattern is alone and small,
 * and a list that is shared need not be made, nor kept and moved by the collector of memory.
 */
const LONE: readonly (readonly number[])[] = Array.from({ length: 1024 }, (_, n) =>
  Object.freeze([n]),
);

export const loneValue = (n: number): readonly number[] => LONE[n] ?? [n];

/** The number at the reader's place with its sizes, or `null` where no number stands. */
export function readNumbers(r: Reader): Numbers | null {
  if (kindAt(r) === T.open) return allInBracket(r);
  if (kindAt(r) !== T.number) return dashedNumbers(r);
  const next = kindAt(r, 1);
  if (r.known.sizes < 2 && next !== T.open && next !== T.dash) return readOneNumber(r);
  const start = r.at;
  const units = unitsInWords(r);
  const n = valueAt(r) + units;
  r.at += units > 0 ? 3 : 1;
  if (kindAt(r) === T.open && saidTwice(r, n)) r.at += 3;
  // "13, (14, 15, 16) times", "9,(10,11) dc": a comma too many.
  if (kindAt(r) === T.comma && kindAt(r, 1) === T.open && sizesBehindComma(r, r.at)) r.at++;
  const more = bracketedSizes(r) ?? plainSizes(r, start);
  const values = more === null ? loneValue(n) : [n, ...more];
  return { from: fromOf(r, start), to: toOf(r), values };
}

/** "chain four (4)": a number in words with its figure behind it, which is no count. */
const saidTwice = (r: Reader, n: number): boolean =>
  kindAt(r, 1) === T.number &&
  valueAt(r, 1) === n &&
  kindAt(r, 2) === T.close &&
  !isFigure(spelled(r, r.at - 1)) &&
  isFigure(spelled(r, r.at + 1));

/** "twenty-three": what is behind the dash; 0 where no such number stands. */
function unitsInWords(r: Reader): number {
  if (kindAt(r, 1) !== T.dash || kindAt(r, 2) !== T.number || valueAt(r) < 20) return 0;
  if (valueAt(r) % 10 !== 0 || valueAt(r, 2) > 9 || isFigure(spelled(r, r.at))) return 0;
  return isFigure(spelled(r, r.at + 2)) ? 0 : valueAt(r, 2);
}

/** "(14, 15, 16) times", "(10, 11) dc", "ch 48, (64, 72).": as many as there are sizes, behind a comma. */
export function sizesBehindComma(r: Reader, comma: number): boolean {
  const close = r.partner[comma + 1] ?? -1;
  const numbers = (close - comma - 1) / 2;
  if (close < 0 || r.known.sizes < 2 || numbers !== r.known.sizes - 1) return false;
  if (r.kind[comma + 2] !== T.number || r.kind[comma + 3] !== T.comma) return false;
  const ends = r.kind[close + 1];
  if (r.word[comma - 2] === W.ch && (ends === T.stop || ends === T.comma || ends === T.end))
    return true;
  const behind = r.word[close + 1] ?? 0;
  return behind === W.times || behind === W.ch || behind === W.st || mayBeStitch(behind);
}

const isFigure = (word: string): boolean => /^\d/.test(word);

/** "sc in next (20, 22, 24) sts": the number of the first size stands in the bracket too. */
function allInBracket(r: Reader): Numbers | null {
  const chain = isWord(r, W.ch, -1);
  if ((r.known.sizes < 2 && !chain) || kindAt(r, 1) !== T.number) return null;
  const start = r.at;
  const values: Values = [];
  // "Ch (62, 66, 70)": a chain's list tells itself how many sizes there are.
  if (sizeList(r, values) && (values.length === r.known.sizes || (chain && values.length > 2)))
    return { from: fromOf(r, start), to: toOf(r), values };
  r.at = start;
  return null;
}

/** "- (-, 29, 31)": the first size has none of it. */
function dashedNumbers(r: Reader): Numbers | null {
  if (!opensDashed(r)) return null;
  const start = r.at;
  const values: Values = [null];
  r.at++;
  if (sizeList(r, values) && values.length === r.known.sizes)
    return { from: fromOf(r, start), to: toOf(r), values };
  r.at = start;
  return null;
}

/** Whether a dash stands for the first size's number. */
export const opensDashed = (r: Reader): boolean =>
  r.known.sizes > 1 && kindAt(r) === T.dash && kindAt(r, 1) === T.open;

/** Only the number itself, for places where a bracket behind it is surely something else. */
export function readOneNumber(r: Reader): Numbers | null {
  if (kindAt(r) !== T.number) return null;
  const values = loneValue(valueAt(r));
  r.at++;
  return { from: fromOf(r, r.at - 1), to: toOf(r), values };
}

/** The other sizes' numbers in brackets, or `null`, which leaves the reader where it was. */
function bracketedSizes(r: Reader): Values | null {
  if (kindAt(r) !== T.open) return null;
  const { sizes } = r.known;
  const start = r.at;
  const more: Values = [];
  while (kindAt(r) === T.open && sizeList(r, more)) {
    if (more.length + 1 >= sizes) break;
    alternating(r, more);
  }
  const counted = more.length === 1 && (isWord(r, W.times) || isWord(r, W.more));
  const fits = counted || (more.length > 0 && (more.length + 1 === sizes || more.length > 1));
  if (fits) return more;
  r.at = start;
  return null;
}

/** "64 (64) 70 (70) 76": every second size stands outside of its bracket. */
function alternating(r: Reader, more: Values): void {
  if (more.length % 2 === 0 || r.known.sizes < 3 || kindAt(r) !== T.number) return;
  const opens = kindAt(r, 1) === T.open && kindAt(r, 2) === T.number && kindAt(r, 3) === T.close;
  if (!opens && more.length + 2 !== r.known.sizes) return;
  more.push(valueAt(r));
  r.at++;
}

/** What parts the numbers of a list of sizes: "(24, 28)", "[76:82:88]". */
const LIST_SIGNS: ReadonlySet<number> = new Set([T.comma, T.dash, T.slash, T.semicolon, T.colon]);

/** "(24, 28)", "(5-7-9)", "[30]", "(-, 28)"; leaves the reader alone if it is anything else. */
export function sizeList(r: Reader, into: Values): boolean {
  const start = r.at;
  const close = r.partner[r.at] ?? -1;
  // No list is longer than a couple of dozen sizes; a longer bracket is not looked through.
  if (close < 0 || close - start > 64) return false;
  const found: Values = [];
  let expected = true;
  for (r.at++; r.at < close; r.at++) {
    const kind = kindAt(r);
    if (expected) {
      if (kind === T.number) {
        found.push(valueAt(r));
        // "(2 1/2, 3)"
        if (isFraction(r)) {
          found[found.length - 1] = valueAt(r) + valueAt(r, 1) / Math.max(1, valueAt(r, 3));
          r.at += 3;
        }
      } else if (kind === T.dash) found.push(null);
      else break;
      expected = false;
    } else if (LIST_SIGNS.has(kind)) {
      expected = true;
      if (beforeLast(r, 1)) r.at++;
    } else if (found.length > 1 && beforeLast(r, 0)) expected = true;
    else break;
  }
  // "84 (90, 96, 102 sc)": the unit stands inside.
  if (r.at === close - 1 && found.length > 1 && kindAt(r) === T.word && isUnit(r)) r.at = close;
  if (r.at < close || expected || found.length === 0) {
    r.at = start;
    return false;
  }
  r.at = close + 1;
  into.push(...found);
  return true;
}

/** "20, 24 or 28", "20, 24, and 28": the word in front of the last number, `k` tokens on. */
const beforeLast = (r: Reader, k: number): boolean =>
  (isWord(r, W.or, k) || isWord(r, W.and, k)) && kindAt(r, k + 1) === T.number;

/** "2 1/2", "2-1/2", with the reader on the whole number. */
export const isFraction = (r: Reader): boolean =>
  kindAt(r, 1) === T.number && kindAt(r, 2) === T.slash && kindAt(r, 3) === T.number;

const isUnit = (r: Reader): boolean =>
  isWord(r, W.st) || isWord(r, W.ch) || formOf(wordAt(r)) !== null;

/** "20-24-24" and "22, 26, 30 sts": only when the list has as many numbers as there are sizes. */
function plainSizes(r: Reader, start: number): Values | null {
  const { sizes } = r.known;
  if (sizes < 2) return null;
  const separator = kindAt(r);
  if (separator !== T.dash && separator !== T.slash && separator !== T.comma) return null;
  // "(40, 82)" of two sizes: nothing else stands in the bracket.
  const isAll =
    r.kind[start - 1] === T.open && kindAt(r, 1) === T.number && kindAt(r, 2) === T.close;
  if (separator === T.comma && sizes < 3 && !isAll) return null;
  const more: Values = [];
  let used = 0;
  while (more.length < sizes - 1) {
    const last = separator === T.comma && more.length === sizes - 2;
    const parted = kindAt(r, used) === separator;
    const k = used + (parted ? 1 : 0);
    const worded = last && isWord(r, W.or, k);
    if ((!parted && !worded) || kindAt(r, worded ? k + 1 : k) !== T.number) return null;
    used = worded ? k + 2 : k + 1;
    more.push(valueAt(r, used - 1));
  }
  // "sc 5, 3 dc, 2 dc": the number belongs to the stitch that it touches.
  if (separator === T.comma && isGlued(r, used - 1) && kindAt(r, used) === T.word) return null;
  if (separator === T.comma && r.kind[start - 1] === T.word && isGlued(r, -2)) return null;
  r.at += used;
  return more;
}
