export type {
  Box,
  Circle,
  Drawing,
  Group,
  Identity,
  Ink,
  Line,
  Look,
  Mark,
  Path,
  PathStep,
  Point,
  Rect,
  Stroke,
  Text,
} from './drawing.ts';
export {
  type DrawChartsOptions,
  type DrawnChart,
  drawCharts,
} from './filet/draw-charts.ts';
export { faintDesigns } from './filet/legible.ts';
export type { Paper } from './filet/paper.ts';
export { type GltfOptions, toGlb } from './gltf.ts';
export { drawPieces, type PieceDrawingOptions } from './piece.ts';
export { drawSchematic, type SchematicOptions } from './schematic/schematic.ts';
export { toSvg } from './svg.ts';
export { type Measure, measureText, SMALLEST_TYPE_MM, wrapText } from './text.ts';
