/** Random grids with the rows that a maker can work: every row on the one beneath, ends moving. */
import fc from 'fast-check';
import type { Cell, Grid, Working } from '../../src/filet/index.ts';

export interface Piece {
  readonly grid: Grid;
  readonly working: Working;
  readonly way: 'own' | 'shared';
  readonly terms: 'US' | 'UK';
}

interface Ends {
  readonly left: number;
  readonly right: number;
}

const WIDE = 9;

/**
 * Fills a row: a pair stands on the row beneath with both columns or with none. Without a gap there
 * are no open boxes, and nothing to pass over.
 */
function filled(
  bits: readonly number[],
  { here, below, gap }: { here: Ends; below: Ends | null; gap: number },
): Cell[] {
  const cells: Cell[] = new Array<Cell>(WIDE * 3).fill('none');
  if (gap === 0) return cells.fill('filled', here.left, here.right);
  const side = (column: number): number =>
    below === null || (column >= below.left && column < below.right)
      ? 0
      : column < below.left
        ? -1
        : 1;
  for (let at = here.left, i = 0; at < here.right; i++) {
    const bit = bits[i % bits.length] ?? 0;
    const pair = bit >= 8 && at + 1 < here.right && side(at) === side(at + 1);
    const cell: Cell = pair ? (bit === 8 ? 'lacet' : 'bar') : bit % 2 === 0 ? 'open' : 'filled';
    cells[at++] = cell;
    if (pair) cells[at++] = cell;
  }
  return cells;
}

function gridOf(given: {
  steps: readonly (readonly [number, number, readonly number[]])[];
  gap: number;
  shaped: boolean;
  width: number;
  post: string;
}): Grid {
  let ends: Ends = { left: WIDE, right: WIDE + given.width };
  let below: Ends | null = null;
  const rows: Cell[][] = [];
  for (const [left, right, bits] of given.steps) {
    if (below && given.shaped) {
      const next: Ends = { left: ends.left - left, right: ends.right + right };
      const stands = Math.min(next.right, below.right) - Math.max(next.left, below.left);
      if (next.right - next.left >= 2 && stands >= 1) ends = next;
    }
    rows.push(filled(bits, { here: ends, below, gap: given.gap }));
    below = ends;
  }
  const used = (column: number): boolean => rows.some((row) => row[column] !== 'none');
  const columns = [...new Array(WIDE * 3).keys()];
  const from = columns.findIndex(used);
  const to = columns.findLastIndex(used) + 1;
  const mesh = { post: given.post, gap: given.gap };
  return { name: 'Sprig', mesh, rows: rows.reverse().map((row) => row.slice(from, to)) };
}

export const pieces: fc.Arbitrary<Piece> = fc
  .record({
    form: fc.constantFrom('flat' as const, 'flat' as const, 'round' as const, 'turned' as const),
    firstSide: fc.constantFrom('right' as const, 'right' as const, 'wrong' as const),
    way: fc.constantFrom('own' as const, 'shared' as const),
    terms: fc.constantFrom('US' as const, 'UK' as const),
    gap: fc.integer({ min: 0, max: 3 }),
    tall: fc.boolean(),
    hand: fc.constantFrom('right' as const, 'right' as const, 'left' as const),
    width: fc.integer({ min: 2, max: 7 }),
    steps: fc.array(
      fc.tuple(
        fc.integer({ min: -2, max: 2 }),
        fc.integer({ min: -2, max: 2 }),
        fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 7, maxLength: 7 }),
      ),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ form, firstSide, way, terms, gap, tall, hand, width, steps }) => ({
    grid: gridOf({
      steps,
      gap,
      // Without a gap a box more is a stitch more, told as an increase and not as a box.
      shaped: form === 'flat' && gap > 0,
      // No tube has fewer boxes than four.
      width: form === 'flat' ? width : Math.max(4, width),
      post: terms === 'US' ? (tall ? 'tr' : 'dc') : tall ? 'dtr' : 'tr',
    }),
    working: { form, firstSide: form === 'flat' ? firstSide : 'right', firstRow: 1, hand },
    way,
    terms,
  }));
