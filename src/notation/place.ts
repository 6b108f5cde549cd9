/** Where a stitch goes: "in next 2 sts", "around post of dc 2 rows below", "to top of beg ch-3". */

import { asLoop } from './behind-chain.ts';
import {
  behindSpace,
  chainByLength,
  chainFromHook,
  inCorner,
  isFarthest,
  justMade,
  leftUnworked,
  loopAfter,
  passCentreOfRing,
  passCornerWords,
  passInRound,
  passPiece,
  passRowBeneath,
  rowOf,
  saysBelow,
  startChainOf,
  takeLoop,
  topOfChain,
} from './behind-noun.ts';
import { PROSE } from './dictionary.ts';
import { hintOf, isHinted } from './hints.ts';
import { layersAhead } from './layers.ts';
import { readPost } from './loops.ts';
import { PLAIN_NOUN, readNoun } from './noun.ts';
import { bracketedGroup, readNouns } from './nouns-of-place.ts';
import { readPick } from './pick.ts';
import { belowAfter } from './place-after.ts';
import { type PlaceDraft, placeDraft } from './place-draft.ts';
import { BEHIND, eatPreposition } from './preposition.ts';
import {
  clauseEnds,
  eatThe,
  endsInS,
  isOneOf,
  isWord,
  kindAt,
  MAX_DEPTH,
  type Reader,
  rareWords,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { passSideOf } from './row-ends.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import { readUntil } from './until.ts';
import { youJoinedIn } from './you-joined.ts';

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
  if (isHinted(r, VERY.hint) && isWord(r, W.the) && isOneOf(r, VERY, 1)) r.at += 2;
  if (r.at > start) {
    draft.all = isAll(r, start);
    if (isBetween(r)) return readBetween(r, draft);
  }
  eatThe(r);
  takeLoop(r, draft);
  const posted = isHinted(r, POST) && readPost(r, draft);
  eatThe(r);
  if (isWord(r, W.row) && belowAfterIn(r, draft)) return draft;
  if (isHinted(r, CORNER)) passCornerWords(r);
  if (isHinted(r, CENTRE)) passCentreOfRing(r);
  // "in three same st": a slip for "the".
  if (kindAt(r) === T.number && isWord(r, W.same, 1) && spelled(r, r.at) === 'three') r.at++;
  const beside = isHinted(r, SIDE) && passSideOf(r);
  const picked = readPick(r, draft);
  // "in each outside corner"
  if (picked && isHinted(r, CORNER)) passCornerWords(r);
  // "in first available st"
  if (picked && isOneOf(r, AVAILABLE)) r.at++;
  const loopInside = takeLoop(r, draft);
  const named =
    readNouns(r, draft) || beside || (picked && isHinted(r, ENDS) && isRowEnd(r, draft));
  if (beside) nameRowEnds(r, draft);
  else if (named && isWord(r, W.row) && isRowOf(draft) && endsRowName(r, 1)) nameRowEnds(r, draft);
  if (!picked && !named && !posted && draft.loop === null) return null;
  // "sc around the post": of the next stitch.
  if (posted && !picked && !named) draft.pick = 'next';
  if (draft.pick === 'this' && loopInside) draft.pick = 'next';
  if (draft.pick === 'this' && (isRowEnds(draft) || isCorners(draft))) draft.pick = 'each';
  if (isHinted(r, BEHIND.hint) && r.at > start + 1 && isOneOf(r, BEHIND, start - r.at))
    asLoop(r, draft);
  if (r.word[start] === W.under || isAroundChains(r, start, draft)) underChain(draft);
  // "1 sc in each next sc": in every one of them.
  if (draft.pick === 'next' && draft.each && draft.n === null && named) draft.pick = 'each';
  readAfter(r, draft);
  draft.to = toOf(r);
  return draft;
}

const POST = hintOf([W.post, W.front, W.back, W.bar]);
const CORNER = hintOf([W.corner]);
const CENTRE = hintOf([W.centre]);
const SIDE = hintOf([W.side, W.end]);
const ENDS = hintOf([W.side, W.end, W.row_end]);
const VERY = rareWords('very');
const AVAILABLE = wordsOf('available');
const DONE = wordsOf('done');

/** "end of each row", "side of each dc", "end of next 4 dc rows": whatever the row is named by. */
function nameRowEnds(r: Reader, draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  const plural = noun ? noun.plural : endsInS(r, r.at);
  if (isWord(r, W.row) || isWord(r, W.round)) r.at++;
  else if (!noun) return;
  draft.nouns = [{ ...(noun ?? PLAIN_NOUN), kind: 'row-end', plural }];
}

/** "1 sc in each sc row": the end of each row of such stitches. */
const isRowOf = ({ nouns, pick, nth }: PlaceDraft): boolean =>
  nouns.length === 1 && nouns[0]?.kind === 'stem' && nth === null && SIDEWAYS.has(pick);

const SIDEWAYS: ReadonlySet<PlaceDraft['pick']> = new Set([
  'each',
  'next',
  'every-other',
  'first',
  'last',
]);

/** "2 dc in each row", "sc in next 3 rows", where row ends or sides are spoken of. */
function isRowEnd(r: Reader, draft: PlaceDraft): boolean {
  if (!isWord(r, W.row) || draft.nth !== null || !SIDEWAYS.has(draft.pick) || !endsRowName(r, 1))
    return false;
  nameRowEnds(r, draft);
  return true;
}

/** "Row" is the name of a place, and not of the row that the words are about: "in next row, inc 1 st". */
const endsRowName = (r: Reader, ahead: number): boolean =>
  clauseEnds(r, ahead) ||
  isWord(r, W.across, ahead) ||
  isWord(r, W.along, ahead) ||
  isWord(r, W.up, ahead) ||
  isWord(r, W.and, ahead) ||
  isWord(r, W.to, ahead) ||
  isWord(r, W.around, ahead) ||
  isWord(r, W.of, ahead) ||
  isWord(r, W.on, ahead) ||
  isOneOf(r, DOWN, ahead);

const isRowEnds = ({ nouns }: PlaceDraft): boolean =>
  nouns[0]?.kind === 'row-end' && nouns[0].plural;

/** "3 sc in corners", "in corner sts" */
const isCorners = ({ nouns, n }: PlaceDraft): boolean =>
  n === null && nouns.length === 1 && nouns[0]?.kind === 'corner' && nouns[0].plural;

/** "Sc around the 5 chs": over all of them at once. */
const isAroundChains = (r: Reader, start: number, { pick, each, n, nouns }: PlaceDraft): boolean =>
  r.word[start] === W.around &&
  !each &&
  (pick === 'this' || (pick === 'next' && r.word[start + 1] === W.the)) &&
  (n?.values[0] ?? 0) > 1 &&
  nouns[0]?.plural === true;

/** "2 tr under next 3 chain": the space that three chains make, not each of them. */
function underChain(draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  if (noun?.kind !== 'chain' || !draft.n || draft.nouns.length > 1) return;
  draft.nouns = [{ ...noun, kind: 'space', chains: draft.n, word: '' }];
  draft.n = null;
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
  const other =
    isWord(r, W.next, 1) ||
    isWord(r, W.the, 1) ||
    isWord(r, W.last, 1) ||
    // "between 1st and 2nd dc"
    kindAt(r, 1) === T.ordinal;
  if (isWord(r, W.and) && other) {
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
  // "around the 5 chs from rows 3 and 4": over the chains of both.
  if (draft.row !== null && isWord(r, W.and) && kindAt(r, 1) === T.number && clauseEnds(r, 2))
    r.at += 2;
  if (clauseEnds(r)) return;
  const sense = wordAt(r);
  if (draft.nouns[0]?.kind === 'row-end' && passDownSide(r)) return;
  if (sense === W.with && withMarker(r, draft)) return;
  if (sense === W.from && !belowAfter(r, draft)) return fromAfter(r, draft);
  // "in centre dc on 3-dc group"
  if (sense === W.of || (sense === W.on && draft.pick === 'centre')) return ofAfter(r, draft);
  if (sense === W.on && passRowBeneath(r)) return;
  if (sense === W.as) return asAfter(r, draft);
  if (sense === W.at) return footAfter(r, draft);
  if (sense === W.between) return betweenAfter(r, draft);
  if (sense === W.just && isWord(r, W.made, 1)) return justMade(r, draft);
  // "3rd st of ch-3 first made"
  if (kindAt(r) === T.ordinal && r.value[r.at] === 1 && isWord(r, W.made, 1)) {
    r.at += 2;
    return;
  }
  if (behindSpace(r) || youJoinedIn(r, draft)) return;
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

/** "into row ends down first side of the cloth": which way they lie. */
function passDownSide(r: Reader): boolean {
  const down = isOneOf(r, DOWN) || isWord(r, W.up) || isWord(r, W.along);
  let k = isWord(r, W.the, 1) ? 2 : 1;
  if (kindAt(r, k) === T.ordinal || isWord(r, W.other, k) || isWord(r, W.next, k)) k++;
  if (!down || !isWord(r, W.side, k)) return false;
  r.at += k + 1;
  if (isWord(r, W.of)) while (kindAt(r) === T.word) r.at++;
  return true;
}

const DOWN = wordsOf('down');

/** "into the st with the stitch marker" */
function withMarker(r: Reader, draft: PlaceDraft): boolean {
  const [noun] = draft.nouns;
  let k = isWord(r, W.the, 1) || isWord(r, W.a, 1) ? 2 : 1;
  if (isWord(r, W.st, k)) k++;
  if (!isWord(r, W.marker, k) || noun?.kind !== 'stitch' || draft.n) return false;
  draft.nouns = [{ ...noun, kind: 'marker' }];
  r.at += k + 1;
  return true;
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
  const isStart = draft.pick === 'top' && (isWord(r, W.beginning) || isWord(r, W.turning));
  const of = length ?? readPlace(r);
  if (!of) {
    if (draft.nouns[0]?.kind !== 'corner' || !passPiece(r)) r.at = start;
    return;
  }
  // "of 3 dc group": one group, of three.
  const [noun] = of.nouns;
  // "in top of beg ch sp": only the chain itself has a top.
  if (isStart && noun?.kind === 'space' && !noun.chains)
    of.nouns = [{ ...noun, kind: 'start-chain' }];
  if (noun?.kind === 'group' && noun.word === 'group' && !noun.plural) {
    of.n = null;
    if (isBare && of.pick === 'next') of.pick = 'this';
  }
  draft.of = topOfChain(draft, startChainOf(of));
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
  const every = noun.plural && draft.pick === 'this' && gap.pick === 'this' && draft.n === null;
  if (draft.pick === 'this') draft.pick = every ? 'each' : gap.pick;
  // "in spaces between hdc"
  draft.each ||= every;
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
