/** From counts to a mean and a spread. */
import type { GaugeCount } from './gauge.ts';

export interface MeanSize {
  /** Millimetres of one stitch, box or row. */
  readonly mm: number;
  readonly spread: number;
}

/**
 * Swatches are read to a half stitch, so a count is a quarter off at worst (ours). A hand drifts by
 * about 2.5 % between swatch and piece (judgement; no published measurement was found).
 */
const READING = 0.25;
const DRIFT = 0.025;

/**
 * Student's t, 80 % two-sided, for 1 to 10 degrees of freedom: standard tables. With n swatches the
 * next piece lies within t s sqrt(1 + 1/n) of their mean four times in five.
 */
const T80 = [3.078, 1.886, 1.638, 1.533, 1.476, 1.44, 1.415, 1.397, 1.383, 1.372];

const studentT80 = (freedom: number): number =>
  T80[Math.min(freedom, T80.length) - 1] ?? Number.POSITIVE_INFINITY;

/** Mean width or height of one unit over several counts; `null` where none gives this side. */
export function meanSize(counts: readonly GaugeCount[], side: 'across' | 'up'): MeanSize | null {
  const sides = counts.flatMap((count) => count[side] ?? []);
  const sizes = sides.map(({ mm, n }) => mm / n);
  if (sizes.length === 0) return null;
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  const reading = Math.max(
    ...sides.map((each) => ('isWhole' in each && each.isWhole ? 0 : READING / each.n)),
  );
  if (sizes.length === 1) return { mm: mean, spread: Math.sqrt(reading ** 2 + DRIFT ** 2) };
  const variance = sizes.reduce((sum, size) => sum + (size - mean) ** 2, 0) / (sizes.length - 1);
  const next = studentT80(sizes.length - 1) * Math.sqrt(variance * (1 + 1 / sizes.length));
  return { mm: mean, spread: Math.max(next / mean, reading / Math.sqrt(sizes.length)) };
}
