/** Standing orders in prose: "The ch 1 does not count as a st.", "Do not turn.", "Join means: …". */
import { readCountsAs } from './counts-as.ts';
import { statedTerms } from './cues.ts';
import { readLoop } from './loops.ts';
import { readPlaceAfterPreposition } from './place.ts';
import {
  fromOf,
  isOneOf,
  isWord,
  openReader,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readRun } from './steps.ts';
import { readStitch } from './stitch.ts';
import { FIRST, T } from './tokens.ts';
import type { Place, StandingOrder } from './tree.ts';
import { NO_VOCABULARY } from './vocabulary.ts';

/** Orders that hold from here on, in the order in which they stand; spans count from `from`. */
export function readOrders(text: string, from: number, to: number): StandingOrder[] {
  const orders: StandingOrder[] = [];
  const stated = statedTerms(text, from, to);
  if (stated) orders.push({ kind: 'terms', terms: stated.terms, ...stated.span });
  const r = openReader(text, { from, to }, NO_VOCABULARY, readRun);
  let start = FIRST;
  for (let i = FIRST; i < r.count; i++) {
    const ends = r.kind[i] === T.stop || r.kind[i] === T.end || r.kind[i] === T.semicolon;
    if (!ends) continue;
    sentence(r, start, i, orders);
    start = i + 1;
  }
  return orders;
}

type Rule = (r: Reader, start: number, end: number) => StandingOrder | null;

/** Each rule with the words of which one must stand in the sentence. */
const RULES: readonly (readonly [Rule, readonly number[]])[] = [
  [startChain, [W.count]],
  [turningChain, [W.turn]],
  [turning, [W.turn, W.turning]],
  [joining, [W.join, W.spiral, W.continue]],
  [loops, [W.throughout, W.all, W.every, W.work, W.working]],
  [chainsCount, [W.count]],
  [timesMean, [W.times]],
];
/** By sense: a bit for each rule that the word speaks for. */
const SPEAKS_FOR = new Uint8Array(1 << 12);
RULES.forEach(([, words], rule) => {
  for (const sense of words) SPEAKS_FOR[sense] = (SPEAKS_FOR[sense] ?? 0) | (1 << rule);
});

function sentence(r: Reader, start: number, end: number, orders: StandingOrder[]): void {
  let told = 0;
  for (let i = start; i < end; i++) {
    const sense = r.word[i] ?? -1;
    if (sense > 0) told |= SPEAKS_FOR[sense] ?? 0;
  }
  for (let i = 0; told >> i > 0; i++) {
    if (((told >> i) & 1) === 0) continue;
    r.at = start;
    const order = RULES[i]?.[0](r, start, end);
    if (order) orders.push(order);
  }
}

const span = (r: Reader, start: number, end: number): { from: number; to: number } => ({
  from: fromOf(r, start),
  to: r.to[end - 1] ?? fromOf(r, start),
});

/** First token of these senses, or -1. */
function find(r: Reader, start: number, end: number, ...senses: number[]): number {
  for (let i = start; i < end; i++) {
    const sense = r.word[i]!;
    if (sense >= 0 && senses.includes(sense)) return i;
  }
  return -1;
}

/** "The ch 1 at the start … does not count as a st", "Beg ch-3 counts as dc throughout". */
function startChain(r: Reader, start: number, end: number): StandingOrder | null {
  // "If you prefer ch 1 to count as first st, do it that way", "I never ch 1 and count it": nobody's rule here.
  if (/^(?:if|i)$/.test(spelled(r, start))) return null;
  const count = find(r, start, end, W.count);
  const chain = find(r, start, count, W.ch, W.tch);
  if (count === start && chain < 0) return countedFirst(r, start, end);
  if (count < 0 || chain < 0) return null;
  // "Ch sps do not count as sts": of spaces.
  if (r.word[chain + 1] === W.sp || r.word[chain + 1] === W.loop) return null;
  const n = chainNumber(r, chain);
  r.at = chain + 1;
  const negative = find(r, chain, count, W.not, W.dont, W.no) >= 0 || isNever(r, chain, count);
  r.at = count;
  const said = readCountsAs(r, end);
  if (!said) return null;
  const startWord = find(r, start, count, W.beginning, W.turning, W.tch, W.top) >= 0;
  if (n === null && !startWord && !said.throughout && find(r, start, count, W.st) >= 0) return null;
  const countsAs = { ...said, counts: said.counts && !negative };
  return { kind: 'start-chain', n, countsAs, ...span(r, start, end) };
}

/** "Count beginning ch-3 as 1 dc." */
function countedFirst(r: Reader, start: number, end: number): StandingOrder | null {
  const chain = find(r, start, end, W.ch, W.tch);
  const as = find(r, Math.max(start, chain), end, W.as);
  if (chain < 0 || as < 0 || find(r, start, chain, W.beginning, W.turning) < 0) return null;
  r.at = r.kind[as + 1] === T.number ? as + 2 : as + 1;
  const stitch = readStitch(r);
  if (!stitch?.stem) return null;
  const said = { stem: stitch.stem, stitches: 1, chains: 0, throughout: true };
  const at = span(r, start, end);
  return {
    kind: 'start-chain',
    n: chainNumber(r, chain),
    countsAs: { counts: true, named: true, ...said, ...at },
    ...at,
  };
}

function isNever(r: Reader, from: number, to: number): boolean {
  for (let i = from; i < to; i++)
    if (r.kind[i] === T.word && /^never$/.test(spelled(r, i))) return true;
  return false;
}

/** "ch 3", "ch-3", "3 ch", "3ch" around a token. */
function chainNumber(r: Reader, chain: number): number | null {
  const k = r.kind[chain + 1] === T.dash ? chain + 2 : chain + 1;
  if (r.kind[k] === T.number) return r.value[k] ?? null;
  if (r.kind[chain - 1] === T.number) return r.value[chain - 1] ?? null;
  return null;
}

/** "Ch 3 to turn each row", "turning chain is 2 ch". */
function turningChain(r: Reader, start: number, end: number): StandingOrder | null {
  const chain = find(r, start, end, W.ch);
  if (chain < 0) return null;
  const n = chainNumber(r, chain);
  const turn = find(r, chain, end, W.turn);
  const each = find(r, start, end, W.each, W.every, W.throughout, W.all);
  if (n === null || turn < 0 || each < 0 || find(r, start, end, W.count) >= 0) return null;
  return { kind: 'turning-chain', n, ...span(r, start, end) };
}

/** "do not turn", "Turn at the end of each row", "turn work after every round". */
function turning(r: Reader, start: number, end: number): StandingOrder | null {
  const turn = find(r, start, end, W.turn, W.turning);
  if (turn < 0) return null;
  const negative = find(r, Math.max(start, turn - 3), turn, W.not, W.dont, W.without) >= 0;
  const each = find(r, turn, end, W.each, W.every, W.throughout, W.all) >= 0;
  if (negative) {
    for (let i = turn; i < end; i++)
      if (isOneOf(r, UNLESS, i - r.at))
        return { kind: 'turning', turn: false, ...span(r, start, end) };
    return { kind: 'turning', turn: false, ...span(r, start, end) };
  }
  if (!each || find(r, start, turn, W.ch) >= 0) return null;
  return { kind: 'turning', turn: true, ...span(r, start, end) };
}

/** "Join means: sl st in first sc", "Join each round with sl st to top of ch 3", "do not join". */
function joining(r: Reader, start: number, end: number): StandingOrder | null {
  const join = find(r, start, end, W.join);
  const spiral = find(r, start, end, W.spiral);
  const continuous = isContinuous(r, start, end);
  if (join < 0) {
    if (spiral < 0 && !continuous) return null;
    return { kind: 'joining', join: false, place: null, ...span(r, start, end) };
  }
  const negative = find(r, Math.max(start, join - 4), join, W.not, W.dont, W.without) >= 0;
  if (negative) return { kind: 'joining', join: false, place: null, ...span(r, start, end) };
  const every = find(r, start, end, W.each, W.every, W.all, W.round) >= 0;
  const means = meansAt(r, join, end);
  if (!every && !means) return null;
  return { kind: 'joining', join: true, place: joinPlace(r, join, end), ...span(r, start, end) };
}

function isContinuous(r: Reader, start: number, end: number): boolean {
  for (let i = start; i < end; i++) {
    if (isOneOf(r, CONTINUOUS, i - r.at)) return find(r, i, end, W.round) >= 0;
  }
  return false;
}

const meansAt = (r: Reader, from: number, to: number): boolean => {
  for (let i = from; i < to && i < from + 4; i++) {
    if (r.kind[i] === T.colon || r.kind[i] === T.equals) return true;
    if (r.kind[i] === T.word && /^means?$/.test(spelled(r, i))) return true;
  }
  return false;
};

/** The first slip stitch's place behind the word. */
function joinPlace(r: Reader, join: number, end: number): Place | null {
  for (r.at = join; r.at < end; r.at++) {
    const start = r.at;
    const stitch = readStitch(r);
    if (stitch?.stem !== 'ss') {
      r.at = start;
      continue;
    }
    const from = r.at;
    if (isWord(r, W.to)) r.kind[r.at] === T.word && r.at++;
    else {
      const place = readPlaceAfterPreposition(r);
      return place && r.at <= end ? place : null;
    }
    r.at = from;
    return null;
  }
  return null;
}

const CONTINUOUS = wordsOf('continuous continuously');
const UNLESS = wordsOf('unless otherwise');

/** "Work in back loops only throughout", "all sts are worked in BLO unless stated". */
function loops(r: Reader, start: number, end: number): StandingOrder | null {
  let each = find(r, start, end, W.throughout, W.all, W.every) >= 0;
  for (let i = start; i < end; i++) {
    each ||= isOneOf(r, UNLESS, i - r.at);
    // "All of Rnd 4 is worked in back loops": of that one.
    if ((r.word[i] === W.row || r.word[i] === W.round) && r.kind[i + 1] === T.number) return null;
  }
  if (!each) return null;
  for (r.at = start; r.at < end; r.at++) {
    const loop = readLoop(r);
    if (loop !== null && r.at <= end) return { kind: 'loops', loop, ...span(r, start, end) };
  }
  return null;
}

/** "Chains count as stitches", "ch sps are not counted". */
function chainsCount(r: Reader, start: number, end: number): StandingOrder | null {
  const count = find(r, start, end, W.count);
  const chain = find(r, start, count, W.ch, W.chsp);
  if (count < 0 || chain < 0 || chainNumber(r, chain) !== null) return null;
  const plural =
    /s$/i.test(spelled(r, chain)) ||
    wordAt(r, 0) === W.each ||
    find(r, start, chain, W.each, W.every, W.all) >= 0;
  if (!plural || find(r, start, count, W.beginning, W.turning) >= 0) return null;
  const negative = find(r, start, end, W.not, W.dont) >= 0;
  return { kind: 'chains-count', count: !negative, ...span(r, start, end) };
}

/** "rep from * 5 times means 5 more times". */
function timesMean(r: Reader, start: number, end: number): StandingOrder | null {
  const times = find(r, start, end, W.times);
  if (times < 0 || find(r, start, times, W.repeat) < 0) return null;
  let means = -1;
  for (let i = times; i < end; i++)
    if (r.kind[i] === T.word && /^means?$/.test(spelled(r, i))) means = i;
  if (means < 0) return null;
  const more = find(r, means, end, W.more) >= 0;
  return { kind: 'times', more, ...span(r, start, end) };
}
