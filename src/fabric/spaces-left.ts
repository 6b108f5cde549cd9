/**
 * A row that works space after space and stops before the last: where nothing is stated, and none was passed
 * on the way, the words go on to the end, and it was not followed there.
 */
import { COUNTED, SPACE } from './edge.ts';
import { MISFITS } from './facts.ts';
import { fact, type Hands, placeOfStep, remainingSpaces } from './hands.ts';
import { INTO_SPACE } from './nodes.ts';

/** Notes the spaces that are left behind the hands, where no count is there to tell and all before are worked. */
export function noteSpacesLeft(hands: Hands): void {
  const { edge, pos } = hands;
  const isKnown =
    edge.kind === 'row' && !edge.open && !hands.loose && !hands.spread && !hands.pieces;
  if (!isKnown || !hands.tookSpace || hands.leave || hands.leaveSaid !== null || hands.boxes > 0)
    return;
  const left = remainingSpaces(hands);
  if (left === 0 || edge.spaces - left < FEWEST || standsAlone(hands)) return;
  if (left === 1 && edge.ring && opensWithLoop(hands)) return;
  if (hands.facts.some(({ kind }) => MISFITS.has(kind))) return;
  const worked = spacesWorked(hands);
  for (let i = 0; i < pos; i++)
    if (edge.type[i] === SPACE && !worked.has(edge.node[i] ?? -1)) return;
  fact(hands, { kind: 'spaces-left', left, have: edge.spaces, ...placeOfStep(hands) });
}

/** Fewer spaces than these, all worked, show no habit. */
const FEWEST = 3;

/** One space is left at a row's end, beside its turning chain: makers leave it out as often as not. */
function standsAlone({ edge, pos }: Hands): boolean {
  if (edge.ring) return false;
  let stitches = 0;
  for (let i = pos; i < edge.n; i++) if (edge.type[i] === COUNTED) stitches++;
  return stitches <= 1;
}

/** "*Ch 7, sc in next sp; rep from * around, ch 3, tr in tr": from the middle of the last loop, which stays. */
const opensWithLoop = ({ nodes, bench, rowFrom }: Hands): boolean =>
  nodes.n > rowFrom && bench.kinds.kinds[nodes.kind[rowFrom] ?? 0]?.class === 'chain';

/** First chains of the spaces into which this row has worked. */
function spacesWorked({ nodes, rowFrom }: Hands): ReadonlySet<number> {
  const worked = new Set<number>();
  for (let id = rowFrom; id < nodes.n; id++) {
    if (((nodes.flags[id] ?? 0) & INTO_SPACE) === 0) continue;
    for (let i = nodes.anchorFrom[id] ?? 0; i < (nodes.anchorFrom[id + 1] ?? 0); i++)
      worked.add(nodes.anchors[i] ?? -1);
  }
  return worked;
}
