/** A repeat to the row's end does not come out even. */
import { sumOf } from '../../fabric/index.ts';
import { counted, type Finding, repeatRemainder } from '../../finding/index.ts';
import type { RepeatStep } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { propose } from '../fixes/proposals.ts';
import { dividingFixes, swapFixes } from '../fixes/row-fixes.ts';
import { beneathLabels, beneathUnit, rowName } from '../names.ts';
import { type Scene, type Sighting, type Sightings, workedFrom } from '../scene.ts';

export function remainder(scene: Scene, found: Sightings<'remainder'>): Finding {
  const { first, at, rows, sizes } = found;
  const { row } = first;
  const { per, passes } = first.fact;
  const unit = beneathUnit(first);
  const repeat = repeatAt(scene, first);
  const have = room(scene, first, repeat);
  const left = have - passes * per;
  const sum = `${counted(passes, { one: 'repeat', many: 'repeats' })} of ${per} use ${
    passes * per
  } of ${have}; ${counted(left, unit)} ${left === 1 ? 'is' : 'are'} left over.`;
  const words = { row: rowName(scene, row), takes: per, have, unit };
  const point = repeat && at.from === first.fact.from ? workOf(first, repeat) : at;
  const labels = beneathLabels(scene, first);
  const finding = repeatRemainder(point, words, { sum, labels, rows, sizes });
  if (!repeat) return finding;
  const placed = workedFrom(scene, row, first.cloth);
  const fixes = dividingFixes(scene, placed, { repeat, per, have, size: row.sizeIndex });
  return propose(finding, [...fixes, ...swapFixes(scene, first)]);
}

function repeatAt(scene: Scene, { fact, row, cloth }: Sighting<'remainder'>): RepeatStep | null {
  const placed = workedFrom(scene, row, cloth);
  const found = placed?.instruction.steps.find(
    (step) => step.kind === 'repeat' && placed.from + step.from === fact.from,
  );
  return found?.kind === 'repeat' ? found : null;
}

/** Places that the repeat may use: what stands after it in the row needs some too. */
function room(
  scene: Scene,
  { fact, row, cloth }: Sighting<'remainder'>,
  repeat: RepeatStep | null,
): number {
  const steps = workedFrom(scene, row, cloth)?.instruction.steps ?? [];
  const after = repeat ? sumOf(steps.slice(steps.indexOf(repeat) + 1), row.sizeIndex).used : null;
  const have = fact.have - (after ?? 0);
  return have > fact.passes * fact.per && have % fact.per !== 0 ? have : fact.have;
}

/** The words that are repeated, without the order to repeat them. */
function workOf({ fact }: Sighting<'remainder'>, repeat: RepeatStep): Span {
  const first = repeat.steps[0];
  const last = repeat.steps.at(-1);
  if (!first || !last) return fact;
  const base = fact.from - repeat.from;
  return { from: base + first.from, to: base + last.to };
}
