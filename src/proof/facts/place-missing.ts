/** A place is named that is not there. */
import { type Finding, placeMissing } from '../../finding/index.ts';
import { beneathLabels, beneathName, rowName } from '../names.ts';
import { type Scene, type Sighting, type Sightings, wordsAt } from '../scene.ts';

export function noPlace(scene: Scene, found: Sightings<'no-place'>): Finding | null {
  const { first, at, rows, sizes } = found;
  // Nothing lies beneath, or a chain of open length: that is told in another way.
  if (nthChain.exec(first.fact.what)?.[2] === '0') return null;
  const words = {
    row: rowName(scene, first.row),
    place: placeOf(scene, first),
    source: beneathName(scene, first),
    have: whatThereIs(first),
  };
  return placeMissing(at, words, { labels: beneathLabels(scene, first), rows, sizes });
}

/** The hands tell "chain 6 of 4" or the sort of place. */
const nthChain = /^chain (\d+) of (\d+)$/;

function placeOf(scene: Scene, { fact }: Sighting<'no-place'>): string {
  const chain = nthChain.exec(fact.what);
  if (chain) return `chain ${chain[1]}`;
  if (fact.what === 'space') {
    const words = wordsAt(scene, fact);
    const named = /\bch[- ]?\d+\s*(?:sp|lp|loop|space|arch)\w*/i.exec(words)?.[0];
    return named ? `a ${named.toLowerCase().replace(/s$/, '')}` : 'a chain space';
  }
  return fact.what === 'skipped stitch' ? 'a skipped stitch' : `the ${fact.what}`;
}

function whatThereIs({ fact, before }: Sighting<'no-place'>): string {
  const chain = nthChain.exec(fact.what);
  if (chain) return `${chain[2]} ${chain[2] === '1' ? 'chain' : 'chains'}`;
  if (fact.what === 'space' && before) {
    return before.tally.spaces.length > 0 ? 'no such space' : 'no chain spaces';
  }
  return 'none';
}
