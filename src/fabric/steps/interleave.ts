/**
 * "Sc in each st and ch-1 sp around, working 3 sc in each corner": several clauses that share one
 * walk. What lies next on the edge decides which of them is worked.
 */
import {
  type GroupStep,
  type Noun,
  PLAIN_NOUN,
  type Place,
  placeWith,
  type Step,
  type Until,
  type WorkStep,
} from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { COUNTED, groupAround, isCorner, SPACE } from '../edge.ts';
import { type Hands, numberFor, type Target } from '../hands.ts';
import { limitOf, ofEach } from '../limit.ts';
import { isCornerStitch, leadsAlongSides, workStandingFirst } from '../next.ts';
import { takeSpaceAt, takeStitchAt } from '../take.ts';
import { workIn } from './group.ts';
import { perPlace, stemIs, stitches } from './stitch.ts';

type Clause = WorkStep | GroupStep;

interface Member {
  readonly step: Clause;
  readonly place: Place;
}

/** "Sc around", as "sc in each st around": beside a clause for the corners it leaves these out. */
const memberAround = (step: Step | undefined): Member | null => {
  if (step?.kind !== 'work' || step.place || step.n || step.until?.kind !== 'end') return null;
  if (step.evenly || step.stitch.special !== null || step.stitch.shape !== 'one') return null;
  const { from, to, until } = step;
  return {
    step,
    place: placeWith({ from, to }, { pick: 'each', each: true, nouns: [PLAIN_NOUN], until }),
  };
};

const memberOf = (step: Step | undefined): Member | null => {
  if (step?.kind !== 'work' && step?.kind !== 'group') return null;
  if (step.kind === 'work' && step.stitch.special !== null) return null;
  if (!step.place) return null;
  const last = step.kind === 'work' ? step.alsoIn.at(-1) : undefined;
  const place = cornerOf(step.place) ?? ofEach(last ?? step.place);
  return place.pick === 'each' ? { step, place } : null;
};

const goesRound = (until: Until | null): boolean =>
  until?.kind === 'end' && /round/.test(until.word);

/** "In centre st of each corner", "in centre of 7 sc for corner": the middle of what lies there. */
function cornerOf(place: Place): Place | null {
  if (place.pick !== 'centre' || !place.of) return null;
  const { of } = place;
  const [noun] = of.nouns;
  const size = of.pick === 'next' ? (of.n?.values[0] ?? null) : null;
  const each = of.pick === 'each' && (noun?.kind === 'corner' || noun?.corner);
  const middle = noun?.kind === 'group' || (typeof size === 'number' && size > 2);
  if (!noun || (!each && !middle)) return null;
  return { ...place, pick: 'each', each: true, nouns: [noun], n: of.n, of: null };
}

const isOneCentre = (step: Step | undefined): boolean =>
  step?.kind === 'work' && step.place?.pick === 'centre' && step.place.of?.pick !== 'each';

/** What is told behind a walk that goes round: "working 3 sc in corners", "(…) in each corner". */
function toldBehind(step: Step | undefined, introduced: boolean): Member | null {
  if ((step?.kind !== 'work' && step?.kind !== 'group') || !step.place) return null;
  const { place } = step;
  const [noun] = place.nouns;
  const cornered = noun?.kind === 'corner' || noun?.corner === true;
  const all = noun?.plural || introduced || (place.n?.values[0] ?? 1) === CORNERS;
  if (!cornered || !(place.pick === 'this' || (place.pick === 'next' && all))) return null;
  return { step, place: { ...place, pick: 'each', each: true, n: null } };
}

/** "In the 4 corners" of a square: in each. */
const CORNERS = 4;

/** "Sc in same st and in each st around": what comes before the walk that is shared. */
export function beforeTogether(step: Step): WorkStep | null {
  if (step.kind !== 'work' || step.alsoIn.length === 0) return null;
  return { ...step, alsoIn: step.alsoIn.slice(0, -1) };
}

const groundOf = (place: Place): 'corner' | 'space' | 'stitch' => {
  const noun = place.nouns[0];
  if (noun?.kind === 'corner' || noun?.corner || place.pick === 'centre') return 'corner';
  if (place.n !== null && (place.n.values[0] ?? 0) > 2) return 'corner';
  if (noun?.kind === 'group') return 'corner';
  return noun?.kind === 'space' && place.nouns.length === 1 ? 'space' : 'stitch';
};

/** The clauses from `i` on that go together, and the index after them; none if they do not. */
export function togetherFrom(
  steps: readonly Step[],
  i: number,
): { members: readonly Member[]; next: number } | null {
  // "3 dc in centre dc of 3-dc group, 1 dc in each dc to end": of one group, and then on.
  const first = isOneCentre(steps[i]) ? null : (memberOf(steps[i]) ?? memberAround(steps[i]));
  if (!first) return null;
  const round = goesRound(first.place.until);
  const behind = (k: number): Member | null =>
    memberOf(steps[k]) ?? (round ? toldBehind(steps[k], steps[k - 1]?.kind === 'remark') : null);
  if (!behind(i + 1) && !behind(i + 2) && !behind(i + 3)) return null;
  const members: Member[] = [first];
  let next = i + 1;
  for (let k = i + 1; k < steps.length; k++) {
    if (steps[k]?.kind === 'remark') continue;
    const member = behind(k);
    if (!member) break;
    members.push(member);
    next = k + 1;
  }
  const grounds = new Set(members.map(({ place }) => groundOf(place)));
  // "Hdc around, 2 hdc in each ch-1 sp": only what is told of corners is told of the same walk.
  if (members[0]?.step.kind === 'work' && !members[0].step.place && !grounds.has('corner'))
    return null;
  return grounds.size > 1 || byName(members) ? { members, next } : null;
}

/** "Dc in each dc and sc in each sc across": the first alone would leave nothing to the second. */
function byName([first, ...others]: readonly Member[]): boolean {
  if (first?.place.until !== null || others.length === 0) return false;
  const named = [first, ...others].every(
    ({ place, step }) =>
      place.n === null && place.nouns[0]?.kind === 'stem' && step.kind === 'work' && !step.n,
  );
  return named && others.some(({ place }) => place.until?.kind === 'end');
}

export function doTogether(
  hands: Hands,
  members: readonly Member[],
  row: RowContext,
  here: Here,
): void {
  const corner = members.find(({ place }) => groundOf(place) === 'corner');
  if (corner) leadsAlongSides(hands, corner.place);
  const outer = hands.limit;
  const until = members.find(({ place }) => place.until)?.place.until ?? null;
  hands.limit = limitOf(hands, until);
  workStandingFirst(hands);
  let corners = 0;
  while (hands.pos < hands.limit) {
    const entry = hands.pos;
    const member = memberFor(hands, members, entry);
    if (!member) {
      hands.pos++;
      continue;
    }
    const space = hands.edge.type[entry] === SPACE;
    const target = space ? takeSpaceAt(hands, entry) : takeStitchAt(hands, entry);
    if (groundOf(member.place) === 'corner') corners++;
    workMember(hands, member, target, { row, here });
  }
  hands.limit = Math.max(hands.limit, outer);
  // Which places are corners is not told: what the row makes is not known.
  const cornered = members.some(({ place }) => groundOf(place) === 'corner');
  if (cornered && corners === 0) hands.partly = hands.loose = true;
}

function workMember(
  hands: Hands,
  member: Member,
  target: Target,
  at: { row: RowContext; here: Here },
): void {
  const { step } = member;
  if (step.kind === 'group') workIn(hands, step, target, at);
  else stitches(hands, step, target, perPlace(hands, step));
}

/** The middle stitch of a group of three or more in one place; of so many, where that is said. */
function isMiddle({ edge, nodes }: Hands, entry: number, size: number | null): boolean {
  const group = groupAround(edge, nodes, entry);
  const isOdd = group.size >= 3 && group.size % 2 === 1;
  return isOdd && group.at === group.size >> 1 && (size === null || size === group.size);
}

function memberFor(hands: Hands, members: readonly Member[], entry: number): Member | null {
  const type = hands.edge.type[entry];
  const corner =
    isCorner(hands.edge, hands.nodes, entry) ||
    (hands.edge.spaces === 0 && isCornerStitch(hands, entry));
  const fits = ({ place }: Member, noun: Noun): boolean => {
    if (noun.kind === 'corner' || noun.corner) return corner && groundOf(place) === 'corner';
    if (groundOf(place) === 'corner') return isMiddle(hands, entry, place.n?.values[0] ?? null);
    if (noun.kind === 'space') {
      const chains = numberFor(hands, noun.chains);
      return type === SPACE && (chains === null || chains === hands.edge.run[entry]);
    }
    return type === COUNTED && (noun.kind !== 'stem' || stemIs(hands, entry, noun.stem));
  };
  const exact = members.filter((member) => member.place.nouns.some((noun) => fits(member, noun)));
  const cornered = exact.find(({ place }) => groundOf(place) === 'corner');
  if (cornered) return cornered;
  if (exact[0]) return exact[0];
  // A stitch by another name than the clause has is still the next stitch.
  return type === COUNTED
    ? (members.find(({ place }) => groundOf(place) === 'stitch') ?? null)
    : null;
}
