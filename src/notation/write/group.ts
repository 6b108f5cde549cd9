/** Several steps in one place: "(2 dc, ch 2, 2 dc) in next ch-2 sp". */
import type { GroupStep } from '../tree.ts';
import { writeIn } from './place.ts';
import type { Voice } from './voice.ts';

/** Without brackets it may also be a walk along the row, so brackets are neither added nor lost. */
export function writeGroup(step: GroupStep, voice: Voice): string {
  const steps = voice.list(step.steps, voice);
  const made = step.loose ? steps : bracketed(steps);
  return `${made} ${writeIn(step.place, voice)}`;
}

/**
 * Round brackets inside square ones (common practice), so the deeper level decides; the brackets of
 * sizes, "next 9 (9, 4) sts", are no level.
 */
export const bracketed = (words: string): string =>
  /\((?![\d, -]+\))/.test(words) ? `[${words}]` : `(${words})`;
