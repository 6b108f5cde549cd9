/**
 * Width and row height of the plain stitches against a single crochet of the same yarn and hook.
 *
 * hdc: 1.61 by one set of weighed swatches of 20 stitches and rows (20 x 20 sts: sc 0.3125 x
 * 0.2875 in, hdc 0.3375 x 0.4625 in), 1.45 by the yarn of strips and squares of another (53, 78.5 and
 * 102 in of yarn for one 5-in row of sc, hdc and dc, against 785.5, 802 and 790 in for 5-in squares);
 * 1.5 lies between. dc: 1.91 by the second, 2.07 by the flat circle of 12; 2 lies between. tr: 2.9, from
 * the flat circle of 16 to 18. The rest goes on by 0.9 a wrap: ours. Sources in docs/sources.md.
 */
import type { StemId } from '../notation/index.ts';

export interface Proportion {
  readonly width: number;
  readonly height: number;
}

const PROPORTIONS: Readonly<Record<StemId, Proportion>> = {
  slip: { width: 1, height: 0.4 },
  w0: { width: 1, height: 1 },
  w0x: { width: 1, height: 1.5 },
  w1h: { width: 1.05, height: 1.5 },
  w1hx: { width: 1.05, height: 1.9 },
  w1: { width: 1, height: 2 },
  w1x: { width: 1, height: 2.4 },
  w2h: { width: 1.05, height: 2.45 },
  w2: { width: 1, height: 2.9 },
  w2x: { width: 1, height: 3.3 },
  w3: { width: 1, height: 3.8 },
  w4: { width: 1, height: 4.7 },
  w5: { width: 1, height: 5.6 },
  w6: { width: 1, height: 6.5 },
};

export const proportionOf = (stem: StemId): Proportion => PROPORTIONS[stem];

/** Row height over stitch width of an sc: 0.2875 / 0.3125 in, the first set of swatches above. */
export const SC_HEIGHT_BY_WIDTH = 0.92;

/** How far a stitch's own gauge may lie from the table's: the two sources differ by up to 11 %. */
export const PROPORTION_SPREAD = 0.1;
