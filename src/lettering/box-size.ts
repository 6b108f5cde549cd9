/** The size of one box from a gauge in words, counted in boxes, or in stitches where the mesh is known. */
import { pitchOf } from '../filet/index.ts';
import { gaugeFromWords } from '../gauge/index.ts';

export interface BoxMeasure {
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * "8 boxes x 7.5 rnds = 10 cm"; "24 sts x 11 rows = 10 cm" takes `gap`, the chains of an open box.
 * `null` where the words do not tell both sides.
 */
export function boxFromGauge(words: string, gap: number | null): BoxMeasure | null {
  const { across = null, up = null } = gaugeFromWords(words) ?? {};
  if (!across || !up || across.unit === 'repeat') return null;
  if (across.unit === 'stitch' && gap === null) return null;
  const stitches = across.unit === 'stitch' && gap !== null ? pitchOf(gap) : 1;
  return { widthMm: (across.mm / across.n) * stitches, heightMm: up.mm / up.n };
}
