/** Whether a flat piece came out folded over itself: layouts of odd shapes may, and it has to be said. */
import { patchesOf } from './patches.ts';
import type { StitchGraph } from './stitch-graph.ts';

/** Share of the stitches, 0 to 1, that face the other way than most, seen from above. */
export function foldedShare(graph: StitchGraph, at: Float64Array): number {
  const { corners, isBare } = patchesOf(graph, at);
  let [up, down] = [0, 0];
  for (let i = 0; i < graph.n; i++) {
    if (isBare[i] || graph.isChain[i]) continue;
    const across = (c: number, a: number, b: number): number =>
      corners[12 * i + 3 * b + c]! - corners[12 * i + 3 * a + c]!;
    const area = across(0, 0, 2) * across(1, 1, 3) - across(1, 0, 2) * across(0, 1, 3);
    if (area > 0) up++;
    else down++;
  }
  return up + down === 0 ? 0 : Math.min(up, down) / (up + down);
}
