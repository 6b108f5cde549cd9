/** Stitches that become one: the number of legs told beside the name, or by the place behind it. */

import { TOGETHER } from './dictionary.ts';
import { type Reader, wordAt } from './reader.ts';
import { W } from './senses.ts';
import { termWith } from './stitch-term.ts';
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
