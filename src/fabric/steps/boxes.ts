/** Filet told in boxes: "7 open boxes, 1 filled box", "work chart Tide over next 21 boxes". */
import type { Mesh } from '../../filet/index.ts';
import type { BoxStep, ChartStep } from '../../notation/index.ts';
import { chartNamed, chartRow, chartRowNext, type ShapedRow } from '../charts.ts';
import type { Here, RowContext } from '../context.ts';
import { atStart, fact, type Hands, numberFor, originFor, spanAt } from '../hands.ts';
import { limitOf } from '../limit.ts';
import { boxesGiven } from './box-asked.ts';
import { checkMesh } from './box-check.ts';
import { addAtEnd, addAtStart, slipOver } from './box-edge.ts';
import { meshFor } from './box-mesh.ts';
import { placesLeft } from './box-places.ts';
import { type Box, type BoxWork, boxesWide, onlySlips, workBox } from './box-work.ts';

export { boxOf, isBoxWord } from './box-asked.ts';

export function doBoxes(hands: Hands, step: BoxStep, row: RowContext, here: Here): void {
  const mesh = meshFor(hands, row, null);
  const by: BoxWork = { mesh, round: row.round, origin: originFor(hands, step) };
  const n = numberFor(hands, step.n) ?? 1;
  if (step.edge === 'slipped') {
    hands.leave = true;
    return slipOver(hands, n, by);
  }
  if (step.edge === 'added' && !(atStart(hands) || hands.aside)) {
    for (let i = 0; i < n; i++) addAtEnd(hands, step.box, by);
    return;
  }
  if (step.edge === 'added' && atStart(hands))
    addAtStart(hands, addedFrom(hands, here), step.box, by);
  checkMesh(hands, mesh, row, here);
  const until = step.until;
  if (until || (step.n === null && here.i === here.steps.length - 1)) {
    return workToEnd(hands, step.box, by, limitOf(hands, until));
  }
  for (let i = 0; i < n; i++) workBox(hands, step.box, by);
}

function workToEnd(hands: Hands, box: Box, by: BoxWork, limit: number): void {
  const places = boxesWide(box) * (by.mesh.gap + 1);
  while (placesLeft(hands, limit, by.mesh) >= places) workBox(hands, box, by);
}

/** Boxes added by this step and by those that stand right behind it. */
function addedFrom(hands: Hands, here: Here): number {
  let n = 0;
  for (const step of here.steps.slice(here.i)) {
    if (step.kind !== 'boxes' || step.edge !== 'added') break;
    n += (numberFor(hands, step.n) ?? 1) * boxesWide(step.box);
  }
  return n;
}

export function doChart(hands: Hands, step: ChartStep, row: RowContext, here: Here): void {
  const chart = chartNamed(row.charts, step.name);
  if (!chart) {
    hands.loose = true;
    return fact(hands, { kind: 'chart-missing', name: step.name, ...spanAt(hands, step) });
  }
  const nth = chartRowNext(chart, step, row.chartTold);
  const shaped = chartRow(chart, nth, { reads: row.reads, part: step.part });
  if (!shaped) {
    hands.loose = true;
    const [name, rows] = [chart.name, chart.rows.length];
    return fact(hands, { kind: 'chart-row', name, row: nth + 1, rows, ...spanAt(hands, step) });
  }
  const mesh = meshFor(hands, row, chart);
  const given = boxesGiven(hands, step);
  const width = shaped.width;
  if (given !== null && given !== width) {
    fact(hands, { kind: 'chart-width', name: chart.name, width, given, ...spanAt(hands, step) });
  }
  checkMesh(hands, mesh, row, here);
  const by: BoxWork = { mesh, round: row.round, origin: originFor(hands, step) };
  const before = step.fromBox !== null ? step.fromBox - 1 - hands.boxes : 0;
  for (let i = 0; i < before; i++) workBox(hands, 'open', by);
  workChartRow(hands, shaped, { mesh, row, step });
}

interface ChartWork {
  readonly mesh: Mesh;
  readonly row: RowContext;
  readonly step: ChartStep;
}

/** A row of the chart; alone in its row it may be longer or shorter than the row beneath. */
function workChartRow(hands: Hands, shaped: ShapedRow, { mesh, row, step }: ChartWork): void {
  const work = (place: number | undefined): BoxWork => {
    const at = place ?? step.from;
    const origin = hands.bench.origins.push({ from: at, to: at + 1 }) - 1;
    return { mesh, round: row.round, origin };
  };
  const first = shaped.units[0];
  const shapes = !row.round && onlySlips(hands) && worksAlone(row);
  const starts = shapes ? (shaped.starts ?? 0) : 0;
  const ends = shapes ? shaped.ends : 0;
  if (first && starts > 0) addAtStart(hands, starts, first.box, work(first.at));
  if (starts < 0) slipOver(hands, -starts, work(first?.at));
  if (starts < 0 || ends < 0) hands.leave = true;
  let left = shaped.units.reduce((sum, { box }) => sum + boxesWide(box), 0) - Math.max(0, ends);
  for (const { box, at } of shaped.units) {
    if (left > 0) workBox(hands, box, work(at));
    else addAtEnd(hands, box, work(at));
    left -= boxesWide(box);
  }
}

/** Nothing but the chart is worked in this row, so that its edges are the row's. */
const worksAlone = (row: RowContext): boolean =>
  !row.shape.steps.some(({ kind }) => ['boxes', 'work', 'group', 'repeat', 'chain'].includes(kind));
