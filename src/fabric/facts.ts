/** What the hands notice while working: plain facts, which `proof` turns into findings. */
import type { CountUnit, Multiple, StatedCount, StemId } from '../notation/index.ts';
import type { Span } from '../source/index.ts';

/** Spans are absolute. */
export type Fact =
  /** Needs `needed` places, the row beneath has `have`. */
  | ({ readonly kind: 'overrun'; readonly needed: number; readonly have: number } & Span)
  /** `left` places of `have` are not worked, and nothing says so. */
  | ({
      readonly kind: 'left';
      readonly left: number;
      readonly have: number;
      readonly used: number;
      /** Chains of the chain that this row itself begins on, not stitches of the row beneath. */
      readonly ofOwnChain?: true;
    } & Span)
  /** A repeat of `per` places goes `passes` times into the `have` that it may use; `left` remain. */
  | ({
      readonly kind: 'remainder';
      readonly per: number;
      readonly have: number;
      readonly passes: number;
      readonly left: number;
    } & Span)
  | ({
      readonly kind: 'count';
      readonly stated: StatedCount;
      readonly value: number;
      readonly computed: number;
      /** What was counted. */
      readonly unit: CountUnit;
      readonly unitWord: string;
    } & Span)
  /** `value` stitches in all, as stated, but only `made` of the stitch that the count names. */
  | ({
      readonly kind: 'stems';
      readonly stated: StatedCount;
      readonly value: number;
      readonly made: number;
      readonly others: readonly { readonly stem: StemId; readonly n: number }[];
    } & Span)
  /** `value` stitches are stated: those `made`, and each gap of several chains as one. */
  | ({
      readonly kind: 'gaps-counted';
      readonly value: number;
      readonly made: number;
      readonly spaces: readonly { readonly chains: number; readonly n: number }[];
    } & Span)
  | ({ readonly kind: 'no-place'; readonly what: string } & Span)
  /** Of `have` spaces of the row beneath, `left` at its end are not worked, and all before them are. */
  | ({ readonly kind: 'spaces-left'; readonly left: number; readonly have: number } & Span)
  | ({
      readonly kind: 'space-size';
      readonly named: number;
      readonly found: number;
      /** It is a row's starting chain that is named, not a space: of this row or of the one beneath. */
      readonly ofStart?: 'here' | 'beneath';
    } & Span)
  | ({ readonly kind: 'noun'; readonly named: string; readonly found: string } & Span)
  | ({ readonly kind: 'undefined'; readonly word: string } & Span)
  | ({ readonly kind: 'unread' } & Span)
  /** Not understood either; the row comes out without them: see `passWords`. */
  | ({ readonly kind: 'words-passed'; readonly agrees: boolean } & Span)
  | ({ readonly kind: 'not-worked'; readonly what: string } & Span)
  /** As it was read the row does not come out by `of`, and no one slip explains that: see `weigh`. */
  | ({
      readonly kind: 'not-followed';
      readonly of: Fact;
      /** The span is of words that were taken for talk. */
      readonly isTalk: boolean;
    } & Span)
  | ({ readonly kind: 'row-missing'; readonly row: string } & Span)
  | ({ readonly kind: 'row-loop'; readonly row: string } & Span)
  | ({
      readonly kind: 'mesh';
      readonly boxes: number;
      readonly needed: number;
      readonly have: number;
    } & Span)
  | ({ readonly kind: 'chart-missing'; readonly name: string } & Span)
  | ({
      readonly kind: 'chart-width';
      readonly name: string;
      readonly width: number;
      readonly given: number;
    } & Span)
  | ({
      readonly kind: 'chart-row';
      readonly name: string;
      readonly row: number;
      readonly rows: number;
    } & Span)
  | ({ readonly kind: 'open-length'; readonly why: OpenLength } & Span)
  /** Worked as often as the gauge says: `rows` rows bring it to `reachedMm`. */
  | ({ readonly kind: 'to-length' } & ToLength & Span)
  | ({ readonly kind: 'open-count' } & Span)
  /** A chain of which only the multiple is told is worked `times` times it. */
  | ({
      readonly kind: 'chosen-count';
      readonly chains: number;
      readonly times: number;
      readonly multiple: Multiple;
    } & Span)
  /** This row needs another reading than its sisters. */
  | ({
      readonly kind: 'reading';
      readonly doubt: string;
      readonly here: string;
      readonly usual: string;
    } & Span)
  /** Nothing stated, and two readings both work out with different counts. */
  | ({
      readonly kind: 'two-readings';
      readonly doubt: string;
      readonly here: string;
      readonly other: string;
      readonly made: number;
      readonly otherMade: number;
    } & Span)
  /** "(4 rows)" beside a range of another length. */
  | ({ readonly kind: 'row-total'; readonly stated: number; readonly range: number } & Span)
  | ({ readonly kind: 'limit'; readonly what: 'stitches' | 'repeat' | 'rows' } & Span);

/**
 * Why a length stays without a number of rows. gauge: none is given. words: no one length, or not
 * known from where. rows: those before, or those repeated, have no sure height. shape: a pass makes
 * the piece wider or narrower, so that its length is not the sum of its rows. reached: the piece is as
 * long already. many: more stitches than one order may make. said: a number of rows stands beside
 * it, and is taken.
 */
export type OpenLength = 'gauge' | 'words' | 'rows' | 'shape' | 'reached' | 'many' | 'said';

/** A length turned into whole passes over the rows named. */
export interface ToLength {
  readonly passes: number;
  readonly rows: number;
  readonly wantedMm: number;
  /** With all rows of the part, or of this order where the length is counted from here. */
  readonly reachedMm: number;
  readonly since: 'start' | 'here';
  readonly how: 'swatch' | 'estimate';
  /** Sentences: where the heights of the rows were had from, each once. */
  readonly because: readonly string[];
}

export type FactKind = Fact['kind'];

/** Facts that mean: the row does not work out as written. */
export const MISFITS: ReadonlySet<FactKind> = new Set([
  'overrun',
  'left',
  'remainder',
  'count',
  'no-place',
  'spaces-left',
  'mesh',
  'chart-width',
]);
