/** Hooks: the millimetres of the shaft are the size; letters and numbers are makers' labels. */
import { length, NUMBER_SOURCE, numberOf } from '../units/index.ts';

export interface Hook {
  readonly mm: number;
  /** What the label may mean as well, where no millimetres are given; ascending, without `mm`. */
  readonly orMm: readonly number[];
  readonly words: string;
}

/** US letter or number to millimetres: what most of six shop charts and the yarn council share. */
const US_LETTERS: Readonly<Record<string, number>> = {
  B: 2.25,
  C: 2.75,
  D: 3.25,
  E: 3.5,
  F: 3.75,
  G: 4,
  H: 5,
  I: 5.5,
  J: 6,
  K: 6.5,
  L: 8,
  M: 9,
  N: 10,
  P: 11.5,
  Q: 16,
  S: 19,
};

/** Labels that charts disagree on, with the other sizes that they give. */
const ALSO: Readonly<Record<string, readonly number[]>> = {
  B: [2, 2.5],
  C: [2.5],
  G: [4.25],
  N: [9],
  P: [10, 11, 15],
  Q: [15, 15.75],
};

/** US steel hooks, a higher number being a smaller hook: the series that most points confirm. */
const US_STEEL: readonly number[] = [
  3.25, 2.75, 2.25, 2.1, 2, 1.9, 1.8, 1.65, 1.5, 1.4, 1.3, 1.1, 1, 0.85, 0.75,
];
/** The second series in print. */
const US_STEEL_ALSO: readonly number[] = [
  2.55, 2.35, 2.2, 2.1, 1.75, 1.7, 1.6, 1.5, 1.4, 1.25, 1.15, 1.05, 0.95, 0.9, 0.75,
];

const MM = new RegExp(`(?<![\\d.,/])(${NUMBER_SOURCE})\\s?-?\\s?mm\\b`, 'iu');
const LETTER =
  /\b(?:US|size|hook)?\s?([B-NPQS])(?:\s?[/-]\s?\d{1,2}(?:[.½]\d?)?|\b(?=\s*(?:$|hook|[,;(/])))/;
const STEEL = /\bsteel\b\D{0,12}(\d{1,2})\b|\b(\d{1,2})\s?(?:US\s)?steel\b/i;
const SMALLEST_MM = 0.4;
const LARGEST_MM = 40;

/** "4 mm", "G-6", "US H/8 (5 mm)", "steel 7", or a bare number of millimetres; `null`: no hook. */
export function hookFromWords(text: string): Hook | null {
  const words = text.slice(0, 200).trim();
  const metric = MM.exec(words);
  if (metric) return sized(numberOf(metric[1] ?? ''), [], words);
  if (/^\d{1,2}(?:[.,]\d{1,2})?$/.test(words)) return sized(numberOf(words), [], words);
  const steel = STEEL.exec(words);
  if (steel) {
    const no = Number(steel[1] ?? steel[2]);
    return sized(US_STEEL[no] ?? null, others([US_STEEL_ALSO[no]], US_STEEL[no]), words);
  }
  const letter = LETTER.exec(words)?.[1] ?? '';
  if (letter) return sized(US_LETTERS[letter] ?? null, ALSO[letter] ?? [], words);
  return /\bUS\s?7\b|^#?7$/i.test(words) ? sized(4.5, [], words) : null;
}

const others = (some: readonly (number | undefined)[], main: number | undefined): number[] =>
  some.filter((mm): mm is number => mm !== undefined && mm !== main);

function sized(mm: number | null, orMm: readonly number[], words: string): Hook | null {
  if (mm === null || mm < SMALLEST_MM || mm > LARGEST_MM) return null;
  return { mm: length(mm, 'mm'), orMm, words };
}

/** The usual US label of a size, "G-6"; `null` for a size that has none. */
export function usHookLabel(mm: number): string | null {
  return US_LABELS.get(mm) ?? null;
}

const US_LABELS: ReadonlyMap<number, string> = new Map([
  [2.25, 'B-1'],
  [2.75, 'C-2'],
  [3.25, 'D-3'],
  [3.5, 'E-4'],
  [3.75, 'F-5'],
  [4, 'G-6'],
  [4.5, '7'],
  [5, 'H-8'],
  [5.5, 'I-9'],
  [6, 'J-10'],
  [6.5, 'K-10½'],
  [8, 'L-11'],
  [9, 'M/N-13'],
  [10, 'N/P-15'],
  [11.5, 'P-16'],
  [16, 'Q'],
  [19, 'S-35'],
]);
