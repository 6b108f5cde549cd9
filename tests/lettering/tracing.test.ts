/** Pictures traced into boxes; what must come out is plain from the picture. */
import { describe, expect, test } from 'vitest';
import { type TraceOptions, trace } from '../../src/index.ts';
import { pictureOf } from '../finding/command-example.ts';

function rowsOf(
  darkness: (x: number, y: number) => number,
  options: Partial<TraceOptions> & { readonly size?: readonly [number, number] } = {},
): string[] {
  const [width, height] = options.size ?? [40, 40];
  const { value } = trace(pictureOf(width, height, darkness), { width: 4, ...options });
  return (value?.grid.rows ?? []).map((row) =>
    row.map((cell) => (cell === 'filled' ? '#' : '.')).join(''),
  );
}

/** Dark in the upper left quarter. */
const corner = (x: number, y: number): number => (x < 20 && y < 20 ? 1 : 0);

test('dark is filled', () => {
  expect(rowsOf(corner)).toEqual(['##..', '##..', '....', '....']);
});

test('light, where that is asked', () => {
  expect(rowsOf(corner, { fill: 'light' })).toEqual(['..##', '..##', '####', '####']);
});

test('mirrored, where that is asked', () => {
  expect(rowsOf(corner, { facing: 'mirrored' })).toEqual(['..##', '..##', '....', '....']);
});

test.each([
  [1, 4],
  [2, 8],
  [0.5, 2],
  [1.5, 6],
])('boxes %d times as wide as high make %i rows of a square picture', (boxAspect, rows) => {
  expect(rowsOf(corner, { boxAspect })).toHaveLength(rows);
});

test('the threshold decides on greys', () => {
  const steps = (x: number): number => Math.floor(x / 10) / 4 + 0.1;
  expect(rowsOf(steps, { threshold: 0.5 })[0]).toBe('..##');
  expect(rowsOf(steps, { threshold: 0.8 })[0]).toBe('...#');
});

test('the coverage is the share of dark in a box', () => {
  const { value } = trace(
    pictureOf(40, 40, (x) => (x < 13 ? 1 : 0)),
    { width: 4 },
  );
  expect([...value!.coverage.shares.slice(0, 3)].map((share) => Math.round(share * 1000))).toEqual([
    1000, 300, 0,
  ]);
  expect(value?.threshold).toEqual({ share: 0.5, how: 'auto' });
});

describe('cleaning', () => {
  const dots = (x: number, y: number): number => {
    const isSpeck = x >= 30 && y < 10;
    const isHole = x >= 10 && x < 20 && y >= 20 && y < 30;
    return isSpeck || (x < 30 && y >= 10 && !isHole) ? 1 : 0;
  };

  test('is not done unless asked for', () => {
    expect(rowsOf(dots, { size: [40, 40] })).toEqual(['...#', '###.', '#.#.', '###.']);
  });

  test('opens specks and fills holes; boxes that meet at a corner are no specks', () => {
    expect(rowsOf(dots, { clean: 1 })).toEqual(['...#', '###.', '###.', '###.']);
    const apart = (x: number, y: number): number => ((x < 10 && y < 10) || x >= 20 ? 1 : 0);
    expect(rowsOf(apart, { clean: 1 })).toEqual(['..##', '..##', '..##', '..##']);
  });
});

test('a border stands around the whole picture', () => {
  expect(rowsOf(corner, { border: 'line', margin: 0 })).toEqual([
    '######',
    '###..#',
    '###..#',
    '#....#',
    '#....#',
    '######',
  ]);
});

test('any picture and options give an outcome', () => {
  const rgba = new Uint8Array(4);
  for (const width of [-1, 0, 1, 2, 2.5, 1e9, Number.NaN]) {
    for (const boxAspect of [0, -1, 1e-9, 1e9, Number.NaN, 1]) {
      const { value, findings } = trace({ width: 1, height: 1, rgba }, { width, boxAspect });
      expect(value !== null || findings.length > 0).toBe(true);
    }
  }
  expect(trace({ width: 9, height: 9, rgba }, { width: 4 }).value).toBeNull();
});
