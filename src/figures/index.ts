export type { Figure } from './figure.ts';
export { figureFindings } from './findings.ts';
export type { Hours } from './hours.ts';
export type { Remedy } from './lean-remedies.ts';
export { isLeanFelt, leanBefore, leanFigures, type PieceLean } from './leans.ts';
export { type MeasureOptions, measure, type Sheet, type SizeSheet } from './measure.ts';
export { CORNERS, type MotifForm } from './motif.ts';
export type {
  Form,
  MeasureName,
  Measures,
  PartSize,
  PieceSize,
} from './part-size.ts';
export { printFigure, type Rounded, rounded, shortFigure, type Units } from './print.ts';
export type { RowSpan } from './row-outline.ts';
export type { Dimensions, Pose } from './shape/dimensions.ts';
export type { Lies, RoundGirth } from './shape/flatness.ts';
export { lieFlatFindings } from './shape/lie-flat.ts';
export { type Patches, patchesOf } from './shape/patches.ts';
export type { RelaxLimits } from './shape/relax.ts';
export {
  type Shape,
  type ShapedPiece,
  type ShapeOptions,
  type ShapeProgress,
  shapeOf,
} from './shape/shape.ts';
export { type SpacedRow, type Spacing, type SpacingAsked, spaceEvenly } from './spacing.ts';
export type { Amount, YarnNeed } from './yarn-need.ts';
