/** Several places become one stitch: sc2tog, a cluster over three stitches. */
import { type Place, stemOf, type Until, type WorkStep } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { type Hands, hasLeft, make, numberFor, originFor, spanAt } from '../hands.ts';
import { hasNext, limitOf } from '../limit.ts';
import { workStandingFirst } from '../next.ts';
import { addAnchor } from '../nodes.ts';
import { gapsOf, nounOf } from '../noun.ts';
import { takePlace } from '../place.ts';
import { ask } from '../readings.ts';
import { takeStitch } from '../take.ts';
import { countFromHook, skippedChains } from './from-hook.ts';
import { openLast } from './last.ts';
import { kindFor, stitches } from './stitch.ts';

/** Several places become one stitch: sc2tog, a cluster over three stitches. */
export function workTogether(
  hands: Hands,
  step: WorkStep,
  places: readonly (Place | null)[],
  row: RowContext,
): void {
  const { stitch } = step;
  if (hands.into) return stitches(hands, step, hands.into, numberFor(hands, step.n) ?? 1);
  const place = places[0] ?? null;
  if (place && isHooked(hands, place)) skippedChains(hands, step, place);
  if (place && places.length === 1 && sharesFoot(hands, step, place, row)) {
    return inOnePlaceEach(hands, step, place);
  }
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
    // "Sc3tog over next 2 sts" contradicts itself: it takes what the stitch has legs, and the sums tell.
    const wanted = step.n === null && times === 1 && over !== null && over > legs ? over : legs;
    oneTogether(
      hands,
      step,
      Array.from({ length: wanted }, (_, k) => single && legPlace(hands, single, i + k === 0)),
    );
  }
}

/** Where a leg stands: the first where the words say, "in same st", "in 2nd ch from hook", all others next. */
const legPlace = (hands: Hands, place: Place, isFirst: boolean): Place =>
  isFirst && (place.pick === 'same' || isHooked(hands, place))
    ? place
    : { ...place, pick: 'next', nth: null, fromHook: false };

const isHooked = (hands: Hands, { pick, fromHook }: Place): boolean =>
  pick === 'nth' && fromHook && hands.edge.kind === 'foundation';

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
export function togetherAlong(hands: Hands, step: WorkStep, legs: number): void {
  const gaps = gapsOf(hands, null, step);
  make(hands, kindFor(hands, step.stitch, step), originFor(hands, step), takeStitch(hands, gaps));
  for (let i = 1; i < legs; i++) addAnchor(hands.nodes, takeStitch(hands, gaps).node);
}

function oneTogether(hands: Hands, step: WorkStep, legs: readonly (Place | null)[]): void {
  // "Dc2tog in 3rd and 4th ch from hook": each leg is counted from the hook.
  const hook = hands.edge.kind === 'foundation' && legs.some((leg) => leg?.fromHook);
  const targets = legs.map((leg) =>
    hook && leg?.pick === 'nth' ? countFromHook(hands, leg, step) : takePlace(hands, leg, step),
  );
  const [first, ...others] = targets;
  if (!first) return;
  make(hands, kindFor(hands, step.stitch, step), originFor(hands, step), first);
  for (const other of others) addAnchor(hands.nodes, other.node);
}

function togetherToEnd(hands: Hands, step: WorkStep, legs: number, until: Until | null): void {
  const limit = hands.limit;
  hands.limit = limitOf(hands, until);
  while (hasLeft(hands, legs)) {
    togetherAlong(hands, step, legs);
  }
  hands.limit = Math.max(hands.limit, limit);
}

const ONE_PLACE: ReadonlySet<string> = new Set(['space', 'corner', 'ring', 'group', 'box']);

/**
 * "dc3tog in next ch-2 sp", "dc2tog in same st": all legs stand in the place named. "tr3tog in next
 * st" may mean that or the next three; the sums tell.
 */
function sharesFoot(hands: Hands, step: WorkStep, place: Place, row: RowContext): boolean {
  const single = numberFor(hands, place.n) === null;
  // "Dc2tog over next 2 loops": one leg in each.
  const oneLegEach = !place.each && numberFor(hands, place.n) === (step.stitch.legs ?? 2);
  if (ONE_PLACE.has(nounOf(place).kind)) return !(oneLegEach && standsOver(hands, step));
  if (!single || !(isHooked(hands, place) || ['next', 'same', 'each'].includes(place.pick)))
    return false;
  // Legs of single crochet are drawn together over stitches: in one place they would make none.
  const { stem } = step.stitch;
  if (place.pick !== 'same' && stem && stemOf(stem, hands.bench.terms) === 'w0') return false;
  // Where the start chain and the legs beside it are the first cluster, the others are clusters too.
  const isOne = place.pick === 'same' || row.shape.chainIsLeg;
  const custom = isOne ? 'in one place' : 'over as many places';
  return togetherIn(hands, step, custom) === 'in one place';
}

const standsOver = (hands: Hands, step: WorkStep): boolean =>
  togetherIn(hands, step, 'over as many places') === 'over as many places';

const togetherIn = (
  hands: Hands,
  step: WorkStep,
  custom: 'in one place' | 'over as many places',
): string =>
  ask(hands.readings, {
    doubt: 'together in one place',
    custom,
    alternatives: [custom === 'in one place' ? 'over as many places' : 'in one place'],
    local: true,
    ...spanAt(hands, step),
  });

function inOnePlaceEach(hands: Hands, step: WorkStep, place: Place): void {
  const one = (at: Place): void => {
    make(
      hands,
      kindFor(hands, step.stitch, step),
      originFor(hands, step),
      isHooked(hands, at) ? countFromHook(hands, at, step) : takePlace(hands, at, step),
    );
  };
  const next: Place = {
    ...place,
    pick: place.pick === 'each' ? 'next' : place.pick,
    until: null,
    n: null,
  };
  if (place.pick !== 'each') {
    const n = (numberFor(hands, step.n) ?? 1) * (numberFor(hands, place.n) ?? 1);
    for (let i = 0; i < n; i++) one(next);
    return;
  }
  const outer = hands.limit;
  hands.limit = limitOf(hands, place.until);
  const gaps = gapsOf(hands, place, step);
  workStandingFirst(hands);
  for (let before = -1; hasNext(hands, next, gaps) && hands.pos > before; ) {
    before = hands.pos;
    one(next);
  }
  hands.limit = Math.max(hands.limit, outer);
}
