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
  const said = (mm: number): string => shortFigure(bare(mm), units);
  const lines = ['', paint('strong', 'Counts at this gauge')];
  for (const refit of refits) {
    const { name, count, wantedMm, sameCountMm, demands, rows } = refit;
    const kept = demands.map(({ because }) => because).join('; ');
    lines.push(
      ...hanging(
        `${name || 'Piece'}: ${count} stitches, ${said(wantedMm)} at the pattern's gauge, come to ${said(sameCountMm)}.`,
        width,
      ),
      ...(kept === '' ? [] : wrap('      ', `Kept: ${kept}.`, width, '          ')),
      ...countLines(refit, said, width),
      ...rows.flatMap((part) => wrap('      ', rowsSaid(part, said), width, '          ')),
    );
  }
  return lines;
}

type Refit = SizeSheet['refits'][number];

function countLines(
  { count, others, nearest, least }: Refit,
  said: (mm: number) => string,
  width: number,
): readonly string[] {
  const one = (other: Refit['others'][number]): string => {
    const start =
      other.chains === null || other.count === count
        ? ''
        : `, on a chain of ${other.chains} worked stitches`;
    return `${other.count} stitches${other.count === count ? ' as written' : ''}: ${said(other.mm)}${start}`;
  };
  if (others.length > 0) return others.map((other) => `      ${one(other)}`);
  const motif = least > 0 ? ` The motif needs ${least}.` : '';
  const near = nearest ? ` The nearest: ${one(nearest)}.` : '';
  const none = `No count within a tenth of the size keeps all of that.${near}${motif}`;
  return wrap('      ', none, width, '          ');
}

/** "Sides, Rnds 4 to 24: 20 cm at the pattern's gauge, come to 21.5 cm; 1 round of sc fewer makes 20.5 cm." */
function rowsSaid(
  { name, first, last, wantedMm, sameRowsMm, more, stitch, worked, mm }: Refit['rows'][number],
  said: (mm: number) => string,
): string {
  const many = Math.abs(more);
  const change = `${many} ${many === 1 ? worked.slice(0, -1) : worked} of ${stitch} ${more > 0 ? 'more' : 'fewer'}`;
  const labels = first === last ? first : `${first} to ${last}`;
  return `${name === '' ? '' : `${name}, `}${labels}: ${said(wantedMm)} high at the pattern's gauge, come to ${said(sameRowsMm)}; ${change} ${many === 1 ? 'makes' : 'make'} ${said(mm)}.`;
}
