export type { Cell, Grid } from './grid.ts';
export {
  boxesOver,
  CLASSIC_MESH,
  type Closing,
  chainsForMore,
  chainsOfBar,
  chainsOfPost,
  type Foundation,
  type FoundationWay,
  foundationOf,
  type Mesh,
  pitchOf,
  startChains,
  stitchesOf,
} from './mesh.ts';
export { type RowWordsOptions, rowInWords } from './row-words.ts';
export { cellsOfRuns, type Run, runsOf, widthOfCell, widthOfRuns } from './runs.ts';
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
export { type GridLines, writeGrid } from './write-grid.ts';
