/** Rows that shape evenly: exact sums, balance, and that they are proven in every way asked. */
import { readManuscript, writePattern } from '../../../src/index.ts';
import { describe, expect, test } from 'vitest';
import { type SpacedRow, spaceEvenly } from '../../../src/figures/index.ts';

function rowsOf(asked: Parameters<typeof spaceEvenly>[0]): readonly SpacedRow[] {
  const spacing = spaceEvenly(asked);
  if ('why' in spacing) throw new Error(spacing.why);
  return spacing.rows;
}

describe('a row that shapes evenly', () => {
  test('from 186 to 178', () => {
    const [row] = rowsOf({ from: [186], to: [178] });
    expect(row!.words).toBe(
'sc in next 11 sts, sc2tog, (sc in next 21 sts, sc2tog) 3 times, sc in next 22 sts, sc2tog, ' +
        '(sc in next 21 sts, sc2tog) 3 times, sc in next 11 sts',
    );
  });

  test.each([
    [104, 88],
    [88, 104],
    [60, 30],
    [30, 60],
    [7, 6],
    [160, 159],
    [97, 89],
    [50, 50],
    [12, 18],
  ])('from %i to %i sums up, is balanced and keeps off the join', (from, to) => {
    const [row] = rowsOf({ from: [from], to: [to] });
    const gaps = row!.gaps[0]!;
    const n = Math.abs(from - to);
    const plain = gaps.reduce((sum, gap) => sum + gap, 0);
    expect(gaps).toHaveLength(n + 1);
    expect(to > from ? plain + n : plain + 2 * n).toBe(from);
    if (n === 0) return;
    const ring = [...gaps.slice(1, -1), gaps[0]! + gaps.at(-1)!];
    expect(Math.max(...ring) - Math.min(...ring)).toBeLessThanOrEqual(1);
    if (plain > n) expect(row!.isAtJoin).toBe(false);
  });

  test('any run of gaps is at most one off any other run of as many', () => {
    for (const [from, to] of [
      [186, 178],
      [211, 198],
      [143, 160],
    ] as const) {
      const gaps = rowsOf({ from: [from], to: [to] })[0]!.gaps[0]!;
      const ring = [...gaps.slice(1, -1), gaps[0]! + gaps.at(-1)!];
      for (let k = 1; k < ring.length; k++) {
        const sums = ring.map((_, at) =>
          Array.from({ length: k }, (__, j) => ring[(at + j) % ring.length]!).reduce((a, b) => a + b, 0),
        );
        expect(Math.max(...sums) - Math.min(...sums)).toBeLessThanOrEqual(1);
      }
    }
  });

  test('brings bare shaping together: six increases in a row are one repeat', () => {
    expect(rowsOf({ from: [7], to: [13] })[0]!.words).toBe('sc in next st, (2 sc in next st) 6 times');
    expect(rowsOf({ from: [23], to: [12] })[0]!.words).toBe('sc in next st, (sc2tog) 11 times');
  });

  test('is one row for sizes that change by different numbers where only numbers differ', () => {
    const [row] = rowsOf({ from: [40, 60], to: [45, 66] });
    expect(row!.words).toBe('sc in next 4 (5) sts, 2 sc in next st, (sc in next 7 (9) sts, 2 sc in next st) 4 (5) times, sc in next 3 (4) sts');
    expect('why' in spaceEvenly({ from: [40, 60], to: [45, 50] })).toBe(true);
  });

  test('is one row for all sizes that change alike', () => {
    const [row] = rowsOf({ from: [72, 80, 88], to: [64, 72, 80] });
    expect(row!.words).toContain('(');
    expect(row!.words).toMatch(/sc in next \d+ \(\d+, \d+\) sts/);
  });

  test('comes several times, each set between the places of the one before', () => {
    const rows = rowsOf({ from: [80], to: [72], times: 3 });
    expect(rows.map(({ from, to }) => [from[0], to[0]])).toEqual([
      [80, 72],
      [72, 64],
      [64, 56],
    ]);
    expect(rows[0]!.gaps[0]![0]).toBe(2);
    expect(rows[1]!.gaps[0]![0]).toBe(5);
  });

  test.each(['dc', 'hdc', 'tr'])('in %s, in rows', (stitch) => {
    expect(rowsOf({ from: [41], to: [45], stitch, worked: 'rows' })[0]!.words).toContain(`2 ${stitch}`);
  });

  test('is in house form: writing it out again changes nothing', () => {
    for (const [from, to] of [
      [186, 178],
      [97, 89],
      [88, 104],
    ] as const) {
      const { words } = rowsOf({ from: [from], to: [to] })[0]!;
      const text = `Ch ${from + 1}.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (${from} sc)\n\nRow 2: Ch 1, ${words}. (${to} sc)\n`;
      expect(writePattern(readManuscript(text).value)).toContain(words);
    }
  });

  test('in UK terms', () => {
    expect(rowsOf({ from: [20], to: [16], terms: 'UK' })[0]!.words).toContain('dc2tog');
  });

  test.each([
    [[10], [21]],
    [[10], [4]],
    [[10, 12], [8]],
    [[10, 12], [8, 11]],
    [[0], [1]],
    [[2.5], [3]],
  ])('has a reason where there is none: %j to %j', (from, to) => {
    expect(spaceEvenly({ from, to })).toHaveProperty('why');
  });
});
