/**
 * Most rules of reading are for words that few instructions have. Such a rule names them as its hint,
 * and is asked only where one of them stands: what the scanner met is marked once, so that a rule for
 * rare words costs every other instruction a single comparison.
 */
import { hashOf, SENSES, type SenseId } from './dictionary.ts';

/** Words without any of which a rule has nothing to do. */
export type Hint = number;

/** The scan at which each hint was last met, beside the number of the present one. */
export interface Met {
  readonly marks: Uint32Array;
  scans: number;
}

const MOST_HINTS = 512;

let hints = 0;
/** Hints that a word of each sense gives; `null` for many. */
const bySense: (Hint[] | null)[] = Array(SENSES).fill(null);
/** Hints that words give by their letters. */
const byHash = new Map<number, Hint[]>();
/** Last bits of the hashes of such words: nearly all that give no hint are told apart by them. */
const LAST_BITS = 4095;
const mayHint = new Uint8Array(LAST_BITS + 1);

export const noneMet = (): Met => ({ marks: new Uint32Array(MOST_HINTS), scans: 1 });

/**
 * A hint given by words of these senses, where 0 stands for every word that is in no list, and by these
 * words, in small letters with blanks between them, whatever their senses are. Made as modules load.
 */
export function hintOf(senses: readonly SenseId[], words = ''): Hint {
  if (hints === MOST_HINTS) throw new RangeError('more hints than there is room for');
  const hint = hints++;
  for (const sense of senses) bySense[sense] = [...(bySense[sense] ?? []), hint];
  for (const word of words.trim().split(/\s+/)) {
    if (word === '') continue;
    const hash = hashOf(word);
    mayHint[hash & LAST_BITS] = 1;
    byHash.set(hash, [...(byHash.get(hash) ?? []), hint]);
  }
  return hint;
}

/** Marks what a word hints at, by its sense and by its letters. */
export function meetWord(met: Met, sense: SenseId, hash: number): void {
  const given = bySense[sense];
  if (given) mark(met, given);
  const own = mayHint[hash & LAST_BITS] === 1 ? byHash.get(hash) : undefined;
  if (own) mark(met, own);
}

function mark({ marks, scans }: Met, given: readonly Hint[]): void {
  for (let i = 0; i < given.length; i++) marks[given[i]!] = scans;
}

/** Whether one of the hint's words stands anywhere in the instruction. */
export const isHinted = ({ met }: { readonly met: Met }, hint: Hint): boolean =>
  met.marks[hint] === met.scans;
