/**
 * "2 sc, 1 sc (18)" on a round of 12: toys are often told so, one pass of a list that goes round though
 * nothing says so; and "sc in back loops only" is a whole row. A stated count shows it; one stitch told
 * alone is also seen by what it would leave.
 */
import type { RepeatStep, Step, WorkStep } from '../../notation/index.ts';
import type { Here } from '../context.ts';
import { type Hands, numberFor, remaining, spanAt } from '../hands.ts';
import { ask } from '../readings.ts';

/** The row with its list made a repeat, or `null` where it is worked once, as it stands. */
export function listAround(
  hands: Hands,
  steps: readonly Step[],
  here: Here,
): readonly Step[] | null {
  const along = hands.edge.kind === 'foundation' && !hands.edge.ring;
  if (!here.top || !(hands.edge.kind === 'row' || along)) return null;
  if (!isItem(steps[here.i]) || steps.slice(0, here.i).some(isItem)) return null;
  const behind = steps.findLastIndex(isItem) + 1;
  const around = itemAround(steps[behind]);
  if (around) return listWithAround(hands, steps, [here.i, behind], around);
  const list = steps.slice(here.i, behind);
  if (!list.every((step): step is WorkStep => isItem(step) || step.kind === 'remark')) return null;
  if (steps.some(({ kind }) => OTHER.has(kind))) return null;
  const [first] = list;
  if (!first) return null;
  // "Sc in next st. (18)" lacks its "around": that is to be told, not to be read into it.
  if (list.length === 1 && first.place !== null) return null;
  const alone = list.length === 1 && isAlone(first);
  // "Row 1: dc" along the chain; several told there are a list that a first row has no passes of.
  if (along && !alone) return null;
  if (!alone && (hands.statedStitches < 0 || !hands.edge.ring)) return null;
  // "2 sc, dec x 3, 3 sc (9)" on twelve: a pass that stops half-way would hide a number that slipped.
  const fits = (bare: number): boolean => {
    const uses = usedBy(hands, list, bare);
    return uses > 0 && remaining(hands) % uses === 0;
  };
  // "2 sc" in such a list may be two in one place.
  const divides = alone || fits(2) || fits(1);
  const others = list.every(shapes) ? ['the others plain'] : [];
  const alternatives = divides ? ['repeated around', ...others] : others;
  if (alternatives.length === 0) return null;
  const reading = ask(hands.readings, {
    doubt: 'list',
    custom: 'once',
    alternatives,
    local: true,
    ...spanAt(hands, first),
  });
  if (reading === 'once') return null;
  if (reading === 'the others plain') {
    const once = {
      kind: 'times',
      n: { values: [1], from: first.to, to: first.to },
      more: false,
      from: first.to,
      to: first.to,
    } as const;
    const told = { ...repeatOf(list, first), times: once };
    return [...steps.slice(0, here.i), told, plainAround(first), ...steps.slice(behind)];
  }
  return [...steps.slice(0, here.i), repeatOf(list, first), ...steps.slice(behind)];
}

/** "inc around", "sc 2 around": the step as one of its list, without the words that go round; `null`: none of the kind. */
function itemAround(step: Step | undefined): WorkStep | null {
  if (step?.kind !== 'work') return null;
  const until = step.until ?? step.place?.until;
  if (until?.kind !== 'end') return null;
  const place = step.place ? { ...step.place, until: null } : null;
  const item = { ...step, until: null, place };
  return isItem(item) ? item : null;
}

/**
 * "Sc 2, inc around": all of it goes round, though no bracket says so; nobody increases in all the
 * stitches behind the first two. "Inc, sc around" is as likely to mean one increase: the count tells.
 */
function listWithAround(
  hands: Hands,
  steps: readonly Step[],
  [from, to]: readonly [number, number],
  around: WorkStep,
): readonly Step[] | null {
  const list = [...steps.slice(from, to), around];
  const [first] = list;
  if (first?.kind !== 'work' || !list.every((step) => isItem(step) || step.kind === 'remark'))
    return null;
  if (steps.some(({ kind }) => OTHER.has(kind))) return null;
  const sure = shapes(around) && (around.n === null || around.n.values[0] === 1);
  if (!sure && (hands.statedStitches < 0 || !hands.edge.ring || !list.some(shapes))) return null;
  const [custom, other] = sure ? ['repeated around', 'once'] : ['once', 'repeated around'];
  const reading = ask(hands.readings, {
    doubt: 'list before "around"',
    custom: custom ?? '',
    alternatives: [other ?? ''],
    local: true,
    ...spanAt(hands, first),
  });
  if (reading === 'once') return null;
  return [...steps.slice(0, from), repeatOf(list as WorkStep[], first), ...steps.slice(to + 1)];
}

/** Places that one pass of the list takes, where a bare "2 sc" takes `bare`. */
function usedBy(hands: Hands, list: readonly WorkStep[], bare: number): number {
  return list.reduce((sum, step) => {
    if (step.kind !== 'work') return sum;
    const { n, place, stitch } = step;
    const said = numberFor(hands, place ? place.n : n) ?? 1;
    const many = said === 2 && !place && stitch.shape === 'one' ? bare : said;
    return sum + many * (stitch.shape === 'together' ? (stitch.legs ?? 2) : 1);
  }, 0);
}

const OTHER: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'repeat',
  'group',
  'skip',
  'even',
  'boxes',
  'chart',
  'unread',
]);

/** A stitch told with its number alone, or in the next of the places. */
const isItem = (step: Step | undefined): boolean =>
  step?.kind === 'work' && isNext(step) && step.until === null && !step.stitch.foundation;

/** "1 dc in the first st, 2 dc in the next": as good as no place. */
const isNext = ({ place, stitch, alsoIn }: WorkStep): boolean =>
  place === null ||
  ((place.pick === 'next' || place.pick === 'first') &&
    place.nouns.every(({ kind, skipped }) => (kind === 'stitch' || kind === 'stem') && !skipped) &&
    place.of === null &&
    place.until === null &&
    place.rowsBelow === 0 &&
    place.row === null &&
    alsoIn.length === 0 &&
    stitch.stem !== 'ss');

/** "make 2 dec (54)": where they go is left open. */
const shapes = (step: Step): boolean =>
  step.kind === 'remark' ||
  (step.kind === 'work' && (step.stitch.shape === 'increase' || step.stitch.shape === 'together'));

function plainAround(step: WorkStep): WorkStep {
  const { to } = step;
  const stitch = {
    ...step.stitch,
    shape: 'one',
    stem: step.stitch.stem ?? 'sc',
    legs: null,
  } as const;
  const until = { kind: 'end', word: 'around', from: to, to } as const;
  return { ...step, n: null, numberAfter: false, stitch, place: null, until, from: to };
}

const isAlone = (step: WorkStep): boolean =>
  step.n === null && step.place === null && step.stitch.shape === 'one';

function repeatOf(steps: readonly Step[], { from, to }: WorkStep): RepeatStep {
  const until = { kind: 'end', word: 'around', from: to, to } as const;
  return {
    kind: 'repeat',
    mark: '',
    steps,
    times: { kind: 'until', until, from: to, to },
    ending: null,
    again: false,
    order: { from: to, to },
    from,
    to,
  };
}
