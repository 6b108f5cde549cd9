/**
 * Least squares with no negative unknowns: Lawson and Hanson, Solving Least Squares Problems (1974),
 * chapter 23. Small dense problems only: a few weighed swatches, a dozen kinds of stitch.
 */

export type Matrix = readonly (readonly number[])[];

/** Rounding noise of double precision, against numbers near one. */
const NOISE = 1e-11;

/**
 * The x >= 0 that makes |a x - b| least. Rows of `a` are observations. Ends after at most three
 * rounds an unknown, which the method does not need but by accident of rounding.
 */
export function nonNegativeLeastSquares(a: Matrix, b: readonly number[]): readonly number[] {
  const n = a[0]?.length ?? 0;
  const x = new Array<number>(n).fill(0);
  const isFree = new Array<boolean>(n).fill(false);
  for (let round = 0; round < 3 * n + 3; round++) {
    const pull = downhill(a, b, x);
    const next = largestHeld(pull, isFree);
    if (next < 0) break;
    isFree[next] = true;
    settle(a, b, { x, isFree });
  }
  return x;
}

/** Minus the slope of the error: how much each unknown wants to grow. */
function downhill(a: Matrix, b: readonly number[], x: readonly number[]): number[] {
  const rest = a.map((row, i) => b[i]! - row.reduce((sum, each, j) => sum + each * x[j]!, 0));
  return x.map((_, j) => a.reduce((sum, row, i) => sum + row[j]! * rest[i]!, 0));
}

function largestHeld(pull: readonly number[], isFree: readonly boolean[]): number {
  let best = -1;
  pull.forEach((each, j) => {
    if (!isFree[j] && each > NOISE && (best < 0 || each > pull[best]!)) best = j;
  });
  return best;
}

interface State {
  readonly x: number[];
  readonly isFree: boolean[];
}

/** Solves for the free unknowns; those that would fall below nought are held there again. */
function settle(a: Matrix, b: readonly number[], { x, isFree }: State): void {
  for (let round = 0; round <= x.length; round++) {
    const free = x.flatMap((_, j) => (isFree[j] ? [j] : []));
    const solved = solveNormal(a, b, free);
    const below = free.filter((_, at) => solved[at]! <= NOISE);
    if (below.length === 0) {
      for (const [at, j] of free.entries()) x[j] = solved[at]!;
      return;
    }
    // The furthest step towards the solution that keeps all at nought or above.
    let step = 1;
    for (const [at, j] of free.entries()) {
      if (solved[at]! <= NOISE) step = Math.min(step, x[j]! / (x[j]! - solved[at]! || 1));
    }
    for (const [at, j] of free.entries()) x[j]! += step * (solved[at]! - x[j]!);
    for (const j of free) {
      if (x[j]! > NOISE) continue;
      x[j] = 0;
      isFree[j] = false;
    }
  }
}

/** The normal equations of the chosen columns, by Gauss with the largest pivot. */
function solveNormal(a: Matrix, b: readonly number[], columns: readonly number[]): number[] {
  const rows = columns.map((j) => [
    ...columns.map((k) => a.reduce((sum, row) => sum + row[j]! * row[k]!, 0)),
    a.reduce((sum, row, i) => sum + row[j]! * b[i]!, 0),
  ]);
  const n = columns.length;
  for (let at = 0; at < n; at++) {
    let pivot = at;
    for (let i = at + 1; i < n; i++) {
      if (Math.abs(rows[i]![at]!) > Math.abs(rows[pivot]![at]!)) pivot = i;
    }
    [rows[at], rows[pivot]] = [rows[pivot]!, rows[at]!];
    const head = rows[at]![at]!;
    if (Math.abs(head) < NOISE) continue;
    for (let i = 0; i < n; i++) {
      if (i === at) continue;
      const factor = rows[i]![at]! / head;
      for (let j = at; j <= n; j++) rows[i]![j]! -= factor * rows[at]![j]!;
    }
  }
  return rows.map((row, at) => (Math.abs(row[at]!) < NOISE ? 0 : row[n]! / row[at]!));
}
