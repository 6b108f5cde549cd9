/** Blankets, cloths and garments worked in rows: patterns of our own invention, in the wording of pages. */
import { describe, expect, it } from 'vitest';
import { compile, writePattern } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

describe('stitches of the designer, told by a short form and the name in full', () => {
  it('with a dash before the making', () => {
    const text =
      'kb=Knobbly bobble- (yarn over, insert hook, pull up a loop, yarn over, pull through 2 loops) three times, yarn over, pull through all 4.\nCh 8\nRow 1: sc in 2nd ch from hook and each ch across. (7)\nRow 2: Ch 1, sc in first st, *kb, sc in next st*, repeat to end. (7)\n';
    expect(worked(text, 'Row 2')).toEqual(['Row 2 7 proven']);
    expect(complaints(text)).toEqual([]);
  });

  it('"all in the same stitch" before the bracket that holds it', () => {
    const text =
      'Special Stitches:\nHill fan (hf): All in the same stitch [sc, hdc, dc]\nCh 11\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, hf in next ch; rep from * across. (10 sts)\n';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 10 proven']);
  });
});

describe('places in rows', () => {
  const beneath =
    'Ch 15.\nRow 1: Sc in 2nd ch from hook and in each ch to end. (14 sc)\nRow 2: Ch 2, turn, dc in next st, *dc2tog over next 2 sts, ch 1*, repeat from * to * until you have 2 sts left, dc in last 2 sts. (14 sts)\n';
  const all = 'into the top of each cluster and into every chain stitch across.';

  it('a list of "each" takes all of them as they come', () => {
    const text = `${beneath}Row 3: Ch 1, turn, sc into each double crochet, ${all} (14 sc)\n`;
    expect(worked(text, 'Row 3')).toEqual(['Row 3 14 proven']);
    expect(complaints(text)).toEqual([]);
  });

  it('and a wrong number behind it is told', () => {
    const text = `${beneath}Row 3: Ch 1, turn, sc into each double crochet, ${all} (17 sc)\n`;
    expect(complaints(text)).toEqual(['4 count-mismatch']);
  });

  it('the horizontal bar is the loop behind, wherever it is said to lie', () => {
    const text =
      'Ch 11\nRow 1: 1 hdc in 3rd ch from hook, hdc in each ch to end. Turn. 9 hdc.\nRow 2: Ch 2. 1 hdc in horizontal bar that lies below the stitch (on the WS, see photo) in each hdc to last hdc. 1 hdc in last hdc. Turn. 9 hdc\nRow 3: Ch 2. 1 hdc in the horizontal bar of each hdc to last 2 hdc. 1 hdc in last 2 hdc. Turn. 9 hdc\n';
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 9 proven', 'Row 3 9 proven']);
  });

  it('"work across" is every stitch', () => {
    const text =
      'Ch 11\nRow 1: Sc in 2nd ch from hook and each ch across. (10 sc)\nRow 2: Ch 1, work across. (10 sc)\n';
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
  });

  it('a slip knot before a short foundation chain is no ring', () => {
    const text =
      'Slip knot, ch 8\nRow 1: Sc in 2nd ch from hook and in each ch across. (7 sc)\n';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 7 proven']);
  });
});

describe('a count behind a comma, and the turn behind that', () => {
  it('is the count of a row that goes to its end', () => {
    const text =
      'Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch to end, 18 sc. Ch 1, turn.\nRow 2: Sc in each sc across, 18 sc, turn.\n';
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 18 proven', 'Row 2 18 proven']);
    expect(complaints(text.replace('across, 18', 'across, 21'))).toEqual(['3 count-mismatch']);
  });
});

describe('rows shaped at their ends', () => {
  const foundation = 'Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch to end. (30 sc)\n';
  const after = (words: string): number[] => made(`${foundation}${words}\n`).slice(1);

  it('at both ends, in the next row and in those that follow', () => {
    expect(after('Dec 1 sc at each end of next row. (28 sc)')).toEqual([28]);
    expect(after('Dec 1 sc at each end of every other row 3 times. (24 sc)')).toEqual([
      30, 28, 28, 26, 26, 24,
    ]);
    expect(after('Dec 1 st at each end of next row and every 3rd row twice. (24 sc)')).toEqual([
      28, 28, 28, 26, 26, 26, 24,
    ]);
    expect(after('Inc 1 st at beg and end of next 2 rows. (34 sc)')).toEqual([32, 34]);
  });

  it('at one end, or at an edge of which is not told at which end it lies', () => {
    expect(after('Dec 1 sc at beg of next 4 rows. 26 sc remain.')).toEqual([29, 28, 27, 26]);
    expect(after('Dec 1 st at neck edge every row 3 times. (27 sc)')).toEqual([29, 28, 27]);
    expect(after('Next 2 rows: Dec 2 sts at armhole edge. (26 sc)')).toEqual([28, 26]);
    expect(after('Sc across, decreasing 1 st at each end. (28 sc)')).toEqual([28]);
  });

  it('until so many stitches are left, and each order of a paragraph with its own count', () => {
    const text = 'Dec 1 st at each end of next and every foll alt row until 24 sts rem.';
    expect(after(text)).toEqual([28, 28, 26, 26, 24, 24]);
    const orders =
      'Dec 1 sc at each end of next row. (28 sc) Work 2 rows even. Dec 1 sc at each end of next row. (26 sc)';
    const { rows } = compile(`${foundation}${orders}\n`, { fixes: false });
    expect(rows.map(({ verdict }) => verdict)).toEqual([
      'proven',
      'proven',
      'unstated',
      'unstated',
      'proven',
    ]);
  });

  it('and a wrong number is told', () => {
    expect(complaints(`${foundation}Dec 1 sc at each end of next row. (29 sc)\n`)).toEqual([
      '3 count-mismatch',
    ]);
    expect(complaints(`${foundation}Dec 1 sc at each end of next 5 rows. (22 sc)\n`)).toEqual([
      '3 count-mismatch',
    ]);
  });

  it('written in house form it is the same again', () => {
    const text = `${foundation}Dec 1 sc at each end of next row and every 3rd row 2 times. (24 sc) Work 2 rows even. Inc 1 st at beg of next 3 rows. (27 sc)\n`;
    const { manuscript } = compile(text, { fixes: false });
    expect(made(writePattern(manuscript))).toEqual(made(text));
  });
});

describe('the end of a row', () => {
  it('a stitch in the turning chain is the last one of a pass, where it fills the row', () => {
    const text =
      'Chain-5 at beginning of row counts as first dc and ch 2.\nCh 12.\nRow 1: Sc in 2nd ch from hook and each ch across. (11)\nRow 2: Ch 5, sk first st, sc in next st, [ch 2, dc in next st, ch 2, sc in next st] 4 times, ch 2, dc in last st, turn. (10 ch-2 sps)\nRow 3: Ch 5, [sc in next sc, ch 2, dc in next dc, ch 2] across, ending with dc in 3rd ch of ch-5, turn. (10 ch-2 sps)\n';
    expect(worked(text, 'Row 3')).toEqual(['Row 3 11 proven']);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('of ch-5, turn. (10', 'of ch-5, turn. (12'))).toEqual([
      '5 count-mismatch',
    ]);
  });

  it('shaping told before and behind the work', () => {
    const text =
      'Ch 16.\nRow 1: Sc in 2nd ch from hook and each ch across. (15 sc)\nRow 2: Dec 1 sc at each end, sc across. (13 sc)\nRow 3: Inc in first st, sc across, inc at end of row. (15 sc)\nRow 4: Sc2tog, sc in each st across, dec 1 sc at end of row. (13 sc)\nRow 5: Make a decrease at the beginning of row; 1 sc in each st to end of row. (12 sc)\n';
    expect(worked(text, 'Row 2', 'Row 3', 'Row 4', 'Row 5')).toEqual([
      'Row 2 13 proven',
      'Row 3 15 proven',
      'Row 4 13 proven',
      'Row 5 12 proven',
    ]);
  });
});

describe('names and numbers', () => {
  it('a stitch named by two words without a blank', () => {
    const text =
      'StarSt: Star Stitch—([dc, ch 1] 2 times, dc) in indicated stitch or space.\nCh 17.\nRow 1: Sc in 2nd ch from hook and each ch across. (16)\nRow 2: Ch 3 (counts as dc), sk next 2 sts, StarSt in next st, *sk next 3 sts, StarSt in next st; repeat from * to last 4 sts, sk next 3 sts, dc in last st, turn—3 StarSt.\n';
    expect(worked(text, 'Row 2')).toEqual(['Row 2 11 proven']);
  });

  it('"row (2) a further 5 times" and "with color one ch 21"', () => {
    const text =
      'With color one ch 21.\n1) Dc in 4th ch from hook and each ch across. (19)\n2) Ch 3, dc in each dc across. (19)\n... repeat row (2) a further 5 times.\n8) Ch 1, sc in each st. (19)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text).length).toBe(8);
  });
});

describe('rows told by other words', () => {
  it('a part before each row of it', () => {
    const text =
      'Cuff, row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)\nCuff, row 2: Ch 1, turn, sc in each st. (10)\nCuff, rows 3-8: Repeat row 2.\nBody, row 1: Ch 21, sc in 2nd ch from hook and in each ch across. (20)\n';
    const { rows, manuscript } = compile(text, { fixes: false });
    expect(manuscript.parts.map(({ name }) => name)).toEqual(['Cuff', 'Body']);
    expect(rows.map(({ made: n }) => n)).toEqual([10, 10, 10, 10, 10, 10, 10, 10, 20]);
    expect(complaints(text)).toEqual([]);
  });

  it('two rows by turns, and a row again in other loops', () => {
    const text =
      'Ch 11\nRow 1: sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Ch 1, turn, sc in each st. (10)\nRow 3: Ch 1, turn, hdc in each st. (10)\nRows 4-7: Alternate between row 2 and 3.\nRow 8: Same as row 2 but in back loops only. (10)\n';
    expect(worked(text, 'Row 7', 'Row 8')).toEqual(['Row 7 10 unstated', 'Row 8 10 proven']);
    expect(complaints(text)).toEqual([]);
  });

  it('a stitch alone along the chain, and along one that no words tell', () => {
    expect(made('Ch 21\nRow 1: sc (20)\nRow 2: sc\nRow 3: dc (20)\n')).toEqual([20, 20, 20]);
    expect(complaints('An easy scarf.\nRow 1: dc\nRow 2: sc\nRow 3: dc (20)\n')).toEqual([]);
  });

  it('a later count tells whether the first row passed a chain to turn', () => {
    const text = 'Ch 21.\nRow 1: sc across.\nRow 2: Ch 1, turn, sc in each sc across. (20)\n';
    expect(made(text)).toEqual([20, 20]);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('across.\n', 'across. (21)\n'))).toEqual(['3 count-mismatch']);
  });
});

describe('yokes that grow in the centre of groups', () => {
  const yoke =
    'Ch3 counts as first dc.\nCh 30, (RS) 1dc in 4th ch from hook, 1dc in next 4ch, 3dc in next ch, 1dc in next 4ch, 3dc in next ch, 1dc in next 4ch, 3dc in next ch, 1 dc in next 11ch. (33dc + ch3)\n';
  const row = (n: number): string =>
    `2nd Row - ch3, *1dc in each dc to 3dc group, 1dc in next dc, 3dc in centre dc on 3dc group, *rpt from * to * to last 3dc group, 1dc in next dc, 3dc in centre dc on 3dc group, 1dc in each dc to end, 1dc in top of ch3. Turn. (${n}dc + ch3)\n`;

  it('the repeat goes to the last group, and what is told of one centre is not done in all', () => {
    const text = `${yoke}${row(39)}3rd Row - Rpt 2nd Row. (45dc + ch3)\n`;
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 40 proven', 'Row 3 46 proven']);
    expect(complaints(text)).toEqual([]);
    expect(complaints(`${yoke}${row(37)}`)).toEqual(['3 count-mismatch']);
  });
});

describe('what a page of rows leaves in its orders', () => {
  const two = 'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn - 19 sc.\nRow 2: Ch 1, sc in each st across; turn.\n';

  it('a length that is no number of rows, and a row behind the order', () => {
    const text = `${two}Rep Row 2 until 8" from beg, end Row 2.\nShape Neck: With B, ch 1, sc in first 6 sts, hdc in next 4 sts, sc in next 9 sts; turn. (19 sts)\n`;
    const { rows } = compile(text, { fixes: false });
    expect(rows.map(({ verdict }) => verdict)).toEqual(['proven', 'unstated', 'unstated', 'proven']);
    expect(complaints(text)).toEqual([]);
    expect(made(`${two}Rep Row 2 once. Ch 1, sc in first 6 sts, hdc2tog, sc in next 11 sts; turn. (18)\n`)).toEqual([19, 19, 19, 18]);
  });

  it('"and every right side row" speaks for those that are not written', () => {
    const text = `${two}Row 3 AND EVERY RIGHT SIDE ROW: Rep Row 2.\nRow 4: Ch 1, hdc in each st across.\nRow 6: Ch 1, sc in each st across. (19)\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text).length).toBe(6);
  });

  it('"*ch 1 sk 1 sc*" skips one and works one', () => {
    const text =
      'Ch 12\nRow 1: Sk 1 st, sc into the other ch (11 sc total)\nRow 2: Ch 1, turn, sc into first sc, *ch 1 sk 1 sc* until end\nRow 3: Ch 1, turn, hdc into each sc and each ch-sp (11)\n';
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 6 unstated', 'Row 3 11 proven']);
  });

  it('a place from the hook before its work', () => {
    const text = 'Ch 18\nRow 1: In the 2nd chain from the hook hdc across (17)\n';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 17 proven']);
  });

  it('a slip knot before a chain that is joined', () => {
    const text = 'Start with a slip knot. Chain 4 and join with sl st.\nRnd 1: Ch 1, 8 sc in ring, join. (8)\n';
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 8 proven']);
  });
});

describe('yarn taken up again', () => {
  it('by any name, where a place stands behind it', () => {
    const text =
      'With white, ch 15, fasten off.\nRow 1: Join a bright color in the last ch, ch 1, sc in same ch, sc in each ch across. (15)\nRow 2: Attach Lt. Blue to first sc, sc in same place, sc in each sc across. (15)\nRow 3: Attach Harbour Mist to first sc made on previous row, sc in same place, sc in each sc across. (15)\n';
    expect(made(text).slice(-3)).toEqual([15, 15, 15]);
    expect(complaints(text)).toEqual([]);
  });

  it('behind the stitches skipped for a neck, on the row that the first side left', () => {
    const text =
      'Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across. (30 sc)\nNext row: Ch 1, sc in first 6 sts, turn. (6 sc)\nWork 3 rows even on these 6 sts. Fasten off.\nSkip center 18 sts, join yarn in next st, sc to end. (6 sc)\nWork 3 rows even. Fasten off.\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([30, 6, 6, 6, 6, 6, 6, 6, 6]);
  });

  it('an order to a number of stitches, and another behind it', () => {
    const text =
      'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, turn, sc in each st across.\nRow 3: Ch 1, turn, 2 sc in first st, sc across to last st, 2 sc in last st. (22 sc)\nRep rows 2 and 3 until there are 26 sc.\nThen rep row 2 until sleeve measures 25 cm.\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([20, 20, 22, 22, 24, 24, 26, 26]);
  });
});

it('a part in capitals with its chain glued on, and rows shaped on that chain', () => {
  const text =
    'BACK-Chain 41. 1 row single crochet. (40)\n\nSLEEVE-Chain 31. 1 row single crochet (30). Decrease 1 each side every 3 rows 2 times. (26) 2 rows even.\n\nCUFF-Chain 21. Decrease 1 each side every 2 rows 3 times. (15)\n';
  const { rows, manuscript } = compile(text, { fixes: false });
  expect(manuscript.parts.map(({ name }) => name)).toEqual(['BACK', 'SLEEVE', 'CUFF']);
  expect(rows.map(({ made: n }) => n).slice(0, 10)).toEqual([40, 30, 30, 30, 28, 28, 28, 26, 26, 26]);
  expect(rows.at(-1)?.made).toBe(15);
  expect(complaints(text)).toEqual([]);
});

describe('sizes that stand in a bracket all together', () => {
  const text =
    'Sizes: S (M, L)\nCh (32, 36, 40).\nRow 1 (RS): Hdc in 3rd ch from hook and in the next 9 sts, dc in next (20, 24, 28) sts, ch 2, turn.\nRow 2 (WS): Dc in (20, 24, 28) sts, hdc in next 10 sts, ch 2, turn.\nTotal (20, 24, 28) dc, 10 hdc.\nRow 3: Hdc in 10 sts, dc in next (20, 24, 28) sts, ch 2, turn.\nTotal 10 hdc, (20, 24, 28) dc.\nRow 4 - (5, 7, 9): Repeat Row 2 – 3 alternately.\nRow (6, 8, 10): Dc in next (20, 24, 28) sts, hdc in next 10 sts. (30, 34, 38 sts)\n';

  it('in places, in counts and in the numbers of rows', () => {
    const { rows } = compile(text, { fixes: false });
    expect(rows.filter(({ verdict }) => verdict === 'proven').map(({ label }) => label)).toContain('Row 3');
    // The last size is told.
    expect(worked(text, 'Row 2', 'Row 3', 'Row 10')).toEqual([
      'Row 2 38 proven',
      'Row 3 38 proven',
      'Row 10 38 proven',
    ]);
    expect(complaints(text)).toEqual([]);
  });

  it('and a wrong number in one of them is told', () => {
    expect(complaints(text.replace('10 hdc, (20, 24, 28)', '10 hdc, (20, 25, 28)'))).toEqual(['7 count-mismatch']);
  });
});

it('a thumb in the middle of a row: along a chain and back to the rest of the row', () => {
  const text =
    'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\nRow 2: Sc in next 6 sts; make a chain of 5 sts for thumb; turn; 1 sc in 2nd chain from hook; 1 sc in each of the remaining 3 chain sts; 1 sc in last 6 sts. (16 sc)\nRow 3: Ch 1, turn, sc in each st across. (16 sc)\n';
  expect(made(text)).toEqual([12, 16, 16]);
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('last 6 sts. (16', 'last 6 sts. (17'))).toEqual(['3 count-mismatch']);
});

it('"(1 sc dec each row)" tells the shaping, and "in each sc, 24 sc. Ch 1, turn." the count', () => {
  const text =
    'Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch to end, 24 sc. Ch 1, turn.\nRow 2: Sc in each sc, 24 sc. Ch 1, turn.\nNext 4 Rows: Sk first sc, sc in each sc across (1 sc dec each row). 20 sc\nBorder 1: Ch 1, sc in each sc across. (20)\n';
  expect(worked(text, 'Row 2')).toEqual(['Row 2 24 proven']);
  expect(made(text)).toEqual([24, 24, 23, 22, 21, 20, 20]);
  expect(complaints(text)).toEqual([]);
});

it('"With color #2" above a row is yarn, and rows of a list with no label stand apart', () => {
  const text =
    'Ch 20.\n-Sc in 2nd ch from hook and in each ch across.\n-Chain 1 and sc in each stitch\nWith color #2\n-Chain 1 and sc in each stitch\n-Chain 1 and sc in each stitch\nWith color #12\n-Chain 1 and sc in each stitch (19)\n';
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('(19)', '(18)'))).toEqual(['8 count-mismatch']);
});

it('"= 18 stitches (plus the beginning chain 3)" is a count without the chain', () => {
  const text =
    'Row 1: Ch 20, sc in 2nd ch from hook and in each ch across. (19)\nRow 2: Chain 3 and DC in each stitch = 18 stitches (plus the beginning chain 3)\nRow 3: Ch 1, sc in each st. (19)\n';
  expect(worked(text, 'Row 2')).toEqual(['Row 2 19 proven']);
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('= 18', '= 17'))).toEqual(['2 count-mismatch']);
});
