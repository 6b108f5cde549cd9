/** One change at a time to a sound piece, each in a proven row or in the foundation of one. */
import type { Compiled } from '../../src/index.ts';
import type { Step, WorkStep } from '../../src/notation/index.ts';
import { countsStitches, type Free, whyFree, whyTrue } from './binds.ts';
import { numbersIn, type Placed, placedRows } from './numbers.ts';

export type PlantKind = 'number' | 'count' | 'stitch word' | 'dropped inc';

export interface Plant {
  readonly kind: PlantKind;
  readonly role: string;
  /** Why the change binds nothing; `null`: it must be found. */
  readonly free: Free;
  readonly placed: Placed;
  /** What stands at [from, to) gives way to `words`. */
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/** Every change to a piece. */
export function plantsIn(piece: Compiled): Plant[] {
  return placedRows(piece).flatMap((placed) => {
    if (!isProven(placed) && !isFoundation(placed)) return [];
    return [...otherNumbers(piece.text, placed), ...otherWords(piece.text, placed)];
  });
}

const isProven = ({ rows }: Placed): boolean => rows.some(({ verdict }) => verdict === 'proven');

/** A chain without a row of its own, upon which a proven row is worked. */
const isFoundation = ({ instruction, next }: Placed): boolean =>
  instruction.label === null &&
  instruction.steps.some((step) => step.kind === 'chain' && step.countsAs === null) &&
  next.some(({ verdict }) => verdict === 'proven');

function otherNumbers(text: string, placed: Placed): Plant[] {
  return numbersIn(text, placed).flatMap((number): Plant[] => {
    const { value, from, to, role, path } = number;
    const suffix = /^(?:st|nd|rd|th)\b/.exec(text.slice(to))?.[0] ?? '';
    const free = whyFree(number);
    const kind = path[0]?.key === 'counts' ? 'count' : 'number';
    return [value + 1, value - 1, value + 4]
      .filter((other) => other > 0)
      .map((other) => ({
        kind,
        role,
        free: free ?? whyTrue(number, other),
        placed,
        from,
        to: to + suffix.length,
        words: suffix === '' ? String(other) : ordinal(other),
      }));
  });
}

function ordinal(n: number): string {
  const ending = n % 100 > 10 && n % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}

const SWAPPED: Readonly<Record<string, string>> = { sc: 'dc', dc: 'sc' };

/** A stitch word exchanged for another, and an increase left out. */
function otherWords(text: string, placed: Placed): Plant[] {
  return workSteps(placed.instruction.steps).flatMap((step): Plant[] => {
    const { stitch } = step;
    const at = { from: placed.from + step.nameFrom, to: placed.from + step.nameTo };
    const words = text.slice(at.from, at.to);
    const other = SWAPPED[words.toLowerCase()];
    if (other) {
      const free = countsStems(placed) ? null : 'no count names the stitch';
      return [{ kind: 'stitch word', role: 'stitch', free, placed, ...at, words: other }];
    }
    if (stitch.shape !== 'increase' || words.toLowerCase() !== 'inc') return [];
    const free = placed.rows.some(countsStitches) ? null : 'no count of stitches';
    return [{ kind: 'dropped inc', role: 'inc', free, placed, ...withComma(text, at), words: '' }];
  });
}

/** The words with the comma that parts them from their neighbour. */
function withComma(text: string, at: { from: number; to: number }): { from: number; to: number } {
  const behind = /^,\s*/.exec(text.slice(at.to));
  if (behind) return { from: at.from, to: at.to + behind[0].length };
  const before = /,\s*$/.exec(text.slice(0, at.from));
  return { from: at.from - (before?.[0].length ?? 0), to: at.to };
}

/** The row states how many of each stitch it has, or how many of its only one. */
const countsStems = ({ rows }: Placed): boolean =>
  rows.some(({ stated }) => stated.some(({ unit }) => unit === 'stem'));

const workSteps = (steps: readonly Step[]): WorkStep[] =>
  steps.flatMap((step) => {
    if (step.kind === 'work') return [step];
    return step.kind === 'repeat' || step.kind === 'group' ? workSteps(step.steps) : [];
  });
