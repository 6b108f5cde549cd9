/** The sizes of a shaped piece by name, for words and for JSON. */
import type { Figure, Shape, ShapedPiece } from '../src/index.ts';

export interface NamedMeasure {
  readonly name: string;
  readonly figure: Figure;
}

/** Crochet gives, and a model of springs is a model: added to the spread of the gauge (judgement). */
const MODEL_SPREAD = 0.05;

/** How tall a stuffed piece is lies with its maker, as on the sheet (judgement). */
const FILLED_SPREAD = 0.1;

export function measuresOf(piece: ShapedPiece, shape: Shape): readonly NamedMeasure[] {
  const { how, because } = shape.sizes;
  return lengthsOf(piece).map(([name, mm]) => {
    // A hat is filled too, by a head, but does not close.
    const isStuffed = piece.isFilled && piece.girths.some(({ lies }) => lies === 'closes');
    const filled = isStuffed && name === 'high' ? FILLED_SPREAD : 0;
    const spread = Math.sqrt(shape.sizes.spread ** 2 + MODEL_SPREAD ** 2 + filled ** 2);
    return { name, figure: { mm, spread, how, because } };
  });
}

function lengthsOf(piece: ShapedPiece): readonly (readonly [string, number])[] {
  const { widthMm, depthMm, heightMm, toRimMm, girthMm } = piece.dimensions;
  const mean = (widthMm + depthMm) / 2;
  const isEven = Math.abs(widthMm - depthMm) < 0.06 * widthMm;
  if (heightMm === null) {
    if (isCircle(piece)) return [['across', mean]];
    if (isEven && piece.girths.length > 0) return [[isSquare(piece) ? 'square' : 'across', mean]];
    return [
      ['wide', widthMm],
      ['long', depthMm],
    ];
  }
  return [
    ...(isEven
      ? [['across', mean] as const]
      : [['wide', widthMm] as const, ['deep', depthMm] as const]),
    ...(toRimMm === null ? [] : [['high to the rim', toRimMm] as const]),
    [toRimMm === null ? 'high' : 'high with handles', heightMm],
    ...(girthMm === null ? [] : [['round', bodyGirth(piece) ?? girthMm] as const]),
  ];
}

/** Rounds about a point, without corners: increases in one line make it a hexagon, and it is told as a circle. */
const isCircle = ({ girths, straightMm }: ShapedPiece): boolean =>
  girths.length > 0 && straightMm === 0 && girths.every(({ corners }) => corners === 0);

/** A flat figure with four corners is measured along its side. */
const isSquare = (piece: ShapedPiece): boolean => piece.girths.some(({ corners }) => corners === 4);

/** Round the widest round below the handles. */
function bodyGirth({ girths }: ShapedPiece): number | null {
  return girths.length === 0 ? null : Math.max(...girths.map(({ girthMm }) => girthMm));
}
