/** The pieces of a cloth, each as a graph of its stitches. */
import type { Cloth, KindTable, RowRecord } from '../../fabric/index.ts';
import { componentsOf } from './components.ts';
import { type Draft, draftOf, isChainNode, type Run } from './draft.ts';
import { type Feet, feetOf } from './feet.ts';
import type { GraphRow, SizesOfRow, StitchGraph } from './stitch-graph.ts';

/** `sizesOf` is asked once for each row; null stands for a foundation, which takes the size of `above`. */
export type SizesFor = (record: RowRecord | null, above: RowRecord | null) => SizesOfRow;

export function pieceGraphs(
  cloth: Cloth,
  kinds: KindTable,
  sizesFor: SizesFor,
): readonly StitchGraph[] {
  const draft = draftOf(cloth, kinds);
  const feet = feetOf(draft);
  const component = componentsOf(draft);
  const runsOf = new Map<number, number[]>();
  draft.runs.forEach((run, i) => {
    const root = component[run.nodes[0]!]!;
    const runs = runsOf.get(root);
    if (runs) runs.push(i);
    else runsOf.set(root, [i]);
  });
  return [...runsOf.values()]
    .filter((runs) => runs.some((i) => draft.runs[i]?.record))
    .map((runs) => graphOf(draft, feet, runs, sizesFor));
}

interface Columns {
  readonly cloth: number[];
  readonly row: number[];
  readonly rows: GraphRow[];
  readonly widthMm: number[];
  readonly heightMm: number[];
  readonly before: number[];
  readonly after: number[];
}

function graphOf(
  draft: Draft,
  feet: Feet,
  indices: readonly number[],
  sizesFor: SizesFor,
): StitchGraph {
  const runs = indices.map((i) => draft.runs[i]!);
  const columns: Columns = {
    cloth: [],
    row: [],
    rows: [],
    widthMm: [],
    heightMm: [],
    before: [],
    after: [],
  };
  runs.forEach((run, i) => {
    const above = runs.slice(i + 1).find(({ record }) => record)?.record ?? null;
    addRun(draft, columns, run, sizesFor(run.record, above));
  });
  const numberOf = new Map(columns.cloth.map((node, i) => [node, i]));
  const { anchorFrom, anchors } = anchorColumns(columns.cloth, feet, numberOf);
  const records = runs.flatMap(({ record }) => record ?? []);
  const ringAt = columns.cloth.findIndex((node) => classAt(draft, node) === 'ring');
  return {
    parts: [...new Set(records.map(({ part }) => part))],
    partIndex: records[0]?.partIndex ?? 0,
    instance: records[0]?.instance ?? 1,
    n: columns.cloth.length,
    cloth: Int32Array.from(columns.cloth),
    row: Int32Array.from(columns.row),
    isChain: Uint8Array.from(columns.cloth, (node) => (isChainNode(draft, node) ? 1 : 0)),
    widthMm: Float64Array.from(columns.widthMm),
    heightMm: Float64Array.from(columns.heightMm),
    before: Int32Array.from(columns.before),
    after: Int32Array.from(columns.after),
    anchorFrom,
    anchors,
    place: Int32Array.from(columns.cloth, (node) => feet.place[node]!),
    rows: withTurns(columns, anchorFrom, anchors),
    ring: ringAt,
    leftOut: leftOutOf(columns, anchorFrom, draft),
  };
}

const classAt = (draft: Draft, node: number): string =>
  draft.kinds.kinds[draft.cloth.nodes.kind[node]!]!.class;

function addRun(draft: Draft, columns: Columns, run: Run, sizes: SizesOfRow): void {
  const from = columns.cloth.length;
  const to = from + run.nodes.length;
  const isRing = run.isRing && run.nodes.length > 2;
  run.nodes.forEach((node, i) => {
    const kind = draft.cloth.nodes.kind[node]!;
    columns.cloth.push(node);
    columns.row.push(columns.rows.length);
    columns.widthMm.push(sizes.widthMm(kind));
    columns.heightMm.push(sizes.heightMm(kind));
    columns.before.push(i > 0 ? from + i - 1 : isRing ? to - 1 : -1);
    columns.after.push(from + i + 1 < to ? from + i + 1 : isRing ? from : -1);
  });
  columns.rows.push({ record: run.record, from, to, isRing, isTurned: false });
}

function anchorColumns(
  cloth: readonly number[],
  feet: Feet,
  numberOf: ReadonlyMap<number, number>,
): Pick<StitchGraph, 'anchorFrom' | 'anchors'> {
  const anchorFrom = new Int32Array(cloth.length + 1);
  const anchors: number[] = [];
  cloth.forEach((node, i) => {
    for (const foot of feet.on[node]!) {
      const number = numberOf.get(foot);
      if (number !== undefined && number !== i) anchors.push(number);
    }
    anchorFrom[i + 1] = anchors.length;
  });
  return { anchorFrom, anchors: Int32Array.from(anchors) };
}

/** Whether a row runs with the one beneath or against it: told by the order of the feet, by majority. */
function withTurns(
  columns: Columns,
  anchorFrom: Int32Array,
  anchors: Int32Array,
): readonly GraphRow[] {
  const rows: GraphRow[] = [];
  const first = columns.rows.findIndex(({ record }) => record);
  columns.rows.forEach((row, r) => {
    let votes = 0;
    let beneath = -1;
    for (let i = row.from; i + 1 < row.to && r > first; i++) {
      const [a, b] = [anchorFrom[i]!, anchorFrom[i + 1]!];
      if (a === b || b === anchorFrom[i + 2]) continue;
      const [foot, next] = [anchors[a]!, anchors[b]!];
      if (columns.row[foot] !== columns.row[next] || foot === next) continue;
      votes += next > foot ? 1 : -1;
      beneath = columns.row[foot]!;
    }
    const below = rows[beneath];
    const isTurned = below?.record ? below.isTurned !== votes < 0 : votes < 0;
    rows.push({ ...row, isTurned: beneath >= 0 && isTurned });
  });
  return rows;
}

/** Rows whose stitches stand on nothing that is known, though something lies beneath. */
function leftOutOf(columns: Columns, anchorFrom: Int32Array, draft: Draft): readonly string[] {
  const out: string[] = [];
  columns.rows.forEach((row, i) => {
    if (!row.record || i === 0) return;
    let loose = 0;
    for (let k = row.from; k < row.to; k++) {
      const isStitch = !isChainNode(draft, columns.cloth[k]!);
      if (isStitch && anchorFrom[k] === anchorFrom[k + 1]) loose++;
    }
    if (loose * 2 > row.to - row.from) {
      out.push(
        `${row.record.part}, ${row.record.label || 'a row'}: where its stitches stand is not known.`,
      );
    }
  });
  return out;
}
