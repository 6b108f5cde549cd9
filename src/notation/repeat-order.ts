/** The order to repeat: "rep from *", "around", "5 more times", "in each ch sp around", with its marks. */

import { readEnding } from './ending.ts';
import { readMeasure } from './measure.ts';
import { readPlaceAfterPreposition } from './place.ts';
import {
  clauseEnds,
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
import type { RepeatOrder } from './repeat-step.ts';
import { namesBareRows, namesSteps } from './row-numbers.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { isFirst, markOf, STAR, starRole } from './star.ts';
import { readTimes, toTheEnd } from './times.ts';
import { T } from './tokens.ts';
import type { Times } from './tree.ts';

/** Whether a bracket of steps, not of a number or a star, stands here. */
export const holdsWork = (r: Reader, ahead: number): boolean =>
  kindAt(r, ahead) === T.open &&
  (r.partner[r.at + ahead] ?? -1) > r.at + ahead + 3 &&
  (kindAt(r, ahead + 1) === T.word || wordAt(r, ahead + 2) > 0) &&
  kindAt(r, ahead + 1) !== T.star;

/** "Repeat (rep) from *": how many tokens its short form takes. */
const shortForm = (r: Reader, ahead: number): number =>
  kindAt(r, ahead) === T.open && isWord(r, W.repeat, ahead + 1) && kindAt(r, ahead + 2) === T.close
    ? 3
    : 0;

/** "Complete 6 times from *". */
const completesFrom = (r: Reader, k: number): boolean =>
  kindAt(r, k + 1) === T.number &&
  isWord(r, W.times, k + 2) &&
  isWord(r, W.from, k + 3) &&
  kindAt(r, k + 4) === T.star &&
  /^(complete|do|work|make)$/.test(spelled(r, r.at + k));

/** "Continue around from *", and "*…, continue around": the star is open, and nothing else goes back to it. */
const continuesAround = (r: Reader, k: number): boolean =>
  isWord(r, W.continue, k) &&
  (isWord(r, W.around, k + 1) || isWord(r, W.across, k + 1)) &&
  (isWord(r, W.from, k + 2) ? kindAt(r, k + 3) === T.star : r.depth > 0 && clauseEnds(r, k + 2));

/** "Rep", or "continue from *", "work from *", "continue * to *". */
export const isAgain = (r: Reader, k: number): boolean =>
  isWord(r, W.repeat, k) ||
  completesFrom(r, k) ||
  continuesAround(r, k) ||
  ((isWord(r, W.continue, k) || isWord(r, W.work, k)) &&
    (isWord(r, W.from, k + 1)
      ? kindAt(r, k + 2) === T.star
      : kindAt(r, k + 1) === T.star && isWord(r, W.to, k + 2)));

/** What an order opens with: "repeat", a verb that does as well, words that link. */
const MAY_ORDER: SenseSet = new SenseSet([
  W.repeat,
  W.continue,
  W.work,
  W.and,
  W.afterwards,
  W.now,
]);
const COMPLETE = wordsOf('complete');

/** Whether "rep" stands here and speaks of stitches rather than of rows. */
export function isRepeatOrder(r: Reader, ahead = 0): boolean {
  if (!MAY_ORDER.has(wordAt(r, ahead)) && !isOneOf(r, COMPLETE, ahead)) return false;
  let k = ahead;
  while (isWord(r, W.and, k) || isWord(r, W.afterwards, k) || isWord(r, W.now, k)) k++;
  // "Continue to repeat the pattern from * to * across"
  if (isWord(r, W.continue, k) && isWord(r, W.to, k + 1) && isWord(r, W.repeat, k + 2)) k += 2;
  if (!isAgain(r, k)) return false;
  k += 1 + shortForm(r, k + 1);
  // "then repeat (2 dc in next st, dc in next st) to the end": the bracket is the repeat.
  if (holdsWork(r, k)) return false;
  // "repeat after the *"
  if (isWord(r, W.after, k) && kindAt(r, isWord(r, W.the, k + 1) ? k + 2 : k + 1) === T.star) k++;
  while (isWord(r, W.the, k) || isWord(r, W.from, k) || isWord(r, W.all, k)) k++;
  if (kindAt(r, k + 1) === T.star && isFirst(r, r.at + k)) k++;
  // "repeat the pattern from * to *"
  if (isWord(r, W.pattern, k) && isWord(r, W.from, k + 1) && kindAt(r, k + 2) === T.star) k += 2;
  if (kindAt(r, k) === T.star) return starRole(r, r.at + k) !== STAR.open;
  const sense = wordAt(r, k);
  // "*ch 4, sc in next loop, repeat rnd, join": around.
  if (sense === W.round && (r.depth > 0 || r.stars) && clauseEnds(r, k + 1)) return true;
  if (sense === W.row || sense === W.round || sense === W.r || sense === W.as) return false;
  if (namesSteps(r, k)) return false;
  // "repeat and follow rounds 6 and 7"
  if (sense === W.and && isWord(r, W.next, k + 1) && isWord(r, W.round, k + 2)) return false;
  if (kindAt(r, k) === T.ordinal) return false;
  // "(sc in next 2 sts, inc) repeat pattern": the bracket's.
  if (sense === W.pattern && ahead === 0 && kindAt(r, -1) === T.close) return true;
  if (sense === W.last || sense === W.previous || sense === W.pattern) return false;
  if (sense === W.these) return thisSoOften(r, k + 1);
  // "rep Dec row", "repeat the increase round"
  const across = sense === W.across || sense === W.around;
  if (!across && (isWord(r, W.row, k + 1) || isWord(r, W.round, k + 1))) return false;
  if (namesBareRows(r, k)) return false;
  if (kindAt(r, k) === T.number) return !isWord(r, W.row, k + 1) && !isWord(r, W.round, k + 1);
  return true;
}

/** "repeat this 5 more times", "repeat this in every stitch around": the sentence before, and no rows. */
function thisSoOften(r: Reader, k: number): boolean {
  if (isWord(r, W.in, k)) return isWord(r, W.each, k + 1) || isWord(r, W.every, k + 1);
  if (isWord(r, W.twice, k) || isWord(r, W.thrice, k)) return true;
  if (isWord(r, W.once, k)) return isWord(r, W.more, k + 1);
  const more = isWord(r, W.more, k + 1) ? k + 2 : k + 1;
  return kindAt(r, k) === T.number && (isWord(r, W.times, more) || kindAt(r, more) === T.times);
}

/** The order to repeat with its ending, with `isRepeatOrder` true. */
export function readOrder(r: Reader): RepeatOrder {
  const start = r.at;
  const { times } = readOrderHead(r);
  const order = { from: fromOf(r, start), to: toOf(r) };
  return { times, ending: readEnding(r), order };
}

/** How often the order asks for; its ending is left to be read. */
export const orderOnly = (r: Reader): Times => readOrderHead(r).times;

export function readOrderHead(r: Reader): { times: Times; mark: number } {
  while (!isAgain(r, 0)) r.at++;
  r.at += 1 + shortForm(r, 1);
  if (isWord(r, W.the) && isWord(r, W.pattern, 1)) r.at++;
  if (isWord(r, W.pattern)) r.at++;
  const mark = eatMarks(r);
  if (isWord(r, W.round) && clauseEnds(r, 1)) r.at++;
  const start = r.at;
  const length = toLength(r);
  if (length) return { times: length, mark };
  const times = orderTimes(r);
  // "repeat all around from * to last sc": the star is named behind.
  if (times && isWord(r, W.from) && kindAt(r, 1) === T.star) {
    const named = eatMarks(r);
    return { times: orderTimes(r) ?? times, mark: named };
  }
  if (times) return { times, mark };
  const places = inNextPlaces(r);
  if (places) return { times: places, mark };
  if (kindAt(r) === T.comma && !isWord(r, W.ending, 1)) {
    r.at++;
    const later = readTimes(r, null);
    if (later) return { times: later, mark };
    r.at = start;
  }
  // "repeat in each ch sp": as often as there are.
  const every = isWord(r, W.each, 1) || isWord(r, W.every, 1);
  if (every && (isWord(r, W.in) || isWord(r, W.for) || isWord(r, W.on)) && eachOfThem(r)) {
    return { times: toTheEnd(r), mark };
  }
  // "repeat from * all ending with …"
  if (isWord(r, W.all) && (isWord(r, W.ending, 1) || isWord(r, W.end, 1))) r.at++;
  return { times: toTheEnd(r), mark };
}

/** "repeat from * into the next 5 sps", "in all the next sps": once more for each of them. */
function inNextPlaces(r: Reader): Times | null {
  if (!isWord(r, W.in)) return null;
  const start = r.at;
  const from = fromOf(r, start);
  const place = readPlaceAfterPreposition(r);
  const [n] = place?.n?.values ?? [];
  const ends = clauseEnds(r) || isWord(r, W.around) || kindAt(r) === T.open;
  if (place?.pick === 'each' && !place.n && ends) return toTheEnd(r);
  if (place?.pick === 'next' && place.n && typeof n === 'number' && n > 1 && ends)
    return { kind: 'times', n: place.n, more: true, from, to: toOf(r) };
  r.at = start;
  return null;
}

/** "Repeat from * for length required", "… to desired length". */
function toLength(r: Reader): Times | null {
  const start = r.at;
  const measure = readMeasure(r);
  if (!measure) {
    r.at = start;
    return null;
  }
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'until', until: { kind: 'length', ...span }, ...span };
}

/** "in each ch sp around", "for each side": up to what follows. */
function eachOfThem(r: Reader): boolean {
  const start = r.at;
  while (kindAt(r) === T.word && !isWord(r, W.and) && !isWord(r, W.around) && r.at < start + 6)
    r.at++;
  if (isWord(r, W.around) || clauseEnds(r) || isWord(r, W.and)) return true;
  r.at = start;
  return false;
}

/** "14 times around": the way round says no more than the number. */
function orderTimes(r: Reader): Times | null {
  const times = readTimes(r, null);
  const round = isWord(r, W.around) || isWord(r, W.across);
  if (times?.kind === 'times' && round && clauseEnds(r, 1)) r.at++;
  return times;
}

/** "from * to *", "between * and *", "*-*", "from beginning", "instructions between stars". */
export function eatMarks(r: Reader): number {
  let mark = 0;
  for (let guard = 0; guard < 10; guard++) {
    const sense = wordAt(r);
    if (kindAt(r) === T.star) {
      mark ||= valueAt(r);
      // "between *s once"
      if (kindAt(r, 1) === T.word && spelled(r, r.at + 1) === 's') r.at++;
    } else if (kindAt(r) === T.dash && (mark > 0 || kindAt(r, 1) === T.star)) {
      if (kindAt(r, 1) !== T.star) break;
    } else if (sense === W.to || sense === W.and) {
      if (kindAt(r, 1) !== T.star) break;
    } else if (kindAt(r, 1) === T.star && isFirst(r, r.at)) {
      r.at++;
      mark ||= valueAt(r);
    } else if (sense === W.from) {
      const k = isWord(r, W.the, 1) ? 2 : 1;
      if (isWord(r, W.beginning, k) || isWord(r, W.star_word, k)) r.at += k;
    } else if (sense === W.all && kindAt(r, 1) !== T.star && !isWord(r, W.from, 1)) break;
    else if (kindAt(r) === T.open && kindAt(r, 1) === T.star) {
      const close = r.partner[r.at] ?? -1;
      if (close > 0 && close < r.at + 6) {
        mark ||= valueAt(r, 1);
        r.at = close;
      }
    } else if (kindAt(r) === T.open && kindAt(r, 1) === T.close) r.at++;
    else if (inBrackets(r) > 0) r.at += inBrackets(r) - 1;
    else if (!FILLERS.has(sense)) break;
    r.at++;
  }
  return mark;
}

/** "the steps in brackets", "what is within the parentheses": how many tokens name the bracket just read. */
function inBrackets(r: Reader): number {
  let k = /^(steps?|part|what)$/.test(spelled(r, r.at)) ? 1 : 0;
  // "repeat the two stitches in parentheses"
  if (kindAt(r) === T.number && isWord(r, W.st, 1)) k = 2;
  if (k > 0 && isWord(r, W.is, k)) k++;
  if (!isWord(r, W.in, k) && !/^(within|inside)$/.test(spelled(r, r.at + k))) return 0;
  k += isWord(r, W.the, k + 1) ? 2 : 1;
  return kindAt(r, k) === T.word && /^(brackets?|parenthes[ei]s)$/.test(spelled(r, r.at + k))
    ? k + 1
    : 0;
}

const FILLERS: SenseSet = new SenseSet([
  W.between,
  W.the,
  W.all,
  W.star_word,
  W.instructions,
  W.these,
  W.sequence,
  W.st,
]);

/** "again" is once; so is silence at a clause's end. */
export function onceAgain(r: Reader): Times | null {
  if (spelled(r, r.at) === 'again') r.at++;
  if (!clauseEnds(r)) return null;
  const at = toOf(r);
  const n = { from: at, to: at, values: [1] };
  return { kind: 'times', n, more: false, from: at, to: at };
}

/** The mark up to which an order goes: the "**" of "from * to **", read from token `start` on. */
export function endMark(r: Reader, start: number): string {
  for (let i = start; i < r.at; i++) {
    if (r.kind[i] === T.star && r.kind[i - 1] === T.word && r.value[i - 1] === W.to)
      return markOf(r.value[i] ?? 1);
  }
  return '';
}

/** Whether the order to repeat here names a star. */
export function namesStar(r: Reader): boolean {
  for (let k = 1; k < 5; k++) if (kindAt(r, k) === T.star) return true;
  return false;
}
