/**
 * What one slip of the pen does to the words of a row: a number a little off, a word left out, doubled
 * or exchanged. A row that comes out with one of these has a slip in it, most likely; one that comes
 * out with none was rather misread here. See `weigh.ts`.
 */
import type { Numbers, StatedCount, Step, StitchShape, StitchTerm } from '../notation/index.ts';

/** Steps that are worked: others say nothing that a count could hold. */
const WORKED: ReadonlySet<Step['kind']> = new Set([
  'work',
  'group',
  'repeat',
  'skip',
  'chain',
  'boxes',
  'chart',
  'unworked',
]);

/** By how much a number slips, the likeliest first: a little, or in its tens. */
const OFF = [1, -1, 2, -2, 10, -10];

/** What may stand instead of a number. */
type Slips = (value: number) => Iterable<number>;

const near: Slips = (value) => OFF.map((off) => value + off).filter((other) => other >= 0);

/** Any number up to twice as many and some. */
function* any(value: number): Generator<number> {
  for (let other = 1; other <= 2 * value + 12; other++) if (other !== value) yield other;
}

/** The steps with one number changed as numbers slip, each once. Numbers of other sizes stay. */
export function* numberSlips(
  steps: readonly Step[],
  size: number,
  slips: Slips = near,
): Generator<readonly Step[]> {
  const again = writtenOnce(steps);
  for (const numbers of again)
    for (const other of otherNumbers(numbers, { size, slips }))
      yield everywhere(steps, numbers, other);
  yield* inList(steps, function* (step) {
    if (WORKED.has(step.kind)) yield* numbersIn(step, { size, slips });
  });
}

/** "*2 sc, inc; rep from * twice, 9 sc, rep from * twice": numbers of words that are worked in several places. */
function writtenOnce(steps: readonly Step[]): readonly Numbers[] {
  if (!steps.some((step) => step.kind === 'repeat' && step.again)) return [];
  const seen = new Map<number, Numbers>();
  const twice = new Map<number, Numbers>();
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (isNumbers(value)) {
      if (value.to > value.from) (seen.has(value.from) ? twice : seen).set(value.from, value);
    } else for (const inner of Object.values(value)) look(inner);
  };
  look(steps);
  return [...twice.values()];
}

function everywhere<T>(node: T, numbers: Numbers, other: Numbers): T {
  if (typeof node !== 'object' || node === null) return node;
  if (Array.isArray(node)) return node.map((one) => everywhere(one, numbers, other)) as T;
  if (isNumbers(node)) return node.from === numbers.from ? (other as T) : node;
  const entries = Object.entries(node).map(([key, one]) => [key, everywhere(one, numbers, other)]);
  return Object.fromEntries(entries) as T;
}

/** The same with a written number changed to whatever it may be. */
export const anyNumber = (steps: readonly Step[], size: number): Generator<readonly Step[]> =>
  numberSlips(steps, size, any);

/**
 * The steps with one of them left out, worked twice, exchanged for another stitch of the row, worked in
 * each stitch, or with an increase or decrease put in or left.
 */
export function* wordSlips(
  steps: readonly Step[],
  stems: ReadonlySet<string> = stemsIn(steps),
): Generator<readonly Step[]> {
  for (const [i, step] of steps.entries()) {
    if (!WORKED.has(step.kind)) continue;
    const before = steps.slice(0, i);
    const behind = steps.slice(i + 1);
    yield [...before, ...behind];
    yield [...before, step, step, ...behind];
    if (step.kind === 'work') {
      for (const stem of stems)
        if (stem !== step.stitch.stem)
          yield [...before, { ...step, stitch: { ...step.stitch, stem } }, ...behind];
      if (step.place?.pick === 'next')
        yield [
          ...before,
          { ...step, place: { ...step.place, pick: 'each', each: true, n: null } },
          ...behind,
        ];
      for (const shape of OTHER_SHAPES) {
        const stitch: StitchTerm = { ...step.stitch, shape, legs: null };
        if (shape !== step.stitch.shape) yield [...before, { ...step, stitch }, ...behind];
        if (shape !== 'one') {
          const more: Step = { ...step, n: null, place: null, alsoIn: [], until: null, stitch };
          yield [...before, step, more, ...behind];
        }
      }
    }
    if (step.kind === 'repeat' || step.kind === 'group')
      for (const inner of wordSlips(step.steps, stems))
        yield [...before, { ...step, steps: inner }, ...behind];
  }
}

function stemsIn(steps: readonly Step[]): ReadonlySet<string> {
  const stems = new Set<string>();
  for (const step of steps) {
    if (step.kind === 'work' && step.stitch.stem) stems.add(step.stitch.stem);
    if (step.kind === 'repeat' || step.kind === 'group')
      for (const stem of stemsIn(step.steps)) stems.add(stem);
  }
  return stems;
}

const OTHER_SHAPES: readonly StitchShape[] = ['one', 'increase', 'together'];

/** May the stated count itself have slipped? A little off, one digit another, or two exchanged. */
export function isCountSlip({ stated, made }: { stated: number; made: number }): boolean {
  if (made === 0) return false;
  if (OFF.includes(stated - made)) return true;
  const [a, b] = [String(stated), String(made)];
  if (a.length !== b.length || a.length < 2) return false;
  const differ = [...a].flatMap((digit, i) => (digit === b[i] ? [] : [i]));
  if (differ.length === 1) return true;
  const [i = 0, j = 0] = differ;
  return differ.length === 2 && a[i] === b[j] && a[j] === b[i];
}

/**
 * The counts with one number changed: the length of a space, "(6 ch-2 sps)", and, where nothing upholds
 * them, how many there are.
 */
export function* countSlips(
  counts: readonly StatedCount[],
  size: number,
  isFree: boolean,
): Generator<readonly StatedCount[]> {
  for (const [i, count] of counts.entries()) {
    const others: StatedCount[] = [];
    for (const chains of count.chains ? otherNumbers(count.chains, { size, slips: near }) : [])
      others.push({ ...count, chains });
    for (const n of isFree ? otherNumbers(count.n, { size, slips: near }) : [])
      if (!n.values.includes(0)) others.push({ ...count, n });
    for (const other of others) yield [...counts.slice(0, i), other, ...counts.slice(i + 1)];
  }
}

function* inList(
  list: readonly Step[],
  change: (step: Step) => Generator<Step>,
): Generator<readonly Step[]> {
  for (const [i, step] of list.entries())
    for (const other of change(step)) yield [...list.slice(0, i), other, ...list.slice(i + 1)];
}

/** The node with one number in it changed, at any depth. */
interface How {
  readonly size: number;
  readonly slips: Slips;
}

function* numbersIn<T extends object>(node: T, how: How): Generator<T> {
  for (const [key, value] of Object.entries(node)) {
    if (key === 'countsAs' || key === 'from' || key === 'to') continue;
    for (const other of otherValues(key, value, how)) yield { ...node, [key]: other };
  }
}

function* otherValues(key: string, value: unknown, how: How): Generator<unknown> {
  if (Array.isArray(value)) {
    for (const [i, one] of value.entries())
      if (typeof one === 'object' && one !== null)
        for (const other of numbersIn(one as object, how))
          yield [...value.slice(0, i), other, ...value.slice(i + 1)];
    return;
  }
  if (typeof value === 'number') {
    if (key === 'nth' || key === 'legs')
      for (const other of how.slips(value)) if (other > 0) yield other;
    return;
  }
  // "Sc in next st", where "sc in next 2 sts" is meant.
  if (value === null && key === 'n' && how.slips === near)
    yield { values: [2], from: 0, to: 0 } satisfies Numbers;
  if (typeof value !== 'object' || value === null) return;
  if (isNumbers(value)) yield* otherNumbers(value, how);
  else yield* numbersIn(value, how);
}

const isNumbers = (value: object): value is Numbers =>
  'values' in value && Array.isArray(value.values);

function* otherNumbers(numbers: Numbers, { size, slips }: How): Generator<Numbers> {
  const { values } = numbers;
  const at = values.length === 1 ? 0 : size;
  const value = values[at];
  if (value === null || value === undefined) return;
  for (const other of slips(value))
    yield { ...numbers, values: values.map((n, i) => (i === at ? other : n)) };
}
