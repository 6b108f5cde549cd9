/** A grid as the text of its chart block, with the place of each row in it. */
import { type Grid, writeGrid } from '../filet/index.ts';
import type { ChartText } from './legible.ts';

export interface PrintedChart extends ChartText {
  readonly text: string;
}

/** The block as `writeGrid` writes it: the rows are its last lines before the closing fence. */
export function printedChart(grid: Grid): PrintedChart {
  const text = writeGrid(grid);
  const lines = text.split('\n');
  const firstRow = lines.length - 1 - grid.rows.length;
  let from = 0;
  const spans = lines.map((line) => {
    const span = { from, to: from + line.length };
    from = span.to + 1;
    return span;
  });
  return { ...grid, text, rowSpans: spans.slice(firstRow, firstRow + grid.rows.length) };
}
