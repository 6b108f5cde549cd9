/**
 * Rows that shape evenly, over counts drawn at random: they use and make exactly what is asked, are
 * balanced, keep off the join, are set between each other, and are one row for all sizes.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type SpacedRow, spaceEvenly } from '../../src/figures/index.ts';
import { compile } from '../../src/index.ts';

function rowsOf(asked: Parameters<typeof spaceEvenly>[0]): readonly SpacedRow[] {
  const spacing = spaceEvenly(asked);
  if ('why' in spacing) throw new Error(spacing.why);
  return spacing.rows;
}

/** Counts of one row: stitches there are, and a change that one row can make. */
const change = fc.integer({ min: 8, max: 400 }).chain((from) =>
  fc.record({
    from: fc.constant(from),
    by: fc
      .integer({ min: -Math.floor(from / 3), max: Math.floor(from / 2) })
      .filter((by) => by !== 0),
  }),
);
const SETTINGS = { numRuns: 40, seed: 2026 };

/** Gaps around the ring: the one that holds the join is the first and the last together. */
const ringOf = (gaps: readonly number[]): number[] => [
  ...gaps.slice(1, -1),
  gaps[0]! + gaps.at(-1)!,
];

/** Where each place of shaping begins, in stitches of the row beneath. */
function placesOf({ gaps, from, to }: SpacedRow): number[] {
  const width = to[0]! < from[0]! ? 2 : 1;
  let at = 0;
  return gaps[0]!.slice(0, -1).map((gap) => {
    at += gap;
    const place = at;
    at += width;
    return place;
  });
}

describe('a row that shapes evenly', () => {
  test('uses all there is and makes what is asked, as the checker finds it', () => {
    fc.assert(
      fc.property(change, fc.constantFrom('sc', 'hdc', 'dc'), ({ from, by }, stitch) => {
        const [row] = rowsOf({ from: [from], to: [from + by], stitch });
        const text = `Rnd 1: ${from} sc in magic ring. (${from} sc)\n\nRnd 2: ${row!.words}. (${from + by} ${stitch})\n`;
        const { rows, findings } = compile(`---\nterms: US\n---\n${text}`, { fixes: false });
        expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
        expect(rows.at(-1)!.verdict).toBe('proven');
      }),
      SETTINGS,
    );
  });

  test('is as even as whole numbers allow, over every run of gaps', () => {
    fc.assert(
      fc.property(change, ({ from, by }) => {
        const ring = ringOf(rowsOf({ from: [from], to: [from + by] })[0]!.gaps[0]!);
        for (let run = 1; run < ring.length; run++) {
          const sums = ring.map((_, at) =>
            Array.from({ length: run }, (__, j) => ring[(at + j) % ring.length]!).reduce(
              (a, b) => a + b,
              0,
            ),
          );
          expect(Math.max(...sums) - Math.min(...sums)).toBeLessThanOrEqual(1);
        }
      }),
      { ...SETTINGS, numRuns: 25 },
    );
  });

  test('has none beside the join, where there is a stitch for each side', () => {
    fc.assert(
      fc.property(change, ({ from, by }) => {
        const [row] = rowsOf({ from: [from], to: [from + by] });
        const gaps = row!.gaps[0]!;
        const wrap = gaps[0]! + gaps.at(-1)!;
        expect(row!.isAtJoin).toBe(wrap < 2);
        if (wrap >= 2) expect(Math.min(gaps[0]!, gaps.at(-1)!)).toBeGreaterThan(0);
      }),
      SETTINGS,
    );
  });

  test('stands between the places of the round before, by a quarter gap and more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 8, max: 20 }), (n, gap) => {
        // Equal gaps, so that the only shift is that of the stagger.
        const from = n * (gap + 2);
        const [first, second] = rowsOf({ from: [from], to: [from - n], times: 2 });
        // The first round's places as stitches of the round that the second is worked into.
        const made = placesOf(first!).map((at, nth) => at - nth);
        const after = from - n;
        for (const place of placesOf(second!)) {
          const apart = Math.min(
            ...made.map((one) => Math.min(Math.abs(one - place), after - Math.abs(one - place))),
          );
          expect(apart).toBeGreaterThanOrEqual(Math.floor(gap / 4));
        }
      }),
      SETTINGS,
    );
  });

  test('is one row for all sizes that change by the same number', () => {
    fc.assert(
      fc.property(
        change,
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 4 }),
        ({ from, by }, more) => {
          const all = [from, ...more.map((n) => from + n)];
          const [row, ...others] = rowsOf({ from: all, to: all.map((n) => n + by) });
          expect(others).toEqual([]);
          expect(row!.gaps.map((gaps) => gaps.length)).toEqual(all.map(() => Math.abs(by) + 1));
          row!.gaps.forEach((gaps, at) => {
            const plain = gaps.reduce((a, b) => a + b, 0);
            expect(plain + (by > 0 ? by : -2 * by)).toBe(all[at]);
          });
        },
      ),
      { ...SETTINGS, numRuns: 25 },
    );
  });
});
