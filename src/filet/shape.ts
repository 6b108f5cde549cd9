/** Rows of several widths: which boxes a row has beyond the row beneath, and which it drops. */
import type { Cell } from './grid.ts';
import type { WorkedRow } from './working.ts';

/** A worked row against the row beneath it; numbers are boxes. */
export interface ShapedRow {
  /** Boxes before those that stand over the row beneath, in the order of work. */
  readonly addedFirst: readonly Cell[];
  readonly over: readonly Cell[];
  readonly addedLast: readonly Cell[];
  /** Boxes of the row beneath that are slipped over, and left at the end. */
  readonly slipped: number;
  readonly left: number;
}

/** First and last index [from, to) that has a box. */
export function extentOf(cells: readonly Cell[]): { readonly from: number; readonly to: number } {
  const from = cells.findIndex((cell) => cell !== 'none');
  if (from < 0) return { from: 0, to: 0 };
  return { from, to: cells.findLastIndex((cell) => cell !== 'none') + 1 };
}

/** Has the row cells without a box between boxes? Such a row cannot be worked in one go. */
export function isBroken(cells: readonly Cell[]): boolean {
  const { from, to } = extentOf(cells);
  return cells.slice(from, to).includes('none');
}

/** `beneath` in the same order of work as `row`; `null` for the first row. */
export function shapedRow(row: WorkedRow, beneath: readonly Cell[] | null): ShapedRow {
  const here = extentOf(row.cells);
  const below = beneath ? extentOf(beneath) : here;
  const first = Math.min(here.to, Math.max(here.from, below.from));
  const last = Math.max(first, Math.min(here.to, below.to));
  return {
    addedFirst: row.cells.slice(here.from, first),
    over: row.cells.slice(first, last),
    addedLast: row.cells.slice(last, here.to),
    slipped: Math.max(0, here.from - below.from),
    left: Math.max(0, below.to - here.to),
  };
}

/** The cells of the row beneath, in the order of work of `row`. */
export function beneathOf(rows: readonly WorkedRow[], nth: number): readonly Cell[] | null {
  const [row, below] = [rows[nth], rows[nth - 1]];
  if (!row || !below) return null;
  return row.reads === below.reads ? below.cells : below.cells.toReversed();
}
