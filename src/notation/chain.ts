/** Chains: "ch 3", "3ch", "ch-1", "chain 43 (47, 51)", "ch 50+1", "a chain 40 cm long". */

import { mayBeStitch } from './dictionary.ts';
import { readMultiple, readSample, startsMultiple } from './multiple.ts';
import { readNumbers } from './numbers.ts';
import {
  clauseEnds,
  eatWord,
  fromOf,
  isGlued,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { ChainStep, Multiple, Numbers } from './tree.ts';

/** Whether a chain begins here: "ch", "3 ch", "make a chain". */
export function startsChain(r: Reader): boolean {
  let k = 0;
  while (isWord(r, W.work, k) || isWord(r, W.a, k) || isWord(r, W.the, k)) k++;
  if (isWord(r, W.foundation, k) || isWord(r, W.beginning, k)) k++;
  if (isWord(r, W.another, k)) k++;
  if (kindAt(r, k) === T.number) {
    k = behindSizes(r, k);
    if (isWord(r, W.more, k)) k++;
    if (isWord(r, W.x, k) || kindAt(r, k) === T.times) k++;
    if (kindAt(r, k) === T.dash) k++;
    if (isWord(r, W.loop, k)) return false;
  }
  return isWord(r, W.ch, k) && !isLoopOfChain(r, k);
}

/** Behind a number and its sizes, "23[25:27:29]ch", "70-76-82 ch"; no list is longer. */
function behindSizes(r: Reader, ahead: number): number {
  const start = r.at;
  const open = kindAt(r, ahead + 1) === T.open && kindAt(r, ahead + 2) === T.number;
  const dash = r.known.sizes > 1 && kindAt(r, ahead + 1) === T.dash;
  if (!open && !dash) return ahead + 1;
  r.at += ahead;
  readNumbers(r);
  const k = r.at - start;
  r.at = start;
  return k;
}

/** "ch-9 loops around", "ch 2 sp": spaces, spoken of. */
function isLoopOfChain(r: Reader, k: number): boolean {
  let at = k + 1;
  if (kindAt(r, at) === T.dash) at++;
  if (kindAt(r, at) === T.number) at++;
  if (at === k + 1) return false;
  const sense = wordAt(r, at);
  return sense === W.loop || sense === W.sp || sense === W.arch;
}

/** "Make a row of chain stitches", "work a length of chains": as many as she likes. */
export function readSomeChains(r: Reader): ChainStep | null {
  const start = r.at;
  if (!eatWord(r, W.work)) return null;
  eatWord(r, W.a);
  const some =
    kindAt(r) === T.word && /^(?:row|series|length|line|number|lot|bunch)$/.test(spelled(r, r.at));
  if (!some || !isWord(r, W.of, 1) || !isWord(r, W.ch, 2) || kindAt(r, 3) === T.number) {
    r.at = start;
    return null;
  }
  r.at += isWord(r, W.st, 3) ? 4 : 3;
  const n = exampleOf(r);
  const span = { from: fromOf(r, start), to: toOf(r) };
  return { kind: 'chain', n, countsAs: null, open: n === null, multiple: null, ...span };
}

/** "(for example 20)", "(say 20)": how many somebody made. */
function exampleOf(r: Reader): Numbers | null {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  const words = r.text.slice(r.base + fromOf(r, r.at), r.base + (r.from[close] ?? 0));
  if (close < 0 || !/^\((?:for example|for instance|e\.?g\.?,?|say|i made) \d{1,3}$/i.test(words))
    return null;
  const at = close - 1;
  r.at = close + 1;
  return { values: [r.value[at] ?? 0], from: fromOf(r, at), to: r.to[at] ?? 0 };
}

/** The chain, with `startsChain` true. */
export function readChain(r: Reader): ChainStep | null {
  const start = r.at;
  while (eatWord(r, W.work) || eatWord(r, W.a) || eatWord(r, W.the));
  eatWord(r, W.foundation);
  eatWord(r, W.beginning);
  eatWord(r, W.another);
  let n = readNumbers(r);
  eatWord(r, W.more);
  if (isWord(r, W.x) || kindAt(r) === T.times) r.at++;
  if (kindAt(r) === T.dash) r.at++;
  const named = eatWord(r, W.ch);
  if (!named && !startsMultiple(r)) {
    r.at = start;
    return null;
  }
  const colon = kindAt(r) === T.colon ? 1 : 0;
  if (kindAt(r, colon) === T.open && isWord(r, W.ch, colon + 1) && kindAt(r, colon + 2) === T.close)
    r.at += colon + 3;
  // "30 chain sts"
  if (n && isWord(r, W.st)) r.at++;
  // "Foundation chain: 24"
  if (n === null && kindAt(r) === T.colon && kindAt(r, 1) === T.number) {
    if (clauseEnds(r, 2) || isWord(r, W.st, 2)) r.at++;
  }
  n ??= lengthBehind(r);
  const read = n === null ? readMultiple(r) : passMultiple(r);
  if (read) n ??= readSample(r, read);
  const multiple = read && { ...read, told: read.told || named };
  const open = n === null && (multiple !== null || readOpen(r));
  readManner(r);
  return {
    kind: 'chain',
    n,
    countsAs: null,
    open,
    multiple,
    from: fromOf(r, start),
    to: toOf(r),
  };
}

/** "Ch 25, a multiple of 4 plus 1", "ch 33 or any multiple of 11" */
function passMultiple(r: Reader): Multiple | null {
  const start = r.at;
  if (kindAt(r) === T.comma) r.at++;
  if (isWord(r, W.or)) r.at++;
  const multiple = r.at > start ? readMultiple(r) : null;
  if (!multiple) r.at = start;
  return multiple;
}

function lengthBehind(r: Reader): Numbers | null {
  const start = r.at;
  if (isLoosely(r)) r.at++;
  // "Chain up 3"
  if (isWord(r, W.up) && kindAt(r, 1) === T.number) r.at++;
  if (eatWord(r, W.of)) eatWord(r, W.about);
  eatWord(r, W.another);
  if (isWord(r, W.x) || kindAt(r) === T.times) r.at++;
  if (kindAt(r) === T.dash) r.at++;
  const numberAt = r.at;
  const n = readNumbers(r);
  if (!n || isLength(r) || stitchOwns(r, start, numberAt)) {
    r.at = start;
    return null;
  }
  if (isWord(r, W.st) || isWord(r, W.ch) || isWord(r, W.more)) {
    if (!isWord(r, W.ch) || kindAt(r, 1) !== T.number) r.at++;
  }
  const sum = plus(r) || plusInBracket(r);
  if (sum === 0) return n;
  return { from: n.from, to: toOf(r), values: n.values.map((v) => (v === null ? null : v + sum)) };
}

/** "ch 50+1", "ch 12 + 1" */
function plus(r: Reader): number {
  // "ch 140, + 3 to count as dc"
  const k = kindAt(r) === T.comma && kindAt(r, 1) === T.plus ? 1 : 0;
  if (kindAt(r, k) !== T.plus && !isWord(r, W.plus)) return 0;
  if (kindAt(r, k + 1) !== T.number) return 0;
  if (mayBeStitch(wordAt(r, k + 2))) return 0;
  const more = valueAt(r, k + 1);
  r.at += k + 2;
  if (isWord(r, W.ch) && kindAt(r, 1) !== T.number) r.at++;
  return more;
}

/** "ch 35 (+1 turning chain)", "ch 20 (+ 1 to turn)" */
function plusInBracket(r: Reader): number {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || close - r.at > 7 || kindAt(r, 1) !== T.plus || kindAt(r, 2) !== T.number)
    return 0;
  let turns = isWord(r, W.ch, close - 1 - r.at);
  for (let i = r.at + 3; i < close; i++) turns ||= r.word[i] === W.turn || r.word[i] === W.turning;
  if (!turns) return 0;
  const more = valueAt(r, 2);
  r.at = close + 1;
  return more;
}

/** "ch 2 dc": the two belong to the dc only when they touch it or "ch" stands off. */
function stitchOwns(r: Reader, start: number, numberAt: number): boolean {
  if (kindAt(r) !== T.word || !mayBeStitch(wordAt(r))) return false;
  return numberAt === start && isGlued(r, -1) && !isGlued(r, start - 1 - r.at);
}

const isLength = (r: Reader): boolean =>
  isWord(r, W.cm) ||
  isWord(r, W.mm) ||
  isWord(r, W.inch) ||
  isWord(r, W.metre) ||
  (isWord(r, W.in) && /long/.test(spelled(r, r.at + 1)));

const isLoosely = (r: Reader): boolean => kindAt(r) === T.word && /^loose/.test(spelled(r, r.at));

function readManner(r: Reader): void {
  if (isLoosely(r)) r.at++;
  if (isWord(r, W.more)) r.at++;
  if (
    isWord(r, W.for) &&
    (isWord(r, W.foundation, 1) || (isWord(r, W.the, 1) && isWord(r, W.foundation, 2)))
  ) {
    r.at += isWord(r, W.the, 1) ? 3 : 2;
    if (isWord(r, W.ch)) r.at++;
  }
}

/** "a multiple of 6 plus 3", "40 cm long", "as long as you like", "the length required". */
function readOpen(r: Reader): boolean {
  const start = r.at;
  const length = kindAt(r) === T.number;
  const words =
    isWord(r, W.as) ||
    isWord(r, W.multiple) ||
    isWord(r, W.long) ||
    isWord(r, W.to) ||
    isWord(r, W.of) ||
    isWord(r, W.desired) ||
    isWord(r, W.any) ||
    isWord(r, W.in) ||
    (isWord(r, W.a) && isWord(r, W.multiple, 1)) ||
    isWord(r, W.the) ||
    isWord(r, W.for);
  if (!length && !words) return false;
  let seen = false;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop && kindAt(r) !== T.semicolon) {
    if (kindAt(r) === T.comma || kindAt(r) === T.close || kindAt(r) === T.open) break;
    seen ||= isWord(r, W.multiple) || isWord(r, W.long) || isWord(r, W.desired) || isLength(r);
    r.at++;
  }
  if (!seen) r.at = start;
  return seen;
}
