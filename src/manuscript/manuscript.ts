/**
 * The file as a value: front matter, parts with their instructions, chart blocks, special stitches,
 * standing orders. Everything else is prose and stays in the text untouched.
 */
import type { Instruction, SpecialStitch, StandingOrder, Terms } from '../notation/index.ts';
import type { LineStarts, Span } from '../source/index.ts';

/** What the head of the pattern says; `null` or empty where it is silent. */
export interface Head {
  readonly title: string | null;
  readonly version: string | null;
  readonly date: string | null;
  /** As stated in front matter or in the words "US terms"; `null`: to be inferred. */
  readonly terms: Terms | null;
  readonly termsSpan: Span | null;
  readonly language: string | null;
  /** Names of the sizes in order; one unnamed size ('') where the piece has but one. */
  readonly sizes: readonly string[];
  /** Letters and names of yarns. */
  readonly yarns: readonly string[];
  /** Parsed front matter as plain data, for rooms that need more (gauge, materials). */
  readonly data: Readonly<Record<string, unknown>>;
  readonly span: Span | null;
}

export type Cell = 'open' | 'filled' | 'lacet' | 'bar' | 'none';

/** A filet grid: the right side as seen; the last line is the first row worked. */
export interface Chart extends Span {
  readonly name: string;
  /** Post stitch word as written ("dc"), and chains of a gap; `null` where the block names no mesh. */
  readonly mesh: { readonly post: string; readonly gap: number } | null;
  /** Rows from the top of the picture down; a row's cells from left to right. */
  readonly rows: readonly (readonly Cell[])[];
  /** Span of each row's text, same order as `rows`. */
  readonly rowSpans: readonly Span[];
  /** Every sign is in the legend; one that is not stands for no box. */
  readonly signsKnown: boolean;
}

/** An instruction with its place in the file. */
export interface PlacedInstruction extends Span {
  readonly instruction: Instruction;
  /** Words of the heading above that says for which sizes these rows are; '' for all. */
  readonly sizes: string;
  /** An order behind a row's count, which was not understood: see `tailOf`. */
  readonly behind: boolean;
}

/** What is worked as one piece, from its start to its fastening off. */
export interface Part {
  /** Heading's words; '' for a text without headings. */
  readonly name: string;
  readonly heading: Span | null;
  /** "(make 2)", "work both alike": how many are made. */
  readonly copies: number;
  /** "Strip (in B)", "Make 1 in A and 1 in B": one for all copies, or one for each; empty: none named. */
  readonly yarns: readonly string[];
  /** Goes on with the work of the part before (a heading inside one piece: Base, Sides, Handles). */
  readonly continues: boolean;
  readonly instructions: readonly PlacedInstruction[];
  /** Orders from the prose of this part; spans are absolute. */
  readonly orders: readonly StandingOrder[];
}

export interface Manuscript {
  readonly text: string;
  readonly lines: LineStarts;
  readonly head: Head;
  readonly parts: readonly Part[];
  readonly charts: readonly Chart[];
  /** Spans absolute; `steps` spans count from `SpecialStitch.from`. */
  readonly specials: readonly SpecialStitch[];
  /** Orders from the notes at the head: they hold for all parts. */
  readonly orders: readonly StandingOrder[];
  /** Terms used for reading, and why. */
  readonly terms: {
    readonly terms: Terms;
    readonly because: 'stated' | 'words' | 'custom' | 'option';
    /** Words that speak for the other terms. */
    readonly against: readonly Span[];
  };
}
