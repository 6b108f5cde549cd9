/** A place while it is being read. */
import type { Span } from '../source/index.ts';
import { fromOf, type Reader } from './reader.ts';
import type { Noun, Place } from './tree.ts';

/** What was just read is nobody's yet: whoever asked for it may set its members. */
export type PlaceDraft = { -readonly [K in keyof Place]: Place[K] };

const NO_NOUNS: readonly Noun[] = [];

/** A place of which nothing is said but where its words stand. */
export function plainPlace({ from, to }: Span): PlaceDraft {
  return {
    from,
    to,
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

export function placeDraft(r: Reader, start: number): PlaceDraft {
  const from = fromOf(r, start);
  return plainPlace({ from, to: from });
}

/** A place with some of it said; the members keep their order. */
export const placeWith = (span: Span, said: Partial<Place>): PlaceDraft =>
  Object.assign(plainPlace(span), said);

// A copy by "..." has a hidden class of its own, and all that meets both is slow: so this one is
// written out, with its members in the order above.

export const copyOfPlace = (place: Place): PlaceDraft => ({
  from: place.from,
  to: place.to,
  pick: place.pick,
  n: place.n,
  each: place.each,
  nth: place.nth,
  fromHook: place.fromHook,
  nouns: place.nouns,
  joinedBy: place.joinedBy,
  until: place.until,
  of: place.of,
  loop: place.loop,
  post: place.post,
  rowsBelow: place.rowsBelow,
  row: place.row,
  all: place.all,
});

/** "ch-3" as the chain that begins the row, where it was read as a space. */
export const startChainNoun = ({ stem, post, chains, plural, corner, skipped }: Noun): Noun => ({
  kind: 'start-chain',
  stem,
  post,
  chains,
  word: '',
  plural,
  corner,
  skipped,
});
