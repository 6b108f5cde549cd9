/**
 * The start of round as a line up a piece, leaning as the fabric does. Drawn through where the lean is
 * known, broken where it is not. Pieces whose start hardly wanders, and lace, have none.
 */
import { isLeanFelt, type Shape, type ShapedPiece } from '../figures/index.ts';

export interface StartEdge {
  /** First or second side of the stitch's patch, as `Patches` has its corners. */
  readonly side: 'first' | 'second';
  readonly isKnown: boolean;
}

/** By node: on the first stitch of each round, and on the last, which has the same line at its other side. */
export function startEdges({ graph, lean }: ShapedPiece): ReadonlyMap<number, StartEdge> {
  const edges = new Map<number, StartEdge>();
  if (!lean || !isLeanFelt(lean)) return edges;
  for (const { record, isRing, isTurned, from, to, knowsLean } of graph.rows) {
    if (!record || !isRing || graph.anchorFrom[from] === graph.anchorFrom[from + 1]) continue;
    edges.set(from, { side: isTurned ? 'second' : 'first', isKnown: knowsLean });
    edges.set(to - 1, { side: isTurned ? 'first' : 'second', isKnown: knowsLean });
  }
  return edges;
}

/** What the line is, as sentences for beneath a picture; none where no piece has one. */
export function startLineNotes(shape: Shape): readonly string[] {
  const found = shape.pieces.flatMap(({ lean }) => (lean && isLeanFelt(lean) ? [lean] : []));
  const [first] = found;
  if (!first) return [];
  const isRight = first.stitches.to > 0;
  const notes = [
    `Heavy line: the start of round, which wanders to the ${isRight ? 'right' : 'left'} as you work. ${first.because}`,
  ];
  if (first.perRound.from !== first.perRound.to) notes.push('Drawn at the middle of that.');
  if (found.some(({ unknownRounds }) => unknownRounds > 0)) {
    notes.push('Broken where no lean is known: drawn straight there, only your own swatch tells.');
  }
  return notes;
}
