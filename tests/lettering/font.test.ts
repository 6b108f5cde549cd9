/** Outline fonts: the three kinds of file, true proportion, kerning, and files that are no good. */
import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import opentype from 'opentype.js';
import { describe, expect, test } from 'vitest';
import { type LetteringOptions, letterWords, type OutlineFont, openFont } from '../../src/index.ts';
import { fontBytes } from '../finding/command-example.ts';
import { SEED } from '../laws/seed.ts';

/** A font whose letters are rectangles on a grid of 100 units: 1 em is 10 of these, an H is 7 high. */
function blockFont(): Uint8Array {
  const glyph = (sign: string, wide: number, rectangles: readonly (readonly number[])[]) => {
    const path = new opentype.Path();
    for (const [x = 0, y = 0, w = 0, h = 0] of rectangles) {
      path.moveTo(x * 100, y * 100);
      path.lineTo(x * 100, (y + h) * 100);
      path.lineTo((x + w) * 100, (y + h) * 100);
      path.lineTo((x + w) * 100, y * 100);
      path.close();
    }
    const unicode = sign.codePointAt(0) ?? 0;
    return new opentype.Glyph({ name: `g${unicode}`, unicode, advanceWidth: wide * 100, path });
  };
  const font = new opentype.Font({
    familyName: 'Blocks',
    styleName: 'Regular',
    unitsPerEm: 1000,
    ascender: 800,
    descender: -200,
    glyphs: [
      new opentype.Glyph({ name: '.notdef', advanceWidth: 500, path: new opentype.Path() }),
      glyph(' ', 3, []),
      glyph('H', 6, [
        [0, 0, 1, 7],
        [1, 3, 3, 1],
        [4, 0, 1, 7],
      ]),
      glyph('L', 5, [
        [0, 0, 1, 7],
        [1, 0, 3, 1],
      ]),
      // Its stem stands half a box off the grid.
      glyph('i', 3, [[0.5, 0, 1, 5]]),
    ],
  });
  return new Uint8Array(font.toArrayBuffer());
}

/** The same font in the container of WOFF 1.0 (W3C Recommendation, 2012): tables deflated one by one. */
function asWoff(bytes: Uint8Array): Uint8Array {
  const sfnt = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = sfnt.getUint16(4);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 12 + 16 * i;
    const [offset, length] = [sfnt.getUint32(at + 8), sfnt.getUint32(at + 12)];
    const data = deflateSync(bytes.subarray(offset, offset + length));
    const stored = data.length < length ? data : bytes.subarray(offset, offset + length);
    return { tag: sfnt.getUint32(at), sum: sfnt.getUint32(at + 4), length, stored };
  });
  const padded = (n: number): number => (n + 3) & ~3;
  const head = 44 + 20 * count;
  const size = tables.reduce((sum, { stored }) => sum + padded(stored.length), head);
  const woff = new Uint8Array(size);
  const view = new DataView(woff.buffer);
  view.setUint32(0, 0x774f4646);
  view.setUint32(4, sfnt.getUint32(0));
  view.setUint32(8, size);
  view.setUint16(12, count);
  view.setUint32(16, bytes.length);
  let offset = head;
  for (const [i, { tag, sum, length, stored }] of tables.entries()) {
    [tag, offset, stored.length, length, sum].forEach((value, at) => {
      view.setUint32(44 + 20 * i + 4 * at, value);
    });
    woff.set(stored, offset);
    offset += padded(stored.length);
  }
  return woff;
}

const opened = (bytes: Uint8Array): OutlineFont => {
  const { value, findings } = openFont(bytes);
  expect(findings).toEqual([]);
  return value!;
};

function picture(words: string, options: LetteringOptions): string[] {
  const { value } = letterWords(words, options);
  return (value?.grid.rows ?? []).map((row) =>
    row.map((cell) => (cell === 'filled' ? '#' : '.')).join(''),
  );
}

describe('a font of rectangles, OTF', () => {
  const font = opened(blockFont());

  test('comes out as it is drawn, without a box in doubt', () => {
    const { value, findings } = letterWords('HL', { font });
    expect(findings).toEqual([]);
    expect(picture('HL', { font })).toEqual([
      '#...#.#...',
      '#...#.#...',
      '#...#.#...',
      '#####.#...',
      '#...#.#...',
      '#...#.#...',
      '#...#.####',
    ]);
    expect([...new Set(value?.coverage?.shares)].sort()).toEqual([0, 1]);
  });

  test('a stem off the grid is moved onto it', () => {
    expect(picture('i', { font })).toEqual(['#', '#', '#', '#', '#']);
  });

  test.each([
    [2, 3],
    [0.5, 10],
  ])('boxes %d times as wide as high make it %i boxes wide', (boxAspect, wide) => {
    const rows = picture('H', { font, boxAspect });
    expect([rows[0]?.length, rows.length]).toEqual([wide, 7]);
  });

  test('the height is that of its capitals', () => {
    expect(picture('H', { font, height: 14 })).toHaveLength(14);
  });

  test('its blank, or the word space asked for, stands between words', () => {
    expect(picture('H H', { font })[0]).toBe('#...#....#...#');
    expect(picture('H H', { font, wordSpace: 2 })[0]).toBe('#...#..#...#');
  });

  test('letters it lacks are named, and stand where the words have them', () => {
    const { findings } = letterWords('HXL', { font });
    expect(findings.map(({ code, from, to }) => [code, from, to])).toEqual([
      ['letter-missing', 1, 2],
    ]);
  });
});

describe('the kinds of file', () => {
  const ttf = fontBytes('sans.ttf');

  test('WOFF gives the same letters as the TTF in it', () => {
    const options = { height: 12 };
    const woff = picture('Grüße', { ...options, font: opened(asWoff(ttf)) });
    expect(woff).toEqual(picture('Grüße', { ...options, font: opened(ttf) }));
  });

  test('kerning is the font’s own: AV stands closer than HH', () => {
    const font = opened(ttf);
    const [a, v, h] = [...'AVH'].map((sign) => font.outlineOf(sign)!);
    expect(font.kerning(a!, v!)).toBeLessThan(0);
    expect(font.kerning(h!, h!)).toBe(0);
    const { value } = letterWords('AV', { font, height: 20 });
    const [first, second] = value!.letters;
    expect(second!.column).toBeLessThanOrEqual(first!.column + first!.width);
  });

  test.each([
    ['nothing', new Uint8Array(), 'empty'],
    ['a text', new TextEncoder().encode('Rnd 1: 6 sc'), 'no TTF, OTF or WOFF'],
    ['a WOFF2', new TextEncoder().encode('wOF2....'), 'WOFF2'],
    ['a collection', new TextEncoder().encode('ttcf....'), 'collection'],
    ['a beginning', ttf.slice(0, 4000), 'damaged'],
  ])('%s is refused with a reason', (_, bytes, why) => {
    const { value, findings } = openFont(bytes);
    expect(value).toBeNull();
    expect(findings[0]?.code).toBe('font-unusable');
    expect(findings[0]?.message).toContain(why);
  });

  test('no damage throws or hangs', () => {
    const small = blockFont();
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(small.length - 1), fc.nat(255)), { maxLength: 12 }),
        (changes) => {
          const bytes = small.slice();
          for (const [at, value] of changes) bytes[at] = value;
          const { value: font } = openFont(bytes);
          if (font) letterWords('HiL Å', { font });
        },
      ),
      { seed: SEED, numRuns: 150 },
    );
  });
});
