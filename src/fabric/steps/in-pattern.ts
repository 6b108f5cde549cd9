/**
 * "Sc in next 3 sts, 2 sc in next st, continue in pattern to end": one in each of the rest, or the same steps
 * over and over? Without a count nothing tells.
 */
import type { Step } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import type { Hands } from '../hands.ts';

/** Is it open what the rest of the row is? In rows of plain stitches and shaped ends it is not. */
export function isOpenPattern(
  hands: Hands,
  step: Step & { readonly kind: 'even' },
  { steps, i, top }: Here,
): boolean {
  // On a bare chain no stitch is told yet.
  if (step.stitch === null && hands.edge.kind === 'foundation') return true;
  const toEnd = step.until === null || step.until.kind === 'end';
  if (!top || !toEnd || step.stitch || step.rows || step.measure || hands.statedStitches >= 0)
    return false;
  const before = steps.slice(0, i);
  const first = before.findIndex(({ kind }) => WORKS.has(kind));
  return first >= 0 && before.slice(first).some(isOfPass);
}

const WORKS: ReadonlySet<string> = new Set(['work', 'group', 'repeat', 'skip']);

/** What makes more than one stitch of a place, or leads over places. */
const isOfPass = (step: Step): boolean =>
  step.kind === 'chain' ||
  step.kind === 'skip' ||
  step.kind === 'group' ||
  step.kind === 'repeat' ||
  (step.kind === 'work' &&
    step.place !== null &&
    step.place.n === null &&
    (step.n?.values[0] ?? 1) > 1);
