/** What is on the sheet only when another gauge is asked for: the nearest other counts. */
import {
  type Figure,
  type Paint,
  type SizeSheet,
  shortFigure,
  type Units,
  wrap,
} from '../../src/index.ts';

export interface MoreLayout {
  readonly units: Units;
  readonly width: number;
  readonly paint: Paint;
}

const hanging = (text: string, width: number): readonly string[] =>
  wrap('  ', text, Math.max(40, width), '      ');

const bare = (mm: number): Figure => ({ mm, spread: 0.03, how: 'estimate', because: [] });

export function refitLines({ refits }: SizeSheet, { units, width, paint }: MoreLayout): string[] {
  if (refits.length === 0) return [];
  const lines = ['', paint('strong', 'Counts at this gauge')];
  for (const { name, count, wantedMm, sameCountMm, demands, others } of refits) {
    const said = (mm: number): string => shortFigure(bare(mm), units);
    const kept = demands.map(({ because }) => because).join('; ');
    lines.push(
      ...hanging(
        `${name || 'Piece'}: ${count} stitches, ${said(wantedMm)} at the pattern's gauge, come to ${said(sameCountMm)}.`,
        width,
      ),
      ...(kept === '' ? [] : wrap('      ', `Kept: ${kept}.`, width, '          ')),
      ...(others.length === 0
        ? ['      No other count within a tenth of the size keeps all of that.']
        : others.map(({ count: other, mm, chains }) => {
            const start = chains === null ? '' : `, on a chain of ${chains} worked stitches`;
            return `      ${other} stitches: ${said(mm)}${start}`;
          })),
    );
  }
  return lines;
}
