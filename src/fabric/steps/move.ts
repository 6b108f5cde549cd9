/** Slip stitches that move the start: the work begins where they end, and nothing is made. */
import type { Place, WorkStep } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { COUNTED, rotated, SPACE } from '../edge.ts';
import { type Hands, make, numberFor, originFor } from '../hands.ts';
import { kindOf } from '../kinds.ts';
import { checkSize, picotAhead } from '../next.ts';
import { nounOf } from '../noun.ts';
import {
  isSpace,
  middleOf,
  nextGroup,
  nextGroupGap,
  nextSpace,
  seek,
  spaceTarget,
  takeStitch,
} from '../take.ts';

/** `then`: whether the work begins where the slip stitch ends, or that place is taken by it. */
export function moveStart(
  hands: Hands,
  step: WorkStep,
  row: RowContext,
  then: 'begins' | 'here' | 'taken',
): void {
  for (const place of [step.place, ...step.alsoIn].flatMap(oneByOne)) {
    const n = numberFor(hands, place?.n ?? null) ?? numberFor(hands, step.n) ?? 1;
    makeSlips(hands, step, wantsSpace(hands, place) ? 1 : n);
    if (row.round || hands.edge.ring) moveInRound(hands, place, n);
    else moveInRow(hands, place, n);
  }
  if (then === 'here') {
    // "Sl st in sp. *3 dc in sp…": that space is the first to be worked.
    hands.pos = 0;
    hands.last = null;
    hands.first = null;
  } else if (then === 'taken' && hands.pos === 0 && (row.round || hands.edge.ring)) {
    takeStitch(hands, 'passed');
  }
}

/** "Sl st in next dc and ch-2 sp": into one after the other. */
const oneByOne = (place: Place | null): readonly (Place | null)[] =>
  place && place.nouns.length > 1 && place.joinedBy === 'and'
    ? place.nouns.map((noun, i) => ({ ...place, nouns: [noun], n: i === 0 ? place.n : null }))
    : [place];

function makeSlips(hands: Hands, step: WorkStep, n: number): void {
  const kind = kindOf(hands.bench.kinds, 'slip', 'slip');
  for (let i = 0; i < n; i++) make(hands, kind, originFor(hands, step), null);
}

const MOVES_TO_SPACE: ReadonlySet<string> = new Set(['space', 'corner', 'group', 'gap']);

const wantsSpace = (hands: Hands, place: Place | null): boolean => {
  const { kind } = nounOf(place?.of ?? place);
  return hands.edge.spaces > 0 && MOVES_TO_SPACE.has(kind);
};

/** The hook stands on the first stitch after a join: "next" is the one after it. */
function moveInRound(hands: Hands, place: Place | null, n: number): void {
  const { edge } = hands;
  const centre = place?.pick === 'centre' ? centreOfGroup(hands, place) : -1;
  if (centre >= 0) {
    hands.edge = rotated(edge, centre);
    hands.pos = 0;
    return;
  }
  if (wantsSpace(hands, place)) {
    // "Sl st in next 3 ch, sl st in same loop": there already.
    if (place?.pick === 'same' && hands.standing) return;
    const noun = nounOf(place?.of ?? place);
    // "Sl st to sp of next shell", with loops before it: the space that a group holds.
    const inGroup = noun.corner || noun.kind === 'group';
    const entry = nextSpace(hands, spaceLength(hands, place), inGroup);
    if (entry < 0) return;
    if (place) checkSize(hands, entry, noun, place);
    return standIn(hands, entry);
  }
  if (nounOf(place?.of ?? place).kind === 'chain' && edge.spaces > 0) {
    // Along the chains of a loop towards its middle: the loop is where the work begins.
    const entry = seek(hands, (i) => isSpace(hands, i));
    return entry < 0 ? undefined : standIn(hands, entry);
  }
  const picot = nounOf(place?.of ?? place).kind === 'picot' ? picotAhead(hands) : -1;
  if (picot >= 0) {
    hands.edge = rotated(edge, picot);
    hands.pos = 1;
    hands.last = { node: hands.edge.node[0] ?? -1, space: false, entry: 0 };
    hands.first = hands.last;
    return;
  }
  if (nounOf(place).kind === 'gap') return standInGap(hands, place);
  const loop = loopBeside(hands, place, n);
  if (loop >= 0) return standIn(hands, loop);
  if (place?.pick === 'same' || place?.pick === 'first') return;
  let left = n;
  // The slip stitches or the chain that led to the first stitch lie before it.
  const first = edge.type.indexOf(COUNTED);
  for (let i = Math.max(first, 0) + 1; i < edge.n; i++) {
    if (edge.type[i] === COUNTED && --left === 0) {
      hands.edge = rotated(edge, i);
      hands.pos = 0;
      return;
    }
  }
}

/** Chains of the space that is named, of itself or of a group; `null`: not said. */
const spaceLength = (hands: Hands, place: Place | null): number | null =>
  numberFor(hands, nounOf(place?.of ?? place).chains ?? nounOf(place).chains);

/** "Sl st between first and last groups, sc in same place", with no chains between groups: in that gap. */
function standInGap(hands: Hands, place: Place | null): void {
  const behind = place?.pick === 'next' ? nextGroupGap(hands) : 0;
  if (behind > 0 && behind < hands.edge.n) hands.edge = rotated(hands.edge, behind);
  hands.pos = 0;
  hands.last = { node: hands.edge.node[0] ?? -1, space: true, entry: 0 };
  hands.first = hands.last;
}

/** "Sl st to center dc of 1st dc group": the stitch in the middle; -1 where that is a space. */
function centreOfGroup(hands: Hands, { nouns, of }: Place): number {
  const named = nouns[0]?.kind === 'stem' || nouns[0]?.kind === 'stitch';
  if (!named || of?.nouns[0]?.kind !== 'group') return -1;
  const group = nextGroup(hands);
  const middle = group ? middleOf(hands, group) : -1;
  return middle >= 0 && hands.edge.type[middle] === COUNTED ? middle : -1;
}

/**
 * "Sl st in each of next 4 sts, ch 4, 3 tr in same st" from a stitch beside a loop of as many chains: along
 * these. The loop; -1: stitches are meant.
 */
function loopBeside({ edge }: Hands, place: Place | null, n: number): number {
  const noun = nounOf(place);
  const nth = place?.pick === 'nth' && !place.of ? (place.nth ?? 1) : n;
  if (!place || noun.kind !== 'stitch' || noun.skipped || nth < 2) return -1;
  const beside = edge.type.indexOf(COUNTED) + 1;
  const have = edge.type[beside] === SPACE ? (edge.run[beside] ?? 0) : 0;
  return have >= SHORTEST_LOOP && have >= nth ? beside : -1;
}

/** Chains of a loop that is gone along (judgement): fewer are a space beside stitches. */
const SHORTEST_LOOP = 4;

/** Stands in a space: it is the place that "same" means, and the start. */
export function standIn(hands: Hands, entry: number): void {
  hands.edge = rotated(hands.edge, entry);
  hands.pos = 1;
  hands.tookSpace = true;
  hands.standing = true;
  hands.last = spaceTarget(hands.edge, 0);
  hands.first = hands.last;
}

/** In rows what is slipped over stays unworked. */
function moveInRow(hands: Hands, place: Place | null, n: number): void {
  if (wantsSpace(hands, place)) {
    const entry = seek(hands, (i) => hands.edge.type[i] === SPACE);
    if (entry >= 0) {
      hands.pos = entry + 1;
      hands.last = spaceTarget(hands.edge, entry);
      hands.first = hands.last;
    }
    return;
  }
  const inChains = nounOf(place).kind === 'chain' && hands.edge.spaces > 0;
  for (let i = 0; i < n; i++) takeStitch(hands, inChains ? 'chains' : 'passed');
}
