/** Sizes side by side, as patterns print them: "Sides, around 43 (47, 51.5, 55.5) cm". */
import {
  type Figure,
  type PartSize,
  type Sheet,
  shortFigure,
  type Units,
} from '../../src/index.ts';
import { yarnsOfSizes } from './yarn.ts';

/** How measures are called, of a part and of a whole piece. */
export interface TableWords {
  readonly part: Readonly<Record<string, string>>;
  readonly whole: (parts: readonly PartSize[]) => Readonly<Record<string, string>>;
}

/** Lines of the table; none for a pattern of one size. A part that a size has not is a dash. */
export function sizesTable(sheet: Sheet, units: Units, words: TableWords): string[] {
  const { sizes } = sheet;
  if (sizes.length < 2) return [];
  const lines = [...rowsOf(sheet, words)].flatMap(([key, figures]) => {
    const known = figures.flatMap((figure) => figure ?? []);
    if (known.length === 0 || known.some(({ how }) => how === 'assumed')) return [];
    return [`  ${key} ${UNITS_SAID[units].map((unit) => listSaid(figures, unit)).join(', ')}`];
  });
  const names = sizes.map(({ size }) => size);
  return lines.length === 0 ? [] : [`  ${inList(names)}`, ...lines, ...yarnsOfSizes(sizes, units)];
}

const UNITS_SAID: Readonly<Record<Units, readonly ('cm' | 'in')[]>> = {
  metric: ['cm'],
  us: ['in'],
  both: ['cm', 'in'],
};

type Row = (Figure | undefined)[];

/** Figures of each size by the name of part and measure; two parts of one name are two rows. */
function rowsOf({ sizes }: Sheet, words: TableWords): Map<string, Row> {
  const rows = new Map<string, Row>();
  sizes.forEach(({ pieces }, at) => {
    const put = (
      name: string,
      measures: PartSize['measures'],
      said: Readonly<Record<string, string>> = words.part,
    ): void => {
      for (const [what, figure] of Object.entries(measures)) {
        const key = `${name}${said[what] ?? what}`;
        const row = rows.get(key) ?? sizes.map(() => undefined);
        row[at] ??= figure;
        rows.set(key, row);
      }
    };
    for (const { name: piece, parts, whole } of pieces) {
      const seen = new Map<string, number>();
      for (const part of parts) {
        const name = nameOf(part);
        const nth = (seen.get(name) ?? 0) + 1;
        seen.set(name, nth);
        put(nth === 1 ? `${name}: ` : `${name} (${nth}): `, part.measures);
      }
      // A height of the whole is told apart from that of a part.
      const isNamed = pieces.length > 1 && piece !== '';
      put(isNamed ? `${piece}, in all: ` : 'In all: ', whole, words.whole(parts));
    }
  });
  return rows;
}

const nameOf = ({ name, form }: PartSize): string => `${name === '' ? '' : `${name}, `}${form}`;

const inList = ([first = '', ...others]: readonly string[]): string =>
  others.length === 0 ? first : `${first} (${others.join(', ')})`;

const listSaid = (figures: readonly (Figure | undefined)[], unit: 'cm' | 'in'): string => {
  const units = unit === 'cm' ? 'metric' : 'us';
  const values = figures.map((figure) =>
    figure ? shortFigure(figure, units).slice(0, -` ${unit}`.length) : '-',
  );
  return `${inList(values)} ${unit}`;
};
