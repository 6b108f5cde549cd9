/** How the piece is turned: "turn", "rotate", "ch 5 to turn", "turn the slipper inside out". */

import { mayBeStitch } from './dictionary.ts';
import { readTurn } from './orders.ts';
import {
  clauseEnds,
  fromOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  wordAt,
} from './reader.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Step } from './tree.ts';

/** "Turn the slipper inside out", "Rotate work 180 degrees": how it is held, and no turn of a row. */
export function turnsPiece(r: Reader, run: Run): 'done' | null {
  let k = 1;
  let way = false;
  let piece = isWord(r, W.rotate) && clauseEnds(r, 1);
  for (; !clauseEnds(r, k); k++) {
    if (kindAt(r, k) === T.number ? !/^degrees?$/.test(spelled(r, r.at + k + 1)) : false)
      return null;
    if (kindAt(r, k) !== T.number && (kindAt(r, k) !== T.word || mayBeStitch(wordAt(r, k))))
      return null;
    const word = spelled(r, r.at + k);
    way ||= /^(along|down|up|across)$/.test(word);
    piece ||= /^(inside|clockwise|degrees?|upside|out|sideways)$/.test(word);
    // "turn to work along the side"
    piece ||= way && /^(sides?|edges?)$/.test(word);
  }
  const start = r.at;
  for (let i = start + 1; i < start + k; i++) {
    // "rotate work so that you will start on the opposite side of the chain"
    if (r.word[i] !== W.opposite || r.word[i + 1] !== W.side) continue;
    r.at += k;
    const span = { from: fromOf(r, start), to: toOf(r) };
    run.out.push({ kind: 'other-side', chains: null, rowEnds: false, ...span });
    return 'done';
  }
  if (!piece) return null;
  r.at += k;
  putWords(r, run, start, 'remark');
  return 'done';
}

/** "ch 5 to turn" */
export function toTurn(r: Reader): Step | null {
  if (!isWord(r, W.turn, 1)) return null;
  const start = r.at++;
  return readTurn(r, false, start);
}

/** "Rotate work 180 degrees": how the piece is held says nothing that the words behind it do not. */
export function rotated(r: Reader): Step | null {
  const start = r.at++;
  while (
    kindAt(r) === T.word &&
    /^(the|your|work|piece|it|clockwise|counterclockwise|to|by|in)$/.test(spelled(r, r.at))
  )
    r.at++;
  if (kindAt(r) === T.number && /^(degrees?|deg)$/.test(spelled(r, r.at + 1))) r.at += 2;
  while (kindAt(r) === T.word && /^(clockwise|counterclockwise)$/.test(spelled(r, r.at))) r.at++;
  if (clauseEnds(r)) return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
  r.at = start;
  return null;
}
