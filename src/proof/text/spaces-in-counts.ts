/**
 * Whether the chains of a row's spaces are among its stitches is told by its count alone, and either is
 * custom. Rows of one part with the very same spaces are counted alike: where a count is met only in the
 * other way, its number has slipped.
 */
import type { RowRecord } from '../../fabric/index.ts';
import { type Finding, readingDiffers } from '../../finding/index.ts';
import { doubtWords } from '../doubts.ts';
import { rowName } from '../names.ts';
import type { Scene } from '../scene.ts';

type Way = 'each chain counts' | 'no chain counts';

export function spacesCountedOtherwise(scene: Scene): Finding[] {
  const found = new Map<number, Finding>();
  for (const { rows } of scene.fabric.cloths) {
    const usual = new Map<string, { way: Way; row: RowRecord }>();
    for (const row of rows) {
      const way = wayOf(row);
      if (way === null) continue;
      const key = `${row.partIndex} ${row.tally.spaces.map(({ chains, n }) => `${n}x${chains}`)}`;
      const former = usual.get(key);
      if (!former) usual.set(key, { way, row });
      else if (former.way !== way && !found.has(row.from))
        found.set(row.from, told(scene, row, former, way));
    }
  }
  return [...found.values()];
}

/** How the row's only count of stitches is met; `null`: its spaces make no difference to it. */
function wayOf({ verdict, stated, tally }: RowRecord): Way | null {
  const [count] = stated;
  if (verdict !== 'proven' || stated.length !== 1 || tally.spaces.length === 0) return null;
  if (count?.unit !== null && count?.unit !== 'stitch') return null;
  if (count.n === tally.stitches) return 'no chain counts';
  return count.n === tally.stitches + tally.chains ? 'each chain counts' : null;
}

function told(
  scene: Scene,
  row: RowRecord,
  former: { way: Way; row: RowRecord },
  way: Way,
): Finding {
  const words = {
    row: rowName(scene, row),
    reading: doubtWords('chains in counts', way),
    usual: doubtWords('chains in counts', former.way),
  };
  const span = row.stated[0]?.span ?? row;
  const before = former.row.stated[0]?.span;
  const labels = before ? [{ from: before.from, to: before.to, text: 'counted otherwise' }] : [];
  return readingDiffers({ from: span.from, to: span.to }, words, { labels, rows: [row.id] });
}
