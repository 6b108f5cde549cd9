/** What a stitch goes into: st, dc, ch, ch-2 sp, ring, corner, shell, box, marker … */
import type { Noun } from '../tree.ts';
import { writeNumbers } from './numbers.ts';
import { plural } from './stitch.ts';
import { type Voice, writeName, writeStem } from './voice.ts';

export function writeNoun(noun: Noun, many: boolean, voice: Voice): string {
  if (isLoop(noun)) return plural('unworked loop', many);
  const skipped = noun.skipped ? 'skipped ' : '';
  const corner = noun.corner && noun.kind !== 'corner' ? 'corner ' : '';
  return `${skipped}${corner}${bareNoun(noun, many, voice)}`;
}

/** What the stitches of the other side left of a foundation chain. */
const isLoop = (noun: Noun): boolean =>
  noun.skipped && noun.kind === 'space' && noun.chains === null && noun.word === '';

function bareNoun(noun: Noun, many: boolean, voice: Voice): string {
  switch (noun.kind) {
    case 'stitch':
      return plural(noun.word === '' ? 'st' : noun.word, many);
    case 'stem':
      return `${POSTS[noun.post ?? 'none']}${writeStem(noun.stem ?? '', voice)}`;
    case 'chain':
      // "ch" is singular and plural at once, as "dc" is: "in next 40 ch".
      return noun.word === '' ? 'ch' : `${noun.word} ch`;
    case 'space':
      return space(noun, many, voice);
    case 'corner':
      return plural(noun.chains === null ? 'corner' : `corner ${ofChains(noun, voice)}`, many);
    case 'start-chain':
      return `${voice.course === 'row' ? 'turning' : 'beg'} ${ofChains(noun, voice)}`;
    case 'ring':
      return noun.word === 'magic' ? 'magic ring' : 'ring';
    case 'group':
      return plural(group(noun, voice), many);
    default:
      return plural(WORDS[noun.kind], many);
  }
}

/** "FPdc around next FPdc": what lies beneath is named as it was worked. */
const POSTS = { front: 'FP', back: 'BP', none: '' } as const;

/** "sp", "ch-2 sp", "shell sp", "V-st ch-1 sp"; "ch-3" where the designer wrote no "sp". */
function space(noun: Noun, many: boolean, voice: Voice): string {
  if (noun.word === 'ch') return ofChains(noun, voice);
  const owner = noun.word === '' ? '' : `${group(noun, voice)} `;
  const chains = noun.chains === null ? '' : `${ofChains(noun, voice)} `;
  return plural(`${owner}${chains}sp`, many);
}

/** "shell", "dc group", the name of a stitch of the designer's own. */
function group(noun: Noun, voice: Voice): string {
  const word = noun.word === 'v-st' ? 'V-st' : writeName(noun.word, voice);
  return noun.stem === null ? word : `${writeStem(noun.stem, voice)} ${word}`;
}

/** A hyphen makes it the thing made: "ch 3" is an order, "ch-3" what it left (common practice). */
const ofChains = (noun: Noun, voice: Voice): string =>
  noun.chains === null ? 'ch' : `ch-${writeNumbers(noun.chains, voice)}`;

const WORDS = {
  gap: 'sp',
  picot: 'picot',
  box: 'box',
  'row-end': 'row end',
  marker: 'marker',
  join: 'join',
  center: 'centre',
} as const;
