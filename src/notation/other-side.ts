/** Where the work goes on: "along opposite side of foundation ch", "along row ends of cuff". */
import { mayBeStitch, PROSE } from './dictionary.ts';
import { readNumbers } from './numbers.ts';
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
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Numbers, OtherSideStep } from './tree.ts';

const word = (r: Reader): string => (kindAt(r) === T.word ? spelled(r, r.at) : '');

/** "working along opposite side of foundation ch", "on other side of chain", "along row ends". */
export function readOtherSide(r: Reader): OtherSideStep | null {
  const start = r.at;
  let side = false;
  let rowEnds = false;
  let chains: Numbers | null = null;
  let verb = false;
  for (let guard = 0; guard < 18; guard++) {
    const sense = wordAt(r);
    const kind = kindAt(r);
    // "along opposite side of ch work 2 sc": the number is the stitches'.
    if (kind === T.number && mayBeStitch(wordAt(r, 1))) break;
    if (kind === T.number && !chains && side) chains = readNumbers(r);
    else if (kind === T.dash && side) r.at++;
    else if (kind !== T.word) break;
    else if (
      NAMES_SIDE.has(sense) ||
      (sense === W.other && isWord(r, W.side, 1)) ||
      (sense === W.other && isWord(r, W.end, 1)) ||
      (sense === W.remaining && isLoopsOfChain(r))
    ) {
      side = true;
      // "Rejoin yarn to opposite side of foundation chain"
      verb ||= behindYarn(r);
      r.at++;
    } else if (isCastOn(r)) {
      side = true;
      verb ||= behindYarn(r);
      r.at += kindAt(r, 1) === T.dash ? 4 : 3;
    } else if (isRowEnds(r)) {
      rowEnds = true;
      r.at++;
    } else if (sense === W.part && isWord(r, W.rotate, -1)) {
      r.at++;
    } else if (mayBeStitch(sense) && !side) break;
    else if (mayBeStitch(sense) || sense === W.skip || (sense === W.ch && chains)) break;
    else if (
      OTHER_SIDE_WORDS.has(sense) ||
      /^(now|back|continue|long|starting|across|down)$/.test(word(r))
    ) {
      verb ||= LEADS_THERE.has(sense);
      r.at++;
      if (sense === W.ch && kindAt(r) === T.dash && kindAt(r, 1) === T.number) r.at++;
    } else break;
  }
  if (rowEnds && verb) passPieceName(r);
  if ((!side && !rowEnds) || !verb) {
    if (!(side && r.value[start] === W.opposite_side)) {
      r.at = start;
      return null;
    }
  }
  return { kind: 'other-side', chains, rowEnds, from: fromOf(r, start), to: toOf(r) };
}

/** "along row ends of cuff": the piece by its name, to the clause's end. */
function passPieceName(r: Reader): void {
  let k = isWord(r, W.of) ? 1 : 0;
  if (isWord(r, W.of, -1)) k = 0;
  else if (k === 0) return;
  if (isWord(r, W.the, k)) k++;
  const sense = wordAt(r, k);
  if (kindAt(r, k) === T.word && (sense === 0 || sense === PROSE) && clauseEnds(r, k + 1))
    r.at += k + 1;
}

/** "in remaining loops of foundation ch": no other loops of a chain are left. */
function isLoopsOfChain(r: Reader): boolean {
  if (!isWord(r, W.loop, 1)) return false;
  for (let k = 2; k < 6 && kindAt(r, k) === T.word; k++) if (isWord(r, W.ch, k)) return true;
  return false;
}

/** "cast on edge": the foundation chain's other side. */
function isCastOn(r: Reader): boolean {
  const k = kindAt(r, 1) === T.dash ? 2 : 1;
  return isWord(r, W.on, k) && word(r) === 'cast' && /^edges?$/.test(spelled(r, r.at + k + 1));
}

const behindYarn = (r: Reader): boolean => isWord(r, W.to, -1) && spelled(r, r.at - 2) === 'yarn';

const isRowEnds = (r: Reader): boolean =>
  (isWord(r, W.row) && isWord(r, W.end, 1)) ||
  isWord(r, W.row_end) ||
  (isWord(r, W.end) &&
    isWord(r, W.of, 1) &&
    (isWord(r, W.row, 2) || (isWord(r, W.the, 2) && isWord(r, W.row, 3))));

/** Words that mean the other side by themselves. */
const NAMES_SIDE: SenseSet = new SenseSet([W.opposite, W.opposite_side, W.unworked, W.skipped]);

/** Words without which the rest only speaks of a side. */
const LEADS_THERE: SenseSet = new SenseSet([
  W.working,
  W.work,
  W.continue,
  W.along,
  W.on,
  W.rotate,
  W.in,
  W.up,
]);

const OTHER_SIDE_WORDS: SenseSet = new SenseSet([
  W.work,
  W.working,
  W.continue,
  W.along,
  W.on,
  W.in,
  W.the,
  W.of,
  W.side,
  W.foundation,
  W.ch,
  W.beginning,
  W.loop,
  W.st,
  W.to,
  W.up,
  W.at,
  W.rotate,
  W.and,
  W.now,
  W.remaining,
  W.row,
  W.end,
  W.other,
  W.around,
  W.across,
  W.base,
  W.front,
  W.back,
  W.over,
  W.from,
  W.round,
  W.turn,
  W.for,
  W.next,
]);
