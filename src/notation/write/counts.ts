/** "(24 dc)", "(68 sc, 2 ch-50 sps)", "(52 boxes)": the counts at the end of a row. */
import type { StatedCount } from '../tree.ts';
import { isMany, writeNumbers } from './numbers.ts';
import { plural } from './stitch.ts';
import { type Voice, writeName, writeStem } from './voice.ts';

/** All counts in one pair of brackets, with the space before it, or nothing. */
export function writeCounts(counts: readonly StatedCount[], voice: Voice): string {
  if (counts.length === 0) return '';
  return ` (${counts.map((count) => writeCount(count, voice)).join(', ')})`;
}

function writeCount(count: StatedCount, voice: Voice): string {
  if (count.unit === 'decrease') return change(count, voice);
  const unit = unitOf(count, voice);
  const n = writeNumbers(count.n, voice);
  const partial = count.partial ? ' each side' : '';
  return `${n}${unit === '' ? '' : ` ${unit}`}${partial}${startChain(count)}`;
}

/** "2 sc increased", "1 box added": the tree keeps no direction, so the designer's words tell. */
function change(count: StatedCount, voice: Voice): string {
  const words = writeName(voice.quote(count), voice).replace(/\s+/g, ' ').trim();
  return words === '' ? `${writeNumbers(count.n, voice)} more` : words;
}

function unitOf(count: StatedCount, voice: Voice): string {
  const many = isMany(count.n);
  const word = count.word === '' ? '' : writeName(count.word, voice);
  switch (count.unit) {
    case null:
    case 'decrease':
      return '';
    case 'stitch':
      return plural('st', many);
    case 'stem':
      return `${count.word}${writeStem(count.stem ?? '', voice)}`;
    case 'space': {
      const chains = count.chains === null ? '' : `ch-${writeNumbers(count.chains, voice)} `;
      // A loop is a word of its own: in a row without chains it may be a stitch.
      if (count.word === 'loop') return plural(`${chains}loop`, many);
      return plural(`${spaced(word)}${chains}sp`, many);
    }
    case 'chain':
      return 'ch';
    case 'box':
      return plural(`${spaced(word)}box`, many);
    case 'group':
      return plural(count.stem === null ? word : `${writeStem(count.stem, voice)} ${word}`, many);
    case 'row':
      return plural(voice.course, many);
  }
}

const spaced = (word: string): string => (word === '' ? '' : `${word} `);

function startChain(count: StatedCount): string {
  if (count.startChainIncluded === null) return '';
  return count.startChainIncluded ? ' including beg ch' : ' not counting beg ch';
}
