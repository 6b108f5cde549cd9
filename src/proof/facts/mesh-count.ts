/** Boxes of mesh that do not come out with the stitches beneath. */
import type { RowRecord } from '../../fabric/index.ts';
import { type Finding, meshCount, roundOverrun } from '../../finding/index.ts';
import { propose } from '../fixes/proposals.ts';
import { boxFixes } from '../fixes/row-fixes.ts';
import { beneathLabels, beneathName, beneathUnit, rowName } from '../names.ts';
import { askedBy, type Scene, type Sightings } from '../scene.ts';

export function mesh(scene: Scene, found: Sightings<'mesh'>): Finding | null {
  const { first, at, rows, sizes } = found;
  if (worksUnevenChart(scene, first.row)) return null;
  const { boxes, needed, have } = first.fact;
  const row = rowName(scene, first.row);
  const post = needed % boxes === 1 ? 1 : 0;
  const step = (needed - post) / boxes;
  const close = post === 1 ? `, and 1 for the last post, is ${needed}` : ` is ${needed}`;
  const gap = have > needed ? `${have - needed} too many` : `${needed - have} too few`;
  const sum = `${boxes} boxes of ${step}: ${boxes} x ${step}${close}. There are ${have}: ${gap}.`;
  const more = { sum, labels: beneathLabels(scene, first), rows, sizes };
  const fixes = boxFixes(scene, first, (have - needed) / step);
  if (needed > have) {
    const before = beneathName(scene, first);
    const words = { row, needed, have, before, unit: beneathUnit(first) };
    return propose(roundOverrun(at, words, more), fixes);
  }
  const how = post === 1 ? 'flat' : 'in the round';
  return propose(meshCount(at, { row, step, have, how, left: have - needed }, more), fixes);
}

/** A chart row that is not as wide as its others is told where the chart stands. */
function worksUnevenChart(scene: Scene, row: RowRecord): boolean {
  const steps = askedBy(scene, row)?.instruction.steps ?? [];
  return steps.some((step) => {
    if (step.kind !== 'chart') return false;
    const name = step.name.toLowerCase();
    const chart = scene.manuscript.charts.find((one) => one.name.toLowerCase() === name);
    return new Set(chart?.rows.map((cells) => cells.length)).size > 1;
  });
}
