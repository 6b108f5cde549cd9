/** What is to be worked next: an instruction once for each row that its label or its words ask for. */
import type { Instruction, StandingOrder } from '../notation/index.ts';
import type { Span } from '../source/index.ts';

/** One row to be worked. */
export interface Task {
  readonly instruction: Instruction;
  /** Offset of the text whose tree is worked: that of row 4 for "Rep rnd 4". */
  readonly base: number;
  /** Where the row is asked for. */
  readonly at: Span;
  /** The instruction that asks for it, with the counts that it states. */
  readonly asks: Instruction;
  readonly asksBase: number;
  readonly index: number;
  readonly label: string;
  readonly number: number | null;
  /** Number of the row that it works again; `null` for work in its own words. */
  readonly repeats: number | null;
  readonly range: { readonly from: number; readonly to: number; readonly nth: number } | null;
  readonly orders: readonly StandingOrder[];
}
