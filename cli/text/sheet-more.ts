/** The later parts of the sheet: how the start of round leans, and other counts at another gauge. */
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

/** "3 to 5", rounded to whole stitches; "about 1" for one number. */
function rangeSaid({ from, to }: { readonly from: number; readonly to: number }): string {
  const [low, high] = [Math.round(from), Math.round(to)];
  return low === high ? `about ${low}` : `${low} to ${high}`;
}

export function leanLines({ leans }: SizeSheet, { units, width, paint }: MoreLayout): string[] {
  if (leans.length === 0) return [];
  const lines = ['', paint('strong', 'Lean of the start of round')];
  for (const { name, until, lean, remedies } of leans) {
    const cm = `${shortFigure(bare(lean.mm.from), units)} to ${shortFigure(bare(lean.mm.to), units)}`;
    const unknown =
      lean.unknownRounds > 0
        ? ` For ${lean.unknownRounds} more rounds only your own swatch knows (lean: in front matter).`
        : '';
    const way = lean.isTurned
      ? ''
      : ', to the right for right-handers and to the left for left-handers';
    lines.push(
      ...hanging(
        `${name || 'Piece'}: ${rangeSaid(lean.stitches)} stitches (${cm}) over ${lean.knownRounds} rounds up to ${until}${way}. ${lean.because}${unknown}`,
        width,
      ),
      ...remedies.flatMap((remedy) =>
        wrap('      ', `${remedy.name}: "${remedy.words}" ${remedy.effect}`, width, '          '),
      ),
    );
  }
  return lines;
}

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
