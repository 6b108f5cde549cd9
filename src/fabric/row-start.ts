/** Rows that work nothing: a foundation chain, a ring, yarn joined, fastening off. */
import type { Hands } from './hands.ts';
import type { RowResult } from './row-setting.ts';
import type { RowShape } from './shape.ts';

/** Did the row leave the hands where they were, so that the next row begins there? */
export const isMoveless = (hands: Hands, shape: RowShape, result: RowResult): boolean =>
  joinsWithStitch(hands, shape) ||
  ((shape.idle || (shape.onlySlips && hands.pieces !== null)) &&
    hands.nodes.n === result.from &&
    result.tally.stitches === 0);

/** "Join B with sc in any corner sp.", by itself: the first stitch of the next round. */
const joinsWithStitch = ({ nodes, rowFrom, edge }: Hands, { steps }: RowShape): boolean =>
  edge.ring &&
  edge.kind === 'row' &&
  nodes.n === rowFrom + 1 &&
  steps.some(({ kind }) => kind === 'join') &&
  steps.every((step) =>
    step.kind === 'join'
      ? step.with !== null &&
        step.place !== null &&
        (step.yarn !== null || step.place.pick === 'any')
      : step.kind === 'remark' || step.kind === 'yarn' || step.kind === 'mark',
  );
