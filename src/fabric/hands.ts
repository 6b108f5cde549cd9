/**
 * A pair of hands at work on one piece in one size: what they hold, where on the edge they stand,
 * and the moves everything else is made of. The only mutable state of this room; a trial is taken
 * back with `mark` and `restore`.
 */
import type {
  SpecialStitch,
  StemId,
  Step,
  StitchTerm,
  Terms,
  WorkStep,
} from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import { bareEdge, COUNTED, type Edge, SPACE } from './edge.ts';
import type { Fact } from './facts.ts';
import type { Heights } from './heights.ts';
import { type KindTable, kindOf } from './kinds.ts';
import { addAnchor, addNode, INTO_SPACE, NO_YARN, type Nodes, newNodes } from './nodes.ts';
import type { Outline } from './outline.ts';
import type { Parked } from './parked.ts';
import type { Pieces } from './pieces.ts';
import { type Choices, newReadings, type Readings } from './readings.ts';

/** A target that a stitch is worked into. */
export interface Target {
  readonly node: number;
  readonly space: boolean;
  /** Entry on the edge; -1 for places off it. */
  readonly entry: number;
}

/** What all hands of one fabric share. */
export interface Bench {
  readonly kinds: KindTable;
  readonly origins: Span[];
  readonly yarns: string[];
  readonly terms: Terms;
  readonly specials: ReadonlyMap<string, SpecialStitch>;
  readonly heights: Heights;
  /** `moves`: steps still allowed, so that repeats of nothing within repeats of nothing end. */
  readonly limit: { stitches: number; moves: number; readonly most: number };
  /** Chains taken where the words tell only their multiple, by where they stand; `null`: left open. */
  readonly chosen: Map<number, number | null>;
  /** Chains beside the stitch that a start chain of so many was said to hold: "ch 6 (counts as dc and ch 2)". */
  readonly toldGaps: Map<number, number>;
}

/** A starting chain: all its chains, those of its stitch, and whether its own words tell these apart. */
export interface StartChain {
  readonly n: number;
  readonly height: number;
  readonly isTold: boolean;
}

export interface Hands {
  readonly bench: Bench;
  readonly sizeIndex: number;
  readonly nodes: Nodes;
  edge: Edge;
  /** Next entry of the edge. */
  pos: number;
  /** Chains of the space at `pos` already taken one by one. */
  inner: number;
  /** Entries from here on are not for the step at hand ("to last 3 sts"). */
  limit: number;
  /** Place worked into first in this row. */
  first: Target | null;
  /** Place worked into last; `null` before the first stitch of a row. */
  last: Target | null;
  /** Everything goes into this one place (inside a group). */
  into: Target | null;
  /** First node of the row at hand. */
  rowFrom: number;
  /** Counted places taken or expressly skipped so far in this row. */
  used: number;
  /** Places wanted that were not there. */
  missing: number;
  /** The hook stands in the space at entry 0, and nothing was worked into it yet. */
  standing: boolean;
  /** Most counted places passed over on the way to a named place. */
  passed: number;
  /** A repeat's last slip stitch "in next st" came round to the stitch in which the round began. */
  cameHome: boolean;
  /** A space was taken. */
  tookSpace: boolean;
  /** A stitch was taken by "next" or "each". */
  tookStitch: boolean;
  /** How many places each "skip" of this row passes: the last of them may be left to the join. */
  skips: ReadonlySet<number>;
  /** Places before the row's end at which its words stop a repeat: "rep from * to last 5 sc"; 0: nowhere. */
  stopsBefore: number;
  /** Where the last skip ended: the entry behind it, and how many nodes there were. */
  skipped: { readonly to: number; readonly nodes: number; readonly n: number };
  /** Chains of a space that a skip passed by number, without coming to its end. */
  partSkip: { readonly entry: number; readonly n: number; readonly at: Span } | null;
  /** Places left on purpose: "leave rem sts unworked", slip stitches at a flat row's start. */
  leave: boolean;
  /** How many places the words leave: "leave last 4 sts unworked". */
  leaveSaid: number | null;
  yarn: number;
  /** Stitch of the row: what "inc" and "dec" are made of. */
  stem: StemId;
  loop: StitchTerm['loop'];
  /** Offset of the instruction at hand: tree spans count from it. */
  base: number;
  facts: Fact[];
  readings: Readings;
  /** Uses of special stitches and groups, by word. */
  groups: Map<string, number>;
  /** Counted stitches made as parts of special stitches and named groups. */
  inGroups: number;
  boxes: number;
  /** How many of the boxes are filled. */
  filled: number;
  /** How many chains are foundation, not spaces: [from, to) of the last foundation. */
  foundation: { from: number; to: number; joined: boolean } | null;
  /** Chain made at a row's end, before or after the turn: it belongs to the next row. */
  pending: (Step & { kind: 'chain' }) | null;
  pendingBase: number;
  /** Slip stitches behind a round's join, which lead to where the next round begins. */
  moves: readonly WorkStep[];
  movesBase: number;
  originOf: Map<Step, number>;
  /** Kinds of the stitches of this row's words, so that each is worked out once. */
  kindsOf: Map<StitchTerm, KindMemo>;
  /** Repeats within which the hands are. */
  repeats: number;
  /** Places used when this pass of a repeat began: "second stitch" is the second of the pass. */
  usedAtPass: number;
  /** Nested specials, to stop one that is made of itself. */
  depth: number;
  /** Lengths of the chains that this row makes. */
  chainLengths: ReadonlySet<number>;
  /** Lengths of starting chains that notes say are no stitch. */
  uncounted: ReadonlySet<number>;
  /** Several stitches go into each stitch of a name: those of other names are passed. */
  namedOnly: boolean;
  /** The row is worked from corner to corner, in blocks: see `corner-blocks.ts`. */
  cornerBlocks: boolean;
  /** Words that were not understood stand in this row. */
  unread: boolean;
  /** Something in this row has no checkable number ("each row end" of rows worked to a length). */
  loose: boolean;
  /** How many stitches are made is said, and not into which places: "20 sc evenly along the side". */
  spread: boolean;
  /** Where the hands stand on the border of a piece worked in rows; `null`: on none. */
  border: Border | null;
  /** Stitches of the sides whose number the words do not fix, by the row's count; `null`: not known yet. */
  sideFill: number | null;
  /** Part of this row is understood but not worked: joining another piece, working two layers. */
  partly: boolean;
  /** How many stitches the row makes is a guess, which no count of its own settles: the next row stands on that. */
  guessesNumber: boolean;
  /** The part's words take slip stitches for places. */
  slipsNamed: boolean;
  /** Stated number of stitches for this row in this size; -1 where none is stated. */
  statedStitches: number;
  fastened: boolean;
  /** No words tell how the part begins, and a ring was understood. */
  ringUnderstood: boolean;
  /** Rows worked so far in this size, all parts. */
  readonly history: Worked[];
  /** Starting chains that stand for a stitch, by node: how many chains, and which is its top. */
  readonly startChains: Map<number, StartChain>;
  /** Which copy of the part is at work, from 1. */
  instance: number;
  /** The edge to come back to after working along a chain just made. */
  aside: Aside | null;
  /** The stitch skipped last in this row: crossed stitches go back to it. */
  skippedHere: Target | null;
  /** The edge, where it is a run of stitches skipped in rows before. */
  skippedEdge: Edge | null;
  /** Step at hand, and the first step that found no place; absolute. */
  at: Step | null;
  atBase: number;
  lackAt: Span | null;
  /** Starting chains whose reading the words settle. */
  settled: Map<string, Settled>;
  /** Pieces worked before, each with its last edge, in the order made. */
  readonly parked: Parked[];
  /** Keys of those that rows since have joined. */
  readonly joined: string[];
  /** Key of the piece on the hook, and the heading of the part at work. */
  ownPiece: string;
  partName: string;
  /** The edge with which the row at hand began. */
  rowEdge: Edge;
  /** Where the hands stand on each piece, in a row that brings several together. */
  pieces: Pieces | null;
  /** A stitch was sought by its name, and others were passed on the way. */
  sought: boolean;
  /** The row goes back to places of an earlier one: what does not come out proves nothing. */
  overlaid: boolean;
  /** How many places of earlier rows, by row and name, this row has taken; and which there are. */
  earlier: ReadonlyMap<string, number>;
  earlierPlaces: Map<string, readonly number[]>;
  /** The last place of the edge may be worked or left: both occur (the far end of a chain). */
  optionalLast: boolean;
}

export interface KindMemo {
  readonly kind: number;
  /** What the kind depends on beside the words. */
  readonly stem: StemId;
  readonly loop: StitchTerm['loop'];
}

/** A doubt that notes, the join or the row's own words settle. */
export interface Settled extends Span {
  readonly reading: string;
  readonly alternatives: readonly string[];
  readonly because: 'note' | 'join' | 'words' | 'count';
}

export interface Aside {
  readonly edge: Edge;
  readonly pos: number;
  readonly limit: number;
  readonly back: Aside | null;
  /** Behind its first stitch it goes on into the row, as one edge. */
  readonly goesOn?: true;
}

/** A row that was worked: its nodes, and the edge that it was worked on. */
export interface Worked {
  readonly part: number;
  readonly number: number | null;
  readonly from: number;
  readonly to: number;
  /** What it was worked into. */
  readonly edge: Edge;
  /** Its own edge closes on itself. */
  readonly ring: boolean;
  /** It was understood, came out, and is worked a known number of times. */
  readonly isSure: boolean;
  /** It goes along the sides of the piece, and is none of its rows. */
  readonly isBorder: boolean;
}

/** On the way round a piece worked in rows: see `steps/border.ts`. */
export interface Border {
  readonly outline: Outline | null;
  /** The side at hand; a corner begins the next one. */
  readonly side: 'row' | 'ends' | 'chain' | 'corner';
  /** The last row, where nothing was worked into it yet. */
  readonly top: Edge | null;
  readonly corners: number;
  /** Sides so far whose number of stitches the words do not fix. */
  readonly openSides: number;
}

const NO_SKIPS: ReadonlySet<number> = new Set();
const NOTHING_SKIPPED: Hands['skipped'] = { to: -1, nodes: -1, n: 0 };

const NONE_TAKEN: ReadonlyMap<string, number> = new Map();

export const NO_MOVES: readonly WorkStep[] = [];

export const NO_LENGTHS: ReadonlySet<number> = new Set();

export function newHands(bench: Bench, sizeIndex: number): Hands {
  return {
    bench,
    sizeIndex,
    nodes: newNodes(),
    edge: bareEdge('none'),
    pos: 0,
    inner: 0,
    limit: 0,
    first: null,
    last: null,
    into: null,
    rowFrom: 0,
    used: 0,
    missing: 0,
    standing: false,
    passed: 0,
    cameHome: false,
    tookSpace: false,
    tookStitch: false,
    skips: NO_SKIPS,
    stopsBefore: 0,
    skipped: NOTHING_SKIPPED,
    partSkip: null,
    leave: false,
    leaveSaid: null,
    yarn: NO_YARN,
    stem: 'w0',
    loop: null,
    base: 0,
    facts: [],
    readings: newReadings(new Map(), new Map()),
    groups: new Map(),
    inGroups: 0,
    boxes: 0,
    filled: 0,
    foundation: null,
    pending: null,
    pendingBase: 0,
    moves: NO_MOVES,
    movesBase: 0,
    originOf: new Map(),
    kindsOf: new Map(),
    repeats: 0,
    usedAtPass: 0,
    depth: 0,
    chainLengths: new Set(),
    uncounted: NO_LENGTHS,
    namedOnly: false,
    cornerBlocks: false,
    unread: false,
    loose: false,
    spread: false,
    border: null,
    sideFill: null,
    partly: false,
    guessesNumber: false,
    slipsNamed: false,
    statedStitches: -1,
    fastened: false,
    ringUnderstood: false,
    history: [],
    startChains: new Map(),
    instance: 1,
    aside: null,
    skippedHere: null,
    skippedEdge: null,
    at: null,
    atBase: 0,
    lackAt: null,
    settled: new Map(),
    parked: [],
    joined: [],
    ownPiece: '',
    partName: '',
    rowEdge: bareEdge('none'),
    pieces: null,
    sought: false,
    overlaid: false,
    earlier: NONE_TAKEN,
    earlierPlaces: new Map(),
    optionalLast: false,
  };
}

/** Stands at the start of the edge, ready for a row. */
export function beginRow(
  hands: Hands,
  edge: Edge,
  base: number,
  choices: { part: Choices; row: Choices },
): void {
  hands.edge = edge;
  hands.pos = 0;
  hands.inner = 0;
  hands.limit = edge.n;
  hands.first = null;
  hands.last = null;
  hands.into = null;
  hands.rowFrom = hands.nodes.n;
  hands.used = 0;
  hands.missing = 0;
  hands.standing = false;
  hands.passed = 0;
  hands.cameHome = false;
  hands.tookSpace = false;
  hands.tookStitch = false;
  hands.skips = NO_SKIPS;
  hands.stopsBefore = 0;
  hands.skipped = NOTHING_SKIPPED;
  hands.partSkip = null;
  hands.leave = false;
  hands.leaveSaid = null;
  hands.loop = null;
  hands.base = base;
  hands.facts = [];
  hands.readings = newReadings(choices.part, choices.row);
  hands.groups = new Map();
  hands.inGroups = 0;
  hands.boxes = 0;
  hands.filled = 0;
  hands.originOf = new Map();
  hands.kindsOf = new Map();
  hands.usedAtPass = 0;
  hands.unread = false;
  hands.loose = false;
  hands.spread = false;
  hands.border = null;
  hands.sideFill = null;
  hands.partly = false;
  hands.guessesNumber = false;
  hands.aside = null;
  hands.skippedHere = null;
  hands.lackAt = null;
  hands.settled = new Map();
  hands.rowEdge = edge;
  hands.pieces = null;
  hands.sought = false;
  hands.overlaid = false;
  hands.earlier = NONE_TAKEN;
  if (hands.earlierPlaces.size > 0) hands.earlierPlaces = new Map();
  hands.optionalLast = false;
}

/** Notes a fact, once for each place in the words: a repeat would say it in every pass. */
export function fact(hands: Hands, what: Fact): void {
  const known = hands.facts.some((f) => f.kind === what.kind && f.from === what.from);
  if (!known) hands.facts.push(what);
}

/** The absolute span of a tree node of the instruction at hand. */
export const spanAt = (hands: Hands, span: Span): Span => ({
  from: span.from + hands.base,
  to: span.to + hands.base,
});

/** The step at hand, absolute. */
export const placeOfStep = (hands: Hands): Span => ({
  from: (hands.at?.from ?? 0) + hands.atBase,
  to: (hands.at?.to ?? 0) + hands.atBase,
});

/** One number for this size; `null`: not in this size, or no number written. */
export function numberFor(
  hands: Hands,
  numbers: { readonly values: readonly (number | null)[] } | null,
): number | null {
  if (!numbers) return null;
  const { values } = numbers;
  return values.length === 1 ? (values[0] ?? null) : (values[hands.sizeIndex] ?? null);
}

export function originFor(hands: Hands, step: Step): number {
  const known = hands.originOf.get(step);
  if (known !== undefined) return known;
  const index = hands.bench.origins.push(spanAt(hands, step)) - 1;
  hands.originOf.set(step, index);
  return index;
}

/** Thrown inside this room only, caught where a piece is worked: the million is reached. */
export const TOO_MANY: unique symbol = Symbol('too many stitches');

/** Makes one node. `into` null: worked into nothing (a chain, a join). */
export function make(hands: Hands, kind: number, origin: number, into: Target | null): number {
  const { limit } = hands.bench;
  if (limit.stitches-- <= 0) throw TOO_MANY;
  const id = addNode(hands.nodes, {
    kind,
    yarn: hands.yarn,
    origin,
    flags: into?.space ? INTO_SPACE : 0,
  });
  if (into) addAnchor(hands.nodes, into.node);
  return id;
}

/** A magic ring. Made before the row's own stitches, it is none of them. */
export function makeRing(hands: Hands): number {
  const atFirst = atStart(hands);
  const origin = hands.bench.origins.push(placeOfStep(hands)) - 1;
  const node = make(hands, kindOf(hands.bench.kinds, 'ring'), origin, null);
  if (atFirst) hands.rowFrom = hands.nodes.n;
  return node;
}

/** Counted entries between `pos` and the limit: places still to be taken. */
export function remaining(hands: Hands): number {
  const { edge, limit } = hands;
  if (hands.pos === 0 && limit === edge.n) return edge.counted;
  let n = 0;
  for (let i = hands.pos; i < limit; i++) if (edge.type[i] === COUNTED) n++;
  return n;
}

/** Whether as many counted places are left; asked at every step, and so looks no farther than it must. */
export function hasLeft({ edge, limit, pos }: Hands, wanted = 1): boolean {
  let n = 0;
  for (let i = pos; i < limit && n < wanted; i++) if (edge.type[i] === COUNTED) n++;
  return n >= wanted;
}

export function remainingSpaces(hands: Hands): number {
  let n = 0;
  for (let i = hands.pos + (hands.inner > 0 ? 1 : 0); i < hands.limit; i++) {
    if (hands.edge.type[i] === SPACE) n++;
  }
  return n;
}

/** What the row makes is a guess: it is not checked, nor is what stands on it. */
export function guessNumber(hands: Hands): void {
  hands.loose = true;
  hands.guessesNumber = true;
}

/** Has the row made anything yet that is a stitch or a chain? */
export const atStart = (hands: Hands): boolean => hands.nodes.n === hands.rowFrom;

/** Counted stitches from node `from` on. */
export function countedSince(hands: Hands, from: number): number {
  let n = 0;
  for (let id = from; id < hands.nodes.n; id++) {
    if (hands.bench.kinds.kinds[hands.nodes.kind[id] ?? 0]?.counted) n++;
  }
  return n;
}

/** The yarn is on the hook from here on; `null` changes nothing. "with navy" is the yarn "Navy". */
export function takeYarnNamed(hands: Hands, name: string | null): void {
  if (name === null) return;
  const { yarns } = hands.bench;
  const lower = name.toLowerCase();
  const known = yarns.findIndex((yarn) => yarn.toLowerCase() === lower);
  hands.yarn = known >= 0 ? known : Math.min(254, yarns.push(name) - 1);
}
