/** Boxes of mesh that do not divide the stitches beneath. */
import { type Finding, meshCount } from '../../finding/index.ts';
import { beneathLabels, rowName } from '../names.ts';
import type { Scene, Sightings } from '../scene.ts';

export function mesh(scene: Scene, found: Sightings<'mesh'>): Finding {
  const { first, at, rows, sizes } = found;
  const { fact, row } = first;
  const { boxes, needed, have } = fact;
  const post = needed % boxes === 1 ? 1 : 0;
  const step = (needed - post) / boxes;
  const over = have - needed;
  const words = {
    row: rowName(scene, row),
    step,
    have,
    how: `${boxes} times, they take ${needed}`,
    left: Math.max(0, over),
  };
  const close = post === 1 ? `, and 1 for the last post, is ${needed}` : ` is ${needed}`;
  const gap = over > 0 ? `${over} too many` : `${-over} too few`;
  const sum = `${boxes} boxes of ${step}: ${boxes} x ${step}${close}. There are ${have}: ${gap}.`;
  return meshCount(at, words, { sum, labels: beneathLabels(scene, first), rows, sizes });
}
