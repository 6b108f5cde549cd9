/** "Dec 1 st at each end of next row and every 4th row 3 times" written out: the rows that are shaped, and those between. */
import type { EndShaping, EvenStep, Instruction, Step, WorkStep } from '../notation/index.ts';
import type { Span } from '../source/index.ts';

/** How many rows there are: by the label, and by the order; `null` where it does not say. */
export interface RowsTold {
  readonly named: number | null;
  readonly times: number | null;
}

/** The order among the steps, if any. */
export const shapingIn = (steps: readonly Step[]): (EvenStep & { shaping: EndShaping }) | null => {
  const step = steps.find((one) => one.kind === 'even' && one.shaping);
  return step?.kind === 'even' && step.shaping ? { ...step, shaping: step.shaping } : null;
};

/** One instruction for each row. */
export function shapedRows(instruction: Instruction, { named, times }: RowsTold): Instruction[] {
  const order = shapingIn(instruction.steps);
  if (!order) return [];
  const { every, next } = order.shaping;
  const shaped = { ...instruction, steps: instruction.steps.flatMap(withEnds) };
  const plain = { ...instruction, steps: instruction.steps.map(withoutEnds) };
  const often = times === null ? (named ?? 1) : times + Number(next);
  const all = times === null ? 1 : next ? 1 + times * every : times * every;
  let left = often;
  return Array.from({ length: named ?? all }, (_, i) => {
    const turn = named === null && times === null ? 0 : next ? i : i + 1;
    if (turn % every > 0 || left === 0) return plain;
    left--;
    return shaped;
  });
}

const withoutEnds = (step: Step): Step =>
  step.kind === 'even' && step.shaping ? { ...step, shaping: undefined } : step;

/** "Dec, work even to last 2 sts, dec" */
function withEnds(step: Step): readonly Step[] {
  if (step.kind !== 'even' || !step.shaping) return [step];
  const { stitch, n, at } = step.shaping;
  const span = { from: step.from, to: step.to };
  const ends = shapes(step.shaping, span);
  if (at === 'somewhere') return [{ ...ends, evenly: true, n: { values: [n], ...span } }];
  const plain = withoutEnds(step) as EvenStep;
  if (at === 'start') return [ends, plain];
  const used = stitch.shape === 'together' ? (stitch.legs ?? 2) * n : n;
  const noun = {
    kind: 'stitch',
    stem: null,
    post: null,
    chains: null,
    word: '',
    plural: true,
    corner: false,
    skipped: false,
  } as const;
  const until = {
    kind: 'last',
    n: { values: [used], ...span },
    noun,
    chain: false,
    ...span,
  } as const;
  return at === 'both' ? [ends, { ...plain, until }, ends] : [{ ...plain, until }, ends];
}

const shapes = ({ stitch, n }: EndShaping, span: Span): WorkStep => ({
  kind: 'work',
  nameFrom: span.from,
  nameTo: span.to,
  n: n === 1 ? null : { values: [n], ...span },
  numberAfter: true,
  stitch,
  place: null,
  alsoIn: [],
  until: null,
  countsAs: null,
  evenly: false,
  ...span,
});
