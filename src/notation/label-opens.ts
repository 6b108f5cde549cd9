/** Whether a label begins a line, by its first words: most lines are known by them at once. */
import { hashOf, mix } from './dictionary.ts';
import { SPELLINGS } from './lexicon.ts';
import { isNumberWord } from './number-words.ts';

const { form, row, round, r, size, all, rs, ws, to } = SPELLINGS;

/** Hashes of the first words that `label.ts` asks for, by their sense or by their letters. */
const WORDS = new Set(
  [
    ...[row, round, r, size, all, rs, ws, to],
    'next set setup foundation base last final first edging border increase decrease inc dec',
    'eyelet beading finishing all every each joining starting beginning pattern body handle strap',
    'trim band cuff collar brim hem',
    'ruffle picot shell following short plain additional remaining subsequent further',
    'start begin edge center centre',
  ].flatMap((line) => line.split(' ').map(hashOf)),
);

const ROW_WORDS = new Set([row, round].flatMap((line) => line.split(' ').map(hashOf)));

/** "Rounds 1 and 2: are the centre": words that speak of rows instead of working them. */
const TELLING = new Set(
  `is are was were should will has have looks look shows show forms ${form}`.split(' ').map(hashOf),
);

/** Not before a plain word that opens no label; where anything else stands, it may. */
export function mayOpenLabel(text: string, from: number, to: number): boolean {
  const end = wordEnd(text, from, to);
  if (end === from || isOdd(text, end, to)) return true;
  const hash = hashBetween(text, from, end);
  if (TOLD.has(hash)) return IN_ROW.test(text.slice(from, from + MOST_SIZES));
  return WORDS.has(hash) || isNumberWord(hash) || ONLY.test(text.slice(from, from + MOST_SIZES));
}

/** "In round 2, …", "For row 3 you …". */
const TOLD = new Set(['in', 'for', 'on'].map(hashOf));
const IN_ROW = /^(?:in|for|on) (?:row|rnd|round|r)s? ?\d/i;

/** "S only: Rnd 6", "M and L only: Row 3". */
const ONLY = /^[a-z][\w ,/&-]{0,20} only ?:/i;
const MOST_SIZES = 30;

/**
 * "Rnd 4: Ch 1", "Row 1 (RS): Sc": nearly all labels are as plain as this, and need no tokens. What is
 * less plain is left to `readLabel`, which finds the same in these.
 */
export function opensPlainLabel(text: string, from: number, to: number): boolean {
  const end = wordEnd(text, from, to);
  if (end === from || !ROW_WORDS.has(hashBetween(text, from, end))) return false;
  let at = numberEnd(text, blankEnd(text, end, to), to);
  if (text.charCodeAt(at) === DASH) at = numberEnd(text, at + 1, to);
  if (at > 0) at = sideEnd(text, at);
  if (at < 0 || text.charCodeAt(at) !== COLON || at >= to) return false;
  const next = blankEnd(text, at + 1, to);
  if (next === to || isDigit(text.charCodeAt(next))) return true;
  const nextEnd = wordEnd(text, next, to);
  if (nextEnd === next || isOdd(text, nextEnd, to)) return false;
  return !TELLING.has(hashBetween(text, next, nextEnd));
}

const DASH = 45;
const COLON = 58;
const APOSTROPHE = 39;

/** A word in other letters, or with an apostrophe, is left to the scanner. */
const isOdd = (text: string, at: number, to: number): boolean =>
  at < to && (text.charCodeAt(at) > 127 || text.charCodeAt(at) === APOSTROPHE);

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

function wordEnd(text: string, from: number, to: number): number {
  for (let at = from; at < to; at++) {
    const small = text.charCodeAt(at) | 32;
    if (small < 97 || small > 122) return at;
  }
  return to;
}

function hashBetween(text: string, from: number, to: number): number {
  let hash = 0;
  for (let at = from; at < to; at++) hash = mix(hash, text.charCodeAt(at) | 32);
  return hash;
}

function blankEnd(text: string, from: number, to: number): number {
  let at = from;
  while (at < to && text.charCodeAt(at) === 32) at++;
  return at;
}

/** Behind " (RS)" or " (WS)", where it stands. */
const sideEnd = (text: string, at: number): number =>
  text.startsWith(' (RS)', at) || text.startsWith(' (WS)', at) ? at + 5 : at;

/** Behind one to three figures; -1 where there are none or more. */
function numberEnd(text: string, from: number, to: number): number {
  let at = from;
  while (at < to && at < from + 4 && isDigit(text.charCodeAt(at))) at++;
  return at === from || at === from + 4 ? -1 : at;
}
