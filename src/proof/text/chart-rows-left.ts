/** Charts of which the upper rows are never worked. */
import { type ChartUse, usesOf } from '../../fabric/index.ts';
import { chartRowsLeft, type Finding } from '../../finding/index.ts';
import type { PlacedInstruction } from '../../manuscript/index.ts';
import { chartName } from '../names.ts';
import { askedBy, type Scene } from '../scene.ts';
import { absolute, stepsIn } from './rows.ts';

export function chartRows(scene: Scene): Finding[] {
  const cloth = scene.fabric.cloths[0];
  if (!cloth) return [];
  return scene.manuscript.charts.flatMap((chart) => {
    const uses = usesOf(chart, scene.fabric, cloth).filter(({ record }) => record.instance === 1);
    const last = uses.at(-1);
    if (!last || uses.some((use) => isOpen(scene, use))) return [];
    const used = Math.max(...uses.map(({ row }) => row + 1));
    const have = chart.rows.length;
    if (used >= have) return [];
    const top = chart.rowSpans[have - 1 - used];
    const labels = top ? [{ ...top, text: 'from here up' }] : [];
    const words = { used, chart: chartName(chart.name), have };
    return [chartRowsLeft(placeOf(scene, last), words, { labels })];
  });
}

/** "Follow the chart" without a number of rows may mean all of them. */
function isOpen(scene: Scene, { record }: ChartUse): boolean {
  const label = askedBy(scene, record)?.instruction.label;
  return !label || label.openEnd || label.numbers.length === 0;
}

/** The order to work the chart, else the row that repeats it. */
function placeOf(scene: Scene, { record }: ChartUse) {
  const placed = askedBy(scene, record);
  const step = placed && chartStepIn(placed);
  return step ? absolute(placed, step) : { from: record.from, to: record.to };
}

const chartStepIn = ({ instruction }: PlacedInstruction) =>
  [...stepsIn(instruction.steps)].find(({ kind }) => kind === 'chart');
