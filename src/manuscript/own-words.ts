/**
 * Short forms of the designer's own, "vm = single crochet" in her list of abbreviations: where the rows have
 * them, the trade's short form is read. It is no longer than hers, so that all spans hold.
 */
import { isKnownWord } from '../notation/index.ts';
import { type Needs, needs } from './trigrams.ts';

/** What a list explains, in the trade's short form; from memory of such lists. */
const TRADE: readonly (readonly [string, string])[] = [
  [
    'sc',
    'columns? without (?:an? )?(?:nakida?|yarn(?: over)?|crochet)|single crochets?(?: stitch(?:es)?)?',
  ],
  ['hdc', 'half double crochets?(?: stitch(?:es)?)?|half double'],
  [
    'dc',
    'columns? with (?:an? )?(?:nakida?|yarn(?: over)?|crochet)|double crochets?(?: stitch(?:es)?)?',
  ],
  ['tr', '(?:treble|triple)(?: crochets?)?(?: stitch(?:es)?)?'],
  ['htr', 'half treble(?: crochets?)?'],
  ['ss', 'connecting (?:post|column|loop|stitch)|slip ?stitch(?:es)?'],
  ['ch', 'chains?(?: stitch(?:es)?)?|air loops?'],
  ['mr', '(?:magic|adjustable) (?:ring|circle|loop)|amigurumi ring|ring amigurumi'],
  [
    'inc',
    'increas(?:e|es|ing)|(?:two|2) (?:sc|single crochets?) in(?:to)? (?:the )?(?:same|one) st(?:itch)?',
  ],
  ['dec', '(?:invisible )?decreas(?:e|es|ing)'],
  ['st', 'stitch(?:es)?'],
  ['rnd', 'rounds?'],
  ['row', 'rows?'],
  ['rep', 'repeat'],
  ['sk', 'skip'],
  ['blo', 'back loops? only'],
  ['flo', 'front loops? only'],
];

const LIST = /\b(?:abbreviat|abbrev\b|abbr\b|legend|glossary|conventions|terms used|designations)/i;

/** What every such list has in it. */
export const LIST_OF_WORDS: Needs = needs(
  'abbr',
  'legend',
  'glossary',
  'conventions',
  'terms used',
  'designations',
);

/** So far below the word that names it a list is looked for. */
const LONGEST = 1500;

const ENTRY = new RegExp(
  String.raw`(?:^|[\n,;:•]|[-–—•*] )[ \t]*(?:[-–—•*][ \t]*)?([a-z]{1,8})[ \t]*(?:=|:|[-–—]|\()[ \t]*` +
    `(?:an? )?(?:${TRADE.map(([, words]) => `(${words})`).join('|')})(?=[ \\t]*(?:[.,;()\\n\\r•]|$))`,
  'gi',
);

/** The text with words of a list read so; the same text where none has one. */
export function withOwnWords(text: string): string {
  const list = LIST.exec(text);
  if (!list) return text;
  const from = list.index;
  const words = wordsOf(text.slice(from, from + LONGEST));
  if (words.size === 0) return text;
  const found = new RegExp(
    String.raw`(?<![\p{L}])(${[...words.keys()].join('|')})(?![\p{L}])`,
    'giu',
  );
  return (
    text.slice(0, from) +
    text.slice(from).replace(found, (word) => {
      const short = words.get(word.length === 1 ? word : word.toLowerCase()) ?? word;
      return short.padEnd(word.length);
    })
  );
}

/** Single capitals that charts in letters have for a stitch. */
const LETTERS: Readonly<Record<string, string>> = { sc: 'X', inc: 'V', dec: 'A' };

/** Her short forms, in small letters, to the trade's. */
function wordsOf(list: string): ReadonlyMap<string, string> {
  const words = new Map<string, string>();
  ENTRY.lastIndex = 0;
  for (let entry = ENTRY.exec(list); entry; entry = ENTRY.exec(list)) {
    const own = (entry[1] ?? '').toLowerCase();
    const short = TRADE[entry.findIndex((part, i) => i > 1 && part !== undefined) - 2]?.[0];
    const letter = own.length === 1 ? LETTERS[short ?? ''] : undefined;
    if (letter && /[A-Z]/.test(entry[1] ?? '')) words.set(entry[1] ?? '', letter);
    else if (short && short.length <= own.length && !isKnownWord(own)) words.set(own, short);
    // The sign before the next entry is the end of this one.
    ENTRY.lastIndex = entry.index + entry[0].length;
  }
  return words;
}
