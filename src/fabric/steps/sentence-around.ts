/** "Sc in same st, 2 sc in next st around": the clauses of the sentence are repeated together. */
import type { Place, RepeatStep, Step, WorkStep } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { type Hands, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';

/**
 * What is worked in place of step `i`, where that is a clause "in next st around" behind others: the
 * clause once, and the sentence as often as the row holds. `null` where no more is meant than it says.
 */
export function sentenceAround(
  hands: Hands,
  steps: readonly Step[],
  here: Here,
): readonly Step[] | null {
  const step = steps[here.i];
  if (!here.top || hands.into || step?.kind !== 'work' || !goesAround(step)) return null;
  const before = clausesBefore(steps, here.i);
  if (before.length === 0) return null;
  const reading = ask(hands.readings, {
    doubt: 'around behind next',
    custom: 'the whole sentence',
    alternatives: ['the last clause'],
    local: true,
    ...spanAt(hands, step),
  });
  const once: WorkStep = { ...step, until: null };
  if (reading === 'the last clause') {
    return [...steps.slice(0, here.i), eachOf(step), ...steps.slice(here.i + 1)];
  }
  const again = repeatOf([...before.map(onNext), once], step);
  return [...steps.slice(0, here.i), once, again, ...steps.slice(here.i + 1)];
}

const goesAround = ({ place, until, alsoIn }: WorkStep): boolean =>
  until?.kind === 'end' &&
  place?.pick === 'next' &&
  place.n === null &&
  !place.each &&
  alsoIn.length === 0;

/** Stitches and skips of the same sentence, up to the row's starting chain or another repeat. */
function clausesBefore(steps: readonly Step[], i: number): readonly Step[] {
  let from = i;
  while (from > 0 && isClause(steps[from - 1])) from--;
  return steps.slice(from, i).filter(({ kind }) => kind !== 'remark');
}

const isClause = (step: Step | undefined): boolean =>
  step?.kind === 'skip' ||
  step?.kind === 'remark' ||
  (step?.kind === 'work' &&
    step.until === null &&
    step.alsoIn.length === 0 &&
    step.stitch.stem !== 'ss' &&
    (step.place === null || MOVES.has(step.place.pick)));

const MOVES: ReadonlySet<Place['pick']> = new Set<Place['pick']>(['same', 'first', 'next']);

/** "In same st" as the join has it is the next stitch in every other pass. */
const onNext = (step: Step): Step =>
  step.kind === 'work' && step.place ? { ...step, place: { ...step.place, pick: 'next' } } : step;

const eachOf = (step: WorkStep): WorkStep =>
  step.place
    ? { ...step, place: { ...step.place, pick: 'each', each: true, until: step.until } }
    : step;

function repeatOf(steps: readonly Step[], at: WorkStep): RepeatStep {
  const { from, to, until } = at;
  return {
    kind: 'repeat',
    mark: '',
    steps,
    times: until ? { kind: 'until', until, from, to } : { kind: 'missing' },
    ending: null,
    again: true,
    order: { from, to },
    from,
    to,
  };
}
