/** Numbers in words, by the hash of their letters: no string is made to know them. */
import { hashOf } from './dictionary.ts';

const CARDINALS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen ' +
  'sixteen seventeen eighteen nineteen twenty';
const ORDINALS =
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth';

/** Behind them a number below ten may stand: "forty-four". */
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety';

/** All of them, in small letters. */
export const NUMBER_WORDS: readonly string[] = [CARDINALS, ORDINALS, TENS, 'hundred'].flatMap(
  (words) => words.split(' '),
);

const byHash = (words: string): ReadonlyMap<number, number> =>
  new Map(words.split(' ').map((word, n) => [hashOf(word), n]));

const cardinals = new Map([
  ...byHash(CARDINALS),
  ...TENS.split(' ').map((word, i): [number, number] => [hashOf(word), 10 * (i + 2)]),
  [hashOf('hundred'), 100],
]);
const ordinals = byHash(ORDINALS);

/** Which hashes, by their last bits, may be those of numbers: most words need no further look. */
const mayBe = new Uint8Array(512);
for (const hash of [...cardinals.keys(), ...ordinals.keys()]) mayBe[hash & 511] = 1;

/** Whether a word of this hash may be a number; asked at every word. */
export const mayBeNumber = (hash: number): boolean => mayBe[hash & 511] === 1;

/** "zero" to "twenty", then the tens to "hundred"; -1 for all else. */
export const cardinalOf = (hash: number): number => cardinals.get(hash) ?? -1;

/** "zeroth" to "twelfth"; -1 for all else. */
export const ordinalOf = (hash: number): number => ordinals.get(hash) ?? -1;

export const isNumberWord = (hash: number): boolean => cardinals.has(hash) || ordinals.has(hash);
