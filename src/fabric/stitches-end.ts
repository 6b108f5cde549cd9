/**
 * "Rep row 2 until 9 sts remain", "… until you have 40 sc": how many rows that is, told by working them.
 * The number is a stated count as well: the last row must make it.
 */
import type { Instruction, Numbers, StatedCount } from '../notation/index.ts';

/** Passes that are tried: no shaping takes more. */
export const MOST_PASSES = 400;

interface EndAsked {
  readonly n: Numbers;
  /** Of the order, from the start of its instruction. */
  readonly from: number;
  readonly to: number;
}

/** The number of stitches to which the order works; `null` where rows, passes or a label say how often. */
function endAsked({ label, steps }: Instruction): EndAsked | null {
  const step = steps.find((one) => one.kind === 'rows-again');
  if (step?.kind !== 'rows-again' || !step.stitchesAtEnd) return null;
  const isSaid = step.times ?? step.moreRows ?? step.rowsInAll ?? step.measure;
  if (isSaid || (label?.numbers.length ?? 0) > 1 || label?.lastBySize || label?.next) return null;
  return { n: step.stitchesAtEnd, from: step.from, to: step.to };
}

/** Stitches that the last row is to make in this size. */
export function stitchesAsked(instruction: Instruction, sizeIndex: number): number | null {
  const values = endAsked(instruction)?.n.values ?? [];
  return (values.length === 1 ? values[0] : values[sizeIndex]) ?? null;
}

/** The number as a count of the last row, unless one is stated behind the order. */
export function countAtEnd(instruction: Instruction): Instruction {
  const end = endAsked(instruction);
  if (!end || instruction.counts.length > 0) return instruction;
  const count: StatedCount = {
    ...end,
    unit: 'stitch',
    stem: null,
    chains: null,
    word: '',
    startChainIncluded: null,
    partial: false,
  };
  return { ...instruction, counts: [count] };
}

/** Whether another pass can still bring the row to `wanted` stitches, from `before` by way of `now`. */
export const goesOn = (wanted: number, before: number, now: number): boolean =>
  now !== before && Math.sign(wanted - now) === Math.sign(now - before);

/**
 * Rows until one makes `wanted` stitches: whole passes if one ends there, else the first row that does;
 * where none does, the whole passes that come nearest. `made`: stitches of each row tried, in order.
 */
export function rowsTo(wanted: number, made: readonly number[], pass: number): number {
  const ends = made.filter((_, i) => (i + 1) % pass === 0);
  const whole = ends.indexOf(wanted);
  if (whole >= 0) return (whole + 1) * pass;
  const within = made.indexOf(wanted);
  if (within >= 0) return within + 1;
  const distances = ends.map((n) => Math.abs(wanted - n));
  return (distances.indexOf(Math.min(...distances)) + 1) * pass;
}
