// Words of lace and motifs as they are printed. Lines are invented; meanings are common practice.
import { expect, test } from 'vitest';
import { tree } from './shown.ts';

test.each([
  ['sc around. (6 ch 8 loops in ring)', 'sc ->end = 6 space8'],
  ['sc around. (6 x 1 ch sps)', 'sc ->end = 6 space1'],
  ['2 tr into next side space', '2 tr @next space'],
  ['*3 dc, ch 1, into next edge ch-sp', 'mark *; ?{3 dc; ch 1} @next space'],
  ['sc in. next ch-3 loop', 'sc @next space3'],
  ['in sp of next shell make . 3 tr, ch 2, tr', '{3 tr; ch 2; tr} @this space of (@next group\'shell\')'],
  ['sc around, join with sl st to first sc made in the round', 'sc ->end; join @first sc'],
  ['Ch 7, sc in ring, repeat 4 more times', '<ch 7; sc @this ring> x4 more'],
  ['3 dc cluster in ring (3 dc cluster formed), ch 2', 'dc3cluster @this ring; "(3 dc cluster formed)"; ch 2'],
  ['sc around. (63, ch-2 spaces.)', 'sc ->end = 63 space2'],
  ['Make 4. Beginning at centre, ch 8.', '"Make 4"; "Beginning at centre"; ch 8'],
  ['Ch 4, dc, ch 1 9 times', 'ch 4; <dc; ch 1> x9'],
  ['ch 6, sl st join', 'ch 6; join'],
  ['tr in each of next 3 ch–4 tr counting starting ch.', 'tr @next each 3 chain = 4 tr +start'],
  ['*Cluster, ch 2, cluster* in next sp and in each sp around, join', '{cluster; ch 2; cluster} @each space ->end; join'],
  ['Ch 2, 4 dc, sl st in same ch-3 sp', '?{ch 2; 4 dc; ss} @same space3'],
  ['sc around stems of next 2 sc', 'sc @next 2 sc'],
  ['sc around. (There should be 8 petals around the centre.)', "sc ->end = 8 group 'petal'"],
  ['sc around. You will have 5 petals when you finish.', "sc ->end = 5 group 'petal'"],
  ['Rep rnd 4 but having ch 4 between clusters', 'rows 4 ch ?->4'],
  ['Same as last rnd but ch 7 instead of ch 6.', 'last 1 rows ch 6->7'],
  ['Rnd 5: Same as 4th rnd, making ch-8 lps instead of ch-7.', 'round 5: rows 4 ch 7->8'],
  ['Rnd 6: Repeat 4th rnd, making ch 7 (instead of ch-5).', 'round 6: rows 4 ch 5->7'],
  ['Rnd 7: Repeat 5th rnd, making 9 dc (instead of 7 dc).', 'round 7: rows 5 dc 7->9'],
  ['Same as 2nd row, but make only 1 ch at end of row to turn.', 'rows 2 ch end->1'],
  ['Rep rnd 6 working 6 ch instead of 5 and 9 dc instead of 7 in each lp', 'rows 6 ch 5->6 dc 7->9'],
  ['4 tr in next sc, holding back on hook the last loop of each tr; complete cluster as before', 'tr4cluster @next sc'],
  ['sc around, ch 1, dc in 3rd st of ch-3 first made', 'sc ->end; ch 1; dc @nth3 st of (@this start-chain3)'],
  // Near misses.
  ['Rep rnd 3, ch 1, turn.', 'rows 3; ch 1; turn'],
  ['Rep rnd 3 but with 3 sc in each corner', 'rows 3; UNREAD "but with 3 sc in each corner"'],
  ['Rep rnd 3 with ch 2 at start.', 'rows 3; UNREAD "with ch 2 at start"'],
  ['Ch 3, dc in next st, dc, ch 1 3 times', 'ch 3; dc @next st; dc; <ch 1> x3'],
  ['sc around. (3 dc clusters)', "sc ->end = 3 group 'cluster'"],
  ['sc around. (1 x 2 sc)', 'sc ->end; "(1 x 2 sc)"'],
  ['2 tr in next side', '2 tr evenly'],
  ['Ch 3, sc in next st, dc in next st, rep around', 'ch 3; <sc @next st; dc @next st> ->end'],
  ['dc in each st until it measures 10 in. join', 'dc @each st; even to 254 mm; join'],
])('%s', (text, read) => {
  expect(tree(text)).toBe(read);
});
