/** A count of stitches that comes out only if each gap of several chains is one of them. */
import { counted, type Finding, gapsCounted as gapsAsStitches, noun } from '../../finding/index.ts';
import { listed, rowName, STITCHES } from '../names.ts';
import type { Scene, Sightings } from '../scene.ts';

export function gapsCounted(scene: Scene, found: Sightings<'gaps-counted'>): Finding {
  const { first, at, rows, sizes } = found;
  const { value, made, spaces } = first.fact;
  const said = spaces.map(({ chains, n }) => counted(n, noun(`ch-${chains} sps`)));
  const words = {
    row: rowName(scene, first.row),
    made,
    unit: STITCHES,
    spaces: listed(said),
    stated: value,
  };
  return gapsAsStitches(at, words, { rows, sizes });
}
