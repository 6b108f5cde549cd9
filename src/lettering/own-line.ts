/** Sets a line in one of our own alphabets: accents composed, letters drawn together by their shapes. */
import { type Finding, letterMissing } from '../finding/index.ts';
import { type Alphabet, glyphsOf, signsOf } from './alphabet.ts';
import { columnsBetween } from './kern.ts';
import type { Line, SetPiece } from './line.ts';

/** Open boxes between letters and between words. */
export interface Spacing {
  readonly letterSpace: number;
  readonly wordSpace: number;
}

/** One line of the words, which begins at `from` in them; missing letters are left out and named. */
export function ownLine(
  words: string,
  from: number,
  alphabet: Alphabet,
  spacing: Spacing,
): { readonly line: Line; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const pieces: SetPiece[] = [];
  let end = 0;
  let isWordStart = false;
  let at = from;
  for (const sign of signsOf(words)) {
    const span = { from: at, to: at + sign.length };
    at = span.to;
    if (/^\s$/u.test(sign)) {
      isWordStart = true;
      continue;
    }
    const glyphs = glyphsOf(alphabet, sign);
    if (glyphs === null) {
      findings.push(letterMissing(span, { sign, where: 'our alphabet' }));
      continue;
    }
    for (const glyph of glyphs) {
      const last = pieces.at(-1);
      const column = last === undefined ? 0 : end + between(last, glyph, isWordStart);
      pieces.push({ ...span, glyph, column });
      end = column + glyph.boxes.width;
      isWordStart = false;
    }
  }
  return { line: { pieces, width: end }, findings };

  function between(last: SetPiece, glyph: SetPiece['glyph'], isApart: boolean): number {
    if (isApart) return spacing.wordSpace;
    return columnsBetween(last.glyph, glyph, {
      space: spacing.letterSpace,
      mostKern: alphabet.mostKern,
    });
  }
}
