/** Classes of characters, and the letters of the text at hand as numbers. */

export const LETTER = 1;
export const DIGIT = 2;
export const BLANK = 3;
const SIGN = 4;

/** Classes of ASCII, in a column: nearly all characters are found here. */
const CLASSES = new Uint8Array(128);
for (let c = 0; c < 128; c++) {
  if ((c >= 65 && c <= 90) || (c >= 97 && c <= 122)) CLASSES[c] = LETTER;
  else if (c >= 48 && c <= 57) CLASSES[c] = DIGIT;
  else if (c <= 32 || c === 127 || c === 39 || c === 95 || c === 96) CLASSES[c] = BLANK;
  else CLASSES[c] = SIGN;
}

export const classOf = (code: number): number => (code < 128 ? CLASSES[code]! : rareClass(code));

function rareClass(code: number): number {
  if (code === 0xa0 || code === 0xad || code === 0xfeff || code === 0xfe0f) return BLANK;
  if (code >= 0x2000 && code <= 0x200f) return BLANK;
  if (code === 0x2018 || code === 0x2019 || code === 0x202f || code === 0x3000) return BLANK;
  if (code >= 0xff10 && code <= 0xff19) return DIGIT;
  if ((code >= 0xff21 && code <= 0xff3a) || (code >= 0xff41 && code <= 0xff5a)) return LETTER;
  if (code >= 0xc0 && code < 0x2000 && code !== 0xd7 && code !== 0xf7) return LETTER;
  return SIGN;
}

/** Lower-case ASCII for a letter; Turkish dotted and dotless i and full-width letters folded. */
export function fold(code: number): number {
  if (code < 128) return code >= 65 && code <= 90 ? code | 32 : code;
  if (code === 0x130 || code === 0x131) return 105;
  if (code >= 0xff21 && code <= 0xff3a) return code - 0xff21 + 97;
  if (code >= 0xff41 && code <= 0xff5a) return code - 0xff41 + 97;
  return code;
}

/** Characters inside a word that carry no letter. */
export const isSilent = (code: number): boolean =>
  code === 39 || code === 0x2019 || code === 0xad || code === 0x200b || code === 0x2018;

/**
 * UTF-16 codes of a stretch of text, with zeros behind: loops end there without a test of bounds,
 * and each character is fetched from the string once, however often it is looked at.
 */
export type Codes = Uint16Array;

const ROOM = 1 << 12;
/** Looking a few characters ahead stays inside. */
const BEHIND = 8;
let shared: Codes = new Uint16Array(ROOM);

/** Good until the next call, which uses the same room again. */
export function codesOf(text: string, from: number, to: number): Codes {
  const length = to - from;
  if (length + BEHIND > shared.length) shared = new Uint16Array(2 * length + BEHIND);
  else if (shared.length > ROOM && length + BEHIND <= ROOM) shared = new Uint16Array(ROOM);
  const codes = shared;
  for (let i = 0; i < length; i++) codes[i] = text.charCodeAt(from + i);
  for (let i = 0; i < BEHIND; i++) codes[length + i] = 0;
  return codes;
}
