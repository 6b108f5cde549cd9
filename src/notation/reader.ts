/** The state of reading one instruction, and the small moves that every reading function makes. */
import type { Span } from '../source/index.ts';
import { hashOf, type SenseId } from './dictionary.ts';
import { type Hint, hintOf } from './hints.ts';
import { type Mends, scan } from './scan.ts';
import type { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { type SpecialNames, specialNames } from './special-names.ts';
import { FIRST, T, type Tokens } from './tokens.ts';
import type { Slip, StandingOrder, StatedCount, Step } from './tree.ts';
import type { Vocabulary } from './vocabulary.ts';

/** Brackets and stars inside each other beyond this depth are left unread. */
export const MAX_DEPTH = 64;

/** A stated count with the number of steps that stood before it on its level. */
export interface SeenCount {
  readonly count: StatedCount;
  readonly from: number;
}

/** What ends a run of steps besides the end of the text. */
export type RunEnd = 'text' | 'bracket' | 'star' | 'ending' | 'list';

export interface Reader extends Tokens {
  readonly text: string;
  readonly base: number;
  readonly known: Vocabulary;
  readonly specials: SpecialNames | null;
  /** Role of each star, filled in by `findStars` when the first star is met. */
  stars: Uint8Array | null;
  at: number;
  depth: number;
  /** Reads a run of steps: handed in, so that files need not import each other in a ring. */
  readonly run: (r: Reader, end: RunEnd) => Step[];
  readonly counts: SeenCount[];
  readonly orders: StandingOrder[];
  readonly slips: Slip[];
}

/** What is read, and which of its words are taken for others. */
export interface Stretch extends Span {
  readonly mends?: Mends | null;
}

type Shared = { -readonly [K in keyof Reader]: Reader[K] };

/** Used again by every instruction, as the columns of tokens are that it reads from. */
let shared: Shared | null = null;

/** Good until the next text is opened, as its tokens are. */
export function openReader(
  text: string,
  { from, to, mends }: Stretch,
  known: Vocabulary,
  run: Reader['run'],
): Reader {
  const tokens = scan(text, from, to, mends);
  // The columns themselves change only where they had to grow.
  if (shared?.kind !== tokens.kind) shared = newReader(tokens, known, run);
  const r = shared;
  r.count = tokens.count;
  r.strange = tokens.strange;
  r.text = text;
  r.base = from;
  if (r.known !== known) {
    r.known = known;
    r.specials = specialNames(known);
  }
  r.stars = null;
  r.at = FIRST;
  r.depth = 0;
  r.run = run;
  // What an instruction ends up with is its own; of the counts it has another list.
  while (r.counts.length > 0) r.counts.pop();
  if (r.orders.length > 0) r.orders = [];
  if (r.slips.length > 0) r.slips = [];
  return r;
}

const newReader = (tokens: Tokens, known: Vocabulary, run: Reader['run']): Shared => ({
  kind: tokens.kind,
  word: tokens.word,
  from: tokens.from,
  to: tokens.to,
  value: tokens.value,
  hash: tokens.hash,
  partner: tokens.partner,
  count: tokens.count,
  strange: tokens.strange,
  met: tokens.met,
  text: '',
  base: 0,
  known,
  specials: specialNames(known),
  stars: null,
  at: FIRST,
  depth: 0,
  run,
  counts: [],
  orders: [],
  slips: [],
});

// The engine puts functions as short as these in the place of their calls, however long the caller;
// with a word more in them it would stop doing so.

export const kindAt = (r: Reader, ahead = 0): number => r.kind[r.at + ahead]!;

/** Sense of the word `ahead` tokens on; -1 where no word stands. */
export const wordAt = (r: Reader, ahead = 0): SenseId => r.word[r.at + ahead]!;

export const valueAt = (r: Reader, ahead = 0): number => r.value[r.at + ahead]!;

export const isWord = (r: Reader, sense: SenseId, ahead = 0): boolean =>
  r.word[r.at + ahead] === sense;

export function eatWord(r: Reader, sense: SenseId): boolean {
  if (r.word[r.at] !== sense) return false;
  r.at++;
  return true;
}

/** Goes past words that say nothing where they stand: "to work as for the". */
export function passWords(r: Reader, senses: SenseSet): void {
  while (senses.has(r.word[r.at]!)) r.at++;
}

/** Whether this token touches the next one: "sc5", "3ch". */
export const isGlued = (r: Reader, ahead = 0): boolean =>
  r.to[r.at + ahead] === r.from[r.at + ahead + 1];

export const fromOf = (r: Reader, token: number): number => r.from[token]!;
export const toOf = (r: Reader): number => Math.max(0, r.to[r.at - 1]!);

/** Lower-case letters of a token, for names that are kept. */
export const spelled = (r: Reader, token: number): string =>
  r.text.slice(r.base + (r.from[token] ?? 0), r.base + (r.to[token] ?? 0)).toLowerCase();

/** Last bits of a hash: nearly all words that are not meant are told apart by them. */
const LAST_BITS = 1023;

export interface Words {
  readonly hashes: ReadonlySet<number>;
  readonly lastBits: Uint8Array;
}

export interface RareWords extends Words {
  /** Whether one of them stands anywhere, see `isHinted`. */
  readonly hint: Hint;
}

/** Words that have no sense of their own, by their hashes: to know them no string is made. */
export function wordsOf(words: string): Words {
  const hashes = new Set(words.trim().split(/\s+/).map(hashOf));
  const lastBits = new Uint8Array(LAST_BITS + 1);
  for (const hash of hashes) lastBits[hash & LAST_BITS] = 1;
  return { hashes, lastBits };
}

/** Words for which rules are asked only where one of them stands; none that talk is full of. */
export const rareWords = (words: string): RareWords => ({
  ...wordsOf(words),
  hint: hintOf([], words),
});

/** Whether one of these words stands `ahead` tokens on. */
export function isOneOf(r: Reader, { hashes, lastBits }: Words, ahead = 0): boolean {
  const hash = r.hash[r.at + ahead]!;
  return lastBits[hash & LAST_BITS] === 1 && hashes.has(hash);
}

/** Whether a word ends in "s", as plurals do. */
export function endsInS(r: Reader, token: number): boolean {
  const code = r.text.charCodeAt(r.base + (r.to[token] ?? 0) - 1);
  return (code | 32) === 115;
}

/** Comma, semicolon, full stop, end, or a closing bracket: nothing more belongs to the clause. */
export function clauseEnds(r: Reader, ahead = 0): boolean {
  const kind = kindAt(r, ahead);
  return (
    kind === T.end || (kind >= T.comma && kind <= T.colon) || kind === T.close || kind === T.pipe
  );
}

/** "(see Stitch Guide)" in the middle of a clause: where to look, and nothing more. */
export function passSee(r: Reader): void {
  const close = kindAt(r) === T.open && kindAt(r, 1) === T.word ? (r.partner[r.at] ?? -1) : -1;
  if (close < 0 || spelled(r, r.at + 1) !== 'see' || clauseEnds(r, close + 1 - r.at)) return;
  r.at = close + 1;
}

/** Whether the line ends before this token: a count ends with its line, and may have one of its own. */
export function onNewLine(r: Reader, token: number): boolean {
  const to = r.base + (r.from[token] ?? 0);
  for (let at = r.base + (r.to[token - 1] ?? 0); at < to; at++) {
    if (r.text.charCodeAt(at) === 10) return true;
  }
  return false;
}

/** "the", where it says nothing. */
export function eatThe(r: Reader): void {
  while (wordAt(r) === W.the) r.at++;
}
