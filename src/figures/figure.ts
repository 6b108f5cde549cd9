/**
 * A figure: a length with how sure it is and how it was had. Types and the few sums that keep the
 * spread honest; no knowledge of fabric here.
 */
import type { Had, How } from '../gauge/index.ts';

/** Millimetres, give or take `spread` of it. */
export interface Figure {
  readonly mm: number;
  readonly spread: number;
  readonly how: How;
  /** Sentences, each once. */
  readonly because: readonly string[];
  /** Stitches, chains and such side by side that it is the length of; absent for sums and shares. */
  readonly count?: number;
}

export const figureOf = (mm: number, had: Had): Figure => ({
  mm,
  spread: had.spread,
  how: had.how,
  because: [had.because],
});

const SURENESS: readonly How[] = ['swatch', 'estimate', 'assumed'];

/** The less sure of two ways in which a figure was had. */
export const weaker = (a: How, b: How): How =>
  SURENESS[Math.max(SURENESS.indexOf(a), SURENESS.indexOf(b))]!;

/** Nothing yet: the start of a sum. */
export const NO_LENGTH: Figure = { mm: 0, spread: 0, how: 'swatch', because: [] };

/**
 * The sum of lengths. Rows of one fabric are off to the same side, so spreads are averaged by length
 * and do not shrink with number, as independent errors would.
 */
export function sumOf(figures: readonly Figure[]): Figure {
  let mm = 0;
  let off = 0;
  let how: How = 'swatch';
  const because = new Set<string>();
  for (const figure of figures) {
    mm += figure.mm;
    off += figure.mm * figure.spread;
    how = weaker(how, figure.how);
    for (const sentence of figure.because) because.add(sentence);
  }
  return { mm, spread: mm === 0 ? 0 : off / mm, how, because: [...because] };
}

export function times({ count: _, ...figure }: Figure, factor: number): Figure {
  return { ...figure, mm: figure.mm * factor };
}

/** One length had in two ways: the surer of them, or both where they are had alike. */
export const surer = (first: Figure, second: Figure): Figure =>
  first.how === second.how
    ? agreeing(first, second)
    : weaker(first.how, second.how) === second.how
      ? first
      : second;

/** One length had in two ways: the first, with a spread wide enough to hold the second. */
function agreeing(first: Figure, second: Figure): Figure {
  const mm = (first.mm + second.mm) / 2;
  const apart = Math.abs(first.mm - second.mm) / 2;
  const spread = Math.max(first.spread, second.spread, mm === 0 ? 0 : apart / mm);
  const because = [...new Set([...first.because, ...second.because])];
  return { mm, spread, how: weaker(first.how, second.how), because };
}
