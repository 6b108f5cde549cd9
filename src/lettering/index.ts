export { type BoxMeasure, boxFromGauge } from './box-size.ts';
export { type Boxes, boxesOf, isFilled, openBoxes, rowsOf } from './boxes.ts';
export { coverageOf } from './coverage.ts';
export { type OutlineFont, openFont } from './font.ts';
export { BORDERS, type Border, type Frame, framed, frameWidth } from './frame.ts';
export {
  boxesOfGrid,
  type ChartText,
  cornerFindings,
  DOUBT,
  isInDoubt,
  legibility,
} from './legible.ts';
export { gridOf, type LetteringOptions, letterWords } from './letter-words.ts';
export type { Coverage, Lettering, PlacedLetter } from './lettering.ts';
export type { Align } from './line.ts';
export { type PrintedChart, printedChart } from './printed.ts';
export { regionsOf } from './shape.ts';
