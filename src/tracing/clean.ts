/** Takes away specks: small pieces of filled boxes in open ground, and small holes in filled ground. */
import { type Boxes, regionsOf } from '../lettering/index.ts';

export interface Cleaned {
  readonly boxes: Boxes;
  /** Boxes that were opened and filled. */
  readonly opened: number;
  readonly filled: number;
}

/**
 * Pieces of up to `most` boxes are turned over, filled ones first. Boxes that meet at a corner hang
 * together, so that a slanting line is not eaten; a hole ends at its edges.
 */
export function cleaned(boxes: Boxes, most: number): Cleaned {
  const filled = Uint8Array.from(boxes.filled);
  const field = { ...boxes, filled };
  const turn = (kind: 'filled' | 'open', touch: 'corners' | 'edges'): number => {
    const specks = regionsOf(field, kind, touch).filter((region) => region.boxes.length <= most);
    const all = specks.flatMap((speck) => speck.boxes);
    for (const at of all) filled[at] = kind === 'filled' ? 0 : 1;
    return all.length;
  };
  const opened = turn('filled', 'corners');
  return { boxes: field, opened, filled: turn('open', 'edges') };
}
