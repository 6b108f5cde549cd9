/**
 * From a spelling to its sense by a hash over character codes, so that scanning makes no string for
 * a word. Built once when the module loads and never changed.
 */
import { type Codes, codesOf, fold, isSilent } from './characters.ts';
import { SPELLINGS, type WordSense } from './lexicon.ts';
import { PROSE_WORDS } from './prose-words.ts';
import { W } from './senses.ts';
import { NO_MANNER, termOf } from './stitch-term.ts';
import { GLUED_STEMS, MANNERS, SHAPE_NAMES, STEM_NAMES } from './stitch-words.ts';
import type { Post, StemWord, StitchTerm } from './tree.ts';

/** Senses are small numbers; 0: a word that is not in the lexicon. */
export type SenseId = number;

/** A name of several words, each by its sense, and the sense of the whole. */
export interface Phrase {
  readonly words: readonly SenseId[];
  readonly sense: SenseId;
}

const TABLE_BITS = 13;
const TABLE_SIZE = 1 << TABLE_BITS;
const slots = new Int32Array(TABLE_SIZE).fill(-1);
/** Hash of the spelling in each slot, so that strings are compared only where it is the same. */
const slotHashes = new Int32Array(TABLE_SIZE);
/** Letters of all spellings, one behind the other, and where each begins and ends. */
const letters: number[] = [];
const spellingEnds: number[] = [0];
const senses: number[] = [];

let nextSense = 1 + Math.max(...Object.values(W));
/** Tables by sense; the words of the lexicon come first. */
const forms: (StitchTerm | null)[] = Array(nextSense).fill(null);
const manners: (string | null)[] = Array(nextSense).fill(null);
const phrases: (Phrase[] | null)[] = Array(nextSense).fill(null);
const posts: (Post | null)[] = Array(nextSense).fill(null);

function newSense(form: StitchTerm | null): SenseId {
  const sense = nextSense++;
  forms[sense] = form;
  manners[sense] = null;
  phrases[sense] = null;
  posts[sense] = null;
  return sense;
}

/** One step of the word hash; start with 0. */
export const mix = (hash: number, folded: number): number => (Math.imul(hash, 31) + folded) | 0;

export function hashOf(word: string): number {
  let hash = 0;
  for (let i = 0; i < word.length; i++) {
    const code = fold(word.charCodeAt(i));
    if (code !== 39) hash = mix(hash, code);
  }
  return hash;
}

const slotOf = (hash: number): number => Math.imul(hash, 0x9e3779b1) >>> (32 - TABLE_BITS);

/** Adds a spelling unless it is taken: earlier lists win. */
function addSpelling(word: string, sense: SenseId): SenseId {
  const had = senseOfWord(word);
  if (had !== 0) return had;
  const hash = hashOf(word);
  let slot = slotOf(hash);
  while (slots[slot] !== -1) slot = (slot + 1) & (TABLE_SIZE - 1);
  slotHashes[slot] = hash;
  slots[slot] = senses.length;
  for (let i = 0; i < word.length; i++) letters.push(word.charCodeAt(i));
  spellingEnds.push(letters.length);
  senses.push(sense);
  return sense;
}

export const senseOfWord = (word: string): SenseId =>
  lookUp(codesOf(word, 0, word.length), 0, word.length, hashOf(word));

/** Whether a word in small letters has a meaning in instructions, or is an everyday one. */
export const isKnownWord = (word: string): boolean => senseOfWord(word) !== 0;

/** Sense of the word that stands in the codes from `from` to `to` and has this hash; 0: unknown. */
export function lookUp(codes: Codes, from: number, to: number, hash: number): SenseId {
  for (let slot = slotOf(hash); ; slot = (slot + 1) & (TABLE_SIZE - 1)) {
    const at = slots[slot]!;
    if (at < 0) return 0;
    if (slotHashes[slot] === hash && isSpelled(at, codes, from, to)) return senses[at]!;
  }
}

/** Apostrophes and soft hyphens inside a word are passed over: "don't", "24 st's". */
function isSpelled(spelling: number, codes: Codes, from: number, to: number): boolean {
  const end = spellingEnds[spelling + 1]!;
  let k = spellingEnds[spelling]!;
  let i = from;
  // Plain letters, by far the most: equal but for the bit that makes them small.
  while (i < to && k < end && (codes[i]! | 32) === letters[k]) {
    i++;
    k++;
  }
  for (; i < to; i++) {
    const code = fold(codes[i]!);
    if (isSilent(code)) continue;
    if (k === end || letters[k] !== code) return false;
    k++;
  }
  return k === end;
}

for (const key of Object.keys(SPELLINGS) as WordSense[]) {
  for (const word of SPELLINGS[key].split(' ')) addSpelling(word, W[key]);
}

/** A name of one word gets a spelling; of several, a phrase that hangs on its first word. */
function addName(name: string, sense: SenseId): void {
  const words = name.split(' ');
  if (words.length === 1) {
    addSpelling(name, sense);
    return;
  }
  const ids = words.map((word) => senseOfWord(word) || addSpelling(word, newSense(null)));
  const first = ids[0] ?? 0;
  const list = phrases[first] ?? [];
  list.push({ words: ids, sense });
  list.sort((a, b) => b.words.length - a.words.length);
  phrases[first] = list;
}

/** Phrases wait until every single word has its sense: "half dc" must not take "dc" away. */
const waiting: { name: string; sense: SenseId }[] = [];

function addNames(names: readonly string[], sense: SenseId): void {
  for (const name of names) {
    if (name.includes(' ')) {
      waiting.push({ name, sense });
      if (/(crochet|treble|stitch|dec|decrease|inc|increase|cluster)$/.test(name)) {
        waiting.push({ name: `${name}${name.endsWith('h') ? 'es' : 's'}`, sense });
      }
      if (name.endsWith('crochet')) waiting.push({ name: `${name}s`, sense });
    } else addName(name, sense);
  }
}

/** Words written out, which longer names are made of. */
const LONG_WORDS = /^(single|double|dbl|dble|treble|triple|half|slip|plain)$/;

function addStem(stem: StemWord, names: string): void {
  const form = termOf({ stem, extended: /^e(sc|hdc|dc|tr|htr|dtr)$/.test(stem) });
  const sense = newSense(form);
  for (const name of names.split('|')) {
    // "double" is not "dc" within a phrase: "double dec" takes three, "dc dec" two.
    const own = LONG_WORDS.test(name) ? newSense(form) : sense;
    addNames([name], own);
    if (!name.includes(' ') && !name.endsWith('s')) addNames([`${name}s`], own);
  }
}

function addGlued(stem: StemWord): void {
  const real = stem === 'trc' ? 'tr' : stem;
  const one = (extra: Partial<StitchTerm>, ...names: string[]): void => {
    const sense = newSense(termOf({ stem: real, ...extra }));
    for (const name of names) {
      addName(name, sense);
      addName(`${name}s`, sense);
    }
  };
  one({ post: 'front' }, `fp${stem}`, `${stem}fp`, `rf${stem}`, `${stem}rf`, `r${stem}f`);
  one({ post: 'back' }, `bp${stem}`, `${stem}bp`, `rb${stem}`, `${stem}rb`, `r${stem}b`);
  one({ post: 'front', extended: true }, `fpe${stem}`);
  one({ foundation: true }, `f${stem}`, `fnd${stem}`, `found${stem}`);
  one({ loop: 'back' }, `blo${stem}`, `bl${stem}`, `${stem}blo`, `${stem}tbl`);
  one({ loop: 'front' }, `flo${stem}`, `fl${stem}`, `${stem}flo`);
  one({ shape: 'together' }, `${stem}tog`, `${stem}dec`, `dec${stem}`);
  one({ shape: 'increase' }, `${stem}inc`, `inc${stem}`);
  one({ shape: 'cluster' }, `${stem}cl`);
}

for (const [stem, names] of Object.entries(STEM_NAMES)) addStem(stem, names);
for (const { shape, legs, manner, stem, names } of SHAPE_NAMES) {
  const sense = newSense(
    termOf({
      shape,
      stem: stem ?? null,
      legs: legs ?? null,
      manner: manner === undefined ? NO_MANNER : [manner],
    }),
  );
  addNames(names.split('|'), sense);
}
for (const stem of GLUED_STEMS) addGlued(stem);
for (const { name, sense } of waiting) addName(name, sense);
for (const [word, manner] of Object.entries(MANNERS)) {
  const sense = senseOfWord(word) || addSpelling(word, newSense(null));
  manners[sense] = manner;
}
// "1 relief dc around next dc": raised to the front, if nothing else is said.
for (const [word, post] of [
  ['fp', 'front'],
  ['relief', 'front'],
  ['raised', 'front'],
  ['bp', 'back'],
] as const) {
  posts[addSpelling(word, newSense(null))] = post;
}

/** "tog", "together" behind a stitch name. */
export const TOGETHER: SenseId = ['together', 'tog', 'togehter', 'togeter'].reduce(
  (sense, word) => addSpelling(word, sense),
  newSense(null),
);
/** Everyday words that carry no notation of their own; all share one sense. */
export const PROSE: SenseId = newSense(null);
for (const word of PROSE_WORDS.split(/\s+/)) if (word !== '') addSpelling(word, PROSE);

// Where no word stands, the sense is -1, and a list is not asked for that: it would be slow.

/** What a stitch word means, or `null` where the sense is no stitch name. */
export const formOf = (sense: SenseId): StitchTerm | null => (sense > 0 ? forms[sense]! : null);
/** Manner of working that the word names ("reverse"), or `null`. */
export const mannerOf = (sense: SenseId): string | null => (sense > 0 ? manners[sense]! : null);
/** Names of several words that begin with this word, longest first. */
export const phrasesOf = (sense: SenseId): readonly Phrase[] | null =>
  sense > 0 ? phrases[sense]! : null;
/** "FP" and "BP" before a stitch name. */
export const postOf = (sense: SenseId): Post | null => (sense > 0 ? posts[sense]! : null);

/** By sense: 1 where a stitch name may begin with the word. */
const STITCH_OPENERS = Uint8Array.from(forms, (form, sense) =>
  (form ?? phrases[sense] ?? posts[sense] ?? manners[sense]) == null ? 0 : 1,
);

/** Whether a stitch name may begin with this word; asked at every word, hence the column. */
export const mayBeStitch = (sense: SenseId): boolean => sense > 0 && STITCH_OPENERS[sense] === 1;

/** Senses are numbers below this. */
export const SENSES: number = nextSense;
