/** How often the one repeat of the row at hand was worked, told from the words that made its stitches. */
import type { Step } from '../notation/index.ts';
import type { Hands } from './hands.ts';
import { allSteps } from './shape.ts';

/**
 * How often the row's one repeat was worked, and with what stands before or behind it, where that makes at
 * least half as much as a pass. Empty where the row has no such repeat, or others within it.
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
  const made = { before: 0, within: 0, behind: 0 };
  let last = Number.POSITIVE_INFINITY;
  for (let id = rowFrom; id < nodes.n; id++) {
    if (bench.kinds.kinds[nodes.kind[id] ?? 0]?.class === 'slip') continue;
    const at = bench.origins[nodes.origin[id] ?? 0]?.from ?? -1;
    if (at >= from && at < to) {
      if (at < last) passes++;
      last = at;
      made.within++;
    } else if (passes === 0) made.before++;
    else made.behind++;
  }
  if (passes === 0) return [];
  const besides = [made.before, made.behind].filter((n) => n * 2 * passes >= made.within).length;
  return besides > 0 ? [passes, passes + 1] : [passes];
}
