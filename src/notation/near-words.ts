/** The word of the trade that was meant by one with a slip in it: one letter off, or glued. */
import { isKnownWord, senseOfWord } from './dictionary.ts';
import {
  EVERYDAY_WORDS,
  LONG_WORDS,
  PIECES,
  PLACE_WORDS,
  REAL_WORDS,
  SHORT_WORDS,
  WHOLE_WORDS,
} from './slip-words.ts';

const listed = (words: string): readonly string[] => words.trim().split(/\s+/);

/** Words that may be meant by one of so many letters: a slip is of one letter more or less. */
const longWordsFor: readonly (readonly string[])[] = (() => {
  const all = listed(LONG_WORDS);
  const longest = Math.max(...all.map(({ length }) => length));
  return Array.from({ length: longest + 2 }, (_, length) =>
    all.filter((one) => Math.abs(one.length - length) <= 1),
  );
})();
const shortWords = listed(SHORT_WORDS);
const realWords: ReadonlySet<string> = new Set(listed(REAL_WORDS));
const everydayWords: ReadonlySet<string> = new Set(listed(EVERYDAY_WORDS));
const pieces: ReadonlySet<string> = new Set(listed(PIECES));
const wholeWords: ReadonlySet<string> = new Set(listed(WHOLE_WORDS));

/**
 * The one word of the trade, in small letters, that is one slip away from `word`; `null` where there
 * is none, where two of different sense are as near, and for English words of their own.
 */
export function nearWord(word: string): string | null {
  if (word.length < 4 || realWords.has(word)) return null;
  let found: string | null = null;
  for (const one of longWordsFor[word.length] ?? []) {
    if (!isSlipOf(word, one)) continue;
    if (found !== null && senseOfWord(found) !== senseOfWord(one)) return null;
    found ??= one;
  }
  if (found !== null) return found;
  const place = Object.keys(PLACE_WORDS).find(
    (one) => isSwapped(word, one) || lacksLetter(word, one),
  );
  if (place !== undefined) return place;
  return shortWords.find((one) => isSwapped(word, one) || isDoubled(word, one)) ?? null;
}

/** Whether a word, in small letters, is English as it stands, so that no other was meant by it. */
export const isEnglish = (word: string): boolean =>
  isKnownWord(word) || realWords.has(word) || everydayWords.has(word);

/** "Rwo", "Rouond", "Rdn" in front of a number: the word that names a row. */
export const nearRowWord = (word: string): string | null =>
  ROW_WORDS.find((one) => (one.length > 4 ? isSlipOf(word, one) : isSwapped(word, one))) ??
  ROW_WORDS.find((one) => isDoubled(word, one)) ??
  null;

const ROW_WORDS = listed('round rounds row rows rnd rnds');

/** Where both begin to differ. */
function differsAt(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a.charCodeAt(at) === b.charCodeAt(at)) at++;
  return at;
}

function isSlipOf(word: string, meant: string): boolean {
  const at = differsAt(word, meant);
  // A letter too many, or one too few.
  if (word.length > meant.length) return word.slice(at + 1) === meant.slice(at);
  if (word.length < meant.length) return word.slice(at) === meant.slice(at + 1);
  if (isSwapped(word, meant)) return true;
  return word.slice(at + 1) === meant.slice(at + 1) && isMixedUp(word[at] ?? '', meant[at] ?? '');
}

const lacksLetter = (word: string, meant: string): boolean => {
  const at = differsAt(word, meant);
  return word.length === meant.length - 1 && word.slice(at) === meant.slice(at + 1);
};

/** Two letters that stand side by side have changed places: "eahc". */
function isSwapped(word: string, meant: string): boolean {
  if (word.length !== meant.length) return false;
  const at = differsAt(word, meant);
  return (
    at < word.length - 1 &&
    word[at] === meant[at + 1] &&
    word[at + 1] === meant[at] &&
    word.slice(at + 2) === meant.slice(at + 2)
  );
}

/** A letter typed twice: "turnn". */
const isDoubled = (word: string, meant: string): boolean => {
  const at = differsAt(word, meant);
  return at > 0 && word[at] === word[at - 1] && word.slice(at + 1) === meant.slice(at);
};

/** Keys side by side, row by row, and letters that scanners mix up. */
const KEYS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const LOOK_ALIKE = 'ce ec lt tl il li hb bh nu un mn nm ft tf'.split(' ');

function isMixedUp(a: string, b: string): boolean {
  if (LOOK_ALIKE.includes(a + b)) return true;
  return KEYS.some((row) => row.includes(a + b) || row.includes(b + a));
}

/** Fewest letters of a word that may have lost a blank. */
const SHORTEST_GLUED = 4;
const LONGEST_GLUED = 24;

/** The words that are glued together here, two or three; `null` where they are not told for sure. */
export function gluedWords(word: string): readonly string[] | null {
  if (word.length < SHORTEST_GLUED || word.length > LONGEST_GLUED) return null;
  if (wholeWords.has(word)) return null;
  const pairs = splits(word).filter(([, rest]) => pieces.has(rest));
  if (pairs.length > 0) return pairs.length === 1 ? (pairs[0] ?? null) : null;
  const threes = splits(word).flatMap(([first, rest]) =>
    splits(rest)
      .filter(([, last]) => pieces.has(last))
      .map(([second, last]) => [first, second, last]),
  );
  return threes.length === 1 ? (threes[0] ?? null) : null;
}

/** The word cut in two behind each piece that it begins with. */
function splits(word: string): [string, string][] {
  const found: [string, string][] = [];
  for (let at = 2; at <= word.length - 2; at++) {
    if (pieces.has(word.slice(0, at))) found.push([word.slice(0, at), word.slice(at)]);
  }
  return found;
}
