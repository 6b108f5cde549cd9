/** The name of a stitch: sc, FPdc, sc2tog, fsc, inc, 3-dc cl, V-st, a stitch of the designer's own. */
import type { Loop, StitchTerm } from '../tree.ts';
import { type Voice, writeName, writeStem } from './voice.ts';

/** The name; `many` asks for the plural of the names that have one ("2 shells", but "2 sc"). */
export function writeStitch(stitch: StitchTerm, many: boolean, voice: Voice): string {
  const manner = stitch.manner.map((word) => `${word} `).join('');
  const loop = stitch.loop === null ? '' : `${LOOPS[stitch.loop]} `;
  return `${manner}${loop}${bareName(stitch, many, voice)}`;
}

const LOOPS: Readonly<Record<Loop, string>> = {
  back: 'BLO',
  front: 'FLO',
  third: '3rd loop',
  both: 'both loops',
};

function bareName(stitch: StitchTerm, many: boolean, voice: Voice): string {
  const stem = plainName(stitch, voice);
  switch (stitch.shape) {
    case 'one':
      return many && stem === 'sl st' ? 'sl sts' : stem;
    case 'increase':
      return `${stem === '' ? '' : `${stem} `}${shaping('inc', stitch.legs)}`;
    case 'together':
      return stem === '' ? shaping('dec', stitch.legs) : `${stem}${stitch.legs ?? 2}tog`;
    case 'special':
      return plural(writeName(stitch.special ?? '', voice), many);
    default:
      return plural(`${ofLegs(stitch, stem)}${GROUPS[stitch.shape]}`, many);
  }
}

/** "double" is the trade's word for three in one and three into one; more have none. */
function shaping(word: 'inc' | 'dec', legs: number | null): string {
  if (legs === null) return word;
  return legs === 3 ? `double ${word}` : `${legs}-st ${word}`;
}

const GROUPS = {
  cluster: 'cl',
  bobble: 'bobble',
  puff: 'puff st',
  popcorn: 'popcorn',
  shell: 'shell',
  v: 'V-st',
  picot: 'picot',
} as const;

/** "3-dc ", "5-", or nothing: what stands before the word for the group. */
function ofLegs(stitch: StitchTerm, stem: string): string {
  if (stitch.shape === 'picot') return stitch.legs === null ? '' : `ch-${stitch.legs} `;
  if (stitch.legs === null) return stem === '' ? '' : `${stem} `;
  return stem === '' ? `${stitch.legs}-st ` : `${stitch.legs}-${stem} `;
}

/** Stem with what is said of it: FPdc, esc, fdc; '' where the stitch is not named. */
function plainName(stitch: StitchTerm, voice: Voice): string {
  if (stitch.stem === null) return '';
  const stem = extended(stitch, voice);
  // Long names are not glued: nobody writes "FPquintr", and no reader looks for it.
  const gap = SHORT.test(stem) ? '' : ' ';
  const post = stitch.post === null ? '' : `${{ front: 'FP', back: 'BP' }[stitch.post]}${gap}`;
  const foundation = gap === '' ? 'f' : 'foundation ';
  return `${post}${stitch.foundation ? foundation : ''}${stem}`;
}

const SHORT = /^(?:e?(?:sc|h?dc|h?tr)|d?tr|trtr)$/;

/** The reader may keep the "e" in the word or beside it; both are written "esc". */
function extended(stitch: StitchTerm, voice: Voice): string {
  const stem = stitch.stem ?? '';
  return writeStem(stitch.extended && !stem.startsWith('e') ? `e${stem}` : stem, voice);
}

/** English plurals of the trade's group words: "cls" is the plural of cl; "sh" stands for both. */
export function plural(word: string, many: boolean): string {
  if (!many || word.toLowerCase() === 'sh') return word;
  return /(?:s|x|ch|sh)$/i.test(word) ? `${word}es` : `${word}s`;
}
