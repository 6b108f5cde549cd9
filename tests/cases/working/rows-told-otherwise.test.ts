/** Rows of flat pieces in other words than most. Texts of our own invention; readings from memory of such texts. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const proven = (n: number, ...labels: string[]): string[] =>
  labels.map((label) => `${label} ${n} proven`);

describe('a row that goes over a chain at its start and on over the row', () => {
  const start = 'Ch 22.\nRow 1: Sc in 2nd ch from hook and in each ch across. (21)\n';
  it.each([
    ['Row 2: Ch 8, turn, sc in 3rd ch from hook, (dc in next ch, sc in next ch) across. (27)', 27],
    ['Row 2: Ch 8, turn, sc in 3rd ch from hook, *dc in next st, sc in next st; rep from * across. (27)', 27],
    ['Row 2: Ch 8, turn, sc in 2nd ch from hook and in each ch and st across. (28)', 28],
    ['Row 2: Ch 8, turn, sc in 2nd ch from hook, sc across. (28)', 28],
    ['Row 2: Ch 8, turn, sc in 2nd ch from hook and in each ch, sc in each st across. (28)', 28],
  ])('%s', (row, n) => {
    const text = `${start}${row}\nRow 3: Ch 1, turn, sc in each st across. (${n})\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(proven(n, 'Row 2', 'Row 3'));
    for (const off of [-2, 1, 3]) {
      const wrong = text.replace(`across. (${n})\nRow 3`, `across. (${n + off})\nRow 3`);
      expect(complaints(wrong)).toHaveLength(1);
    }
  });

  it('that leaves the row beneath is none', () => {
    const text = `${start}Row 2: Ch 8, turn, sc in 2nd ch from hook and in next 6 ch, sl st in next st, turn. (7)\n`;
    expect(made(text)).toEqual([21, 7]);
  });
});

describe('increases told by how often they come', () => {
  it('"increase 1 st in every 5th st" has four plain ones between', () => {
    const text =
      'Ch 37.\nRow 1: Dc in 4th ch from hook and in each ch across. (35 dc)\nRow 2: Ch 3, turn, increase 1 st in every 5th st. (42)\nRow 3: Ch 3, turn, dc in each st across. (42)\n';
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(proven(42, 'Row 2', 'Row 3'));
    expect(complaints(text.replace('5th st. (42)', '5th st. (43)'))).toEqual(['3 count-mismatch']);
  });
});

describe('a place with no word before it', () => {
  it('"2nd ch from hook sc, sc across" begins there', () => {
    const text = 'Ch 31\nRow 1: 2nd ch from hook sc, sc all the way across, turn (30)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(proven(30, 'Row 1'));
  });
});

describe('"behind" a chain, as translators put it', () => {
  const text = (place: string): string =>
    `Ch 30.\nRow 1: 1 sc in 6th ch from hook, *ch 5, sk 3 ch, 1 sc in next ch; rep from * across.\nRow 2: Turn, ch 7, 1 sc ${place}, *ch 5, 1 sc behind the next chain of 5 chain sts; rep from * across.\n`;
  it.each(['behind the 1st chain', 'behind the first arch of 5 chain sts'])('%s', (place) => {
    expect(complaints(text(place))).toEqual([]);
    expect(made(text(place))).toEqual([7, 7]);
  });
  it('"behind next ch-5 sp" is a side of it, and no such loop', () => {
    expect(complaints(text('behind ch-5 sp'))).not.toEqual([]);
  });
});

describe('steps of a list that are rows', () => {
  const row = (n: number, words: string): string => `${n}. ${words}\n`;
  it('"repeat steps 3-4" works them again', () => {
    const text =
      row(1, 'Ch 21.') +
      row(2, 'Sc in 2nd ch from hook and in each ch across. (20)') +
      row(3, 'Ch 1, turn, sc in each st across. (20)') +
      row(4, 'Ch 1, turn, sc in next 5 sts, dc in next 10 sts, sc in next 5 sts. (20)') +
      row(5, 'Repeat steps 3-4 six times.') +
      row(6, 'Ch 1, turn, sc in each st across. (20)');
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toHaveLength(4 + 12);
  });

  it('where they are not the rows they are told, and the row above is judged by its own words', () => {
    const text =
      row(1, 'Chain 21.') +
      row(2, 'Row 1: Sc in 2nd ch from hook and in each ch across. (20)') +
      row(3, 'Row 2: Ch 1, turn, sc in each st across. (20)') +
      row(4, 'Repeat steps 2-3 six times.');
    expect(complaints(text)).toEqual(['4 unread']);
    expect(worked(text, 'Row 2')).toEqual(proven(20, 'Row 2'));
  });
});

describe('an order behind the count of a row that is not understood', () => {
  const text =
    'Ch 5\nRow 1: sc in 2nd ch from hook and in each ch across (4 sc)\nRows 2-3: ch 1, turn, sc in each sc across (4 sc)\nRepeat this way, growing by one on every third row.\nShrink every third row by one stitch by sc two stitches together until three rows are left.\nRow 4: ch 1, turn, sc in each sc across. (4 sc)\n';
  it('leaves the row to its own words', () => {
    expect(complaints(text).every((code) => code.endsWith(' unread'))).toBe(true);
    expect(complaints(text)).toHaveLength(1);
    expect(worked(text, 'Row 3')).toEqual(proven(4, 'Row 3'));
  });
  it('does not hide that its count is wrong', () => {
    const wrong = text.replace('across (4 sc)\nRepeat', 'across (5 sc)\nRepeat');
    expect(complaints(wrong)).toContain('3 count-mismatch');
  });
});

describe('slips and columns', () => {
  it('"sp 2 sts" where a step begins is a skip', () => {
    const text =
      'Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across. (30)\nRow 2: Ch 3, turn, dc in next 2 sts, *sp 2 sts, dc in next st, ch 2; rep from * across. (12 dc)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(proven(12, 'Row 2'));
  });
  it('a list of counts goes on below its comma', () => {
    const text =
      'Ch 34.\nRow 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across. 16 dc,\n15 ch-1 sps\nRow 2: Ch 1, turn, sc in each dc and ch-1 sp across. 31 sc\n';
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('15 ch-1', '14 ch-1'))).toHaveLength(1);
  });
});

describe('what is counted behind a row in other words than stitches', () => {
  const mesh = (count: string): string =>
    `Ch 41.\nRow 1: Hdc in 2nd ch from hook and in each ch across. (40)\nRow 2: Ch 1, turn, hdc in first 5 sts, *ch 1, sk 1 st, hdc in next st; rep from * to last 5 sts, hdc in last 5 sts – ${count}.\n`;
  it.each([
    '15 ch-1 sps, 5 hdc at beg, 5 hdc at end',
    '15 ch-1 sps, ribbing and 5 hdc at beg, 5 hdc at end',
  ])('%s', (count) => {
    expect(complaints(mesh(count))).toEqual([]);
    expect(worked(mesh(count), 'Row 2')).toEqual(proven(25, 'Row 2'));
    expect(complaints(mesh(count.replace('15', '16')))).toEqual(['3 count-mismatch']);
  });
  it('"5 stripes of A, and 4 stripes of B" is held against nothing', () => {
    expect(complaints(mesh('5 stripes of A, and 4 stripes of B'))).toEqual([]);
  });
  it('a chain or a stitch with its place behind the count is work', () => {
    const text = mesh('15 ch-1 sps, ch 3, 2 hdc in same st');
    expect(made(text)).toEqual([40, 27]);
  });
});

describe('where a piece and its chain begin', () => {
  const rows =
    'Row 1: Sc in 2nd ch from hook and in each ch across. (30)\nRow 2: Ch 1, turn, sc in each st across. (30)\n';
  it.each([
    'Simple Scarf Chain 31',
    'THROW With larger hook and color A, ch 31.',
    'Foundation Chain 31',
  ])('%s', (line) => {
    expect(complaints(`${line}\n${rows}`)).toEqual([]);
    expect(worked(`${line}\n${rows}`, 'Row 1')).toEqual(proven(30, 'Row 1'));
    expect(complaints(`${line.replace('31', '30')}\n${rows}`)).not.toEqual([]);
  });

  it('a stitch told in a run-on pattern is defined, and a title before the next first row is none of the row above', () => {
    const text =
      'Chain-3 at beginning of row counts as first double crochet. SPECIAL STITCH Fan: 5 dc in indicated st. BACK Row 1: Beg in bottom, ch 20, sc in 2nd ch from hook, [sk next 2 chs, fan (see Special Stitch) in next ch, sk next 2 chs, sc in next ch] 3 times, turn. (3 fans, 4 sc) Row 2: Ch 1, sc in each st across, turn. (19 sc) Fasten off. Upper Cuff Row 1: Ch 11, sc in 2nd ch from hook and in each ch across, turn. (10 sc)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([19, 19, 10]);
  });

  it('"ch 8 (counts as dc and ch 5)" of a first row is no chain of its own', () => {
    const text =
      'ARMHOLE\nCh 60, slip st in first ch to join.\nRound 1: Ch 3 (counts as dc), dc in each ch around, join with slip st in top of beginning ch. (60)\nUPPER BACK\nRow 1: Ch 8 (counts as dc and ch 5), turn, skip 4 dc, dc in next dc, *ch 5, skip 4 dc, dc in next dc; repeat from * 4 times, leave remaining sts unworked. (7 dc, 6 ch-5 sps)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([60, 7]);
  });
});

describe('the last loop of a row, which its chain is', () => {
  const text = (count: number): string =>
    `Ch 25.\nRow 1: Sc in 5th ch from hook, [ch 3, skip next 3 ch, sc in next ch] 5 times; turn – 6 lps.\nRow 2: Ch 4, sc in first lp, ch 3, *sc in next lp, ch 3; rep from * to last lp; sc in last lp, ch 3, sc in 2nd ch of ch-5; turn – ${count} lps.\n`;
  it('is worked, and the row ends in that chain', () => {
    expect(complaints(text(7))).toEqual([]);
    expect(complaints(text(8))).toEqual(['3 count-mismatch']);
  });
});

describe('rows that are like others', () => {
  const row = 'Ch 1, turn, sc in each of first 10 sc, dc in next 10 sc. (20)';
  const text = (lead: string): string =>
    `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20)\nRow 2: ${lead} ${row}\nRow 3: Ch 1, turn, sc in each st across. (20)\n`;
  it.each(['Same as row 1.', 'Essentially a repeat of row 1.', 'Like row 1.'])(
    '"%s" and then the row itself',
    (lead) => {
      expect(complaints(text(lead))).toEqual([]);
      expect(made(text(lead))).toEqual([20, 20, 20]);
    },
  );
  it('an order to repeat, and more, is not followed; the stitch in it is no strange one', () => {
    expect(complaints(text('Repeat row 1.')).every((told) => told === '3 unread')).toBe(true);
  });
  it('colours by their letters behind it are no work', () => {
    const striped =
      'Ch 31.\nRow 1: With A, sc in 2nd ch from hook and in each ch across. (30)\nRow 2: Attach B, ch 1, sc in each st across. Turn.\nRepeat Row 2 for 4 rows in the following color sequence:\nA, C, D, C\nRow 7: Ch 1, sc in each st across. (30)\n';
    expect(complaints(striped)).toEqual([]);
    expect(made(striped)).toHaveLength(7);
  });
  it('"add new yarn into next st" joins it there', () => {
    const text =
      'Ch 121.\nRow 1: Hdc in 2nd ch from hook and in each ch across. (120)\nRow 2: Turn, sk 33 sts, add new yarn into next st, ch 1, 1 hdc into same st, 1 hdc into each of next 53 sts. (54)\n';
    expect(complaints(text)).toEqual([]);
  });
});

it('"Row 3: Repeat" above "row 2." repeats it', () => {
  const text =
    'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20)\nRow 2: Ch 1, turn, sc in each st across. (20)\nRow 3: Repeat\nrow 2.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([20, 20, 20]);
});
