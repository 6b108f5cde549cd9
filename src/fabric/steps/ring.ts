/** A ring: one place that holds any number of stitches; made, or understood. */
import type { ChainStep, WorkStep } from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { bareEdge } from '../edge.ts';
import { type Hands, makeRing, numberFor, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';

export function doRing(hands: Hands): void {
  if (hands.edge.kind === 'into' && hands.first === null) return;
  hands.edge = bareEdge('into', makeRing(hands));
  hands.pos = 0;
  hands.limit = 0;
}

/** Rings of chain that stitches go into, and not along, have at most so many (common practice). */
const MOST_IN_RING = 10;

/** Do stitches that are told with no place go into a ring? */
export function worksIntoRing(hands: Hands, step: WorkStep): boolean {
  const { edge, foundation } = hands;
  if (edge.kind === 'into') return true;
  // "Rnd 1: 6 sc (6)": with nothing to work into, a ring is understood; not behind stitches that had places.
  if (edge.kind === 'none' && hands.first === null) {
    if (step.n || step.numberAfter) return understood(hands, step);
    // "Row 1: dc (20)", whose chain stands in no words that were read: along what is not known.
    hands.edge = { ...edge, open: true };
    hands.loose = true;
    return false;
  }
  if (edge.kind === 'none') return false;
  if (edge.kind !== 'foundation' || !edge.ring || !foundation?.joined) return false;
  const small = foundation.to - foundation.from <= MOST_IN_RING;
  const reading = ask(hands.readings, {
    doubt: 'ring of chain',
    custom: small ? INTO : ALONG,
    alternatives: [small ? ALONG : INTO],
    local: false,
    ...spanAt(hands, step),
  });
  return reading === INTO;
}

const INTO = 'into the ring';
const ALONG = 'along the chain';

function understood(hands: Hands, step: ChainStep | WorkStep): true {
  const question = { doubt: 'no beginning', custom: 'a ring', alternatives: [], local: false };
  ask(hands.readings, { ...question, ...spanAt(hands, step) });
  hands.ringUnderstood = true;
  return true;
}

/**
 * "Rnd 1: Ch 3, 2 dc, ch 2, *3 dc, ch 2; rep from *": nothing is made before it, and the chain is too
 * short to hold what is told with no place. It starts the round, and a ring is understood.
 */
export function startsInRing(hands: Hands, step: ChainStep, row: RowContext): boolean {
  const { firstWork, join } = row.shape;
  const n = numberFor(hands, step.n);
  if (n === null || n > MOST_START || !firstWork || firstWork.place || firstWork.until)
    return false;
  const first = numberFor(hands, firstWork.n);
  if (first === null || (join === null && first <= n)) return false;
  return understood(hands, step);
}

/** The tallest start chain with a space beside it: of a double treble, and 2. */
const MOST_START = 7;
