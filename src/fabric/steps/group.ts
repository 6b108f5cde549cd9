/** Several stitches in one place: "(2 dc, ch 2, 2 dc) in next sp". */
import type { GroupStep, Place, Step } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { type Hands, numberFor, spanAt, type Target } from '../hands.ts';
import { hasNext, hasOthers, limitOf, ofEach } from '../limit.ts';
import { workStandingFirst } from '../next.ts';
import { gapsOf, nounOf } from '../noun.ts';
import { takePlace } from '../place.ts';
import { ask } from '../readings.ts';
import { workFromHookGroup } from './group-from-hook.ts';

export function doGroup(hands: Hands, step: GroupStep, row: RowContext, here: Here): void {
  if (step.loose && !readsAsGroup(hands, step)) return row.walk(hands, alongSteps(step), row);
  const place = ofEach(step.place);
  if (place.fromHook && hands.edge.kind === 'foundation') {
    return workFromHookGroup(hands, step, (target) => workIn(hands, step, target, { row, here }));
  }
  const until = place.until;
  if (place.pick === 'each' || until) {
    const limit = hands.limit;
    hands.limit = limitOf(hands, until);
    const gaps = gapsOf(hands, place, step);
    const next: Place = { ...place, pick: 'next', until: null, n: null };
    workStandingFirst(hands);
    // "(Sc, 2 dc) in each sc" over such groups: in those that are so called.
    hands.namedOnly = stitchesIn(hands, step) > 2 && hasOthers(hands, place);
    for (let before = -1; hasNext(hands, next, gaps) && hands.pos > before; ) {
      before = hands.pos;
      workIn(hands, step, takePlace(hands, next, step), { row, here });
    }
    if (hands.namedOnly) hands.pos = Math.max(hands.pos, hands.limit);
    hands.namedOnly = false;
    hands.limit = Math.max(hands.limit, limit);
    return;
  }
  const n = place.pick === 'next' ? (numberFor(hands, place.n) ?? 1) : 1;
  const parted = n > 1 && n === step.steps.length && isParted(hands, step);
  for (let i = 0; i < n; i++) {
    const own = parted ? { ...step, steps: step.steps.slice(i, i + 1) } : step;
    workIn(hands, own, takePlace(hands, { ...place, n: null }, step), { row, here });
  }
}

/** "(One sc, two sc) in next two sc (24)": all of the list in each of the places, or one member in each. */
const isParted = (hands: Hands, step: GroupStep): boolean =>
  ask(hands.readings, {
    doubt: 'list in n places',
    custom: 'all in each',
    alternatives: ['one in each'],
    local: true,
    ...spanAt(hands, step),
  }) === 'one in each';

/** Stitches that the group names, chains aside. */
const stitchesIn = (hands: Hands, { steps }: GroupStep): number =>
  steps.reduce((sum, one) => sum + (one.kind === 'work' ? (numberFor(hands, one.n) ?? 1) : 0), 0);

/** Without brackets the words before "in" may also be a walk along the row. */
function readsAsGroup(hands: Hands, step: GroupStep): boolean {
  const reading = ask(hands.readings, {
    doubt: 'group without brackets',
    custom: 'one place',
    alternatives: ['along the row'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'one place';
}

/** The same words as a walk: only the last stitch has the place. */
function alongSteps(step: GroupStep): Step[] {
  const steps = [...step.steps];
  const last = steps.findLastIndex((inner) => inner.kind === 'work');
  const work = steps[last];
  if (work?.kind === 'work' && !work.place) steps[last] = { ...work, place: step.place };
  return steps;
}

export function workIn(
  hands: Hands,
  step: GroupStep,
  target: Target,
  at: { row: RowContext; here: Here },
): void {
  const { row, here } = at;
  const outer = hands.into;
  hands.into = outer ?? target;
  row.walk(hands, step.steps, row, { from: 0, top: false });
  hands.into = outer;
  hands.last = target;
  const noun = nounOf(step.place);
  if (noun.kind === 'group' && here.top) {
    hands.groups.set(noun.word, (hands.groups.get(noun.word) ?? 0) + 1);
  }
}
