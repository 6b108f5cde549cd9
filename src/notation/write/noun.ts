/** What a stitch goes into: st, dc, ch, ch-2 sp, ring, corner, shell, box, marker … */
import type { Noun } from '../tree.ts';
import { writeNumbers } from './numbers.ts';
import { plural } from './stitch.ts';
import { type Voice, writeName, writeStem } from './voice.ts';

export function writeNoun(noun: Noun, many: boolean, voice: Voice): string {
  const skipped = noun.skipped ? 'skipped ' : '';
  const corner = noun.corner && noun.kind !== 'corner' ? 'corner ' : '';
  return `${skipped}${corner}${bareNoun(noun, many, voice)}`;
}

function bareNoun(noun: Noun, many: boolean, voice: Voice): string {
  switch (noun.kind) {
    case 'stem':
      return writeStem(noun.stem ?? '', voice);
    case 'chain':
      // "ch" is singular and plural at once, as "dc" is: "in next 40 ch".
      return 'ch';
    case 'space':
      return noun.chains === null
        ? plural('sp', many)
        : plural(`${ofChains(noun, voice)} sp`, many);
    case 'corner':
      return noun.chains === null
        ? plural('corner', many)
        : plural(`corner ${ofChains(noun, voice)} sp`, many);
    case 'start-chain':
      return noun.chains === null ? 'beg ch' : `beg ${ofChains(noun, voice)}`;
    case 'group':
      return plural(writeName(noun.word, voice), many);
    default:
      return plural(WORDS[noun.kind], many);
  }
}

/** A hyphen makes it the thing made: "ch 3" is an order, "ch-3" what it left (common practice). */
const ofChains = (noun: Noun, voice: Voice): string =>
  noun.chains === null ? 'ch' : `ch-${writeNumbers(noun.chains, voice)}`;

const WORDS = {
  stitch: 'st',
  gap: 'gap',
  ring: 'ring',
  picot: 'picot',
  box: 'box',
  'row-end': 'row end',
  marker: 'marker',
  join: 'join',
  center: 'centre',
} as const;
