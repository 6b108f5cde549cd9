/** Which words of a row to point at: those that would have to change. */
import type { PlacedInstruction } from '../manuscript/index.ts';
import type { Step } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { askedBy, holds, type Scene, type Sighting, workedFrom } from './scene.ts';

/**
 * Places too few or too many at a repeat with a number are a matter of that number: "5 more times"
 * is pointed at rather than the stitch at which the hands stopped.
 */
export function askedTimes(scene: Scene, sighting: Sighting, at: Span): Span {
  const placed = workedFrom(scene, sighting.row, sighting.cloth);
  if (!placed || !holds(placed, at)) return at;
  const step = placed.instruction.steps.find((one) => holds(absolute(placed, one), at));
  if (step?.kind !== 'repeat' || step.times.kind !== 'times') return at;
  const order = step.order.to > step.order.from ? step.order : step.times;
  return absolute(placed, order);
}

/** The order of these kinds within the row, else the row's label, else the row. */
export function orderAt(scene: Scene, { row, fact }: Sighting, ...kinds: Step['kind'][]): Span {
  const placed = askedBy(scene, row);
  if (!placed) return fact;
  const step = placed.instruction.steps.find(({ kind }) => kinds.includes(kind));
  if (step) return absolute(placed, step);
  const { label } = placed.instruction;
  return label && label.to > label.from ? absolute(placed, label) : fact;
}

const absolute = ({ from }: PlacedInstruction, span: Span): Span => ({
  from: span.from + from,
  to: span.to + from,
});
