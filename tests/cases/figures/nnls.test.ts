/** Our least squares without negatives against ml-fcnnls, a library of its own for the same sum. */
import { fcnnlsVector } from 'ml-fcnnls';
import { describe, expect, test } from 'vitest';
import { nonNegativeLeastSquares } from '../../../src/figures/nnls.ts';

/** A small seeded generator (Park and Miller, 1988), so that every run tries the same numbers. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

function problem(seed: number) {
  const random = seeded(seed);
  const n = 2 + Math.floor(random() * 6);
  const a = Array.from({ length: n + 1 + Math.floor(random() * 8) }, () =>
    Array.from({ length: n }, () => random() * 2 - 0.6),
  );
  return { a, b: a.map(() => random() * 4 - 1) };
}

const error = (a: readonly (readonly number[])[], b: readonly number[], x: ArrayLike<number>): number =>
  a.reduce((sum, row, i) => sum + (row.reduce((s, v, j) => s + v * x[j]!, 0) - b[i]!) ** 2, 0);

describe('least squares without negatives', () => {
  test.each(Array.from({ length: 60 }, (_, at) => at + 1))('as the library, problem %i', (seed) => {
    const { a, b } = problem(seed);
    const ours = nonNegativeLeastSquares(a, b);
    const theirs = fcnnlsVector(a, [...b]).K.to1DArray();
    expect(Math.min(...ours)).toBeGreaterThanOrEqual(0);
    expect(error(a, b, ours)).toBeCloseTo(error(a, b, theirs), 8);
    ours.forEach((x, j) => expect(x).toBeCloseTo(theirs[j]!, 6));
  });

  test('holds at nought what would be negative', () => {
    expect(nonNegativeLeastSquares([[1, 0], [0, 1]], [3, -2])).toEqual([3, 0]);
  });
});
