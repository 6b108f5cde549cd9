/**
 * "ch 3, 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 more times": the first group is written out before the
 * bracket, and the three are those that follow it. Where none is, the bracket itself is worked once more.
 */
import type { RepeatStep, Step } from './tree.ts';

/** Settles "more" of brackets in place. */
export function settleMore(steps: Step[]): void {
  for (let i = 2; i < steps.length; i++) {
    const step = steps[i];
    if (step?.kind !== 'repeat' || step.times.kind !== 'times' || !step.times.more) continue;
    if (step.mark !== '[' && step.mark !== '(') continue;
    // "ch 2 (this is your corner). [3 dc in ring, ch 2] …"
    const before = steps.slice(0, i).filter(({ kind }) => kind !== 'remark');
    if (isWrittenBefore(step, before))
      steps[i] = { ...step, times: { ...step.times, more: false } };
  }
}

/** The start chain may stand for the first stitch; the chain that parts groups, "[ch 2, 3 dc]", is not the first's. */
function isWrittenBefore({ steps }: RepeatStep, before: readonly Step[]): boolean {
  const group = steps[0]?.kind === 'chain' && steps.length > 1 ? steps.slice(1) : steps;
  const own = before.slice(-group.length);
  if (own.length < group.length) return false;
  const chain = before.at(-group.length - 1);
  return group.every((step, i) => isSame(own[i], step, i === 0 && chain?.kind === 'chain'));
}

function isSame(a: Step | undefined, b: Step, startsWithChain: boolean): boolean {
  if (a?.kind === 'chain' && b.kind === 'chain') return numberOf(a) === numberOf(b);
  if (a?.kind === 'group' && b.kind === 'group') {
    // "(ch 3, 2 dc, ch 2, 3 dc) in corner"
    const inside = a.steps.length > b.steps.length && a.steps[0]?.kind === 'chain';
    const own = inside ? a.steps.slice(1) : a.steps;
    const starts = inside || startsWithChain;
    return (
      own.length === b.steps.length &&
      b.steps.every((step, i) => isSame(own[i], step, i === 0 && starts))
    );
  }
  if (a?.kind !== 'work' || b.kind !== 'work') return false;
  if (a.stitch.stem !== b.stitch.stem || a.stitch.shape !== b.stitch.shape) return false;
  return numberOf(a) + (startsWithChain ? 1 : 0) === numberOf(b);
}

const numberOf = ({ n }: Pick<Extract<Step, { kind: 'chain' | 'work' }>, 'n'>): number =>
  n?.values[0] ?? 1;
