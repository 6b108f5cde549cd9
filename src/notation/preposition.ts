/** The word that leads to a place: "in", "into the", "around", "all in", "working in", "behind". */
import { namesLoop } from './behind-chain.ts';
import { isHinted } from './hints.ts';
import {
  isOneOf,
  isWord,
  kindAt,
  type RareWords,
  type Reader,
  rareWords,
  wordAt,
} from './reader.ts';
import { namesRowEnds } from './row-ends.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** "in", "into the", "around", "all in", "to", "working in" … */
export function eatPreposition(r: Reader): boolean {
  if (!MAY_LEAD.has(wordAt(r)) && !isHinted(r, BEHIND.hint)) return false;
  const start = r.at;
  if (isWord(r, W.all) && isPreposition(r, 1)) r.at++;
  if (isWord(r, W.working) && isPreposition(r, 1)) r.at++;
  passBack(r);
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

/** "in back of work between next 2 petals": from which side, before the place. */
function passBack(r: Reader): void {
  const k = isWord(r, W.the, 1) ? 2 : 1;
  if (!isWord(r, W.back, k) || !isWord(r, W.of, k + 1)) return;
  const end = isWord(r, W.the, k + 2) ? k + 3 : k + 2;
  if (isWord(r, W.work, end) && isPreposition(r, end + 1)) r.at += end + 1;
}

const PREPOSITION = [
  W.in,
  W.on,
  W.over,
  W.around,
  W.under,
  W.between,
  W.round,
  W.through,
  W.across,
  W.at,
];

const PREPOSITIONS: SenseSet = new SenseSet(PREPOSITION);

/** What a preposition, or a word that belongs to it, can begin with, but for "behind". */
const MAY_LEAD: SenseSet = new SenseSet([...PREPOSITION, W.all, W.working, W.up, W.along]);

export function isPreposition(r: Reader, ahead: number): boolean {
  const sense = wordAt(r, ahead);
  return (
    PREPOSITIONS.has(sense) ||
    isBehind(r, ahead) ||
    // "sc up next 4 sc", "sc down next 4 sc"
    ((sense === W.up || sense === W.along) &&
      (isWord(r, W.next, ahead + 1) || namesRowEnds(r, ahead + 1)))
  );
}

/** "sl st behind next petal", "sc behind the 1st chain" */
const isBehind = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.word &&
  isOneOf(r, BEHIND, ahead) &&
  (isWord(r, W.next, ahead + 1) || isWord(r, W.each, ahead + 1) || namesLoop(r, ahead + 1));

export const BEHIND: RareWords = rareWords('behind');
