/**
 * Flat rows laid in the plane all at once: first the direction of the row at every stitch, then its place,
 * each as the least squares of what `row-steps.ts` tells from stitch to stitch. No fault is carried from
 * row to row, so a piece that can lie flat starts flat and unfolded.
 */
import { cos, sin } from '../../units/index.ts';
import type { Layout } from './layout.ts';
import { solveWishes, type Wishes } from './least-squares.ts';
import { type Lines, linesOf } from './lines.ts';
import { type RowStep, rowSteps } from './row-steps.ts';
import { firstAnchorOf, firstIsWrongSide, type StitchGraph } from './stitch-graph.ts';

/** How many rows from the start on are flat rows; 0 for pieces that begin with rounds. */
export function flatRowsTo({ rows }: StitchGraph): number {
  const first = rows.findIndex(({ record }) => record);
  if (first < 0 || rows[first]!.isRing) return 0;
  const ring = rows.findIndex(({ record, isRing }, r) => r >= first && record && isRing);
  return ring < 0 ? rows.length : ring;
}

export function layFlatRows(layout: Layout, rowsTo: number): void {
  const { graph } = layout;
  const n = graph.rows[rowsTo - 1]!.to;
  const lines = linesOf(graph, rowsTo);
  const steps = rowSteps(graph, lines);
  const turnWeights = steps.map(({ turnWeight }) => turnWeight);
  const turns = steps.map(({ turn }) => -turn);
  const angle = solved(lines, steps, { n, weights: turnWeights, differences: turns });
  // Upright: no row says which way the piece as a whole is turned.
  const upright = mean(angle);
  for (let i = 0; i < n; i++) angle[i]! -= upright;
  const sense = firstIsWrongSide(graph) ? -1 : 1;
  const ways = steps.map((step) => wayOf(step, angle, sense));
  const weights = steps.map(({ weight }) => weight);
  const [x, y] = ([0, 1] as const).map((c) =>
    solved(lines, steps, { n, weights, differences: ways.map((way) => way[c]) }),
  );
  const middle = [mean(x!), mean(y!)] as const;
  for (let i = 0; i < n; i++) {
    layout.at.set([x![i]! - middle[0], y![i]! - middle[1], 0], 3 * i);
    layout.way.set([-sense * sin(angle[i]!), cos(angle[i]!), 0], 3 * i);
    layout.isPlaced[i] = 1;
    layout.keepsCurve[i] = 1;
    const foot = firstAnchorOf(graph, i);
    if (foot >= 0) layout.user[foot] = i;
  }
}

const mean = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The step in the plane: along the row and up from it, as the row runs there. */
function wayOf(step: RowStep, angle: Float64Array, sense: number): readonly [number, number] {
  const at = step.isSpoke ? angle[step.to]! : (angle[step.from]! + angle[step.to]!) / 2;
  const [c, s] = [cos(at), sin(at)];
  return [sense * (step.alongMm * c - step.upMm * s), step.alongMm * s + step.upMm * c];
}

interface Asked {
  readonly n: number;
  readonly weights: readonly number[];
  readonly differences: readonly number[];
}

function solved(lines: Lines, steps: readonly RowStep[], asked: Asked): Float64Array {
  const wishes: Wishes = {
    n: steps.length,
    from: Int32Array.from(steps, ({ from }) => from),
    to: Int32Array.from(steps, ({ to }) => to),
    weight: Float64Array.from(asked.weights),
    difference: Float64Array.from(asked.differences),
  };
  const x = firstGuess(lines, wishes, steps, asked.n);
  solveWishes(wishes, x);
  return x;
}

/** Row by row from what lies beneath, then from the neighbours: exact where nothing contradicts. */
function firstGuess(
  lines: Lines,
  { from, to, difference }: Wishes,
  steps: readonly RowStep[],
  n: number,
): Float64Array {
  const x = new Float64Array(n);
  const sum = new Float64Array(n);
  const heard = new Int32Array(n);
  const isKnown = new Uint8Array(n);
  let at = 0;
  for (const line of lines.lines) {
    const first = at;
    const isOwn = (k: number): boolean =>
      k < steps.length && lines.of[to[k]!] === lines.of[line.nodes[0]!];
    for (; isOwn(at); at++) {
      if (!steps[at]!.isColumn || !isKnown[from[at]!]) continue;
      sum[to[at]!]! += x[from[at]!]! + difference[at]!;
      heard[to[at]!]!++;
    }
    for (const node of line.nodes) {
      if (heard[node]! === 0) continue;
      x[node] = sum[node]! / heard[node]!;
      isKnown[node] = 1;
    }
    if (!line.nodes.some((node) => isKnown[node])) isKnown[line.nodes[0]!] = 1;
    const along = range(first, at).filter((k) => !steps[k]!.isColumn);
    for (const k of along) hand(x, isKnown, [from[k]!, to[k]!], difference[k]!);
    for (const k of along.reverse()) hand(x, isKnown, [to[k]!, from[k]!], -difference[k]!);
  }
  return x;
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, k) => from + k);

function hand(
  x: Float64Array,
  isKnown: Uint8Array,
  [from, to]: readonly [number, number],
  by: number,
): void {
  if (!isKnown[from] || isKnown[to]) return;
  x[to] = x[from]! + by;
  isKnown[to] = 1;
}
