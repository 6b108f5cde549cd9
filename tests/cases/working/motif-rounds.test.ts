/** Motifs as blogs tell them: a round in several paragraphs, petals that come round, counts of groups. */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

describe('paragraphs between the labels of two rounds are of the first', () => {
  const text = (rest: string): string =>
    `US terms\n\nKelp Hexagon\n\nRnd 1: Magic ring, ch 3 (counts as dc), 11 dc in ring, join with sl st to top of ch 3. (12 dc)\n\nRnd 2: Join green in any stitch. Ch 3 (counts as dc), dc in the same stitch, ch 1. This is half of the first point.\n\n${rest}\n\nRnd 3: Join blue in any ch-1 space. Ch 3, dc in same space, ch 2, 2 dc in same space.\n\n*(2 dc, ch 2, 2 dc) in next ch-1 space. Repeat from * around.\n\nJoin to the top of ch 3. Fasten off.\n`;
  const POINTS =
    'Skip a stitch, *2 dc, ch 1, 2 dc in next stitch, skip a stitch. Repeat from * 4 more times.\n\n2 dc in the first stitch, join with a sl st to the top of ch 3.';
  it('with photographs between them', () => {
    const kelp = text(`${POINTS}\n\nKelp hexagon after round 2`);
    expect(worked(kelp, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 24 unstated', 'Rnd 3 24 unstated']);
    expect(complaints(kelp)).toEqual([]);
  });
  it('and a wrong number there is found', () => {
    expect(complaints(text(POINTS.replace('4 more', '5 more')))).not.toEqual([]);
  });
  it('but a row that is over is not gone on with', () => {
    const rows =
      'US terms\n\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across, turn.\n\nCh 1, sc in each st across, turn.\n\nRow 2: Ch 1, sc in each st across.\n';
    expect(worked(rows, 'Row 1')).toEqual(['Row 1 10 unstated']);
    expect(complaints(rows)).toEqual([]);
  });
});

describe('steps below a round', () => {
  it('count on lines of their own', () => {
    const text = (n: number): string =>
      `US terms\n\nRound 1 : Center (Color A)\n\n  1. Make a magic ring.\n\n  2. Ch 3 (counts as first dc).\n\n  3. Work 13 dc into the ring.\n\n  4. Join with sl st to the top of ch-3.\n\nTotal: 14 dc\n\nFasten off Color A.\n\nRound 2 : Base Round (Color B)\n\n  1. Join Color B in any dc.\n\n  2. Ch 3 (counts as dc), dc in the same stitch, ch 2.\n\n  3. (2 dc, ch 2) in each dc around.\n\n  4. Join with sl st to the top of ch-3.\n\nResult: ${n} dc with 14 ch-2 spaces.\n`;
    expect(worked(text(28), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 14 proven', 'Rnd 2 28 proven']);
    expect(complaints(text(29))).toEqual(['27 count-mismatch']);
  });
  it('"*Ch 2 does not count" is a footnote, and "don\'t pull too tight" talk', () => {
    const text =
      "US terms\n\nRnd 1: Make a magic ring, ch. 2. *ch. 2 does not count as a st. Dc 9 inside ring. Don't pull the ring too tight. (9)\nRnd 2: Ch. 2. *ch. 2 does not count as a st. Make 2 dc in each st all the way around. (18)\nRnd 3: Don't forget to ch 1. Sc in each st around. (18)\n";
    expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
      'Rnd 1 9 proven',
      'Rnd 2 18 proven',
      'Rnd 3 18 proven',
    ]);
    expect(complaints(text)).toEqual([]);
  });
  it('a count behind a dash ends a row that its line was too short for', () => {
    const text =
      'US terms\n\nCh 5; join with a slip st to form a ring.\nRound 1: Ch 1, [2 sc in ring, ch 3] 7 times; join with a slip st\nin first sc – 7 ch-3 loops.\nRound 2: Slip st in next sc, ch 1, [(2 sc, ch 3, 2 sc) all in ch-3\nloop] 7 times; join.\n';
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 14 proven']);
    expect(complaints(text.replace('– 7', '– 8'))).not.toEqual([]);
    expect(complaints(text)).toEqual([]);
  });
});

describe('petals from stitch to stitch come round to the first', () => {
  const flower = (n: number, petals: string): string =>
    `US terms\n\nRnd 1: ${n} sc in a magic ring, join. (${n})\nRnd 2: ${petals}\n`;
  for (const [n, petals, made] of [
    [6, '*Ch 2, 4 dc in same st, ch 2, sl st in same st, sl st in next st; rep from * around.', 24],
    [6, '*Ch 2, 4 dc in same st, ch 2, sl st in next st; rep from * 5 more times. (6 petals)', 24],
    [
      10,
      '*Ch 2, 2 dc in same st, 2 dc in next st, ch 2, sl st in next st* 5 times. Fasten off. (5 petals)',
      20,
    ],
    [
      10,
      '*(Ch 2, dc, tr) in same st, (tr, dc, ch 2, sl st) in next st, sl st in next st; rep from * around. (5 petals)',
      20,
    ],
    [
      5,
      'Ch 3, 3 dc in same st, ch 3, sl st in same st, *sl st in next st, ch 3, 3 dc in same st, ch 3, sl st in same st* repeat 4 times. (5 petals)',
      16,
    ],
  ] as const) {
    it(petals, () => {
      const verdict = petals.includes('petals') ? 'proven' : 'unstated';
      expect(worked(flower(n, petals), 'Rnd 2')).toEqual([`Rnd 2 ${made} ${verdict}`]);
      expect(complaints(flower(n, petals))).toEqual([]);
    });
  }
  it('and one too many has no place', () => {
    const petals = '*Ch 2, 4 dc in same st, ch 2, sl st in next st; rep from * 6 more times.';
    expect(complaints(flower(6, petals))).toEqual(['4 round-overrun']);
  });
  it('and petals of another number are not proven', () => {
    const petals = '*Ch 2, 4 dc in same st, ch 2, sl st in next st; rep from * 5 more times. (7 petals)';
    expect(worked(flower(6, petals), 'Rnd 2')[0]).not.toMatch(/proven/);
  });
});

describe('groups that the text counts', () => {
  it('clusters, pairs and sets are confirmed where as many are there', () => {
    const text =
      'US terms\n\nRnd 1: Ch 1, 12 sc in ring, join. (12)\nRnd 2: Ch 3 (counts as first dc), dc in same st, ch 1, sk next st, [2 dc in next st, ch 1, sk next st] 5 times, join. (6 pairs of dc, 6 ch-1 sps)\nRnd 3: Sl st to ch-1 sp, ch 3, 2 dc in same sp, [3 dc in next ch-1 sp] around, join. (6 sets of 3 dc)\n';
    expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 12 proven', 'Rnd 3 18 proven']);
    const clusters = text.replace('6 sets of 3 dc', '6 clusters');
    expect(worked(clusters, 'Rnd 3')).toEqual(['Rnd 3 18 proven']);
    expect(worked(text.replace('6 sets', '7 sets'), 'Rnd 3')[0]).not.toMatch(/proven/);
  });
});
