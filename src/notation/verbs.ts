/** Verbs before work that say no more than "work" does, and what is told of its doing. */

import { mayBeStitch } from './dictionary.ts';
import { KNIT } from './even.ts';
import { workPlaceFirst } from './groups.ts';
import {
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  type Words,
  wordAt,
  wordsOf,
} from './reader.ts';
import { holdsWork } from './repeat-order.ts';
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { STAR, starRole } from './star.ts';
import { T } from './tokens.ts';

/** "Continue to work dc in each ch across", "continue making sc in each st": the work, and no order of its own. */
function goesOnWorking(r: Reader): boolean {
  let k = isWord(r, W.to, 1) ? 2 : 1;
  const verb = isWord(r, W.work, k) || isWord(r, W.working, k) || isOneOf(r, MAKING, k);
  if (verb) k++;
  else if (k === 1) return false;
  if (kindAt(r, k) === T.number) k++;
  if (!mayBeStitch(wordAt(r, k)) || !isWord(r, W.in, k + 1)) return false;
  const each = isWord(r, W.each, k + 2) || isWord(r, W.every, k + 2) || isWord(r, W.next, k + 2);
  if (!each && !isWord(r, W.the, k + 2)) return false;
  r.at += kindAt(r, k - 1) === T.number ? k - 1 : k;
  return true;
}

const MAKING = wordsOf('making make crocheting crochet doing do');

/** "Work in 12 dc", "work in a sc": the stitches are worked, and not into anything. */
const worksIn = (r: Reader): boolean =>
  isWord(r, W.in, 1) &&
  (kindAt(r, 2) === T.number || isWord(r, W.a, 2)) &&
  mayBeStitch(wordAt(r, 3));

/** "Place 2 dc in first sp", "add another 5 dc", "knit 20 sc": the verb says no more than "work". */
export function putsStitches(r: Reader): boolean {
  const sense = wordAt(r);
  const verb = sense === W.place || sense === W.add || isOneOf(r, KNIT);
  const k = isWord(r, W.another, 1) ? 2 : 1;
  if (!verb || kindAt(r, k) !== T.number) return false;
  // "Add one more sc in the last ch"
  return mayBeStitch(wordAt(r, isWord(r, W.more, k + 1) ? k + 2 : k + 1));
}

const opensWork = (r: Reader, k: number): boolean =>
  kindAt(r, k) === T.star || kindAt(r, k) === T.open;

/** "Simply ch 1 and turn", "just sc in each st" */
export const SIMPLY: Words = wordsOf('simply just');

export const startsChainAhead = (r: Reader): boolean =>
  isWord(r, W.ch, 1) || (kindAt(r, 1) === T.number && isWord(r, W.ch, 2));

export const CHAINED: Words = wordsOf('chained');

const opensStitches = (r: Reader, k: number): boolean =>
  isWord(r, W.ch, k) || (kindAt(r, k) === T.number && mayBeStitch(wordAt(r, k + 1)));

/** Behind "again": work, a chain, or so many stitches. */
const againWorks = (r: Reader): boolean =>
  isWord(r, W.work, 1) ||
  isWord(r, W.ch, 1) ||
  (kindAt(r, 1) === T.number && (mayBeStitch(wordAt(r, 2)) || isWord(r, W.ch, 2)));

const AGAIN = wordsOf('again another');

const CAST = wordsOf('cast');

/** "Cast on 4 ch", "cast on 10 dc": a translator's word for making them. */
export const castsOn = (r: Reader): boolean =>
  isOneOf(r, CAST) &&
  isWord(r, W.on, 1) &&
  (isWord(r, W.ch, 2) ||
    (kindAt(r, 2) === T.number && (isWord(r, W.ch, 3) || mayBeStitch(wordAt(r, 3)))));

/** "Increase by making 2 hdc in each st": what is told behind is the increase. */
export const tellsIncrease = (r: Reader): boolean =>
  isWord(r, W.by, 1) &&
  (isWord(r, W.work, 2) || isWord(r, W.working, 2)) &&
  kindAt(r, 3) === T.number;

/** Made of several stitches, which words behind the name may tell. */
const OF_MANY: ReadonlySet<string> = new Set(['shell', 'special', 'v', 'cluster']);

/** "(work) as follows": what is to be done stands behind. */
export function asFollows(r: Reader, { out }: Run): boolean {
  const k = isWord(r, W.work) || isWord(r, W.working) || isWord(r, W.continue) ? 1 : 0;
  if (!isWord(r, W.as, k) || kindAt(r, k + 1) !== T.word) return false;
  if (!/^follows?$/.test(spelled(r, r.at + k + 1))) return false;
  r.at += k + 2;
  // "Work a shell in first shell as follows: sl st in next tr, …": named first, and worked behind.
  const named = out.at(-1);
  const group = named?.kind === 'work' && OF_MANY.has(named.stitch.shape);
  if (group && k === 0 && kindAt(r) === T.colon)
    out[out.length - 1] = { kind: 'remark', from: named.from, to: toOf(r) };
  return true;
}

/** "Work in 12 dc", "make *6 dc …", "working into the ch-3 sps, *…*": what the verb leads to is all. */
export function verbAlone(r: Reader, run: Run): boolean {
  const sense = wordAt(r);
  const work = sense === W.work;
  // "Work again 3 dc in ring"
  if (work && isOneOf(r, AGAIN, 1) && kindAt(r, 2) === T.number && mayBeStitch(wordAt(r, 3))) {
    r.at += 2;
    return true;
  }
  // "make corner 1 dc, ch 2, 1 dc in sp", "make 2nd corner ch 6": what it is called stands before it.
  const corner = kindAt(r, 1) === T.ordinal || isWord(r, W.a, 1) || isWord(r, W.the, 1) ? 2 : 1;
  if (work && isWord(r, W.corner, corner) && opensStitches(r, corner + 1)) {
    r.at += corner + 1;
    return true;
  }
  // "Work +2 sc into next st": so many there.
  if (work && kindAt(r, 1) === T.plus && kindAt(r, 2) === T.number && mayBeStitch(wordAt(r, 3))) {
    r.at += 2;
    return true;
  }
  if (work && worksIn(r)) {
    r.at += 2;
    return true;
  }
  if (sense === W.continue && goesOnWorking(r)) return true;
  if ((work || sense === W.working) && workPlaceFirst(r, run)) return true;
  // "And again work 2 ch", "again 3 dc in ring"
  if (isOneOf(r, AGAIN) && againWorks(r)) {
    r.at++;
    return true;
  }
  const k = isWord(r, W.a, 1) ? 2 : 1;
  // "make * 6 dc in next sp; rep from *", "work (3 dc, ch 1, 3 dc) in corner"
  const opens = work
    ? opensWork(r, k)
    : sense === W.repeat &&
      (holdsWork(r, 1) || (kindAt(r, 1) === T.star && starRole(r, r.at + 1) === STAR.open));
  if (opens) r.at += k;
  return opens;
}
