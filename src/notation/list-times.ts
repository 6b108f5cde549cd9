/**
 * "2 sc, inc x 6 (24)": whether the number belongs to the whole list or to its last stitch is told
 * by the count alone. Both are written; the list is meant where only it gives the count.
 */
import { repeatOf } from './repeat-step.ts';
import { termWith } from './stitch-term.ts';
import type { RepeatStep, StatedCount, Step, WorkStep } from './tree.ts';

/** The steps, with the list made into a repeat where the count says so. */
export function settleListTimes(steps: readonly Step[], counts: readonly StatedCount[]): Step[] {
  let behind = steps.length;
  while (behind > 0 && AFTER.has(steps[behind - 1]!.kind)) behind--;
  const last = steps[behind - 1];
  // Most lists end otherwise, or have no count that could tell.
  if (counts.length !== 1) return steps.slice();
  if (last?.kind === 'repeat') return settledRepeat(steps, behind, counts);
  if (last?.kind !== 'work' || !last.numberAfter) return steps.slice();
  const parted = behind === 1 ? partedLegs(last, counts) : null;
  if (parted) return [parted, ...steps.slice(1)];
  const out = settledList(steps.slice(0, behind), counts);
  return [...out, ...steps.slice(behind)];
}

/** Is the number meant of the whole list? The count says so, or, itself a little off, comes far nearer to that. */
const isOfAll = (whole: number, alone: number, stated: number): boolean =>
  stated !== alone && Math.abs(whole - stated) * 3 <= Math.abs(alone - stated);

/** "8sc dec x 3 (27)": eight stitches and a decrease, and no decrease over eight, if only so the count is met. */
function partedLegs(last: WorkStep, counts: readonly StatedCount[]): RepeatStep | null {
  const { stitch, n, nameFrom, nameTo, to } = last;
  const { legs } = stitch;
  const times = n?.values.length === 1 ? (n.values[0] ?? 0) : 0;
  const stated = counts[0]?.n.values;
  if (legs === null || stitch.shape !== 'together' || times < 2 || !isRunning(last)) return null;
  if (stated?.length !== 1 || stated[0] !== (legs + 1) * times) return null;
  const number = { values: [legs], from: nameFrom, to: nameFrom + String(legs).length };
  const shaped = termWith(stitch, { legs: null });
  const fused = { ...last, n: number, stitch: shaped, numberAfter: false, to: nameTo };
  const order = { from: nameTo, to };
  const told = { kind: 'times', n: n!, more: false, ...order } as const;
  return repeatOf(
    '',
    apartOf(fused),
    { times: told, ending: null, order },
    { from: last.from, to },
  );
}

/** "Inc, 2 sc x 6 (24)": of the last stitches alone, as they were read, or of the whole list. */
function settledRepeat(
  steps: readonly Step[],
  behind: number,
  counts: readonly StatedCount[],
): Step[] {
  const last = steps[behind - 1];
  const stated = counts[0]?.n.values;
  if (last?.kind !== 'repeat' || last.mark !== '' || stated?.length !== 1) return steps.slice();
  const [only] = last.steps;
  const first = steps.findIndex((step) => step.kind === 'work');
  const times = timesOf(last);
  if (
    only?.kind !== 'work' ||
    last.steps.length > 1 ||
    first < 0 ||
    first > behind - 2 ||
    times < 2
  )
    return steps.slice();
  const list = [...steps.slice(first, behind - 1), only];
  if (!list.every(isRunning)) return steps.slice();
  const before = list.slice(0, -1).reduce((sum, step) => sum + made(step), 0);
  const one = made(only);
  if (!isOfAll((before + one) * times, before + one * times, stated[0]!)) return steps.slice();
  const { times: told, ending, order } = last;
  const whole = repeatOf(
    '',
    list,
    { times: told, ending, order },
    { from: list[0]!.from, to: last.to },
  );
  return [...steps.slice(0, first), whole, ...steps.slice(behind)];
}

/** What may stand behind a list without being of it: "Change to white." */
const AFTER: ReadonlySet<Step['kind']> = new Set(['yarn', 'remark', 'fasten-off', 'turn', 'join']);

function settledList(steps: readonly Step[], counts: readonly StatedCount[]): Step[] {
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
  if (!isOfAll((before + one) * times, before + one * times, stated[0]!)) return out;
  const n = last.n!;
  const order = { from: last.nameTo, to: last.to };
  out.length = first;
  const passed = [...list.slice(0, -1), { ...last, n: null, numberAfter: false, to: order.from }];
  const span = { from: list[0]!.from, to: last.to };
  const told = { kind: 'times', n, more: false, ...order } as const;
  out.push(repeatOf('', passed, { times: told, ending: null, order }, span));
  return out;
}

/**
 * "inc, 4 sc inc, sc (8)", where a comma was lost: "4 sc inc" is four stitches and an increase if only
 * so the count is met. Both are written.
 */
export function settleNames(
  steps: readonly Step[],
  counts: readonly StatedCount[],
): readonly Step[] {
  const stated = counts.length === 1 ? counts[0]?.n.values : undefined;
  const total = stated?.length === 1 ? stated[0] : null;
  if (typeof total !== 'number') return steps;
  const [only] = steps;
  const times = steps.length === 1 && only?.kind === 'repeat' ? timesOf(only) : 0;
  // "*2 sc dec* x 8 (24)": each pass makes its share of the count.
  if (only?.kind === 'repeat' && times > 1) {
    const inner = total % times === 0 ? settledTo(only.steps, total / times, true) : only.steps;
    return inner === only.steps ? steps : [{ ...only, steps: inner }];
  }
  return settledTo(steps, total, false);
}

/** How often a repeat with a plain number of times is worked; 0: another kind. */
const timesOf = ({ times, ending }: RepeatStep): number =>
  times.kind === 'times' && !times.more && !ending && times.n.values.length === 1
    ? (times.n.values[0] ?? 0)
    : 0;

/** `tie`: where both come to the same, as with 2, a list that is repeated is taken apart. */
function settledTo(steps: readonly Step[], total: number, tie: boolean): readonly Step[] {
  if (!steps.some(isFused)) return steps;
  const list = steps.filter((step) => step.kind === 'work');
  if (!list.every(isRunning)) return steps;
  const now = list.reduce((sum, step) => sum + made(step), 0);
  const parted = list.reduce((sum, step) => sum + made(step) - (isFused(step) ? made(step) : 0), 0);
  const apart = list
    .filter(isFused)
    .reduce((sum, step) => sum + (step.n?.values[0] ?? 1) + madeByOne(step), 0);
  if ((now === total && !tie) || parted + apart !== total) return steps;
  return steps.flatMap((step): readonly Step[] => (isFused(step) ? apartOf(step) : [step]));
}

/** "4 sc inc", "sc dec": a number or none, a stitch and what is made of it. */
const isFused = (step: Step): step is WorkStep =>
  step.kind === 'work' &&
  !step.numberAfter &&
  (step.n?.values[0] ?? 1) > 0 &&
  step.stitch.stem !== null &&
  step.stitch.legs === null &&
  (step.stitch.shape === 'increase' || step.stitch.shape === 'together');

function apartOf(step: WorkStep): readonly WorkStep[] {
  const plain: WorkStep = { ...step, stitch: termWith(step.stitch, { shape: 'one' }) };
  const shaped: WorkStep = { ...step, n: null };
  return [plain, shaped];
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
