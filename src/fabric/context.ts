/** What a row's steps are given to know: the row they stand in, and their place in its words. */
import type { Reads } from '../filet/index.ts';
import type { StandingOrder, Step } from '../notation/index.ts';
import type { Charts, ChartTold } from './charts.ts';
import type { Hands } from './hands.ts';
import type { RowShape } from './shape.ts';

export type Walk = (
  hands: Hands,
  steps: readonly Step[],
  row: RowContext,
  at?: { readonly from: number; readonly top: boolean },
) => void;

/** What a row's steps may need to know beyond the hands. */
export interface RowContext {
  readonly shape: RowShape;
  readonly orders: readonly StandingOrder[];
  readonly charts: Charts;
  readonly chartTold: ChartTold;
  /** The first row that stands here is not the piece's first: what it is worked on is not known. */
  readonly beginsLater: boolean;
  /** The words are those of a row before, which this one works again. */
  readonly again: boolean;
  /** The piece is worked round, as far as is known. */
  round: boolean;
  /** Works a list of steps: handed in, since the constructs and the walk need each other. */
  readonly walk: Walk;
  /** Side at which this row is worked, for charts. */
  readonly reads: Reads;
}

/** Steps after the one at hand, in the same list, and whether this list is the row itself. */
export interface Here {
  readonly steps: readonly Step[];
  readonly i: number;
  readonly top: boolean;
}
