/** Down through the fabric: which place of a row lower down lies under a stitch. */
import type { Cloth, Fabric, RowRecord } from './fabric.ts';
import { firstAnchor, NOWHERE } from './nodes.ts';

/** Rows that a way down may lead through: tall pieces have hundreds. */
const DEEPEST = 5000;

/**
 * Where in `row` the place under `node` lies, in stitches and chains from the row's start (0 is the
 * first); `null` where the way down does not meet the row. Between two rows a stitch stands on its
 * first anchor; one in a space stands on the space's first chain, which is counted from the stitch
 * that it hangs on.
 */
export function placeBelow(
  { fabric, cloth }: { fabric: Fabric; cloth: Cloth },
  node: number,
  row: RowRecord,
): number | null {
  let aside = 0;
  let id = node;
  for (let step = 0; step < DEEPEST && id >= row.nodes.from; step++) {
    if (id < row.nodes.to) return placeInRow(fabric, cloth, row, id) + aside;
    const below = firstAnchor(cloth.nodes, id);
    if (below !== NOWHERE) id = below;
    else {
      id--;
      aside++;
    }
  }
  return null;
}

const PLACES: ReadonlySet<string> = new Set(['stitch', 'start', 'unknown', 'chain', 'closer']);

/** Stitches and chains of the row before a node of it. */
function placeInRow(fabric: Fabric, { nodes }: Cloth, row: RowRecord, node: number): number {
  let n = 0;
  for (let id = row.nodes.from; id < node; id++) {
    if (PLACES.has(fabric.kinds.kinds[nodes.kind[id] ?? 0]?.class ?? '')) n++;
  }
  return n;
}
