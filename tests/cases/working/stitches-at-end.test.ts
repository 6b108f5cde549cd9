/** "Rep row 2 until 9 sts remain": as many rows as it takes, and the number is proven. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('rows repeated to a number of stitches', () => {
  const wedge = (order: string, last = 11): string => `Ch 4.
Row 1: Sc in 2nd ch from hook and in each ch across, ch 1, turn. (3 sc)
Row 2: 2 sc in first st, sc in each st to last st, 2 sc in last st, ch 1, turn. (5 sc)
Row 3: Sc across, ch 1, turn.
${order}
Row 10: Sc across. (${last} sc)
`;
  it.each([
    'Repeat Rows 2 and 3 until you have 11 stitches.',
    'Rep Rows 2 and 3 until there are 11 sc.',
    'Repeat rows 2-3 until 11 sts.',
  ])('%s', (order) => {
    expect(complaints(wedge(order))).toEqual([]);
    expect(made(wedge(order))).toEqual([3, 5, 5, 7, 7, 9, 9, 11, 11, 11]);
    expect(complaints(wedge(order, 13))).not.toEqual([]);
  });

  it.each([10, 12, 14])('a number that the passes never make is a fault: %s', (n) => {
    const text = wedge(`Repeat Rows 2 and 3 until you have ${n} stitches.`, n);
    expect(complaints(text)[0]).toBe('5 count-mismatch');
  });

  it('"until 3 sts remain" goes down, and names no row', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Ch 1, turn, sc2tog, sc to last 2 sts, sc2tog. (9 sc)
Repeat row 2 until 3 sts remain.
Next row: Ch 1, turn, sc3tog.
`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([11, 9, 7, 5, 3, 1]);
  });

  it('each size has its own number', () => {
    const text = `Sizes: S (L)
Ch 12 (16).
Row 1: Sc in 2nd ch from hook and in each ch across. 11 (15) sc
Row 2: Ch 1, turn, sc2tog, sc to last 2 sts, sc2tog. 9 (13) sc
Repeat row 2 until 3 (5) sts remain.
`;
    expect(complaints(text)).toEqual([]);
  });

  it('rows that do not shape are worked once, and the number differs', () => {
    expect(complaints(wedge('Repeat Row 3 until you have 11 stitches.'))).not.toEqual([]);
    expect(worked(wedge('Repeat Row 3 until you have 11 stitches.'), 'Row 3')).toEqual([
      'Row 3 5 unstated',
    ]);
  });
});

describe('a piece whose stitches are explained by their full names', () => {
  const cowl = (n: number): string => `STITCH EXPLANATIONS:
cross-hdc (crossed half double crochet - worked over 2 sts) Skip next st, hdc in next st, hdc in skipped st.
Fsc (Foundation single crochet)
NOTES:
Cowl is worked back and forth in rows.
COWL:
Fsc 40.
Rows 1-3: Ch 1, turn, sc in each st across.
Row 4: Ch 1, turn, cross-hdc across - you will have ${n} cross-hdc in this row.
Row 5: Ch 1, turn, sc in each st across - you will have 40 sc.
`;
  it('is worked from its foundation stitches on', () => {
    expect(complaints(cowl(20))).toEqual([]);
    expect(worked(cowl(20), 'Row 4', 'Row 5')).toEqual(['Row 4 40 proven', 'Row 5 40 proven']);
    expect(complaints(cowl(22))).toEqual(['9 count-mismatch']);
  });
});

describe('"work in est st pattern to last 2 sts" leaves them', () => {
  const strap = (n: number): string => `Ch 24.
Row 1: Sc in 2nd ch from hook and in each ch across. Turn. (23 sts)
Row 2: Ch 1, work in est st pattern to last 2 sts, sc2tog. Turn. (${n} sts)
Row 3: Ch 1, sc2tog, work in pattern as established to last 2 sts, sc2tog. Turn. (20 sts)
`;
  it('and goes on over the others', () => {
    expect(complaints(strap(22))).toEqual([]);
    expect(worked(strap(22), 'Row 2', 'Row 3')).toEqual(['Row 2 22 proven', 'Row 3 20 proven']);
    expect(complaints(strap(21))).not.toEqual([]);
  });
});
