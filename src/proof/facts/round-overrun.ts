/** More places are asked for than lie beneath. */
import { counted, type Finding, roundOverrun } from '../../finding/index.ts';
import { propose } from '../fixes/proposals.ts';
import { dropFix, passFixes } from '../fixes/row-fixes.ts';
import { beneathLabels, beneathName, beneathUnit, rowName } from '../names.ts';
import { askedTimes } from '../order.ts';
import type { Scene, Sightings } from '../scene.ts';
import { usedSum } from '../sums.ts';

export function overrun(scene: Scene, found: Sightings<'overrun'>): Finding {
  const { first, at, rows, sizes } = found;
  const { fact, row, cloth } = first;
  const { needed, have } = fact;
  const before = beneathName(scene, first);
  const unit = beneathUnit(first);
  const sum =
    usedSum(scene, row, { cloth, needed }) ||
    `${counted(needed, unit)} are asked for; ${before} has ${have}, so ${needed - have} ${
      needed - have === 1 ? 'has' : 'have'
    } no place.`;
  const words = { row: rowName(scene, row), needed, have, before, unit };
  const labels = beneathLabels(scene, first);
  const more = { sum, labels, rows, sizes };
  const fixes = [dropFix(scene, first), ...passFixes(scene, first, { used: have - needed })];
  return propose(
    roundOverrun(askedTimes(scene, first, at), words, more),
    fixes.filter((fix) => fix !== null),
  );
}
