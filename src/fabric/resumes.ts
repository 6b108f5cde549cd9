/**
 * Behind words that were not understood it is not known how many places there are, and rows stay
 * unchecked until one states its count. Often what was not understood made nothing: then the next row
 * comes out on what was made. Where its words tell by numbers how often it repeats, or take several
 * places a pass, and it ends just with the last place, that is no accident, and the work is known again.
 */
import type { Step } from '../notation/index.ts';
import { type Hands, numberFor, remaining, remainingSpaces } from './hands.ts';
import { passesOf } from './passes.ts';
import type { RowResult } from './row-setting.ts';

/** Fewer passes, or fewer places a pass, come out by accident too often (judgement). */
const FEWEST_PASSES = 3;
const FEWEST_PLACES = 3;

/** Whether the row just worked, on what was made beneath it, ends with the last place by its own numbers. */
export function comesOutAsMade(
  hands: Hands,
  { verdict, facts, edge, available }: RowResult,
  steps: readonly Step[],
): boolean {
  if (verdict !== 'proven' && verdict !== 'unstated') return false;
  if (hands.loose || hands.spread || hands.leave || edge.kind !== 'row' || edge.n === 0)
    return false;
  if (facts.some(({ kind }) => kind === 'noun' || kind === 'space-size')) return false;
  const takes = (hands.tookStitch && available > 0) || (hands.tookSpace && edge.spaces > 0);
  const left = hands.tookStitch ? remaining(hands) : 0;
  // "(Ch 4, sk 2, sc in next) 5 times, ch 4, join": the last chain spans what the others do.
  const isLeft = left > 0 && !(edge.ring && hands.skips.has(left));
  if (!takes || isLeft || (hands.tookSpace && remainingSpaces(hands) > 0)) return false;
  const repeat = steps.find(({ kind }) => kind === 'repeat');
  if (repeat?.kind !== 'repeat') return false;
  const { times } = repeat;
  if (times.kind === 'times') return (numberFor(hands, times.n) ?? 0) >= FEWEST_PASSES;
  if (!hands.tookStitch || hands.tookSpace) return false;
  const [passes] = passesOf(hands, steps);
  return passes !== undefined && passes >= FEWEST_PASSES && hands.used >= FEWEST_PLACES * passes;
}
