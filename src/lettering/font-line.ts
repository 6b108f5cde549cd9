/**
 * Sets a line in an outline font. The gap between two letters is the font's own, kerning included,
 * rounded to whole boxes; letters that the font keeps apart stay apart by a box at least.
 */
import { type Finding, letterMissing } from '../finding/index.ts';
import { signsOf } from './alphabet.ts';
import type { OutlineFont } from './font.ts';
import { FINE, type FontGlyph, type FontScale, fontGlyph } from './font-glyph.ts';
import { nearestGap } from './kern.ts';
import type { Line, SetPiece } from './line.ts';
import type { Spacing } from './own-line.ts';

/** `glyphs` keeps each letter once it is drawn, for all lines of one lettering. */
export interface FontSetting {
  readonly font: OutlineFont;
  readonly scale: FontScale;
  readonly glyphs: Map<string, FontGlyph | null>;
  /** Boxes added to what the font says; word space `null`: the font's own blank. */
  readonly spacing: Pick<Spacing, 'letterSpace'> & { readonly wordSpace: number | null };
}

export function fontLine(
  words: string,
  from: number,
  setting: FontSetting,
): { readonly line: Line; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const pieces: (SetPiece & { readonly glyph: FontGlyph })[] = [];
  let end = 0;
  let blanks = 0;
  let at = from;
  for (const sign of signsOf(words)) {
    const span = { from: at, to: at + sign.length };
    at = span.to;
    if (/^\s$/u.test(sign)) {
      blanks++;
      continue;
    }
    const glyph = glyphFor(sign, setting);
    if (glyph === null) {
      findings.push(letterMissing(span, { sign, where: 'this font' }));
      continue;
    }
    const last = pieces.at(-1);
    const column = last === undefined ? 0 : end + gap(last.glyph, glyph, blanks, setting);
    pieces.push({ ...span, glyph, column });
    end = column + glyph.boxes.width;
    blanks = 0;
  }
  return { line: { pieces, width: end }, findings };
}

function glyphFor(sign: string, { font, scale, glyphs }: FontSetting): FontGlyph | null {
  const known = glyphs.get(sign);
  if (known !== undefined) return known;
  const outline = font.outlineOf(sign);
  const glyph = outline && fontGlyph(sign, outline, scale);
  glyphs.set(sign, glyph);
  return glyph;
}

/** Columns between the fields of two letters. */
function gap(left: FontGlyph, right: FontGlyph, blanks: number, setting: FontSetting): number {
  const { font, scale, spacing } = setting;
  if (blanks > 0 && spacing.wordSpace !== null) return spacing.wordSpace;
  const kerning = blanks > 0 ? 0 : font.kerning(left.outline, right.outline);
  const exact =
    left.advance - (left.boxes.width + left.start) + right.start + kerning * scale.across;
  const own = Math.round(exact + blanks * blank(setting)) + spacing.letterSpace;
  // What the font joins, as handwriting, stays joined.
  const isJoined = Math.round(exact * FINE) + nearestGap(left.fine, right.fine) <= 0;
  return isJoined ? own : Math.max(own, 1 - nearestGap(left, right));
}

/** Width of the font's own blank in boxes. */
function blank({ font, scale }: FontSetting): number {
  return (font.outlineOf(' ')?.advance ?? 0) * scale.across;
}
