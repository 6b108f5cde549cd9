/** "In next dc" where the next stitch is something else. */
import { type Finding, wrongNoun } from '../../finding/index.ts';
import { STEMS, wordFor } from '../../notation/index.ts';
import { beneathLabels, beneathName } from '../names.ts';
import { type Scene, type Sightings, wordsAt } from '../scene.ts';

export function nounDiffers(scene: Scene, found: Sightings<'noun'>): Finding | null {
  const { first, at, rows, sizes } = found;
  // A row that works other words again, or a stitch defined elsewhere, names nothing itself.
  if (at.from !== first.fact.from || at.to !== first.fact.to) return null;
  const words = {
    words: wordsAt(scene, at),
    named: word(scene, first.fact.named),
    before: beneathName(scene, first),
    found: word(scene, first.fact.found),
  };
  return wrongNoun(at, words, { labels: beneathLabels(scene, first), rows, sizes });
}

/** The hands speak of stitches by construction; the designer by her terms. */
function word(scene: Scene, id: string): string {
  const stem = STEMS.find((one) => one.id === id);
  return stem ? wordFor(stem.id, scene.manuscript.terms.terms) : id;
}
