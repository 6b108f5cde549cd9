/** What of charts nobody should take for proven: not worked, not compared with written rows, not placed. */
import type { Chart } from '../manuscript/index.ts';
import { chartName, listed, rowName } from './names.ts';
import type { Scene } from './scene.ts';
import { rowsLeftOf, type Ties, tiesIn } from './text/chart-ties.ts';
import { motifsUnplaced } from './text/motif.ts';
import { instructionsOf, stepsIn } from './text/rows.ts';

export function chartsLeft(scene: Scene): string[] {
  const ties = tiesIn(scene);
  const held = ties.tied.map(({ chart }) => chart);
  return [
    ...unworked(scene, [...held, ...ties.givenUp]),
    ...uncompared(scene, ties),
    ...fronts(scene),
  ];
}

/** Written rows that should have been laid on a chart, and could not be. */
function uncompared(scene: Scene, { tied, givenUp }: Ties): string[] {
  const rows = tied.flatMap((tie) => {
    const names = [...new Set(rowsLeftOf(tie, scene).map((row) => rowName(scene, row)))];
    if (names.length === 0) return [];
    const have = names.length === 1 ? 'it has' : 'they have';
    return [
      `Whether ${listed(names)} ${names.length === 1 ? 'says' : 'say'} what ${chartName(tie.chart.name)} shows: ${have} another number of boxes there, or not boxes alone.`,
    ];
  });
  const names = givenUp.map(({ name }) => chartName(name));
  return [
    ...rows,
    ...(names.length > 0
      ? [
          `Whether rows written out say what ${listed(names)} ${names.length === 1 ? 'shows' : 'show'}: there are too many places in these rows to try them all.`,
        ]
      : []),
  ];
}

/** Charts that no row works, and that no written rows were held against. */
function unworked(scene: Scene, held: readonly Chart[]): string[] {
  const used = new Set<string>();
  let any = false;
  for (const { placed } of instructionsOf(scene)) {
    for (const step of stepsIn(placed.instruction.steps)) {
      if (step.kind !== 'chart') continue;
      any = true;
      used.add(step.name.toLowerCase());
    }
  }
  const { charts: all } = scene.manuscript;
  const left = all.filter(
    (chart) =>
      !used.has(chart.name.toLowerCase()) && !(any && all.length === 1) && !held.includes(chart),
  );
  if (left.length === 0) return [];
  const names = left.map(({ name }) => (name === '' ? 'a chart without a name' : name));
  return [`No row works ${left.length === 1 ? 'the chart' : 'the charts'}: ${listed(names)}.`];
}

/** Charts on a round of which neither notes nor handles tell the front, or that reach round a side. */
function fronts(scene: Scene): string[] {
  const { unknown, aside, together, shaped } = motifsUnplaced(scene);
  const stand = unknown.length === 1 ? 'stands' : 'stand';
  const are = aside.length === 1 ? 'is' : 'are';
  return [
    ...(unknown.length > 0
      ? [
          `Whether ${listed(unknown)} ${stand} in the middle of the front: nothing tells where the front is. A note would, as "Rounds start at the side."`,
        ]
      : []),
    ...(aside.length > 0 ? [`Whether ${listed(aside)} ${are} meant to reach round the side.`] : []),
    ...(together.length > 0
      ? [`Whether ${listed(together)}, worked in one row, stand in its middle together.`]
      : []),
    ...(shaped.length > 0
      ? [
          `Whether ${listed(shaped)} ${shaped.length === 1 ? 'stands' : 'stand'} in the middle: ${shaped.length === 1 ? 'its' : 'their'} rows are of several widths.`,
        ]
      : []),
  ];
}
