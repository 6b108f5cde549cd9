/** The pieces of a cloth, each as a graph of its stitches. */
import type { Cloth, KindTable, RowRecord } from '../../fabric/index.ts';
import { componentsOf } from './components.ts';
import { anchorsOfNode, type Draft, draftOf, isChainNode, type Run } from './draft.ts';
import { type Feet, feetOf } from './feet.ts';
import { runsBackwards } from './lines.ts';
import type { GraphRow, SizesOfRow, StitchGraph } from './stitch-graph.ts';
import { mainStem } from './stitch-sizes.ts';

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
  readonly isChain: number[];
  readonly widthMm: number[];
  readonly heightMm: number[];
  readonly before: number[];
  readonly after: number[];
  /** The chain beneath a foundation stitch, made with it. */
  readonly ownFoot: Map<number, number>;
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
    isChain: [],
    widthMm: [],
    heightMm: [],
    before: [],
    after: [],
    ownFoot: new Map(),
  };
  runs.forEach((run, i) => {
    const above = runs.slice(i + 1).find(({ record }) => record)?.record ?? null;
    addRun(draft, columns, run, sizesFor(run.record, above));
  });
  // A foundation stitch comes after the chain beneath it, so its number is the one that is kept.
  const numberOf = new Map(columns.cloth.map((node, i) => [node, i]));
  const { anchorFrom, anchors } = anchorColumns(columns, feet, numberOf);
  linkExtensions(columns, feet, numberOf);
  const records = runs.flatMap(({ record }) => record ?? []);
  const ringAt = columns.cloth.findIndex((node) => classAt(draft, node) === 'ring');
  const graph: StitchGraph = {
    parts: [...new Set(records.map(({ part }) => part))],
    partIndex: records[0]?.partIndex ?? 0,
    instance: records[0]?.instance ?? 1,
    n: columns.cloth.length,
    cloth: Int32Array.from(columns.cloth),
    row: Int32Array.from(columns.row),
    isChain: Uint8Array.from(columns.isChain),
    widthMm: Float64Array.from(columns.widthMm),
    heightMm: Float64Array.from(columns.heightMm),
    before: Int32Array.from(columns.before),
    after: Int32Array.from(columns.after),
    anchorFrom,
    anchors,
    place: placesOf(columns, feet),
    rows: withTurns(columns, anchorFrom, anchors),
    ring: ringAt,
    leftOut: leftOutOf(columns, anchorFrom),
  };
  return { ...graph, rows: graph.rows.map((row, r) => turnedAsAbove(graph, row, r)) };
}

/** A foundation faces the way of the row that stands on it. */
const turnedAsAbove = (graph: StitchGraph, row: GraphRow, r: number): GraphRow =>
  row.record ? row : { ...row, isTurned: runsBackwards(graph, r) };

const classAt = (draft: Draft, node: number): string =>
  draft.kinds.kinds[draft.cloth.nodes.kind[node]!]!.class;

/** Chains that lengthen the row beneath make a row of their own, under the stitches that stand on them. */
function addRun(draft: Draft, columns: Columns, run: Run, sizes: SizesOfRow): void {
  const isBase = (node: number): boolean => classAt(draft, node) === 'base';
  const isFounding = (node: number): boolean => run.record !== null && founds(draft, node);
  const own = new Map<number, number>();
  const extend = (chains: readonly number[], owned: readonly number[]): void => {
    const nodes = [...chains, ...owned];
    owned.forEach((node, k) => {
      own.set(node, columns.cloth.length + chains.length + k);
    });
    // Beneath foundation stitches that are joined the chain is a ring as well.
    const isRing = run.isRing && owned.length === run.nodes.length;
    addRow(draft, columns, { record: null, nodes, isRing, isExtension: true }, sizes);
  };
  const base = run.record ? run.nodes.filter(isBase) : [];
  extend(base, startOn(draft, run, base));
  extend([], run.nodes.filter(isFounding));
  const nodes = base.length > 0 ? run.nodes.filter((node) => !isBase(node)) : run.nodes;
  nodes.forEach((node, i) => {
    const foot = own.get(node);
    if (foot !== undefined) columns.ownFoot.set(columns.cloth.length + i, foot);
  });
  addRow(draft, columns, { ...run, nodes, isExtension: false }, sizes);
}

/**
 * A chain that stands for a stitch at the end of a longer row: it rises from a chain of its own, beyond
 * the one that the first stitch is worked into, though the words name that one.
 */
function startOn(draft: Draft, { nodes }: Run, base: readonly number[]): readonly number[] {
  const [start, next] = nodes.slice(base.length);
  if (base.length === 0 || start === undefined || next === undefined) return [];
  const footOf = (node: number): number => anchorsOfNode(draft.cloth, node)[0] ?? -1;
  const shares = footOf(start) === base.at(-1) && footOf(next) === base.at(-1);
  return classAt(draft, start) === 'start' && shares ? [start] : [];
}

const founds = (draft: Draft, node: number): boolean =>
  draft.kinds.kinds[draft.cloth.nodes.kind[node]!]!.name.includes('foundation');

function addRow(
  draft: Draft,
  columns: Columns,
  run: Run & Pick<GraphRow, 'isExtension'>,
  sizes: SizesOfRow,
): void {
  if (run.nodes.length === 0) return;
  const from = columns.cloth.length;
  const to = from + run.nodes.length;
  const isRing = run.isRing && run.nodes.length > 2;
  const { isExtension } = run;
  run.nodes.forEach((node, i) => {
    const kind = draft.cloth.nodes.kind[node]!;
    columns.cloth.push(node);
    columns.row.push(columns.rows.length);
    columns.isChain.push(isExtension || isChainNode(draft, node) ? 1 : 0);
    columns.widthMm.push(sizes.widthMm(kind));
    columns.heightMm.push(isExtension ? 0 : sizes.heightMm(kind));
    columns.before.push(i > 0 ? from + i - 1 : isRing ? to - 1 : -1);
    columns.after.push(from + i + 1 < to ? from + i + 1 : isRing ? from : -1);
  });
  columns.rows.push({
    record: run.record,
    stem: run.record && mainStem(run.record, draft.kinds),
    from,
    to,
    isRing,
    isTurned: false,
    isExtension,
    leanMm: 0,
    knowsLean: true,
  });
}

/** Extensions hang at the end of the row beneath, at the place that the nearest stitch beside them takes. */
function linkExtensions(columns: Columns, feet: Feet, numberOf: ReadonlyMap<number, number>): void {
  columns.rows.forEach((row, r) => {
    if (!row.isExtension) return;
    const end = endBeneath(columns, r, feet, numberOf);
    if (end < 0) return;
    const link = columns.after[end]! < 0 ? columns.after : columns.before;
    const back = link === columns.after ? columns.before : columns.after;
    if (link[end]! >= 0) return;
    for (let k = row.from; k < row.to; k++) {
      link[k] = k + 1 < row.to ? k + 1 : -1;
      back[k] = k > row.from ? k - 1 : end;
    }
    link[end] = row.from;
  });
}

/** The node of the row beneath that has this extension beside it; -1 where there is none. */
function endBeneath(
  columns: Columns,
  r: number,
  feet: Feet,
  numberOf: ReadonlyMap<number, number>,
): number {
  const ext = columns.rows[r]!;
  const row = columns.rows.slice(r).find(({ isExtension }) => !isExtension)!;
  const founding = columns.ownFoot;
  const footOf = (i: number): number => numberOf.get(feet.on[columns.cloth[i]!]![0] ?? -1) ?? -1;
  const isInside = (foot: number): boolean => foot >= ext.from && foot < ext.to;
  const standing = Array.from({ length: row.to - row.from }, (_, k) => row.from + k);
  const first = standing.find((i) => isInside(founding.get(i) ?? footOf(i)));
  if (first === undefined) return -1;
  if (columns.cloth[ext.from] === columns.cloth[first]) return footOf(first);
  return standing.map(footOf).find((foot) => foot >= 0 && !isInside(foot)) ?? -1;
}

/** A foundation stitch has a place of its own, whatever stands beside it. */
function placesOf({ cloth, rows, row, ownFoot }: Columns, feet: Feet): Int32Array {
  return Int32Array.from(cloth, (node, i) => {
    if (rows[row[i]!]!.isExtension) return -1;
    return ownFoot.has(i) ? node : feet.place[node]!;
  });
}

function anchorColumns(
  { cloth, ownFoot }: Columns,
  feet: Feet,
  numberOf: ReadonlyMap<number, number>,
): Pick<StitchGraph, 'anchorFrom' | 'anchors'> {
  const anchorFrom = new Int32Array(cloth.length + 1);
  const anchors: number[] = [];
  cloth.forEach((node, i) => {
    const own = ownFoot.get(i);
    if (own !== undefined) anchors.push(own);
    // The chain beneath a foundation stitch bears that stitch's number, and stands on nothing.
    else if (numberOf.get(node) === i) {
      for (const foot of feet.on[node]!) {
        const number = numberOf.get(foot);
        if (number !== undefined && number !== i) anchors.push(number);
      }
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
    let foot = -1;
    // From stitch to stitch, over the chains between them: an open mesh has no two side by side.
    for (let i = row.from; i < row.to && r > first; i++) {
      if (anchorFrom[i] === anchorFrom[i + 1]) continue;
      const [last, next] = [foot, anchors[anchorFrom[i]!]!];
      foot = next;
      if (last < 0 || columns.row[last] !== columns.row[next] || last === next) continue;
      if (columns.rows[columns.row[next]!]!.isExtension) continue;
      votes += next > last ? 1 : -1;
      beneath = columns.row[next]!;
    }
    const below = rows[beneath];
    const isTurned = below?.record ? below.isTurned !== votes < 0 : votes < 0;
    rows.push({ ...row, isTurned: beneath >= 0 && isTurned });
  });
  return rows;
}

/** Rows whose stitches stand on nothing that is known, though something lies beneath. */
function leftOutOf(columns: Columns, anchorFrom: Int32Array): readonly string[] {
  const out: string[] = [];
  columns.rows.forEach((row, i) => {
    if (!row.record || i === 0) return;
    let loose = 0;
    for (let k = row.from; k < row.to; k++) {
      const isStitch = !columns.isChain[k];
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
