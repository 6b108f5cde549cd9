/** The numbered rows of a piece in order: what shares one numbering. */
import type { RowLabel, Step } from '../../notation/index.ts';
import type { Scene } from '../scene.ts';
import { instructionsOf, isForSizes, type Placed } from './rows.ts';

export interface Numbered extends Placed {
  readonly label: RowLabel;
  readonly first: number;
  /** Last numbers, one a size where sizes differ. */
  readonly lasts: readonly number[];
  /** The highest of them. */
  readonly last: number;
  /** Highest number of all rows before it in the run. */
  readonly highest: number;
  /** What stands between this label and the one before it. */
  readonly gap: 'none' | 'rows' | 'start';
  /** Whether that stands for several rows: "Rep rows 2 and 3. Fasten off.", "… for 5 rounds." */
  readonly repeats: boolean;
}

export interface Run {
  readonly rows: readonly Numbered[];
  /** Index of the first and of the last row of each number. */
  readonly firstAt: ReadonlyMap<number, number>;
  readonly lastAt: ReadonlyMap<number, number>;
  /** Number of the first row that speaks for "all even rows", and for all odd ones. */
  readonly every: ReadonlyMap<'even' | 'odd', number>;
}

/** A label with more rows than this is a slip of its own. */
const MOST_NUMBERS = 10_000;

export function runsOf(scene: Scene): Run[] {
  const runs: Run[] = [];
  let rows: Numbered[] = [];
  let every: Run['every'] = new Map();
  let part = -1;
  let gap: Numbered['gap'] = 'none';
  let repeats = false;
  const close = (): void => {
    if (rows.length > 1) runs.push(indexed(rows, every));
    rows = [];
    every = new Map();
  };
  for (const placed of instructionsOf(scene)) {
    const isNewPart = placed.partIndex !== part;
    part = placed.partIndex;
    if (isNewPart && !scene.manuscript.parts[part]?.continues) close();
    const { label, steps, counts } = placed.placed.instruction;
    const first = label?.numbers[0];
    for (const step of steps)
      if (step.kind === 'rows-again' && step.every && !every.has(step.every))
        every = new Map(every).set(step.every, (rows.at(-1)?.last ?? 0) + 1);
    if (!label || first === undefined) {
      repeats ||=
        steps.some(({ kind }) => kind === 'rows-again') ||
        counts.some(({ unit }) => unit === 'row');
      if (steps.some((step) => ['ring', 'join', 'fasten-off'].includes(step.kind))) gap = 'start';
      else if (gap === 'none' && !isMoveless(placed)) gap = 'rows';
      continue;
    }
    const top = rows.at(-1);
    const isBack = top !== undefined && first <= top.last && !isForSizes(placed);
    const isPiece = first === 1 && startsRing(steps) && !isBareRing(top);
    if (isBack && (isNewPart || gap === 'start' || isPiece || endsHere(top))) close();
    rows.push(numbered(placed, { label, first, gap, repeats }, rows.at(-1)));
    gap = 'none';
    repeats = false;
  }
  close();
  return runs;
}

/** "Round 1: 5 sc in mr": another piece begins, with a ring of its own. */
const startsRing = ([first]: readonly Step[]): boolean =>
  first?.kind === 'ring' || (first?.kind === 'work' && first.place?.nouns[0]?.kind === 'ring');

/** The row above is the first of its own piece, and begins so too: given twice. */
const isBareRing = (top: Numbered | undefined): boolean =>
  top !== undefined && top.first === 1 && startsRing(top.placed.instruction.steps);

function numbered(
  placed: Placed,
  of: Pick<Numbered, 'label' | 'first' | 'gap' | 'repeats'>,
  before: Numbered | undefined,
): Numbered {
  const lasts = of.label.lastBySize ?? [of.label.numbers.at(-1) ?? of.first];
  const highest = before ? Math.max(before.highest, before.last) : 0;
  return { ...placed, ...of, lasts, last: Math.max(...lasts), highest };
}

function indexed(rows: readonly Numbered[], told: Run['every']): Run {
  const firstAt = new Map<number, number>();
  const lastAt = new Map<number, number>();
  const every = new Map(told);
  rows.forEach(({ label, first, last }, i) => {
    if (label.every && !every.has(label.every)) every.set(label.every, first);
    // "Rows 11, 13, 15": those between are others.
    const leaves = label.lastBySize ? null : new Set(label.numbers);
    for (let n = first; n <= Math.min(last, first + MOST_NUMBERS); n++) {
      if (leaves && leaves.size > 1 && !leaves.has(n)) continue;
      if (!firstAt.has(n)) firstAt.set(n, i);
      lastAt.set(n, i);
    }
  });
  return { rows, firstAt, lastAt, every };
}

/** A foundation, a remark: no row that could have a number. */
const isMoveless = ({ placed }: Placed): boolean =>
  placed.instruction.steps.every((step) =>
    ['chain', 'remark', 'yarn', 'turn', 'loop', 'mark'].includes(step.kind),
  );

const endsHere = ({ placed }: Placed): boolean =>
  placed.instruction.steps.some((step) => step.kind === 'fasten-off' && !step.not);
