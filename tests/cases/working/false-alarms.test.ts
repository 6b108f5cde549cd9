/**
 * Rows that are right, or whose wording is not followed, raise no complaint: what was misread here is
 * told as not followed, and what a writer does throughout is told once. Patterns of our own invention,
 * in the wording of pages where false complaints were seen.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made } from './worked.ts';

const notes = (text: string): string[] =>
  compile(text, { fixes: false }).findings.map(({ code, severity }) => `${severity} ${code}`);

describe('a row that is off by anything is not followed', () => {
  it('where nothing of a stated ring was made', () => {
    const text =
      'Rnd 1: With grey, adjustable loop 8 stitches. (8)\nRnd 2: 2 sc in each st. (16)\nRnd 3: (Sc, inc) 8 times. (24)\n';
    expect(complaints(text)).toEqual([]);
  });

  it('where a list item under a heading is a part of its round', () => {
    const text =
      'Round 1:\n- 12 dc in magic ring, join. (12)\nRound 2:\n- Ch 1, sc in each st around, join. (12)\n- In next stitch: 2 dc\n- ch 2\n- skip 2 stitches\n';
    expect(complaints(text)).toEqual([]);
  });

  it('where lace states no count, and stitches stay behind between its spaces', () => {
    const text =
      'Ch 4, join.\nRnd 1: Ch 1, (3 dc, ch 2) 4 times in ring, join.\nRnd 2: Ch 1, (2 dc, ch 3, 2 dc) in next ch-2 sp, dc in next dc; join.\n';
    expect(complaints(text)).toEqual([]);
    expect(notes(text)).toContain('note not-followed');
  });

  it('where the words of a wrong count make none of what it counts', () => {
    const text = 'Ch 12.\nRow 1: Dc in last ch from hook, turn. (1 box)\n';
    expect(complaints(text)).toEqual([]);
  });
});

describe('what a writer does throughout', () => {
  const rows = [3, 4, 5, 6]
    .map((n) => `R${n}: ch 3, inc, *${n - 2} dc, inc* rep to end (${12 * n})`)
    .join('\n');
  const text = `R1: 12 dc in ring, join (12)\nR2: ch 3 (counts as dc), dc in same st, 2 dc in each dc, join (24)\n${rows}\n`;

  it('is told once and as a note, if three rows need another reading than the rest', () => {
    expect(complaints(text)).toEqual([]);
    const { findings } = compile(text, { fixes: false });
    expect(findings.filter(({ code }) => code === 'reading-differs').length).toBeLessThan(2);
  });
});

describe('numbers and names that stand in other words', () => {
  it('a row is not missing whose number stands in the words between', () => {
    const text =
      'Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)\nTurn the cloth about and (Row 2 - wander over the hill, row 3 likewise)\nRow 4: Ch 1, turn, sc in each st. (10)\n';
    expect(complaints(text)).not.toContain('3 row-missing');
  });

  it('but a row is missing that is named nowhere', () => {
    const text =
      'Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)\nRow 4: Ch 1, turn, sc in each st. (10)\n';
    expect(complaints(text)).toEqual(['2 row-missing']);
  });

  it('a label is not empty under which sentences tell its work', () => {
    const text =
      'Round 1: 12 dc in ring, join. (12)\n\nRound 2+\n\nThe corners of this round are worked as you like them, with spaces of one chain at the sides.\n';
    expect(complaints(text)).toEqual([]);
  });

  it('a shell is defined where brackets or a sentence say what it is', () => {
    const round = (words: string): string =>
      `Ch 5, join.\nRnd 1: Ch 1, 12 sc in ring, join. (12)\nRnd 2: Ch 1, *sc in next st, sk 1, 5 dc in next st ${words}, sk 1; rep from * 2 more times, join.\nRnd 3: Ch 1, sc in first st, shell in next st, sl st in next st, join.\n`;
    expect(complaints(round('(small shell)')).join()).not.toContain('special-undefined');
    expect(complaints(round('(keep it loose)')).join()).toContain('special-undefined');
  });

  it('the other name of a stitch in brackets sets no terms', () => {
    const text =
      'hdc = half double crochet (half treble crochet UK)\nCh 12.\nRow 1: Hdc in 3rd ch from hook and in each ch across. (10)\n';
    expect(complaints(text)).toEqual([]);
  });

  it('a space that is called by a number far off, where no count is stated, shows a row misread', () => {
    const text = (n: number): string =>
      `Ch 6, join.\nRnd 1: Ch 1, (sc in ring, ch 9) 6 times, join.\nRnd 2: Sl st in next ch-${n} sp, ch 1, 5 sc in each ch-${n} sp around, join.\n`;
    expect(complaints(text(5))).toEqual([]);
    expect(complaints(text(8))).toContain('3 space-size');
  });
});

describe('where a row begins', () => {
  it('"in base of ch 2" may be a stitch more in the first place: 1 + 18', () => {
    const text = (n: number): string =>
      `Note: Beg ch 2 does not count as a st.\nRnd 1: Ch 2, 9 dc in ring, join. (9)\nRnd 2: Ch 2, turn, 2 dc in each st around, join. (18)\nRnd 3: Ch 2, turn, dc in base of ch 2 (an increase), dc in each st around, join. (${n})\n`;
    expect(complaints(text(19))).toEqual([]);
    expect(complaints(text(18))).toEqual([]);
    expect(complaints(text(21))).toEqual(['4 count-mismatch']);
  });

  it('a chain with which a repeat opens a turned row stands on the first stitch: 1 + 8 x 3', () => {
    const text = (n: number): string =>
      `Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (${n})\nRow 2: *Ch 5, sk 2 sts, sc in next st; rep from * across, turn. (8 ch-5 sps)\n`;
    expect(complaints(text(25))).toEqual([]);
    expect(complaints(text(26))).toEqual(['3 repeat-remainder']);
  });

  it('a spiral round a chain may go on over its own first stitch', () => {
    const text =
      'Ch 9.\nRnd 1: Sc in 2nd ch from hook and in each of next 6 ch, 3 sc in next ch, working on other side of chain, sc in each of next 6 ch, 2 sc in next ch and 2 sc in next sc.\nRnd 2: Sc in each of next 6 sc, 2 sc in each of next 3 sc.\n';
    expect(complaints(text)).toEqual([]);
  });
});

it('"skip 1 st" behind a chain that counts may name the stitch that the chain stands on: 1 + 16 + 1', () => {
  const text = (n: number): string =>
    `UK terms.\nCh 20.\nRow 1: Tr in 4th ch from hook, tr in each ch to end, turn. (18 tr)\nRow 2: Ch 3 (counts as tr), skip 1 st, tr in next ${n} sts, tr in top of ch-3. (${n + 2} tr)\n`;
  expect(complaints(text(16))).toEqual([]);
  expect(complaints(text(18))).not.toEqual([]);
});

it('numbers of all sizes stand in brackets whole, as rows enough of them show', () => {
  const text = (n: number): string =>
    `Rnd 1: (32, 40, 48) fsc, join. (32, 40, 48)\nRnd 2: *Using colour B* ch 1, sc in each st around, join. (32, ${n}, 48)\nRnd 3: Ch 2, *dc2tog; rep from * around, join. (16, 20, 24)\n`;
  expect(complaints(text(40))).toEqual([]);
  expect(complaints(text(44))).toEqual(['2 count-mismatch']);
});

it('a count that the plain words of its row contradict is wrong whatever lies beneath', () => {
  const text = (n: number, times: number): string =>
    `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: frobnicate the ring. (12)\nRnd 3: (Sc in next st, inc) ${times} times. (${n})\nRnd 4: (2 sc, inc) 6 times. (24)\n`;
  expect(complaints(text(18, 6)).filter((told) => !told.endsWith('unread'))).toEqual([]);
  for (const [n, times] of [[25, 6], [18, 9], [18, 13]] as const)
    expect(complaints(text(n, times))).toContain('3 count-mismatch');
});

it('a starting chain that its own row calls by another length is told, by its height alone it is not', () => {
  const text = (n: number): string =>
    `Rnd 1: 12 sc in ring, join. (12 sc)\nRnd 2: Ch 1, sc in same st as ch ${n}, sc in next 11 sts, join. (12 sc)\nRnd 3: Ch 4 (counts as dc and ch 1), dc in base of ch 3, dc in next 11 sts, join. (13 dc)\n`;
  expect(complaints(text(1))).toEqual([]);
  expect(complaints(text(4))).toEqual(['2 space-size']);
});

it('a number in words that are worked in several places is one slip', () => {
  const text = (n: number): string =>
    `Rnd 1: 40 sc in ring. (40)\nRnd 2: *Hdc in next ${n} sts, 2 hdc in next* repeat between * * 2 more times, hdc in next 14 sts. Repeat between * * 3 more times, hdc in next 14 sts. (46)\n`;
  expect(complaints(text(1))).toEqual([]);
  expect(complaints(text(5))).toEqual(['2 round-overrun']);
});

it('"beginning chain counts as a stitch" may leave out the ch 1 of single crochet', () => {
  const text = (n: number): string =>
    `Beginning chain counts as a stitch.\nRnd 1: Ch 2, 11 hdc in ring, join in top of ch 2. (12 hdc)\nRnd 2: Ch 1, sc in next ${n} sts, join. (12 sc)\n`;
  expect(complaints(text(11))).toEqual([]);
  expect(complaints(text(12))).toEqual([]);
  expect(complaints(text(9))).not.toEqual([]);
});

it('spaces of a second motif that is joined to the first are not held against the rows above', () => {
  const text =
    'FIRST MOTIF: Ch 10, join with sl st to form ring. 1st rnd: Ch 4, 23 tr in ring, sl st to top of ch-4. 2nd rnd: Sc in same place, *ch 5, skip 1 tr, sc in next tr. Repeat from * around, ending with ch 2, dc in first sc. 3rd rnd: Sc in loop just formed, *ch 7, sc in next loop. Repeat from * around. Break off.\nSECOND MOTIF: Work as for First Motif until 2nd rnd is completed. 3rd rnd: Sc in loop just formed, ch 3, sl st in corresponding loop on First Motif, ch 3, sc in next ch-5 loop on Second Motif and complete rnd as for First Motif.\n';
  expect(complaints(text)).toEqual([]);
});

it('what is told beside a row does not hide its number', () => {
  const text = (n: number): string =>
    `Ch 2.\nRow 1: 6 sc in first ch. Place stitch marker in first st to mark beginning of round\nRow 2: ${n} sc in each st (Count: 12 sts). Move marker up each time a round is completed\nRow 3: (eyelet row) Sc in next 5 sts, ch 1, sk next st, sc in next 6 sts. (${n + 9} sc)\n`;
  expect(complaints(text(2))).toEqual([]);
  expect(complaints(text(9))).toEqual(['3 count-mismatch', '4 count-mismatch']);
});

it('stitches of one name in several counts, "6 bpsc, 6 fpsc", are all of them together: 6 + 6, then 6 x (2 + 1 + 1)', () => {
  const text = (n: number): string =>
    `Rnd 1: 12 sc in ring, join. Stitch count: 12 sc\nRnd 2: Standing bpsc around any sc, *ch2, fpsc around next st, ch2, bpsc around next st*, repeat ** 6 times, omit last bpsc. Join. Stitch count: 6 bpsc, ${n} fpsc, 12 ch2 spaces\n`;
  expect(complaints(text(6))).toEqual([]);
  expect(complaints(text(7))).toHaveLength(1);
});

it('steps under the name of a round are its own: 6 x 3', () => {
  const text =
    'Round 1: Making the Centre and the Sides\n\nWe make the middle ring here.\n\n  1. Start the Ring: Make a magic ring.\n  2. First Group: ch 3 (counts as dc). Work 2 dc into the ring.\n  3. Repeat: Ch 2. Work [3 dc into the ring, ch 2] 5 times.\n  4. Finish: Join the round with a sl st to the top of the beginning ch 3. (18 dc)\n\nRound 2: Opening the Corners\n\n  1. Move on: sl st into the next 2 dc and into the ch-2 space.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)[0]).toBe(18);
});

it('two sizes whose counts stand in one bracket', () => {
  const text = (n: number): string =>
    `Scarf - follow the first counts.\nLoop - follow the stitch counts in parentheses.\n\nRow 1: Ch 31 (61), hdc in 2nd ch from hook and in each ch across, turn. (30, ${n})\nRow 2: Ch 1, sc in each st across. (30, 60)\n`;
  expect(complaints(text(60))).toEqual([]);
  expect(complaints(text(62))).toEqual(['4 count-mismatch']);
});

it('a list number on a line of its own, and a name that breaks between two lines', () => {
  const text =
    '1. Rnd 1: Magic ring, ch 4 (counts as tr), 15 tr. Join in the fourth\nchain\n2.\nRnd 2: Ch 1, 2 sc in each st around, join. (32)\nRnd 3: (Beginning\ncluster, ch 2) in same st.\n';
  expect(complaints(text).filter((told) => !/special/.test(told))).toEqual([]);
});

it('a part under a line that ends with a count and a semicolon begins anew', () => {
  const text =
    'Arms\n1st row: 6 single crochets in the ring (= 6);\n2nd row: increase x 6 (= 12);\nLegs\nMake 2.\n1st row: 7 single crochets in the slip stitch (= 7);\n';
  expect(complaints(text)).toEqual([]);
});

it('"top of ch 3" of a ch 4 that its own words call a dc and a ch 1', () => {
  const text = (told: string): string =>
    `Rnd 1: 12 dc in ring, join.\nRnd 2: Ch 4${told}, dc in next dc, *ch 1, dc in next dc; rep from * around, ch 1, join in top of beg ch 3. (12 dc)\n`;
  expect(complaints(text(' (counts as dc, ch 1)'))).toEqual([]);
  expect(complaints(text(''))).toEqual(['2 space-size']);
});

it('a chain that "makes a loop", though nothing joins it: 5, then 5 x 2', () => {
  const text = '4 chain to make a loop\nRnd 1: 5 sc into loop, sl st in first sc to join.\nRnd 2: (sc, ch 3, sc) in each sc around, join.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([5, 10]);
});

it('a count that the plain words of a row contradict is wrong though the row leaves stitches too', () => {
  const text = (n: number): string =>
    `Ch 6, join.\nRnd 1: 12 sc in ring.\nRnd 2: *Sc in next sc, 2 sc in next sc; rep from * around. Ch 1, turn.\nRow 3: (Sc in next sc, 2 sc in next sc) 6 times, turn. (${n} sts)\n`;
  expect(complaints(text(18))).toEqual([]);
  for (const n of [17, 21, 22, 25]) expect(complaints(text(n))).toHaveLength(1);
});

it('the other size in square brackets within those of the count, in rows enough', () => {
  const text = (n: number): string =>
    `M [L] measured at the knuckles 8.5" [9.5"]\nCh 24 [26], join with sl st in first ch.\nRnd 1: Ch 1, sc in each ch around, join. (24 [26] sc)\nRnd 2: Ch 1, sc in each st around, join. (24 [${n}] sc)\nRnd 3: Ch 1, sc in each st around, join. (24 [26] sc)\nRnd 4: Ch 1, sc in next 18 [19] sts, ch 5 [6], skip 5 [6] sc, sc in 1 [1] sc, join. (19 [20] sc and 1 ch 5 [6] loop)\n`;
  expect(complaints(text(26))).toEqual([]);
  expect(complaints(text(28))).toEqual(['4 count-mismatch']);
});

it('"decreasing 2 sts evenly around" behind a comma shapes the round before it', () => {
  const text = (n: number): string =>
    `Ch 30, join.\nRnd 1: Ch 1, hdc in each ch around, join. (30 sts)\nRnd 2: Hdc in each st around, decreasing 2 sts evenly around, join. (${n} sts)\n`;
  expect(complaints(text(28))).toEqual([]);
  expect(complaints(text(30))).toEqual(['3 count-mismatch']);
});

it('a repeat "until 13 groups have been made" goes to the end of its row', () => {
  const text =
    'Ch 26, join.\nRnd 1: Ch 1, sc in each ch around, join. (26 sc)\nRnd 2: Ch 1, *skip next sc, (sc, hdc) in next sc; rep from * around, join. (13 groups)\nRow 3: *(Sc, hdc) in next sc; rep from * until 13 shells have been made. Turn.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([26, 26, 26]);
});

it('a turning chain of 2 is no foundation: "dc in 2nd ch from hook" speaks for no terms there', () => {
  const text =
    'Row 1: Ch 6, dc in 4th ch from hook and in next 2 ch. (4 dc)\nRow 2: Ch 2, dc in 2nd ch from hook and across, turn.\nRow 3: Ch 1, sc in each st across.\n';
  expect(complaints(text).filter((told) => told.includes('terms'))).toEqual([]);
});

it('rows that turn and work one count of the first stitches leave the rest on purpose', () => {
  const text = (first: number, count: number): string =>
    `Rnd 1: 8 hdc in magic ring. (8 sts)\nRnd 2: 2 hdc in each st. (16 sts)\nRnd 3: 1 hdc in each st. (16 sts)\n4 thru 6 - Turn, ch 2, 1 dc in the first ${first} sts. (${count} sts a row)\n`;
  expect(complaints(text(12, 12))).toEqual([]);
  expect(complaints(text(12, 13))).not.toEqual([]);
  expect(complaints(text(11, 12))).not.toEqual([]);
});

it('"complete 6 times from *" is a repeat', () => {
  const text = (n: number): string =>
    `Rnd 1: Magic ring, 6 sc. (6 sc)\nRnd 2: 2 sc in each st. (12 sc)\nRnd 3: Ch 1, *work 2 hdc into the first st, 1 hdc into the following. Complete ${n} times from *. Sl st to join. (18 hdc)\n`;
  expect(complaints(text(6))).toEqual([]);
  expect(complaints(text(4))).not.toEqual([]);
});

it('a count behind the other side, the same as that of the one side, is of that side', () => {
  const text = (n: number): string =>
    `With Red ch 11, 3 s c in 2nd st from hook, 1 s c in each of the next 8 sts, 3 s c in last st, working on opposite side of starting ch, 1 s c in each st (${n} s c), do not join or turn this round.\n2nd ROUND: 1 s c in each s c.\n`;
  expect(complaints(text(8))).toEqual([]);
  expect(complaints(text(26))).not.toEqual([]);
});

it('"FPdc into the previous dc" goes round that of the row beneath where the row has none before', () => {
  const text = (n: number): string =>
    `Round 1: 6 sc in magic ring. (6)\nRound 2: 2 sc in each st. (12)\nRound 3: 4 sc, FPdc into the sc 2 rows below, 3 sc, FPdc into the sc 2 rows below, 3 sc. (12)\nRound 4: sc into the next ${n} sts, FPdc into the previous dc, sc into next 3 sts, FPdc into the previous dc, sc into next 3 sts (12)\n`;
  expect(complaints(text(4))).toEqual([]);
  expect(complaints(text(5))).not.toEqual([]);
});

it('"Rounds 2,3 and 4 are worked the same, …" tells three rounds', () => {
  const text = (n: number): string =>
    `Ch 20, join.\nRound 1: ch 2, work 1 dc in each ch, join. (20 dc)\nRounds 2,3 and 4 are worked the same, ch 2, work 1 dc in each dc, join.\nRound 5: ch 1, sc in each st. (${n} sc)\n`;
  expect(complaints(text(20))).toEqual([]);
  expect(complaints(text(21))).not.toEqual([]);
});
