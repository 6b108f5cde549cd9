/** Weights, kept in grams. One ounce is 28.349523125 g exactly (1959: 1 lb = 453.59237 g). */
import { NUMBER_SOURCE, numberOf } from './number.ts';

declare const inGrams: unique symbol;

/** A weight in grams. */
export type Grams = number & { readonly [inGrams]: true };

export type WeightUnit = 'g' | 'kg' | 'oz';

const GRAMS_PER: Readonly<Record<WeightUnit, number>> = { g: 1, kg: 1000, oz: 28.349523125 };

/** So many of a unit as a weight. */
export const weight = (n: number, unit: WeightUnit): Grams => (n * GRAMS_PER[unit]) as Grams;

/** How many of a unit a weight is, not rounded. */
export const weightIn = (grams: Grams, unit: WeightUnit): number => grams / GRAMS_PER[unit];

/** A weight found in a text: its span is counted from the start of that text. */
export interface FoundWeight {
  readonly grams: Grams;
  readonly unit: WeightUnit;
  readonly from: number;
  readonly to: number;
}

const UNIT_SOURCE = 'kilograms?|kilos?|kg|grams?|grammes?|gms?|gr?|ounces?|ozs?';

const WEIGHT = new RegExp(`(?<![\\d.,/])(${NUMBER_SOURCE})\\s{0,2}(${UNIT_SOURCE})(?![a-z])`, 'iu');

/** The first weight in a text: "50 g", "1¾ oz", "100g / 220m". */
export function findWeight(text: string): FoundWeight | null {
  const found = WEIGHT.exec(text);
  if (!found) return null;
  const n = numberOf(found[1] ?? '');
  if (n === null) return null;
  const word = (found[2] ?? '').toLowerCase();
  const unit = word.startsWith('k') ? 'kg' : word.startsWith('o') ? 'oz' : 'g';
  return { grams: weight(n, unit), unit, from: found.index, to: found.index + found[0].length };
}

/** Grams to the whole gram, ounces to the quarter, as yarn is sold (common practice). */
export const roundedWeight = (grams: Grams, unit: 'g' | 'oz'): number =>
  unit === 'g' ? Math.round(grams) : Math.round(weightIn(grams, 'oz') * 4) / 4;
