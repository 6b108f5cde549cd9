/** Rows worked again with other chains: the steps of a row, its chains of one length made another. */
import type { ChainStep, ChangedChains, Instruction, Step } from '../notation/index.ts';
import { allSteps, isSlip } from './shape.ts';

const lengthOf = (chain: ChainStep): number | null => {
  const values = chain.n?.values ?? [1];
  return values.length === 1 ? (values[0] ?? null) : null;
};

/** Before the chain with which a row opens: the way to its start. */
const leadsOn = (step: Step): boolean =>
  step.kind === 'remark' || step.kind === 'join' || step.kind === 'yarn' || isSlip(step);

/**
 * The row with the chains changed, or `null` where it is not plain which are meant: none has the length
 * that is named, or none is named and its chains differ. The chain with which a row opens stays.
 */
export function withChains(row: Instruction, { was, now }: ChangedChains): Instruction | null {
  const first = row.steps.findIndex((step) => !leadsOn(step));
  const opening = row.steps[first]?.kind === 'chain' ? row.steps[first] : undefined;
  const chains = [...allSteps(row.steps)].filter(
    (step): step is ChainStep => step.kind === 'chain' && step !== opening,
  );
  const lengths = new Set(chains.map(lengthOf));
  const length = was ?? (lengths.size === 1 ? [...lengths][0] : null);
  if (length === null || length === undefined || !lengths.has(length)) return null;
  const change = (steps: readonly Step[]): Step[] => steps.map(changed);
  const changed = (step: Step): Step => {
    if (step.kind === 'chain') {
      if (step === opening || lengthOf(step) !== length) return step;
      return { ...step, n: { from: step.from, to: step.to, values: [now] } };
    }
    if (step.kind === 'group') return { ...step, steps: change(step.steps) };
    if (step.kind !== 'repeat') return step;
    const { ending } = step;
    const end = ending && 'steps' in ending ? { ...ending, steps: change(ending.steps) } : ending;
    return { ...step, steps: change(step.steps), ending: end };
  };
  return { ...row, steps: change(row.steps), counts: [] };
}
