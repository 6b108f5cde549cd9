/** A magic ring: one place that holds any number of stitches. */
import type { Step } from '../../notation/index.ts';
import { bareEdge } from '../edge.ts';
import { type Hands, make, originFor } from '../hands.ts';
import { kindOf } from '../kinds.ts';

export function doRing(hands: Hands, step: Step): void {
  if (hands.edge.kind === 'into') return;
  const node = make(hands, kindOf(hands.bench.kinds, 'ring'), originFor(hands, step), null);
  hands.edge = bareEdge('into', node);
  hands.pos = 0;
  hands.limit = 0;
  hands.rowFrom = hands.nodes.n;
}
