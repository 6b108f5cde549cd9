/** Unused loops of a chain, pairs that a round names, talk within a round, counts at a line's end. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, made, worked } from './worked.ts';

describe('unused loops of the foundation chain are its other side', () => {
  const text = (side: string, count: number): string =>
    `US terms\n\nCh 9.\nRnd 1: Sc in 2nd ch from hook and in next 6 ch, 5 sc in last ch, ${side}, join. (${count} sc)\nRnd 2: Ch 1, sc in each st around. (${count} sc)\n`;
  for (const side of [
    '1 sc into each of the next 6 unused loops, 2 sc into last unused loop',
    '(now work in the unused loops, over the tail) sc in next 6 unused loops, 2 sc in last loop',
    'working in remaining loops of foundation ch, sc in next 6 sts, 2 sc in last st',
  ]) {
    it(side, () => {
      expect(complaints(text(side, 20))).toEqual([]);
      expect(worked(text(side, 20), 'Rnd 1', 'Rnd 2')).toEqual([
        'Rnd 1 20 proven',
        'Rnd 2 20 proven',
      ]);
      expect(complaints(text(side, 21))).not.toEqual([]);
    });
  }
});

it('a sentence between the lines of a round that has its label alone is a remark of it', () => {
  const text = (count: number): string =>
    `Pattern:\n\nRound 1:\n8 hdc in magic ring, join. (8 hdc)\n\nRound 2:\nCh 1, turn.\nYou will now be going along the lower edge of the cup.\nMake 2 hdc in each st around, join. (${count} hdc)\n\nRound 3:\nHdc in each st around. (16 hdc)\n`;
  expect(complaints(text(16))).toEqual([]);
  expect(worked(text(16), 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 16 proven', 'Rnd 3 16 proven']);
  expect(complaints(text(17))).not.toEqual([]);
});

it('a count a size stands behind "turn." without brackets of its own', () => {
  const text = (counts: string): string =>
    `US terms. Sizes: S (M, L)\n\nCh 23 (27, 31).\nRow 1: Hdc in 3rd ch from hook and in each ch across, turn. ${counts}\nRow 2: Ch 1, hdc in each st, turn. 21 (25, 29)\n`;
  expect(complaints(text('21(25, 29)'))).toEqual([]);
  expect(worked(text('21(25, 29)'), 'Row 2')).toEqual(['Row 2 29 proven']);
  expect(complaints(text('21(25, 28)'))).not.toEqual([]);
});

describe('pairs of a sc and a hdc', () => {
  const text = (groups: number, next: number): string =>
    `US terms\n\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each sc around, join. (12 sc)\nRnd 3: *Sk next sc, (sc, hdc) in next sc; rep from * around, join, turn. (${groups} sc-hdc groups)\nRnd 4: *(Sc, hdc) in next sc; rep from * around, join, turn.\nRnd 5: *(Sc, hdc) in next sc; rep from * around, join. (${next})\n`;
  it('each round is worked into the sc of the one beneath', () => {
    expect(complaints(text(6, 12))).toEqual([]);
    expect(worked(text(6, 12), 'Rnd 3', 'Rnd 4', 'Rnd 5')).toEqual([
      'Rnd 3 12 proven',
      'Rnd 4 12 unstated',
      'Rnd 5 12 proven',
    ]);
  });
  it('a wrong number of groups, or of stitches, is told', () => {
    expect(complaints(text(7, 12))).not.toEqual([]);
    expect(complaints(text(6, 14))).not.toEqual([]);
  });
});

describe('a comma is missing before the chain that turns', () => {
  it.each(['sc across ch 1 turn', 'sc across ch 1, turn', 'sc around ch 1.'])('%s', (words) => {
    const text = `US terms\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\nRow 2: Ch 1, ${words}\nRow 3: Sc in each st across. (10 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 10 unstated', 'Row 3 10 proven']);
  });
});

it('"dc in 2nd st" where the row goes on in stitches and spaces: the 2nd is the space', () => {
  const text =
    'US terms\n\nCh 14.\nRow 1: Sc in 2nd ch from hook, sc in each ch across, ch 1, turn. (13 sc)\nRow 2: Sc in 1st st, *ch 1, sk 1 st, sc in next st; rep from * across, ch 2, turn.\nRow 3: Dc in 2nd st, *dc in each sc and ch-1 sp* to end, ch 1, turn.\nRow 4: Rep Row 2.\nRow 5: Rep Row 3.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 3', 'Row 5')).toEqual(['Row 3 13 unstated', 'Row 5 13 unstated']);
  expect(conventions(text)).toContain('start-chain 2 for the first: counts (custom)');
});

it('work that begins behind "but begin" is worked, and a row of talk about stitches is not lost', () => {
  const row = (words: string): string =>
    `US terms\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: ${words}\nRnd 3: Hdc in each hdc around. (6)\n`;
  const begins = row('(Do not chain), but begin working hdc in each sc around');
  expect(complaints(begins)).toEqual([]);
  expect(worked(begins, 'Rnd 2')).toEqual(['Rnd 2 6 unstated']);
  expect(complaints(row('because the sc in the ring lean over'))).toEqual(['4 unread']);
});

it('a handle told as one instruction with several turns is not held against its text', () => {
  const text =
    'US terms\n\nRnd 1: 30 sc in magic ring. (30 sc)\nRnd 2: Sc in each sc around. (30 sc)\nFor the handle:\nSc in next 4 sc, ch 20, skip next 6 sc, sc in next 2 sc, turn, skip next 2 sc, sc in each of 20 ch and next 2 sc, turn, sc in 3rd sc from hook and next 61 sc, turn, sc in next 35 sc. Fasten off.\n';
  expect(complaints(text)).toEqual([]);
});

it('"1 sc and 1 dc in 2nd ch from hook" speaks for no terms of its own', () => {
  const text =
    'Ch 12.\nRow 1: 1 sc and 1 dc in 2nd ch from hook, *sk 1 ch, 1 sc and 1 dc in next ch; rep from * across.\nRow 2: Sc in each st.\n';
  expect(complaints(text)).toEqual([]);
});

describe('translated toys', () => {
  it('"knit 3 rows without changes" goes on without shaping', () => {
    const text = (last: number): string =>
      `1st row: 6 sc in magic ring\n2nd row: inc in each st (12 sc)\n3-5 rows: knit 3 rows without changes (12 sc)\n6th row: knit a row without changes (${last} sc)\n`;
    expect(complaints(text(12))).toEqual([]);
    expect(worked(text(12), 'Row 6')).toEqual(['Row 6 12 proven']);
    expect(complaints(text(13))).not.toEqual([]);
  });
  it('letters of another script that look like Latin ones are read as these', () => {
    // The c, the i and the e are Cyrillic.
    const text =
      'Rnd 1: 6 s\u0441 in MR (6)\nRnd 2: 6 \u0456n\u0441 (12)\nRnd 3: 12 sc (12)\nRnd 4: 6 d\u0435\u0441 (6)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2', 'Rnd 4')).toEqual(['Rnd 2 12 proven', 'Rnd 4 6 proven']);
  });
  it('the numbers of a web page\'s list, "6-9." before "Rounds 6-9:", are none of the row above', () => {
    const text =
      '1. Round 1: 6 sc in MR (6).\n2. Round 2: 6 inc (12).\n  3-5. Rounds 3-5: 12 sc (3 rounds).\n3. Round 6: 6 dec (6).\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2', 'Rnd 6')).toEqual(['Rnd 2 12 proven', 'Rnd 6 6 proven']);
  });
  it('"(3 rnds)" before the work is held against the label, as behind it', () => {
    const text = (n: number): string =>
      `Rnd 1: 6 sc in MR (6)\nRnd 2: 6 inc (12)\nRnd 3-5. (${n} rnds) 12 sc (12)\n`;
    expect(complaints(text(3))).toEqual([]);
    expect(complaints(text(4))).toEqual(['3 range-mismatch']);
  });
});

it('"(4 dc, 1 FPdc)" behind a repeat of just these tells a pass again, and no round', () => {
  const text =
    'US terms\n\nRnd 1: 10 dc in magic ring. (10 dc)\nRnd 2: *2 dc in next st, FPdc around next st; rep from * around. (2 dc, 1 FPdc)\nRnd 3: Sc in each st around. (15 sc)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 15 unstated', 'Rnd 3 15 proven']);
});

it('"Note:" is talk to its full stop, whatever stitches it names', () => {
  const text =
    'US terms\n\nRnd 1: 12 dc in magic ring. (12)\nRnd 2: *Dc in next st, FPdc around same st; rep from * around. Note: each stitch has a dc in its top, and a FPdc worked around it. (24)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
});

it('sizes told by their order in brackets, and counts that have their unit there', () => {
  const text = (last: number): string =>
    `Follow the sizes by their order in parentheses – (small, medium, large)\n\nRnd 1: Ch 2 (counts as dc) and then 9,(10,11) dc into ring, join. (10,11,12 dc)\nRnd 2: Ch 2, dc in same st, 2 dc in each st around, join. (20, 22, ${last} dc)\n`;
  expect(complaints(text(24))).toEqual([]);
  expect(worked(text(24), 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  expect(complaints(text(25))).not.toEqual([]);
});

it('"(join in this manner throughout pattern)" is a remark behind the join', () => {
  const text =
    'US terms\n\nRnd 1: Ch 2 (counts as dc), 11 dc in magic ring (12 dc). Join with sl st in top of ch 2 (join in this manner throughout pattern).\nRnd 2: Ch 2, dc in same st, 2 dc in each dc around (24 dc). Join.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven']);
});

describe('loops that hold for all rows', () => {
  const rows = (second: string): string =>
    `Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10)\nRow 2: ${second}, turn. (10)\n`;
  const kinds = (text: string): unknown => {
    const { fabric } = compile(text, { fixes: false });
    const all = fabric?.kinds.kinds ?? [];
    const { nodes } = fabric?.cloths[0] ?? {};
    return Array.from({ length: 20 }, (_, i) => all[nodes?.kind[11 + i] ?? -1]);
  };
  const told = `US terms\n\nCh 11.\n${rows('Sc in back loop of each st')}`;
  it.each([
    `US terms\n\nCh 11. Work pattern in BACK loops.\n\n${rows('Sc in each st')}`,
    `US terms. Work in back loops only unless stated.\n\nCh 11.\n${rows('Sc in each st')}`,
    `US terms. All sts are worked in back loops.\n\nCh 11.\n${rows('Sc in each st')}`,
  ])('%s', (text) => {
    expect(complaints(text)).toEqual([]);
    expect(kinds(text)).toEqual(kinds(told));
  });
  it('and those of one row, which hold for no other', () => {
    const text = `US terms. All of Row 7 is worked in back loops.\n\nCh 11.\n${rows('Sc in each st')}`;
    expect(kinds(text)).not.toEqual(kinds(told));
  });
});

it('rows that turn within a round work back past its start, whatever rows follow', () => {
  const text =
    'US terms\n\nRnd 1: 14 sc in MR (14)\nRnd 2: 2 sc in each sc (28)\nRow 3: Sc in next 4 sts, turn.\nRow 4: Sc in next 22 sts, turn.\nRow 5: Sc in next 15 sts, turn.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 4')).toEqual(['Row 4 22 unstated']);
});

it('"in each corner" of a round without corners is not every stitch', () => {
  const text =
    'US terms\n\nRnd 1: 7 sc in MR (7)\nRnd 2: 2 sc in each sc (14)\nRnd 3: 4 sc in each corner.\n';
  expect(worked(text, 'Rnd 3')[0]).toContain('unchecked');
});

it('"Foundation: make 4ch and join" begins the piece, also below a list of abbreviations', () => {
  const text =
    'UK terms\n\nAbbreviations\nCh = chain\nTr = treble\nFoundation: Make 4ch and join into a ring with a ss\nRound 1: 3ch (counts as 1tr), 11tr into ring, and work a final 1tr into ring, join to 3rd ch. (13 tr)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 13 proven']);
});

it('"R4-R9:" is a label, and talk that begins with "you\'re" is talk unless it tells of stitches', () => {
  const text =
    "US terms\n\nR1: Ch 2, 6 hdc in 2nd ch from hook. (6)\nR2: 2 hdc in each st around. (12)\nR3-R5: Now, you're going to work without a break. Hdc in each st. (12)\n";
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'R5')).toEqual(['R5 12 proven']);
  expect(complaints(text.replace('work without a break', 'work 5 hdc in it'))).not.toEqual([]);
});

it.each(['To Begin Ch 20 and join with a sl st.', 'To begin: Ch 20 and join.', 'To begin, ch 20, join.'])(
  '%s opens the piece, on the line of its first round',
  (begin) => {
    const text = `US terms\n\n${begin} Rnd 1 - ch 1, hdc in same st as join and around. (20)\nRnd 2 - ch 1, fphdc in first st and around. (20)\n`;
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 20 proven', 'Rnd 2 20 proven']);
  },
);

describe('the other side of a chain for which no stitch is told', () => {
  it.each([
    'When you arrive at the end continue working down the opposite side. When you complete the round you should have 40 sts.',
    'Continue down opposite side of chain. (40)',
  ])('%s', (side) => {
    const text = `US terms\n\nCh 21.\nRnd 1: Sc in 2nd ch from hook and each remaining ch. ${side}\nRnd 2: Sc in each sc. (40)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 40 proven', 'Rnd 2 40 proven']);
    expect(complaints(text.replaceAll('40', '41'))).not.toEqual([]);
  });
});

it('the skip before the last stitch goes without saying where the count is met', () => {
  const text = (repeat: string): string =>
    `US terms\n\nCh 17.\nRow 1: Sc in 2nd ch from hook and each ch across (16 sts)\nRow 2: Turn, ch 1, (sc, 2 dc) in first st, ${repeat}, sc in last st (16 sts)\n`;
  const inBrackets = (n: number) => text(`(skip 2 sts, (sc, 2 dc) in next st) ${n} times`);
  const inStars = (n: number) => text(`*skip 2 sts, (sc, 2 dc) in next st* Repeat ${n} times`);
  for (const told of [inBrackets(4), inStars(4), inStars(3)]) {
    expect(complaints(told)).toEqual([]);
    expect(worked(told, 'Row 2')).toEqual(['Row 2 16 proven']);
  }
  for (const wrong of [inBrackets(3), inBrackets(5), inStars(5)])
    expect(complaints(wrong)).not.toEqual([]);
});

it('rows by no number of theirs, "for 3 more rows", are worked so often', () => {
  const text =
    'US terms\n\nCh 11.\nRow 1: Sc in 2nd ch and across, ch 1, turn (10)\nRow 2: Sc2tog, sc to end, ch 1, turn (9)\nCh 1, turn, sc2tog, sc across for 3 more rows.\nCh 1, sc in each st for the next 4 rows.\nRow 10: Sc across. (6)\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([10, 9, 8, 7, 6, 6, 6, 6, 6, 6]);
});

it('"and between dc" is a place of the same stitch, "and then in ch-1 sp" of a slip stitch', () => {
  const text =
    'US terms\n\nCh 5, join.\nRnd 1: Ch 3 (counts as dc throughout), 11 dc in ring, join. (12 dc)\nRnd 2: Ch 3, dc in the space between dc, ch 1, (dc in the next dc, and between dc, ch 1) 11 times, join. (24 dc, 12 ch-1 sps)\nRnd 3: Slip stitch in the next stitch and then in the chain 1 space, ch 3, 2 dc in same space, ch 1, (3 dc in next sp, ch 1) 11 times, join. (36 dc, 12 ch-1 sps)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 24 proven', 'Rnd 3 36 proven']);
});

it('"Work pattern row until it is 30 cm long" repeats the row just told', () => {
  const text =
    'US terms\n\nCh 11.\nRow 1: Sc in 2nd ch and across, ch 1, turn (10)\nPattern Row: Sc across, ch 1, turn (10)\nWork pattern row until piece is 30 cm long.\nRow 6: Sc across. (10)\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text).length).toBe(4);
});

describe('"dc in 4th ch" with which a first row begins counts from the hook', () => {
  it.each([
    'Dc in 4th ch and in each ch (9)',
    'Dc in 4th chain, dc in each ch across. (9)',
    'Dc in the fourth ch, and in each ch to end (9 dc)',
  ])('%s', (row) => {
    const text = (words: string) =>
      `US terms\n\nCh 11.\nRow 1: ${words}\nRow 2: Ch 3, dc in next 8 sts. (9)\n`;
    expect(complaints(text(row))).toEqual([]);
    expect(worked(text(row), 'Row 1')).toEqual(['Row 1 9 proven']);
    expect(complaints(text(row.replace('(9', '(8')))).not.toEqual([]);
  });
});

it('rows told in turns, "Row 5, 7, 9" and "Row 6, 8, 10", are none of them given twice', () => {
  const text = (last: string): string =>
    `US terms\n\nCh 11.\nRow 1: Sc in 2nd ch and in each ch (10)\nRow 2: Sc in each st\nRow 3: Sc in each st\nRow 4: Sc in each st\nRow 5, 7, 9: repeat row 3\nRow 6, 8, 10: repeat row 4\n${last}: Sc in each st (10)\n`;
  expect(complaints(text('Row 11'))).toEqual([]);
  expect(complaints(text('Row 8'))).not.toEqual([]);
});

it('the steps of a stitch are no rows: "6) Yoh, draw yarn through all loops"', () => {
  const text =
    'UK terms\n\nTo make the bobble stitch:\n1) Yoh, hook into stitch, yoh, draw yarn through stitch.\n2) repeat (3 loops on hook)\n3) Yoh, draw yarn through all loops.\n\nPattern\nch 31\nRow 1: dc in each st across row (30 sts)\nRow 2: dc in each st (30)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 2')).toEqual(['Row 2 30 proven']);
});

describe('a row of the foundation, repeated over stitches', () => {
  it.each([
    'Sc in 2nd ch from hook and in each ch across',
    'Sc in 2nd ch and in each ch across',
    'Skip the first ch, 1sc in each ch',
  ])('%s', (row) => {
    const text = (last: number): string =>
      `US terms\n\nCh 11.\nRow 1: ${row}, turn (10)\nRow 2: Ch 1, hdc in each st, turn (10)\nRep rows 1 and 2 for a total of 8 rows.\nRow 9: Ch 1, sc in each st (${last})\nRows 10-15: Rep rows 3-8.\n`;
    expect(complaints(text(10))).toEqual([]);
    expect(made(text(10))).toEqual(Array.from({ length: 15 }, () => 10));
    expect(complaints(text(11))).not.toEqual([]);
  });
  it('with the turning chain for its first double crochet', () => {
    const text =
      'US terms\n\nCh 16.\nRow 1: Dc in 4th ch from hook and in each ch across, ch 1, turn (14 dc)\nRow 2: Sc in each st across, ch 3, turn (14)\nRep rows 1 and 2 once. (14)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([14, 14, 14, 14]);
  });
  it('behind a chain of its own begins on that', () => {
    const text =
      'US terms\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10)\nRow 2: Ch 1, sc in each st. (10) Fasten off.\n\nStrap\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20)\nRow 2: Rep Row 1. (20)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 10, 20, 20]);
  });
});

describe('two counts of one round that differ are both held', () => {
  for (const counts of ['(12). Join. (13)', '(13). Join. (12)', '(13 sts). Join. 12 sts.']) {
    it(counts, () => {
      const text = `US terms\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around ${counts}\n`;
      expect(complaints(text)).toEqual(['4 count-mismatch']);
    });
  }

  it('but a count of one pass, or without the start chain, is none of the round', () => {
    const pass = 'US terms\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around (2 sc). Join. (12 sc)\n';
    expect(complaints(pass)).toEqual([]);
    const start = 'US terms\n\nRnd 1: Ch 3 (counts as dc), 11 dc in magic ring (11 dc). Join. (12 dc)\n';
    expect(complaints(start)).toEqual([]);
  });
});

describe('"more times" behind a bracket counts on from a group that is written out before it', () => {
  for (const groups of [
    'ch 2, [3 dc, ch 2] 3 more times',
    'ch 2, (3 dc in ring, ch 2) three more times',
    '[ch 2, 3 dc in ring] 3 more times, ch 2',
  ]) {
    it(groups, () => {
      const text = (n: number): string =>
        `US terms\n\nRnd 1: Ch 4, join to form ring. Ch 3 (counts as dc), 2 dc in ring, ${groups}, join. (${n} dc)\n`;
      expect(worked(text(12), 'Rnd 1')).toEqual(['Rnd 1 12 proven']);
      expect(complaints(text(15))).toEqual(['3 count-mismatch']);
    });
  }

  for (const corner of ['ch 3, (2 dc, ch 2, 3 dc) in corner', '(ch 3, 2 dc, ch 2, 3 dc) in corner']) {
    it(corner, () => {
      const text = `US terms\n\nRnd 1: Ch 4, join to form ring. Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc, ch 2] 3 times, join. (12 dc)\nRnd 2: Sl st in next 2 dc and in sp, ${corner}, ch 1, [(3 dc, ch 2, 3 dc) in next corner, ch 1] 3 more times, join. (24 dc)\n`;
      expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    });
  }

  it('and where none is, the bracket is worked once and then so often more', () => {
    const text = 'US terms\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: [sc, inc] 2 more times. (9)\n';
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 9 proven']);
  });
});

describe('a space without a word for the next, right behind the start chain, is the one stood in', () => {
  const text = (start: string, rest: string): string =>
    `US terms\n\nRnd 1: Ch 4, join to form ring. Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc, ch 2] 3 times, join. Fasten off. (12 dc)\nRnd 2: ${start}, ${rest}\n`;
  const corners = 'ch 1, [(3 dc, ch 2, 3 dc) in next sp, ch 1] 3 times, join. (24 dc)';
  for (const start of ['Join B in corner sp', 'Sl st in next 2 dc and in sp']) {
    for (const first of ['ch 3, 2 dc in corner sp, ch 2, 3 dc in same sp', 'ch 3, (2 dc, ch 2, 3 dc) in sp']) {
      it(`${start}, ${first}`, () => {
        expect(worked(text(start, `${first}, ${corners}`), 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
      });
    }
  }

  it('but a gap or a pass leads to the next', () => {
    const gap = 'ch 5 (counts as dc and ch 2), [dc in sp, ch 2] 3 times, join. (4 dc)';
    expect(worked(text('Join B in corner sp', gap), 'Rnd 2')).toEqual(['Rnd 2 4 proven']);
    const next = 'ch 3, 2 dc in next sp, [3 dc in next sp] 3 times. (12 dc)';
    expect(complaints(text('Join B in corner sp', next))).not.toEqual([]);
  });
});

describe('round an opening, the chain made over it follows behind the skipped stitches', () => {
  const text = (opening: string, thumb: string, n: number): string =>
    `US terms\n\nRnd 1: Ch 24, join. Ch 1, sc in each ch around. (24)\nRnd 2: Sc around. (24)\nRnd 3: ${opening}. (24)\nRnd 4: Sc in each st and ch around. (24)\n\nThumb\nRnd 1: ${thumb}. (${n})\nRnd 2: Sc around. (${n})\n`;
  for (const opening of [
    'Sc in next 3 sts, ch 5, sk 5 sts, sc in next 16 sts',
    'Ch 5, sk 5 sts, sc in next 19 sts',
  ]) {
    for (const thumb of [
      'Join yarn at thumb hole, sc in 5 skipped sts, sc in 5 ch',
      'Sc in 5 skipped sts of Rnd 2, working along other side of ch-5, sc in next 5 ch',
      'Sc in 5 skipped sts, sc in underside of each ch',
    ]) {
      it(`${opening}: ${thumb}`, () => {
        expect(worked(text(opening, thumb, 10), 'Rnd 1', 'Rnd 2').slice(-2)).toEqual([
          'Rnd 1 10 proven',
          'Rnd 2 10 proven',
        ]);
        expect(complaints(text(opening, thumb, 11))).not.toEqual([]);
      });
    }
  }
});

describe('another stitch in the last place is one more there', () => {
  for (const more of ['another dc in last st', '1 more dc in last st', 'and another dc in the last dc']) {
    it(more, () => {
      const text = (n: number): string =>
        `US terms\n\nCh 12.\nRow 1: Dc in 4th ch from hook and in each ch across. (10 dc)\nRow 2: Ch 3, turn, dc in each dc across, ${more}. (${n} dc)\n`;
      expect(worked(text(11), 'Row 2')).toEqual(['Row 2 11 proven']);
      expect(complaints(text(10))).toEqual(['5 count-mismatch']);
    });
  }
});

describe('stitches behind a skip for which no place is told', () => {
  const BASE = 'Ch 26.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (25 sc)\n';
  const row = (words: string): string[] =>
    complaints(`${BASE}Row 2: Ch 1, sc in first st, *${words}; rep from * across, turn. (25 sts)\n`);
  it('are a shell where the sums show it: 1 + 4 x 6', () =>
    expect(row('sk 2, 5 dc, sk 2, sc')).toEqual([]));
  it('and else stand one in each: 1 + 4 x 6', () => expect(row('sk 2, 4 dc, ch 2')).toEqual([]));
  it('six of them are one too many', () =>
    expect(row('sk 2, 6 dc, sk 2, sc')).toEqual(['3 repeat-remainder']));
  it('behind a chain they are mesh', () => {
    const text = `${BASE}Row 2: Ch 1, sc in first st, *ch 1, sk 1, 4 dc; rep from * across, turn. (25 sts)\n`;
    expect(conventions(text).join()).not.toContain('bare behind a skip');
  });
  it('"2 dc, ch 2, 2 dc" is a group of its own', () => {
    const text =
      'Rnd 1: Fsc 24, join.\nRnd 2: Ch 3 (counts as dc), dc, ch 2, 2 dc, {sk 3 sts, 2 dc, ch 2, 2 dc} around, join. (24)\n';
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  });
});
