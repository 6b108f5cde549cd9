/**
 * Special stitches' names, ready for comparing with tokens: by the hash of the first word, longest
 * name first. Plurals are added, so that "5 shells" finds "shell".
 */
import { hashOf } from './dictionary.ts';
import { termOf } from './stitch-term.ts';
import type { StitchTerm } from './tree.ts';
import type { Vocabulary } from './vocabulary.ts';

export interface SpecialName {
  /** What the name stands for: the special stitch, by its key. */
  readonly term: StitchTerm;
  /** Hash of each word; a number inside a name has hash 0 and is held in `numbers`. */
  readonly hashes: readonly number[];
  readonly numbers: readonly number[];
  readonly plural: boolean;
}

export type SpecialNames = ReadonlyMap<number, readonly SpecialName[]>;

/** The last vocabulary asked for: a manuscript's instructions are read one after the other. */
const memo = new WeakMap<ReadonlyMap<string, string>, SpecialNames>();

export function specialNames(known: Vocabulary): SpecialNames | null {
  if (known.specials.size === 0) return null;
  const had = memo.get(known.specials);
  if (had) return had;
  const names = new Map<number, SpecialName[]>();
  for (const [spelling, key] of known.specials) {
    addName(names, spelling, key, false);
    for (const plural of pluralsOf(spelling)) addName(names, plural, key, true);
  }
  for (const list of names.values()) list.sort((a, b) => b.hashes.length - a.hashes.length);
  memo.set(known.specials, names);
  return names;
}

const pluralsOf = (name: string): string[] => {
  if (/s$/i.test(name)) return [`${name}es`];
  return /x$|ch$/i.test(name) ? [`${name}s`, `${name}es`] : [`${name}s`];
};

function addName(
  names: Map<number, SpecialName[]>,
  spelling: string,
  key: string,
  plural: boolean,
) {
  const words = spelling.match(/[\p{L}']+|\d+/gu) ?? [];
  if (words.length === 0) return;
  const hashes = words.map((word) => (/^\d/.test(word) ? 0 : hashOf(word)));
  const numbers = words.map((word) => (/^\d/.test(word) ? Number(word) : 0));
  const first = hashes[0] ?? 0;
  const list = names.get(first) ?? [];
  const term = termOf({ shape: 'special', special: key });
  list.push({ term, hashes, numbers, plural });
  names.set(first, list);
}
