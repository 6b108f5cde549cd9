/** Stitches back along a chain just made, told without "2nd ch from hook". */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('a list of stitches along the chain just made stands in it', () => {
  for (const [list, n] of [
    ['Ch 7, sc, hdc, 2 dc, 2 trc across ch sp', 30],
    ['Ch 5, 4 sc down the chain', 20],
    ['Ch 5, sc back along ch', 20],
  ] as const) {
    it(list, () => {
      const text = (count: number): string =>
        `US terms\n\nCh 5, sl st to form ring.\nRnd 1: Ch 3 (counts as first dc), 19 dc in ring, sl st to beginning ch 3. (20 dc)\nRnd 2: *${list}, skip 3 dc on previous rnd, sl st in next dc, repeat from * around. (${count} sts)\n`;
      expect(worked(text(n), 'Rnd 2')).toEqual([`Rnd 2 ${n} proven`]);
      expect(complaints(text(n + 1))).not.toEqual([]);
    });
  }
  it('but not one of another number', () => {
    const text =
      'US terms\n\nRnd 1: 5 sc in a magic ring. (5)\nRnd 2: *Ch 5, 7 sc down the chain, sl st in next st, repeat from * around.\n';
    expect(made(text)).not.toEqual([5, 35]);
  });
});

describe('words beside the work', () => {
  it('tell how it is done', () => {
    const text =
      "US terms\n\nCh 12, trying to make sure ch isn't twisted, join with a sl st to first ch.\nRnd 1: Ch 1, sc in each ch around. (12)\n";
    expect(complaints(text)).toEqual([]);
  });
  it('"sl st over to ch space" moves there', () => {
    const text =
      'US terms\n\nCh 5, sl st in 1st ch to join.\nRnd 1: Ch 2, 2 dc in ring, ch 3, [3 dc, ch 3] 4 times in ring, sl st in top of ch to join.\nRnd 2: Sl st over to ch space (3 sl sts), ch 2, (2 dc, ch 3, 3 dc) in same space, ch 1, [(3 dc, ch 3, 3 dc) in next space, ch 1] x 4. (30 dc)\n';
    expect(complaints(text)).toEqual([]);
  });
});
