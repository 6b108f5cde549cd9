/** A stitch while it is being read, with what stands behind its name still to be put in. */

import type { Span } from '../source/index.ts';
import type { Place, StitchTerm, WorkStep } from './tree.ts';

export type Draft = { -readonly [K in keyof WorkStep]: WorkStep[K] };

/** One stitch by its name alone. */
export const plainWork = (stitch: StitchTerm, { from, to }: Span): Draft => ({
  kind: 'work',
  n: null,
  numberAfter: false,
  stitch,
  nameFrom: from,
  nameTo: to,
  place: null,
  alsoIn: NO_PLACES,
  until: null,
  countsAs: null,
  evenly: false,
  from,
  to,
});

const NO_PLACES: readonly Place[] = [];
