/** Stitches: how many, what they are made of, and into which places they go. */
import type { Place, Until, WorkStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { COUNTED, type Edge, foundationEdge, NAMED, rotated, SPACE } from '../edge.ts';
import {
  atStart,
  countedSince,
  fact,
  type Hands,
  hasLeft,
  numberFor,
  originFor,
  remaining,
  remainingSpaces,
  spanAt,
  type Target,
} from '../hands.ts';
import { endOfRun, hasNext, hasOthers, limitWithin, ofEach, otherCalled } from '../limit.ts';
import { ringTarget, startChainEntry, workStandingFirst } from '../next.ts';
import { firstAnchor } from '../nodes.ts';
import { gapsOf, nounOf } from '../noun.ts';
import { arrived, atJoin, goesOnElsewhere, toBridge } from '../pieces.ts';
import { takePlace } from '../place.ts';
import { ask } from '../readings.ts';
import { runAlong } from '../run.ts';
import { isSlip, moveAt } from '../shape.ts';
import { ofRest, toSkipped } from '../skipped.ts';
import { type Gaps, returnFromAside, takeStitch } from '../take.ts';
import { besideStartChain } from './beside-start-chain.ts';
import { alongNamedRows, isSpreadOverRowEnds, openSide, spreadsAlong, toSide } from './border.ts';
import { closeSpace, closesSpace } from './close-space.ts';
import { workEvenly } from './evenly.ts';
import { passFirstChains } from './first-chain.ts';
import { countFromHook, inFirstChain, skippedChains } from './from-hook.ts';
import { beforeTop, openLast, reserved } from './last.ts';
import { moveStart } from './move.ts';
import { alongChainOver, alongUnusedLoops, beginsOnChainOver } from './other-side.ts';
import { closesPicot, isOwnChain, isPicot, makePicot, workBack } from './own-chain.ts';
import { closesPetal } from './petals.ts';
import { onOnePiece } from './piece.ts';
import { worksIntoRing } from './ring.ts';
import { inOneOfList, isInSame } from './same-in-list.ts';
import { kindFor, perPlace, perPlaceIn, stitches } from './stitch.ts';
import { workTogether } from './together.ts';

/** Works one step of stitches. */
export function doWork(hands: Hands, written: WorkStep, row: RowContext, here: Here): void {
  const step = alongUnusedLoops(hands, written, row);
  alongChainOver(hands, step, row);
  beginsOnChainOver(hands, step, row);
  if (isSlip(step) && atJoin(hands)) return;
  if (here.top && restates(hands, step)) return;
  arrived(hands, onOnePiece(here) ? 'within' : 'free');
  if (isSlip(step)) {
    if (hands.moves.length > 0 && hands.moves.includes(written)) return;
    // "Sl st in next st" with the round already full only closes it.
    if (here.top && hands.edge.ring && !hands.into && !hasLeft(hands) && !atStart(hands)) return;
    if (closesPetal(hands, step, row, here)) {
      hands.cameHome = true;
      return;
    }
    if (step.place && isOwnChain(hands, step.place) && isPicot(hands, step.place)) {
      return makePicot(hands, step);
    }
    const move = here.top && onlyMoved(hands) ? moveAt(here.steps, here.i) : null;
    if (move && (move === 'begins' || row.round)) return moveStart(hands, step, row, move);
  }
  if (step.place && isOwnChain(hands, step.place) && closesPicot(hands, step, here)) {
    return makePicot(hands, step);
  }
  if (isBarePicot(hands, step))
    return stitches(hands, step, hands.last ?? NO_PLACE, numberFor(hands, step.n) ?? 1);
  if (step.stitch.foundation) return makeFoundation(hands, step);
  toSide(hands, step);
  if (alongNamedRows(hands, step)) return;
  const spread =
    (step.evenly && !isEvenAround(hands, step)) ||
    isSpreadOverRowEnds(hands, step) ||
    spreadsAlong(hands, step);
  if (spread && !onBridge(hands, step)) return workEvenly(hands, step);
  if (closesSpace(hands, step, row)) return closeSpace(hands, step, step.stitch);
  const own = step.place !== null && isOwnChain(hands, step.place);
  if (own && step.place) workBack(hands, step.place);
  const taken = step.place && (inFirstChain(hands, step) ?? onNewPiece(hands, step.place));
  const first = own && step.place?.pick === 'nth' ? { ...step.place, fromHook: true } : taken;
  const places: (Place | null)[] = [first, ...step.alsoIn];
  const held = hands.loop;
  for (const place of takesSeveralPlaces(step) ? [first] : places) {
    // "In back loop of each st": for this stitch only.
    if (place?.loop) hands.loop = place.loop === 'both' ? null : place.loop;
    if (takesSeveralPlaces(step)) workTogether(hands, step, places, row);
    else beforeTop(hands, place, here, () => workAt(hands, step, place, here));
    hands.loop = held;
  }
}

/** "Ch 3, picot, ch 3": it stands on what was made last, and takes no stitch. */
const isBarePicot = (hands: Hands, { stitch, place, until, alsoIn }: WorkStep): boolean =>
  stitch.shape === 'picot' && !place && !until && alsoIn.length === 0 && !hands.into;

const NO_PLACE: Target = { node: -1, space: false, entry: -1 };

/** "Dc evenly around" with no number: one in each place of a round, unless its count says otherwise. */
const isEvenAround = (hands: Hands, step: WorkStep): boolean => {
  const { edge } = hands;
  const plain = step.n === null && step.place === null && step.stitch.shape === 'one';
  if (!plain || !edge.ring || edge.kind !== 'row' || edge.open || hands.into) return false;
  return hands.statedStitches < 0 || hands.statedStitches === remaining(hands);
};

/** "Sc in last st of first leg": where a ring is taken up; round it the work goes on from there. */
const onNewPiece = (hands: Hands, place: Place): Place =>
  hands.pieces && hands.edge.ring && hands.pos === 0 && place.pick === 'last' && place.n === null
    ? { ...place, pick: 'next' }
    : place;

/** "Sc in each ch to end, 24 sc. Ch 1, turn": with the row full, the number says what was made. */
function restates(hands: Hands, step: WorkStep): boolean {
  const n = step.place || step.until || step.numberAfter ? null : numberFor(hands, step.n);
  if (n === null || n < 3 || hands.edge.ring || hands.pos < hands.edge.n) return false;
  return hands.edge.n > 0 && n === countedSince(hands, hands.rowFrom);
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

function workAt(hands: Hands, step: WorkStep, written: Place | null, here: Here): void {
  const named = written && inOneOfList(hands, step, written, here);
  const asked = named && ofEach(eachToEnd(amongSpaces(named, here), step));
  const place = asked && usedUp(hands) ? ofRest(hands, asked) : asked;
  const until =
    place?.until ?? (place === null ? (step.until ?? sideUntil(hands, step, here)) : null);
  const hooked = place && fromHookOn(hands, place);
  if (hooked) return workFromHook(hands, step, hooked);
  if (place?.fromHook && onWidening(hands)) {
    hands.inner = (place.nth ?? 1) - 1;
    return stitches(hands, step, takeStitch(hands, 'chains'), perPlaceIn(hands, step));
  }
  if (hands.into) return stitches(hands, step, hands.into, perPlaceIn(hands, step));
  if (hands.pieces && place && nounOf(place).kind === 'chain') toBridge(hands);
  if (place && startsInFirstChain(hands, step, place)) hands.pos = hands.edge.n - 1;
  if (place) ontoLastChain(hands, place);
  passFirstChains(hands, step, place);
  if (until && place === null && fillsRow(hands, step)) return workAlong(hands, step, null, here);
  // "Sc in all 54 stitches": so many, and they are all that there are.
  if (place?.pick === 'each' && place.n && !place.of && !until && !hands.pieces)
    return workAt(hands, step, { ...place, pick: 'next', each: true }, here);
  if (until || place?.pick === 'each' || place?.pick === 'every-other') {
    return workAllRound(hands, step, { place, until }, here);
  }
  if (place && alongNewChain(hands, step, place)) return workAlong(hands, step, null, here);
  const many = slipsLeft(hands, step, numberFor(hands, place?.n ?? unsaid(step, place)));
  if (place === null || many === 0) return workAlong(hands, step, place, here);
  if (many !== null && many > 1 && !meansStartChain(hands, place, many)) {
    return workNext(hands, step, { place, many }, here);
  }
  const target = takeBelow(hands, place, step, here);
  stitches(hands, step, target, perPlaceIn(hands, step));
}

/**
 * "Sc in next 2 ch" where a joined round is turned behind a chain that ended it: the stitch of the join comes
 * last, though the hook stands on it.
 */
function ontoLastChain(hands: Hands, place: Place): void {
  const { edge } = hands;
  const begins = edge.ring && edge.kind === 'row' && hands.pos === 0 && hands.first === null;
  const chain = place.pick === 'next' && nounOf(place).kind === 'chain';
  if (!begins || !chain || edge.type[0] !== COUNTED) return;
  // The start chain of that round, which is no stitch, lies between.
  let at = 1;
  while (edge.type[at] === NAMED) at++;
  if (edge.type[at] === SPACE) hands.edge = rotated(edge, at);
}

/** "Ch 13, work 12 sc on ch": along the chain, whose first one or two only lead up to them. */
function alongNewChain(hands: Hands, step: WorkStep, place: Place): boolean {
  const n = numberFor(hands, step.n);
  const { edge } = hands;
  if (n === null || n < 4 || edge.kind !== 'foundation' || edge.ring || hands.pos > 0) return false;
  const bare = place.pick === 'this' && place.n === null && nounOf(place).kind === 'chain';
  const passed = edge.n - n;
  if (!bare || step.place?.of || passed < 1 || passed > 3) return false;
  hands.pos = passed;
  return true;
}

/** "Dc in 2nd st, dc in each sc and ch-1 sp": where spaces are places, the 2nd may be one. */
function amongSpaces(place: Place, here: Here): Place {
  if (place.pick !== 'nth' || place.of || nounOf(place).kind !== 'stitch') return place;
  const behind = here.steps[here.i + 1];
  const next = behind?.kind === 'repeat' ? behind.steps[0] : behind;
  const nouns = next?.kind === 'work' && next.place?.pick === 'each' ? next.place.nouns : [];
  const both = nouns.length > 1 && nouns.some(({ kind }) => kind === 'space');
  return both ? { ...place, nouns, joinedBy: 'or' } : place;
}

/** The row beneath is worked to its end. */
const usedUp = (hands: Hands): boolean =>
  hands.edge.kind === 'row' && !hands.edge.ring && !hands.edge.open && !hasLeft(hands);

/** "Sc in each of the next sc around": as many as there are. */
const eachToEnd = (place: Place, step: WorkStep): Place =>
  place.each && place.pick === 'next' && place.n === null && step.until?.kind === 'end'
    ? { ...place, pick: 'each', until: step.until }
    : place;

/** Counted from the hook; so is "in last ch" of a chain into which nothing is worked yet. */
function fromHookOn(hands: Hands, place: Place): Place | null {
  // No chain is told of anywhere: there is one all the same, of any length.
  if (place.fromHook && hands.edge.kind === 'none' && hands.nodes.n === 0) {
    hands.edge = foundationEdge(0, 0, { ring: false, reversed: false, open: true });
    hands.pos = hands.limit = 0;
  }
  const { edge } = hands;
  if (edge.kind !== 'foundation') return null;
  if (place.fromHook && place.pick !== 'last') return place;
  // "Dc in 4th ch and in each ch", with which a first row begins: there is nothing to count from but the hook.
  const begins = hands.first === null && hands.pos === 0 && !edge.ring && !edge.open;
  const nth = place.pick === 'nth' && !place.of && (place.nth ?? 0) > 1;
  if (begins && nth && nounOf(place).kind === 'chain') return { ...place, fromHook: true };
  const last = place.pick === 'last' && place.n === null && hands.first === null && hands.pos === 0;
  return last && !edge.ring ? { ...place, pick: 'nth', nth: edge.n, fromHook: true } : null;
}

const onSide = (here: Here): boolean => here.steps[here.i - 1]?.kind === 'other-side';

/** "Sc along other side of ch", between two pieces: along all of it. */
function sideUntil(hands: Hands, step: WorkStep, here: Here): Until | null {
  const along = hands.pieces !== null && onSide(here);
  return along && step.n === null ? { kind: 'end', word: '', from: step.to, to: step.to } : null;
}

/** "3 sc on the other side of the ch", where the chain lies between two pieces. */
const onBridge = (hands: Hands, step: WorkStep): boolean =>
  hands.pieces !== null && step.place !== null && nounOf(step.place).kind === 'chain';

/**
 * "5 sc across" over five places tells how many there are, not how many stand in each; so it does over
 * six, where more than stand in one place are told.
 */
const fillsRow = (hands: Hands, step: WorkStep): boolean => {
  const { shape } = step.stitch;
  const n = shape === 'one' || shape === 'increase' ? numberFor(hands, step.n) : null;
  const places = remaining(hands);
  if (n === null || (shape === 'increase' && n < 2)) return false;
  return (n > 2 && n === places && !hands.edge.open) || n > MOST_IN_ONE;
};

/** "2 sc in next sts": more than one place, as many as stitches are named. */
const unsaid = (step: WorkStep, place: Place | null): WorkStep['n'] =>
  place?.pick === 'next' && place.nouns[0]?.plural && PLURALS.has(nounOf(place).kind) && !place.each
    ? step.n
    : null;

const PLURALS: ReadonlySet<string> = new Set(['stitch', 'stem', 'chain']);

/** The row begins on a chain with which the row beneath ended, to widen the piece. */
const onWidening = (hands: Hands): boolean =>
  hands.edge.kind === 'row' &&
  hands.first === null &&
  hands.pos === 0 &&
  hands.edge.type[0] === SPACE &&
  hands.into === null;

/** "Ch 2, 6 sc in first ch": the first chain made, which is the last from the hook. */
const startsInFirstChain = (hands: Hands, step: WorkStep, place: Place): boolean =>
  place.pick === 'first' &&
  (nounOf(place).kind === 'chain' || hands.edge.n <= SHORTEST) &&
  hands.edge.kind === 'foundation' &&
  !hands.edge.ring &&
  hands.first === null &&
  perPlaceIn(hands, step) >= 3;

/** A chain into which nothing but a round's first stitches can be meant to go. */
const SHORTEST = 3;

/** Slip stitches on a round run on over its join: those that find no place are the join. */
const slipsLeft = (hands: Hands, step: WorkStep, many: number | null): number | null =>
  many !== null && many > 1 && isSlip(step) && hands.edge.ring && hands.edge.kind === 'row'
    ? Math.min(many, Math.max(1, remaining(hands)))
    : many;

/** Old leaflets: "d c in 3 ch, turn" at a row's end is the turning chain, not three chains. */
function meansStartChain(hands: Hands, place: Place, many: number): boolean {
  const { edge, inner, startChains } = hands;
  if (nounOf(place).kind !== 'chain' || place.each || edge.kind !== 'row' || inner !== 0)
    return false;
  const entry = remainingSpaces(hands) === 0 ? startChainEntry(hands) : null;
  if (entry === null) return false;
  return remaining(hands) < MOST_LEFT || startChains.get(edge.node[entry] ?? -1)?.n === many;
}

/** With more stitches left than that, "sc in next 10 ch" means them, though they are no chains. */
const MOST_LEFT = 3;

/** "5 sc", "sc 5", "6 inc" with no place: along the row, one place after the other. */
function workAlong(hands: Hands, step: WorkStep, place: Place | null, here: Here): void {
  const n = numberFor(hands, step.n);
  if (n === 0 || (step.n && n === null) || place) return;
  const legs = step.stitch.shape === 'increase' ? (step.stitch.legs ?? 2) : 1;
  if (worksIntoRing(hands, step)) {
    return stitches(hands, step, ringTarget(hands), (n ?? 1) * legs);
  }
  if (hands.last && isInSame(hands, step, here)) return stitches(hands, step, hands.last, 1);
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
  const made = { kind: kindFor(hands, step.stitch, step), origin: originFor(hands, step), each };
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
function workNext(
  hands: Hands,
  step: WorkStep,
  { place, many }: { readonly place: Place; readonly many: number },
  here: Here | null,
): void {
  const inEach = oneInEach(hands, step, place, many) ? 1 : perPlace(hands, step);
  const single: Place = { ...place, n: null };
  if (place.pick === 'last') openLast(hands, place, many);
  const picked: Place = place.pick === 'last' ? { ...single, pick: 'next' } : single;
  const rest: Place = { ...picked, pick: 'next' };
  const ran = isPlain(hands, picked, step) ? plainRun(hands, step, many, inEach) : 0;
  for (let i = ran; i < many; i++) {
    if (place.pick === 'same') stitches(hands, step, takePlace(hands, single, step), inEach);
    else stitches(hands, step, takeBelow(hands, i === 0 ? picked : rest, step, here), inEach);
  }
}

/**
 * "5 sc in next 5 sts" is one in each. So is "2 sc in next 2 sts" as a rule; some mean two in each of
 * two, and the row's count or end tells.
 */
function oneInEach(hands: Hands, step: WorkStep, place: Place, many: number): boolean {
  const n = numberFor(hands, step.n);
  if (place.each || n === null || n !== many || step.stitch.shape === 'increase') return false;
  if (n > MOST_IN_ONE) return true;
  const reading = ask(hands.readings, {
    doubt: 'n in next n',
    custom: 'one in each',
    alternatives: ['n in each'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'one in each';
}

/** More stitches than three stand in one of several places only in words that say "each". */
const MOST_IN_ONE = 3;

/** Next stitches by no name in particular: nothing has to be looked at but whether they are there. */
const isPlain = (hands: Hands, place: Place, step: WorkStep): boolean =>
  place.pick === 'next' &&
  place.nouns.length <= 1 &&
  nounOf(place).kind === 'stitch' &&
  !nounOf(place).skipped &&
  place.rowsBelow === 0 &&
  gapsOf(hands, place, step) === 'passed';

/** On one piece; where nothing is worked behind it, along all that the row brings together. */
function workAllRound(
  hands: Hands,
  step: WorkStep,
  along: { place: Place | null; until: Until | null },
  here: Here,
): void {
  returnFromAside(hands);
  const leadsOn = leadsToChain(here);
  workEach(hands, step, { ...along, leadsOn, reserve: reserved(hands, here) });
  if (!hands.pieces || onOnePiece(here) || onSide(here) || nounOf(along.place).kind === 'chain')
    return;
  if (here.steps.slice(here.i + 1).some((next) => next.kind === 'work')) return;
  while (goesOnElsewhere(hands))
    workEach(hands, step, { ...along, leadsOn, reserve: hands.edge.n });
}

/** "Sc in each dc, *ch 3, dc in each sc; …": the row goes on over a chain. */
function leadsToChain({ steps, i }: Here): boolean {
  const behind = steps.slice(i + 1).filter(({ kind }) => kind !== 'mark' && kind !== 'remark');
  const [next] = behind;
  const first = next?.kind === 'repeat' ? next.steps[0] : next;
  return first?.kind === 'chain' && behind.some(({ kind }) => kind === 'repeat' || kind === 'work');
}

/** "In each st around", "across to last 3 sts". */
function workEach(
  hands: Hands,
  step: WorkStep,
  along: { place: Place | null; until: Until | null; leadsOn: boolean; reserve: number },
): void {
  const { place, until } = along;
  if (place && nounOf(place).skipped && usedUp(hands)) toSkipped(hands, place.row);
  const limit = hands.limit;
  hands.limit = limitWithin(hands, place, until);
  hands.limit = Math.min(hands.limit, along.reserve, endOfRun(hands, along));
  const gaps = gapsOf(hands, place, step);
  const inEach = perPlace(hands, step);
  if (hands.edge.kind === 'into' && hands.border) openSide(hands, step);
  else if (hands.edge.open || hands.edge.kind === 'into') workUnknown(hands, step, inEach, place);
  const other = place?.pick === 'every-other';
  const others = hasOthers(hands, place);
  const all = others && inEach < SHELL && meansAll(hands, place, step);
  // "Shell in each sc across", over shells of sc and dc: in those that are so called.
  hands.namedOnly = others && !all;
  const one: Place | null = place && { ...place, pick: 'next', until: null, n: null };
  const next: Place | null = one && all ? { ...one, nouns: [] } : one;
  besideStartChain(hands, step, inEach);
  workStandingFirst(hands);
  if (!other && gaps === 'passed' && (next === null || isPlain(hands, next, step))) {
    plainRun(hands, step, hands.edge.n, inEach);
  }
  for (let first = true; hasNext(hands, next, gaps); first = false) {
    const { pos, inner } = hands;
    if (other && passesOthers(hands, step, { place, next, first, inEach }, gaps)) break;
    const simple = next === null || isAnyStitch(next);
    const target = simple ? takeStitch(hands, gaps) : takeBelow(hands, next, step, null);
    stitches(hands, step, target, inEach);
    // Where the corners lie is not known: all that is left may be none.
    if (hands.partly && nounOf(place).kind === 'corner')
      hands.pos = Math.max(hands.pos, hands.limit);
    // A place that is not there is told once; it would not be there the next time either.
    if (hands.pos === pos && hands.inner === inner) break;
  }
  // Those of other names behind the last one are passed too.
  if (hands.namedOnly) hands.pos = Math.max(hands.pos, hands.limit);
  hands.namedOnly = false;
  hands.limit = Math.max(hands.limit, limit);
}

/** From so many in one place on, the stitches that are named are those of a shell's or a group's place. */
const SHELL = 3;

/** "Sc in each sc across" over sc and dc: makers mean all of them, and it is noticed; a count may tell otherwise. */
function meansAll(hands: Hands, place: Place | null, step: WorkStep): boolean {
  const noun = nounOf(place);
  if (!noun.stem || place?.pick !== 'each' || place.nouns.length > 1) return false;
  const reading = ask(hands.readings, {
    doubt: 'each of a name',
    custom: 'every stitch',
    alternatives: ['those of that name'],
    local: true,
    ...spanAt(hands, step),
  });
  if (reading !== 'every stitch') return false;
  const other = otherCalled(hands, noun.stem);
  if (other) fact(hands, { kind: 'noun', ...other, ...spanAt(hands, step) });
  return true;
}

/**
 * The stitches before the one that "every other", "every 3rd" means; whether none is left behind them. Of "2 sc in
 * every 3rd st" those between have one each, for nobody leaves two of three unworked.
 */
function passesOthers(
  hands: Hands,
  step: WorkStep,
  at: { place: Place; next: Place | null; first: boolean; inEach: number },
  gaps: Gaps,
): boolean {
  const { place, next, first, inEach } = at;
  const between = place.nth === null ? Number(!first) : place.nth - 1;
  for (let i = 0; i < between; i++) {
    if (!hasNext(hands, next, gaps)) return true;
    const target = takePlace(hands, next, step);
    const works = inEach > 1 && (place.nth !== null || othersToo(hands, step));
    if (works) stitches(hands, step, target, 1);
  }
  return !hasNext(hands, next, gaps);
}

/** "2 sc in every 2nd st (18)" on a round of twelve: the others have one each, as the count shows. */
const othersToo = (hands: Hands, step: WorkStep): boolean =>
  hands.statedStitches >= 0 &&
  ask(hands.readings, {
    doubt: 'every other stitch',
    custom: 'the others are passed',
    alternatives: ['the others have one each'],
    local: true,
    ...spanAt(hands, step),
  }) !== 'the others are passed';

/** "Each st": by no name that would have to be looked at. */
const isAnyStitch = (place: Place): boolean =>
  nounOf(place).kind === 'stitch' && place.nouns.length <= 1 && place.post === null;

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
  // "FPdc in next 2 dc 2 rows below, sk 2 sc": as many as are worked below.
  const many = numberFor(hands, step.place?.n ?? null) ?? 1;
  const saidNext = next?.kind === 'skip' && (next.place.n?.values[0] ?? 1) === many;
  const behind = ask(hands.readings, {
    doubt: 'stitch behind',
    custom: saidNext ? 'skipped in words' : 'used',
    alternatives: [saidNext ? 'used' : 'skipped in words'],
    local: true,
    ...spanAt(hands, step),
  });
  const { pos, inner, used } = hands;
  // "Around next sc 2 rows below" names the stitch down there; above it may stand any.
  const nouns = place.nouns.flatMap((noun): (typeof noun)[] => {
    if (noun.kind !== 'stem') return [noun];
    return noun.skipped ? [{ ...noun, kind: 'stitch', stem: null }] : [];
  });
  const target = takePlace(hands, { ...place, nouns, rowsBelow: 0 }, step);
  if (behind !== 'used') {
    hands.pos = pos;
    hands.inner = inner;
    hands.used = used;
  }
  let { node } = target;
  for (let i = 0; i < below && node >= 0; i++) node = firstAnchor(hands.nodes, node);
  return { ...target, node };
}

/** "dc in 4th ch from hook": chains before it are passed, and may stand for a stitch. */
function workFromHook(hands: Hands, step: WorkStep, place: Place): void {
  skippedChains(hands, step, place);
  const target = countFromHook(hands, place, step);
  stitches(hands, step, target, perPlaceIn(hands, step));
}

/**
 * Foundation stitches make their own chain: n places out of nothing. At a row's end the first
 * stands beside the foot of the last stitch, each other in the base of the one before.
 */
function makeFoundation(hands: Hands, step: WorkStep): void {
  const n = numberFor(hands, step.n) ?? numberFor(hands, step.place?.n ?? null) ?? 1;
  if (hands.edge.kind === 'none') hands.edge = emptyFoundation();
  hands.pos = hands.limit = hands.edge.n;
  for (let i = 0; i < n && hands.last; i++) {
    stitches(hands, step, hands.last, 1);
    hands.last = { node: hands.nodes.n - 1, space: false, entry: -1 };
  }
  if (!hands.last) stitches(hands, step, { node: -1, space: false, entry: -1 }, n);
}

const emptyFoundation = (): Edge =>
  foundationEdge(0, 0, { ring: false, reversed: false, open: false });
