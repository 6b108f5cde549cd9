/**
 * Sizes that the pattern states: "Finished size: 17 cm across and 12 cm high", "finished: 100 x 123
 * cm", "Finished circumference 43 (47, 51.5, 55.5) cm". Only where it says that this is the finished
 * size; what it is made to fit is another matter.
 */
import type { Manuscript } from '../manuscript/index.ts';
import type { Span } from '../source/index.ts';
import { length, NUMBER_SOURCE, numberOf } from '../units/index.ts';

export type Way = 'across' | 'around' | 'wide' | 'high';

export interface StatedSize extends Span {
  readonly way: Way;
  /** A length for each size of the pattern; one alone holds for all. */
  readonly mm: readonly number[];
  /** "20.5 in wide", as written. */
  readonly words: string;
}

const N = `(?:${NUMBER_SOURCE})`;
const LIST = `(${N})((?:\\s?\\((?:\\s?${N}\\s?[,;]?){1,15}\\))?)`;
const UNIT = `(cm|mm|inches|inch|in\\b|"|″|”)`;
const WAYS: readonly (readonly [RegExp, Way])[] = [
  [/^(?:across|(?:in )?diam(?:eter)?|square)\b/i, 'across'],
  [/^(?:around|round|(?:in )?circumference)\b/i, 'around'],
  [/^(?:wide|width|in width)\b/i, 'wide'],
  [/^(?:high|tall|deep|long|height|depth|length|in (?:height|length))\b/i, 'high'],
];
/** "Finished" where it opens a line or an entry; the line is looked at as far as a sentence goes. */
const OPENING = /^[\s>*•#_-]{0,8}finished\b[^\n]{0,300}/gim;
const FITS = /\bto fit\b/i;

export function statedSizes({ head, text }: Pick<Manuscript, 'head' | 'text'>): StatedSize[] {
  const found: StatedSize[] = [];
  const until = Math.min(text.length, (head.span?.to ?? 0) + 20_000);
  for (const line of text.slice(0, until).matchAll(OPENING)) {
    if (!FITS.test(line[0])) found.push(...sizesIn(line[0], line.index));
  }
  const [after] =
    text.slice(0, until).match(/\bFinished (?:circumference|width|length|height)[^\n]{0,200}/) ??
    [];
  if (after && found.length === 0) found.push(...sizesIn(after, text.indexOf(after)));
  return found;
}

const SIZE = new RegExp(`(?<![\\d.,/])${LIST}\\s?${UNIT}\\s{0,2}([a-z]+(?: [a-z]+)?)?`, 'giu');
const PAIR = new RegExp(`(?<![\\d.,/])(${N})\\s?${UNIT}?\\s?(?:x|×|by)\\s?(${N})\\s?${UNIT}`, 'iu');

function sizesIn(line: string, from: number): StatedSize[] {
  const pair = PAIR.exec(line);
  if (pair) return pairOf(pair, from + pair.index);
  return [...line.matchAll(SIZE)].flatMap((found) => {
    const [words, first = '', others = '', unit = '', after = ''] = found;
    const before =
      line
        .slice(0, found.index)
        .split(/[,;.(]/)
        .at(-1) ?? '';
    const way =
      wayOf(after) ??
      wayOf(
        before.replace(/^.*?\b(?=circumference|width|height|length|diameter|depth)/i, '').trim(),
      );
    if (!way) return [];
    // "20.5 in around and": what follows the way is no part of the size.
    const isAfter = wayOf(after) !== null;
    const said = words.slice(0, words.length - after.length + (isAfter ? wayLength(after) : 0));
    const numbers = [first, ...(others.match(new RegExp(N, 'gu')) ?? [])];
    const at = from + found.index;
    return [
      {
        way,
        mm: numbers.map((n) => mmOf(n, unit)),
        words: said.trimEnd(),
        from: at,
        to: at + said.trimEnd().length,
      },
    ];
  });
}

const wayLength = (words: string): number =>
  WAYS.flatMap(([pattern]) => pattern.exec(words)?.[0].length ?? [])[0] ?? 0;

const wayOf = (words: string): Way | null =>
  WAYS.find(([pattern]) => pattern.test(words))?.[1] ?? null;

function pairOf(found: RegExpExecArray, from: number): StatedSize[] {
  const [words, wide = '', unit, high = '', last = ''] = found;
  const span = { from, to: from + words.length };
  return [
    { way: 'wide', mm: [mmOf(wide, unit ?? last)], words, ...span },
    { way: 'high', mm: [mmOf(high, last)], words, ...span },
  ];
}

function mmOf(n: string, unit: string): number {
  const value = numberOf(n) ?? 0;
  if (unit === 'mm') return value;
  return length(value, unit === 'cm' ? 'cm' : 'in');
}
