/** What is carried over in the designer's own words: remarks, unread words, work named but not done. */
import type { Step } from '../tree.ts';
import type { Voice } from './voice.ts';

export const isVerbatim = (step: Step): boolean =>
  step.kind === 'remark' || step.kind === 'unread' || step.kind === 'not-worked';

/**
 * The words on one line, without the stop or comma that the list writer sets again. A running count
 * ("28 sts" in mid-row) goes back into its brackets, or it would pass for work.
 */
export function writeVerbatim(step: Step, voice: Voice): string {
  const words = voice
    .quote(step)
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;]+|[\s,;.]+$/g, '');
  return step.kind === 'remark' && /^\d/.test(words) ? `(${words})` : words;
}
