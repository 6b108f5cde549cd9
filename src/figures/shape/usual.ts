/**
 * Increases a round of published circles: sc 6 to 8, hdc 8 to 10, dc 10 to 14 (docs/sources.md), tr 16 to
 * 18 (from memory). Makers lay all of these flat, whatever a swatch says of stitch and row: none is objected
 * to, and none is drawn as a ruffle or a cup.
 */
import type { StemId } from '../../notation/index.ts';

const USUAL: Partial<Record<StemId, readonly [number, number]>> = {
  w0: [6, 8],
  w1h: [8, 10],
  w1: [10, 14],
  w2: [16, 18],
};

export interface UsualGrowth {
  readonly leastMm: number;
  readonly mostMm: number;
}

/** What a round of this stitch usually grows by, mm; `null` for stitches of which nothing is known. */
export function usualGrowth(stem: StemId | null, stitchMm: number): UsualGrowth | null {
  const range = stem && USUAL[stem];
  return range ? { leastMm: range[0] * stitchMm, mostMm: range[1] * stitchMm } : null;
}
