/** Where a piece of work begins: told from its first instructions. */
import type { Instruction, RowLabel, Step } from '../notation/index.ts';
import type { PlacedInstruction } from './manuscript.ts';

/** The first and the last number of a label; `null` for "Next row" and the like. */
export function numbersOf(label: RowLabel | null): { first: number; last: number } | null {
  const first = label?.numbers[0];
  const last = label?.numbers.at(-1);
  return first === undefined || last === undefined ? null : { first, last };
}

/** A shorter chain at the start of unlabelled work is a turning chain ("Ch 3, turn"). */
const SHORTEST_FOUNDATION = 5;

/**
 * Whether an instruction starts work of its own: a ring, a foundation chain, foundation stitches, or
 * yarn that is joined. A chain that opens a labelled row counts only if it is worked into.
 */
export function startsWork({ label, steps }: Instruction): boolean {
  return steps.some((step, i) => {
    if (step.kind === 'ring') return true;
    if (step.kind === 'join') return step.yarn !== null || (step.ring && i <= 2);
    if (step.kind === 'work') {
      return step.stitch.foundation || placesOf(step).some((place) => place.fromHook);
    }
    if (step.kind !== 'chain' || label) return false;
    return step.open || step.n === null || (step.n.values[0] ?? 0) >= SHORTEST_FOUNDATION;
  });
}

const placesOf = (step: Extract<Step, { kind: 'work' }>) =>
  step.place ? [step.place, ...step.alsoIn] : step.alsoIn;

/** Whether the yarn is cut at the end of a piece. */
export function endsWork(instructions: readonly PlacedInstruction[]): boolean {
  const steps = instructions.at(-1)?.instruction.steps ?? [];
  return steps.slice(-4).some((step) => step.kind === 'fasten-off' && !step.not);
}

/**
 * Whether a first round takes up places of finished work without joining yarn: an edging whose
 * rounds are numbered anew. Only the plain cases: row ends, "same st as join", "each st", "evenly".
 */
export function takesUpWork({ steps }: Instruction): boolean {
  return steps.some((step) => {
    if (step.kind === 'other-side') return true;
    if (step.kind !== 'work') return false;
    if (step.evenly || step.until) return true;
    return placesOf(step).some(
      (place) =>
        (place.pick === 'each' && place.until !== null) ||
        place.nouns.some((noun) => noun.kind === 'row-end' || noun.kind === 'join'),
    );
  });
}
