/**
 * The chains skipped at a part's start and the start chains of its rows are counted alike, and so in
 * all sizes. Where a stated count needs the one to count and the rows, or another size, have the other,
 * a number has slipped, or the maker should be told.
 */
import type { Convention, RowRecord } from '../../fabric/index.ts';
import { type Finding, readingDiffers } from '../../finding/index.ts';
import { doubtWords } from '../doubts.ts';
import { foundationLabels, listed, rowName } from '../names.ts';
import { holds, type Scene } from '../scene.ts';

export const skippedChainsDiffer = (scene: Scene): Finding[] =>
  scene.fabric.conventions.flatMap((skipped) => {
    if (skipped.otherwise.length > 0) return sizesDiffer(scene, skipped);
    if (!skipped.doubt.startsWith('skipped chains') || skipped.because !== 'count') return [];
    const starts = startChains(scene, skipped);
    const [first] = starts;
    if (skipped.alternatives.includes('a loop')) return [];
    // A first mesh in the chains skipped says nothing of start chains that are only loops beside it.
    if (skipped.reading === 'count, with a space') return [];
    const counts = skipped.reading !== 'do not count';
    const isAlike = starts.some(({ reading }) => (reading === 'counts') === counts);
    const row = rowAt(scene, skipped);
    // A row that does not come out all the same is told by that; without a count nothing says that it slipped.
    if (!first || isAlike || !row || row.verdict === 'mismatch' || row.stated.length === 0)
      return [];
    const words = {
      row: rowName(scene, row),
      reading: doubtWords(skipped.doubt, counts ? 'count' : 'do not count'),
      usual: doubtWords(first.doubt, first.reading),
    };
    const labels = [
      ...foundationLabels(scene, row),
      { from: first.from, to: first.to, text: 'read otherwise' },
    ];
    const sum = sumOf(row, counts ? -1 : 1);
    const at = { from: skipped.from, to: skipped.to };
    return [readingDiffers(at, words, { sum, labels, rows: [row.id] })];
  });

/** What the row makes in the reading of the others. */
function sumOf({ tally, stated }: RowRecord, more: 1 | -1): string {
  const said = stated[0];
  if (!said) return '';
  return `Read like the others, it makes ${tally.stitches + more}; the pattern says ${said.n}.`;
}

const sizesSaid = (names: readonly string[]): string =>
  `${/^size/i.test(names[0] ?? '') ? '' : names.length > 1 ? 'sizes ' : 'size '}${listed(names)}`;

/** One size comes out only in a reading that the other sizes do not have. */
function sizesDiffer(scene: Scene, chain: Convention): Finding[] {
  const { doubt, reading, alternatives, otherwise, from, to } = chain;
  if (!doubt.startsWith('skipped chains')) return [];
  const others = new Set(otherwise.map(({ sizeIndex }) => sizeIndex));
  const { cloths } = scene.fabric;
  const like = cloths.filter(({ sizeIndex }) => !others.has(sizeIndex));
  const isOdd = like.length <= others.size;
  const odd = cloths.filter(({ sizeIndex }) => others.has(sizeIndex) !== isOdd);
  const [here, usual] = isOdd
    ? [reading, otherwise[0]?.reading ?? '']
    : [otherwise[0]?.reading ?? '', reading];
  const rows = odd.flatMap((cloth) => cloth.rows.find((row) => holds(row, { from, to })) ?? []);
  const [row] = rows;
  if (!row || alternatives.length === 0) return [];
  const names = odd.map(
    ({ sizeIndex }) => scene.manuscript.head.sizes[sizeIndex] ?? `${sizeIndex + 1}`,
  );
  const words = {
    row: `${rowName(scene, row)} of ${sizesSaid(names)}`,
    reading: doubtWords(doubt, here),
    usual: doubtWords(doubt, usual).replace(' at its start', ''),
  };
  return [
    readingDiffers({ from, to }, words, {
      sum: sumOf(row, /not/.test(here) ? 1 : -1),
      labels: foundationLabels(scene, row),
      rows: rows.map(({ id }) => id),
      sizes: names,
    }),
  ];
}

/** How the part's rows have their start chains. */
const startChains = ({ fabric }: Scene, { partIndex }: Convention): readonly Convention[] =>
  fabric.conventions.filter(
    (other) => other.partIndex === partIndex && other.doubt.startsWith('start-chain'),
  );

const rowAt = ({ fabric }: Scene, { partIndex, from }: Convention) =>
  fabric.cloths[0]?.rows.find(
    (row) => row.partIndex === partIndex && row.from <= from && from < row.to,
  );
