/**
 * Line weights of a chart, from the size of its boxes on paper. Posts are upright strokes with the
 * trade's slash for each wrap; chains are thinner and sag a little; stitches that fill a box are thick
 * strokes, so near each other that the box reads as dark, and yet each can be counted.
 */
import type { Stroke } from '../drawing.ts';
import type { Sheet } from './sheet.ts';
import type { Scale } from './window.ts';

/** Thinner lines may break up in print (0.1 mm is a quarter of a point; ours leaves room). */
const THINNEST_MM = 0.2;

export interface Thread {
  readonly post: Stroke;
  readonly slash: Stroke;
  readonly chain: Stroke;
  readonly stitch: Stroke;
  /** The twist of a filling stitch, cut out of it. */
  readonly slit: Stroke;
  readonly tenth: Stroke;
  /** A tenth line across filled boxes. */
  readonly casing: Stroke;
  /** Width of one stitch on paper. */
  readonly pitchMm: number;
  readonly sagMm: number;
}

export function threadOf({ mesh }: Pick<Sheet, 'mesh'>, scale: Scale): Thread {
  const { boxWidthMm, boxHeightMm } = scale;
  const size = Math.min(boxWidthMm, boxHeightMm);
  const pitchMm = boxWidthMm / (mesh.gap + 1);
  const of = (share: number): number => Math.max(THINNEST_MM, share * size);
  const ink = { ink: 'ink', ends: 'round' } as const;
  const stitchMm = Math.min(0.8 * pitchMm, 0.45 * boxHeightMm);
  return {
    post: { ...ink, widthMm: of(0.11) },
    slash: { ...ink, widthMm: of(0.055) },
    chain: { ...ink, widthMm: of(0.075) },
    stitch: { ...ink, widthMm: stitchMm },
    slit: { ink: 'paper', ends: 'flat', widthMm: Math.max(0.12, 0.1 * stitchMm) },
    tenth: { ink: 'ink', ends: 'flat', widthMm: of(0.17) },
    casing: { ink: 'paper', ends: 'flat', widthMm: Math.max(0.3, 0.2 * stitchMm) },
    pitchMm,
    sagMm: 0.08 * boxHeightMm,
  };
}
