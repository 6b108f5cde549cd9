/** Rows run on in one paragraph, with no colon behind their labels; rows that equal another. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('labels with no sign behind them', () => {
  const text =
    'MR = magic ring. All sc. R1 6 sc in MR (6). R2 inc x6 (12). R3 (1 sc, inc) x6 (18). R4-R6 sc around (18). R7 (1 sc, dec) x6 (12). Sew shut. For the cap: R1 6 sc in MR (6). R2 inc x6 (12). Stalk: ch 5, sc in 2nd ch and next 3 ch (4).\n';

  it('are rows of their own; the next piece counts from one again, and a small part has its name', () => {
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'R3', 'R6', 'R7', 'R2', '')).toEqual([
      'R3 18 proven',
      'R6 18 proven',
      'R7 12 proven',
      'R2 12 proven',
      ' 4 proven',
    ]);
  });

  it('a wrong count among them is found', () => {
    expect(complaints(text.replace('x6 (18). R4', 'x6 (19). R4'))).toEqual(['1 count-mismatch']);
  });

  it('a row that is only spoken of is none', () => {
    const spoken = 'R1: 6 sc in MR (6)\nR2: inc x6 (12)\nR3: sc around as in R2, 12 sc in all (12)\n';
    expect(worked(spoken, 'R2', 'R3').map((row) => row.slice(0, 5))).toEqual(['R2 12', 'R3 12']);
  });
});

describe('a row told as equal to another', () => {
  it.each(['R3: = R2', 'R3 = R2', 'R3: = row 2'])('%s', (row) => {
    const text = `Ch 9\nR1: sc in 2nd ch, sc to end, turn (8)\nR2: ch 1, sc across, turn (8)\n${row}\nR4: ch 1, sc across (8)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'R3', 'R4')).toEqual(['R3 8 unstated', 'R4 8 proven']);
  });
});

describe('rows without labels, one a line', () => {
  const lines = ['6sc into ring (6)', '2sc in each sc of prev. rnd. (12)', '*sc, inc* repeat around (18)'];
  it.each(['-', '- ', '• ', ''])('behind "%s"', (sign) => {
    const text = lines.map((line) => `${sign}${line}\n`).join('');
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18]);
    expect(complaints(text.replace('(18)', '(19)'))).toEqual(['3 count-mismatch']);
  });

  it('a count in a row that has its label ends no row', () => {
    const text = 'Rnd 1: 6 sc in ring. (6)\n2 sc in next st, sc in next 5 sts. (7)\n';
    expect(made(text)).toHaveLength(1);
  });
});

describe('what stands between a star and two', () => {
  it.each([
    'repeat between * and ** 2 more times',
    'rep between * and ** twice',
    'rep from * to ** twice more',
  ])('%s', (order) => {
    const text = `Row 1: Ch 8, sc in 2nd ch from hook and in each ch across, turn. (7)\nRow 2: Ch 1, *sc in next st, 2 sc in next st**; ${order}, sc in last st. (10)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
  });
});

it('what rows repeated end with and come to may be a sentence of its own', () => {
  const text = `Ch 14.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (13 sc)
Row 2: Ch 1, sc across, turn. (13 sc)
Repeat row 2 for pattern. Ending with row 2, do not turn. Last row - ch 1, turn, sc in each st across (13). Rpt last row 4 more times, making 6 rows in all.
`;
  expect(complaints(text)).toEqual([]);
  expect(made(text).every((n) => n === 13)).toBe(true);
  expect(worked(text, 'Last row')).toEqual(['Last row 13 proven']);
});

describe('a count behind talk, and talk behind a count', () => {
  const rounds = (first: string): string =>
    `Rnd 1: ${first}\nRnd 2: 2 sc in each st around (12)\n`;
  it.each([
    '6 sc in ring, pull to close (6)',
    '6 sc in ring, pull the opening closed, do not join (6 sts)',
    '6 sc in ring, pull snug [any scrap of yarn will do as a marker] (6 sc).',
    '6 sc in ring (6). Cont to R2',
    '6 sc in ring (6) Continue to next rnd.',
  ])('%s', (first) => {
    expect(worked(rounds(first), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 6 proven', 'Rnd 2 12 proven']);
    expect(complaints(rounds(first.replace('(6', '(7')))).toContain('1 count-mismatch');
  });

  it('a number in a bracket of talk is no count', () => {
    const text = `${rounds('6 sc in ring (6)')}Rnd 3: Sc in each st, place eyes between rnds 1 and 2 (6 sts apart). (12)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 12 proven']);
  });
});

it('a bracket that is not closed behind a start chain does not swallow the round', () => {
  const text =
    'R1: 12 dc in ring, join (12)\nR2: Ch 3 (counts as 1st dc, dc in same st, 2 dc in each dc around, join. (24)\nR3: Ch 3, dc in each st around (24)\n';
  expect(complaints(text)).toEqual(['2 unbalanced-bracket']);
  expect(worked(text, 'R2', 'R3')).toEqual(['R2 24 proven', 'R3 24 proven']);
});

describe('commas that are left out between a stitch and what is made of it', () => {
  const text = `R1: MC 8 (8)
R2: inc x 8 (16)
R3: *sc inc* x 8 (24)
R4: *2 sc inc* x 8 (32)
R5: *2 sc dec* x 8 (24)
R6: *sc dec* x 8 (16)
R7: 8 sc dec (8)
R8: *2 sc in next st* repeat around* (16)
`;
  it('are read as the counts ask', () => {
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([8, 16, 24, 32, 24, 16, 8, 16]);
  });
  it('a wrong count among them is found', () => {
    expect(complaints(text.replace('around* (16)', 'around* (15)'))).toContain('8 count-mismatch');
  });
  it('what only the count would tell is not held against another count', () => {
    const other = text.replace('x 8 (24)\nR4', 'x 8 (25)\nR4');
    expect(complaints(other)).toEqual([]);
    expect(worked(other, 'R3', 'R4')).toEqual(['R3 16 unchecked', 'R4 32 proven']);
  });
});
