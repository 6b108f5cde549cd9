/** Sizes side by side, as patterns print them: "Sides, around 43 (47, 51.5, 55.5) cm". */
import {
  type Figure,
  type PartSize,
  type Sheet,
  shortFigure,
  type Units,
} from '../../src/index.ts';

/** Lines of the table; none for a pattern of one size. */
export function sizesTable(
  sheet: Sheet,
  units: Units,
  words: Readonly<Record<string, string>>,
): string[] {
  const { sizes } = sheet;
  if (sizes.length < 2) return [];
  const rows = new Map<string, (Figure | undefined)[]>();
  sizes.forEach(({ pieces }, at) => {
    for (const part of pieces.flatMap(({ parts }) => parts)) {
      for (const [what, figure] of Object.entries(part.measures)) {
        const key = `${nameOf(part)}${words[what] ?? what}`;
        const row = rows.get(key) ?? [];
        // The first part of a name speaks for it: a crown's rounds before its even ones.
        row[at] ??= figure;
        rows.set(key, row);
      }
    }
  });
  const names = sizes.map(({ size }) => size);
  const unitsSaid =
    units === 'us'
      ? (['in'] as const)
      : units === 'metric'
        ? (['cm'] as const)
        : (['cm', 'in'] as const);
  const lines = [...rows].flatMap(([key, figures]) => {
    const all = sizes.flatMap((_, at) => figures[at] ?? []);
    if (all.length < sizes.length || all.some(({ how }) => how === 'assumed')) return [];
    return [`  ${key} ${unitsSaid.map((unit) => listSaid(all, unit)).join(', ')}`];
  });
  return lines.length === 0 ? [] : [`  ${inList(names)}`, ...lines];
}

const nameOf = ({ name, form }: PartSize): string => `${name === '' ? '' : `${name}, `}${form}: `;

const inList = ([first = '', ...others]: readonly string[]): string =>
  others.length === 0 ? first : `${first} (${others.join(', ')})`;

const listSaid = (figures: readonly Figure[], unit: 'cm' | 'in'): string => {
  const units = unit === 'cm' ? 'metric' : 'us';
  const values = figures.map((figure) => shortFigure(figure, units).slice(0, -` ${unit}`.length));
  return `${inList(values)} ${unit}`;
};
