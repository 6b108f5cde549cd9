/** Sets an accent on a letter: in the middle over it, hung in the middle below, or at its foot. */
import type { Alphabet } from './alphabet.ts';
import { isFilled, openBoxes, stamp } from './boxes.ts';
import type { Glyph } from './glyph.ts';

/** Open rows between a letter and the mark over it, before enlarging. */
const GAP = 1;
/** Letters up to this width, in their own boxes, take the narrow form of a mark. */
const NARROW = 3;
/** The marks that hang on the letter: cedilla in the middle, ogonek at its last foot. */
const CEDILLA = '\u0327';
const OGONEK = '\u0328';
const COMMA = '\u0326';

/** The letter with one more mark; `null` for a mark that is not drawn. */
export function withMark(alphabet: Alphabet, glyph: Glyph, mark: string): Glyph | null {
  const drawn = formOf(alphabet, glyph, mark);
  if (!drawn) return null;
  const { times } = alphabet;
  if (mark === OGONEK) return joined(glyph, drawn, lastFoot(glyph), glyph.above);
  const x = Math.floor((glyph.boxes.width - drawn.boxes.width) / 2);
  if (mark === CEDILLA || mark === COMMA) {
    return joined(glyph, drawn, x, glyph.above + (mark === COMMA ? GAP * times : 0));
  }
  return joined(glyph, drawn, x, -GAP * times - drawn.boxes.height);
}

function formOf({ marks, times }: Alphabet, glyph: Glyph, mark: string): Glyph | undefined {
  const code = mark.codePointAt(0)?.toString(16).toUpperCase().padStart(4, '0').slice(1);
  const width = glyph.boxes.width / times;
  const narrow = width <= NARROW && width % 2 === 1 ? marks.get(`${code}n`) : undefined;
  const own = marks.get(`${code}${width % 2 === 0 ? 'e' : 'o'}`);
  return narrow ?? own ?? marks.get(`${code}o`) ?? marks.get(`${code}e`);
}

/** The column in which the last filled stretch of the bottom row ends. */
function lastFoot({ boxes, above }: Glyph): number {
  const y = Math.min(above, boxes.height) - 1;
  for (let x = boxes.width - 1; x > 0; x--) if (isFilled(boxes, x, y)) return x;
  return 0;
}

/** Both in one field, the mark's corner at `x`, `y` counted from the letter's; the field grows to hold it. */
function joined(glyph: Glyph, mark: Glyph, x: number, y: number): Glyph {
  const { boxes } = glyph;
  const left = Math.max(0, -x);
  const up = Math.max(0, -y);
  const width = Math.max(left + boxes.width, left + x + mark.boxes.width);
  const height = Math.max(up + boxes.height, up + y + mark.boxes.height);
  const all = openBoxes(width, height);
  stamp(all, boxes, left, up);
  stamp(all, mark.boxes, left + x, up + y);
  return { sign: glyph.sign, boxes: all, above: glyph.above + up };
}
