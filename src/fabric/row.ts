/** One row: the edge is prepared, the steps are worked, the sum is drawn. */

import type { StandingOrder, StatedCount, Step } from '../notation/index.ts';
import { type ChartDone, type Charts, toldBy } from './charts.ts';
import { compare, statedStitches } from './compare-counts.ts';
import type { RowContext } from './context.ts';
import { worksCornerBlocks } from './corner-blocks.ts';
import { behindPetals } from './earlier-row.ts';
import { COUNTED, type Edge, edgeOf, NAMED, queued, rotated } from './edge.ts';
import type { RowRecord, Verdict } from './fabric.ts';
import { type Fact, MISFITS } from './facts.ts';
import {
  atStart,
  beginRow,
  fact,
  type Hands,
  make,
  NO_LENGTHS,
  NO_MOVES,
  numberFor,
  placeOfStep,
  remaining,
  spanAt,
} from './hands.ts';
import { kindOf } from './kinds.ts';
import { passWords } from './pass-words.ts';
import { chainsLeft, gather } from './pieces.ts';
import type { Choices } from './readings.ts';
import { allSteps, moveAt, type RowShape, shapeOf } from './shape.ts';
import { noteSpacesLeft } from './spaces-left.ts';
import { makeStartChain, readStartChain } from './start-chain.ts';
import { alongLastChain, beginsWithMore } from './steps/box-more.ts';
import { standInClosed } from './steps/close-space.ts';
import { moveStart } from './steps/move.ts';
import { noGroupAhead } from './take.ts';
import { type RowTally, tallyOf } from './tally.ts';
import type { Task } from './task.ts';
import { walk } from './walk.ts';

/** What lies on the hook when a row begins. */
export interface Before {
  /** Nodes of the row beneath; null when nothing was worked yet. */
  readonly row: {
    readonly from: number;
    readonly to: number;
    readonly ring: boolean;
    /** Its words close it with a join. */
    readonly joined?: boolean;
  } | null;
  /** Places of a spiral that the round before did not reach. */
  readonly rest: { readonly edge: Edge; readonly from: number } | null;
  /** Turned (true), expressly not (false), or not said. */
  readonly turned: boolean | null;
  /** The hands already stand where they should: yarn was joined, a chain was made. */
  readonly ready: boolean;
  readonly open: boolean;
  /** The count that the row beneath states, where it is not the one it makes. */
  readonly statedInstead: number | null;
  /** The count stated was not held against the row, whose beginning is not known. */
  readonly openCount: boolean;
  /** Where that count stands in the text; -1 for none. */
  readonly statedAt: number;
  /** Words of the row beneath were not understood: where its spaces lie is a guess. */
  readonly guessed: boolean;
  /** Words of it were not understood, while what it stands on is known. */
  readonly unreadOnKnown: boolean;
  /** It has shells or V-stitches that nobody explains: how many stitches they are is a guess. */
  readonly groups: boolean;
  readonly chartRows: ReadonlyMap<string, ChartDone>;
  readonly side: 'RS' | 'WS';
}

export interface RowSetting {
  readonly charts: Charts;
  readonly orders: readonly StandingOrder[];
  readonly round: boolean;
  /** The next row opens with a turn. */
  readonly turnsNext: boolean;
  /** Which of the two counts the row beneath is taken to have. */
  readonly beneath: 'made' | 'stated';
  readonly choices: { readonly part: Choices; readonly row: Choices };
}

export interface RowResult {
  readonly tally: RowTally;
  readonly facts: readonly Fact[];
  readonly used: number;
  readonly available: number;
  readonly verdict: Verdict;
  readonly misfit: boolean;
  readonly round: boolean;
  readonly from: number;
  readonly to: number;
  readonly turned: boolean;
  /** Side of the piece that faces the hands. */
  readonly side: 'RS' | 'WS';
  readonly edge: Edge;
  /** It brought pieces together. */
  readonly joins: boolean;
  /** Counts stated that were not compared. */
  readonly uncompared: readonly StatedCount[];
  /** How many were. */
  readonly compared: number;
}

/** Works one row from what lies before it. Facts tell where it does not come out. */
export function workRow(hands: Hands, task: Task, before: Before, setting: RowSetting): RowResult {
  const shape = shapeOf(task.instruction);
  const turned = turnsBefore(before, shape, setting);
  const edge = before.ready
    ? hands.edge
    : edgeFor(hands, before, setting.beneath, { turned, throughPicots: shape.throughPicots });
  begin(hands, task, { edge, ready: before.ready, choices: setting.choices });
  if (hands.edge.kind === 'row') hands.loop = loopOf(setting.orders);
  hands.statedStitches = statedStitches(hands, task.asks.counts);
  hands.chainLengths = shape.chainLengths;
  hands.uncounted = uncountedBy(setting.orders);
  if (shape.behind) goBehind(hands, shape.behind);
  if (!before.ready && !turned) standInClosed(hands, shape);
  hands.cornerBlocks = !hands.edge.ring && worksCornerBlocks(shape.steps);
  const side = sideOf(task, before, turned);
  const row: RowContext = {
    shape,
    orders: setting.orders,
    charts: setting.charts,
    chartTold: toldBy(task, before.chartRows),
    beginsLater: before.row === null && beginsLater(task) && !shape.firstWork?.place?.fromHook,
    again: task.repeats !== null || isAgain(task) || (task.range?.nth ?? 1) > 1,
    round: setting.round,
    walk,
    reads: side === 'RS' ? 'right-to-left' : 'left-to-right',
  };
  const available = hands.edge.counted;
  const isFresh = atStart(hands);
  startWithMoves(hands, row);
  startWithPending(hands, row, isFresh);
  if (atStart(hands)) alongLastChain(hands, row);
  walk(hands, task.instruction.steps, row, { from: 0, top: true });
  noteChanges(hands, task);
  const turns = shape.turnsAtEnd ?? setting.turnsNext;
  return {
    ...conclude(hands, task, { shape, row, available, turned, turns, before }),
    side,
  };
}

/** "Work in back loops throughout." */
function loopOf(orders: readonly StandingOrder[]): Hands['loop'] {
  const order = orders.findLast((o) => o.kind === 'loops');
  return order?.kind === 'loops' && order.loop !== 'both' ? order.loop : null;
}

/** Where the row beneath has no petals it is not known what lies behind them. */
function goBehind(hands: Hands, step: Step): void {
  const edge = behindPetals(hands, step);
  if (!edge) {
    hands.loose ||= hands.edge.kind === 'row';
    return;
  }
  hands.edge = edge;
  hands.limit = edge.n;
}

/** "Turning chains do not count": those of common height. */
const TURNING = [2, 3, 4];

/** "Ch 3 does not count as a stitch": told of chains of a length. */
function uncountedBy(orders: readonly StandingOrder[]): ReadonlySet<number> {
  const lengths = orders.flatMap((order) =>
    order.kind === 'start-chain' && !order.countsAs.counts
      ? order.n === null
        ? TURNING
        : [order.n]
      : [],
  );
  return lengths.length > 0 ? new Set(lengths) : NO_LENGTHS;
}

/** "Row 5:", "Next row:" with nothing before it: what it stands on is not in the text. */
const beginsLater = (task: Task): boolean =>
  (task.number ?? 1) > 1 || /^next\b/i.test(task.label) || turnsFirst(task.instruction);

/** "Row 1: Ch 1, turn, sc in first 14 sts": there is something to turn. */
function turnsFirst({ steps }: Task['instruction']): boolean {
  const [chain, turn] = steps;
  if (chain?.kind !== 'chain' || turn?.kind !== 'turn' || (chain.n?.values[0] ?? 1) > 4)
    return false;
  const place = steps.find((step) => step.kind === 'work')?.place;
  return place?.nouns.some(({ kind }) => kind === 'stitch' || kind === 'stem') ?? false;
}

/** "Rep row 2, working …": words of the order that were not understood change the row repeated. */
function noteChanges(hands: Hands, { asks, asksBase, instruction }: Task): void {
  if (asks.steps === instruction.steps) return;
  const { base } = hands;
  hands.base = asksBase;
  for (const step of asks.steps) {
    if (step.kind !== 'unread') continue;
    hands.unread = true;
    fact(hands, { kind: 'unread', ...spanAt(hands, step) });
  }
  hands.base = base;
}

/** A first row may say its side; later rows go by the turns. */
function sideOf(task: Task, before: Before, turned: boolean): 'RS' | 'WS' {
  if (!before.row) return task.instruction.label?.side ?? before.side;
  return turned ? (before.side === 'RS' ? 'WS' : 'RS') : before.side;
}

function begin(
  hands: Hands,
  task: Task,
  start: { edge: Edge; ready: boolean; choices: RowSetting['choices'] },
): void {
  const { pos, inner, last, first, rowFrom, used, pieces } = hands;
  beginRow(hands, start.edge, task.base, start.choices);
  if (!start.ready) return;
  // Yarn was joined or the start moved under an order of its own: the hands stay where they are.
  hands.pos = pos;
  hands.inner = inner;
  hands.last = last;
  hands.first = first;
  hands.rowFrom = rowFrom;
  hands.used = used;
  hands.pieces = pieces;
}

/** Rows are turned unless the words say otherwise; rounds only if they say so. */
function turnsBefore(before: Before, shape: RowShape, setting: RowSetting): boolean {
  if (!before.row) return false;
  if (shape.turnsAtStart) return true;
  if (before.turned !== null) return before.turned;
  const order = setting.orders.findLast((o) => o.kind === 'turning');
  if (order?.kind === 'turning') return order.turn;
  return !before.row.ring;
}

/** The places that the row beneath offers. */
export function edgeFor(
  hands: Hands,
  before: Before,
  beneath: RowSetting['beneath'],
  { turned, throughPicots }: { readonly turned: boolean; readonly throughPicots: boolean },
): Edge {
  const { row } = before;
  if (!row) return hands.edge;
  const made = edgeOf(hands.nodes, hands.bench.kinds, {
    from: row.from,
    to: row.to,
    ring: row.ring,
    reversed: turned,
    open: before.open,
    throughPicots,
  });
  const closed = row.joined && turned ? fromItsJoin(made) : made;
  const edge = before.rest ? queued(before.rest.edge, before.rest.from, closed) : closed;
  if (beneath === 'made' || before.statedInstead === null) return edge;
  return resized(hands, edge, before.statedInstead);
}

/** A round that is joined and turned begins on the stitch of its join, which it made first. */
function fromItsJoin(edge: Edge): Edge {
  const first = edge.type.lastIndexOf(COUNTED);
  return first < 0 ? edge : rotated(edge, first);
}

/** The edge with `n` counted places: unknown stitches are added, surplus ones only named. */
export function resized(hands: Hands, edge: Edge, n: number): Edge {
  const missing = n - edge.counted;
  if (missing === 0) return edge;
  const node = [...edge.node];
  const run = [...edge.run];
  const type = [...edge.type];
  const kind = kindOf(hands.bench.kinds, 'unknown');
  // Before the last place: that one is often the top of a turning chain, and has a name.
  const at = Math.max(0, type.lastIndexOf(COUNTED));
  const unknown = Array.from({ length: Math.max(0, missing) }, () => make(hands, kind, 0, null));
  node.splice(at, 0, ...unknown);
  run.splice(at, 0, ...unknown.map(() => 0));
  type.splice(at, 0, ...unknown.map(() => COUNTED));
  for (let i = at - 1, surplus = -missing; surplus > 0 && i >= 0; i--) {
    if (type[i] === COUNTED) {
      type[i] = NAMED;
      surplus--;
    }
  }
  return {
    ...edge,
    n: node.length,
    node: Int32Array.from(node),
    run: Int32Array.from(run),
    type: Uint8Array.from(type),
    counted: n,
    open: false,
  };
}

/** Slip stitches printed behind the join of the round before lead to where this one begins. */
function startWithMoves(hands: Hands, row: RowContext): void {
  const { moves, movesBase, base, edge } = hands;
  if (moves.length === 0) return;
  hands.moves = NO_MOVES;
  const { steps } = row.shape;
  const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'yarn');
  const elsewhere = first?.kind === 'join' && first.yarn !== null;
  if (elsewhere || !edge.ring || edge.reversed || edge.kind !== 'row' || !atStart(hands)) return;
  hands.base = movesBase;
  for (const move of moves) moveStart(hands, move, row, moveAt(steps, -1) ?? 'begins');
  hands.base = base;
}

/** A chain printed at the end of the row before is this row's, unless this row has its own. */
function startWithPending(hands: Hands, row: RowContext, isFresh: boolean): void {
  const { pending, pendingBase, base } = hands;
  hands.pending = null;
  if (!pending || !isFresh || hands.edge.kind === 'none') return;
  if (row.shape.chainsAtStart) return;
  hands.base = pendingBase;
  if (!beginsWithMore(hands, pending, row)) {
    makeStartChain(hands, pending, readStartChain(hands, pending, row));
  }
  hands.base = base;
}

function conclude(
  hands: Hands,
  task: Task,
  end: {
    shape: RowShape;
    row: RowContext;
    available: number;
    turned: boolean;
    turns: boolean;
    before: Before;
  },
): Omit<RowResult, 'side'> {
  const { shape, row } = end;
  const chains = chainsLeft(hands);
  if (hands.nodes.n > hands.rowFrom) gather(hands);
  const available = hands.pieces ? hands.edge.counted : end.available;
  const open = hands.edge.open;
  hands.base = task.asksBase;
  const tally = tallyOf(hands, hands.rowFrom);
  const compared = compare(hands, tally, {
    counts: task.asks.counts,
    shape,
    rows: task.range ? task.range.to - task.range.from + 1 : 1,
  });
  if (chains > 0) noteLeft(hands, chains);
  else if (!startsAgain(task, shape)) {
    const agrees = compared.compared > 0 && !compared.differs;
    noteEnd(hands, shape, { agrees, turns: end.turns });
    if (agrees && hands.statedStitches > 0) passSkipToLast(hands, shape);
    if (task.asks.counts.length === 0) noteSpacesLeft(hands);
  }
  noteRowTotal(hands, task);
  if (hands.overlaid) hands.facts = hands.facts.filter(({ kind }) => kind !== 'noun');
  if (open) hands.facts = hands.facts.filter((what) => what.kind !== 'count');
  // What lies beneath is not known: neither how long its spaces are, nor how its stitches are called.
  if (open || end.before.guessed) {
    const isMissed = (f: Fact): boolean => f.kind === 'space-size' && f.ofStart !== 'here';
    if (compared.compared === 0 && hands.facts.some(isMissed)) {
      hands.partly = true;
      hands.loose = true;
    }
    hands.facts = hands.facts.filter((f) => f.kind !== 'noun' && !isMissed(f));
  }
  // "Rep rows 2-7", whose row 2 says "in top of ch 3": of the row that lay beneath it the first time.
  if (isAgain(task))
    hands.facts = hands.facts.filter((f) => f.kind !== 'space-size' || f.ofStart !== 'beneath');
  if (end.before.guessed && namesGaps(shape)) leaveOpen(hands);
  if (end.before.groups) leaveWalkOpen(hands);
  if (hands.overlaid) leaveOpen(hands);
  if (hands.partly) hands.facts = hands.facts.filter((what) => !MISFITS.has(what.kind));
  const misfit = hands.facts.some((what) => MISFITS.has(what.kind));
  const uncertain = open || hands.loose;
  const agrees = compared.compared > 0 && !compared.differs && compared.left.length === 0;
  if (hands.unread && !misfit && !uncertain && !end.before.guessed && !isAgain(task))
    passWords(hands, shape, agrees);
  return {
    tally,
    facts: hands.facts,
    used: hands.used,
    available,
    verdict: verdictOf(hands, {
      misfit,
      uncertain,
      stated: compared.compared > 0,
      agrees: !compared.differs && !compared.mixed && compared.left.length === 0,
    }),
    uncompared: compared.left,
    compared: compared.compared,
    misfit,
    round: row.round || hands.edge.ring,
    from: hands.rowFrom,
    to: hands.nodes.n,
    turned: end.turned,
    edge: hands.edge,
    joins: (hands.pieces?.bound.size ?? 0) > 0,
  };
}

/** Spaces, corners and groups are looked for where nobody knows that they are: no fault is proven. */
function leaveOpen(hands: Hands): void {
  if (!hands.facts.some((what) => MISFITS.has(what.kind))) return;
  hands.partly = true;
  hands.loose = true;
}

/** How far the walk comes hangs on stitches of the row beneath whose number nobody told. */
function leaveWalkOpen(hands: Hands): void {
  const walked = hands.facts.filter(({ kind }) => !WALK.has(kind));
  if (walked.length === hands.facts.length) return;
  hands.facts = walked;
  hands.partly = true;
  hands.loose = true;
}

const WALK: ReadonlySet<string> = new Set([
  'overrun',
  'left',
  'spaces-left',
  'remainder',
  'no-place',
]);

const GAPS: ReadonlySet<string> = new Set(['space', 'corner', 'group', 'chain', 'box', 'gap']);

const namesGaps = ({ steps }: RowShape): boolean =>
  [...allSteps(steps)].some(
    // "In same sp as joining" is where the hook is, whatever that is called.
    (step) =>
      'place' in step &&
      step.place &&
      step.place.pick !== 'same' &&
      step.place.nouns.some(({ kind }) => GAPS.has(kind)),
  );

function verdictOf(
  hands: Hands,
  row: { misfit: boolean; uncertain: boolean; stated: boolean; agrees: boolean },
): Verdict {
  if (hands.unread) return 'unread';
  if (row.misfit) return 'mismatch';
  if (row.uncertain) return 'unchecked';
  return row.stated && row.agrees ? 'proven' : 'unstated';
}

/** The words of another row are worked. */
const isAgain = (task: Task): boolean => task.asks.steps !== task.instruction.steps;

/** "Repeat rounds 1-3" of a disc behind the body: another piece is begun, and the edge waits. */
const startsAgain = (task: Task, { firstWork }: RowShape): boolean =>
  isAgain(task) && (firstWork?.place?.fromHook ?? false);

/** Did the walk end where the row ends? */
function noteEnd(
  hands: Hands,
  shape: RowShape,
  { agrees, turns }: { agrees: boolean; turns: boolean },
): void {
  const { edge } = hands;
  if (edge.open || edge.kind === 'into' || edge.kind === 'none' || hands.loose || shape.idle)
    return;
  if (hands.missing > 0) {
    const have = edge.counted;
    const at = hands.lackAt ?? placeOfStep(hands);
    return fact(hands, { kind: 'overrun', needed: have + hands.missing, have, ...at });
  }
  if (hands.aside) return;
  const left = remaining(hands);
  // Only places of earlier rows were worked: those of the row beneath stay behind them.
  if (hands.earlier.size > 0 && (hands.used <= 1 || left <= hands.passed)) return;
  if (hands.leaveSaid !== null && hands.leaveSaid !== left && !hands.tookSpace) {
    return fact(hands, {
      kind: 'left',
      left: left - hands.leaveSaid,
      have: edge.counted - hands.leaveSaid,
      used: hands.used,
      ...placeOfStep(hands),
    });
  }
  // Where pieces meet, the stitch beside the join is often left to it.
  if (hands.pieces && left === 1 && agrees) return;
  if (left <= hands.passed && (hands.sought || noGroupAhead(hands))) return;
  if (left === 0 || hands.leave || shape.onlySlips || (hands.optionalLast && left === 1)) return;
  if (hands.tookSpace && (left <= Math.max(hands.passed, 1) || !hands.tookStitch)) return;
  if (edge.ring && hands.skips.has(left) && (agrees || endsWithSpace(hands))) return;
  if (meantToLeave(hands, { left, agrees, turns })) return;
  if (turns && hands.statedStitches < 0 && left <= slippedFirst(hands, shape) + 1) return;
  // What a first side left is worked to its end by the second.
  const onRest = edge === hands.skippedEdge;
  if (agrees && hands.statedStitches > 0 && joinsElsewhere(shape) && !onRest) return;
  if (edge.ring && left === 1 && loopsFromJoin(shape)) return;
  // "*Ch 7, sk 1, sc in next; rep from * 14 times, ch 3, tr in same place as beginning": over a last one.
  const reachesStart = left === 1 || hands.skips.has(left - 1);
  if (edge.ring && reachesStart && endsWhereItBegan(shape)) return;
  if (edge.kind === 'foundation' && shape.join && hands.used === 1 && inOneChain(shape)) return;
  // "Ch 2. Row 1: in 1st ch: hdc, sc, hdc": the one at the hook turns.
  if (edge.kind === 'foundation' && hands.used === 1 && edge.n <= TINY && inFirstChain(shape))
    return;
  noteLeft(hands, left);
}

/**
 * "(Sk 2 sts, shell in next) 4 times, sc in last st (16)": where the count is met, the skip before the
 * last stitch goes without saying.
 */
function passSkipToLast(hands: Hands, { steps }: RowShape): void {
  const last = steps.findLast(({ kind }) => kind === 'work' || kind === 'group');
  const inLast = last && 'place' in last && last.place?.pick === 'last' && !last.place.n;
  if (!inLast) return;
  const skips = [...allSteps(steps)].flatMap((step) =>
    step.kind === 'skip' ? [numberFor(hands, step.place.n) ?? 1] : [],
  );
  hands.facts = hands.facts.filter((fact) => fact.kind !== 'left' || !skips.includes(fact.left));
}

/** "Attach yarn there, hdc in next 11 sts (12)": a part of the round, from where yarn is joined. */
const joinsElsewhere = ({ steps, join, goesRound }: RowShape): boolean =>
  !join && !goesRound && steps.some((step) => step.kind === 'join' && step.yarn === 'yarn');

/** "*Ch 10, sc in next sc; rep from * 6 times, ch 4, dtr in same place as beginning": on the joined one. */
function endsWhereItBegan({ steps }: RowShape): boolean {
  const last = steps.findLast(({ kind }) => kind === 'work' || kind === 'join');
  const place = last && 'place' in last ? last.place : null;
  if (place?.pick === 'same') return place.of?.nouns[0]?.kind === 'start-chain';
  // "*Ch 5, sc in next sc; rep from * 10 times, ch 2, dc in first sc": of the row beneath, where none of its own stands.
  const first = steps.find(({ kind }) => kind === 'chain' || kind === 'work' || kind === 'repeat');
  const loops = first?.kind === 'repeat' && first.steps[0]?.kind === 'chain';
  const closes = last?.kind === 'work' && steps[steps.indexOf(last) - 1]?.kind === 'chain';
  return loops && closes && place?.pick === 'first' && place.nouns[0]?.kind === 'stem';
}

/** "*Ch 4, sk 3, sc in next st* 5 times, ch 4, sk 3, sl st in first ch": the first stitch holds both ends. */
function loopsFromJoin({ steps, join }: RowShape): boolean {
  const first = steps.find(({ kind }) => kind === 'chain' || kind === 'repeat' || kind === 'work');
  const opens = first?.kind === 'repeat' ? first.steps[0] : first;
  const chain = opens?.kind === 'chain' && (opens.n?.values[0] ?? 1) > 1;
  return chain && join?.place?.pick === 'first' && join.place.nouns[0]?.kind === 'chain';
}

/** "In initial chain work (dc, ch 1) 6 times, join": the chain's one loop is the ring. */
const inOneChain = ({ steps }: RowShape): boolean =>
  [...allSteps(steps)].some(
    ({ kind, ...step }) =>
      (kind === 'group' || kind === 'repeat' || kind === 'work') &&
      'place' in step &&
      (step.place?.nouns[0]?.kind === 'chain' || step.place?.nouns[0]?.kind === 'start-chain'),
  );

/** A chain so short is begun in, and not worked along: its other links turn. */
const TINY = 3;

const inFirstChain = ({ steps }: RowShape): boolean =>
  steps.some(
    (step) =>
      (step.kind === 'work' || step.kind === 'group') &&
      step.place?.pick === 'first' &&
      step.place.nouns[0]?.kind === 'chain',
  );

function noteLeft(hands: Hands, left: number): void {
  const have = hands.edge.counted;
  fact(hands, { kind: 'left', left, have, used: hands.used, ...placeOfStep(hands) });
}

/**
 * The last thing made is a chain over what is left before the join. Where a skip was said behind that
 * chain, it has told what the chain spans.
 */
function endsWithSpace({ bench, nodes, skipped, rowFrom }: Hands): boolean {
  const classOf = (id: number) => bench.kinds.kinds[nodes.kind[id] ?? 0]?.class;
  let end = nodes.n;
  while (end > rowFrom && classOf(end - 1) === 'slip') end--;
  let id = end;
  while (id > rowFrom && (classOf(id - 1) === 'chain' || classOf(id - 1) === 'closer')) id--;
  return id < end && skipped.nodes <= id;
}

/**
 * Short rows: a row that says "turn", or the row behind it that does so first, after a stated or plain number of stitches leaves the rest
 * on purpose. One or two stitches left are more likely a slip.
 */
const meantToLeave = (
  hands: Hands,
  end: { left: number; agrees: boolean; turns: boolean },
): boolean =>
  end.turns &&
  end.left > 2 &&
  (end.agrees ||
    ((hands.edge.ring || hands.edge === hands.skippedEdge) && hands.statedStitches < 0)) &&
  hands.edge.kind === 'row';

/**
 * "Sl st in next sc, ch 1, sc in same st, sc in next 7 sc, turn": a row that slips in on one side leaves as
 * much on the other, with one more for the stitch under the hook.
 */
function slippedFirst({ sizeIndex, edge }: Hands, { steps }: RowShape): number {
  if (edge.ring || edge.kind !== 'row') return -1;
  const first = steps.find(({ kind }) => kind !== 'remark' && kind !== 'turn');
  if (first?.kind !== 'work' || first.stitch.stem !== 'ss') return -1;
  const { n, place } = first;
  return n?.values[sizeIndex] ?? place?.n?.values[sizeIndex] ?? 1;
}

/** "(4 rows)" against the label's range. */
function noteRowTotal(hands: Hands, task: Task): void {
  const { range } = task;
  if (range?.nth !== 1) return;
  for (const stated of task.asks.counts) {
    if (stated.unit !== 'row') continue;
    const value = numberFor(hands, stated.n);
    const rows = range.to - range.from + 1;
    // "Rows 2-88 … (88 rows)": those before them among them.
    if (value !== null && value !== rows && value !== range.to) {
      fact(hands, { kind: 'row-total', stated: value, range: rows, ...spanAt(hands, stated) });
    }
  }
}

/** Stated counts of a row in this size, for its record; `left`: those that were not compared. */
export const statedOf = (
  hands: Hands,
  counts: readonly StatedCount[],
  left: readonly StatedCount[],
): RowRecord['stated'] =>
  counts.flatMap((stated) => {
    const n = numberFor(hands, stated.n);
    const isShaping = stated.unit === 'decrease' && !left.includes(stated);
    if (n === null || stated.unit === 'row' || isShaping || stated.partial) return [];
    return [
      {
        n,
        unit: stated.unit,
        word: stated.stem ?? stated.word,
        compared: !left.includes(stated),
        span: spanAt(hands, stated),
      },
    ];
  });
