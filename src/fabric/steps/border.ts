/**
 * Borders: the hook goes along the sides of a piece that was worked in rows, and round its corners. Which side
 * is meant is told by what is named there: row ends, chains of the foundation, stitches of the last row.
 * A number of stitches is taken from the words or from the piece; where neither fixes it, as in "sc evenly
 * down the side", the row's count settles it and proves nothing.
 */
import {
  type GroupStep,
  type Place,
  type RepeatStep,
  type Step,
  stemOf,
  type WorkStep,
} from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { bareEdge, COUNTED, type Edge, isCorner } from '../edge.ts';
import {
  type Border,
  countedSince,
  guessNumber,
  type Hands,
  hasLeft,
  numberFor,
  type Target,
} from '../hands.ts';
import { isCornerStitch } from '../next.ts';
import { nounOf } from '../noun.ts';
import { bottomOf, endsOf, outlineOf, stemOfRow, topOf } from '../outline.ts';
import { ask } from '../readings.ts';
import { takeOff } from '../take.ts';
import { stitches } from './stitch.ts';

const NO_PLACE: Target = { node: -1, space: false, entry: -1 };

/** Is the edge at hand that of a piece, whose corners are those of the piece? */
export function isOnPiece(hands: Hands): boolean {
  const { edge, nodes } = hands;
  if (hands.into || hands.pieces || hands.aside) return false;
  if (hands.border) return true;
  if (edge.ring || edge.kind !== 'row') return false;
  for (let i = 0; i < edge.n; i++)
    if (isCorner(edge, nodes, i) || isCornerStitch(hands, i)) return false;
  return true;
}

/** The border at hand, begun if it is not. */
function borderOf(hands: Hands): Border {
  if (hands.border) return hands.border;
  const { edge } = hands;
  const outline = outlineOf(hands);
  const untouched = hands.used === 0 && hands.pos === 0;
  const own = edge.kind === 'row' && edge.n > 0 ? edge : null;
  const top = untouched ? (own ?? (outline ? topOf(hands, outline) : null)) : null;
  const border: Border = { outline, side: 'row', top, corners: 0, openSides: 0 };
  hands.border = border;
  hands.spread = true;
  return border;
}

/** The next corner of the piece, as a place of its own; `null`: no such corner is meant. */
export function cornerOfPiece(hands: Hands, place: Place): Target | null {
  if (nounOf(place).kind !== 'corner' || place.of || !isOnPiece(hands)) return null;
  if (place.pick === 'same' && hands.last) return takeOff(hands, hands.last);
  const border = borderOf(hands);
  hands.border = { ...border, side: 'corner', corners: border.corners + 1 };
  // Nothing else stands on the stitch made last, so that the corner's stitches are told as one group.
  return takeOff(hands, { node: hands.nodes.n - 1, space: false, entry: -1 });
}

/** From here on the hook goes along row ends: as many as there are rows, where that is known. */
export function alongRowEnds(hands: Hands): void {
  const border = borderOf(hands);
  const { outline } = border;
  hands.border = { ...border, side: 'ends' };
  const edge = outline?.isCounted ? endsOf(outline) : bareEdge('into', hands.nodes.n - 1);
  standOn(hands, edge);
}

/** "Join yarn in first ch of starting ch" where the piece was fastened off: on that chain's other side. */
export function beginOnBottom(hands: Hands, place: Place): boolean {
  const noun = nounOf(place.of ?? place);
  const names = noun.kind === 'chain' || (noun.kind === 'start-chain' && place.of !== null);
  if (!names || noun.chains || place.fromHook || !outlineOf(hands)) return false;
  borderOf(hands);
  return alongBottom(hands);
}

/** "20 sc evenly along each side", of how many nobody tells: the count of the row does, if anything does. */
export function alongEachSide(hands: Hands, { times, steps }: RepeatStep): boolean {
  const [side, more] = steps;
  if (times.kind !== 'missing' || more || side?.kind !== 'work' || !side.evenly) return false;
  if (side.n === null || side.stitch.shape !== 'one') return false;
  openSide(hands, side);
  return true;
}

/** "14 sc along side (sc in end of 6 rows, 2 sc in end of next row)": how they are spread. */
export const explainsSide = (before: Step | undefined, { times, steps }: RepeatStep): boolean =>
  times.kind === 'missing' &&
  before?.kind === 'work' &&
  before.evenly &&
  before.n !== null &&
  steps.every((step) => step.kind === 'work' && nounOf(step.place).kind === 'row-end');

/** The other side of the foundation chain, behind a corner or a side; false: nothing is known of one. */
export function alongBottom(hands: Hands): boolean {
  const { border } = hands;
  if (!border?.outline) return false;
  if (border.side === 'chain') return true;
  hands.border = { ...border, side: 'chain' };
  standOn(hands, bottomOf(hands, border.outline));
  beginSide(hands);
  return true;
}

function standOn(hands: Hands, edge: Edge): void {
  hands.edge = edge;
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = edge.n;
}

/** The hands came round to another side, of which nothing is worked yet: "3 sc in first ch". */
export const beginsSide = ({ border, pos, first, edge }: Hands): boolean =>
  border !== null && first !== null && pos === 0 && edge.n > 0;

/** Behind a corner that was worked into the first place of a side, that one is taken. */
function beginSide(hands: Hands): void {
  const { border, edge } = hands;
  if (!border || border.corners === 0 || edge.n === 0) return;
  if (cornersTakePlaces(hands)) hands.pos = edge.type.indexOf(COUNTED) + 1;
}

/** "Sc in each st across, 3 sc in corner": beside the last stitch, or in it. */
function cornersTakePlaces(hands: Hands): boolean {
  const { at, atBase } = hands;
  if (hands.statedStitches < 0) guessNumber(hands);
  const reading = ask(hands.readings, {
    doubt: 'corners of the piece',
    custom: 'places of their own',
    alternatives: ['the last places of its sides'],
    local: true,
    from: (at?.from ?? 0) + atBase,
    to: (at?.to ?? 0) + atBase,
  });
  return reading !== 'places of their own';
}

/** Where a side ends that is worked up to a corner: before its last place, if that is the corner. */
export function endOfSide(hands: Hands, limit: number): number {
  const { edge } = hands;
  if (edge.n === 0 || edge.kind === 'into' || hands.border?.side === 'ends') return limit;
  return cornersTakePlaces(hands) ? Math.min(limit, edge.type.lastIndexOf(COUNTED)) : limit;
}

/** Goes to the side that the step names, where that is not the one at hand. */
export function toSide(hands: Hands, step: Step | undefined): void {
  if (step?.kind !== 'work' || hands.into || hands.pieces) return;
  const { place } = step;
  const { kind } = nounOf(place);
  if (kind === 'row-end' && place?.pick !== 'same' && hands.border?.side !== 'ends')
    return alongRowEnds(hands);
  const { border, edge } = hands;
  // "…, 3 sc in corner, sc across top" behind three corners: the side that is left.
  const isRest = place === null && step.until?.kind === 'end' && !step.n && !step.evenly;
  if (isRest && border?.side === 'corner' && border.top && border.corners > 2)
    return alongTop(hands, border, border.top);
  if (!border || !place || place.fromHook || place.pick === 'same') return;
  if (kind === 'chain' && border.side !== 'chain') alongBottom(hands);
  else if (
    (kind === 'stitch' || kind === 'stem') &&
    (border.side === 'corner' || isUsedUp(hands))
  ) {
    if (border.top) alongTop(hands, border, border.top);
    else if (edge.kind !== 'foundation') alongBottom(hands);
  }
}

function alongTop(hands: Hands, border: Border, top: Edge): void {
  hands.border = { ...border, side: 'row', top: null };
  standOn(hands, top);
  beginSide(hands);
}

const isUsedUp = (hands: Hands): boolean => hands.edge.kind === 'into' || !hasLeft(hands);

/** "18 sc across the side", "30 sc" along row ends: so many, whatever is there. */
export function spreadsAlong(hands: Hands, { place, stitch, n, until }: WorkStep): boolean {
  const { border } = hands;
  if (!border || hands.into || place || stitch.shape !== 'one' || stitch.special) return false;
  if (n === null && until === null) return false;
  return border.side === 'ends' || border.side === 'corner' || isUsedUp(hands);
}

/**
 * "2 dc in each dc row": as many rows as are of that stitch; "sc across ends of rows": as many as the maker
 * likes. True: the step was worked so.
 */
export function alongNamedRows(hands: Hands, step: WorkStep): boolean {
  const { place, n } = step;
  const noun = nounOf(place);
  if (noun.kind !== 'row-end' || place?.pick !== 'each' || place.n || !hands.border) return false;
  const bare = n === null && !place.each;
  if (noun.stem === null && !bare) return false;
  const { outline } = hands.border;
  hands.pos = hands.limit;
  if (bare || !outline?.isCounted) openSide(hands, step);
  else {
    const stem = stemOf(noun.stem ?? '', hands.bench.terms);
    const rows = outline.rows.filter((row) => stemOfRow(hands, row) === stem).length;
    stitches(hands, step, NO_PLACE, rows * (numberFor(hands, n) ?? 1));
  }
  return true;
}

/** "20 sc along row ends": so many in all; "2 sc in ends of rows": in each of them. */
export const isSpreadOverRowEnds = (hands: Hands, { place, n }: WorkStep): boolean =>
  place !== null &&
  nounOf(place).kind === 'row-end' &&
  place.pick === 'each' &&
  !place.each &&
  (numberFor(hands, n) ?? 0) >= 4;

/** "Sc evenly down the side": how many, the count of the row tells if anything does. */
export function openSide(hands: Hands, step: WorkStep): void {
  const border = borderOf(hands);
  const { sideFill, statedStitches } = hands;
  const at = border.openSides;
  hands.border = { ...border, openSides: at + 1 };
  hands.loose = true;
  if (statedStitches < 0) guessNumber(hands);
  stitches(hands, step, NO_PLACE, sideFill === null ? 1 : shareOf(sideFill, at));
}

/** Shares of a number too large by less than one go to the first sides: see `fillOf`. */
const shareOf = (fill: number, side: number): number =>
  Math.floor(fill) + (side < Math.round((fill - Math.floor(fill)) * 64) ? 1 : 0);

/**
 * When a row has been worked with one stitch for each side of unknown number: how many belong to each by the
 * row's count; `null`: there is no such side, or the count does not tell.
 */
export function fillOf(hands: Hands): number | null {
  const sides = hands.border?.openSides ?? 0;
  if (sides === 0 || sides > 63 || hands.sideFill !== null || hands.statedStitches < 0) return null;
  const all = hands.statedStitches - countedSince(hands, hands.rowFrom) + sides;
  if (all < sides) {
    hands.partly = true;
    return null;
  }
  return Math.floor(all / sides) + (all % sides) / 64;
}

/**
 * "Sc evenly around, working 3 sc in each corner" on a piece worked in rows: side, corner, side, corner. The
 * steps of the row so told; `null`: nothing of the kind is meant, or how many corners there are is not known.
 */
export function borderAround(
  hands: Hands,
  steps: readonly Step[],
  { i, top }: Here,
): readonly Step[] | null {
  const told = steps[i];
  if (!top || (told?.kind !== 'work' && told?.kind !== 'repeat')) return null;
  const behind = sidesFrom(steps, i);
  if (!behind) return null;
  const corner = steps[behind.next];
  if (!corner || !isEachCorner(corner) || !isOnPiece(hands)) return null;
  const outline = hands.border?.outline ?? outlineOf(hands);
  if (outline && !outline.isEven) return null;
  // "Join in any corner, 3 sc in corner, sc evenly along each side, 3 sc in each corner": three are left.
  const left = 4 - (hands.border?.corners ?? 0);
  if (left < 3) return null;
  const one = {
    ...corner,
    place: { ...corner.place, pick: 'this' as const, each: false, until: null },
  };
  const round = behind.sides.flatMap((side, at): Step[] =>
    at < left ? [...side, one] : [...side],
  );
  return [...steps.slice(0, i), ...round, ...steps.slice(behind.next + 1)];
}

const openly = (side: WorkStep): WorkStep => ({
  ...side,
  n: null,
  place: null,
  until: null,
  evenly: true,
});

/** "Sc evenly around", "sc in each st around", of which nothing but corners follows. */
function goesAlong({ place, until, evenly, n, alsoIn }: WorkStep): boolean {
  if ((n?.values[0] ?? 1) !== 1 || alsoIn.length > 0) return false;
  if (evenly || (place === null && until?.kind === 'end')) return true;
  const noun = nounOf(place);
  const named = noun.kind === 'stitch' || noun.kind === 'stem';
  const plain = named && !noun.corner && !noun.skipped;
  return place?.pick === 'each' && plain && (place.until?.kind === 'end' || until?.kind === 'end');
}

interface Sides {
  /** In the order met, each as it is worked. */
  readonly sides: readonly (readonly WorkStep[])[];
  /** The step behind them. */
  readonly next: number;
}

/**
 * "Sc evenly around", "…, working 40 sc on each long side and 30 sc on each short side", "…, working 1 sc in
 * each st and 2 sc in each row end": the four sides; `null`: none are told of.
 */
function sidesFrom(steps: readonly Step[], i: number): Sides | null {
  const told = steps[i];
  const side =
    told?.kind === 'work' && told.stitch.shape === 'one' && goesAlong(told) ? told : null;
  const pairs: WorkStep[] = [];
  const four: WorkStep[] = [];
  const ends: WorkStep[] = [];
  const along: WorkStep[] = [];
  let next = side ? i + 1 : i;
  for (; next < steps.length; next++) {
    const step = steps[next];
    const pair = step?.kind === 'repeat' ? sideOf(step, 2) : null;
    const each = step?.kind === 'repeat' ? sideOf(step, 4) : null;
    if (pair) pairs.push(pair);
    else if (each) four.push(each);
    else if (side && step && isIn(step, ['row-end'])) ends.push(step);
    else if (side && step && isIn(step, ['stitch', 'chain'])) along.push(step);
    else if (step?.kind !== 'remark') break;
  }
  const [first, second] = pairs;
  const others = ends.length + along.length;
  const [all] = four;
  if (all && four.length === 1 && pairs.length + others === 0)
    return { sides: [[all], [all], [all], [all]], next };
  if (pairs.length === 2 && first && second && others === 0)
    return { sides: [[first], [second], [first], [second]], next };
  if (!side) return null;
  const open = [openly(side)];
  if (pairs.length + others === 0) return { sides: [open, open, open, open], next };
  if (pairs.length > 0 || ends.length === 0) return null;
  const [stitch] = along;
  const top = stitch ? [{ ...stitch, n: null }] : open;
  return { sides: [top, ends, top, ends], next };
}

/** "1 sc in each row end", "sc in each st". */
const isIn = (step: Step, kinds: readonly string[]): step is WorkStep =>
  step.kind === 'work' &&
  step.place?.pick === 'each' &&
  !step.place.n &&
  kinds.includes(nounOf(step.place).kind);

/** "36 sc evenly on each short side": two of them; "on each side" of four: `n`. */
function sideOf({ steps, times }: RepeatStep, n: number): WorkStep | null {
  const [side, more] = steps;
  const isOf = times.kind === 'times' && times.n.values.length === 1 && times.n.values[0] === n;
  return isOf && !more && side?.kind === 'work' && side.evenly && side.n ? side : null;
}

const isEachCorner = (step: Step): step is (WorkStep | GroupStep) & { place: Place } =>
  (step.kind === 'work' || step.kind === 'group') &&
  step.place?.pick === 'each' &&
  step.place.n === null &&
  nounOf(step.place).kind === 'corner';
