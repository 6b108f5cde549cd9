/** What may stand behind the noun of a place and names no other place. */

import { isHinted } from './hints.ts';
import { LOOP, readLoop } from './loops.ts';
import { readNoun } from './noun.ts';
import { type PlaceDraft, placeDraft, startChainNoun } from './place-draft.ts';
import { BEHIND } from './preposition.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** "into the center of the ring": there is nothing else of it to work into. */
export function passCentreOfRing(r: Reader): void {
  if (!isWord(r, W.centre) || !isWord(r, W.of, 1)) return;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  if (isWord(r, W.ring, k)) r.at += k;
}

/** "in bottom right corner", "in the upper left corner": which of the corners. */
export function passCornerWords(r: Reader): void {
  let k = 0;
  while (k < 3 && isOneOf(r, CORNER_WORDS, k)) k++;
  if (k > 0 && isWord(r, W.corner, k)) r.at += k;
}

const CORNER_WORDS = wordsOf(
  'top bottom upper lower left right hand outer outside inside inner opposite',
);

export function takeLoop(r: Reader, draft: PlaceDraft): boolean {
  if (!isHinted(r, LOOP)) return false;
  const loop = readLoop(r);
  if (loop === null) return false;
  draft.loop = loop;
  return true;
}

/** "3 skipped dc behind ch-3 sp", "… in front of the ch 3": on which side of it they are worked. */
export function behindSpace(r: Reader): boolean {
  if (kindAt(r) !== T.word) return false;
  const front = isWord(r, W.front, 1) && isWord(r, W.of, 2) && isWord(r, W.in);
  if (!front && !isOneOf(r, BEHIND)) return false;
  const start = r.at;
  r.at += front ? 3 : 1;
  eatThe(r);
  if (readNoun(r)?.kind === 'space') return true;
  r.at = start;
  return false;
}

/** "in first sc made on previous row": where every place lies. */
export function passRowBeneath(r: Reader): boolean {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (!isWord(r, W.previous, k) && !isWord(r, W.last, k)) return false;
  if (!isWord(r, W.row, k + 1) && !isWord(r, W.round, k + 1)) return false;
  r.at += k + 2;
  return true;
}

/** "join in first sc made in the round" */
export function passInRound(r: Reader): boolean {
  const k = isWord(r, W.the, 1) || spelled(r, r.at + 1) === 'this' ? 2 : 1;
  if (!isWord(r, W.round, k) || !clauseEnds(r, k + 1)) return false;
  r.at += k + 1;
  return true;
}

/** "the chain farthest from your hook": the first of it. */
export const isFarthest = (r: Reader): boolean =>
  isWord(r, W.from, 1) &&
  isWord(r, W.hook, 3) &&
  kindAt(r) === T.word &&
  /^f[au]rthest$/.test(spelled(r, r.at));

/** "hdc around hdc just made": the stitch of this row, so that none beneath is used. */
export function justMade(r: Reader, draft: PlaceDraft): void {
  r.at += 2;
  if (draft.pick === 'this' && draft.nouns[0]?.kind === 'stem') draft.pick = 'same';
}

export const saysBelow = (r: Reader): boolean =>
  isWord(r, W.below, 2) && kindAt(r, 1) === T.word && spelled(r, r.at + 1) === 'directly';

/** "in the 4 sts left unworked from round 6" */
export function leftUnworked(r: Reader, draft: PlaceDraft): void {
  r.at += 2;
  draft.nouns = draft.nouns.map((noun) => ({ ...noun, skipped: true }));
  const row = isWord(r, W.row, 1) || isWord(r, W.round, 1);
  if ((isWord(r, W.from) || isWord(r, W.of) || isWord(r, W.in)) && row) {
    r.at += kindAt(r, 2) === T.number ? 3 : 2;
  }
}

/** "to 1st dc in the first corner": the first of its row, told by where it stands. */
export function inCorner(r: Reader): void {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  const first = kindAt(r, k) === T.ordinal && r.value[r.at + k] === 1;
  if (first && isWord(r, W.corner, k + 1)) r.at += k + 2;
}

/** "in back loop only" behind the place. */
export function loopAfter(r: Reader, draft: PlaceDraft): void {
  const start = r.at;
  if (isWord(r, W.in) || isWord(r, W.through)) r.at++;
  eatThe(r);
  if (draft.loop !== null || !takeLoop(r, draft)) r.at = start;
}

/** "in ch 5 from hook": the fifth chain, not a space of five. */
export function chainFromHook(draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  const nth = noun?.chains?.values[0];
  if (!noun || draft.pick !== 'this' || typeof nth !== 'number') return;
  draft.pick = 'nth';
  draft.nth = nth;
  draft.nouns = [{ ...noun, kind: 'chain', chains: null, word: '' }];
}

/** "dc in top of ch": a bare chain with a top is the one that begins a row. */
export function topOfChain(draft: PlaceDraft, of: PlaceDraft): PlaceDraft {
  const [noun] = of.nouns;
  if (draft.pick === 'top' && noun?.kind === 'chain' && !noun.plural && of.pick === 'this')
    of.nouns = [startChainNoun(noun)];
  return of;
}

/** "in corner of cloth": the piece by its name, up to the clause's end. */
export function passPiece(r: Reader): boolean {
  let k = 0;
  while (k < 3 && kindAt(r, k) === T.word && wordAt(r, k) <= 0) k++;
  if (k === 0 || !(clauseEnds(r, k) || kindAt(r, k) === T.dash)) return false;
  r.at += k;
  return true;
}

/** "3rd of 5 ch", "top of 3ch": the number is the chain's length. */
export function chainByLength(r: Reader): PlaceDraft | null {
  if (kindAt(r) !== T.number) return null;
  const start = r.at;
  const noun = readNoun(r);
  if (!noun || noun.chains === null) {
    r.at = start;
    return null;
  }
  const draft = placeDraft(r, start);
  draft.nouns = [noun];
  draft.to = toOf(r);
  return draft;
}

/** "3rd ch of ch-5": a chain named by its length there is a chain made before, not a space. */
export function startChainOf(of: PlaceDraft): PlaceDraft {
  const [noun] = of.nouns;
  if (noun?.kind === 'space' && noun.word === 'ch' && of.pick !== 'next') {
    of.nouns = [startChainNoun(noun)];
  }
  return of;
}

/** "of previous round", "of row 3", "of the round": a row rather than a place. */
export function rowOf(r: Reader, draft: PlaceDraft): boolean {
  const start = r.at;
  // "skip first sc of each row", in an order for several rows
  if (isWord(r, W.each) && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) {
    r.at += 2;
    return true;
  }
  // "in each st of previous work"
  if (isWord(r, W.previous) && isWord(r, W.work, 1)) {
    r.at += 2;
    return true;
  }
  for (const word of [W.previous, W.last, W.base, W.beginning, W.same]) eatWord(r, word);
  if (kindAt(r) === T.ordinal && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) {
    draft.row = r.value[r.at] ?? null;
    r.at += 2;
    return true;
  }
  if (!eatWord(r, W.row) && !eatWord(r, W.round) && !eatWord(r, W.r)) {
    r.at = start;
    return false;
  }
  if (kindAt(r) === T.number) {
    draft.row = r.value[r.at] ?? null;
    r.at++;
  } else eatWord(r, W.below);
  return true;
}
