/**
 * How wide words are, so that a layout can leave room. Widths are those of Source Sans 3, which the
 * command line brings along for PNG. SVG asks every viewer for these widths (`svg.ts`), whatever face it
 * takes; short words and signs of other scripts may run a tenth wider, and layouts leave that much air.
 */
import type { Text } from './drawing.ts';

/** Type size in mm from points: an inch has 72 points (as CSS and PDF count them) and 25.4 mm. */
export const points = (pt: number): number => (pt * 25.4) / 72;

/** The smallest type in any drawing: 7 pt (ours; the usual floor for print, common practice). */
export const SMALLEST_TYPE_MM: number = points(7);

/** Width in mm of a text at a size; a host that has the face at hand may give its own. */
export type Measure = (text: string, sizeMm: number, weight?: Text['weight']) => number;

/**
 * Advance widths in thousandths of the size, for U+0020 to U+007E. Read from the `hmtx` tables of
 * Source Sans 3 Regular and Bold (Adobe, SIL Open Font License), package source-sans-3 0.4.1.
 */
const REGULAR: readonly number[] = [
  200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497,
  497, 497, 497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 543, 588, 571, 615, 527,
  494, 617, 652, 263, 479, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645, 515, 786, 513,
  476, 539, 303, 350, 303, 497, 500, 542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495,
  255, 829, 547, 542, 555, 555, 347, 419, 338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
];
const BOLD: readonly number[] = [
  200, 340, 537, 528, 528, 857, 667, 300, 344, 344, 457, 528, 300, 332, 300, 339, 528, 528, 528,
  528, 528, 528, 528, 528, 528, 528, 300, 300, 528, 528, 528, 463, 902, 573, 605, 582, 635, 548,
  524, 638, 674, 301, 509, 614, 518, 762, 665, 684, 596, 684, 613, 556, 556, 665, 556, 813, 567,
  525, 541, 344, 339, 344, 528, 500, 555, 527, 573, 468, 573, 518, 341, 534, 571, 276, 278, 548,
  286, 857, 572, 555, 573, 573, 398, 443, 383, 568, 523, 776, 514, 521, 460, 344, 268, 344, 528,
];

/** Regular and bold, of the signs beyond ASCII that drawings use; read from the same tables. */
const SIGNS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['\u00a0', [200, 200]],
  ['½', [808, 846]],
  ['¼', [781, 809]],
  ['¾', [796, 818]],
  ['⅛', [804, 837]],
  ['⅜', [821, 849]],
  ['⅝', [821, 849]],
  ['⅞', [801, 829]],
  ['–', [480, 480]],
  ['—', [800, 800]],
  ['‘', [249, 300]],
  ['’', [249, 300]],
  ['“', [426, 537]],
  ['”', [426, 537]],
  ['×', [497, 528]],
  ['°', [331, 365]],
  ['…', [948, 978]],
  ['·', [249, 300]],
]);

/** Of signs without an entry; an em for signs of scripts that fill a square. */
const OTHER = 560;
const SQUARE = 1000;

/** Widths from the table. Accented letters are as wide as their base letter, near enough. */
export const measureText: Measure = (text, sizeMm, weight = 'regular') => {
  const table = weight === 'bold' ? BOLD : REGULAR;
  let thousandths = 0;
  for (const sign of text.normalize('NFD')) {
    const code = sign.codePointAt(0) ?? 0;
    if (code >= 0x300 && code <= 0x36f) continue;
    const width = table[code - 0x20] ?? SIGNS.get(sign)?.[weight === 'bold' ? 1 : 0];
    thousandths += width ?? (code >= 0x2e80 ? SQUARE : OTHER);
  }
  return (thousandths * sizeMm) / 1000;
};

/** Whether the width of every sign is known, accents aside. */
export const isMeasured = (text: string): boolean =>
  [...text.normalize('NFD')].every((sign) => {
    const code = sign.codePointAt(0) ?? 0;
    return (code >= 0x20 && code <= 0x7e) || (code >= 0x300 && code <= 0x36f) || SIGNS.has(sign);
  });

/** Breaks a text at its plain spaces (never at a no-break space), so that no line is wider, but for a single word that is. */
export function wrapText(
  text: string,
  widthMm: number,
  { sizeMm, measure = measureText }: { readonly sizeMm: number; readonly measure?: Measure },
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\n]+/).filter((one) => one !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer, sizeMm) > widthMm) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
