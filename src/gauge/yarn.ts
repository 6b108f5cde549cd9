/** A yarn as the pattern gives it. */
import type { Span } from '../source/index.ts';

/** Classes 0 (lace) to 7 (jumbo) of the yarn council's eight steps. */
export type WeightClass = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** One ball, skein or hank as sold. */
export interface PutUp {
  readonly grams: number;
  readonly metres: number;
}

export interface Yarn {
  /** The letter that the pattern uses, "A"; '' where a one-yarn pattern gives none. */
  readonly name: string;
  readonly weightClass: WeightClass | null;
  readonly ball: PutUp | null;
  readonly fibre: string | null;
  /** Wraps to the inch, where told. */
  readonly wrapsPerInch: number | null;
  readonly span: Span;
}
