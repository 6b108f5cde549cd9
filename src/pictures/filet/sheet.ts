/**
 * What is known of a filet chart, ready to be drawn or told: which rows of the pattern work it, from
 * which side and in which direction, what stands beside it, how wide and high a box is. No algorithm.
 */
import type { Beside, ChartUse } from '../../fabric/index.ts';
import type { Cell, Reads, Working } from '../../filet/index.ts';
import type { Span } from '../../source/index.ts';
import type { Again } from './again.ts';

export type { Beside };

export interface SheetRow {
  /** As the pattern numbers it; from 1 at the bottom where no row works the chart. */
  readonly number: number;
  /** "Rnd 12", "Row 3"; '' for a row that the pattern never works. */
  readonly label: string;
  readonly side: 'right' | 'wrong';
  readonly reads: Reads;
  /** As pictured, from left to right. */
  readonly cells: readonly Cell[];
  /** Of each cell, same order: its sign in the manuscript. Empty for a grid that stands in none. */
  readonly origins: readonly Span[];
  readonly origin: Span | null;
  /** Worked before and after the chart in this row; `null`: not known, or the chart is the row. */
  readonly before: Beside | null;
  readonly after: Beside | null;
}

/** Size of a box in the fabric, or only its proportion. */
export interface SheetBox {
  readonly widthMm: number;
  readonly heightMm: number;
  /**
   * true: from a gauge. usual: from usual proportions, no gauge is given. square: asked for.
   */
  readonly from: 'gauge' | 'usual' | 'square';
  /** A sentence with a full stop. */
  readonly because: string;
}

export interface Sheet {
  /** '' for the only chart of a pattern. */
  readonly name: string;
  /** The pattern's title; '' where it has none. */
  readonly pattern: string;
  /** "1.0, 2026-11-25"; '' where the pattern says neither. */
  readonly edition: string;
  readonly form: Working['form'];
  readonly hand: Working['hand'];
  /** The lowest first. */
  readonly rows: readonly SheetRow[];
  /** Boxes across the picture. */
  readonly columns: number;
  /** Post as the chart writes it, wraps before the hook goes in, chains of an open box. */
  readonly mesh: { readonly post: string; readonly wraps: number; readonly gap: number };
  readonly terms: 'US' | 'UK';
  readonly box: SheetBox;
  /** How often the chart stands side by side in one row. */
  readonly times: number;
  /** Rows that are worked several times one after the other. */
  readonly again: readonly Again[];
  /** First uses of its rows in the fabric, in the first size; empty for a grid that stands in none. */
  readonly uses: readonly ChartUse[];
  /** Sentences: what could not be known, what else works this chart. */
  readonly notes: readonly string[];
}
