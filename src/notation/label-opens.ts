/** Whether a label may begin with the first word of a line: most lines are known by it at once. */
import { hashOf, mix } from './dictionary.ts';
import { SPELLINGS } from './lexicon.ts';
import { isNumberWord } from './number-words.ts';

const { row, round, r, size, all, rs, ws, to } = SPELLINGS;

/** Hashes of the first words that `label.ts` asks for, by their sense or by their letters. */
const WORDS = new Set(
  [
    ...[row, round, r, size, all, rs, ws, to],
    'next set setup foundation base last final first edging border increase decrease inc dec',
    'eyelet beading finishing all every each joining starting beginning pattern body handle strap',
    'ruffle picot shell following short plain start begin edge center centre',
  ].flatMap((line) => line.split(' ').map(hashOf)),
);

/** Not before a plain word that opens no label; where anything else stands, it may. */
export function mayOpenLabel(text: string, from: number, to: number): boolean {
  let hash = 0;
  let at = from;
  let code = 0;
  for (; at < to; at++) {
    code = text.charCodeAt(at) | 32;
    if (code < 97 || code > 122) break;
    hash = mix(hash, code);
  }
  // A word in other letters, or with an apostrophe, is left to the scanner.
  if (at === from || (at < to && text.charCodeAt(at) > 127) || code === 39) return true;
  return WORDS.has(hash) || isNumberWord(hash);
}
