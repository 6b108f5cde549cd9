/**
 * "6 sc, 3 sc in same st, 5 sc": among stitches that are told by their numbers alone, the three often
 * stand in one stitch together, which is the next: so do those of "skip 2, 5 dc in same st, skip 2". The
 * sums tell.
 */
import type { Place, Step, WorkStep } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { type Hands, spanAt } from '../hands.ts';
import { nounOf } from '../noun.ts';
import { ask } from '../readings.ts';

/** The place, which is the next one where "same" means one for all of them. */
export function inOneOfList(hands: Hands, step: WorkStep, place: Place, here: Here): Place {
  if (place.pick !== 'same' || place.of || nounOf(place).kind !== 'stitch') return place;
  const before = here.steps[here.i - 1];
  const isListed = before?.kind === 'work' && before.place === null && before.until === null;
  const isPassed = before?.kind === 'skip' && here.steps[here.i + 1]?.kind === 'skip';
  if (!(isListed || isPassed) || (step.n?.values[0] ?? 1) < 2) return place;
  const reading = ask(hands.readings, {
    doubt: 'same in a list',
    custom: 'the place worked last',
    alternatives: ['one place for all'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'the place worked last' ? place : { ...place, pick: 'next' };
}

/**
 * "1 sc in 2nd ch from hook, 1 hdc, 1 dc in same st": the hdc stands in the next, or with the dc in that of the
 * sc. The sums tell.
 */
export function isInSame(hands: Hands, step: WorkStep, { steps, i }: Here): boolean {
  const before = steps[i - 1];
  if (!isBare(step) || hands.last === null || before?.kind !== 'work') return false;
  if (before.place === null && !endsInSame(steps, i - 1)) return false;
  if (!endsInSame(steps, i)) return false;
  const reading = ask(hands.readings, {
    doubt: 'list before same',
    custom: 'the next place',
    alternatives: ['the place worked last'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'the place worked last';
}

/** From step `i` on single stitches without a place, and then one in the same. */
function endsInSame(steps: readonly Step[], i: number): boolean {
  let at = i;
  while (isBare(steps[at])) at++;
  const end = steps[at];
  return at > i && end?.kind === 'work' && end.place?.pick === 'same' && end.place.of === null;
}

const isBare = (step: Step | undefined): boolean =>
  step?.kind === 'work' &&
  step.place === null &&
  step.until === null &&
  !step.numberAfter &&
  (step.n?.values ?? [1]).every((n) => n === 1);
