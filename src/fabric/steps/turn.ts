/** Turning: at a row's start and end the part sees to it; in the middle, work goes back. */
import type { Step } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { edgeOf, turnedRing } from '../edge.ts';
import { type Hands, numberFor, remaining } from '../hands.ts';
import { isSlip } from '../shape.ts';
import { roundTheEnd } from '../take.ts';

const WORKS = ['work', 'group', 'repeat', 'boxes', 'chart', 'even', 'skip'];

export function doTurn(hands: Hands, step: Step & { kind: 'turn' }, here: Here): void {
  // Before anything is worked the turn belongs to the row's start, also behind a starting chain.
  const begun = here.steps.slice(0, here.i).some((before) => WORKS.includes(before.kind));
  if (step.not || !begun || !here.top) return;
  const more = here.steps.slice(here.i + 1).some((next) => WORKS.includes(next.kind));
  if (!more || alongOwnChain(hands, here)) return;
  // "4 sc in last ch, turn, sc in next 20 ch": the work is turned about its end, and goes on round.
  if (hands.pos >= hands.edge.n && roundTheEnd(hands)) return;
  if (hands.edge.ring && here.steps.slice(0, here.i).every(moves)) return goBack(hands);
  workOn(hands, true);
}

/**
 * "Sc in next 6 sts; ch 5; turn; sc in 2nd ch from hook, sc in next 3 ch; sc in last 6 sts": the hook goes back
 * along the chain and on to what is left of the row.
 */
function alongOwnChain(hands: Hands, { steps, i }: Here): boolean {
  const next = steps[i + 1];
  const before = steps.slice(0, i).findLast(({ kind }) => kind !== 'remark');
  if (before?.kind !== 'chain' || next?.kind !== 'work' || !next.place?.fromHook) return false;
  const left = remaining(hands);
  return steps
    .slice(i + 2)
    .some(
      (step) =>
        step.kind === 'work' &&
        step.place?.pick === 'last' &&
        left > 0 &&
        (numberFor(hands, step.place.n) ?? 1) === left,
    );
}

/** Slip stitches, and what makes no stitch: the round has not begun yet. */
const moves = (step: Step): boolean => isSlip(step) || !WORKS.includes(step.kind);

/** "Sl st in next st, turn, *dc in next st, …* around": the same round, met the other way. */
function goBack(hands: Hands): void {
  hands.edge = turnedRing(hands.edge);
  hands.pos = 0;
  hands.inner = 0;
  hands.last = null;
  hands.first = null;
  hands.used = 0;
}

/** What was made so far becomes the edge for the rest of the instruction. */
export function workOn(hands: Hands, reversed: boolean): void {
  hands.edge = edgeOf(hands.nodes, hands.bench.kinds, {
    from: hands.rowFrom,
    to: hands.nodes.n,
    ring: hands.edge.ring,
    reversed,
    open: false,
  });
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = hands.edge.n;
  hands.last = null;
  hands.first = null;
  hands.used = 0;
  hands.rowFrom = hands.nodes.n;
}
