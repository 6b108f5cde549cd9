/** Chains: a foundation, a starting chain, a space, or the next row's chain at this row's end. */
import type { ChainStep, Step } from '../../notation/index.ts';
import { chosenCount } from '../chosen-count.ts';
import type { Here, RowContext } from '../context.ts';
import { bareEdge, foundationEdge } from '../edge.ts';
import {
  atStart,
  countedSince,
  fact,
  type Hands,
  make,
  makeRing,
  numberFor,
  originFor,
  spanAt,
} from '../hands.ts';
import { kindOf } from '../kinds.ts';
import { bridge } from '../pieces.ts';
import { trailing } from '../shape.ts';
import { makeChains, makeStartChain, readStartChain } from '../start-chain.ts';
import { beginsWithMore } from './box-more.ts';
import { leadsToPiece } from './piece.ts';
import { startsInRing } from './ring.ts';

export function doChain(hands: Hands, step: ChainStep, row: RowContext, here: Here): void {
  if (here.top && leadsToPiece(hands, here) && !raisesHook(hands, step, here))
    return makeBridge(hands, step);
  if (startsPiece(hands) || startsAgain(hands, step, row)) {
    // "Ch 2, 10 dc in magic ring": the chain is no foundation, the ring is.
    const intoRing =
      !closesFirst(here) && (row.shape.usesRing || (here.top && startsInRing(hands, step, row)));
    if (!intoRing && (row.beginsLater || turnsOnly(hands, step, row)))
      return beginWithChain(hands, step, row);
    if (!intoRing) return makeFoundationChain(hands, step);
    hands.edge = bareEdge('into', makeRing(hands));
  }
  if (startsNext(hands, step, row, here)) {
    hands.fastened = false;
    hands.ringUnderstood = false;
    return makeFoundationChain(hands, step);
  }
  if (lengthens(hands, here)) return lengthen(hands, step);
  if (here.top && trailing(here.steps, here.i)) {
    if ((numberFor(hands, step.n) ?? 1) > TALLEST_TURN) return widen(hands, step);
    hands.pending = step;
    hands.pendingBase = hands.base;
    return;
  }
  const inBlock = hands.cornerBlocks && hands.nodes.n > hands.rowFrom;
  if (beginsRow(hands, here) && !inBlock) return beginWithChain(hands, step, row);
  const n = numberFor(hands, step.n) ?? 1;
  makeChains(hands, n, originFor(hands, step));
}

/**
 * "Fasten off." and then "For the strap, ch 20": the yarn is free, and the chain is worked into. Behind
 * talk that passed for work, and had no beginning, a long chain is the beginning.
 */
const startsNext = (hands: Hands, step: ChainStep, row: RowContext, here: Here): boolean =>
  (hands.fastened || hands.ringUnderstood || (hands.edge.kind === 'row' && hands.edge.n === 0)) &&
  here.top &&
  beginsRow(hands, here) &&
  (numberFor(hands, step.n) ?? 0) > TALLEST_TURN &&
  (row.shape.idle || row.shape.firstWork?.place?.fromHook === true);

/**
 * "Ch 22. Ch 1, sc in 2nd ch from hook", "ch 4 (counts as dc + ch 1), dc in 6th ch from hook": the second chain
 * goes on from the first, and is counted with it.
 */
function lengthens(hands: Hands, here: Here): boolean {
  const next = here.steps[here.i + 1];
  const n = numberFor(hands, (here.steps[here.i] as ChainStep).n) ?? 1;
  return (
    hands.edge.kind === 'foundation' &&
    !hands.edge.ring &&
    hands.first === null &&
    hands.foundation?.to === hands.nodes.n &&
    (skipsOwn(next) ||
      (next?.kind === 'work' &&
        next.place?.fromHook === true &&
        (next.place.nth ?? 0) > n &&
        (next.place.nth ?? 0) <= n + MOST_SKIPPED))
  );
}

/** Chains passed behind a turning chain: the widest gap of a mesh. */
const MOST_SKIPPED = 4;

/** "Ch 1 more, sk ch just made" */
const skipsOwn = (next: Step | undefined): boolean =>
  next?.kind === 'skip' && next.place.pick === 'this' && next.place.nouns[0]?.kind === 'chain';

function lengthen(hands: Hands, step: ChainStep): void {
  const { foundation, edge } = hands;
  if (!foundation) return;
  makeChains(hands, numberFor(hands, step.n) ?? 1, originFor(hands, step));
  const to = hands.nodes.n;
  hands.foundation = { ...foundation, to };
  const traits = { ring: false, reversed: true, open: edge.open };
  hands.edge = foundationEdge(foundation.from, to, traits);
  hands.limit = hands.edge.n;
  hands.rowFrom = to;
}

/** "Ch 1, sc in each st of first side": one chain at the row's start bridges nothing. */
const raisesHook = (hands: Hands, step: ChainStep, here: Here): boolean =>
  numberFor(hands, step.n) === 1 && beginsRow(hands, here);

/** A chain from one piece to another. */
function makeBridge(hands: Hands, step: ChainStep): void {
  const n = numberFor(hands, step.n) ?? 1;
  const from = hands.nodes.n;
  const before = countedSince(hands, hands.rowFrom) === 0;
  makeChains(hands, n, originFor(hands, step));
  bridge(hands, { from, n, before });
}

/** Turning chains are at most so long: the quintuple treble's, and nobody turns higher. */
const TALLEST_TURN = 8;

/** A long chain at a row's end widens the piece: the next row is worked along it. */
function widen(hands: Hands, step: ChainStep): void {
  makeChains(hands, numberFor(hands, step.n) ?? 1, originFor(hands, step));
  hands.leave = true;
}

/** "Ch 5, join to form a ring": the chain is closed before anything is worked. */
const closesFirst = (here: Here): boolean =>
  here.steps
    .slice(here.i + 1)
    .find((next) => ['join', 'work', 'repeat', 'group'].includes(next.kind))?.kind === 'join';

/** Nothing has been made that could be worked into, or the yarn was cut and not joined again. */
const startsPiece = (hands: Hands): boolean =>
  hands.edge.kind === 'none' && hands.into === null && atStart(hands);

/**
 * "Ch 1, sc in each st around", "ch 3, dc in next dc" where nothing lies beneath: no row is worked into one chain,
 * and no stitch stands on a chain that has none.
 */
function turnsOnly(hands: Hands, step: ChainStep, { shape }: RowContext): boolean {
  const place = shape.firstWork?.place;
  const kind = place?.nouns[0]?.kind;
  const n = numberFor(hands, step.n) ?? 1;
  if (!place || place.fromHook || place.of || n > LONGEST_TURN) return false;
  return (n === 1 && place.pick === 'each' && kind !== 'chain') || kind === 'stem';
}

const LONGEST_TURN = 4;

/**
 * A longer chain in an order of its own, while a chain lies there that nothing was worked into: the
 * first was talk ("ch 3 counts as dc"), or was undone.
 */
const startsAgain = (hands: Hands, step: ChainStep, row: RowContext): boolean =>
  (row.shape.idle || row.shape.firstWork?.place?.fromHook === true) &&
  // "Ch 2. Rnd 1: ch 3 (counts as dc), 11 dc in 2nd ch from hook": beside the stitches in the first chain.
  !(step.countsAs?.counts === true && !row.shape.idle) &&
  hands.edge.kind === 'foundation' &&
  !hands.edge.ring &&
  hands.first === null &&
  (numberFor(hands, step.n) ?? 0) > hands.edge.n;

const beginsRow = (hands: Hands, here: Here): boolean =>
  (here.top || hands.into !== null) && (onlySlipsSoFar(hands) || saidToCount(hands, here));

/** "Ch 1, sl st around post of first dc; ch 5 (counts as dc and ch 2)": the second is the stitch. */
function saidToCount(hands: Hands, here: Here): boolean {
  const step = here.steps[here.i];
  if (step?.kind !== 'chain' || !step.countsAs?.counts || !here.top) return false;
  return hands.edge.kind === 'row' && countedSince(hands, hands.rowFrom) === 0;
}

function onlySlipsSoFar(hands: Hands): boolean {
  for (let id = hands.rowFrom; id < hands.nodes.n; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.class !== 'slip') return false;
  }
  return true;
}

/** Makes the starting chain of a row as the words, the notes or custom have it. */
function beginWithChain(hands: Hands, step: ChainStep, row: RowContext): void {
  hands.pending = null;
  if (beginsWithMore(hands, step, row)) return;
  // "Sl st in next 4 sc, ch 16, sk 5, sl st in next sc": a handle stands for no stitch.
  if (row.shape.onlySlips && hands.nodes.n > hands.rowFrom)
    return makeChains(hands, numberFor(hands, step.n) ?? 1, originFor(hands, step));
  makeStartChain(hands, step, readStartChain(hands, step, row));
}

function makeFoundationChain(hands: Hands, step: ChainStep): void {
  const n = numberFor(hands, step.n) ?? chosenCount(hands, step);
  const from = hands.nodes.n;
  const open = n === null;
  if (open) fact(hands, { kind: 'open-count', ...spanAt(hands, step) });
  const kind = kindOf(hands.bench.kinds, 'chain');
  const origin = originFor(hands, step);
  for (let i = 0; i < (n ?? 0); i++) make(hands, kind, origin, null);
  const to = hands.nodes.n;
  hands.foundation = { from, to, joined: false };
  hands.edge = foundationEdge(from, to, { ring: false, reversed: true, open });
  hands.pos = 0;
  hands.limit = hands.edge.n;
  hands.rowFrom = to;
}
