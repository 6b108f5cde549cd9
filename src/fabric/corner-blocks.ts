/**
 * Rows from corner to corner: blocks of a chain and stitches beside it, each slipped to the chain of a
 * block beneath: "sl st in next ch-3 sp, ch 3, 3 dc in same sp". The chain is the block's space and
 * never a stitch; a block more begins with a chain of its own, "ch 6, dc in 4th ch from hook".
 */
import type { Place, Step } from '../notation/index.ts';
import type { Hands } from './hands.ts';
import { isSlip } from './shape.ts';

/**
 * Whether such a block stands among these steps, or in a repeat among them. One that opens a row is none:
 * so does lace whose round begins in a space, "sl st in next ch-3 sp, ch 3, 6 dc in same sp, *…".
 */
export function worksCornerBlocks(steps: readonly Step[], inRepeat = false): boolean {
  return steps.some((step, i) => {
    if (step.kind === 'repeat') return worksCornerBlocks(step.steps, true);
    if (!isSlip(step) || step.kind !== 'work') return false;
    if (!inRepeat && !steps.slice(0, i).some(isMade)) return false;
    return intoSpace(step.place) || step.alsoIn.some(intoSpace)
      ? isBlock(steps.slice(i + 1))
      : false;
  });
}

const isMade = (step: Step): boolean =>
  step.kind === 'chain' || step.kind === 'group' || (step.kind === 'work' && !isSlip(step));

const intoSpace = (place: Place | null): boolean =>
  place?.nouns[0]?.kind === 'space' && (place.nouns[0].chains?.values[0] ?? 0) > 1;

function isBlock(behind: readonly Step[]): boolean {
  const [first, second] = behind.filter(({ kind }) => kind !== 'remark');
  const [chain, work] = first?.kind === 'group' ? first.steps : [first, second];
  const placed = first?.kind === 'group' ? first.place : work?.kind === 'work' ? work.place : null;
  const many = work?.kind === 'work' && (work.n?.values[0] ?? 1) > 1;
  return (
    chain?.kind === 'chain' && (chain.n?.values[0] ?? 0) > 1 && many && placed?.pick === 'same'
  );
}

/** How many blocks the row at hand has made: a chain, or what stands for one, and stitches behind it. */
export function blocksMade({ nodes, rowFrom, bench }: Hands): number {
  let blocks = 0;
  let opened = false;
  let stitches = 0;
  for (let id = rowFrom; id < nodes.n; id++) {
    const kind = bench.kinds.kinds[nodes.kind[id] ?? 0];
    if (kind?.class === 'chain' || kind?.class === 'start') {
      opened = true;
      stitches = 0;
    } else if (kind?.counted && opened && ++stitches === 2) blocks++;
  }
  return blocks;
}
