/** Which mesh a row of boxes is: its post and its gap. */
import { CLASSIC_MESH, chainsOfBar, type Mesh } from '../../filet/index.ts';
import type { Chart } from '../../manuscript/index.ts';
import { type StemId, type Step, stemOf } from '../../notation/index.ts';
import { chartNamed } from '../charts.ts';
import type { RowContext } from '../context.ts';
import { COUNTED, SPACE } from '../edge.ts';
import { type Hands, numberFor } from '../hands.ts';
import { isLacetSpace, stemAt } from './box-places.ts';

/** Gaps wider than this are lace and no mesh (filet rules, mesh kinds). */
const WIDEST_GAP = 3;

/**
 * The mesh of the chart at hand, of the chart that the row works, of the boxes beneath, of any
 * chart, or of the stitches that the manuscript defines; the classic one where all are silent.
 */
export function meshFor(hands: Hands, row: RowContext, chart: Chart | null): Mesh {
  const named = chart?.mesh ?? chartOfRow(row)?.mesh ?? null;
  const stem = named ? stemOf(named.post, hands.bench.terms) : null;
  if (named && stem) return { post: stem, gap: named.gap };
  const other = row.charts.find((one) => one.mesh)?.mesh ?? null;
  const otherPost = other ? stemOf(other.post, hands.bench.terms) : null;
  return {
    post: otherPost ?? definedPost(hands) ?? postBeneath(hands) ?? CLASSIC_MESH.post,
    gap: gapFor(gapBeneath(hands), other?.gap ?? definedGap(hands)),
  };
}

/** What lies beneath goes before what is defined, unless it is the bar of a mesh so defined. */
function gapFor(beneath: number | null, said: number | null): number {
  const bar = said !== null && beneath === chainsOfBar(said);
  return (bar ? said : (beneath ?? said)) ?? CLASSIC_MESH.gap;
}

function chartOfRow(row: RowContext): Chart | null {
  const step = row.shape.steps.find((one) => one.kind === 'chart');
  return step?.kind === 'chart' ? chartNamed(row.charts, step.name) : null;
}

/** The smallest space: bars are wider, the halves of lacets are none. */
function gapBeneath(hands: Hands): number | null {
  let gap: number | null = null;
  for (let i = 0; i < hands.edge.n; i++) {
    const run = hands.edge.run[i] ?? 0;
    if (hands.edge.type[i] !== SPACE || run > WIDEST_GAP || isLacetSpace(hands, i)) continue;
    gap = Math.min(gap ?? run, run);
  }
  return gap;
}

/** Posts are tall; a row of single crochet (US terms) is a ground to begin on. */
function postBeneath(hands: Hands): StemId | null {
  if (hands.edge.spaces === 0) return null;
  for (let i = 0; i < hands.edge.n; i++) {
    const stem = stemAt(hands, i);
    if (hands.edge.type[i] === COUNTED && stem && stem !== 'w0') return stem;
  }
  return null;
}

function definedSteps(hands: Hands, box: RegExp): readonly Step[] {
  for (const [key, special] of hands.bench.specials) if (box.test(key)) return special.steps;
  return [];
}

const OPEN = /open box|open mesh/;
const FILLED = /(?:filled|solid|closed) (?:box|mesh)/;

/** Chains of the open box; else the stitches of the filled one but for the post that closes it. */
function definedGap(hands: Hands): number | null {
  const chain = definedSteps(hands, OPEN).find((step) => step.kind === 'chain');
  if (chain?.kind === 'chain') return numberFor(hands, chain.n);
  const works = definedSteps(hands, FILLED).filter((step) => step.kind === 'work');
  if (works.length === 0) return null;
  return works.reduce((sum, { place, n }) => sum + (numberFor(hands, place?.n ?? n) ?? 1), 0) - 1;
}

function definedPost(hands: Hands): StemId | null {
  const steps = [...definedSteps(hands, OPEN), ...definedSteps(hands, FILLED)];
  const work = steps.find((step) => step.kind === 'work');
  const word = work?.kind === 'work' ? work.stitch.stem : null;
  return word ? stemOf(word, hands.bench.terms) : null;
}
