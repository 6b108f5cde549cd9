export {
  type Cloth,
  type Convention,
  type Fabric,
  type RowRecord,
  type Tally,
  type Verdict,
} from './fabric.ts';
export { type Fact, type FactKind, MISFITS } from './facts.ts';
export { type Kind, type KindTable } from './kinds.ts';
export { firstAnchor, INTO_SPACE, type Nodes, NOWHERE } from './nodes.ts';
export { MOST_STITCHES, work } from './work.ts';
