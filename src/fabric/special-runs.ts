/**
 * What a shell of the designer's own is made of, "2 dc, ch 2, 2 dc", as runs: stitches above nought, chains
 * below. So it is told from what else stands in its place, and from other groups of the row.
 */
import type { SpecialStitch } from '../notation/index.ts';
import { COUNTED, type Edge, SPACE } from './edge.ts';

/** One more stitch (1), or one more chain (-1), behind such runs. */
export function put(runs: number[], n: 1 | -1): void {
  const last = runs.length - 1;
  if ((runs[last] ?? 0) * n > 0) runs[last] = (runs[last] ?? 0) + n;
  else runs.push(n);
}

/** The runs of a definition that is plain stitches and chains in one place; empty for any other. */
export function runsOf({ steps }: SpecialStitch): number[] {
  const runs: number[] = [];
  for (const step of steps.flatMap((one) => (one.kind === 'group' ? one.steps : one))) {
    if (step.kind === 'remark') continue;
    const plain = step.kind === 'chain' || (step.kind === 'work' && step.stitch.shape === 'one');
    if (!plain) return [];
    const n = step.n?.values[0] ?? 1;
    for (let i = 0; i < n; i++) put(runs, step.kind === 'chain' ? -1 : 1);
  }
  return runs;
}

/** Behind the entries from `from` that are such runs, up to a space or `to`; -1 where they are others. */
export function endOfRuns(edge: Edge, from: number, to: number, runs: readonly number[]): number {
  let i = from;
  for (const n of runs) {
    if (n < 0) {
      if (i >= to || edge.type[i] !== SPACE || edge.run[i] !== -n) return -1;
      i++;
    } else {
      for (let left = n; left > 0; left--) if (i >= to || edge.type[i++] !== COUNTED) return -1;
    }
  }
  return i < to && edge.type[i] === COUNTED ? -1 : i;
}
