/** Charts of which the upper rows are never worked. */
import { chartRowsLeft, type Finding } from '../../finding/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import type { ChartStep } from '../../notation/index.ts';
import { chartName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, type Placed, stepsIn } from './rows.ts';

interface Use {
  readonly row: Placed;
  readonly step: ChartStep;
}

export function chartRows(scene: Scene): Finding[] {
  return scene.manuscript.charts.flatMap((chart) => {
    const uses = usesOf(scene, chart);
    const last = uses.at(-1);
    if (!last || uses.some((use) => isOpen(use))) return [];
    const used = rowsWorked(scene, uses);
    const have = chart.rows.length;
    if (used === 0 || used >= have) return [];
    const top = chart.rowSpans[have - 1 - used];
    const labels = top ? [{ ...top, text: 'from here up' }] : [];
    const words = { used, chart: chartName(chart.name), have };
    return [chartRowsLeft(absolute(last.row.placed, last.step), words, { labels })];
  });
}

function usesOf(scene: Scene, chart: Chart): Use[] {
  const name = chart.name.toLowerCase();
  const isOnly = scene.manuscript.charts.length === 1;
  return [...instructionsOf(scene)].flatMap((row) =>
    [...stepsIn(row.placed.instruction.steps)].flatMap((step) => {
      if (step.kind !== 'chart') return [];
      const said = step.name.toLowerCase();
      return said === name || (said === '' && isOnly) ? [{ row, step }] : [];
    }),
  );
}

/** "Follow the chart" without a number of rows may mean all of them. */
const isOpen = ({ row }: Use): boolean => {
  const { label } = row.placed.instruction;
  return !label || label.openEnd || label.numbers.length === 0;
};

/** Chart rows worked in one copy and one size: the highest, where rows are named, or how many. */
function rowsWorked({ fabric }: Scene, uses: readonly Use[]): number {
  const rows = fabric.cloths[0]?.rows ?? [];
  let count = 0;
  let highest = 0;
  for (const { row, step } of uses) {
    const worked = rows.filter(
      (one) =>
        one.instance === 1 && one.partIndex === row.partIndex && one.instruction === row.index,
    );
    count += worked.length;
    if (step.row !== null) highest = Math.max(highest, step.row);
  }
  return Math.max(count, highest);
}
