/**
 * Rows of flat pieces as they are listed in pasted pages: orders below orders, talk between rows, counts
 * without a sign. Sources: common practice; all texts of our own invention.
 */
import { describe, expect, test } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const ROW_1 = 'Ch 22.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (21 sc)\n';
const mesh = (order: string): string => `${ROW_1}Row 2: Ch 1, sc in first st, *ch 1, sk 1, sc in next st; ${order}`;

describe('lines of flat pieces', () => {
  test('an order to repeat rows does not take in the line below it', () => {
    const text = `Body
Row 1: Ch 40, hdc in 3rd ch from hook and across, turn (38)
Row 2: Ch 2, hdc across, turn (38)
Repeat Row 2 until you have 12 rows
Repeat Row 2 until you have 20 rows
Ch 2, hdc across, turn
Ch 1, sc across, turn
`;
    expect(made(text)).toHaveLength(22);
    expect(complaints(text)).toEqual([]);
  });

  test('sizes behind "until you have" leave it an order, below talk too', () => {
    const text = `Back – Small (Large)
Row 1: Ch 40 (46), hdc in 3rd ch from hook and across, turn (38, 44)
Row 2: Ch 2, hdc across, turn (38, 44)
Upper part – Small (Large)
Continuing from the lower part:
Repeat Row 2 until you have 12 (16) rows for the back
`;
    // Twelve in the one size, sixteen in the other.
    expect(made(text)).toHaveLength(28);
    expect(complaints(text)).toEqual([]);
  });

  test('another way to begin is told, and not worked as well', () => {
    const text = `Row 1: Ch 2, fsc 23. [23 sc]
Alternately, ch 24, sc in 2nd ch and across.
Row 2: Ch 2, turn, dc in each st across. [23 dc]
`;
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 23 proven', 'Row 2 23 proven']);
    expect(made(text)).toHaveLength(2);
  });

  test('a count behind an order that goes to the end', () => {
    expect(worked(mesh('rep from * 11 sc and 10 ch-1 sps'), 'Row 2')).toEqual(['Row 2 11 proven']);
    expect(complaints(mesh('rep from * 12 sc and 10 ch-1 sps'))).toEqual(['3 count-mismatch']);
    expect(worked(mesh('rep from * the length of the row (11 sc)'), 'Row 2')).toEqual([
      'Row 2 11 proven',
    ]);
  });

  test('the number of a repeat said again is no count of stitches', () => {
    for (const order of [
      'rep from * 9 times (10 total)',
      'rep from * 9 more times, 10 times in total (11 sc)',
      'rep from * 9 times (10 in all) (11 sc)',
    ])
      expect([order, ...complaints(mesh(order))]).toEqual([order]);
    // In a bracket behind "x 10" it is the count.
    const text = `${ROW_1}Row 2: Ch 1, sc in first st, (ch 1, sk 1, sc in next st) x 10 (12 total)`;
    expect(complaints(text)).toEqual(['3 count-mismatch']);
  });
});

describe('how far and how often', () => {
  test.each([
    'rep from * down the line',
    'rep from * acrocc',
    'continue to repeat the pattern from * to * across',
    'continue the pattern to the end',
    'do this all the way across',
    'alternate again all the way across your row',
  ])('%s', (order) => {
    expect([...worked(mesh(`${order}, turn.`), 'Row 2'), ...complaints(mesh(`${order}, turn.`))]).toEqual([
      'Row 2 11 unstated',
    ]);
  });

  test('until there are so many of one and of another', () => {
    const text = `Ch 29.
Row 1: Dc in 4th ch from hook, dc in next 4 ch, *ch 2, sk 2 ch, dc in next 5 ch; rep from * until there are 4 groups of 5 dc and 3 ch-2 spaces between groups, turn.`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([21]);
  });

  test('the name of a row that shapes is no increase of its own', () => {
    const row = (count: number): string =>
      `Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across. (19 sts)\nRow 2: Increase - 2 hdc in first sc and in each sc across. (${count} sts)`;
    expect(worked(row(38), 'Row 2')).toEqual(['Row 2 38 proven']);
    expect(complaints(row(39))).toEqual(['3 count-mismatch']);
  });

  test('a title between the label and the lines of the row', () => {
    const text = 'Ch 20.\nRow 1: Setting up the Mesh\nSc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across. (10 sc)';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 10 proven']);
  });
});

describe('what is told beside the work', () => {
  test('where the last stitch goes is not one more', () => {
    const row = (words: string): string => `${ROW_1}Row 2: Ch 1, ${words}. (21 sc)`;
    for (const words of [
      'sc across the row ending with a sc into the st with the stitch marker if you used one',
      'sc in each st across, ending with sc in marked st',
      'sc across, ending with a sc in the turning chain',
    ])
      expect([words, ...complaints(row(words))]).toEqual([words]);
    expect(complaints(row('sc in next 21 sts, ending with sc in marked st'))).toEqual(['3 round-overrun']);
  });

  test('a count of what has no name of the trade', () => {
    const text = `${ROW_1}Row 2: Ch 1, sc in each sc across - 21 wisp-st loops. Ch 1, turn.\nRow 3: sc in each st across (21)`;
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 21 unstated', 'Row 3 21 proven']);
    expect(complaints(`${ROW_1}Row 2: Ch 1, sc in each sc across - 3 zzumble dc in last.`)).toEqual(['3 unread']);
  });

  test('talk of the rounds that follow, below a counted one', () => {
    const text = `Ch 16.
Rnd 1: Sc in 2nd ch from hook and in each ch across, join (15)
The next few rounds are worked in the third loop of the round below. Work into that loop each time.
Rnds 2-3: Ch 1, sc across in 3rd loop, join (15)`;
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 15 proven']);
    expect(complaints(text)).toEqual([]);
  });

  test('a stitch of her own may be called after an order', () => {
    const text = `Special stitches
Ending dc = 2 dc in last st

Ch 13.
Row 1: Dc in 4th ch from hook and in each ch across, turn. (11 dc)
Row 2: Ch 3, dc in next 9 dc. Ending dc. (12 dc)`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 12 proven']);
  });
});

describe('chains that first rows stand on', () => {
  test('the chain of the row goes on from the foundation, and is counted from the hook with it', () => {
    const row = (n: number): string =>
      `Ch 20.\nRow 1: Ch 4 (counts as dc + ch 1), dc in 6th ch from hook, *ch 1, sk 1, dc in next ch; rep from * across. (${n} dc)`;
    expect(worked(row(11), 'Row 1')).toEqual(['Row 1 11 proven']);
    expect(complaints(row(12))).toEqual(['2 count-mismatch']);
  });

  test('what "ch 6" was said to hold goes for the next row', () => {
    const text = `Ch 45.
Row 1: Dc in 4th ch from hook and in each ch across. (43 dc)
Row 2: Ch 6 (counts as dc and ch-2 sp), turn, sk next 2 dc, dc in next dc, *ch 2, sk 2 dc, dc in next dc; rep from * across. (15 dc, 14 ch-2 sps)
Row 3: Ch 6, turn, dc in next dc, *ch 2, dc in next dc; rep from * across. (15 dc, 14 ch-2 sps)`;
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 15 proven', 'Row 3 15 proven']);
  });

  test('a chain of two is begun in, and not worked along', () => {
    expect(complaints('Ch 2.\nRow 1: In 1st ch: hdc, sc, hdc; ch 1, turn. (3 sts)')).toEqual([]);
    expect(complaints('Ch 2.\nRow 1: In 1st ch: hdc, sc, hdc; ch 1, turn. (4 sts)')).toEqual([
      '2 count-mismatch',
    ]);
  });

  test('a sentence on how wide it is makes no other chain', () => {
    const text = `Chain a multiple of 3 + 2. Chain enough for the width of your blanket.
Row 1: Dc in 4th ch from hook and in each ch across, turn.
Row 2: Ch 2 (counts as dc), fpdc in next st, [dc in next 2 sts, fpdc in next st] across to last st, dc in last st.`;
    expect(made(text).slice(1)).toEqual([21, 21]);
    expect(complaints(text)).toEqual([]);
  });
});

describe('decreases of the designer', () => {
  const piece = (second: number, loops = 4): string => `Special abbreviations
dDec - * yoh, draw up a lp in next st, yoh and draw through 2 lps on hook, rep from * in each of next 2 sts, yoh and draw through all ${loops} lps on hook.
sdec: draw up a loop in each of next 2 sts, yo and draw through all 3 loops on hook

Ch 24.
Row 1: 1 dc in 4th ch from hook and in each ch to end. (22 dc)
Row 2: Ch 3, dDec, dc in each dc to last 4 dc, dDec, dc in last dc. (${second} dc)
Row 3: Ch 1, *sdec, sc in next st; rep from * across. (12 sts)`;

  test('told by movements, they take as many stitches as loops are drawn up in', () => {
    expect(worked(piece(18), 'Row 2', 'Row 3')).toEqual(['Row 2 18 proven', 'Row 3 12 proven']);
    expect(complaints(piece(17))).toEqual(['7 count-mismatch']);
  });

  test('where the loops at the end do not agree, how many is not known', () => {
    expect(worked(piece(18, 6), 'Row 2')).not.toEqual(['Row 2 18 proven']);
  });
});

describe('along the edges', () => {
  test.each([
    'sc in each sc around all four sides of the scarf',
    'work 33 sc evenly along to next corner',
    'sc in row ends down first side of the cloth, work 33 sc evenly along next side',
    'sc in next 10 sts, working up second side of scarf, sc in next 11 sts',
  ])('%s', (words) => {
    expect(complaints(`${ROW_1}Row 2: Ch 1, ${words}.`)).toEqual([]);
  });

  test('"Work +2 sc" and the total at the end of the row', () => {
    const row = (total: number): string =>
      `${ROW_1}Row 2: Ch 1, sc 10. Work +2SC into the 11th stitch. SC in the remaining 10 stitches. (End total of stitches in row: ${total})`;
    expect(worked(row(22), 'Row 2')).toEqual(['Row 2 22 proven']);
    expect(complaints(row(23))).toEqual(['3 count-mismatch']);
  });
});

describe('foundations of flat pieces', () => {
  const row1 = 'Row 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across. (12 sc)';

  test('what somebody used of a multiple', () => {
    const text = `Start the cloth by chaining an even number of stitches. I used 24 for this one.\n\n${row1}`;
    expect(worked(text, 'Row 1')).toEqual(['Row 1 12 proven']);
  });

  test('a row that makes its own chain stands on no multiple told above', () => {
    expect(made('Stitch Multiple: 2\n\nRow 1: Ch 24, sc in 2nd ch from hook and in each ch across. turn')).toEqual([23]);
  });

  test('a chain below a long title', () => {
    const text = `Easy Seaside Stitch Crochet Baby Blanket

PATTERN FOR THE EASY SEASIDE STITCH CROCHET BABY BLANKET
Ch 24 stitches
Rows 1 & 2: ch 1, sc to end, turn
`;
    expect(made(text)).toEqual([24, 24]);
  });

  test('"skip 1 sc" behind a chain that counts is its own place, where the count says so', () => {
    const row = (n: number): string =>
      `Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across. (19 sc)\nRow 2: Ch 3 (counts as 1 dc), ship 1 sc, 1 dc into each of next ${n} sc. (19 sts)`;
    expect(worked(row(18), 'Row 2')).toEqual(['Row 2 19 proven']);
    expect(complaints(row(17))).toEqual(['3 count-mismatch']);
  });
});

describe('from corner to corner in mesh', () => {
  const cloth = (first: number, second: number): string => `Ch 3.
Row 1: Sk first 2 chs (2 skipped chs count as 1 st), (sc, ch 1, sc, hdc) in 3rd ch from hook. You should have ${first} sts, including beg ch sp and ch-1 sp.
Row 2: Ch 2, turn, sc in same st. Ch 1, sk 1, sc in nxt ch-1 sp. Ch 1, sk 1, (sc, hdc) in top of beg ch sp from row below. (${second} sts, including beg ch sp and ch-1 sps)
Rows 3-6: Ch 2, turn, sc in same st. *Ch 1, sk 1, sc in next ch-1 sp*. Repeat between * and * across to last 2 sts. Ch 1, sk 1, (sc, hdc) in top of beg ch sp from row below.`;

  test('the chains skipped and the chain to turn count, and so do the spaces', () => {
    expect(complaints(cloth(5, 7))).toEqual([]);
    expect(worked(cloth(5, 7), 'Row 1', 'Row 2')).toEqual(['Row 1 4 proven', 'Row 2 5 proven']);
    expect(made(cloth(5, 7)).at(-1)).toBe(9);
  });

  test('a count that is off is told', () => {
    expect(complaints(cloth(6, 7))).toEqual(['2 count-mismatch']);
    expect(complaints(cloth(5, 8))).toEqual(['3 count-mismatch']);
  });

  test('"skip 3 ch (counts as dc), dc in 4th ch from hook" counts once', () => {
    const row = (n: number): string =>
      `Ch 12.\nRow 1: Sk first 3 chs (counts as dc), dc in 4th ch from hook and in each ch across. (${n} dc)`;
    expect(worked(row(10), 'Row 1')).toEqual(['Row 1 10 proven']);
    expect(complaints(row(11))).toEqual(['2 count-mismatch']);
  });
});

describe('places of flat pieces', () => {
  const DC = 'Ch 13.\nRow 1: Dc in 4th ch from hook and in each ch across, turn. (11 dc)\n';

  test('"sk sts" behind "each of" are those that were skipped', () => {
    const text = `${DC}Row 2: Ch 3, dc in next st, sk next 2 sts, fptr around each of next 2 sts, working behind last 2 sts made, fptr around each of 2 sk sts, dc in last 5 sts, turn. (11 sts)`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 11 proven']);
    expect(complaints(text.replace('(11 sts)', '(12 sts)'))).toEqual(['3 count-mismatch']);
  });

  test('"between 1st and 2nd dc" is one gap', () => {
    const row = (words: string): string => `${DC}Row 2: Ch 3, ${words}, ch 3, 3 dc between last 2 dc`;
    expect(made(row('2 dc between 1st and 2nd dc')).at(-1)).toBe(6);
    expect(made(row('2 dc between first 2 dc')).at(-1)).toBe(6);
  });

  test('a star that nothing repeats gives each stitch its chain', () => {
    const text = `${ROW_1}Row 2: Ch 1, sc in first st, *ch 1, sc in each of the sts across`;
    expect(made(text).at(-1)).toBe(21);
    const fans = `Ch 22.
Row 1: Sc in 2nd ch from hook, *ch 3, sk 3 ch, sc in next ch; rep from * across, turn.
Row 2: Ch 3, 3 dc in each ch-3 sp, dc in last sc, turn.
Row 3: Ch 1, sc in first st, *ch 3 and work a sc in between each group of 3 dc, then sc in turning ch.`;
    expect(made(fans).at(-1)).toBe(8);
  });

  test('an increase cluster is defined by a dash', () => {
    const text = `Cluster - 3 double crochet in space indicated.

Inc Cluster - cluster, ch 1, cluster in space indicated.

Ch 9.

Row 1: Dc in 4th ch from hook, ch 1, sk 1 ch, dc in next ch, ch 1, sk 1 ch, dc in next 2 ch, turn. (6 dc)
Row 2: Ch 3, Inc Cluster in each ch-1 sp, dc in last dc. (14 dc)`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 14 proven']);
  });
});
