/** "sk next 2 sts" in US terms, "miss next 2 sts" in UK terms. */
import type { SkipStep, UnworkedStep } from '../tree.ts';
import { countsAsRemark } from './counts-as.ts';
import { isMany, writeNumbers } from './numbers.ts';
import { writePlace } from './place.ts';
import { skipWord, type Voice } from './voice.ts';

export const writeSkip = (step: SkipStep, voice: Voice): string =>
  `${skipWord(voice)} ${writePlace(step.place, voice)}${countsAsRemark(step.countsAs, voice)}`;

export function writeUnworked(step: UnworkedStep, voice: Voice): string {
  if (step.n === null) return 'leave rem sts unworked';
  return `leave last ${writeNumbers(step.n, voice)} ${isMany(step.n) ? 'sts' : 'st'} unworked`;
}
