/**
 * Tokens of one instruction as columns of numbers: no object and no string is made for a word.
 * Offsets count from the start of the instruction.
 */
export const T = {
  end: 0,
  word: 1,
  number: 2,
  ordinal: 3,
  comma: 4,
  semicolon: 5,
  /** `value` 1: surely the end of a sentence; 0: may be the stop of an abbreviation. */
  stop: 6,
  colon: 7,
  /** `value`: the character code of the bracket, as ASCII. */
  open: 8,
  close: 9,
  /** `value`: 1 to 3 for stars, 11 to 13 for daggers and other signs that stand for them. */
  star: 10,
  dash: 11,
  equals: 12,
  plus: 13,
  slash: 14,
  times: 15,
  pipe: 16,
  other: 17,
} as const;

export interface Tokens {
  readonly kind: number[];
  readonly from: number[];
  readonly to: number[];
  /** Sense of a word, value of a number or ordinal, see `T`. */
  readonly value: number[];
  /** Hash of a word's letters; 0 for all else. */
  readonly hash: number[];
  /** Index of the other bracket of a pair; -1 where it is missing or this is no bracket. */
  readonly partner: number[];
}
