/** One sentence beneath a chart: how far the start of round has wandered where the chart begins. */
import type { ChartUse, Fabric } from '../../fabric/index.ts';
import { leanBefore } from '../../figures/index.ts';
import type { Working } from '../../filet/index.ts';
import type { Manuscript } from '../../manuscript/index.ts';

export function leanNotes(
  uses: readonly (ChartUse | null)[],
  pattern: { readonly manuscript: Manuscript; readonly fabric: Fabric },
  hand: Working['hand'],
): string[] {
  const first = uses.find((use) => use !== null);
  const found = first ? leanBefore(first.record, pattern) : null;
  if (!found) return [];
  const { at, lean } = found;
  if (lean.stitches.to === 0) {
    return [
      `How far the start of round has wandered by ${at} is not known (${lean.unknownRounds} rounds): only your own swatch tells.`,
    ];
  }
  const [from, to] = [Math.round(lean.stitches.from), Math.round(lean.stitches.to)];
  const many = from === to ? `about ${from}` : `${from} to ${to}`;
  const right = lean.stitches.to > 0 === (hand === 'right');
  const unknown = lean.unknownRounds > 0 ? `, ${lean.unknownRounds} rounds not known` : '';
  return [
    `By ${at} the start of round has wandered ${many} stitches to the ${right ? 'right' : 'left'}${unknown}: by count alone, the chart stands so far off the middle of the front.`,
  ];
}
