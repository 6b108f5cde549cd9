/**
 * Tokens of one instruction as columns of numbers: no object and no string is made for a word.
 * Offsets count from the start of the instruction. The columns are used again by the next scan, so
 * tokens are good only until then.
 */
import { type Met, noneMet } from './hints.ts';

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

/**
 * Index of the first token. Below it, and behind the end token, lie tokens of the kind `end`, so
 * that looking a little back or ahead needs no test of bounds and no missing value slows it down.
 */
export const FIRST = 8;
/** No reading function looks farther past the end than this. */
const BEHIND = 64;

export interface Tokens {
  readonly kind: Uint8Array;
  /** Sense of a word; -1 for all that is no word. */
  readonly word: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Sense of a word, value of a number or ordinal, see `T`. */
  readonly value: Float64Array;
  /** Hash of a word's letters; 0 for all else. */
  readonly hash: Int32Array;
  /** Index of the other bracket of a pair; -1 where it is missing or this is no bracket. */
  readonly partner: Int32Array;
  /** Index behind the `end` token that closes them. */
  readonly count: number;
  /** How many words are in no list, or are a letter that scanners take for a 1. */
  readonly strange: number;
  /** What the words hint at. */
  readonly met: Met;
}

/** Tokens while they are being put down. */
export interface Columns extends Tokens {
  kind: Uint8Array;
  word: Int32Array;
  from: Int32Array;
  to: Int32Array;
  value: Float64Array;
  hash: Int32Array;
  partner: Int32Array;
  count: number;
  strange: number;
  /** How many tokens there is room for. */
  room: number;
}

export function newColumns(room: number): Columns {
  const length = room + BEHIND;
  return {
    kind: new Uint8Array(length),
    word: new Int32Array(length).fill(-1),
    from: new Int32Array(length),
    to: new Int32Array(length).fill(-1),
    value: new Float64Array(length),
    hash: new Int32Array(length),
    partner: new Int32Array(length).fill(-1),
    count: FIRST,
    strange: 0,
    met: noneMet(),
    room,
  };
}

/** Doubles the room. */
export function grow(c: Columns): void {
  const wider = newColumns(c.room * 2);
  wider.kind.set(c.kind);
  wider.word.set(c.word);
  wider.from.set(c.from);
  wider.to.set(c.to);
  wider.value.set(c.value);
  wider.hash.set(c.hash);
  wider.partner.set(c.partner);
  Object.assign(c, wider, { count: c.count, strange: c.strange, met: c.met });
}

/** Wipes what an earlier scan, which ended at `before`, left behind the end. */
export function wipeBehind(c: Columns, before: number): void {
  const { kind, word, count } = c;
  for (let i = count; i < before; i++) {
    kind[i] = T.end;
    word[i] = -1;
  }
  // The other columns are asked only beside a kind or a word, a step or two on.
  for (let i = count; i < count + 8; i++) {
    c.from[i] = 0;
    c.to[i] = -1;
    c.value[i] = 0;
    c.hash[i] = 0;
    c.partner[i] = -1;
  }
}
