/** Pieces worked in rows: what stands around the rows, how they end, and borders about them. Invented. */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const FLAT =
  'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRows 2-22: Ch 1, sc in each st across, turn. (20 sc)\n';

describe('a border about a piece worked in rows is told, and not held against its last row', () => {
  it.each([
    'Sc around, putting 3 sc in corner sts. Sl st to 1st sc. Fasten off.',
    'Border: Join in bottom right corner of cloth - work 2 sc in corner, sc in every sc up side, 3 sc in corner, sc in each st across, join.',
    'Rnd 1: Ch 1, sc in each st around, working 3 sc in each corner, join. (84 sc)',
    'Rnd 1: Work 2 sc in same st as last sc of Row 22, continue working a sc edge around cloth along next 3 sides, join.',
    'Border: Sc evenly around all 4 sides evenly, placing 3 sc in each corner. Join.',
    'Rnd 1: 3 sc in corner, sc in between 2nd and 3rd rows, sc in each row end down cloth, join.',
  ])('%s', (border) => {
    expect(complaints(FLAT + border)).toEqual([]);
    expect(worked(FLAT + border, 'Row 22')).toEqual(['Row 22 20 proven']);
  });

  it('in a round with corners the words are worked', () => {
    const square = (n: number): string => `Rnd 1: Ch 1, 8 sc in ring, join. (8 sc)
Rnd 2: Ch 1, *sc in next st, 3 sc in next st; rep from * around, join. (16 sc)
Rnd 3: Ch 1, sc around, working 3 sc in each corner, join. (${n} sc)
Rnd 4: Ch 1, sc in each st around, putting 3 sc in corners, join. (32 sc)
`;
    expect(complaints(square(24))).toEqual([]);
    expect(worked(square(24), 'Rnd 3', 'Rnd 4')).toEqual(['Rnd 3 24 proven', 'Rnd 4 32 proven']);
    expect(complaints(square(23))).toEqual(['3 count-mismatch']);
  });
});

describe('the turning chain named behind the last stitches', () => {
  const ribs = (until: string, n = 13): string => `Ch 14.
Row 1: Sc in 2nd ch from hook, sc in each ch to end, turn. (13 sc)
Row 2: Ch 3, dc in each of next 12 sc, turn. (13 dc)
Row 3: Ch 3, *dc in each of next 2 dc, BPdc around next dc; rep from * ${until}, dc in each of last 2 dc, dc in top of ch 3, turn. (${n} dc)
`;
  it.each([
    'to last 2 dc',
    'to last 2 dc and turning ch',
    'to last 2 dc and ch 3 to turn with',
    'to last 3 sts',
  ])('%s', (until) => {
    expect(complaints(ribs(until))).toEqual([]);
    expect(worked(ribs(until), 'Row 3')).toEqual(['Row 3 13 proven']);
    expect(complaints(ribs(until, 14))).toEqual(['4 count-mismatch']);
  });
});

describe('a foundation chain that stands in talk', () => {
  const rows = (n: number): string =>
    `Row 1: Dc in 4th ch from hook and in each ch across, ch 3, turn. (${n} dc)\nRow 2: Skip first dc, dc in each dc across, dc in top of ch 3, turn.\n`;
  it.each([
    'Worsted yarn and a 5 mm hook... Ch 23, adding multiples of 11 for a wider scarf. Work in the back loops.\n',
    'Scarf in waves. Start by chaining 23 stitches across. The repeat is 11, and 2 more for the turning chain.\n',
    'This scarf begins with a foundation chain of 23 sts. It is a multiple of 11 plus 1.\n',
    '• Chain: Chain 23. (Adjust this number for a wider neck. Make sure your starting chain is a multiple of 11 plus 1).\n',
  ])('%s', (talk) => {
    expect(complaints(talk + rows(21))).toEqual([]);
    expect(worked(talk + rows(21), 'Row 1')).toEqual(['Row 1 21 proven']);
    expect(complaints(talk + rows(20))).not.toEqual([]);
  });

  it('a chain for another width is not taken', () => {
    const text = `To make it wider, ch 45.\n${rows(21)}`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('counts at the end of a row', () => {
  it.each([
    ['Row 2: Ch 1, sc in first 10 sts, 3 sc in next st, sc in last 9 sts, turn. (sc 22)', 22],
    ['Row 2: Ch 1, sc in each st across. You will find that you made 20 single crochet.', 20],
    ['Row 2: Ch 1, sc in each of next 20 sc ... 20sc forming 1 hill at the end of this row.', 20],
  ])('%s', (row, n) => {
    const text = `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n`;
    expect(worked(`${text}${row}\n`, 'Row 2')).toEqual([`Row 2 ${n} proven`]);
    const wrong = row.replace(/(sc |made |\.\.\. )2(\d)/, '$12' + '7');
    expect(complaints(`${text}${wrong}\n`)).toEqual(['3 count-mismatch']);
  });

  it('of things that the hands do not know are listed, not compared', () => {
    const text = `${FLAT}Row 23: Ch 1, sc in each st across - 4 ripples.\n`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('names of stitches that have a line of their own', () => {
  it('are defined by the line below', () => {
    const text = `Shell:
Working (3dc, ch 1, 3dc) all in the same space makes a shell which gives the point.

dcb.
Work dc around back of the dc on row below

Starting at the neck, ch 6.
Row 1: 2 dc in 4th ch from hook, ch 1, sk 1 ch, 3 dc in last ch, ch 3, turn. (6 dc)
Row 2: 2 dc in first dc, ch 1, shell in next ch 1 sp, ch 1, 3 dc in top of turning ch, turn. (12 dc)
Row 3: Ch 3, skip first dc, dcb (see above) in each of next 2 dc, leave rem sts unworked. (3 dc)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2', 'Row 3')).toEqual([
      'Row 1 6 proven',
      'Row 2 12 proven',
      'Row 3 3 proven',
    ]);
  });
});

describe('lines that are no rows', () => {
  it.each([
    ['FO Pram Cover\n', ''],
    ['', '23. Weave in ends.\n'],
    ['', '* Working in the first stitch the ch 1 does not count as a stitch so always work there.*\n'],
  ])('%s%s', (before, behind) => {
    expect(complaints(before + FLAT + behind)).toEqual([]);
    expect(worked(before + FLAT + behind, 'Row 22')).toEqual(['Row 22 20 proven']);
  });

  it('and the row below such a line is one', () => {
    const text = `${FLAT}* Working in the first stitch the ch 1 does not count as a stitch so always work there.*\nRow 23: Ch 1, sc in each st. (20 sc)\n`;
    expect(worked(text, 'Row 23')).toEqual(['Row 23 20 proven']);
  });

  it('talk in a bracket that nothing closes ends with its sentence', () => {
    const text = `${FLAT}Row 23: Ch 1, 2 sc in first st (which is the corner of the cloth. Sc in each st across. (21 sc)\n`;
    expect(complaints(text)).toEqual(['4 unbalanced-bracket']);
    expect(worked(text, 'Row 23')).toEqual(['Row 23 21 proven']);
  });
});

describe('which terms are spoken', () => {
  it('"in English, US terms with abbreviations for UK terms" are US terms', () => {
    const text = `Written in English US terms with abbreviations for UK terms\n\n${FLAT}`;
    expect(complaints(text)).toEqual([]);
  });

  it('a group in the 2nd chain has no height of its own', () => {
    const text =
      'US terms.\nCh 26.\nRow 1: [Sc, 2 dc] in 2nd ch from hook, skip next 2 ch, *[sc, 2 dc] in next ch, skip next 2 ch; rep from * to last ch, sc in last ch, turn. (25 sts)\n';
    expect(complaints(text)).toEqual([]);
  });
});

describe('rows run on in one paragraph, with a dash behind their numbers', () => {
  it('are all there', () => {
    const text =
      'Ch 12.\nRow 1- 1 dc in 4th ch from hook and in each ch across. Ch 3, turn. Note: Ch 3 counts as 1 dc throughout. Row 2- 1 dc in each of next 8 dc, 1 dc in top of ch 3. Ch 3, turn. Row 3- Ch 3, 1 dc in each of next 9 dc. (10 dc)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2', 'Row 3')).toEqual([
      'Row 1 10 unstated',
      'Row 2 10 unstated',
      'Row 3 10 proven',
    ]);
  });
});

describe('loops, yarns and counts in more words', () => {
  it('"hdc-blo to last st" goes on to the last stitch', () => {
    const rib = (n: number): string =>
      `Ch 9, hdc in 2nd ch from hook and in each ch. (8 sts)\nRow 2: Ch 1, turn. Hdc in 1st st, hdc-blo to last st, hdc in last st. (8 hdc)\nRow 3: Ch 1, turn, sc-blo in each st across. (${n} sc)\n`;
    expect(complaints(rib(8))).toEqual([]);
    expect(worked(rib(8), 'Row 2', 'Row 3')).toEqual(['Row 2 8 proven', 'Row 3 8 proven']);
    expect(complaints(rib(9))).toEqual(['3 count-mismatch']);
  });

  it('"As row 2 using yarn B" changes no stitch, and "evenly distribute" is left open', () => {
    const text =
      'UK terms.\n6ch.\nRow 1: 1dc in 2nd ch and in each ch to end, turn (5dc).\nRow 2: 1ch (does not count as st), 1dc blo in each dc, turn.\nRows 3-6: As row 2 using Yarn B.\nRow 7: As row 2 using yarn A. (5 dc)\nBody\nRow 1: (RS) Evenly distribute 30dc along, turn.\nRow 2: 2ch (counts as 1htr), 1htr in each dc, turn (30 htr).\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 7', 'Row 2')).toEqual(['Row 7 5 proven', 'Row 2 30 proven']);
  });

  it('the count of the last of several rows', () => {
    const text = (n: number): string =>
      `Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn - 19 sc.\nRow 2: Ch 1, 2 sc in first st, sc in each st across, turn - 20 sc.\nRows 3-6: Repeat Row 2 - ${n} sc on last row worked.\nRows 7-8: Rep Row 2 - 26 sc at end of last row.\n`;
    expect(complaints(text(24))).toEqual([]);
    expect(worked(text(24), 'Row 6', 'Row 8')).toEqual(['Row 6 24 proven', 'Row 8 26 proven']);
    expect(complaints(text(25))).not.toEqual([]);
  });

  it('a number behind "across," says again how many there are', () => {
    const text = (n: number): string =>
      `Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, ${n} sc.\nRow 2: Ch 1, turn, sc in each st across, 19 sc.\n`;
    expect(worked(text(19), 'Row 1', 'Row 2')).toEqual(['Row 1 19 proven', 'Row 2 19 proven']);
    expect(complaints(text(18))).toEqual(['2 count-mismatch']);
  });
});

describe('the first row and its chain', () => {
  it('"Foundation ch & row 1:" below special stitches is a row', () => {
    const text =
      'Special stitches\n\nV-stitch: Dc, ch 1, dc in same st.\n\nFoundation ch & row 1: Ch 20. Dc in 4th ch from hook and in each remaining ch. (18 dc)\nRow 2: Ch 3. Dc in next st and in each st across. (18 dc) Turn.\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 18 proven']);
  });

  it('"MB: make bobble" above it is no row, and "(Increase the width …)" no increase', () => {
    const text =
      'MB: make bobble - 4dc into the next ch, remove the hook from the loop, insert it under the first dc and draw the loop through.\nFoundation chain: Ch 12. (Increase the width by adding chains in multiples of 3.)\nRow 1 (RS): Sc in 2nd ch from the hook, 1 sc into each of the ch to the end - 11 sts. Turn.\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 11 proven']);
  });

  it('"1 hdc in 3rd ch (counts as 1 hdc)" may speak of the stitch itself; the count tells', () => {
    const text = (n: number): string =>
      `Ch 35. 1st row: 1 hdc in 3rd ch from hook (counts as 1 hdc). (2 hdc in next ch. 1 hdc in next ch) 16 times. Turn. ${n} hdc.\n2nd row: Ch 2 (does not count as hdc). 1 hdc in each hdc across. Turn. ${n} hdc.\n`;
    expect(complaints(text(49))).toEqual([]);
    expect(complaints(text(50))).toEqual([]);
    expect(complaints(text(51))).not.toEqual([]);
  });

  it('groups named by their size, with chains skipped by their number', () => {
    const text = (n: number): string => `5dc group. 5dc in to same space or stitch
With color 1 ch22, 1dc in 6th from hook, * skip ch2, 5dc group in next ch, skip ch2, 1dc in next ch, ch1, skip ch1, 1dc in next ch, * rpt from * to * once. Turn. (${n}, 5dc groups)
Next Row - 4ch, skip ch1, 1dc in next dc, * skip 2dc, 5dc in centre dc of 5dc group, skip 2dc, 1dc in next dc, ch1, skip ch1, 1dc in next dc, * rpt from * to * once. Turn. (16 dc)
`;
    expect(complaints(text(2))).toEqual([]);
    expect(worked(text(2), 'Next Row')).toEqual(['Next Row 16 proven']);
  });
});

describe('sizes', () => {
  const rows = `Yoke: Ch 35 (35-43-43). 1st row: Sc in 2nd ch from hook and in each ch across. Turn. 34 (34-42-42) sc. 2nd row: Ch 1. Sc in first sc. (Ch 1. Skip next sc. Sc in next sc) 16 (16-20-20) times. Sc in last sc. Turn. 18 (18-22-22) sc.\n`;
  it('with dashes in the brackets', () => {
    const text = `Sizes 6 (12-18-24) mos\n\n${rows}`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('stitches left without a word', () => {
  const fronts = (n: number): string => `Ch 20.
Row 1: Hdc in 2nd ch from hook and in each ch across, turn. (19 sts)
Row 2: Ch 1, turn, hdc in next 8 sts, [skip next 3 sts and place a stitch marker].
Rows 3-6: Ch 1, turn, hdc in each st. (${n} sts)
`;
  it('are left on purpose where the next row says how many there are', () => {
    expect(complaints(fronts(8))).toEqual([]);
    expect(worked(fronts(8), 'Row 2', 'Row 3')).toEqual(['Row 2 8 unstated', 'Row 3 8 proven']);
  });
  it('and not where it says another number', () => {
    // Two numbers would have to be wrong: the row may as well have been misread here.
    expect(complaints(fronts(9))).toEqual([]);
    expect(worked(fronts(9), 'Row 2', 'Row 3')).toEqual(['Row 2 8 unchecked', 'Row 3 8 unchecked']);
  });
});

describe('rows until there are so many', () => {
  const grow = (order: string, n: number): string => `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)
Row 2: Ch 1, turn, 2 sc in first st, sc in each st across. (11 sc)
${order}
Next row: Ch 1, turn, sc in each st across. (${n} sc)
`;
  it.each([
    'Rpt Row 2 until 6 rows have been worked in all.',
    'Rep row 2 until you have completed 6 rows.',
    'Rep row 2 for 4 more rows.',
  ])('%s', (order) => {
    expect(complaints(grow(order, 15))).toEqual([]);
    expect(complaints(grow(order, 16))).not.toEqual([]);
  });
});

describe('sizes with all their numbers in the bracket', () => {
  const text = (n: number): string => `Vest in three sizes
Ch (62, 66, 70).
Row 1: Sc in 2nd ch from hook and in each ch across. (61, 65, 69 sc)
Row 2: Ch 1, turn, sc in first (20, 22, 24) sts, ch 1, sk 1, sc in next (40, 42, 44) sts. (60, ${n}, 68 sc)
`;
  it('are read as sizes', () => {
    expect(complaints(text(64))).toEqual([]);
    expect(worked(text(64), 'Row 2')).toEqual(['Row 2 68 proven']);
    expect(complaints(text(65))).toEqual(['4 count-mismatch']);
  });
});

describe('stitches told together', () => {
  const FOURTEEN = 'Ch 15.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (14 sc)\n';
  it.each([
    ['Row 2: Ch 1, dc and tr in first st, sc in each st across, turn. (15 sts)', 15],
    [
      'Row 2: Ch 1, sc in first 6 sts, cluster st (3 tr) in next st, sc in last 7 sts. (14 sts)',
      14,
    ],
    ['rows: 2 and 3 : Ch 1, sc in each st across, turn. (14 sc)', 14],
    ['Row 2: Ch 1, sc in next st, then just sc in every st afterwards, turn. (14 sc)', 14],
  ])('%s', (row, n) => {
    expect(complaints(FOURTEEN + row)).toEqual([]);
    const label = row.startsWith('rows') ? 'Row 3' : 'Row 2';
    expect(worked(FOURTEEN + row, label)).toEqual([`${label} ${n} proven`]);
    expect(complaints(FOURTEEN + row.replace(`(${n}`, `(${n + 3}`))).not.toEqual([]);
  });

  it('"dc in each dc and sc in each sc across" share one walk, posts too', () => {
    const text = `${FOURTEEN}Row 2: Ch 1, *sc in next st, dc in next st; rep from * across, turn. (14 sts)
Row 3: Ch 1, dc in each sc and sc in each dc across, turn. (7 dc, 7 sc)
Row 4: Ch 2 (does not count as st), dc in each st across, turn. (14 dc)
Row 5: Ch 2, *FPdc around next dc, BPdc around next dc; rep from * across, turn. (14 sts)
Row 6: Ch 2, FPdc around each FPdc and BPdc around each BPdc across. (14 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3', 'Row 6')).toEqual(['Row 3 14 proven', 'Row 6 14 proven']);
  });

  it('what hangs on the stitch beneath is told, and not worked', () => {
    const text = `${FOURTEEN}Row 2: Ch 1, if next st was a sc, work a dc in it; if it was a dc, work sc in it. (14 sts)\nRow 3: Ch 1, turn, sc in each st across. (14 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')).toEqual(['Row 3 14 proven']);
  });

  it('a stitch defined in brackets, and a gap called an eyelet', () => {
    const text = (n: number): string => `Special st's used:
X st = (skip 1 st, dc in the next st, dc in the skipped st = X made)
To begin: chain 15
Row 1. Skip the 1st chain, hdc in each of the next 4 chains, work the X st 3 times, hdc in each of the next 4 ch. (${n} sts)
Row 2. Ch 1, turn, *sc in next st, ch 1, sk 1; rep from * across. (7 sc, 7 eyelets)
Row 3. Ch 1, turn, *sc in eyelet sp, sc in next sc; rep from * across. (14 sc)
`;
    expect(complaints(text(14))).toEqual([]);
    expect(worked(text(14), 'Row 1', 'Row 3')).toEqual(['Row 1 14 proven', 'Row 3 14 proven']);
    expect(complaints(text(13))).not.toEqual([]);
  });
});

describe('lace in rows', () => {
  const fan = (n: number): string => `Ch 19.
Row 1: Dc in 7th ch from hook, (ch 2, sk next 2 ch, dc in next ch) 4 times. Ch 5, turn each row.
Row 2: (Dc, ch 2, dc) in first ch-2 sp, (ch 2, dc in next ch-2 sp) 3 times, ch 2, (dc, ch 2, dc) in last sp. (7 dc)
Row 3: (Dc, ch 2, dc) in first ch-2 sp, *ch 2, dc in next ch-2 sp, repeat from * across, end ch 2, (dc, ch 2, dc) in last ch-2 sp (do not work in turning ch). (8 dc)
Rows 4-9: Repeat row 3. (${n} dc)
`;
  it('"last ch-2 sp" is the last of that length, not the turning chain', () => {
    expect(complaints(fan(14))).toEqual([]);
    expect(worked(fan(14), 'Row 3', 'Row 9')).toEqual(['Row 3 8 proven', 'Row 9 14 proven']);
    expect(complaints(fan(20))).not.toEqual([]);
  });

  it('a row above V-stitches that nobody explains is not called wrong', () => {
    const text = `Row 1 (WS): (Ch 4, dc) in MR, close ring, turn.
Row 2 (RS): Ch 4, v-st in 3rd ch of tch, turn.
Row 3: Ch 4, dc in first dc, ch 1, dc in next dc, ch 1, dc in 3rd ch of tch, turn.
`;
    expect(complaints(text)).toEqual(['2 special-undefined']);
  });
});

describe('rows as often as about so many', () => {
  it.each(['for approximately 4 rows', 'about 4 rows', 'for 4 rows'])('%s', (often) => {
    const text = `Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\nRow 2: Ch 1, 2 sc in first st, sc in each st across, turn.\nRow 3: Repeat row 2 ${often}.\nRow 7: Ch 1, sc in each st across. (15 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 7')).toEqual(['Row 7 15 proven']);
  });
});

describe('words of talkers', () => {
  it.each([
    ['Ch 33\nRow 1: Sk 1 st, sc into the other ch (32 sc total)\n', 'Row 1 32 proven'],
    [
      'Ch 13, work 12 s c on ch, turn.\nRow 1: Ch 1, sc in each s c. (12 s c)\n',
      'Row 1 12 proven',
    ],
    [
      'Ch 12.\nRow 1: Dc in third chain from the hook and all the chains. (10 dc)\n',
      'Row 1 10 proven',
    ],
    [
      'Ch 13.\nRow 1: Dc in 4th ch from hook, *dc in next ch; rep from * to last ch, dc in last ch, ch 1, turn. Turning chain counted as 1 dc. (11 dc)\n',
      'Row 1 11 proven',
    ],
    [
      'V-st-(dc, ch1, dc) in the st\n\nRow 1: Ch 16, dc in the 4th ch from the hook, (skip 2 ch, V-st in the next ch) across to the last ch (4 V-sts)\n',
      'Row 1 10 proven',
    ],
    [
      'Notes\n- Ch 2 does not count as a stitch.\nStep 1: Make the foundation chain\nChain 12.\nStep 2: Work Row 1\nWork 1 dc in the third chain from the hook and in each chain across. You should have 10 stitches.\nStep 3: Finish it off\n',
      'Row 1 10 proven',
    ],
  ])('%s', (text, row) => {
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual([row]);
    const wrong = text.replace(
      /(\(|have )(\d+)(?= (?:sc total|s c|dc|V|stitches))/,
      (_, lead: string, n: string) => `${lead}${Number(n) + 2}`,
    );
    expect(complaints(wrong)).not.toEqual([]);
  });

  it('the two stitches before the turning chain are skipped as in the repeat', () => {
    const text = (n: number): string => `Chain 33.
Row 1: Skip 2 chains (counts as sc), 2 dc in next chain, *skip 2 chains, (sc, 2 dc) in next chain; repeat from * to last 3 chains, skip 2 chains, sc in last chain. (31 sts)
Row 2: Chain 1 (counts as sc), turn, 2 dc in first sc, *skip 2 dc, (sc, 2 dc) in next sc; repeat from * across, sc in turning chain. (${n} sts)
`;
    expect(complaints(text(31))).toEqual([]);
    expect(worked(text(31), 'Row 2')).toEqual(['Row 2 31 proven']);
    expect(complaints(text(33))).not.toEqual([]);
  });

  it('"skip to next ch-1 sp" passes the stitches before it', () => {
    const text = (n: number): string =>
      `Ch 21.\nRow 1: Sc in 2nd ch from hook, sc in next 8 ch, ch 1, sk 1 ch, sc in each ch to end. (19 sc)\nRow 2: Ch 1, turn, sc in first st, skip to next ch-1 sp, sc in that sp, sc in each st across. (${n} sc)\n`;
    expect(complaints(text(11))).toEqual([]);
    expect(complaints(text(12))).not.toEqual([]);
  });
});

describe('V-stitches and shells over those of the row before', () => {
  const lace = (over: string, of = 'dc, ch 1, dc', n = 5): string => `Special Stitches:
V-Stitch (V-st): (${of}) in same stitch

Row 1: Ch 13, sc in 2nd ch from hook and in each ch across. (12 sc)
Row 2: Ch 3, skip first st, (V-st in next st, skip next st) 5 times, dc in last st, turn. (5 V-Stitches, 2 dc)
Row 3: Ch 3, ${over}. (${n} V-Stitches, 2 dc)
`;
  it.each([
    'V-st in each V-st across, dc in last dc',
    'V-st in each V-st, dc in top of ch 3',
    'V-st in each V-st to last st, dc in last st',
    'V-st in each V-stitch space, dc in last st',
    'V-st in center of each V-st, dc in last dc',
    '(dc, ch 1, dc) in each V-st, dc in last dc',
  ])('%s', (over) => {
    for (const of of ['dc, ch 1, dc', '2 dc']) {
      expect(complaints(lace(over, of))).toEqual([]);
      expect(worked(lace(over, of), 'Row 3')).toEqual(['Row 3 12 proven']);
      if (over.startsWith('V')) expect(complaints(lace(over, of, 6))).not.toEqual([]);
    }
  });

  it.each([
    'V-st in ch-1 sp of each V-st across, dc in last dc',
    'V-st in each ch-1 sp, dc in last st',
    'V-st in the space of each V-st, dc in last dc',
  ])('%s', (over) => {
    expect(complaints(lace(over))).toEqual([]);
    expect(worked(lace(over), 'Row 3')).toEqual(['Row 3 12 proven']);
    expect(complaints(lace(over, 'dc, ch 1, dc', 4))).not.toEqual([]);
  });

  it('one V-stitch too few leaves stitches', () => {
    expect(complaints(lace('V-st in next 4 ch-1 sps, dc in last dc'))).not.toEqual([]);
  });

  it('"centre dc of each shell" is one stitch of each, and "skip first 3" counts the first', () => {
    const text = (n: number): string => `Special Stitches:
Shell (sh): 5 dc in same stitch

Row 1: Ch 14, sc in 2nd ch from hook and in each ch across. (13 sc)
Row 2: Ch 3, skip first 3 sts, shell in next st, skip 5 sts, shell in next st, skip 2 sts, dc in last st, turn. (2 shells, 2 dc)
Row 3: Ch 3, shell in centre dc of each shell, dc in last dc. (2 shells, 2 dc)
Row 4: Ch 1, sc in centre dc of each shell, sc in last dc. (${n} sc)
`;
    expect(complaints(text(3))).toEqual([]);
    expect(worked(text(3), 'Row 2', 'Row 3', 'Row 4')).toEqual([
      'Row 2 12 proven',
      'Row 3 12 proven',
      'Row 4 3 proven',
    ]);
    expect(complaints(text(4))).not.toEqual([]);
  });

  it.each([
    ['V-Stitch (Work 2 Double Crochet Stitches into one Stitch)', 12],
    ['V-Stitch (2 dc) in same stitch', 12],
  ])('a making in brackets behind the name: %s', (definition, made) => {
    const text = (n: number): string =>
      `Special Stitches: ${definition}\nRow 1 - Ch 13, sc in 2nd ch from hook and across. (12 sc)\nRow 2 - Ch 3, skip first st, (V-Stitch, skip next st) 5 times, dc in last st. (${n} V-Stitches and 2 dc)\n`;
    expect(complaints(text(5))).toEqual([]);
    expect(worked(text(5), 'Row 2')).toEqual([`Row 2 ${made} proven`]);
    expect(complaints(text(4))).not.toEqual([]);
  });
});

describe('numbers and places of older leaflets', () => {
  it('"or" in front of the last size', () => {
    const text = (n: number): string =>
      `Ch 21 (25, 29).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20, 24 or 28 sc)\nRow 2: Ch 1, sc in each sc across. (20, 24 or ${n} sc)\n`;
    expect(complaints(text(28))).toEqual([]);
    expect(worked(text(28), 'Row 1')).toEqual(['Row 1 28 proven']);
    expect(complaints(text(27))).not.toEqual([]);
  });

  it('"(turning ch counts as 1 dc), and in each ch", "around vertical bar of next dc"', () => {
    const text = (n: number): string => `Ch 21.
Row 1: Dc in 4th ch from hook (turning ch counts as 1 dc), and in each ch to end. Ch 3, turn. (19 dc)
Row 2: Skip first dc, *dc around vertical bar of next dc (raised dc made), 1 dc in each of next 2 dc. Repeat from * to end. Ch 3, turn. (${n} dc)
`;
    expect(complaints(text(19))).toEqual([]);
    expect(worked(text(19), 'Row 1', 'Row 2')).toEqual(['Row 1 19 proven', 'Row 2 19 proven']);
    expect(complaints(text(21))).not.toEqual([]);
  });
});

describe('lists of stitches without signs, and footnotes', () => {
  it('"Shell (5 dc in a ch)" and "V (dc ch 1 dc)" on lines of their own define stitches', () => {
    const text = (n: number): string => `Shell (5 dc in a ch)
V (dc ch 1 dc)

Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across. (13 sc)
Row 2: Ch 3, sk 2 sts, shell in next st, sk 2 sts, V in next st, sk 2 sts, shell in next st, sk 2 sts, dc in last st. (${n} shells, 1 V)
`;
    expect(complaints(text(2))).toEqual([]);
    expect(worked(text(2), 'Row 2')).toEqual(['Row 2 14 proven']);
    expect(complaints(text(3))).not.toEqual([]);
  });

  it('a second definition in the line is another stitch', () => {
    const text = (n: number): string => `Special Stitches
Double V-stitch (2V-st): (Dc, ch 2, 2 dc, ch 2, dc) in indicated st or sp. Fan: 4 dc in indicated sp.

Row 1: Ch 31, dc in 4th ch from hook (beg 3 sk chs count as first dc), [sk next 3 chs, 2V-st

(see Special Stitches) in next ch, sk next 3 chs, dc in each of next 2 chs] 3 times, turn. (8 dc,

3 2V-sts)
Row 2: Ch 4, fan in each ch-2 sp of next 2V-st, [ch 2, fan in each ch-2 sp of next 2V-st] twice, ch 1, sk next 2 dc, dc in top of beg ch-3, turn. (2 dc, ${n} fans)
`;
    expect(complaints(text(6))).toEqual([]);
    expect(worked(text(6), 'Row 1', 'Row 2')).toEqual(['Row 1 20 proven', 'Row 2 26 proven']);
    expect(complaints(text(7))).not.toEqual([]);
  });

  it.each([
    '(fpdc * in next stitch, dc in next stitch) - repeat the two stitches in parenthesis until you reach the last stitch',
    '(dc in next st, fpdc* in next st), repeat instructions in parentheses to last st',
    '(dc in next st, fpdc in next st), repeat the 2 stitches in brackets to last st',
  ])('%s', (words) => {
    const text = (n: number): string =>
      `Ch 12.\nRow 1: Dc in 4th ch from hook and across. (10 dc)\nRow 2: Ch 3 (counts as dc), ${words}, doc in last st. (${n} sts)\n`;
    expect(complaints(text(10)).filter((what) => !what.includes('slip'))).toEqual([]);
    expect(worked(text(10), 'Row 2')).toEqual(['Row 2 10 proven']);
    expect(complaints(text(12))).not.toEqual([]);
  });
});

describe('a label of its own, and the last of a repeat', () => {
  it('"Foundation row:" above its work', () => {
    const text = (n: number): string =>
      `Ch 12.\n\nFoundation Row:\n\n1 dc in 4th ch from hook, 1 dc in each ch to end. (${n} dc)\n`;
    expect(complaints(text(10))).toEqual([]);
    expect(complaints(text(11))).not.toEqual([]);
  });

  it('"work last 1 sc in top of ch 3" behind a repeat adds none', () => {
    const text = (n: number): string =>
      `Ch 13.\nRow 1: Dc in 4th ch from hook and in each ch to end, turn. (11 dc)\nRow 2: Ch 1, sc in first dc, *ch 1, skip 1 dc, sc in next dc; rep from * to end of row, work last 1 sc in the top of ch 3. (${n} sc)\n`;
    expect(complaints(text(6))).toEqual([]);
    expect(worked(text(6), 'Row 2')).toEqual(['Row 2 6 proven']);
    expect(complaints(text(7))).not.toEqual([]);
  });
});

describe('where the work begins', () => {
  it.each(['Slip knot and chain 21.', 'Make a slip knot, ch 21.', 'Slip knot, then ch 21 (or more).'])(
    '%s',
    (start) => {
      const text = (n: number): string =>
        `${start}\nRow 1: Skip the first chain and sc in every stitch, turn. (${n} sc)\n`;
      expect(complaints(text(20))).toEqual([]);
      expect(worked(text(20), 'Row 1')).toEqual(['Row 1 20 proven']);
      expect(complaints(text(21))).not.toEqual([]);
    },
  );

  it.each(['cast on edge', 'cast-on edge', 'opposite side of foundation chain'])(
    'yarn rejoined to the %s is not held against the last row',
    (side) => {
      const text = `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch to end, turn. (20 sc)\nRow 2: Ch 1, sc in each sc to end. (20 sc)\n\nRow 3: Rejoin yarn to ${side}, ch 1, 1 sc in each ch to end. (20 sc)\n`;
      expect(complaints(text)).toEqual([]);
      expect(worked(text, 'Row 2')).toEqual(['Row 2 20 proven']);
    },
  );
});
