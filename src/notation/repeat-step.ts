/** Makes repeats: one place, so that all have their fields in one order, which keeps reading fast. */
import type { Span } from '../source/index.ts';
import { MISSING } from './times.ts';
import type { Ending, RepeatStep, Step, Times } from './tree.ts';

/** How often a repeat is worked, in which words, and how it ends. */
export interface RepeatOrder {
  readonly times: Times;
  readonly ending: Ending | null;
  readonly order: Span;
}

/** No order at all: as often as count or row allow. `at`: where the words would stand. */
export const noOrder = (at: number): RepeatOrder => ({
  times: MISSING,
  ending: null,
  order: { from: at, to: at },
});

/** "(3 tr between each group) 11 times": "each" runs over the passes, one place a pass. */
function onePass(steps: readonly Step[]): readonly Step[] {
  const [only, second] = steps.filter(({ kind }) => kind !== 'remark' && kind !== 'mark');
  if (second || (only?.kind !== 'group' && only?.kind !== 'work')) return steps;
  const { place } = only;
  const single = place?.pick === 'each' && place.n === null && place.until === null;
  if (!single || (only.kind === 'work' && only.until)) return steps;
  const next = { ...place, pick: 'next', each: false } as const;
  return steps.map((step) => (step === only ? { ...only, place: next } : step));
}

export const repeatOf = (
  mark: string,
  steps: readonly Step[],
  { times, ending, order }: RepeatOrder,
  span: Span,
): RepeatStep => ({
  kind: 'repeat',
  mark,
  steps: times.kind === 'times' ? onePass(steps) : steps,
  times,
  ending,
  again: false,
  order,
  from: span.from,
  to: span.to,
});
