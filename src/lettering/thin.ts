/**
 * What an outline loses in boxes: strokes and gaps of less than a box, letters that fall apart,
 * counters that close. One finding a kind, at the first letter concerned, the others named.
 */
import {
  counterLost,
  type Finding,
  gapUnderBox,
  letterBroken,
  strokeUnderBox,
} from '../finding/index.ts';
import type { Span } from '../source/index.ts';
import { FINE, type FontGlyph } from './font-glyph.ts';
import type { Block } from './line.ts';
import { countersOf, regionsOf } from './shape.ts';
import { thicknessOf } from './thickness.ts';

/** Runs are measured in whole parts of a box, so one part may be wanting without a fault. */
const LEAST = FINE - 1;

/** A letter of the words with what was measured on it; thicknesses in parts of a box. */
interface Measured extends Span {
  readonly sign: string;
  readonly stroke: number;
  readonly gap: number;
  readonly isBroken: boolean;
  readonly losesCounter: boolean;
}

export function thinFindings(
  { placed }: Block,
  glyphs: ReadonlyMap<string, FontGlyph>,
  height: number,
): Finding[] {
  const measures = new Map([...glyphs].map(([sign, glyph]) => [sign, measured(glyph)]));
  const letters = placed.flatMap(({ glyph, from, to }, at): Measured[] => {
    const found = measures.get(glyph.sign);
    const isFirst = placed.findIndex((other) => other.glyph.sign === glyph.sign) === at;
    return found && isFirst ? [{ ...found, sign: glyph.sign, from, to }] : [];
  });
  return [
    ...under(letters, 'stroke', height),
    ...under(letters, 'gap', height),
    ...named(letters.filter(({ isBroken }) => isBroken)).map(([at, signs]) =>
      letterBroken(at, { letters: signs }),
    ),
    ...named(letters.filter(({ losesCounter }) => losesCounter)).map(([at, signs]) =>
      counterLost(at, { letters: signs }),
    ),
  ];
}

/** Pieces that meet at a corner count as one; that is told of the boxes themselves. */
function measured(glyph: FontGlyph): Omit<Measured, 'sign' | 'from' | 'to'> {
  const { stroke, gap } = thicknessOf(glyph.fine.boxes, FINE);
  const pieces = (boxes: FontGlyph['boxes']): number =>
    regionsOf(boxes, 'filled', 'corners').length;
  return {
    stroke: stroke ?? Number.POSITIVE_INFINITY,
    gap: gap ?? Number.POSITIVE_INFINITY,
    isBroken: pieces(glyph.boxes) !== pieces(glyph.fine.boxes),
    losesCounter: countersOf(glyph.boxes).length < countersOf(glyph.fine.boxes).length,
  };
}

function under(letters: readonly Measured[], what: 'stroke' | 'gap', height: number): Finding[] {
  const thin = letters.filter((letter) => letter[what] < LEAST);
  const least = Math.min(...thin.map((letter) => letter[what])) / FINE;
  return named(thin).map(([at, signs]) => {
    const words = { letters: signs, boxes: least.toFixed(1), enough: Math.ceil(height / least) };
    return what === 'stroke' ? strokeUnderBox(at, words) : gapUnderBox(at, words);
  });
}

/** The first of them with the names of all: none for none. */
function named(letters: readonly Measured[]): (readonly [at: Span, signs: string])[] {
  const [first] = letters;
  if (!first) return [];
  const signs = letters.slice(0, MOST_NAMED).map(({ sign }) => `"${sign}"`);
  const more = letters.length - signs.length;
  return [[first, more > 0 ? `${signs.join(', ')} and ${more} more` : signs.join(', ')]];
}

const MOST_NAMED = 6;
