/**
 * A chart that stands to one side of a flat piece. Only rows are judged, for in a round the middle of
 * the front is not known, and only where it could stand better by a whole box at each side.
 */
import { type Finding, motifOffCentre } from '../../finding/index.ts';
import type { BoxStep, ChartStep, Instruction, Step } from '../../notation/index.ts';
import { numberIn } from '../amounts.ts';
import { chartName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, rowIds } from './rows.ts';

/** Words that tell that it is meant. */
const ON_PURPOSE =
  /off[- ]?cent(?:re|er)|to one side|asymmetr|in (?:one|the|a) corner|left on purpose/i;

export function motifs(scene: Scene): Finding[] {
  const { text } = scene.manuscript;
  if (scene.manuscript.charts.length === 0 || ON_PURPOSE.test(text)) return [];
  const told = new Set<string>();
  return [...instructionsOf(scene)].flatMap((row) => {
    const sides = sidesOf(row.placed.instruction);
    if (!sides || Math.abs(sides.before - sides.after) < 2 || told.has(sides.chart.name)) return [];
    const worked = scene.fabric.cloths[0]?.rows.find(
      (one) => one.partIndex === row.partIndex && one.instruction === row.index,
    );
    if (!worked || worked.ring || worked.verdict === 'mismatch') return [];
    told.add(sides.chart.name);
    // Posts are shared: a box is its gap and one post, whichever side is looked at.
    const box = (gapOf(scene, sides.chart.name) ?? 1) + 1;
    const words = {
      chart: chartName(sides.chart.name),
      before: sides.before * box,
      after: sides.after * box,
    };
    const sum = `${sides.before} boxes before it and ${sides.after} after it, of ${box} stitches each.`;
    return [
      motifOffCentre(absolute(row.placed, sides.chart), words, { sum, rows: rowIds(scene, row) }),
    ];
  });
}

const gapOf = ({ manuscript }: Scene, name: string): number | null =>
  manuscript.charts.find((chart) => chart.name === name)?.mesh?.gap ?? null;

/** Open boxes, a chart, open boxes, and nothing else. */
function sidesOf({ steps }: Instruction): {
  before: number;
  after: number;
  chart: ChartStep;
} | null {
  const work = steps.filter((step) =>
    ['boxes', 'chart', 'work', 'group', 'repeat'].includes(step.kind),
  );
  const [first, chart, last] = work;
  if (work.length !== 3 || chart?.kind !== 'chart') return null;
  const before = boxesIn(first);
  const after = boxesIn(last);
  return before === null || after === null ? null : { before, after, chart };
}

function boxesIn(step: Step | undefined): number | null {
  if (step?.kind === 'boxes') return step.until ? null : numberIn((step as BoxStep).n, 0);
  if (step?.kind !== 'work' || !/open/.test(step.stitch.special ?? '')) return null;
  return step.place || step.until ? null : numberIn(step.n, 0);
}
