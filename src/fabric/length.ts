/**
 * "Until piece measures 20 cm" as a number of passes: the fewest whole ones that reach the length.
 * A length is the sum of its rows only where the rows lie straight on each other: flat pieces, and
 * tubes. A disc, a corner or a gore is measured along another line, and stays open.
 */
import type { Instruction, Measure } from '../notation/index.ts';
import type { RowRecord } from './fabric.ts';
import type { OpenLength, ToLength } from './facts.ts';
import { type Height, type Heights, heightOf } from './heights.ts';
import type { KindTable } from './kinds.ts';

export type LengthPlan =
  | ({ readonly kind: 'open' } & { readonly why: OpenLength })
  | ({ readonly kind: 'passes' } & ToLength);

/** Rows upon each other. */
interface Stack {
  mm: number;
  how: Height['how'];
  readonly because: Set<string>;
  isSure: boolean;
  isRound: boolean;
  /** Stitches of its last row that has any; `isEven` while all rows have as many. */
  stitches: number | null;
  isEven: boolean;
}

const newStack = (): Stack => ({
  mm: 0,
  how: 'swatch',
  because: new Set(),
  isSure: true,
  isRound: false,
  stitches: null,
  isEven: true,
});

/** Rows already measured, so that a part of many lengths is not measured anew for each. */
export interface Measured {
  rows: number;
  readonly stack: Stack;
}

export const newMeasured = (): Measured => ({ rows: 0, stack: newStack() });

export interface Ruler {
  readonly kinds: KindTable;
  readonly heights: Heights;
}

function put(stack: Stack, row: RowRecord, ruler: Ruler): void {
  const height = heightOf(row, ruler.kinds, ruler.heights);
  if (!height) stack.isSure = false;
  else {
    stack.mm += height.mm;
    if (height.how === 'estimate') stack.how = 'estimate';
    for (const words of height.because) stack.because.add(words);
  }
  stack.isRound ||= row.ring;
  const { stitches } = row.tally;
  if (stitches === 0) return;
  if (stack.stitches !== null && stack.stitches !== stitches) stack.isEven = false;
  stack.stitches = stitches;
}

/** Measures the rows that came since the last time. */
export function measureOn(measured: Measured, rows: readonly RowRecord[], ruler: Ruler): Stack {
  for (; measured.rows < rows.length; measured.rows++) {
    put(measured.stack, rows[measured.rows] as RowRecord, ruler);
  }
  return measured.stack;
}

/** The length that an instruction asks for; `said`: a number of rows stands beside it. */
export function lengthAsked({ label, steps }: Instruction): Measure | 'said' | null {
  const step = steps.find(
    (one) => (one.kind === 'rows-again' || one.kind === 'even') && one.measure !== null,
  );
  if (step?.kind === 'even' && step.measure) {
    return step.rows || (label?.numbers.length ?? 0) > 1 || label?.lastBySize
      ? 'said'
      : step.measure;
  }
  if (step?.kind !== 'rows-again' || !step.measure) {
    return label?.openEnd ? { mm: null, since: null } : null;
  }
  const isNumbered = (label?.numbers.length ?? 0) > 1 || label?.lastBySize || label?.next;
  if (isNumbered || step.times || step.moreRows || step.rowsInAll) return 'said';
  const ends = step.endingWith;
  const isWhole = ends === null || (step.rows.length > 0 && ends === step.rows.at(-1));
  return isWhole ? step.measure : { mm: null, since: null };
}

/** More nodes than one order makes to a length in any piece; over it the length is taken for a slip. */
const MOST_NODES = 200_000;
/** Sums of decimals may fall short of a length by less than any tape shows. */
const TOLERANCE_MM = 1e-6;

export interface PassAsked {
  readonly wantedMm: number;
  readonly since: 'start' | 'here';
  /** Rows of the part before this order, and the rows that its own words make before the repeat. */
  readonly before: Stack;
  readonly lead: readonly RowRecord[];
  readonly pass: readonly RowRecord[];
}

/** How often the pass goes, or why that cannot be said. */
export function passesTo(asked: PassAsked, ruler: Ruler): LengthPlan {
  const { wantedMm, since } = asked;
  const counted = since === 'start' ? copied(asked.before) : newStack();
  for (const row of asked.lead) put(counted, row, ruler);
  const pass = newStack();
  for (const row of asked.pass) put(pass, row, ruler);
  if (!counted.isSure || !pass.isSure || pass.mm <= 0) return open('rows');
  if (!isStraight(asked, counted, pass)) return open('shape');
  const missing = wantedMm - counted.mm - TOLERANCE_MM;
  if (missing <= 0) return open('reached');
  const passes = Math.ceil(missing / pass.mm);
  const nodes = asked.pass.reduce((n, row) => n + row.nodes.to - row.nodes.from, 0);
  if (passes * nodes > MOST_NODES) return open('many');
  return {
    kind: 'passes',
    passes,
    rows: passes * asked.pass.length,
    wantedMm,
    reachedMm: counted.mm + passes * pass.mm,
    since,
    how: counted.how === 'estimate' || pass.how === 'estimate' ? 'estimate' : 'swatch',
    because: [...new Set([...counted.because, ...pass.because])],
  };
}

const open = (why: OpenLength): LengthPlan => ({ kind: 'open', why });

const copied = (stack: Stack): Stack => ({ ...stack, because: new Set(stack.because) });

/** A pass leaves the piece as wide as it was; rounds all have as many stitches. */
function isStraight({ before, lead }: PassAsked, counted: Stack, pass: Stack): boolean {
  const beneath = lead.findLast(({ tally }) => tally.stitches > 0)?.tally.stitches;
  const width = beneath ?? before.stitches;
  if (width !== null && width !== pass.stitches) return false;
  if (!counted.isRound && !pass.isRound) return true;
  return counted.isEven && pass.isEven;
}
