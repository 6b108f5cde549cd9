/**
 * Rows of a chart with cells without a box between boxes: they cannot be worked in one go. Rows that
 * are worked in parts ("boxes 1-6 of chart Heart") may have such cells between the parts.
 */
import { type ChartUse, usesOf } from '../../fabric/index.ts';
import { isBroken } from '../../filet/index.ts';
import { chartRowBroken, type Finding } from '../../finding/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import { chartName } from '../names.ts';
import type { Scene } from '../scene.ts';

/** Once a chart, at the lowest such row. */
export function brokenCharts(scene: Scene): Finding[] {
  return scene.manuscript.charts.flatMap((chart) => {
    if (!chart.signsKnown || !chart.rows.some(isBroken)) return [];
    const cloth = scene.fabric.cloths[0];
    const uses = cloth ? usesOf(chart, scene.fabric, cloth) : [];
    const line = chart.rows.findLastIndex(
      (cells, i) => isBroken(cells) && !isInParts(uses, chart.rows.length - 1 - i, chart),
    );
    const span = chart.rowSpans[line];
    if (!span) return [];
    const words = { chartRow: chart.rows.length - line, chart: chartName(chart.name) };
    return [chartRowBroken(span, words)];
  });
}

/** Each time it is worked, a part of it without such cells is. */
function isInParts(uses: readonly ChartUse[], row: number, chart: Chart): boolean {
  const cells = chart.rows[chart.rows.length - 1 - row]?.toReversed() ?? [];
  const own = uses.filter((use) => use.row === row);
  return (
    own.length > 0 &&
    own.every(({ part }) => part !== null && !isBroken(cells.slice(part.from - 1, part.to)))
  );
}
