/** A space is called by another number of chains than it has. */
import { type Finding, spaceSize } from '../../finding/index.ts';
import { propose, replacement } from '../fixes/proposals.ts';
import { beneathLabels, beneathName, rowName } from '../names.ts';
import { type Scene, type Sighting, type Sightings, wordsAt } from '../scene.ts';

export function spaceOfOtherSize(scene: Scene, found: Sightings<'space-size'>): Finding | null {
  const { first, rows, sizes } = found;
  const { named, found: made } = first.fact;
  if (isUnlike(first)) return null;
  const at = pointed(scene, found);
  const thing = first.fact.ofStart ? 'starting chain' : 'space';
  const isHere = first.fact.ofStart === 'here';
  const before = isHere ? rowName(scene, first.row) : beneathName(scene, first);
  const words = { words: wordsAt(scene, at), named, thing, before, made };
  const finding = spaceSize(at, words, {
    sum: sumOf(first),
    labels: isHere ? [] : beneathLabels(scene, first),
    rows,
    sizes,
  });
  const said = scene.manuscript.text.slice(at.from, at.to);
  const right = said.replace(/\d+/, String(made));
  const name = right === said ? [] : [replacement(scene.manuscript.text, at, right)];
  return propose(finding, name);
}

/** So far off that one of the rows was misread, where no count shows that they were understood. */
const isUnlike = ({ fact, row, before }: Sighting<'space-size'>): boolean =>
  Math.abs(fact.named - fact.found) > FAR &&
  row.verdict !== 'proven' &&
  before?.verdict !== 'proven';

/** Chains by which the name of a space slips (judgement). */
const FAR = 2;

function sumOf({ before, fact }: Sighting<'space-size'>): string {
  if (!before || fact.ofStart || before.tally.spaces.length === 0) return '';
  const spaces = before.tally.spaces.map(({ chains, n }) => `${n} of ${chains}`);
  return `Spaces there by their chains: ${spaces.join(', ')}; none of ${fact.named} is ahead.`;
}

/** Only the name of the space, "ch-2 sp", where it can be found among the step's words. */
function pointed(
  scene: Scene,
  { at, first }: Sightings<'space-size'>,
): { from: number; to: number } {
  const words = scene.manuscript.text.slice(at.from, at.to);
  const { named } = first.fact;
  const name = new RegExp(
    `\\b(?:ch|chain)[-\\s]*${named}[-\\s]*\\w*|\\b${named}[-\\s]*ch[-\\s]*\\w*`,
    'i',
  );
  const hit = name.exec(words);
  if (!hit) return at;
  return { from: at.from + hit.index, to: at.from + hit.index + hit[0].trimEnd().length };
}
