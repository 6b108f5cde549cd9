/** A stitch of the designer's own: "Shell: (2 dc, ch 2, 2 dc) in same st." */
import type { SpecialStitch } from '../tree.ts';
import { sentence, voiceOf, writeRow } from './list.ts';
import { type WriteOptions, writeName } from './voice.ts';

/**
 * Prints a definition. One that speaks of movements ("yo, draw up a loop") is carried in the
 * designer's own words, stitch words and all, since it was not taken apart. `quote` counts from the
 * definition's start, as the spans of its steps do.
 */
export function writeSpecial(special: SpecialStitch, options: WriteOptions): string {
  const voice = voiceOf({ ...options, course: 'row' });
  if (special.steps.length === 0)
    return voice.quote({ from: 0, to: special.to - special.from }).trim();
  const names = [special.name, ...special.aliases].map((name) => writeName(name, voice));
  const [name = '', ...aliases] = names;

  const also = aliases.map((alias) => ` (${alias})`).join('');
  return `${name}${also}: ${sentence(writeRow(special.steps, voice))}`;
}
