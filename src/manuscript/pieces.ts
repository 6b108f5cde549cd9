/** Where a piece of work begins: told from its first instructions. */
import type { Instruction, Place, RowLabel, Step } from '../notation/index.ts';
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
 * Whether an instruction starts work of its own: a ring, a foundation chain, foundation stitches,
 * or yarn that is joined. A chain that opens a labelled row counts only if it is worked into.
 */
export function startsWork({ label, steps }: Instruction): boolean {
  return steps.some((step, i) => {
    if (step.kind === 'ring') return true;
    if (step.kind === 'join') return step.yarn !== null || (step.ring && i <= 2);
    if (step.kind === 'work') {
      return step.stitch.foundation || placesOf(step).some((place) => place.fromHook);
    }
    if (step.kind !== 'chain' || (label && !isFoundation(label))) return false;
    return step.open || step.n === null || (step.n.values[0] ?? 0) >= SHORTEST_FOUNDATION;
  });
}

/** "Foundation: Chain 23; work in spiral.": the chain by its name, and no row. */
export const isFoundation = ({ numbers, text }: RowLabel): boolean =>
  numbers.length === 0 &&
  /^(?:foundation|base|start(?:ing)?|beginning)(?: chain| ch)?$/i.test(text);

/** "Join yarn in next unworked st of Rnd 1": taken up where the piece before was left. */
export const joinsOntoWork = ({ steps }: Instruction): boolean =>
  steps.some(
    (step) =>
      step.kind === 'join' &&
      [step.place, step.place?.of].some((place) => place?.nouns.some(({ skipped }) => skipped)),
  );

/** "Ch 1" with a line of its own above "Row 1: sc 12": an earflap goes on from the round before it. */
export const isTurningChain = ({ label, steps }: Instruction): boolean =>
  label === null && steps.length === 1 && steps[0]?.kind === 'chain' && steps[0].n?.values[0] === 1;

type Work = Extract<Step, { kind: 'work' }>;

const placesOf = (step: Work): readonly Place[] =>
  step.place ? [step.place, ...step.alsoIn] : step.alsoIn;

/** Whether the yarn is cut at the end of a piece. */
export function endsWork(instructions: readonly PlacedInstruction[]): boolean {
  const steps = instructions.at(-1)?.instruction.steps ?? [];
  return steps.slice(-4).some((step) => step.kind === 'fasten-off' && !step.not);
}

/**
 * Whether a first round works into stitches that are there, without joining yarn: a brim or an
 * edging whose rounds are numbered anew. "6 sc" alone, with no place, may be a ring left unsaid.
 */
export const takesUpWork = ({ steps }: Instruction): boolean => anyTakesUp(steps, 0);

/** Deep enough for any row that is meant; a hostile one must not exhaust the stack. */
const DEEPEST = 8;

function anyTakesUp(steps: readonly Step[], depth: number): boolean {
  return steps.some((step) => {
    if (step.kind === 'other-side') return true;
    if (step.kind === 'repeat') return depth < DEEPEST && anyTakesUp(step.steps, depth + 1);
    if (step.kind === 'group') return isOnWork(step.place);
    if (step.kind !== 'work') return false;
    return step.evenly || step.until !== null || placesOf(step).some(isOnWork);
  });
}

/** A ring or a chain belongs to a start; stitches, spaces and row ends to finished work. */
const isOnWork = (place: Place): boolean =>
  !place.fromHook && !place.nouns.some((noun) => noun.kind === 'ring' || noun.kind === 'chain');
