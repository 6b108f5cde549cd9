/** "(counts as dc and ch 1 here and throughout)", "does not count as a st", "(=1 tr)", "(1 tr + 2 ch)". */

import { formOf } from './dictionary.ts';
import {
  eatWord,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  toOf,
  valueAt,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { readStitch } from './stitch.ts';
import { T } from './tokens.ts';
import type { CountsAs } from './tree.ts';

type Draft = { -readonly [K in keyof CountsAs]: CountsAs[K] };

/** What the words up to `end` say of a chain, or `null`; then the reader stays where it was. */
export function readCountsAs(r: Reader, end: number): CountsAs | null {
  const start = r.at;
  const said = verb(r, end);
  if (said === null) {
    r.at = start;
    return null;
  }
  const draft: Draft = {
    counts: said === 'counts',
    named: namesChain(r, start),
    stem: null,
    stitches: 1,
    chains: 0,
    throughout: false,
    from: fromOf(r, start),
    to: 0,
  };
  // "Counts as part of 1st cluster": a leg, and no stitch of its own.
  if (draft.counts && isPartOf(r)) draft.counts = false;
  else if (draft.counts || isWord(r, W.a)) what(r, draft, end);
  if (draft.counts && isWord(r, W.of) && ofCluster(r, end)) {
    draft.counts = false;
    draft.stem = null;
  }
  while (r.at < end) {
    if (isWord(r, W.throughout)) draft.throughout = true;
    if (isWord(r, W.here) && isWord(r, W.and, 1)) draft.throughout = true;
    r.at++;
  }
  draft.to = toOf(r);
  return draft;
}

/** "part of 1st cluster", "first half of dc2tog", "the first leg of the cluster" */
function isPartOf(r: Reader): boolean {
  let k = isWord(r, W.the) || isWord(r, W.a) ? 1 : 0;
  if (kindAt(r, k) === T.ordinal) k++;
  return isOneOf(r, PARTS, k) && isWord(r, W.of, k + 1);
}

const PARTS = wordsOf('part half leg');

/** "(Counts as first tr) of first cluster", "of the 3-tr cluster": a leg of it. */
function ofCluster(r: Reader, end: number): boolean {
  for (let i = r.at + 1; i < end && i <= r.at + MOST_BEFORE_CLUSTER; i++)
    if (kindAt(r, i - r.at) === T.word && formOf(wordAt(r, i - r.at))?.shape === 'cluster')
      return true;
  return false;
}

/** "the", "first", "3", "-", "tr", "cluster" */
const MOST_BEFORE_CLUSTER = 6;

function namesChain(r: Reader, start: number): boolean {
  for (let i = start; i < r.at; i++) if (r.word[i] === W.ch || r.word[i] === W.tch) return true;
  return false;
}

/** The verb may stand behind "this", "ch 3", "beg ch-3", "will". */
function verb(r: Reader, end: number): 'counts' | 'counts not' | null {
  let said: 'counts' | 'counts not' = 'counts';
  for (let guard = 0; guard < 10 && r.at < end; guard++) {
    const sense = wordAt(r);
    if (guard === 0 && kindAt(r) === T.number && !chainsBehind(r)) return null;
    if (sense === W.count) {
      r.at++;
      // "(Count: 28 sts)" states a count, and "count your stitches" asks for one.
      if (kindAt(r) === T.colon || kindAt(r) === T.number) return null;
      if (kindAt(r) === T.word && /^(?:your|the|all)$/.test(spelled(r, r.at))) return null;
      while (eatWord(r, W.as) || eatWord(r, W.for));
      return said;
    }
    if (standsFor(r)) {
      r.at += 2;
      return said;
    }
    const never = kindAt(r) === T.word && spelled(r, r.at) === 'never';
    if (never || sense === W.not || sense === W.dont || sense === W.no) said = 'counts not';
    else if (sense === W.for || sense === W.as || sense === W.stands) {
      if (sense !== W.as && !isWord(r, W.for, 1)) return null;
    } else if (kindAt(r) === T.equals) {
      if (statesCount(r)) return null;
      r.at++;
      return said;
    } else if (kindAt(r) === T.open) {
      // "(ch 3 (counts as dc), 2 dc) in sp": what the inner bracket says is the chain's.
      return null;
    } else if (kindAt(r) === T.word && (sense === 0 || readStitchHere(r))) return null;
    r.at++;
  }
  return null;
}

/** "(to stand for 1 tr)", "(equals to 1 tr)" */
const standsFor = (r: Reader): boolean =>
  isWord(r, W.stands)
    ? isWord(r, W.for, 1)
    : isWord(r, W.to, 1) && /^equals?$/.test(spelled(r, r.at));

/** "(= 24 sc)", "(= 24)": no chain stands for as many; that is the row's count. */
const statesCount = (r: Reader): boolean =>
  kindAt(r, 1) === T.number && (valueAt(r, 1) > MOST_IN_CHAIN || kindAt(r, 2) === T.close);

/** A chain stands for no more stitches than these, spaces among them. */
const MOST_IN_CHAIN = 4;

/** "3 ch", "3 skipped chs", "3 sk chs": the chains that stand for a stitch. */
const chainsBehind = (r: Reader): boolean => {
  const adjective = isWord(r, W.skip, 1) || isWord(r, W.skipped, 1);
  return isWord(r, W.ch, adjective ? 2 : 1);
};

function readStitchHere(r: Reader): boolean {
  const start = r.at;
  const stitch = readStitch(r);
  r.at = start;
  return stitch !== null;
}

/** "a dc and ch 1", "first hdc", "2 dc", "1 tr, 2 ch", "st". */
function what(r: Reader, draft: Draft, end: number): void {
  let stitches = 0;
  for (let guard = 0; guard < 12 && r.at < end; guard++) {
    const number = kindAt(r) === T.number ? valueAt(r) : 0;
    const k = number > 0 ? (kindAt(r, 1) === T.dash ? 2 : 1) : 0;
    if (isWord(r, W.ch, k)) {
      r.at += k + 1;
      draft.chains += number > 0 ? number : chainNumber(r);
      if (isWord(r, W.sp)) r.at++;
      continue;
    }
    if (isWord(r, W.st, k) && stitches === 0) {
      stitches = number || 1;
      r.at += k + 1;
      continue;
    }
    const start = r.at;
    r.at += k;
    const stitch = k > 0 || kindAt(r) === T.word ? readStitch(r) : null;
    if (stitch && stitch.stem !== null && stitches === 0) {
      draft.stem = stitch.stem;
      stitches = number || 1;
    } else {
      r.at = start;
      if (!isFiller(r)) break;
      r.at++;
    }
  }
  if (stitches > 0) draft.stitches = Math.min(stitches, 99);
}

function chainNumber(r: Reader): number {
  if (kindAt(r) === T.dash) r.at++;
  if (kindAt(r) !== T.number) return 1;
  const n = valueAt(r);
  r.at++;
  return Math.min(n, 99);
}

const isFiller = (r: Reader): boolean => {
  const sense = wordAt(r);
  const kind = kindAt(r);
  if (kind === T.ordinal || kind === T.comma || kind === T.plus) return true;
  return sense === W.a || sense === W.the || sense === W.and || sense === W.beginning;
};

/** "(first dc + ch 1)", "(1 tr + 2 ch)", "(as 1 dc)": no verb, only what it stands for. */
export function readStandsFor(r: Reader, end: number): CountsAs | null {
  const start = r.at;
  const draft: Draft = {
    counts: true,
    named: false,
    stem: null,
    stitches: 1,
    chains: 0,
    throughout: false,
    from: fromOf(r, start),
    to: 0,
  };
  eatWord(r, W.as);
  what(r, draft, end);
  // "ch 2 (25 sc)": no chain stands for as many; that is the row's count.
  if (r.at < end || draft.stem === null || draft.stitches > MOST_IN_CHAIN) {
    r.at = start;
    return null;
  }
  draft.to = toOf(r);
  return draft;
}
