/**
 * What is said in brackets behind a stitch's name and adds no work: "11 dc {tr} in ring", the same stitch in the
 * other terms, and "2 dc (inc) in next dc", what it does.
 */
import { formOf } from './dictionary.ts';
import { isPreposition } from './preposition.ts';
import { kindAt, type Reader, valueAt, wordAt } from './reader.ts';
import { STEMS } from './stems.ts';
import { T } from './tokens.ts';
import type { StemWord, StitchShape, StitchTerm } from './tree.ts';

/** Whether one stitch bears these two names, one in US terms and one in UK terms. */
export const isPair = (a: StemWord, b: StemWord | null): boolean =>
  b !== null &&
  a !== b &&
  STEMS.some(({ us, uk }) => (us === a && uk === b) || (us === b && uk === a));

/** Goes past the bracket, where nothing else stands in it. */
export function passGloss(r: Reader, { stem, shape }: StitchTerm): void {
  if (kindAt(r) !== T.open || kindAt(r, 2) !== T.close) return;
  const other = wordAt(r, 1) > 0 ? formOf(wordAt(r, 1)) : null;
  if (!other) return;
  const isOtherTerm = other.shape === 'one' && stem !== null && isPair(stem, other.stem);
  if (isOtherTerm || saysShaping(r, shape, other.shape)) r.at += 3;
}

/** "2 dc (inc) in next dc", "sc2tog (dec)": what the words before it do; but "(inc) x 3" is worked. */
function saysShaping(r: Reader, shape: StitchShape, said: StitchShape): boolean {
  const many = kindAt(r, -2) === T.number ? valueAt(r, -2) : 0;
  const isIncrease = said === 'increase' && shape === 'one' && (many === 2 || many === 3);
  const isDecrease = said === 'together' && shape === 'together';
  return (isIncrease || isDecrease) && isPreposition(r, 3);
}
