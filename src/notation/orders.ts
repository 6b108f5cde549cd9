/** Shorter orders: leave unworked, turn, ring, spiral. */
import { mayBeStitch } from './dictionary.ts';
import { readNumbers } from './numbers.ts';
import {
  clauseEnds,
  eatThe,
  endsInS,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  passWords,
  type Reader,
  spelled,
  toOf,
  wordAt,
  wordsOf,
} from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { FIRST, T } from './tokens.ts';
import type { Numbers, RemarkStep, RingStep, Step, TurnStep, UnworkedStep } from './tree.ts';
import { readYarnName } from './yarn-name.ts';

/** "leave 3 sts unworked", "leaving rem sts unworked". Otherwise `null`. */
export function readUnworked(r: Reader): UnworkedStep | null {
  const start = r.at++;
  eatThe(r);
  let n: Numbers | null = null;
  for (let guard = 0; guard < 8; guard++) {
    if (isWord(r, W.unworked) || isWord(r, W.skipped)) {
      r.at++;
      return { kind: 'unworked', n, from: fromOf(r, start), to: toOf(r) };
    }
    if (kindAt(r) === T.number) n = readNumbers(r);
    else if (isWord(r, W.last) && isOneStitch(r)) {
      const at = fromOf(r, r.at++);
      n = { from: at, to: toOf(r), values: [1] };
    } else if (isWord(r, W.remaining) && clauseEnds(r, 1)) {
      r.at++;
      return { kind: 'unworked', n, from: fromOf(r, start), to: toOf(r) };
    } else if (kindAt(r) === T.word) r.at++;
    else break;
  }
  r.at = start;
  return null;
}

/** "the last st", "last sc": one of them, though no number says so. */
const isOneStitch = (r: Reader): boolean =>
  kindAt(r, 1) === T.word &&
  (isWord(r, W.st, 1) || mayBeStitch(wordAt(r, 1))) &&
  !endsInS(r, r.at + 1);

/** "turn work reversed side", "turn to the wrong side" */
const namesOther = (r: Reader, k: number): boolean =>
  isWord(r, W.wrong, k) || isWord(r, W.other, k) || /^revers/.test(wordOn(r, k));

const PIECE = wordsOf('piece it');

export function readTurn(r: Reader, not: boolean, start: number): TurnStep {
  r.at++;
  while (isWord(r, W.work) || isWord(r, W.the) || isOneOf(r, PIECE)) r.at++;
  if (isWord(r, W.round) && clauseEnds(r, 1)) r.at++;
  const k = isWord(r, W.to) ? (isWord(r, W.the, 1) ? 2 : 1) : 0;
  if (isWord(r, W.side, k + 1) && namesOther(r, k)) r.at += k + 2;
  if (isWord(r, W.each) && (isWord(r, W.row, 1) || isWord(r, W.round, 1))) r.at += 2;
  return { kind: 'turn', not, from: fromOf(r, start), to: toOf(r) };
}

const wordOn = (r: Reader, ahead: number): string =>
  kindAt(r, ahead) === T.word ? spelled(r, r.at + ahead) : '';

const word = (r: Reader): string => wordOn(r, 0);

/** "MC" is a yarn too: the ring behind "in", "make a", and before a lone number, "MC 8 (8)". */
function isMagicCircle(r: Reader, start: number): boolean {
  if (!isWord(r, W.mc)) return false;
  const numbered = kindAt(r, 1) === T.number;
  // "Using MC, ch 5": the main colour.
  if (isWord(r, W.using, -1) && kindAt(r, 1) === T.comma && isWord(r, W.ch, 2)) return false;
  if (r.at > start) return numbered || clauseEnds(r, 1);
  // "R1: mc with 6 sts"
  const holds = isWord(r, W.with, 1) && kindAt(r, 2) === T.number;
  if (holds && /^(?:sc|dc|hdc|sts?|stitches)$/.test(wordOn(r, 3))) return true;
  // "1. MC (4)": what stands in the bracket alone is made in it.
  const counted = kindAt(r, 1) === T.open && kindAt(r, 2) === T.number && kindAt(r, 3) === T.close;
  if (counted && r.at > FIRST) return kindAt(r, 4) === T.end;
  return numbered && (clauseEnds(r, 2) || kindAt(r, 2) === T.open);
}

/** "Make a loop, 6 sc into the loop", "make a loop (magic ring)" */
const isFilledLoop = (r: Reader): boolean =>
  /^loops?(?: \((?:magic|adjustable) |,? (?:and )?[^.;]{0,60}\bin(?:to)? the (?:loop|ring)\b)/i.test(
    r.text.slice(r.base + fromOf(r, r.at), r.base + fromOf(r, r.at) + 100),
  );

/** "magic ring", "MR", "adjustable loop", "sl knot". */
export function readRing(r: Reader): RingStep | RemarkStep | null {
  const start = r.at;
  passWords(r, BEFORE_RING);
  // "Work into a magic ring, ch 3"
  if (isWord(r, W.in) && isWord(r, W.work, -1)) {
    const k = isWord(r, W.a, 1) || isWord(r, W.the, 1) ? 2 : 1;
    if (isWord(r, W.mr, k) || isWord(r, W.magic, k)) r.at += k;
  }
  // "form 1 ring"
  if (kindAt(r) === T.number && isWord(r, W.form, -1) && isWord(r, W.ring, 1)) r.at++;
  if (isWord(r, W.mr) || isWord(r, W.slip_knot)) r.at++;
  else if (isMagicCircle(r, start)) r.at++;
  else if (isWord(r, W.magic) && (isWord(r, W.ring, 1) || isWord(r, W.loop, 1))) r.at += 2;
  // "make a magic adjustable ring"
  else if (isWord(r, W.magic) && isWord(r, W.magic, 1) && isWord(r, W.ring, 2)) r.at += 3;
  else if (isWord(r, W.ring) && r.at > start) r.at++;
  else if (isWord(r, W.loop) && r.at > start && isFilledLoop(r)) r.at++;
  else if (isWord(r, W.knot, 1) && /^(sl|slip)$/.test(word(r))) r.at += 2;
  else {
    r.at = start;
    return null;
  }
  // "using the magic ring technique"
  if (kindAt(r) === T.word && /^(?:technique|method)$/.test(word(r))) r.at++;
  const to = toOf(r);
  if (beforeLongChain(r)) return { kind: 'remark', from: fromOf(r, start), to };
  // "magic ring (see how it is made) with 6 sc"
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) + 1 - r.at : 0;
  if (close > 0 && isWord(r, W.with, close) && kindAt(r, close + 1) === T.number) r.at += close;
  // "make a ring with 6 sc", "magic ring of 7 sc": the stitches are work.
  const linked = isWord(r, W.with) || isWord(r, W.of) || isWord(r, W.in);
  if (linked && kindAt(r, 1) === T.number) r.at++;
  // "magic circle with a base of 6 sc"
  const based =
    isWord(r, W.with) && isWord(r, W.a, 1) && isWord(r, W.base, 2) && isWord(r, W.of, 3);
  if (based && kindAt(r, 4) === T.number) r.at += 4;
  return { kind: 'ring', from: fromOf(r, start), to };
}

/** "Slip knot and chain 45", "starting with MC, ch 20": the loop on the hook, or the main colour, is no ring. */
function beforeLongChain(r: Reader): boolean {
  if (!isWord(r, W.knot, -1) && !isWord(r, W.slip_knot, -1) && !isWord(r, W.mc, -1)) return false;
  let k = kindAt(r) === T.comma || kindAt(r) === T.stop ? 1 : 0;
  if (isWord(r, W.and, k) || isWord(r, W.afterwards, k)) k++;
  if (!isWord(r, W.ch, k) || kindAt(r, k + 1) !== T.number) return false;
  // "Slip knot. Chain 4 and slip st to join": the chain is the ring.
  return (r.value[r.at + k + 1] ?? 0) > 5 || isJoined(r, k + 2);
}

function isJoined(r: Reader, k: number): boolean {
  for (let i = k; i < k + 8 && kindAt(r, i) !== T.stop && kindAt(r, i) !== T.end; i++)
    if (isWord(r, W.join, i)) return true;
  return false;
}

const BEFORE_RING: SenseSet = new SenseSet([
  W.work,
  W.a,
  W.form,
  W.with,
  W.using,
  W.beginning,
  W.the,
]);

/** "do not turn / join / fasten off", "work in continuous rounds", "in a spiral". */
export function readNot(r: Reader): Step | null {
  const start = r.at;
  while (
    isWord(r, W.work) ||
    isWord(r, W.dont) ||
    isWord(r, W.not) ||
    isWord(r, W.without) ||
    /^do$/.test(word(r))
  )
    r.at++;
  const negative =
    r.value[r.at - 1] === W.not || r.value[r.at - 1] === W.dont || r.value[r.at - 1] === W.without;
  if (!negative) {
    r.at = start;
    return null;
  }
  if (isWord(r, W.turn) || isWord(r, W.turning)) return readTurn(r, true, start);
  if (isWord(r, W.join)) {
    r.at++;
    passWords(r, BEFORE_END);
    laterToo(r);
    return { kind: 'spiral', from: fromOf(r, start), to: toOf(r) };
  }
  const letters = isWord(r, W.letter_f) && kindAt(r, 1) === T.stop && /^o$/i.test(letterAt(r, 2));
  if (isWord(r, W.fasten) || isWord(r, W.fo) || letters) {
    r.at += letters ? 3 : 1;
    if (isWord(r, W.off)) r.at++;
    if (isWord(r, W.color)) r.at++;
    else readYarnName(r);
    // "3 sc. Do not finish row.": it is left there.
    if ((isWord(r, W.row) || isWord(r, W.round)) && clauseEnds(r, 1)) r.at++;
    return { kind: 'fasten-off', not: true, from: fromOf(r, start), to: toOf(r) };
  }
  r.at = start;
  return null;
}

/** "in this or following rnds" */
function laterToo(r: Reader): void {
  let k = 0;
  while (k < 6 && (kindAt(r, k) === T.word || isWord(r, W.and, k))) {
    if (isWord(r, W.round, k) || isWord(r, W.row, k)) {
      r.at += k + 1;
      return;
    }
    k++;
  }
}

const BEFORE_END: SenseSet = new SenseSet([W.round, W.the, W.row, W.at]);

const letterAt = (r: Reader, ahead: number): string =>
  kindAt(r, ahead) === T.word ? spelled(r, r.at + ahead) : '';

/** "continuous rounds", "in a spiral", "in spiral rounds". */
export function readSpiral(r: Reader): Step | null {
  const start = r.at;
  let spiral = false;
  let rows = false;
  for (let guard = 0; guard < 8 && kindAt(r) === T.word; guard++) {
    const sense = wordAt(r);
    if (sense === W.spiral || /^continuous/.test(word(r))) spiral = true;
    else if (sense === W.round || sense === W.row) rows = true;
    else if (!SPIRAL_WORDS.has(sense)) break;
    r.at++;
  }
  // "in spiral working the first hdc in …": the order ends before the next verb.
  while (isWord(r, W.working, -1) || isWord(r, W.the, -1)) r.at--;
  if (!spiral || (!rows && !isSpiralWord(r, start))) {
    r.at = start;
    return null;
  }
  return { kind: 'spiral', from: fromOf(r, start), to: toOf(r) };
}

function isSpiralWord(r: Reader, start: number): boolean {
  for (let i = start; i < r.at; i++) if (r.value[i] === W.spiral) return true;
  return false;
}

const SPIRAL_WORDS: SenseSet = new SenseSet([
  W.work,
  W.working,
  W.continue,
  W.in,
  W.a,
  W.the,
  W.now,
]);
