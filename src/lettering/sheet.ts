/**
 * Letters drawn side by side as text, so that the source shows them as they are:
 *
 *     A    l        signs, then their rows from the cap line down
 *     .##. ##.
 *     #..# .#.
 */
import { boxesOf } from './boxes.ts';
import type { Glyph } from './glyph.ts';

/** All letters of a sheet by their heads. `capHeight`: rows from the cap line to the line. */
export function readSheet(sheet: string, capHeight: number): ReadonlyMap<string, Glyph> {
  const letters = new Map<string, Glyph>();
  for (const block of sheet.trim().split('\n\n')) {
    const [heads = [], ...rows] = block.split('\n').map((line) => line.trim().split(/\s+/));
    for (const [at, sign] of heads.entries()) {
      const drawn = rows.map((row) => row[at] ?? '');
      letters.set(sign, glyphOf(sign, drawn, capHeight));
    }
  }
  return letters;
}

/** Rows without a filled box at either end are the sheet's, not the letter's. */
function glyphOf(sign: string, rows: readonly string[], capHeight: number): Glyph {
  const first = Math.max(0, rows.findIndex(hasInk));
  const last = rows.findLastIndex(hasInk);
  return { sign, boxes: boxesOf(rows.slice(first, last + 1)), above: capHeight - first };
}

const hasInk = (row: string): boolean => row.includes('#');
