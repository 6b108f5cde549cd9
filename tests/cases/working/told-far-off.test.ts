/**
 * Right rows that had been called wrong, and wrong numbers that had been taken for a misreading; each with its
 * near miss. Patterns of our own invention, in the shape of wording met on pages.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, worked } from './worked.ts';

it('"of original ch" is a place that is not known, and the row is not judged on it', () => {
  const text = (place: string): string =>
    `Ch 15, join with sl st to form a ring; do not cut the yarn, ch 21.\n\nROW 1: Sc in 2nd ch from hook and in each ch across: 20 sc. Sc in next 2 sts${place}, turn.\n`;
  expect(complaints(text(' of original ch'))).toEqual([]);
  expect(complaints(text(''))).toEqual(['3 round-overrun']);
});

it('"until 12sc rows have been worked" tells the rows up to the next number', () => {
  const text = (next: string): string =>
    `Row 1: Ch 7, sc in 2nd ch from hook, sc in each ch to end. Turn. (6 sc)\nRow 2: Ch 1, sc in each sc to end. Turn.\n${next}\nRow 13: Ch 1, 2 sc in each sc to end. Turn. (12 sc)\n`;
  expect(complaints(text('Rep last row until 12sc rows have been worked.'))).toEqual([]);
  expect(complaints(text(''))).toEqual(['4 row-missing']);
});

it('"in parentheses are for (S/M, L/XL, 2XL/3XL)" names three sizes, and "Total" stands above its count', () => {
  const text = (last: number): string =>
    `Directions in parentheses are for (S/M,\nL/XL, 2XL/3XL)\nMake\na slip knot and ch (32, 36, 40).\nRow 1: Hdc\nin 3rd ch from hook and in the next 9 sts, dc in next (20, 24, 28) sts, ch 2, turn.\nRow 2: Dc in (20, 24, 28) sts, hdc in next 10 sts, ch 2, turn.\nTotal\n(20, 24, 28) dc, 10 hdc.\nRow 3: Hdc BLO in 10 sts, dc in next (20, 24, 28) sts, ch 2, turn.\nTotal\n10 hdc BLO, (20, 24, ${last}) dc.\n`;
  expect(complaints(text(28))).toEqual([]);
  expect(worked(text(28), 'Row 3')).toEqual(['Row 3 38 proven']);
  expect(complaints(text(29))).toEqual(['12 count-mismatch']);
  const { sizes } = compile(text(28), { fixes: false });
  expect(sizes).toEqual(['S/M', 'L/XL', '2XL/3XL']);
});

it('"(23dc + ch3)" is carried on with its chain: one slip is told once', () => {
  const text = (n: number): string =>
    `ch3 counts as first dc\nHat - With main color yarn, ch5, sl st to first ch to make a ring. ch3, (RS) work 11dc in ring, sl st to top of ch3. (11dc + ch3)\n2nd Round - ch3, ${n}dc in base of ch3, 2dc in each dc to end, sl st to top of ch3. (23dc + ch3)\n3rd Round - ch3, 1dc in base of ch3, * 1dc in next dc, 2dc in next dc, * rpt from * to * to last dc, 1dc in last dc, sl st to top of ch3. (35dc + ch3)\n4th Round - ch3, 1dc in each dc to end, sl st to top of ch3. (35dc + ch3)\n`;
  expect(complaints(text(1))).toEqual([]);
  expect(complaints(text(2))).toEqual(['3 count-mismatch']);
});

it('"(2sc) * 6", where the increase is left out, takes neither all nor makes the count', () => {
  const text = (inc: string): string =>
    `Rnd 1. 6sc in MR (6)\nRnd 2. 6-inc (12)\nRnd 3. (sc, inc) * 6 (18)\nRnd 4. (2sc${inc}) * 6 (24)\nRnd 5-6. 24sc (24)\n`;
  expect(complaints(text(', inc'))).toEqual([]);
  expect(complaints(text(''))).toEqual(['4 stitches-left']);
});

it('a far number is told upon a row that made what it states, though its own start is not known', () => {
  const text = (n: number): string =>
    `Begin by drawing the yarn into 6 sc around a loop.\nRnd 1: 2 sc into each of your beginning 6 sc for a total of 12 stitches.\nRnd 2: *${n} sc in first stitch, 2 sc into next stitch – repeat from * around for a total of 18 stitches.\nRnd 3: *1 sc in first stitch, 1 sc in second stitch, 2 sc in next stitch – repeat from * around for a total of 24 stitches.\n`;
  expect(complaints(text(1))).toEqual([]);
  expect(complaints(text(5))).toEqual(['3 count-mismatch']);
});

it('"Right-side facing:" changes nothing in a row said plainly', () => {
  const text = (n: number): string =>
    `Fsc 28. Join with a sl st in first fsc, being careful not to twist.\nRd 1: Right-side facing: Sc tbl in first fsc, place marker, sc tbl to end of round (${n} sts).\nRds 2-10: Sc tbl around.\n`;
  expect(complaints(text(28))).toEqual([]);
  expect(complaints(text(32))).toEqual(['2 count-mismatch']);
});

it('"(baby, child, adult/teen)" and "52 (58) sts" name sizes', () => {
  const listed = (n: number): string =>
    `Notes: sizes are listed in parentheses in the format (baby, child, adult/teen).\nRnd 1: (28, 32, 36) fsc, join with ss. (28, 32, 36)\nRnd 2: ch 1, hdc in each stitch around, join with ss. (28, ${n}, 36)\n`;
  expect(complaints(listed(32))).toEqual([]);
  expect(complaints(listed(33))).toEqual(['3 count-mismatch']);
  const paired = (n: number): string =>
    `Cowl\nWith A, ch 52 (58), taking care not to twist ch, join with sl st in first ch to form a ring.\nRound 1 (RS): Ch 3 (counts as first dc), dc in each remaining ch around; join with sl st in top of beginning ch—52 (${n}) sts. Do not fasten off A. Carry the other yarn until next needed.\n`;
  expect(complaints(paired(58))).toEqual([]);
  expect(complaints(paired(59))).toEqual(['3 count-mismatch']);
  expect(complaints('Ch 20 (21).\nRow 1: Sc in 2nd ch from hook and in each ch across. (19)\n')).toEqual([
    '1 count-mismatch',
  ]);
});

it('a chain to turn is no foundation where none is told', () => {
  const text = (start: string): string =>
    `${start}1st rnd: Ch 3. (1 dc in each of next 3 sts, skip next st) 8 times. Join with sl st to first dc. (24 sts)\n2nd rnd: Ch 3. (1 dc in each of next 2 sts, skip next st) 8 times. Join with sl st to first dc. (16 sts)\n`;
  expect(complaints(text(''))).toEqual([]);
  expect(worked(text(''), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 24 unchecked', 'Rnd 2 16 unchecked']);
  expect(complaints(text('Ch 31, join to form a ring.\n'))).not.toEqual([]);
});

it('a round above flat rows that were fastened off goes along their sides', () => {
  const text = (end: string): string =>
    `Chain 12\nRow 1: hdc in 2nd ch from hook and in remaining chs, turn (11)\nRow 2: ch 1, hdc across in blo, turn (11)${end}\nNow take the larger hook.\nRound 3: ch 1, sc across in flo, join with a ss (84)\n`;
  expect(complaints(text('\nRepeat row 2 until the piece measures 21" long. Fasten off.'))).toEqual([]);
  expect(complaints(text('.'))).toEqual(['5 count-mismatch']);
});

it('"6 x FPDC" counts those round a post', () => {
  const text = (n: number): string =>
    `CH 6; SL ST to form a ring;\nRND 1: CH 3 (counts as 1 DC); work 11 DC into ring (12 DC);\nRND 2: CH 3 (counts as 1 DC), DC in same st; work 1 FPDC around next DC; *work 2 DC into next DC; 1 FPDC around next DC. Repeat from * around.\n(${n} x FPDC; 6 increases)\n`;
  expect(complaints(text(6))).toEqual([]);
  expect(complaints(text(7))).toEqual(['4 count-mismatch']);
});

it('shells all alike, parted by single stitches, are held to their number', () => {
  const text = (n: number): string =>
    `Ch 75.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (74 sc)\nRow 2: Ch 1, sc in first sc, *skip 2 sc, 5 dc in next sc, skip 2 sc, sc in next sc; rep from * to last sc, sc in last sc, turn. (${n} shells)\n`;
  expect(complaints(text(12))).toEqual([]);
  expect(complaints(text(13))).toEqual(['3 count-mismatch']);
});

it('a second copy is another piece, and stands on nothing of the first', () => {
  const text = (n: number): string =>
    `Legs x4:\n- Starting with the paler yarn, as for the ears (4)\n- *inc* (8)\n- *1sc, inc* (${n})\n- Change yarn - 12sc (12)\n`;
  expect(complaints(text(12))).toEqual([]);
  expect(complaints(text(13))).not.toEqual([]);
});

describe('a part without its first row', () => {
  const text = (start: string, inc: number): string =>
    `Head\nRnd 1: 6 sc in MR (6)\nRnd 2: (inc) x 6 (12)\nRnd 3: sc around (12)\n\nEars (make 2)\n${start}Rnd 2: (inc) x 6 (12)\nRnd 3: (sc, inc) x 6 (${inc})\n`;
  it('is told once', () => {
    expect(complaints(text('', 18))).toEqual(['7 row-one-missing']);
    expect(complaints(text('', 19))).toEqual(['7 row-one-missing', '8 count-mismatch']);
  });
  it('but not where words stand in its place', () => {
    expect(complaints(text('Make a magic ring with 6 sc.\n', 18))).toEqual([]);
    expect(complaints(text('Rnd 1: 6 sc in MR (6)\n', 18))).toEqual([]);
  });
});

it('an item of a list of rows is one, however much it talks', () => {
  const text = (n: number): string =>
    `Body:\n- 6 sc in ring (6)\n- *inc* (12)\n- *2sc, inc* (16)\n- *3sc, inc* (20)\n- 1sc, join leg - by putting 1sc through the next st in the body and through one st in the leg, 6sc around the leg. (44)\n- 44sc (44)\n- *dec, 9sc* (${n})\n`;
  expect(complaints(text(40))).toEqual(['6 unread']);
  expect(complaints(text(41))).toEqual(['6 unread', '8 count-mismatch']);
});

it('a row whose work is left out is told as empty, though how often and how many are said', () => {
  const text = (words: string): string =>
    `Rnd 1: 6 sc in magic ring (6)\nRnd 2: ${words} (12)\nRnd 3: sc around (12)\n`;
  expect(complaints(text('inc x 6'))).toEqual([]);
  expect(complaints(text('**').replace('(12)', '(12 sts)'))).toEqual(['2 row-empty']);
  expect(complaints(text('around'))).toEqual(['2 row-empty']);
  expect(complaints('Rnd 1: 6 sc in magic ring (6)\nRnd 2: around (6)\nRnd 3: sc around (6)\n')).toEqual([]);
});

it('a row that comes nearer to the end than it says is over by so many, and never "-1 left"', () => {
  const text = (n: number): string =>
    `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20)\nRow 2: Ch 1, turn, sc in next ${n} sts, leave last 5 sts unworked.\n`;
  expect(complaints(text(15))).toEqual([]);
  expect(complaints(text(16))).toEqual(['3 round-overrun']);
  expect(complaints(text(14))).toEqual(['3 stitches-left']);
});
