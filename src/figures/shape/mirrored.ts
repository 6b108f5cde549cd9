/** A piece as a left-handed maker works it: the mirror image, its right side still out. */
import type { Lean, LeanRange } from '../lean.ts';
import type { ShapedPiece } from './shape.ts';

export function mirrored(piece: ShapedPiece): ShapedPiece {
  const { graph, lean, dimensions } = piece;
  const at = piece.at.map((v, k) => (k % 3 === 0 ? -v : v));
  // In a mirror every row runs the other way about its right side.
  const rows = graph.rows.map((row) => ({ ...row, isTurned: !row.isTurned }));
  return {
    ...piece,
    at,
    graph: { ...graph, rows },
    lean: lean && leftOf(lean),
    dimensions: { ...dimensions, turn: -dimensions.turn },
  };
}

/** What wandered to the right wanders to the left. */
const leftOf = (lean: Lean): Lean => ({
  ...lean,
  stitches: negative(lean.stitches),
  mm: negative(lean.mm),
  perRound: negative(lean.perRound),
});

const negative = ({ from, to }: LeanRange): LeanRange => ({ from: -from, to: -to });
