/** Slip stitches that the words of a part take for places: "*sl st in next hdc, hdc in next sl st*". */
import type { Part } from '../manuscript/index.ts';
import type { Place, Step } from '../notation/index.ts';
import { allSteps } from './shape.ts';

const known = new WeakMap<Part, boolean>();

/** Whether stitches are worked into each or next slip stitch, or one is skipped; worked out once a part. */
export function namesSlips(part: Part): boolean {
  const told = known.get(part);
  if (told !== undefined) return told;
  const names = part.instructions.some(({ instruction }) =>
    [...allSteps(instruction.steps)].some(takesSlip),
  );
  known.set(part, names);
  return names;
}

const takesSlip = (step: Step): boolean =>
  (step.kind === 'work' && (isSlip(step.place) || step.alsoIn.some(isSlip))) ||
  (step.kind === 'skip' && isSlip(step.place));

/** "First sl st" is where a round joins. */
const isSlip = (place: Place | null): boolean =>
  (place?.pick === 'next' || place?.pick === 'each') &&
  place.nouns.some(({ stem }) => stem === 'ss');
