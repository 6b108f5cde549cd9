/**
 * Long chains in a round: lace that stands up from the round beneath, handles to carry by, or openings that
 * lie in the wall (a heel, a thumb, a slit).
 */
import { firstAnchorOf, type GraphRow, lastAnchorOf, type StitchGraph } from './stitch-graph.ts';

interface LongSpace {
  readonly chains: number;
  readonly lengthMm: number;
  /** Along the round beneath, between the stitches beside it; `null` where they are far apart. */
  readonly gapMm: number | null;
  /** Both stitches beside it stand in one place. */
  readonly isCorner: boolean;
}

/** A chain longer than this stands up from the round beneath instead of lying along it. */
const LONGEST_SPACE = 2;
/** A strap has at least as many chains, and is as much longer than what it skips (ours). */
const STRAP = { chains: 10, longer: 1.5 } as const;

/** Long chains but for those in corners, which lie as the corner does. */
export const longSpacesIn = (graph: StitchGraph, row: GraphRow): number =>
  spacesIn(graph, row).filter(({ isCorner }) => !isCorner).length;

export const handlesIn = (graph: StitchGraph, row: GraphRow): number =>
  spacesIn(graph, row).filter(isHandle).length;

function isHandle({ chains, lengthMm, gapMm, isCorner }: LongSpace): boolean {
  if (isCorner || chains < STRAP.chains) return false;
  return gapMm === null || lengthMm >= STRAP.longer * gapMm;
}

function spacesIn(graph: StitchGraph, row: GraphRow): readonly LongSpace[] {
  const spaces: LongSpace[] = [];
  for (let i = row.from; i < row.to; ) {
    let end = i;
    let lengthMm = 0;
    for (; end < row.to && graph.isChain[end]; end++) lengthMm += graph.widthMm[end]!;
    if (end - i > LONGEST_SPACE)
      spaces.push({ chains: end - i, lengthMm, ...beside(graph, i, end) });
    i = Math.max(end, i + 1);
  }
  return spaces;
}

function beside(
  graph: StitchGraph,
  from: number,
  to: number,
): Pick<LongSpace, 'gapMm' | 'isCorner'> {
  const [a, b] = [graph.before[from]!, graph.after[to - 1]!];
  if (a < 0 || b < 0) return { gapMm: null, isCorner: false };
  const isCorner = graph.place[a]! >= 0 && graph.place[a] === graph.place[b];
  return { isCorner, gapMm: gapMm(graph, lastAnchorOf(graph, a), firstAnchorOf(graph, b)) };
}

/** Stitches of the round beneath that a gap may span. */
const FAR = 200;

function gapMm(graph: StitchGraph, a: number, b: number): number | null {
  if (a < 0 || b < 0) return null;
  let nearest: number | null = null;
  for (const step of [graph.after, graph.before]) {
    let sum = 0;
    let at = a;
    for (let n = 0; n < FAR && at >= 0 && at !== b; n++, at = step[at]!) sum += graph.widthMm[at]!;
    if (at === b && (nearest === null || sum < nearest)) nearest = sum;
  }
  return nearest;
}
