/** A whole group in one chain of the foundation: "(2 dc, ch 2, 2 dc) in 4th ch from hook". */
import type { GroupStep, WorkStep } from '../../notation/index.ts';
import type { Hands, Target } from '../hands.ts';
import { countFromHook, skippedChains } from './from-hook.ts';

export function workFromHookGroup(
  hands: Hands,
  step: GroupStep,
  work: (target: Target) => void,
): void {
  const first = step.steps.find((inner): inner is WorkStep => inner.kind === 'work');
  if (first) skippedChains(hands, first, step.place);
  work(countFromHook(hands, step.place, step));
}
