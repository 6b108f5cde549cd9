/**
 * "2 sc, inc x 6 (24)": whether the number belongs to the whole list or to its last stitch is told
 * by the count alone. Both are written; the list is meant where only it gives the count.
 */
import { repeatOf } from './repeat-step.ts';
import type { StatedCount, Step, WorkStep } from './tree.ts';

/** The steps, with the list made into a repeat where the count says so. */
export function settleListTimes(steps: readonly Step[], counts: readonly StatedCount[]): Step[] {
  const out = [...steps];
  const last = steps.at(-1);
  const first = steps.findIndex((step) => step.kind === 'work');
  const stated = counts.length === 1 ? counts[0]?.n.values : undefined;
  if (last?.kind !== 'work' || first < 0 || first > steps.length - 2) return out;
  if (stated?.length !== 1 || !isRunning(last) || !last.numberAfter) return out;
  const times = last.n?.values[0] ?? 0;
  const list = steps.slice(first);
  if (times < 2 || !list.every(isRunning)) return out;
  const before = list.slice(0, -1).reduce((sum, step) => sum + made(step), 0);
  const one = madeByOne(last);
  if ((before + one) * times !== stated[0] || before + one * times === stated[0]) return out;
  const n = last.n!;
  const order = { from: last.stitch.to, to: last.to };
  out.length = first;
  const passed = [...list.slice(0, -1), { ...last, n: null, numberAfter: false, to: order.from }];
  const span = { from: list[0]!.from, to: last.to };
  const told = { kind: 'times', n, more: false, ...order } as const;
  out.push(repeatOf('', passed, { times: told, ending: null, order }, span));
  return out;
}

/** Stitches along the row: no place, no end, one number at most. */
const isRunning = (step: Step): step is WorkStep =>
  step.kind === 'work' &&
  !step.place &&
  !step.until &&
  step.alsoIn.length === 0 &&
  step.stitch.stem !== 'ss' &&
  (step.n === null || step.n.values.length === 1);

const madeByOne = ({ stitch }: WorkStep): number => (stitch.shape === 'increase' ? 2 : 1);

const made = (step: WorkStep): number => (step.n?.values[0] ?? 1) * madeByOne(step);
