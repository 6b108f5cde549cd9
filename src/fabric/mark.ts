/** Taking a trial back: what the hands hold is noted before it, and put back after it. */
import type { Fact } from './facts.ts';
import type { Hands } from './hands.ts';
import { truncate } from './nodes.ts';

/**
 * All that a trial may change, by name: copying the whole state costs as much as the stitches
 * between two marks. Facts only grow, so their number is enough.
 */
export interface Mark
  extends Pick<
    Hands,
    | 'edge'
    | 'pos'
    | 'inner'
    | 'limit'
    | 'first'
    | 'last'
    | 'into'
    | 'rowFrom'
    | 'used'
    | 'missing'
    | 'standing'
    | 'passed'
    | 'cameHome'
    | 'tookSpace'
    | 'tookStitch'
    | 'leave'
    | 'leaveSaid'
    | 'yarn'
    | 'stem'
    | 'loop'
    | 'base'
    | 'boxes'
    | 'filled'
    | 'inGroups'
    | 'foundation'
    | 'pending'
    | 'pendingBase'
    | 'moves'
    | 'movesBase'
    | 'depth'
    | 'repeats'
    | 'unread'
    | 'loose'
    | 'spread'
    | 'border'
    | 'partly'
    | 'guessesNumber'
    | 'fastened'
    | 'aside'
    | 'lackAt'
    | 'pieces'
    | 'optionalLast'
    | 'overlaid'
    | 'sought'
    | 'earlier'
    | 'skipped'
    | 'partSkip'
  > {
  readonly nodeCount: number;
  readonly left: number;
  readonly factCount: number;
  readonly facts: Fact[];
  readonly groups: ReadonlyMap<string, number>;
}

const NO_GROUPS: ReadonlyMap<string, number> = new Map();

export const mark = (hands: Hands): Mark => ({
  edge: hands.edge,
  pos: hands.pos,
  inner: hands.inner,
  limit: hands.limit,
  first: hands.first,
  last: hands.last,
  into: hands.into,
  rowFrom: hands.rowFrom,
  used: hands.used,
  missing: hands.missing,
  standing: hands.standing,
  passed: hands.passed,
  cameHome: hands.cameHome,
  tookSpace: hands.tookSpace,
  tookStitch: hands.tookStitch,
  leave: hands.leave,
  leaveSaid: hands.leaveSaid,
  yarn: hands.yarn,
  stem: hands.stem,
  loop: hands.loop,
  base: hands.base,
  boxes: hands.boxes,
  filled: hands.filled,
  inGroups: hands.inGroups,
  foundation: hands.foundation,
  pending: hands.pending,
  pendingBase: hands.pendingBase,
  moves: hands.moves,
  movesBase: hands.movesBase,
  depth: hands.depth,
  repeats: hands.repeats,
  unread: hands.unread,
  loose: hands.loose,
  spread: hands.spread,
  border: hands.border,
  partly: hands.partly,
  guessesNumber: hands.guessesNumber,
  fastened: hands.fastened,
  aside: hands.aside,
  lackAt: hands.lackAt,
  pieces: hands.pieces,
  optionalLast: hands.optionalLast,
  overlaid: hands.overlaid,
  sought: hands.sought,
  earlier: hands.earlier,
  skipped: hands.skipped,
  partSkip: hands.partSkip,
  nodeCount: hands.nodes.n,
  left: hands.bench.limit.stitches,
  facts: hands.facts,
  factCount: hands.facts.length,
  groups: hands.groups.size > 0 ? new Map(hands.groups) : NO_GROUPS,
});

/** Back to the mark: what was made since is unmade. */
export function restore(hands: Hands, to: Mark): void {
  hands.edge = to.edge;
  hands.pos = to.pos;
  hands.inner = to.inner;
  hands.limit = to.limit;
  hands.first = to.first;
  hands.last = to.last;
  hands.into = to.into;
  hands.rowFrom = to.rowFrom;
  hands.used = to.used;
  hands.missing = to.missing;
  hands.standing = to.standing;
  hands.passed = to.passed;
  hands.cameHome = to.cameHome;
  hands.tookSpace = to.tookSpace;
  hands.tookStitch = to.tookStitch;
  hands.leave = to.leave;
  hands.leaveSaid = to.leaveSaid;
  hands.yarn = to.yarn;
  hands.stem = to.stem;
  hands.loop = to.loop;
  hands.base = to.base;
  hands.boxes = to.boxes;
  hands.filled = to.filled;
  hands.inGroups = to.inGroups;
  hands.foundation = to.foundation;
  hands.pending = to.pending;
  hands.pendingBase = to.pendingBase;
  hands.moves = to.moves;
  hands.movesBase = to.movesBase;
  hands.depth = to.depth;
  hands.repeats = to.repeats;
  hands.unread = to.unread;
  hands.loose = to.loose;
  hands.spread = to.spread;
  hands.border = to.border;
  hands.partly = to.partly;
  hands.guessesNumber = to.guessesNumber;
  hands.fastened = to.fastened;
  hands.aside = to.aside;
  hands.lackAt = to.lackAt;
  hands.pieces = to.pieces;
  hands.optionalLast = to.optionalLast;
  hands.overlaid = to.overlaid;
  hands.sought = to.sought;
  hands.earlier = to.earlier;
  hands.skipped = to.skipped;
  hands.partSkip = to.partSkip;
  hands.facts = to.facts;
  hands.facts.length = to.factCount;
  hands.groups = new Map(to.groups);
  hands.bench.limit.stitches = to.left;
  truncate(hands.nodes, to.nodeCount);
}
