/** Lengths and numbers that are left to the maker. */
import type { OpenLength } from '../../fabric/index.ts';
import { chosenCount, type Finding, openCount, openLength } from '../../finding/index.ts';
import { rowName } from '../names.ts';
import { orderAt } from '../order.ts';
import type { Scene, Sightings } from '../scene.ts';

const WHY: Readonly<Record<OpenLength, string>> = {
  gauge: 'without a gauge nothing says how many rows that is',
  words: 'the words do not tell one length and where it is measured from',
  rows: 'the height of its rows, or of those before, is not known',
  shape: 'the piece grows or narrows, so its rows do not add up to it',
  reached: 'by the gauge it is as long before this',
  many: 'by the gauge that would be more stitches than any piece has',
  said: 'the number of rows beside it is taken',
};

export function lengthLeftOpen(scene: Scene, found: Sightings<'open-length'>): Finding {
  const { first, rows, sizes } = found;
  const at = orderAt(scene, first, 'rows-again', 'even');
  const words = { row: rowName(scene, first.row), why: WHY[first.fact.why] };
  return openLength(at, words, { rows, sizes });
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

export function numberChosen(_scene: Scene, found: Sightings<'chosen-count'>): Finding {
  const { first, at, rows, sizes } = found;
  const { chains, times, multiple } = first.fact;
  return chosenCount(
    at,
    { chains, times, of: multiple.of, plus: chains - times * multiple.of },
    { rows, sizes },
  );
}
