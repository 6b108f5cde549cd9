/** Numbers as the house writes them: "20", "20 (24, 28)", "2nd", "4-9", "19 and 20". */
import type { Numbers } from '../tree.ts';
import type { Voice } from './voice.ts';

/**
 * One number, or the first size with the others in brackets. A list that says the same for every
 * size is one number, which holds for all sizes; a dash stands for "not in this size".
 */
export function writeNumbers(n: Numbers, voice: Voice): string {
  const [first = null, ...others] = n.values;
  const isSame = n.values.length === voice.sizes && others.every((value) => value === first);
  if (others.length === 0 || (isSame && first !== null)) return one(first);
  return `${one(first)} (${others.map(one).join(', ')})`;
}

const one = (value: number | null): string => (value === null ? '-' : String(value));

/** Whether the number is just one: "in next st" rather than "in next 1 st". */
export const isOne = (n: Numbers): boolean => n.values.every((value) => value === 1);

/** Whether the noun beside the number takes its plural: not after one, or none at all. */
export const isMany = (n: Numbers | null): boolean => n !== null && !isOne(n);

/** The number and the space behind it, or nothing where it is one or not written. */
export const numberBefore = (n: Numbers | null, voice: Voice): string =>
  n === null || isOne(n) ? '' : `${writeNumbers(n, voice)} `;

/** "once", "twice", "6 times", "2 (3, 4) times". */
export function writeTimes(n: Numbers, voice: Voice): string {
  const written = writeNumbers(n, voice);
  if (written === '1') return 'once';
  return written === '2' ? 'twice' : `${written} times`;
}

/** "once more", "5 more times", "2 (3, 4) more times". */
export function writeMoreTimes(n: Numbers, voice: Voice): string {
  const written = writeNumbers(n, voice);
  return written === '1' ? 'once more' : `${written} more times`;
}

/** 1st, 2nd, 3rd, 4th, 11th, 21st. */
export function writeOrdinal(n: number): string {
  const teens = n % 100 >= 11 && n % 100 <= 13;
  const ending = teens ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${ending}`;
}

/**
 * Row numbers: runs of three or more as a range, two as "19 and 20", and all else in a list with
 * "and" before the last: "4-9", "2, 4 and 6", "2-5 and 8".
 */
export function writeRows(rows: readonly number[]): string {
  const parts = runs(rows).flatMap(([from, to]) => {
    if (from === to) return [String(from)];
    return to === from + 1 ? [String(from), String(to)] : [`${from}-${to}`];
  });
  const last = parts.pop() ?? '';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}

/** Maximal runs of numbers that rise by one, each as first and last. */
function runs(rows: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last && row === last[1] + 1) last[1] = row;
    else found.push([row, row]);
  }
  return found;
}
