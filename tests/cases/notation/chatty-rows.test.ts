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
    ['sc around. Singel crochte in eahc stich of the row.', 'sc ->end; sc @each st'],
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
    ['4 sc, dec x 6 (29)', '<4 sc; tog> x6 = 29'],
    ['4 sc, dec x 6 (11)', '4 sc; tog 6 = 11'],
    ['4 sc, dec x 6 (20)', '4 sc; tog 6 = 20'],
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
    ['7 – 12 rows / 6 rows / – 36 sc', 'row 7..12: 36 sc = 6 row'],
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

describe('a list that goes on by itself', () => {
  test.each([
    ['sc in 1st st, 2 sc in next st, around (18 st)', '<sc @next st; 2 sc @next st> ->end = 18 stitch'],
    ['1 sc in first sc, 2 sc in second sc, and continue this way to end (24 sc)', '<1 sc @next sc; 2 sc @next sc> ->end = 24 sc'],
    ['2 sc tog, to the end (8 sc)', '<sc2tog> ->end = 8 sc'],
    // Near misses: what goes on by itself, and what goes on otherwise.
    ['sc in each st, around (18 st)', 'sc @each st; "around" = 18 stitch'],
    ['sc in each st to end, around', 'sc @each st ->end; "around"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('chains told behind the stitches that they part', () => {
  test.each([
    ['2 tr separated by 3 ch in next sp', '{tr; ch 3; tr} @next space'],
    ['3 dc in next sp with a ch 1 between, ch 2', '{dc; ch 1; dc; ch 1; dc} @next space; ch 2'],
    ['1 sc in each of next 4 tr with ch 3 between each', '(<sc @next tr; ch 3> x3; sc @next tr'],
    ['two trebles separated by two chain under next three chain', '{tr; ch 2; tr} @next space3'],
    ['2 dc in next sp with RS facing', '2 dc @next space; "with RS facing"'],
    ['sc in next st with A', 'sc @next st; yarn with A'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('places and lengths in other words', () => {
  test.each([
    ['4 double crochet in end chain', '4 dc @last chain'],
    ['dc into the next, and the next 18 sts', 'dc @next & @next 18 sts'],
    ['sl st top beg sc, ch-1, turn', 'join @top sc; ch 1; turn'],
    ['2 dc all the way around', '2 dc ->end'],
    ['(Miss 1, 3 sc in the 3 chain 4 times)', '(<skip @next 1; 3 sc @next 3 chain> x4'],
    ['1 p, 1 s c in next', '1 picot; 1 sc @next'],
    ['place 2 dc into the first sp', '2 dc @first space'],
    ['place marker in 3rd st', '"place marker in 3rd st"'],
    ['With Teal and E hook ch-16', 'yarn with Teal; ch 16'],
    ['Repeat rows 2 and 3 for desired length ending with row 3', 'rows 2,3 to ? mm ending 3'],
    ['Rep last row until cuff (slightly stretched) measures 13 (14-15)" [33 (35.5-38) cm]', 'last 1 rows to ? mm'],
    ['Work even until you reach the size you want.', 'even to ? mm'],
    ['16 sc – color change = 16', '16 sc; "color change" = 16'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('pieces and places by their names', () => {
  test.each([
    ['sc around entire blanket', 'sc evenly'],
    ['sc around next 3 sts', 'sc @next 3 sts'],
    ['6 hdc along the side of the instep', '6 hdc evenly'],
    ['6 hdc in end of the instep', '6 hdc evenly'],
    ['sc in end of each row', 'sc @each row-end'],
    ['sc in end of next 10 rows', 'sc @next 10 row-ends'],
    ['20 sc along side of rows', '20 sc @each row-ends'],
    ['sc in sc between next 2 sps', 'sc @this sc'],
    ['Sc in the 4 stitches left unworked from round 6', 'sc @next 4 st-frees'],
    ['3 dc in each of the other ch 1 spaces', '3 dc @each space1s'],
    ['Join last ch-6 to 1st sc', 'join @first sc'],
    ['cluster as before over next 8 dc', 'dc8tog @next 8 dc'],
    ['Using Red Berry yarn and 6 mm crochet hook, ch 8', 'yarn with Red; ch 8'],
    ['work as follows: ch 35', 'ch 35'],
    ['Rep rows 1st to 4th rows once more', 'rows 1,2,3,4 x1'],
    ['Repeat Row 3 👉 60 more times', 'rows 3 x60'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('counts and repeats in rare dress', () => {
  test.each([
    ['sl st into first dc. <10> Fasten off.', 'join @first dc; fasten-off = 10'],
    ['Crochet 32 rows of sc', 'even sc 32 rows'],
    ['Evenly work 30 sc around', '30 sc evenly ->end'],
    ['sc up next 4 sc', 'sc @next 4 sc'],
    ['With H hook and raspberry yarn, ch 26', '"With H hook and raspberry yarn"; ch 26'],
    ['(sc, inc) x 3 (increase happens on the odd rounds)', '(<sc; inc> x3; "(increase happens on the odd rounds)"'],
    ['Rep rows 1 & 2 for a total of 16 rows', 'rows 1,2 until 16 rows'],
    // Near misses: what a sentence says of work stays unread; what it counts is talk.
    ['We crochet 5 dc out of the first sc', 'UNREAD "We crochet 5 dc out of the first sc"'],
    ['You will now have 15 sc', '"You will now have 15 sc"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });

  test('"[3 (4, 5) times]" and a count of motifs, in three sizes', () => {
    expect(tree('3 dc [2 (3, 4) times], ch 1', { sizes: 3 })).toBe('<3 dc> x2/3/4; ch 1');
    expect(tree('join in top of ch-4—3 (4, 5) motifs between points.', { sizes: 3 })).toMatch(/= 3\/4\/5 group/);
  });
});

describe('slips of scanners and pasted tables', () => {
  test.each([
    ['Rnd3: |inc, sc in next st| x6 (18)', 'round 3: |<inc; sc @next st> x6 = 18'],
    ['(inc) repeat 6 times [12]', '(<inc> x6 = 12'],
    ['245C (24)', '24 sc = 24'],
    ['(45C, dec) * 9 (45)', '(<4 sc; tog> x9 = 45'],
    ['2 double crochet (dc) in 4th chain (ch) from hook', '2 dc @nth4 chain from-hook'],
    ['Repeat row 3 approximately 55 rows.', 'rows 3 for 55 rows'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });

  test('what is no stitch stays none', () => {
    expect(tree('155C is a lot')).not.toMatch(/sc/);
  });
});

describe('another craft, and where a row goes', () => {
  test.each([
    ['Tss in each st across, return.', 'not-worked "Tss in each st across, return"'],
    ['pull up a loop in each ch, forward pass, return pass', '"pull up a loop in each ch"; not-worked "forward pass, return pass"'],
    ['pass the return tray', 'UNREAD "pass the return tray"'],
    ['working down first side, sc in each row end', '"working down first side"; sc @each row-end'],
    ['sc along cast on edge', 'sc evenly'],
    ['FPtr around st 2 rows below next st', 'front-post tr @next st 2 below'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('how far, told by what is made or left', () => {
  test.each([
    ['2 sc into each st until you have 16 stitches. (16)', '2 sc @each st ->end = 16'],
    ['[ch 1, dc in next st] across until you have 2 ch-1 spaces left, ch 1', '[<ch 1; dc @next st> ->last 2 space1s; ch 1'],
    ['*ch 6, sc in next ch; repeat from * across until there are 38 loops in all', '*<ch 6; sc @next chain> ->end'],
    ['Turn. (1 box increased at the beginning of row)', 'turn = 1 decrease'],
    ['until you feel like it', '"until you feel like it"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

describe('small words in front and behind', () => {
  test.each([
    ['Last row, sl st into each st', 'row "Last row": ss @each st'],
    ['At last row, turn', '"At last row"; turn'],
    ['Work 102 ch with cotton merino on hook size 4.5 mm.', 'ch 102; yarn with cotton'],
    ['7 sc in a bone ring', '7 sc @next ring'],
    ['sc closely around', 'sc evenly ->end'],
    ['join to 1st dc in the first corner', 'join @first dc'],
    ['starting from the second chain from the hook, 3 sc in each chain', '"starting from the second chain from the hook"; 3 sc @each chain'],
    ['sl st back into first st, sc in next st', 'ss @first st; sc @next st'],
    ['sc in next st (including the one you just made)', 'sc @next st; "(including the one you just made)"'],
    ['*sc in next 8 sc*, hdc in next 8 sc; rep between *s once', '*<sc @next 8 sc> x?; hdc @next 8 sc; again *<sc @next 8 sc> x1 more'],
    ['12x (12)', '12 sc = 12'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});
