/** Stitches and where they go: "2 sc in next 5 sts", "sc5", "inc x 6", "dc around", "hdc in next". */

import { namesAcross, passPattern } from './across-stitches.ts';
import { alongSide, aroundAll, aroundIt, edgeOf, oneRowAlong } from './along-side.ts';
import { readAlsoIn } from './also-in.ts';
import { aroundObject } from './around-object.ts';
import { readCountsAs } from './counts-as.ts';
import { mayBeStitch } from './dictionary.ts';
import { clusterOver, drawnTogether, fixLegs, workedTogether } from './drawn-together.ts';
import { hintOf, isHinted } from './hints.ts';
import { letterSc, letterStitch, scannedSc } from './letter-stitch.ts';
import { PLAIN_NOUN } from './noun.ts';
import {
  eachOfMany,
  leadingNumber,
  onceMore,
  readNumberBehind,
  timesBehindPlace,
} from './number-of-work.ts';
import { readPlace, readPlaceAfterPreposition } from './place.ts';
import { placeWith } from './place-draft.ts';
import { BEHIND } from './preposition.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
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
import type { Numbers, Place, StitchTerm, WorkStep } from './tree.ts';
import { namesPlace, readUntil } from './until.ts';
import { type Draft, plainWork } from './work-draft.ts';

/** A stitch with its numbers and places, or `null`, which leaves the reader where it was. */
export function readWork(r: Reader): WorkStep | null {
  const start = r.at;
  const evenly = kindAt(r) === T.word && passVerbs(r);
  // "Another 3-tr cluster": the number is the stitch's own.
  if (isWord(r, W.another) && kindAt(r, 1) === T.number && kindAt(r, 2) === T.dash) r.at++;
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
    unnamedStitch(r, n) ??
    acrossFirst(r, n);
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
  workedTogether(r, draft);
  readBehind(r, draft);
  // "Sc2tog in every 3rd st": which stitches are drawn together is not told.
  if (draft.place?.pick === 'every-other' && draft.place.nth && stitch.shape === 'together') {
    r.at = start;
    return null;
  }
  draft.place = countedFromHook(draft.place);
  drawnInOne(draft);
  passHow(r, draft);
  draft.to = toOf(r);
  return draft;
}

/** Passes what stands before a stitch and its number, "work a total of", "evenly"; whether that is "evenly". */
function passVerbs(r: Reader): boolean {
  const start = r.at;
  const evenly = isWord(r, W.evenly);
  if (evenly) r.at++;
  // "Evenly distribute 84 dc along"
  if (evenly && isOneOf(r, SPREAD) && kindAt(r, 1) === T.number) r.at++;
  while (eatWord(r, W.work) || eatArticle(r) || eatWord(r, W.working));
  if (r.at === start) return false;
  // "work a total of 39 dc in ring"
  if (isWord(r, W.total) && isWord(r, W.of, 1) && kindAt(r, 2) === T.number) r.at += 2;
  // "work the X st 3 times"
  if (isWord(r, W.the) && r.specials?.has(r.hash[r.at + 1] ?? 0)) r.at++;
  // "work your first cluster in the same st"
  const first = kindAt(r) === T.ordinal && valueAt(r) === 1 && isWord(r, W.the, -1);
  if (first && r.at > start + 1 && mayBeStitch(wordAt(r, 1))) r.at++;
  // "work a row of sc around the edge"
  const one = (isWord(r, W.row) || isWord(r, W.round)) && isWord(r, W.of, 1);
  if (one && mayBeStitch(wordAt(r, 2))) r.at += 2;
  else r.at += oneRowAlong(r);
  return evenly;
}

/** "sc in 2 ch from hook": the second of them. */
function countedFromHook(place: Place | null): Place | null {
  const n = place?.n?.values;
  const isTold = place?.fromHook && place.pick === 'next' && !place.each && n?.length === 1;
  return place && isTold ? { ...place, pick: 'nth', nth: n[0] ?? null, n: null } : place;
}

/** "2 dc dec in 4th ch from hook", "3 dc dec in same st": so many drawn together in one place are one. */
function drawnInOne(draft: Draft): void {
  const { stitch, n, place, numberAfter } = draft;
  const legs = n?.values.length === 1 ? (n.values[0] ?? 1) : 1;
  if (stitch.shape !== 'together' || stitch.legs !== null || !stitch.stem || numberAfter) return;
  if (legs < 2 || legs > MOST_DRAWN || !place || place.n || place.of) return;
  if (place.pick !== 'nth' && place.pick !== 'same' && place.pick !== 'first') return;
  draft.stitch = termWith(stitch, { legs });
  draft.n = null;
}

const MOST_DRAWN = 5;

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
  if (isHinted(r, ENDS) && onSides(r)) {
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

/** "working 43 sts on each long side and 32 sts on each short side" */
function onSides(r: Reader): boolean {
  const along = isWord(r, W.on, 1) || isWord(r, W.along, 1) || isWord(r, W.across, 1);
  if (!isWord(r, W.st) || !along || !isWord(r, W.each, 2)) return false;
  if (!isWord(r, W.side, 3) && !isWord(r, W.side, 4)) return false;
  const first = isWord(r, W.work, -2) || isWord(r, W.working, -2);
  const other = isWord(r, W.and, -2) && kindAt(r, -3) === T.comma ? -4 : -3;
  return (
    first ||
    (isWord(r, W.side, other) &&
      isWord(r, W.st, isWord(r, W.each, other - 2) ? other - 4 : other - 3))
  );
}

/** "Work across first 14 sc", "work in patt across 36 sts": in the stitch of the row. */
function acrossFirst(r: Reader, n: Numbers | null): StitchTerm | null {
  if (n !== null || !isWord(r, W.work, -1)) return null;
  const start = r.at;
  passPattern(r);
  if (namesAcross(r)) return PLAIN_TERM;
  r.at = start;
  return null;
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
  const side = r.at;
  if (alongSide(r, ofChain) || aroundAll(r) || (draft.evenly && aroundIt(r)))
    draft.evenly ||= !(draft.place?.pick === 'each' && namesTop(r, side));
  inEachRow(r, draft);
  // "33 sc evenly along to next corner"
  if (draft.evenly && isWord(r, W.along) && isWord(r, W.to, 1)) r.at++;
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
  // "84 dc along", "20 sc around band": so many in all, along an edge or round a piece.
  const way = draft.until?.kind === 'end' && !draft.place ? draft.until.word : '';
  const along = way === 'along' || ROUND_PIECE.test(way);
  if (along && draft.n !== null && !draft.numberAfter && (draft.n.values[0] ?? 0) > 3) {
    draft.evenly = true;
    draft.until = null;
  }
  // "Sc around entire blanket": along all its sides, where it has any.
  if (draft.n === null && PIECE.test(way)) {
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

const ROUND_PIECE = /^around (?!.*\b(?:rows?|rounds?|rnds?)\b)/i;

/** "Sc in each st along top edge": the last row's stitches; no stitches lie along a side. */
function namesTop(r: Reader, from: number): boolean {
  for (let i = from; i < r.at; i++) if (TOP.test(spelled(r, i))) return true;
  return false;
}

const TOP = /^(?:top|upper)$/;

const PIECE =
  /^(?:all )?a?round (?:the |entire |whole |your |outside of |edges? of )+(?:[a-z]+ )?(?:afghan|blanket|throw|dishcloth|washcloth|cloth|square|potholder|coaster|bookmark|placemat|mat|scarf|shawl|cardigan)$/i;

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
  // "2 dc in each row" along the side: in its end.
  if (!shapes && isWord(r, W.row, k) && isHinted(r, ENDS)) return;
  if (per && isWord(r, W.row, k) && isHinted(r, CORNERS)) draft.place ??= endOfEach(r, draft);
  if (!isWord(r, W.row, k) && !isWord(r, W.round, k)) return;
  r.at += k + 1;
  if (shapes && draft.n !== null && draft.place === null) draft.evenly = true;
}

/** "…, 3 hdc in corners and 1 hdc per row": in the end of each. */
function endOfEach(r: Reader, { n }: Draft): Place | null {
  if ((n?.values[0] ?? 1) > MOST_PER_ROW) return null;
  const span = { from: fromOf(r, r.at), to: r.to[r.at + 1] ?? 0 };
  const nouns = [{ ...PLAIN_NOUN, kind: 'row-end' as const }];
  return placeWith(span, { pick: 'each', each: true, nouns });
}

const MOST_PER_ROW = 4;

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

function placeBehind(r: Reader, draft: Draft): Place | null {
  if (alongSide(r, false) || aroundAll(r) || (draft.evenly && aroundIt(r))) draft.evenly = true;
  inEachRow(r, draft);
  theLoop(r, draft);
  // "sl st over to ch sp", "sl st across to corner"
  if (isWord(r, W.over) && isWord(r, W.to, 1) && draft.stitch.stem === 'ss') r.at++;
  const sense = wordAt(r);
  const object = draft.n === null ? null : aroundObject(r);
  if (object) return object;
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
  const wall = isHinted(r, WALL) ? wallBehind(r) : 0;
  const k = wall > 0 ? wall : isWord(r, W.the) && isWord(r, W.loop, 2) ? 1 : 0;
  if (k === 0 || !(isWord(r, W.back, k) || isWord(r, W.front, k))) return;
  draft.stitch = termWith(draft.stitch, { loop: isWord(r, W.back, k) ? 'back' : 'front' });
  r.at += k + 2;
  if (wall > 0) passOfLoop(r);
  else if (isWord(r, W.only)) r.at++;
}

/** "behind the front wall of the loop", a translator's front loop: tokens before "front"; 0: nothing of the kind. */
function wallBehind(r: Reader): number {
  if (!isOneOf(r, BEHIND) && !isWord(r, W.for)) return 0;
  const k = isWord(r, W.the, 1) ? 2 : 1;
  return isOneOf(r, WALLS, k + 1) ? k : 0;
}

/** "of the loop" behind its wall. */
function passOfLoop(r: Reader): void {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (isWord(r, W.of) && (isWord(r, W.loop, k) || isWord(r, W.st, k))) r.at += k + 1;
}

const WALLS = wordsOf('wall walls');
const ENDS = hintOf([W.side, W.end, W.row_end]);
const CORNERS = hintOf([W.corner]);
const WALL = hintOf([], 'wall walls');

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
