/** A row of boxes in words: runs in the order of work, repeats folded in the trade's way. */
import type { Cell } from './grid.ts';
import { fold, moreTimes, type Run, runsOf } from './runs.ts';
import { extentOf } from './shape.ts';

export interface RowWordsOptions {
  /** Fold what repeats: "*2 open, 1 filled; rep from * 4 more times"; default true. */
  readonly folded?: boolean;
  /** "2 open boxes" (true), or "2 open" (false, the default). */
  readonly boxes?: boolean;
}

/** "2 open, 5 filled, 31 open" of cells in the order of work; cells without a box at the ends are left out. */
export function rowInWords(cells: readonly Cell[], options: RowWordsOptions = {}): string {
  const { folded = true, boxes = false } = options;
  const { from, to } = extentOf(cells);
  const runs = runsOf(cells.slice(from, to));
  const say = (some: readonly Run[]): string =>
    some.map((run) => runInWords(run, boxes)).join(', ');
  if (!folded) return say(runs);
  return fold(runs, ({ cell, n }) => `${n} ${cell}`)
    .map(({ items, times }) =>
      times === 1 ? say(items) : `*${say(items)}; rep from * ${moreTimes(times)}`,
    )
    .join(', ');
}

function runInWords({ cell, n }: Run, boxes: boolean): string {
  if (cell === 'lacet' || cell === 'bar') return `${n} ${cell}${n === 1 ? '' : 's'}`;
  if (cell === 'none') return `gap of ${n} ${n === 1 ? 'box' : 'boxes'}`;
  return boxes ? `${n} ${cell} box${n === 1 ? '' : 'es'}` : `${n} ${cell}`;
}
