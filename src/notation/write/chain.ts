/** "ch 3", "ch 4 (counts as dc and ch 1)". */
import type { ChainStep } from '../tree.ts';
import { countsAsRemark } from './counts-as.ts';
import { writeNumbers } from './numbers.ts';
import type { Voice } from './voice.ts';

/** An open number ("a multiple of 6 plus 3") is carried in the designer's own words. */
export function writeChain(step: ChainStep, voice: Voice): string {
  if (step.open || step.multiple) return voice.quote(step);
  const n = step.n === null ? '1' : writeNumbers(step.n, voice);
  return `ch ${n}${countsAsRemark(step.countsAs, voice)}`;
}
