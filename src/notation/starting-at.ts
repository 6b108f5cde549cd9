/** Where work starts along a chain: "beginning in 2nd ch from hook", "from the second chain on". */

import { readCountsAs } from './counts-as.ts';
import { mayBeStitch } from './dictionary.ts';
import { readPlace, readPlaceAfterPreposition } from './place.ts';
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
import type { Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { CountsAs, Place, Step } from './tree.ts';
import { readWork } from './work.ts';

/** "Beginning in 2nd ch from hook, sc in each ch across": the first of the places that follow. */
export function startsIn(r: Reader): Step | null {
  if (isWord(r, W.from, 1) && kindAt(r, isWord(r, W.the, 2) ? 3 : 2) === T.ordinal) {
    // "starting from the second chain from the hook"
    return startsFrom(r);
  }
  const side = fromSide(r);
  if (side) return side;
  if (isWord(r, W.with, 1)) return startsWith(r);
  if (!isWord(r, W.in, 1)) return isWord(r, W.on, 1) ? startsOn(r) : null;
  const start = r.at++;
  const place = readPlaceAfterPreposition(r);
  const first = place ? firstOf(r, place, start) : null;
  if (!first) r.at = start;
  return first;
}

/** "Starting from the right side of your work, …": where every row begins. */
function fromSide(r: Reader): Step | null {
  if (!(isWord(r, W.from, 1) || isWord(r, W.on, 1) || isWord(r, W.at, 1))) return null;
  let k = isWord(r, W.the, 2) ? 3 : 2;
  if (!/^(?:right|left|rs|ws)$/.test(spelled(r, r.at + k))) return null;
  k += spelled(r, r.at + k + 1) === 'hand' ? 2 : 1;
  if (!isWord(r, W.side, k)) return null;
  k++;
  while (k < 9 && !clauseEnds(r, k) && kindAt(r, k) === T.word && !mayBeStitch(wordAt(r, k))) k++;
  if (!clauseEnds(r, k)) return null;
  const start = r.at;
  r.at += k;
  return { kind: 'remark', from: fromOf(r, start), to: toOf(r) };
}

/** "Beginning with the third ch from hook (the first 2 count as a dc), dc in each ch across" */
function startsWith(r: Reader): Step | null {
  if (kindAt(r, isWord(r, W.the, 2) ? 3 : 2) !== T.ordinal) return null;
  const start = r.at;
  r.at += 2;
  const place = readPlace(r);
  const first = place?.fromHook ? firstOf(r, place, start) : null;
  if (!first) r.at = start;
  return first;
}

/** "2nd ch from hook, sc in each ch": the place just read is the first, and the others follow it. */
function firstOf(r: Reader, place: Place, start: number): Step | null {
  const stands = chainsStandFor(r);
  if (kindAt(r) === T.comma) r.at++;
  const told = startTold(r, place, start);
  if (told) return told;
  if (kindAt(r) === T.word && spelled(r, r.at) === 'add') r.at++;
  const work = place.fromHook ? readWork(r) : null;
  const each = work?.place ?? (work?.until ? { ...place, ...ALL, until: work.until } : null);
  if (!work || !each || each.pick !== 'each') return null;
  const countsAs = stands ?? work.countsAs;
  return { ...work, place, alsoIn: [each], until: null, countsAs, from: fromOf(r, start) };
}

/** "(the first 2 chs count as the 1st dc of the row)" behind the place. */
function chainsStandFor(r: Reader): CountsAs | null {
  const close = kindAt(r) === T.open ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || close - r.at > 16) return null;
  const start = r.at++;
  const stands = readCountsAs(r, close);
  r.at = stands ? close + 1 : start;
  return stands;
}

function startsFrom(r: Reader): Step | null {
  const start = r.at;
  r.at += 2;
  const place = readPlace(r);
  if (place && kindAt(r) === T.comma) r.at++;
  const told = place?.fromHook ? startTold(r, place, start) : null;
  if (told) return told;
  if (place?.fromHook && place.nth === 2)
    return { kind: 'remark', from: fromOf(r, start), to: place.to };
  r.at = start;
  return null;
}

/** "21 ch, from the second chain on the hook, 20 sc": along the chain just made. */
export function fromHook(r: Reader, run: Run): 'done' | null {
  const ordinal = isWord(r, W.the, 1) ? 2 : 1;
  if (kindAt(r, ordinal) !== T.ordinal || run.out.at(-1)?.kind !== 'chain') return null;
  const start = r.at++;
  const place = readPlace(r);
  const onHook = isWord(r, W.on) && isWord(r, W.hook, isWord(r, W.the, 1) ? 2 : 1);
  if (onHook) r.at += isWord(r, W.the, 1) ? 3 : 2;
  if (kindAt(r) === T.comma) r.at++;
  const work = place?.pick === 'nth' && (onHook || place.fromHook) ? readWork(r) : null;
  const [n] = work?.n?.values ?? [];
  if (!work || !place || work.place || work.until || typeof n !== 'number' || n < 2) {
    r.at = start;
    return null;
  }
  const { from, to } = work;
  const rest = { from, to, values: [n - 1] };
  const first = { ...place, fromHook: true };
  const one = { ...work, n: null, numberAfter: false };
  run.out.push({ ...one, place: first });
  run.out.push({ ...one, place: { ...first, pick: 'next', n: rest, nth: null, fromHook: false } });
  return 'done';
}

/** "Commence on centre of 3 tr; …": where the row is taken up. */
function startsOn(r: Reader): Step | null {
  const start = r.at++;
  const place = readPlaceAfterPreposition(r);
  const first = place?.fromHook ? firstOf(r, place, start) : null;
  if (first) return first;
  if (place && !place.fromHook && (place.nouns.length > 0 || place.of) && clauseEnds(r)) {
    const span = { from: fromOf(r, start), to: toOf(r) };
    return { kind: 'join', place, with: null, ring: false, yarn: 'yarn', ...span };
  }
  r.at = start;
  return null;
}

/**
 * "Starting in 2nd ch from hook, sc in next 4 ch" passes over the chains before that one; "starting
 * in the first st" says nothing new. `null`: the work behind goes on to the end.
 */
function startTold(r: Reader, place: Place, start: number): Step | null {
  const span = { from: fromOf(r, start), to: place.to };
  if (place.pick === 'first' || place.pick === 'same') return { kind: 'remark', ...span };
  const nth = place.nth ?? 0;
  if (!place.fromHook || nth < 2) return null;
  const behind = r.at;
  const work = readWork(r);
  r.at = behind;
  const many = work?.until?.kind === 'end' && (work.n?.values[0] ?? 1) > 1;
  if ((work?.until && !many) || work?.place?.pick === 'each' || work?.place?.fromHook) return null;
  const n = { values: [nth - 1], from: place.from, to: place.to };
  return {
    kind: 'skip',
    place: { ...place, pick: 'first', n, nth: null, fromHook: false },
    countsAs: null,
    ...span,
  };
}

const ALL = { pick: 'each', nth: null, fromHook: false, each: true } as const;
