/**
 * What is worked around both sides of a chain: an oval that lies flat, as the base of a bag, or a closed
 * end that stands up at once, as the toe of a sock or the fold of a pouch.
 */
import { type Figure, sumOf, times } from './figure.ts';
import { FLAT_ALLOWANCE, type Phase } from './phases.ts';
import { type SizeTable, stitchSize } from './row-size.ts';

/** Measures of either, in the names that `part-size.ts` prints. */
export type OvalPart =
  | {
      readonly form: 'oval base';
      readonly measures: { readonly long: Figure; readonly wide: Figure; readonly around: Figure };
    }
  | {
      readonly form: 'closed end';
      readonly measures: {
        readonly 'first edge': Figure;
        readonly around: Figure;
        readonly flat: Figure;
        readonly high: Figure;
      };
    };

/**
 * `foundation`: chains worked into. Flat, its straight part is one stitch shorter than these, its ends are
 * half-circles: the width is twice the rounds, the length the straight part and once the width, the rim
 * twice the straight part and the circle (geometry). A rim that falls short of that by more than fabric
 * gives stands up. Laid flat it is a trapezoid, since its rounds run straight from fold to fold.
 */
export function ovalPart(phase: Phase, foundation: number, table: SizeTable): OvalPart {
  const { along, end } = phase;
  const straight = chainLength(foundation - 1, table);
  const wide = times(along, 2);
  const flatRim = 2 * straight.mm + Math.PI * wide.mm;
  if (end.mm < (1 - FLAT_ALLOWANCE) * flatRim) {
    const fold = chainLength(foundation, table);
    const flat = times(end, 1 / 2);
    return {
      form: 'closed end',
      measures: { 'first edge': fold, around: end, flat, high: along },
    };
  }
  return { form: 'oval base', measures: { long: sumOf([straight, wide]), wide, around: end } };
}

function chainLength(chains: number, table: SizeTable): Figure {
  const { stitchWidthMm, width } = stitchSize(table, 'w0');
  return {
    mm: chains * stitchWidthMm,
    spread: width.spread,
    how: width.how,
    because: [width.because],
  };
}
