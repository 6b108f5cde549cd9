/**
 * Places that were passed or skipped and stay reachable by name: "first skipped st of Rnd 24",
 * "the other side of the ch-50". Worked out when asked for, from who is worked into whom.
 */
import type { Place } from '../notation/index.ts';
import { COUNTED, cutEdge, type Edge, edgeOf, edgeOfPlaces, SPACE } from './edge.ts';
import type { Hands, Worked } from './hands.ts';

/** Nodes into which something is worked, among those from `from` on. */
function takenFrom(hands: Hands, from: number): Uint8Array {
  const { nodes } = hands;
  const taken = new Uint8Array(nodes.n);
  const start = nodes.anchorFrom[from] ?? 0;
  for (let a = start; a < nodes.anchorsN; a++) {
    const place = nodes.anchors[a] ?? -1;
    if (place >= 0) taken[place] = 1;
  }
  return taken;
}

/** Runs of stitches of a row into which nothing was worked, in the order of work. */
function runsOf(hands: Hands, row: Worked): number[][] {
  const taken = takenFrom(hands, row.to);
  const runs: number[][] = [];
  let run: number[] = [];
  for (let id = row.from; id < row.to; id++) {
    const kind = hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0];
    if (!kind?.counted) continue;
    if (taken[id]) {
      if (run.length > 0) runs.push(run);
      run = [];
    } else run.push(id);
  }
  if (run.length > 0) runs.push(run);
  return runs;
}

function countedIn(hands: Hands, row: Worked): number {
  let n = 0;
  for (let id = row.from; id < row.to; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.counted) n++;
  }
  return n;
}

/**
 * The run of skipped places of the row numbered `row` (null: the last row that has any) that this
 * copy of the part is worked on, as an edge: copies that went before have taken theirs already.
 */
function skippedEdge(hands: Hands, row: number | null): Edge | null {
  const found = skippedRun(hands, row);
  return found && (found.row.ring ? edgeOfPlaces(found.run, true) : restOfRow(hands, found));
}

/**
 * Does the row of this number, which is not the row just worked, have stitches left, "sk 2 sts on
 * Row 2"? Then these are meant, whether or not they are called unworked.
 */
function hasRest(hands: Hands, row: number): boolean {
  const at = hands.history.findLastIndex(({ number }) => number === row);
  const worked = hands.history[at];
  return worked !== undefined && at < hands.history.length - 1 && runIn(hands, worked) !== null;
}

/**
 * "Sc in next 8 sts of Row 1" where the row just worked is used up and Row 1 has stitches left: these.
 * The place as one that names what was skipped; else as it is.
 */
export function ofRest(hands: Hands, place: Place): Place {
  if (place.row === null || !hasRest(hands, place.row)) return place;
  return { ...place, nouns: place.nouns.map((noun) => ({ ...noun, skipped: true })) };
}

/** The chain over the run of stitches that was skipped last, from its far end; `null`: there is none. */
export function chainOverSkipped(hands: Hands): number[] | null {
  const found = skippedRun(hands, null);
  return found?.row.ring ? undersideOver(hands, found.run) : null;
}

/** Moves the hands to the start of the run that was skipped; `false`: there is none. */
export function toSkipped(hands: Hands, row: number | null): boolean {
  const edge = skippedEdge(hands, row);
  if (!edge) return false;
  hands.edge = edge;
  hands.skippedEdge = edge;
  hands.pos = 0;
  hands.limit = edge.n;
  return true;
}

/**
 * A part of a round was worked, turned, and worked back on: behind its first stitch the rest of the
 * round follows, last stitch first ("sc in next 4 sts, turn; sc in next 22 sts"). Whether it does.
 */
export function pastStart(hands: Hands): boolean {
  const { edge, history } = hands;
  const [round, part] = history.slice(-2);
  const spent = edge.kind === 'row' && !edge.ring && hands.pos >= edge.n && hands.limit >= edge.n;
  if (!spent || edge === hands.skippedEdge || !round?.ring || !part || part.ring) return false;
  const runs = runsOf(hands, round);
  const rest = runs.length === 1 ? (runs[0] ?? []) : [];
  if (rest.length === 0 || countedIn(hands, part) >= rest.length) return false;
  hands.edge = edgeOfPlaces([...rest].reverse(), false);
  hands.skippedEdge = hands.edge;
  hands.pos = 0;
  hands.limit = hands.edge.n;
  return true;
}

interface Run {
  readonly row: Worked;
  readonly run: readonly number[];
}

/**
 * In a row the rest is met as the first part of the row above met its own, spaces between included:
 * the second side of a neck, the second lobe of a heart.
 */
function restOfRow(hands: Hands, { row, run }: Run): Edge {
  const { from, to } = row;
  const range = { from, to, ring: false, reversed: true, open: false };
  const edge = edgeOf(hands.nodes, hands.bench.kinds, range);
  const wanted = new Set(run);
  const entries = [...edge.node.keys()].filter(
    (i) => i < edge.n && edge.type[i] === COUNTED && wanted.has(edge.node[i] ?? -1),
  );
  let first = entries[0] ?? 0;
  // The gap before the first stitch left is left too.
  while (first > 0 && edge.type[first - 1] === SPACE) first--;
  return cutEdge(edge, first, (entries.at(-1) ?? -1) + 1);
}

function skippedRun(hands: Hands, row: number | null): Run | null {
  for (let i = hands.history.length - 1; i >= 0; i--) {
    const worked = hands.history[i];
    if (!worked || (row !== null && worked.number !== row)) continue;
    // "Skipped sts of Rnd 2" are its own that nothing was worked into, or those that it passed.
    const found = runIn(hands, worked) ?? (row === null ? null : runBeneath(hands, i));
    if (found) return found;
  }
  return null;
}

function runIn(hands: Hands, row: Worked): Run | null {
  const runs = runsOf(hands, row);
  // Open boxes over filled ones pass stitches too: the rest of a row is longer than these.
  const run = row.ring ? runs[0] : longest(runs);
  // The last row of a piece is worked into by nothing: it is an edge, not a skipped run.
  return run && run.length < countedIn(hands, row) ? { row, run } : null;
}

function runBeneath(hands: Hands, at: number): Run | null {
  const beneath = hands.history[at - 1];
  return beneath ? runIn(hands, beneath) : null;
}

const longest = (runs: readonly number[][]): number[] | undefined =>
  runs.reduce<number[] | undefined>((a, b) => (a && a.length >= b.length ? a : b), undefined);

/** Chains over the given places, last one first: their underside, as the round comes to it. */
export function undersideOver(hands: Hands, run: readonly number[]): number[] | null {
  const first = run[0];
  if (first === undefined) return null;
  const row = hands.history.find((worked) => worked.from <= first && first < worked.to);
  const above = row && hands.history[hands.history.indexOf(row) + 1];
  if (!above) return null;
  return chainRunAfter(hands, above, first - 1);
}

/**
 * The run of chains that follows, in `row`, the stitch worked into `place`, from its far end; the run that
 * the row begins with, where `place` stands before all that it is worked into.
 */
function chainRunAfter(hands: Hands, row: Worked, place: number): number[] | null {
  const { nodes } = hands;
  const chain = (id: number): boolean =>
    hands.bench.kinds.kinds[nodes.kind[id] ?? 0]?.class === 'chain';
  const runFrom = (from: number): number[] => {
    const run: number[] = [];
    for (let c = from; c < row.to && chain(c); c++) run.push(c);
    return run.reverse();
  };
  if (chain(row.from) && hands.history.some(({ from }) => from === place + 1))
    return runFrom(row.from);
  for (let id = row.from; id + 1 < row.to; id++) {
    const a = nodes.anchors[nodes.anchorFrom[id] ?? 0];
    if (a === place && !chain(id) && chain(id + 1)) return runFrom(id + 1);
  }
  return null;
}

/** The space of most chains last made, as places from its far end: "opposite side of ch". */
export function lastChainRun(edge: Edge): { from: number; n: number } | null {
  let best = -1;
  for (let i = 0; i < edge.n; i++) {
    if (edge.type[i] === SPACE && (best < 0 || (edge.run[i] ?? 0) > (edge.run[best] ?? 0)))
      best = i;
  }
  return best < 0 ? null : { from: edge.node[best] ?? 0, n: edge.run[best] ?? 0 };
}
