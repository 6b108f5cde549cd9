/** Lengths and numbers that are left to the maker. */
import { type Finding, openCount, openLength } from '../../finding/index.ts';
import { rowName } from '../names.ts';
import { orderAt } from '../order.ts';
import type { Scene, Sightings } from '../scene.ts';

export function lengthLeftOpen(scene: Scene, found: Sightings<'open-length'>): Finding {
  const { first, rows, sizes } = found;
  const at = orderAt(scene, first, 'rows-again', 'even');
  return openLength(at, { row: rowName(scene, first.row) }, { rows, sizes });
}

/** Told once, at the chain: the first row worked into it is the one that is meant. */
export function numberLeftOpen(scene: Scene, found: Sightings<'open-count'>): Finding {
  const { first, at, rows, sizes } = found;
  const next = first.cloth.rows.find(
    (row) => row.partIndex === first.row.partIndex && row.from > at.from && row.number !== null,
  );
  const row = first.row.number === null && next ? next : first.row;
  return openCount(at, { row: rowName(scene, row) }, { rows, sizes });
}
