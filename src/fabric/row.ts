/** One row: the edge is prepared, the steps are worked, the sum is drawn. */

import type { StandingOrder, StatedCount, Step } from '../notation/index.ts';
import { toldBy } from './charts.ts';
import { compare, statedStitches } from './compare-counts.ts';
import type { RowContext } from './context.ts';
import { worksCornerBlocks } from './corner-blocks.ts';
import { behindPetals } from './earlier-row.ts';
import type { Edge } from './edge.ts';
import type { RowRecord, Verdict } from './fabric.ts';
import { type Fact, MISFITS } from './facts.ts';
import {
  atStart,
  beginRow,
  fact,
  type Hands,
  NO_LENGTHS,
  NO_MOVES,
  numberFor,
  spanAt,
} from './hands.ts';
import { mark, restore } from './mark.ts';
import { passWords } from './pass-words.ts';
import { chainsLeft, gather } from './pieces.ts';
import { edgeFor } from './row-edge.ts';
import { noteEnd, noteLeft, passSkipToLast } from './row-end.ts';
import type { Before, RowResult, RowSetting } from './row-setting.ts';
import { allSteps, moveAt, type RowShape, shapeOf } from './shape.ts';
import { noteSpacesLeft } from './spaces-left.ts';
import { makeStartChain, readStartChain } from './start-chain.ts';
import { fillOf } from './steps/border.ts';
import { alongLastChain, beginsWithMore } from './steps/box-more.ts';
import { standInClosed } from './steps/close-space.ts';
import { moveStart } from './steps/move.ts';
import { tallyOf } from './tally.ts';
import type { Task } from './task.ts';
import { walk } from './walk.ts';

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
  walkFilled(hands, task, row);
  noteChanges(hands, task);
  const turns = shape.turnsAtEnd ?? setting.turnsNext;
  return {
    ...conclude(hands, task, { shape, row, available, turned, turns, before }),
    side,
  };
}

/** Sides of which the words do not say how many stitches they take are worked again with those of the count. */
function walkFilled(hands: Hands, { instruction: { steps } }: Task, row: RowContext): void {
  const start = row.shape.mayLeaveSides && hands.statedStitches >= 0 ? mark(hands) : null;
  walk(hands, steps, row, { from: 0, top: true });
  const fill = start && fillOf(hands);
  if (start === null || fill === null) return;
  restore(hands, start);
  hands.sideFill = fill;
  walk(hands, steps, row, { from: 0, top: true });
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
  if (end.before.sidesGuessed && goesBySides(shape)) leaveOpen(hands);
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
    isBorder: hands.border !== null && !hands.rowEdge.ring,
    sidesGuessed: (hands.border?.openSides ?? 0) > 1 || end.before.sidesGuessed,
  };
}

/** Spaces, corners and groups are looked for where nobody knows that they are: no fault is proven. */
function leaveOpen(hands: Hands): void {
  if (!hands.facts.some((what) => MISFITS.has(what.kind))) return;
  hands.partly = true;
  hands.loose = true;
}

/** "*Sk 2, shell in next st; rep from * to corner": how often hangs on the side. */
const goesBySides = ({ steps }: RowShape): boolean =>
  [...allSteps(steps)].some(({ kind }) => kind === 'repeat');

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
