/** "11 dc {tr} in ring": the same stitch in the other terms, told in brackets behind its name. */
import { formOf } from './dictionary.ts';
import { kindAt, type Reader, wordAt } from './reader.ts';
import { STEMS } from './stems.ts';
import { T } from './tokens.ts';
import type { StemWord } from './tree.ts';

/** Whether one stitch bears these two names, one in US terms and one in UK terms. */
export const isPair = (a: StemWord, b: StemWord | null): boolean =>
  b !== null &&
  a !== b &&
  STEMS.some(({ us, uk }) => (us === a && uk === b) || (us === b && uk === a));

/** Goes past the bracket, where nothing else stands in it. */
export function passGloss(r: Reader, stem: StemWord | null): void {
  if (kindAt(r) !== T.open || kindAt(r, 2) !== T.close || stem === null) return;
  const other = wordAt(r, 1) > 0 ? formOf(wordAt(r, 1)) : null;
  if (other?.shape === 'one' && isPair(stem, other.stem)) r.at += 3;
}
