/**
 * Right rows that had been called wrong, each with the number beside it that is wrong and must be found.
 * Patterns of our own invention, in the shape of wording met on pages.
 */
import { describe, expect, it, test } from 'vitest';
import { readManuscript } from '../../../src/manuscript/index.ts';
import { complaints, worked } from './worked.ts';

test('"Row 3 - (Inc) ch 1, …" says what the row does, and makes no increase', () => {
  const text = (count: number): string =>
    `1st Row - ch1, work 9dc in ring, sl st to first dc. (9dc)\n2nd Row - (Inc) ch1, 2dc in each dc to end, sl st to first dc. (18dc)\n3rd Row - (Inc) ch1, * 1dc in next dc, 2dc in next dc, * rpt from * to * to end, sl st to first dc. (${count}dc)\n`;
  expect(complaints(text(27))).toEqual([]);
  expect(complaints(text(28))).toEqual(['3 count-mismatch']);
});

describe('a number of stitches and "around"', () => {
  const text = (words: string): string =>
    `R1 7 sc in magic ring (7)\nR2 7 inc around (14)\nR3 ${words} around (14)\n`;

  it('is how many there are, not how many stand in each', () => {
    expect(complaints(text('14 sc'))).toEqual([]);
    expect(complaints(text('13 sc'))).toEqual(['3 stitches-left']);
    expect(worked(text('13 sc'), 'R3')).toEqual(['R3 13 mismatch']);
  });

  it('of increases too', () => {
    expect(complaints(text('14 sc').replace('7 inc', '6 inc'))).not.toEqual([]);
  });

  it('a small one stands in each', () => {
    expect(complaints(text('2 sc').replace(/\(14\)\n$/, '(28)\n'))).toEqual([]);
  });
});

test('"sc3tog over next 2 sts" contradicts itself', () => {
  const text = (words: string): string =>
    `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around. (12)\nRnd 3: [${words}, sc in next 2 sc] around. (9)\n`;
  expect(complaints(text('sc2tog over next 2 sc'))).toEqual([]);
  expect(complaints(text('sc3tog over next 2 sc'))).not.toEqual([]);
});

test('"counting starting chain" explains no stitch where the chain is counted already', () => {
  const text = (count: number): string =>
    `Ch 6. Join with sl st to form ring.\nRnd 1: Ch 1, 10 sc in ring. Join.\nRnd 2: * Ch 5, sc in next sc; rep from * around.\nRnd 3: Sl st in next loop, ch 3, 3 dc in same loop, 4 dc in each loop around. Join (${count} dc, counting starting chain as 1 dc).\n`;
  expect(complaints(text(40))).toEqual([]);
  expect(complaints(text(41))).toEqual(['4 count-mismatch']);
});

test('rows of other sizes do not stand between a row and the one beneath', () => {
  const text = (n: number, count: number): string =>
    `Size: child 2 (4-6)\n1st round: Magic ring. 8 hdc in ring. Join with sl st to first hdc. 8 hdc.\n2nd round: Ch 1. 2 hdc in each hdc around. Join with sl st to first hdc. 16 hdc.\nSize 4 only: 3rd round: Ch 1. *2 hdc in next hdc. 1 hdc in each of next 7 hdc. Rep from * around. Join with sl st to first hdc. 18 hdc.\nSize 6 only: 3rd round: Ch 1. *${n} hdc in next hdc. 1 hdc in each of next 3 hdc. Rep from * around. Join with sl st to first hdc. 20 hdc.\nAll sizes: Next round: Ch 1. 1 hdc in each hdc around. Join with sl st to first hdc. 16 (18-${count}) hdc.\n`;
  expect(readManuscript(text(2, 20)).value.head.sizes).toEqual(['2', '4', '6']);
  expect(complaints(text(2, 20))).toEqual([]);
  expect(complaints(text(6, 20))).toEqual(['5 count-mismatch']);
  expect(complaints(text(2, 24))).toEqual(['6 count-mismatch']);
});

test('"All sizes" above rows is no list of materials', () => {
  const text =
    'Ch 21.\nAll Sizes\nRow 1 sc in second ch from hook and in each ch across\nRow 2 ch 1, turn, sc in each st across\n';
  expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 20 unstated', 'Row 2 20 unstated']);
});

test('"2 sc inc in next st" is one increase of two', () => {
  const text = (n: number): string =>
    `Rnd 1: 7 sc in magic ring. (7)\nRnd 2: ${n} sc inc in each st. (14)\nRnd 3: sc in 1st st, 2 sc inc in next st, around (21)\n`;
  expect(complaints(text(2))).toEqual([]);
  expect(complaints(text(3))).not.toEqual([]);
});

describe('stitches together from the hook', () => {
  it('begin in the chain that is named', () => {
    const text = (count: number): string =>
      `Ch 24.\nRow 1: Sc2tog in 2nd ch from hook, sc in each ch to end. (${count} sts)\n`;
    expect(complaints(text(22))).toEqual([]);
    expect(complaints(text(23))).not.toEqual([]);
    expect(complaints(text(21))).not.toEqual([]);
  });

  it('may all stand in it', () => {
    const text = (count: number): string =>
      `Ch 22.\nRow 1: Dc2tog in 4th ch from hook, *skip next ch, dc3tog in next ch; rep from * to end. (${count} sts)\n`;
    expect(complaints(text(10))).toEqual([]);
    expect(complaints(text(13))).not.toEqual([]);
  });
});

test('"3 sc in same st" in a list of numbers may be one stitch for all', () => {
  const text = (count: number): string =>
    `Rnd 1: 7 sc in magic ring. (7)\nRnd 2: 2 sc, 3 sc in same st, 4 sc (${count})\n`;
  expect(complaints(text(9))).toEqual([]);
  expect(complaints(text(10))).not.toEqual([]);
  expect(complaints(text(8))).not.toEqual([]);
});

test('a bracket that joins joins once, and its slip stitch is no stitch', () => {
  const text = (count: number): string =>
    `Round 1: 9sc in mr (sl st into first sc) [${count}]\nRound 2: ch 1, inc x9 [18]\n`;
  expect(worked(text(9), 'Rnd 1')).toEqual(['Rnd 1 9 proven']);
  expect(complaints(text(11))).toEqual(['1 count-mismatch']);
});

test('a stitch behind the count with which the yarn is fastened off is none of the round', () => {
  const text = (count: number): string =>
    `Round 1 6sc in magic ring [6 sts]\nRound 2 3sc, inc, 2sc\n[${count} sts]\n1sc into next st, fasten off and\nleave a long tail for sewing\n`;
  expect(complaints(text(7))).toEqual([]);
  expect(complaints(text(8))).toEqual(['3 count-mismatch']);
});

describe('labels that are none, and labels beside others', () => {
  it('a row in other words is not given twice', () => {
    const text = (word: string): string =>
      `Row 1: fsc 19 (19 sts)\n${word}Row 1: ch 20, sc in the 2nd ch from the hook and each ch across. (19 sts)\nRow 2: ch 1, turn, sc in each st. (19 sts)\n`;
    expect(complaints(text('Optional '))).toEqual([]);
    expect(complaints(text(''))).toEqual(['2 row-doubled']);
  });

  it('"(left from rnd 3)." begins no round', () => {
    const text =
      'Rnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in each st.\nRnd 3: sc in each st. Fasten off.\nCuff: Join yarn (the loop left in rnd 3). Ch 1, sc in each st.\nRnds 2-3: sc in each st.\n';
    expect(complaints(text).filter((told) => told.includes('row-'))).toEqual([]);
  });

  it('"Foundation row:" above a chain is a heading', () => {
    const text = (row: string): string =>
      `Foundation row:\n\nRnd 1: ${row}\nRnd 2: sc in each st around.\n`;
    expect(complaints(text('ch 9, join, 12 sc in ring'))).toEqual([]);
    expect(complaints(text('sc in each st around'))).toContain('1 row-empty');
  });

  it('"Stitches you need to know" lists short forms', () => {
    const text =
      'Stitches you need to know\nSK skip\nCH chain - pull your yarn through the loop on your hook.\nThe Pattern\nRow 1: ch 5, sc in 2nd ch from hook and across (4)\n';
    expect(complaints(text)).toEqual([]);
  });
});
