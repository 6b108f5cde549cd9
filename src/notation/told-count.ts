/**
 * Counts that a sentence tells: "At the end of this round you will have 24 stitches", "There should be 24 of
 * them", "Count your stitches: 30", "giving 18 sts". All its words but the number and its unit talk.
 */

import { countItem, opensExtent } from './count.ts';
import { formOf } from './dictionary.ts';
import { isWorked, listsSizes } from './plain-count.ts';
import { isOneOf, isWord, kindAt, type Reader, spelled, wordAt, wordsOf } from './reader.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Puts down the count that a sentence here tells; the reader then stands behind it. */
export function toldCount(r: Reader, run: Run): boolean {
  if (!isOneOf(r, FIRST_WORDS) || run.end !== 'text') return false;
  const soThat = isWord(r, W.so) && (isOneOf(r, THAT, 1) || isWord(r, W.you, 1));
  // "*…; rep from * around making 6 petals": the number of what the round is made of.
  const makes = isOneOf(r, MAKING) && kindAt(r, 1) === T.number;
  if (!BEFORE.has(kindAt(r, -1)) && !soThat && !makes) return false;
  const ends = sentenceEnd(r);
  const at = ends < 0 ? -1 : numberIn(r, ends);
  // "Total of 12 sts, including the ch 2" has more to tell.
  const goesOn = opensExtent(r, ends) || listsSizes(r, ends) || listsSizes(r, ends + 1);
  if (at < 0 || goesOn || !run.out.some(isWorked)) return false;
  const start = r.at;
  r.at = at;
  const count = countItem(r);
  const named = makes && (!count?.unit || OF_GROUPS.has(count.unit)) && count?.word !== '';
  const unit = count && (count.unit === null || count.unit === 'stitch' || count.unit === 'stem');
  if (!count || !(unit || named) || !isTail(r, ends)) {
    r.at = start;
    return false;
  }
  r.counts.push({ count, from: run.out.length });
  r.at = ends;
  return true;
}

const MAKING = wordsOf('making');

const OF_GROUPS: ReadonlySet<string> = new Set(['space', 'group']);

const THAT = wordsOf('that');

const FIRST_WORDS = wordsOf(`
  you your youll we i ill there this that thats it at after by so still now count in for making giving leaving
  ending the stitch please and which end total be make
`);

/** What may stand before such a sentence. */
const BEFORE: ReadonlySet<number> = new Set([
  T.stop,
  T.comma,
  T.close,
  T.dash,
  T.semicolon,
  T.colon,
]);

const TALK = wordsOf(`
  and so now then that it this which at after by the end of round rounds row rows rnd in is are there should
  will would you your youll we i ill ive youve have has had makes made making gives giving ended ends ending up
  with for a an total all get got be being still count counted counting stitch stitches again exactly point
  here finish finished finishing them altogether each other worked work please sure first second third last
  number double check checking end leaving on
`);

/** Without one of these, a sentence of such words states nothing. */
const TELLS = wordsOf(`
  have has had there total makes made making gives giving ended ends ending up still count counted counting
  is are be got get finish leaving thats
`);

/** Where the sentence ends: a stop, the end, a closing bracket; -1 where a comma leads on to more. */
function sentenceEnd(r: Reader): number {
  let colon = false;
  for (let i = r.at; i < r.at + 22; i++) {
    const kind = r.kind[i];
    colon ||= kind === T.colon;
    // "Stitch count: 6 sc, 12 ch-2 sps": a list, which is read as one behind its colon.
    if (colon && kind === T.comma && r.kind[i + 1] === T.number) return -1;
    if (kind === T.end || kind === T.stop || kind === T.close || kind === T.semicolon) return i;
    // "Stitch count: 6 sc, 12 ch-2 sps": a list, which is read as one.
    if (kind === T.comma && r.kind[i + 1] === T.number) return -1;
    if (kind === T.comma && !isTalk(r, i + 1)) return i;
    if (kind === T.open || kind === T.star) return -1;
  }
  return -1;
}

const isTalk = (r: Reader, token: number): boolean => isOneOf(r, TALK, token - r.at);

/** The only number, with nothing but talk before it; -1 where the words are others. */
function numberIn(r: Reader, end: number): number {
  let tells = false;
  for (let i = r.at; i < end; i++) {
    const kind = r.kind[i];
    if (kind === T.number) {
      if (namesRow(r, i)) continue;
      return tells && !isOrdered(r, i) && onlyOne(r, i, end) ? i : -1;
    }
    if (kind === T.word) {
      if (!isTalk(r, i) && i > r.at) return -1;
      tells ||= isOneOf(r, TELLS, i - r.at);
    } else if (kind !== T.colon && kind !== T.dash && kind !== T.comma && kind !== T.equals)
      return -1;
  }
  return -1;
}

/** "at the end of round 5" */
const namesRow = (r: Reader, token: number): boolean =>
  r.word[token - 1] === W.row || r.word[token - 1] === W.round;

/** "you make 5 sc", "you have one in 3": work, or no number of the stitches that there are. */
function isOrdered(r: Reader, token: number): boolean {
  const before = r.word[token - 1];
  if (before === W.work) return !/^(?:making|makes|made)$/.test(spelled(r, token - 1));
  // "it should be the last 2 hdc of the row": which they are, and not how many there are.
  return before === W.in || before === W.on || before === W.last;
}

function onlyOne(r: Reader, token: number, end: number): boolean {
  for (let i = token + 1; i < end; i++) {
    // "24 (30, 36) sts": a number for each size.
    if (r.kind[i] === T.open && i === token + 1) i = r.partner[i] ?? i;
    else if (r.kind[i] === T.number) return false;
  }
  return true;
}

/** "18 stitches at this point.": a sentence that opens with the number, and talks on. */
export function toldNumber(r: Reader, run: Run): boolean {
  const fresh = kindAt(r, -1) === T.stop || kindAt(r, -1) === T.close;
  if (!fresh || run.end !== 'text' || !run.out.some(isWorked)) return false;
  const ends = sentenceEnd(r);
  const start = r.at;
  const count = ends > start + 2 ? countItem(r) : null;
  const stated = count?.unit === 'stitch' && onlyOne(r, start, ends) && isTail(r, ends);
  if (!count || !stated) {
    r.at = start;
    return false;
  }
  r.counts.push({ count, from: run.out.length });
  r.at = ends;
  return true;
}

/** "of them", "in total", "at the end of this round", "now": nothing that would take some of them away. */
function isTail(r: Reader, end: number): boolean {
  for (let i = r.at; i < end; i++) {
    if (r.kind[i] === T.word ? !isTalk(r, i) : r.kind[i] !== T.comma) return false;
    if (formOf(r.word[i] ?? 0)?.stem) return false;
  }
  return !isWord(r, W.each) && spelled(r, r.at) !== 'on' && wordAt(r) !== W.work;
}
