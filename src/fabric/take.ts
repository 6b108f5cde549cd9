/** Taking places off the edge: the next stitch, the next space, the next single chain. */

import type { Span } from '../source/index.ts';
import {
  COUNTED,
  chainAt,
  type Edge,
  edgeOfPlaces,
  groupAround,
  groupEnd,
  isCorner,
  NAMED,
  rotated,
  SPACE,
} from './edge.ts';
import { fact, type Hands, placeOfStep, type Target } from './hands.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';
import { goesOnElsewhere } from './pieces.ts';
import { pastStart } from './skipped.ts';
import { endOfRuns, runsOf } from './special-runs.ts';

/**
 * How "st" treats spaces. passed: they are passed over. one: each is a place. chains: each of its
 * chains is a place. Stitches only, unless the row's sums say otherwise.
 */
export type Gaps = 'passed' | 'one' | 'chains';

/** The place that is wanted and not there. */
const MISSING: Target = { node: NOWHERE, space: false, entry: -1 };

const take = (hands: Hands, target: Target): Target => {
  hands.last = target;
  hands.first ??= target;
  return target;
};

export function lack(hands: Hands): Target {
  hands.missing++;
  hands.lackAt ??= placeOfStep(hands);
  return take(hands, MISSING);
}

/** Back to the row from a chain that was worked along, once that is used up. */
export function returnFromAside(hands: Hands): void {
  while (hands.aside && hands.pos >= hands.limit) {
    const { edge, pos, limit, back } = hands.aside;
    hands.edge = edge;
    hands.pos = pos;
    hands.limit = limit;
    hands.aside = back;
  }
}

/**
 * After several stitches in the last chain of a foundation the hands go on along its other side,
 * whether the words say so or not ("3 sc in last ch, sc in next 5").
 */
export function roundTheEnd(hands: Hands): boolean {
  const { edge, foundation, nodes, first } = hands;
  if (edge.kind !== 'foundation' || edge.ring || !foundation || !first) return false;
  if (hands.pieces) return false;
  if (hands.pos < edge.n || hands.limit < edge.n || first.node <= foundation.from) return false;
  const foot = firstAnchor(nodes, nodes.n - 1);
  if (foot !== foundation.from || firstAnchor(nodes, nodes.n - 2) !== foot) return false;
  const places: number[] = [];
  for (let id = foundation.from + 1; id <= first.node; id++) places.push(id);
  if (places.length === 0) return false;
  hands.edge = edgeOfPlaces(places, true, 'foundation');
  hands.pos = 0;
  hands.limit = hands.edge.n;
  hands.optionalLast = true;
  return true;
}

const stitchTarget = (edge: Edge, entry: number): Target => ({
  node: edge.node[entry] ?? NOWHERE,
  space: false,
  entry,
});

export const spaceTarget = (edge: Edge, entry: number): Target => ({
  node: edge.node[entry] ?? NOWHERE,
  space: true,
  entry,
});

/** Leaves a space of which some chains were taken one by one. */
function leaveInner(hands: Hands): void {
  if (hands.inner > 0) {
    noteChainsLeft(hands);
    notePartSkip(hands);
    hands.inner = 0;
    hands.pos++;
  }
}

/** A row that begins along a chain, which widens the piece, works it to its end. */
function noteChainsLeft(hands: Hands): void {
  const { edge, first, inner, pos } = hands;
  const have = edge.run[pos] ?? 0;
  const beginsHere = pos === 0 && edge.kind === 'row' && !edge.ring && first?.entry === 0;
  if (!beginsHere || first.space || inner >= have) return;
  const at = placeOfStep(hands);
  fact(hands, { kind: 'left', left: have - inner, have, used: inner, ofOwnChain: true, ...at });
}

/** "Sk 1 ch, dc in next dc" over a space of two chains. */
function notePartSkip({ partSkip, pos, inner, edge, facts }: Hands): void {
  if (!partSkip || partSkip.entry !== pos || partSkip.n !== inner) return;
  const { n, at } = partSkip;
  facts.push({ kind: 'space-size', named: n, found: edge.run[pos] ?? 0, ...at });
}

/** The stitch in the middle of a row: there is one where their number is odd. */
export function centreStitch({ edge, pos }: Hands): number | null {
  if (edge.counted % 2 === 0 || edge.ring) return null;
  let passed = 0;
  for (let i = 0; i < edge.n; i++) {
    if (edge.type[i] === COUNTED && passed++ === edge.counted >> 1) return i >= pos ? i : null;
  }
  return null;
}

/** Stitches between the hands and an entry further on. */
export function countedBefore({ edge, pos }: Hands, entry: number): number {
  let n = 0;
  for (let i = pos; i < entry; i++) if (edge.type[i] === COUNTED) n++;
  return n;
}

/**
 * Passing stitches on the way from one stitch to the next place that the words name takes a "skip".
 * From a space or behind a group it does not: the stitches beside it are passed as a matter of course.
 */
export function noteStray(hands: Hands, entry: number, at: Span): void {
  const { edge, last, pos } = hands;
  if (edge.open || edge.kind !== 'row' || hands.inner > 0) return;
  const isBehind = last !== null && !last.space && last.entry >= 0 && last.entry === pos - 1;
  if (!isBehind && (last === null || hands.skipped.to !== pos)) return;
  const left = countedBefore(hands, entry);
  if (left === 0) return;
  const have = edge.counted;
  fact(hands, { kind: 'left', left, have, used: have - left, ...at });
}

/** The next place for "st". */
export function takeStitch(hands: Hands, gaps: Gaps): Target {
  if (hands.aside) returnFromAside(hands);
  const { edge } = hands;
  if (gaps === 'chains' && hands.pos < hands.limit && edge.type[hands.pos] === SPACE) {
    return takeInner(hands);
  }
  leaveInner(hands);
  while (hands.pos < hands.limit) {
    const type = edge.type[hands.pos];
    if (type === COUNTED) {
      hands.used++;
      hands.tookStitch = true;
      return take(hands, stitchTarget(edge, hands.pos++));
    }
    if (type === SPACE && gaps === 'one') {
      hands.tookSpace = true;
      return take(hands, spaceTarget(edge, hands.pos++));
    }
    if (type === SPACE && gaps === 'chains') return takeInner(hands);
    hands.pos++;
  }
  const on = roundTheEnd(hands) || goesOnElsewhere(hands) || pastStart(hands);
  return on ? takeStitch(hands, gaps) : lack(hands);
}

/** One chain of the space at `pos`. */
function takeInner(hands: Hands): Target {
  const { edge } = hands;
  const entry = hands.pos;
  const node = chainAt(edge, entry, hands.inner++);
  if (hands.inner >= (edge.run[entry] ?? 1)) {
    hands.inner = 0;
    hands.pos++;
  }
  return take(hands, { node, space: false, entry });
}

/** The next single chain: of the foundation, or inside the next space. */
export function takeChain(hands: Hands): Target {
  const { edge } = hands;
  if (edge.kind === 'foundation') return takeStitch(hands, 'passed');
  for (let i = hands.pos; i < hands.limit; i++) {
    if (edge.type[i] !== SPACE) continue;
    if (i !== hands.pos) passOver(hands, i);
    return takeInner(hands);
  }
  // No chain is left: the turning chain at the row's end is one, and has a place at its top.
  return takeStitch(hands, 'passed');
}

/** Moves to entry `to`, remembering the counted places passed over without a "skip". */
export function passOver(hands: Hands, to: number): void {
  let passed = 0;
  for (let i = hands.pos; i < to; i++) if (hands.edge.type[i] === COUNTED) passed++;
  hands.passed = Math.max(hands.passed, passed);
  hands.pos = to;
  hands.inner = 0;
}

/** First entry from `pos` on that fits; -1 for none. */
export function seek(hands: Hands, fits: (entry: number) => boolean): number {
  const start = hands.pos + (hands.inner > 0 ? 1 : 0);
  for (let i = start; i < hands.limit; i++) if (fits(i)) return i;
  return -1;
}

export const isSpace = (hands: Hands, entry: number): boolean => hands.edge.type[entry] === SPACE;

/**
 * A round that begins at a place further on begins there: what it passes over on the way comes at
 * its end. The entry, which may have moved to the front.
 */
function beginAt(hands: Hands, entry: number): number {
  const { edge } = hands;
  const begins = edge.ring && edge.kind === 'row' && hands.first === null && hands.pos === 0;
  if (!begins || entry === 0 || hands.limit !== edge.n) {
    passOver(hands, entry);
    return entry;
  }
  passOver(hands, entry);
  hands.edge = rotated(edge, entry);
  hands.pos = 0;
  return 0;
}

export function takeSpaceAt(hands: Hands, at: number): Target {
  const entry = beginAt(hands, at);
  hands.pos = entry + 1;
  hands.tookSpace = true;
  return take(hands, spaceTarget(hands.edge, entry));
}

export function takeStitchAt(hands: Hands, at: number): Target {
  const entry = beginAt(hands, at);
  hands.pos = entry + 1;
  hands.used++;
  hands.tookStitch = true;
  return take(hands, stitchTarget(hands.edge, entry));
}

/** A place off the order of the edge (same, named, already passed): nothing is used up. */
export const takeOff = (hands: Hands, target: Target): Target => take(hands, target);

/**
 * Next to the start chain, a space that is one chain off: it is meant with the others of its round. -1: none.
 */
function besideStart(hands: Hands, chains: number): number {
  const { edge, nodes, bench } = hands;
  const next = seek(hands, (i) => isSpace(hands, i));
  const run = edge.run[next] ?? 0;
  if (next < 0 || Math.abs(run - chains) !== 1) return -1;
  const before = bench.kinds.kinds[nodes.kind[(edge.node[next] ?? 0) - 1] ?? 0];
  return before?.class === 'start' ? next : -1;
}

/** The next space, of `chains` chains where such a one is still ahead; `corner`: inside a group. */
export function nextSpace(hands: Hands, chains: number | null, corner: boolean): number {
  const { edge, nodes } = hands;
  const exact = (i: number): boolean =>
    isSpace(hands, i) && (chains === null || edge.run[i] === chains);
  if (corner) {
    const found = seek(hands, (i) => exact(i) && isCorner(edge, nodes, i));
    if (found >= 0) return found;
  }
  const found = seek(hands, exact);
  if (chains === null) return found;
  const begun = besideStart(hands, chains);
  if (begun >= 0 || found >= 0) return begun >= 0 ? begun : found;
  // A size that the row beneath has elsewhere is meant exactly; one that it never has is a slip.
  for (let i = 0; i < edge.n; i++) if (exact(i)) return -1;
  return seek(hands, (i) => isSpace(hands, i));
}

/** "Centre ch-2 sp" of a row: of as many spaces on each side the one between them; else -1. */
export function centreSpace({ edge, pos, limit }: Hands): number {
  if (edge.open || edge.ring || edge.spaces % 2 === 0) return -1;
  let left = edge.spaces >> 1;
  for (let i = 0; i < edge.n; i++) {
    if (edge.type[i] === SPACE && left-- === 0) return i >= pos && i < limit ? i : -1;
  }
  return -1;
}

/** The next gap between groups (granny squares without chains): the entry behind the gap. */
export function nextGroupGap(hands: Hands): number {
  const { edge, nodes } = hands;
  let i = hands.pos;
  while (i < hands.limit) {
    if (edge.type[i] !== COUNTED) {
      i++;
      continue;
    }
    const end = groupEnd(edge, nodes, i);
    // All of a first round stands in one ring: that makes it no group.
    if (groupEnd(edge, nodes, 0) >= edge.n) return i + 1;
    return end < hands.limit || edge.ring ? Math.min(end, hands.limit) : -1;
  }
  return -1;
}

/** Foot of the group in whose middle the round began; its first half lies at the round's end. */
function footOfBegun({ edge, nodes, pos }: Hands): number {
  if (!edge.ring || pos === 0) return NOWHERE;
  const first = isCorner(edge, nodes, 0) ? 1 : 0;
  if (edge.type[first] !== COUNTED) return NOWHERE;
  const foot = firstAnchor(nodes, edge.node[first] ?? 0);
  const last = edge.type.subarray(0, edge.n).lastIndexOf(COUNTED);
  if (firstAnchor(nodes, edge.node[last] ?? 0) !== foot) return NOWHERE;
  // All of a first round stands in one ring: that makes it no group.
  for (let i = first; i < last; i++)
    if (edge.type[i] === COUNTED && firstAnchor(nodes, edge.node[i] ?? 0) !== foot) return foot;
  return NOWHERE;
}

/** Is nothing ahead but the first half of the group in which the round began? */
export function onlyBegunAhead(hands: Hands): boolean {
  const { edge, nodes, limit } = hands;
  const begun = footOfBegun(hands);
  if (begun === NOWHERE) return false;
  for (let i = Math.max(behindGroupStoodIn(hands), behindSpaceStoodIn(hands)); i < limit; i++)
    if (edge.type[i] === COUNTED && firstAnchor(nodes, edge.node[i] ?? 0) !== begun) return false;
  return true;
}

/** Behind the ch-9 loop of "dc, ch 9, dc" its other dc is no group: the entry behind that. */
function behindSpaceStoodIn({ edge, nodes, pos, last }: Hands): number {
  const stands = last?.space === true && last.entry === pos - 1 && edge.kind === 'row';
  return stands && isCorner(edge, nodes, pos - 1) ? groupEnd(edge, nodes, pos) : pos;
}

/** Behind "centre dc of shell" the rest of that shell is no group of its own: the entry behind it. */
function behindGroupStoodIn({ edge, nodes, pos, last }: Hands): number {
  const stands =
    last !== null && !last.space && last.entry === pos - 1 && edge.type[pos] === COUNTED;
  if (!stands || edge.kind !== 'row') return pos;
  const end = groupEnd(edge, nodes, pos - 1);
  return end > pos && end < edge.n ? end : pos;
}

/** Is no group ahead but the one stood in, and that in which the round began? */
export function noGroupAhead(hands: Hands): boolean {
  const { edge, pos, limit } = hands;
  const behind = behindGroupStoodIn(hands);
  if (onlyBegunAhead(hands)) return true;
  if (behind === pos) return false;
  for (let i = behind; i < limit; i++) if (edge.type[i] === COUNTED) return false;
  return true;
}

/** Last entry of the group in whose midst the hands stand; -1: in none. */
export function endOfGroupStoodIn({ edge, nodes, pos }: Hands): number {
  if (pos === 0 || edge.kind !== 'row' || edge.type[pos - 1] !== COUNTED) return -1;
  const end = groupEnd(edge, nodes, pos - 1);
  return end > pos ? end - 1 : -1;
}

/** The `nth` stitch (from 1) of the group in whose midst the hands stand, where it is still ahead; -1: none. */
export function ofGroupStoodIn(hands: Hands, nth: number): number {
  const { edge, nodes, pos } = hands;
  const end = endOfGroupStoodIn(hands);
  const ahead = nth - 1 - (end < 0 ? nth : groupAround(edge, nodes, pos - 1).at);
  if (ahead <= 0) return -1;
  let left = ahead;
  for (let i = pos; i <= end; i++) if (edge.type[i] === COUNTED && --left === 0) return i;
  return -1;
}

/**
 * The next run of two or more stitches worked into one place; not the one in which the round began. `word`:
 * the group's name; where the designer has told what it is made of, the next such.
 */
export function nextGroup(hands: Hands, word = ''): { from: number; to: number } | null {
  const special = word === '' ? undefined : hands.bench.specials.get(word);
  const runs = special ? runsOf(special) : NO_RUNS;
  const named = runs.length > 0 ? groupFrom(hands, runs) : null;
  return named ?? groupFrom(hands, NO_RUNS);
}

const NO_RUNS: readonly number[] = [];

/** Has the row beneath groups that are what the designer's own stitch of this name is told to be? */
export function hasGroupsNamed(hands: Hands, word: string): boolean {
  const special = word === '' ? undefined : hands.bench.specials.get(word);
  const runs = special ? runsOf(special) : NO_RUNS;
  if (runs.length === 0 || hands.edge.kind !== 'row') return false;
  const { pos, last } = hands;
  hands.pos = 0;
  hands.last = null;
  const found = groupFrom(hands, runs) !== null;
  hands.pos = pos;
  hands.last = last;
  return found;
}

function groupFrom(hands: Hands, runs: readonly number[]): { from: number; to: number } | null {
  const { edge, nodes } = hands;
  const begun = footOfBegun(hands);
  const own = edge.reversed ? [...runs].reverse() : runs;
  for (let i = behindGroupStoodIn(hands); i < hands.limit; ) {
    const end = groupEnd(edge, nodes, i);
    const isBegun = begun !== NOWHERE && firstAnchor(nodes, edge.node[i] ?? 0) === begun;
    const counted = edge.type[i] === COUNTED;
    const isGroup = counted && end - i > 1;
    // Two shells in one place are two.
    const to = isGroup && own.length > 0 ? endOfRuns(edge, i, end, own) : -1;
    if (to > 0) return { from: i, to };
    if (isGroup && !isBegun && own.length === 0) return { from: i, to: end };
    // The slip stitch to where the round begins stands in the place of its first group, and is none of it.
    i = counted ? Math.max(end, i + 1) : i + 1;
  }
  return null;
}

/** Middle of a group: its space where it has one, else its middle stitch. */
export function middleOf(hands: Hands, group: { from: number; to: number }): number {
  const spaces: number[] = [];
  const stitches: number[] = [];
  for (let i = group.from; i < group.to; i++) {
    if (hands.edge.type[i] === SPACE) spaces.push(i);
    else if (hands.edge.type[i] === COUNTED) stitches.push(i);
  }
  const from = spaces.length > 0 ? spaces : stitches;
  return from[(from.length - 1) >> 1] ?? group.from;
}

/**
 * "Skip 2 dc, 5 dc in centre dc of group": the middle of the group whose first stitches are passed; or -1.
 * `isOther`: words name the next group, which is none that was begun to be worked.
 */
export function middleOfBegun(hands: Hands, isOther: boolean): number {
  const { edge, nodes, pos, last } = hands;
  let from = pos;
  while (from > 0 && edge.type[from - 1] === COUNTED && groupEnd(edge, nodes, from - 1) > pos)
    from--;
  if (from === pos || edge.kind !== 'row' || edge.type[pos] !== COUNTED) return -1;
  const to = groupEnd(edge, nodes, from);
  if (to - from < 3) return -1;
  const middle = middleOf(hands, { from, to });
  // Stitches of it were worked already: another one is meant, unless its middle is the next stitch.
  const isIn = last && !last.space && last.entry >= from && last.entry < to;
  if (isIn && (isOther || middle !== pos)) return -1;
  return middle >= pos && edge.type[middle] === COUNTED ? middle : -1;
}

/** Entry of the first named-only place from `pos` on, with nothing but spaces before it; or -1. */
export function namedAhead(hands: Hands): number {
  for (let i = hands.pos; i < hands.limit; i++) {
    if (hands.edge.type[i] === NAMED) return i;
    if (hands.edge.type[i] === COUNTED) return -1;
  }
  return -1;
}
