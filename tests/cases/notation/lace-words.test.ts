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
  // Near misses.
  ['sc around. (1 x 2 sc)', 'sc ->end; "(1 x 2 sc)"'],
  ['2 tr in next side', '2 tr evenly'],
  ['Ch 3, sc in next st, dc in next st, rep around', 'ch 3; <sc @next st; dc @next st> ->end'],
  ['dc in each st until it measures 10 in. join', 'dc @each st; even to 254 mm; join'],
])('%s', (text, read) => {
  expect(tree(text)).toBe(read);
});
