/**
 * Right rows that had been called wrong, each with the number beside it that is wrong and must be found.
 * Patterns of our own invention, in the shape of wording met on pages.
 */
import { describe, expect, it, test } from 'vitest';
import { compile } from '../../../src/index.ts';
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

test('a round in brackets of its own begins with the chain in the first of them', () => {
  const text = (count: number): string =>
    `Rnd 1: Ch4, 9dc in 4th ch from hook, join. (10dc)\nRnd 2: (Ch3, dc in same st), [2dc in each st around], join. (${count}dc)\nRnd 3: (Ch3, dc in same st). [Dc in next st, 2dc in next st] Repeat around ending w/dc in last st, join. (30dc)\n`;
  expect(complaints(text(20))).toEqual([]);
  expect(complaints(text(21))).toEqual(['2 count-mismatch']);
});

test('"2 sc around last ch-sp" leaves that space out of each', () => {
  const text = (count: number): string =>
    `Rnd 1: 14 sc in ring, join. (14)\nRnd 2: Ch 4 (counts as dc + ch-1), turn, sk next st, *dc in next st, ch 1, sk next st; rep from * around, join to 3rd ch of ch-4. (7 ch-1 sps)\nRnd 3: Ch-1 (does not count), turn, sc in first ch-sp. Sc in each st/ch-sp around. Place 2sc around last ch-sp. Join to top of first sc. (${count})\n`;
  expect(complaints(text(14))).toEqual([]);
  expect(complaints(text(15))).toEqual(['3 count-mismatch']);
});

describe('rows that are not followed here', () => {
  it('another version of rounds is none of the last round', () => {
    const text =
      `Round 1: 6 sc into ring - 6 st.\nRound 2: 2 sc in each st around - 12 st.\nRound 3: [Sc2tog] 6 times – 6 sc. FO.\n\nFor the short one, follow the rest of the instructions for rounds 2 to 4 here:\n\nRound 2: [5 sc in next st, sc in next st] 6 times - 36 st.\nRound 3: sc in each st - 36 st.\n`;
    expect(complaints(text)).toEqual([]);
  });

  it('stitches in the chain with which the round before began', () => {
    const text = (n: number): string =>
      `Round 1:\nCh 12\nCh 1, sc x 3 in 2nd ch from hook\nSc in next 10 ch\nSc x 4 in last ch, turn\nSc in next 10 ch (on opposite side)\nRound 2:\nWork directly into next round by doing 2sc in initial ch 1\n2sc in next ${n} st\nSc in next 10 st\n2sc in next 4 st\nSc in next 10 st\n`;
    expect(complaints(text(3))).toEqual([]);
  });

  it('slip stitches and chains alone, which go anywhere', () => {
    const text =
      'Rnd 1 - make a slip knot, ch 2, [sl st to 2nd stitch from hook, ch 6] x 8. Then pull the slip knot tight, fasten off\n';
    expect(complaints(text)).toEqual([]);
  });
});

test('a row is not missing whose number opens a line that was not understood', () => {
  const text = (n: string): string =>
    `1. MC 8 [8]\n2. Inc x8 [16]\n3. *Sc, inc* x8 [24]\n${n} FLO- *slst, ch 10, fnord* x 8\n5. Sc around [24]\n`;
  expect(complaints(text('4'))).not.toContain('5 row-missing');
  expect(complaints(text('9'))).toContain('5 row-missing');
});

test('the first loop of a round may be one chain off: makers differ in how high the stitch is', () => {
  const text = (n: number): string =>
    `R1: sc 7 in ring, join\nR2: ch 11, triple-treble in same stitch, *triple-treble in next stitch, ch ${n}, triple-treble in same stitch* Repeat around, join in the 8th chain from the bottom.\nR3: *8 sc in ch 4 loop, sc in between next two triple-treble stitches* repeat around.\n`;
  expect(complaints(text(4))).toEqual([]);
  expect(complaints(text(6))).toEqual(['3 space-size']);
});

test('what the words alone fix is held to the count, also behind a row that was not understood', () => {
  const text = (n: number): string =>
    `Rnd 1: 8 sc in ring (8)\nRnd 2: fnord in each st (16 st)\nRnd 3: dec ${n} times - 8 st\n`;
  expect(complaints(text(8)).filter((told) => told.startsWith('3'))).toEqual([]);
  expect(complaints(text(7))).toContain('3 count-mismatch');
});

test('a count that says of the chain that it does not count holds it so', () => {
  const text = (count: number): string =>
    `With White ch-4, sl st to form a ring.\nRND 1: ch-3, work (dc, ch-1) 7 times in ring, sl st top beg ch-3, ch-3, turn. (${count} sts, ch-3 does not count)\nRND 2: * (dc, ch-1) twice in next sp, * rep bet ** around, sl st top ch-3, ch-3, turn. (14 sts)\n`;
  expect(complaints(text(7))).toEqual([]);
  expect(complaints(text(8))).toEqual(['2 count-mismatch']);
});

test('a first group in brackets is worked once where a repeat takes the rest', () => {
  const text = (n: number): string =>
    `Rnd 1: 6 sc in magic ring\nRnd 2: 2 sc in each st around. (12 sts)\nRnd 3: (sc in first st, 2 sc in next st);\n*(sc in next st, ${n} sc in next st) repeat from * around. (18 sts)\n`;
  expect(complaints(text(2))).toEqual([]);
  expect(complaints(text(1))).toEqual(['4 count-mismatch']);
  expect(complaints(text(6))).toEqual(['4 count-mismatch']);
});

test('a round for the other hand is worked on the round before both', () => {
  const text =
    'Ch 20, join.\nRound 1: Ch 1, sc in each ch. (20 sc)\nRound (Right hand) 2: Ch 1, sc in next 14 sts, ch 4, skip 4 sc, sc in 2 sc; join. (16 sc and 1 ch 4 loop)\nRound (Left hand) 2: Ch 1, sc in next 2 sts, ch 4, skip 4 sc, sc in 14 sc; join. (16 sc and 1 ch 4 loop)\n';
  expect(complaints(text)).toEqual([]);
});

test('"shell made" behind its stitches tells what a shell is', () => {
  const text = (told: string): string =>
    `Ch 26.\nRow 1: sc in 2nd ch from hook and in each ch. (25)\nRow 2: ch 1, turn, sc in first st, * skip 1, 3 dc in next st${told}, skip 1, sc in next st; rep from * across.\nRow 3: ch 3, turn, shell in each sc across.\n`;
  expect(complaints(text('—shell made—'))).not.toContain('4 special-undefined');
  expect(complaints(text(''))).toContain('4 special-undefined');
});

test('"another dc in last st" behind a repeat makes one more there', () => {
  const text = (words: string): string =>
    `Ch 16.\nRow 1: Dc in 4th ch from hook and in each ch across. (14)\nRow 2: Ch3 (counts as dc), turn, dc in next st, [ch1, skip 1, dc in next st], repeat between [ ] to end, ${words}. (15)\n`;
  expect(complaints(text('work another dc in last st'))).toEqual([]);
  expect(complaints(text('work dc in last 2 sts'))).not.toEqual([]);
});

test('"working in front of last 2 dc, work 1 tr into skipped st" adds no dc', () => {
  const text = (n: number): string =>
    `Special Stitches:\nLean = skip 1 st, work 1 dc into each of next 2 sts, working in front of last 2 dc, work 1 tr into skipped st.\n\nCh 18.\nRow 1: Sc into 2nd ch from hook and into each ch to end, turn. (17 sc)\nRow 2: Ch 3 (count as 1 dc), skip first sc, *Lean, ${n}dc into next sc; rep from * to end, turn. (17)\n`;
  expect(complaints(text(1))).toEqual([]);
  expect(complaints(text(2))).not.toEqual([]);
});

test('a chain of the row beneath is not called the starting chain', () => {
  const text =
    'Ch 31.\nRow 1: sc in 2nd ch from hook and across (30)\nRow 2: *Ch 5, skip 2 sts and sc in third st; rep from * all the way across, forming 10 loops.\nRow 3: Ch 2, sc in top of first loop. *Ch 4, sc in top of next loop; rep all the way across. After sc in the last loop, dc in base of first ch 5 in previous row.\n';
  expect(complaints(text)).toEqual([]);
});

test('"R2-R3:" and "With brown, R4:" begin rows in the middle of a line', () => {
  const text = (count: number): string =>
    `Ch 15. R1: sc in second ch from hook and across, ch1 turn (14) R2-R3: sc in each st, ch1 turn (14) With brown, R4:sc in each st, ch1 turn (14) With pink, R5-R8: sc in each st, ch1 turn (${count})`;
  expect(complaints(text(14))).toEqual([]);
  expect(complaints(text(13))).toEqual(['1 count-mismatch']);
});

test('"each of the remaining 11 sts" is eleven, and no more', () => {
  const text = (n: number): string =>
    `chain 13\nRow 1: sc in 2nd ch from hook and in each ch, turn (12 sts)\nRow 2: ch 2 (counts as first hdc), hdc in each of the remaining ${n} sts, turn\n`;
  expect(complaints(text(11))).toEqual([]);
  expect(complaints(text(10))).toEqual(['3 stitches-left']);
  expect(complaints(text(12))).toEqual(['3 round-overrun']);
});

test('"3dc-grp = this is a grouping of 3 double crochet stitches" is no row', () => {
  const text = (count: number): string =>
    `3dc-grp = this is a grouping of 3 double crochet stitches\n\nR 1: Ch 4, 9dc in 4th ch from the hook. (${count}dc)\n`;
  expect(complaints(text(10))).toEqual([]);
  expect(complaints(text(11))).toEqual(['3 count-mismatch']);
});

test('a line that opens with "Into" goes on with the one above it', () => {
  const text = (count: number): string =>
    `Row1- ch2 don't count, dc 14 into circle, slip st to join into 1st\ndc. (dc 14)\nRow2- ch2 don't count, dc into same st, 2dc into\nnext st, *1dc into next st, 2dc\nInto next st*, repeat from * to * around, slip st to join into 1st dc. (${count})\n`;
  expect(complaints(text(21))).toEqual([]);
  expect(complaints(text(22))).toEqual(['5 count-mismatch']);
});

test('words of one row that were not understood are told together', () => {
  const text =
    'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st, fnord the ribbing, sc in next st, grommel the hem, sc in last st.\n';
  const unread = compile(text, { fixes: false }).findings.filter(({ code }) => code === 'unread');
  expect(unread.length).toBe(1);
  expect(unread[0]?.labels.map(({ from, to }) => text.slice(from, to))).toEqual(['grommel the hem']);
});

test('"Work 1 round even" that was not understood is the round whose number is not there', () => {
  const text = (words: string): string =>
    `Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each sc. ${words}, join, cut thread.\nRnd 4: sc in each sc.\n`;
  expect(complaints(text('Work 1 round even'))).not.toContain('3 row-missing');
  expect(complaints(text('Fnord it'))).toContain('3 row-missing');
});
