/**
 * Which rows of the worked fabric use a chart. Every cell of a chart is the origin of the stitches
 * that it made, so the fabric itself tells what the words meant: "Work chart Tide", "follow chart".
 */
import type { Cloth, Fabric, RowRecord } from '../../fabric/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import type { Beside } from './sheet.ts';

/** One row of the fabric that works one row of the chart, in one size. */
export interface ChartUse {
  /** Row of the chart, from 0 at the bottom. */
  readonly row: number;
  readonly record: RowRecord;
  /** Passes of the chart side by side. */
  readonly times: number;
  /** Chains of an open box as worked; `null` where the row has none of the chart's. */
  readonly gap: number | null;
  /** Index into the fabric's yarns; 255 where none is named. */
  readonly yarn: number;
  readonly before: Beside | null;
  readonly after: Beside | null;
}

/** Uses of a chart in one size, in the order of work. */
export function usesOf(chart: Chart, fabric: Fabric, cloth: Cloth): readonly ChartUse[] {
  return cloth.rows.flatMap((record) => useIn({ chart, fabric, cloth, record }) ?? []);
}

interface Look {
  readonly chart: Chart;
  readonly fabric: Fabric;
  readonly cloth: Cloth;
  readonly record: RowRecord;
}

/** Stitches of the row that the chart made. */
interface Found {
  readonly first: number;
  readonly last: number;
  /** Nodes by origin: a pass of the chart gives each cell an origin of its own. */
  readonly nodes: ReadonlyMap<number, number>;
}

function useIn(look: Look): ChartUse | null {
  const found = foundIn(look);
  if (!found) return null;
  const { chart, fabric, cloth, record } = look;
  const places = [...found.nodes.keys()].map((origin) => fabric.origins[origin]?.from ?? 0);
  const line = chart.rowSpans.findIndex(({ from, to }) => places[0]! >= from && places[0]! < to);
  if (line < 0) return null;
  const gap = chart.mesh?.gap ?? gapOf(look, found, line);
  const times = places.filter((place) => place === places[0]).length;
  return {
    row: chart.rowSpans.length - 1 - line,
    record,
    times,
    gap,
    yarn: cloth.nodes.yarn[found.first] ?? 255,
    ...(gap === null ? { before: null, after: null } : besides(look, found, { gap, line, times })),
  };
}

function foundIn({ chart, fabric, cloth, record }: Look): Found | null {
  const { origin } = cloth.nodes;
  const nodes = new Map<number, number>();
  let [first, last] = [-1, -1];
  for (let id = record.nodes.from; id < record.nodes.to; id++) {
    const at = origin[id] ?? -1;
    const span = fabric.origins[at];
    if (!span || span.from < chart.from || span.to > chart.to) continue;
    nodes.set(at, (nodes.get(at) ?? 0) + 1);
    if (first < 0) first = id;
    last = id;
  }
  return first < 0 ? null : { first, last, nodes };
}

/** A box has a post and as many chains as the gap: so many nodes more than one. */
function gapOf({ chart, fabric }: Look, { nodes }: Found, line: number): number | null {
  const span = chart.rowSpans[line];
  const cells = chart.rows[line];
  if (!span || !cells) return null;
  // The first box of a row may have one post more, so the last open one is asked.
  const made = [...nodes].filter(([origin]) => {
    const at = (fabric.origins[origin]?.from ?? -1) - span.from;
    return cells[at] === 'open';
  });
  const n = made.at(-1)?.[1];
  return n === undefined ? null : n - 1;
}

function besides(
  look: Look,
  { first }: Found,
  { gap, line, times }: { gap: number; line: number; times: number },
): Pick<ChartUse, 'before' | 'after'> {
  const { chart, record } = look;
  const width = (chart.rows[line] ?? []).filter((cell) => cell !== 'none').length * times;
  const { nodes, chains } = countNodes(look, record.nodes.from, first);
  const own = !record.ring && nodes > 0 ? nodes - 1 : nodes;
  const before = own / (gap + 1);
  const after = record.tally.boxes - before - width;
  if (!Number.isInteger(before) || after < 0) return { before: null, after: null };
  const all = countNodes(look, record.nodes.from, record.nodes.to).chains;
  const inChart = chainsOf(look, line) * gap * times;
  return {
    before: beside(before, chains, gap),
    after: beside(after, all - chains - inChart, gap),
  };
}

function beside(boxes: number, chains: number, gap: number): Beside {
  const kind = chains === boxes * gap ? 'open' : chains === 0 ? 'filled' : 'mixed';
  return { boxes: [boxes], kind };
}

const chainsOf = ({ chart }: Look, line: number): number =>
  (chart.rows[line] ?? []).filter((cell) => cell === 'open').length;

/** Stitches and chains, without slip stitches, which only move the hook. */
function countNodes({ fabric, cloth }: Look, from: number, to: number) {
  let [nodes, chains] = [0, 0];
  for (let id = from; id < to; id++) {
    const kind = fabric.kinds.kinds[cloth.nodes.kind[id] ?? 0]?.class;
    if (kind === 'chain') chains++;
    if (kind === 'chain' || kind === 'stitch' || kind === 'start') nodes++;
  }
  return { nodes, chains };
}
