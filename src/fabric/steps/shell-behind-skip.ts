/**
 * "*skip 2, sc, 2 dc in next st; rep from *": all of the list may go into that one stitch, as the
 * brackets tell in other patterns. The sums show it.
 */
import type { GroupStep, RepeatStep, Step, WorkStep } from '../../notation/index.ts';
import { type Hands, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';

/** The repeat, its list made a group where that reading was chosen. */
export function shellBehindSkip(hands: Hands, step: RepeatStep): RepeatStep {
  const from = step.steps.findIndex(
    (inner, i) => isLoose(inner) && step.steps[i - 1]?.kind === 'skip',
  );
  if (from < 0) return step;
  let to = from;
  while (isLoose(step.steps[to])) to++;
  const last = step.steps[to];
  const first = step.steps[from];
  if (last?.kind !== 'work' || first?.kind !== 'work' || !isOneNext(last)) return step;
  if (last.stitch.stem === first.stitch.stem) return step;
  const reading = ask(hands.readings, {
    doubt: 'list behind a skip',
    custom: 'one after the other',
    alternatives: ['in one place'],
    local: true,
    ...spanAt(hands, first),
  });
  if (reading !== 'in one place' || !last.place) return step;
  const group: GroupStep = {
    kind: 'group',
    steps: [...step.steps.slice(from, to), { ...last, place: null }],
    place: last.place,
    loose: false,
    from: first.from,
    to: last.to,
  };
  return { ...step, steps: [...step.steps.slice(0, from), group, ...step.steps.slice(to + 1)] };
}

const isPlain = ({ until, alsoIn, stitch, evenly }: WorkStep): boolean =>
  until === null &&
  alsoIn.length === 0 &&
  !evenly &&
  stitch.shape === 'one' &&
  stitch.stem !== 'ss';

const isLoose = (step: Step | undefined): boolean =>
  step?.kind === 'work' && isPlain(step) && step.place === null;

const isOneNext = (step: WorkStep): boolean =>
  isPlain(step) &&
  step.place?.pick === 'next' &&
  !step.place.each &&
  (step.place.n === null || step.place.n.values.every((n) => n === 1));
