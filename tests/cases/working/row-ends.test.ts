/**
 * Work along the ends of rows. In each of them, of so many, is a number that the piece has; where the words
 * leave it to the maker (common practice: one in a row of single crochet, two in one of double crochet), the
 * row is neither proven nor wrong.
 */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const WELT = `Welt
Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (6 sc)
Rows 2-20: Ch 1, sc in BLO of each st across, turn. (6 sc)

Body
`;

describe('in each row end there are as many as rows', () => {
  it.each([
    'Row 1: Join yarn to first row end of welt, ch 1, sc in each row end across, turn. (20 sc)',
    'Row 1: Ch 1, sc in end of each row across, turn. (20 sc)',
    'Row 1: Ch 1, sc in the side of each row, turn. (20 sc)',
    'Row 1: Ch 1, 1 sc in ends of rows, turn. (20 sc)',
    'Row 1: Ch 1, 20 sc along side of rows, turn. (20 sc)',
    'Row 1: Ch 1, sc in end of next 20 rows, turn. (20 sc)',
  ])('%s', (row) => {
    const text = `${WELT}${row}\nRow 2: Ch 1, sc in each st across, turn. (20 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 20 proven', 'Row 2 20 proven']);
  });

  it.each([
    'Row 1: Ch 1, sc across ends of rows, turn. (24 sc)',
    'Row 1: Ch 1, sc evenly along row ends, turn. (24 sc)',
  ])('or as many as the maker likes: %s', (row) => {
    const text = `${WELT}${row}\nRow 2: Ch 1, sc in each st across, turn. (24 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 24 unchecked', 'Row 2 24 proven']);
  });

  it('a number that is not that of the rows is told', () => {
    const text = `${WELT}Row 1: Ch 1, sc in each row end across, turn. (22 sc)\n`;
    expect(complaints(text)).toEqual(['7 count-mismatch']);
  });

  it('the row behind it is held against what was stated', () => {
    const text = `${WELT}Row 1: Ch 1, sc in each row end, turn. (20 sc)\nRow 2: Ch 1, sc in each st across, turn. (21 sc)\n`;
    expect(complaints(text)).toEqual(['8 count-mismatch']);
  });

  it('"end of row" is the end of the row at hand', () => {
    const text = `Ch 7.\nRow 1: Sc in 2nd ch from hook, sc to end of row, turn. (6 sc)\n`;
    expect(worked(text, 'Row 1')).toEqual(['Row 1 6 proven']);
  });
});

describe('skipped chains and start chains are counted alike where both come out', () => {
  const at = (chains: number, row: string): string =>
    `Ch ${chains}.\nRow 1: Hdc in 3rd ch from hook and in each ch across, turn. (8 hdc)\n${row}\n`;
  it('no complaint where the start chain may count too', () => {
    expect(complaints(at(9, 'Row 2: Ch 2, hdc in each st across, turn. (8 hdc)'))).toEqual([]);
  });
  it('but where the rows cannot have it so', () => {
    const row = 'Row 2: Ch 2, hdc in first st, hdc in next 7 sts, turn. (8 hdc)';
    expect(complaints(at(9, row))).toEqual(['2 reading-differs']);
    expect(complaints(at(10, row))).toEqual([]);
  });
});

describe('round a piece that was worked in rows', () => {
  it('another side beyond row ends is no chain that is missing', () => {
    const text = `Rnd 1: 16 sc in magic ring, join. (16)
Row 2: Ch 1, sc in next 12 sts, turn. Leave rem sts unworked. (12)
Rows 3-5: Ch 1, sc in each st across, turn. (12)
Rnd 6: Ch 1, 4 sc evenly spaced across the ends of rows 2 to 5, sc in the 4 stitches left unworked from round 1, 4 sc evenly along the other ends of rows 2 to 5, join with a ss to first sc on the other side. (12)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 6')[0]).toMatch(/unchecked$/);
  });
});

it('"row end of Welt" names the piece that was worked last: a count of its row ends is held against them', () => {
  const body = (count: number): string =>
    `## Welt\n\nCh 7.\nRow 1: Sc in 2nd ch from hook and in each ch to end, turn. (6 sc)\nRows 2-20: Ch 1, sc in each sc to end, turn. (6 sc)\nFasten off.\n\n## Body\n\nRow 1: Join yarn to first row end of Welt, ch 1, sc in each row end to end, turn. (${count} sc)\n`;
  expect(complaints(body(20))).toEqual([]);
  expect(worked(body(20), 'Row 1')).toEqual(['Row 1 20 proven']);
  expect(complaints(body(23))).toEqual(['10 count-mismatch']);
});
