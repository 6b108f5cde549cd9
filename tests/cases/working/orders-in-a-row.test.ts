/** Orders behind one another, places told by words beside the work, and notes that are numbered as rows are. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

describe('an order to repeat rows behind a row that repeats another is worked too', () => {
  const head =
    'US terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and each ch across; turn. (11)\nRow 2: Ch 1, 2 sc in first st, sc in each st across; turn. (12)\n';
  it('below the row', () => {
    const text = `${head}Row 3: Rep Row 2.\nRow 4: Rep Row 2.\nRep rows 2-3.\nRow 7: Sc across. (16)\n`;
    expect(made(text)).toEqual([11, 12, 13, 14, 15, 16, 16]);
    expect(worked(text, 'Row 7')).toEqual(['Row 7 16 proven']);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('(16)', '(15)'))).not.toEqual([]);
  });
  it('in one line with another order', () => {
    const text = `${head}Row 3: Ch 1, sc in each st; turn. (12)\nRep row 2 twice. Rep row 3 once.\nRow 7: Sc across. (14)\n`;
    expect(made(text)).toEqual([11, 12, 12, 13, 14, 14, 14]);
    expect(complaints(text)).toEqual([]);
  });
});

describe('"repeat from row 2" means that row and all behind it', () => {
  const head =
    'US terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and each ch across; turn. (11)\nRow 2: Ch 1, 2 sc in first st, sc in each st across; turn. (12)\nRow 3: Ch 1, 2 sc in first st, sc in each st across; turn. (13)\n';
  it('below the rows', () => {
    const text = (n: number): string =>
      `${head}Repeat from Row 2 twice.\nRow 8: Ch 1, sc in each st across. (${n})\n`;
    expect(made(text(17))).toEqual([11, 12, 13, 14, 15, 16, 17, 17]);
    expect(worked(text(17), 'Row 8')).toEqual(['Row 8 17 proven']);
    expect(complaints(text(17))).toEqual([]);
    expect(complaints(text(15))).not.toEqual([]);
  });
  it('in rows with numbers of their own', () => {
    const text = `${head}Rows 4-7: Rep from row 2. (17)\n`;
    expect(made(text)).toEqual([11, 12, 13, 14, 15, 16, 17]);
    expect(complaints(text)).toEqual([]);
  });
  it('but one row with a number of its own is one', () => {
    const text = `${head}Row 4: Rep from row 2. (14)\nRow 5: Ch 1, sc in each st across. (14)\n`;
    expect(made(text)).toEqual([11, 12, 13, 14, 14]);
    expect(complaints(text)).toEqual([]);
  });
});

describe('one more stitch in the last chain is made there', () => {
  const text = (n: number, chain = 30): string =>
    `US terms\n\nCh ${chain}.\nRound 1: Sc in the second chain from the hook, working into the top loop only (not the back bump). Sc in each chain to the end, making one additional sc in the last chain. Continue working around, making one sc in each chain on the other side of the starting chain. Add one more sc in the last chain. (${n} sts)\nRound 2: Sc in each st. (${n} sts)\n`;
  it('at both ends of a chain worked round', () => {
    expect(worked(text(60), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 60 proven', 'Rnd 2 60 proven']);
    expect(complaints(text(60))).toEqual([]);
    expect(complaints(text(61))).not.toEqual([]);
    expect(complaints(text(57))).not.toEqual([]);
  });
  it('but a chain end with two stitches told as one number is not worked once more', () => {
    const oval = (n: number): string =>
      `US terms\n\nCh 11.\nRnd 1: Sc in 2nd ch from hook and in next 8 ch, 2 sc in last ch, working on other side, sc in each ch across. (${n})\n`;
    expect(complaints(oval(20))).toEqual([]);
    expect(complaints(oval(21))).toEqual(['4 count-mismatch']);
  });
});

describe('words that tell where the work goes make nothing', () => {
  it('the top loop of each chain is no place of its own', () => {
    const text = 'US terms\n\nCh 12.\nRow 1: Sk first ch, sc in top loop of each ch across. (11)\n';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 11 proven']);
  });
  it('the long edge of a band', () => {
    const text = `US terms\n\nCh 6.\nRow 1: Sc in 2nd ch from hook and in each ch across; turn. (5 sts)\nRow 2: Ch 1, sc in back lp of each sc across; turn.\nRep Row 2 until 29 rows in all have been worked.\n\nBODY\nRow 1: Working across long edge of band, ch 1, sc in each row end across; turn. (29 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 29 proven']);
  });
});

describe('a numbered list of notes is no list of rows', () => {
  it('whose sentences tell of rounds', () => {
    const text = `1. The number of chains can be adjusted.\n\n2. The starting chain and first round of stitches will be the size of the mat. Choose as you like.\n\n3. Do not join at the end of rounds.\n\nChain 36.\n\nRound 1: Sc in 2nd chain from hook and in each chain across. (35 sts)\n`;
    const { rows } = compile(text, { fixes: false });
    expect(rows.map(({ label, verdict }) => `${label} ${verdict}`)).toEqual(['Rnd 1 proven']);
  });
});
