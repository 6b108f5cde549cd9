/** A closed thing that is worked round as a ring is: "24 sc around elastic hair band", "39 dc in the hairtie". */
import { isHinted } from './hints.ts';
import { PLAIN_NOUN } from './noun.ts';
import { type PlaceDraft, placeWith } from './place-draft.ts';
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  rareWords,
  toOf,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** The thing as a ring, or `null`, which leaves the reader where it was. */
export function aroundObject(r: Reader): PlaceDraft | null {
  if (!isHinted(r, THINGS.hint)) return null;
  const leads =
    isWord(r, W.around) ||
    isWord(r, W.in) ||
    isWord(r, W.on) ||
    isWord(r, W.over) ||
    isOneOf(r, ONTO);
  if (!leads) return null;
  let k = isWord(r, W.the, 1) || isWord(r, W.a, 1) || isOneOf(r, YOUR, 1) ? 2 : 1;
  const first = k;
  while (k < first + 4 && (isOneOf(r, OF_THINGS, k) || isOneOf(r, THINGS, k))) k++;
  const last = k - 1;
  const named = isOneOf(r, THINGS, last) && (last > first || isOneOf(r, ALONE, last));
  if (!named || !(clauseEnds(r, k) || kindAt(r, k) === T.open || kindAt(r, k) === T.dash))
    return null;
  const from = fromOf(r, r.at);
  const pick = isWord(r, W.a, 1) ? 'next' : 'this';
  r.at += k;
  const noun = { ...PLAIN_NOUN, kind: 'ring' as const };
  return placeWith({ from, to: toOf(r) }, { pick, nouns: [noun] });
}

const ONTO = wordsOf('onto');
const YOUR = wordsOf('your this');
/** What such things are called; a band, a tie or a ring only with a word of what it is made of or for. */
const THINGS = rareWords('band tie ring hoop elastic bangle hairtie hairband');
const ALONE = wordsOf('hoop elastic bangle hairtie hairband');
const OF_THINGS = wordsOf(
  'elastic hair rubber metal plastic wooden key curtain covered ponytail brass bone split stretchy',
);
