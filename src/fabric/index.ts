export {
  type Account,
  accountOf,
  type ConventionAccount,
  type RowAccount,
  type TotalsAccount,
} from './account.ts';
export { type Amount, amountOf, isFixed, numberIn, passesOf, sumOf } from './amounts.ts';
export { placeBelow } from './below.ts';
export { type Beside, type ChartUse, firstUseOf, usesOf } from './chart-uses.ts';
export type { Cloth, Convention, Fabric, RowRecord, Tally, Verdict } from './fabric.ts';
export { type Fact, type FactKind, MISFITS, type OpenLength, type ToLength } from './facts.ts';
export type { Kind, KindTable } from './kinds.ts';
export { type MeshRow, type MeshRows, meshRow, meshRows } from './mesh-rows.ts';
export { firstAnchor, INTO_SPACE, NO_YARN, NOWHERE, type Nodes } from './nodes.ts';
export { MOST_STITCHES, work } from './work.ts';
