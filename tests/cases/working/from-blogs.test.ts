/** Shapes of notation that blogs, forums and translated pages have; all texts invented, common practice. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('a place in front, with stars around what goes into it', () => {
  const start = 'Rnd 1: (Sc, ch 3) 6 times in magic ring. Join with sl st to first sc. (6 sc)\n';
  it.each([
    'into each ch3 space *1sc, 3hdc, 1sc* around.',
    'in each ch-3 space *1sc, 3hdc, 1sc*.',
    'in ch-3 space *1sc, 3hdc, 1sc* repeat from * to * in every ch-3 space around.',
    'Working into the ch-3 spaces, *1sc, 3hdc, 1sc* repeat from * to * around.',
    'Work into ch3 space *1sc, 3hdc, 1sc*, repeat from * to * in every ch3 space around.',
    'Work into ch-3 space: 1sc, 3hdc, 1sc. Repeat for each space around.',
  ])('%s', (words) => {
    const text = `${start}Rnd 2: ${words} Join with sl st to first sc. (30)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 30 proven']);
    expect(complaints(text.replace('(30)', '(31)'))).toEqual(['2 count-mismatch']);
  });

  it('stars around stitches that have places of their own are a plain repeat', () => {
    const text = `${start}Rnd 2: Working in the ch-3 spaces, *3 sc in next space, ch 1; repeat from * around. (18 sc)\n`;
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 18 proven']);
  });
});

describe('a count between semicolons', () => {
  it.each(['22 st', '22 sts', '22 hdc'])('%s', (count) => {
    const text = `Chain 24.\nRow 1: hdc in 3rd ch from hook and in each ch across; ${count}; ch 2, turn.\nRow 2: hdc in each st across; ${count}; ch 2, turn.\n`;
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 22 proven', 'Row 2 22 proven']);
    expect(complaints(text.replaceAll('22', '25'))).toContain('2 count-mismatch');
  });
});

describe('rows whose number stands first', () => {
  it('are known by the work behind them', () => {
    const text =
      'Fox eye\n1 row 6sc in magic ring = 6\n2 row 6inc = 12\n3 row (1sc, 1inc) * 6 = 18\n4-6 row 18sc\n7 row (1sc, 1dec) * 6 = 12\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18, 18, 18, 18, 12]);
    expect(complaints(text.replace('= 18', '= 17'))).toEqual(['4 count-mismatch']);
  });
});

describe('talk in the bracket of a count', () => {
  it.each([
    '(24 dc, ch 3 counts as a dc)',
    '(24 dc; the ch 3 counts as a stitch)',
    '(24 dc, you should count the ch 3)',
    '(24 dc. The ch 3 is your first dc)',
    '(24 dc, including the chain 3)',
  ])('%s', (count) => {
    const text = `Rnd 1: Ch 3, 11 dc in magic ring, join to top of ch 3. (12 dc)\nRnd 2: Ch 3, dc in same st, 2 dc in each st around, join. ${count}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    expect(complaints(text.replace('(24', '(26'))).toEqual(['2 count-mismatch']);
  });

  it('a total that is said to include the chain counts no space', () => {
    const text =
      'Rnd 1: Ch 4, sl st into the first ch to form a ring. Ch 2, 11 dc into the ring. Total of 12 stitches, including the chain 2. Join.\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 11 proven']);
  });
});

describe('a list of materials that runs on into the work', () => {
  it('ends where a slip knot is made', () => {
    const text =
      'Tiny posy\nMaterials:\n- Cotton yarn\n- Hook (4 mm)\n- Make a slip knot and chain 4 stitches.\n- Slip stitch into the first chain to form a loop.\n- Chain 2 stitches, then work 11 double crochet stitches into the center of the loop. You should have a total of 12 stitches, including the chain 2.\n- Slip stitch into the top of the chain 2 to join the round.\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, '')).toEqual([' 12 proven']);
  });

  it('ends where a ring is worked', () => {
    const text =
      'I used:\nDK yarn\n\nDimensions:\n6" from top to bottom\n\n 10 dc in mc\n1. Sl st, ch 2, 2 dc in each stitch around - 20 st\n';
    expect(worked(text, '1')).toEqual(['1 20 proven']);
  });
});

describe('lines beside the rows', () => {
  const rows = 'Ch 11.\nRow 1: sc in 2nd ch from hook and in each ch across (10 sc)\n';
  it('colours of rows that were told make no rows', () => {
    const text = `${rows}Rows 2-8: ch 1, turn, sc in each sc across (10)\nColor sequence:\nRows 1-4: white\nRows 5-8: navy\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 10, 10, 10, 10, 10, 10, 10]);
  });

  it('a row with an unknown word that was not told before is asked about', () => {
    expect(complaints(`${rows}Row 2: grommel\n`)).toEqual(['3 unread']);
  });

  it('how to read the rounds is no round, and a spreadsheet’s line ends are none', () => {
    const text =
      'How to read the rounds:\n    Each round has a sequence. Example: sc, inc means repeat\n    that sequence sc, inc followed by sc, inc in next st over and over to the end of\n    that round.\n_x000D_\nR1: 6sc in magic circle (6)_x000D_\nR2: inc in every st (12)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12]);
  });

  it('a length short of the one desired is an open length', () => {
    const text = `${rows}Row 2: ch 1, turn, sc across. (10)\nRow 3: Repeat row 2, until mat is ½ inch less than desired length.\nLast row: ch 1, turn, sl st across.\n`;
    expect(complaints(text)).toEqual([]);
  });
});

it('a stitch rows below may be of another name than the one above it', () => {
  const text =
    'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across – 19 sc.\nRow 2: Ch 3 (counts as dc), turn, dc in next st and each st across – 19 dc.\nRow 3: Ch 1, turn, sc in first 3 dc, *fpdc around sc 2 rows below next dc, sc in next 3 dc; repeat from * across.\n';
  expect(complaints(text)).toEqual([]);
});

describe('rows numbered with a dash', () => {
  const text =
    'Mug sleeve\nChain 31, join with sl st to form a ring\n1 – sc in ea ch around (31)\n2 – sc in 1st st, 2sc in next st, sc in each remaining st around (32)\n3 – Going through back loops only, sc in each st around (32)\n4 – Rep rnd 2 (33)\n5 – Rep rnd 3 (33)\n6 - (10 sc, inc) 3 times (36)\n7 - 2 sc in first st, sc in each st around (37)\n';

  it('are rows, and the count of a short one makes no copies', () => {
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([31, 32, 32, 33, 33, 36, 37]);
    expect(complaints(text.replace('5 – Rep rnd 3 (33)', '5 – Rep rnd 3 (32)'))).toEqual([
      '7 count-mismatch',
    ]);
  });

  it('"2 - 3 sc" and what is bought are none', () => {
    const bought = 'Mug sleeve\n1 - skein of cotton\n2 - stitch markers\n\nRnd 1: 6 sc in magic ring (6)\n';
    expect(made(bought)).toEqual([6]);
  });
});

describe('the row just made, worked again without being named', () => {
  const rows = 'Ch 11.\nRow 1: sc in 2nd ch from hook and in each ch across. (10)\nRow 2: ch 1, turn, sc in each st across. (10)\n';
  it.each([
    ['Repeat this for 3 more rows.', 5],
    ['Repeat for 3 more rows (or until it is wide enough).', 5],
    ['Repeat until you have 6 rows.', 6],
    ['Keep doing this until you have 6 rows.', 6],
    ['Continue this for 3 rows, or until you reach the edge.', 5],
  ])('%s', (words, all) => {
    const text = `${rows}${words}\nLast row: ch 1, turn, sc in each st. (10)\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual(Array(all + 1).fill(10));
  });

  it('"repeat to the end" speaks of stitches', () => {
    const text = 'Rnd 1: 6 sc in magic ring (6)\nRnd 2: sc in next st, 2 sc in next st. Repeat to the end. (9)\n';
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 9 proven']);
  });
});

it('short forms with a stop, glued words, a row’s name and "continue * to *" are read', () => {
  const text =
    'Rd 1: 6 edc in magic ring (6)\nRd 2: *2 edc in next edc, edcin next edc* Repeat from * to * around. (9)\nRd 3: Cuff row..edc in each st, sl st to join each round. (9)\nRd 4: *Edc in nx. st, sc in nx. 2 sts.*- continue * to * all around. (9)\nRds 5 - 8: Repeat Rds. 3 and 4 twice\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([6, 9, 9, 9, 9, 9, 9, 9]);
});

describe('steps of one round in a list of their own', () => {
  const text =
    'Step 1: Making the base\n  1. Chain: Start by making a slip knot and chaining 16 (or any even number). This is your starting chain.\n  2. Round 1: Sc in the second chain from the hook. Sc in each chain across until you reach the last chain.\n  3. Turning the Corner: In the very last chain, work 3 sc into that same chain. This turns your work.\n  4. The Other Side: Now, you will work sc stitches down the opposite side of your starting chain. Sc in the bottom loop of each chain across. You should have one stitch left.\n  5. Turning the Second Corner: In the last chain (where you began), work 2 sc.\n  6. Join: Sl st to the first sc you made in this round to join. (32)\n  7. Round 2: Ch 1. Sc in each st around. Join. (32)\n';

  it('belong to the round above them, and their numbers are none of rows', () => {
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 32 proven', 'Rnd 2 32 proven']);
  });

  it('a wrong total is found', () => {
    expect(complaints(text.replace('join. (32)', 'join. (35)'))).toContain('7 count-mismatch');
  });
});

it('a round that is turned behind a slip stitch goes back over the same stitches', () => {
  const text =
    'Rnd 1: 6 sc in magic ring (6)\nRnd 2: 2 sc in each sc, join (12)\nRnd 3: sl st into next sc, turn, *Tr (triple/treble crochet) in 1st sc, then sl st in next* (repeat from *to* around), join. (6 tr)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 6 proven']);
});

it('"one more time make another", "work again" say no more than that it is worked', () => {
  const text =
    'Chain 4\nJoin with a slip stitch in the first chain to form a ring\nChain 3 (counts as the first double crochet)\nWork 2 more double crochets into the ring\nChain 2\nWork again 3 double crochets into the ring\nChain 2\nOne more time make another 3 double crochets in the ring\nChain 2\nJoin with a slip stitch to the top of the chain 3 (9 dc, 3 ch-2 sps)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, '')).toEqual([' 9 proven']);
});

describe('a count that a sentence tells', () => {
  it.each([
    'You should have 18 stitches now.',
    'At the end of this round you will have 18 stitches.',
    'At the end of round 3 you have 18 sts.',
    'There should be 18 of them.',
    'Count your stitches: 18.',
    'Still 18 stitches!',
    'So you end up with 18 sts.',
    'This gives you 18 sts.',
    'Your total is 18.',
    '18 stitches at this point.',
    'That makes 18 stitches.',
  ])('%s', (told) => {
    const text = `Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc around (12)\nRound 3: (sc, inc) around. ${told}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 18 proven']);
    expect(complaints(text.replace(/18/g, '19'))).toEqual(['3 count-mismatch']);
  });

  it.each([
    'You should have 1 stitch left.',
    'Count your stitches.',
    'You will have 2 loops on your hook.',
    'This is the end of round 3.',
    'You will be working in 12 stitches.',
  ])('%s counts none', (told) => {
    const text = `Rnd 1: 6 sc in magic ring (6)\nRnd 2: inc around (12)\nRound 3: (sc, inc) around. ${told}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 18 unstated']);
  });
});

describe('a list before "inc around"', () => {
  const start = 'R1: 6 sc in mr (6)\nR2: inc around (12)\n';
  it.each([
    ['sc 1, inc around', 18],
    ['sc, inc around', 18],
    ['2 sc, inc around', 16],
    ['sc in next 2 sts, inc in next st around', 16],
    ['sc in 3, inc in 1 around', 15],
    ['sc, dec around', 8],
    ['inc, sc around', 18],
    ['inc, sc 2 around', 16],
    ['inc, sc around', 13],
  ])('%s makes %i', (list, n) => {
    expect(complaints(`${start}R3: ${list} (${n})\n`)).toEqual([]);
    expect(complaints(`${start}R3: ${list} (${n + 3})\n`)).toEqual(['3 count-mismatch']);
  });
});

describe('short forms of a list’s own', () => {
  it.each([
    'vm = single crochet\nokn = increase, two stitches in one\nsmd = decrease\nmgk = magic ring\n',
    '• vm – single crochet\n• okn – increase\n• smd – invisible decrease\n• mgk – magic circle\n',
    'mgk (magic ring), vm (single crochet), okn (increase), smd (decrease)\n',
    'vm: single crochet; okn: increase; smd: decrease; mgk: adjustable ring\n',
  ])('%s', (list) => {
    const text = `Pebble\nAbbreviations\n${list}\n1. mgk, 6 vm (6)\n2. 6 okn (12)\n3. (1 vm, 1 okn) x 6 (18)\n4. 18vm (18)\n5. (vm, smd) x 6 (12)\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18, 18, 12]);
    const line = text.slice(0, text.indexOf('3. ')).split('\n').length;
    expect(complaints(text.replace('x 6 (18)', 'x 6 (19)'))).toEqual([`${line} count-mismatch`]);
  });

  it('a capital for the trade’s letter, and words of a translator', () => {
    const text =
      'Legend\nSbn-column without nakida.\nP-increase.\nU-decrease.\nThe eye\n1 row 6 Sbn in the ring amigurumi\n2 row 6P = 12\n3 row (3Sbn, 1P) * 3 = 15\n4 row 15Sbn\n5 row (3Sbn, 1U) * 3 = 12\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 15, 15, 12]);
  });

  it('words of the trade keep their sense, whatever a list says of them', () => {
    const text = 'Abbreviations: dc = single crochet\n\nRnd 1: 6 dc in magic ring (6)\n';
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 6 proven']);
  });
});

describe('a count with a line of its own', () => {
  it.each([
    '18 sts',
    '18 sc total',
    '18 single crochets',
    'You will now have 18 stitches.',
    'Total: 18 stitches',
    'Picture 2: the increases\n18 sts',
    '[photo]\n(18)',
  ])('%s', (line) => {
    const text = `Round 1: 6 sc in magic ring (6)\nRound 2: inc in each st around (12)\nRound 3: (sc, inc) around\n${line}\nRound 4: sc around\n18 stitches\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3', 'Rnd 4')).toEqual(['Rnd 3 18 proven', 'Rnd 4 18 proven']);
    expect(complaints(text.replace(line, line.replace('18', '20'))).map((it) => it.slice(2))).toEqual([
      'count-mismatch',
    ]);
  });

  it('below talk it makes no row of its own', () => {
    const text =
      'Row 1: Ch 11, sc in 2nd ch from hook and across. (10)\nRow 2: Ch 1, turn, sc across.\nHere is what mine looks like\n10 sc\nRow 3: Ch 1, turn, sc across. (10)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 10, 10]);
  });
});

it.each([
  'sc in 2nd ch from hook and across (10)',
  'sc in 2nd ch from hook, and all the way across (10)',
  'sc in 2nd ch from hook and to the end of the row (10)',
])('%s', (row) => {
  expect(complaints(`Ch 11.\nRow 1: ${row}\n`)).toEqual([]);
  expect(complaints(`Ch 13.\nRow 1: ${row}\n`)).toEqual(['2 count-mismatch']);
});

it.each(['C2, 6 sc in magic ring', 'Color 2: 6 sc in magic ring', 'MC - 6 sc in magic ring', 'Red. 6 sc in magic ring'])(
  'a colour in front of its row: %s',
  (row) => {
    expect(complaints(`Row 1: ${row} (6)\nRow 2: inc around (12)\n`)).toEqual([]);
  },
);

it('a part named in capitals is no stitch, though a stitch is called so', () => {
  const text =
    'TAIL\nR1: MR 6 (6)\nR2: [inc] x 6 (12)\nR3-R4: sc 12 (12)\nFO, leaving tail for sewing. Stuff\nthe end of the tail to keep it round.\nSHELL\nIn dark brown\nR1: MR 6 (6)\nR2: [inc] x 6 (12)\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([6, 12, 12, 12, 6, 12]);
});

it('"Round 3 and 4" above its work are two rounds, and steps of the making up are none', () => {
  const text =
    'Step 4: Round 1\n\nMake 6 single crochet into a magic ring. (6)\n\nStep 5: Round 2\n\nSingle crochet 2 into every stitch for a total of 12 stitches.\n\nStep 6: Round 3 and 4\n\nSingle crochet around.\n\n2. Fold your piece in half. Line up the first row with the last row you made.\n3. Use your needle and the long tail to sew the two ends together.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([6, 12, 12, 12]);
});

it('a row told to be repeated in its own sentence is worked again, and a cry is no work', () => {
  const text =
    'Ch 11.\n1- sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Single crochet in every stitch. Chain one and turn your work and repeat for four rows. Ta-da!\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([10, 10, 10, 10, 10, 10]);
});

it.each([
  'Special instructions:\nSc dec – Pull up a loop in each stitch indicated, yarn over, draw through all loops on hook.\n\nInstructions: (ch-3 does not count as dc)\n',
  'Instructions (ch 3 does not count as dc):\n',
])('a note in the line of the heading holds: %s', (head) => {
  const text = `${head}Round 1: Magic Ring, ch 3, dc 10, join to top ch of ch 3\nRound 2: Ch 3, 2 dc each dc around. Join to top ch of ch 3. (20 dc)\n`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 20 proven']);
});

it('what somebody would do is no rule for the chain', () => {
  const text =
    "I never ch 1 and count the first ch as a stitch, I don't like how it looks. If you prefer ch 1 count as first stitch, do it that way.\n\nCh 6, sl st in ring\nRound 1: Ch 1, sc in ring 8 times, sl st into first sc to join (8)\n";
  expect(complaints(text)).toEqual([]);
});

it('"across length of ch" goes to the end, and "end with 1 sc" counts nothing', () => {
  const text =
    'Ch 23\nRow 1: sc in 2nd ch from hook, sc across length of ch – 22 Sts.\nRow 2: Ch 1, turn, *sc in next st, dc in next st; rep from * to last 2 sts, dc in next st. End with 1 sc.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 22 proven', 'Row 2 22 unstated']);
});
