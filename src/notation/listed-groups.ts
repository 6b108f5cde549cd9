/**
 * "1 dc, 2 tr in 2nd ch from hook, *sk 2 ch, 1 dc, 2 tr in next ch": nothing stands before the first place
 * of a row, so that a list which ends there goes into it; and so does the same list in the rest of the row.
 */
import type { GroupStep, Place, Step, WorkStep } from './tree.ts';

/** The same steps where no row opens so: most have no list before their first place. */
export function settleListedGroups(steps: Step[]): Step[] {
  const from = steps.findIndex(({ kind }) => !LEADS.has(kind));
  const to = endOfList(steps, from);
  if (to < 0) return steps;
  const last = steps[to] as WorkStep;
  const listed = steps.slice(from, to) as WorkStep[];
  return grouped(steps, [...listed, last]);
}

const LEADS: ReadonlySet<string> = new Set(['chain', 'turn', 'remark', 'yarn', 'loop']);

/** Where the placed stitch stands that ends the list; -1: no list, or its place need not be the first. */
function endOfList(steps: readonly Step[], from: number): number {
  let at = from;
  while (isPlaceless(steps[at])) at++;
  const last = steps[at];
  if (at <= from || from < 0 || last?.kind !== 'work' || !last.place) return -1;
  return isFirstPlace(last.place) && isPlainWork(last) ? at : -1;
}

const isPlainWork = (step: WorkStep): boolean =>
  step.stitch.shape === 'one' && step.stitch.stem !== 'ss' && step.alsoIn.length === 0;

const isPlaceless = (step: Step | undefined): step is WorkStep =>
  step?.kind === 'work' && !step.place && !step.until && !step.numberAfter && isPlainWork(step);

const isFirstPlace = ({ pick, n, nouns, fromHook, of, until }: Place): boolean =>
  !until &&
  (fromHook ||
    (pick === 'first' &&
      n === null &&
      of === null &&
      (nouns[0]?.kind === 'stitch' || nouns[0]?.kind === 'stem')));

/** Every list of the same stitches whose last one has a single place. */
function grouped(steps: readonly Step[], list: readonly WorkStep[]): Step[] {
  const out: Step[] = [];
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i] as Step;
    const group = groupAt(steps, i, list);
    if (group) {
      out.push(group);
      i += list.length - 1;
    } else out.push(step.kind === 'repeat' ? { ...step, steps: grouped(step.steps, list) } : step);
  }
  return out;
}

function groupAt(steps: readonly Step[], at: number, list: readonly WorkStep[]): GroupStep | null {
  const own = steps.slice(at, at + list.length);
  const last = own.at(-1);
  if (own.length < list.length || last?.kind !== 'work' || !last.place) return null;
  if (!own.every((step, i) => step.kind === 'work' && isAlike(step, list[i]))) return null;
  if (!own.slice(0, -1).every(isPlaceless) || !isSingle(last.place)) return null;
  const { place, to } = last;
  const inside: Step[] = [...own.slice(0, -1), { ...last, place: null, to: last.nameTo }];
  return { kind: 'group', steps: inside, place, loose: false, from: own[0]?.from ?? 0, to };
}

const isSingle = ({ pick, n, each, until }: Place): boolean =>
  n === null && !each && !until && pick !== 'each' && pick !== 'every-other';

const isAlike = (a: WorkStep, b: WorkStep | undefined): boolean =>
  a.stitch.stem === b?.stitch.stem &&
  a.stitch.shape === b.stitch.shape &&
  (a.n?.values ?? [1]).join() === (b.n?.values ?? [1]).join();
