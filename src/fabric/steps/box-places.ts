/**
 * The places of an edge as boxes meet them: every stitch and every chain is one. Only the two wide
 * halves of a lacet are not: each stands over one gap, however many chains it has.
 */
import type { Mesh } from '../../filet/index.ts';
import type { StemId } from '../../notation/index.ts';
import { COUNTED, SPACE } from '../edge.ts';
import type { Hands } from '../hands.ts';
import { takeStitch } from '../take.ts';

export const stemAt = (hands: Hands, entry: number): StemId | null =>
  hands.bench.kinds.kinds[hands.nodes.kind[hands.edge.node[entry] ?? 0] ?? 0]?.stem ?? null;

/** A single crochet (US terms) between two spaces: the middle of a lacet. */
function isLacetMiddle({ edge }: Hands, entry: number): boolean {
  return edge.type[entry - 1] === SPACE && edge.type[entry + 1] === SPACE;
}

const isLow = (hands: Hands, entry: number): boolean =>
  hands.edge.type[entry] === COUNTED && stemAt(hands, entry) === 'w0';

/** One of the two spaces of a lacet. */
export function isLacetSpace(hands: Hands, entry: number): boolean {
  if (hands.edge.type[entry] !== SPACE) return false;
  return [entry - 1, entry + 1].some(
    (beside) => isLow(hands, beside) && isLacetMiddle(hands, beside),
  );
}

/** Stitches and chains from here to entry `limit`, as boxes count them; behind a base the row's. */
export function placesLeft(hands: Hands, limit: number, mesh: Mesh): number {
  const { aside } = hands;
  const here = placesFrom(hands, hands.pos, limit, mesh) - hands.inner;
  if (!aside) return here;
  const { edge } = hands;
  hands.edge = aside.edge;
  const behind = placesFrom(hands, aside.pos, aside.limit, mesh);
  hands.edge = edge;
  return here + behind;
}

function placesFrom(hands: Hands, from: number, limit: number, mesh: Mesh): number {
  const { edge } = hands;
  let n = 0;
  for (let i = from; i < limit; i++) {
    if (edge.type[i] === SPACE) n += isLacetSpace(hands, i) ? mesh.gap : (edge.run[i] ?? 0);
    else if (edge.type[i] === COUNTED) n++;
  }
  return n;
}

/** Passes one gap: so many places, or the whole of a lacet's half. */
export function skipGap(hands: Hands, gap: number): void {
  if (hands.inner === 0 && isLacetSpace(hands, hands.pos)) hands.pos++;
  else skipPlaces(hands, gap);
}

export function skipPlaces(hands: Hands, n: number): void {
  const { last } = hands;
  for (let i = 0; i < n; i++) takeStitch(hands, 'chains');
  hands.last = last;
}
