// Labels, and orders that act on whole rows. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('the label of one row or of several', () => {
  test.each([
    ['Rnd4: sc around (20)', 'round 4: sc ->end = 20'],
    ['RND 4 sc around', 'round 4: sc ->end'],
    ['Rd 4: sc around', 'round 4: sc ->end'],
    ['Round 4 – sc in each st around. 20 sc.', 'round 4: sc @each st ->end = 20 sc'],
    ['R4: sc around [20]', '# 4: sc ->end = 20'],
    ['R 4 sc around {20}', '# 4: sc ->end = 20'],
    ['r4) sc in each st (20)', '# 4: sc @each st = 20'],
    ['4. sc in each st (20)', '# 4: sc @each st = 20'],
    ['4) inc x 6 (12)', '# 4: inc 6 = 12'],
    ['4: inc x 6 = 12', '# 4: inc 6 = 12'],
    ['4th rnd: 1 sc in each sc. (24 sc)', 'round 4: 1 sc @each sc = 24 sc'],
    ['4th Round. Sc in each st around.', 'round 4: sc @each st ->end'],
    ['4th Rnd—Sc in each sc, join with sl st to first sc.', 'round 4: sc @each sc; join @first sc'],
    ['Row 4 (wrong side) Sc across. 12 sc.', 'row 4 WS: sc ->end = 12 sc'],
    ['Row 4 [WS]: Sc across - 12', 'row 4 WS: sc ->end = 12'],
    ['4th row: (RS). Sc across.', 'row 4 RS: sc ->end'],
    ['Row4 (Inc Row) 2 sc in first st, sc across', 'row 4: "(Inc Row)"; 2 sc @first st; sc ->end'],
    ['ROW 4:(right side) sc across', 'row 4 RS: sc ->end'],
    ['Row 6 (dec row): sc2tog, sc across (11)', 'row 6: sc2tog; sc ->end = 11'],
    ['Rnd 14 – Drawstring: ch 3, sk next st', 'round 14: ch 3; skip @next st'],
    ['Size 5 only: 11th round: sc around', '{Size 5 only} round 11: sc ->end'],
    ['RS Round 11(13): sc around', 'round 11 RS: sc ->end'],
    ['Row 4 (in MC): sc across', 'row 4 in MC: sc ->end'],
    ['Rnds 4-6 (WS, colour b): sc around', 'round 4,5,6 WS in B: sc ->end'],
    ['Row 4 - CC: sc across', 'row 4 in CC: sc ->end'],
    ['Rows 7 to 12 incl: sc across', 'row 7..12: sc ->end'],
    ['7th to 12th rows: sc across', 'row 7..12: sc ->end'],
    ['4th and 5th rows: sc across', 'row 4,5: sc ->end'],
    ['Rnds 25 & 26: sc around', 'round 25,26: sc ->end'],
    ['6th, 7th, and 8th rows. Sc across.', 'row 6,7,8: sc ->end'],
    ['11.-14. (4 rows) no change (56);', '# 11,12,13,14: even = 4 row, 56'],
    ['Rounds 12+: sc around', 'round 12 on: sc ->end'],
    ['Row 5–end: sc across', 'row 5 on: sc ->end'],
    ['Rows 4-x: sc across', 'row 4 on: sc ->end'],
    ['Next row: sc across, turn', 'row "Next row": sc ->end; turn'],
    ['Next 6 Rows: Work even.', 'row next 6 "Next 6 Rows": even'],
    ['Set-up row: sc across', 'row "Set-up row": sc ->end'],
    ['Foundation row (RS): dc in 4th ch from hook and in each ch across', 'row RS "Foundation row (RS)": dc @nth4 chain from-hook & @each chain ->end'],
    ['Row 3 and all odd rows: ch 1, sc across, turn', 'row 3 every odd: ch 1; sc ->end; turn'],
    ['Row 2 & all even rows: ch 1, sc across, turn', 'row 2 every even: ch 1; sc ->end; turn'],
    ['Round 6 a 10: 36 sc', 'round 6..10: 36 sc'],
    ['Rnd 7-9 (3 rnds): sc around (24)', 'round 7,8,9: sc ->end = 24'],
    ['Rnds 6-8: (inc, sc to marker) twice', 'round 6,7,8: (<inc; sc ->@this marker> x2'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('rows again', () => {
  test.each([
    ['Repeat Rnd 2 (9) times.', 'rows 2 x9'],
    ['Rep last 2 rows 3 more times (46 sts).', 'last 2 rows x3 = 46 stitch'],
    ['Work even on 28 (35-35) sc for 10 rnds more.', 'even 10 rows'],
    ['Alternate these 2 rows until you have 14 rows.', 'last 2 rows until 14 rows'],
    ['Row 3: Rep row 2.', 'row 3: rows 2'],
    ['Rnds 6-11: Rep rnd 5.', 'round 6..11: rows 5'],
    ['As 2nd row.', 'rows 2'],
    ['Same as 3rd row.', 'rows 3'],
    ['Like the 2nd row.', 'rows 2'],
    ['Rep rows 2 and 3 until piece measures 30 cm, ending with row 3.', 'rows 2,3 to 300 mm ending 3'],
    ['Rep Rnds 7 and 8 five more times, then Rnd 7 again.', 'rows 7,8 x5 then 7'],
    ['Rep last 2 rows 0 (1, 1, 2) times.', 'last 2 rows x0/1/1/2'],
    ['[Rep rnd 9 and rnds 2-8] twice', 'rows 9,2,3,4,5,6,7,8 x2'],
    ['Rows 12-15: As rows 4-7 in B', 'row 12,13,14,15: rows 4,5,6,7; yarn with B'],
    ['Rep row 3 (20)', 'rows 3 = 20'],
    ['Rep Rows 2 and 3 until piece measures 12 in, ending with row 3', 'rows 2,3 to 304.8 mm ending 3'],
    ['until piece measures 9 1/2" from beg', 'even to 241.3 mm'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});
