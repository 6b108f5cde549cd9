/**
 * Kerning of a font against a reference shaper: resvg, which lays text out by the OpenType tables.
 * At a size of one em in units, the right edge of a pair tells where its second letter stands.
 */
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { openFont } from '../../src/lettering/font.ts';
import { boundsOf, contoursOf } from '../../src/lettering/outline.ts';
import { fontBytes } from '../finding/command-example.ts';

const file = createRequire(import.meta.url).resolve(
  '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
);

function rightEdge(words: string): number {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="4000" height="1200"><text x="0" y="1000" font-size="1000">${words}</text></svg>`;
  const font = { fontFiles: [file], loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' };
  const box = new Resvg(svg, { font }).getBBox();
  return (box?.x ?? 0) + (box?.width ?? 0);
}

describe('kerning of Source Sans 3, which is wrapped as an extension', () => {
  const { value: font } = openFont(fontBytes('sans.ttf'));
  const pairs = ['AV', 'VA', 'To', 'LT', 'Ty', 'Pa', 'HH', 'no', 'Wa', 'Yo', 'r.', 'Łó', 'fi'];
  test.each(pairs)('%s', (pair) => {
    const [left, right] = [...pair].map((sign) => font!.outlineOf(sign)!);
    const edge = boundsOf(contoursOf(right!.strokes, (point) => point)).right;
    const ours = left!.advance + font!.kerning(left!, right!) + edge;
    expect(Math.abs(ours - rightEdge(pair))).toBeLessThan(1);
  });

  test('is not nothing', () => {
    const [a, v] = [...'AV'].map((sign) => font!.outlineOf(sign)!);
    expect(font!.kerning(a!, v!)).toBeLessThan(0);
  });
});
