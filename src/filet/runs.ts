/**
 * Runs of equal boxes in the order of work, and their folding into the trade's repeats. Lacets and
 * bars are two boxes wide: two neighbouring cells of the kind are one of them.
 */
import type { Cell } from './grid.ts';

export interface Run {
  readonly cell: Cell;
  /** Boxes; for lacets and bars, how many of them. */
  readonly n: number;
}

/** Either runs once, or runs that are worked `times` over (2 or more). */
export interface Fold {
  readonly runs: readonly Run[];
  readonly times: number;
}

/** Grid columns that one of the kind takes. */
export const widthOfCell = (cell: Cell): number => (cell === 'lacet' || cell === 'bar' ? 2 : 1);

export function runsOf(cells: readonly Cell[]): Run[] {
  const runs: { cell: Cell; n: number }[] = [];
  for (const cell of cells) {
    const last = runs.at(-1);
    if (last?.cell === cell) last.n++;
    else runs.push({ cell, n: 1 });
  }
  return runs.map(({ cell, n }) => ({ cell, n: Math.ceil(n / widthOfCell(cell)) }));
}

/** Columns of the runs together. */
export const widthOfRuns = (runs: readonly Run[]): number =>
  runs.reduce((sum, { cell, n }) => sum + n * widthOfCell(cell), 0);

export const cellsOfRuns = (runs: readonly Run[]): Cell[] =>
  runs.flatMap(({ cell, n }) => new Array<Cell>(n * widthOfCell(cell)).fill(cell));

const same = (a: Run | undefined, b: Run | undefined): boolean =>
  a !== undefined && a.cell === b?.cell && a.n === b.n;

/** How often the `length` runs at `at` stand there one after the other. */
function timesAt(runs: readonly Run[], at: number, length: number): number {
  let end = at + length;
  while (end < runs.length && same(runs[end], runs[end - length])) end++;
  return Math.floor((end - at) / length);
}

/** A repeat is worth its words when it saves at least this many runs (judgement). */
const WORTH = 3;
/** Runs that one repeat may hold: longer ones are hard to follow, and looking costs time. */
const LONGEST = 24;

/** Folds what repeats, from the start of the row on: each time the repeat that saves most. */
export function fold(runs: readonly Run[]): Fold[] {
  const folds: Fold[] = [];
  let single: Run[] = [];
  const close = (): void => {
    if (single.length > 0) folds.push({ runs: single, times: 1 });
    single = [];
  };
  for (let at = 0; at < runs.length; ) {
    let best = { length: 0, times: 1 };
    for (let length = 2; length <= LONGEST && at + 2 * length <= runs.length; length++) {
      const times = timesAt(runs, at, length);
      if (length * (times - 1) > best.length * (best.times - 1)) best = { length, times };
    }
    if (best.length * (best.times - 1) >= WORTH) {
      close();
      folds.push({ runs: runs.slice(at, at + best.length), times: best.times });
      at += best.length * best.times;
    } else single.push(runs[at++] as Run);
  }
  close();
  return folds;
}
