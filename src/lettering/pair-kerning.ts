/**
 * Pair kerning of a TTF or OTF, read from its GPOS table (OpenType specification 1.9, "GPOS", and its
 * common table formats). The font package reads these tables too, but not where they are wrapped as
 * extensions, as larger fonts have them; there every pair would stand unkerned.
 */

/** What a pair of glyphs adds to the first one's advance, in the font's units. */
export type PairKerning = (left: number, right: number) => number;

/** `null` where the file has no such table in the open, as in a WOFF, whose tables are packed. */
export function pairKerningOf(bytes: Uint8Array): PairKerning | null {
  const file = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const gpos = tableIn(file, 'GPOS');
  if (gpos === null) return null;
  const lookups = kernLookups(gpos).map((index) => pairTables(gpos, index));
  return (left, right) =>
    lookups.reduce((sum, tables) => sum + firstThatApplies(tables, left, right), 0);
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));

function tableIn(file: DataView, tag: string): DataView | null {
  if (tagAt(file, 0) === 'wOFF') return null;
  const count = file.getUint16(4);
  for (let at = 12; at < 12 + 16 * count; at += 16) {
    if (tagAt(file, at) === tag) return from(file, file.getUint32(at + 8));
  }
  return null;
}

/** The rest of a table, its offsets counted from there. */
const from = (view: DataView, at: number): DataView =>
  new DataView(view.buffer, view.byteOffset + at, view.byteLength - at);

/** A list of 16-bit numbers behind its count. */
function numbersAt(view: DataView, at: number): number[] {
  return Array.from({ length: view.getUint16(at) }, (_, i) => view.getUint16(at + 2 + 2 * i));
}

/** Lookups of the feature "kern" in Latin script, else in the default one. */
function kernLookups(gpos: DataView): number[] {
  const features = from(gpos, gpos.getUint16(6));
  const indices = featuresOfScript(from(gpos, gpos.getUint16(4)));
  const lookups = indices.flatMap((index) => {
    const record = 2 + 6 * index;
    if (tagAt(features, record) !== 'kern') return [];
    return numbersAt(features, features.getUint16(record + 4) + 2);
  });
  return [...new Set(lookups)].sort((a, b) => a - b);
}

function featuresOfScript(scripts: DataView): number[] {
  const records = Array.from({ length: scripts.getUint16(0) }, (_, i) => 2 + 6 * i);
  const named = (tag: string) => records.find((at) => tagAt(scripts, at) === tag);
  const record = named('latn') ?? named('DFLT') ?? records[0];
  if (record === undefined) return [];
  const script = from(scripts, scripts.getUint16(record + 4));
  const language = script.getUint16(0);
  return language === 0 ? [] : numbersAt(script, language + 4);
}

/** The pair tables of a lookup (type 2), those wrapped as extensions (type 9) unwrapped. */
function pairTables(gpos: DataView, index: number): DataView[] {
  const list = from(gpos, gpos.getUint16(8));
  const lookup = from(list, list.getUint16(2 + 2 * index));
  const type = lookup.getUint16(0);
  return numbersAt(lookup, 4).flatMap((offset) => {
    const table = from(lookup, offset);
    if (type === 2) return [table];
    return type === 9 && table.getUint16(2) === 2 ? [from(table, table.getUint32(4))] : [];
  });
}

/** Of the tables of one lookup only the first that knows the pair is used. */
function firstThatApplies(tables: readonly DataView[], left: number, right: number): number {
  for (const table of tables) {
    const index = coverageIndex(from(table, table.getUint16(2)), left);
    if (index === null) continue;
    const value =
      table.getUint16(0) === 1 ? inPairs(table, index, right) : inClasses(table, left, right);
    if (value !== null) return value;
  }
  return 0;
}

/** Value records hold a number for each bit of their format; the advance across is bit 2. */
const ADVANCE = 4;
const countBits = (format: number): number => format.toString(2).replaceAll('0', '').length;

function advanceAt(table: DataView, at: number, format: number): number {
  if ((format & ADVANCE) === 0) return 0;
  return table.getInt16(at + 2 * countBits(format & (ADVANCE - 1)));
}

function inPairs(table: DataView, index: number, right: number): number | null {
  const [format, other] = [table.getUint16(4), table.getUint16(6)];
  const set = from(table, table.getUint16(10 + 2 * index));
  const size = 2 + 2 * (countBits(format) + countBits(other));
  // Sorted by the second glyph.
  let [low, high] = [0, set.getUint16(0) - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const at = 2 + size * middle;
    const glyph = set.getUint16(at);
    if (glyph === right) return advanceAt(set, at + 2, format);
    if (glyph < right) low = middle + 1;
    else high = middle - 1;
  }
  return null;
}

function inClasses(table: DataView, left: number, right: number): number {
  const [format, other] = [table.getUint16(4), table.getUint16(6)];
  const first = classOf(from(table, table.getUint16(8)), left);
  const second = classOf(from(table, table.getUint16(10)), right);
  const size = 2 * (countBits(format) + countBits(other));
  const at = 16 + size * (first * table.getUint16(14) + second);
  return first < table.getUint16(12) ? advanceAt(table, at, format) : 0;
}

function coverageIndex(coverage: DataView, glyph: number): number | null {
  if (coverage.getUint16(0) === 1) {
    const index = numbersAt(coverage, 2).indexOf(glyph);
    return index < 0 ? null : index;
  }
  const range = rangeOf(coverage, 2, glyph);
  return range && range.value + glyph - range.first;
}

/** Class 0 holds all glyphs that are not named. */
function classOf(classes: DataView, glyph: number): number {
  if (classes.getUint16(0) === 1) {
    return numbersAt(classes, 4)[glyph - classes.getUint16(2)] ?? 0;
  }
  return rangeOf(classes, 2, glyph)?.value ?? 0;
}

/** Ranges of glyphs, first and last, each with a number. */
function rangeOf(
  view: DataView,
  at: number,
  glyph: number,
): { readonly first: number; readonly value: number } | null {
  const count = view.getUint16(at);
  for (let i = 0; i < count; i++) {
    const record = at + 2 + 6 * i;
    const [first, last] = [view.getUint16(record), view.getUint16(record + 2)];
    if (glyph >= first && glyph <= last) return { first, value: view.getUint16(record + 4) };
  }
  return null;
}
