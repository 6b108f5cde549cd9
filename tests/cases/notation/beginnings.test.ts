// Rings, foundation chains, both sides of a chain, starts on finished work. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('beginnings', () => {
  test.each([
    ['MR, 7sc [7]', 'ring; 7 sc = 7'],
    ['7 sc into a magic circle {7 sts}', '7 sc @next ring\'magic\' = 7 stitch'],
    ['Magic ring. Chain 1. 9 Hdc.', 'ring; ch 1; 9 hdc'],
    ['make an adjustable ring with 7 sc', 'ring; 7 sc'],
    ['sc 7 in ring', 'sc 7 @this ring'],
    ['start with 7 sc into mr', '7 sc @this ring\'magic\''],
    ['Ch 2, 7 sc in 2nd ch from hook.', 'ch 2; 7 sc @nth2 chain from-hook'],
    ['ch 3; 9 hdc in third ch from hook (9 hdc)', 'ch 3; 9 hdc @nth3 chain from-hook = 9 hdc'],
    ['Ch 4, 13 dc in 4th ch from hook: 13 dc', 'ch 4; 13 dc @nth4 chain from-hook = 13 dc'],
    ['ch2; 7 sc in first ch made', 'ch 2; 7 sc @first chain'],
    ['Ch 5, join with sl st to form a ring.', 'ch 5; join ring'],
    ['5 ch, ss into ring', 'ch 5; join ring'],
    ['Ch 6; join.', 'ch 6; join'],
    ['Ch 8, slip stitch in the first ch', 'ch 8; join ring @first chain'],
    ['Row 1: Sc in 2nd ch from hook and in each ch across. (25 sc)', 'row 1: sc @nth2 chain from-hook & @each chain ->end = 25 sc'],
    ['dc in 4th ch from hook (3 sk chs count as dc)', 'dc @nth4 chain from-hook (=1 dc)'],
    ['1 dc in 4th ch from hook (counts as 2 dc)', '1 dc @nth4 chain from-hook (=2 dc)'],
    ['Ch 43 (47, 51)', 'ch 43/47/51'],
    ['Row 1: Ch 20, hdc in 3rd ch, hdc across.', 'row 1: ch 20; hdc @nth3 chain; hdc ->end'],
    ['Miss 3 ch (counts as 1 tr), 1 tr in each ch to end.', 'skip @next 3 chain (=1 tr); 1 tr @each chain ->end'],
    ['skip first 3 ch', 'skip @first 3 chain'],
    ['Make a chain 40 cm long.', 'ch ~'],
    ['Ch a multiple of 6 plus 3.', 'ch ~'],
    ['ch 50+1', 'ch 51'],
    ['Ch 12, or as long as you like', 'ch 12; "as long as you like"'],
    ['Fsc 36.', 'foundation sc 36'],
    ['48 fsc (see special stitches)', '48 foundation sc; "(see special stitches)"'],
    ['sc in the back bump of 2nd ch from hook', 'sc @nth2 chain from-hook third-loop'],
    ['Rnd 1: Ch 13, 2 sc in 2nd ch, sc in next 10, 4 sc in last ch; working along opposite side, sc in next 10, 2 sc in last.', 'round 1: ch 13; 2 sc @nth2 chain; sc @next 10; 4 sc @last chain; other-side; sc @next 10; 2 sc @last'],
    ['do not turn, continue along other side of ch', 'no turn; other-side'],
    ['in the unworked loops', 'other-side'],
    ['Join A with sl st in any corner ch-2 sp', 'join yarn A @any space2-corner'],
    ['Attach B in same place', 'join yarn B @same st'],
    ['With RS facing, rejoin yarn to first row end', '"With RS facing"; join yarn yarn @first row-end'],
    ['work 1 sc in each row end', '1 sc @each row-end'],
    ['30 sc evenly along the side', '30 sc evenly'],
    ['2 sc in side of each dc', '2 sc @each dc'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});
