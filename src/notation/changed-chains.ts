/**
 * Rows worked again with other chains: "same as last rnd but ch 7 instead of ch 6", "repeat 4th rnd having
 * ch 5 between clusters".
 */
import {
  clauseEnds,
  fromOf,
  isOneOf,
  isWord,
  kindAt,
  type Reader,
  toOf,
  valueAt,
  wordsOf,
} from './reader.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';
import type { ChangedChains } from './tree.ts';

/** What changes, up to the clause's end; `null`, with the reader where it was: anything else. */
export function readChangedChains(r: Reader): ChangedChains | null {
  const start = r.at;
  const from = fromOf(r, start);
  // "Rep rnd 3, ch 1, turn", "and ch 1": what is worked behind the row.
  const leads = isOneOf(r, CHANGES);
  while (isOneOf(r, LEADS)) r.at++;
  const to = chainHere(r);
  const changed = to === null ? null : changedTo(r, to);
  if (changed === null || !clauseEnds(r) || (!leads && changed.was === null)) {
    r.at = start;
    return null;
  }
  return { ...changed, from, to: toOf(r) };
}

const LEADS = wordsOf(
  'but except that only and having making working work make with using use changing the a an there are is be in all',
);
const CHANGES = wordsOf('but except only having making working with use using changing');
const LOOPS = wordsOf('loop loops lp lps space spaces sp sps arch arches chain chains ch chs');
const INSTEAD = wordsOf('instead rather');
const THAN = wordsOf('of than');

function changedTo(r: Reader, now: number): Omit<ChangedChains, 'from' | 'to'> | null {
  if (isOneOf(r, INSTEAD) && isOneOf(r, THAN, 1)) {
    r.at += 2;
    while (isOneOf(r, LEADS)) r.at++;
    const before = kindAt(r) === T.number && clauseEnds(r, 1) ? valueAt(r) : null;
    if (before !== null) r.at++;
    const was = before ?? chainHere(r);
    return was === null ? null : { was, now };
  }
  if (isWord(r, W.between)) while (!clauseEnds(r)) r.at++;
  return { was: null, now };
}

/** "ch 7", "ch-5 lps", "6 ch", "7-ch loops": how many chains. */
function chainHere(r: Reader): number | null {
  const start = r.at;
  let n: number | null = null;
  if (isWord(r, W.ch)) {
    const k = kindAt(r, 1) === T.dash ? 2 : 1;
    n = kindAt(r, k) === T.number ? valueAt(r, k) : null;
    r.at += k + 1;
  } else if (kindAt(r) === T.number) {
    const k = kindAt(r, 1) === T.dash ? 2 : 1;
    n = isWord(r, W.ch, k) ? valueAt(r) : null;
    r.at += k + 1;
  }
  if (n === null) {
    r.at = start;
    return null;
  }
  if (isOneOf(r, LOOPS)) r.at++;
  return n;
}
