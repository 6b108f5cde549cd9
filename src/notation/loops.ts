/** "back loop only", "both loops of", "post of": what part of a stitch the hook goes through. */

import { mayBeStitch } from './dictionary.ts';
import { type Hint, hintOf } from './hints.ts';
import {
  eatThe,
  eatWord,
  isOneOf,
  isWord,
  kindAt,
  passSee,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Loop, Post } from './tree.ts';

/** Without one of these no loop of a stitch is named. */
export const LOOP: Hint = hintOf(
  [W.blo, W.flo, W.back, W.loop, W.block],
  'bump bumps ridge ridges bar backbump backbumps horizontal',
);

/** "back loop", "BLO", "both loops", with "of" behind it; `null` leaves the reader where it was. */
export function readLoop(r: Reader): Loop | null {
  const loop = loopHere(r);
  if (loop === null) return null;
  eatWord(r, W.only);
  saidAgain(r, loop);
  passSee(r);
  // "BLO of rnd 3": the row is told behind the place.
  if (isWord(r, W.of) && (isWord(r, W.round, 1) || isWord(r, W.row, 1))) return loop;
  if (isWord(r, W.of)) r.at++;
  eatThe(r);
  return loop;
}

/** "back loops only (BLO)", "BLO (back loop only)": the other name of the same loop. */
function saidAgain(r: Reader, loop: Loop): void {
  if (kindAt(r) !== T.open) return;
  const start = r.at++;
  const again = loopHere(r);
  eatWord(r, W.only);
  if (again === loop && kindAt(r) === T.close) r.at++;
  else r.at = start;
}

/** "into back of each chain", "the back of the 2nd ch": its third loop. */
function isBackOfChain(r: Reader): boolean {
  // "in back side of ch"
  const of = isWord(r, W.side, 1) ? 2 : 1;
  if (!isWord(r, W.of, of)) return false;
  let k = isWord(r, W.the, of + 1) ? of + 2 : of + 1;
  if (kindAt(r, k) === T.ordinal || isWord(r, W.each, k) || isWord(r, W.foundation, k)) k++;
  return isWord(r, W.ch, k);
}

function loopHere(r: Reader): Loop | null {
  const sense = wordAt(r);
  // "in BLs of each st": the short form of blocks is that of back loops too.
  if (sense === W.block && isWord(r, W.of, 1) && /^bls?$/.test(spelled(r, r.at))) {
    r.at++;
    return 'back';
  }
  if (sense === W.blo || sense === W.flo) {
    r.at++;
    return sense === W.blo ? 'back' : 'front';
  }
  // "in ridge of each st": what lies behind its two loops.
  const ridge = isBump(r, 0) && !isWord(r, W.bar) && isWord(r, W.of, 1);
  if (ridge && (isWord(r, W.each, 2) || isWord(r, W.next, 2))) {
    r.at++;
    return 'third';
  }
  // "the bottom bump of each ch", "backbump"
  if (sense <= 0 && isOneOf(r, BACK_BUMP)) {
    r.at++;
    return 'third';
  }
  if (sense <= 0 && horizontalBar(r)) return 'third';
  if (sense === W.base && isBump(r, 1)) {
    r.at += 2;
    return 'third';
  }
  // "in top loop of each ch", "under both top loops": where a hook goes if nothing else is said.
  const top = sense === W.both && isWord(r, W.top, 1) ? 1 : 0;
  if ((top === 1 || sense === W.top) && isWord(r, W.loop, top + 1)) {
    r.at += top + 2;
    return 'both';
  }
  const loop: Loop | null =
    sense === W.back ? 'back' : sense === W.front ? 'front' : sense === W.both ? 'both' : null;
  if (loop === 'back' && isBackOfChain(r)) {
    r.at += isWord(r, W.side, 1) ? 2 : 1;
    return 'third';
  }
  // A translator's "behind the front wall of the loop".
  if ((loop === 'back' || loop === 'front') && isOneOf(r, WALL, 1)) {
    r.at += 2;
    const of = isWord(r, W.of) ? (isWord(r, W.the, 1) ? 2 : 1) : 0;
    if (of > 0 && (isWord(r, W.loop, of) || isWord(r, W.st, of))) r.at += of + 1;
    return loop;
  }
  const third = kindAt(r) === T.ordinal && r.value[r.at] === 3;
  if (loop === null && !third) return null;
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  const next = wordAt(r, k);
  if (next !== W.loop && !isBump(r, k)) return null;
  r.at += k + 1;
  return third || isBump(r, -1) ? 'third' : loop;
}

const WALL = wordsOf('wall walls');
const HORIZONTAL = wordsOf('horizontal');

/**
 * "in horizontal bar of each hdc", "in horizontal bar below the stitch (on the WS) in each hdc": what lies
 * below the two loops. Where it is, is passed, up to the stitches.
 */
function horizontalBar(r: Reader): boolean {
  if (!isOneOf(r, HORIZONTAL) || !(isWord(r, W.bar, 1) || isBump(r, 1))) return false;
  let k = 2;
  for (; k < 14; k++) {
    const close = kindAt(r, k) === T.open ? (r.partner[r.at + k] ?? -1) : -1;
    if (close > 0) k = close - r.at;
    else if (kindAt(r, k) !== T.word || isWord(r, W.of, k)) break;
    if (isWord(r, W.in, k + 1) && (isWord(r, W.each, k + 2) || isWord(r, W.next, k + 2))) {
      r.at += k + 2;
      return true;
    }
  }
  r.at += 2;
  return true;
}

/** "back bump", "back ridge" of a chain. */
const isBump = (r: Reader, ahead: number): boolean => isOneOf(r, BUMP, ahead);

const BUMP = wordsOf('bump bumps ridge ridges bar');

/** "around front of the next dc": the post, by the side from which it is met. */
export const frontOf = (r: Reader, ahead = 0): boolean => {
  if (!isWord(r, W.front, ahead) && !isWord(r, W.back, ahead)) return false;
  if (
    !isWord(r, W.of, ahead + 1) ||
    !isWord(r, W.around, isWord(r, W.the, ahead - 1) ? ahead - 2 : ahead - 1)
  )
    return false;
  const k = isWord(r, W.the, ahead + 2) ? ahead + 3 : ahead + 2;
  const sense = wordAt(r, k);
  return sense === W.st || sense === W.next || sense === W.each || mayBeStitch(sense);
};

const BACK_BUMP = wordsOf('backbump backbumps');
const VERTICAL = wordsOf('vertical upright');

/** "post of", "front post of", "the stem of". */
export function readPost(r: Reader, into: { post: Post | null }): boolean {
  const side = wordAt(r) === W.front ? 'front' : wordAt(r) === W.back ? 'back' : null;
  const k = side === null ? 0 : 1;
  if (side !== null && frontOf(r)) {
    into.post = side;
    r.at += 2;
    eatThe(r);
    return true;
  }
  // "around the vertical bar of next dc"
  const bar =
    side === null &&
    isOneOf(r, VERTICAL) &&
    (isWord(r, W.bar, 1) || isWord(r, W.post, 1)) &&
    isWord(r, W.of, 2);
  if (!bar && !isWord(r, W.post, k)) return false;
  r.at += bar ? 2 : k + 1;
  if (side !== null) into.post = side;
  if (isWord(r, W.of)) r.at++;
  eatThe(r);
  return true;
}
