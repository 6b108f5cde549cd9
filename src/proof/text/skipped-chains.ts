/**
 * The chains skipped at a part's start and the start chains of its rows are counted alike. Where a
 * stated count needs the one to count and the rows have the other, a number has slipped, or the
 * maker should be told.
 */
import type { Convention } from '../../fabric/index.ts';
import { type Finding, readingDiffers } from '../../finding/index.ts';
import { doubtWords } from '../doubts.ts';
import { rowName } from '../names.ts';
import type { Scene } from '../scene.ts';

export const skippedChainsDiffer = (scene: Scene): Finding[] =>
  scene.fabric.conventions.flatMap((skipped) => {
    if (!skipped.doubt.startsWith('skipped chains') || skipped.because !== 'count') return [];
    const starts = startChains(scene, skipped);
    const [first] = starts;
    if (skipped.alternatives.includes('a loop')) return [];
    const counts = skipped.reading !== 'do not count';
    const isAlike = starts.some(({ reading }) => (reading === 'counts') === counts);
    const row = rowAt(scene, skipped);
    if (!first || isAlike || !row) return [];
    const words = {
      row: rowName(scene, row),
      reading: doubtWords(skipped.doubt, counts ? 'count' : 'do not count'),
      usual: doubtWords(first.doubt, first.reading),
    };
    const labels = [{ from: first.from, to: first.to, text: 'read otherwise' }];
    return [
      readingDiffers({ from: skipped.from, to: skipped.to }, words, { labels, rows: [row.id] }),
    ];
  });

/** How the part's rows have their start chains. */
const startChains = ({ fabric }: Scene, { partIndex }: Convention): readonly Convention[] =>
  fabric.conventions.filter(
    (other) => other.partIndex === partIndex && other.doubt.startsWith('start-chain'),
  );

const rowAt = ({ fabric }: Scene, { partIndex, from }: Convention) =>
  fabric.cloths[0]?.rows.find(
    (row) => row.partIndex === partIndex && row.from <= from && from < row.to,
  );
