import { PLAIN_NOUN, readNoun } from './noun.ts';
import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
import { placeDraft, placeWith } from './place-draft.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  toOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Noun, Numbers, Place, SkipStep } from './tree.ts';
import { readUntil } from './until.ts';

/** "miss first tr and 1ch, …", "sk next ch-2 sp, next 9 sts and next ch-2 sp": all of the list is skipped. */
export function readSkips(r: Reader): SkipStep[] | null {
  const list = skippedList(r) ?? countedList(r);
  if (list) return list;
  const first = readSkip(r);
  if (!first) return null;
  const start = r.at;
  const listed: SkipStep[] = [first];
  while (kindAt(r) === T.comma && isWord(r, W.next, 1)) {
    r.at++;
    const more = skippedToo(r);
    if (!more) break;
    listed.push(more);
  }
  const last = eatWord(r, W.and) ? skippedToo(r) : null;
  if (last && clauseEnds(r)) return [...listed, last];
  r.at = start;
  return [first];
}

/** "sk next (2 dc, ch 1, sc, ch 1, 2 dc)": what the bracket lists is passed, one after the other. */
function skippedList(r: Reader): SkipStep[] | null {
  let k = 1;
  while (isWord(r, W.next, k) || isWord(r, W.the, k)) k++;
  const open = r.at + k;
  const close = r.kind[open] === T.open ? (r.partner[open] ?? -1) : -1;
  if (close < 0) return null;
  const start = r.at;
  r.at = open + 1;
  const skips: SkipStep[] = [];
  while (r.at < close) {
    const skip = skippedItem(r);
    if (!skip || !(kindAt(r) === T.comma || r.at === close)) {
      r.at = start;
      return null;
    }
    skips.push(skip);
    if (kindAt(r) === T.comma) r.at++;
  }
  r.at = close + 1;
  return skips.length > 0 ? skips : null;
}

/**
 * "skip 2 ch and 1 tr, sc in next tr", "skip 1 tr, 1 ch and 1 tr": several, each with its number, the last
 * behind "and" and before the clause ends. What has a place of its own is worked, and none of them.
 */
function countedList(r: Reader): SkipStep[] | null {
  const start = r.at++;
  if (isWord(r, W.next)) r.at++;
  const skips: SkipStep[] = [];
  let isLast = false;
  while (kindAt(r) === T.number && skips.length < MOST_LISTED) {
    const item = skippedItem(r);
    if (!item) break;
    skips.push(item);
    if (isLast && clauseEnds(r)) return skips;
    isLast = isWord(r, W.and);
    if (!isLast && kindAt(r) !== T.comma) break;
    r.at++;
  }
  r.at = start;
  return null;
}

const MOST_LISTED = 8;

/** "2 dc", "ch 1", "1 ch", "picot" of such a list. */
function skippedItem(r: Reader): SkipStep | null {
  const from = fromOf(r, r.at);
  const chain = isWord(r, W.ch);
  if (chain) r.at++;
  let n = kindAt(r) === T.number ? readNumbers(r) : null;
  const noun = chain ? ONE_CHAIN : readNoun(r);
  if (!noun) return null;
  const single = noun.kind === 'space' && noun.word === 'ch' ? ONE_CHAIN : noun;
  if (single !== noun) n = noun.chains;
  const place = placeWith({ from, to: toOf(r) }, { pick: 'next', n, nouns: [single] });
  return { kind: 'skip', place, countsAs: null, from, to: toOf(r) };
}

const ONE_CHAIN: Noun = { ...PLAIN_NOUN, kind: 'chain' };

function skippedToo(r: Reader): SkipStep | null {
  const from = fromOf(r, r.at);
  const chain = kindAt(r) === T.number && isWord(r, W.ch, 1) && clauseEnds(r, 2);
  const place = chain || isWord(r, W.next) ? readPlace(r) : null;
  return place?.nouns.length ? { kind: 'skip', place, countsAs: null, from, to: toOf(r) } : null;
}

/** "sk next 2 sts", "miss 2", "skip st", "pass over 3". */
function readSkip(r: Reader): SkipStep | null {
  const start = r.at;
  r.at++;
  if (isWord(r, W.over)) r.at++;
  // "sk-2 sts", "sk-next st"
  if (kindAt(r) === T.dash && isGlued(r) && (kindAt(r, 1) === T.number || isWord(r, W.next, 1)))
    r.at++;
  // "skip (sk) 3 sc"
  if (kindAt(r) === T.open && isWord(r, W.skip, 1) && kindAt(r, 2) === T.close) r.at += 3;
  const toSpace = skipTo(r, start);
  if (toSpace) return toSpace;
  const placeAt = r.at;
  const found = (isWord(r, W.in) ? null : readPlace(r)) ?? bareNumber(r, placeAt);
  // "skip 2 more stitches"
  if (found && isWord(r, W.more) && isWord(r, W.st, 1)) r.at += 2;
  const place = found ? alongRow(r, found) : skippedOne(r, start);
  if (!place) {
    r.at = start;
    return null;
  }
  return { kind: 'skip', place, countsAs: null, from: fromOf(r, start), to: toOf(r) };
}

/** "*sc, ch, sk*": one, where no number is told. */
const skippedOne = (r: Reader, start: number): Place | null =>
  r.at === start + 1 && (clauseEnds(r) || kindAt(r) === T.star)
    ? { ...placeDraft(r, start), pick: 'next' }
    : null;

/** "skip to next ch-1 sp": all the stitches before it. */
function skipTo(r: Reader, start: number): SkipStep | null {
  if (!isWord(r, W.to)) return null;
  const from = r.at;
  const until = readUntil(r, readPlace);
  const space = until?.kind === 'place' && until.place.nouns[0]?.kind === 'space';
  if (!space) {
    r.at = from;
    return null;
  }
  const place: Place = {
    ...placeDraft(r, from),
    pick: 'each',
    each: true,
    nouns: [PLAIN_NOUN],
    until,
    to: until.to,
  };
  return { kind: 'skip', place, countsAs: null, from: fromOf(r, start), to: toOf(r) };
}

/** "skip 16 sts from 1st ear flap along Rnd 14": the row that they are of. */
function alongRow(r: Reader, place: Place): Place {
  let k = 0;
  if (isWord(r, W.from)) {
    while (k < 5 && !isWord(r, W.along, k) && !isWord(r, W.on, k) && !clauseEnds(r, k)) k++;
  }
  const linked = isWord(r, W.along, k) || isWord(r, W.on, k);
  const row = isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1);
  if (place.row !== null || !linked || !row || kindAt(r, k + 2) !== T.number) return place;
  r.at += k + 3;
  return { ...place, row: r.value[r.at - 1] ?? null, to: toOf(r) };
}

function bareNumber(r: Reader, at: number): Place | null {
  r.at = at;
  const n: Numbers | null = readNumbers(r);
  if (!n && !clauseEnds(r) && !isWord(r, W.and)) return null;
  const from = n?.from ?? toOf(r);
  return placeWith({ from, to: toOf(r) }, { pick: 'next', n });
}
