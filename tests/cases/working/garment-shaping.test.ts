/** Garments in rows: shaping at the ends of rows, and rows worked over some of the stitches. Common practice. */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const body = (rows: string): string =>
  `Ch 61.\nRow 1: Hdc in 2nd ch from hook and in each ch across, turn. (60 hdc)\n${rows}`;

describe('stitches drawn together at the ends of a row', () => {
  it.each([
    'hdc2tog at each end. (58)',
    'hdc2tog at both ends of row, turn. (58)',
    'hdc2tog at beg and end of row, turn. (58)',
    'hdc2tog at beg, hdc in each st to last 2 sts, hdc2tog at end. (58)',
    'hdc2tog at beg, hdc across, hdc2tog at end of row. (58)',
  ])('%s', (words) => {
    const text = body(`Row 2: Ch 1, ${words}\nRow 3: Ch 1, hdc in each st across. (58)\n`);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 58 proven', 'Row 3 58 proven']);
    for (const n of [57, 59, 62])
      expect(complaints(text.replace('(58)\nRow 3', `(${n})\nRow 3`))).toEqual([
        '3 count-mismatch',
      ]);
  });

  it('"Cont in hdc, dec 1 st at armhole edge every row 3 times" names the stitch of those rows', () => {
    const text = body('Cont in hdc, dec 1 st at armhole edge every row 3 times. (57 hdc)\n');
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('57', '58'))).toEqual(['3 count-mismatch']);
  });
});

describe('rows over some of the stitches, in those of the row beneath', () => {
  it.each([
    'Work across 20 sts, turn. (20 hdc)',
    'Work in pattern across first 20 sts, turn. (20 hdc)',
    'Work in est patt over 20 sts, turn. (20 hdc)',
  ])('%s', (words) => {
    const text = body(`Next Row: ${words}\n`);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Next Row')).toEqual(['Next Row 20 proven']);
    // One number is wrong, or the rest of the row was left without a word.
    expect(complaints(text.replace('(20 hdc)', '(21 hdc)'))).toEqual(['3 stitches-left']);
  });

  it('with a number for each size, below a row that has its count', () => {
    const text =
      'Sizes: S (M, L)\nCh 61 (67, 73).\nRow 1: Hdc in 2nd ch from hook and in each ch across, turn. (60 (66, 72) hdc)\nWork in pattern across 20 (22, 24) sts, turn. (20 (22, 24) hdc)\n';
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('(20 (22', '(20 (23'))).toEqual(['4 stitches-left']);
  });

  it('"work across to last 2 sts" stops before them', () => {
    const text = body('Next Row: Work across to last 2 sts, hdc2tog, turn. (59 hdc)\n');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Next Row')).toEqual(['Next Row 59 proven']);
  });
});
