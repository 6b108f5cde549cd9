/** Rules on the manuscript and its trees; none needs the fabric for more than a look. */
import type { Finding } from '../../finding/index.ts';
import type { Scene } from '../scene.ts';
import { brackets } from './brackets.ts';
import { cautions } from './caution.ts';
import { chainsContradict } from './chain-contradicts.ts';
import { brokenCharts } from './chart-broken.ts';
import { chartsAgainstRows } from './chart-differs.ts';
import { chartRows } from './chart-rows-left.ts';
import { notJoined } from './colour-not-joined.ts';
import { colours } from './colours.ts';
import { corners } from './corners.ts';
import { unexplained } from './groups.ts';
import { handles } from './handles.ts';
import { incomplete } from './incomplete.ts';
import { motifs } from './motif.ts';
import { numbering } from './numbering.ts';
import { openDoubts } from './open-doubts.ts';
import { emptyRows } from './row-empty.ts';
import { sizeNames } from './size-names.ts';
import { sizeLists } from './sizes-lengths.ts';
import { skippedChainsDiffer } from './skipped-chains.ts';
import { slips } from './slips.ts';
import { spacesCountedOtherwise } from './spaces-in-counts.ts';
import { specialStitches } from './specials.ts';
import { stars } from './stars.ts';
import { foreignTerms } from './terms.ts';

const rules: readonly ((scene: Scene) => Finding[])[] = [
  slips,
  numbering,
  emptyRows,
  sizeLists,
  sizeNames,
  foreignTerms,
  openDoubts,
  chainsContradict,
  skippedChainsDiffer,
  spacesCountedOtherwise,
  stars,
  brackets,
  colours,
  notJoined,
  specialStitches,
  unexplained,
  brokenCharts,
  chartRows,
  chartsAgainstRows,
  corners,
  motifs,
  handles,
  cautions,
  incomplete,
];

export const textFindings = (scene: Scene): Finding[] => rules.flatMap((rule) => rule(scene));
