/** More places are asked for than lie beneath. */
import { counted, type Finding, roundOverrun } from '../../finding/index.ts';
import { propose } from '../fixes/proposals.ts';
import { dropFix, innerFixes, passFixes, swapFixes } from '../fixes/row-fixes.ts';
import { beneathLabels, beneathName, beneathUnit, rowName, STITCHES } from '../names.ts';
import { askedTimes } from '../order.ts';
import type { Scene, Sighting, Sightings } from '../scene.ts';
import { usedSum } from '../sums.ts';

export function overrun(scene: Scene, found: Sightings<'overrun'>): Finding {
  const { first, at, rows, sizes } = found;
  const { fact, row, cloth } = first;
  const { needed, have } = fact;
  const before = beneathName(scene, first);
  const unit = beneathUnit(first);
  const asked =
    usedSum(scene, row, { cloth, needed }) ||
    `${counted(needed, unit)} are asked for; ${before} has ${have}, so ${needed - have} ${
      needed - have === 1 ? 'has' : 'have'
    } no place.`;
  const sum = [asked, leftBefore(scene, first)].filter((words) => words !== '').join(' ');
  const words = { row: rowName(scene, row), needed, have, before, unit };
  const labels = beneathLabels(scene, first);
  const more = { sum, labels, rows, sizes };
  const fixes = [
    dropFix(scene, first),
    ...passFixes(scene, first, { used: have - needed }),
    ...innerFixes(scene, first, have - needed),
    ...swapFixes(scene, first),
  ];
  return propose(
    roundOverrun(askedTimes(scene, first, at), words, more),
    fixes.filter((fix) => fix !== null),
  );
}

/** Behind a short row: the stitches that are no longer to be had, though the work still has them. */
function leftBefore(scene: Scene, { before, row, cloth }: Sighting<'overrun'>): string {
  const at = before ? cloth.rows.indexOf(before) : -1;
  const under = cloth.rows[at - 1];
  const left = before ? before.available - before.used : 0;
  const isShort = before && under && before.verdict === 'proven' && left > 0 && !before.joins;
  if (!isShort || under.partIndex !== before.partIndex) return '';
  if (under.tally.stitches !== before.available) return '';
  const [short, from] = [rowName(scene, before), rowName(scene, under)];
  return `${upper(short)} leaves ${counted(left, STITCHES)} of ${from} unworked; ${rowName(scene, row)} goes into ${
    left === 1 ? 'it' : 'them'
  } only if its words name ${left === 1 ? 'it' : 'them'}.`;
}

const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
