/** "1 sc behind the next chain", "behind the arch of 5 chain sts": in that loop, as translators put it. */

import { readOneNumber } from './numbers.ts';
import type { PlaceDraft } from './place-draft.ts';
import { isWord, kindAt, type Reader } from './reader.ts';
import { SenseSet } from './sense-set.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** Words that pick one of them. */
const PICKS: SenseSet = new SenseSet([
  W.the,
  W.next,
  W.first_word,
  W.last,
  W.same,
  W.each,
  W.previous,
]);

/** Whether a chain or a loop of it is named `ahead` tokens from here, behind no more than which it is. */
export function namesLoop(r: Reader, ahead: number): boolean {
  let k = ahead;
  while (k < ahead + 3 && (PICKS.has(r.word[r.at + k] ?? 0) || kindAt(r, k) === T.ordinal)) k++;
  if (k === ahead) return false;
  if (isWord(r, W.arch, k)) return true;
  // "behind the next ch-3 sp" is a side of it.
  const behind = kindAt(r, k + 1);
  return isWord(r, W.ch, k) && behind !== T.dash && behind !== T.number && !isWord(r, W.sp, k + 1);
}

/** With the reader behind the noun: a chain is a loop there, "of 5 chain sts" its length. */
export function asLoop(r: Reader, draft: PlaceDraft): void {
  const [noun] = draft.nouns;
  if (!noun || draft.nouns.length > 1 || (noun.kind !== 'chain' && noun.kind !== 'space')) return;
  if (noun.kind === 'space' && !isWord(r, W.of)) return;
  const start = r.at;
  let { chains } = noun;
  if (isWord(r, W.of)) {
    r.at++;
    chains = (kindAt(r) === T.number ? readOneNumber(r) : null) ?? chains;
    if (isWord(r, W.ch)) {
      r.at++;
      if (isWord(r, W.st)) r.at++;
    } else {
      r.at = start;
      ({ chains } = noun);
    }
  }
  draft.nouns = [{ ...noun, kind: 'space', chains, word: '' }];
}
