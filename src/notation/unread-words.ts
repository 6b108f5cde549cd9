/**
 * Words that were not understood: may they be work? Where they name no stitch and no number, and the row
 * comes out without them, they are passed and told; see `passWords` in the fabric.
 */
import { mayBeStitch, PROSE } from './dictionary.ts';
import { fromOf, type Reader, toOf } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { UnreadStep } from './tree.ts';

/** Words that order work, name its places or say how often. */
const WORK: SenseSet = new SenseSet([
  ...[W.ch, W.chsp, W.tch, W.sp, W.st, W.loop, W.arch, W.hole, W.gap, W.ring, W.corner],
  ...[W.skip, W.yo, W.box, W.mesh, W.block, W.chart, W.omit, W.fasten, W.join, W.turn, W.group],
  ...[W.times, W.twice, W.once, W.thrice, W.x, W.v, W.more, W.even, W.evenly],
]);

/** Words that speak of rows and places without naming any. */
const ORDERS: SenseSet = new SenseSet([W.each, W.every, W.next, W.repeat, W.work, W.row, W.round]);

/** The step of the words from token `start` to where the reader stands; `extent`: they tell how far a repeat goes. */
export function unreadStep(r: Reader, start: number, extent = false): UnreadStep {
  const says = sayingOf(r, start);
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'unread', says: extent && says === 'no number' ? 'nothing' : says, ...span };
}

function sayingOf(r: Reader, start: number): UnreadStep['says'] {
  let talk = 0;
  let strange = 0;
  for (let i = start; i < r.at; i++) {
    const kind = r.kind[i];
    if (kind === T.number || kind === T.star || kind === T.times || kind === T.plus) return 'work';
    if (kind === T.ordinal) strange++;
    if (kind !== T.word) continue;
    const sense = r.word[i] ?? 0;
    if (WORK.has(sense) || mayBeStitch(sense)) return 'work';
    if (sense === PROSE || (sense > 0 && !ORDERS.has(sense))) talk++;
    else strange++;
  }
  return talk > 1 && strange === 0 ? 'nothing' : 'no number';
}
