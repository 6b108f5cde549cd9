/**
 * From characters to tokens, straight over the original text. Letters and digits split wherever
 * they meet ("sc5", "2dc", "ch3sp"); typographic variants of signs fall together; white space,
 * invisible characters and quotes make no token.
 */
import { fold, isSilent, lookUp, mix, PROSE } from './dictionary.ts';
import { W } from './senses.ts';
import { type Columns, FIRST, grow, newColumns, T, type Tokens, wipeBehind } from './tokens.ts';

/** Numbers in words; "first" to "twelfth" are ordinals. */
const NUMBER_WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen ' +
  'sixteen seventeen eighteen nineteen twenty';
const ORDINAL_WORDS =
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth';
const numberSenses = new Map<number, number>();
const ordinalSenses = new Map<number, number>();
const wordHash = (word: string): number => {
  let hash = 0;
  for (let i = 0; i < word.length; i++) hash = mix(hash, word.charCodeAt(i));
  return hash;
};
/** Which hashes, by their last bits, may be those of numbers: most words need no further look. */
const mayBeNumber = new Uint8Array(512);
const addNumbers = (words: string, into: Map<number, number>): void => {
  for (const [n, word] of words.split(' ').entries()) {
    into.set(wordHash(word), n);
    mayBeNumber[wordHash(word) & 511] = 1;
  }
};
/** Whether a word of this hash is a number or an ordinal. */
export const isNumberWord = (hash: number): boolean =>
  numberSenses.has(hash) || ordinalSenses.has(hash);
addNumbers(NUMBER_WORDS, numberSenses);
addNumbers(ORDINAL_WORDS, ordinalSenses);

/** Character classes of ASCII; everything else goes through `rareToken`. */
const LETTER = 1;
const DIGIT = 2;
const BLANK = 3;
const SIGN = 4;
const classes = new Uint8Array(128);
for (let c = 0; c < 128; c++) {
  if ((c >= 65 && c <= 90) || (c >= 97 && c <= 122)) classes[c] = LETTER;
  else if (c >= 48 && c <= 57) classes[c] = DIGIT;
  else if (c <= 32 || c === 127 || c === 39 || c === 95 || c === 96) classes[c] = BLANK;
  else classes[c] = SIGN;
}

function classOf(code: number): number {
  if (code < 128) return classes[code] ?? SIGN;
  if (code === 0xa0 || code === 0xad || code === 0xfeff || code === 0xfe0f) return BLANK;
  if (code >= 0x2000 && code <= 0x200f) return BLANK;
  if (code === 0x2018 || code === 0x2019 || code === 0x202f || code === 0x3000) return BLANK;
  if (code >= 0xff10 && code <= 0xff19) return DIGIT;
  if ((code >= 0xff21 && code <= 0xff3a) || (code >= 0xff41 && code <= 0xff5a)) return LETTER;
  if (code >= 0xc0 && code < 0x2000 && code !== 0xd7 && code !== 0xf7) return LETTER;
  return SIGN;
}

/** Kind of token of a sign beside its value, packed as kind * 256 + value. */
function signOf(code: number): number {
  switch (code) {
    case 44:
    case 0xff0c:
    case 0x3001:
      return T.comma << 8;
    case 59:
    case 0xff1b:
      return T.semicolon << 8;
    case 46:
    case 33:
    case 63:
    case 0x2026:
    case 0x3002:
      return (T.stop << 8) | 1;
    case 58:
    case 0xff1a:
      return T.colon << 8;
    case 40:
    case 0xff08:
      return (T.open << 8) | 40;
    case 91:
    case 0xff3b:
    case 0x3010:
      return (T.open << 8) | 91;
    case 123:
      return (T.open << 8) | 123;
    case 41:
    case 0xff09:
      return (T.close << 8) | 40;
    case 93:
    case 0xff3d:
    case 0x3011:
      return (T.close << 8) | 91;
    case 125:
      return (T.close << 8) | 123;
    case 42:
    case 0x2217:
    case 0x2733:
    case 0xff0a:
    case 0x2605:
    case 0x2606:
      return (T.star << 8) | 1;
    case 0x2020:
      return (T.star << 8) | 11;
    case 0x2021:
      return (T.star << 8) | 12;
    case 0xb0:
    case 0x25ca:
    case 0x2666:
    case 0xa7:
      return (T.star << 8) | 13;
    case 45:
    case 0x2010:
    case 0x2011:
    case 0x2012:
    case 0x2013:
    case 0x2014:
    case 0x2015:
    case 0x2212:
    case 126:
    case 0xfe63:
    case 0xff0d:
      return T.dash << 8;
    case 61:
    // Arrows: "in each st → 47".
    case 0x2192:
    case 0x21d2:
    case 0x279c:
    case 0xff1d:
      return T.equals << 8;
    case 43:
    case 0xff0b:
      return T.plus << 8;
    case 47:
    case 0xff0f:
      return T.slash << 8;
    case 0xd7:
    case 0x2715:
    case 0x2716:
    case 0x2a2f:
      return T.times << 8;
    case 124:
    case 0xff5c:
      return T.pipe << 8;
    case 38:
      return T.word << 8;
    default:
      return T.other << 8;
  }
}

interface Scan {
  text: string;
  base: number;
  end: number;
  at: number;
  readonly opened: number[];
  /** A quotation is open, so that its end is no inch mark. */
  quoted: boolean;
  readonly tokens: Columns;
}

const ROOM = 1 << 12;
/** Used again by every scan: making columns anew would cost more than filling them. */
const shared: Scan = {
  text: '',
  base: -1,
  end: 0,
  at: 0,
  opened: [],
  quoted: false,
  tokens: newColumns(ROOM),
};

/**
 * Tokens of `text` from `from` to `to`; an `end` token closes them. They are good until the next
 * scan.
 */
export function scan(text: string, from: number, to: number): Tokens {
  const s = shared;
  // A line is looked at more than once: for how it begins, for its work, for words of US or UK terms.
  if (s.base === from && s.end === to && s.text === text) return s.tokens;
  s.text = text;
  s.base = from;
  s.end = to;
  s.at = from;
  s.opened.length = 0;
  s.quoted = false;
  if (s.tokens.room > ROOM * 16) Object.assign(s.tokens, newColumns(ROOM));
  s.tokens.count = FIRST;
  scanAll(s);
  push(s, T.end, to, to);
  wipeBehind(s.tokens);
  return s.tokens;
}

/** To be told when tokens were changed: the next scan of the same text makes them anew. */
export function forgetScan(): void {
  shared.base = -1;
}

function scanAll(s: Scan): void {
  const { text, end } = s;
  while (s.at < end) {
    const code = text.charCodeAt(s.at);
    switch (code < 128 ? classes[code] : classOf(code)) {
      case BLANK:
        s.at++;
        break;
      case LETTER:
        scanWord(s);
        break;
      case DIGIT:
        scanNumber(s);
        break;
      default:
        scanSign(s, code);
    }
  }
}

/** Adds a token without value; its index. */
function push(s: Scan, kind: number, from: number, to: number): number {
  const { tokens } = s;
  const at = tokens.count++;
  if (at >= tokens.room) grow(tokens);
  tokens.kind[at] = kind;
  tokens.word[at] = -1;
  tokens.from[at] = from - s.base;
  tokens.to[at] = to - s.base;
  tokens.value[at] = 0;
  tokens.hash[at] = 0;
  tokens.partner[at] = -1;
  return at;
}

function setWord(s: Scan, token: number, sense: number, hash: number): void {
  s.tokens.word[token] = sense;
  s.tokens.value[token] = sense;
  s.tokens.hash[token] = hash;
}

function pushValue(s: Scan, kind: number, from: number, value: number): void {
  s.tokens.value[push(s, kind, from, s.at)] = value;
}

/** Whether the last token is a number that touches this place. */
function touchesNumber(s: Scan, at: number): boolean {
  const { kind, to, count } = s.tokens;
  return kind[count - 1] === T.number && to[count - 1] === at - s.base;
}

function scanWord(s: Scan): void {
  const { text, end } = s;
  const from = s.at;
  let hash = 0;
  let at = from;
  for (; at < end; at++) {
    const code = text.charCodeAt(at);
    const small = code | 32;
    if (small >= 97 && small <= 122) hash = mix(hash, small);
    else if (code < 128 && code !== 39) break;
    else if (classOf(code) === LETTER) {
      // Latin and Cyrillic letters never share a word: machine translation glues "в" to names.
      if (code >= 0x400 && code < 0x530 && at > from && text.charCodeAt(at - 1) < 0x400) break;
      hash = mix(hash, fold(code));
    } else if (!isSilent(code) || at + 1 >= end || classOf(text.charCodeAt(at + 1)) !== LETTER)
      break;
  }
  s.at = at;
  if (splitTimes(s, from, at)) return;
  const sense = lookUp(text, from, at, hash);
  // Number words are everyday words or in no list at all.
  if ((sense === 0 || sense === PROSE) && mayBeNumber[hash & 511] === 1) {
    const number = numberSenses.get(hash);
    const ordinal = number === undefined ? ordinalSenses.get(hash) : undefined;
    if (number !== undefined || ordinal !== undefined) {
      const token = push(s, number !== undefined ? T.number : T.ordinal, from, at);
      s.tokens.value[token] = number ?? ordinal ?? 0;
      s.tokens.hash[token] = hash;
      return;
    }
  }
  setWord(s, push(s, T.word, from, at), sense, hash);
}

/** "9xHDC": a sign of multiplication that touches number and word. */
function splitTimes(s: Scan, from: number, to: number): boolean {
  const { text } = s;
  if (to - from < 3 || fold(text.charCodeAt(from)) !== 120) return false;
  if (!touchesNumber(s, from)) return false;
  let hash = 0;
  for (let i = from + 1; i < to; i++) hash = mix(hash, fold(text.charCodeAt(i)));
  const sense = lookUp(text, from + 1, to, hash);
  if (sense === 0) return false;
  setWord(s, push(s, T.word, from, from + 1), W.x, 0);
  setWord(s, push(s, T.word, from + 1, to), sense, hash);
  return true;
}

function scanNumber(s: Scan): void {
  const { text, end } = s;
  const from = s.at;
  let value = 0;
  let at = from;
  for (; at < end; at++) {
    const code = text.charCodeAt(at);
    if (classOf(code) !== DIGIT) break;
    // Beyond nine digits no number of stitches is meant; the value stays bounded.
    if (value < 1e8) value = value * 10 + (code > 127 ? code - 0xff10 : code - 48);
  }
  const tail = decimalsAt(text, at, end);
  if (tail > at) {
    value = Number(text.slice(from, tail).replace(',', '.')) || value;
    at = tail;
  }
  const suffix = ordinalSuffix(text, at, end);
  s.at = at + suffix;
  pushValue(s, suffix > 0 ? T.ordinal : T.number, from, value);
}

/** End of ".5" behind a number; a full stop before a space or a second stop ends a sentence. */
function decimalsAt(text: string, at: number, end: number): number {
  if (text.charCodeAt(at) !== 46 || at + 1 >= end) return at;
  let to = at + 1;
  while (to < end && to < at + 4 && classOf(text.charCodeAt(to)) === DIGIT) to++;
  return to > at + 1 && text.charCodeAt(to) !== 46 && text.charCodeAt(to) !== 41 ? to : at;
}

/** Length of "st", "nd", "rd", "th", or the old "d", behind a number. */
function ordinalSuffix(text: string, at: number, end: number): number {
  const a = fold(text.charCodeAt(at));
  const b = at + 1 < end ? fold(text.charCodeAt(at + 1)) : 0;
  const two =
    (a === 115 && b === 116) ||
    (a === 110 && b === 100) ||
    (a === 114 && b === 100) ||
    (a === 116 && b === 104);
  const length = at >= end ? 0 : two ? 2 : a === 100 ? 1 : 0;
  if (length === 0) return 0;
  const after = at + length < end ? classOf(text.charCodeAt(at + length)) : 0;
  if (after === LETTER || after === DIGIT) return 0;
  // "2d" is "second"; "24st" and "51 st" are stitches, and "2 d c" is none of both.
  const last = text.charCodeAt(at - 1);
  if (length === 1) return last === 50 || last === 51 ? 1 : 0;
  const teen = at >= 2 && text.charCodeAt(at - 2) === 49;
  if (a === 115) return last === 49 && !teen ? 2 : 0;
  return 2;
}

function scanSign(s: Scan, code: number): void {
  const from = s.at;
  const packed = signOf(code);
  const kind = packed >> 8;
  let value = packed & 255;
  let to = from + 1;
  if (kind === T.star || kind === T.dash) {
    while (to < s.end && s.text.charCodeAt(to) === code) to++;
    if (kind === T.star)
      value = value > 9 ? value + Math.min(to - from - 1, 2) : Math.min(to - from, 3);
  } else if (kind === T.stop) {
    while (to < s.end && s.text.charCodeAt(to) === code) to++;
  } else if (kind === T.word) value = W.and;
  else if (kind === T.other && scanRare(s, code)) return;
  s.at = to;
  if (kind === T.stop && code === 46 && to === from + 1 && isAbbreviation(s, to)) return;
  if (kind === T.word) return setWord(s, push(s, T.word, from, to), value, 0);
  pushValue(s, kind, from, value);
  if (kind === T.open) s.opened.push(s.tokens.count - 1);
  else if (kind === T.close) closeBracket(s, value);
}

/** Vulgar fractions are numbers; inch marks are a word; other marks and pictures are nothing. */
function scanRare(s: Scan, code: number): boolean {
  const from = s.at;
  const fraction = code === 0xbd ? 0.5 : code === 0xbc ? 0.25 : code === 0xbe ? 0.75 : 0;
  const { tokens } = s;
  const last = tokens.count - 1;
  if (fraction > 0) {
    if (touchesNumber(s, from)) {
      tokens.value[last] = (tokens.value[last] ?? 0) + fraction;
      tokens.to[last] = from + 1 - s.base;
    } else tokens.value[push(s, T.number, from, from + 1)] = fraction;
  } else if (code === 34 || code === 0x201c || code === 0x201d || code === 0x2033) {
    const closing = s.quoted && code !== 0x2033;
    s.quoted = code === 0x201c || (code === 34 && !closing && tokens.kind[last] !== T.number);
    const inches = !closing && code !== 0x201c && touchesNumber(s, from);
    if (inches) setWord(s, push(s, T.word, from, from + 1), W.inch, 0);
  } else if (code < 0xd800 && (code < 0x2190 || code > 0x2bff)) return false;
  s.at = from + 1;
  return true;
}

function closeBracket(s: Scan, value: number): void {
  const { tokens, opened } = s;
  const close = tokens.count - 1;
  const open = opened.at(-1);
  if (open === undefined) return;
  if (tokens.value[open] !== value) {
    // A wrong closing bracket closes nothing; the look back is bounded, so that cost stays linear.
    const near = opened.slice(-8);
    if (!near.some((at) => tokens.value[at] === value)) return;
  }
  while (opened.length > 0) {
    const at = opened.pop() ?? 0;
    if (tokens.value[at] !== value) continue;
    tokens.partner[at] = close;
    tokens.partner[close] = at;
    return;
  }
}

const hashes = (words: string): ReadonlySet<number> => new Set(words.split(' ').map(wordHash));
/** Short forms whose stop never ends a sentence. */
const NEVER_LAST = hashes(
  'sl rep rpt beg foll alt cont sk yo d s h t l p inc dec approx no incl fig',
);
/** Short forms that may stand last in a sentence. */
const MAY_BE_LAST = hashes(
  'ch chs st sts sp sps lp lps sc dc hdc tr dtr trc htr c bl bls m b rnd rnds rem k r tog patt',
);

/**
 * Whether the full stop before `at` belongs to an abbreviation ("d. c. in next ch. loop"). What
 * may end a sentence too ("in last st. Turn.", "in last st. 24 sc.") keeps its stop unless a
 * lower-case letter or a comma follows; "ch. 5" is a chain of five only where no number precedes.
 */
function isAbbreviation(s: Scan, at: number): boolean {
  const { kind, to, word, hash: letters, count } = s.tokens;
  const last = count - 1;
  if (kind[last] !== T.word || to[last] !== at - 1 - s.base) return false;
  const hash = letters[last] ?? 0;
  const sure = NEVER_LAST.has(hash);
  if (!sure && !MAY_BE_LAST.has(hash)) return false;
  let i = at;
  while (i < s.end && classOf(s.text.charCodeAt(i)) === BLANK) i++;
  if (i >= s.end) return false;
  const code = s.text.charCodeAt(i);
  if (code >= 97 && code <= 122) return true;
  if (code === 44 || code === 59 || code === 41 || code === 93) return true;
  if (word[last] === W.ch && classOf(code) === DIGIT) return kind[last - 1] !== T.number;
  return sure && (i > at + 1 ? classOf(code) === DIGIT : true);
}
