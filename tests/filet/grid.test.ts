/** Grids as chart blocks, in the order of work, and as runs in words. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asPictured,
  type Cell,
  cellsOfRuns,
  type Grid,
  PLAIN_WORKING,
  rowInWords,
  runsOf,
  startsAt,
  workedRows,
  writeGrid,
} from '../../src/filet/index.ts';
import { readManuscript } from '../../src/manuscript/index.ts';
import { grids } from './arbitraries.ts';

const cells = (signs: string): Cell[] =>
  [...signs].map((sign) => (sign === '#' ? 'filled' : 'open'));

const grid = (...rows: string[]): Grid => ({ name: 'Sprig', mesh: null, rows: rows.map(cells) });

describe('a chart block', () => {
  test('that is written and read again is the same grid', () => {
    fc.assert(
      fc.property(grids, (wanted) => {
        const read = readManuscript(`Row 1: 6 sc in ring.\n\n${writeGrid(wanted)}\n`).value
          .charts[0];
        expect({ name: read?.name, mesh: read?.mesh, rows: read?.rows }).toEqual(wanted);
      }),
    );
  });
});

describe('the order of work', () => {
  const two = grid('##.', '#..');

  test('flat rows turn, the lowest first: right-handed from right to left', () => {
    const rows = workedRows(two, PLAIN_WORKING);
    expect(rows.map((row) => [row.number, row.side, row.reads, startsAt(row)])).toEqual([
      [1, 'right', 'right-to-left', 'right'],
      [2, 'wrong', 'left-to-right', 'left'],
    ]);
    expect(rows.map((row) => row.cells)).toEqual([cells('..#'), cells('##.')]);
    expect(rows[0]?.columns).toEqual([2, 1, 0]);
  });

  test('rounds that are not turned all read one way, from row 12 on', () => {
    const rows = workedRows(two, { ...PLAIN_WORKING, form: 'round', firstRow: 12 });
    expect(rows.map((row) => [row.number, row.reads])).toEqual([
      [12, 'right-to-left'],
      [13, 'right-to-left'],
    ]);
  });

  test('turned rounds alternate, a wrong-side first row reads from left to right', () => {
    const turned = workedRows(two, { ...PLAIN_WORKING, form: 'turned', firstSide: 'wrong' });
    expect(turned.map((row) => row.reads)).toEqual(['left-to-right', 'right-to-left']);
  });

  test('the left-handed read the same picture the other way', () => {
    const left = workedRows(two, { ...PLAIN_WORKING, hand: 'left' });
    expect(left.map((row) => row.reads)).toEqual(['left-to-right', 'right-to-left']);
    const seen = left.map((row) => asPictured(row.cells, row.reads)).reverse();
    expect(seen).toEqual(two.rows);
  });
});

describe('runs', () => {
  test('give back the cells', () => {
    fc.assert(
      fc.property(grids, ({ rows }) => {
        for (const row of rows) expect(cellsOfRuns(runsOf(row))).toEqual(row);
      }),
    );
  });

  test.each([
    ['.#####..####', '1 open, 5 filled, 2 open, 4 filled'],
    ['.#.#', '1 open, 1 filled, 1 open, 1 filled'],
    ['..#..#..#..#..#', '*2 open, 1 filled; rep from * 4 more times'],
    ['...#..#..#..#....', '3 open, *1 filled, 2 open; rep from * 2 more times, 1 filled, 4 open'],
    ['#..##..##..##..#', '1 filled, *2 open, 2 filled; rep from * 2 more times, 2 open, 1 filled'],
  ])('%s in words', (row, words) => {
    expect(rowInWords(cells(row))).toBe(words);
  });

  test('boxes said in full, lacets and bars two boxes wide', () => {
    const row: Cell[] = ['open', 'lacet', 'lacet', 'bar', 'bar', 'bar', 'bar', 'filled', 'filled'];
    expect(rowInWords(row, { boxes: true })).toBe('1 open box, 1 lacet, 2 bars, 2 filled boxes');
  });
});
