/** "in the same ch you slip stitched into", "in same st where you joined": a place told by the join made there. */
import type { PlaceDraft } from './place-draft.ts';
import {
  clauseEnds,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  spelled,
  wordAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

const RELATIVE = wordsOf('that where which in');
const JOINED = wordsOf('joined attached connected');
const ED = /^(?:ed|d)$/;

/** Reads past the words that tell of the join; the place is the one on which the hook stands. */
export function youJoinedIn(r: Reader, draft: PlaceDraft): boolean {
  if (draft.pick !== 'same' && draft.pick !== 'this' && draft.pick !== 'first') return false;
  let k = 0;
  while (k < 3 && (isOneOf(r, RELATIVE, k) || isWord(r, W.in, k) || isWord(r, W.as, k))) k++;
  if (!isWord(r, W.you, k)) return false;
  k++;
  if (isWord(r, W.just, k) || isWord(r, W.have, k)) k++;
  const told = joinTold(r, k);
  if (told === 0) return false;
  k += told;
  while (isWord(r, W.in, k) || isWord(r, W.to, k) || isWord(r, W.on, k)) k++;
  if (!clauseEnds(r, k) && !isWord(r, W.and, k) && wordAt(r, k) !== W.afterwards) return false;
  r.at += k;
  draft.pick = 'same';
  return true;
}

/** "joined", "sl st'ed", "slip stitched", "made the join": how many tokens tell of a join; 0 for none. */
function joinTold(r: Reader, k: number): number {
  if (isOneOf(r, JOINED, k)) return isWord(r, W.the, k + 1) && isWord(r, W.color, k + 2) ? 3 : 1;
  const made = isWord(r, W.made, k) || isWord(r, W.work, k) ? 1 : 0;
  let at = k + made;
  if (isWord(r, W.the, at) || isWord(r, W.a, at)) at++;
  if (made > 0 && isWord(r, W.join, at)) return at + 1 - k;
  const slip = SLIP.test(said(r, at));
  if (!slip) return 0;
  at++;
  if (STITCHED.test(said(r, at))) at++;
  while (kindAt(r, at) === T.word && ED.test(said(r, at))) at++;
  return at - k;
}

const SLIP = /^(?:sl|slip|slst|ss|slipped|slipstitched)$/;
const STITCHED = /^(?:st|sts|stitch|stitched)/;

const said = (r: Reader, k: number): string =>
  kindAt(r, k) === T.word ? spelled(r, r.at + k) : '';
