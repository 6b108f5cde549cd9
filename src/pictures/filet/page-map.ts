/** A small map of the pages of a chart: where this page lies among the others. */
import type { Mark } from '../drawing.ts';
import type { Block } from './key.ts';
import type { PagePlan, PageWindow } from './paper.ts';
import { TYPE } from './type.ts';

/** Sides of a page in the map; smaller where there are many, and then without numbers. */
const CELL_MM = 5.2;
const MOST_MM = 48;

export function pageMapWidth({ across, up }: PagePlan): number {
  return across * cellOf({ across, up });
}

const cellOf = ({ across, up }: Pick<PagePlan, 'across' | 'up'>): number =>
  Math.min(CELL_MM, MOST_MM / across, MOST_MM / up);

/** Its top left corner is the origin; this page is dark. */
export function pageMap(plan: PagePlan, current: PageWindow): Block {
  const cell = cellOf(plan);
  const marks = plan.pages.flatMap((page): Mark[] => {
    const at = [page.across * cell, (plan.up - 1 - page.up) * cell] as const;
    const isHere = page.number === current.number;
    const box: Mark = {
      kind: 'rect',
      at,
      widthMm: cell,
      heightMm: cell,
      fill: isHere ? 'ink' : 'paper',
      stroke: { ink: 'ink', widthMm: 0.25 },
    };
    if (cell < TYPE.smallMm * 1.5) return [box];
    return [
      box,
      {
        kind: 'text',
        at: [at[0] + cell / 2, at[1] + cell / 2 + TYPE.smallMm * 0.34],
        text: String(page.number),
        sizeMm: TYPE.smallMm,
        align: 'middle',
        ink: isHere ? 'paper' : 'ink',
      },
    ];
  });
  return { marks, heightMm: plan.up * cell };
}
