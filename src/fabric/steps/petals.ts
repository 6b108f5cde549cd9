/** Petals worked from stitch to stitch around a joined round, each closed by a slip stitch in the next. */
import type { Place, Step, WorkStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { COUNTED } from '../edge.ts';
import { type Hands, hasLeft, numberFor } from '../hands.ts';
import { allSteps } from '../shape.ts';

/**
 * "*Ch 2, 2 dc in same st, sl st in next st; rep from * 5 times": a round of petals that begins in the joined
 * stitch ends there, so that its last slip stitch has no other place.
 */
export const closesPetal = (
  hands: Hands,
  { place, n }: WorkStep,
  { shape }: RowContext,
  { steps, i }: Here,
): boolean =>
  hands.repeats === 1 &&
  !hands.cameHome &&
  hands.edge.ring &&
  hands.edge.kind === 'row' &&
  hands.first?.entry === hands.edge.type.indexOf(COUNTED) &&
  !hands.into &&
  !hands.edge.open &&
  place?.pick === 'next' &&
  (numberFor(hands, place.n ?? n) ?? 1) === 1 &&
  !hasLeft(hands) &&
  steps.slice(i + 1).every(({ kind }) => kind === 'remark' || kind === 'mark') &&
  beginsInSame(shape);

/** The first place that the round names is the one on which the hook stands. */
function beginsInSame({ steps }: RowContext['shape']): boolean {
  const [first] = placedIn(steps);
  return first?.pick === 'same';
}

function* placedIn(steps: readonly Step[]): Generator<Place> {
  for (const step of allSteps(steps)) if ('place' in step && step.place) yield step.place;
}
