// Rows with talk in and around them, as blogs print them. Lines are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { startsInstruction } from '../../../src/notation/index.ts';
import { tree } from './shown.ts';

describe('talk behind a row', () => {
  test.each([
    ['6 sc in ring (6) Halfway through round 1 we can peek inside.', '6 sc @this ring; "Halfway through round 1 we can peek inside" = 6'],
    ['sc around. Muff measures 20".', 'sc ->end; "Muff measures 20""'],
    ['sc around. Fasten the nostrils between rows 2 and 3.', 'sc ->end; "Fasten the nostrils between rows 2 and 3"'],
    ['Rep rnd 3. (11 sts after last repeat)', 'rows 3 = 11 stitch'],
    // Near misses: words that might be work stay unread.
    ['sc around. Blobel crochte togetha twise.', 'sc ->end; UNREAD "Blobel crochte togetha twise"'],
    ['sc around. Singel crochte in eahc stich of all 12.', 'sc ->end; UNREAD "Singel crochte in eahc stich of all 12"'],
    ['Rep rnd 3, however work 5 chains instead of 3', 'rows 3; UNREAD "however work 5 chains instead of 3"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('brackets and what they hang on', () => {
  test.each([
    ['(2 dc, ch 2, 3 dc) (shell made) in corner', '{2 dc; ch 2; 3 dc} @this corner'],
    ['(ch 3 (counts as dc), 2 dc, ch 2, 3 dc) in same corner', '{ch 3 (=1 dc); 2 dc; ch 2; 3 dc} @same corner'],
    ['(2 tr) between next sts', '{2 tr} @next gap'],
    ['[ch 1, dc] twice all in last ch', '{[<ch 1; dc> x2} @all last chain'],
    ['3 dc (2dc grouping), ch 2', '3 dc; "(2dc grouping)"; ch 2'],
    ['sc in each of previous 7 sts', 'sc @next each 7 sts'],
    ['hdc around increasing 11 more sts. evenly (66 sts)', 'hdcinc 11 evenly ->end = 66 stitch'],
    ['Ch 140, + 3 to count as dc', 'ch 143 (=1 dc)'],
    ['ch 140, + 3 sc in ring', 'ch 140; 3 sc @this ring'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('whose number "x 6" is, told by the count', () => {
  test.each([
    ['2 sc, inc x 6 (24)', '<2 sc; inc> x6 = 24'],
    ['12 sc, inc x 12 (36)', '12 sc; inc 12 = 36'],
    ['4 sc, dec x 6 (30)', '<4 sc; tog> x6 = 30'],
    ['4 sc, dec x 6 (29)', '4 sc; tog 6 = 29'],
    ['4 sc, dec x 6', '4 sc; tog 6'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('labels of many manners', () => {
  test.each([
    ['Decrease row - Ch 1, sc2tog, sc across.', 'row "Decrease row": ch 1; sc2tog; sc ->end'],
    ['Row 5 (WS): - Decrease row - ch 1, sc across.', 'row 5 WS: ch 1; sc ->end'],
    ['Armhole row: Sl st in first 3 sts, hdc in each st across.', 'row "Armhole row": ss @first 3 sts; hdc @each st ->end'],
    ['Row: 6 inc (12)', 'row "Row": 6 inc = 12'],
    ['7 – 12 rows / 6 rows / – 36 sc', 'row 7..12: "6 rows"; 36 sc'],
    ['All sizes: Next round: Ch 2, hdc around.', '{All sizes} round "All sizes: Next round": ch 2; hdc ->end'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });

  test('a number, an order to repeat, and talk in brackets', () => {
    const starts = (text: string) => startsInstruction(text, 0, text.length);
    expect(starts('16. Rep row 15. (Do it as often as you want to make the yoke long enough.)')).toBe('label');
    expect(starts('13.-15. (3 rows) unchanged (72)')).toBe('label');
    expect(starts('16. Repairs are easy. (Do them as often as you want.)')).toBe(null);
    expect(starts('Sale row: the shops on the left are closed')).toBe(null);
  });
});
