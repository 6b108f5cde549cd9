/** Charts as the hands use them: rows in the order of work, cells in the order of work. */
import type { Cell, Chart } from '../manuscript/index.ts';

export type Charts = readonly Chart[];

/** The chart of that name; the only one there is where no name is given. */
export function chartNamed(charts: Charts, name: string): Chart | null {
  const wanted = name.trim().toLowerCase();
  const found = charts.find((chart) => chart.name.toLowerCase() === wanted);
  return found ?? (wanted === '' && charts.length === 1 ? (charts[0] ?? null) : null);
}

export interface ChartRow {
  readonly cells: readonly Cell[];
  /** Offset in the manuscript of each cell's sign, same order. */
  readonly places: readonly number[];
}

/**
 * Row `nth` of a chart (from 0, the last line of the picture first) as it is worked: the picture
 * shows the right side, so right-side rows run from right to left for right-handers.
 */
export function chartRow(
  chart: Chart,
  nth: number,
  reads: 'right-to-left' | 'left-to-right',
): ChartRow | null {
  const line = chart.rows.length - 1 - nth;
  const cells = chart.rows[line];
  const span = chart.rowSpans[line];
  if (!cells || !span) return null;
  const step = cells.length > 0 ? (span.to - span.from) / cells.length : 1;
  const places = cells.map((_, i) => span.from + Math.floor(i * step));
  if (reads === 'left-to-right') return { cells, places };
  return { cells: [...cells].reverse(), places: places.reverse() };
}
