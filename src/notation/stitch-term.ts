/** Stitch terms from what is said of them. */
import type { Span } from '../source/index.ts';
import type { StitchTerm, WorkStep } from './tree.ts';

/** A stitch term while it is being read. */
export type TermDraft = { -readonly [K in keyof StitchTerm]: StitchTerm[K] };

export const NO_MANNER: readonly string[] = [];

/** One stitch that is not named. */
export const PLAIN_TERM: StitchTerm = {
  shape: 'one',
  stem: null,
  legs: null,
  special: null,
  loop: null,
  post: null,
  extended: false,
  foundation: false,
  manner: NO_MANNER,
};

// A copy by "..." has a hidden class of its own, and all that meets both is slow: so this one is
// written out, with its members in the order above.

/** The same term, to be changed. */
export const copyOfTerm = (term: StitchTerm): TermDraft => ({
  shape: term.shape,
  stem: term.stem,
  legs: term.legs,
  special: term.special,
  loop: term.loop,
  post: term.post,
  extended: term.extended,
  foundation: term.foundation,
  manner: term.manner,
});

/** What is not said is plain. */
export const termOf = (said: Partial<StitchTerm>): StitchTerm =>
  copyOfTerm({ ...PLAIN_TERM, ...said });

/** The same with some of it said otherwise. */
export const termWith = (term: StitchTerm, said: Partial<StitchTerm>): StitchTerm =>
  copyOfTerm({ ...term, ...said });

/** Where the stitch's name stands. */
export const nameSpan = ({ nameFrom, nameTo }: WorkStep): Span => ({ from: nameFrom, to: nameTo });
