/** The nouns of a place: "st", "dc or ch-1 sp", "next dc, sc or ch-1 sp", "each (2 tr) cluster". */

import { readNoun } from './noun.ts';
import type { PlaceDraft } from './place-draft.ts';
import { isPreposition } from './preposition.ts';
import { isWord, kindAt, type Reader, wordAt } from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { Noun } from './tree.ts';

/** "between each (2 tr) cluster": the bracket says what one of them is made of. */
export function bracketedGroup(r: Reader): Noun | null {
  if (kindAt(r) !== T.open || kindAt(r, 3) !== T.close) return null;
  const start = r.at;
  r.at += 4;
  const noun = readNoun(r);
  if (noun?.kind === 'group') return noun;
  r.at = start;
  return null;
}

/** "st", "dc or ch-1 sp", "st and each ch-1 sp". */
export function readNouns(r: Reader, draft: PlaceDraft): boolean {
  const first = readNoun(r);
  if (!first) return false;
  draft.nouns = [first];
  for (let guard = 0; guard < 6; guard++) {
    const start = r.at;
    if (kindAt(r) === T.comma && listedNoun(r, draft)) continue;
    const comma = kindAt(r) === T.comma ? 1 : 0;
    const link = wordAt(r, comma);
    const slash = kindAt(r) === T.slash;
    if (link !== W.and && link !== W.or && !slash) break;
    r.at += comma + 1;
    if (draft.pick === 'each' && isWord(r, W.in) && isWord(r, W.each, 1)) r.at++;
    const again = draft.pick === 'each' && (isWord(r, W.each) || isWord(r, W.every));
    if (again) r.at++;
    if (!joinable(r, draft, again)) {
      r.at = start;
      break;
    }
    const noun = readNoun(r);
    if (!noun) {
      r.at = start;
      break;
    }
    draft.nouns = [...draft.nouns, noun];
    draft.joinedBy = link === W.or || slash ? 'or' : 'and';
  }
  return true;
}

/** "next dc, sc or ch-1 sp": a comma belongs to the list only when an "or" closes it. */
function listedNoun(r: Reader, draft: PlaceDraft): boolean {
  if (!orAhead(r)) return false;
  const start = r.at++;
  const noun = draft.pick === 'next' || draft.pick === 'each' ? readNoun(r) : null;
  if (!noun || !isWord(r, W.or)) {
    r.at = start;
    return false;
  }
  draft.nouns = [...draft.nouns, noun];
  draft.joinedBy = 'or';
  return true;
}

/** Whether the clause behind the comma has an "or"; no noun is longer than this. */
function orAhead(r: Reader): boolean {
  for (let k = 1; k < 16; k++) {
    const kind = kindAt(r, k);
    if (isWord(r, W.or, k)) return true;
    if (kind === T.comma || kind === T.semicolon || kind === T.colon || kind === T.end)
      return false;
  }
  return false;
}

/**
 * "in each st and ch-1 sp" names two kinds of place, "in next st and sc in next" goes on working.
 * A stitch name with a place behind it is work.
 */
function joinable(r: Reader, draft: PlaceDraft, again: boolean): boolean {
  if (draft.pick !== 'each' && draft.pick !== 'next' && draft.pick !== 'same') return false;
  const start = r.at;
  if (kindAt(r) === T.number && !again) {
    const ok = isWord(r, W.ch, 1) || isWord(r, W.ch, 2) || isWord(r, W.chsp, 1);
    if (!ok) return false;
  }
  // "and ch 3, turn": a chain is made unless it is called a space.
  const chain = isWord(r, W.ch);
  const noun = readNoun(r);
  const around = isWord(r, W.around) && (isWord(r, W.each, 1) || isWord(r, W.next, 1));
  const works =
    noun !== null &&
    isPreposition(r, 0) &&
    (around || (!isWord(r, W.around) && !isWord(r, W.across)));
  const makes = chain && noun?.word === 'ch' && !again;
  r.at = start;
  if (noun === null || works || makes) return false;
  if (draft.pick !== 'each' && noun.kind !== 'space' && noun.kind !== 'chain') {
    return noun.kind === 'stem' || noun.kind === 'stitch' ? clauseLike(r) : true;
  }
  return true;
}

/** A stem noun after "or" is a place; after "and" it may be work: only a clause end settles it. */
const clauseLike = (r: Reader): boolean => r.value[r.at - 1] === W.or;
