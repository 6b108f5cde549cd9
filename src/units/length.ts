/**
 * Lengths, kept in millimetres. One inch is 25.4 mm and one yard 0.9144 m exactly (international
 * yard and pound agreement of 1959).
 */
import { NUMBER_SOURCE, numberOf } from './number.ts';

declare const inMillimetres: unique symbol;

/** A length in millimetres. */
export type Millimetres = number & { readonly [inMillimetres]: true };

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'yd';

const MM_PER: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  yd: 914.4,
};

/** So many of a unit as a length: `length(8, 'in')` is 203.2 mm. */
export const length = (n: number, unit: LengthUnit): Millimetres =>
  (n * MM_PER[unit]) as Millimetres;

/** How many of a unit a length is, not rounded. */
export const lengthIn = (mm: Millimetres, unit: LengthUnit): number => mm / MM_PER[unit];

/** A length found in a text: its span is counted from the start of that text. */
export interface FoundLength {
  readonly mm: Millimetres;
  readonly unit: LengthUnit;
  readonly from: number;
  readonly to: number;
}

const MEASURE_WORD = '(?:wide|long|high|deep|tall|square|across|around|from|of)';

const UNIT_SOURCE = [
  'millimet(?:re|er)s?',
  'mms?',
  'centimet(?:re|er)s?',
  'cms?',
  'met(?:re|er)s?',
  'inch(?:es)?',
  // "sc 3 in next st" is no length: a bare "in" needs an end or a word of measure behind it.
  String.raw`ins?(?=\s{0,2}(?:$|[.,;:)\]/x×*–-]|${MEASURE_WORD}\b))`,
  'yards?',
  'yds?',
  'm',
].join('|');

// A word must not go on behind its unit ("5 mesh", "8 inside"); a sign for inches may.
const LENGTH = new RegExp(
  `(?<![\\d.,/])(${NUMBER_SOURCE})\\s{0,2}-?\\s?(?:(${UNIT_SOURCE})(?![a-z])|("|″|”|''|′′))`,
  'iu',
);

/** The first length in a text: "20 cm", `8"`, "7½ inches"; "12in/30cm" gives the 12 in. */
export function findLength(text: string): FoundLength | null {
  const found = LENGTH.exec(text);
  if (!found) return null;
  const n = numberOf(found[1] ?? '');
  if (n === null) return null;
  const unit = found[3] === undefined ? unitOf(found[2] ?? '') : 'in';
  return { mm: length(n, unit), unit, from: found.index, to: found.index + found[0].length };
}

function unitOf(word: string): LengthUnit {
  const lower = word.toLowerCase();
  if (lower.startsWith('mm') || lower.startsWith('milli')) return 'mm';
  if (lower.startsWith('c')) return 'cm';
  if (lower.startsWith('i')) return 'in';
  return lower.startsWith('y') ? 'yd' : 'm';
}

/** Centimetres as patterns print them, to the half: 23.4 becomes 23.5 (common practice). */
export const roundedCm = (mm: Millimetres): number => Math.round(lengthIn(mm, 'cm') * 2) / 2;

/** Inches as patterns print them, to the quarter (common practice). */
export const roundedInches = (mm: Millimetres): number => Math.round(lengthIn(mm, 'in') * 4) / 4;

const QUARTERS = ['', '¼', '½', '¾'] as const;

/** "23.5 cm", or "9¼ in": rounded as above. */
export function printLength(mm: Millimetres, unit: 'cm' | 'in'): string {
  if (unit === 'cm') return `${roundedCm(mm)} cm`;
  const quarters = Math.round(lengthIn(mm, 'in') * 4);
  const [sign, size] = quarters < 0 ? ['-', -quarters] : ['', quarters];
  const whole = Math.floor(size / 4);
  const part = QUARTERS[size % 4] ?? '';
  return `${sign}${whole === 0 && part !== '' ? '' : whole}${part} in`;
}
