/** How often the one repeat of the row at hand was worked, told from the words that made its stitches. */
import type { Step } from '../notation/index.ts';
import type { Hands } from './hands.ts';
import { allSteps } from './shape.ts';

/**
 * How often the row's one repeat was worked, and with what stands before it, where that makes at least
 * half as much as a pass. Empty where the row has no such repeat, or others within it.
 */
export function passesOf(
  { bench, nodes, rowFrom, base }: Hands,
  steps: readonly Step[],
): readonly number[] {
  const repeats = [...allSteps(steps)].filter(({ kind }) => kind === 'repeat');
  const [repeat] = repeats;
  if (!repeat || repeats.length > 1) return [];
  const from = repeat.from + base;
  const to = repeat.to + base;
  let passes = 0;
  let lead = 0;
  let within = 0;
  let last = Number.POSITIVE_INFINITY;
  for (let id = rowFrom; id < nodes.n; id++) {
    const at = bench.origins[nodes.origin[id] ?? 0]?.from ?? -1;
    const counted = bench.kinds.kinds[nodes.kind[id] ?? 0]?.counted ?? false;
    if (at < from || at >= to) {
      if (passes === 0 && counted) lead++;
      continue;
    }
    if (at < last) passes++;
    if (counted) within++;
    last = at;
  }
  if (passes === 0) return [];
  return lead * 2 * passes >= within ? [passes, passes + 1] : [passes];
}
