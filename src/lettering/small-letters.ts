/** Small letters that an alphabet of capitals sets as capitals: said once for the words. */
import { type Finding, smallLetters } from '../finding/index.ts';
import type { Alphabet } from './alphabet.ts';
import type { Block } from './line.ts';

export function capitalsFindings(words: string, { placed }: Block, alphabet: Alphabet): Finding[] {
  if (alphabet.cases === 'both') return [];
  const first = placed.find(({ from, to }) => isSmall(words.slice(from, to)));
  if (!first) return [];
  const height = alphabet.capHeight;
  return [smallLetters({ from: first.from, to: first.to }, { height })];
}

const isSmall = (sign: string): boolean => sign !== sign.toUpperCase();
