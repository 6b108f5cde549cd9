/** "ch 2, hdc in first sc" at a round's end closes the last space and makes no counted stitch. */
import {
  heightOf,
  type Place,
  type RepeatStep,
  type Step,
  type StitchTerm,
  stemOf,
  type WorkStep,
} from '../../notation/index.ts';
import type { RowContext } from '../context.ts';
import { type Edge, SPACE } from '../edge.ts';
import {
  atStart,
  countedSince,
  type Hands,
  make,
  numberFor,
  originFor,
  remainingSpaces,
} from '../hands.ts';
import { type Kind, kindOf } from '../kinds.ts';
import { nounOf } from '../noun.ts';
import type { RowShape } from '../shape.ts';
import { standIn } from './move.ts';
import { firstStitchOf } from './stitch.ts';

/** "ch 2, hdc in first sc" at a round's end closes the last space and makes no counted stitch. */
export function closesSpace(hands: Hands, step: WorkStep, row: RowContext): boolean {
  const { place } = step;
  if (!place || !row.round || hands.into) return false;
  // "Ch 4 (counts as dc, ch 1), dc in first st": the round only begins.
  if (countedSince(hands, hands.rowFrom) < 2) return false;
  const noun = nounOf(place.of ?? place);
  // "Ch 5, dc in 1st 3 dc of next petal" goes on.
  const first = place.pick === 'first' && place.n === null && place.of?.pick !== 'next';
  const toStart =
    first || noun.kind === 'start-chain' || (place.pick === 'top' && noun.kind === 'chain');
  const before = hands.bench.kinds.kinds[hands.nodes.kind[hands.nodes.n - 1] ?? 0];
  if (first && noun.kind !== 'space' && fillsGap(hands, step, row)) return true;
  const closes = before?.class === 'chain' && hands.first !== null && noun.kind !== 'space';
  if (noun.kind === 'ring') return closesRow(row.shape.steps, step) && makesLoop(hands, step);
  // "Dc in same st as beg ch-6, ch 3, join": the second leg of a V-stitch, with a chain of its own behind it.
  const isLeg = place.pick === 'same' && noun.kind === 'start-chain';
  if (isLeg && !closesRow(row.shape.steps, step)) return false;
  if (!closes || toStart) return closes;
  const loops = hands.edge.kind === 'row' && hands.edge.ring && hands.tookSpace;
  return loops && namesStitch(place) && closesRow(row.shape.steps, step);
}

/**
 * "(3 dc in next sp, ch 2) 14 times, 3 dc in next sp, hdc in first dc": with nothing left beneath, and a gap
 * between the others, the tall stitch is the last of the gaps.
 */
const fillsGap = (hands: Hands, step: WorkStep, { shape }: RowContext): boolean =>
  hands.edge.ring &&
  hands.tookSpace &&
  remainingSpaces(hands) === 0 &&
  shape.chainLengths.size > 0 &&
  step.stitch.shape === 'one' &&
  step.stitch.stem !== 'ss' &&
  step.stitch.stem !== 'sc' &&
  closesRow(shape.steps, step);

/**
 * "(Ch 8, sc in ring) 5 times, ch 4, tr in ring": with the height of its stitch this chain, which no other
 * loop of the round has, is as long as theirs.
 */
function makesLoop({ nodes, bench, rowFrom }: Hands, { stitch }: WorkStep): boolean {
  const stem = stitch.stem ? stemOf(stitch.stem, bench.terms) : null;
  const runs: number[] = [];
  for (let id = rowFrom, run = 0; id <= nodes.n; id++) {
    const isChain = id < nodes.n && CHAINS.has(bench.kinds.kinds[nodes.kind[id] ?? 0]?.class ?? '');
    if (isChain) run++;
    else if (run > 0) {
      runs.push(run);
      run = 0;
    }
  }
  const last = runs.pop();
  if (!stem || last === undefined || runs.length < 2 || runs.includes(last)) return false;
  return runs.every((run) => run === last + heightOf(stem));
}

const CHAINS: ReadonlySet<string> = new Set(['chain', 'start', 'low']);

/** "…, ending with ch 3, tr in tr": what a round of loops ends in, and nothing else is worked behind it. */
function closesRow(steps: readonly Step[], step: Step): boolean {
  const last = steps.findLast(({ kind }) => !BEHIND.has(kind));
  if (last === step) return true;
  if (last?.kind !== 'repeat' || last.ending?.kind !== 'with') return false;
  return last.ending.steps.findLast(({ kind }) => !BEHIND.has(kind)) === step;
}

const BEHIND: ReadonlySet<Step['kind']> = new Set(['remark', 'mark', 'yarn', 'fasten-off', 'turn']);

/** "In tr", "in top of first cluster", "in same place": one stitch, with no word for next. */
const namesStitch = ({ pick, n, of, nouns }: Place): boolean =>
  (pick === 'this' || pick === 'same') && n === null && of === null && !nouns[0]?.plural;

/**
 * "*Ch 7, sc in next lp; rep from * around, ending with ch 3, tr in tr" on a round that was closed in the
 * same way: the hook stands in the loop that is closed, and only the ending comes back to it. The entry at
 * which the repeat stops.
 */
export function beforeClosed(hands: Hands, step: RepeatStep): number {
  const { ending } = step;
  const { edge, limit, first } = hands;
  if (!ending && beginsInClosed(hands, step)) return Math.min(limit, lastSpace(edge));
  const closing = ending?.kind === 'with' ? ending.steps.at(-1) : undefined;
  if (first !== null || !edge.ring || closing?.kind !== 'work' || !closing.place) return limit;
  const { place } = closing;
  const toStitch = namesStitch(place) || place.pick === 'first';
  if (!toStitch || closing.stitch.stem === 'ss') return limit;
  const last = edge.n - 1;
  const at = lastSpace(edge);
  const closer = closerOf(hands, at);
  if (!closer) return limit;
  // Closed with a stitch that counts: the ending goes to it by its name.
  const named = nounOf(place).stem;
  const counted = at < last && named !== null && closer.stem === stemOf(named, hands.bench.terms);
  const closed = closer.class === 'closer' || (counted && named !== 'sc');
  return closed ? Math.min(limit, at) : limit;
}

const lastSpace = ({ type, n }: Edge): number => (type[n - 1] === SPACE ? n - 1 : n - 2);

/**
 * "Ch 9, *tr in next loop, ch 5; rep from * around" from the tall stitch that closed the last loop: the chain is
 * the tr in that loop.
 */
function beginsInClosed(hands: Hands, { steps }: RepeatStep): boolean {
  const { edge, startChains, rowFrom } = hands;
  const [work, gap, ...more] = steps;
  const own = startChains.get(rowFrom);
  if (!edge.ring || !own || own.n === own.height || more.length > 0) return false;
  if (work?.kind !== 'work' || nounOf(work.place).kind !== 'space' || gap?.kind !== 'chain')
    return false;
  const isAlike = numberFor(hands, gap.n) === own.n - own.height;
  return isAlike && closerOf(hands, lastSpace(edge))?.class === 'closer';
}

/** The stitch behind the chains of a space, which may close it; `null`: no space lies there. */
function closerOf({ edge, nodes, bench }: Hands, at: number): Kind | null {
  if (edge.type[at] !== SPACE) return null;
  const kindAt = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0];
  let id = edge.node[at] ?? 0;
  while (id < nodes.n && kindAt(id)?.class === 'chain') id++;
  return id < nodes.n ? (kindAt(id) ?? null) : null;
}

/**
 * "…, ch 2, dc in first sc. Rnd 4: ch 3, dc in loop just made, *ch 3, 2 dc in next lp": the hook stands in
 * the loop that is closed; the round begins there, and does not come to it again.
 */
export function standInClosed(hands: Hands, { steps }: RowShape): void {
  const { edge } = hands;
  if (edge.kind !== 'row' || !edge.ring || !atStart(hands) || hands.into) return;
  const at = edge.n - 1;
  const closer = closerOf(hands, at);
  if (closer?.class !== 'closer') return;
  if (endsBesideStart(steps)) return standIn(hands, at);
  const place = firstPlace(steps);
  if (!place || place.n || place.of) return;
  const [noun, other] = place.nouns;
  if (!noun || other || noun.plural || (place.pick !== 'this' && place.pick !== 'same')) return;
  const chains = noun.kind === 'space' ? (noun.chains?.values[0] ?? edge.run[at]) : null;
  const named = place.pick === 'same' && noun.kind === 'stem' ? noun.stem : null;
  const isCloser = named !== null && stemOf(named, hands.bench.terms) === closer.stem;
  if (isCloser || chains === edge.run[at]) standIn(hands, at);
}

/** "Ch 6, *(dc, ch 3, dc) in next sp, ch 3; rep …, dc in same st as beg ch-6": both in the loop stood in. */
function endsBesideStart(steps: readonly Step[]): boolean {
  const { place } = steps.findLast((step): step is WorkStep => step.kind === 'work') ?? {};
  return place?.pick === 'same' && place.of?.nouns[0]?.kind === 'start-chain';
}

/** Where a round's first stitch goes, with nothing before it but its starting chain. */
function firstPlace(steps: readonly Step[]): Place | null {
  const first = steps.find(({ kind }) => kind !== 'chain' && !BEHIND.has(kind));
  if (first?.kind === 'repeat') return firstPlace(first.steps);
  return first?.kind === 'group' || (first?.kind === 'work' && first.stitch.stem !== 'ss')
    ? first.place
    : null;
}

/** Makes the stitch that closes the last space of a round. */
export function closeSpace(hands: Hands, step: Step, stitch: StitchTerm): void {
  const stem = stitch.stem ? stemOf(stitch.stem, hands.bench.terms) : hands.stem;
  const kind = kindOf(hands.bench.kinds, stem === 'slip' ? 'slip' : 'closer', stem);
  make(hands, kind, originFor(hands, step), firstStitchOf(hands));
}
