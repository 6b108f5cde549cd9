/** Do the boxes of a row come out with what lies beneath? Asked before the first of them is worked. */
import { chainsOfPost, type Mesh, pitchOf, stitchesOf } from '../../filet/index.ts';
import type { Here, RowContext } from '../context.ts';
import { fact, type Hands, numberFor, placeOfStep } from '../hands.ts';
import { boxesAsked } from './box-asked.ts';
import { placesLeft } from './box-places.ts';
import { onlySlips } from './box-work.ts';

/** n boxes with a gap of g take n(g + 1) places in the round, one more in rows. */
export function checkMesh(hands: Hands, mesh: Mesh, row: RowContext, here: Here): void {
  if (hands.boxes > 0 || !onlySlips(hands) || hands.edge.open || hands.edge.n === 0) return;
  if (hands.aside) return;
  const boxes = boxesAsked(hands, row.shape.steps, row);
  // Behind slip stitches the hook stands on the first post, which is taken already.
  const slipped = hands.nodes.n > hands.rowFrom ? 1 : 0;
  const have = placesLeft(hands, hands.edge.n, mesh) + slipped;
  if (boxes === null) return checkToEnd(hands, mesh, row, { here, have });
  const needed = stitchesOf(boxes, mesh.gap, row.round ? 'round' : 'flat');
  if (needed === have || startsOnFoundation(hands, mesh, have - needed)) return;
  if (isLeft(hands, row, (have - needed) / pitchOf(mesh.gap))) return;
  fact(hands, { kind: 'mesh', boxes, needed, have, ...placeOfStep(hands) });
  hands.leave = true;
}

/** "Leave last 2 boxes unworked": as many as are said, or whole boxes. */
function isLeft(hands: Hands, row: RowContext, boxes: number): boolean {
  const step = row.shape.steps.find((one) => one.kind === 'unworked');
  if (step?.kind !== 'unworked' || boxes <= 0 || !Number.isInteger(boxes)) return false;
  const said = numberFor(hands, step.n);
  return said === null || said === boxes;
}

/** "Work open boxes around": whole boxes must come out. */
function checkToEnd(
  hands: Hands,
  mesh: Mesh,
  row: RowContext,
  { here, have }: { here: Here; have: number },
): void {
  const rest = row.shape.steps.every(
    (step) =>
      !['work', 'group', 'chain', 'skip', 'unread', 'repeat'].includes(step.kind) &&
      !(step.kind === 'boxes' && step.edge !== null),
  );
  const pitch = pitchOf(mesh.gap);
  const over = (surplus: number): number => (have - surplus - (row.round ? 0 : 1)) % pitch;
  if (!here.top || !rest || over(0) === 0) return;
  const turning = turningChains(mesh).find((surplus) => over(surplus) === 0);
  if (turning !== undefined && startsOnFoundation(hands, mesh, turning)) return;
  const shaped = row.shape.steps.some((step) => step.kind === 'chart');
  if (shaped || hands.edge.kind !== 'row') return;
  const boxes = Math.max(1, Math.floor((have - (row.round ? 0 : 1)) / pitch));
  const needed = stitchesOf(boxes, mesh.gap, row.round ? 'round' : 'flat');
  fact(hands, { kind: 'mesh', boxes, needed, have, ...placeOfStep(hands) });
  hands.leave = true;
}

/**
 * What a foundation chain has beyond the row: the post's height, with the base of the first post
 * among it or not, and the gap of a first open box. Both ways are in print.
 */
function turningChains(mesh: Mesh): number[] {
  const height = chainsOfPost(mesh);
  return [height - 1, height, height + mesh.gap - 1, height + mesh.gap];
}

function startsOnFoundation(hands: Hands, mesh: Mesh, surplus: number): boolean {
  if (hands.edge.kind !== 'foundation' || hands.edge.ring || hands.pos > 0) return false;
  if (!turningChains(mesh).includes(surplus)) return false;
  hands.pos = surplus;
  return true;
}
