/**
 * Opens an outline font (TTF, OTF or WOFF) from its bytes. What the font package throws at broken
 * files becomes a finding; the span of that is the whole of the words.
 */
import * as opentype from 'opentype.js';
import { type Finding, fontUnusable, type Outcome } from '../finding/index.ts';
import type { Stroke } from './outline.ts';
import { type PairKerning, pairKerningOf } from './pair-kerning.ts';

/** A font as lettering needs it; lengths are in the font's own units, heights grow downwards. */
export interface OutlineFont {
  readonly capHeight: number;
  /** `null` where the font has no such letter. */
  readonly outlineOf: (sign: string) => FontOutline | null;
  /** What the font adds between two letters, mostly 0 or less. */
  readonly kerning: (left: FontOutline, right: FontOutline) => number;
}

export interface FontOutline {
  readonly strokes: readonly Stroke[];
  /** From the start of this letter to the start of the next. */
  readonly advance: number;
  /** The font's own number of the letter. */
  readonly index: number;
}

/** The font, or `null` with one finding that says what is wrong with the file. */
export function openFont(bytes: Uint8Array): Outcome<OutlineFont | null> {
  const fault = faultOfStart(bytes);
  if (fault !== null) return { value: null, findings: [unusable(fault)] };
  try {
    const font = parse(bytes.slice().buffer);
    const capHeight = capHeightOf(font);
    if (capHeight === null) return { value: null, findings: [unusable(NO_OUTLINES)] };
    const pairs = orElse(null, () => pairKerningOf(bytes));
    return { value: boxFont(font, capHeight, pairs), findings: [] };
  } catch {
    return { value: null, findings: [unusable('it is damaged or cut off')] };
  }
}

const NO_OUTLINES =
  'it has no outlines of plain letters (a font of pictures, of bitmaps, or for other scripts)';

function unusable(why: string): Finding {
  return fontUnusable({ from: 0, to: 0 }, { why });
}

/**
 * Node hands the package over as one default export, bundlers by the names of its members; both are
 * right for the files it ships.
 */
function parse(buffer: ArrayBuffer): opentype.Font {
  const { default: whole } = opentype as unknown as { readonly default?: typeof opentype };
  return (whole ?? opentype).parse(buffer);
}

/** First bytes as the OpenType and WOFF specifications have them. */
function faultOfStart(bytes: Uint8Array): string | null {
  const start = String.fromCharCode(...bytes.subarray(0, 4));
  if (['\u0000\u0001\u0000\u0000', 'OTTO', 'true', 'wOFF'].includes(start)) return null;
  if (start === 'wOF2') return 'it is a WOFF2; TTF, OTF or WOFF of the same font will do';
  if (start === 'ttcf') return 'it is a collection of fonts; a file with one font will do';
  if (bytes.length === 0) return 'the file is empty';
  return 'this is no TTF, OTF or WOFF file';
}

/** Height of the H; else what the font says of itself; `null` where it draws nothing. */
function capHeightOf(font: opentype.Font): number | null {
  const top = (sign: string): number => {
    const index = font.charToGlyphIndex(sign);
    return index > 0 ? (font.glyphs.get(index).getBoundingBox().y2 ?? 0) : 0;
  };
  const said = Number((font.tables.os2 as { sCapHeight?: unknown } | undefined)?.sCapHeight ?? 0);
  const height = [top('H'), top('E'), said, top('x') * 1.4].find((each) => each > 0);
  return height !== undefined && Number.isFinite(height) ? height : null;
}

/** Letters are read when they are asked for, so a damaged one shows only then; it counts as missing. */
function boxFont(font: opentype.Font, capHeight: number, pairs: PairKerning | null): OutlineFont {
  return {
    capHeight,
    outlineOf: (sign) => orElse(null, () => outlineIn(font, sign)),
    kerning: (left, right) =>
      orElse(0, () => {
        if (pairs) return pairs(left.index, right.index);
        const [a, b] = [font.glyphs.get(left.index), font.glyphs.get(right.index)];
        const value = font.getKerningValue(a, b);
        return Number.isFinite(value) ? value : 0;
      }),
  };
}

function orElse<T>(otherwise: T, read: () => T): T {
  try {
    return read();
  } catch {
    return otherwise;
  }
}

function outlineIn(font: opentype.Font, sign: string): FontOutline | null {
  const index = font.charToGlyphIndex(sign);
  if (index <= 0 || [...sign].length > 1) return null;
  const glyph = font.glyphs.get(index);
  // The package draws with heights growing downwards; at unitsPerEm its scale is 1.
  const strokes = glyph.getPath(0, 0, font.unitsPerEm).commands as readonly Stroke[];
  const advance = glyph.advanceWidth ?? 0;
  return isSound(strokes, advance, font.unitsPerEm) ? { strokes, advance, index } : null;
}

/** More orders than any letter has, or points far outside of the letter: a damaged or hostile file. */
const MOST_STROKES = 4000;
const MOST_EMS = 20;

function isSound(strokes: readonly Stroke[], advance: number, em: number): boolean {
  const isNear = (n: number): boolean => Math.abs(n) <= MOST_EMS * em;
  const numbers = (stroke: Stroke): number[] =>
    Object.values(stroke).filter((value): value is number => typeof value === 'number');
  if (strokes.length > MOST_STROKES || !isNear(advance)) return false;
  return strokes.every((stroke) => numbers(stroke).every(isNear));
}
