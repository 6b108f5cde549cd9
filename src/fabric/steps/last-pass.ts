/**
 * A last pass of a repeat that does not go through: in a round of lace its chains are made and its
 * last stitch is the join; elsewhere a stated count may show that it stops half-way.
 */
import type { NounKind, RepeatStep, Step, WorkStep } from '../../notation/index.ts';
import type { Here, RowContext } from '../context.ts';
import { type Hands, numberFor, remaining, remainingSpaces, spanAt } from '../hands.ts';
import { type Mark, mark, restore } from '../mark.ts';
import { picotAhead } from '../next.ts';
import { ask } from '../readings.ts';
import { allSteps, isSlip } from '../shape.ts';
import { noGroupAhead } from '../take.ts';

const SHORT = 'as far as it goes';

const WORKS: ReadonlySet<string> = new Set([
  'work',
  'group',
  'repeat',
  'chain',
  'skip',
  'boxes',
  'chart',
  'even',
]);

const namesTheLast = (step: Step): boolean =>
  (step.kind === 'work' || step.kind === 'group') && step.place?.pick === 'last';

/**
 * "*… dc3tog; rep from * to end, working dc2tog in last 2 sts": what is told of the last places may
 * stand for the end of the last pass. Only the row's end shows it.
 */
function endsOtherwise(hands: Hands, step: RepeatStep, row: RowContext): boolean {
  const last = step.steps.findLastIndex((inner) => WORKS.has(inner.kind));
  if (last < 1) return false;
  const reading = ask(hands.readings, {
    doubt: 'last pass',
    custom: 'whole',
    alternatives: [SHORT],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === SHORT && tryOut(hands, () => row.walk(hands, step.steps.slice(0, last), row));
}

/** Works such a pass as far as it goes; false, and nothing done, where none is meant. */
export function cutShort(
  hands: Hands,
  step: RepeatStep,
  row: RowContext,
  at: { readonly here: Here; readonly madeBefore: boolean; readonly rounds: boolean },
): boolean {
  const { here, madeBefore, rounds } = at;
  // No words ask for a repeat: it is a reading already, and is not bent twice.
  if (step.order.from === step.order.to && step.times.kind === 'until') return false;
  if (!here.top || step.ending || hands.into) return false;
  const next = here.steps.slice(here.i + 1).find(({ kind }) => WORKS.has(kind));
  if (hands.edge.kind !== 'row' && !(next && hands.edge.kind === 'foundation')) return false;
  if (next) {
    if (worksAlike(step)) return stopsInPass(hands, step, row, rounds);
    return namesTheLast(next) && endsOtherwise(hands, step, row);
  }
  return (
    (madeBefore &&
      (closesRound(hands, step, row) ||
        meetsOpening(hands, step, row, here) ||
        endsAtOpening(hands, step, row))) ||
    stopsInPass(hands, step, row, rounds)
  );
}

/**
 * "*(Sc, ch 2, sc) in next dc, sk 2 dc; rep from * to last 4 dc, sk 2 dc, …": the skip behind the repeat is
 * that of its last pass, which fills just what is left.
 */
export function leavesSkip(hands: Hands, step: RepeatStep, row: RowContext, here: Here): boolean {
  const next = here.steps.slice(here.i + 1).find(({ kind }) => WORKS.has(kind));
  const last = step.steps.findLastIndex((inner) => WORKS.has(inner.kind));
  const own = step.steps[last];
  if (last < 1 || own?.kind !== 'skip' || next?.kind !== 'skip') return false;
  if (numberFor(hands, own.place.n) !== numberFor(hands, next.place.n)) return false;
  const start = mark(hands);
  if (!tryOut(hands, () => row.walk(hands, step.steps.slice(0, last), row))) return false;
  if (remaining(hands) === 0) return true;
  restore(hands, start);
  return false;
}

/**
 * "Sc in first sp, *ch 5, sc in next sp; rep from * around, join": the round is closed by a last ch 5,
 * and the join stands for the stitch after it.
 */
function closesRound(hands: Hands, step: RepeatStep, row: RowContext): boolean {
  // A round that begins with slip stitches into a loop is closed, whether or not it says "join".
  const closes = row.shape.join !== null || slipsIntoLoop(hands, row);
  if (!hands.edge.ring || !closes) return false;
  const { before, closing } = unclosed(hands, step.steps);
  const chain = before
    .flatMap((inner) => (inner.kind === 'repeat' ? inner.steps : inner))
    .findLast((inner) => inner.kind === 'chain');
  if (!chain || (closing?.kind !== 'work' && closing?.kind !== 'group')) return false;
  // Small gaps are as often left out: there the words are taken as they stand.
  const loops = (numberFor(hands, chain.n) ?? 1) >= 3 || before.length > 1;
  const reading = ask(hands.readings, {
    doubt: 'closing chain',
    custom: loops ? 'made' : 'not made',
    alternatives: [loops ? 'not made' : 'made'],
    local: true,
    ...spanAt(hands, step),
  });
  return reading === 'made' && tryOut(hands, () => row.walk(hands, before, row));
}

/**
 * "Ch 4, 6 tr in ring, *ch 5, (tr in next tr, ch 1) 6 times, tr in next tr; rep from * around, join": what the
 * round began with is the rest of the last pass; it is worked up to there where nothing else is left.
 */
function endsAtOpening(hands: Hands, step: RepeatStep, row: RowContext): boolean {
  const begun = row.shape.firstWork?.stitch.stem;
  if (!hands.edge.ring || row.shape.join === null || !begun) return false;
  const works = step.steps.filter(({ kind }) => WORKS.has(kind));
  for (let stop = works.length - 1; stop > 0; stop--) {
    const rest = works.slice(stop);
    if (stemOf(rest) !== begun || sizeOf(hands, rest) < FEWEST_LEFT) continue;
    const gap = works.slice(0, stop);
    const chain = gap.length === 1 && gap[0]?.kind === 'chain' ? gap[0] : null;
    // Small gaps are as often left out: there the words are taken as they stand.
    if (chain && (numberFor(hands, chain.n) ?? 1) < 3) continue;
    const start = mark(hands);
    if (!tryOut(hands, () => row.walk(hands, gap, row))) continue;
    if (allTaken(hands, step) && isMade(hands, step)) return true;
    restore(hands, start);
  }
  return false;
}

const isMade = (hands: Hands, step: RepeatStep): boolean =>
  ask(hands.readings, {
    doubt: 'closing chain',
    custom: 'made',
    alternatives: ['not made'],
    local: true,
    ...spanAt(hands, step),
  }) === 'made';

/** One stitch, or an increase, at the join is told of otherwise. */
const FEWEST_LEFT = 3;

/** Stitches that they work, and one for chains between them. */
function sizeOf(hands: Hands, steps: readonly Step[]): number {
  let n = 0;
  let chains = 0;
  for (const one of allSteps(steps)) {
    if (one.kind === 'chain') chains = 1;
    else if (one.kind === 'work')
      n += one.stitch.special ? FEWEST_LEFT : (numberFor(hands, one.n) ?? 1);
    else if (one.kind === 'repeat') n++;
  }
  return n + chains;
}

/** Of the first stitch that they work. */
function stemOf(steps: readonly Step[]): string | null {
  for (const one of allSteps(steps)) if (one.kind === 'work') return one.stitch.stem;
  return null;
}

const slipsIntoLoop = ({ first }: Hands, { shape }: RowContext): boolean => {
  const opens = shape.steps.find(({ kind }) => kind !== 'remark');
  return first?.space === true && first.entry === 0 && opens !== undefined && isSlip(opens);
};

/**
 * "Sc in same st, ch 9, sc in next dc, *5 sc in next sp, sc in next dc, ch 9, sc in next dc; rep from *
 * around": the last pass comes to what the round began with, and that is its end.
 */
function meetsOpening(hands: Hands, step: RepeatStep, row: RowContext, here: Here): boolean {
  if (!hands.edge.ring) return false;
  const opening = here.steps
    .slice(0, here.i)
    .filter((one) => WORKS.has(one.kind) && !opensRow(one));
  const n = opening.length;
  // "Sc in same st, *9 dc in next sp, sk 1 sc, sc in next sc; rep from *": the one stitch at the join.
  const alone = n === 1 && opening[0]?.kind === 'work' && worksSpaces(step);
  if (!alone && (n < 2 || !opening.some(({ kind }) => kind === 'chain'))) return false;
  const works = step.steps.filter(({ kind }) => WORKS.has(kind));
  const tail = works.slice(-n);
  if (tail.length < n || !tail.every((one, i) => isAlike(hands, one, opening[i]))) return false;
  const start = mark(hands);
  if (!tryOut(hands, () => row.walk(hands, works.slice(0, -n), row))) return false;
  if (!alone || remaining(hands) === 0) return true;
  restore(hands, start);
  return false;
}

const opensRow = (step: Step): boolean =>
  step.kind === 'chain'
    ? step.n?.values[0] === 1
    : step.kind === 'work' && step.stitch.stem === 'ss';

function isAlike(hands: Hands, one: Step, other: Step | undefined): boolean {
  const count = (step: Step): number => ('n' in step && numberFor(hands, step.n)) || 1;
  if (one.kind !== other?.kind || count(one) !== count(other)) return false;
  return (
    one.kind === 'chain' ||
    (one.kind === 'work' &&
      other.kind === 'work' &&
      one.stitch.stem === other.stitch.stem &&
      one.stitch.shape === other.stitch.shape)
  );
}

/**
 * "*Ch 3, sc in next sp, ch 3, shell in next sp; rep from * around, ending with ch 3": the last pass stops
 * at such a chain, and where what it takes until then is all that is left, no other is meant. So it is with
 * what that chain spans: "*ch 7, sk 2, sc in next, ch 5, sk 1, sc in next", with one stitch left before the join.
 */
export function stopsAtEnding(hands: Hands, step: RepeatStep, row: RowContext): boolean {
  const { ending, steps } = step;
  if (ending?.kind !== 'with' || !hands.edge.ring || hands.edge.open || hands.into) return false;
  const end = ending.steps.filter(({ kind }) => WORKS.has(kind));
  const pass = steps.filter(({ kind }) => WORKS.has(kind));
  if (end.length === 0) return false;
  const gap = pass.slice(0, -1);
  const tail = gap.slice(-end.length);
  // "*Ch 4, picot, ch 4, sc in next lp; rep from * around, ending with ch 4": the gap as the others are.
  if (
    gap.length > end.length &&
    gap.every(takesNone) &&
    end.every((one, i) => isAlike(hands, one, tail[i]))
  ) {
    if (!allTaken(hands, step)) return false;
    row.walk(hands, gap, row);
    return true;
  }
  if (allTaken(hands, step)) return false;
  for (let stop = pass.length - 1; stop > end.length; stop--) {
    const from = stop - end.length;
    if (!end.every((one, i) => isAlike(hands, one, pass[from + i]))) continue;
    const start = mark(hands);
    const spanned = pass.slice(stop, stop + 1).filter(({ kind }) => kind === 'skip');
    const short = [...pass.slice(0, from), ...end, ...spanned];
    if (!tryOut(hands, () => row.walk(hands, short, row))) continue;
    if (allTaken(hands, step)) return true;
    restore(hands, start);
  }
  return endsInFirst(hands, step, row, { pass, end });
}

/** A chain, or a picot that stands on it. */
const takesNone = (step: Step): boolean =>
  step.kind === 'chain' ||
  (step.kind === 'work' && step.stitch.shape === 'picot' && !step.place && !step.until);

/**
 * "Shell in first sp, *ch 4, sc in next lp, ch 4, in next sp make shell, ch 1 and shell; rep from * around,
 * ending with shell, ch 1": what the last pass begins in a place is made in the space where the round began.
 */
function endsInFirst(
  hands: Hands,
  step: RepeatStep,
  row: RowContext,
  { pass, end }: { readonly pass: readonly Step[]; readonly end: readonly Step[] },
): boolean {
  const group = pass.at(-1);
  if (group?.kind !== 'group' || !hands.first?.space) return false;
  const whole = group.steps.filter(({ kind }) => WORKS.has(kind));
  if (end.length >= whole.length || !end.every((one, i) => isAlike(hands, one, whole[i])))
    return false;
  const start = mark(hands);
  const short = (): void => {
    row.walk(hands, pass.slice(0, -1), row);
    hands.into = hands.first;
    row.walk(hands, end, row);
    hands.into = null;
  };
  // A loop before the shell is passed, as in the passes before.
  if (tryOut(hands, short) && (allTaken(hands, step) || remainingSpaces(hands) <= 1)) return true;
  restore(hands, start);
  return false;
}

/**
 * "*Sc in next sc, ch 2, dc in next dc, ch 2; rep from * across, ending with dc in 3rd ch of ch-5": where the
 * last stitch of the last pass is the one told, and it and what stands before it fill the row.
 * `marks`: before and after the last passes, newest first; the hands are where the first has them if
 * that is not so.
 */
export function endsInPass(
  hands: Hands,
  step: RepeatStep,
  row: RowContext,
  marks: readonly Mark[],
): boolean {
  const { ending } = step;
  if (ending?.kind !== 'with' || hands.edge.kind !== 'row' || hands.into) return false;
  const end = ending.steps.filter(({ kind }) => WORKS.has(kind));
  const pass = step.steps.filter(({ kind }) => WORKS.has(kind));
  const [first] = end;
  if (!first || !inLastPlace(end.at(-1))) return false;
  const from = pass.findLastIndex((one) => isAlike(hands, first, one));
  const rest = pass.slice(from + end.length);
  if (from < 1 || rest.length === 0) return false;
  if (!end.every((one, i) => isAlike(hands, one, pass[from + i]))) return false;
  if (!rest.every(({ kind }) => kind === 'chain' || kind === 'skip')) return false;
  for (const at of marks) {
    restore(hands, at);
    const left = remaining(hands);
    const { used } = hands;
    const steps = [...pass.slice(0, from), ...end];
    const fits = left > 1 && tryOut(hands, () => row.walk(hands, steps, row));
    if (fits && remaining(hands) === 0 && hands.used - used === left) return true;
  }
  if (marks[0]) restore(hands, marks[0]);
  return false;
}

/** "in last st", "in 3rd ch of turning ch": where a row ends. */
function inLastPlace(step: Step | undefined): boolean {
  if (step?.kind !== 'work' || !step.place) return false;
  const { pick, of, nouns } = step.place;
  return pick === 'last' || (of?.nouns ?? nouns)[0]?.kind === 'start-chain';
}

/** A pass without its last stitch, which may stand at the end of "(ch 5, sc in next lp) twice". */
function unclosed(
  hands: Hands,
  steps: readonly Step[],
): { readonly before: readonly Step[]; readonly closing: Step | undefined } {
  const last = steps.findLastIndex((inner) => WORKS.has(inner.kind));
  const before = steps.slice(0, Math.max(0, last));
  const closing = steps[last];
  const times = closing?.kind === 'repeat' && !closing.ending ? closing.times : null;
  if (closing?.kind !== 'repeat' || times?.kind !== 'times' || times.more !== false)
    return { before, closing };
  const n = numberFor(hands, times.n) ?? 1;
  const once = unclosed(hands, closing.steps);
  const whole = Array.from({ length: Math.max(0, n - 1) }, () => closing.steps).flat();
  return { before: [...before, ...whole, ...once.before], closing: once.closing };
}

/**
 * Asked only where a count is stated, for only that can show it; or where what stands before the
 * repeat and what is left behind it are a pass together: "2 sc in same st, *sc in next st, 2 sc in
 * next st; rep from * around" goes round evenly when it stops half-way.
 */
function stopsInPass(hands: Hands, step: RepeatStep, row: RowContext, rounds: boolean): boolean {
  const silent = hands.statedStitches < 0 && !rounds && !worksAlike(step);
  if (silent || placesLeft(hands, step) === 0) return false;
  // Increases and decreases go evenly into a row: a number that leaves a rest is a slip.
  const shapes = step.steps.some(isShaping) && step.steps.every(({ kind }) => kind === 'work');
  if (shapes && !rounds) return false;
  const alike = worksAlike(step);
  const custom = rounds || alike ? SHORT : 'whole';
  const reading = ask(hands.readings, {
    doubt: 'last pass',
    custom,
    alternatives: [rounds || alike ? 'whole' : SHORT],
    local: !rounds,
    ...spanAt(hands, step),
  });
  if (reading === 'whole') return false;
  let some = false;
  for (const inner of step.steps.flatMap((one) => unfolded(hands, one))) {
    if (placesLeft(hands, step) === 0) break;
    if (!tryOut(hands, () => row.walk(hands, [inner], row))) {
      const rest = shapes ? null : restOf(hands, inner);
      return rest ? tryOut(hands, () => row.walk(hands, [rest], row)) : some;
    }
    some = true;
  }
  return some;
}

/**
 * "*Dc in blo of next 3 dc, dc in flo of next 3 dc; repeat": one stitch in each, and only the way it is
 * made changes. Where such a row ends in the midst of a pass, no number hangs on it.
 */
function worksAlike(step: RepeatStep): boolean {
  const steps = step.steps.filter(({ kind }) => kind !== 'mark' && kind !== 'remark');
  const [first] = steps;
  if (first?.kind !== 'work' || steps.length < 2) return false;
  let differs = false;
  for (const one of steps) {
    if (one.kind !== 'work' || one.n || one.until || one.place?.pick !== 'next') return false;
    if (one.stitch.shape !== 'one' || one.stitch.stem !== first.stitch.stem) return false;
    differs ||= one.place.loop !== first.place?.loop || one.stitch.post !== first.stitch.post;
  }
  return differs;
}

/** "(Sc in next sc) twice": sc in next sc, sc in next sc. */
function unfolded(hands: Hands, step: Step): readonly Step[] {
  const times = step.kind === 'repeat' && !step.ending ? step.times : null;
  if (step.kind !== 'repeat' || times?.kind !== 'times' || times.more !== false) return [step];
  const n = Math.min(numberFor(hands, times.n) ?? 1, MOST_UNFOLDED);
  return Array.from({ length: n }, () => step.steps).flat();
}

/** Passes of a bracket within a pass: more than these are no end of one. */
const MOST_UNFOLDED = 24;

/** Nothing is left; where spaces are worked, stitches beside the last one are passed. */
const allTaken = (hands: Hands, step: RepeatStep): boolean =>
  worksSpaces(step)
    ? remainingSpaces(hands) === 0 && remaining(hands) <= Math.max(hands.passed, 1)
    : remaining(hands) === 0 ||
      (worksPicots(step) && picotAhead(hands) < 0 && remaining(hands) <= hands.passed) ||
      // The first half of the shell in which the round began lies at its end.
      (remaining(hands) <= hands.passed && noGroupAhead(hands));

/** Stitches that are left, and the spaces where the pass works into them. */
const placesLeft = (hands: Hands, step: RepeatStep): number =>
  remaining(hands) + (worksSpaces(step) ? remainingSpaces(hands) : 0);

const worksSpaces = (step: RepeatStep): boolean => worksInto(step, 'space');
const worksPicots = (step: RepeatStep): boolean => worksInto(step, 'picot');

const worksInto = ({ steps }: RepeatStep, wanted: NounKind): boolean =>
  steps.some(
    (step) =>
      (step.kind === 'work' || step.kind === 'group') &&
      step.place?.nouns.some(({ kind }) => kind === wanted),
  );

const isShaping = (step: Step): boolean =>
  step.kind === 'work' &&
  (step.stitch.shape === 'increase' ||
    step.stitch.shape === 'together' ||
    (step.place?.n === null && (step.n?.values[0] ?? 1) > 1));

/** "Sc in next 4 sts" over the two that are left. */
function restOf(hands: Hands, step: Step): WorkStep | null {
  if (step.kind !== 'work' || step.stitch.shape !== 'one') return null;
  const n = { from: step.from, to: step.to, values: [remaining(hands)] };
  if (step.place === null) return { ...step, n };
  return step.place.pick === 'next' && step.place.n
    ? { ...step, place: { ...step.place, n } }
    : null;
}

/** Works on trial: taken back where a place is lacking. */
function tryOut(hands: Hands, work: () => void): boolean {
  const start = mark(hands);
  const { missing } = hands;
  const facts = hands.facts.length;
  work();
  const lacks = hands.facts.slice(facts).some((what) => what.kind === 'no-place');
  if (hands.missing === missing && !lacks) return true;
  restore(hands, start);
  return false;
}
