// Toys, motifs and lace in rounds, as makers type them. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('in rounds', () => {
  test.each([
    ['Rnd 1 – 7 sc in MR, join – 7 sc', 'round 1: 7 sc @this ring; join = 7 sc'],
    ['1 row: 7 sc in amigurumi ring (7)', 'row 1: 7 sc @this ring = 7'],
    ['Rnd 1: In magic ring ch 2 (not counted), 11 dc; join.', 'round 1: ring; ch 2 (no st); 11 dc; join'],
    ['Rnd 2: *dc in next 4 sts; rep from * around, last dc in 2nd ch of turning ch.', 'round 2: *<dc @next 4 sts> ->end; "last dc in 2nd ch of turning ch"'],
    ['Rnd 2: (dc, ch 2) between next 2 sts, dc around front post of next dc, sc in st below next st', 'round 2: {dc; ch 2} @next gap; dc @next dc front-post; sc @next st 1 below'],
    ['Rnd 3: sc in each row end; (3 sc, 2 dc) around', 'round 3: sc @each row-end; (<3 sc; 2 dc> ->end'],
    ['sc through both layers of next 7 sts', 'not-worked "sc through both layers of next 7 sts"'],
    ['Through both layers, sc in each st around', 'not-worked "Through both layers, sc in each st around"'],
    ['1dc (US sc) in next st', '1 dc @next st'],
    ['2dc [2sc] in each st round', '2 dc @each st ->end'],
    ['6-29. Repeat 4 and 5. (49)', '# 6..29: rows 4,5 = 49'],
    ['Ch 1 - 2 sc in first st - sc in next 4 - sc3tog', 'ch 1; 2 sc @first st; sc @next 4; sc3tog'],
    ['Rows 3-8: Rep Row 2. (98 dc at end of Row 8, 4 ch-2 sps)', 'row 3..8: rows 2 = 98 dc, 4 space2'],
    ['Row 1: sc in 2nd ch from hk and ea ch across. (17)', 'row 1: sc @nth2 chain from-hook & @each chain ->end = 17'],
    ['Rnd 2: inc around. 14 sc total', 'round 2: inc ->end = 14 sc'],
    ['R1: MC, ch 3, 2 dc', '# 1: ring; ch 3; 2 dc'],
    ['Row 1: Hdc in 3rd ch from hook (skipped 2 ch count as hdc) and in each ch across.', 'row 1: hdc @nth3 chain from-hook & @each chain ->end (=1 hdc)'],
  ])('%s', (text, meaning) => expect(tree(text)).toBe(meaning));
});
