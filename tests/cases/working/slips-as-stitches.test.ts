/** Slip stitches that later rows are worked into, and one row repeated up to another. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('slip stitches are stitches where the words work into them', () => {
  it('in rows that alternate them with half doubles', () => {
    const text =
      'US terms\n\nCh 11\nRow 1: Sl st in 3rd ch from hook (skipped ch 2 counts as hdc), *hdc in next ch, sl st in next* repeat from * to * across\nRow 2: Ch 2 (counts as hdc), turn, skip first sl st, *sl st in next hdc, hdc in next sl st* repeat from * to * across, sl st on top of turning ch\n';
    expect(made(text)).toEqual([10, 10]);
    expect(complaints(text)).toEqual([]);
  });
  it('and not where they only join', () => {
    const text =
      'US terms\n\nRnd 1: 6 sc in a magic ring, sl st in first sc. (6)\nRnd 2: Ch 1, 2 sc in each sc around, sl st in first sc. (12)\n';
    expect(complaints(text)).toEqual([]);
  });
});

describe('"repeat row 2 to row 9" is one row until there are nine', () => {
  const head =
    'US terms\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Ch 1, turn, sc in each sc across. (10)\n';
  it('where the others are not written', () => {
    const text = `${head}Repeat row 2 to row 9.\nRow 10: Ch 1, turn, 2 sc in first st, sc across. (11)\n`;
    expect(made(text)).toEqual([...Array(9).fill(10), 11]);
    expect(complaints(text)).toEqual([]);
  });
  it('and all of them where they are', () => {
    const text = `${head}Row 3: Ch 1, turn, sc across. (10)\nRow 4: Ch 1, turn, sc across. (10)\nRepeat row 2 to row 4 twice.\n`;
    expect(made(text)).toHaveLength(10);
  });
  it('but "rows 2 to 9" of which most are missing is asked about', () => {
    expect(complaints(`${head}Rows 3-10: Repeat rows 2 to 9.\n`)).not.toEqual([]);
    expect(worked(`${head}Row 3: Repeat row 2.\n`, 'Row 3')).toEqual(['Row 3 10 unstated']);
  });
});

describe('work told by a verb that goes on', () => {
  for (const words of [
    'Continue to work sc in each ch across',
    'Continue making sc in each ch across',
    'continue to sc in each ch to end',
  ]) {
    it(words, () => {
      const text = (n: number): string =>
        `US terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook. ${words}. (${n})\n`;
      expect(worked(text(11), 'Row 1')).toEqual(['Row 1 11 proven']);
      expect(complaints(text(12))).not.toEqual([]);
    });
  }
  it('"in three same st" is the same stitch, and "e.g." gives an example', () => {
    const text =
      'US terms\n\nRnd 1: 6 sc in a magic ring (e.g., with 4 ch for a big one). (6)\nRnd 2: Ch 1, 1 sc in three same st, 2 sc in each of next 5 sts. (11)\n';
    expect(complaints(text)).toEqual([]);
  });
});
