/** The box alphabets and how a sign is found in one: drawn, or a letter with its accents set on. */
import { LETTERS as FIVE } from './alphabets/five.ts';
import { BROAD_MARKS, MARKS } from './alphabets/marks.ts';
import { LETTERS as NINE } from './alphabets/nine.ts';
import { LETTERS as SEVEN } from './alphabets/seven.ts';
import { enlarged } from './boxes.ts';
import type { Glyph } from './glyph.ts';
import { withMark } from './marks.ts';
import { readSheet } from './sheet.ts';

export interface Alphabet {
  /** Boxes from the line to the top of a capital. */
  readonly capHeight: number;
  /** How many boxes wide and high one drawn box is. */
  readonly times: number;
  /** Where there are only capitals, small letters are set as capitals. */
  readonly cases: 'both' | 'capitals';
  /** Open boxes between letters and between words, if nothing else is asked (docs/sources.md). */
  readonly letterSpace: number;
  readonly wordSpace: number;
  /** Boxes a letter may be drawn nearer to its neighbour where their shapes leave room. */
  readonly mostKern: number;
  readonly letters: ReadonlyMap<string, Glyph>;
  readonly marks: ReadonlyMap<string, Glyph>;
}

/** The heights drawn, smallest first. */
export const DRAWN_HEIGHTS: readonly number[] = [5, 7, 9];

/** Boxes in height at most: more than any piece has rows, and no time is lost on a slip of the finger. */
export const MOST_HEIGHT = 120;

/**
 * The alphabet of a height, or a smaller one with each box made several wide and high; the largest
 * that divides the height is taken, as it has the finer shapes. `null` where none does.
 */
export function alphabetOf(capHeight: number): Alphabet | null {
  if (capHeight > MOST_HEIGHT) return null;
  const drawn = DRAWN_HEIGHTS.findLast((height) => capHeight % height === 0);
  if (drawn === undefined || capHeight < drawn) return null;
  return timesLarger(drawnAlphabet(drawn), capHeight / drawn);
}

function drawnAlphabet(capHeight: number): Alphabet {
  const isBroad = capHeight === 9;
  const letters = readSheet(capHeight === 5 ? FIVE : capHeight === 7 ? SEVEN : NINE, capHeight);
  return {
    capHeight,
    times: 1,
    cases: capHeight === 5 ? 'capitals' : 'both',
    letterSpace: 2,
    wordSpace: isBroad ? 5 : 4,
    mostKern: isBroad ? 3 : 2,
    letters,
    marks: readSheet(isBroad ? BROAD_MARKS : MARKS, 0),
  };
}

function timesLarger(alphabet: Alphabet, times: number): Alphabet {
  if (times === 1) return alphabet;
  const large = ({ sign, boxes, above }: Glyph): Glyph => ({
    sign,
    boxes: enlarged(boxes, times),
    above: above * times,
  });
  const all = (glyphs: ReadonlyMap<string, Glyph>): ReadonlyMap<string, Glyph> =>
    new Map([...glyphs].map(([sign, glyph]) => [sign, large(glyph)]));
  return {
    capHeight: alphabet.capHeight * times,
    times,
    cases: alphabet.cases,
    letterSpace: alphabet.letterSpace * times,
    wordSpace: alphabet.wordSpace * times,
    mostKern: alphabet.mostKern * times,
    letters: all(alphabet.letters),
    marks: all(alphabet.marks),
  };
}

/** Signs that people and word processors type for one that is drawn. */
const ALIKE: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u201a': ',',
  '\u201c': '"',
  '\u201d': '"',
  '\u2010': '-',
  '\u2011': '-',
  '\u2212': '–',
  Đ: 'Ð',
  '❤': '♥',
};

/** The glyphs of a sign: mostly one, two for "ß" among capitals, `null` where it is not drawn. */
export function glyphsOf(alphabet: Alphabet, sign: string): readonly Glyph[] | null {
  const written = alphabet.cases === 'capitals' ? sign.toUpperCase() : sign;
  const glyphs = signsOf(written).map((one) => glyphOf(alphabet, one));
  return glyphs.every((glyph) => glyph !== null) ? glyphs : null;
}

/** One sign as a reader sees it: a letter with all marks that follow it, in its shortest spelling. */
export function signsOf(words: string): string[] {
  return words.normalize('NFC').match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
}

function glyphOf(alphabet: Alphabet, sign: string): Glyph | null {
  const drawn = alphabet.letters.get(ALIKE[sign] ?? sign);
  if (drawn) return drawn;
  const [base = '', ...marks] = sign.normalize('NFD');
  const letter = marks.length === 0 ? undefined : alphabet.letters.get(undotted(base, marks));
  if (!letter) return null;
  let glyph: Glyph | null = letter;
  for (const mark of marks) glyph = glyph && withMark(alphabet, glyph, mark);
  return glyph && { ...glyph, sign };
}

/** An i loses its dot under an accent, and keeps it over a tail. */
function undotted(base: string, marks: readonly string[]): string {
  return base === 'i' && !marks.every(isBelow) ? 'ı' : base;
}

const isBelow = (mark: string): boolean => /[\u0323-\u0328]/.test(mark);
