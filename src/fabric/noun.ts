/** Which kind of place the words name; "st" where they name none. */
import type { Noun, Place } from '../notation/index.ts';
import { type Hands, spanAt } from './hands.ts';
import { ask } from './readings.ts';
import type { Gaps } from './take.ts';

const STITCH: Pick<Noun, 'kind' | 'chains' | 'corner' | 'skipped' | 'stem' | 'word'> = {
  kind: 'stitch',
  chains: null,
  corner: false,
  skipped: false,
  stem: null,
  word: '',
};
export type AnyNoun = typeof STITCH;

export const nounOf = (place: Place | null): AnyNoun => place?.nouns[0] ?? STITCH;

/** Do "st" and "each st" mean spaces too? Asked only where there are spaces. */
export function gapsOf(hands: Hands, place: Place | null, at: { from: number; to: number }): Gaps {
  if (place && place.nouns.length > 1) {
    return place.nouns.some((noun) => noun.kind === 'chain') ? 'chains' : 'one';
  }
  if (hands.edge.spaces === 0) return 'passed';
  const span = spanAt(hands, at);
  return ask(hands.readings, {
    doubt: 'gaps',
    custom: 'passed',
    alternatives: ['one', 'chains'],
    local: true,
    ...span,
  }) as Gaps;
}
