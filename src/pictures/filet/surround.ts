/**
 * The fabric in which a chart stands: its boxes with those beside, above and beneath, read back from
 * the stitches. So the preview shows the ground that the design is seen against, as it will be worked.
 */
import {
  type ChartUse,
  type Cloth,
  type Fabric,
  meshRow,
  type RowRecord,
} from '../../fabric/index.ts';
import type { Cell } from '../../filet/index.ts';
import type { Sheet } from './sheet.ts';

/** Boxes shown beside the chart, and rows above and beneath it (ours: enough to see the ground). */
const BESIDE = 3;
const ROWS = 2;

export interface Surround {
  /** The lowest first; cells as pictured, all rows equally long. */
  readonly rows: readonly (readonly Cell[])[];
  /** Whether any of these boxes stand outside the chart. */
  readonly isWider: boolean;
}

/** The chart alone where the fabric does not tell in each row where it stands. */
export function surroundOf(
  sheet: Sheet,
  uses: readonly ChartUse[],
  { fabric, cloth }: { readonly fabric: Fabric; readonly cloth: Cloth | undefined },
): Surround {
  const alone = { rows: sheet.rows.map(({ cells }) => cells), isWider: false };
  const rows = sheet.rows.map((_, row) => uses.find((use) => use.row === row));
  const known = rows.flatMap((use) => (use?.cells && use.starts.length > 0 ? [use] : []));
  const [first] = known;
  const last = known.at(-1);
  if (!cloth || !first || !last || known.length < sheet.rows.length) return alone;
  const at = { columns: sheet.columns, gap: sheet.mesh.gap, fabric, cloth };
  const all = [
    ...beyond(first, -1, at).reverse(),
    ...known.map((use) => windowOf(placedAt(use, sheet.columns), use.record.closes)),
    ...beyond(last, 1, at),
  ];
  const trimmed = trim(all);
  const isWider = trimmed.length > sheet.rows.length || (trimmed[0]?.length ?? 0) > sheet.columns;
  return isWider ? { rows: trimmed, isWider } : alone;
}

interface Placed {
  /** From left to right as pictured. */
  readonly cells: readonly Cell[];
  /** Column of these at which the chart's left edge lies. */
  readonly left: number;
  /** Boxes of the chart. */
  readonly columns: number;
}

/** Right-side rows run from right to left. */
function placedAt({ cells, starts, record }: ChartUse, columns: number): Placed {
  const made = cells ?? [];
  const start = starts[0] ?? 0;
  if (record.side !== 'RS') return { cells: made, left: start, columns };
  return { cells: made.toReversed(), left: made.length - start - columns, columns };
}

/** The chart's columns and some beside; in the round they go on behind the join. */
function windowOf({ cells, left, columns }: Placed, ring: boolean): Cell[] {
  const n = cells.length;
  const beside = ring ? Math.min(BESIDE, Math.floor((n - columns) / 2)) : BESIDE;
  return Array.from({ length: columns + 2 * BESIDE }, (_, i): Cell => {
    const column = left + i - BESIDE;
    const isFar = i < BESIDE - beside || i >= BESIDE + columns + beside;
    if (isFar) return 'none';
    return cells[ring ? (column + n) % n : column] ?? 'none';
  });
}

/** Rows of as many boxes that follow on the chart's last row, or come before its first. */
function beyond(
  use: ChartUse,
  step: -1 | 1,
  at: { columns: number; gap: number; fabric: Fabric; cloth: Cloth },
): Cell[][] {
  const { fabric, cloth, columns, gap } = at;
  const placed = placedAt(use, columns);
  const from = cloth.rows.indexOf(use.record);
  const rows: Cell[][] = [];
  for (let i = 1; i <= ROWS; i++) {
    const record: RowRecord | undefined = cloth.rows[from + i * step];
    if (record?.partIndex !== use.record.partIndex || record.closes !== use.record.closes) break;
    const found = meshRow(fabric, cloth, record, { post: 'w1', gap });
    if (found?.cells.length !== placed.cells.length) break;
    const cells = record.side === 'RS' ? found.cells.toReversed() : found.cells;
    rows.push(windowOf({ ...placed, cells }, record.closes));
  }
  return rows;
}

/** Columns at either end that have no box in any row are left out. */
function trim(rows: readonly (readonly Cell[])[]): readonly (readonly Cell[])[] {
  const columns = [...(rows[0] ?? []).keys()];
  const used = (column: number): boolean => rows.some((row) => row[column] !== 'none');
  const from = columns.findIndex(used);
  const to = columns.findLastIndex(used) + 1;
  return rows.map((row) => row.slice(from, to));
}
