/**
 * What every drawn letter must keep to hold in mesh and to be read: the rules of filet lettering
 * (strokes and gaps of a box at least, no boxes that meet only at a corner, counters that stay open,
 * letters that can be told apart) are common practice.
 */
import { describe, expect, test } from 'vitest';
import { alphabetOf, DRAWN_HEIGHTS, glyphsOf, signsOf } from '../../src/lettering/alphabet.ts';
import { isFilled, rowsOf } from '../../src/lettering/boxes.ts';
import type { Glyph } from '../../src/lettering/glyph.ts';
import { cornerTouches, countersOf, regionsOf } from '../../src/lettering/shape.ts';

const CAPITALS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const PLAIN = `${CAPITALS}${CAPITALS.toLowerCase()}0123456789`;
/** Letters of Latin-1 (ISO/IEC 8859-1, C0 to FF without × and ÷). */
const LATIN_1 = Array.from({ length: 64 }, (_, i) => String.fromCharCode(0xc0 + i))
  .filter((sign) => sign !== '×' && sign !== '÷')
  .join('');
/** Polish, Czech, Slovak, Hungarian, Romanian, Turkish, Baltic: their letters beyond Latin-1, from memory. */
const CENTRAL = 'ĄĆĘŁŃŚŹŻąćęłńśźżČĎĚŇŘŠŤŮŽčďěňřšťůžĽĹŔľĺŕŐŰőűĂȘȚășțĞİŞğışĀĒĪŪāēīūŒœŸẞđĐ';
const SIGNS = '.,:;!?¡¿\'"„-–—_+=/\\()[]|&‹›«»·…°♥';

function glyphs(height: number, signs: string): Glyph[] {
  const alphabet = alphabetOf(height)!;
  return signsOf(signs).flatMap((sign) => {
    const found = glyphsOf(alphabet, sign);
    expect(found, `${sign} at ${height}`).not.toBeNull();
    return found ?? [];
  });
}

const all = (height: number): Glyph[] => glyphs(height, PLAIN + LATIN_1 + CENTRAL + SIGNS);
const drawn = ({ sign, boxes }: Glyph): string => `${sign}\n${rowsOf(boxes).join('\n')}`;

describe.each(DRAWN_HEIGHTS)('letters of %i boxes', (height) => {
  test('are all there', () => {
    expect(all(height).length).toBeGreaterThan(200);
  });

  test('have no boxes that meet only at a corner', () => {
    expect(
      all(height)
        .filter(({ boxes }) => cornerTouches(boxes).length > 0)
        .map(drawn),
    ).toEqual([]);
  });

  test('have counters of two boxes at least', () => {
    const shut = all(height).filter(({ boxes }) =>
      countersOf(boxes).some((counter) => counter.boxes.length < 2),
    );
    expect(shut.map(drawn)).toEqual([]);
  });

  test('fill their field from side to side and from top to bottom', () => {
    const loose = all(height).filter(({ boxes }) => {
      const rows = rowsOf(boxes);
      const hasSide = (x: number) => rows.some((row) => row.at(x) === '#');
      return !(rows[0]?.includes('#') && rows.at(-1)?.includes('#') && hasSide(0) && hasSide(-1));
    });
    expect(loose.map(drawn)).toEqual([]);
  });

  test('are of one piece, but for dots and marks', () => {
    const signs = alphabetOf(height)!.cases === 'both' ? PLAIN.replace(/[ij]/g, '') : CAPITALS;
    const broken = glyphs(height, signs).filter(
      ({ boxes }) => regionsOf(boxes, 'filled', 'edges').length !== 1,
    );
    expect(broken.map(drawn)).toEqual([]);
  });

  test('stand on the line, capitals and digits at full height', () => {
    for (const glyph of glyphs(height, `${CAPITALS.replace(/[QJ]/g, '')}0123456789`)) {
      expect([glyph.sign, glyph.above, glyph.boxes.height]).toEqual([glyph.sign, height, height]);
    }
  });

  test('differ from each other in two boxes at least, however they are laid together', () => {
    const letters = [...new Map(glyphs(height, PLAIN + LATIN_1 + CENTRAL).map((g) => [g.sign, g]))]
      .map(([, glyph]) => glyph)
      // One letter in print too: crossed D and eth; sharp s of both cases; and the dotless i is an i without its dot.
      .filter(({ sign }) => !['Đ', 'ẞ', 'ı'].includes(sign));
    const near: string[] = [];
    for (const [i, a] of letters.entries()) {
      for (const b of letters.slice(0, i)) if (difference(a, b) < 2) near.push(a.sign + b.sign);
    }
    expect(near).toEqual([]);
  });
});

/** Boxes in which two letters differ, on the same line and shifted sideways to where they differ least. */
function difference(a: Glyph, b: Glyph): number {
  if (Math.abs(a.boxes.width - b.boxes.width) > 3) return 3;
  let least = Number.POSITIVE_INFINITY;
  const top = Math.max(a.above, b.above);
  const bottom = Math.max(a.boxes.height - a.above, b.boxes.height - b.above);
  for (let shift = -2; shift <= 2; shift++) {
    let n = 0;
    for (let y = -top; y < bottom; y++) {
      for (let x = -2; x < Math.max(a.boxes.width, b.boxes.width) + 2; x++) {
        const [p, q] = [
          isFilled(a.boxes, x, y + a.above),
          isFilled(b.boxes, x + shift, y + b.above),
        ];
        if (p !== q) n++;
      }
    }
    least = Math.min(least, n);
  }
  return least;
}

test('a height that a drawn one divides has the same letters, larger', () => {
  const small = glyphs(7, 'Ag')[0]!;
  const large = glyphs(14, 'Ag')[0]!;
  expect(large.boxes.width).toBe(2 * small.boxes.width);
  expect(rowsOf(large.boxes)[0]).toBe(
    [...rowsOf(small.boxes)[0]!].map((sign) => sign + sign).join(''),
  );
});
