/** Names of yarns: a letter, "MC", "color C", or a name that the manuscript knows. */

import {
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Colours that makers name outright; common words, from memory. */
const COLOURS = new Set(
  (
    'white black red blue green yellow pink orange purple brown grey gray cream beige tan navy teal ' +
    'turquoise aqua mint lilac lavender violet magenta gold silver ivory ecru natural rose peach ' +
    'coral maroon burgundy lime olive mustard ochre sand charcoal cc cc1 cc2 dark light'
  ).split(' '),
);

/** A colour that makers name outright, in small letters. */
export const isColour = (word: string): boolean => COLOURS.has(word);

const WHICH = wordsOf('next new contrast contrasting main first second third different another');

/** The yarn named here as written, or `null`, which leaves the reader where it was. */
export function readYarnName(r: Reader): string | null {
  const start = r.at;
  let labelled = false;
  if (isWord(r, W.the) && isWord(r, W.color, 2)) r.at++;
  if (isWord(r, W.color, 1) && (isOneOf(r, WHICH) || kindAt(r) === T.ordinal)) r.at++;
  while (isWord(r, W.color) || isWord(r, W.the)) {
    labelled ||= isWord(r, W.color);
    r.at++;
  }
  const numbered = labelled && kindAt(r) === T.other && kindAt(r, 1) === T.number;
  // "Color #12"
  if (numbered && spelled(r, r.at) === '#') {
    r.at += 2;
    return r.text.slice(r.base + fromOf(r, r.at - 1), r.base + (r.to[r.at - 1] ?? 0));
  }
  const name = kindAt(r) === T.word || kindAt(r) === T.number ? nameHere(r, labelled) : null;
  if (name !== null) return name;
  if (labelled) return r.text.slice(r.base + fromOf(r, start), r.base + (r.to[r.at - 1] ?? 0));
  r.at = start;
  return null;
}

function nameHere(r: Reader, labelled: boolean): string | null {
  const token = r.at;
  const from = r.base + fromOf(r, token);
  const word = r.text.slice(from, r.base + (r.to[token] ?? 0));
  const lower = word.toLowerCase();
  const known = r.known.yarns.has(word) || r.known.yarns.has(lower);
  const letter = /^[A-Z]$/.test(word) || (labelled && isNumbered(r, word));
  // "CA", "CB", "CC": colour A, B, C.
  const coded = isWord(r, W.mc) || lower === 'cc' || lower === 'mc' || /^C[A-F]$/.test(word);
  if (!known && !letter && !coded && !COLOURS.has(lower)) return null;
  r.at++;
  let to = r.base + (r.to[token] ?? 0);
  // "dark blue", "CC 2", "C1", and "white yarn" with the word behind.
  while (joinsOn(r, lower)) {
    to = r.base + (r.to[r.at] ?? 0);
    r.at++;
  }
  if (isWord(r, W.color)) r.at++;
  return r.text.slice(from, to);
}

/** "Colour 2", "colour B", "Colour Two", "color one ch 40". */
const isNumbered = (r: Reader, word: string): boolean =>
  /^[\da-z]$/i.test(word) ||
  (kindAt(r) === T.number && (/^[A-Z]/.test(word) || isWord(r, W.ch, 1)));

function joinsOn(r: Reader, first: string): boolean {
  if (kindAt(r) === T.number) return r.from[r.at] === r.to[r.at - 1];
  return (first === 'dark' || first === 'light') && wordAt(r) >= 0 && COLOURS.has(spelled(r, r.at));
}
