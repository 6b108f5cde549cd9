/**
 * One part, in one size: its rows in order. Doubts get one reading for the whole part: where rows
 * need another one than custom's, the part is worked again in that reading, and what reads best
 * overall stays.
 */
import type { Part, PlacedInstruction } from '../manuscript/index.ts';
import type { StandingOrder, Step } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { closes, hasUnknownGroups, isSureRow, statedInstead, tellsItsNumber } from './after-row.ts';
import { around } from './around.ts';
import { type Attempted, attemptRow, statedAt } from './attempt.ts';
import { type Charts, chartNamed, toldBy, withRow } from './charts.ts';
import { bareEdge } from './edge.ts';
import { expand, expandOnTrial, type KnownRows, newKnownRows, type Setting } from './expand.ts';
import type { RowRecord } from './fabric.ts';
import { type Fact, MISFITS } from './facts.ts';
import { type Hands, NO_MOVES, TOO_MANY, takeYarnNamed } from './hands.ts';
import { leftOnPurpose } from './left-on-purpose.ts';
import {
  type LengthPlan,
  lengthAsked,
  type Measured,
  measureOn,
  newMeasured,
  passesTo,
} from './length.ts';
import { mark, restore } from './mark.ts';
import { overStitches } from './over-stitches.ts';
import { joinedBy } from './pieces.ts';
import type { Asked, Choices } from './readings.ts';
import { recordOf } from './record.ts';
import type { Before, RowResult } from './row-setting.ts';
import { isMoveless } from './row-start.ts';
import { readOtherwise, type Worded } from './same-words.ts';
import { allSteps, isSlip, shapeOf } from './shape.ts';
import { isCountSlip } from './slips.ts';
import { namesSlips } from './slips-named.ts';
import { goesOn, MOST_PASSES, rowsTo, stitchesAsked } from './stitches-end.ts';
import {
  AS_BENEATH,
  asBefore,
  asBeneath,
  bearsOut,
  isOpening,
  type Left,
  newSupposing,
  type Supposing,
  supposedName,
  UNREAD_ROW,
} from './supposed.ts';
import type { Task } from './task.ts';
import { changeBehind, withItsYarn } from './task-yarn.ts';
import { weighedRow } from './weigh.ts';

/** Where the work on a piece stands between rows and between parts that go on. */
export interface Progress {
  before: Before;
  round: boolean;
  known: KnownRows;
}

export const newProgress = (): Progress => ({
  before: {
    row: null,
    rest: null,
    turned: null,
    ready: false,
    open: false,
    statedInstead: null,
    openCount: false,
    statedAt: -1,
    guessed: false,
    unreadOnKnown: false,
    supposed: null,
    groups: false,
    sidesGuessed: false,
    chartRows: new Map(),
    side: 'RS',
  },
  round: false,
  known: newKnownRows(),
});

export interface PartRun {
  readonly rows: readonly RowRecord[];
  readonly asked: ReadonlyMap<string, Asked>;
  readonly needs: readonly Need[];
  readonly settled: Hands['settled'];
  /** Counts that differ from what was made, on which the row behind comes out as well: see `attempt`. */
  readonly carried: ReadonlySet<string>;
  readonly supposing: Supposing;
  /** The million was reached: rows from there on were not worked. */
  isCut: boolean;
  progress: Progress;
}

/** A row that needed another reading. */
export interface Need extends Span {
  readonly doubt: string;
  readonly reading: string;
  readonly local: boolean;
  /** Its stated count is met in that reading. */
  readonly proven: boolean;
}

export interface PartSetting {
  readonly part: Part;
  readonly partIndex: number;
  readonly instance: number;
  readonly orders: readonly StandingOrder[];
  readonly charts: Charts;
  readonly sizes: readonly string[];
  readonly otherParts: ReadonlyMap<string, KnownRows>;
  readonly progress: Progress;
  /** Of the manuscript. */
  readonly text: string;
}

const copyKnown = (known: KnownRows): KnownRows => ({
  byNumber: new Map(known.byNumber),
  inOrder: [...known.inOrder],
  every: { ...known.every },
  last: known.last,
  elsewhere: known.elsewhere,
});

/** Steps that one run of a part may take: two for every stitch of the largest piece. */
const MOST_MOVES = 2_000_000;

/**
 * Works the part in these readings. `former`: a run in the same readings, by which rows that do not
 * come out are weighed; `null`: they are not.
 */
export function runPart(
  hands: Hands,
  setting: PartSetting,
  choices: Choices,
  former: PartRun | null = null,
): PartRun {
  const run: Run = {
    former,
    hands,
    setting,
    choices,
    progress: { ...setting.progress, known: copyKnown(setting.progress.known) },
    rows: [],
    asked: new Map(),
    needs: [],
    settled: new Map(),
    carried: new Set(),
    supposing: newSupposing(),
    orders: [...setting.orders],
    seen: new Map(),
    measured: newMeasured(),
    worded: new Map(),
    left: new Map(),
    isCut: false,
  };
  hands.bench.limit.moves = MOST_MOVES;
  hands.slipsNamed = namesSlips(setting.part);
  const { yarns } = setting.part;
  takeYarnNamed(hands, (yarns.length > 1 ? yarns[setting.instance - 1] : yarns[0]) ?? null);
  try {
    for (const index of setting.part.instructions.keys()) workInstruction(run, index);
  } catch (problem) {
    if (problem !== TOO_MANY) throw problem;
    run.isCut = true;
  }
  return run;
}

interface Run extends PartRun {
  readonly former: PartRun | null;
  readonly hands: Hands;
  readonly setting: PartSetting;
  readonly choices: Choices;
  readonly rows: RowRecord[];
  readonly asked: Map<string, Asked>;
  readonly needs: Need[];
  readonly carried: Set<string>;
  readonly orders: StandingOrder[];
  /** How often each label was worked, for ids. */
  readonly seen: Map<string, number>;
  readonly measured: Measured;
  readonly worded: Worded;
  /** What rows that were not understood left, by where they stand. */
  readonly left: Map<number, Left>;
}

function workInstruction(run: Run, index: number): void {
  const { hands, setting, progress } = run;
  const placed = setting.part.instructions[index];
  if (!placed) return;
  const { from } = placed;
  const orders = placed.instruction.orders.map((order) => ({
    ...order,
    from: order.from + from,
    to: order.to + from,
  }));
  run.orders.push(...orders);
  const settled: Setting = {
    sizeIndex: hands.sizeIndex,
    sizes: setting.sizes,
    otherParts: setting.otherParts,
    orders: run.orders,
    index,
    most: 100_000,
    length: null,
    rowsToEnd: null,
  };
  if (beginsPiece(run, index)) {
    hands.edge = bareEdge('none');
    hands.pending = null;
    hands.moves = NO_MOVES;
    progress.before = newProgress().before;
  }
  const length = lengthFor(run, placed, settled);
  const rowsToEnd = rowsToStitches(run, placed, settled);
  const expansion = expand(placed, progress.known, { ...settled, length, rowsToEnd });
  if (expansion.omitted) {
    run.rows.push(recordOf(run, { placed, index, facts: [], verdict: 'omitted' }));
    return;
  }
  const shaped = shareCount(expansion.tasks) && worksShaping(run, expansion.tasks);
  let facts = expansion.facts;
  for (const [i, task] of expansion.tasks.entries()) {
    const last = i === expansion.tasks.length - 1;
    workTask(run, shaped && !last ? uncounted(task) : task, facts);
    facts = [];
  }
  changeBehind(hands, placed.instruction);
  if (facts.length === 0) return;
  const lost = facts.some((f) => f.kind === 'row-missing' || f.kind === 'row-loop');
  run.rows.push(recordOf(run, { placed, index, facts, verdict: lost ? 'unread' : 'unchecked' }));
}

/**
 * "With A, ch 38" before a Row 1 that counts from the hook: what was worked before in no row of a number,
 * how a special stitch is made or how colours are changed, is not what it stands on.
 */
function beginsPiece({ setting, progress }: Run, index: number): boolean {
  const [chain, row] = [0, 1].map((k) => setting.part.instructions[index + k]?.instruction);
  if (!chain || row?.label?.numbers[0] !== 1 || chain.label !== null) return false;
  if (progress.before.row === null || progress.known.byNumber.size > 0) return false;
  const shape = shapeOf(chain);
  const isChain = shape.idle && chain.steps.some(({ kind }) => kind === 'chain');
  return isChain && shapeOf(row).firstWork?.place?.fromHook === true;
}

/** "(19 sc) Rep Dec row twice. (15 sc)": the row and what is repeated have counts of their own. */
const shareCount = (tasks: readonly Task[]): boolean => {
  const last = tasks.at(-1)?.asks.counts;
  return tasks.length > 1 && tasks.every(({ asks }) => asks.counts === last);
};

const uncounted = (task: Task): Task => ({ ...task, asks: { ...task.asks, counts: [] } });

/**
 * "Rows 23-29: hdc2tog at neck edge, hdc to end. (8)": each row shapes again, and the count is that
 * of the last. Told by working the rows once on trial: the first does not make the count, the last
 * does.
 */
function worksShaping(run: Run, tasks: readonly Task[]): boolean {
  const { progress } = run;
  const first = tasks[0];
  const last = tasks.at(-1);
  if (!first || !last || first.asks.counts.length === 0 || tasks.length > 200) return false;
  return onTrial(run, (trial, back) => {
    workTask(trial, first, []);
    const misses = trial.rows[0];
    if (!misses?.facts.some((f) => f.kind === 'count')) return false;
    back();
    trial.progress = { ...progress };
    trial.rows.length = 0;
    for (const task of tasks) workTask(trial, task === last ? task : uncounted(task), []);
    const end = trial.rows.at(-1);
    if (trial.needs.length > 0 || !end) return false;
    return end.verdict === 'proven' || isNearer(end, misses);
  });
}

/** Does the row come nearer to what is stated? By fewer counts that differ, or by a slip only. */
function isNearer(row: RowRecord, than: RowRecord): boolean {
  const [own, other] = [countsOff(row), countsOff(than)];
  if (row.facts.some((f) => f.kind !== 'count' && MISFITS.has(f.kind))) return false;
  return own.length < other.length || (own.every(isSlipped) && !other.every(isSlipped));
}

const countsOff = ({ facts }: RowRecord) => facts.flatMap((f) => (f.kind === 'count' ? [f] : []));

const isSlipped = ({ value, computed }: { value: number; computed: number }): boolean =>
  isCountSlip({ stated: value, made: computed });

/** Works on trial and takes it back: what is found stays. `back` does so in mid-trial. */
function onTrial<T>(run: Run, find: (trial: Run, back: () => void) => T): T {
  const { hands, progress } = run;
  const start = mark(hands);
  const trial: Run = {
    ...run,
    former: null,
    progress: { ...progress, known: progress.known },
    rows: [],
    asked: new Map(),
    needs: [],
    settled: new Map(),
    carried: new Set(),
    supposing: newSupposing(),
    seen: new Map(),
  };
  const historyLength = hands.history.length;
  const joinedLength = hands.joined.length;
  const back = (): void => {
    restore(hands, start);
    hands.history.length = historyLength;
    hands.joined.length = joinedLength;
  };
  const found = find(trial, back);
  back();
  return found;
}

/** How often an order to a length goes over its rows: one pass is worked on trial and measured. */
function lengthFor(run: Run, placed: PlacedInstruction, setting: Setting): LengthPlan | null {
  const { bench } = run.hands;
  const measure = lengthAsked(placed.instruction);
  if (measure === null) return null;
  if (!bench.heights.known()) return { kind: 'open', why: 'gauge' };
  if (measure === 'said') return { kind: 'open', why: 'said' };
  const { mm, since } = measure;
  if (mm === null || since === null || (since === 'start' && run.setting.part.continues)) {
    return { kind: 'open', why: 'words' };
  }
  const before = measureOn(run.measured, run.rows, bench);
  return onTrial(run, (trial) => {
    const { tasks, pass } = expandOnTrial(placed, run.progress.known, setting);
    for (const task of tasks.slice(0, pass.from)) workTask(trial, task, []);
    const lead = trial.rows.length;
    for (const task of tasks.slice(pass.from, pass.to)) workTask(trial, task, []);
    const rows = { lead: trial.rows.slice(0, lead), pass: trial.rows.slice(lead) };
    if (rows.pass.length !== pass.to - pass.from) return { kind: 'open', why: 'rows' };
    return passesTo({ wantedMm: mm, since, before, ...rows }, bench);
  });
}

/** How many rows an order to a number of stitches takes: its passes are worked on trial. */
function rowsToStitches(run: Run, placed: PlacedInstruction, setting: Setting): number | null {
  const wanted = stitchesAsked(placed.instruction, setting.sizeIndex);
  if (wanted === null) return null;
  // "Rep rows 2 and 3 until there are 30 sc. Then rep row 2 …": up to the order that asks.
  const { steps } = placed.instruction;
  const asks = steps.findIndex((step) => step.kind === 'rows-again' && step.stitchesAtEnd);
  const instruction = { ...placed.instruction, steps: steps.slice(0, asks + 1) };
  return onTrial(run, (trial) => {
    const alone = { ...placed, instruction };
    const { tasks, pass } = expandOnTrial(alone, run.progress.known, setting);
    for (const task of tasks.slice(0, pass.from)) workTask(trial, uncounted(task), []);
    const lead = trial.rows.length;
    const rows = tasks.slice(pass.from, pass.to);
    const made = (): number => (trial.rows.at(-1) ?? run.rows.at(-1))?.tally.stitches ?? 0;
    const start = made();
    for (let n = 0, before = start; n < MOST_PASSES; n++, before = made()) {
      for (const task of rows) workTask(trial, uncounted(task), []);
      if (made() === wanted || !goesOn(wanted, before, made())) break;
    }
    const all = trial.rows.slice(lead).map(({ tally }) => tally.stitches);
    // A pass that leaves no row, or an end that another row was to bring: once, as it stands.
    return all.length === 0 || all.length % rows.length > 0
      ? null
      : rowsTo(wanted, all, rows.length);
  });
}

function workTask(run: Run, asked: Task, facts: readonly Fact[]): void {
  const { hands, progress, choices } = run;
  const { before } = progress;
  // Behind a chain of its own the row begins on that.
  const onRow = before.row !== null && !before.ready;
  const task = withItsYarn(hands, onRow ? overStitches(asked) : asked);
  const setting = {
    charts: run.setting.charts,
    orders: task.orders,
    round: progress.round,
    turnsNext: turnsNext(run, task),
    part: choices,
  };
  const { part, otherParts, text } = run.setting;
  const worked = { rows: run.rows, part, otherParts, text };
  const attempted = run.former
    ? weighedRow({ hands, task, before, setting }, around(worked, run.former, task))
    : attemptRow(hands, task, before, setting);
  for (const asked of attempted.asked)
    if (!run.asked.has(asked.doubt)) run.asked.set(asked.doubt, asked);
  for (const [doubt, settled] of hands.settled)
    if (!run.settled.has(doubt)) run.settled.set(doubt, settled);
  noteNeeds(run, attempted);
  if (attempted.carries !== null) run.carried.add(attempted.carries);
  const shape = shapeOf(task.instruction);
  if (endsSpiral(run, task, attempted.result)) return;
  const silent = shape.idle && attempted.result.facts.length === 0 && task.asks.counts.length === 0;
  // A row that states a count and is nothing but talk was worked all the same, nobody knows how.
  const isTalk = hands.statedStitches > 0 && task.instruction.steps.every(isRemark);
  // "Continue increasing until you have 60 sc": nobody knows how, but what they end with is said.
  const toldOnly = hands.partly && hands.statedStitches > 0;
  const isRow = task.label !== '' || run.setting.part.instructions[task.index]?.behind === true;
  const lost = toldOnly || ((hands.unread || isTalk) && isRow);
  if (isMoveless(hands, shape, attempted.result) && !lost) goOnReady(run, task, attempted.result);
  else goOn(run, task, attempted, facts);
  if (silent && facts.length === 0) return;
  // "Sl st in next st. Fasten off." behind the last row finishes the piece and is no row.
  const finishes =
    shape.onlySlips &&
    task.label === '' &&
    task.asks.counts.length === 0 &&
    [...shape.chainLengths].every((n) => n < LOOP);
  if (finishes && attempted.result.facts.length + facts.length === 0) return;
  if (shape.idle && task.label === '' && attempted.result.facts.length + facts.length === 0) return;
  const closes = run.progress.before.row?.ring ?? false;
  const otherwise = readOtherwise(run.worded, attempted, run.setting.text);
  const told = otherwise.length === 0 ? facts : [...facts, ...otherwise];
  run.rows.push(recordOf(run, { task, attempted, facts: told, closes }));
  const turns = task.instruction.steps.some(({ kind }) => kind === 'turn');
  const meant = leftOnPurpose(run.rows, turns);
  if (meant) run.rows[run.rows.length - 2] = meant;
}

/** "Sl st in next 4 sc, ch 16, sk 5, sl st in next sc": so long a chain is a handle, and no finish. */
const LOOP = 4;

/** "Sc in next st, sl st in next st to join" between two rounds: the end of the first, and no row. */
function endsSpiral({ progress, hands }: Run, task: Task, result: RowResult): boolean {
  const { steps, counts } = task.instruction;
  const closes = steps.some((s) => s.kind === 'join' || (s.kind === 'work' && isSlip(s)));
  // "Join B in any corner": there the next round begins.
  const attaches = steps.some((s) => s.kind === 'join' && s.yarn !== null && s.place !== null);
  const plain = !attaches && steps.every(({ kind }) => CLOSING.has(kind));
  const few = result.tally.stitches <= 2 && result.edge.counted > 6 && result.edge.ring;
  const between = task.label === '' && counts.length === 0 && progress.before.row?.ring === true;
  return between && few && closes && plain && !hands.unread;
}

const isRemark = ({ kind }: Step): boolean => kind === 'remark';

const CLOSING: ReadonlySet<string> = new Set(['work', 'join', 'remark', 'loop', 'mark']);

/** Does the row behind this one open with a turn? */
function turnsNext({ setting }: Run, task: Task): boolean {
  const next = setting.part.instructions[task.index + 1];
  const last = task.range === null || task.range.nth > task.range.to - task.range.from;
  return last && next !== undefined && shapeOf(next.instruction).turnsAtStart;
}

function noteNeeds(run: Run, attempted: Attempted): void {
  for (const { asked, reading } of attempted.exceptions) {
    const { doubt, local, from, to } = asked;
    const proven = attempted.result.verdict === 'proven';
    run.needs.push({ doubt, reading, local, proven, from, to });
  }
}

/** Nothing was worked: the hands stay where they are, ready for the next row. */
function goOnReady(run: Run, task: Task, result: RowResult): void {
  const { progress, hands } = run;
  const shape = shapeOf(task.instruction);
  progress.round = result.round || progress.round;
  const { before } = progress;
  progress.before = { ...before, turned: shape.turnsAtStart ? true : before.turned };
  const moved =
    hands.edge.kind !== 'none' && (before.row === null || hands.edge !== before.rest?.edge);
  const attached = task.instruction.steps.some(
    (s) => s.kind === 'join' || s.kind === 'work' || s.kind === 'ring' || s.kind === 'chain',
  );
  if (moved && attached) progress.before = { ...progress.before, ready: true };
}

function goOn(run: Run, task: Task, attempted: Attempted, facts: readonly Fact[]): void {
  const { hands, progress } = run;
  const { result } = attempted;
  const shape = shapeOf(task.instruction);
  const { before } = progress;
  // "Hdc in next 11 sts", and the next row turns: the round was left, and is worked back on.
  const turns = shape.turnsAtEnd ?? turnsNext(run, task);
  const left = !result.misfit && hands.pos < hands.limit && turns;
  const ring = closes(result, shape, task) && !(left && shape.join === null && !shape.spiral);
  progress.round = ring;
  hands.history.push({
    part: run.setting.partIndex,
    number: task.number,
    from: result.from,
    to: result.to,
    edge: result.edge,
    ring,
    // What is worked behind yarn that was joined by an order of its own may be an edging.
    isSure: isSureRow(result, facts) && !(before.ready && result.edge.kind === 'row'),
    isBorder: result.isBorder,
  });
  hands.joined.push(...joinedBy(hands));
  const rest =
    ring &&
    shape.join === null &&
    !result.misfit &&
    hands.pos < hands.limit &&
    hands.edge.kind === 'row' &&
    !hands.leave &&
    !hands.tookSpace;
  const stated = statedInstead(result, task, hands);
  const chartRows = new Map(before.chartRows);
  for (const step of allSteps(task.instruction.steps)) {
    if (step.kind !== 'chart') continue;
    const chart = chartNamed(run.setting.charts, step.name);
    if (!chart) continue;
    chartRows.set(chart.name, withRow(chart, step, toldBy(task, before.chartRows)));
  }
  const after: Before = {
    row: { from: result.from, to: result.to, ring, joined: ring && shape.join !== null },
    rest: rest ? { edge: hands.edge, from: hands.pos } : null,
    turned: shape.turnsAtEnd ?? (shape.fastensOff ? false : null),
    ready: false,
    open:
      stated === null &&
      (attempted.result.facts.some(({ kind }) => kind === 'not-followed') ||
        (hands.unread && hands.statedStitches !== result.tally.stitches) ||
        (result.edge.open && hands.statedStitches < 0 && !tellsItsNumber(shape)) ||
        hands.guessesNumber ||
        (hands.loose &&
          (result.tally.stitches === 0 || (hands.partly && task.asks.counts.length === 0)))),
    statedInstead: stated,
    openCount: stated !== null && result.edge.open,
    statedAt: stated === null ? -1 : statedAt(task),
    guessed: hands.unread || hands.partly,
    unreadOnKnown:
      hands.unread &&
      !result.edge.open &&
      !result.facts.some(({ kind }) => kind === 'not-followed'),
    supposed: null,
    groups: hasUnknownGroups(shape),
    sidesGuessed: result.sidesGuessed,
    chartRows,
    side: result.side,
  };
  progress.before = behind(run, task, attempted, after);
  if (shape.fastensOff) hands.edge = bareEdge('none');
}

/** What the next row meets, where rows that were not understood may be taken to leave what they stand on. */
function behind(
  { hands, setting, progress, choices, supposing, settled, left }: Run,
  task: Task,
  { result, refutes }: Attempted,
  after: Before,
): Before {
  const { before } = progress;
  const { supposed } = before;
  if (supposed !== null) {
    if (refutes) supposing.refuted.add(supposed);
    else if (bearsOut(hands, result, task.instruction.steps)) supposing.borneOut.add(supposed);
  }
  const again = asBefore(hands, after, result, { task, left });
  if (again) return again;
  if (after.open && (hands.unread || hands.partly) && isOpening(hands, result, before, task)) {
    const name = supposedName(task);
    supposing.openings.add(name);
    if (choices.get(name) !== AS_BENEATH) return after;
    const { from, to } = setting.part.instructions[task.index] ?? {
      from: task.base,
      to: task.base,
    };
    settled.set(UNREAD_ROW, { reading: AS_BENEATH, alternatives: [], because: 'count', from, to });
    return asBeneath(after, before, result, name);
  }
  const goesOn = supposed !== null && !refutes && result.verdict === 'unstated';
  return goesOn ? { ...after, supposed } : after;
}
