/**
 * "Repeat rows 1 and 2", where row 1 was worked into the foundation chain: worked again it goes over the
 * stitches of the row beneath, as hands do without a thought, and its chains are these stitches.
 */
import {
  type Instruction,
  type Noun,
  PLAIN_NOUN,
  type Place,
  type Step,
  type WorkStep,
} from '../notation/index.ts';
import type { Task } from './task.ts';

/** The task in stitches, if it works a row of the foundation again; else as it is. */
export function overStitches(task: Task): Task {
  const { instruction, asks } = task;
  if (asks.steps === instruction.steps || !isOnChain(instruction)) return task;
  const steps = instruction.steps.flatMap((step, i) =>
    isFirstSkip(step, i) ? [] : [inStitches(step)],
  );
  return { ...task, instruction: { ...instruction, steps } };
}

/** More chains than these are a foundation of the row's own. */
const LONGEST_TURNING = 5;

/** Does it begin on a chain that it has not made, and go along that? */
function isOnChain({ steps }: Instruction): boolean {
  const own = steps.find(({ kind }) => kind === 'chain');
  if (own?.kind === 'chain' && (own.n?.values[0] ?? 0) > LONGEST_TURNING) return false;
  if (steps.some(({ kind }) => kind === 'other-side' || kind === 'ring')) return false;
  const first = steps.findIndex(({ kind }) => kind === 'work' || kind === 'group');
  const opens = steps[first];
  const place = opens && 'place' in opens ? opens.place : null;
  const counted = place?.fromHook || (place?.pick === 'nth' && isChain(place.nouns[0]));
  const skips = steps.slice(0, first).some((step, i) => isFirstSkip(step, i));
  return (counted || skips) && steps.some(goesAlongChain);
}

const isChain = (noun: Noun | undefined): boolean => noun?.kind === 'chain';

/** "Skip the first ch", "sk 3 ch": the chains that turn. */
const isFirstSkip = (step: Step, i: number): boolean =>
  i === 0 && step.kind === 'skip' && isChain(step.place.nouns[0]);

/** "… in each ch across", "*sk 2 ch, shell in next ch": not all of it stands in one chain. */
function goesAlongChain(step: Step): boolean {
  switch (step.kind) {
    case 'work':
      return [step.place, ...step.alsoIn].some(
        (place) => place !== null && !place.fromHook && isChain(place.nouns[0]),
      );
    case 'group':
    case 'repeat':
      return step.steps.some(goesAlongChain) || ('place' in step && isChain(step.place.nouns[0]));
    default:
      return false;
  }
}

function inStitches(step: Step): Step {
  switch (step.kind) {
    case 'work': {
      const place = step.place && ofStitches(step.place);
      const work: WorkStep = {
        ...step,
        place,
        alsoIn: step.alsoIn.map(ofStitches),
        countsAs: null,
      };
      return work;
    }
    case 'group':
      return { ...step, place: ofStitches(step.place), steps: step.steps.map(inStitches) };
    case 'skip':
      return { ...step, place: ofStitches(step.place) };
    case 'repeat':
      return { ...step, steps: step.steps.map(inStitches) };
    default:
      return step;
  }
}

/** The chain counted from the hook is the next stitch; a chain by no length of its own is a stitch. */
function ofStitches(place: Place): Place {
  const nouns = place.nouns.map((noun) =>
    isChain(noun) && noun.chains === null ? { ...PLAIN_NOUN, plural: noun.plural } : noun,
  );
  const counted = place.fromHook || (place.pick === 'nth' && isChain(place.nouns[0]));
  if (!counted) return { ...place, nouns };
  return { ...place, nouns, pick: 'next', nth: null, fromHook: false };
}
