/**
 * "Sl st in next ch, sc in loop, ch 7, *tr in next loop, ch 3; rep from * around": the chain is as high as the
 * tr and a space more, so that it is the first tr with its space; the sc under it only holds the hook there.
 */
import { termOf } from './stitch-term.ts';
import type { ChainStep, Step, WorkStep } from './tree.ts';

const SLIP = termOf({ shape: 'one', stem: 'ss' });

/** Settles the opening in place; most rows do not begin with slip stitches. */
export function settleOpening(steps: Step[]): void {
  const first = steps.findIndex(({ kind }) => kind !== 'remark');
  if (!isSlip(steps[first])) return;
  let at = first + 1;
  while (isSlip(steps[at])) at++;
  const [sc, chain, repeat] = steps.slice(at, at + 3);
  if (!isHold(sc) || chain?.kind !== 'chain' || chain.countsAs || repeat?.kind !== 'repeat') return;
  const pass = repeat.steps.filter(({ kind }) => kind !== 'remark');
  const [work, gap, ...more] = pass;
  if (work?.kind !== 'work' || gap?.kind !== 'chain' || more.length > 0) return;
  const height = HEIGHTS[work.stitch.stem ?? ''];
  const over = lengthOf(chain) - lengthOf(gap);
  if (work.place?.pick !== 'next' || work.place.nouns[0]?.kind !== 'space') return;
  if (height?.includes(over)) steps[at] = { ...sc, stitch: SLIP };
}

/** Chains as high as a stitch, in US and UK terms (common practice). */
const HEIGHTS: Readonly<Record<string, readonly number[]>> = {
  hdc: [2],
  dc: [3],
  tr: [3, 4],
  dtr: [4, 5],
};

const lengthOf = ({ n }: ChainStep): number => n?.values[0] ?? 1;

const isSlip = (step: Step | undefined): boolean =>
  step?.kind === 'work' && step.stitch.stem === 'ss';

/** "Sc in same loop" */
const isHold = (step: Step | undefined): step is WorkStep =>
  step?.kind === 'work' &&
  step.stitch.stem === 'sc' &&
  step.stitch.shape === 'one' &&
  (step.n?.values[0] ?? 1) === 1 &&
  (step.place?.pick === 'same' || step.place?.pick === 'this') &&
  step.place.nouns[0]?.kind === 'space';
