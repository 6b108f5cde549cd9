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

export function refitLines({ refits }: SizeSheet, { units, width, paint }: MoreLayout): string[] {
  if (refits.length === 0) return [];
  const said = (figure: Figure): string => shortFigure(figure, units);
  const lines = ['', paint('strong', 'Counts at this gauge')];
  for (const { name, counts, rows } of refits) {
    if (counts) lines.push(...countLines(name || 'Piece', counts, { said, width }));
    else
      lines.push(...hanging(`${name || 'Piece'}: no row runs even, so rows alone change.`, width));
    lines.push(
      ...rows.flatMap((part) => wrap('      ', rowsSaid(part, said), width, '          ')),
    );
  }
  return lines;
}

type Refit = SizeSheet['refits'][number];
type CountRefit = NonNullable<Refit['counts']>;
type Said = (figure: Figure) => string;

function countLines(
  name: string,
  refit: CountRefit,
  { said, width }: { readonly said: Said; readonly width: number },
): string[] {
  const { count, wanted, sameCount, demands } = refit;
  const kept = demands.map(({ because }) => because).join('; ');
  return [
    ...hanging(
      `${name}: ${count} stitches, ${said(wanted)} at the pattern's gauge, come to ${said(sameCount)}.`,
      width,
    ),
    ...(kept === '' ? [] : wrap('      ', `Kept: ${kept}.`, width, '          ')),
    ...othersSaid(refit, said, width),
  ];
}

function othersSaid(
  { count, others, nearest, least }: CountRefit,
  said: Said,
  width: number,
): readonly string[] {
  const one = (other: CountRefit['others'][number]): string => {
    const isSame = other.count === count;
    const start = other.chains === null || isSame ? '' : `; begin with ch ${other.chains}`;
    return `${other.count} stitches${isSame ? ' as written' : ''}: ${said(other.size)}${start}`;
  };
  if (others.length > 0) return others.map((other) => `      ${one(other)}`);
  const motif = least > 0 ? ` The motif needs ${least}.` : '';
  const near = nearest ? ` The nearest: ${one(nearest)}.` : '';
  const none = `No count within a tenth of the size keeps all of that.${near}${motif}`;
  return wrap('      ', none, width, '          ');
}

const WAYS: Readonly<Record<Refit['rows'][number]['way'], string>> = {
  high: 'high',
  deep: 'from the start to the last edge',
  across: 'across',
};

/** "Sides, Rnd 4 to Rnd 24: 20 cm high at the pattern's gauge, come to 21.5 cm; 1 round of sc fewer makes 20.5 cm." */
function rowsSaid(part: Refit['rows'][number], said: Said): string {
  const { name, first, last, wanted, sameRows, more, stitch, worked, size, way } = part;
  const many = Math.abs(more);
  const change = `${many} ${many === 1 ? worked.slice(0, -1) : worked} of ${stitch} ${more > 0 ? 'more' : 'fewer'}`;
  const labels = first === last ? first : `${first} to ${last}`;
  return `${name === '' ? '' : `${name}, `}${labels}: ${said(wanted)} ${WAYS[way]} at the pattern's gauge, come to ${said(sameRows)}; ${change} ${many === 1 ? 'makes' : 'make'} ${said(size)}.`;
}
