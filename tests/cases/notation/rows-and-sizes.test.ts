// Work in rows and in several sizes, as makers type it. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('in rows', () => {
  test.each([
    ['Row 3: ch 1, turn, sc in each st → 33', 'row 3: ch 1; turn; sc @each st = 33'],
    ['Row 5: same as row 3 → 33', 'row 5: rows 3 = 33'],
    ['Row 2: sc in nx 4 sc, *sc in next 2, inc* 3 times → 16 (3 inc)', 'row 2: sc @next 4 sc; *<sc @next 2; inc> x3 = 16, 3 stitch \'inc\''],
    ['Row 2: sc in each ch - 18', 'row 2: sc @each chain = 18'],
    ['Row 32: Ch 1, sc 20, leave the rest. Fasten off.', 'row 32: ch 1; sc 20; unworked; fasten-off'],
    ['next: ch 2, turn, hdc in each st', 'row "next": ch 2; turn; hdc @each st'],
    ['Ch 57 (57)', 'ch 57 = 57 chain'],
    ['Row 1: Starting in 3rd ch from hook, hdc in next 17', 'row 1: skip @first 2 chain; hdc @next 17'],
    ['Row 1: Dc in 4th ch from hook (3 skipped chs = dc) and across. Turn.', 'row 1: dc @nth4 chain from-hook & @each chain ->end (=1 dc); turn'],
    ['Row 1: sc in each of next 11 chains. 11 single crochets. Chain 3 and turn.', 'row 1: sc @next each 11 chains; ch 3; turn = 11 sc'],
    ['Row 9: sc across. Do not f.o.', 'row 9: sc ->end; no fasten-off'],
    ['R35: sc across. F/O', '# 35: sc ->end; fasten-off'],
    ['Row 3: sc in each st around, inc 6 sts evenly spaced. (36)', 'row 3: scinc 6 evenly ->end = 36'],
  ])('%s', (text, meaning) => expect(tree(text)).toBe(meaning));
});

describe('in four sizes', () => {
  test.each([
    ['Rnd 9 (L and XL only): hdc around. (- (-, 52, 56) hdc)', '{L and XL only} round 9: hdc ->end = -/-/52/56 hdc'],
    ['Rnd 7: *hdc in next - (-, 29, 11) sts, inc; rep from * around', 'round 7: *<hdc @next -/-/29/11 sts; inc> ->end'],
    ['Rows 6-8 (7-9, 8-11, 9-13): Ch 1, hdc across. (9 hdc)', 'row 6..13 last 8/9/11/13 first 6/7/8/9: ch 1; hdc ->end = 9 hdc'],
    ['Rows 6-8 (9, 11, 13): Ch 1, hdc across. (9 hdc)', 'row 6..13 last 8/9/11/13: ch 1; hdc ->end = 9 hdc'],
    ['Rep row 2 until 24 (30, 36, 42) rows.', 'rows 2 until 24/30/36/42 rows'],
    ['sc across—47 (51, 55, 59) sts', 'sc ->end = 47/51/55/59 stitch'],
    ['Rnd 1: (47, 51, 55, 59) fsc, join (47, 51, 55, 59)', 'round 1: 47/51/55/59 foundation sc; join = 47/51/55/59'],
  ])('%s', (text, meaning) => expect(tree(text, { sizes: 4 })).toBe(meaning));
});
