/**
 * The springs of a piece. Along the row stitches are as far apart as the gauge says; between rows as
 * far as the stitch is high; weaker springs across keep the fabric from shearing. `bends.ts` keeps it
 * from creasing.
 */
import { sqrt } from '../../units/index.ts';
import { SpringList, type Springs } from './springs.ts';
import { firstAnchorOf, lastAnchorOf, leanMmOf, type StitchGraph } from './stitch-graph.ts';

/** Stiffness against that along the row. Ours: fabric shears far more easily than it stretches. */
const ALONG = 1;
const ACROSS = 0.15;

/** Springs by the row of their later node, so that a row can be settled before the next is laid. */
export interface PieceSprings {
  readonly springs: Springs;
  /** Springs of row r: [rowFrom[r], rowFrom[r + 1]). */
  readonly rowFrom: Int32Array;
}

export function springsOf(graph: StitchGraph): PieceSprings {
  const list = new SpringList();
  const sharing = sharingOf(graph);
  const isLoose = looseChains(graph);
  const rowFrom = new Int32Array(graph.rows.length + 1);
  graph.rows.forEach((row, r) => {
    for (let i = row.from; i < row.to; i++) {
      addAlong(graph, list, i, isLoose);
      addColumns(graph, list, i, sharing);
      addDiagonals(graph, list, i);
    }
    rowFrom[r + 1] = list.n;
  });
  return { springs: list.finish(), rowFrom };
}

const apart = (graph: StitchGraph, a: number, b: number): number =>
  (graph.widthMm[a]! + graph.widthMm[b]!) / 2;

/** Springs forward in the row; the last of a ring closes the round at its join. */
function addAlong(graph: StitchGraph, list: SpringList, i: number, isLoose: Uint8Array): void {
  const next = graph.after[i]!;
  if (next < 0) return;
  const restMm = apart(graph, i, next);
  if (isLoose[i] || isLoose[next]) list.addSlack(i, next, restMm, ALONG);
  else list.add(i, next, restMm, ALONG);
}

/** So many chains lie along the row beneath; more make a loop. */
const SHORT_SPACE = 2;

/** Chains in loops that hold nothing but a stitch or two: a chain worked over all along is fabric. */
function looseChains(graph: StitchGraph): Uint8Array {
  const isLoose = new Uint8Array(graph.n);
  const bears = new Uint8Array(graph.n);
  for (const foot of graph.anchors) bears[foot] = 1;
  for (const { record, from, to } of graph.rows) {
    for (let i = from; record && i < to; ) {
      let end = i;
      let worked = 0;
      for (; end < to && graph.isChain[end]; end++) worked += bears[end]!;
      if (end - i > SHORT_SPACE && 2 * worked < end - i) isLoose.fill(1, i, end);
      i = Math.max(end, i + 1);
    }
  }
  return isLoose;
}

/** For every stitch: how many stand on its foot beside it in its row, and which of them it is. */
interface Sharing {
  readonly of: Uint16Array;
  readonly nth: Uint16Array;
}

function sharingOf(graph: StitchGraph): Sharing {
  const of = new Uint16Array(graph.n).fill(1);
  const nth = new Uint16Array(graph.n);
  for (const row of graph.rows) {
    for (let i = row.from; i < row.to; ) {
      const foot = firstAnchorOf(graph, i);
      let end = i + 1;
      while (end < row.to && foot >= 0 && onlyFoot(graph, end) === foot) end++;
      const isOne = onlyFoot(graph, i) === foot && foot !== graph.ring;
      for (let k = i; k < end && isOne; k++) {
        of[k] = end - i;
        nth[k] = k - i;
      }
      i = end;
    }
  }
  return { of, nth };
}

const onlyFoot = (graph: StitchGraph, node: number): number =>
  graph.anchorFrom[node + 1]! - graph.anchorFrom[node]! === 1 ? firstAnchorOf(graph, node) : -1;

/** From a stitch to its feet. The legs of larger fans are as long as the stitch is high, which rounds a shell. */
function addColumns(graph: StitchGraph, list: SpringList, i: number, sharing: Sharing): void {
  const height = graph.heightMm[i]!;
  for (let k = graph.anchorFrom[i]!; k < graph.anchorFrom[i + 1]!; k++) {
    const ahead = aheadMm(graph, sharing, i, k);
    list.add(i, graph.anchors[k]!, sqrt(height * height + ahead * ahead), ALONG);
  }
}

/**
 * How far ahead of a stitch's top its foot stands along the row, mm; `k` is the foot's place in `anchors`.
 * Of two stitches in one place each leans out by half a width, and so do the legs of a decrease: less where
 * the rounds are small, for there the stitches fan out and not side by side. A leaning round adds its lean.
 */
function aheadMm(graph: StitchGraph, sharing: Sharing, i: number, k: number): number {
  const foot = graph.anchors[k]!;
  const from = graph.anchorFrom[i]!;
  const legs = graph.anchorFrom[i + 1]! - from;
  let ahead = 0;
  if (legs > 1) ahead = (k - from - (legs - 1) / 2) * graph.widthMm[foot]!;
  else if (sharing.of[i] === 2) ahead = (0.5 - sharing.nth[i]!) * graph.widthMm[i]!;
  const lean = leanMmOf(graph, i);
  if (ahead === 0 && lean === 0) return 0;
  return (ahead + lean) * fanning(graph, i, foot);
}

/**
 * Places at radii r and R and a small angle apart lie square to the radius by sqrt(r R) times the angle
 * (geometry): what that is to the larger radius times the angle. Where a round closes in, a lean along the
 * smaller one would come out longer, and legs longer than they need be push the pole of a ball out: it is
 * taken short there too. 1 between rows.
 */
function fanning(graph: StitchGraph, i: number, foot: number): number {
  const [own, beneath] = [graph.rows[graph.row[i]!]!, graph.rows[graph.row[foot]!]!];
  if (!own.isRing || !beneath.isRing) return 1;
  const [a, b] = [own.to - own.from, beneath.to - beneath.from];
  return sqrt(Math.min(a, b) / Math.max(a, b));
}

/** Stitches further apart than this in the row beneath span a gap, and no fabric lies between. */
const MOST_STEPS = 3;

/** Along the row beneath from `a` to `b`, mm; null where they are no near neighbours. */
export function beneathMm(graph: StitchGraph, a: number, b: number): number | null {
  if (graph.row[a] !== graph.row[b]) return null;
  for (const step of [graph.after, graph.before]) {
    let sum = 0;
    let at = a;
    for (let n = 0; n < MOST_STEPS; n++) {
      const next = step[at]!;
      if (next < 0) break;
      sum += apart(graph, at, next);
      if (next === b) return sum;
      at = next;
    }
  }
  return null;
}

function addDiagonals(graph: StitchGraph, list: SpringList, i: number): void {
  const next = graph.after[i]!;
  if (next < 0) return;
  const left = lastAnchorOf(graph, i);
  const right = firstAnchorOf(graph, next);
  if (left < 0 || right < 0 || left === right) return;
  const base = beneathMm(graph, left, right);
  if (base === null) return;
  const wide = (base + apart(graph, i, next)) / 2;
  const height = (graph.heightMm[i]! + graph.heightMm[next]!) / 2;
  const lean = leanMmOf(graph, i);
  list.add(i, right, sqrt((wide + lean) ** 2 + height * height), ACROSS);
  list.add(next, left, sqrt((wide - lean) ** 2 + height * height), ACROSS);
}
