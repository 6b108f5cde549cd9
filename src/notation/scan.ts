/**
 * From characters to tokens, straight over the original text. Letters and digits split wherever
 * they meet ("sc5", "2dc", "ch3sp"); typographic variants of signs fall together; white space,
 * invisible characters and quotes make no token.
 */
import {
  BLANK,
  type Codes,
  classOf,
  codesOf,
  DIGIT,
  fold,
  isSilent,
  LETTER,
} from './characters.ts';
import { hashOf, lookUp, mix, PROSE, type SenseId } from './dictionary.ts';
import { meetWord } from './hints.ts';
import { cardinalOf, mayBeNumber, ordinalOf } from './number-words.ts';
import { W } from './senses.ts';
import { signOf } from './signs.ts';
import { type Columns, FIRST, grow, newColumns, T, type Tokens, wipeBehind } from './tokens.ts';

/** Offsets count from `base`, as those of the tokens do. */
interface Scan {
  text: string;
  base: number;
  end: number;
  codes: Codes;
  /** Brackets that are still open: the first `depth` of the list, which keeps its room. */
  readonly opened: number[];
  depth: number;
  /** A quotation is open, so that its end is no inch mark. */
  quoted: boolean;
  readonly tokens: Columns;
  /** Words to be taken for others, by where they begin. */
  mends: Mends | null;
}

/** What a word is taken for instead: other words, or a number in figures. */
export interface Mend {
  /** Behind its last letter. */
  readonly to: number;
  readonly parts: readonly MendedWord[];
}

export interface MendedWord {
  readonly from: number;
  readonly to: number;
  /** In small letters. */
  readonly word: string;
  readonly kind: number;
  /** Sense of a word, value of a number or ordinal. */
  readonly value: number;
  readonly hash: number;
}

/** By the offset at which the word begins. */
export type Mends = ReadonlyMap<number, Mend>;

const ROOM = 1 << 12;
/** Used again by every scan: making columns anew would cost more than filling them. */
const shared: Scan = {
  text: '',
  base: -1,
  end: 0,
  codes: codesOf('', 0, 0),
  opened: [],
  depth: 0,
  quoted: false,
  tokens: newColumns(ROOM),
  mends: null,
};

/**
 * Tokens of `text` from `from` to `to`; an `end` token closes them. They are good until the next
 * scan.
 */
export function scan(text: string, from: number, to: number, mends: Mends | null = null): Tokens {
  const s = shared;
  const end = to - from;
  // A line is looked at more than once: for how it begins, for its work, for words of US or UK terms.
  if (s.base === from && s.end === end && s.text === text && s.mends === mends) return s.tokens;
  s.mends = mends;
  s.text = text;
  s.base = from;
  s.end = end;
  s.codes = codesOf(text, from, to);
  s.depth = 0;
  s.quoted = false;
  if (s.tokens.room > ROOM * 16) Object.assign(s.tokens, newColumns(ROOM), { met: s.tokens.met });
  const before = s.tokens.count;
  s.tokens.count = FIRST;
  s.tokens.strange = 0;
  s.tokens.met.scans++;
  scanAll(s);
  push(s.tokens, T.end, end, end);
  wipeBehind(s.tokens, before);
  return s.tokens;
}

/** To be told when tokens were changed: the next scan of the same text makes them anew. */
export function forgetScan(): void {
  shared.base = -1;
}

/** Each of the functions below takes where its token begins, and tells where the next may. */
function scanAll(s: Scan): void {
  const { codes, end } = s;
  for (let at = 0; at < end; ) {
    switch (classOf(codes[at]!)) {
      case BLANK:
        at++;
        break;
      case LETTER:
        at = scanWord(s, at);
        break;
      case DIGIT:
        at = scanNumber(s, at);
        break;
      default:
        at = isPluralSign(codes, at) ? at + 3 : scanSign(s, at);
    }
  }
}

/** "dc(s)": one or more of them. */
const isPluralSign = (codes: Codes, at: number): boolean =>
  codes[at] === 40 &&
  codes[at + 1] === 115 &&
  codes[at + 2] === 41 &&
  at > 0 &&
  classOf(codes[at - 1]!) === LETTER;

/** Adds a token without value; its index. */
function push(tokens: Columns, kind: number, from: number, to: number): number {
  const at = tokens.count++;
  if (at >= tokens.room) grow(tokens);
  tokens.kind[at] = kind;
  tokens.word[at] = -1;
  tokens.from[at] = from;
  tokens.to[at] = to;
  tokens.value[at] = 0;
  tokens.hash[at] = 0;
  tokens.partner[at] = -1;
  return at;
}

function setWord(tokens: Columns, token: number, sense: SenseId, hash: number): void {
  tokens.word[token] = sense;
  tokens.value[token] = sense;
  tokens.hash[token] = hash;
  meetWord(tokens.met, sense, hash);
}

/** Whether the last token is a number that touches this place. */
const touchesNumber = ({ kind, to, count }: Columns, at: number): boolean =>
  kind[count - 1] === T.number && to[count - 1] === at;

function scanWord(s: Scan, from: number): number {
  const { codes, tokens } = s;
  const mend = s.mends?.get(from);
  if (mend) return putMended(s, mend);
  let hash = 0;
  let at = from;
  for (;;) {
    const code = codes[at]!;
    const small = code | 32;
    if (small >= 97 && small <= 122) hash = mix(hash, small);
    else if ((code < 128 && code !== 39) || !isOddLetter(s, from, at)) break;
    else if (!isSilent(code)) hash = mix(hash, fold(code));
    at++;
  }
  // "х3" with a Cyrillic letter, from translations.
  if (at === from + 1 && (codes[from] === 0x445 || codes[from] === 0x425)) {
    setWord(tokens, push(tokens, T.word, from, at), W.x, 0);
    return at;
  }
  if (at - from > 2 && (codes[from]! | 32) === 120 && splitTimes(s, from, at)) return at;
  const sense = lookUp(codes, from, at, hash);
  // Number words are everyday words or in no list at all.
  if ((sense === 0 || sense === PROSE) && mayBeNumber(hash) && numberWord(s, from, at, hash))
    return at;
  if (sense === 0) {
    if (splitAtCapital(s, from, at)) return at;
    tokens.strange++;
  } else if (sense === W.form || (at === from + 1 && isScannedOne(codes[from]!))) {
    tokens.strange++;
  }
  setWord(tokens, push(tokens, T.word, from, at), sense, hash);
  return at;
}

/** "I" and "l". */
const isScannedOne = (code: number): boolean => code === 73 || code === 108;

function putMended({ tokens }: Scan, { to, parts }: Mend): number {
  for (const { from, to: end, kind, value, hash } of parts) {
    const token = push(tokens, kind, from, end);
    if (kind === T.word) setWord(tokens, token, value, hash);
    else tokens.value[token] = value;
  }
  return to;
}

/** "2nd RowCh 3": two words of the lexicon of which the second has its capital, and no blank between. */
function splitAtCapital({ codes, tokens }: Scan, from: number, to: number): boolean {
  let hash = 0;
  let at = from;
  while (at < to && !(at > from + 1 && isCapital(codes[at]!) && !isCapital(codes[at - 1]!))) {
    hash = mix(hash, fold(codes[at]!));
    at++;
  }
  if (at >= to - 1) return false;
  let second = 0;
  for (let i = at; i < to; i++) second = mix(second, fold(codes[i]!));
  const first = lookUp(codes, from, at, hash);
  const rest = lookUp(codes, at, to, second);
  const isRow = first === W.row || first === W.round;
  if (first === 0 || (rest === 0 && !isRow)) return false;
  setWord(tokens, push(tokens, T.word, from, at), first, hash);
  setWord(tokens, push(tokens, T.word, at, to), rest, second);
  return true;
}

const isCapital = (code: number): boolean => code >= 65 && code <= 90;

/** Whether a character that is no plain letter goes on with the word: "é", or the sign in "don't". */
function isOddLetter({ codes }: Scan, from: number, at: number): boolean {
  const code = codes[at]!;
  if (classOf(code) !== LETTER) {
    // A word that a narrow column broke has two such signs in a row.
    const next = isSilent(codes[at + 1]!) ? at + 2 : at + 1;
    return isSilent(code) && classOf(codes[next]!) === LETTER;
  }
  // Latin and Cyrillic letters never share a word: machine translation glues "в" to names.
  return !(code >= 0x400 && code < 0x530 && at > from && codes[at - 1]! < 0x400);
}

function numberWord({ tokens }: Scan, from: number, to: number, hash: number): boolean {
  const cardinal = cardinalOf(hash);
  const value = cardinal >= 0 ? cardinal : ordinalOf(hash);
  if (value < 0) return false;
  meetWord(tokens.met, PROSE, hash);
  if (value > 0 && joinNumber(tokens, value, to)) {
    if (cardinal < 0) tokens.kind[tokens.count - 1] = T.ordinal;
    return true;
  }
  const token = push(tokens, cardinal >= 0 ? T.number : T.ordinal, from, to);
  tokens.value[token] = value;
  tokens.hash[token] = hash;
  return true;
}

/** "forty-four", "one hundred", "one hundred and twenty": one number in several words. */
function joinNumber(tokens: Columns, n: number, end: number): boolean {
  const { kind, word, to, value, hash, count } = tokens;
  const link = kind[count - 1] === T.dash ? DASHED : word[count - 1] === W.and ? LINKED : 0;
  const last = link === 0 ? count - 1 : count - 2;
  const before = value[last]!;
  if (kind[last] !== T.number || hash[last] === 0) return false;
  let whole = 0;
  if (n === 100 && link === 0 && before > 0 && before < 10) whole = before * 100;
  else if (before >= 100 && before % 100 === 0 && n < 100 && link !== DASHED) whole = before + n;
  else if (before % 100 >= 20 && before % 10 === 0 && n < 10 && link !== LINKED) whole = before + n;
  if (whole === 0) return false;
  tokens.count = last + 1;
  to[last] = end;
  value[last] = whole;
  return true;
}

const DASHED = 1;
const LINKED = 2;

/** "9xHDC": a sign of multiplication that touches number and word. */
function splitTimes({ codes, tokens }: Scan, from: number, to: number): boolean {
  if (!touchesNumber(tokens, from)) return false;
  let hash = 0;
  for (let i = from + 1; i < to; i++) hash = mix(hash, fold(codes[i]!));
  const sense = lookUp(codes, from + 1, to, hash);
  if (sense === 0) return false;
  setWord(tokens, push(tokens, T.word, from, from + 1), W.x, 0);
  setWord(tokens, push(tokens, T.word, from + 1, to), sense, hash);
  return true;
}

function scanNumber(s: Scan, from: number): number {
  const { codes, tokens } = s;
  let value = 0;
  let at = from;
  for (; ; at++) {
    const code = codes[at]!;
    if (classOf(code) !== DIGIT) break;
    // Beyond nine digits no number of stitches is meant; the value stays bounded.
    if (value < 1e8) value = value * 10 + (code > 127 ? code - 0xff10 : code - 48);
  }
  const tail = codes[at] === 46 ? decimalsAt(codes, at) : at;
  if (tail > at) {
    const written = s.text.slice(s.base + from, s.base + tail);
    value = Number(written.replace(',', '.')) || value;
    at = tail;
  }
  const suffix =
    (codes[at]! | 32) > 96
      ? ordinalSuffix(codes, at)
      : codes[at] === 32
        ? suffixApart(codes, at)
        : 0;
  const to = at + suffix;
  tokens.value[push(tokens, suffix > 0 ? T.ordinal : T.number, from, to)] = value;
  return to;
}

/** End of ".5" behind a number; a full stop before a space or a second stop ends a sentence. */
function decimalsAt(codes: Codes, at: number): number {
  let to = at + 1;
  while (to < at + 4 && classOf(codes[to]!) === DIGIT) to++;
  if (to === at + 1 || codes[to] === 46) return at;
  return codes[to] !== 41 || isInList(codes, at) ? to : at;
}

/** "(16, 17.5)": the bracket has nothing but numbers; "(… in rnd 4.5)" has a stop too many. */
function isInList(codes: Codes, at: number): boolean {
  let commas = 0;
  for (let i = at - 1; i > at - 80; i--) {
    const code = codes[i]!;
    if (code === 40 || code === 91) return commas > 0;
    if (code === 44) commas++;
    else if (classOf(code) !== DIGIT && code !== 46 && code !== 32) return false;
  }
  return false;
}

/** Length of " rd" behind the number of "in 3 rd ch", blank and all; "1 st" may be a stitch. */
function suffixApart(codes: Codes, at: number): number {
  const first = fold(codes[at + 1]!);
  if (first === 115) return isFirstStitch(codes, at) ? 3 : 0;
  if (first !== 110 && first !== 114 && first !== 116) return 0;
  return ordinalSuffix(codes, at + 1) === 2 && codes[at + 3] === 32 ? 3 : 0;
}

/** " st st" behind the number of "2 sc in 1 st st": the first stitch. */
const isFirstStitch = (codes: Codes, at: number): boolean =>
  codes[at - 1] === 49 &&
  classOf(codes[at - 2]!) !== DIGIT &&
  isSt(codes, at + 1) &&
  codes[at + 3] === 32 &&
  isSt(codes, at + 4) &&
  classOf(codes[at + 6]!) !== LETTER;

const isSt = (codes: Codes, at: number): boolean =>
  fold(codes[at]!) === 115 && fold(codes[at + 1]!) === 116;

/** Length of "st", "nd", "rd", "th", or the old "d", behind a number. */
function ordinalSuffix(codes: Codes, at: number): number {
  const a = fold(codes[at]!);
  const b = fold(codes[at + 1]!);
  const two =
    (a === 115 && b === 116) ||
    (a === 110 && b === 100) ||
    (a === 114 && b === 100) ||
    (a === 116 && b === 104);
  const length = two ? 2 : a === 100 ? 1 : 0;
  if (length === 0) return 0;
  const after = classOf(codes[at + length]!);
  if (after === DIGIT || (after === LETTER && (length < 2 || !opensWord(codes, at + length))))
    return 0;
  // "2d" is "second"; "24st" and "51 st" are stitches, and "2 d c" is none of both.
  const last = codes[at - 1]!;
  if (length === 1) return last === 50 || last === 51 ? 1 : 0;
  const teen = at >= 2 && codes[at - 2] === 49;
  if (a === 115) return last === 49 && !teen ? 2 : 0;
  return 2;
}

/** "2ndchain": the blank behind the ordinal was lost, and a word of the trade stands there. */
function opensWord(codes: Codes, from: number): boolean {
  let hash = 0;
  let at = from;
  for (; classOf(codes[at]!) === LETTER && at < from + 12; at++) hash = mix(hash, fold(codes[at]!));
  const sense = at - from > 1 ? lookUp(codes, from, at, hash) : 0;
  return sense !== 0 && sense !== PROSE;
}

function scanSign(s: Scan, from: number): number {
  const { codes, tokens } = s;
  const code = codes[from]!;
  const packed = signOf(code);
  const kind = packed >> 8;
  let value = packed & 255;
  let to = from + 1;
  if (kind === T.star || kind === T.dash) {
    while (codes[to] === code) to++;
    if (kind === T.star)
      value = value > 9 ? value + Math.min(to - from - 1, 2) : Math.min(to - from, 3);
  } else if (kind === T.stop) {
    while (codes[to] === code) to++;
    if (code === 46 && to === from + 1 && (isAbbreviation(s, to) || isNumberStop(s, to))) return to;
  } else if (kind === T.word) {
    setWord(tokens, push(tokens, T.word, from, to), W.and, 0);
    return to;
  } else if (kind === T.other && scanRare(s, code, from)) return to;
  const token = push(tokens, kind, from, to);
  tokens.value[token] = value;
  if (kind === T.open) s.opened[s.depth++] = token;
  else if (kind === T.close) closeBracket(s, value);
  return to;
}

/** Vulgar fractions are numbers; inch marks are a word; other marks and pictures are nothing. */
function scanRare(s: Scan, code: number, from: number): boolean {
  const { tokens } = s;
  const fraction = code === 0xbd ? 0.5 : code === 0xbc ? 0.25 : code === 0xbe ? 0.75 : 0;
  const last = tokens.count - 1;
  if (fraction > 0) {
    if (touchesNumber(tokens, from) || isWholeBefore(s, from)) {
      tokens.value[last] = tokens.value[last]! + fraction;
      tokens.to[last] = from + 1;
    } else tokens.value[push(tokens, T.number, from, from + 1)] = fraction;
  } else if (code === 34 || code === 0x201c || code === 0x201d || code === 0x2033) {
    const closing = s.quoted && code !== 0x2033;
    s.quoted = code === 0x201c || (code === 34 && !closing && tokens.kind[last] !== T.number);
    const inches = !closing && code !== 0x201c && touchesNumber(tokens, from);
    if (inches) setWord(tokens, push(tokens, T.word, from, from + 1), W.inch, 0);
  } else if (code < 0xd800 && (code < 0x2190 || code > 0x2bff)) return false;
  return true;
}

/** "13 ½": one blank between a whole number and its fraction. */
const isWholeBefore = ({ codes, tokens }: Scan, from: number): boolean =>
  codes[from - 1] === 32 && touchesNumber(tokens, from - 1);

function closeBracket(s: Scan, value: number): void {
  const { tokens, opened } = s;
  const close = tokens.count - 1;
  if (!isOpened(s, value)) return;
  while (s.depth > 0) {
    const at = opened[--s.depth]!;
    if (tokens.value[at] !== value) continue;
    tokens.partner[at] = close;
    tokens.partner[close] = at;
    return;
  }
}

/** A wrong closing bracket closes nothing; the look back is bounded, so that cost stays linear. */
function isOpened({ tokens, opened, depth }: Scan, value: number): boolean {
  for (let i = depth - 1; i >= 0 && i >= depth - 8; i--) {
    if (tokens.value[opened[i]!] === value) return true;
  }
  return false;
}

const hashes = (words: string): ReadonlySet<number> => new Set(words.split(' ').map(hashOf));
/** Short forms whose stop never ends a sentence. */
const NEVER_LAST = hashes(
  'sl rep rpt beg foll alt cont sk yo d s h t l p inc dec inv approx no incl fig prev nxt nx',
);
/** Words that ask for more: a stop behind one is a slip. */
const DANGLING = hashes('in into make the');
/** Short forms that may stand last in a sentence. */
const MAY_BE_LAST = hashes(
  'ch chs st sts sp sps lp lps sc dc hdc tr dtr trc htr c bl bls m b rnd rnds rd rds rem k r tog patt',
);

/** "ss in 3rd ch. 18 tr": a row's count behind its last sentence, and no length of the chain. */
const isLastCount = ({ text, base, end }: Scan, at: number): boolean =>
  end - at < 24 && LAST_COUNT.test(text.slice(base + at, base + end));

const LAST_COUNT = /^\d{1,3} (?:sc|dc|hdc|htr|tr|dtr|sts?|stitches)\.?\s*$/i;

/** "to last ch.": a chain that is a place. */
const isPlaced = (sense: SenseId): boolean =>
  sense === W.last || sense === W.each || sense === W.next || sense === W.same;

/** "3. s.c." behind "to last ch.": the number is the stitch's. */
function isOwnNumber(codes: Codes, at: number): boolean {
  let i = at;
  while (classOf(codes[i]!) === DIGIT) i++;
  return codes[i] === 46 && classOf(codes[i + 1]!) === BLANK && isStopped(codes, i + 2);
}

/** A short name in small letters with a stop behind: "s.c.", "tr.". */
function isStopped(codes: Codes, from: number): boolean {
  let i = from;
  while (codes[i]! >= 97 && codes[i]! <= 122) i++;
  return i > from && i < from + 4 && codes[i] === 46;
}

/**
 * "1. s.c. in next s.c.", "working 5. d.c.": a stop behind the number of a stitch that has stops of its
 * own. At the start of the text it is a label's.
 */
function isNumberStop({ codes, tokens: { kind, word, to, count } }: Scan, at: number): boolean {
  const last = count - 1;
  if ((kind[last] !== T.number && kind[last] !== T.ordinal) || to[last] !== at - 1) return false;
  if (last === FIRST) return false;
  // "Ch. 2. s.c. in next": the number belongs to the chain.
  if (kind[last] === T.number && kind[last - 1] === T.word && !BEFORE_NUMBER.has(word[last - 1]!))
    return false;
  if (classOf(codes[at]!) !== BLANK) return false;
  // "3rd. st from hook": no sentence ends with an ordinal and goes on in small letters.
  const small = codes[at + 1]! >= 97 && codes[at + 1]! <= 122;
  return kind[last] === T.ordinal ? small : isStopped(codes, at + 1);
}

const BEFORE_NUMBER: ReadonlySet<number> = new Set([
  W.work,
  W.working,
  W.with,
  W.skip,
  W.and,
  W.to,
  W.afterwards,
]);

/**
 * Whether the full stop before `at` belongs to an abbreviation ("d. c. in next ch. loop"). What
 * may end a sentence too ("in last st. Turn.", "in last st. 24 sc.") keeps its stop unless a
 * lower-case letter or a comma follows; "ch. 5" is a chain of five only where no number precedes.
 */
function isAbbreviation(s: Scan, at: number): boolean {
  const { codes, end } = s;
  const { kind, to, word, hash: letters, count } = s.tokens;
  const last = count - 1;
  if (kind[last] !== T.word) return false;
  const hash = letters[last] ?? 0;
  if (to[last] !== at - 1 && !DANGLING.has(hash)) return false;
  // "sc in. next lp", "make . 3 dc": no sentence ends so, but "10 in." may.
  const dangles = DANGLING.has(hash) && kind[last - 1] !== T.number;
  const sure = dangles || NEVER_LAST.has(hash);
  if (!sure && !MAY_BE_LAST.has(hash)) return false;
  let i = at;
  while (i < end && classOf(codes[i]!) === BLANK) i++;
  if (i >= end) return false;
  const code = codes[i]!;
  if (code >= 97 && code <= 122) return true;
  if (code === 44 || code === 59 || code === 41 || code === 93) return true;
  // "repeat rnd. 3."
  if (classOf(code) === DIGIT && (word[last] === W.round || word[last] === W.row))
    return word[last - 1] === W.repeat;
  if (word[last] === W.ch && classOf(code) === DIGIT) {
    const named = kind[last - 1] === T.ordinal || word[last - 1] === W.of;
    if (named && isLastCount(s, i)) return false;
    return kind[last - 1] !== T.number && !(isPlaced(word[last - 1]!) && isOwnNumber(codes, i));
  }
  return sure && (i > at + 1 ? classOf(code) === DIGIT : true);
}
