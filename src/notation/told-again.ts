/**
 * "(dc in next 4 sts, FPdc) around. (4 dc, 1 FPdc)": what is told in the bracket is one pass of the
 * repeat again, and counts no row.
 */
import type { StatedCount, Step } from './tree.ts';

/** Whether these counts, each of one stitch, say what a pass of a repeat among the steps is made of. */
export function tellsPass(counts: readonly StatedCount[], steps: readonly Step[]): boolean {
  if (counts.length < 2 || counts.some(({ unit }) => unit !== 'stem')) return false;
  return steps.some((step) => step.kind === 'repeat' && isPass(step.steps, counts));
}

function isPass(steps: readonly Step[], counts: readonly StatedCount[]): boolean {
  if (steps.length !== counts.length) return false;
  return steps.every((step, i) => {
    const count = counts[i];
    if (step.kind !== 'work' || !count || step.stitch.shape !== 'one') return false;
    const n = step.n ?? step.place?.n ?? null;
    return step.stitch.stem === count.stem && (n?.values[0] ?? 1) === count.n.values[0];
  });
}
