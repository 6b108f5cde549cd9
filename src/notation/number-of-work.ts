/** How many of a stitch: the number before its name, behind it, or behind its place. */

import { formOf, mayBeStitch } from './dictionary.ts';
import { isBareCount, isLetter } from './letter-stitch.ts';
import { readNumbers } from './numbers.ts';
import { placeDraft } from './place-draft.ts';
import {
  eatWord,
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Numbers } from './tree.ts';
import type { Draft } from './work-draft.ts';

/** "5", "5x", "5 more", "another 5", "1 x" before a stitch; a slip for 1 is an l or I. */
export function leadingNumber(r: Reader): Numbers | null {
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
export function onceMore(r: Reader): Numbers | null {
  const word = wordAt(r);
  const n = word === W.once ? 1 : word === W.twice ? 2 : word === W.thrice ? 3 : 0;
  if (n === 0 || !isWord(r, W.and, -1) || !isWord(r, W.in, 1)) return null;
  r.at++;
  return { from: fromOf(r, r.at - 1), to: toOf(r), values: [n] };
}

/** "2sc10", "3dc2": so many in each of the next so many, all written as one word. */
export function eachOfMany(r: Reader, draft: Draft): void {
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
export function readNumberBehind(r: Reader, draft: Draft): void {
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

/** "sc in next st 3 times"? stays a repeat; "sc in same st twice" too: see `sentence-repeat.ts`. */
export function timesBehindPlace(r: Reader, draft: Draft): void {
  if (draft.stitch.shape !== 'one' && kindAt(r) === T.times && kindAt(r, 1) === T.number) {
    r.at++;
    draft.n = { from: fromOf(r, r.at), to: r.to[r.at] ?? 0, values: [valueAt(r)] };
    draft.numberAfter = true;
    r.at++;
  }
}
