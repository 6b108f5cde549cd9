/**
 * Borders of pieces that were worked in rows: round all sides, along one, in rows on row ends. Sources: common
 * practice of the trade for what a border works into (each stitch of the last row, each row end, each chain's
 * other side, three stitches or a chain space in a corner); sums reckoned by hand.
 */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

/** 20 sc wide, 16 rows high. */
const CLOTH = `Cloth
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
Rows 2-16: Ch 1, sc in each st across, turn. (20 sc)

Border
`;

describe('a border whose number the words and the piece fix is proven', () => {
  it.each([
    ['numbers down the sides', 'Ch 1, sc in each st across top, 3 sc in corner, work 18 sc evenly spaced down side, 3 sc in corner, sc in each ch across opposite side of foundation chain, 3 sc in corner, work 18 sc evenly along side, 3 sc in corner, join with sl st to first sc. (88 sc)', 88],
    ['corners in the last places', 'Ch 1, sc in each st across, 3 sc in corner, work 18 sc evenly along side, 3 sc in corner, sc in each ch across opposite side of foundation chain, 3 sc in corner, work 18 sc evenly along side, 3 sc in corner, join. (85 sc)', 85],
    ['row ends', 'Ch 1, turn, sc in first 19 sts, 3 sc in last st, rotate to work along row ends, sc in each row end, 3 sc in corner, sc in next 18 ch, 3 sc in corner, sc in each row end, 2 sc in same st as first sc, join. (80 sc)', 80],
    ['a repeat over the sides', 'Join yarn in any corner, ch 1, 3 sc in same corner, *work 17 sc evenly across to next corner, 3 sc in corner; rep from * 2 more times, work 17 sc evenly across last side, join. (80 sc)', 80],
    ['two sides of each length', 'Ch 1, 3 sc in corner, 16 sc evenly along side, (sc, ch 2, sc) in corner, sc in each ch across bottom, 3 sc in corner, 16 sc evenly along side, 3 sc in corner, sc in each st across top, join. (83 sc, 1 ch-2 sp)', 83],
  ])('%s', (_, row, n) => {
    const text = `${CLOTH}Rnd 1: ${row}\nRnd 2: Ch 1, sc in each st around, join. (${n} sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual([`Rnd 1 ${n} proven`]);
  });

  it.each([83, 86, 90, 92])('and a wrong one is told: %i', (n) => {
    const text = `${CLOTH}Rnd 1: Ch 1, sc in each st across top, 3 sc in corner, work 18 sc evenly down side, 3 sc in corner, sc in each ch across opposite side of foundation chain, 3 sc in corner, work 18 sc evenly along side, 3 sc in corner, join with sl st to first sc. (${n} sc)\n`;
    expect(complaints(text)).toEqual(['7 count-mismatch']);
  });

  it('of rows of several stitches each has its own', () => {
    const text = `Ch 12.
Row 1: Sc in 2nd ch from hook and in each ch across. (11 sc)
Row 2: Ch 3, turn, dc in next st and in each st across. (11 dc)
Row 3: Ch 1, turn, sc in each st across. (11 sc)

Edging
Row 1: Working along row ends, work 1 sc in each sc row and 2 sc in each dc row, turn. (4 sc)
Row 2: Ch 1, sc in each st across. (4 sc)
`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 4 proven', 'Row 2 4 proven']);
  });

  it('2 in each row, some in the next rows', () => {
    const end = (row: string): string => `${CLOTH}Row 1: Working in ends of rows, ${row}\n`;
    expect(worked(end('2 sc in each row across, turn. (32 sc)'), 'Row 1')).toEqual(['Row 1 32 proven']);
    expect(worked(end('sc in first 2 rows, *2 sc in next row, sc in next row; rep from * across, turn. (23 sc)'), 'Row 1')).toEqual(['Row 1 23 proven']);
    expect(complaints(end('2 sc in each row across, turn. (33 sc)'))).toEqual(['7 count-mismatch']);
  });
});

describe('a border whose number is left to the maker is closed by its count', () => {
  it.each([
    'Ch 1, work sc evenly around all four sides, working 3 sc in each corner, join. (92 sc)',
    'Ch 1, sc evenly around, 3 sc in each corner, join. (92 sc)',
    'Ch 1, sc in each st around, working 3 sc in each corner, join. (92 sc)',
    'Ch 1, sc in each st across, 3 sc in corner, sc evenly down side, 3 sc in corner, sc in each ch across opposite side of foundation chain, 3 sc in corner, sc evenly along side, 3 sc in corner, join. (92 sc)',
  ])('and the corners go on: %s', (row) => {
    const next = 'Rnd 2: Ch 1, sc in each sc around, working 3 sc in each corner sc, join.';
    const text = (n: number): string => `${CLOTH}Rnd 1: ${row}\n${next} (${n} sc)\n`;
    expect(complaints(text(100))).toEqual([]);
    expect(worked(text(100), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 92 unchecked', 'Rnd 2 100 proven']);
    for (const n of [97, 98, 103]) expect(complaints(text(n))).toEqual(['8 count-mismatch']);
  });

  it('without a count nothing is told of it, nor of what stands on it', () => {
    const text = `${CLOTH}Rnd 1: Ch 1, sc evenly around, 3 sc in each corner, join.\nRnd 2: Ch 1, sc in each sc around, 3 sc in each corner sc, join. (131 sc)\nRnd 3: Ch 1, sc in each sc around, join. (131 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 3').map((row) => row.slice(6))).toEqual([expect.stringMatching(/unchecked$/), expect.stringMatching(/unchecked$/), '131 proven']);
  });

  it('rows worked to a length have ends of unknown number', () => {
    const text = `Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)\nRow 2: Ch 1, turn, sc in BLO of each st across. (8 sc)\nRep row 2 until piece measures 50 cm.\n\nBody\nRnd 1: Working along row ends, ch 1, sc in each row end, join. (90 sc)\nRnd 2: Ch 1, sc in each st around, join. (90 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 90 unchecked', 'Rnd 2 90 proven']);
  });
});

describe('stitches picked up along an edge are as many as are said', () => {
  it.each([
    ['Rnd 1: Join yarn at underarm, ch 1, work 36 sc evenly around armhole, join. (36 sc)', 'Rnd 1 36 proven', []],
    ['Rnd 1: Join yarn at underarm, ch 1, work 36 sc evenly around armhole, join. (39 sc)', 'Rnd 1 36 mismatch', ['7 count-mismatch']],
    ['Rnd 1: Sc evenly around neck opening, join. (52 sc)', 'Rnd 1 52 unchecked', []],
  ])('%s', (row, is, told) => {
    const text = `${CLOTH.replace('Border', 'Sleeve')}${row}\n`;
    expect(complaints(text)).toEqual(told);
    expect(worked(text, 'Rnd 1')).toEqual([is]);
  });

  it('yarn joined to the last row by its number works on its stitches', () => {
    const text = `${CLOTH.replace('Border', 'Top edge')}With RS facing, join yarn with sl st in first st of Row 16.\nRow 1: Ch 1, sc in first 2 sts, *ch 2, sk 1, sc in next 2 sts; rep from * across. (14 sc, 6 ch-2 sps)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 14 proven']);
  });
});

describe('how borders are told', () => {
  it.each([
    ['sides by their number', 'Ch 1, sc around, working 18 sts on each long side, 20 sts on each short side and 3 sc in each corner, join.', 88],
    ['sides by pairs', 'Ch 1, 18 sc evenly across each long edge and 20 sc evenly across each short edge, with 3 sc in each corner, join.', 88],
    ['what goes into stitches and row ends', 'Ch 1, sc evenly around, working 1 sc in each st, 2 sc in each row end and 3 sc in each corner, join.', 116],
    ['names before the sides', 'Side 1: Ch 1, sc in first 19 sts. Corner: 3 sc in last st. Side 2 - rotate, sc in each row end. Corner - 3 sc in corner. Side 3 - sc in next 18 ch. Corner - 3 sc in corner. Side 4 - sc in each row end, 2 sc in same st as first sc, join.', 80],
    ['the way before the work', 'Ch 1, sc in first 19 sts, 3 sc in last st. Rotate to work down the side of the piece. Work 1 sc in the end of each row, 3 sc in next corner, sc in next 18 ch, 3 sc in corner. Now work up the second side: sc in each row, 2 sc in same st as first sc, join.', 80],
    ['stitches of the top, loops of the chain', 'Sc in each st along top edge, 3 sc in corner, sc in side of each row, 3 sc in corner, sc in each remaining loop of foundation ch, 3 sc in corner, sc along row edges, 3 sc in corner, join.', null],
  ])('%s', (_, row, n) => {
    const text = `${CLOTH}Rnd 1: ${row} (${n ?? 84} sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual([n ? `Rnd 1 ${n} proven` : 'Rnd 1 84 unchecked']);
    if (n) expect(complaints(text.replace(`(${n} sc)`, `(${n + 3} sc)`))).toEqual(['7 count-mismatch']);
  });

  it.each([
    'With RS facing, work 1 row of sc along the short end. (23 sc)',
    'Sc on four sides, with 3 sc in each corner. (23 sc)',
    'Work 1 round of sc around entire edge. (23 sc)',
    'Sc around the outer edge of the cloth, join. (23 sc)',
    'Sc evenly along the second side. (23 sc)',
  ])('%s is left to the maker', (row) => {
    const text = `${CLOTH}Rnd 1: ${row}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 23 unchecked']);
  });

  it('"placing 1 sc in each row" tells how the side is worked', () => {
    const text = `${CLOTH}Row 1: Ch 1, do not turn, work sc evenly down side edge, placing 1 sc in each row. (16 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 16 proven']);
  });
});

describe('sides that are told in other ways', () => {
  const rows = (border: string): string => `${CLOTH}${border}\n`;
  it('loops of the chain, and the side that is left', () => {
    const text = rows('Rnd 1: Working across row ends, 2 sc in the end of each row. 3 sc in corner. Sc across unused loops of beginning chain, 3 sc in next corner, 2 sc in the end of each row, 3 sc in next corner, and sc across top and finish with 3 sc in last corner. Join with a sl st to first sc. (116 sc)\nRnd 2: Ch 1, sc in each sc around, 3 sc in each corner, join. (124 sc)');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 116 proven', 'Rnd 2 124 proven']);
    expect(complaints(text.replace('116 sc', '113 sc'))).toEqual(['7 count-mismatch']);
  });

  it('yarn joined to the foundation chain', () => {
    const text = `${CLOTH.replace('\n\nBorder', ' Fasten off.\n\nLower edging')}Row 1: Join yarn with sl st in first ch of starting ch. Ch 1, sc in same ch, sc in each remaining loop of starting ch, turn. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 20 proven', 'Row 2 20 proven']);
  });

  it('brackets that tell how a side is spread make nothing', () => {
    const text = rows('Row 1: Ch 1, 18 sc along short side working in end of rows (sc in end of 7 rows, 2 sc in end of next row), turn. (18 sc)');
    expect(worked(text, 'Row 1')).toEqual(['Row 1 18 proven']);
  });

  it('where sides were filled in from a count, what goes by sides is not judged', () => {
    const text = rows('Rnd 1: Sc evenly around, 3 sc in each corner, join. (120 sc)\nRnd 2: Ch 1, *sk 3 sts, (2 dc, ch 1, 2 dc) in next st; rep from * to corner, (2 dc, ch 1, 2 dc) in corner; rep around, join. (140 dc)\nRnd 3: Ch 1, sc in each dc around, join. (140 sc)');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 140 proven']);
  });

  it('each side of a piece with four corners', () => {
    const text = rows('Rnd 1: Ch 1, work a round of sc around the entire blanket, placing 20 sc down each side and across top and bottom, and 3 sc into each corner. Join. (92 sc)');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 92 proven']);
    expect(complaints(text.replace('92 sc', '95 sc'))).toEqual(['7 count-mismatch']);
  });

  it.each([
    'Work 20 sc evenly along each side. (40 sc)',
    'Work 20 sc evenly along each side. (60 sc)',
    'Work 1 row of sc all round edge of cloth. (60 sc)',
    'Sc around entire blanket, join. (60 sc)',
    'Sc around the cloth, join.',
  ])('of how many sides nothing tells: %s', (row) => {
    const text = rows(`Rnd 1: ${row}`);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')[0]).toMatch(/unchecked$/);
  });

  it('a row over the long side, with so many in each row', () => {
    const text = rows('Row 1: Work a row of sc over the long side of band, working 1 sc in each row. (16 sc)');
    expect(worked(text, 'Row 1')).toEqual(['Row 1 16 proven']);
  });
});
