/**
 * Work from corner to corner: rows of blocks that run across, a block more each row, then a block fewer.
 * The piece is as wide as its blocks side by side, whatever the diagonal rows count.
 */
import type { Figure } from './figure.ts';
import type { SizedRow } from './phases.ts';

/** Blocks along both sides of the piece. */
export interface CornerBlocks {
  readonly wide: number;
  readonly long: number;
  /** Stitches of a block. */
  readonly stitches: number;
  /** Still growing at its last row: half of a square. */
  readonly isHalf: boolean;
}

/** `null` for rows that are no such blocks. The first row, on its own chain, is not looked at. */
export function cornerBlocks(rows: readonly SizedRow[]): CornerBlocks | null {
  const all = rows.slice(1).map(blocksIn);
  const blocks = all.flatMap((each) => each ?? []);
  const stitches = blocks[0]?.stitches;
  if (blocks.length < 2 || 4 * blocks.length < 3 * all.length || stitches === undefined)
    return null;
  if (blocks.some((each) => each.stitches !== stitches)) return null;
  const most = Math.max(...blocks.map(({ n }) => n));
  const isGrowing = blocks.at(-1)!.n === most && most === rows.length;
  // Rows of w by l blocks are w + l - 1 diagonals.
  const long = isGrowing ? most : rows.length - most + 1;
  return { wide: most, long: Math.max(most, long), stitches, isHalf: isGrowing };
}

/** As many equal chain spaces as blocks, each block tied to the one beside it by a slip stitch. */
function blocksIn({ row: { tally, ring } }: SizedRow): { n: number; stitches: number } | null {
  const [space, ...others] = tally.spaces;
  if (ring || !space || others.length > 0) return null;
  const stitches = tally.stitches / space.n;
  const isBlock = Number.isInteger(stitches) && stitches >= 2 && stitches <= 5;
  const isSpace = space.chains >= 2 && Math.abs(space.chains - stitches) <= 1;
  return isBlock && isSpace && tally.slips >= space.n - 1 ? { n: space.n, stitches } : null;
}

/** A block is narrower than its stitches side by side, for they slant: ours, by eye. */
const SLANT = 0.85;
/** How far one may be off: judgement. */
const BLOCK_SPREAD = 0.15;

/** Length of so many blocks, from the width of one stitch. */
export function blocksLength(blocks: number, stitches: number, one: Figure): Figure {
  return {
    mm: SLANT * blocks * stitches * one.mm,
    spread: Math.max(one.spread, BLOCK_SPREAD),
    how: one.how === 'assumed' ? 'assumed' : 'estimate',
    because: [
      ...one.because,
      'A block from corner to corner is taken as square and a little narrower than its stitches: measure ten of yours.',
    ],
  };
}
