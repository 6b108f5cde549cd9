/** Ways of old books and blogs: slip stitches behind the join, one star for two repeats, clusters told by legs. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const US = 'US terms\n\n';

describe('slip stitches behind the join lead to where the next round begins', () => {
  const square = (third: number): string =>
    `${US}Ch 6, join with sl st to form a ring.\nRnd 1: Ch 3, 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times, join, sl st in next 2 dc and in ch-2 sp. (12 dc)\nRnd 2: Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join with sl st to top of ch-3, sl st in next 2 dc, sl st in ch-2 sp, ch 3. (24 dc)\nRnd 3: (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, join. Fasten off. (${third} dc)\n`;
  it('into the corner of a square, with the chain that stands behind them', () => {
    expect(worked(square(36), 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
      'Rnd 1 12 proven',
      'Rnd 2 24 proven',
      'Rnd 3 36 proven',
    ]);
    expect(complaints(square(36))).toEqual([]);
    expect(complaints(square(37))).toEqual(['6 count-mismatch']);
  });
  it('and nowhere, if yarn is joined for it', () => {
    const text = `${US}Rnd 1: 18 sc in a magic ring, join, sl st in next sc. (18)\nRnd 2: Join blue in any sc, ch 1, sc in same st, sc in each sc around, join. (18)\n`;
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 18 proven', 'Rnd 2 18 proven']);
  });
});

describe('one star serves two repeats', () => {
  const round = (words: string): string => `${US}Rnd 1: 12 sc in a magic ring, join.\nRnd 2: ${words}\n`;
  it('the second order goes back over the first', () => {
    const text = round(
      'Ch 1, *dc in next st, ch 1, repeat from * once, tr in next st, ch 2, repeat from * all around, join. (8 dc, 4 tr)',
    );
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 12 proven']);
    expect(complaints(text.replace('once', '4 times'))).not.toEqual([]);
  });
  it('"rep from first *" goes back over both', () => {
    const text = round(
      '*Sc in next st, ch 1; rep from * twice, tr in next st, *ch 2, dc in next st; rep from * once, ch 1; rep from first * around; join.',
    );
    expect(made(text)).toEqual([12, 12]);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('twice', 'once'))).toEqual(['4 repeat-remainder']);
  });
  it('but what stands between two stars is only that', () => {
    const text = round(
      '*Sc in next st, ch 1* 3 times, hdc in next st, rep between * and * 8 times, join.',
    );
    expect(made(text)).toEqual([12, 12]);
  });
});

describe('steps told again before "continue this pattern"', () => {
  for (const [words, chains] of [
    ['Sc in 2nd ch from hook, skip 2, 5 dc in next, skip 2, sc in next, skip 2, 5 dc in next... continue this pattern to the end. Turn.', 50],
    ['Sc in 2nd ch from hook, sk 2, 5 dc in next, sk 2, sc in next, and so on to the end of the row. Turn.', 50],
  ] as const) {
    it(words, () => {
      const text = `${US}Chain ${chains}.\nRow 1: ${words} (49)\n`;
      expect(worked(text, 'Row 1')).toEqual(['Row 1 49 proven']);
      expect(complaints(text.replace(`${chains}`, `${chains + 1}`))).not.toEqual([]);
    });
  }
});

describe('stitches worked together', () => {
  it('are one, in a definition too', () => {
    const text = `${US}Special stitches\nCl: 2 dc worked together\n\nR1: in a ring, ch 3 (counts as dc), 9 dc, join. (10 dc)\nR2: ch 3, dc in same st (counts as cl), cl in same st, ch 1, *(2 cl, ch 1) in next st, rep from * around, join. (20 cl, 10 ch)\n`;
    expect(worked(text, 'R2')).toEqual(['R2 20 proven']);
    expect(complaints(text.replace('20 cl', '21 cl'))).not.toEqual([]);
  });
  it('chain and dc are the first of the clusters that are counted', () => {
    const text = `${US}R1: in a ring, ch 3 (counts as dc), 9 dc, join. (10 dc)\nR2: ch 3, dc in same st, ch 1, *dc2tog in next st, ch 1, rep from * around, join. (10 clusters, 10 ch-1 sps)\n`;
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('10 clusters', '12 clusters'))).not.toEqual([]);
  });
});

describe('behind words that were not understood', () => {
  const rounds = (first: number): string =>
    `${US}Rnd 1: In a ring, ch 3 (counts as dc), ${first} dc, join glorp the frist.\nRnd 2: Ch 1, sc in same st, (ch 4, skip 2 sts, sc in next st) 5 times, ch 4, join.\nRnd 3: Sl st in ch-4 sp, ch 3, 4 dc in same sp, 5 dc in each ch-4 sp around, join. (30 dc)\nRnd 4: Ch 3, dc in each st around, join.\n`;
  it('a row that ends with the last place by its own numbers makes the work known again', () => {
    expect(worked(rounds(17), 'Rnd 2', 'Rnd 3', 'Rnd 4')).toEqual([
      'Rnd 2 6 unstated',
      'Rnd 3 30 proven',
      'Rnd 4 30 unstated',
    ]);
  });
  it('and one that does not stays open, and is not blamed', () => {
    expect(worked(rounds(16), 'Rnd 2')).toEqual(['Rnd 2 6 unchecked']);
    expect(complaints(rounds(16))).toEqual(['3 unread']);
  });
});

describe('small words of blogs', () => {
  it('"skip 1st." is one stitch, and "sl st together" forms the ring', () => {
    const text = `${US}Ch 6 and sl st together to form a ring.\nR1: Ch 1, 12 sc in ring, join. (12)\nR2: Ch 1, sc in base of ch 1, (ch 4, skip 1st., sc into next st.) repeat 5 times, join with ch 1 + 1 dc into first sc.\nR3: Ch 1, sc into that (ch1 + 1dc) space of the previous round, ch 4, (sc into next ch4 space, ch 4) repeat 5 times, join. (6 sc)\nR4: Round 4 even, BO weave in end.\n`;
    expect(worked(text, 'R2', 'R3')).toEqual(['R2 6 unstated', 'R3 6 proven']);
    expect(complaints(text.replace(/R4.*\n/, ''))).toEqual([]);
  });
});
