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
