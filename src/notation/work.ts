/** Stitches and where they go: "2 sc in next 5 sts", "sc5", "inc x 6", "dc around", "hdc in next". */
import type { Span } from '../source/index.ts';
import { alongSide, aroundIt, edgeOf } from './along-side.ts';
import { readCountsAs } from './counts-as.ts';
import { formOf, mayBeStitch, TOGETHER } from './dictionary.ts';
import { isBareCount, isLetter, letterSc, letterStitch, scannedSc } from './letter-stitch.ts';
import { readNumbers } from './numbers.ts';
import { eatPreposition, readPlace, readPlaceAfterPreposition } from './place.ts';
import { placeDraft } from './place-draft.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isGlued,
  isOneOf,
  isWord,
  kindAt,
  passSee,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readNumberedStitch, readStitch } from './stitch.ts';
import { PLAIN_TERM, termOf, termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Numbers, Place, StitchTerm, Until, WorkStep } from './tree.ts';
import { namesPlace, readUntil } from './until.ts';

type Draft = { -readonly [K in keyof WorkStep]: WorkStep[K] };

/** A stitch with its numbers and places, or `null`, which leaves the reader where it was. */
export function readWork(r: Reader): WorkStep | null {
  const start = r.at;
  const evenly = isWord(r, W.evenly);
  if (evenly) r.at++;
  // "Evenly distribute 84 dc along"
  if (evenly && isOneOf(r, SPREAD) && kindAt(r, 1) === T.number) r.at++;
  while (eatWord(r, W.work) || eatArticle(r) || eatWord(r, W.working));
  // "work the X st 3 times"
  if (r.at > start && isWord(r, W.the) && r.specials?.has(r.hash[r.at + 1] ?? 0)) r.at++;
  // "work your first cluster in the same st"
  const first = kindAt(r) === T.ordinal && valueAt(r) === 1 && isWord(r, W.the, -1);
  if (first && r.at > start + 1 && mayBeStitch(wordAt(r, 1))) r.at++;
  // "work a row of sc around the edge"
  const one = r.at > start && (isWord(r, W.row) || isWord(r, W.round)) && isWord(r, W.of, 1);
  if (one && mayBeStitch(wordAt(r, 2))) r.at += 2;
  const scanned = scannedSc(r);
  let name = r.at;
  const numbered = scanned ? null : readNumberedStitch(r);
  const n = scanned ?? (numbered ? null : (leadingNumber(r) ?? onceMore(r)));
  if (!numbered) name = r.at;
  const stitch =
    numbered ??
    (scanned ? letterSc(r) : readStitch(r)) ??
    letterStitch(r, n) ??
    postAlone(r) ??
    unnamedStitch(r, n);
  if (!stitch) {
    r.at = start;
    return null;
  }
  const from = fromOf(r, name);
  const draft = plainWork(stitch, { from, to: stitch === PLAIN_TERM ? from : toOf(r) });
  draft.n = n;
  draft.evenly = evenly;
  draft.from = fromOf(r, start);
  fixLegs(draft);
  readBehind(r, draft);
  draft.place = countedFromHook(draft.place);
  passHow(r, draft);
  draft.to = toOf(r);
  return draft;
}

/** "sc in 2 ch from hook": the second of them. */
function countedFromHook(place: Place | null): Place | null {
  const n = place?.n?.values;
  const isTold = place?.fromHook && place.pick === 'next' && !place.each && n?.length === 1;
  return place && isTold ? { ...place, pick: 'nth', nth: n[0] ?? null, n: null } : place;
}

/** "inc 1 sc in next st by working 2 sc in one": how it is made, to the clause's end. */
function passHow(r: Reader, { stitch }: Draft): void {
  if (!isWord(r, W.by) || (stitch.shape !== 'increase' && stitch.shape !== 'together')) return;
  const told =
    isOneOf(r, MAKING, 1) ||
    (kindAt(r, 1) === T.number && mayBeStitch(wordAt(r, 2))) ||
    (mayBeStitch(wordAt(r, 1)) && kindAt(r, 2) === T.number);
  if (told) while (!clauseEnds(r)) r.at++;
}

const MAKING = wordsOf('working making doing crocheting putting placing');

const SPREAD = wordsOf('distribute spread space place');

/** One stitch by its name alone. */
export const plainWork = (stitch: StitchTerm, { from, to }: Span): Draft => ({
  kind: 'work',
  n: null,
  numberAfter: false,
  stitch,
  nameFrom: from,
  nameTo: to,
  place: null,
  alsoIn: NO_PLACES,
  until: null,
  countsAs: null,
  evenly: false,
  from,
  to,
});

/** "a dc", "the first"; a lone "A" is a decrease in charts of letters. */
function eatArticle(r: Reader): boolean {
  if (!isWord(r, W.a) && !isWord(r, W.the)) return false;
  if (isWord(r, W.a) && clauseEnds(r, 1)) return false;
  r.at++;
  // "work a final 1 dc", "a last sc in first st"
  if (isOneOf(r, FINAL) && (kindAt(r, 1) === T.number || mayBeStitch(wordAt(r, 1)))) r.at++;
  return true;
}

const FINAL = wordsOf('final last extra');

const NO_PLACES: readonly Place[] = [];

/** "5", "5x", "5 more", "another 5", "1 x" before a stitch; a slip for 1 is an l or I. */
function leadingNumber(r: Reader): Numbers | null {
  eatWord(r, W.another);
  const sized = kindAt(r) === T.open && r.known.sizes > 1;
  if (kindAt(r) !== T.number && !sized) {
    if (isWord(r, W.letter_l) && mayBeStitch(wordAt(r, 1)) && !isWord(r, W.letter_s, 1)) {
      const at = fromOf(r, r.at);
      r.at++;
      return { from: at, to: toOf(r), values: [1] };
    }
    return null;
  }
  const start = r.at;
  const n = readNumbers(r);
  if (isWord(r, W.more)) r.at++;
  const opens = kindAt(r, 1) === T.open && !isBareCount(r, 1);
  const letter = isWord(r, W.x) && (isLetter(r, 1) || !mayBeStitch(wordAt(r, 1))) && !opens;
  if (!letter && (isWord(r, W.x) || kindAt(r) === T.times)) r.at++;
  // "3-sc": a hyphen between number and name.
  if (kindAt(r) === T.dash && isGlued(r) && isGlued(r, -1) && mayBeStitch(wordAt(r, 1))) r.at++;
  if (!n) r.at = start;
  return n;
}

/** "hdc in next st and twice in the third": the same stitch, its number in a word. */
function onceMore(r: Reader): Numbers | null {
  const word = wordAt(r);
  const n = word === W.once ? 1 : word === W.twice ? 2 : word === W.thrice ? 3 : 0;
  if (n === 0 || !isWord(r, W.and, -1) || !isWord(r, W.in, 1)) return null;
  r.at++;
  return { from: fromOf(r, r.at - 1), to: toOf(r), values: [n] };
}

/** "make front post into next dc", "back post into next": a double crochet to most who say so. */
function postAlone(r: Reader): StitchTerm | null {
  if (!isWord(r, W.front) && !isWord(r, W.back)) return null;
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  if (!isWord(r, W.post, k) || !(isWord(r, W.in, k + 1) || isWord(r, W.around, k + 1))) return null;
  const post = isWord(r, W.front) ? 'front' : 'back';
  r.at += k + 1;
  return termOf({ stem: 'dc', post });
}

/** "work 2 in next": the stitch of the row, without its name. */
function unnamedStitch(r: Reader, n: Numbers | null): StitchTerm | null {
  if (n === null) return null;
  const start = r.at;
  // "Work 16 sts, turn": so many of the row's stitch.
  const ends = clauseEnds(r, 1) || isWord(r, W.turn, 1);
  const told = isWord(r, W.st) && isWord(r, W.work, -2) && ends;
  if (told && kindAt(r, 1) !== T.end && kindAt(r, 1) !== T.colon) {
    r.at++;
    return PLAIN_TERM;
  }
  if (isWord(r, W.st) && isWord(r, W.in, 1)) r.at++;
  if (!isWord(r, W.in)) return null;
  const after = r.at;
  const place = readPlaceAfterPreposition(r);
  r.at = after;
  if (!place) {
    r.at = start;
    return null;
  }
  return PLAIN_TERM;
}

/** "2 dc2tog"? stays; "3 dc cluster" has its legs already; "2 sctog" means its two legs. */
function fixLegs(draft: Draft): void {
  const { stitch, n } = draft;
  const only = n?.values[0];
  const fused = stitch.shape === 'together' && stitch.legs === null && stitch.stem !== null;
  if (n?.values.length !== 1 || !fused || typeof only !== 'number' || only < 2) return;
  if (only > 9 || n.to !== draft.nameFrom) return;
  draft.stitch = termWith(stitch, { legs: only });
  draft.nameFrom = n.from;
  draft.n = null;
}

/** Whether a star stands in front that none has closed. */
function hasOpenStar(r: Reader): boolean {
  let open = false;
  for (let i = 0; i < r.at; i++) if (r.kind[i] === T.star) open = !open;
  return open;
}

/** Everything behind the name. */
function readBehind(r: Reader, draft: Draft): void {
  passSee(r);
  // "fpdc* in next st": the star leads to a footnote.
  if (kindAt(r) === T.star && isWord(r, W.in, 1) && !hasOpenStar(r)) r.at++;
  // "5dc group in next ch"
  if (draft.n !== null && isWord(r, W.group) && (isWord(r, W.in, 1) || isWord(r, W.next, 1)))
    r.at++;
  if (clauseEnds(r)) return;
  // "shell of (3 dc, ch 1, 3 dc) in next sp": the bracket says what the name means.
  if (isWord(r, W.of) && kindAt(r, 1) === T.open && isNamedGroup(draft)) {
    r.at++;
    return;
  }
  if (draft.n === null && !isWord(r, W.in)) readNumberBehind(r, draft);
  else eachOfMany(r, draft);
  if (draft.n !== null && draft.numberAfter) {
    if (isWord(r, W.more) && isWord(r, W.st, 1)) r.at++;
    const named = isWord(r, W.st);
    while (isWord(r, W.st)) r.at++;
    // "sc 52 stitches all round": so many in all.
    if (named) draft.until = allRound(r);
    // "increasing 20 more sts. evenly": the stop belongs to the short form, or is a comma.
    if (isWord(r, W.evenly, 1) && isWord(r, W.st, -1) && clauseEnds(r)) r.at++;
  }
  if (eatWord(r, W.evenly) || (draft.n === null && edgeOf(r))) draft.evenly = true;
  // "make a cluster as before over next 8 dc"
  if (isWord(r, W.as) && isWord(r, W.before, 1)) r.at += 2;
  const behind = r.at;
  draft.place ??= placeBehind(r, draft);
  loopOnly(r, draft);
  drawnTogether(r, draft);
  clusterOver(r, draft, behind);
  if (draft.place) {
    countsAsBetween(r, draft);
    readAlsoIn(r, draft);
  }
  if (clauseEnds(r)) return;
  if (draft.n === null && draft.place) timesBehindPlace(r, draft);
  if (isWord(r, W.each) && draft.place?.n) r.at++;
  if (eatWord(r, W.evenly)) draft.evenly = true;
  const ofChain = draft.place?.nouns[0]?.kind === 'chain';
  if (alongSide(r, ofChain) || (draft.evenly && aroundIt(r))) draft.evenly = true;
  inEachRow(r, draft);
  if (!draft.place?.until && !draft.until) draft.until = readUntil(r, readPlace);
  // "hdc in the remaining chs in the row"
  if (draft.place?.pick === 'each' && isWord(r, W.in)) {
    const k = isWord(r, W.the, 1) ? 2 : 1;
    if ((isWord(r, W.row, k) || isWord(r, W.round, k)) && clauseEnds(r, k + 1)) r.at += k + 1;
  }
  // "hdc across in each hdc"
  if (draft.until?.kind === 'end' && !draft.place && isWord(r, W.in) && isWord(r, W.each, 1)) {
    draft.place = readPlaceAfterPreposition(r);
  }
  if (eatWord(r, W.evenly)) draft.evenly = true;
  // "84 dc along": so many in all, along an edge that has no name.
  const along = draft.until?.kind === 'end' && draft.until.word === 'along' && !draft.place;
  if (along && draft.n !== null && !draft.numberAfter && (draft.n.values[0] ?? 0) > 3) {
    draft.evenly = true;
    draft.until = null;
  }
  if (isWord(r, W.only)) r.at++;
  // "8 sc in the round"
  if (isWord(r, W.in) && isWord(r, W.the, 1) && isWord(r, W.round, 2) && clauseEnds(r, 3))
    r.at += 3;
  if (draft.stitch.foundation && draft.until && draft.n === null) countedUntil(r, draft);
}

/** The way round behind a number of stitches, read past: it says no more than the number. */
function allRound(r: Reader): null {
  const start = r.at;
  const until = readUntil(r, readPlace);
  if (until?.kind !== 'end') r.at = start;
  return null;
}

const isNamedGroup = ({ stitch: { shape } }: Draft): boolean =>
  shape !== 'one' && shape !== 'increase' && shape !== 'together';

/** "Work fhdc until you have 40 sts": nothing lies beneath that would end them but the number. */
function countedUntil(r: Reader, draft: Draft): void {
  for (let k = -1; k > -6; k--) {
    const at = r.at + k;
    if (r.kind[at] !== T.number || fromOf(r, at) < (draft.until?.from ?? 0)) continue;
    draft.n = { from: fromOf(r, at), to: r.to[at] ?? 0, values: [r.value[at] ?? 0] };
    draft.until = null;
    return;
  }
}

/** "cluster over next 4 dc": of so many stitches one is made, though no number of legs is said. */
function clusterOver(r: Reader, draft: Draft, behind: number): void {
  const { stitch, place } = draft;
  if (stitch.shape !== 'cluster' || place?.pick !== 'next') return;
  if (r.word[behind] !== W.over && r.word[behind] !== W.across) return;
  const [legs] = place.n?.values ?? [];
  if (typeof legs !== 'number' || legs < 2 || legs > 9) return;
  // "2-tr cluster across next 2 lps": a leg in each of them.
  if (stitch.legs !== null && stitch.legs !== legs) return;
  const stem = stitch.stem ?? place.nouns[0]?.stem ?? null;
  draft.stitch = { ...stitch, shape: 'together', stem, legs };
}

/** "sc first two sc tog": the stitches' name and "tog" were read as the noun of a decrease. */
function namedTogether(draft: Draft): void {
  const { stitch, place } = draft;
  const noun = place?.nouns[0];
  if (!place || noun?.word !== 'dec' || place.nouns.length > 1 || draft.n !== null) return;
  const [legs] = place.n?.values ?? [];
  const plain = stitch.shape === 'one' && stitch.stem !== null && stitch.stem !== 'ss';
  if (!plain || place.each || typeof legs !== 'number' || legs < 2 || legs > 9) return;
  draft.stitch = termWith(stitch, { shape: 'together', legs });
  draft.place = { ...place, nouns: [{ ...noun, word: '' }] };
}

/** "Sc dec next 2 sts tog", "sc next 2 sts together", "sc 2 sts together": they become one. */
function drawnTogether(r: Reader, draft: Draft): void {
  namedTogether(draft);
  if (wordAt(r) !== TOGETHER) return;
  const { stitch, place } = draft;
  const bare = place === null && draft.numberAfter;
  const n = bare ? null : draft.n;
  const [legs] = (bare ? draft.n : place?.n)?.values ?? [];
  const plain = stitch.shape === 'one' && stitch.stem !== null && stitch.stem !== 'ss';
  if (plain && n === null && !place?.each && typeof legs === 'number' && legs > 1 && legs < 10) {
    draft.stitch = termWith(stitch, { shape: 'together', legs });
    if (bare) {
      draft.n = null;
      draft.numberAfter = false;
    }
  }
  if (draft.stitch.shape === 'together') r.at++;
}

/**
 * "30 sc in each round", "increasing 6 sts every round": the label says which rounds. Where in them
 * increases and decreases stand is then left to the maker.
 */
function inEachRow(r: Reader, draft: Draft): void {
  const shapes = draft.stitch.shape === 'increase' || draft.stitch.shape === 'together';
  const per = isWord(r, W.per);
  const joined = isWord(r, W.in) || isWord(r, W.on) || isWord(r, W.for);
  if (!joined && !per && !(shapes && draft.n !== null)) return;
  const at = joined ? 1 : 0;
  const k = per || isWord(r, W.each, at) || isWord(r, W.every, at) ? at + 1 : 0;
  if (k === 0 || isWord(r, W.end, k + 1)) return;
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k)) return;
  r.at += k + 1;
  if (shapes && draft.n !== null && draft.place === null) draft.evenly = true;
}

/** "5 sc in blo" names a loop and no place. */
function loopOnly(r: Reader, draft: Draft): void {
  const { place } = draft;
  if (!place || place.loop === null || place.pick !== 'this' || place.nouns.length > 0) return;
  if (place.of || place.row !== null || place.rowsBelow > 0) return;
  draft.stitch = termWith(draft.stitch, { loop: place.loop });
  draft.until = place.until;
  // "sc in the BLO in each st around": the place stands behind the loop.
  draft.place = place.until || clauseEnds(r) ? null : placeBehind(r, draft);
}

/** "2sc10", "3dc2": so many in each of the next so many, all written as one word. */
function eachOfMany(r: Reader, draft: Draft): void {
  if (draft.n?.to !== draft.nameFrom || kindAt(r) !== T.number || !isGlued(r, -1)) return;
  const places = readNumbers(r);
  if (!places) return;
  const { from } = places;
  draft.place = {
    ...placeDraft(r, r.at - 1),
    pick: 'next',
    n: places,
    each: true,
    from,
    to: toOf(r),
  };
}

/** "sc 5", "sc5", "sc x 5", "inc 6 times", "dec (3 times)", "inc twice". */
function readNumberBehind(r: Reader, draft: Draft): void {
  const start = r.at;
  const from = fromOf(r, start);
  const word = wordAt(r);
  const fixed = word === W.once ? 1 : word === W.twice ? 2 : word === W.thrice ? 3 : 0;
  if (fixed > 0 && !isWord(r, W.more, 1)) {
    r.at++;
    draft.n = { from, to: toOf(r), values: [fixed] };
    draft.numberAfter = true;
    return;
  }
  const bracket = kindAt(r) === T.open && isWord(r, W.times, 2) && kindAt(r, 3) === T.close;
  if (bracket && kindAt(r, 1) === T.number) r.at++;
  const sign = kindAt(r) === T.times || isWord(r, W.x);
  if (sign && kindAt(r, 1) === T.number) r.at++;
  if (kindAt(r) === T.dash && kindAt(r, 1) === T.number && isGlued(r) && isGlued(r, -1)) r.at++;
  if (shapesOf(r, draft)) {
    draft.n = readNumbers(r);
    draft.stitch = termWith(draft.stitch, { stem: formOf(wordAt(r))?.stem ?? null });
    draft.numberAfter = true;
    r.at++;
    return;
  }
  if (kindAt(r) !== T.number || takesNumber(r, sign)) {
    r.at = start;
    return;
  }
  draft.n = readNumbers(r);
  draft.numberAfter = true;
  if (isWord(r, W.more) && isWord(r, W.times, 1)) r.at++;
  if (isWord(r, W.times) || (isWord(r, W.x) && !sign)) r.at++;
  if (bracket) r.at++;
}

/** "increase 4 dc evenly spaced", "inc 1 sc by …": the number is that of the increases. */
const shapesOf = (r: Reader, { stitch }: Draft): boolean =>
  (stitch.shape === 'increase' || stitch.shape === 'together') &&
  stitch.stem === null &&
  kindAt(r) === T.number &&
  formOf(wordAt(r, 1))?.shape === 'one' &&
  (isWord(r, W.evenly, 2) || beforeHow(r));

/** "1 sc by working", "1 sc in each st by working": it is told behind how one is made. */
function beforeHow(r: Reader): boolean {
  if (valueAt(r) !== 1) return false;
  for (let k = 2; k < 8 && kindAt(r, k) === T.word; k++) if (isWord(r, W.by, k)) return true;
  return false;
}

/** Whether the number here belongs to what follows: "sc 2 dc", "sc 3 ch". */
function takesNumber(r: Reader, sign: boolean): boolean {
  if (isGlued(r, -1) || sign) return false;
  const sense = wordAt(r, 1);
  if (sense === W.ch || sense === W.chsp || kindAt(r, 1) === T.dash) return true;
  return sense > 0 && sense !== W.st && sense !== W.x && formOf(sense) !== null;
}

function placeBehind(r: Reader, draft: Draft): Place | null {
  if (alongSide(r, false) || (draft.evenly && aroundIt(r))) draft.evenly = true;
  inEachRow(r, draft);
  theLoop(r, draft);
  const sense = wordAt(r);
  const way = sense === W.around || sense === W.round || sense === W.across;
  if (way && !namesPlace(r)) return null;
  if (sense === W.to) return slipTo(r, draft);
  // "sl st back into the first st"
  if (sense === W.back && isWord(r, W.in, 1)) r.at++;
  // "sc worked in each of the next 60 sc"
  if (sense === W.made && isWord(r, W.in, 1)) r.at++;
  const after = readPlaceAfterPreposition(r);
  if (after) return after;
  const bare =
    sense === W.next ||
    sense === W.each ||
    sense === W.same ||
    sense === W.last ||
    sense === W.every ||
    kindAt(r) === T.ordinal ||
    (sense === W.all && !isWord(r, W.around, 1) && !isWord(r, W.across, 1) && !isTheWay(r)) ||
    (sense === W.top && !isWord(r, W.of, 2)) ||
    (sense === W.the && (isWord(r, W.next, 1) || isWord(r, W.same, 1) || isWord(r, W.last, 1)));
  if (!bare) return null;
  if (kindAt(r) === T.ordinal && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) return null;
  return readPlace(r);
}

/** "dc the back loop in the same st": the loop without its "in". */
function theLoop(r: Reader, draft: Draft): void {
  if (
    !isWord(r, W.the) ||
    !(isWord(r, W.back, 1) || isWord(r, W.front, 1)) ||
    !isWord(r, W.loop, 2)
  )
    return;
  draft.stitch = termWith(draft.stitch, { loop: isWord(r, W.back, 1) ? 'back' : 'front' });
  r.at += isWord(r, W.only, 3) ? 4 : 3;
}

/** "all the way around" */
const isTheWay = (r: Reader): boolean =>
  isWord(r, W.the, 1) && kindAt(r, 2) === T.word && spelled(r, r.at + 2) === 'way';

/** A slip stitch goes "to" a place; any other stitch goes on until it. */
function slipTo(r: Reader, draft: Draft): Place | null {
  if (draft.stitch.stem !== 'ss') return null;
  const start = r.at;
  r.at++;
  const place = isWord(r, W.join) || isWord(r, W.form) || isWord(r, W.end) ? null : readPlace(r);
  if (!place) {
    r.at = start;
    return null;
  }
  place.from = fromOf(r, start);
  return place;
}

/** "hdc in 3rd ch from hook (skipped ch count as hdc) and in each ch across" */
function countsAsBetween(r: Reader, draft: Draft): void {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || !draft.place?.fromHook) return;
  const comma = r.kind[close + 1] === T.comma ? 1 : 0;
  if (r.kind[close + 1 + comma] !== T.word || r.value[close + 1 + comma] !== W.and) return;
  const start = r.at++;
  const said = readCountsAs(r, close);
  if (said) draft.countsAs = said;
  r.at = said ? close + 1 + comma : start;
}

/** "and in each ch across", "and each st around", "and in ch-2 sp". */
function readAlsoIn(r: Reader, draft: Draft): void {
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
    const place = gap ?? readPlace(r);
    if (!place || (!prepositioned && worksAfter(r))) {
      r.at = start;
      return;
    }
    place.from = fromOf(r, start);
    draft.alsoIn = [...draft.alsoIn, place];
  }
}

/**
 * "sc in first sc, then in each ch-1 sp and sc across", "sl st in next st and then in ch-1 sp": the same
 * stitch goes on. `each`: only where it does so in each.
 */
function passThen(r: Reader, each: boolean): boolean {
  let k = kindAt(r) === T.comma ? 1 : 0;
  if (isWord(r, W.and, k)) k++;
  if (!isWord(r, W.afterwards, k) || !startsPlace(r, k + 1, each)) return false;
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
  if (isWord(r, W.across, k) || isWord(r, W.around, k)) k++;
  else if (isWord(r, W.to, k)) {
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
    return !comma || isWord(r, W.each, ahead + 1) || isWord(r, W.every, ahead + 1);
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

/** "sc in next st 3 times"? stays a repeat; "sc in same st twice" too: see `repeat.ts`. */
function timesBehindPlace(r: Reader, draft: Draft): void {
  if (draft.stitch.shape !== 'one' && kindAt(r) === T.times && kindAt(r, 1) === T.number) {
    r.at++;
    draft.n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [valueAt(r)] };
    draft.numberAfter = true;
    r.at++;
  }
}
