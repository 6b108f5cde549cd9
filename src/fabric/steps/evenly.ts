/** "30 sc evenly around", "inc 4 evenly": the places are left to the maker. */
import type { WorkStep } from '../../notation/index.ts';
import { type Hands, numberFor, remaining } from '../hands.ts';
import { takeStitch } from '../take.ts';
import { openSide } from './border.ts';
import { stitches } from './stitch.ts';
import { togetherAlong } from './together.ts';

/** "30 sc evenly around", "inc 4 evenly": the places are left to the maker. */
export function workEvenly(hands: Hands, step: WorkStep): void {
  const told = numberFor(hands, step.n);
  const n = told ?? 1;
  const said = numberFor(hands, step.place?.n ?? null);
  const left = remaining(hands);
  const have = said === null ? left : Math.min(said, left);
  const { shape, legs } = step.stitch;
  if (hands.edge.kind === 'row' && (shape === 'increase' || shape === 'together')) {
    return shapeEvenly(hands, step, { n, have, legs: legs ?? 2 });
  }
  hands.used += have;
  hands.pos = hands.limit;
  if (told === null) return openSide(hands, step);
  hands.spread = true;
  // Of an edge of which nothing is known nothing is asked.
  if (hands.edge.open && hands.edge.n === 0) hands.edge = { ...hands.edge, open: false };
  stitches(hands, step, { node: -1, space: false, entry: -1 }, n);
}

/** n increases or decreases spread over the places left, plain stitches between them. */
function shapeEvenly(
  hands: Hands,
  step: WorkStep,
  spread: { n: number; have: number; legs: number },
): void {
  const { n, have, legs } = spread;
  const plainStep: WorkStep = { ...step, stitch: { ...step.stitch, shape: 'one', legs: null } };
  const grows = step.stitch.shape === 'increase';
  const units = grows ? have : have - n * (legs - 1);
  for (let i = 0; i < units; i++) {
    const shapes = Math.floor(((i + 1) * n) / units) > Math.floor((i * n) / units);
    if (!shapes) stitches(hands, plainStep, takeStitch(hands, 'passed'), 1);
    else if (grows) stitches(hands, step, takeStitch(hands, 'passed'), legs);
    else togetherAlong(hands, step, legs);
  }
}
