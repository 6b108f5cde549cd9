/** Rows that are written out beside a chart: both must say the same, box for box. */
import { extentOf, rowInWords } from '../../filet/index.ts';
import { chartDiffers, type Finding } from '../../finding/index.ts';
import type { Cell, Chart } from '../../manuscript/index.ts';
import { chartName, rowName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { type Pair, tiesIn } from './chart-ties.ts';

export const chartsAgainstRows = (scene: Scene): Finding[] =>
  tiesIn(scene).tied.flatMap(({ chart, pairs }) =>
    pairs.flatMap((pair) => difference(scene, chart, pair) ?? []),
  );

function difference(scene: Scene, chart: Chart, pair: Pair): Finding | null {
  const { row, made, drawn, spans, first } = pair;
  const at = made.findIndex((cell, i) => cell !== drawn[i]);
  if (at < 0) return null;
  const words = {
    row: rowName(scene, row),
    made: boxName(made[at]),
    chart: chartName(chart.name),
    drawn: boxName(drawn[at]),
    box: first + at + 1,
  };
  const more = made.filter((cell, i) => cell !== drawn[i]).length - 1;
  const others = more === 0 ? '' : ` ${more} more ${more === 1 ? 'box differs' : 'boxes differ'}.`;
  const sum = `The row: ${rowInWords(made)}. The chart: ${rowInWords(drawn)}.${others}`;
  const span = spans[at];
  const inRow = span && span.from >= row.from && span.to <= row.to && span.to > span.from;
  return chartDiffers(inRow ? span : { from: row.from, to: row.to }, words, {
    sum,
    labels: signLabel(chart, pair, at),
    rows: [row.id],
  });
}

/** The very sign in the chart. */
function signLabel(chart: Chart, { row, made, line }: Pair, box: number) {
  const span = chart.rowSpans[line];
  if (!span) return [];
  const cells = chart.rows[line] ?? [];
  const column = extentOf(cells).from + (row.side === 'RS' ? made.length - 1 - box : box);
  const width = (span.to - span.from) / cells.length;
  const from = span.from + Math.floor(column * width);
  const text = `row ${chart.rows.length - line} of the chart`;
  return [{ from, to: from + Math.max(1, Math.floor(width)), text }];
}

function boxName(cell: Cell | undefined): string {
  if (cell === 'lacet' || cell === 'bar') return `a ${cell}`;
  return cell === 'open' ? 'an open box' : cell === 'filled' ? 'a filled box' : 'no box';
}
