/** Stitches that the manuscript defines: their own steps are worked where they are used. */
import {
  type GroupStep,
  type Place,
  placeWith,
  type SpecialStitch,
  type Step,
  type WorkStep,
} from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { countedSince, fact, type Hands, numberFor, spanAt, type Target } from '../hands.ts';
import { hasNext, hasOthers, limitWithin, ofEach } from '../limit.ts';
import { workStandingFirst } from '../next.ts';
import { gapsOf, nounOf } from '../noun.ts';
import { takePlace } from '../place.ts';
import { firstStemOf, isSlip } from '../shape.ts';
import { boxOf, doBoxes, isBoxWord } from './boxes.ts';
import { countFromHook, skippedChains } from './from-hook.ts';
import { doWork } from './work.ts';

export function doSpecial(hands: Hands, written: WorkStep, row: RowContext, here: Here): void {
  const step = completes(hands, written, here) ? { ...written, place: sameAs(written) } : written;
  const key = step.stitch.special ?? '';
  if (isBoxWord(key) && !step.place) {
    const { from, to, n, until } = step;
    return doBoxes(
      hands,
      { kind: 'boxes', from, to, n: n ?? ONE, until, box: boxOf(key), edge: null },
      row,
      here,
    );
  }
  const special = hands.bench.specials.get(key);
  const usable = special && !special.opaque && special.steps.length > 0 && hands.depth < 8;
  if (!usable) return asOneStitch(hands, step, row, here);
  const [only] = special.steps;
  // "dDec: (yo, insert hook in next st, …) 3 times": one over several stitches, as the trade's own are.
  if (special.steps.length === 1 && only?.kind === 'work' && !only.place && !only.until) {
    if (only.stitch.shape === 'together' && /dec|tog/.test(key))
      return doWork(hands, { ...step, stitch: only.stitch }, row, here);
  }
  hands.depth++;
  const made = chainMade(hands, special, here);
  eachUse(hands, step, (place) => {
    const hooked = place?.fromHook && hands.edge.kind === 'foundation';
    const target = hooked ? fromHook(hands, special, place, step) : null;
    const from = hands.nodes.n;
    workDefinition(hands, made, place, { step, row, target });
    hands.groups.set(key, (hands.groups.get(key) ?? 0) + 1);
    hands.inGroups += countedSince(hands, from);
  });
  hands.depth--;
}

/** "Sl st in next sp, ch 3 and complete shell as before": where the hook stands. */
function completes({ last, into }: Hands, step: WorkStep, { steps, i, top }: Here): boolean {
  if (!top || step.place || step.until || step.n || into || !last?.space) return false;
  const before = steps.slice(0, i).filter(({ kind }) => kind !== 'remark');
  const leads = before.slice(0, -1).every((one) => one.kind === 'join' || isSlip(one));
  return before.length > 1 && before.at(-1)?.kind === 'chain' && leads;
}

const sameAs = ({ from, to }: WorkStep): Place => placeWith({ from, to }, { pick: 'same' });

/** "Ch 3 and make a starting shell in same sp": its chain is made already. */
function chainMade(hands: Hands, special: SpecialStitch, { steps, i }: Here): SpecialStitch {
  const [first] = special.steps;
  const before = steps[i - 1];
  if (first?.kind !== 'chain' || before?.kind !== 'chain') return special;
  const isSame = numberFor(hands, first.n) === numberFor(hands, before.n);
  return isSame ? { ...special, steps: special.steps.slice(1) } : special;
}

/** "V-st in 5th ch from hook": the chains passed may stand for a stitch, as before plain ones. */
function fromHook(
  hands: Hands,
  special: SpecialStitch,
  place: Place,
  step: WorkStep,
): Target | null {
  const stem = firstStemOf(special);
  skippedChains(hands, { ...step, stitch: { ...step.stitch, stem } }, place);
  return countFromHook(hands, place, step);
}

const ONE = { from: 0, to: 0, values: [1] } as const;

/** Not defined in stitches that can be followed: one stitch, as bobbles and the like are. */
function asOneStitch(hands: Hands, step: WorkStep, row: RowContext, here: Here): void {
  const key = step.stitch.special ?? '';
  if (!hands.bench.specials.has(key)) {
    fact(hands, { kind: 'undefined', word: key, ...spanAt(hands, step) });
  }
  doWork(hands, { ...step, stitch: { ...step.stitch, shape: 'one' } }, row, here);
}

function eachUse(hands: Hands, step: WorkStep, work: (place: Place | null) => void): void {
  for (const written of [step.place, ...step.alsoIn]) {
    const place = written && ofEach(written);
    const until = place?.until ?? (place ? null : step.until);
    if (until || place?.pick === 'each') {
      const limit = hands.limit;
      hands.limit = limitWithin(hands, place, until);
      const next: Place | null = place && { ...place, pick: 'next', until: null, n: null };
      const gaps = gapsOf(hands, place, step);
      hands.namedOnly = hasOthers(hands, place);
      workStandingFirst(hands);
      for (let before = -1; hasNext(hands, next, gaps) && hands.pos > before; ) {
        before = hands.pos;
        work(next);
      }
      // Those of other names behind the last one are passed too.
      if (hands.namedOnly) hands.pos = Math.max(hands.pos, hands.limit);
      hands.namedOnly = false;
      hands.limit = Math.max(hands.limit, limit);
      continue;
    }
    const n = (numberFor(hands, step.n) ?? 1) * (numberFor(hands, place?.n ?? null) ?? 1);
    for (let i = 0; i < n; i++) work(place && { ...place, n: null });
  }
}

const single = (step: Step): boolean => step.kind !== 'skip' && step.kind !== 'repeat';

/** Does the definition stay in one place, so that the place of its use is that place? */
function inOnePlace(special: SpecialStitch): boolean {
  const places = special.steps.flatMap((step) =>
    step.kind === 'work' || step.kind === 'group' ? [step.place] : [],
  );
  const moving = places.filter((place) => place && ['next', 'this', 'any'].includes(place.pick));
  return special.steps.every(single) && moving.length <= 1;
}

function workDefinition(
  hands: Hands,
  special: SpecialStitch,
  place: Place | null,
  use: { step: WorkStep; row: RowContext; target: Target | null },
): void {
  const outer = hands.into;
  const base = hands.base;
  const oneFoot = inOnePlace(special);
  const target: Target | null =
    outer ??
    use.target ??
    (oneFoot && (place || definesPlaceless(special)) ? takePlace(hands, place, use.step) : null);
  hands.into = target;
  hands.base = special.from;
  use.row.walk(hands, special.steps.map(bare), use.row, { from: 0, top: false });
  hands.base = base;
  hands.into = outer;
  if (target) hands.last = target;
}

/** "Shell: 5 dc in same st", "V-st = dc, ch 1, dc": no place of its own. */
const definesPlaceless = (special: SpecialStitch): boolean =>
  special.steps.every(
    (step) =>
      (step.kind !== 'work' && step.kind !== 'group') ||
      step.place === null ||
      step.place.pick === 'same' ||
      // "Shell over shell: shell in the ch-1 sp of shell below" tells where it goes.
      (step.place.pick === 'this' && nounOf(step.place.of ?? step.place).kind !== 'group') ||
      step.place.pick === 'next',
  );

/** A definition's group is worked where it is used. */
const bare = (step: Step): Step =>
  step.kind === 'group' ? ({ ...step, loose: false } satisfies GroupStep) : step;
