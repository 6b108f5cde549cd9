/**
 * The fabric: what the hands made. For each size the nodes of all parts and a record for every row
 * worked. Read-only behind this room's door.
 */
import type { CountUnit, Side } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Fact } from './facts.ts';
import type { KindTable } from './kinds.ts';
import type { Nodes } from './nodes.ts';

/**
 * proven: every stated count is met and the walk ended at the row's end. unstated: no count is
 * stated, or not every one could be compared, and the walk ended there. mismatch: it does not work out. unread: words were not
 * understood. unchecked: what lies beneath is not known. omitted: not in this size.
 */
export type Verdict = 'proven' | 'unstated' | 'mismatch' | 'unread' | 'unchecked' | 'omitted';

export interface Tally {
  /** Counted stitches, a counted start chain as one. */
  readonly stitches: number;
  readonly chains: number;
  readonly slips: number;
  /** Number of spaces by their chains, ascending. */
  readonly spaces: readonly { readonly chains: number; readonly n: number }[];
  readonly boxes: number;
  /** Stitches by stem and shape name. */
  readonly byKind: ReadonlyMap<string, number>;
  /** Uses of special stitches and groups by word. */
  readonly groups: ReadonlyMap<string, number>;
}

/** Of a row that makes nothing. */
export const NOTHING_MADE: Tally = {
  stitches: 0,
  chains: 0,
  slips: 0,
  spaces: [],
  boxes: 0,
  byKind: new Map(),
  groups: new Map(),
};

export interface RowRecord extends Span {
  readonly id: string;
  readonly part: string;
  readonly partIndex: number;
  /** Counted from 1. */
  readonly instance: number;
  /** "Rnd 5": as the pattern numbers it. */
  readonly label: string;
  readonly number: number | null;
  /** From a label for several rows: its ends, and which of them this is (from 1). */
  readonly range: { readonly from: number; readonly to: number; readonly nth: number } | null;
  /** Index of the instruction within its part. */
  readonly instruction: number;
  readonly sizeIndex: number;
  readonly side: Side;
  /** Places taken or expressly skipped. */
  readonly used: number;
  /** Counted places that there were. */
  readonly available: number;
  readonly tally: Tally;
  readonly stated: readonly {
    readonly n: number;
    readonly unit: CountUnit | null;
    readonly word: string;
    /** Held against what was made; not so where it is not known what it counts. */
    readonly compared: boolean;
    readonly span: Span;
  }[];
  readonly verdict: Verdict;
  readonly facts: readonly Fact[];
  /** Node numbers of this row in the cloth of its size: [from, to). */
  readonly nodes: { readonly from: number; readonly to: number };
  /** What it is worked into closes on itself. */
  readonly ring: boolean;
  /** Its own edge closes on itself: a round that is joined, or part of a spiral. */
  readonly closes: boolean;
  /** A slip stitch closes it: the fabric keeps no node for one. */
  readonly joined: boolean;
  /** It brings several pieces together: what lies beneath is more than the row before. */
  readonly joins: boolean;
  /** It goes along the sides of a piece that was worked in rows. */
  readonly isBorder: boolean;
}

/** All parts as worked in one size, every copy of them. */
export interface Cloth {
  readonly sizeIndex: number;
  readonly nodes: Nodes;
  readonly rows: readonly RowRecord[];
}

/** How a doubt was settled in a part. */
export interface Convention extends Span {
  readonly doubt: string;
  readonly partIndex: number;
  readonly reading: string;
  readonly alternatives: readonly string[];
  readonly because: 'note' | 'join' | 'words' | 'count' | 'custom';
  readonly sizeIndex: number;
  /** Later sizes whose counts came out in another reading only. */
  readonly otherwise: readonly { readonly sizeIndex: number; readonly reading: string }[];
}

export interface Fabric {
  readonly kinds: KindTable;
  readonly cloths: readonly Cloth[];
  /** Words that made the nodes: `Nodes.origin` points here; absolute spans. */
  readonly origins: readonly Span[];
  readonly conventions: readonly Convention[];
  readonly yarns: readonly string[];
  /** Sentences: what was not checked. */
  readonly notChecked: readonly string[];
}
