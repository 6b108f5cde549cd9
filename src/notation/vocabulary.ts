/** What the manuscript has told before an instruction is read. */
export interface Vocabulary {
  /** Spellings of the special stitches, lower-case, to their keys. */
  readonly specials: ReadonlyMap<string, string>;
  /** How many sizes the piece has; 1 if it has but one or if that is unknown. */
  readonly sizes: number;
  /** Names of the charts. */
  readonly charts: ReadonlySet<string>;
  /** Letters and names of the yarns. */
  readonly yarns: ReadonlySet<string>;
}

/** Nothing known: one size, no special stitches, charts or named yarns. */
export const NO_VOCABULARY: Vocabulary = {
  specials: new Map(),
  sizes: 1,
  charts: new Set(),
  yarns: new Set(),
};
