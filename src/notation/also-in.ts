/** Places behind the first one: "and in each ch across", "and next st", "and then all the way to the end". */

import { readPlace, readPlaceAfterPreposition } from './place.ts';
import { copyOfPlace, type PlaceDraft } from './place-draft.ts';
import { eatPreposition } from './preposition.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Place, Until } from './tree.ts';
import type { Draft } from './work-draft.ts';

/** "and in each ch across", "and each st around", "and in ch-2 sp". */
export function readAlsoIn(r: Reader, draft: Draft): void {
  if (kindAt(r) !== T.comma && !isWord(r, W.and) && !isWord(r, W.afterwards)) return;
  for (let guard = 0; guard < 8; guard++) {
    const start = r.at;
    const listed = kindAt(r) === T.comma && isWord(r, W.and, 1);
    if (listed) r.at++;
    const first = draft.place;
    const along = first?.fromHook || isNthChain(first);
    const onward = first && along ? onToTheEnd(r) : 0;
    if (onward > 0 && first) {
      r.at += onward;
      draft.alsoIn = [...draft.alsoIn, acrossFrom(r, first, fromOf(r, start))];
      return;
    }
    const joined =
      passThen(r, draft.stitch.stem !== 'ss') ||
      eatWord(r, W.and) ||
      (kindAt(r) === T.comma && startsPlace(r, 1, true));
    if (!joined) {
      r.at = start;
      return;
    }
    if (kindAt(r) === T.comma) r.at++;
    // "dc into the next, and the next 18 sts", "in same st and the next 4"
    if (isWord(r, W.the) && isWord(r, W.next, 1)) r.at++;
    if (!startsPlace(r, 0, false)) {
      r.at = start;
      return;
    }
    // "dc in next dc, and between dc": the gap is told by its preposition.
    const gap = isWord(r, W.between) ? readPlaceAfterPreposition(r) : null;
    const prepositioned = gap !== null || eatPreposition(r);
    const place = gap ?? topOfEach(readPlace(r));
    if (!place || (!prepositioned && worksAfter(r))) {
      r.at = start;
      return;
    }
    place.from = fromOf(r, start);
    if (draft.alsoIn.length > 0 || !listsEach(draft, place))
      draft.alsoIn = [...draft.alsoIn, place];
  }
}

/** "in each dc, in each cluster and in every ch across": all of them as they come; `false`: something else. */
function listsEach(draft: Draft, { pick, n, of, nouns, until, to }: PlaceDraft): boolean {
  const first = draft.place;
  if (first?.pick !== 'each' || first.n || first.of || first.until || first.nouns.length === 0)
    return false;
  if (pick !== 'each' || n || of || nouns.length === 0) return false;
  const all = { nouns: [...first.nouns, ...nouns], joinedBy: 'and', until, to } as const;
  draft.place = Object.assign(copyOfPlace(first), all);
  return true;
}

/** "the top of each cluster" among other places: those clusters. */
const topOfEach = (place: PlaceDraft | null): PlaceDraft | null =>
  place?.pick === 'top' && place.of?.pick === 'each' ? copyOfPlace(place.of) : place;

/**
 * "sc in first sc, then in each ch-1 sp and sc across", "sl st in next st and then in ch-1 sp": the same
 * stitch goes on. `each`: only where it does so in each.
 */
function passThen(r: Reader, each: boolean): boolean {
  let k = kindAt(r) === T.comma ? 1 : 0;
  if (isWord(r, W.and, k)) k++;
  if (!isWord(r, W.afterwards, k) || !startsPlace(r, k + 1, each)) return false;
  // "sl st in ch-3 sp, then in same sp work (ch 3, 2 dc)": nobody slips into one place twice.
  if (!each && isWord(r, W.same, isWord(r, W.the, k + 2) ? k + 3 : k + 2)) return false;
  r.at += k + 1;
  return true;
}

/** "in 2nd ch": counted from the hook, though that is not said. */
const isNthChain = (place: Place | null): boolean =>
  place?.pick === 'nth' && place.nth === 2 && place.nouns[0]?.kind === 'chain' && !place.of;

/** "and across", "and then all the way to the end of the row": how many tokens go on so; 0: something else. */
function onToTheEnd(r: Reader): number {
  if (!isWord(r, W.and)) return 0;
  let k = 1;
  while (k < 6 && (isOneOf(r, ALL_THE_WAY, k) || isWord(r, W.continue, k))) k++;
  if (isWord(r, W.across, k) || isWord(r, W.around, k)) {
    k++;
    // "and across the row"
    if (isWord(r, W.the, k) && (isWord(r, W.row, k + 1) || isWord(r, W.ch, k + 1))) k += 2;
  } else if (isWord(r, W.to, k)) {
    k += isWord(r, W.the, k + 1) ? 2 : 1;
    if (!isWord(r, W.end, k)) return 0;
    k++;
    if (isWord(r, W.of, k)) {
      k += isWord(r, W.the, k + 1) ? 2 : 1;
      if (!isWord(r, W.row, k) && !isWord(r, W.ch, k) && !isWord(r, W.round, k)) return 0;
      k++;
    }
  } else return 0;
  const sign = kindAt(r, k);
  const ends = clauseEnds(r, k) || sign === T.dash || sign === T.equals || sign === T.open;
  return ends ? k : 0;
}

const ALL_THE_WAY = wordsOf('then all the way work working so on');

/** "in 2nd ch from hook and across": in each chain to the end. */
function acrossFrom(r: Reader, first: Place, from: number): Place {
  const until: Until = { kind: 'end', word: 'across', from, to: toOf(r) };
  return {
    ...first,
    pick: 'each',
    each: true,
    nth: null,
    fromHook: false,
    until,
    from,
    to: toOf(r),
  };
}

/** After a comma only "in each …" goes on with the same stitch; "in next sp (…)" begins a group. */
function startsPlace(r: Reader, ahead: number, comma: boolean): boolean {
  const sense = wordAt(r, ahead);
  if (sense === W.in || sense === W.around || sense === W.over) {
    // ", into the top of each cluster": the top is all of it that there is to work into.
    const top = isWord(r, W.the, ahead + 1) ? ahead + 2 : ahead + 1;
    const k = isWord(r, W.top, top) && isWord(r, W.of, top + 1) ? top + 2 : ahead + 1;
    return !comma || isWord(r, W.each, k) || isWord(r, W.every, k);
  }
  if (comma) return false;
  return (
    sense === W.between ||
    (sense === W.top && isWord(r, W.of, ahead + 1)) ||
    sense === W.each ||
    sense === W.every ||
    sense === W.next ||
    sense === W.last ||
    sense === W.same ||
    (sense === W.all && isWord(r, W.the, ahead + 1) && isWord(r, W.ch, ahead + 2)) ||
    kindAt(r, ahead) === T.ordinal
  );
}

/** "and next 2 sc in …" is no second place. */
const worksAfter = (r: Reader): boolean => isWord(r, W.in);
