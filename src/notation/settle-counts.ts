/** Which of the counts told in a row are the row's, and which are told on the way. */
import { isWorked } from './plain-count.ts';
import type { SeenCount } from './reader.ts';
import { tellsPass } from './told-again.ts';
import type { StatedCount, Step } from './tree.ts';

// Most instructions have none: the lists of all of them may be one.
const NO_COUNTS: readonly StatedCount[] = [];

/**
 * Counts stand at the end, or before the last join, turn or chain. A number that work follows was a
 * running count: it is kept as a remark.
 */
export function settleCounts(seen: readonly SeenCount[], steps: Step[]): readonly StatedCount[] {
  if (seen.length === 0) return NO_COUNTS;
  finishBehind(seen, steps);
  let last = steps.length;
  while (last > 0 && !makes(steps[last - 1])) last--;
  const [only] = seen;
  const isWhole = only !== undefined && !countsSlips(only.count, steps);
  if (seen.length === 1 && isWhole && only.from >= last) return [only.count];
  return settledCounts(seen, steps, last);
}

/** `last`: behind the last step that makes stitches. */
function settledCounts(
  seen: readonly SeenCount[],
  steps: Step[],
  last: number,
): readonly StatedCount[] {
  const counts: StatedCount[] = [];
  const running: Step[] = [];
  const isPass = tellsPass(
    seen.map(({ count }) => count),
    steps,
  );
  for (const { count, from } of seen) {
    const closes =
      from >= last && !countsSlips(count, steps) && !isSuperseded(count, from, seen, steps);
    // "(3 rnds) 24 sc": how many rows the label names, told before their work.
    const leads =
      (count.unit === 'row' && !steps.slice(0, from).some(makes)) ||
      (from === 0 && isOfLabel(seen));
    if (!isPass && (closes || leads || isBeforeAgain(steps, from))) counts.push(count);
    else running.push({ kind: 'remark', from: count.from, to: count.to });
  }
  // Inside a repeat a count knows its place in the repeat only: here it stands behind the whole.
  for (const remark of running.reverse()) {
    const behind = steps.findIndex((step) => step.from >= remark.from);
    steps.splice(behind < 0 ? steps.length : behind, 0, remark);
  }
  return counts;
}

/** "Round 2 (24 sc)" above the work: the row's own, where no other is told. */
function isOfLabel([first, ...more]: readonly SeenCount[]): boolean {
  const unit = first?.count.unit;
  return more.length === 0 && (unit === 'stem' || unit === 'stitch');
}

/** "Sl st to middle of ch space (3 sl sts)": how many are slipped on the way, in a row of other stitches. */
const countsSlips = (count: StatedCount, steps: readonly Step[]): boolean =>
  count.stem === 'ss' && steps.some(makes);

/** "… 5 sc (12). Sc in next st, fasten off": the round is told; the stitch only brings the yarn to its end. */
function finishBehind(seen: readonly SeenCount[], steps: Step[]): void {
  const from = seen.at(-1)?.from ?? 0;
  const work = steps[from];
  if (work?.kind !== 'work' || from === 0) return;
  const rest = steps.slice(from + 1);
  if (rest.some(makes)) return;
  if (!rest.some((step) => step.kind === 'fasten-off' && !step.not)) return;
  const { n, place, stitch, until } = work;
  const isNext = place === null || (place.pick === 'next' && place.n === null);
  if (!isNext || until || (n?.values[0] ?? 1) > 1 || stitch.shape !== 'one') return;
  steps[from] = { kind: 'remark', from: work.from, to: work.to };
}

/** "Dec row: sc2tog, sc to end. (18 sc) Rep Dec row twice. (16 sc)": the first count is the row's own. */
function isBeforeAgain(steps: readonly Step[], from: number): boolean {
  const made = steps.findIndex((step, i) => i >= from && makes(step));
  const next = steps[made];
  // "Dec 1 st at each end of next row. (28 sc) Work 3 rows even."
  const rows = next?.kind === 'even' && (next.rows ?? next.measure ?? next.shaping);
  return (next?.kind === 'rows-again' || !!rows) && steps.slice(0, made).some(makes);
}

/**
 * "2 sc in each st (2 sc). Join. (16 sc)": of two counts of one thing the last is the row's, where the first
 * may be that of a pass. "(17). Join. (18)" is no pass: one of them is wrong, and both are held.
 */
const isSuperseded = (
  count: StatedCount,
  from: number,
  seen: readonly SeenCount[],
  steps: readonly Step[],
): boolean =>
  count.unit !== 'row' &&
  seen.some(
    (later) =>
      later.from > from &&
      later.count.unit === count.unit &&
      later.count.stem === count.stem &&
      later.count.word === count.word &&
      later.count.n.values[0] !== count.n.values[0] &&
      (mayBePass(count, later.count, steps) || !steps.slice(from, later.from).every(leavesCount)),
  );

/** A pass makes half of a row's stitches at most; "11 dc. Join to ch 3 (12 dc)" takes in the start chain. */
function mayBePass(count: StatedCount, row: StatedCount, [start]: readonly Step[]): boolean {
  const n = count.n.values[0] ?? 0;
  const all = row.n.values[0] ?? 0;
  return n * 2 <= all || (n + 1 === all && start?.kind === 'chain');
}

/** Steps behind which a row has as many stitches as before. */
const leavesCount = ({ kind }: Step): boolean =>
  kind === 'join' ||
  kind === 'turn' ||
  kind === 'fasten-off' ||
  kind === 'remark' ||
  kind === 'yarn';

/** Steps that make stitches, or may. */
export const makes = (step: Step | undefined): boolean =>
  step?.kind === 'repeat' ||
  step?.kind === 'group' ||
  step?.kind === 'boxes' ||
  step?.kind === 'chart' ||
  step?.kind === 'rows-again' ||
  step?.kind === 'even' ||
  (step?.kind === 'work' && step.stitch.stem !== 'ss');

/** "Ch 82 (82)": where nothing but chain is made, a bare number counts chains. */
export function countsOfChain(
  counts: readonly StatedCount[],
  steps: readonly Step[],
): readonly StatedCount[] {
  if (counts.length === 0 || !isChainOnly(steps)) return counts;
  // "Ch 30 + 1 to turn. (30 + 1)"
  const [count, more] = counts;
  const chain = steps.find((step) => step.kind === 'chain')?.n?.values[0] ?? 0;
  const both = (count?.n.values[0] ?? 0) + (more?.n.values[0] ?? 0);
  if (count && more && counts.length === 2 && both === chain)
    return [{ ...count, n: { ...count.n, values: [both] }, unit: 'chain', to: more.to }];
  return counts.map((count) => (count.unit === null ? { ...count, unit: 'chain' } : count));
}

function isChainOnly(steps: readonly Step[]): boolean {
  let chains = false;
  for (let i = 0; i < steps.length; i++) {
    const { kind } = steps[i]!;
    if (kind === 'chain') chains = true;
    else if (kind !== 'turn' && kind !== 'yarn' && kind !== 'join' && kind !== 'remark')
      return false;
  }
  return chains;
}

/** "3 sc in 2nd ch, sc in next 8, 3 sc in last, on other side sc in each st (8 sc)": of that side only. */
export function countsOfSide(
  counts: readonly StatedCount[],
  steps: Step[],
): readonly StatedCount[] {
  const [count] = counts;
  let side = counts.length === 1 ? steps.length - 1 : 0;
  while (side > 0 && steps[side]!.kind !== 'other-side') side--;
  return count && side > 0 && isOfSide(count, steps, side) ? keptAsRemark(count, steps) : counts;
}

/** Whether the count is that of a side of the chain which is worked alike before `side`. */
function isOfSide(count: StatedCount, steps: readonly Step[], side: number): boolean {
  const [each, another] = steps.slice(side).filter(isWorked);
  if (another || each?.kind !== 'work' || each.place?.pick !== 'each') return false;
  const n = count.n.values[0];
  const former = steps
    .slice(0, side)
    .some((step) => step.kind === 'work' && step.place?.n?.values[0] === n);
  return former && count.from >= each.to;
}

function keptAsRemark({ from, to }: StatedCount, steps: Step[]): readonly StatedCount[] {
  const behind = steps.findIndex((step) => step.from >= to);
  steps.splice(behind < 0 ? steps.length : behind, 0, { kind: 'remark', from, to });
  return NO_COUNTS;
}
