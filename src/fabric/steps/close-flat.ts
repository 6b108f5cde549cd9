/** "6 sc through both layers": a round is laid flat, and its edges are worked together. */
import type { WorkStep } from '../../notation/index.ts';
import { COUNTED } from '../edge.ts';
import { atStart, type Hands, make, numberFor, originFor } from '../hands.ts';
import { addAnchor } from '../nodes.ts';
import { kindFor } from './stitch.ts';

/**
 * Works the stitches through pairs of the round's places, the first with the last; `false`, and nothing is
 * done, where this is no round that so many stitches close: two pieces are joined by twice as many. One pair
 * may stay free at the folds (common practice).
 */
export function closeFlat(hands: Hands, step: WorkStep): boolean {
  const { edge } = hands;
  if (!edge.ring || edge.kind !== 'row' || edge.open || hands.pieces || !atStart(hands))
    return false;
  const pairs = edge.counted / 2;
  const said = numberFor(hands, step.n) ?? numberFor(hands, step.place?.n ?? null);
  const n = said ?? hands.statedStitches;
  if (step.stitch.shape !== 'one' || step.stitch.stem === 'ss' || n > Math.ceil(pairs))
    return false;
  if (n < Math.floor(pairs) - 1 || n < 2) return false;
  const places = [...edge.node.keys()].filter((i) => edge.type[i] === COUNTED);
  const kind = kindFor(hands, step.stitch, step);
  const origin = originFor(hands, step);
  for (let i = 0; i < n; i++) {
    const entry = places[i] ?? -1;
    make(hands, kind, origin, { node: edge.node[entry] ?? -1, space: false, entry });
    const other = places[places.length - 1 - i] ?? entry;
    if (other > entry) addAnchor(hands.nodes, edge.node[other] ?? -1);
  }
  hands.used += edge.counted;
  hands.pos = hands.limit = edge.n;
  return true;
}
