/**
 * A letter of an outline font in boxes: exact coverage at the boxes' true proportion, then the
 * threshold. Each letter is first moved sideways by eighths of a box to where its boxes are least in
 * doubt, so that a stem covers one column well and not two by half; equal letters come out equal.
 */
import { type Boxes, openBoxes } from './boxes.ts';
import { coverageOf } from './coverage.ts';
import type { FontOutline } from './font.ts';
import type { Glyph } from './glyph.ts';
import { boundsOf, type Contour, contoursOf } from './outline.ts';
import { sampledBoxes } from './sampled.ts';

/** Parts of a box, across and down, in the fine picture that strokes and gaps are measured on. */
export const FINE = 8;

export interface FontGlyph extends Glyph {
  readonly shares: Float64Array;
  /** The same letter `FINE` times as large, to measure and to compare with. */
  readonly fine: Glyph;
  /** Sides of the outline in boxes, counted from the letter's first column. */
  readonly left: number;
  readonly right: number;
  /** In boxes: from the letter's start to its first column, and to the start of the next letter. */
  readonly start: number;
  readonly advance: number;
  readonly outline: FontOutline;
}

/** Boxes in a font's unit, across and down; and the share from which a box is filled. */
export interface FontScale {
  readonly across: number;
  readonly down: number;
  readonly threshold: number;
}

export function fontGlyph(sign: string, outline: FontOutline, scale: FontScale): FontGlyph {
  const drawn = contoursOf(outline.strokes, ({ x, y }) => ({
    x: x * scale.across,
    y: y * scale.down,
  }));
  const { boxes, shares, shift, above } = bestPhase(drawn, scale.threshold);
  const bounds = boundsOf(drawn);
  return {
    sign,
    boxes,
    above,
    shares,
    fine: fineGlyph(sign, drawn, shift, { boxes, above }),
    left: bounds.left + shift,
    right: bounds.right + shift,
    start: -shift,
    advance: outline.advance * scale.across,
    outline,
  };
}

interface Phase {
  readonly boxes: Boxes;
  readonly shares: Float64Array;
  /** Boxes that the outline was moved to the right, to stand in its field. */
  readonly shift: number;
  readonly above: number;
  readonly doubt: number;
}

/** Eighths of a box, the smallest move first, so that a tie moves a letter least. */
const PHASES: readonly number[] = [0, 1, -1, 2, -2, 3, -3, 4].map((eighths) => eighths / 8);

function bestPhase(drawn: readonly Contour[], threshold: number): Phase {
  const phases = PHASES.map((move) => phaseOf(drawn, move, threshold));
  return phases.reduce((best, phase) => (phase.doubt < best.doubt - 1e-9 ? phase : best));
}

function phaseOf(drawn: readonly Contour[], move: number, threshold: number): Phase {
  const bounds = boundsOf(drawn);
  const left = Math.floor(bounds.left + move);
  const above = Math.max(0, Math.ceil(-bounds.top - 1e-6));
  const width = Math.max(0, Math.ceil(bounds.right + move) - left);
  const height = above + Math.max(0, Math.ceil(bounds.bottom - 1e-6));
  const shift = move - left;
  const shares = coverageOf(moved(drawn, shift, above), width, height);
  const boxes = openBoxes(width, height);
  let doubt = 0;
  for (const [at, share] of shares.entries()) {
    if (share >= threshold) boxes.filled[at] = 1;
    doubt += share * (1 - share);
  }
  return { boxes, shares, shift, above, doubt };
}

function fineGlyph(
  sign: string,
  drawn: readonly Contour[],
  shift: number,
  { boxes, above }: { readonly boxes: Boxes; readonly above: number },
): Glyph {
  const large = moved(drawn, shift, above).map((contour) =>
    contour.map(({ x, y }) => ({ x: x * FINE, y: y * FINE })),
  );
  const fine = sampledBoxes(large, boxes.width * FINE, boxes.height * FINE);
  return { sign, boxes: fine, above: above * FINE };
}

function moved(contours: readonly Contour[], x: number, y: number): Contour[] {
  return contours.map((contour) => contour.map((point) => ({ x: point.x + x, y: point.y + y })));
}
