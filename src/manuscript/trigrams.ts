/**
 * Which three signs stand in a row anywhere in a text. Most shapes of pasted text are looked for in vain, and
 * each look would go over the whole text: one pass marks what stands in it, and a shape is looked for only
 * where all that its words are made of was met. What is told may be there; what is not told is not.
 *
 * Letters count in small, all figures as 0, curly quotes as straight ones, dashes as hyphens; blanks in a row
 * count as one, and those at the start of a line not at all.
 */

/** Words of which one must stand in a text; a list of words stands there if all of them do. */
export type Needs = readonly (readonly number[])[];

const ROOM = 1 << 14;
/** Behind the trigrams, the signs by themselves. */
const SIGNS = ROOM;
const ASCII = 128;

const BLANK = 32;
const LINE_END = 10;
const FIGURE = 48;
/** Signs beyond ASCII; pictures and the letters of Greek and Cyrillic are told from the others. */
const OTHER = 1;
const PICTURE = 2;
const FOREIGN = 3;

export const A_PICTURE: string = '\u{1f9f6}';
export const A_FOREIGN_LETTER = '\u0430';
export const ANY_OTHER_SIGN = '\u2044';

const FOLDED = new Uint8Array(ASCII);
for (let code = 0; code < ASCII; code++) {
  if (code >= 65 && code <= 90) FOLDED[code] = code | 32;
  else if (code >= 48 && code <= 57) FOLDED[code] = FIGURE;
  else if (code === LINE_END || code === 13) FOLDED[code] = LINE_END;
  else FOLDED[code] = Math.max(code, BLANK);
}

/** What regular expressions call white space, beyond ASCII; the ends of lines and paragraphs are a case apart. */
const isBlank = (code: number): boolean =>
  code === 0xa0 ||
  code === 0x1680 ||
  (code >= 0x2000 && code <= 0x200a) ||
  code === 0x202f ||
  code === 0x205f ||
  code === 0x3000 ||
  code === 0xfeff;

const endsLine = (code: number): boolean => code === 0x2028 || code === 0x2029;

function folded(code: number): number {
  if (code < ASCII) return FOLDED[code]!;
  if (code === 0x201c || code === 0x201d) return 34;
  if (code === 0x2013 || code === 0x2014) return 45;
  if (isBlank(code)) return BLANK;
  if (code >= 0x2600) return PICTURE;
  return code >= 0x370 && code <= 0x4ff ? FOREIGN : OTHER;
}

const at = (a: number, b: number, c: number): number =>
  Math.imul((a << 14) | (b << 7) | c, 0x9e3779b1) >>> 18;

/** What stands in a text: see `mayHold`. */
export type Trigrams = Uint8Array;

/** A text and what stands in it. */
export interface Marked {
  readonly text: string;
  readonly marks: Trigrams;
}

/** Used again by every text: good until the next one is gone through. */
const shared: Trigrams = new Uint8Array(SIGNS + ASCII);

export function trigramsOf(text: string): Trigrams {
  const marks = shared;
  marks.fill(0);
  let a = 0;
  let b = LINE_END;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // It is a line end to some shapes and a sign to others: nothing is told of such a text.
    if (endsLine(code)) return marks.fill(1);
    const c = folded(code);
    if (c === BLANK && (b === BLANK || b === LINE_END)) continue;
    marks[at(a, b, c)] = 1;
    marks[SIGNS + c] = 1;
    a = b;
    b = c;
  }
  marks[at(a, b, LINE_END)] = 1;
  return marks;
}

/** Where in the marks the words are looked up; fewer than three signs are looked up one by one. */
function placesOf(words: string): number[] {
  const signs: number[] = [];
  for (let i = 0; i < words.length; i++) {
    const code = folded(words.charCodeAt(i));
    if (code !== BLANK || signs.at(-1) !== BLANK) signs.push(code);
  }
  if (signs.length < 3) return signs.map((sign) => SIGNS + sign);
  return signs.slice(2).map((sign, i) => at(signs[i]!, signs[i + 1]!, sign));
}

/**
 * Needs of a shape: whatever it matches must have one of these in it, letters in any case. In a list, all
 * must stand somewhere in the text.
 */
export const needs = (...words: readonly (string | readonly string[])[]): Needs =>
  words.map((one) => (typeof one === 'string' ? placesOf(one) : one.flatMap(placesOf)));

/** Whether one of the needs may be met by the text. */
export function mayHold(marks: Trigrams, any: Needs): boolean {
  for (let i = 0; i < any.length; i++) {
    const places = any[i]!;
    let k = 0;
    while (k < places.length && marks[places[k]!] === 1) k++;
    if (k === places.length) return true;
  }
  return false;
}
