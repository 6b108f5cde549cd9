/** Charts as the hands use them: rows in the order of work, boxes in the order of work. */
import { type Reads, widthOfCell } from '../filet/index.ts';
import type { Cell, Chart } from '../manuscript/index.ts';
import type { BoxStep, ChartStep } from '../notation/index.ts';

export type Charts = readonly Chart[];

/** The chart of that name; the only one there is where no name is given. */
export function chartNamed(charts: Charts, name: string): Chart | null {
  const wanted = name.trim().toLowerCase();
  const found = charts.find((chart) => chart.name.toLowerCase() === wanted);
  return found ?? (wanted === '' && charts.length === 1 ? (charts[0] ?? null) : null);
}

/** What was worked from a chart so far. */
export interface ChartDone {
  /** Its row after the last one worked, from 0. */
  readonly next: number;
  /** Words of its own, no repeat, worked its last row. */
  readonly ended: boolean;
  /** Its row that each numbered row worked. */
  readonly at: ReadonlyMap<number, number>;
}

/** What tells which row of a chart comes next. */
export interface ChartTold {
  /** By the chart's name. */
  readonly done: ReadonlyMap<string, ChartDone>;
  /** Number of the row that is worked again. */
  readonly repeats: number | null;
  /** As the label numbers the row at hand, and the label's range. */
  readonly number: number | null;
  readonly range: { readonly from: number; readonly to: number; readonly nth: number } | null;
}

/**
 * The row of the chart to work, from 0 at the bottom: where rows are repeated behind the whole chart, that
 * of the row repeated ("Rep rows 3-4"); before its end such a repeat goes on in it. Else the row named; in a range that goes on, so many
 * further; else the one after the last. Where nothing was worked from it yet and the range ends with
 * the chart's last row by number ("Rows 4-20" of 20), the rows before it were written out.
 */
export function chartRowNext(chart: Chart, step: ChartStep, told: ChartTold): number {
  const { next: done, ended, at } = told.done.get(chart.name) ?? NOTHING_DONE;
  const { range, number, repeats } = told;
  const repeated = ended && repeats !== null ? at.get(repeats) : undefined;
  if (repeated !== undefined) return repeated;
  if (step.row !== null) return step.row - 1 + (step.onwards ? (range?.nth ?? 1) - 1 : 0);
  const whole = range !== null && range.from > 1 && range.to === chart.rows.length;
  const begun = range !== null && done > 0 && done < range.to;
  if (whole && number !== null && !begun) return number - 1;
  // "Rnds 6-9" behind a chart of 4 rounds that is all worked: the chart once more.
  const again = range?.nth === 1 && (range.to - range.from + 1) % chart.rows.length === 0;
  return again && done >= chart.rows.length ? 0 : done;
}

export const toldBy = (
  { number, range, repeats }: Pick<ChartTold, 'number' | 'range' | 'repeats'>,
  done: ChartTold['done'],
): ChartTold => ({ done, number, range, repeats });

const NOTHING_DONE: ChartDone = { next: 0, ended: false, at: new Map() };

/** The same with one row more. */
export function withRow(chart: Chart, step: ChartStep, told: ChartTold): ChartDone {
  const before = told.done.get(chart.name) ?? NOTHING_DONE;
  const row = chartRowNext(chart, step, told);
  const isLast = told.repeats === null && row === chart.rows.length - 1;
  const at = told.number === null ? before.at : new Map(before.at).set(told.number, row);
  return { next: row + 1, ended: before.ended || isLast, at };
}

export interface Unit {
  readonly box: BoxStep['box'];
  /** Offset in the manuscript of its sign. */
  readonly at: number;
}

export interface ShapedRow {
  /** Boxes, lacets and bars in the order of work. */
  readonly units: readonly Unit[];
  /** Boxes wide. */
  readonly width: number;
  /** Boxes more (or fewer) than the row beneath has in the chart, where work starts and ends. */
  readonly starts: number | null;
  readonly ends: number;
}

/**
 * Row `nth` of a chart (from 0, the last line of the picture first) as it is worked: the picture
 * shows the right side, so right-side rows run from right to left for right-handers.
 */
export function chartRow(
  chart: Chart,
  nth: number,
  { reads, part = null }: { readonly reads: Reads; readonly part?: ChartStep['part'] },
): ShapedRow | null {
  const line = chart.rows.length - 1 - nth;
  const span = chart.rowSpans[line];
  const row = chart.rows[line];
  if (!row || !span) return null;
  const step = row.length > 0 ? (span.to - span.from) / row.length : 1;
  const columns = row.map((cell, i) => ({ cell, at: span.from + Math.floor(i * step) }));
  const inWork = reads === 'right-to-left' ? columns.reverse() : columns;
  const worked = part ? partOf(inWork, part, reads) : inWork;
  const units: Unit[] = [];
  for (let i = 0; i < worked.length; i++) {
    const { cell, at } = worked[i] as (typeof worked)[number];
    if (cell === 'none') continue;
    units.push({ box: cell, at });
    // A lacet or a bar stands as two neighbours of its kind.
    if (worked[i + 1]?.cell === cell) i += widthOfCell(cell) - 1;
  }
  const width = worked.filter(({ cell }) => cell !== 'none').length;
  const own = (cells: readonly Cell[]): readonly Cell[] =>
    part ? cells.slice(cells.length - part.to, cells.length - part.from + 1) : cells;
  const beneath = chart.rows[line + 1];
  return { units, width, ...changes(own(row), beneath && own(beneath), reads) };
}

/**
 * Columns are counted from where the first chart row begins, at the right: rows that are read the
 * other way meet them from the last on.
 */
const partOf = <T>(
  inWork: readonly T[],
  { from, to }: NonNullable<ChartStep['part']>,
  reads: Reads,
): readonly T[] =>
  reads === 'right-to-left'
    ? inWork.slice(from - 1, to)
    : inWork.slice(inWork.length - to, inWork.length - from + 1);

function changes(
  row: readonly Cell[],
  beneath: readonly Cell[] | undefined,
  reads: Reads,
): Pick<ShapedRow, 'starts' | 'ends'> {
  if (!beneath) return { starts: null, ends: 0 };
  const [here, below] = [extent(row), extent(beneath)];
  const left = below.from - here.from;
  const right = here.to - below.to;
  return reads === 'left-to-right' ? { starts: left, ends: right } : { starts: right, ends: left };
}

/** Columns [from, to) that have boxes. */
function extent(row: readonly Cell[]): { from: number; to: number } {
  const from = row.findIndex((cell) => cell !== 'none');
  const to = row.findLastIndex((cell) => cell !== 'none') + 1;
  return from < 0 ? { from: 0, to: 0 } : { from, to };
}
