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
const TENSION = hash('tension');

/** Senses that may be a cue; all other words are passed over. Senses are fewer than this. */
const MAY_SPEAK = new Uint8Array(1 << 12);
for (let sense = 0; sense < MAY_SPEAK.length; sense++) {
  const stem = formOf(sense)?.stem ?? '';
  if (STRONG_US.has(stem) || STRONG_UK.has(stem) || stem === 'dc' || stem === 'tr')
    MAY_SPEAK[sense] = 1;
}
for (const word of ['tension', ...COUNTRY_WORDS.US, ...COUNTRY_WORDS.UK]) {
  MAY_SPEAK[senseOfWord(word)] = 1;
}
MAY_SPEAK[W.skip] = 1;

function hash(word: string): number {
  return scan(word, 0, word.length).hash[FIRST] ?? 0;
}

/**
 * Cues from `from` to `to`, spans counted from `from`. "sc" and "hdc" speak for US, "htr", a dc in
 * the 2nd chain, a tr in the 4th, "miss" and "tension" for UK; "skip", "gauge" and "sl st" for none.
 */
export function termCues(text: string, from: number, to: number): TermCues {
  const tokens = scan(text, from, to);
  let us = NO_SPANS;
  let uk = NO_SPANS;
  let stated: TermCues['stated'] = null;
  for (let i = FIRST; i < tokens.count; i++) {
    const sense = tokens.word[i] ?? -1;
    if (sense < 0 || MAY_SPEAK[sense] === 0) continue;
    const speaks = termsOf(tokens, i, text, from);
    // Texts of one pattern speak for one kind of terms: the other list stays the empty one.
    if (speaks === 'US') us = adding(us, tokens, i);
    else if (speaks === 'UK') uk = adding(uk, tokens, i);
    stated ??= statement(tokens, i);
  }
  return { us, uk, stated };
}

const NO_SPANS: readonly Span[] = [];

/** The list with a token's span at its end; the first makes the list. */
function adding(spans: readonly Span[], tokens: Tokens, i: number): readonly Span[] {
  const span = { from: tokens.from[i]!, to: tokens.to[i]! };
  if (spans === NO_SPANS) return [span];
  (spans as Span[]).push(span);
  return spans;
}

/** The terms that the word at a token speaks for. */
function termsOf(tokens: Tokens, i: number, text: string, from: number): Terms | null {
  const sense = tokens.word[i]!;
  const stem = formOf(sense)?.stem ?? '';
  if (STRONG_US.has(stem) && !isOldSingle(tokens, i, text, from)) return 'US';
  if (STRONG_UK.has(stem) || speaksUk(tokens, i, stem)) return 'UK';
  if (tokens.hash[i] === TENSION) return 'UK';
  return sense === W.skip && SKIPPED.has(wordOf(tokens, i, text, from)) ? 'UK' : null;
}

const wordOf = (tokens: Tokens, i: number, text: string, from: number): string =>
  text.slice(from + tokens.from[i]!, from + tokens.to[i]!).toLowerCase();

/** "single crochet" in old English books is the slip stitch: only the short forms speak. */
const isOldSingle = (tokens: Tokens, i: number, text: string, from: number): boolean =>
  tokens.to[i]! - tokens.from[i]! > 4 && /^(single|plain)/.test(wordOf(tokens, i, text, from));

/** dc in the 2nd chain from the hook, tr in the 4th: heights as UK terms have them. */
function speaksUk(tokens: Tokens, i: number, stem: string): boolean {
  if (stem !== 'dc' && stem !== 'tr') return false;
  for (let k = i + 1; k < i + 4; k++) {
    if (tokens.kind[k] !== T.ordinal) continue;
    const chain = tokens.value[k + 1] === W.ch;
    return chain && (tokens.value[k] ?? 0) === (stem === 'dc' ? 2 : 4) && fromHook(tokens, k + 2);
  }
  return false;
}

const fromHook = (tokens: Tokens, at: number): boolean =>
  tokens.kind[at] === T.word && tokens.value[at] === W.from;

/** "UK terms", "US crochet terms", "written in American terminology", "terms: UK". */
function statement(tokens: Tokens, i: number): TermCues['stated'] {
  const terms = COUNTRIES.get(tokens.hash[i] ?? 0);
  if (!terms || tokens.hash[i] === 0) return null;
  let last = i;
  for (let k = i + 1; k < i + 4 && tokens.kind[k] === T.word; k++) {
    if (TERM_WORDS.has(tokens.hash[k] ?? 0)) last = k;
  }
  const before = tokens.kind[i - 1] === T.colon ? i - 2 : i - 1;
  const named = TERM_WORDS.has(tokens.hash[before] ?? 0);
  if (last === i && !named) return null;
  const start = named && last === i ? before : i;
  return { terms, span: { from: tokens.from[start] ?? 0, to: tokens.to[last] ?? 0 } };
}
