/** A shape as JSON, version 1: docs/shape-json.md tells the form. */
import { rounded, type Shape, type ShapedPiece } from '../src/index.ts';
import { measuresOf } from './shape-measures.ts';

export interface ShapeNames {
  readonly file: string;
  readonly title: string | null;
  readonly size: string;
}

export function shapeJson(shape: Shape, { file, title, size }: ShapeNames): string {
  const { how, spread, because } = shape.sizes;
  const value = {
    version: 1,
    file,
    title,
    size,
    hand: shape.hand,
    sizes: { how, spread: tidy(spread), because },
    pieces: shape.pieces.map((piece) => pieceJson(piece, shape)),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

const tidy = (n: number, digits = 3): number => Number(n.toFixed(digits));

function pieceJson(piece: ShapedPiece, shape: Shape): object {
  const { name, copies, graph, dimensions, relaxed, strain, lean } = piece;
  return {
    name,
    copies,
    parts: graph.parts,
    places: graph.n,
    pose: dimensions.pose,
    measures: Object.fromEntries(
      measuresOf(piece, shape).map(({ name: what, figure }) => [
        what,
        { cm: rounded(figure, 'cm'), in: rounded(figure, 'in'), spread: tidy(figure.spread) },
      ]),
    ),
    hasHandles: piece.hasHandles,
    isFilled: piece.isFilled,
    rounds: piece.girths.map(({ row, lies, girthMm, flatGirthMm }) => ({
      id: row.record?.id ?? null,
      label: row.record?.label ?? '',
      lies,
      girthMm: tidy(girthMm, 1),
      flatGirthMm: tidy(flatGirthMm, 1),
    })),
    rest: { settled: relaxed.settled, steps: relaxed.steps, pullMm: tidy(relaxed.unsettledMm, 4) },
    strain: {
      meanMm: tidy(strain.meanMm),
      meanShare: tidy(strain.meanShare, 4),
      most: strain.most && { row: strain.most.row, share: tidy(strain.most.share, 4) },
    },
    lean: lean && {
      stitches: { from: tidy(lean.stitches.from), to: tidy(lean.stitches.to) },
      knownRounds: lean.knownRounds,
      unknownRounds: lean.unknownRounds,
      because: lean.because,
    },
    foldedShare: tidy(piece.foldedShare),
    leftOut: graph.leftOut,
  };
}
