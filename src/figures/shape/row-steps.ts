/**
 * How a flat piece runs, told from stitch to stitch: how far on, how far up, and by how much the row
 * turns. Where a row is longer than what lies beneath it turns outwards, where it is shorter inwards, by
 * the difference over its height; so the corner of a shawl is an angle and a ripple a zigzag before
 * anything is pulled. As many stitches more in one place as fewer in another turn a row by nothing.
 */
import { PI } from '../../units/index.ts';
import { archMm, riseFor } from './arch.ts';
import type { Line, Lines } from './lines.ts';
import { rowLengthMm, type StitchGraph } from './stitch-graph.ts';

export interface RowStep {
  readonly from: number;
  readonly to: number;
  /** Of the row's direction from one to the other, radians, outwards positive. */
  readonly turn: number;
  readonly turnWeight: number;
  /** Along the row and up from it, mm. */
  readonly alongMm: number;
  readonly upMm: number;
  readonly weight: number;
  /** From a stitch beneath to the one that stands on it. */
  readonly isColumn: boolean;
  /** Out of a ring, from its middle: the stitch alone tells the direction. */
  readonly isSpoke: boolean;
}

const TURN_ALONG = 0.3;
const COLUMN = 0.5;
const LOOSE = 0.1;
const LOOSEST = 0.003;
/** A row turns no more than this between two stitches. */
const MOST_TURN = 2;

/** Steps along all lines, and from what each stitch is worked into up to it. */
export function rowSteps(graph: StitchGraph, lines: Lines): readonly RowStep[] {
  const steps: RowStep[] = [];
  for (const line of lines.lines) {
    const beneath = line.nodes.map((node) => beneathOf(graph, lines, node));
    const known = line.nodes.map((_, k) => k).filter((k) => beneath[k] !== null);
    const turns = new Float64Array(line.nodes.length);
    const heights = known.map((k) => graph.heightMm[line.nodes[k]!]!);
    const heightMm = heights.reduce((sum, mm) => sum + mm, 0) / Math.max(1, heights.length);
    const pace: Pace = { graph, lines, line, beneath, heightMm, turns, steps };
    if (known.length === 0) plainSteps(pace, 0, line.nodes.length - 1);
    else {
      plainSteps(pace, 0, known[0]!);
      for (let m = 1; m < known.length; m++) betweenFeet(pace, known[m - 1]!, known[m]!);
      plainSteps(pace, known.at(-1)!, line.nodes.length - 1);
    }
    columnSteps(pace);
  }
  return steps;
}

/** Where on the line beneath a stitch stands. */
interface Beneath {
  readonly line: number;
  readonly alongMm: number;
  readonly feet: readonly number[];
}

function beneathOf(graph: StitchGraph, lines: Lines, node: number): Beneath | null {
  const all = [...graph.anchors.subarray(graph.anchorFrom[node]!, graph.anchorFrom[node + 1]!)];
  const line = lines.of[all[0] ?? -1] ?? -1;
  if (line < 0 || line === lines.of[node]) return null;
  const feet = all.filter((foot) => lines.of[foot] === line);
  const alongMm = feet.reduce((sum, foot) => sum + lines.alongMm[foot]!, 0) / feet.length;
  return { line, alongMm, feet };
}

/** One line under way. */
interface Pace {
  readonly graph: StitchGraph;
  readonly lines: Lines;
  readonly line: Line;
  readonly beneath: readonly (Beneath | null)[];
  /** Mean of those that stand on something. */
  readonly heightMm: number;
  /** Turn from the node before to each node of the line. */
  readonly turns: Float64Array;
  readonly steps: RowStep[];
}

const apartMm = (graph: StitchGraph, a: number, b: number): number =>
  (graph.widthMm[a]! + graph.widthMm[b]!) / 2;

/** Straight on by the width of the stitches: foundations, and ends that stand on nothing. */
function plainSteps({ graph, line, steps }: Pace, from: number, to: number): void {
  const isTight = line.isFoundation && line.isRing;
  for (let k = from; k < to; k++) {
    const [a, b] = [line.nodes[k]!, line.nodes[k + 1]!];
    // The chains of a ring lie close about one point: what stands on them tells where.
    steps.push({
      from: a,
      to: b,
      turn: 0,
      turnWeight: line.isFoundation ? TURN_ALONG * LOOSE : TURN_ALONG,
      alongMm: isTight ? 0 : apartMm(graph, a, b),
      upMm: 0,
      weight: isTight ? 0.1 : 1,
      isColumn: false,
      isSpoke: false,
    });
  }
}

/** From one stitch with a foot to the next, over the chains between them. */
function betweenFeet(pace: Pace, from: number, to: number): void {
  const { graph, lines, line, beneath, turns, steps } = pace;
  const between = to - from;
  let topMm = 0;
  for (let k = from; k < to; k++) topMm += apartMm(graph, line.nodes[k]!, line.nodes[k + 1]!);
  const gapMm = gapBeneath(graph, lines, beneath[from]!, beneath[to]!);
  const isFan = graph.place[line.nodes[from]!] === graph.place[line.nodes[to]!];
  const turn = turnBetween(pace, { from, to, topMm, gapMm, isFan }) / between;
  const isSpace = between > 1 && !isFan && gapMm !== null;
  const rise = isSpace && topMm > 1.02 * gapMm ? riseFor(gapMm / 2, topMm) : 0;
  let done = 0;
  for (let k = from; k < to; k++) {
    const [a, b] = [line.nodes[k]!, line.nodes[k + 1]!];
    const before = done;
    done += apartMm(graph, a, b) / topMm;
    turns[k + 1] = turn;
    const share = isSpace ? (gapMm / topMm) * apartMm(graph, a, b) : apartMm(graph, a, b);
    steps.push({
      from: a,
      to: b,
      turn,
      turnWeight: TURN_ALONG,
      alongMm: share,
      upMm: archMm(rise, done) - archMm(rise, before),
      weight: 1,
      isColumn: false,
      isSpoke: false,
    });
  }
}

/** Between two feet along their line, mm; nothing on a ring of chains; null on different lines. */
function gapBeneath(graph: StitchGraph, lines: Lines, a: Beneath, b: Beneath): number | null {
  if (a.line !== b.line) return null;
  const { isRing, isFoundation, nodes } = lines.lines[a.line]!;
  if (isRing && isFoundation) return graph.ring === nodes[0] ? 0 : null;
  return Math.max(0, b.alongMm - a.alongMm);
}

interface Gap {
  readonly from: number;
  readonly to: number;
  readonly topMm: number;
  readonly gapMm: number | null;
  readonly isFan: boolean;
}

function turnBetween(pace: Pace, gap: Gap): number {
  // One height for the row: else a shell of tall stitches would not undo what it skips beside it.
  const { graph, beneath, heightMm } = pace;
  const { from, to, topMm, isFan } = gap;
  if (beneath[from]!.line !== beneath[to]!.line || heightMm <= 0) return 0;
  const ring = ringRadiusMm(graph, beneath[from]!);
  if (ring !== null) return topMm / (heightMm + ring);
  // Chains over stitches passed by are as long as they are; they do not push the row round.
  if (to - from > 1 && !isFan) return 0;
  const moreMm = topMm - (gap.gapMm ?? topMm);
  return Math.max(-MOST_TURN, Math.min(MOST_TURN, moreMm / heightMm));
}

/** Radius of the ring that a stitch comes out of, mm; null where it comes out of none. */
function ringRadiusMm(graph: StitchGraph, { feet }: Beneath): number | null {
  const row = graph.rows[graph.row[feet[0]!]!]!;
  if (feet[0] === graph.ring) return 0;
  return !row.record && row.isRing ? rowLengthMm(graph, row) / (2 * PI) : null;
}

/** Does everything from here to the row's end stand in one place? */
function isEndFan({ graph, line, beneath }: Pace, k: number, step: 1 | -1): boolean {
  const place = graph.place[line.nodes[k]!]!;
  for (let m = k + step; m >= 0 && m < line.nodes.length; m += step) {
    if (beneath[m] !== null && graph.place[line.nodes[m]!] !== place) return false;
  }
  return true;
}

/** From feet to tops: straight up, fans spread about the middle, slanting where a fan ends a row. */
function columnSteps(pace: Pace): void {
  const { line, beneath } = pace;
  for (let k = 0; k < line.nodes.length; ) {
    if (beneath[k] === null) {
      k++;
      continue;
    }
    const end = fanEnd(pace, k);
    addFan(pace, k, end);
    k = end;
  }
}

/** Several on one foot, or one on several: the direction beneath says little of theirs. */
const isSpread = ({ beneath }: Pace, from: number, end: number): boolean =>
  end - from > 1 || (beneath[from]?.feet.length ?? 1) > 1;

function fanEnd({ graph, line, beneath }: Pace, k: number): number {
  const place = graph.place[line.nodes[k]!]!;
  let end = k + 1;
  for (let m = end; m < line.nodes.length; m++) {
    if (beneath[m] === null) continue;
    if (place < 0 || graph.place[line.nodes[m]!] !== place) break;
    end = m + 1;
  }
  return end;
}

function addFan(pace: Pace, from: number, end: number): void {
  const { graph, lines, line, beneath, turns, steps } = pace;
  const isFirst = isEndFan(pace, from, -1);
  const isLast = isEndFan(pace, end - 1, 1);
  let turned = 0;
  let alongMm = 0;
  for (let k = from + 1; k < end; k++) {
    turned += turns[k]!;
    alongMm += apartMm(graph, line.nodes[k - 1]!, line.nodes[k]!);
  }
  let [turn, slant] = [-turned / 2, isFirst && !isLast ? -alongMm : isFirst ? -alongMm / 2 : 0];
  for (let k = from; k < end; k++) {
    if (k > from) {
      turn += turns[k]!;
      if (isFirst || isLast) slant += apartMm(graph, line.nodes[k - 1]!, line.nodes[k]!);
    }
    const under = beneath[k];
    if (!under) continue;
    const node = line.nodes[k]!;
    const share = 1 / under.feet.length;
    const ringMm = ringRadiusMm(graph, under);
    for (const foot of under.feet) {
      steps.push({
        from: foot,
        to: node,
        turn: ringMm === null ? turn : 0,
        turnWeight: share * (ringMm !== null || isSpread(pace, from, end) ? LOOSEST : 1),
        alongMm: ringMm === null ? slant + under.alongMm - lines.alongMm[foot]! : 0,
        upMm: graph.heightMm[node]! + (ringMm ?? 0),
        weight: COLUMN * share * (end - from > 1 && (isFirst || isLast) ? LOOSE : 1),
        isColumn: true,
        isSpoke: ringMm !== null,
      });
    }
  }
}
