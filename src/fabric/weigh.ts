/**
 * A row does not come out: is a number in the text wrong, or were its words misread here? A designer's
 * text has few wrong numbers, each a slip of the pen, while what is misread is off by anything. So the
 * row is told as a fault only if one slip explains it: in its own words, in its stated count, or, where
 * nothing proves the row beneath, in the number of stitches there. Otherwise it is not followed, which
 * is said, and the work goes on from the stated count.
 */
import type { Instruction, Place, Step } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { isFixed } from './amounts.ts';
import { type Attempted, attemptRow, carriedName } from './attempt.ts';
import type { RowRecord } from './fabric.ts';
import { type Fact, MISFITS } from './facts.ts';
import { type Hands, numberFor, TOO_MANY } from './hands.ts';
import { mark, restore } from './mark.ts';
import { isBeside, isPlainlySaid } from './plainly-said.ts';
import { workRow } from './row.ts';
import { resized } from './row-edge.ts';
import type { Before, RowResult } from './row-setting.ts';
import { allSteps } from './shape.ts';
import { anyNumber, countSlips, isCountSlip, numberSlips, wordSlips } from './slips.ts';
import type { Task } from './task.ts';

/** What is known around the row. */
export interface Around {
  /** The row beneath, as recorded. */
  readonly beneath: RowRecord | null;
  /** How many stitches the row beneath has is proven, and hangs on no reading that its count chose. */
  readonly isSure: boolean;
  /** The rows beneath were said plainly back to a proven one, or to the beginning. */
  readonly isKnown: boolean;
  /** The row behind, as it came out when nothing was weighed. */
  readonly behind: RowRecord | null;
  /** Counts on which the rows behind come out as well as on what was made: see `attempt`. */
  readonly carried: ReadonlySet<string>;
  /** Another version, worked on an earlier row; or a round along the sides of flat rows, and not upon the last. */
  readonly goesBack: boolean;
  /** Rows of this part have labels. */
  readonly hasLabels: boolean;
  /** Name of the part worked before this one, in small letters; '' for none. */
  readonly pieceBefore: string;
  readonly text: string;
}

/** The row is at hand, with all that it was worked in. */
export interface AtHand {
  readonly hands: Hands;
  readonly task: Task;
  readonly before: Before;
  readonly setting: Parameters<typeof attemptRow>[3];
}

/** Works the row, and judges it where it does not come out. */
export function weighedRow(at: AtHand, around: Around): Attempted {
  const { hands, task, before, setting } = at;
  const start = mark(hands);
  const origins = hands.bench.origins.length;
  const isOnNothing =
    before.row === null && hands.edge.kind === 'none' && beginsOnTurningChain(task, hands);
  const attempted = attemptRow(hands, task, before, setting);
  const cause = causeOf(attempted.result.facts);
  if (cause === null || isStrict(task.instruction)) return attempted;
  // What a fault that is told leaves to the row behind it is sorted out when it is told: `carried.ts`.
  if (around.beneath?.verdict === 'mismatch') return attempted;
  const talk = talkIn(task, around);
  const isUncounted = task.asks.counts.length === 0;
  // "Ch 2, [sl st in 2nd ch from hook, ch 6] x 8": slip stitches go anywhere.
  const isBare = attempted.result.tally.stitches === 0;
  const isStray =
    isOnNothing || around.goesBack || (isUncounted && (isBare || isLoose(at, cause, around)));
  const isSlip =
    talk === null &&
    cause.kind !== 'spaces-left' &&
    !isStray &&
    (isUnderstood(task, attempted.result, around) ||
      contradictsBeneath(at, attempted.result, around) ||
      explains(at, attempted.result, around, start));
  restore(hands, start);
  hands.bench.origins.length = origins;
  const again = attemptRow(hands, task, before, setting);
  return isSlip ? again : notFollowed(hands, again, { cause, talk });
}

/** Where it works, its words do not say well enough to hold its end against it. */
const isLoose = ({ hands, task }: AtHand, cause: Fact, { hasLabels }: Around): boolean =>
  spansUnsaid(task.instruction, cause, hands.sizeIndex) ||
  hands.tookSpace ||
  isBackAtStart(hands) ||
  beginsInChain(task) ||
  isSeveralRows(task) ||
  (hasLabels && task.label === '');

/**
 * "Ch 3, dc in each st around (48)" above which nothing tells a foundation: its words were lost, or taken for talk,
 * and the chain to turn is none.
 */
function beginsOnTurningChain({ instruction: { steps } }: Task, hands: Hands): boolean {
  const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'yarn' && kind !== 'turn');
  if (first?.kind !== 'chain' || (numberFor(hands, first.n) ?? 0) > MOST_TO_TURN) return false;
  const all = [...allSteps(steps)];
  if (!all.some((step) => step.kind === 'work' && (step.place !== null || step.until !== null)))
    return false;
  return !all.some(
    (step) =>
      step.kind === 'ring' ||
      ((step.kind === 'work' || step.kind === 'group') &&
        step.place !== null &&
        isInChain(step.place)),
  );
}

const MOST_TO_TURN = 4;

const isInChain = ({ fromHook, pick, nouns }: Place): boolean =>
  fromHook ||
  nouns.some(
    ({ kind }) =>
      kind === 'ring' ||
      kind === 'start-chain' ||
      (kind === 'chain' && pick !== 'each' && pick !== 'next'),
  );

/** "2 sc in the initial ch 1, …": in what the row beneath does not count. */
function beginsInChain({ instruction }: Task): boolean {
  const first = instruction.steps.find(({ kind }) => kind === 'work');
  const place = first?.kind === 'work' ? first.place : null;
  return place?.pick === 'this' && place.nouns[0]?.kind === 'start-chain';
}

/**
 * What the row makes is what it states, so its words were read as they were meant; or it names spaces
 * where a row that is proven has none.
 */
function isUnderstood(
  task: Task,
  { facts, tally, uncompared }: RowResult,
  { beneath, behind, carried, isSure }: Around,
): boolean {
  const { asks } = task;
  const misfits = facts.filter(({ kind }) => MISFITS.has(kind));
  if (misfits.every(({ kind }) => kind === 'no-place') && beneath?.verdict === 'proven')
    return true;
  // The count of the row beneath chose how its chains are read: it may be that count that is off.
  if (beneath?.verdict === 'proven' && !isSure && misfits.every(isByOne)) return true;
  const stated = asks.counts.filter(
    ({ partial, unit }) => !partial && unit !== 'decrease' && unit !== 'row',
  );
  if (misfits.every(({ kind }) => kind === 'count')) {
    // Of several counts some are met; or the row behind comes out on what was made, and not otherwise.
    if (misfits.length < stated.length - uncompared.length) return true;
    const isMade = behind?.available === tally.stitches && behind.used === tally.stitches;
    if (isMade && behind.verdict === 'proven' && !carried.has(carriedName(task))) return true;
  }
  // "(16 sc)" of 16 dc: as many, by another name; or none of that name at all.
  const isOther = (fact: Fact): boolean =>
    fact.kind === 'count' &&
    fact.value !== tally.stitches &&
    !(fact.unit === 'stem' && fact.computed === 0 && tally.stitches > 0);
  return stated.length > 0 && uncompared.length === 0 && !misfits.some(isOther);
}

/**
 * "Sc in each st around (49)" or "(sc in next 2 sts, inc) around (65)" upon "(48 sc)": whatever was made there,
 * two stated counts contradict each other, and nothing in so plain a row could be misread. A start chain may
 * be counted in the one and not in the other.
 */
function contradictsBeneath(
  { before, task, hands }: AtHand,
  { facts, tally, used, available }: RowResult,
  { beneath, text }: Around,
): boolean {
  if (before.statedInstead === null || beneath?.stated.length !== 1) return false;
  if (task.asks.counts.length !== 1 || beneath.tally.chains + tally.chains > 0) return false;
  const isOfAll = hands.edge.counted === before.statedInstead;
  const [fact] = facts.filter(({ kind }) => kind === 'count');
  const isByOne = fact?.kind === 'count' && Math.abs(fact.value - fact.computed) === 1;
  const chain = task.instruction.steps.find((step) => step.kind === 'chain');
  if (isByOne && (numberFor(hands, chain?.n ?? null) ?? 1) > 1) return false;
  return (
    isOfAll &&
    used === available &&
    facts.every(({ kind }) => kind === 'count' || !MISFITS.has(kind)) &&
    (tally.stitches === used
      ? worksEachOnce(task.instruction)
      : isPlainlySaid(task.instruction.steps, ({ from, to }) =>
          text.slice(task.base + from, task.base + to),
        ))
  );
}

/** "Ch 1, sc in each st around, join": nothing but that. */
function worksEachOnce({ steps }: Instruction): boolean {
  let works = 0;
  for (const step of steps) {
    if (step.kind === 'work') {
      const { place, until, stitch, n } = step;
      const isEach = until !== null || place?.pick === 'each';
      const isStart = place?.pick === 'same' && works === 0;
      if (stitch.shape !== 'one' || stitch.special || !(isEach || isStart)) return false;
      if ((n?.values[0] ?? 1) !== 1 || step.evenly || step.alsoIn.length > (isStart ? 1 : 0))
        return false;
      const along = isStart ? step.alsoIn : [place];
      if (along.some((p) => p?.nouns.some(({ kind }) => kind !== 'stem' && kind !== 'stitch')))
        return false;
      works++;
    } else if (!AROUND_WORK.has(step.kind)) return false;
  }
  return works > 0;
}

const AROUND_WORK: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'chain',
  'join',
  'turn',
  'yarn',
  'fasten-off',
  'spiral',
  'loop',
]);

const isByOne = (fact: Fact): boolean =>
  (fact.kind === 'overrun' && fact.needed - fact.have === 1) ||
  (fact.kind === 'left' && fact.left === 1);

/** Chart rows and boxes are counted one by one: nothing in them is read otherwise than it stands. */
const isStrict = ({ steps }: Instruction): boolean =>
  [...allSteps(steps)].some(({ kind }) => kind === 'chart' || kind === 'boxes');

/** "… sc in each of next 13 ch, 2 sc in next sc": round the chain, and on over the round's own start. */
const isBackAtStart = ({ edge, rowEdge, at }: Hands): boolean =>
  edge.kind === 'foundation' &&
  edge !== rowEdge &&
  at?.kind === 'work' &&
  at.place?.nouns[0]?.kind === 'stem';

/** "2 sc, ch 2, 2 sc" over six: a buttonhole, whose chain spans what it does not say it skips. */
function spansUnsaid({ steps }: Instruction, cause: Fact, size: number): boolean {
  if (cause.kind !== 'left' || [...allSteps(steps)].some(({ kind }) => kind === 'skip'))
    return false;
  let chains = 0;
  steps.forEach((step, i) => {
    const between = steps[i - 1]?.kind === 'work' && steps[i + 1]?.kind === 'work';
    if (step.kind === 'chain' && between) chains += step.n?.values[size] ?? step.n?.values[0] ?? 0;
  });
  return chains > 1 && chains === cause.left;
}

/** "Sc in next 2 sc, turn, sc in each of 35 ch, turn, sc in next 36 sc, turn, …": a handle told as one. */
const isSeveralRows = ({ instruction }: Task): boolean => {
  const steps = [...allSteps(instruction.steps)];
  const last = steps.findLastIndex(({ kind }) => kind === 'work' || kind === 'group');
  return steps.filter((step, i) => i < last && step.kind === 'turn' && !step.not).length > 1;
};

/** The first misfit of a row whose words were all followed; `null`: none, or that is told already. */
function causeOf(facts: readonly Fact[]): Fact | null {
  if (facts.some(({ kind }) => UNFOLLOWED.has(kind))) return null;
  const misfits = facts.filter(({ kind }) => MISFITS.has(kind));
  return misfits.find(({ kind }) => kind !== 'count') ?? misfits[0] ?? null;
}

const UNFOLLOWED: ReadonlySet<string> = new Set([
  'unread',
  'undefined',
  'not-worked',
  'limit',
  'mesh',
]);

/** Words that sound like work, though they were taken for talk: what they change is not known. */
function talkIn({ instruction, base }: Task, { text, pieceBefore }: Around): Span | null {
  for (const step of allSteps(instruction.steps)) {
    if (step.kind !== 'remark') continue;
    const span = { from: step.from + base, to: step.to + base };
    const words = text.slice(span.from, span.to);
    if (namesPiece(words, pieceBefore)) continue;
    if (NAMES_PLACE.test(words)) return span;
    if (SOUNDS_LIKE_WORK.test(words) && !isBeside(words) && !AGAIN.test(words)) return span;
  }
  return null;
}

const SOUNDS_LIKE_WORK =
  /\b(?:instead|rather than|except|but (?:in|into|work|do|only|not)|omit|only once|each (?:time|side)|repeat|rep)\b/i;

/** "Sc in next 2 sts of original ch": where the stitches before it go, in words that were not understood. */
const NAMES_PLACE = /^of (?!(?:the )?(?:this |next |last )?(?:row|rnd|round)\b)/i;

/** "- repeat 3 rows", "(you will repeat this round till you have 11 rows)": how often, and not what. */
const AGAIN =
  /^\W*(?:you(?: will|'ll)? )?rep(?:eat)? (?:this |these |the )?(?:same )?(?:\d+ )?(?:rows?|rnds?|rounds?)\b(?! \d)(?!.*\b(?:instead|except|but|rather|omit\w*|only)\b)/i;

/** Is there one slip with which the row comes out? */
function explains(
  at: AtHand,
  result: RowResult,
  around: Around,
  start: ReturnType<typeof mark>,
): boolean {
  const { hands } = at;
  const { limit, origins } = hands.bench;
  const { moves } = limit;
  const known = origins.length;
  limit.moves = MOST_MOVES;
  try {
    if (isOfCount(hands, at.task, result, around)) return true;
    for (const fits of slips(at, result, around)) {
      restore(hands, start);
      origins.length = known;
      if (fits()) {
        return true;
      }
    }
    return false;
  } catch (problem) {
    if (problem !== TOO_MANY) throw problem;
    return true;
  } finally {
    limit.moves = moves;
  }
}

/** Steps that may be walked in search of a slip. */
const MOST_MOVES = 50_000;

/** Its words are the plainest, and what they are worked into is known, or makes no difference. */
function isPlain(task: Task, result: RowResult, around: Around, sizeIndex: number): boolean {
  const { instruction, base } = task;
  const wordsOf = ({ from, to }: Span): string => {
    const words = around.text.slice(base + from, base + to);
    return namesPiece(words, around.pieceBefore) ? '' : words;
  };
  if (around.isKnown && isPlainlySaid(instruction.steps, wordsOf)) return true;
  return isFixedPlainly(task, result, around, sizeIndex);
}

/** "Of Welt", "of the body": the piece that was worked last, on which the row stands. */
const namesPiece = (words: string, piece: string): boolean =>
  piece !== '' && /^of (?:the )?(.+)$/i.exec(words)?.[1]?.toLowerCase() === piece;

/** How many stitches it makes its words alone fix, and they are the plainest. */
function isFixedPlainly(
  { instruction, asks, base }: Task,
  { tally }: RowResult,
  { text }: Around,
  sizeIndex: number,
): boolean {
  const wordsOf = ({ from, to }: Span): string => text.slice(base + from, base + to);
  return (
    isFixed(asks.steps, tally.stitches, sizeIndex) &&
    isPlainlySaid(instruction.steps, wordsOf, true)
  );
}

/** Only the count differs, by a slip, and the row behind does not stand on it. */
function isOfCount(hands: Hands, task: Task, result: RowResult, around: Around): boolean {
  const { facts, tally } = result;
  const misfits = facts.filter(({ kind }) => MISFITS.has(kind));
  const counts = misfits.flatMap((fact) => (fact.kind === 'count' ? [fact] : []));
  // Wherever its walk ends: what it makes is not what it states. Where a repeat was lost, they are far apart.
  const isRepeat = isOneRepeat(task, around.text);
  const isOfAll = counts.some(
    ({ value, computed }) => computed === tally.stitches && (isRepeat || value < 1.45 * computed),
  );
  if (isOfAll && isFixedPlainly(task, result, around, hands.sizeIndex)) return true;
  if (counts.length < misfits.length) return false;
  // The words take all that is there, no more and no less, and leave nothing to be read otherwise.
  if (tally.stitches > 0 && isPlain(task, result, around, hands.sizeIndex)) return true;
  if (isUpheld(hands, task, tally.stitches, around)) return false;
  return counts.every(({ value, computed }) => isCountSlip({ stated: value, made: computed }));
}

/** "(2 sc, inc) x 6" and nothing else: how often is said, and no other repeat can be lost; nor a comma. */
function isOneRepeat({ asks, base }: Task, text: string): boolean {
  const works = asks.steps.filter(({ kind }) => kind !== 'chain' && !AROUND_WORK.has(kind));
  const [only] = works;
  if (works.length !== 1 || only?.kind !== 'repeat' || only.times.kind !== 'times') return false;
  return !COMMA_LOST.test(text.slice(base + only.from, base + only.to));
}

/** "*sc inc* x 8": one stitch, or two. */
const COMMA_LOST = /\b(?:sc|hdc|dc|tr) (?:inc|dec)/i;

/** The row behind comes out on the stated number of stitches, and not on what was made. */
function isUpheld(hands: Hands, task: Task, made: number, { behind, carried }: Around): boolean {
  if (behind?.verdict !== 'proven' || carried.has(carriedName(task))) return false;
  const { available, used } = behind;
  return task.asks.counts.some(({ n }) => {
    const stated = numberFor(hands, n);
    return stated !== made && stated === available && stated === used;
  });
}

/** One slip after the other; each tells whether the row comes out with it. */
function* slips(
  { hands, task, before, setting }: AtHand,
  result: RowResult,
  around: Around,
): Generator<() => boolean> {
  const { part, ...given } = setting;
  const quick = (steps: Instruction['steps'], beneath: 'made' | 'stated'): boolean =>
    comesOut(
      workRow(hands, withSteps(task, steps), before, {
        ...given,
        beneath,
        choices: { part, row: NOTHING },
      }),
    );
  const { steps } = task.instruction;
  const isFree = !isUpheld(hands, task, result.tally.stitches, around);
  for (const counts of countSlips(task.asks.counts, hands.sizeIndex, isFree)) {
    yield () => comesOut(attemptRow(hands, withCounts(task, counts), before, setting).result);
  }
  const isCounted = task.asks.counts.length > 0;
  for (const other of numberSlips(steps, hands.sizeIndex)) {
    yield () => quick(other, 'made');
    if (before.statedInstead !== null) yield () => quick(other, 'stated');
  }
  if (isCounted) for (const other of wordSlips(steps)) yield () => quick(other, 'made');
  if (!around.isSure) {
    for (const off of [1, -1, 2, -2]) yield () => onOther({ hands, task, before, setting }, off);
  }
  if (isCounted && isPlain(task, result, around, hands.sizeIndex))
    for (const other of anyNumber(steps, hands.sizeIndex)) {
      yield () => quick(other, 'made');
      if (before.statedInstead !== null) yield () => quick(other, 'stated');
    }
  for (const other of numberSlips(steps, hands.sizeIndex)) {
    yield () => comesOut(attemptRow(hands, withSteps(task, other), before, setting).result);
  }
}

const NOTHING = new Map<string, string>();

const comesOut = ({ misfit, verdict }: RowResult): boolean => !misfit && verdict !== 'unread';

/** The row on so many stitches more than there are. */
function onOther({ hands, task, before, setting }: AtHand, off: number): boolean {
  const { edge } = hands;
  if (before.row === null || before.ready) {
    if (edge.counted + off <= 0) return false;
    hands.edge = resized(hands, edge, edge.counted + off);
    return comesOut(attemptRow(hands, task, before, setting).result);
  }
  const { part, ...given } = setting;
  const choices = { part, row: NOTHING };
  const now = workRow(hands, task, before, { ...given, beneath: 'made', choices }).available;
  if (now + off <= 0) return false;
  const other: Before = { ...before, statedInstead: now + off };
  return comesOut(workRow(hands, task, other, { ...given, beneath: 'stated', choices }));
}

const withSteps = (task: Task, steps: Instruction['steps']): Task => ({
  ...task,
  instruction: { ...task.instruction, steps },
  asks: task.asks.steps === task.instruction.steps ? { ...task.asks, steps } : task.asks,
});

function withCounts(task: Task, counts: Instruction['counts']): Task {
  const asks = { ...task.asks, counts };
  return { ...task, asks, instruction: task.instruction === task.asks ? asks : task.instruction };
}

/** The row as it is told where it was not followed: no fault, and nothing proven. */
function notFollowed(
  hands: Hands,
  attempted: Attempted,
  why: { readonly cause: Fact; readonly talk: Span | null },
): Attempted {
  const { cause, talk } = why;
  const { from, to } = talk ?? cause;
  const facts = attempted.result.facts.filter(
    ({ kind }) => !DOUBTED.has(kind) && !MISFITS.has(kind),
  );
  hands.partly = true;
  hands.loose = true;
  return {
    ...attempted,
    exceptions: [],
    carries: null,
    result: {
      ...attempted.result,
      facts: [...facts, { kind: 'not-followed', of: cause, isTalk: talk !== null, from, to }],
      misfit: false,
      verdict: 'unchecked',
    },
  };
}

/** What is said of a row as it was read is not said of one that was misread. */
const DOUBTED: ReadonlySet<string> = new Set([
  'space-size',
  'noun',
  'stems',
  'gaps-counted',
  'two-readings',
]);
