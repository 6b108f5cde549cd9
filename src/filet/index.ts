export { type Fit, type FitAsked, filledMiddle, fitChart, type Position } from './fitting.ts';
export type { Cell, Grid } from './grid.ts';
export {
  boxesOver,
  CLASSIC_MESH,
  type Closing,
  chainsForMore,
  chainsOfBar,
  chainsOfPost,
  type Filling,
  type Foundation,
  type FoundationWay,
  foundationOf,
  LACET_CHAINS,
  longStitch,
  type Mesh,
  pitchOf,
  startChains,
  stitchesOf,
} from './mesh.ts';
export { type RowWordsOptions, rowInWords } from './row-words.ts';
export {
  cellsOfRuns,
  type Run,
  runsOf,
  type Unit,
  unitsOf,
  widthOfCell,
} from './runs.ts';
export { extentOf, isBroken, type ShapedRow } from './shape.ts';
export {
  asPictured,
  PLAIN_WORKING,
  type Reads,
  readsOf,
  startsAt,
  type WorkedRow,
  type Working,
  workedRows,
} from './working.ts';
export { writeGrid } from './write-grid.ts';
export {
  meshOfGrid,
  type WriteRowsOptions,
  type WrittenRow,
  type WrittenRows,
  writeRows,
} from './write-rows.ts';
