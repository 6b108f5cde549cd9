/** How the last repeat differs: "ending with …", "ending last rep at **", "omitting last ch 2". */
import type { Ending } from '../tree.ts';
import { writeIn } from './place.ts';
import type { Voice } from './voice.ts';

/** With the comma before it, or nothing. */
export function writeEnding(ending: Ending | null, voice: Voice): string {
  if (ending === null) return '';
  switch (ending.kind) {
    case 'with': {
      const what = ending.last ? 'ending last rep with' : 'ending with';
      return `, ${what} ${voice.list(ending.steps, voice)}`;
    }
    case 'in':
      return `, ending last rep ${writeIn(ending.place, voice)}`;
    case 'at':
      return `, ending last rep at ${ending.mark}`;
    case 'omit':
      return `, omitting last ${voice.list(ending.steps, voice)}`;
  }
}
