import type { Edit, Span } from '../source/index.ts';

/**
 * error: cannot be worked as written, was not understood, or a stated count is not what is made.
 * warning: can be worked, but has two readings or is likely not meant. note: a habit.
 */
export type Severity = 'error' | 'warning' | 'note';

/** A second place in the text that explains the first: "made here". */
export interface Label extends Span {
  readonly text: string;
}

/** A change that was re-checked: applying it removes the finding. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
}

/** Something to tell the designer, as data; `catalogue/` holds the words. */
export interface Finding extends Span {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** The arithmetic, so that she can check us; '' where there is none. */
  readonly sum: string;
  readonly labels: readonly Label[];
  /** Ids of the rows concerned. */
  readonly rows: readonly string[];
  /** Names of the sizes concerned; empty when the piece has one size or all are concerned. */
  readonly sizes: readonly string[];
  readonly fixes: readonly Fix[];
}

/** What a stage gives back: its value and what it noticed on the way. */
export interface Outcome<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
}
