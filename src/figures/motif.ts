/**
 * Motifs worked from their middle with corners, and shawls worked from a start with points: how many
 * corners there are, told by the chain spaces that stand there, and what a regular one measures.
 */
import { type Figure, surer, times } from './figure.ts';
import type { Phase, SizedRow } from './phases.ts';

export type MotifForm = 'triangle' | 'square' | 'pentagon' | 'hexagon';

const FORMS: Readonly<Record<number, MotifForm>> = {
  3: 'triangle',
  4: 'square',
  5: 'pentagon',
  6: 'hexagon',
};

/** Tangent of half the angle that a side is seen under from the middle: pi over the corners. */
const TANGENTS: Readonly<Record<MotifForm, number>> = {
  triangle: 1.7320508075688772,
  square: 1,
  pentagon: 0.7265425280053609,
  hexagon: 0.5773502691896258,
};

/** Corners by form, for drawings. */
export const CORNERS: Readonly<Record<MotifForm, number>> = {
  triangle: 3,
  square: 4,
  pentagon: 5,
  hexagon: 6,
};

/** The form by the corner spaces that most rounds have, larger than all others; `null`: none. */
export function motifForm({ rows }: Phase): MotifForm | null {
  const corners = rows.length > 1 ? cornersIn(rows) : 0;
  return FORMS[corners] ?? null;
}

/** How many of the largest chain spaces most rows have; 0 where rows differ. */
export function cornersIn(rows: readonly SizedRow[]): number {
  const tally = new Map<number, number>();
  for (const { row } of rows) {
    const [largest] = [...row.tally.spaces].sort((a, b) => b.chains - a.chains);
    if (largest) tally.set(largest.n, (tally.get(largest.n) ?? 0) + 1);
  }
  for (const [n, times] of tally) if (2 * times > rows.length) return n;
  return 0;
}

export type MotifMeasures =
  | { readonly across: Figure }
  | { readonly across: Figure; readonly side: Figure }
  | { readonly 'middle to edge': Figure; readonly side: Figure };

/**
 * A regular polygon whose rounds are as high as the way from its middle to a side, and whose last round
 * is as long as its outline (geometry). With an odd number of corners no side faces another.
 */
export function motifMeasures({ along, end }: Phase, form: MotifForm): MotifMeasures {
  const tangent = TANGENTS[form];
  const corners = CORNERS[form];
  const toSide = surer(along, times(end, 1 / (2 * corners * tangent)));
  if (form === 'square') return { across: times(toSide, 2) };
  const side = times(toSide, 2 * tangent);
  return corners % 2 === 0
    ? { across: times(toSide, 2), side }
    : { 'middle to edge': toSide, side };
}
