/**
 * Rows that a heading gives to one size, lengths told from another one, and slips of blogs. Sources: common
 * practice; all texts of our own invention.
 */
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

const sole = `Sole
Row 1: ch 27 (29, 31), sc in 2nd ch from hook and in each ch across, turn. (26, 28, 30 sts)
Size Small
Rows 2-4: ch 1, sc in each st, turn. (26 sts)
Size Medium
Rows 2-5: ch 1, sc in each st, turn. (28 sts)
Size Large
Rows 2-6: ch 1, sc in each st, turn. (30 sts)

All Sizes
Next row: ch 1, sc in each st. 26 (28, 30) sts
`;

describe('a heading that names a size', () => {
  test('is above rows of that size alone', () => {
    const { sizes, totals } = compile(sole, { fixes: false });
    expect(sizes).toEqual(['Small', 'Medium', 'Large']);
    expect(totals.map(({ rows, proven }) => [rows, proven])).toEqual([
      [5, 5],
      [6, 6],
      [7, 7],
    ]);
    expect(complaints(sole)).toEqual([]);
  });

  test('a wrong count is told in its size', () => {
    expect(complaints(sole.replace('(28 sts)', '(29 sts)'))).toEqual(['6 count-mismatch']);
  });

  test('"Size Large" is not "Size X-Large"', () => {
    const text = `Sizes: Large (X-Large)

Ch 21 (25).
Row 1: Sc in 2nd ch from hook and in each ch across. 20 (24) sc
Size X-Large
Row 2: Ch 1, turn, sc in each sc across. (24 sc)
All sizes
Next row: Ch 1, turn, sc in each sc across. 20 (24) sc
`;
    const { totals } = compile(text, { fixes: false });
    expect(totals.map(({ rows, proven }) => [rows, proven])).toEqual([
      [2, 2],
      [3, 3],
    ]);
  });

  test('the size of the finished piece is none', () => {
    const text = `Size: 20 x 30 cm

Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)
`;
    expect(compile(text, { fixes: false }).sizes).toEqual(['']);
  });
});

describe('slips and orders of blogs', () => {
  const flat = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
Row 2: Ch 1, sc in each sc across, turn. (20 sc)
`;

  test('how far short of a length is no work', () => {
    const text = `${flat}Repeat row 2 until foot measures 8" from the tip of the toe, or 0.25" less than desired foot length.\n`;
    expect(complaints(text)).toEqual([]);
  });

  test('"1 st st" is the first stitch', () => {
    const text = `Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each st. (12)
Rnd 3: ch 1, 2 sc in 1 st st, sc in next 2 sts, repeat. (16)
`;
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 16 proven']);
  });

  test('a stitch skipped at the start is told behind the row', () => {
    const text = `${flat}Next 4 rows: Working in pat as established, sk first sc of each row (1 sc dec each row);

16 sc.

Next row: Ch 1, sc in each sc across. (16 sc)
`;
    expect(made(text)).toEqual([20, 20, 19, 18, 17, 16, 16]);
    expect(complaints(text)).toEqual([]);
  });

  test('a row told by another one with a skip is not understood', () => {
    expect(worked(`${flat}Row 3: Rep row 2, sk first sc.\n`, 'Row 3')).toEqual(['Row 3 20 unread']);
  });

  test('each chain of the opposite side is one of that side', () => {
    const text = `Ch 11.
Rnd 1: Sc in 2nd ch from hook and in next 8 ch, 3 sc in last ch, sc in each ch of opposite side of beg ch. (21 sc)
`;
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 21 proven']);
  });
});

describe('chains over chains', () => {
  const ladder = `Ch 26.
Row 1: Hdc in 2nd ch from hook and in each ch across, ch 1, turn. (25)
Row 2: *Hdc in next 5 hdc, ch 5, sk next 5 hdc*, repeat 1 more time, hdc in last 5 hdc, ch 1, turn.
Row 3: Repeat row 2.
Row 4: *Hdc in next 5 hdc, ch 2, sc around the 5 chs from rows 2 and 3, ch 2*, repeat 1 more time, hdc in last 5 hdc, ch 1, turn.
Row 5: Hdc in each hdc, in each sc and in each ch across. (25)
`;

  test('a row worked again above itself passes its chains where it passed stitches', () => {
    expect(made(ladder).slice(0, 4)).toEqual([25, 15, 15, 17]);
    expect(complaints(ladder)).toEqual([]);
  });

  test('other words pass stitches still', () => {
    const text = ladder.replace('Repeat row 2.', '*Hdc in next 5 hdc, ch 5, sk next 5 hdc*, repeat 1 more time, hdc in last 5 hdc.');
    expect(complaints(text)).toEqual(['4 round-overrun']);
  });
});

describe('toys from other languages', () => {
  test('"inc hdc" is one increase, and the wall of a loop is the loop', () => {
    const text = `US terms
Rnd 1: 5 hdc in MR (5)
Rnd 2: inc hdc, 3 hdc, inc hdc (7)
Rnd 3: 7 sc behind the front wall of the loop (7)
Rnd 4: (2 sc, dec sc, 3 sc) for the back wall (6)
`;
    expect(worked(text, 'Rnd 2', 'Rnd 3', 'Rnd 4')).toEqual([
      'Rnd 2 7 proven',
      'Rnd 3 7 proven',
      'Rnd 4 6 proven',
    ]);
  });

  test('"(inc sc) x 6" is an increase and a stitch, where the count says so', () => {
    expect(worked('Rnd 1: 12 sc in MR (12)\nRnd 2: (inc sc) x 6 (18)\n', 'Rnd 2')).toEqual([
      'Rnd 2 18 proven',
    ]);
  });

  test('the colour of the next round, on a line of its own behind a long row, is none of its words', () => {
    const text = `Shell
Ch 2
1) 6 sc in 2nd ch from hook
2) ch 1, 2 sc in each sc around (12 sc)
C1
3) ch 1, (2 sc in first sc, sc in next sc) repeat around (18 sc)
C2
4) ch 1, sc in each sc around
`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('lists, lengths and corners of blogs', () => {
  test('the number of a list item without its stop is no count of the row above', () => {
    const text = `UK terms
1.      Start with a magic ring
2.      Round 1:  1ch, 8dc into ring, join with sl st to first st
3.      Round 2:  1ch, 2dc in each st around, join with sl st (16sts)
4       Round 3:  1ch, [1dc in first, 2dc in next] repeat around, join with sl st (24 sts)
`;
    expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 16 proven', 'Rnd 3 24 proven']);
    expect(complaints(text)).toEqual([]);
  });

  test('a whole number and its fraction are one, and "across first 14 sc" is worked in these', () => {
    const text = `Ch 45.
Row 1: Sc in 2nd ch from hook and in each ch across. Ch 1, turn. (44 sc)
Row 2: Sc in each sc across. Ch 1, turn. (44 sc)
Rep row 2 for pattern until bib is 13 ½" from beginning.
Next row: Work across first 14 sc (do not work remaining sts), ch 1, turn. (14 sc)
`;
    expect(complaints(text)).toEqual([]);
    expect(made(text).at(-1)).toBe(14);
  });

  test('talk that a line breaks is no row', () => {
    const text = `UK terms
The bib is worked in
half treble crochet (htr). The ties are worked in double crochet.

Ch 29.
Row 1: 1 htr in 3rd ch from hook, 1 htr in each ch to end, turn. (27 sts)
`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([27]);
  });

  test('"sc, ch and sc in each outside corner" is one list in each', () => {
    const text = `Ch 4, join.
Rnd 1: Ch 3, 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2, join. (12 dc, 4 ch-2 sps)
Rnd 2: Ch 1, sc in each dc around, sc, ch 1 and sc in each outside corner, join. (20 sc)
`;
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 20 proven']);
  });
});

describe('silent misreadings that are none any more', () => {
  const ring = `Ch 6, join with sl st to form a ring.
Rnd 1: Ch 3, 2 dc in ring, ch 3, *3 dc in ring, ch 3; rep from * 3 times, join. (15 dc, 5 ch-3 sps)
`;

  test('slip stitches lead to a space, and the work in it is the chain and what follows', () => {
    const text = `${ring}Rnd 2: Sl st in next 2 dc, sl st in ch-3 sp, then in same sp work (ch 3, 2 dc, ch 3, 3 dc), *ch 1, in next ch-3 sp work (3 dc, ch 3, 3 dc); rep from * around, ch 1, join. (30 dc, 5 ch-1 sps, 5 ch-3 sps)\n`;
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 30 proven']);
  });

  test('"in end (toe) st" is the last one', () => {
    const text = `Ch 12.
Rnd 1: Sc in 2nd ch from hook, sc in next 9 ch, 3 sc in end (toe) ch, along other side of ch sc in next 9 ch, 2 sc in end (heel) st. (24 sc)
`;
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 24 proven']);
  });

  test('slip stitches counted on the way are no count of the round', () => {
    const text = `${ring}Rnd 2: Sl st over to ch space (3 sl sts), ch 3, 2 dc in same sp, *3 dc in next ch-3 sp; rep from * around, join.\n`;
    expect(complaints(text)).toEqual([]);
  });

  test('a first row on stitches that are not told is not checked', () => {
    const text = `Row 1: Ch 1, sc in first sc, *sc in next sc; rep from * across; turn.
Row 2: Ch 1, sc in each st across; turn.
`;
    expect(worked(text, 'Row 1').map((row) => row.split(' ').at(-1))).toEqual(['unchecked']);
  });

  test('a part is named before its first row, with no more than a dash between', () => {
    const text = `NECKBAND: Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across; turn. (5 sts)
BODY-Row 1 (Right Side): Working across long edge of neckband, ch 1, 12 sc evenly; turn. (12 sc)
Row 2: Ch 1, sc in each sc across. (12 sc)
`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 12 proven']);
    expect(complaints(text)).toEqual([]);
  });
});

describe('rows between two parts worked alike', () => {
  const fronts = `Sizes: Small (Large)

Left Front
Ch 26 (29).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 25 (28) sts. **
Row 2: Ch 1, sc in each sc across, turn. 25 (28) sc
`;

  test('"**" at the end of a row is a mark of a place; the count before it is held against the row', () => {
    expect(complaints(fronts)).toEqual([]);
    const { totals } = compile(fronts, { fixes: false });
    expect(totals.map(({ proven }) => proven)).toEqual([2, 2]);
    expect(complaints(fronts.replace('25 (28) sts. **', '25 (29) sts. **'))).toEqual([
      '5 count-mismatch',
    ]);
  });
});

describe('work across a number', () => {
  test('"work across 14 sc" works in these', () => {
    const text = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
Row 2: Ch 1, work across 14 sc, turn, leaving remaining sts unworked. (14 sc)
`;
    expect(made(text)).toEqual([20, 14]);
    expect(complaints(text)).toEqual([]);
  });
});

describe('"48, (64, 72)"', () => {
  const body = `Sizes: Small (Medium, Large)

Ch 48, (64, 72).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 47, (63, 71) sc
Row 2: Ch 1, sc in next 10, (12, 14) sts, 2 sc in next st, sc in each st to end. Turn. - 48, (64, 72) sts.
`;

  test('is one list of sizes, with a comma too many', () => {
    const { totals } = compile(body, { fixes: false });
    expect(totals.map(({ rows, proven }) => [rows, proven])).toEqual([
      [2, 2],
      [2, 2],
      [2, 2],
    ]);
    expect(complaints(body)).toEqual([]);
  });

  test('its counts are held against the rows', () => {
    expect(complaints(body.replace('(63, 71) sc', '(63, 70) sc'))).toEqual(['4 count-mismatch']);
    expect(complaints(body.replace('(64, 72) sts', '(65, 72) sts'))).toEqual(['5 count-mismatch']);
  });
});
