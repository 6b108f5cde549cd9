/** What can be told of a row before it is worked: how it starts, turns, joins and ends. */
import type {
  ChainStep,
  Instruction,
  JoinStep,
  Place,
  SpecialStitch,
  StandingOrder,
  Step,
  WorkStep,
} from '../notation/index.ts';

export interface RowShape {
  /** The row's steps. */
  readonly steps: readonly Step[];
  /** "turn" before anything is made. */
  readonly turnsAtStart: boolean;
  /** The last word on turning in or after the work: true turn, false "do not turn", null silent. */
  readonly turnsAtEnd: boolean | null;
  /** The join that closes the round. */
  readonly join: JoinStep | null;
  readonly spiral: boolean;
  readonly fastensOff: boolean;
  /** First stitch worked, not a slip stitch. */
  readonly firstWork: WorkStep | null;
  /** Words for increase are used, so that a bare number counts along (survey 6.2). */
  readonly namesIncreases: boolean;
  /** Everything worked is a slip stitch: an edging, whose slip stitches are counted. */
  readonly onlySlips: boolean;
  /** "around" or "in ring" occurs. */
  readonly goesRound: boolean;
  /** "Working behind petals". */
  readonly behind: Step | null;
  /** Works nothing at all: a foundation, a fastening off, a remark. */
  readonly idle: boolean;
  readonly usesRing: boolean;
  /** Lengths of the chains that the row makes. */
  readonly chainLengths: ReadonlySet<number>;
  /** A chain of its own opens the row. */
  readonly chainsAtStart: boolean;
  /**
   * "Ch 3, 3 dc in first st, (sc, ch 3, 3 dc) in each sp": the row opens as its groups go on, with a
   * chain of this length that is a space as theirs are; `null`: it does not.
   */
  readonly opensAsGroup: number | null;
  /** The first stitch is skipped before anything is worked. */
  readonly skipsFirst: boolean;
  /** "Ch 3, shell in same sp, *ch 2, shell in next shell": the chain leads up to a whole stitch of the designer's own. */
  readonly opensWithOwn: boolean;
  /** A plain stitch stands right beside the chain that opens the row, and nobody's own stitches are worked. */
  readonly besideChain: boolean;
  /** Its words name loops, and neither picots nor how many chains a loop has: those with a picot are one. */
  readonly throughPicots: boolean;
  /** It goes along sides of the piece, of which the words may leave open how many stitches they take. */
  readonly mayLeaveSides: boolean;
  /** The chain that opens the row is a leg of its first cluster: the others have one leg more. */
  readonly chainIsLeg: boolean;
}

export function* allSteps(steps: readonly Step[]): Generator<Step> {
  for (const step of steps) {
    yield step;
    if (step.kind === 'group' || step.kind === 'repeat') yield* allSteps(step.steps);
    if (step.kind === 'repeat' && step.ending && 'steps' in step.ending) {
      yield* allSteps(step.ending.steps);
    }
  }
}

export const isSlip = (step: Step): boolean => step.kind === 'work' && step.stitch.stem === 'ss';

const isIdle = (step: Step): boolean =>
  ['remark', 'piece', 'yarn', 'turn', 'mark', 'spiral', 'fasten-off', 'loop'].includes(step.kind);

const isWorky = (step: Step): boolean =>
  ['work', 'group', 'repeat', 'boxes', 'chart', 'even', 'rows-again'].includes(step.kind) ||
  (step.kind === 'not-worked' && step.work !== null);

/** The stem of the first stitch that a special stitch is made of, as written. */
export function firstStemOf(special: SpecialStitch | undefined): string | null {
  for (const step of special ? allSteps(special.steps) : []) {
    if (step.kind === 'work') return step.stitch.stem;
  }
  return null;
}

const shapes = new WeakMap<Instruction, RowShape>();

/** The shape of a row; worked out once an instruction. */
export function shapeOf(instruction: Instruction): RowShape {
  const known = shapes.get(instruction);
  if (known) return known;
  const shape = readShape(instruction.steps);
  shapes.set(instruction, shape);
  return shape;
}

/** The first thing made is a chain, alone or inside a first group: "(ch 3, 2 dc) in same sp". */
function startsWithChain(steps: readonly Step[]): boolean {
  const first = steps.find((step) => !isIdle(step) && !isSlip(step) && step.kind !== 'join');
  if (first?.kind === 'group') return first.steps[0]?.kind === 'chain';
  return first?.kind === 'chain';
}

const isNext = (place: Place | null): boolean =>
  !place || place.pick === 'next' || place.pick === 'each';

function readShape(steps: readonly Step[]): RowShape {
  const all = [...allSteps(steps)];
  const works = all.filter((step): step is WorkStep => step.kind === 'work');
  const firstWorky = steps.findIndex(isWorky);
  const before = firstWorky < 0 ? steps : steps.slice(0, firstWorky);
  const after = firstWorky < 0 ? [] : steps.slice(firstWorky + 1);
  const turn = after.findLast((step) => step.kind === 'turn');
  const joins = after.filter((step) => step.kind === 'join' && step.yarn === null);
  const places = all.flatMap((step) =>
    step.kind === 'work' ? [step.place, ...step.alsoIn] : step.kind === 'group' ? [step.place] : [],
  );
  const nouns = places.flatMap((place) => (place ? [...place.nouns] : []));
  return {
    steps,
    turnsAtStart: before.some((step) => step.kind === 'turn' && !step.not),
    turnsAtEnd: turn?.kind === 'turn' ? !turn.not : null,
    join: (joins.at(-1) as JoinStep | undefined) ?? null,
    spiral: all.some((step) => step.kind === 'spiral'),
    fastensOff: all.some((step) => step.kind === 'fasten-off' && !step.not),
    firstWork: works.find((work) => work.stitch.stem !== 'ss') ?? null,
    namesIncreases: works.some(
      (work) =>
        work.stitch.shape === 'increase' ||
        ((work.n?.values[0] ?? 1) !== 1 && work.place !== null && isNext(work.place)),
    ),
    onlySlips: works.length > 0 && works.every((work) => work.stitch.stem === 'ss'),
    goesRound: all.some((step) => saysAround(step)),
    behind: all.find((step) => step.kind === 'remark' && step.behind === true) ?? null,
    idle: !all.some(isWorky),
    usesRing:
      nouns.some((noun) => noun.kind === 'ring') || all.some((step) => step.kind === 'ring'),
    chainLengths: new Set(
      all.flatMap((step) => (step.kind === 'chain' ? (step.n?.values ?? [1]) : [])).map(Number),
    ),
    chainsAtStart: startsWithChain(steps),
    mayLeaveSides:
      works.some(({ evenly, n }) => evenly && n === null) ||
      steps.some((step) => step.kind === 'repeat' && step.times.kind === 'missing') ||
      nouns.some(({ kind }) => kind === 'corner' || kind === 'row-end') ||
      all.some((step) => step.kind === 'other-side' && step.rowEnds),
    chainIsLeg: startsCluster(all, works),
    opensAsGroup: opensAsGroup(all, works),
    throughPicots: !nouns.some(
      ({ kind, chains }) => kind === 'picot' || (kind === 'space' && chains !== null),
    ),
    opensWithOwn: opensWithOwn(steps, works),
    besideChain: opensBesideChain(steps, works),
    skipsFirst:
      before.some((step) => step.kind === 'skip' && step.place.pick === 'first' && !step.place.n) ||
      opensInSecond(works.find((work) => !isSlip(work))?.place),
  };
}

function opensWithOwn(steps: readonly Step[], works: readonly WorkStep[]): boolean {
  const chain = steps.findIndex(({ kind }) => kind === 'chain');
  const next = steps.slice(chain + 1).find((step) => !isIdle(step));
  if (chain < 0 || next?.kind !== 'work' || next.stitch.special === null) return false;
  const there =
    next.place?.pick === 'same' || (next.place === null && steps.slice(0, chain).some(isSlip));
  return there && worksAnother(works, next);
}

/** "Ch 4, dc in same st": no chain, no skip and no group lies between. */
function opensBesideChain(steps: readonly Step[], works: readonly WorkStep[]): boolean {
  const chain = steps.findIndex(({ kind }) => kind === 'chain');
  const next = steps.slice(chain + 1).find((step) => !isIdle(step));
  if (chain < 0 || next?.kind !== 'work' || next.stitch.shape !== 'one') return false;
  if (next.place?.pick !== 'same' && next.place?.pick !== 'first') return false;
  return works.every(({ stitch }) => stitch.special === null);
}

/** "Ch 2, turn, dc in 2nd st": the first one is passed. */
const opensInSecond = (place: Place | null | undefined): boolean =>
  place?.pick === 'nth' &&
  place.nth === 2 &&
  place.of === null &&
  (place.nouns[0]?.kind === 'stitch' || place.nouns[0]?.kind === 'stem');

function opensAsGroup(all: readonly Step[], works: readonly WorkStep[]): number | null {
  const chain = all.find(({ kind }) => kind === 'chain');
  const first = works.find((work) => !isSlip(work));
  if (chain?.kind !== 'chain' || !first || chain.from > first.from) return null;
  const many = first.n?.values[0] ?? 1;
  const pick = first.place?.pick;
  if (many === 1 || (pick !== 'first' && pick !== 'same') || first.stitch.shape !== 'one')
    return null;
  const goesOn = all.some(
    (step) =>
      step.kind === 'group' &&
      step.place.pick === 'each' &&
      step.steps.some(({ kind }, i) => {
        const [before, next] = [step.steps[i - 1], step.steps[i + 1]];
        return (
          kind === 'chain' &&
          sameNumber(step.steps[i], chain) &&
          before?.kind === 'work' &&
          next?.kind === 'work' &&
          next.stitch.stem === first.stitch.stem &&
          (next.n?.values[0] ?? 1) === many
        );
      }),
  );
  return goesOn ? (chain.n?.values[0] ?? null) : null;
}

const sameNumber = (a: Step | undefined, b: ChainStep): boolean =>
  a?.kind === 'chain' && a.n?.values[0] === b.n?.values[0];

/** "Ch 3, make a starting pc st in same lp": the chain is told in its name. */
const BEGINS_ONE = /^beg (?:pc|popcorn|cl|cluster|puff|bobble)\b/;

const CLUSTER = /\bcl(?:uster)?\b/;

const DRAWN_IN: ReadonlySet<string> = new Set(['together', 'cluster', 'popcorn']);

/** "Ch 3, dc2tog in same sp, *ch 3, dc3tog in next sp": the chain and two legs are the first of them. */
function startsCluster(all: readonly Step[], works: readonly WorkStep[]): boolean {
  const chain = all.findIndex(({ kind }) => kind === 'chain');
  const first = all[chain + 1];
  if (chain < 0 || first?.kind !== 'work' || first !== works.find((one) => !isSlip(one)))
    return false;
  const { shape, legs, stem, special } = first.stitch;
  if (shape === 'special' && BEGINS_ONE.test(special ?? '')) return true;
  // "Ch 4, cluster in same sp, *ch 3, cluster in next sp": the chain is part of the first.
  const named = shape === 'cluster' || (shape === 'special' && CLUSTER.test(special ?? ''));
  if (named && first.place?.pick === 'same' && worksAnother(works, first)) return true;
  // "Ch 3, dc in same st (counts as cl), *cl in next st": both are legs of the first.
  if (first.countsAs?.counts && shape === 'one' && first.place?.pick === 'same')
    return works.some(isCluster);
  if (!DRAWN_IN.has(shape) || legs === null) return false;
  if (first.place?.pick === 'next') return standsInLeg(first, works);
  // "Ch 3, 2 dc in same sp keeping last loop of each on hook, …, *ch 4, cluster in same sp"
  const isFirstOf = ({ stitch }: WorkStep): boolean =>
    DRAWN_IN.has(stitch.shape)
      ? stitch.stem === stem && stitch.legs === legs + 1
      : stitch.shape === 'special' && CLUSTER.test(stitch.special ?? '');
  return works.some(isFirstOf);
}

/** "Ch 3, dc2tog over next 2 dc, *ch 5, dc3tog over next 3 dc": the chain is the leg in the first dc. */
function standsInLeg(
  { stitch: { stem, legs }, place }: WorkStep,
  works: readonly WorkStep[],
): boolean {
  const over = (n: number | null, one: Place | null): boolean =>
    n !== null && one?.pick === 'next' && one.n?.values[0] === n && !one.each;
  const isOther = (other: WorkStep): boolean =>
    DRAWN_IN.has(other.stitch.shape) &&
    other.stitch.stem === stem &&
    other.stitch.legs === (legs ?? 0) + 1 &&
    over(other.stitch.legs, other.place);
  return over(legs, place) && works.some(isOther);
}

const isCluster = ({ stitch }: WorkStep): boolean =>
  DRAWN_IN.has(stitch.shape) ||
  stitch.shape === 'cluster' ||
  (stitch.shape === 'special' && CLUSTER.test(stitch.special ?? ''));

/** Is a stitch of the same name worked in another place of the row? */
const worksAnother = (works: readonly WorkStep[], { stitch, place }: WorkStep): boolean =>
  works.some(
    (other) =>
      other.place?.pick !== 'same' &&
      other.place !== place &&
      other.stitch.shape === stitch.shape &&
      other.stitch.special === stitch.special &&
      (other.stitch.legs === stitch.legs || other.stitch.legs === null),
  );

function saysAround(step: Step): boolean {
  const around = (until: { kind: string; word?: string } | null | undefined): boolean =>
    until?.kind === 'end' && /round/.test(until.word ?? '');
  if (step.kind === 'work') {
    return around(step.until) || [step.place, ...step.alsoIn].some((p) => around(p?.until));
  }
  return step.kind === 'repeat' && step.times.kind === 'until' && around(step.times.until);
}

/**
 * What follows the slip stitch at `i`, which opens a row: a chain or "same" (the work begins where
 * it ends), "in ch-sp" with no word for next (likewise), other work (its place is taken), or
 * nothing but slip stitches (no move at all).
 */
export function moveAt(steps: readonly Step[], i: number): 'begins' | 'here' | 'taken' | null {
  for (const step of steps.slice(i + 1)) {
    if (isIdle(step) || isSlip(step)) continue;
    if (step.kind === 'chain') return 'begins';
    const first = step.kind === 'repeat' ? step.steps[0] : step;
    if (first?.kind === 'group' && first.steps[0]?.kind === 'chain') return 'begins';
    if (first?.kind !== 'work' && first?.kind !== 'group') {
      return step.kind === 'repeat' ? 'taken' : null;
    }
    if (first.place?.pick === 'same') return 'begins';
    return first.place?.pick === 'this' ? 'here' : 'taken';
  }
  return null;
}

type StartChainOrder = StandingOrder & { readonly kind: 'start-chain' };

/** What orders and notes say of a starting chain of `n`; later orders win, exact ones first. */
export function orderFor(orders: readonly StandingOrder[], n: number): StartChainOrder | null {
  let general: StartChainOrder | null = null;
  let exact: StartChainOrder | null = null;
  for (const order of orders) {
    if (order.kind !== 'start-chain') continue;
    if (order.n === n) exact = order;
    else if (order.n === null) general = order;
  }
  return exact ?? general;
}

/** Chain steps at the very end of a row, which belong to the next one: "…across. Ch 1, turn." */
export const trailing = (steps: readonly Step[], i: number): boolean => {
  const step = steps[i] as ChainStep | undefined;
  if (step?.kind !== 'chain') return false;
  const rest = steps.slice(i + 1);
  if (!rest.every(isIdle) || rest.some((s) => s.kind === 'fasten-off' && !s.not)) return false;
  const before = steps.slice(0, i).findLast((s) => s.kind !== 'remark' && s.kind !== 'mark');
  if (!before) return false;
  return before.kind === 'join' || before.kind === 'turn' || !before.kind.startsWith('skip');
};
