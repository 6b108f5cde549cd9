/** Rows worked again with other numbers: the chains of one length, or the stitches of one kind, made others. */
import type { ChainStep, ChangedNumber, Instruction, Step, WorkStep } from '../notation/index.ts';
import { allSteps, isSlip } from './shape.ts';

type Numbered = ChainStep | WorkStep;

const numberOf = ({ n }: Numbered): number | null => {
  const values = n?.values ?? [1];
  return values.length === 1 ? (values[0] ?? null) : null;
};

/** Before the chain with which a row opens: the way to its start. */
const leadsOn = (step: Step): boolean =>
  step.kind === 'remark' || step.kind === 'join' || step.kind === 'yarn' || isSlip(step);

/**
 * The row with its numbers changed, or `null` where it is not plain which are meant: none is the number that
 * is named, or none is named and they differ. The chain with which a row opens stays, unless the chain of
 * that end is meant; a lone stitch is no number of stitches.
 */
export function withNumbers(row: Instruction, change: ChangedNumber): Instruction | null {
  const candidates = meant(row.steps, change);
  const numbers = new Set(candidates.map(numberOf));
  const number = change.was ?? (numbers.size === 1 ? [...numbers][0] : null);
  if (number === null || number === undefined || !numbers.has(number)) return null;
  const changing = new Set<Step>(candidates.filter((step) => numberOf(step) === number));
  const inAll = (steps: readonly Step[]): Step[] => steps.map(changed);
  const changed = (told: Step): Step => {
    const step = change.stem === null ? ofAnyLength(told) : told;
    if (step !== told && !changing.has(told)) return step;
    if (changing.has(told) && (step.kind === 'chain' || step.kind === 'work'))
      return { ...step, n: { from: step.from, to: step.to, values: [change.now] } };
    if (step.kind === 'group') return { ...step, steps: inAll(step.steps) };
    if (step.kind !== 'repeat') return step;
    const { ending } = step;
    const end = ending && 'steps' in ending ? { ...ending, steps: inAll(ending.steps) } : ending;
    return { ...step, steps: inAll(step.steps), ending: end };
  };
  return { ...row, steps: inAll(row.steps), counts: [] };
}

/** Loops of other chains lie beneath now: "sc in next ch-5 lp" goes into the next there is. */
function ofAnyLength(step: Step): Step {
  const noun = step.kind === 'work' || step.kind === 'group' ? step.place?.nouns[0] : undefined;
  if (noun?.kind !== 'space' || noun.chains === null) return step;
  const nouns = [{ ...noun, chains: null }];
  if (step.kind === 'work' && step.place) return { ...step, place: { ...step.place, nouns } };
  return step.kind === 'group' ? { ...step, place: { ...step.place, nouns } } : step;
}

/** The steps whose number may be meant. */
function meant(steps: readonly Step[], { stem, atEnd }: ChangedNumber): readonly Numbered[] {
  if (atEnd) {
    const last = steps.findLast(({ kind }) => kind !== 'turn' && kind !== 'remark');
    return last?.kind === 'chain' ? [last] : [];
  }
  if (stem !== null) {
    const works = [...allSteps(steps)].filter((step): step is WorkStep => step.kind === 'work');
    return works.filter((step) => step.stitch.stem === stem && (numberOf(step) ?? 2) > 1);
  }
  const first = steps.findIndex((step) => !leadsOn(step));
  const opening = steps[first]?.kind === 'chain' ? steps[first] : undefined;
  return [...allSteps(steps)].filter(
    (step): step is ChainStep => step.kind === 'chain' && step !== opening,
  );
}
