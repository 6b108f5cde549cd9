/**
 * Rows that are written out beside a chart that no row names: both must say the same. They are tied
 * only where a part has as many rows of this mesh as the chart, one after the other, of its width,
 * and four boxes in five agree (ours): else they may be rows of something else, and nothing is said.
 */
import { type Cloth, meshRow, type RowRecord } from '../../fabric/index.ts';
import { asPictured, meshOfGrid } from '../../filet/index.ts';
import { chartDiffers, type Finding } from '../../finding/index.ts';
import type { Cell, Chart } from '../../manuscript/index.ts';
import { chartName, rowName } from '../names.ts';
import type { Scene } from '../scene.ts';
import { instructionsOf, stepsIn } from './rows.ts';

const AGREE = 0.8;

export function chartsAgainstRows(scene: Scene): Finding[] {
  const cloth = scene.fabric.cloths[0];
  const named = new Set(
    [...instructionsOf(scene)].flatMap(({ placed }) =>
      [...stepsIn(placed.instruction.steps)].flatMap((step) =>
        step.kind === 'chart' ? [step.name.toLowerCase()] : [],
      ),
    ),
  );
  if (!cloth || named.has('')) return [];
  return scene.manuscript.charts
    .filter((chart) => chart.mesh && !named.has(chart.name.toLowerCase()))
    .flatMap((chart) => against(scene, cloth, chart));
}

interface Pair {
  readonly row: RowRecord;
  readonly made: readonly Cell[];
  readonly drawn: readonly Cell[];
  readonly line: number;
}

function against(scene: Scene, cloth: Cloth, chart: Chart): Finding[] {
  const pairs = tied(scene, cloth, chart);
  const all = pairs.flatMap(({ made, drawn }) => made.map((cell, i) => cell === drawn[i]));
  if (all.length === 0 || all.filter(Boolean).length < AGREE * all.length) return [];
  return pairs.flatMap((pair) => {
    const found = difference(scene, chart, pair);
    return found ? [found] : [];
  });
}

function tied(scene: Scene, cloth: Cloth, chart: Chart): Pair[] {
  const mesh = meshOfGrid(chart, scene.manuscript.terms.terms);
  const rows = cloth.rows.filter((row) => row.instance === 1 && row.number !== null);
  const read = rows.map((row) => ({ row, found: meshRow(scene.fabric, cloth, row, mesh) }));
  const width = chart.rows[0]?.length ?? 0;
  const fit = read.filter(({ found }) => found?.cells.length === width);
  if (fit.length !== chart.rows.length || chart.rows.flat().includes('none')) return [];
  return fit.map(({ row, found }, nth) => {
    const line = chart.rows.length - 1 - nth;
    const reads = row.side === 'RS' ? 'right-to-left' : 'left-to-right';
    const drawn = asPictured(chart.rows[line] ?? [], reads);
    return { row, made: found?.cells ?? [], drawn, line };
  });
}

function difference(scene: Scene, chart: Chart, { row, made, drawn, line }: Pair): Finding | null {
  const at = made.findIndex((cell, i) => cell !== drawn[i]);
  if (at < 0) return null;
  const span = chart.rowSpans[line];
  const words = {
    row: rowName(scene, row),
    made: boxName(made[at]),
    chart: chartName(chart.name),
    drawn: boxName(drawn[at]),
    box: at + 1,
  };
  const labels = span ? [{ ...span, text: `row ${chart.rows.length - line} of the chart` }] : [];
  return chartDiffers({ from: row.from, to: row.to }, words, { labels, rows: [row.id] });
}

function boxName(cell: Cell | undefined): string {
  if (cell === 'lacet' || cell === 'bar') return `a ${cell}`;
  return cell === 'open' ? 'an open box' : cell === 'filled' ? 'a filled box' : 'no box';
}
