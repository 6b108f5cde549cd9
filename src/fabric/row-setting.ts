/** What a row is worked from, and what comes of it. */
import type { StandingOrder, StatedCount } from '../notation/index.ts';
import type { ChartDone, Charts } from './charts.ts';
import type { Edge } from './edge.ts';
import type { Verdict } from './fabric.ts';
import type { Fact } from './facts.ts';
import type { Choices } from './readings.ts';
import type { RowTally } from './tally.ts';

/** What lies on the hook when a row begins. */
export interface Before {
  /** Nodes of the row beneath; null when nothing was worked yet. */
  readonly row: {
    readonly from: number;
    readonly to: number;
    readonly ring: boolean;
    /** Its words close it with a join. */
    readonly joined?: boolean;
    /** A row that was not understood lies on it, which is taken to leave the same places: see `supposed`. */
    readonly mirrored?: boolean;
  } | null;
  /** Places of a spiral that the round before did not reach. */
  readonly rest: { readonly edge: Edge; readonly from: number } | null;
  /** Turned (true), expressly not (false), or not said. */
  readonly turned: boolean | null;
  /** The hands already stand where they should: yarn was joined, a chain was made. */
  readonly ready: boolean;
  readonly open: boolean;
  /** The count that the row beneath states, where it is not the one it makes. */
  readonly statedInstead: number | null;
  /** The count stated was not held against the row, whose beginning is not known. */
  readonly openCount: boolean;
  /** Where that count stands in the text; -1 for none. */
  readonly statedAt: number;
  /** Words of the row beneath were not understood: where its spaces lie is a guess. */
  readonly guessed: boolean;
  /** Words of it were not understood, while what it stands on is known. */
  readonly unreadOnKnown: boolean;
  /** A row beneath that was not understood is taken to leave what it stands on: the name of this; else `null`. */
  readonly supposed: string | null;
  /** It has shells or V-stitches that nobody explains: how many stitches they are is a guess. */
  readonly groups: boolean;
  /** How many stitches each side of the border beneath has is a guess, though not how many they are in all. */
  readonly sidesGuessed: boolean;
  readonly chartRows: ReadonlyMap<string, ChartDone>;
  readonly side: 'RS' | 'WS';
}

export interface RowSetting {
  readonly charts: Charts;
  readonly orders: readonly StandingOrder[];
  readonly round: boolean;
  /** The next row opens with a turn. */
  readonly turnsNext: boolean;
  /** Which of the two counts the row beneath is taken to have. */
  readonly beneath: 'made' | 'stated';
  readonly choices: { readonly part: Choices; readonly row: Choices };
}

export interface RowResult {
  readonly tally: RowTally;
  readonly facts: readonly Fact[];
  readonly used: number;
  readonly available: number;
  readonly verdict: Verdict;
  readonly misfit: boolean;
  readonly round: boolean;
  readonly from: number;
  readonly to: number;
  readonly turned: boolean;
  /** Side of the piece that faces the hands. */
  readonly side: 'RS' | 'WS';
  readonly edge: Edge;
  /** It brought pieces together. */
  readonly joins: boolean;
  /** It went along the sides of a piece worked in rows. */
  readonly isBorder: boolean;
  /** On how its stitches are shared among the sides of a border nothing is told. */
  readonly sidesGuessed: boolean;
  /** Counts stated that were not compared. */
  readonly uncompared: readonly StatedCount[];
  /** How many were. */
  readonly compared: number;
}
