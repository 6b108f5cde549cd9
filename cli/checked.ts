/** What the engine gives back for one text, as far as the command line reports it. */
import type { Finding, LineStarts } from '../src/index.ts';

export type Verdict = 'proven' | 'unstated' | 'mismatch' | 'unread' | 'unchecked' | 'omitted';

/** How one open question was settled for a part: does the ch 2 count, is "6 times" in all. */
export interface Convention {
  readonly what: string;
  readonly part: string;
  /** The sentence that would state it. */
  readonly reading: string;
  readonly alternatives: readonly string[];
  readonly because: 'note' | 'join' | 'words' | 'count' | 'custom';
  readonly from: number;
}

/** One worked row in one size. */
export interface CheckedRow {
  readonly id: string;
  readonly part: string;
  /** Which of the copies made of the part, from 1. */
  readonly instance: number;
  readonly label: string;
  /** Set where one label stands for several rows: which of them this is, from 1. */
  readonly range: { readonly from: number; readonly to: number; readonly nth: number } | null;
  /** Offsets of the instruction, its label first. */
  readonly from: number;
  readonly to: number;
  readonly size: string;
  readonly used: number;
  readonly made: number;
  readonly chains: number;
  readonly spaces: readonly { readonly chains: number; readonly n: number }[];
  readonly boxes: number;
  /** Stitches by their short word in the pattern's terms. */
  readonly byKind: Readonly<Record<string, number>>;
  readonly stated: readonly { readonly n: number; readonly unit: string | null }[];
  readonly verdict: Verdict;
}

export interface Totals {
  readonly size: string;
  readonly rows: number;
  readonly proven: number;
  readonly unstated: number;
  readonly mismatched: number;
  readonly unread: number;
  readonly unchecked: number;
  readonly stitches: number;
}

export interface Checked {
  readonly text: string;
  readonly lines: LineStarts;
  readonly terms: 'US' | 'UK';
  readonly sizes: readonly string[];
  readonly conventions: readonly Convention[];
  readonly rows: readonly CheckedRow[];
  readonly findings: readonly Finding[];
  readonly totals: readonly Totals[];
  readonly notChecked: readonly string[];
}

/** A text with the name under which it is reported. */
export interface CheckedFile extends Checked {
  readonly file: string;
}
