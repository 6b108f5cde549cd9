/** Stitches: how many, what they are made of, and into which places they go. */
import {
  type Place,
  type StitchTerm,
  stemOf,
  type Until,
  type WorkStep,
} from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import type { Here, RowContext } from '../context.ts';
import { COUNTED, type Edge, foundationEdge } from '../edge.ts';
import {
  atStart,
  countedSince,
  fact,
  type Hands,
  make,
  numberFor,
  originFor,
  remaining,
  remainingSpaces,
  spanAt,
  type Target,
} from '../hands.ts';
import { internKind, kindOf, type NodeClass } from '../kinds.ts';
import { addAnchor, firstAnchor } from '../nodes.ts';
import {
  gapsOf,
  hasNext,
  limitOf,
  nounOf,
  ofEach,
  ringTarget,
  startChainEntry,
  startChainLimit,
  takePlace,
  workStandingFirst,
} from '../place.ts';
import { ask } from '../readings.ts';
import { runAlong } from '../run.ts';
import { isSlip, moveAt } from '../shape.ts';
import { takeStitch } from '../take.ts';
import { countFromHook, skippedChains } from './from-hook.ts';
import { moveStart } from './move.ts';
import { isOwnChain, isPicot, makePicot, workBack } from './own-chain.ts';

/** Number of the kind that a stitch makes. */
export function kindFor(hands: Hands, stitch: StitchTerm): number {
  const memo = hands.kindsOf.get(stitch);
  if (memo && memo.loop === hands.loop && (stitch.stem !== null || memo.stem === hands.stem)) {
    hands.stem = memo.stem;
    return memo.kind;
  }
  const kind = newKindFor(hands, stitch);
  hands.kindsOf.set(stitch, { kind, stem: hands.stem, loop: hands.loop });
  return kind;
}

function newKindFor(hands: Hands, stitch: StitchTerm): number {
  const { bench } = hands;
  let stem = stitch.stem ? stemOf(stitch.stem, bench.terms) : hands.stem;
  if (stem === null) {
    const other = stemOf(stitch.stem ?? '', bench.terms === 'US' ? 'UK' : 'US');
    fact(hands, { kind: 'undefined', word: stitch.stem ?? '', ...spanAt(hands, stitch) });
    stem = other ?? hands.stem;
  }
  if (stitch.stem && stem !== 'slip') hands.stem = stem;
  const single = stitch.shape === 'increase' || stitch.shape === 'one';
  const counted = stem !== 'slip' || slipsCount(hands, stitch);
  const nodeClass: NodeClass = !counted ? 'slip' : stitch.shape === 'picot' ? 'picot' : 'stitch';
  return internKind(bench.kinds, {
    class: nodeClass,
    stem: nodeClass === 'picot' ? null : stem,
    shape: stitch.shape === 'increase' ? 'one' : stitch.shape,
    legs: single ? null : stitch.legs,
    post: stitch.post,
    loop: stitch.loop ?? hands.loop,
    foundation: stitch.foundation,
    special: stitch.special,
  });
}

/** Slip stitches along a row are no stitches by custom; some makers count them (doubt). */
const slipsCount = (hands: Hands, at: Span): boolean =>
  ask(hands.readings, {
    doubt: 'slip stitches',
    custom: 'not counted',
    alternatives: ['counted'],
    local: false,
    ...spanAt(hands, at),
  }) === 'counted';

/** Works one step of stitches. */
export function doWork(hands: Hands, step: WorkStep, row: RowContext, here: Here): void {
  if (isSlip(step)) {
    // "Sl st in next st" with the round already full only closes it.
    if (here.top && hands.edge.ring && !hands.into && remaining(hands) === 0 && !atStart(hands))
      return;
    if (step.place && isOwnChain(hands, step.place) && isPicot(hands, step.place)) {
      return makePicot(hands, step);
    }
    const move = here.top && onlyMoved(hands) ? moveAt(here.steps, here.i) : null;
    if (move && (move === 'begins' || row.round)) return moveStart(hands, step, row, move);
  }
  if (step.stitch.foundation) return makeFoundation(hands, step);
  if (step.evenly) return workEvenly(hands, step);
  if (closesSpace(hands, step, row)) return closeSpace(hands, step);
  if (step.place && isOwnChain(hands, step.place)) workBack(hands, step.place);
  const places: (Place | null)[] = [step.place, ...step.alsoIn];
  if (takesSeveralPlaces(step)) return workTogether(hands, step, places);
  for (const place of places) workAt(hands, step, place, here);
}

/** Nothing yet, or slip stitches that moved the start. */
function onlyMoved(hands: Hands): boolean {
  for (let id = hands.rowFrom; id < hands.nodes.n; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.class !== 'slip') return false;
  }
  return true;
}

const takesSeveralPlaces = (step: WorkStep): boolean =>
  step.stitch.shape === 'together' ||
  (step.stitch.shape !== 'one' &&
    step.stitch.shape !== 'increase' &&
    step.place !== null &&
    !step.place.each &&
    (step.place.n?.values[0] ?? 1) > 1);

/** Stitches that stand in one place: 2 for an increase, the number of "3 dc in next st". */
export const perPlace = (hands: Hands, step: WorkStep): number =>
  step.stitch.shape === 'increase' ? (step.stitch.legs ?? 2) : (numberFor(hands, step.n) ?? 1);

function workAt(hands: Hands, step: WorkStep, written: Place | null, here: Here): void {
  const place = written && ofEach(written);
  const until = place?.until ?? (place === null ? step.until : null);
  if (place?.fromHook && hands.edge.kind === 'foundation') {
    return workFromHook(hands, step, place);
  }
  if (hands.into) return stitches(hands, step, hands.into, perPlaceIn(hands, step));
  if (until || place?.pick === 'each' || place?.pick === 'every-other') {
    return workEach(hands, step, { place, until, reserve: reserved(hands, here) });
  }
  const many = slipsLeft(hands, step, numberFor(hands, place?.n ?? null));
  if (place === null || many === 0) return workAlong(hands, step, place, here);
  if (many !== null && many > 1 && !meansStartChain(hands, place)) {
    return workNext(hands, step, place, many);
  }
  const target = takeBelow(hands, place, step, here);
  stitches(hands, step, target, perPlaceIn(hands, step));
}

/** Slip stitches on a round run on over its join: those that find no place are the join. */
const slipsLeft = (hands: Hands, step: WorkStep, many: number | null): number | null =>
  many !== null && many > 1 && isSlip(step) && hands.edge.ring && hands.edge.kind === 'row'
    ? Math.min(many, Math.max(1, remaining(hands)))
    : many;

/** Old leaflets: "d c in 3 ch, turn" at a row's end is the turning chain, not three chains. */
const meansStartChain = (hands: Hands, place: Place): boolean =>
  nounOf(place).kind === 'chain' &&
  !place.each &&
  hands.edge.kind === 'row' &&
  remainingSpaces(hands) === 0 &&
  startChainEntry(hands) !== null;

/** In one place: "6 inc in ring" is no increase, and "5 sc in next st" is five. */
const perPlaceIn = (hands: Hands, step: WorkStep): number => {
  const n = numberFor(hands, step.n);
  if (step.stitch.shape !== 'increase') return n ?? 1;
  return (step.stitch.legs ?? 2) * (n ?? 1);
};

/** "5 sc", "sc 5", "6 inc" with no place: along the row, one place after the other. */
function workAlong(hands: Hands, step: WorkStep, place: Place | null, _here: Here): void {
  const n = numberFor(hands, step.n);
  if (n === 0 || (step.n && n === null) || place) return;
  const legs = step.stitch.shape === 'increase' ? (step.stitch.legs ?? 2) : 1;
  if (hands.edge.kind === 'into' || hands.edge.kind === 'none') {
    // "Rnd 1: 6 sc (6)": with nothing to work into, a ring is understood.
    return stitches(hands, step, ringTarget(hands), (n ?? 1) * legs);
  }
  if (bareIncrease(hands, step, n)) {
    return stitches(hands, step, takePlace(hands, null, step), n ?? 1);
  }
  const gaps = gapsOf(hands, null, step);
  const ran = gaps === 'passed' ? plainRun(hands, step, n ?? 1, legs) : 0;
  for (let i = ran; i < (n ?? 1); i++) stitches(hands, step, takeStitch(hands, gaps), legs);
}

/** As many of `n` places as a plain run can take; what is left has to be looked for. */
function plainRun(hands: Hands, step: WorkStep, n: number, each: number): number {
  if (hands.aside || hands.into || n < 2) return 0;
  const made = { kind: kindFor(hands, step.stitch), origin: originFor(hands, step), each };
  return runAlong(hands, made, n);
}

/** "2 hdc" with no place in a list that has no word for increase may be an increase (survey 6.2). */
function bareIncrease(hands: Hands, step: WorkStep, n: number | null): boolean {
  if (n !== 2 || step.stitch.shape !== 'one' || step.numberAfter || hands.edge.kind !== 'row') {
    return false;
  }
  const reading = ask(hands.readings, {
    doubt: 'bare 2',
    custom: 'along',
    alternatives: ['in one place'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'in one place';
}

/** "in next 5 sts", "in each of next 5": the number in front is for each place, unless they agree. */
function workNext(hands: Hands, step: WorkStep, place: Place, many: number): void {
  const n = numberFor(hands, step.n);
  const inEach = place.each || n === null || n !== many ? perPlace(hands, step) : 1;
  const single: Place = { ...place, n: null };
  if (place.pick === 'last') openLast(hands, place, many);
  const picked: Place = place.pick === 'last' ? { ...single, pick: 'next' } : single;
  const rest: Place = { ...picked, pick: 'next' };
  const ran = isPlain(hands, picked, step) ? plainRun(hands, step, many, inEach) : 0;
  for (let i = ran; i < many; i++) {
    if (place.pick === 'same') stitches(hands, step, takePlace(hands, single, step), inEach);
    else stitches(hands, step, takeBelow(hands, i === 0 ? picked : rest, step, null), inEach);
  }
}

/** Next stitches by no name in particular: nothing has to be looked at but whether they are there. */
const isPlain = (hands: Hands, place: Place, step: WorkStep): boolean =>
  place.pick === 'next' &&
  place.nouns.length <= 1 &&
  nounOf(place).kind === 'stitch' &&
  !nounOf(place).skipped &&
  place.rowsBelow === 0 &&
  gapsOf(hands, place, step) === 'passed';

/** "In last 3 sts": what stands before them would be left over. */
function openLast(hands: Hands, place: Place, many: number): void {
  const before = remaining(hands) - many;
  if (nounOf(place).kind === 'space' || before <= 0 || hands.edge.open) return;
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left: before, have, used: have - before, ...spanAt(hands, place) });
  for (let i = 0; i < before; i++) {
    takeStitch(hands, 'passed');
    hands.used--;
  }
}

/** Entry before which "each st to end" stops, since words that follow name what is there. */
function reserved(hands: Hands, here: Here): number {
  const limit = namesStartChain(here) ? startChainLimit(hands) : hands.edge.n;
  const next = here.steps.slice(here.i + 1).find((step) => step.kind !== 'remark');
  const place = next?.kind === 'work' || next?.kind === 'group' ? next.place : null;
  if (place?.pick !== 'last' || nounOf(place).kind === 'space') return limit;
  // "Hdc in each to end. 6 hdc in last": the last one is not in "each".
  let left = numberFor(hands, place.n) ?? 1;
  for (let i = hands.edge.n - 1; i >= hands.pos; i--) {
    if (hands.edge.type[i] === COUNTED && --left === 0) return Math.min(limit, i);
  }
  return limit;
}

/** "…in each st across, dc in top of tch": the chain's top is left for what names it. */
const namesStartChain = (here: Here): boolean =>
  here.steps
    .slice(here.i + 1)
    .some(
      (next) =>
        (next.kind === 'work' || next.kind === 'group') &&
        next.place !== null &&
        nounOf(next.place.of ?? next.place).kind === 'start-chain',
    );

/** "In each st around", "across to last 3 sts". */
function workEach(
  hands: Hands,
  step: WorkStep,
  along: { place: Place | null; until: Until | null; reserve: number },
): void {
  const { place, until } = along;
  const limit = hands.limit;
  hands.limit = limitOf(hands, until);
  hands.limit = Math.min(hands.limit, along.reserve);
  const gaps = gapsOf(hands, place, step);
  const inEach = perPlace(hands, step);
  if (hands.edge.open || hands.edge.kind === 'into') workUnknown(hands, step, inEach, place);
  const next: Place | null = place && { ...place, pick: 'next', until: null, n: null };
  const other = place?.pick === 'every-other';
  workStandingFirst(hands);
  if (!other && gaps === 'passed' && (next === null || isPlain(hands, next, step))) {
    plainRun(hands, step, hands.edge.n, inEach);
  }
  for (let first = true; hasNext(hands, next, gaps); first = false) {
    const { pos, inner } = hands;
    if (other && !first) {
      takePlace(hands, next, step);
      if (!hasNext(hands, next, gaps)) break;
    }
    const simple = next === null || (nounOf(next).kind === 'stitch' && next.post === null);
    const target = simple ? takeStitch(hands, gaps) : takeBelow(hands, next, step, null);
    stitches(hands, step, target, inEach);
    // A place that is not there is told once; it would not be there the next time either.
    if (hands.pos === pos && hands.inner === inner) break;
  }
  hands.limit = Math.max(hands.limit, limit);
}

/** How many places there are is not known: as many as are stated, if anything is stated. */
function workUnknown(hands: Hands, step: WorkStep, inEach: number, place: Place | null): void {
  if (hands.edge.n > 0) return;
  hands.loose = true;
  const wanted = Math.max(0, hands.statedStitches - countedSince(hands, hands.rowFrom));
  if (place && nounOf(place).kind === 'space') return;
  const n = Math.min(wanted, hands.bench.limit.stitches);
  for (let i = 0; i < n; i += inEach)
    stitches(hands, step, { node: -1, space: false, entry: -1 }, inEach);
}

/** A place, followed down where the words say rows below; the stitch in front of it is used up. */
function takeBelow(hands: Hands, place: Place, step: WorkStep, here: Here | null): Target {
  const below = place.rowsBelow;
  if (below <= 0) return takePlace(hands, place, step);
  const next = here?.steps[here.i + 1];
  const saidNext = next?.kind === 'skip' && (next.place.n?.values[0] ?? 1) === 1;
  const behind = ask(hands.readings, {
    doubt: 'stitch behind',
    custom: saidNext ? 'skipped in words' : 'used',
    alternatives: [saidNext ? 'used' : 'skipped in words'],
    local: true,
    ...spanAt(hands, step),
  });
  const { pos, inner, used } = hands;
  const target = takePlace(hands, { ...place, rowsBelow: 0 }, step);
  if (behind !== 'used') {
    hands.pos = pos;
    hands.inner = inner;
    hands.used = used;
  }
  let { node } = target;
  for (let i = 0; i < below && node >= 0; i++) node = firstAnchor(hands.nodes, node);
  return { ...target, node };
}

/** Is the stitch at `entry` of this name? */
export function stemIs(hands: Hands, entry: number, word: string | null): boolean {
  const kind = hands.bench.kinds.kinds[hands.nodes.kind[hands.edge.node[entry] ?? 0] ?? 0];
  return word !== null && kind?.stem === stemOf(word, hands.bench.terms);
}

/** Makes `n` stitches in one place. */
export function stitches(hands: Hands, step: WorkStep, target: Target, n: number): void {
  const kind = kindFor(hands, step.stitch);
  const origin = originFor(hands, step);
  for (let i = 0; i < n; i++) make(hands, kind, origin, target);
}

/** Several places become one stitch: sc2tog, a cluster over three stitches. */
function workTogether(hands: Hands, step: WorkStep, places: readonly (Place | null)[]): void {
  const { stitch } = step;
  if (hands.into) return stitches(hands, step, hands.into, numberFor(hands, step.n) ?? 1);
  const place = places[0] ?? null;
  const over = numberFor(hands, place?.n ?? null);
  const until = place?.until ?? step.until;
  const eachPlace = place?.pick === 'each' || until !== null;
  const legs = stitch.legs ?? (over !== null && over > 1 && over <= 3 && !place?.each ? over : 2);
  if (eachPlace) return togetherToEnd(hands, step, legs, until);
  if (places.length > 1)
    return oneTogether(
      hands,
      step,
      places.flatMap((p) => spreadOut(hands, p)),
    );
  const times = numberFor(hands, step.n) ?? togetherTimes(over, legs, place);
  const single: Place | null = place && { ...place, n: null };
  if (place?.pick === 'last') openLast(hands, place, over ?? legs);
  for (let i = 0; i < times; i++) {
    if (place === null) {
      togetherAlong(hands, step, legs);
      continue;
    }
    const wanted = step.n === null && times === 1 && over !== null && over > 1 ? over : legs;
    const along: Place | null =
      single && (single.pick === 'same' ? single : { ...single, pick: 'next' });
    oneTogether(
      hands,
      step,
      Array.from({ length: wanted }, (_, k) =>
        k > 0 && along?.pick === 'same' ? { ...along, pick: 'next' as const } : along,
      ),
    );
  }
}

/** "dec in next 6 sts": three decreases; "sc2tog over next 2 sts": one; "over next 3": one, of 3. */
function togetherTimes(over: number | null, legs: number, place: Place | null): number {
  if (over === null || over <= legs) return 1;
  if (place?.each) return over;
  return over % legs === 0 ? over / legs : 1;
}

const spreadOut = (hands: Hands, place: Place | null): (Place | null)[] => {
  const n = numberFor(hands, place?.n ?? null) ?? 1;
  return Array.from({ length: n }, () => place && { ...place, n: null });
};

/** "sc2tog", "dec": over the next places. */
function togetherAlong(hands: Hands, step: WorkStep, legs: number): void {
  const gaps = gapsOf(hands, null, step);
  make(hands, kindFor(hands, step.stitch), originFor(hands, step), takeStitch(hands, gaps));
  for (let i = 1; i < legs; i++) addAnchor(hands.nodes, takeStitch(hands, gaps).node);
}

function oneTogether(hands: Hands, step: WorkStep, legs: readonly (Place | null)[]): void {
  const targets = legs.map((leg) => takePlace(hands, leg, step));
  const [first, ...others] = targets;
  if (!first) return;
  make(hands, kindFor(hands, step.stitch), originFor(hands, step), first);
  for (const other of others) addAnchor(hands.nodes, other.node);
}

function togetherToEnd(hands: Hands, step: WorkStep, legs: number, until: Until | null): void {
  const limit = hands.limit;
  hands.limit = limitOf(hands, until);
  while (remaining(hands) >= legs) {
    togetherAlong(hands, step, legs);
  }
  hands.limit = Math.max(hands.limit, limit);
}

/** "dc in 4th ch from hook": chains before it are passed, and may stand for a stitch. */
function workFromHook(hands: Hands, step: WorkStep, place: Place): void {
  skippedChains(hands, step, place);
  const target = countFromHook(hands, place, step);
  stitches(hands, step, target, perPlaceIn(hands, step));
}

/** Foundation stitches make their own chain: n places out of nothing. */
function makeFoundation(hands: Hands, step: WorkStep): void {
  const n = numberFor(hands, step.n) ?? numberFor(hands, step.place?.n ?? null) ?? 1;
  if (hands.edge.kind === 'none') hands.edge = emptyFoundation();
  hands.pos = hands.limit = hands.edge.n;
  stitches(hands, step, { node: -1, space: false, entry: -1 }, n);
}

const emptyFoundation = (): Edge =>
  foundationEdge(0, 0, { ring: false, reversed: false, open: false });

/** "30 sc evenly around", "inc 4 evenly": the places are left to the maker. */
function workEvenly(hands: Hands, step: WorkStep): void {
  const n = numberFor(hands, step.n) ?? 1;
  const have = remaining(hands);
  const { shape, legs } = step.stitch;
  if (hands.edge.kind === 'row' && (shape === 'increase' || shape === 'together')) {
    return shapeEvenly(hands, step, { n, have, legs: legs ?? 2 });
  }
  hands.loose = true;
  hands.used += have;
  hands.pos = hands.limit;
  stitches(hands, step, { node: -1, space: false, entry: -1 }, n);
}

/** n increases or decreases spread over the places left, plain stitches between them. */
function shapeEvenly(
  hands: Hands,
  step: WorkStep,
  spread: { n: number; have: number; legs: number },
): void {
  const { n, have, legs } = spread;
  const plainStep: WorkStep = { ...step, stitch: { ...step.stitch, shape: 'one', legs: null } };
  const grows = step.stitch.shape === 'increase';
  const units = grows ? have : have - n * (legs - 1);
  for (let i = 0; i < units; i++) {
    const shapes = Math.floor(((i + 1) * n) / units) > Math.floor((i * n) / units);
    if (!shapes) stitches(hands, plainStep, takeStitch(hands, 'passed'), 1);
    else if (grows) stitches(hands, step, takeStitch(hands, 'passed'), legs);
    else togetherAlong(hands, step, legs);
  }
}

/** "ch 2, hdc in first sc" at a round's end closes the last space and makes no counted stitch. */
function closesSpace(hands: Hands, step: WorkStep, row: RowContext): boolean {
  const { place } = step;
  if (!place || !row.round || hands.into || hands.nodes.n === hands.rowFrom) return false;
  const noun = nounOf(place.of ?? place);
  const toStart =
    place.pick === 'first' ||
    noun.kind === 'start-chain' ||
    (place.pick === 'top' && noun.kind === 'chain');
  const before = hands.bench.kinds.kinds[hands.nodes.kind[hands.nodes.n - 1] ?? 0];
  return toStart && before?.class === 'chain' && hands.first !== null && noun.kind !== 'space';
}

function closeSpace(hands: Hands, step: WorkStep): void {
  const stem = step.stitch.stem ? stemOf(step.stitch.stem, hands.bench.terms) : hands.stem;
  const kind = kindOf(hands.bench.kinds, stem === 'slip' ? 'slip' : 'closer', stem);
  make(hands, kind, originFor(hands, step), firstStitchOf(hands));
}

/** The first counted stitch of the row at hand, as a place. */
export function firstStitchOf(hands: Hands): Target {
  for (let id = hands.rowFrom; id < hands.nodes.n; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.counted) {
      return { node: id, space: false, entry: -1 };
    }
  }
  return { node: -1, space: false, entry: -1 };
}
