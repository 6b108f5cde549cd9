/**
 * The tree of one instruction: what the words say, in the order in which they stand, with nothing
 * decided yet. Spans count from the start of the instruction's text, so that an instruction that
 * moves in the file keeps its tree. A node that was not understood is an `unread` step: the tree
 * always holds the whole text.
 */
import type { Span } from '../source/index.ts';

/**
 * Numbers as written: one for all sizes, or one a size in the order of the sizes, "20 (24, 28)".
 * `null`: a dash, "not in this size". `NaN` never occurs.
 */
export interface Numbers extends Span {
  readonly values: readonly (number | null)[];
}

/**
 * A stitch word of the trade without its terms: `sc`, `hdc`, `dc`, `tr`, `dtr`, `trtr`, `qtr`,
 * `quintr`, `htr`, `ss` and so on, lower-case and in its shortest form ("treble crochet" is `tr`).
 * What it makes depends on the terms (US or UK): see `stemOf` in `terms.ts`.
 */
export type StemWord = string;

export type Loop = 'back' | 'front' | 'third' | 'both';
export type Post = 'front' | 'back';

/** What is made of the stem. */
export type StitchShape =
  | 'one' /** sc, dc, FPdc, fsc … one plain stitch. */
  | 'increase' /** "inc": `legs` stitches (2 unless said) in one place. */
  | 'together' /** sc2tog, dec: `legs` places (2 unless said) become one stitch. */
  | 'cluster' /** `legs` unfinished stitches closed together, in one place unless its place says more. */
  | 'bobble'
  | 'puff'
  | 'popcorn'
  | 'shell' /** undefined "shell", "fan": stays a doubt unless a special stitch defines it. */
  | 'v'
  | 'picot'
  | 'special'; /** a stitch that this manuscript defines; `special` is its key. */

/**
 * The name of a stitch as used in a row. It has no span of its own: one that says nothing special is
 * shared by all places where it stands.
 */
export interface StitchTerm {
  readonly shape: StitchShape;
  /** `null`: not said ("inc", "dec", "cluster"): the stitch of the row. */
  readonly stem: StemWord | null;
  readonly legs: number | null;
  /** The middle legs may be worked over places skipped between: "dc2tog over next 3 sts, skipping". */
  readonly special: string | null;
  readonly loop: Loop | null;
  readonly post: Post | null;
  readonly extended: boolean;
  /** Foundation stitch: makes its own chain (fsc, fdc). */
  readonly foundation: boolean;
  /** Reverse, linked, spike, crossed, loop, long … kept for the writer; no effect on counts. */
  readonly manner: readonly string[];
}

/** What kind of place is meant. */
export type NounKind =
  | 'stitch' /** "st", or no noun at all */
  | 'stem' /** "next 5 dc": `stem` names it */
  | 'chain' /** "ch", a single chain, not a space */
  | 'space' /** ch-n sp, sp, loop, arch, hole: `chains` if said */
  | 'gap' /** between two stitches */
  | 'ring'
  | 'corner' /** corner, corner sp, corner st: `chains` if said */
  | 'group' /** shell, fan, V-st, cluster, bobble, 3-dc group: `word` names it */
  | 'picot'
  | 'box' /** box, mesh, square, block */
  | 'row-end'
  | 'start-chain' /** "beg ch-3", "turning ch", "tch", "ch 3", "t-ch": `chains` if said */
  | 'marker'
  | 'join' /** "same st as join", "joining sl st" */
  | 'center' /** centre stitch/space of something: see `Place.of` */;

/** It has no span of its own: one that says nothing special is shared by all places that name it. */
export interface Noun {
  readonly kind: NounKind;
  readonly stem: StemWord | null;
  /** "around next FPdc": how the named stitch was worked. */
  readonly post: Post | null;
  readonly chains: Numbers | null;
  /**
   * Key of the special stitch, or the group's word, lower-case, singular; "magic" for a magic ring;
   * else ''.
   */
  readonly word: string;
  readonly plural: boolean;
  /** "corner ch-2 sp": kind space, corner true. */
  readonly corner: boolean;
  /** "skipped st", "unworked loop", "free loop". */
  readonly skipped: boolean;
}

export type Pick =
  | 'next' /** next, following, "in 5 sts" with no other word */
  | 'same'
  | 'first'
  | 'last'
  | 'each' /** each st (around / across / to …); "in all 36 sts" with n */
  | 'every-other' /** every 2nd, or every `nth` */
  | 'nth' /** `nth`, counted as `of`/`fromHook` says */
  | 'top' /** top of beg ch-3 */
  | 'this' /** no determiner: "in ring", "in corner", "in sp", "in shell" */
  | 'centre'
  | 'any'
  | 'previous';

/** Where a stitch goes. */
export interface Place extends Span {
  readonly pick: Pick;
  /** How many: "next 5 sts". `null` where no number is written. */
  readonly n: Numbers | null;
  /** "each of next 5", "each st". */
  readonly each: boolean;
  /** 2 in "2nd ch from hook"; 1 in "first ch made". */
  readonly nth: number | null;
  readonly fromHook: boolean;
  /** "dc or ch-1 sp", "each st and each ch-1 sp": several nouns; none when no noun is written. */
  readonly nouns: readonly Noun[];
  readonly joinedBy: 'and' | 'or' | null;
  /** For `each`: where it ends. `null`: not said. */
  readonly until: Until | null;
  /** "3rd ch of beg ch-4", "centre st of next shell", "same ch as first 2 sc". */
  readonly of: Place | null;
  readonly loop: Loop | null;
  readonly post: Post | null;
  /** "around the post of", "2 rows below", "in st below": rows down from the edge, 0 for none. */
  readonly rowsBelow: number;
  /** "in the st of rnd 24": row named by number. */
  readonly row: number | null;
  /** "all in next st": everything before belongs together. */
  readonly all: boolean;
}

export type Until =
  | ({ readonly kind: 'end' /** as written, for the writer */; readonly word: string } & Span)
  /** "for the length required": as often as the maker likes. */
  | ({ readonly kind: 'length' } & Span)
  /**
   * "to last 3 sts", "until 2 sts remain", "to within 4 sc of end": stops before them. `chain`: "and
   * turning ch", which is one more of them if it counts.
   */
  | ({
      readonly kind: 'last';
      readonly n: Numbers;
      readonly noun: Noun | null;
      readonly chain: boolean;
    } & Span)
  /** "to corner", "to next ch-2 sp", "to marker": stops before it; `before`: so many stitches sooner. */
  | ({ readonly kind: 'place'; readonly place: Place; readonly before: Numbers | null } & Span);

/** What a chain is said to stand for: "(counts as dc and ch 1)", "(does not count as a st)". */
export interface CountsAs extends Span {
  readonly counts: boolean;
  /** The chain is named, "skipped ch-3 counts as dc": nothing else can be meant. */
  readonly named: boolean;
  /** Stitch it stands for, if said. */
  readonly stem: StemWord | null;
  /** How many stitches ("counts as 2 dc"); 1 unless said. */
  readonly stitches: number;
  /** Chains that it includes beside the stitch: 1 in "dc and ch 1". */
  readonly chains: number;
  /** "here and throughout". */
  readonly throughout: boolean;
}

export interface WorkStep extends Span {
  readonly kind: 'work';
  /**
   * The number beside the name: "5 sc", "sc5", "2 sc in next st"; `null` where none is written.
   * Whether it multiplies along the row or in one place depends on `place` (survey section 6).
   */
  readonly n: Numbers | null;
  /** "sc 5", "sc x 5", "sc5": the number stands behind the name. */
  readonly numberAfter: boolean;
  readonly stitch: StitchTerm;
  /** Where the stitch's name stands, counted as the span is. */
  readonly nameFrom: number;
  readonly nameTo: number;
  readonly place: Place | null;
  /** More places for the same stitch: "in 2nd ch from hook and in each ch across". */
  readonly alsoIn: readonly Place[];
  /** "around", "across", "to end" right behind the stitch without "each": "sc around", "hdc across". */
  readonly until: Until | null;
  /** "(counts as dc)" and the like beside the stitch. */
  readonly countsAs: CountsAs | null;
  /** "evenly", "inc 4 evenly": places are left to the maker. */
  readonly evenly: boolean;
}

export interface ChainStep extends Span {
  readonly kind: 'chain';
  readonly n: Numbers | null;
  readonly countsAs: CountsAs | null;
  /** "a multiple of 6 plus 3", "as long as you like", "a chain 40 cm long": the number is open. */
  readonly open: boolean;
  /** What the open number is a multiple of; `null` where nothing tells. */
  readonly multiple: Multiple | null;
}

/** As many chains as some number of times `of`, and `plus`: "a multiple of 6 + 3". */
export interface Multiple {
  readonly of: number;
  readonly plus: number;
  /** Chains are named, or those to turn are added; else it may be stitches that are told of. */
  readonly told: boolean;
}

export interface SkipStep extends Span {
  readonly kind: 'skip';
  readonly place: Place;
  /** "skip 3 ch (counts as dc)": the skipped chains stand for a stitch. */
  readonly countsAs: CountsAs | null;
}

/** Several steps worked into one place: "(2 dc, ch 2, 2 dc) in next sp". */
export interface GroupStep extends Span {
  readonly kind: 'group';
  readonly steps: readonly Step[];
  readonly place: Place;
  /** No brackets: "3 dc, ch 2, 3 dc in next sp". May also be read as a walk along the row. */
  readonly loose: boolean;
}

export type Times =
  /**
   * more: true "5 more times"; false "6 times in all", "(…) 6 times"; null "rep from * 5 times",
   * which is either.
   */
  | ({ readonly kind: 'times'; readonly n: Numbers; readonly more: boolean | null } & Span)
  | ({ readonly kind: 'until'; readonly until: Until } & Span)
  /** No number and no end: "*4 sc, dec* [30]", "(inc, 2 sc)"; as often as count or row allow. */
  | { readonly kind: 'missing' };

export type Ending =
  /** "ending with sc in last st" (`last` false); "ending last rep with …" (`last` true). */
  | ({ readonly kind: 'with'; readonly steps: readonly Step[]; readonly last: boolean } & Span)
  /** "ending last rep in top of tch": where the last stitch of the last repeat goes. */
  | ({ readonly kind: 'in'; readonly place: Place } & Span)
  /** "ending last rep at **": stops at the mark. */
  | ({ readonly kind: 'at'; readonly mark: string } & Span)
  /** "omitting last ch 2": the steps are left out of the last repeat. */
  | ({ readonly kind: 'omit'; readonly steps: readonly Step[] } & Span);

export interface RepeatStep extends Span {
  readonly kind: 'repeat';
  /** Opening sign: `(`, `[`, `{`, `|`, `*`, `**`, `†`, or '' where the sentence itself repeats. */
  readonly mark: string;
  readonly steps: readonly Step[];
  readonly times: Times;
  readonly ending: Ending | null;
  /**
   * The steps were worked before in this row ("rep between * and * 3 more times" after other work,
   * "then rep from * once"): nothing is worked a first time.
   */
  readonly again: boolean;
  /** Span of the words that ask for the repeat ("rep from * 5 more times", "x 6"); empty: none. */
  readonly order: Span;
}

/** `**` inside a repeat, to which "ending at **" refers. */
export interface MarkStep extends Span {
  readonly kind: 'mark';
  readonly mark: string;
}

export interface JoinStep extends Span {
  readonly kind: 'join';
  /** Where to; `null` for a bare "join". */
  readonly place: Place | null;
  /** "join with sl st in …" | "join with sc" (starts a round with a stitch) | invisible join … */
  readonly with: StitchTerm | null;
  /** "to form a ring". */
  readonly ring: boolean;
  /** "join B with sl st in …": yarn that is attached, not a round that is closed. */
  readonly yarn: string | null;
}

export interface TurnStep extends Span {
  readonly kind: 'turn';
  /** "do not turn". */
  readonly not: boolean;
}

/** "do not join", "work in continuous rounds", "in a spiral". */
export interface SpiralStep extends Span {
  readonly kind: 'spiral';
}

export interface FastenOffStep extends Span {
  readonly kind: 'fasten-off';
  /** "do not fasten off". */
  readonly not: boolean;
}

export interface YarnStep extends Span {
  readonly kind: 'yarn';
  /** Letter or name as written: `A`, `MC`, `white`. */
  readonly yarn: string;
  readonly act: 'with' | 'change' | 'drop' | 'break';
}

/** "Make a magic ring", "MR", "sl knot" | ring of n chains joined is a chain and a join. */
export interface RingStep extends Span {
  readonly kind: 'ring';
}

/** "working along opposite side of foundation ch", "in the unworked loops". */
export interface OtherSideStep extends Span {
  readonly kind: 'other-side';
  /** "opposite side of ch-50": the chain that is meant, if said. */
  readonly chains: Numbers | null;
  /** "rotate", "do not turn, work along the ends of rows": the row ends rather than a chain. */
  readonly rowEnds: boolean;
}

/** "leave rem sts unworked". */
export interface UnworkedStep extends Span {
  readonly kind: 'unworked';
  readonly n: Numbers | null;
}

/** "BLO:", "working in back loops only": holds for what follows in the instruction. */
export interface LoopStep extends Span {
  readonly kind: 'loop';
  /** "front loops of rnd 3": the row whose loops they are; `null`: of the row beneath. */
  readonly row: number | null;
  readonly loop: Loop;
}

/** Boxes of mesh: "52 open boxes", "5 sps, 2 bls", "1 filled box". */
export interface BoxStep extends Span {
  readonly kind: 'boxes';
  readonly n: Numbers | null;
  readonly box: 'open' | 'filled' | 'lacet' | 'bar';
  /** "add 1 open box": beyond the row beneath; "sl st over 2 boxes": passed at the row's start. */
  readonly edge: 'added' | 'slipped' | null;
  /** "open boxes to end / around". */
  readonly until: Until | null;
}

/** "work chart Tide over next 21 boxes", "follow chart". */
export interface ChartStep extends Span {
  readonly kind: 'chart';
  /** '' where the manuscript has but one. */
  readonly name: string;
  /** "over next 21 boxes" | null. */
  readonly n: Numbers | null;
  /** "over boxes 3-23": columns counted from where the first chart row begins. */
  readonly fromBox: number | null;
  readonly toBox: number | null;
  /** "chart row 3", else the rows follow the label. */
  readonly row: number | null;
  /** "rows 4-20 of chart", "from row 4": the label's later rows go on from there. */
  readonly onwards: boolean;
  /** "boxes 11-46 of chart Tide": only these of its columns, counted as `fromBox` is. */
  readonly part: { readonly from: number; readonly to: number } | null;
}

/** Rows worked again: "Rep rnd 4", "as row 2", "rep rows 2 and 3 until …", "rep last 2 rows". */
export interface RowsAgainStep extends Span {
  readonly kind: 'rows-again';
  /** Row numbers in the order named; ranges are written out. Empty with `lastN`. */
  readonly rows: readonly number[];
  /** "the last 2 rows". */
  readonly lastN: number | null;
  /** "Repeat from row 2": that row and all behind it; `rows` has the one. */
  readonly onward: boolean;
  /** A row by its name, in small letters: "dec" of "rep Dec row"; `rows` is empty then. */
  readonly named: string | null;
  /** Name of another part: "as rows 4-7 of Front". */
  readonly part: string | null;
  /** Passes over the named rows ("3 more times": n 3); null where the label or `until` says it. */
  readonly times: Numbers | null;
  /** "for 12 more rows": rows in all rather than passes. */
  readonly moreRows: Numbers | null;
  /** "until 10 rows are worked in all": those before this order among them. */
  readonly rowsInAll: Numbers | null;
  /** "until 13 sts remain", "until you have 20 sc": how many stitches the last row makes. */
  readonly stitchesAtEnd: Numbers | null;
  /** "until piece measures 20 cm". */
  readonly measure: Measure | null;
  /** "ending with row 3". */
  readonly endingWith: number | null;
  /** Rows named after "then". */
  readonly then: readonly number[];
  /** "work even": sc (or whatever the last row was made of) in each st. */
  readonly even: boolean;
  /** "but ch 7 instead of ch 6", "9 dc instead of 7 dc". */
  readonly changes: readonly ChangedNumber[];
  /** "Rep row 3 for all odd rows": it speaks for those to come, and none is worked here. */
  readonly every: 'even' | 'odd' | null;
}

/**
 * Chains of `was` are made `now` long, or `was` stitches of a kind become `now`; `was` null: those between its
 * stitches, or in its places, all of one number.
 */
export interface ChangedNumber extends Span {
  /** `null`: chains. */
  readonly stem: StemWord | null;
  readonly was: number | null;
  readonly now: number;
  /** The chain with which the row ends, to turn. */
  readonly atEnd: boolean;
  /** "… on 6th and 7th rnds": in these alone; empty: in all of them. */
  readonly rows: readonly number[];
}

/** A length that is worked to, or for. */
export interface Measure {
  /** `null` where no single length can be read ("desired length", one for each size). */
  readonly mm: number | null;
  /** Measured from the beginning of the part, from this order on, or not known from where. */
  readonly since: 'start' | 'here' | null;
}

/** "work even", "continue in pattern", "no change", with or without "for 10 rows". */
export interface EvenStep extends Span {
  readonly kind: 'even';
  readonly stitch: StitchTerm | null;
  /** "in pattern to last 2 sts": how far in the row; `null`: to its end. */
  readonly until: Until | null;
  readonly rows: Numbers | null;
  readonly measure: Measure | null;
  /** "dec 1 st at each end every other row 3 times": the rows are shaped so; their number is told here. */
  readonly shaping?: EndShaping | undefined;
}

/** How rows are shaped at their ends, and in which of them. */
export interface EndShaping {
  /** An increase or a decrease. */
  readonly stitch: StitchTerm;
  /** Stitches more or fewer at each such end. */
  readonly n: number;
  /** 'somewhere': at an edge of which is not known at which end of the row it lies. */
  readonly at: 'both' | 'start' | 'end' | 'somewhere';
  /** From one shaped row to the next: 1 in every row, 2 in every other one. */
  readonly every: number;
  /** "next row", "next row and every 4th row 3 times": one such row before those of `times`. */
  readonly next: boolean;
  /** How many shaped rows; `null`: as many as the label names, or one. */
  readonly times: Numbers | null;
}

/** "place marker", "stuff", "attach eyes", "see photo", "mark it": understood, changes nothing. */
export interface RemarkStep extends Span {
  readonly kind: 'remark';
  /** "Working behind petals": the row goes behind those of the row beneath. */
  readonly behind?: true;
}

/**
 * From here on the hook works on another piece: "of first leg", "on the body", "join to second arm".
 * It stands before the step that its words belong to.
 */
export interface PieceStep extends Span {
  readonly kind: 'piece';
  /** The piece's word, lower-case, singular: "leg". */
  readonly word: string;
  /** 1 for "first", 2 for "second" and so on; `null`: not said. */
  readonly which: number | 'other' | 'both' | 'left' | 'right' | null;
  /** from: the piece on the hook ("from the second leg"); join: the one that it is joined to. */
  readonly how: 'on' | 'from' | 'join';
}

/** Understood, named, but not worked yet: joining pieces through both layers, sewing, surface work. */
export interface NotWorkedStep extends Span {
  readonly kind: 'not-worked';
  readonly what: string;
  /** "6 sc through both layers": the stitches; where a round is closed flat, they are worked all the same. */
  readonly work: WorkStep | null;
}

/** Words that were not understood. */
export interface UnreadStep extends Span {
  readonly kind: 'unread';
  /** "no number": they name neither a number nor a stitch; "nothing": every word is one of talk. */
  readonly says: 'work' | 'no number' | 'nothing';
}

export type Step =
  | WorkStep
  | ChainStep
  | SkipStep
  | GroupStep
  | RepeatStep
  | MarkStep
  | JoinStep
  | TurnStep
  | SpiralStep
  | FastenOffStep
  | YarnStep
  | RingStep
  | OtherSideStep
  | UnworkedStep
  | LoopStep
  | BoxStep
  | ChartStep
  | RowsAgainStep
  | EvenStep
  | RemarkStep
  | PieceStep
  | NotWorkedStep
  | UnreadStep;

/** What a stated count counts. */
export type CountUnit =
  | 'stitch' /** sts */
  | 'stem' /** dc */
  | 'space' /** ch-2 sps, loops, arches: `chains` if said */
  | 'chain'
  | 'box'
  | 'group' /** shells, clusters, petals, points: `word` */
  | 'decrease' /** not a total: "2 sc increased", "(3 more)", "1 box added" */
  | 'row'; /** "(4 rows)": how many rows, never stitches */

export interface StatedCount extends Span {
  readonly n: Numbers;
  /** `null`: a bare number. */
  readonly unit: CountUnit | null;
  readonly stem: StemWord | null;
  readonly chains: Numbers | null;
  readonly word: string;
  /** "(28 hdc, not counting the ch)" false, "including beg ch" true, else null. */
  readonly startChainIncluded: boolean | null;
  /** "each side has 9 dc", "per side", "between corners": not a total of the row. */
  readonly partial: boolean;
}

export type Side = 'RS' | 'WS';

export interface RowLabel extends Span {
  readonly word: 'row' | 'round' | '' /** bare number */;
  /** Row numbers in order; ranges written out. Empty for "Next row", "Set-up row", "Start". */
  readonly numbers: readonly number[];
  /** Sizes may have ranges of their own, "Rnds 4-9 (10, 11)": the last number a size. */
  readonly lastBySize: readonly number[] | null;
  /** "Rows 42-60 (44-62)": the first number a size, where each size has a range of its own. */
  readonly firstBySize: readonly number[] | null;
  /** "and all even rows" | "and every alt row". */
  readonly every: 'even' | 'odd' | null;
  /** "Rounds 12+", "Rows 4-x", "5-end". */
  readonly openEnd: boolean;
  /** "Next 6 rows": how many; null otherwise. */
  readonly next: Numbers | null;
  readonly side: Side | null;
  /** "Size M only", "Sizes L and XL": as written, else ''. */
  readonly sizes: string;
  /** "Row 3 (B)": the yarn that it is worked with; `null` where the label names none. */
  readonly yarn: string | null;
  /** The words of the label as written, trimmed of the colon. */
  readonly text: string;
}

/** One instruction: a labelled row, or a run of stitch commands without label. */
export interface Instruction {
  readonly label: RowLabel | null;
  readonly steps: readonly Step[];
  readonly counts: readonly StatedCount[];
  /** Orders that hold from here on: "ch 3 counts as dc here and throughout". */
  readonly orders: readonly StandingOrder[];
  /** Words read as others than are written: "stich" as "stitch". */
  readonly slips: readonly Slip[];
}

/** A word that was misspelt, glued or scanned badly, and what it was read as. */
export interface Slip extends Span {
  readonly reading: string;
}

/** What notes and remarks lay down for the whole piece or from here on. */
export type StandingOrder =
  /** n: length of the chain spoken of; null: every start chain. */
  | ({
      readonly kind: 'start-chain';
      readonly n: number | null;
      readonly countsAs: CountsAs;
    } & Span)
  | ({ readonly kind: 'turning'; readonly turn: boolean } & Span)
  | ({ readonly kind: 'joining'; readonly join: boolean; readonly place: Place | null } & Span)
  | ({ readonly kind: 'loops'; readonly loop: Loop } & Span)
  | ({ readonly kind: 'chains-count'; readonly count: boolean } & Span)
  /** "ch 3 to turn each row" */
  | ({ readonly kind: 'turning-chain'; readonly n: number } & Span)
  | ({ readonly kind: 'terms'; readonly terms: Terms } & Span)
  /** "rep from * 5 times means 5 more". */
  | ({ readonly kind: 'times'; readonly more: boolean } & Span);

export type Terms = 'US' | 'UK';

/** "Shell: 5 dc in same st": a stitch that the manuscript defines. */
export interface SpecialStitch extends Span {
  /** Lower-case, singular, single spaces: the key under which rows use it. */
  readonly key: string;
  readonly name: string;
  /** Other spellings of the same: "sh", "beg cl". */
  readonly aliases: readonly string[];
  readonly steps: readonly Step[];
  /** The definition speaks of movements ("yo, insert hook, draw up a loop") or was not understood. */
  readonly opaque: boolean;
  /** Defined inside a row, where it is first worked: "2 dc, ch 2 and 2 dc (shell made)". */
  readonly inline: boolean;
}
