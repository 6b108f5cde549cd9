/** "(counts as dc and ch 1 here and throughout)", "(does not count as a st)". */
import type { CountsAs } from '../tree.ts';
import { type Voice, writeStem } from './voice.ts';

/** The remark in its brackets with the space before it, or nothing. */
export const countsAsRemark = (countsAs: CountsAs | null, voice: Voice): string =>
  countsAs === null ? '' : ` (${writeCountsAs(countsAs, voice)})`;

/**
 * Beside a stitch "in 4th ch from hook" the remark speaks of the chains that were passed: one stitch is
 * theirs alone, "(counts as 2 dc)" is theirs and this one.
 */
export function skippedRemark(countsAs: CountsAs | null, voice: Voice): string {
  if (countsAs === null || countsAs.stitches > 1) return countsAsRemark(countsAs, voice);
  const chains = voice.to === 'US' ? 'skipped ch' : 'missed ch';
  const said = writeCountsAs(countsAs, voice)
    .replace(/^does\b/, 'do')
    .replace(/^counts/, 'count');
  return ` (${chains} ${said})`;
}

export function writeCountsAs(countsAs: CountsAs, voice: Voice): string {
  const throughout = countsAs.throughout ? ' here and throughout' : '';
  if (!countsAs.counts) {
    const what = countsAs.stem === null ? 'a st' : `a ${writeStem(countsAs.stem, voice)}`;
    return `does not count as ${what}${throughout}`;
  }
  const stitch = countsAs.stem === null ? null : writeStem(countsAs.stem, voice);
  const chains = countsAs.chains === 0 ? '' : ` and ch ${countsAs.chains}`;
  return `counts as ${stitches(countsAs.stitches, stitch)}${chains}${throughout}`;
}

function stitches(n: number, stitch: string | null): string {
  if (stitch === null) return n === 1 ? 'a st' : `${n} sts`;
  return n === 1 ? stitch : `${n} ${stitch}`;
}
