/**
 * The cloth made ready for a graph: which nodes have a place of their own, which stand for another (an
 * uncounted chain, a stitch that closes a space), and in which runs they lie.
 */
import type { Cloth, KindTable, RowRecord } from '../../fabric/index.ts';

export interface Run {
  readonly record: RowRecord | null;
  /** Cloth nodes that are kept, in the order made. */
  readonly nodes: readonly number[];
  readonly isRing: boolean;
}

export interface Draft {
  readonly cloth: Cloth;
  readonly kinds: KindTable;
  /** For every cloth node the kept node that it is, or stands for; -1 for none. */
  readonly standsFor: Int32Array;
  /** Index into `runs` by cloth node; -1 for nodes that are not kept. */
  readonly run: Int32Array;
  readonly runs: readonly Run[];
}

const classOf = (draft: Pick<Draft, 'cloth' | 'kinds'>, node: number): string =>
  draft.kinds.kinds[draft.cloth.nodes.kind[node]!]!.class;

/** A chain, or a stitch that does a chain's work: it closes the last space of a round. */
export const isChainNode = (draft: Pick<Draft, 'cloth' | 'kinds'>, node: number): boolean =>
  ['chain', 'closer'].includes(classOf(draft, node));

export const anchorsOfNode = ({ nodes }: Cloth, node: number): Int32Array =>
  nodes.anchors.subarray(nodes.anchorFrom[node]!, nodes.anchorFrom[node + 1]!);

export function draftOf(cloth: Cloth, kinds: KindTable): Draft {
  const { n } = cloth.nodes;
  const by = { cloth, kinds };
  const uses = usesOf(cloth, kinds);
  const standsFor = new Int32Array(n).fill(-1);
  const run = new Int32Array(n).fill(-1);
  const runs: Run[] = [];
  const add = (record: RowRecord | null, from: number, to: number): void => {
    const keeps = keptIn(by, from, to);
    const nodes = record ? keeps : withoutTail(by, keeps, uses);
    if (nodes.length === 0) return;
    for (const node of nodes) {
      run[node] = runs.length;
      standsFor[node] = node;
    }
    for (let i = from; i < to; i++) if (standsFor[i] === -1) standsFor[i] = nearest(nodes, i);
    runs.push({ record, nodes, isRing: record?.ring ?? false });
  };
  let end = 0;
  for (const record of cloth.rows) {
    const { from, to } = record.nodes;
    if (to <= from || from < end) continue;
    addLoose(by, end, from, add);
    add(record, from, to);
    end = to;
  }
  return { ...by, standsFor, run, runs: openFirstRows(by, closedFoundations(by, runs), run) };
}

/** Nodes between the rows: foundation chains and rings, each a run of its own. */
function addLoose(
  by: Pick<Draft, 'cloth' | 'kinds'>,
  from: number,
  to: number,
  add: (record: null, from: number, to: number) => void,
): void {
  for (let i = from; i < to; ) {
    const kind = classOf(by, i);
    let end = i + 1;
    if (kind === 'chain') while (end < to && classOf(by, end) === kind) end++;
    if (kind === 'chain' || kind === 'ring') add(null, i, end);
    i = end;
  }
}

/** Slip stitches into nothing only move the hands; a low chain stands beside. */
function keptIn(by: Pick<Draft, 'cloth' | 'kinds'>, from: number, to: number): number[] {
  const kept: number[] = [];
  for (let i = from; i < to; i++) {
    const kind = classOf(by, i);
    const anchored = anchorsOfNode(by.cloth, i).some((place) => place >= 0);
    if (kind === 'low' || (kind === 'slip' && !anchored)) continue;
    kept.push(i);
  }
  return kept;
}

/**
 * 0: nothing is worked into the node; 1: something is; 2: into the space that it begins. The chains that
 * a first row passes are its low chain, which is worked into none of them.
 */
function usesOf(cloth: Cloth, kinds: KindTable): Uint8Array {
  const uses = new Uint8Array(cloth.nodes.n);
  for (let node = 0; node < cloth.nodes.n; node++) {
    if (kinds.kinds[cloth.nodes.kind[node] ?? 0]?.class === 'low') continue;
    for (const place of anchorsOfNode(cloth, node)) {
      if (place >= 0) uses[place] = Math.max(uses[place]!, cloth.nodes.flags[node] ? 2 : 1);
    }
  }
  return uses;
}

/** Chains at the hook's end that nothing was worked into are the turning chain. */
function withoutTail(
  by: Pick<Draft, 'cloth' | 'kinds'>,
  nodes: readonly number[],
  uses: Uint8Array,
): readonly number[] {
  if (!nodes.some((node) => uses[node]) || classOf(by, nodes[0]!) === 'ring') return nodes;
  if (uses[nodes[0]!] === 2) return nodes;
  return nodes.slice(0, nodes.findLastIndex((node) => uses[node]) + 1);
}

const nearest = (nodes: readonly number[], node: number): number =>
  nodes.find((other) => other > node) ?? nodes.at(-1)!;

/**
 * Nothing says that a foundation chain was joined to a ring but what was worked into it: the round goes
 * once along all of it, or into the ring that it makes.
 */
function closedFoundations(
  by: Pick<Draft, 'cloth' | 'kinds'>,
  runs: readonly Run[],
): readonly Run[] {
  return runs.map((run, i) => {
    const first = runs[i + 1];
    if (
      run.record ||
      run.nodes.length < 3 ||
      !first?.record ||
      classOf(by, run.nodes[0]!) === 'ring'
    ) {
      return run;
    }
    const places = first.nodes.map((node) => anchorsOfNode(by.cloth, node)[0] ?? -1);
    const [low, high] = [run.nodes[0]!, run.nodes.at(-1)!];
    const within = places.filter((place) => low <= place && place <= high);
    const intoRing = first.nodes.some((node, k) => by.cloth.nodes.flags[node] && places[k] === low);
    const span = Math.abs((within[0] ?? 0) - (within.at(-1) ?? 0));
    const isRing = intoRing || (first.isRing && span >= 0.6 * run.nodes.length);
    return isRing ? { ...run, isRing: true } : run;
  });
}

/**
 * A row worked into a ring counts as on a ring, and one of foundation stitches as on none; whether it is
 * closed to a round itself is told by the row that stands on it.
 */
function openFirstRows(
  by: Pick<Draft, 'cloth' | 'kinds'>,
  runs: readonly Run[],
  runOf: Int32Array,
): readonly Run[] {
  return runs.map((run, i) => {
    if (!run.record || runs.slice(0, i).some(({ record }) => record)) return run;
    const isClosed = run.isRing || isFounding(by, run);
    if (!isClosed) return run;
    const above = runs
      .slice(i + 1, i + 3)
      .find(
        ({ record, nodes }) =>
          record && nodes.some((node) => runOf[anchorsOfNode(by.cloth, node)[0] ?? -1] === i),
      );
    return above ? { ...run, isRing: above.isRing } : run;
  });
}

/** All foundation stitches, chain and row in one: only the join that follows tells whether they go round. */
const isFounding = ({ cloth, kinds }: Pick<Draft, 'cloth' | 'kinds'>, { nodes }: Run): boolean =>
  nodes.every((node) => kinds.kinds[cloth.nodes.kind[node]!]!.name.includes('foundation'));
