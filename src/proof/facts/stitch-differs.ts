/** The count names one stitch, and the row makes some of another. */
import { counted, type Finding, noun, stitchDiffers } from '../../finding/index.ts';
import { wordFor } from '../../notation/index.ts';
import { listed, rowName } from '../names.ts';
import type { Scene, Sightings } from '../scene.ts';
import { madeBy } from '../sums.ts';

export function otherStems(scene: Scene, found: Sightings<'stems'>): Finding {
  const { first, at, rows, sizes } = found;
  const { stated, value, made, others } = first.fact;
  const { terms } = scene.manuscript.terms;
  const nameOf = (stem: (typeof others)[number]['stem']): string => wordFor(stem, terms);
  const stitch = stated.stem ?? '';
  const said = others.map(({ stem, n }) => counted(n, noun(nameOf(stem))));
  const words = {
    row: rowName(scene, first.row),
    made,
    stitch,
    others: listed(said),
    stated: value,
  };
  const labels = others
    .flatMap(({ stem }) => madeBy(scene, first, stem))
    .map((span) => ({ ...span, text: 'makes these' }));
  return stitchDiffers(at, words, { labels, rows, sizes });
}
