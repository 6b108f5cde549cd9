/** Words of a text that speak for US or UK terms, and an outright statement of them. */
import type { Span } from '../source/index.ts';
import { formOf, senseOfWord } from './dictionary.ts';
import { scan } from './scan.ts';
import { W } from './senses.ts';
import { FIRST, T, type Tokens } from './tokens.ts';
import type { Terms } from './tree.ts';

export interface TermCues {
  readonly us: readonly Span[];
  readonly uk: readonly Span[];
  /** "UK terms", "US terminology used"; the first such statement. */
  readonly stated: { readonly terms: Terms; readonly span: Span } | null;
}

const STRONG_US = new Set(['sc', 'hdc']);
const STRONG_UK = new Set(['htr']);
const SKIPPED = new Set(['miss', 'misses', 'missing', 'missed']);
const COUNTRY_WORDS = {
  US: ['us', 'usa', 'american', 'america'],
  UK: ['uk', 'british', 'english', 'australian', 'aus'],
} as const;
const COUNTRIES: ReadonlyMap<number, Terms> = new Map([
  ...COUNTRY_WORDS.US.map((word) => [hash(word), 'US'] as const),
  ...COUNTRY_WORDS.UK.map((word) => [hash(word), 'UK'] as const),
]);
const TERM_WORDS = new Set(
  [
    'terms',
    'term',
    'terminology',
    'notation',
    'abbreviations',
    'abbreviation',
    'crochet',
    'stitches',
  ].map(hash),
);
const STITCH_NAMES = new Set(['single', 'double', 'half', 'treble', 'triple'].map(hash));
/** "UK Instructions", "USA format"; "English version" speaks of the language. */
const EDITION_WORDS = new Set(['instructions', 'format', 'version'].map(hash));
const OF_LANGUAGE = new Set(['english', 'australian', 'aus'].map(hash));
const TENSION = hash('tension');

/** What a word may speak for, by its sense; all other words are passed over. */
const SPEAKS = {
  us: 1,
  uk: 2,
  dc: 3,
  tr: 4,
  skip: 5,
  half: 6,
  tension: 7,
  country: 8,
  spaced: 9,
} as const;
const MAY_SPEAK = new Uint8Array(1 << 12);
for (let sense = 0; sense < MAY_SPEAK.length; sense++) {
  const stem = formOf(sense)?.stem ?? '';
  if (STRONG_US.has(stem)) MAY_SPEAK[sense] = SPEAKS.us;
  else if (STRONG_UK.has(stem)) MAY_SPEAK[sense] = SPEAKS.uk;
  else if (stem === 'dc' || stem === 'tr') MAY_SPEAK[sense] = SPEAKS[stem];
}
MAY_SPEAK[W.skip] = SPEAKS.skip;
MAY_SPEAK[W.letter_s] = SPEAKS.spaced;
MAY_SPEAK[senseOfWord('half')] = SPEAKS.half;
// Everyday words share one sense with many others: their letters tell.
for (const word of [...COUNTRY_WORDS.US, ...COUNTRY_WORDS.UK])
  MAY_SPEAK[senseOfWord(word)] = SPEAKS.country;
MAY_SPEAK[senseOfWord('tension')] = SPEAKS.tension;

function hash(word: string): number {
  return scan(word, 0, word.length).hash[FIRST] ?? 0;
}

/**
 * Cues from `from` to `to`, spans counted from `from`. "sc" and "hdc" speak for US, "htr", a dc in
 * the 2nd chain, a tr in the 4th, "miss" and "tension" for UK; "skip", "gauge" and "sl st" for none.
 */
export function termCues(text: string, from: number, to: number): TermCues {
  const found = noCueWords();
  gatherCues(text, { from, to }, found);
  const spans = (list: readonly number[]): Span[] =>
    list.flatMap((at, i) => (i % 2 === 0 ? { from: at - from, to: list[i + 1]! - from } : []));
  const uk = [...spans(found.uk), ...spans(found.weakUk)].sort((a, b) => a.from - b.from);
  return { us: spans(found.us), uk, stated: statedTerms(text, from, to) };
}

/**
 * Cues while they are being gathered: where each word begins and ends, one pair behind the other. A
 * pattern has one in every second clause, and an object for each would only be dropped again.
 */
export interface CueWords {
  readonly us: number[];
  readonly uk: number[];
  /** "Miss" and "tension" speak weakly (common practice). */
  readonly weakUk: number[];
}

export const noCueWords = (): CueWords => ({ us: [], uk: [], weakUk: [] });

/** Adds the cues of a stretch; offsets count from the start of the text. */
export function gatherCues(text: string, { from, to }: Span, into: CueWords): void {
  const tokens = scan(text, from, to);
  for (let i = FIRST; i < tokens.count; i++) {
    const sense = tokens.word[i]!;
    if (sense < 0 || MAY_SPEAK[sense] === 0) continue;
    const list = spokenFor(tokens, i, { text, from, into });
    const last = MAY_SPEAK[sense] === SPEAKS.half ? i + 1 : i;
    if (list) list.push(from + tokens.from[i]!, from + tokens.to[last]!);
  }
}

interface Gathering {
  readonly text: string;
  readonly from: number;
  readonly into: CueWords;
}

/** The list of those that the word at a token speaks for. */
function spokenFor(tokens: Tokens, i: number, { text, from, into }: Gathering): number[] | null {
  switch (MAY_SPEAK[tokens.word[i]!]) {
    case SPEAKS.us:
      return isOldSingle(tokens, i, text, from) ? null : into.us;
    case SPEAKS.uk:
      return into.uk;
    case SPEAKS.dc:
      if (countsFor(tokens, i, 1)) return into.uk;
      return standsInChain(tokens, i, 2) && !behindTallChain(tokens, i) && !isTallRing(tokens, i)
        ? into.uk
        : null;
    case SPEAKS.tr:
      return standsInChain(tokens, i, 4) || countsFor(tokens, i, 3) ? into.uk : null;
    case SPEAKS.skip:
      return SKIPPED.has(wordOf(tokens, i, text, from)) && skipsStitches(tokens, i)
        ? into.weakUk
        : null;
    case SPEAKS.half:
      return /^tre/.test(wordOf(tokens, i + 1, text, from)) ? into.uk : null;
    case SPEAKS.spaced:
      return tokens.word[i + 1] === W.letter_c && standsInChain(tokens, i + 1, 2) ? into.us : null;
    default:
      return tokens.hash[i] === TENSION ? into.weakUk : null;
  }
}

const wordOf = (tokens: Tokens, i: number, text: string, from: number): string =>
  text.slice(from + tokens.from[i]!, from + tokens.to[i]!).toLowerCase();

/** "single crochet" in old English books is the slip stitch: only the short forms speak. */
const isOldSingle = (tokens: Tokens, i: number, text: string, from: number): boolean =>
  tokens.to[i]! - tokens.from[i]! > 4 && /^(single|plain)/.test(wordOf(tokens, i, text, from));

/** "Miss 2", "miss the next ch"; "so that you don't miss any" is talk. */
const skipsStitches = ({ kind, word }: Tokens, i: number): boolean =>
  kind[i + 1] === T.number || kind[i + 1] === T.ordinal || MISSED.has(word[i + 1]!);

const MISSED: ReadonlySet<number> = new Set([
  W.next,
  W.the,
  W.last,
  W.same,
  W.each,
  W.every,
  W.ch,
  W.st,
  W.sp,
  W.loop,
  W.tch,
]);

/** dc in the 2nd chain from the hook, tr in the 4th: heights as UK terms have them. */
function standsInChain(tokens: Tokens, i: number, nth: number): boolean {
  if (isSecondOfGroup(tokens, i)) return false;
  for (let k = i + 1; k < i + 4; k++) {
    // "[sc, 2 dc] in 2nd ch from hook": a group of several stitches has no one height.
    if (tokens.kind[k] === T.close) return false;
    if (tokens.kind[k] !== T.ordinal) continue;
    const chain = tokens.value[k + 1] === W.ch;
    return chain && tokens.value[k] === nth && fromHook(tokens, k + 2);
  }
  return false;
}

/**
 * "Ch 3 (counts as a dc), 11 dc in 2nd ch from hook": the chain is as tall as the dc of US terms; and so is
 * that of a row that goes on, "ch 2, dc in 2nd ch from hook and across", where no foundation is so short.
 */
function behindTallChain({ kind, value }: Tokens, i: number): boolean {
  const before = kind[i - 1] === T.comma ? i - 2 : i - 1;
  const turns = kind[before] === T.number && (value[before] === 2 || value[before] === 3);
  if (turns && value[before - 1] === W.ch && value[i + 6] === W.and) return true;
  let counts = false;
  for (let k = i - 1; k > i - 14 && k >= FIRST; k--) {
    if (kind[k] === T.colon || kind[k] === T.end) return false;
    counts ||= kind[k] === T.word && value[k] === W.count;
    const chain = kind[k] === T.number && value[k] === 3;
    if (chain && (value[k - 1] === W.ch || value[k + 1] === W.ch)) return counts;
  }
  return false;
}

/** "10 dc in 2nd ch from hook": a flat round of so many is of tall stitches; of single crochet it has 5 to 8 (common practice). */
const isTallRing = ({ kind, value }: Tokens, i: number): boolean =>
  kind[i - 1] === T.number && value[i - 1]! > MOST_IN_LOW_RING;

const MOST_IN_LOW_RING = 8;

/** "3 ch (counts as 1st tr)", "ch 1 (counts as dc)": so many chains are as tall as that of UK terms. */
function countsFor({ kind, value, word }: Tokens, i: number, chains: number): boolean {
  let k = i - 1;
  while (kind[k] === T.ordinal || kind[k] === T.number || FIRSTS.has(word[k]!)) k--;
  if (value[k] !== W.as || word[k - 1] !== W.count) return false;
  k -= kind[k - 2] === T.open ? 3 : 2;
  const last = kind[k] === T.number ? k : k - 1;
  const beside = kind[k] === T.number ? word[k - 1] === W.ch : word[k] === W.ch;
  return beside && kind[last] === T.number && value[last] === chains;
}

const FIRSTS: ReadonlySet<number> = new Set([W.a, W.the]);

/** "1 sc and 1 dc in 2nd ch": what stands with another stitch in one chain has no height of its own. */
function isSecondOfGroup({ kind, word }: Tokens, i: number): boolean {
  const before = kind[i - 1] === T.number ? i - 2 : i - 1;
  if (word[before] !== W.and && kind[before] !== T.comma && kind[before] !== T.plus) return false;
  return formOf(Math.max(0, word[before - 1]!)) !== null;
}

const fromHook = (tokens: Tokens, at: number): boolean =>
  tokens.kind[at] === T.word && tokens.value[at] === W.from;

/** The first outright statement of terms; its span counts from `from`. */
export function statedTerms(text: string, from: number, to: number): TermCues['stated'] {
  const tokens = scan(text, from, to);
  for (let i = FIRST; i < tokens.count; i++) {
    const sense = tokens.word[i]!;
    if (sense < 0 || MAY_SPEAK[sense]! < SPEAKS.tension) continue;
    const stated = statement(tokens, i);
    if (stated) return stated;
  }
  return null;
}

/** "half treble (or half double in US terms)": the other name of one stitch. */
function isOtherName({ kind, word, hash }: Tokens, i: number): boolean {
  if (word[i - 1] !== W.in || kind[i - 2] !== T.word) return false;
  const name = STITCH_NAMES.has(hash[i - 2] ?? 0) || formOf(Math.max(0, word[i - 2]!)) !== null;
  return name || hash[i - 2] === CROCHET;
}

const CROCHET = hash('crochet');

/** "For those of us using UK terminology: sc = UK dc": what others call the stitches. */
function speaksOfOthers({ kind, hash }: Tokens, i: number): boolean {
  for (let k = i - 1; k > i - 6 && k >= FIRST && kind[k] === T.word; k--)
    if (OTHERS.has(hash[k] ?? 0)) return true;
  return false;
}

const OTHERS: ReadonlySet<number> = new Set(['those', 'anyone', 'readers', 'if'].map(hash));

/** "UK terms", "US crochet terms", "written in American terminology", "terms: UK". */
function statement(tokens: Tokens, i: number): TermCues['stated'] {
  // "written in US english terms": the language is no country here.
  const language = OF_LANGUAGE.has(tokens.hash[i] ?? 0) && COUNTRIES.has(tokens.hash[i - 1] ?? 0);
  const terms = COUNTRIES.get(tokens.hash[language ? i - 1 : i] ?? 0);
  if (!terms || tokens.hash[i] === 0) return null;
  let last = i;
  for (let k = i + 1; k < i + 4 && tokens.kind[k] === T.word; k++) {
    // "written in English, US terms": the nearer country has the word.
    if (COUNTRIES.has(tokens.hash[k] ?? 0)) break;
    const word = tokens.hash[k] ?? 0;
    const edition = k === i + 1 && EDITION_WORDS.has(word) && !OF_LANGUAGE.has(tokens.hash[i] ?? 0);
    if (edition || TERM_WORDS.has(word)) last = k;
  }
  const before = tokens.kind[i - 1] === T.colon ? i - 2 : i - 1;
  const named = TERM_WORDS.has(tokens.hash[before] ?? 0);
  if (last === i && !named) return null;
  if (isOtherName(tokens, i) || speaksOfOthers(tokens, i)) return null;
  // "(half treble crochet UK)" gives the other name of one stitch.
  if (last === i && STITCH_NAMES.has(tokens.hash[before - 1] ?? 0)) return null;
  // "DC (English terms = trbl)": so does a sign behind.
  if (tokens.kind[last + 1] === T.equals) return null;
  const start = named && last === i ? before : i;
  return { terms, span: { from: tokens.from[start] ?? 0, to: tokens.to[last] ?? 0 } };
}
