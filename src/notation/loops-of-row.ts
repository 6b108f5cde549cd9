/**
 * "6 sc in BLO of rnd 3": of the row before it is the way the hook goes in; of an older row, whose loops
 * were left free, the work is beside the round, and is not followed stitch by stitch.
 */
import { termWith } from './stitch-term.ts';
import type { PieceStep, RowLabel, Step, WorkStep } from './tree.ts';

/** The steps, with rows named behind a loop settled. */
export function settleLoopsOfRow(steps: readonly Step[], label: RowLabel | null): readonly Step[] {
  if (!steps.some(inLoopsOfRow)) return steps;
  const before = (label?.numbers[0] ?? 0) - 1;
  return steps.flatMap((step): readonly Step[] => {
    if (!inLoopsOfRow(step) || step.place === null) return [step];
    const { place } = step;
    const stitch = termWith(step.stitch, { loop: place.loop });
    const until = place.until ?? step.until;
    const work: WorkStep = { ...step, stitch, place: null, until };
    if (place.row === before) return [work];
    const { from, to } = place;
    const piece: PieceStep = { kind: 'piece', word: 'round', which: null, how: 'on', from, to };
    return [piece, work];
  });
}

const inLoopsOfRow = (step: Step): step is WorkStep =>
  step.kind === 'work' &&
  step.place !== null &&
  step.place.row !== null &&
  step.place.loop !== null &&
  step.place.nouns.length === 0;
