/** Random grids for laws. */
import fc from 'fast-check';
import type { Cell, Grid } from '../../src/filet/index.ts';

/** One open or filled box, or a pair that is two boxes wide. */
const bits: fc.Arbitrary<readonly Cell[]> = fc.constantFrom<readonly Cell[]>(
  ['open'],
  ['open'],
  ['filled'],
  ['filled', 'filled', 'filled'],
  ['lacet', 'lacet'],
  ['bar', 'bar'],
);

/** Row of `width` cells with pairs whole. */
const row = (width: number): fc.Arbitrary<Cell[]> =>
  fc.array(bits, { minLength: width, maxLength: width }).map((some) => {
    const cells: Cell[] = [];
    for (const bit of some) if (cells.length + bit.length <= width) cells.push(...bit);
    while (cells.length < width) cells.push('open');
    return cells;
  });

export const grids: fc.Arbitrary<Grid> = fc
  .record({
    name: fc.constantFrom('Sprig', 'Tide', 'Border A'),
    mesh: fc.constantFrom(
      { post: 'dc', gap: 1 },
      { post: 'dc', gap: 2 },
      { post: 'tr', gap: 3 },
      null,
    ),
    width: fc.integer({ min: 1, max: 14 }),
    height: fc.integer({ min: 1, max: 6 }),
  })
  .chain(({ name, mesh, width, height }) =>
    fc
      .array(row(width), { minLength: height, maxLength: height })
      .map((rows) => ({ name, mesh, rows })),
  );
