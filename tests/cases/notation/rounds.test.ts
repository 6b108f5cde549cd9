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
    ['R1: starting in the 2nd chain from the hook, sc in next 5 sts, 3 sc in next st', '# 1: skip @first 1 chain; sc @next 5 sts; 3 sc @next st'],
    ['Round 4: ch 3, starting in first st *tr, dc in next st, repeat from * around', 'round 4: ch 3; "starting in first st"; *<tr; dc @next st> ->end'],
    ['Motif. Ch 8, join to form a ring', '"Motif"; ch 8; join ring'],
    ['Chain: Ch 9, join to form a ring', '# "Chain": ch 9; join ring'],
    ['Between next 2 petals make dc, ch 5 and dc', "{dc; ch 5; dc} @next gap'petal'"],
    ['Ch 3, make * 5 dc in ch-3 sp, dc in next dc. Repeat from * around.', 'ch 3; *<5 dc @this space3; dc @next dc> ->end'],
    ['sc in next dc, repeat from * all ending with sc in next ch 2 space, join in 1st sc.', '*<sc @next dc> ->end ending with [sc @next space2]; join @first sc'],
    ['*tr, ch 2*, slip st into beginning 4th ch', '*<tr; ch 2> x?; join @nth4 chain'],
    ['* (2 dc, ch 2, 2 dc) in next ch-2 space, ch 1, *. Repeat from * to * twice more; join.', '*<{2 dc; ch 2; 2 dc} @next space2; ch 1> x2 more; join'],
    ['SC in next st, 2 SC in next st around, (2xSC,1x2SC) around. Join. (33 SC)', 'sc @next st; 2 sc @next st ->end; "(2xSC,1x2SC) around"; join = 33 sc'],
    ['2 SC in each st (2SC). Join with sl st. (14 SC)', '2 sc @each st; "2SC"; join = 14 sc'],
    ['17 row – 9 sc, dec * 2, 5 sc (16)', 'row 17: 9 sc; <tog> x2; 5 sc = 16'],
    ['Join your next colour into any corner-sp.', 'join yarn next colour @any corner'],
    ['Attach contrast color yarn to any dc.', 'join yarn contrast color yarn @any dc'],
    ['In any ch-2 sp, ch 3 (counts as 1 dc), 1 dc in same sp, ch 1', 'join yarn yarn @any space2; ch 3 (=1 dc); 1 dc @same space; ch 1'],
    ['*ch 2, skip 1 SC, SC in next stitch* Complete five times. ch 2', '*<ch 2; skip @next 1 sc; sc @next st> x5; ch 2'],
    ['Ch 3, 19 sc around the 1st leg, 3 sc in the ch, 3 sc on the other side of the ch = 47 sc.', 'ch 3; 19 sc @first; "leg"; 3 sc @this chain; other-side; 3 sc; not-worked "around the 1st leg" = 47 sc'],
    ['sc in next 11 sts of first leg, sc in other side of each of 3 ch. (31)', 'sc @next 11 sts of (@first); "leg"; other-side; 3 sc; not-worked "of first leg" = 31'],
  ])('%s', (text, meaning) => expect(tree(text)).toBe(meaning));
});
