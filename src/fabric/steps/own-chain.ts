/** Working into a chain just made: picots, and leaves or points worked back along it. */
import type { Place, WorkStep } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { foundationEdge } from '../edge.ts';
import { type Hands, make, originFor } from '../hands.ts';
import { kindOf } from '../kinds.ts';
import { truncate } from '../nodes.ts';

/** Chains at the end of what this row has made. */
function trailingChains(hands: Hands): number {
  const { nodes, bench } = hands;
  let n = 0;
  for (let id = nodes.n - 1; id >= hands.rowFrom; id--) {
    if (bench.kinds.kinds[nodes.kind[id] ?? 0]?.class !== 'chain') break;
    n++;
  }
  return n;
}

/** "in 3rd ch from hook", "in first ch made" of a chain that this row has just made. */
export function isOwnChain(hands: Hands, place: Place): boolean {
  if (hands.edge.kind === 'foundation' && hands.first === null && hands.pos === 0) return false;
  const nth = place.nth ?? 1;
  const chains = trailingChains(hands);
  if (place.fromHook) return chains > 0 && nth <= chains + 1;
  const noun = place.nouns[0];
  // "Ch 5, sc in 2nd ch": from the hook, where no chain but its own is there to be meant.
  const bare = place.pick === 'nth' && place.of === null && noun?.kind === 'chain';
  if (bare && hands.edge.spaces === 0) return nth > 1 && nth <= chains;
  return place.pick === 'first' && noun?.kind === 'chain' && chains > 1 && hands.into === null;
}

/** A slip stitch near the hook that goes on along the chain is no picot but a leaf or a point. */
export const isPicot = (hands: Hands, place: Place): boolean =>
  !place.fromHook || (place.nth ?? 1) > 2 || trailingChains(hands) <= 2;

/**
 * "Ch 4, sc in 4th ch from hook", "ch 9, sc in 5th ch from hook, ch 4": a picot that a single crochet
 * closes. Where chains are left and the work goes on along them, it is a leaf.
 */
export function closesPicot(hands: Hands, { stitch, n, place }: WorkStep, here: Here): boolean {
  // "Ch 4, sc in 1st ch of ch-4": in the first of them.
  const made = place?.of?.nouns[0] ? trailingChains(hands) : 0;
  const nth = place?.fromHook ? (place.nth ?? 1) : made;
  if (nth < 3 || stitch.stem !== 'sc' || stitch.shape !== 'one' || n !== null) return false;
  if (hands.edge.kind !== 'row' || hands.aside) return false;
  if (nth >= trailingChains(hands)) return true;
  const next = here.steps.slice(here.i + 1).find(({ kind }) => kind !== 'remark');
  if (!next || next.kind === 'chain') return true;
  return 'place' in next && next.place !== null && next.place.nouns[0]?.kind === 'space';
}

/** The chain becomes a picot: no space, no stitch, a place only where named. */
export function makePicot(hands: Hands, step: WorkStep): void {
  const n = trailingChains(hands);
  const length = step.place?.fromHook ? Math.min(n, step.place.nth ?? n) : n;
  truncate(hands.nodes, hands.nodes.n - length);
  const into = hands.last;
  make(hands, kindOf(hands.bench.kinds, 'picot'), originFor(hands, step), into);
}

/**
 * "Ch 6, sc in 2nd ch from hook, hdc in next ch …": the hands go back along their own chain, and
 * return to the row when it is used up.
 */
export function workBack(hands: Hands, place: Place): void {
  const n = trailingChains(hands);
  const { edge, pos, limit } = hands;
  hands.aside = { edge, pos, limit, back: hands.aside };
  hands.edge = foundationEdge(hands.nodes.n - n, hands.nodes.n, {
    ring: false,
    reversed: true,
    open: false,
  });
  hands.pos = Math.max(0, (place.nth ?? 2) - 1);
  hands.limit = hands.edge.n;
}
