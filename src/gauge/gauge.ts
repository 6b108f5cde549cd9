/**
 * What is known of a fabric's size: gauges as the pattern gives them, and what they say of a stitch.
 * Types only. All lengths in millimetres; a spread is a fraction, 0.05 for plus or minus 5 %.
 */
import type { StemId } from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Hook } from './hook.ts';
import type { Yarn } from './yarn.ts';

/**
 * swatch: counted on the designer's own swatch. estimate: from a named table or another fabric.
 * assumed: the pattern gives neither gauge nor yarn, so only proportions mean something.
 */
export type How = 'swatch' | 'estimate' | 'assumed';

/** How a figure was had and how sure it is. */
export interface Had {
  readonly how: How;
  /** A sentence with a full stop. */
  readonly because: string;
  readonly spread: number;
}

/** Size of one stitch of a fabric. `how`, `because` and `spread` are those of the less sure side. */
export interface Gauge extends Had {
  /** The fabric asked for, in the pattern's words: "sc", "mesh". */
  readonly fabric: string;
  readonly stitchWidthMm: number;
  readonly rowHeightMm: number;
  readonly width: Had;
  readonly height: Had;
}

export interface BoxSize extends Had {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What a swatch was counted in: stitches, boxes of a mesh, or repeats of a pattern stitch. */
export type GaugeUnit = 'stitch' | 'box' | 'repeat';

export type Blocking = 'before' | 'after' | 'unsaid';

/** One count as written: "16 sts x 18 rnds = 10 cm". */
export interface GaugeCount {
  readonly across: { readonly n: number; readonly unit: GaugeUnit; readonly mm: number } | null;
  readonly up: {
    readonly n: number;
    readonly worked: 'rounds' | 'rows';
    readonly mm: number;
    /** "Rnds 1-3 = 9 cm": measured edge to edge, so that no part of a row is guessed at. */
    readonly isWhole?: true;
  } | null;
  /** Words that name the fabric: "sc", "single crochet in rounds"; `null` where none do. */
  readonly fabric: string | null;
  readonly blocking: Blocking;
  /** Where the swatch's own size is said. */
  readonly swatch: { readonly widthMm: number; readonly heightMm: number } | null;
  readonly words: string;
}

/** What the fabric measured on the hook; `null` for a side that was not counted. */
export interface BeforeBlocking {
  readonly unitWidthMm: number | null;
  readonly rowHeightMm: number | null;
}

/** Everything the pattern says of one fabric's gauge. */
export interface GaugeRecord {
  /** As written: "sc", "hdc ripple", "mesh"; '' where the pattern names no fabric. */
  readonly fabric: string;
  readonly stem: StemId | null;
  /** The stitch and nothing else: "sc", "sc in rounds", not "hdc ripple". */
  readonly isPlain: boolean;
  readonly isMesh: boolean;
  /**
   * Counted "in pattern", with no stitch named: it holds for every row. How high its stitches are against
   * an sc, on the mean of those that the pattern names; `null` for any other fabric.
   */
  readonly patternHeight: number | null;
  readonly worked: 'rounds' | 'rows' | null;
  /** Width of a unit (see `unit`), mean over the swatches; `null` where only rows are counted. */
  readonly unitWidthMm: number | null;
  readonly unit: GaugeUnit;
  readonly rowHeightMm: number | null;
  readonly widthSpread: number;
  readonly heightSpread: number;
  readonly blocking: Blocking;
  /** Counts that went into the means. */
  readonly counts: readonly GaugeCount[];
  /** Means of counts before blocking, where others are after it; `null`: one state is given. */
  readonly before: BeforeBlocking | null;
  readonly span: Span;
}

export interface Gauges {
  readonly records: readonly GaugeRecord[];
  readonly yarns: readonly Yarn[];
  readonly hooks: readonly Hook[];
  /** Chains of an open box in the pattern's mesh, where a chart or a definition tells. */
  readonly meshGap: number | null;
  /** Word of a stitch in the pattern's terms, for sentences. */
  readonly terms: 'US' | 'UK';
}
