/** The stated count is not what the words make. */
import { sumOf } from '../../fabric/index.ts';
import { countMismatch, type Finding, type Label, type Noun, noun } from '../../finding/index.ts';
import { STEMS, type StatedCount, wordFor } from '../../notation/index.ts';
import { propose } from '../fixes/proposals.ts';
import { countFixes } from '../fixes/row-fixes.ts';
import { growth } from '../growth.ts';
import { beneathLabels, listed, rowName, STITCHES } from '../names.ts';
import { askedBy, type Scene, type Sightings } from '../scene.ts';
import { madeSum } from '../sums.ts';
import { chainList } from '../text/sizes-lengths.ts';

export function count(scene: Scene, found: Sightings<'count'>): Finding | null {
  const { first, at, rows, sizes } = found;
  const { fact, row, cloth } = first;
  const asked = askedBy(scene, row);
  if (asked && chainList(asked.instruction, scene.manuscript.head.sizes.length)) return null;
  const ofStitches = fact.computed === row.tally.stitches;
  const sum = [
    ofStitches ? madeSum(scene, row, cloth) || plainSum(found) : spacesSum(found),
    ofStitches ? growth(scene, first) : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
  const kinds = fact.unit === 'stem' && fact.computed === 0 ? kindsMade(scene, first) : [];
  const words = {
    row: rowName(scene, row),
    made: fact.computed,
    stated: fact.value,
    unit: unitOf(fact.stated),
  };
  const labels = [...workLabel(scene, found), ...openLabels(scene, found)];
  const of = kinds.length > 0 ? `Its stitches are ${listed(kinds)}.` : '';
  const more = { sum: of || sum, labels, rows, sizes };
  return propose(countMismatch(at, words, more), countFixes(scene, first));
}

/** "6 sc": the stitches of a row that has none of the one that its count names. */
function kindsMade(scene: Scene, { row }: Sightings<'count'>['first']): string[] {
  const { terms } = scene.manuscript.terms;
  return STEMS.flatMap(({ id }) => {
    const n = [...row.tally.byKind].reduce(
      (all, [kind, made]) => all + (kind.replace(/^start /, '').split(' ')[0] === id ? made : 0),
      0,
    );
    return n > 0 ? [`${n} ${wordFor(id, terms)}`] : [];
  });
}

/** What a stated number counts, as the pattern calls it. */
export function unitOf({ unit, stem, chains, word }: StatedCount): Noun {
  const size = chains?.values[0];
  switch (unit) {
    case 'stem':
      return stem ? { one: stem, many: stem } : STITCHES;
    case 'space':
      return noun(size ? `ch-${size} sps` : 'spaces');
    case 'chain':
      return noun('chains');
    case 'box':
      return noun('boxes');
    case 'group':
      return word ? noun(word.endsWith('s') ? word : `${word}s`) : noun('groups');
    default:
      return STITCHES;
  }
}

function plainSum({ first }: Sightings<'count'>): string {
  const { row } = first;
  if (row.used === 0 || row.used === row.tally.stitches) return '';
  return `${row.used} places are worked, and ${row.tally.stitches} stitches are made in them.`;
}

function spacesSum({ first }: Sightings<'count'>): string {
  const { spaces, stitches } = first.row.tally;
  if (spaces.length === 0) return '';
  const parts = spaces.map(
    ({ chains, n }) => `${n} of ${chains} ${chains === 1 ? 'chain' : 'chains'}`,
  );
  return `The row makes ${stitches} stitches, and spaces: ${parts.join(', ')}.`;
}

/** "Sc in each ch across": the number comes from what lies beneath. */
function openLabels(scene: Scene, { first }: Sightings<'count'>): Label[] {
  const steps = askedBy(scene, first.row)?.instruction.steps ?? [];
  return sumOf(steps, first.row.sizeIndex).made === null ? beneathLabels(scene, first) : [];
}

/** The work that makes the number, where it stands on its own beside the count. */
function workLabel(scene: Scene, { first, at }: Sightings<'count'>): Label[] {
  const placed = askedBy(scene, first.row);
  const steps = placed?.instruction.steps ?? [];
  const work = steps.filter((step) => ['work', 'repeat', 'group', 'boxes'].includes(step.kind));
  const [from, to] = [work[0], work.at(-1)];
  if (!placed || !from || !to) return [];
  const span = { from: placed.from + from.from, to: placed.from + to.to };
  return span.to <= at.from ? [{ ...span, text: `makes ${first.fact.computed}` }] : [];
}
