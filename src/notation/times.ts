/** How often: "x 6", "6 times", "5 more times", "twice", "around", "to last 3 sts", "for a total of 6". */

import { readNumbers } from './numbers.ts';
import { readPlace } from './place.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Numbers, Times } from './tree.ts';
import { readUntil } from './until.ts';

/** `plainMore`: what "6 times" without "more" means here: `false` in all, `null` either. */
export function readTimes(r: Reader, plainMore: false | null): Times | null {
  const origin = r.at;
  // "[2 dc in next sp, ch 2] x repeat around"
  const order = kindAt(r) === T.times || isWord(r, W.x);
  if (order && isWord(r, W.repeat, 1) && kindAt(r, 2) !== T.number) r.at += 2;
  const start = r.at;
  // "*…* complete 5 times"
  const told = kindAt(r, 1) === T.number && isWord(r, W.times, 2);
  if (told && isVerb(r)) r.at++;
  else if (isVerb(r) && isWord(r, W.these, 1) && kindAt(r, 2) === T.number) r.at += 2;
  else if (isVerb(r) && isWord(r, W.total, isWord(r, W.a, 1) ? 2 : 1)) r.at++;
  else insideBrackets(r);
  const total = totalAhead(r);
  if (isWord(r, W.for) || isWord(r, W.another)) r.at++;
  // "(…) x twice"
  const sign = kindAt(r) === T.times || isWord(r, W.x);
  if (sign && (isWord(r, W.twice, 1) || isWord(r, W.thrice, 1))) r.at++;
  if (isWord(r, W.a) && kindAt(r, 1) === T.number) r.at++;
  const times = numberTimes(r, start, plainMore, total) ?? wordTimes(r, start, plainMore);
  if (times) {
    // "five times around": the way round says no more than the number.
    const round = isWord(r, W.around) || isWord(r, W.across);
    if (round && (clauseEnds(r, 1) || kindAt(r, 1) === T.dash || kindAt(r, 1) === T.open)) r.at++;
    // "repeat 25 times until last 2 sts": the stitches that are left say no more either.
    if (isWord(r, W.to) && spelled(r, r.at) === 'until' && isWord(r, W.last, 1))
      readUntil(r, readPlace);
    return times;
  }
  r.at = start;
  const until = readUntil(r, readPlace);
  if (until) return { kind: 'until', until, from: until.from, to: until.to };
  r.at = origin;
  return null;
}

const VERBS = wordsOf('complete work do make repeated');
const ORDERS = wordsOf('do work repeat');

const isVerb = (r: Reader): boolean => isOneOf(r, VERBS);

/** "(…) do what is in between the parenthesis 9 times" */
function insideBrackets(r: Reader): void {
  if (!isOneOf(r, ORDERS)) return;
  let k = 1;
  let named = false;
  for (; k < 10 && kindAt(r, k) === T.word; k++) {
    if (wordAt(r, k) === W.instructions) named = true;
    else if (named) return;
  }
  if (named && kindAt(r, k) === T.number && isWord(r, W.times, k + 1)) r.at += k;
}

/** "for a total of", "a total of". */
function totalAhead(r: Reader): boolean {
  let k = isWord(r, W.for) ? 1 : 0;
  if (isWord(r, W.a, k)) k++;
  if (!isWord(r, W.total, k) || !isWord(r, W.of, k + 1)) return false;
  r.at += k + 2;
  return true;
}

function numberTimes(
  r: Reader,
  start: number,
  plainMore: false | null,
  total: boolean,
): Times | null {
  const further = eatFurther(r);
  const sign = eatSign(r);
  const bracketed = kindAt(r) === T.open && kindAt(r, 1) === T.number && timesIn(r);
  if (bracketed) r.at++;
  if (kindAt(r) !== T.number) return null;
  const n = readNumbers(r);
  if (!n) return null;
  // "nineteen/twenty times": the maker may choose.
  if (kindAt(r) === T.slash && kindAt(r, 1) === T.number && isWord(r, W.times, 2)) r.at += 2;
  let more = eatWord(r, W.more) || further;
  const word = isWord(r, W.times) || kindAt(r) === T.times || (isWord(r, W.x) && !sign);
  if (word) r.at++;
  if (bracketed && kindAt(r) === T.close) r.at++;
  if (isWord(r, W.times)) r.at++;
  if (eatWord(r, W.more)) more = true;
  if (!sign && !word && !more && !total && !bracketed) return null;
  const inAll = total || eatInAll(r);
  const said = more ? true : inAll ? false : plainMore;
  return { kind: 'times', n, more: said, from: fromOf(r, start), to: toOf(r) };
}

/** "a further 17 times", "an additional 3 times", "another 4 times" */
function eatFurther(r: Reader): boolean {
  const k = isWord(r, W.a) ? 1 : 0;
  const said = isOneOf(r, FURTHER, k) && kindAt(r, k + 1) === T.number;
  if (said) r.at += k + 1;
  return said;
}

const FURTHER = wordsOf('further additional');

function eatSign(r: Reader): boolean {
  const star = kindAt(r) === T.star && valueAt(r) === 1;
  if (!star && kindAt(r) !== T.times && !isWord(r, W.x)) return false;
  if (kindAt(r, 1) !== T.number) return false;
  r.at++;
  return true;
}

/** "(9) times", "(3 times)". */
const timesIn = (r: Reader): boolean =>
  (isWord(r, W.times, 2) && kindAt(r, 3) === T.close) ||
  (kindAt(r, 2) === T.close && isWord(r, W.times, 3)) ||
  (isWord(r, W.more, 2) && isWord(r, W.times, 3));

/** "in all", "in total", "altogether". */
function eatInAll(r: Reader): boolean {
  const said = isWord(r, W.in) && (isWord(r, W.all, 1) || isWord(r, W.total, 1));
  if (said) r.at += 2;
  else if (isWord(r, W.total)) r.at++;
  else return false;
  return true;
}

/** "once", "twice more", "thrice": once can only mean once more behind "rep from *". */
function wordTimes(r: Reader, start: number, plainMore: false | null): Times | null {
  const sense = wordAt(r);
  const value = sense === W.once ? 1 : sense === W.twice ? 2 : sense === W.thrice ? 3 : 0;
  if (value === 0) return null;
  r.at++;
  const at = fromOf(r, r.at - 1);
  const n: Numbers = { from: at, to: toOf(r), values: [value] };
  const more = eatWord(r, W.more);
  const said = more || (value === 1 && plainMore === null) ? true : eatInAll(r) ? false : plainMore;
  return { kind: 'times', n, more: said, from: fromOf(r, start), to: toOf(r) };
}

/** As often as the row holds: nothing is written behind "rep from *". */
export function toTheEnd(r: Reader): Times {
  const at = toOf(r);
  const span = { from: at, to: at };
  return { kind: 'until', until: { kind: 'end', word: '', ...span }, ...span };
}

export const MISSING: Times = { kind: 'missing' };
