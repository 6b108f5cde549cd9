/** Words that lead along a side of the piece: "on each long side", "across the ends of rows 4 to 9". */

import { mayBeStitch, PROSE } from './dictionary.ts';
import { hintOf, isHinted } from './hints.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  rareWords,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** "36 sc on each long side", "30 sc evenly along the edge": places are left to the maker. */
export function alongSide(r: Reader, ofChain: boolean): boolean {
  if (isHinted(r, FABRIC.hint) && alongFabric(r)) return true;
  if (!isHinted(r, SIDE)) return false;
  const sense = wordAt(r);
  const isWay = sense === W.on || sense === W.along || sense === W.across || sense === W.over;
  if (!isWay && sense !== W.up && sense !== W.in) return false;
  if (endsOfRows(r) || alongPiece(r) || eachOfSides(r) || allSides(r)) return true;
  let k = 1;
  while (k < 5 && !isWord(r, W.side, k) && !isEndOf(r, k) && !isShortEnd(r, k)) k++;
  if (k === 5 || (ofChain && isOther(r, k - 1)) || isSpaceOfSide(r, k)) return false;
  for (let at = 1; at < k; at++) if (!saysWhichSide(r, at)) return false;
  // "along side edge of bib"
  if (isWord(r, W.side, k) && /^edges?$/.test(spelled(r, r.at + k + 1))) k++;
  const to = isWord(r, W.of, k + 1) ? ofPiece(r, k + 1) : k + 1;
  if (to === 0) return false;
  r.at += to;
  return true;
}

/** "around open end of fabric", "along hem of pillowcase", "on edge of towel": what was not crocheted. */
function alongFabric(r: Reader): boolean {
  const sense = wordAt(r);
  const joined = sense === W.around || sense === W.along || sense === W.across || sense === W.on;
  if (!joined && sense !== W.in) return false;
  let named = false;
  let k = 1;
  for (; k < 9 && kindAt(r, k) === T.word && !clauseEnds(r, k); k++) {
    if (mayBeStitch(wordAt(r, k))) return false;
    named ||= isOneOf(r, FABRIC, k);
  }
  if (!named || !clauseEnds(r, k)) return false;
  r.at += k;
  return true;
}

/** "on each of the four sides", "along each of its 2 long edges": they are no stitches of the row. */
function eachOfSides(r: Reader): boolean {
  if (!isWord(r, W.each, 1) || !isWord(r, W.of, 2)) return false;
  let k = 3;
  if (isWord(r, W.the, k) || isOneOf(r, ITS, k)) k++;
  if (kindAt(r, k) === T.number) k++;
  if (isOneOf(r, LENGTHS, k)) k++;
  if (!isWord(r, W.side, k)) return false;
  r.at += k + 1;
  return true;
}

/** "on four sides", "on the remaining 3 sides", "along all 4 edges" */
function allSides(r: Reader): boolean {
  let k = 1;
  while (
    isWord(r, W.all, k) ||
    isWord(r, W.the, k) ||
    isWord(r, W.remaining, k) ||
    isWord(r, W.other, k)
  )
    k++;
  if (kindAt(r, k) !== T.number || (r.value[r.at + k] ?? 9) > 8 || !isWord(r, W.side, k + 1))
    return false;
  r.at += k + 2;
  return true;
}

const ITS = wordsOf('its these');

/** Sides and ends; or a piece by its name behind "up" and "along". */
const SIDE = hintOf([W.side, W.end, W.up, W.along]);

const FABRIC = rareWords(`
  fabric hem hemline towel pillowcase pillowslip handkerchief hankie hanky linen napkin fleece flannel sheet
`);

/** "2 dc in next side sp": a space, told from those of the corners. */
const isSpaceOfSide = (r: Reader, k: number): boolean =>
  isWord(r, W.side, k) &&
  (isWord(r, W.sp, k + 1) || isWord(r, W.chsp, k + 1) || isWord(r, W.ch, k + 1));

/** "2 sc in every dc up cloth", "… down the blanket": along a side of the piece, by its name. */
function alongPiece(r: Reader): boolean {
  if (!isWord(r, W.up) && !isWord(r, W.along)) return false;
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (kindAt(r, k) !== T.word || wordAt(r, k) !== 0 || !clauseEnds(r, k + 1)) return false;
  r.at += k + 1;
  return true;
}

/** Words of "1 round of" before "sc around edge", where a side or an edge is spoken of; 0: no such words. */
export function oneRowAlong(r: Reader): number {
  if (!isHinted(r, SIDE) || kindAt(r) !== T.number || r.value[r.at] !== 1) return 0;
  if (!isWord(r, W.row, 1) && !isWord(r, W.round, 1)) return 0;
  const k = isWord(r, W.of, 2) ? 3 : 2;
  if (!mayBeStitch(wordAt(r, k)) || isWord(r, W.st, k)) return 0;
  const along = wordAt(r, k + 1);
  const isWay = along === W.around || along === W.along || along === W.across || along === W.up;
  return isWay || along === W.evenly || along === W.on || isAllRound(r, k + 1) ? k : 0;
}

/** "sc edge around cloth", "sc border along next 3 sides": stitches along the edges of the piece. */
export function edgeOf(r: Reader): boolean {
  if (!isOneOf(r, EDGE)) return false;
  if (!isWord(r, W.around, 1) && !isWord(r, W.along, 1) && !isWord(r, W.across, 1)) return false;
  let k = 2;
  for (; k < 14 && !clauseEnds(r, k); k++) {
    if (kindAt(r, k) === T.number && SIDES.test(spelled(r, r.at + k + 1))) continue;
    if (kindAt(r, k) !== T.word || mayBeStitch(wordAt(r, k)) || isWord(r, W.each, k)) return false;
  }
  if (!clauseEnds(r, k)) return false;
  r.at += k;
  return true;
}

const EDGE = wordsOf('edge edging border trim');
const SIDES = /^(?:sides|edges)$/;

/** "in end of the instep": not the end that a row or a chain has. */
const isEndOf = (r: Reader, k: number): boolean =>
  isWord(r, W.end, k) && isWord(r, W.of, k + 1) && ofPiece(r, k + 1) > 0;

/** Whether "across" leads on to "the long edge", "each short end": a side, and no way to the row's end. */
export function namesSideByLength(r: Reader): boolean {
  let k = 1;
  while (k < 4 && kindAt(r, k) === T.word && !/^(?:short|long)(?:er)?$/.test(spelled(r, r.at + k)))
    k++;
  return isShortEnd(r, k + 1) || (k < 4 && kindAt(r, k) === T.word && isWord(r, W.side, k + 1));
}

/** "across short end", "along the long edge": a side of the piece, told by its length. */
const isShortEnd = (r: Reader, k: number): boolean =>
  k > 1 && isOneOf(r, EDGES, k) && isOneOf(r, LENGTHS, k - 1);

const EDGES = wordsOf('end ends edge edges');
const LENGTHS = wordsOf('short shorter long longer side');

/** "across the ends of rows 4 to 9", "along the other ends of rows 4-9" */
function endsOfRows(r: Reader): boolean {
  let k = 1;
  while (isWord(r, W.the, k) || isWord(r, W.other, k)) k++;
  if (!isWord(r, W.end, k) || !isWord(r, W.of, k + 1)) return false;
  k += isWord(r, W.the, k + 2) ? 3 : 2;
  if (!isWord(r, W.row, k) || kindAt(r, k + 1) !== T.number) return false;
  k += 2;
  const linked = isWord(r, W.to, k) || isWord(r, W.and, k) || kindAt(r, k) === T.dash;
  if (linked && kindAt(r, k + 1) === T.number) k += 2;
  r.at += k;
  return true;
}

/** "each of 11 ch on the other side": chains have that side, and are worked one by one. */
const isOther = (r: Reader, ahead: number): boolean =>
  isWord(r, W.other, ahead) || isWord(r, W.opposite, ahead);

/** "along the side of the instep": a piece by its name; of a chain it is the other side. */
function ofPiece(r: Reader, ahead: number): number {
  let k = ahead + 1;
  if (isWord(r, W.the, k)) k++;
  const sense = wordAt(r, k);
  return kindAt(r, k) === T.word && (sense === 0 || sense === PROSE) ? k + 1 : 0;
}

/** "sc around entire edge", "sc around the outer edges of the cloth": along all sides there are. */
export function aroundAll(r: Reader): boolean {
  if (!isHinted(r, SIDE)) return false;
  // "all round edge of cardigan"
  if (isAllRound(r)) {
    r.at++;
    if (aroundIt(r)) return true;
    r.at--;
    return false;
  }
  if (!isWord(r, W.around)) return false;
  return (isOneOf(r, WHOLE, 1) || (isWord(r, W.the, 1) && isOneOf(r, WHOLE, 2))) && aroundIt(r);
}

const isAllRound = (r: Reader, ahead = 0): boolean =>
  isWord(r, W.all, ahead) && (isWord(r, W.around, ahead + 1) || isWord(r, W.round, ahead + 1));

const WHOLE = wordsOf('entire outer outside whole');

/** "evenly around edges of the shawl", by any name of the piece; "evenly around hat" is a round. */
export function aroundIt(r: Reader): boolean {
  if (!isHinted(r, SIDE)) return false;
  const around = isWord(r, W.around) || (isWord(r, W.round) && isWord(r, W.all, -1));
  if (!around && !isWord(r, W.along) && !isWord(r, W.across)) return false;
  let k = 1;
  while (isWord(r, W.the, k) || isWord(r, W.all, k) || isWord(r, W.long, k) || isOneOf(r, WHOLE, k))
    k++;
  // "around all 4 sides"
  if (kindAt(r, k) === T.number) k++;
  if (!isWord(r, W.side, k)) return false;
  const from = k;
  const ends = (): boolean => clauseEnds(r, k) || (k > from && kindAt(r, k) === T.open);
  while (k < from + 5 && !ends()) {
    const sense = wordAt(r, k);
    const said = sense === 0 || sense === PROSE || sense === W.side || sense === W.evenly;
    if (!said && sense !== W.of && sense !== W.the) return false;
    k++;
  }
  if (!ends()) return false;
  r.at += k;
  return true;
}

const saysWhichSide = (r: Reader, ahead: number): boolean =>
  SIDE_WORDS.has(wordAt(r, ahead)) ||
  kindAt(r, ahead) === T.ordinal ||
  (kindAt(r, ahead) === T.word &&
    /^(short|long|top|bottom|left|cast|lower|upper|outer|inner|neck|raw)$/.test(
      spelled(r, r.at + ahead),
    ));

const SIDE_WORDS: SenseSet = new SenseSet([
  W.each,
  W.the,
  W.both,
  W.other,
  W.next,
  W.right,
  W.opposite,
  W.on,
  W.front,
  W.back,
  W.last,
  W.remaining,
]);
