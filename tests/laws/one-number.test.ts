/**
 * One changed number that binds is found: at its row, or at the next with that row labelled. What
 * is asked is 98 % of the cases; the rate is printed.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { bindings, pieces, written } from './pieces.ts';
import { SEED } from './seed.ts';

const CASES = 300;

it(`of ${CASES} changed numbers at least 98 % are found`, () => {
  const change = fc.record({
    piece: pieces(),
    at: fc.nat(),
    by: fc.constantFrom(-2, -1, 1, 2, 10),
  });
  const cases = fc.sample(change, { seed: SEED, numRuns: CASES });
  const missed = cases.flatMap(({ piece, at, by }) => {
    const all = bindings(piece);
    const chosen = at % all.length;
    const { row, n } = all[chosen] ?? { row: 0, n: 0 };
    // Nothing is made no times, and no count falls below one.
    const step = n + by > 0 ? by : -by;
    const text = written(piece, { at: chosen, by: step });
    return isFound(text, row) ? [] : [`${piece.shape}, row ${row + 1}, ${n} + ${step}\n${text}`];
  });
  const rate = 1 - missed.length / CASES;
  console.info(`changed numbers found: ${(100 * rate).toFixed(1)} % of ${CASES}`);
  expect(rate, missed.slice(0, 5).join('\n')).toBeGreaterThanOrEqual(0.98);
}, 120_000);

/** Is there a complaint at the row, or at the next one with a label at the row? */
function isFound(text: string, at: number): boolean {
  const { rows, findings } = compile(text, { fixes: false });
  const own = rows[at];
  const next = rows[at + 1];
  const inside = (offset: number, row: typeof own): boolean =>
    row !== undefined && row.from <= offset && offset < row.to;
  return findings.some(
    ({ severity, from, labels }) =>
      severity !== 'note' &&
      (inside(from, own) || (inside(from, next) && labels.some((l) => inside(l.from, own)))),
  );
}
