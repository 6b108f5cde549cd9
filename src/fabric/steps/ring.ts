/** A magic ring: one place that holds any number of stitches. */
import { bareEdge } from '../edge.ts';
import { type Hands, makeRing } from '../hands.ts';

export function doRing(hands: Hands): void {
  if (hands.edge.kind === 'into' && hands.first === null) return;
  hands.edge = bareEdge('into', makeRing(hands));
  hands.pos = 0;
  hands.limit = 0;
}
