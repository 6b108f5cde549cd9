/** How large a relaxed piece is, and how it stands or lies. */
import { cos, PI, sin, sqrt } from '../../units/index.ts';
import { flatRowsTo } from './flat-rows.ts';
import type { RoundGirth } from './flatness.ts';
import type { StitchGraph } from './stitch-graph.ts';

/** flat: lies on the table. standing: its first round is at the bottom. hanging: at the top, as a hat. */
export type Pose = 'flat' | 'standing' | 'hanging';

export interface Dimensions {
  readonly pose: Pose;
  /** Across and (of flat pieces) up, or across and deep (of others), mm. */
  readonly widthMm: number;
  readonly depthMm: number;
  /** From the bottom to the top of what stands; null for flat pieces. */
  readonly heightMm: number | null;
  /** The same without handles, mm; null where there are none, or where the piece is flat. */
  readonly toRimMm: number | null;
  /** Round the widest round, mm; null where there is none. */
  readonly girthMm: number | null;
  /** Turns the piece about z so that its smallest box has its sides along x and y, radians. */
  readonly turn: number;
}

export interface DimensionTraits {
  readonly isHung: boolean;
  readonly hasHandles: boolean;
  readonly girths: readonly RoundGirth[];
}

/** A piece is flat if it is no higher than two stitches are wide. */
export function dimensionsOf(
  graph: StitchGraph,
  at: Float64Array,
  { isHung, hasHandles, girths }: DimensionTraits,
): Dimensions {
  const low = extent(at, 2, graph.n);
  const rim = girths.at(-1)?.row.to ?? graph.n;
  const widest = Math.max(...graph.widthMm);
  const isFlat = low.size <= 2 * widest;
  // Rows tell which way is up; rounds do not.
  const turn = isFlat && flatRowsTo(graph) === 0 ? smallestBox(at, graph) : 0;
  const { width, depth } = box(at, graph, turn);
  return {
    pose: isFlat ? 'flat' : isHung ? 'hanging' : 'standing',
    widthMm: width,
    depthMm: depth,
    heightMm: isFlat ? null : low.size,
    toRimMm: isFlat || !hasHandles ? null : extent(at, 2, rim).size,
    girthMm: girth(graph, at),
    turn,
  };
}

/** Of the first `nodes` nodes along an axis. */
function extent(at: Float64Array, axis: 0 | 1 | 2, nodes: number): { low: number; size: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < nodes; i++) {
    low = Math.min(low, at[3 * i + axis]!);
    high = Math.max(high, at[3 * i + axis]!);
  }
  return { low, size: high - low };
}

/** Of half degrees up to an eighth turn either way the one with the smallest box; none if that wins under 2 %. */
function smallestBox(at: Float64Array, graph: StitchGraph): number {
  const plain = box(at, graph, 0);
  let best = { turn: 0, area: plain.width * plain.depth * 0.98 };
  for (let k = -90; k <= 90; k++) {
    const turn = (k * PI) / 360;
    const { width, depth } = box(at, graph, turn);
    if (width * depth < best.area) best = { turn, area: width * depth };
  }
  return best.turn;
}

function box(at: Float64Array, graph: StitchGraph, turn: number): { width: number; depth: number } {
  const [c, s] = [cos(turn), sin(turn)];
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < graph.n; i++) {
    const x = c * at[3 * i]! - s * at[3 * i + 1]!;
    const y = s * at[3 * i]! + c * at[3 * i + 1]!;
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [low, high] = [Math.min(low, y), Math.max(high, y)];
  }
  for (const { x, y } of rowEnds(at, graph)) {
    const [ex, ey] = [c * x - s * y, s * x + c * y];
    [left, right] = [Math.min(left, ex), Math.max(right, ex)];
    [low, high] = [Math.min(low, ey), Math.max(high, ey)];
  }
  return { width: right - left, depth: high - low };
}

/** Where rows worked flat end: half a stitch beyond the middles of their first and last stitch. */
function rowEnds(at: Float64Array, graph: StitchGraph): { x: number; y: number }[] {
  const ends: { x: number; y: number }[] = [];
  for (const row of graph.rows) {
    if (row.isRing || row.to - row.from < 2) continue;
    ends.push(beyond(at, graph, { end: row.from, beside: row.from + 1 }));
    ends.push(beyond(at, graph, { end: row.to - 1, beside: row.to - 2 }));
  }
  return ends;
}

function beyond(
  at: Float64Array,
  graph: StitchGraph,
  { end, beside }: { end: number; beside: number },
): { x: number; y: number } {
  const [x, y] = [at[3 * end]!, at[3 * end + 1]!];
  const [dx, dy] = [x - at[3 * beside]!, y - at[3 * beside + 1]!];
  const half = graph.widthMm[end]! / 2 / (sqrt(dx * dx + dy * dy) || 1);
  return { x: x + dx * half, y: y + dy * half };
}

/** The longest way round along the stitches of a round. */
function girth(graph: StitchGraph, at: Float64Array): number | null {
  let longest: number | null = null;
  for (const row of graph.rows) {
    if (!row.isRing || !row.record) continue;
    let sum = 0;
    for (let i = row.from; i < row.to; i++) {
      const next = graph.after[i]!;
      sum += sqrt(
        (at[3 * i]! - at[3 * next]!) ** 2 +
          (at[3 * i + 1]! - at[3 * next + 1]!) ** 2 +
          (at[3 * i + 2]! - at[3 * next + 2]!) ** 2,
      );
    }
    if (longest === null || sum > longest) longest = sum;
  }
  return longest;
}
