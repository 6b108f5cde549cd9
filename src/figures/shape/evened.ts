/**
 * The graph with its flat rounds as long as lies flat exactly: what gauge and blocking hide is taken out,
 * or the springs would buckle a base over a few per cent that no maker sees. In an oval the excess lies at
 * the ends, where the increases are: its straight sides keep the length of the chain that they run along.
 */
import type { RoundGirth } from './flatness.ts';
import type { StitchGraph } from './stitch-graph.ts';

export function evened(graph: StitchGraph, girths: readonly RoundGirth[]): StitchGraph {
  const widthMm = graph.widthMm.slice();
  const isEnd = atEnds(graph);
  for (const { row, lies, flatGirthMm, girthMm, hasSpaces } of girths) {
    if (lies !== 'flat' || hasSpaces) continue;
    let endsMm = 0;
    for (let i = row.from; i < row.to; i++) if (isEnd[i]) endsMm += widthMm[i]!;
    const isOval = endsMm > 0 && endsMm < girthMm;
    const by = isOval ? 1 + (flatGirthMm - girthMm) / endsMm : flatGirthMm / girthMm;
    for (let i = row.from; i < row.to; i++) {
      if (!isOval || isEnd[i]) widthMm[i]! *= Math.min(MOST, Math.max(1 / MOST, by));
    }
  }
  return { ...graph, widthMm };
}

/** No stitch is made wider or narrower by more than this. */
const MOST = 1.6;

/** Stitches that stand on an end of the chain within an oval, however many rounds above it. */
function atEnds(graph: StitchGraph): Uint8Array {
  const isEnd = new Uint8Array(graph.n);
  const [row] = graph.rows;
  if (!row || row.record || row.isRing || graph.ring >= 0) return isEnd;
  isEnd[row.from] = 1;
  isEnd[row.to - 1] = 1;
  for (let i = row.to; i < graph.n; i++) {
    for (let k = graph.anchorFrom[i]!; k < graph.anchorFrom[i + 1]!; k++) {
      if (isEnd[graph.anchors[k]!]) isEnd[i] = 1;
    }
  }
  return isEnd;
}
