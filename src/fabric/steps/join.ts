/** Joins: a round that is closed, a chain made into a ring, yarn attached to finished work. */
import type { JoinStep, Step, WorkStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { edgeOf, foundationEdge, rotated, SPACE, unknownEdge } from '../edge.ts';
import {
  atStart,
  countedSince,
  type Hands,
  make,
  numberFor,
  originFor,
  spanAt,
  takeYarnNamed,
} from '../hands.ts';
import { nounOf } from '../noun.ts';
import { arrived, atJoin } from '../pieces.ts';
import { takePlace } from '../place.ts';
import { isSlip } from '../shape.ts';
import { checkNamedChain } from '../start-chain.ts';
import { spaceTarget } from '../take.ts';
import { beginOnBottom } from './border.ts';
import { closeSpace } from './close-space.ts';
import { isOwnChain } from './own-chain.ts';
import { firstStitchOf, kindFor } from './stitch.ts';
import { workOn } from './turn.ts';

const WORKS = ['work', 'group', 'repeat', 'boxes', 'chart', 'even'];

export function doJoin(hands: Hands, step: JoinStep, row: RowContext, here: Here): void {
  if (atJoin(hands)) return joinPiece(hands, step);
  if (joinsChain(hands)) return closeChain(hands, row);
  if (makesOwnRing(hands, step, here)) return;
  if (joinsElsewhere(hands, step)) {
    takeYarnNamed(hands, step.yarn);
    hands.fastened = false;
    const row = step.place?.row ?? step.place?.of?.row ?? null;
    if (row !== null && beginOnRow(hands, row)) return attach(hands, step);
    if (step.place && beginOnBottom(hands, step.place)) return attach(hands, step);
    hands.edge = unknownEdge();
    hands.pos = hands.limit = 0;
    return beginWithStitch(hands, step);
  }
  const onSkipped = step.place !== null && nounOf(step.place).skipped;
  if (atStart(hands) && (hands.edge.kind !== 'none' || onSkipped)) return attach(hands, step);
  row.round = true;
  checkTop(hands, step);
  closeWithStitch(hands, step);
  if (here.top && step.yarn === null && movesOn(hands, here)) return;
  const more = here.steps.slice(here.i + 1).some((next: Step) => WORKS.includes(next.kind));
  if (more && here.top && step.yarn === null) {
    hands.edge = { ...hands.edge, ring: true };
    workOn(hands, false);
  }
}

/** "Sc in next 3 sc, ch 10, sl st in 5th ch to make a ring, ch 5, …": of its own chain, and the row goes on. */
function makesOwnRing(hands: Hands, { place, yarn }: JoinStep, { steps, i }: Here): boolean {
  if (place?.pick !== 'nth' || place.of || yarn !== null || nounOf(place).kind !== 'chain')
    return false;
  const goesOn = steps.slice(i + 1).some((next) => WORKS.includes(next.kind));
  return goesOn && !atStart(hands) && isOwnChain(hands, { ...place, fromHook: true });
}

/**
 * "Join, sl st in next 2 dc and in ch-2 sp": slip stitches that end a round's words lead to where the next one
 * begins, and are made then.
 */
function movesOn(hands: Hands, { steps, i }: Here): boolean {
  const behind = steps.slice(i + 1).filter(({ kind }) => WORKS.includes(kind));
  const slips = behind.filter((step): step is WorkStep => step.kind === 'work' && isSlip(step));
  if (slips.length === 0 || slips.length < behind.length) return false;
  hands.moves = slips;
  hands.movesBase = hands.base;
  return true;
}

/** "Attach yarn at left shoulder" where a part begins: on an edge of pieces that are finished. */
const joinsElsewhere = (hands: Hands, step: JoinStep): boolean =>
  step.yarn !== null &&
  hands.edge.kind === 'none' &&
  hands.into === null &&
  atStart(hands) &&
  !(step.place !== null && nounOf(step.place).skipped);

/** "Join yarn in first st of Row 40", where that row was worked last, flat: on its edge. */
function beginOnRow(hands: Hands, number: number): boolean {
  const row = hands.history.at(-1);
  if (row?.number !== number || row.ring) return false;
  const { from, to } = row;
  const range = { from, to, ring: false, reversed: false, open: false };
  hands.edge = edgeOf(hands.nodes, hands.bench.kinds, range);
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = hands.edge.n;
  return true;
}

/** "Join to first leg": the stitch stays free for the work that follows, unless it is joined with it. */
function joinPiece(hands: Hands, step: JoinStep): void {
  hands.fastened = false;
  const from = hands.nodes.n;
  beginWithStitch(hands, step);
  if (hands.nodes.n > from) arrived(hands, 'free');
}

/** "Join in 3rd ch of beg ch-4": that chain must be the top of what the chain stands for. */
function checkTop(hands: Hands, step: JoinStep): void {
  const { place } = step;
  const noun = place?.of?.nouns[0] ?? place?.nouns[0];
  if (!place || noun?.kind !== 'start-chain') return;
  const nth = place.pick === 'nth' ? place.nth : null;
  const of = numberFor(hands, noun.chains);
  checkNamedChain(hands, firstStitchOf(hands).node, { nth, of }, spanAt(hands, place));
}

const joinsChain = (hands: Hands): boolean =>
  hands.edge.kind === 'foundation' && hands.first === null && !hands.edge.ring && atStart(hands);

function closeChain(hands: Hands, row: RowContext): void {
  const { foundation } = hands;
  if (!foundation) return;
  row.round = true;
  hands.foundation = { ...foundation, joined: true };
  const traits = { ring: true, reversed: false, open: hands.edge.open };
  hands.edge = foundationEdge(foundation.from, foundation.to, traits);
  hands.pos = 0;
  hands.limit = hands.edge.n;
}

/** "Ch 2, join with dc in first sc": the stitch closes the last space, as chains would. */
function closeWithStitch(hands: Hands, step: JoinStep): void {
  const stitch = step.with;
  if (!stitch || stitch.stem === null || stitch.stem === 'ss' || hands.first === null) return;
  const before = hands.bench.kinds.kinds[hands.nodes.kind[hands.nodes.n - 1] ?? 0];
  const closes = before?.class === 'chain' && countedSince(hands, hands.rowFrom) > 1;
  if (closes) closeSpace(hands, step, stitch);
}

/** Yarn is joined somewhere on the edge: the round or row begins there. */
function attach(hands: Hands, step: JoinStep): void {
  if (step.yarn) takeYarnNamed(hands, step.yarn);
  hands.fastened = false;
  const { place } = step;
  if (!place || place.pick === 'same' || hands.edge.kind === 'into') {
    return beginWithStitch(hands, step);
  }
  const before = hands.used;
  const target = takePlace(hands, place, step);
  const noun = nounOf(place);
  if (noun.skipped || target.entry < 0) {
    // On a run of skipped stitches the first one is taken by the stitch that follows in words.
    hands.used = before;
    hands.pos = Math.max(0, target.entry);
    hands.first = null;
    hands.last = null;
  } else if (hands.edge.type[target.entry] === SPACE) {
    hands.edge = rotated(hands.edge, target.entry);
    hands.pos = 1;
    hands.standing = true;
    hands.last = spaceTarget(hands.edge, 0);
    hands.first = hands.last;
  } else {
    hands.edge = hands.edge.ring ? rotated(hands.edge, target.entry) : hands.edge;
    hands.pos = hands.edge.ring ? 0 : target.entry;
    hands.used = before;
    hands.first = null;
    hands.last = null;
  }
  hands.limit = hands.edge.n;
  beginWithStitch(hands, step);
}

/** "Join with sc in first st": the join is the first stitch. */
function beginWithStitch(hands: Hands, step: JoinStep): void {
  if (!step.with || step.with.stem === 'ss' || step.with.stem === null) return;
  const target = hands.last ?? takePlace(hands, null, step);
  make(hands, kindFor(hands, step.with, step), originFor(hands, step), target);
}
