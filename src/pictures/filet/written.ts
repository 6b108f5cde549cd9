/**
 * Rows that are written out in stitches and make just what a chart shows, though none names it: patterns
 * print both, so that a maker may choose. The boxes are read back from the fabric, whatever made them.
 */
import { type ChartUse, type Cloth, type Fabric, meshRow, NO_YARN } from '../../fabric/index.ts';
import { asPictured, meshOfGrid, readsOf } from '../../filet/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import type { Terms } from '../../notation/index.ts';

/** One row for each row of the chart, one after the other and every box alike; else none at all. */
export function writtenUses(
  chart: Chart,
  fabric: Fabric,
  cloth: Cloth,
  terms: Terms,
): readonly ChartUse[] {
  if (!chart.mesh || chart.rows.length === 0) return [];
  const mesh = meshOfGrid(chart, terms);
  const lines = chart.rows.toReversed();
  const made = cloth.rows.map((record) => ({
    record,
    cells: meshRow(fabric, cloth, record, mesh),
  }));
  const isSame = ({ record, cells }: (typeof made)[number], line: number): boolean => {
    if (!cells) return false;
    const reads = readsOf(record.side === 'RS' ? 'right' : 'wrong', 'right');
    const drawn = asPictured(lines[line] ?? [], reads).filter((cell) => cell !== 'none');
    return drawn.length === cells.cells.length && drawn.every((cell, i) => cell === cells.cells[i]);
  };
  const start = made.findIndex(
    ({ record }, from) =>
      from + lines.length <= made.length &&
      lines.every((_, line) => {
        const row = made[from + line];
        return row?.record.partIndex === record.partIndex && isSame(row, line);
      }),
  );
  if (start < 0) return [];
  return made.slice(start, start + lines.length).map(({ record, cells }, row) => ({
    row,
    record,
    times: 1,
    gap: mesh.gap,
    yarn: cloth.nodes.yarn[record.nodes.from] ?? NO_YARN,
    before: null,
    after: null,
    starts: [0],
    acrossJoin: null,
    part: null,
    cells: cells?.cells ?? null,
  }));
}
