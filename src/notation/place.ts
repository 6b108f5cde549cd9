/** Where a stitch goes: "in next 2 sts", "around post of dc 2 rows below", "to top of beg ch-3". */

import { PROSE } from './dictionary.ts';
import { layersAhead } from './layers.ts';
import { readLoop, readPost } from './loops.ts';
import { PLAIN_NOUN, readNoun } from './noun.ts';
import { readPick } from './pick.ts';
import { belowAfter } from './place-after.ts';
import { type PlaceDraft, placeDraft, startChainNoun } from './place-draft.ts';
import {
  clauseEnds,
  eatThe,
  eatWord,
  endsInS,
  isOneOf,
  isWord,
  kindAt,
  MAX_DEPTH,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { namesRowEnds, passSideOf } from './row-ends.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Noun } from './tree.ts';
import { readUntil } from './until.ts';

/** A place behind one of its prepositions; `null` leaves the reader where it was. */
export function readPlaceAfterPreposition(r: Reader): PlaceDraft | null {
  const start = r.at;
  if (layersAhead(r) || !eatPreposition(r)) return null;
  const place = readPlaceFrom(r, start);
  if (!place) r.at = start;
  return place;
}

/** A place without preposition: "next 5 sts" in "sk next 5 sts". */
export const readPlace = (r: Reader): PlaceDraft | null => readPlaceFrom(r, r.at);

/** "in", "into the", "around", "all in", "to", "working in" … */
export function eatPreposition(r: Reader): boolean {
  const start = r.at;
  if (isWord(r, W.all) && isPreposition(r, 1)) r.at++;
  if (isWord(r, W.working) && isPreposition(r, 1)) r.at++;
  if (!isPreposition(r, 0)) {
    r.at = start;
    return false;
  }
  r.at++;
  // "in to the first st"
  if (isWord(r, W.in, -1) && isWord(r, W.to) && !isWord(r, W.end, 1)) r.at++;
  // "in and around next st"
  if (isWord(r, W.and) && isPreposition(r, 1)) r.at++;
  // "in through", "over and around": the second says no more.
  if (isPreposition(r, 0) && !isWord(r, W.from)) r.at++;
  return true;
}

function isPreposition(r: Reader, ahead: number): boolean {
  const sense = wordAt(r, ahead);
  return (
    sense === W.in ||
    sense === W.on ||
    sense === W.over ||
    sense === W.around ||
    sense === W.under ||
    sense === W.between ||
    sense === W.round ||
    sense === W.through ||
    sense === W.across ||
    sense === W.at ||
    isBehind(r, ahead) ||
    // "sc up next 4 sc", "sc down next 4 sc"
    ((sense === W.up || sense === W.along) &&
      (isWord(r, W.next, ahead + 1) || namesRowEnds(r, ahead + 1)))
  );
}

/** "sl st behind next petal" */
const isBehind = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.word &&
  (isWord(r, W.next, ahead + 1) || isWord(r, W.each, ahead + 1)) &&
  isOneOf(r, BEHIND, ahead);

const BEHIND = wordsOf('behind');

function readPlaceFrom(r: Reader, start: number): PlaceDraft | null {
  // Places within places ("3rd ch of top of …") are nested as brackets are, and limited with them.
  if (r.depth >= MAX_DEPTH) return null;
  r.depth++;
  const place = placeHere(r, start);
  r.depth--;
  return place;
}

function placeHere(r: Reader, start: number): PlaceDraft | null {
  const draft = placeDraft(r, start);
  // "in the very last ch"
  if (isWord(r, W.the) && isOneOf(r, VERY, 1)) r.at += 2;
  if (r.at > start) {
    draft.all = isAll(r, start);
    if (isBetween(r)) return readBetween(r, draft);
  }
  eatThe(r);
  takeLoop(r, draft);
  const posted = readPost(r, draft);
  eatThe(r);
  if (isWord(r, W.row) && belowAfterIn(r, draft)) return draft;
  passCornerWords(r);
  passCentreOfRing(r);
  const beside = passSideOf(r);
  const picked = readPick(r, draft);
  const loopInside = takeLoop(r, draft);
  const named = readNouns(r, draft) || beside;
  if (beside) nameRowEnds(r, draft);
  if (!picked && !named && !posted && draft.loop === null) return null;
  // "sc around the post": of the next stitch.
  if (posted && !picked && !named) draft.pick = 'next';
  if (draft.pick === 'this' && loopInside) draft.pick = 'next';
  if (draft.pick === 'this' && (isRowEnds(draft) || isCorners(draft))) draft.pick = 'each';
  if (r.word[start] === W.under) underChain(draft);
  // "1 sc in each next sc": in every one of them.
  if (draft.pick === 'next' && draft.each && draft.n === null && named) draft.pick = 'each';
  readAfter(r, draft);
  draft.to = toOf(r);
  return draft;
}

const VERY = wordsOf('very');
const DONE = wordsOf('done');

/** "into the center of the ring": there is nothing else of it to work into. */
function passCentreOfRing(r: Reader): void {
  if (!isWord(r, W.centre) || !isWord(r, W.of, 1)) return;
  const k = isWord(r, W.the, 2) ? 3 : 2;
  if (isWord(r, W.ring, k)) r.at += k;
}

/** "in bottom right corner", "in the upper left corner": which of the corners. */
function passCornerWords(r: Reader): void {
  let k = 0;
  while (k < 3 && kindAt(r, k) === T.word && CORNER_WORDS.test(spelled(r, r.at + k))) k++;
  if (k > 0 && isWord(r, W.corner, k)) r.at += k;
}

const CORNER_WORDS = /^(?:top|bottom|upper|lower|left|right|hand|outer|opposite)$/;

/** "end of each row", "side of each dc", "end of next 4 dc rows": whatever the row is named by. */
function nameRowEnds(r: Reader, draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  const plural = noun ? noun.plural : endsInS(r, r.at);
  if (isWord(r, W.row) || isWord(r, W.round)) r.at++;
  else if (!noun) return;
  draft.nouns = [{ ...(noun ?? PLAIN_NOUN), kind: 'row-end', plural }];
}

const isRowEnds = ({ nouns }: PlaceDraft): boolean =>
  nouns[0]?.kind === 'row-end' && nouns[0].plural;

/** "3 sc in corners", "in corner sts" */
const isCorners = ({ nouns, n }: PlaceDraft): boolean =>
  n === null && nouns.length === 1 && nouns[0]?.kind === 'corner' && nouns[0].plural;

/** "2 tr under next 3 chain": the space that three chains make, not each of them. */
function underChain(draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  if (noun?.kind !== 'chain' || !draft.n || draft.nouns.length > 1) return;
  draft.nouns = [{ ...noun, kind: 'space', chains: draft.n, word: '' }];
  draft.n = null;
}

function takeLoop(r: Reader, draft: PlaceDraft): boolean {
  const loop = readLoop(r);
  if (loop === null) return false;
  draft.loop = loop;
  return true;
}

/** "in row 3": the stitch of that row beneath. */
function belowAfterIn(r: Reader, draft: PlaceDraft): boolean {
  if (kindAt(r, 1) !== T.number || r.value[r.at - 1] !== W.in) return false;
  draft.row = r.value[r.at + 1] ?? null;
  r.at += 2;
  draft.to = toOf(r);
  return true;
}

const isAll = (r: Reader, start: number): boolean =>
  r.kind[start] === T.word && r.value[start] === W.all && r.value[start + 1] !== W.of;

/** Whether the preposition just read was "between": then the place is a gap. */
const isBetween = (r: Reader): boolean => r.value[r.at - 1] === W.between;

/** "between next 2 sts", "between the two dc": the gap, not the stitches. */
function readBetween(r: Reader, draft: PlaceDraft): PlaceDraft | null {
  eatThe(r);
  if (betweenRows(r, draft)) return draft;
  const picked = readPick(r, draft);
  const noun = readNoun(r) ?? bracketedGroup(r);
  if (!noun && !picked) return null;
  draft.nouns = [
    {
      ...PLAIN_NOUN,
      kind: 'gap',
      stem: noun?.stem ?? null,
      word: noun?.word ?? '',
    },
  ];
  draft.n = null;
  if (isWord(r, W.and) && (isWord(r, W.next, 1) || isWord(r, W.the, 1) || isWord(r, W.last, 1))) {
    r.at++;
    readPlace(r);
  }
  readAfter(r, draft);
  draft.to = toOf(r);
  return draft;
}

/** "in between 2nd and 3rd rows": at the end of them, on the side of the piece. */
function betweenRows(r: Reader, draft: PlaceDraft): boolean {
  const told = kindAt(r) === T.ordinal && isWord(r, W.and, 1) && kindAt(r, 2) === T.ordinal;
  const rows = told && (isWord(r, W.row, 3) || isWord(r, W.round, 3));
  if (!rows) return false;
  r.at += 4;
  draft.pick = 'each';
  draft.nouns = [{ ...PLAIN_NOUN, kind: 'row-end', plural: true }];
  draft.to = toOf(r);
  return true;
}

/** "between each (2 tr) cluster": the bracket says what one of them is made of. */
function bracketedGroup(r: Reader): Noun | null {
  if (kindAt(r) !== T.open || kindAt(r, 3) !== T.close) return null;
  const start = r.at;
  r.at += 4;
  const noun = readNoun(r);
  if (noun?.kind === 'group') return noun;
  r.at = start;
  return null;
}

/** "st", "dc or ch-1 sp", "st and each ch-1 sp". */
function readNouns(r: Reader, draft: PlaceDraft): boolean {
  const first = readNoun(r);
  if (!first) return false;
  draft.nouns = [first];
  for (let guard = 0; guard < 6; guard++) {
    const start = r.at;
    if (kindAt(r) === T.comma && listedNoun(r, draft)) continue;
    const comma = kindAt(r) === T.comma ? 1 : 0;
    const link = wordAt(r, comma);
    const slash = kindAt(r) === T.slash;
    if (link !== W.and && link !== W.or && !slash) break;
    r.at += comma + 1;
    if (draft.pick === 'each' && isWord(r, W.in) && isWord(r, W.each, 1)) r.at++;
    const again = draft.pick === 'each' && (isWord(r, W.each) || isWord(r, W.every));
    if (again) r.at++;
    if (!joinable(r, draft, again)) {
      r.at = start;
      break;
    }
    const noun = readNoun(r);
    if (!noun) {
      r.at = start;
      break;
    }
    draft.nouns = [...draft.nouns, noun];
    draft.joinedBy = link === W.or || slash ? 'or' : 'and';
  }
  return true;
}

/** "next dc, sc or ch-1 sp": a comma belongs to the list only when an "or" closes it. */
function listedNoun(r: Reader, draft: PlaceDraft): boolean {
  if (!orAhead(r)) return false;
  const start = r.at++;
  const noun = draft.pick === 'next' || draft.pick === 'each' ? readNoun(r) : null;
  if (!noun || !isWord(r, W.or)) {
    r.at = start;
    return false;
  }
  draft.nouns = [...draft.nouns, noun];
  draft.joinedBy = 'or';
  return true;
}

/** Whether the clause behind the comma has an "or"; no noun is longer than this. */
function orAhead(r: Reader): boolean {
  for (let k = 1; k < 16; k++) {
    const kind = kindAt(r, k);
    if (isWord(r, W.or, k)) return true;
    if (kind === T.comma || kind === T.semicolon || kind === T.colon || kind === T.end)
      return false;
  }
  return false;
}

/**
 * "in each st and ch-1 sp" names two kinds of place, "in next st and sc in next" goes on working.
 * A stitch name with a place behind it is work.
 */
function joinable(r: Reader, draft: PlaceDraft, again: boolean): boolean {
  if (draft.pick !== 'each' && draft.pick !== 'next' && draft.pick !== 'same') return false;
  const start = r.at;
  if (kindAt(r) === T.number && !again) {
    const ok = isWord(r, W.ch, 1) || isWord(r, W.ch, 2) || isWord(r, W.chsp, 1);
    if (!ok) return false;
  }
  // "and ch 3, turn": a chain is made unless it is called a space.
  const chain = isWord(r, W.ch);
  const noun = readNoun(r);
  const around = isWord(r, W.around) && (isWord(r, W.each, 1) || isWord(r, W.next, 1));
  const works =
    noun !== null &&
    isPreposition(r, 0) &&
    (around || (!isWord(r, W.around) && !isWord(r, W.across)));
  const makes = chain && noun?.word === 'ch' && !again;
  r.at = start;
  if (noun === null || works || makes) return false;
  if (draft.pick !== 'each' && noun.kind !== 'space' && noun.kind !== 'chain') {
    return noun.kind === 'stem' || noun.kind === 'stitch' ? clauseLike(r) : true;
  }
  return true;
}

/** A stem noun after "or" is a place; after "and" it may be work: only a clause end settles it. */
const clauseLike = (r: Reader): boolean => r.value[r.at - 1] === W.or;

/** "3 skipped dc behind ch-3 sp", "… in front of the ch 3": on which side of it they are worked. */
function behindSpace(r: Reader): boolean {
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

/** All that may stand behind the noun. */
function readAfter(r: Reader, draft: PlaceDraft): void {
  for (let guard = 0; guard < 8; guard++) {
    const before = r.at;
    afterOnce(r, draft);
    if (r.at === before) return;
  }
}

function afterOnce(r: Reader, draft: PlaceDraft): void {
  // "around the first dc of rnd 1, directly below": where it lies says no more.
  if (draft.row !== null && kindAt(r) === T.comma && saysBelow(r)) r.at += 3;
  if (clauseEnds(r)) return;
  const sense = wordAt(r);
  if (sense === W.from && !belowAfter(r, draft)) return fromAfter(r, draft);
  // "in centre dc on 3-dc group"
  if (sense === W.of || (sense === W.on && draft.pick === 'centre')) return ofAfter(r, draft);
  if (sense === W.as) return asAfter(r, draft);
  if (sense === W.at) return footAfter(r, draft);
  if (sense === W.between) return betweenAfter(r, draft);
  if (sense === W.just && isWord(r, W.made, 1)) return justMade(r, draft);
  // "3rd st of ch-3 first made"
  if (kindAt(r) === T.ordinal && r.value[r.at] === 1 && isWord(r, W.made, 1)) {
    r.at += 2;
    return;
  }
  if (behindSpace(r)) return;
  const done = isOneOf(r, DONE) && (sense === 0 || sense === PROSE);
  if (sense === W.made || sense === W.only || sense === W.indicated || done) {
    r.at++;
    return;
  }
  // "FPdc around dc just below/same st": the stitch on which the hook stands.
  if (sense === W.just && isWord(r, W.below, 1) && draft.post === null) {
    r.at += 2;
    draft.pick = 'same';
    if (kindAt(r) === T.slash && isWord(r, W.same, 1)) r.at += isWord(r, W.st, 2) ? 3 : 2;
    return;
  }
  if (draft.pick === 'this' && isFarthest(r)) {
    draft.pick = 'first';
    r.at += 4;
    return;
  }
  if (draft.rowsBelow > 0 && draft.pick === 'this') {
    if (sense === W.next) return belowNext(r, draft);
    if (sense === W.skipped || (sense === W.the && isWord(r, W.skipped, 1))) {
      return belowSkipped(r, draft);
    }
  }
  if (sense === W.remaining && isWord(r, W.unworked, 1)) return leftUnworked(r, draft);
  if (belowAfter(r, draft)) return;
  if (sense === W.in && draft.pick === 'first' && passInRound(r)) return;
  if (sense === W.in || sense === W.through || sense === W.blo || sense === W.flo) {
    loopAfter(r, draft);
    if (isWord(r, W.in)) inStartChain(r, draft);
    if (isWord(r, W.in) && draft.pick !== 'next' && draft.pick !== 'each') inCorner(r);
    return;
  }
  if (draft.until === null && draft.pick !== 'next') draft.until = readUntil(r, readPlace);
}

/** "join in first sc made in the round" */
function passInRound(r: Reader): boolean {
  const k = isWord(r, W.the, 1) || spelled(r, r.at + 1) === 'this' ? 2 : 1;
  if (!isWord(r, W.round, k) || !clauseEnds(r, k + 1)) return false;
  r.at += k + 1;
  return true;
}

/** "the chain farthest from your hook": the first of it. */
const isFarthest = (r: Reader): boolean =>
  isWord(r, W.from, 1) &&
  isWord(r, W.hook, 3) &&
  kindAt(r) === T.word &&
  /^f[au]rthest$/.test(spelled(r, r.at));

/** "hdc around hdc just made": the stitch of this row, so that none beneath is used. */
function justMade(r: Reader, draft: PlaceDraft): void {
  r.at += 2;
  if (draft.pick === 'this' && draft.nouns[0]?.kind === 'stem') draft.pick = 'same';
}

const saysBelow = (r: Reader): boolean =>
  isWord(r, W.below, 2) && kindAt(r, 1) === T.word && spelled(r, r.at + 1) === 'directly';

/** "in the 4 sts left unworked from round 6" */
function leftUnworked(r: Reader, draft: PlaceDraft): void {
  r.at += 2;
  draft.nouns = draft.nouns.map((noun) => ({ ...noun, skipped: true }));
  const row = isWord(r, W.row, 1) || isWord(r, W.round, 1);
  if ((isWord(r, W.from) || isWord(r, W.of) || isWord(r, W.in)) && row) {
    r.at += kindAt(r, 2) === T.number ? 3 : 2;
  }
}

/** "in st below next st" */
function belowNext(r: Reader, draft: PlaceDraft): void {
  const next = readPlace(r);
  if (!next) return;
  draft.pick = 'next';
  draft.n = next.n;
}

/** "around sc below skipped st": below the one that this row just passed. */
function belowSkipped(r: Reader, draft: PlaceDraft): void {
  eatThe(r);
  const skipped = readPlace(r);
  const [noun] = draft.nouns;
  if (skipped && noun) draft.nouns = [{ ...noun, skipped: true }];
}

/** "third stitch in beginning chain" */
function inStartChain(r: Reader, draft: PlaceDraft): void {
  if (draft.of !== null || (draft.pick !== 'nth' && draft.pick !== 'top')) return;
  const start = r.at++;
  const of = readPlace(r);
  if (of?.nouns[0]?.kind === 'start-chain') draft.of = of;
  else r.at = start;
}

/** "to 1st dc in the first corner": the first of its row, told by where it stands. */
function inCorner(r: Reader): void {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  const first = kindAt(r, k) === T.ordinal && r.value[r.at + k] === 1;
  if (first && isWord(r, W.corner, k + 1)) r.at += k + 2;
}

/** "in back loop only" behind the place. */
function loopAfter(r: Reader, draft: PlaceDraft): void {
  const start = r.at;
  if (isWord(r, W.in) || isWord(r, W.through)) r.at++;
  eatThe(r);
  if (draft.loop !== null || !takeLoop(r, draft)) r.at = start;
}

/** "from hook", "from the hook", "from beg". */
function fromAfter(r: Reader, draft: PlaceDraft): void {
  let k = isWord(r, W.the, 1) || isWord(r, W.a, 1) ? 2 : 1;
  // "from the crochet hook"
  if (isWord(r, W.work, k) && isWord(r, W.hook, k + 1)) k++;
  if (isWord(r, W.hook, k)) {
    draft.fromHook = true;
    r.at += k + 1;
    chainFromHook(draft);
  } else if (isWord(r, W.beginning, k) || isWord(r, W.end, k)) r.at += k + 1;
}

/** "in ch 5 from hook": the fifth chain, not a space of five. */
function chainFromHook(draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  const nth = noun?.chains?.values[0];
  if (!noun || draft.pick !== 'this' || typeof nth !== 'number') return;
  draft.pick = 'nth';
  draft.nth = nth;
  draft.nouns = [{ ...noun, kind: 'chain', chains: null, word: '' }];
}

function ofAfter(r: Reader, draft: PlaceDraft): void {
  if (draft.of !== null) return;
  const start = r.at++;
  eatThe(r);
  if (rowOf(r, draft)) return;
  const length = chainByLength(r);
  if (length && draft.nouns[0]?.kind === 'space' && !draft.nouns[0].chains) {
    draft.nouns = [{ ...draft.nouns[0], chains: length.nouns[0]?.chains ?? null }];
    return;
  }
  const isBare = kindAt(r) === T.number;
  const of = length ?? readPlace(r);
  if (!of) {
    if (draft.nouns[0]?.kind !== 'corner' || !passPiece(r)) r.at = start;
    return;
  }
  // "of 3 dc group": one group, of three.
  const [noun] = of.nouns;
  if (noun?.kind === 'group' && noun.word === 'group' && !noun.plural) {
    of.n = null;
    if (isBare && of.pick === 'next') of.pick = 'this';
  }
  draft.of = topOfChain(draft, startChainOf(of));
}

/** "dc in top of ch": a bare chain with a top is the one that begins a row. */
function topOfChain(draft: PlaceDraft, of: PlaceDraft): PlaceDraft {
  const [noun] = of.nouns;
  if (draft.pick === 'top' && noun?.kind === 'chain' && !noun.plural && of.pick === 'this')
    of.nouns = [startChainNoun(noun)];
  return of;
}

/** "in corner of cloth": the piece by its name, up to the clause's end. */
function passPiece(r: Reader): boolean {
  let k = 0;
  while (k < 3 && kindAt(r, k) === T.word && wordAt(r, k) <= 0) k++;
  if (k === 0 || !(clauseEnds(r, k) || kindAt(r, k) === T.dash)) return false;
  r.at += k;
  return true;
}

/** "3rd of 5 ch", "top of 3ch": the number is the chain's length. */
function chainByLength(r: Reader): PlaceDraft | null {
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
function startChainOf(of: PlaceDraft): PlaceDraft {
  const [noun] = of.nouns;
  if (noun?.kind === 'space' && noun.word === 'ch' && of.pick !== 'next') {
    of.nouns = [startChainNoun(noun)];
  }
  return of;
}

/** "of previous round", "of row 3", "of the round": a row rather than a place. */
function rowOf(r: Reader, draft: PlaceDraft): boolean {
  const start = r.at;
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

/** "in sp between next 2 dc", "in each sp between sts": a gap, not a space of chains. */
function betweenAfter(r: Reader, draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  // "sc in ch between next 2 sc": the space that it spans.
  const chain = noun?.kind === 'chain' && draft.pick === 'this' && !noun.plural;
  const seated = noun?.kind === 'space' || noun?.kind === 'stitch' || noun?.kind === 'stem';
  if (!noun || (!seated && !chain)) return;
  const start = r.at++;
  const gap = readBetween(r, placeDraft(r, start));
  if (!gap) {
    r.at = start;
    return;
  }
  // "in sc between next 2 sps", "in ch-3 sp between shells": told by what stands beside it.
  if (chain) draft.nouns = [{ ...noun, kind: 'space' }];
  if (chain || noun.kind === 'stem' || noun.chains !== null) return;
  if (draft.pick === 'this') draft.pick = gap.pick;
  draft.nouns = gap.nouns;
}

/** "at the foot of the chain", "at base of ch 3", "at the corner". */
function footAfter(r: Reader, draft: PlaceDraft): void {
  const start = r.at++;
  eatThe(r);
  const of = draft.of === null && (isWord(r, W.base) || isWord(r, W.top)) ? readPlace(r) : null;
  if (of) {
    draft.of = of.of ?? of;
    draft.pick = of.pick === 'same' ? 'same' : draft.pick;
  } else if (isWord(r, W.corner) || isWord(r, W.end) || isWord(r, W.beginning)) {
    r.at++;
    if (isWord(r, W.of) && (isWord(r, W.row, 1) || isWord(r, W.round, 1)))
      r.at += kindAt(r, 2) === T.number ? 3 : 2;
  } else r.at = start;
}

/** "as join", "as first 2 sc", "as last st". */
function asAfter(r: Reader, draft: PlaceDraft): void {
  if (draft.pick !== 'same' || draft.of !== null) return;
  const start = r.at++;
  eatThe(r);
  const of = readPlace(r);
  if (of) draft.of = startChainOf(of);
  else if (kindAt(r) === T.word && !isWord(r, W.for)) r.at++;
  else r.at = start;
}
