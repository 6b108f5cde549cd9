export { type Compiled, type CompileOptions, compile } from './compile.ts';
export type {
  Account,
  ConventionAccount,
  Fabric,
  RowAccount,
  TotalsAccount,
  Verdict,
} from './fabric/index.ts';
export {
  type Amount,
  type Figure,
  type Form,
  type MeasureName,
  type MeasureOptions,
  measure,
  type PartSize,
  printFigure,
  rounded,
  type Sheet,
  type SizeSheet,
  type Units,
  type YarnNeed,
} from './figures/index.ts';
export {
  coloured,
  entries as catalogue,
  type Finding,
  type FindingSource,
  type Fix,
  formatFinding,
  type Label,
  type Paint,
  plain,
  printableText,
  type Severity,
  widthOf,
  wrap,
} from './finding/index.ts';
export { gaugeFromWords, putUpFromWords, usHookLabel } from './gauge/index.ts';
export {
  type Align,
  BORDERS,
  type Border,
  type BoxMeasure,
  boxFromGauge,
  type Coverage,
  isInDoubt,
  type Lettering,
  type LetteringOptions,
  legibility,
  letterWords,
  type OutlineFont,
  openFont,
  type PlacedLetter,
  type PrintedChart,
  printedChart,
} from './lettering/index.ts';
export {
  type Manuscript,
  readManuscript,
  type WritePatternOptions,
  writePattern,
} from './manuscript/index.ts';
export {
  applyEdits,
  type Edit,
  type LineStarts,
  lineStarts,
  placeAt,
  type Span,
} from './source/index.ts';
export {
  type Ground,
  MOST_PIXELS,
  type Picture,
  type TraceOptions,
  type Tracing,
  trace,
} from './tracing/index.ts';
