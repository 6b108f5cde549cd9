/**
 * How a grid is worked: which of its rows comes when, from which side, read in which direction. The
 * picture shows the right side and is never mirrored; a left-handed maker reads it the other way.
 */
import type { Cell, Grid } from './grid.ts';

export interface Working {
  /** flat: turned after each row. round: never turned. turned: rounds, turned after each. */
  readonly form: 'flat' | 'round' | 'turned';
  /** Number that the pattern gives to the lowest row of the grid. */
  readonly firstRow: number;
  readonly firstSide: 'right' | 'wrong';
  readonly hand: 'right' | 'left';
}

export type Reads = 'right-to-left' | 'left-to-right';

export interface WorkedRow {
  /** As the pattern numbers it. */
  readonly number: number;
  readonly side: 'right' | 'wrong';
  readonly reads: Reads;
  /** In the order of work; `none` at either end where the row is narrower than the picture. */
  readonly cells: readonly Cell[];
  /** Column of each cell, same order; from 0 at the left of the picture. */
  readonly columns: readonly number[];
}

/** The usual working: flat, row 1 is a right-side row, right-handed. */
export const PLAIN_WORKING: Working = {
  form: 'flat',
  firstRow: 1,
  firstSide: 'right',
  hand: 'right',
};

/** Side of the `nth` row of the grid, from 0 at its bottom. */
function sideOf(working: Working, nth: number): 'right' | 'wrong' {
  const other = working.firstSide === 'right' ? 'wrong' : 'right';
  return working.form === 'round' || nth % 2 === 0 ? working.firstSide : other;
}

/** Right-side rows run from right to left for the right-handed (filet rules, reading the chart). */
export const readsOf = (side: 'right' | 'wrong', hand: Working['hand']): Reads =>
  (side === 'right') === (hand === 'right') ? 'right-to-left' : 'left-to-right';

/** The end of the picture's row at which work starts, where its number stands. */
export const startsAt = (row: Pick<WorkedRow, 'reads'>): 'right' | 'left' =>
  row.reads === 'right-to-left' ? 'right' : 'left';

/** All rows, the lowest first, cells in the order of work. */
export function workedRows(grid: Pick<Grid, 'rows'>, working: Working): WorkedRow[] {
  return grid.rows.toReversed().map((cells, nth) => {
    const side = sideOf(working, nth);
    const reads = readsOf(side, working.hand);
    const columns = cells.map((_, column) => column);
    const back = reads === 'right-to-left';
    return {
      number: working.firstRow + nth,
      side,
      reads,
      cells: back ? cells.toReversed() : cells,
      columns: back ? columns.reverse() : columns,
    };
  });
}

/** Cells in the order of work, put back into the picture's order. */
export const asPictured = (cells: readonly Cell[], reads: Reads): readonly Cell[] =>
  reads === 'right-to-left' ? cells.toReversed() : cells;
