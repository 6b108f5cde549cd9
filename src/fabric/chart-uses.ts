/**
 * Which rows of the worked fabric use a chart, and where in them it stands. Every cell of a chart is
 * the origin of the stitches that it made, so the fabric itself tells what the words meant: "Work
 * chart Tide", "follow chart".
 */
import { unitsOf, widthOfCell } from '../filet/index.ts';
import type { Cell, Chart } from '../manuscript/index.ts';
import type { Cloth, Fabric, RowRecord } from './fabric.ts';
import { type MeshRow, meshRow } from './mesh-rows.ts';
import { NO_YARN } from './nodes.ts';

/** Boxes of the same row outside the chart: how many in each size, and of what kind. */
export interface Beside {
  /** One number a size of the pattern, or one if all sizes agree. */
  readonly boxes: readonly number[];
  /** `mixed`: not all alike. */
  readonly kind: 'open' | 'filled' | 'mixed';
}

/** One row of the fabric that works one row of the chart, in one size. */
export interface ChartUse {
  /** Row of the chart, from 0 at the bottom. */
  readonly row: number;
  readonly record: RowRecord;
  /** Passes of the chart side by side. */
  readonly times: number;
  /** Chains of an open box as worked; `null` where the row has none of the chart's. */
  readonly gap: number | null;
  /** Index into the fabric's yarns; `NO_YARN` where none is named. */
  readonly yarn: number;
  /** Before the first pass and after the last; `null` where the row is not mesh all along. */
  readonly before: Beside | null;
  readonly after: Beside | null;
  /** First box of each pass in the order of work, from 0; empty where the row is not mesh. */
  readonly starts: readonly number[];
  /**
   * Columns that the row works of it, where it is not all of them; counted from where the chart's
   * first row begins, from 1.
   */
  readonly part: { readonly from: number; readonly to: number } | null;
  /** Boxes of the chart before the join, where it runs across; `null` where it does not. */
  readonly acrossJoin: number | null;
  /** All boxes of the row in the order of work; `null` where it is not mesh all along. */
  readonly cells: readonly Cell[] | null;
}

/** Uses of a chart in one size, in the order of work. */
export function usesOf(chart: Chart, fabric: Fabric, cloth: Cloth): readonly ChartUse[] {
  return cloth.rows.flatMap((record) => useIn({ chart, fabric, cloth, record }) ?? []);
}

/** The lowest row that uses it; `null` for none. */
export function firstUseOf(chart: Chart, fabric: Fabric, cloth: Cloth): ChartUse | null {
  for (const record of cloth.rows) {
    const use = useIn({ chart, fabric, cloth, record });
    if (use) return use;
  }
  return null;
}

interface Look {
  readonly chart: Chart;
  readonly fabric: Fabric;
  readonly cloth: Cloth;
  readonly record: RowRecord;
}

/** A box of the chart as worked: each has an origin of its own. */
interface Box {
  /** Offset of its sign in the manuscript. */
  readonly sign: number;
  readonly first: number;
  readonly nodes: number;
}

function useIn(look: Look): ChartUse | null {
  const boxes = boxesIn(look);
  const [first] = boxes;
  if (!first) return null;
  const { chart, cloth, record } = look;
  const line = chart.rowSpans.findIndex(({ from, to }) => first.sign >= from && first.sign < to);
  if (line < 0) return null;
  const gap = chart.mesh?.gap ?? gapOf(look, boxes, line);
  const passes = boxes.filter(({ sign }) => sign === first.sign);
  return {
    row: chart.rowSpans.length - 1 - line,
    record,
    times: passes.length,
    gap,
    yarn: cloth.nodes.yarn[first.first] ?? NO_YARN,
    ...placed(look, boxes, { passes, gap, line }),
  };
}

function boxesIn({ chart, fabric, cloth, record }: Look): Box[] {
  const { origin } = cloth.nodes;
  const boxes = new Map<number, { sign: number; first: number; nodes: number }>();
  for (let id = record.nodes.from; id < record.nodes.to; id++) {
    const at = origin[id] ?? -1;
    const span = fabric.origins[at];
    if (!span || span.from < chart.from || span.to > chart.to) continue;
    const kind = fabric.kinds.kinds[cloth.nodes.kind[id] ?? 0]?.class;
    if (kind === 'base' || kind === 'slip') continue;
    const box = boxes.get(at);
    if (box) box.nodes++;
    else boxes.set(at, { sign: span.from, first: id, nodes: 1 });
  }
  const all = [...boxes.values()];
  // The first post of boxes added at the start is made before the box that it belongs to.
  const [post, box] = all;
  const apart = post?.nodes === 1 && post.sign === box?.sign && chart.rows.some(isNarrower);
  return apart ? [{ ...box, first: post.first, nodes: box.nodes + 1 }, ...all.slice(2)] : all;
}

const isNarrower = (row: readonly Cell[]): boolean => row.includes('none');

/** A box has a post and as many chains as the gap: so many nodes more than one. */
function gapOf({ chart }: Look, boxes: readonly Box[], line: number): number | null {
  const from = chart.rowSpans[line]?.from ?? 0;
  const cells = chart.rows[line] ?? [];
  // The first box of a row may have one post more, so the last open one is asked.
  const open = boxes.findLast(({ sign }) => cells[sign - from] === 'open');
  return open ? open.nodes - 1 : null;
}

const UNKNOWN = {
  before: null,
  after: null,
  starts: [],
  cells: null,
  acrossJoin: null,
  part: null,
} as const;

function placed(
  look: Look,
  boxes: readonly Box[],
  { passes, gap, line }: { passes: readonly Box[]; gap: number | null; line: number },
): Pick<ChartUse, 'before' | 'after' | 'starts' | 'cells' | 'acrossJoin' | 'part'> {
  const { chart, fabric, cloth, record } = look;
  // The post matters only to tell a lacet's low stitch from it: any tall one will do.
  const found = gap === null ? null : meshRow(fabric, cloth, record, { post: 'w1', gap });
  if (!found) return UNKNOWN;
  const drawn = chart.rows[line] ?? [];
  const { cells } = found;
  const columns = boxes.map(({ first }) => columnOf(found, first));
  const units = unitsOf(drawn, 0, drawn.length).length;
  const jumps = columns.flatMap((column, i) => (isJump(columns, i) ? [column] : []));
  if (boxes.length !== passes.length * units || jumps.length >= passes.length) {
    const [behind = null] = jumps;
    const across = inParts(found, { columns, behind, record });
    const part = across.acrossJoin === null ? partOf(look, boxes, line) : null;
    const [start] = across.starts;
    const width = drawn.filter((cell) => cell !== 'none').length;
    // Across the join the other boxes lie between its end and its start.
    const rest =
      across.acrossJoin === null ? null : besideOf(cells.slice(width - across.acrossJoin, start));
    return { ...UNKNOWN, ...across, after: rest, cells, part };
  }
  const starts = passes.map(({ first }) => columnOf(found, first));
  const end = (starts.at(-1) ?? 0) + drawn.filter((cell) => cell !== 'none').length;
  if (end > cells.length) return UNKNOWN;
  const before = besideOf(cells.slice(0, starts[0]));
  return { before, after: besideOf(cells.slice(end)), starts, cells, acrossJoin: null, part: null };
}

/** Parts of the chart at both ends of a round: it begins before the join and goes on behind it. */
function inParts(
  { cells }: MeshRow,
  {
    columns,
    behind,
    record,
  }: { columns: readonly number[]; behind: number | null; record: RowRecord },
): Pick<ChartUse, 'starts' | 'acrossJoin'> {
  const ends = columns[0] === 0 && (columns.at(-1) ?? 0) >= cells.length - 2;
  if (!record.closes || behind === null || !ends) return { starts: [], acrossJoin: null };
  return { starts: [behind], acrossJoin: cells.length - behind };
}

/** The sign of a pair is the one that work meets first: from there the width is counted. */
function partOf(
  { chart, record }: Look,
  boxes: readonly Box[],
  line: number,
): NonNullable<ChartUse['part']> {
  const start = chart.rowSpans[line]?.from ?? 0;
  const drawn = chart.rows[line] ?? [];
  const columns = boxes.map(({ sign }) => sign - start);
  const width = columns.reduce((sum, column) => sum + widthOfCell(drawn[column] ?? 'open'), 0);
  if (record.side === 'RS') {
    const from = drawn.length - Math.max(...columns);
    return { from, to: from + width - 1 };
  }
  const to = drawn.length - Math.min(...columns);
  return { from: to - width + 1, to };
}

/** Other boxes lie between this one and the one before it; a lacet is two wide. */
const isJump = (columns: readonly number[], i: number): boolean =>
  i > 0 && (columns[i] ?? 0) > (columns[i - 1] ?? 0) + 2;

/** The box that a node begins: behind the last post before it, or that it is itself. */
function columnOf({ posts, at }: MeshRow, node: number): number {
  const post = posts.findLastIndex((one) => one <= node);
  return at[post] ?? 0;
}

function besideOf(cells: readonly Cell[]): Beside {
  const alike = (kind: Cell): boolean => cells.every((cell) => cell === kind);
  const kind = alike('open') ? 'open' : alike('filled') ? 'filled' : 'mixed';
  return { boxes: [cells.length], kind };
}
