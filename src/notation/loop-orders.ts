/** Loops told as an order of their own: "BLO:", "working in front loops of rnd 2". */
import { mayBeStitch } from './dictionary.ts';
import { readLoop } from './loops.ts';
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  passWords,
  type Reader,
  spelled,
  toOf,
  wordAt,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { LoopStep } from './tree.ts';

/** "BLO:", "in back loops only", "working in front loops", "through both loops" on their own. */
export function readLoopOrder(r: Reader): LoopStep | null {
  const start = r.at;
  passWords(r, BEFORE_LOOP);
  allOfRound(r);
  // "working only into the back loop"
  if (isWord(r, W.only) && (isWord(r, W.in, 1) || isWord(r, W.through, 1))) {
    r.at++;
    passWords(r, BEFORE_LOOP);
  }
  const loop = readLoop(r);
  if (loop === null) {
    r.at = start;
    return null;
  }
  const row = ofRowBefore(r);
  // "working in back of chain", "working in top loops of ch, sc in …"
  const ofChain = isWord(r, W.of, -1) || (isWord(r, W.the, -1) && isWord(r, W.of, -2));
  if ((loop === 'third' || (ofChain && clauseEnds(r, 1))) && isWord(r, W.ch)) r.at++;
  // "in 3rd loop of hdc,"
  if (isWord(r, W.of, -1) && mayBeStitch(wordAt(r)) && clauseEnds(r, 1)) r.at++;
  if (isWord(r, W.throughout) || isWord(r, W.around) || isWord(r, W.across)) r.at++;
  // "work into back loops of each st for this rnd only", "…, working into the back loop of each st, turn"
  const each = isWord(r, W.each) && (isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1)));
  const works = r.value[start] === W.work || r.value[start] === W.working;
  if (each && (isWord(r, W.for, 2) || (works && clauseEnds(r, 2)))) r.at += 2;
  if (isWord(r, W.for) && isWord(r, W.these, 1) && isWord(r, W.round, 2)) {
    r.at += isWord(r, W.only, 3) ? 4 : 3;
  }
  return { kind: 'loop', loop, row, from: fromOf(r, start), to: toOf(r) };
}

/** "working in unused front loops of rnd 2": those that the rows above left. */
export function readLoopsOfRow(r: Reader): LoopStep | null {
  const start = r.at;
  passWords(r, BEFORE_LOOP);
  const left = isWord(r, W.unworked) || isWord(r, W.skipped) || isWord(r, W.remaining);
  if (left) r.at++;
  const step = left ? readLoopOrder(r) : null;
  if (step && step.row !== null) return { ...step, from: fromOf(r, start) };
  r.at = start;
  return null;
}

/** "in front loops of previous row", "in BLO of rnd 3": the number of the row where it is told. */
function ofRowBefore(r: Reader): number | null {
  let k = isWord(r, W.of) ? 1 : 0;
  if (k === 0 && !isWord(r, W.of, -1) && !isWord(r, W.the, -1)) return null;
  // "flo of the sts of rnd 1", "front loops of sc's from round 1"
  const sts = mayBeStitch(wordAt(r, k)) || isWord(r, W.st, k);
  const possessive = sts && kindAt(r, k + 1) === T.word && spelled(r, r.at + k + 1) === 's' ? 1 : 0;
  const from = k + 1 + possessive;
  if (sts && (isWord(r, W.of, from) || isWord(r, W.from, from))) k = from + 1;
  if (isWord(r, W.the, k)) k++;
  const named = isWord(r, W.previous, k) || isWord(r, W.last, k);
  if (named) k++;
  if (!isWord(r, W.round, k) && !isWord(r, W.row, k)) return null;
  k++;
  if (!named && kindAt(r, k) !== T.number) return null;
  const number = kindAt(r, k) === T.number && !named;
  r.at += number ? k + 1 : k;
  return number ? r.value[r.at - 1]! : null;
}

/** "working all sts for this round in 3rd loop" */
function allOfRound(r: Reader): void {
  // "working this rnd in back loops"
  const into = isWord(r, W.in, 2) || isWord(r, W.through, 2);
  if (into && (isWord(r, W.round, 1) || isWord(r, W.row, 1)) && spelled(r, r.at) === 'this') {
    r.at += 2;
    passWords(r, BEFORE_LOOP);
  }
  if (!isWord(r, W.all)) return;
  let k = isWord(r, W.the, 1) ? 2 : 1;
  if (!isWord(r, W.st, k)) return;
  k++;
  if (
    (isWord(r, W.in, k) || isWord(r, W.of, k) || isWord(r, W.for, k)) &&
    spelled(r, r.at + k + 1) === 'this'
  ) {
    if (isWord(r, W.round, k + 2) || isWord(r, W.row, k + 2)) k += 3;
  }
  if (!isWord(r, W.in, k) && !isWord(r, W.through, k)) return;
  r.at += k;
  passWords(r, BEFORE_LOOP);
}

const BEFORE_LOOP: SenseSet = new SenseSet([
  W.for,
  W.work,
  W.working,
  W.in,
  W.through,
  W.the,
  W.now,
]);
