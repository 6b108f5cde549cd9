/** A place while it is being read. */
import { fromOf, type Reader } from './reader.ts';
import type { Noun, Place } from './tree.ts';

export type PlaceDraft = { -readonly [K in keyof Place]: Place[K] };

const NO_NOUNS: readonly Noun[] = [];

export function placeDraft(r: Reader, start: number): PlaceDraft {
  const from = fromOf(r, start);
  return {
    from,
    to: from,
    pick: 'this',
    n: null,
    each: false,
    nth: null,
    fromHook: false,
    nouns: NO_NOUNS,
    joinedBy: null,
    until: null,
    of: null,
    loop: null,
    post: null,
    rowsBelow: 0,
    row: null,
    all: false,
  };
}
