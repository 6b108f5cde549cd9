/** Rows and the charts that they work. */
import { chartMissing, chartRowMissing, chartWidth, type Finding } from '../../finding/index.ts';
import { chartName, rowName } from '../names.ts';
import { nearestOf } from '../nearest.ts';
import type { Scene, Sightings } from '../scene.ts';

export function missingChart(scene: Scene, found: Sightings<'chart-missing'>): Finding {
  const { first, at, rows, sizes } = found;
  const names = scene.manuscript.charts.map(({ name }) => name);
  const near = nearestOf(first.fact.name, names);
  const words = {
    row: rowName(scene, first.row),
    chart: chartName(first.fact.name),
    ...(near !== null && { nearest: chartName(near) }),
  };
  return chartMissing(at, words, { rows, sizes });
}

export function missingChartRow(scene: Scene, found: Sightings<'chart-row'>): Finding {
  const { first, at, rows, sizes } = found;
  const { name, row: needed, rows: have } = first.fact;
  const words = { row: rowName(scene, first.row), needed, have, chart: chartName(name) };
  return chartRowMissing(at, words, { labels: chartLabel(scene, name), rows, sizes });
}

export function otherWidth(scene: Scene, found: Sightings<'chart-width'>): Finding | null {
  const { first, at, rows, sizes } = found;
  const { name, width, given } = first.fact;
  // A row of the chart that is not as wide as its others is told where the chart stands.
  const widths = scene.manuscript.charts.find((chart) => chart.name === name)?.rows ?? [];
  if (widths.some((row) => row.length === given) && new Set(widths.map((r) => r.length)).size > 1) {
    return null;
  }
  const words = { chart: chartName(name), width, row: rowName(scene, first.row), given };
  return chartWidth(at, words, { labels: chartLabel(scene, name), rows, sizes });
}

function chartLabel({ manuscript }: Scene, name: string) {
  const chart = manuscript.charts.find((one) => one.name === name);
  const row = chart?.rowSpans.at(-1);
  return row
    ? [{ from: row.from, to: row.to, text: `${chart?.rows.length ?? 0} rows from here up` }]
    : [];
}
