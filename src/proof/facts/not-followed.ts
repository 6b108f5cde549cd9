/** A row that was misread here rather than mistaken by its designer: what it came to, and why that is. */
import type { Fact } from '../../fabric/index.ts';
import { counted, type Finding, notFollowed } from '../../finding/index.ts';
import {
  beneathName,
  beneathUnit,
  CHAINS,
  drawn,
  listed,
  rowName,
  SPACES,
  STITCHES,
} from '../names.ts';
import { type Scene, type Sighting, type Sightings, wordsAt } from '../scene.ts';
import { unitOf } from './count-mismatch.ts';

/** One finding a part: the first of its rows is pointed at, the others are named. */
export function misread(scene: Scene, found: Sightings<'not-followed'>): Finding {
  const { first, at, rows, sizes, again } = found;
  const { isTalk, of } = first.fact;
  const came = cameTo(scene, first, of);
  const why = isTalk ? `"${wordsAt(scene, at)}" was taken for talk` : came;
  const own = rowName(scene, first.row);
  const names = drawn([...new Set(again.map((row) => rowName(scene, row)))]);
  const others = names.filter((name) => name !== own);
  const sum = [
    isTalk
      ? `Without these words, ${came}.`
      : 'No one slip in the words or the count explains that.',
    others.length > 0 ? `Nor were these followed: ${listed(others)}.` : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
  return notFollowed(at, { row: own, why }, { sum, rows, sizes });
}

/** What the row came to, as a clause. */
function cameTo(scene: Scene, sighting: Sighting, of: Fact): string {
  const beneath = beneathName(scene, sighting);
  const unit = 'ofOwnChain' in of ? CHAINS : beneathUnit(sighting);
  switch (of.kind) {
    case 'count':
      return `as read here it makes ${counted(of.computed, unitOf(of.stated))}, and ${of.value} are stated`;
    case 'left':
      return `as read here it uses ${of.have - of.left} of ${counted(of.have, unit)} in ${beneath}`;
    case 'overrun':
      return `as read here it needs ${counted(of.needed, unit)}, and ${beneath} has ${of.have}`;
    case 'spaces-left':
      return `as read here it works into ${of.have - of.left} of ${counted(of.have, SPACES)} in ${beneath}`;
    case 'remainder':
      return `as read here its repeat takes ${counted(of.per, STITCHES)}, and ${of.have} do not divide by that`;
    default:
      return `a place that it names was not found in ${beneath}`;
  }
}
