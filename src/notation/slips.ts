/**
 * Slips in a row that was not understood: what its strange words may have been. Asked only where the
 * ordinary reading left words over; the caller keeps the reading that leaves fewer.
 */
import { hashOf, mayBeStitch, senseOfWord } from './dictionary.ts';
import { gluedWords, nearWord } from './near-words.ts';
import { isOneOf, type Reader, spelled, wordsOf } from './reader.ts';
import type { Mend, MendedWord, Mends } from './scan.ts';
import { W } from './senses.ts';
import { PLACE_WORDS, SCANNED, SCANNED_CHAIN } from './slip-words.ts';
import { FIRST, T } from './tokens.ts';
import type { Slip } from './tree.ts';

interface Sought {
  /** Whether it is a row, where a letter may be a 1. */
  readonly isRow?: boolean;
  /** Only words in front of this token. */
  readonly end?: number;
}

/** What the strange words are taken for; `null` where none is known. */
export function mendsOf(r: Reader, { isRow = false, end = r.count }: Sought): Mends | null {
  let mends: Map<number, Mend> | null = null;
  for (let i = FIRST; i < end; i++) {
    if (r.kind[i] !== T.word) continue;
    const words = r.word[i] === 0 ? meant(r, i) : knownSlip(r, i, isRow);
    if (words === null) continue;
    mends ??= new Map();
    mends.set(r.from[i]!, { to: r.to[i]!, parts: partsOf(r, i, words) });
  }
  return mends;
}

/** What was read as something else, for the reader to be told. */
export const slipsOf = (mends: Mends): Slip[] =>
  [...mends].map(([from, { to, parts }]) => ({
    from,
    to,
    reading: parts.map(({ word }) => word).join(' '),
  }));

/** "I s c" for "1 s c", "2nd ch form hook". */
function knownSlip(r: Reader, token: number, isRow: boolean): readonly string[] | null {
  if (r.word[token] === W.form) return r.word[token + 1] === W.hook ? ['from'] : null;
  // "*sp 2 sts, dc in next st": where a step begins.
  if (r.word[token] === W.sp) return standsForSkip(r, token) ? ['skip'] : null;
  return isRow && isScannedOne(r, token) ? ['1'] : null;
}

function meant(r: Reader, token: number): readonly string[] | null {
  if (isSkip(r, token)) return ['skip'];
  const word = spelled(r, token);
  // A name of the pattern's own, of a stitch or a yarn, is no slip.
  if (r.specials?.has(r.hash[token]!) || isYarn(r, word)) return null;
  const scanned = Object.hasOwn(SCANNED, word) ? SCANNED[word] : undefined;
  if (scanned !== undefined) return [scanned];
  if (isOneOf(r, CHAIN, token - r.at) && r.kind[token + 1] === T.number) return ['ch'];
  const near = nearWord(word);
  return near === null ? gluedWords(word) : [near];
}

const CHAIN = wordsOf(SCANNED_CHAIN);

const SKIPS = wordsOf('ship skp sip kip ski');

/** "Ch 3, ship 1 sc, dc in next 3 sc": a word of English where only a skip fits. */
const isSkip = (r: Reader, token: number): boolean =>
  isOneOf(r, SKIPS, token - r.at) && standsForSkip(r, token);

/** At a step's beginning, before so many stitches. */
function standsForSkip(r: Reader, token: number): boolean {
  const before = r.kind[token - 1];
  const opens =
    token === FIRST || (before !== T.word && before !== T.number && before !== T.ordinal);
  const next = r.word[token + 1];
  const which = next === W.first_word || next === W.next || r.kind[token + 1] === T.ordinal;
  const behind = r.word[token + 2] ?? 0;
  const isStitch = behind === W.st || mayBeStitch(behind);
  return isStitch && opens && (which || r.kind[token + 1] === T.number);
}

function isYarn(r: Reader, word: string): boolean {
  for (const yarn of r.known.yarns) if (yarn.toLowerCase() === word) return true;
  return false;
}

/** "I s c in next st", "ch l, turn": a letter that stands where a scanner saw a 1. */
const TOLD = wordsOf('increase decrease crochet skip work');

function isScannedOne(r: Reader, token: number): boolean {
  if (r.to[token]! - r.from[token]! !== 1) return false;
  const code = r.text.charCodeAt(r.base + r.from[token]!);
  if (code !== CAPITAL_I && code !== SMALL_L) return false;
  const next = r.word[token + 1]!;
  const closes = r.kind[token + 1] !== T.word && r.kind[token + 1] !== T.number;
  if (r.word[token - 1] === W.ch) return closes;
  if (r.kind[token - 1] === T.number) return false;
  const spaced = next === W.letter_s || next === W.letter_d || next === W.letter_h;
  // "I chain 4 here", "I decrease every 5th stitch": somebody tells of herself.
  if (code === CAPITAL_I && isOneOf(r, TOLD, token + 1 - r.at)) return false;
  if (next === W.ch) return r.kind[token + 2] !== T.number;
  return spaced ? r.word[token + 2] === W.letter_c || code === CAPITAL_I : mayBeStitch(next);
}

const CAPITAL_I = 73;
const SMALL_L = 108;

function tokenOf(word: string): Pick<MendedWord, 'kind' | 'value' | 'hash'> {
  const place = Object.hasOwn(PLACE_WORDS, word) ? PLACE_WORDS[word] : undefined;
  if (place !== undefined) return { kind: T.ordinal, value: place, hash: hashOf(word) };
  if (word === '1') return { kind: T.number, value: 1, hash: 0 };
  return { kind: T.word, value: senseOfWord(word), hash: hashOf(word) };
}

/** Where each of the words stands within the letters that it was made of. */
function partsOf(r: Reader, token: number, words: readonly string[]): readonly MendedWord[] {
  const from = r.from[token]!;
  const to = r.to[token]!;
  let at = from;
  return words.map((word, i) => {
    const end = i === words.length - 1 ? to : at + word.length;
    const part = { from: at, to: end, word, ...tokenOf(word) };
    at = end;
    return part;
  });
}
