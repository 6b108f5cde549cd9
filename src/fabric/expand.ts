/** Labels and "repeat row" orders written out: which rows are worked, in which order. */

import { type PlacedInstruction, sizesNamed } from '../manuscript/index.ts';
import {
  type Instruction,
  nameOfRow,
  type RowLabel,
  type RowsAgainStep,
  type StandingOrder,
  type StatedCount,
  type Step,
} from '../notation/index.ts';
import { withNumbers } from './changed-numbers.ts';
import type { Fact } from './facts.ts';
import type { LengthPlan } from './length.ts';
import { shapedRows, shapingIn } from './shaped-rows.ts';
import { countAtEnd } from './stitches-end.ts';
import type { Task } from './task.ts';

/** Rows that "Rep rnd 4" may name: by number, the latest of that number; and all in order. */
export interface KnownRows {
  readonly byNumber: Map<number, Source>;
  readonly inOrder: Source[];
  /** "Row 3 and all odd rows": stands in for numbers that are not written out. */
  readonly every: { odd: Source | null; even: Source | null };
  last: number;
  /** Rows of a part that is finished: a row of the same number there is another row. */
  elsewhere: boolean;
}

/** An instruction whose steps can be worked again. */
export interface Source {
  readonly instruction: Instruction;
  readonly base: number;
  /** The row's number where it was first worked; `null` for none, or for a row of another part. */
  readonly number: number | null;
}

export const newKnownRows = (): KnownRows => ({
  byNumber: new Map(),
  inOrder: [],
  every: { odd: null, even: null },
  last: 0,
  elsewhere: false,
});

export interface Expansion {
  readonly tasks: readonly Task[];
  /** Of the order as a whole: rows named that do not exist, lengths without a number. */
  readonly facts: readonly Fact[];
  /** The label names no row in this size. */
  readonly omitted: boolean;
  /** Which of the tasks are worked to a length: one pass or more. */
  readonly pass: { readonly from: number; readonly to: number };
}

export interface Setting {
  readonly sizeIndex: number;
  /** Names of the sizes, to know which "Size M only" means. */
  readonly sizes: readonly string[];
  readonly orders: readonly StandingOrder[];
  /** Rows of the parts worked before, by the part's name in lower case: "as row 4 of Front". */
  readonly otherParts: ReadonlyMap<string, KnownRows>;
  readonly index: number;
  /** Most rows that one order may ask for. */
  readonly most: number;
  /** What is known of the length that the order asks for; `null` before it is, or for none. */
  readonly length: LengthPlan | null;
  /** Rows that "until 9 sts remain" takes; `null` before it is known, or for none. */
  readonly rowsToEnd: number | null;
}

const pick = (
  numbers: { readonly values: readonly (number | null)[] } | null,
  sizeIndex: number,
): number | null =>
  numbers === null
    ? null
    : ((numbers.values.length === 1 ? numbers.values[0] : numbers.values[sizeIndex]) ?? null);

/**
 * Row numbers of a label in one size. "Rnd 11 (13)" behind Rnd 12 is the one round that has number
 * 13 there; behind Rnd 10 it is as many rounds as lead up to 13. `before`: the last row worked.
 */
function numbersOf(label: RowLabel | null, sizeIndex: number, before: number): readonly number[] {
  if (!label) return [];
  const { numbers, lastBySize, firstBySize } = label;
  if (!lastBySize) return numbers;
  const first = firstBySize?.[sizeIndex] ?? numbers[0] ?? 1;
  const last = lastBySize[sizeIndex] ?? first;
  if (!firstBySize && numbers.length === 1 && before >= first && last > before) return [last];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

/** What one instruction asks for. */
export function expand(placed: PlacedInstruction, known: KnownRows, setting: Setting): Expansion {
  const { instruction } = placed;
  const { label } = instruction;
  const numbers = numbersOf(label, setting.sizeIndex, known.last);
  const otherSize =
    !namesSize(placed.sizes, setting) || (label !== null && !namesSize(label.sizes, setting));
  if (otherSize || (label?.lastBySize && numbers.length === 0)) {
    return { tasks: [], facts: [], omitted: true, pass: { from: 0, to: 0 } };
  }
  const again = instruction.steps.find((step) => step.kind === 'rows-again');
  const plan: Plan = { placed, numbers, setting, facts: [], behind: 0, unread: null };
  const filled = fillEvery(known, plan);
  const cut =
    again?.kind === 'rows-again' && worksBefore(instruction, again)
      ? instruction.steps.indexOf(again)
      : rowsCut(instruction) || secondOrder(instruction) || yarnJoinedBehind(instruction);
  if (cut > 0) return ownThenMore(placed, cut, known, setting);
  if (again?.kind === 'rows-again' && again.every && label === null) {
    const [source] = namedRows(again, known, plan);
    if (source) known.every[again.every] = source;
    return { tasks: [], facts: plan.facts, omitted: false, pass: { from: 0, to: 0 } };
  }
  const sources =
    again?.kind === 'rows-again'
      ? sourcesAgain(again, known, plan)
      : sourcesOnce(instruction, plan);
  const tasks = [...filled, ...labelled(sources, plan)];
  const inAll = again?.kind === 'rows-again' ? pick(again.rowsInAll, setting.sizeIndex) : null;
  const upTo = numbers.length === 0 && inAll === known.last + sources.length ? inAll : 0;
  const named = upTo > 0 ? sources.map((_, i) => known.last + 1 + i) : numbers;
  remember(known, placed, { numbers: named, sources, isAgain: again !== undefined });
  const behind = again?.kind === 'rows-again' ? plan.behind : 0;
  const pass = { from: filled.length, to: tasks.length - behind };
  return { tasks, facts: plan.facts, omitted: false, pass };
}

/** The same for a trial: the rows known stay as they were. The label names one row at most. */
export function expandOnTrial(
  placed: PlacedInstruction,
  known: KnownRows,
  setting: Setting,
): Expansion {
  const { last, every, inOrder, byNumber } = known;
  const rows = inOrder.length;
  const { odd, even } = every;
  const number = placed.instruction.label?.numbers[0] ?? 0;
  const own = byNumber.get(number);
  const expansion = expand(placed, known, setting);
  inOrder.length = rows;
  known.last = last;
  every.odd = odd;
  every.even = even;
  if (own) byNumber.set(number, own);
  else byNumber.delete(number);
  return expansion;
}

/** Is this size among those that the label names? A label that names none holds for all. */
function namesSize(words: string, setting: Setting): boolean {
  if (words === '' || setting.sizes.length < 2) return true;
  const named = sizesNamed(words, setting.sizes);
  return !named.includes(true) || (named[setting.sizeIndex] ?? true);
}

const worksBefore = (instruction: Instruction, again: RowsAgainStep): boolean => {
  const before = instruction.steps.slice(0, instruction.steps.indexOf(again));
  const worked = before.some(({ kind }) =>
    ['work', 'repeat', 'group', 'boxes', 'chart'].includes(kind),
  );
  // A row that is repeated behind itself was worked, though its words were not understood.
  const own = instruction.label?.numbers.some((n) => again.rows.includes(n)) ?? false;
  return worked || (own && before.some(({ kind }) => kind === 'unread'));
};

/**
 * "1 tr in each tr. Work 4 more rows of these 36 tr.", "Work even for 4 rows. Sc2tog around", "Dec 1 st at
 * each end of next row. Work 3 rows even.": where the rows told by their number begin behind a row, or
 * end before one; 0 where they are all there is.
 */
function rowsCut({ label, steps }: Instruction): number {
  const told = steps.findIndex(tellsRows);
  const again = steps.findIndex(({ kind }) => kind === 'rows-again');
  if (again >= 0 && opensRow(steps.slice(again + 1))) return again + 1;
  if (told < 0 || (label !== null && label.numbers.length > 1)) return 0;
  if (again >= 0 && again < told) return told;
  if (steps.slice(0, told).some((step) => makesRow(step) || isFoundation(step))) return told;
  const behind = steps.findIndex(
    (step, i) => i > told && (makesRow(step) || step.kind === 'rows-again'),
  );
  return Math.max(0, behind);
}

/** "Row 4: Same as row 2. Rep rows 1-4 for pattern": where the second order begins; 0 where there is one. */
const secondOrder = ({ steps }: Instruction): number => {
  const first = steps.findIndex(({ kind }) => kind === 'rows-again');
  return 1 + steps.slice(1).findIndex(({ kind }, i) => i >= first && kind === 'rows-again');
};

/** "…, join. Fasten off. Join B in any corner sp.": where the next round begins; 0 where nothing of the kind is said. */
function yarnJoinedBehind({ steps }: Instruction): number {
  const at = steps.findLastIndex(({ kind }) => kind === 'join');
  const last = steps[at];
  if (at < 1 || last?.kind !== 'join' || last.yarn === null || last.place === null) return 0;
  const before = steps.slice(0, at);
  const isClosed = before.some(({ kind }) => kind === 'join' || kind === 'fasten-off');
  if (!isClosed && last.place.pick !== 'any') return 0;
  const ends = steps.slice(at + 1).every(({ kind }) => kind === 'remark' || kind === 'mark');
  return ends && before.some(makesRow) ? at : 0;
}

/** "Rep row 2 until … With A, ch 1, sc in first 6 sts, hdc in next st; turn.": a row of its own behind the order. */
function opensRow(behind: readonly Step[]): boolean {
  const first = behind.find(({ kind }) => kind !== 'remark' && kind !== 'turn');
  if (first?.kind !== 'chain' && first?.kind !== 'yarn') return false;
  const works = ({ kind }: Step): boolean =>
    kind === 'work' || kind === 'group' || kind === 'repeat';
  return behind.filter(works).length > 1;
}

/** "Chain 84. Decrease 1 each side every 5 rows 15 times.": made once, and never with each of the rows. */
const isFoundation = (step: Step): boolean =>
  step.kind === 'chain' && (step.n?.values[0] ?? 0) >= LONGEST_START;

/** No start chain of a row is so long (common practice). */
const LONGEST_START = 10;

const tellsRows = (step: Step): boolean =>
  step.kind === 'even' && (step.rows !== null || step.measure !== null || !!step.shaping);

const makesRow = ({ kind }: Step): boolean =>
  ['work', 'repeat', 'group', 'boxes', 'chart', 'even'].includes(kind);

/** "Row 4: sc in each st across. Rep last 2 rows 3 more times": a row, and then an order. */
function ownThenMore(
  placed: PlacedInstruction,
  at: number,
  known: KnownRows,
  setting: Setting,
): Expansion {
  const { instruction } = placed;
  const cutAt = instruction.steps[at]?.from ?? 0;
  const split = (count: StatedCount): boolean => count.from < cutAt;
  const own: Instruction = {
    ...instruction,
    steps: instruction.steps.slice(0, at),
    counts: instruction.counts.filter(split),
  };
  const order: Instruction = {
    ...instruction,
    label: null,
    steps: instruction.steps.slice(at),
    counts: instruction.counts.filter((count) => !split(count)),
    orders: [],
    slips: [],
  };
  const first = expand({ ...placed, instruction: own }, known, setting);
  const second = expand({ ...placed, instruction: order }, known, setting);
  const n = first.tasks.length;
  return {
    tasks: [...first.tasks, ...second.tasks],
    facts: [...first.facts, ...second.facts],
    omitted: false,
    pass: { from: n + second.pass.from, to: n + second.pass.to },
  };
}

interface Plan {
  readonly placed: PlacedInstruction;
  readonly numbers: readonly number[];
  readonly setting: Setting;
  readonly facts: Fact[];
  /** Rows behind those that are repeated: "then row 2". */
  behind: number;
  /** Words of the order that could not be followed. */
  unread: Step | null;
}

/** An ordinary row, as often as its label says. */
function sourcesOnce(instruction: Instruction, plan: Plan): Source[] {
  const source = { instruction, base: plan.placed.from, number: null };
  const { label } = instruction;
  const shaped = sourcesShaped(instruction, plan);
  if (shaped) return shaped;
  const even = instruction.steps.find((step) => step.kind === 'even');
  const rows = even?.kind === 'even' ? pick(even.rows, plan.setting.sizeIndex) : null;
  // A range of many thousands of rows is read as open; it is a limit, and said to be one.
  if (label?.openEnd && /\d{5}/.test(label.text)) {
    cap(Number.POSITIVE_INFINITY, plan);
    return [];
  }
  const toLength = label?.openEnd || (even?.kind === 'even' && even.measure);
  if (toLength) noteLength(plan);
  const next = label?.next ? pick(label.next, plan.setting.sizeIndex) : null;
  const wanted = plan.numbers.length || (next ?? rows ?? rowsTold(instruction, plan) ?? 1);
  const n = cap(wanted * (toLength ? passesIn(plan) : 1), plan);
  return Array.from({ length: n }, () => source);
}

/** Rows shaped at their ends, and those between them that are not; `null`: no such order. */
function sourcesShaped(instruction: Instruction, plan: Plan): Source[] | null {
  const order = shapingIn(instruction.steps);
  if (!order) return null;
  const { sizeIndex } = plan.setting;
  const { times, next, every } = order.shaping;
  const label = instruction.label?.next ? pick(instruction.label.next, sizeIndex) : null;
  const named = plan.numbers.length > 1 ? plan.numbers.length : label;
  const told = times ? pick(times, sizeIndex) : null;
  if (told === null && named === null && !next && every > 1) noteLength(plan);
  const rows = shapedRows(instruction, { named, times: told });
  return rows
    .slice(0, cap(rows.length, plan))
    .map((row) => ({ instruction: row, base: plan.placed.from, number: null }));
}

/** "Sc across for 3 more rows", by no number of theirs: how many rows these are. */
function rowsTold({ counts }: Instruction, plan: Plan): number | null {
  const told = counts.find(({ unit }) => unit === 'row');
  return told ? pick(told.n, plan.setting.sizeIndex) : null;
}

function cap(n: number, plan: Plan): number {
  if (n <= plan.setting.most) return n;
  const { from, to } = plan.placed;
  plan.facts.push({ kind: 'limit', what: 'rows', from, to });
  return 0;
}

const passesIn = ({ setting: { length } }: Plan): number =>
  length?.kind === 'passes' ? length.passes : 1;

function noteLength(plan: Plan): void {
  const { from, to } = plan.placed;
  const { length } = plan.setting;
  if (length?.kind === 'passes') plan.facts.push({ ...length, kind: 'to-length', from, to });
  else plan.facts.push({ kind: 'open-length', why: length?.why ?? 'gauge', from, to });
}

/** Rows worked again: named ones in turn, as often as label, number or length ask. */
function sourcesAgain(step: RowsAgainStep, known: KnownRows, plan: Plan): Source[] {
  const named = changedRows(namedRows(step, known, plan), step, plan);
  if (named.length === 0) return [];
  if (step.measure) noteLength(plan);
  const then = step.then.flatMap((n) => rowNumbered(n, known, plan));
  plan.behind = then.length;
  const passes = step.measure ? passesIn(plan) : 1;
  const toEnd = step.stitchesAtEnd ? plan.setting.rowsToEnd : null;
  const wanted =
    toEnd ??
    passes *
      rowsWanted(step, { named: named.length, behind: then.length, done: known.last }, plan) -
      then.length * Number(plan.numbers.length > 1);
  const n = cap(Math.max(0, wanted), plan);
  const rows = Array.from({ length: n }, (_, i) => named[i % named.length] as Source);
  return [...changedInTurn(rows, step, plan), ...then];
}

/** "Rnds 6 to 9: rep rnd 5, having ch 4 on 6th rnd, ch 5 on 7th rnd": each as it is told. */
function changedInTurn(
  rows: readonly Source[],
  step: RowsAgainStep,
  plan: Plan,
): readonly Source[] {
  const changes = step.changes.filter((change) => change.rows.length > 0);
  if (changes.length === 0) return rows;
  return rows.map((source, i) => {
    const change = changes.find((one) => one.rows.includes(plan.numbers[i] ?? -1));
    const instruction = change ? withNumbers(source.instruction, change) : source.instruction;
    if (instruction) return change ? { ...source, instruction, number: null } : source;
    if (change) plan.unread = { kind: 'unread', says: 'work', from: change.from, to: change.to };
    return source;
  });
}

/** "Rep rnd 4, but ch 7 instead of ch 6"; where it is not plain which chains are meant, that is not understood. */
function changedRows(named: readonly Source[], step: RowsAgainStep, plan: Plan): readonly Source[] {
  let rows = named;
  for (const change of step.changes) {
    if (change.rows.length > 0) continue;
    const changed = rows.flatMap((source): Source[] => {
      const instruction = withNumbers(source.instruction, change);
      return instruction ? [{ ...source, instruction, number: null }] : [];
    });
    if (changed.length === rows.length) rows = changed;
    else plan.unread = { kind: 'unread', says: 'work', from: change.from, to: change.to };
  }
  return rows;
}

function rowsWanted(
  step: RowsAgainStep,
  {
    named,
    behind,
    done,
  }: { readonly named: number; readonly behind: number; readonly done: number },
  plan: Plan,
): number {
  const { sizeIndex } = plan.setting;
  const rows = pick(step.moreRows, sizeIndex);
  if (rows !== null) return rows;
  // "Until 10 rows are worked": those before this order among them, as the labels count them.
  const isRange = step.rows.length > 2 && step.rows.at(-1) === step.rowsInAll?.values[0];
  const inAll = plan.numbers.length > 1 ? null : pick(step.rowsInAll, sizeIndex);
  const all = isRange && inAll !== null && inAll <= done ? null : inAll;
  if (all !== null) return all > done ? all - done : all;
  const times = pick(step.times, sizeIndex);
  if (plan.numbers.length > 1) {
    // "Rows 7-50: Rep Rows 3-6 eleven times": the label and the words must speak of as many rows.
    const range = plan.numbers.length;
    const stated = times === null ? range : times * named + behind;
    const { from, to } = plan.placed;
    if (stated !== range) plan.facts.push({ kind: 'row-total', stated, range, from, to });
    return range;
  }
  if (times !== null) return times * named;
  const next = plan.placed.instruction.label?.next;
  return (next ? pick(next, sizeIndex) : null) ?? named;
}

function namedRows(step: RowsAgainStep, own: KnownRows, plan: Plan): readonly Source[] {
  const known = (step.part && partNamed(step.part, plan)) || own;
  const rows = rowsNamed(step, known, plan);
  return known === own ? rows : rows.map((source) => ({ ...source, number: null }));
}

function rowsNamed(step: RowsAgainStep, known: KnownRows, plan: Plan): readonly Source[] {
  if (step.named !== null) return rowCalled(step.named, known, plan);
  if (step.lastN !== null) return known.inOrder.slice(-step.lastN);
  if (step.rows.length > 0)
    return rowsThere(step, known, plan).flatMap((n) => rowNumbered(n, known, plan, step.part));
  return known.inOrder.slice(-1);
}

/** "Repeat row 2 to row 67" behind row 2: that row, until there are 67. "Repeat from row 2": and all behind it. */
function rowsThere(
  { rows, rowsInAll, onward }: RowsAgainStep,
  { last, byNumber }: KnownRows,
  { numbers }: Plan,
): readonly number[] {
  const [first = 0] = rows;
  // "Row 6: Rep from row 2" is one row.
  if (onward && numbers.length !== 1 && last > first) {
    const behind = Array.from({ length: last - first + 1 }, (_, i) => first + i);
    return behind.filter((n) => n === first || byNumber.has(n));
  }
  const there = rows.filter((n) => n <= last);
  return rowsInAll?.values[0] === rows.at(-1) && there.length > 0 ? there : rows;
}

/** The last row with that name in its label: "Dec row:", "Row 7 (decrease row):". */
function rowCalled(name: string, known: KnownRows, plan: Plan): Source[] {
  const source = known.inOrder.findLast(({ instruction: { label } }) =>
    [...(label?.text ?? '').matchAll(/([a-z]+) (?:row|round|rnd|rd)\b/gi)].some(
      ([, word = '']) => nameOfRow(word) === name,
    ),
  );
  if (source) return [source];
  const { from, to } = plan.placed;
  plan.facts.push({ kind: 'row-missing', row: name, from, to });
  return [];
}

function partNamed(words: string, plan: Plan): KnownRows | null {
  const wanted = words.toLowerCase().trim();
  for (const [name, known] of plan.setting.otherParts) {
    if (name !== '' && (name.includes(wanted) || wanted.includes(name))) return known;
  }
  return null;
}

/** `part`: of which part the words name the row, be it known or not. */
function rowNumbered(
  n: number,
  known: KnownRows,
  plan: Plan,
  part: string | null = null,
): Source[] {
  const { from, to } = plan.placed;
  const isOwn = plan.numbers[0] === n && !known.elsewhere;
  // "Rows 2-8: Rep row 2 of Front", where no part is called so.
  if (isOwn && part !== null) {
    plan.facts.push({ kind: 'row-missing', row: `${n} of ${part}`, from, to });
    return [];
  }
  if (isOwn && plan.numbers.length === 1) {
    plan.facts.push({ kind: 'row-loop', row: String(n), from, to });
    return [];
  }
  const source =
    known.byNumber.get(n) ?? (n <= known.last ? known.every[n % 2 === 0 ? 'even' : 'odd'] : null);
  if (source) return [source];
  plan.facts.push({ kind: 'row-missing', row: String(n), from, to });
  return [];
}

/** Rows not written out because an earlier label spoke for them: "Row 2 and all even rows". */
function fillEvery(known: KnownRows, plan: Plan): Task[] {
  const first = plan.numbers[0];
  if (first === undefined || first <= known.last + 1 || first - known.last > 200) return [];
  const tasks: Task[] = [];
  for (let n = known.last + 1; n < first; n++) {
    const source = known.every[n % 2 === 0 ? 'even' : 'odd'];
    if (!source || known.last === 0) return [];
    tasks.push(
      taskFor(source, plan, {
        number: n,
        range: null,
        label: String(n),
        states: source.instruction,
        statesBase: source.base,
      }),
    );
    known.inOrder.push(source);
  }
  return tasks;
}

function labelled(sources: readonly Source[], plan: Plan): Task[] {
  const { numbers, unread } = plan;
  const own = plan.placed.instruction;
  const instruction = unread ? { ...own, steps: [...own.steps, unread] } : own;
  const { label } = instruction;
  const first = numbers[0];
  const last = numbers.at(-1);
  // The count of a range holds after each row; where different rows are repeated, at the end.
  const alike = sources.every((source) => source.instruction === sources[0]?.instruction);
  const holds = (i: number, source: Source): boolean =>
    source.instruction === own || (alike && ranged) || i === sources.length - 1;
  const ranged = numbers.length > 1 && first !== undefined && last !== undefined;
  const each = ranged ? countOfEach(instruction, sources.length) : null;
  const told = plan.setting.rowsToEnd === null ? instruction : countAtEnd(instruction);
  return sources.map((source, i) => {
    const number = numbers[i] ?? (numbers.length === 1 ? (numbers[0] ?? null) : null);
    return taskFor(source, plan, {
      number,
      range: ranged ? { from: first, to: last, nth: i + 1 } : null,
      label: labelText(label, number),
      states: each?.[i] ?? (holds(i, source) ? told : { ...instruction, counts: [] }),
      statesBase: plan.placed.from,
    });
  });
}

/** "Rnds 2-4: … (12 sts) (18 sts) (27 sts)": as many counts as rows, one for each. */
function countOfEach(instruction: Instruction, rows: number): readonly Instruction[] | null {
  const { counts } = instruction;
  const unit = counts[0]?.unit;
  const alike = counts.every((count) => count.unit === unit && count.n.values.length === 1);
  if (counts.length !== rows || !alike) return null;
  return counts.map((count) => ({ ...instruction, counts: [count] }));
}

const WORDS = { row: 'Row', round: 'Rnd' } as const;

export function labelText(label: RowLabel | null, number: number | null): string {
  if (!label) return '';
  if (number === null) return label.text;
  if (label.word !== '') return `${WORDS[label.word]} ${number}`;
  // "R1" is a row to some and a round to others: it stays as written.
  return /^r/i.test(label.text) ? `R${number}` : String(number);
}

function taskFor(
  source: Source,
  plan: Plan,
  as: {
    number: number | null;
    range: Task['range'];
    label: string;
    states: Instruction;
    statesBase: number;
  },
): Task {
  const { placed, setting } = plan;
  return {
    instruction: source.instruction,
    base: source.base,
    at: { from: placed.from, to: placed.to },
    asks: as.states,
    asksBase: as.statesBase,
    index: setting.index,
    label: as.label,
    number: as.number,
    repeats: source.number,
    range: as.range,
    orders: setting.orders,
  };
}

interface Written {
  readonly numbers: readonly number[];
  readonly sources: readonly Source[];
  /** Rows worked again, rather than the instruction's own. */
  readonly isAgain: boolean;
}

function remember(
  known: KnownRows,
  placed: PlacedInstruction,
  { numbers, sources: rows, isAgain }: Written,
): void {
  const { instruction } = placed;
  const own: Source = { instruction, base: placed.from, number: null };
  const sources = isAgain ? rows : numbers.map((number, i) => ({ ...(rows[i] ?? own), number }));
  numbers.forEach((n, i) => {
    known.byNumber.set(n, sources[i] ?? sources.at(-1) ?? own);
    known.last = Math.max(known.last, n);
  });
  const { label } = instruction;
  if (label?.every) known.every[label.every] = (isAgain ? rows[0] : null) ?? own;
  if (isAgain) known.inOrder.push(...rows);
  else if (label || instruction.steps.some(makesRow)) {
    for (let i = 0; i < Math.max(1, rows.length); i++)
      known.inOrder.push(sources[i] ?? rows[i] ?? own);
  }
}
