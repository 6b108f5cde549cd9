/**
 * How much yarn a stitch takes.
 *
 * The model, ours: the yarn of a single crochet runs 4.1 times its width and height together, up
 * through the row and back, along the top and round the stitch beneath. The factor is the geometric
 * mean of four published figures, each over width and height (height 0.92 of the width where only
 * the width is known): 5.5 from measured strips in worsted, 4.4 from a weighed ball of plush, 3.6
 * from a yarn shop's bulky stitch, 3.2 from a weighed bulky swatch. They differ by up to a third, and
 * so does a first estimate. Other stitches are taken in proportion to sc: see `RATIOS`.
 */
import type { Kind } from '../fabric/index.ts';
import type { Gauge } from '../gauge/index.ts';
import type { StemId } from '../notation/index.ts';

export const PATH_FACTOR = 4.1;
/** Standard deviation of the four figures: their logarithms lie 0.23 about the mean. */
export const PATH_SPREAD = 0.25;

/** Metres of yarn in one sc of this gauge. */
export const metresPerSc = ({ stitchWidthMm, rowHeightMm }: Gauge): number =>
  (PATH_FACTOR * (stitchWidthMm + rowHeightMm)) / 1000;

/** What weighing tells apart: stems, and the rest by class. */
export type YarnKey = StemId | 'chain';

/**
 * Yarn against one sc. hdc 1.48 and dc 1.92 from measured single rows (two sources agree on hdc
 * within 0.5 %); chain 0.48 from the same strips; taller stitches by 0.48 a wrap, derived; slip
 * stitch common practice (0.5-0.6); extended and half stitches between their neighbours: ours.
 */
const RATIOS: Readonly<Record<YarnKey, number>> = {
  chain: 0.48,
  slip: 0.55,
  w0: 1,
  w0x: 1.3,
  w1h: 1.48,
  w1hx: 1.7,
  w1: 1.92,
  w1x: 2.15,
  w2h: 2.15,
  w2: 2.4,
  w2x: 2.65,
  w3: 2.88,
  w4: 3.36,
  w5: 3.84,
  w6: 4.32,
};

export const ratioOf = (key: YarnKey): number => RATIOS[key];

export interface YarnShare {
  readonly key: YarnKey;
  /** How many plain stitches of this key it takes as much yarn as. */
  readonly factor: number;
  readonly isTextured: boolean;
}

/** Legs worked together share their top: 0.95 each (common practice); a bobble's 0.85: 8-9 sc for 5 dc. */
const TOGETHER = 0.95;
const BUNCHED = 0.88;
/** Post stitches go round and not through: 1.05 to 1.1, common practice. */
const ROUND_POST = 1.07;
/** Three chains and a slip stitch: the usual picot. */
const PICOT_CHAINS = 4;

/** Chains of a start chain that stands for a stitch: as high as the stitch (common practice). */
const START_CHAINS: Partial<Record<StemId, number>> = {
  w0: 1,
  w0x: 2,
  w1h: 2,
  w1: 3,
  w2: 4,
  w3: 5,
};

export function yarnShareOf(kind: Kind): YarnShare {
  const stem = kind.stem ?? 'w0';
  const plain = (key: YarnKey, factor: number): YarnShare => ({ key, factor, isTextured: false });
  switch (kind.class) {
    case 'chain':
    case 'low':
      return plain('chain', 1);
    case 'start':
      return plain('chain', START_CHAINS[stem] ?? 3);
    case 'slip':
      return plain('slip', 1);
    case 'picot':
      return plain('chain', PICOT_CHAINS);
    case 'ring':
      return plain('chain', 2);
    case 'unknown':
      return plain('w0', 1);
    default:
      return stitchShare(kind, stem);
  }
}

function stitchShare({ name, shape }: Kind, stem: StemId): YarnShare {
  const isPost = name.includes('-post');
  const foundation = name.includes('foundation') ? 1 + RATIOS.chain / RATIOS[stem] : 1;
  const post = isPost ? ROUND_POST : 1;
  if (shape === null || shape === 'one') {
    return { key: stem, factor: post * foundation, isTextured: isPost };
  }
  // "w1 cluster 3", "w0 together": the number of legs stands in the kind's name.
  const legs = Number(/ (\d+)/.exec(name)?.[1] ?? (shape === 'together' ? 2 : 4));
  const each = shape === 'together' ? TOGETHER : BUNCHED;
  return { key: stem, factor: legs * each * post, isTextured: shape !== 'together' || isPost };
}
