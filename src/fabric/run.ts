/**
 * Long plain runs, "sc in each of next 200 sts": the same as taking one stitch after the other,
 * without an object for each. Most of a piece is made here.
 */
import { COUNTED } from './edge.ts';
import { type Hands, type Target, TOO_MANY } from './hands.ts';
import { addAnchor, addNode } from './nodes.ts';

/**
 * Makes `each` stitches in every of the next `n` stitches, passing over spaces, as far as there are
 * such before the limit. How many places were taken.
 */
export function runAlong(
  hands: Hands,
  made: { readonly kind: number; readonly origin: number; readonly each: number },
  n: number,
): number {
  const { edge, nodes, yarn, bench } = hands;
  const node = { kind: made.kind, yarn, origin: made.origin, flags: 0 };
  const start = hands.inner > 0 ? hands.pos + 1 : hands.pos;
  let taken = 0;
  let entry = start;
  let lastEntry = -1;
  for (; taken < n && entry < hands.limit; entry++) {
    if (edge.type[entry] !== COUNTED) continue;
    if (taken === 0) hands.first ??= target(hands, entry);
    bench.limit.stitches -= made.each;
    if (bench.limit.stitches < 0) throw TOO_MANY;
    for (let i = 0; i < made.each; i++) {
      addNode(nodes, node);
      addAnchor(nodes, edge.node[entry] ?? -1);
    }
    lastEntry = entry;
    taken++;
  }
  if (taken === 0) return 0;
  hands.inner = 0;
  hands.pos = entry;
  hands.used += taken;
  hands.tookStitch = true;
  hands.last = target(hands, lastEntry);
  return taken;
}

const target = (hands: Hands, entry: number): Target => ({
  node: hands.edge.node[entry] ?? -1,
  space: false,
  entry,
});
