/** Rows that send to rows: to none that is there, or back to themselves. */

import { type Finding, rowReferenceLoop, rowReferenceMissing } from '../../finding/index.ts';
import type { PlacedInstruction } from '../../manuscript/index.ts';
import { rowName } from '../names.ts';
import { orderAt } from '../order.ts';
import { askedBy, type Scene, type Sighting, type Sightings } from '../scene.ts';

export function rowMissing(scene: Scene, found: Sightings<'row-missing'>): Finding {
  const { first, rows, sizes } = found;
  const at = orderAt(scene, first, 'rows-again');
  const row = rowName(scene, first.row);
  const wanted = wantedOf(scene, first);
  if (leadsBack(scene, first))
    return rowReferenceLoop(at, { row, through: wanted }, { rows, sizes });
  return rowReferenceMissing(at, { row, wanted }, { rows, sizes });
}

/** Does the row that is wanted, which stands further down, repeat this one, at once or by others? */
function leadsBack(scene: Scene, { fact, row }: Sighting<'row-missing'>): boolean {
  const { instructions = [] } = scene.manuscript.parts[row.partIndex] ?? {};
  const seen = new Set<number>();
  const queue = [Number(fact.row)];
  for (const n of queue) {
    if (n === row.number) return true;
    if (seen.has(n)) continue;
    seen.add(n);
    queue.push(...rowsRepeatedBy(instructions, n));
  }
  return false;
}

const rowsRepeatedBy = (all: readonly PlacedInstruction[], n: number): readonly number[] =>
  all
    .filter(({ instruction }) => instruction.label?.numbers.includes(n))
    .flatMap(({ instruction }) => instruction.steps)
    .flatMap((step) => (step.kind === 'rows-again' && step.part === null ? step.rows : []));

export function rowLoop(scene: Scene, found: Sightings<'row-loop'>): Finding | null {
  const { first, rows, sizes } = found;
  // "Row 2: Ch 1, sc across. Rep row 2 until …": the row's own work is what is repeated.
  if (worksFirst(scene, first)) return null;
  const words = { row: rowName(scene, first.row), through: wantedOf(scene, first) };
  return rowReferenceLoop(orderAt(scene, first, 'rows-again'), words, { rows, sizes });
}

function worksFirst(scene: Scene, { row }: Sighting): boolean {
  const steps = askedBy(scene, row)?.instruction.steps ?? [];
  const again = steps.findIndex((step) => step.kind === 'rows-again');
  return steps.slice(0, again).some((step) => step.kind === 'work' || step.kind === 'repeat');
}

function wantedOf(scene: Scene, { fact, row }: Sighting<'row-missing' | 'row-loop'>): string {
  const said = /\b(?:rnd|round|rd)s?\b/i.test(
    scene.manuscript.text.slice(row.from, Math.min(row.to, row.from + 400)),
  );
  const word = askedBy(scene, row)?.instruction.label?.word;
  const course = word || (said ? 'round' : 'row');
  return /^\d/.test(fact.row) ? `${course} ${fact.row}` : `the ${fact.row} ${course}`;
}
