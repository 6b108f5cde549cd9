/** Stitches that become one: the number of legs told beside the name, or by the place behind it. */

import { TOGETHER } from './dictionary.ts';
import { clauseEnds, isWord, kindAt, type Reader, spelled, valueAt, wordAt } from './reader.ts';
import { W } from './senses.ts';
import { termWith } from './stitch-term.ts';
import { T } from './tokens.ts';
import type { Draft } from './work-draft.ts';

/** "2 dc2tog"? stays; "3 dc cluster" has its legs already; "2 sctog" means its two legs. */
export function fixLegs(draft: Draft): void {
  const { stitch, n } = draft;
  const only = n?.values[0];
  const fused = stitch.shape === 'together' && stitch.legs === null && stitch.stem !== null;
  if (n?.values.length !== 1 || !fused || typeof only !== 'number' || only < 2) return;
  if (only > 9 || n.to !== draft.nameFrom) return;
  draft.stitch = termWith(stitch, { legs: only });
  draft.nameFrom = n.from;
  draft.n = null;
}

/** "2 dc worked together to form 1 st", "3 tr worked tog": so many legs of one stitch. */
export function workedTogether(r: Reader, draft: Draft): void {
  const { stitch, n } = draft;
  if (!isWord(r, W.made) || wordAt(r, 1) !== TOGETHER) return;
  const only = n?.values.length === 1 ? n.values[0] : null;
  const plain = stitch.shape === 'one' && stitch.stem !== null && stitch.stem !== 'ss';
  if (!n || typeof only !== 'number' || only < 2 || only > 9 || !plain || stitch.special) return;
  draft.stitch = termWith(stitch, { shape: 'together', legs: only });
  draft.nameFrom = n.from;
  draft.n = null;
  r.at += 2;
  passOutcome(r);
}

/** "to form 1 st", "to make one cluster", "into one": what comes of it. */
function passOutcome(r: Reader): void {
  const k = isWord(r, W.to) && /^(?:form|make|create)$/.test(spelled(r, r.at + 1)) ? 2 : 1;
  if (k === 1 && !isWord(r, W.in) && !isWord(r, W.as)) return;
  const one = kindAt(r, k) === T.number ? valueAt(r, k) === 1 : isWord(r, W.a, k);
  if (!one) return;
  const end = k + 1;
  if (clauseEnds(r, end)) r.at += end;
  // "into one st" is a place.
  else if (k > 1 && kindAt(r, end) === T.word && clauseEnds(r, end + 1)) r.at += end + 1;
}

/** "cluster over next 4 dc": of so many stitches one is made, though no number of legs is said. */
export function clusterOver(r: Reader, draft: Draft, behind: number): void {
  const { stitch, place } = draft;
  if (stitch.shape !== 'cluster' || place?.pick !== 'next') return;
  if (r.word[behind] !== W.over && r.word[behind] !== W.across) return;
  const [legs] = place.n?.values ?? [];
  if (typeof legs !== 'number' || legs < 2 || legs > 9) return;
  // "2-tr cluster across next 2 lps": a leg in each of them.
  if (stitch.legs !== null && stitch.legs !== legs) return;
  const stem = stitch.stem ?? place.nouns[0]?.stem ?? null;
  draft.stitch = { ...stitch, shape: 'together', stem, legs };
}

/** "sc first two sc tog": the stitches' name and "tog" were read as the noun of a decrease. */
function namedTogether(draft: Draft): void {
  const { stitch, place } = draft;
  const noun = place?.nouns[0];
  if (!place || noun?.word !== 'dec' || place.nouns.length > 1 || draft.n !== null) return;
  const [legs] = place.n?.values ?? [];
  const plain = stitch.shape === 'one' && stitch.stem !== null && stitch.stem !== 'ss';
  if (!plain || place.each || typeof legs !== 'number' || legs < 2 || legs > 9) return;
  draft.stitch = termWith(stitch, { shape: 'together', legs });
  draft.place = { ...place, nouns: [{ ...noun, word: '' }] };
}

/** "Sc dec next 2 sts tog", "sc next 2 sts together", "sc 2 sts together": they become one. */
export function drawnTogether(r: Reader, draft: Draft): void {
  namedTogether(draft);
  if (wordAt(r) !== TOGETHER) return;
  const { stitch, place } = draft;
  const bare = place === null && draft.numberAfter;
  const n = bare ? null : draft.n;
  const [legs] = (bare ? draft.n : place?.n)?.values ?? [];
  const plain = stitch.shape === 'one' && stitch.stem !== null && stitch.stem !== 'ss';
  if (plain && n === null && !place?.each && typeof legs === 'number' && legs > 1 && legs < 10) {
    draft.stitch = termWith(stitch, { shape: 'together', legs });
    if (bare) {
      draft.n = null;
      draft.numberAfter = false;
    }
  }
  if (draft.stitch.shape === 'together') r.at++;
}
