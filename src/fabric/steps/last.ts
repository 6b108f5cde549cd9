/** Places counted from the end of the row. */
import type { Place } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { COUNTED } from '../edge.ts';
import { fact, type Hands, numberFor, remaining, spanAt } from '../hands.ts';
import { startChainLimit } from '../next.ts';
import { nounOf } from '../noun.ts';
import { takeStitch } from '../take.ts';

/** "In last 3 sts": what stands before them would be left over. */
export function openLast(hands: Hands, place: Place, many: number): void {
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
export function reserved(hands: Hands, here: Here): number {
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
