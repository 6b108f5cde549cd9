/**
 * The lean of unturned rounds, built into the fabric: each stitch's top stands so far to the side of its
 * foot as the sheet says that the start of round wanders (`lean.ts`), at the middle of its range. Where
 * nobody knows the lean a round stands straight, and pictures draw its start as a broken line.
 */
import type { KindTable } from '../../fabric/index.ts';
import type { Gauges } from '../../gauge/index.ts';
import type { Terms } from '../../notation/index.ts';
import { type Lean, leanOf, leanOfRound, type OwnLean } from '../lean.ts';
import { newSizeTable, rowSize } from '../row-size.ts';
import type { GraphRow, StitchGraph } from './stitch-graph.ts';

export interface LeanScene {
  readonly gauges: Gauges;
  readonly kinds: KindTable;
  readonly own: OwnLean;
  readonly terms: Terms;
}

export interface LeaningGraph {
  readonly graph: StitchGraph;
  /** Over all rounds of the piece; `null` where there are none, or only one. */
  readonly lean: Lean | null;
}

/** The graph with its rounds leaning. */
export function withLean(graph: StitchGraph, scene: LeanScene): LeaningGraph {
  const table = newSizeTable(scene.gauges, scene.kinds);
  const rounds = graph.rows.filter(isRound);
  const sized = rounds.map(({ record }) => ({ row: record, size: rowSize(record, table) }));
  const leanMm = new Map<GraphRow, number | null>();
  rounds.forEach((round, k) => {
    // The first round is turned where the second is.
    const isTurned = round.record.side !== (rounds[k - 1] ?? rounds[1] ?? round).record.side;
    const lean = isTurned ? { from: 0, to: 0 } : leanOfRound(sized[k]!, scene.own);
    leanMm.set(round, lean && ((lean.from + lean.to) / 2) * stitchMm(graph, round));
  });
  const rows = graph.rows.map((row) => ({ ...row, leanMm: leanMm.get(row) ?? 0 }));
  const unknown = rounds.filter((round) => leanMm.get(round) === null);
  const isUnknown = new Set(unknown.map(({ from }) => from));
  return {
    graph: { ...graph, rows: rows.map((row) => ({ ...row, knowsLean: !isUnknown.has(row.from) })) },
    lean: leanOf(sized, scene.own, scene.terms),
  };
}

const isRound = (row: GraphRow): row is GraphRow & { record: NonNullable<GraphRow['record']> } =>
  row.isRing && row.record?.ring === true;

/** Mean width along the round. */
function stitchMm(graph: StitchGraph, { from, to }: GraphRow): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += graph.widthMm[i]!;
  return sum / Math.max(1, to - from);
}
