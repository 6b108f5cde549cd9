/** Sheets of paper, and how a chart is cut into windows that fit them. */
import { startsAt } from '../../filet/index.ts';
import type { Sheet } from './sheet.ts';
import type { Scale, Window } from './window.ts';

export type Paper = 'a4' | 'letter';

/** ISO 216 (A4) and ANSI/ASME Y14.1 (Letter, 8.5 by 11 in), upright. */
export const PAPERS: Readonly<
  Record<Paper, { readonly widthMm: number; readonly heightMm: number }>
> = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
};

/** Boxes and rows that stand on two neighbouring pages. */
export const OVERLAP = 2;

/** One page of a chart: its window, and its place in the map of pages. */
export interface PageWindow extends Window {
  /** From 1, in the order of work: from where the lowest row begins, then upwards. */
  readonly number: number;
  /** From 0 at the left and at the bottom. */
  readonly across: number;
  readonly up: number;
}

export interface PagePlan {
  readonly pages: readonly PageWindow[];
  readonly across: number;
  readonly up: number;
}

/** Cuts a chart so that each window is no larger than `room`, all about alike. */
export function planPages(
  sheet: Sheet,
  scale: Scale,
  room: { readonly widthMm: number; readonly heightMm: number },
): PagePlan {
  const columns = cuts(sheet.columns, Math.floor(room.widthMm / scale.boxWidthMm));
  const rows = cuts(sheet.rows.length, Math.floor(room.heightMm / scale.boxHeightMm));
  const [first] = sheet.rows;
  const startsRight = first !== undefined && startsAt(first) === 'right';
  const pages = rows.flatMap((rowCut, up) =>
    columns.map((_, i) => {
      const across = startsRight ? columns.length - 1 - i : i;
      const number = up * columns.length + i + 1;
      return { number, across, up, columns: columns[across] ?? [0, 0], rows: rowCut } as const;
    }),
  );
  return { pages, across: columns.length, up: rows.length };
}

/** [from, to) of each cut of `n`, none longer than `most`, neighbours sharing the overlap. */
function cuts(n: number, most: number): readonly (readonly [number, number])[] {
  const longest = Math.max(most, OVERLAP + 1);
  if (n <= longest) return [[0, n]];
  const count = Math.ceil((n - OVERLAP) / (longest - OVERLAP));
  const length = Math.ceil((n + (count - 1) * OVERLAP) / count);
  const step = length - OVERLAP;
  return Array.from(
    { length: count },
    (_, i) => [i * step, Math.min(n, i * step + length)] as const,
  );
}
