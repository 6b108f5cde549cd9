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

export const cellsOfRuns = (runs: readonly Run[]): Cell[] =>
  runs.flatMap(({ cell, n }) => new Array<Cell>(n * widthOfCell(cell)).fill(cell));

/** A repeat is worth its words when it saves at least this many runs (judgement). */
const WORTH = 3;
/** Runs that one repeat may hold: longer ones are hard to follow, and looking costs time. */
const LONGEST = 24;

/** Either items once, or items that are worked `times` over (2 or more). */
export interface Fold<T> {
  readonly items: readonly T[];
  readonly times: number;
}

/** Folds what repeats, from the start of the row on: each time the repeat that saves most. */
export function fold<T>(items: readonly T[], key: (item: T) => string): Fold<T>[] {
  const keys = items.map(key);
  const folds: Fold<T>[] = [];
  let single: T[] = [];
  const close = (): void => {
    if (single.length > 0) folds.push({ items: single, times: 1 });
    single = [];
  };
  for (let at = 0; at < items.length; ) {
    const best = bestAt(keys, at);
    if (best.length * (best.times - 1) >= WORTH) {
      close();
      folds.push({ items: items.slice(at, at + best.length), times: best.times });
      at += best.length * best.times;
    } else single.push(items[at++] as T);
  }
  close();
  return folds;
}

function bestAt(keys: readonly string[], at: number): { length: number; times: number } {
  let best = { length: 0, times: 1 };
  for (let length = 1; length <= LONGEST && at + 2 * length <= keys.length; length++) {
    const times = timesAt(keys, at, length);
    if (length * (times - 1) > best.length * (best.times - 1)) best = { length, times };
  }
  return best;
}

/** How often the `length` items at `at` stand there one after the other. */
function timesAt(keys: readonly string[], at: number, length: number): number {
  let end = at + length;
  while (end < keys.length && keys[end] === keys[end - length]) end++;
  return Math.floor((end - at) / length);
}

/** "3 more times", "once more": how the second and later passes are said. */
export const moreTimes = (times: number): string =>
  times === 2 ? 'once more' : `${times - 1} more times`;

/** One box, lacet or bar of a row, with the indexes of its cells: [at, at + width). */
export interface Unit {
  readonly cell: Exclude<Cell, 'none'>;
  readonly at: number;
  readonly width: number;
}

/** Boxes, lacets and bars of the cells [from, to), which have no gaps. */
export function unitsOf(cells: readonly Cell[], from: number, to: number): Unit[] {
  const units: Unit[] = [];
  for (let at = from; at < to; ) {
    const cell = cells[at];
    if (cell === undefined || cell === 'none') {
      at++;
      continue;
    }
    // A lacet or a bar without its other half is taken as one box wide.
    const width = at + 1 < to && cells[at + 1] === cell ? widthOfCell(cell) : 1;
    units.push({ cell, at, width });
    at += width;
  }
  return units;
}
