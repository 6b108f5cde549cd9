export { type Fit, type FitAsked, filledMiddle, fitChart, type Position } from './fitting.ts';
export type { Cell, Grid } from './grid.ts';
export {
  boxesOver,
  CLASSIC_MESH,
  type Closing,
  chainsAfterPost,
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
  widthOfRuns,
} from './runs.ts';
export { beneathOf, extentOf, isBroken, type ShapedRow, shapedRow } from './shape.ts';
export {
  asPictured,
  PLAIN_WORKING,
  type Reads,
  readsOf,
  sideOf,
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
