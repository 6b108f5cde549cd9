/** What people write who do not write patterns for a living; all texts invented, common practice. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, made, worked } from './worked.ts';

describe('a list and how often it is worked, without a bracket', () => {
  const start = '1. magic loop with 7 stitches (7)\n2. 2 sc in each stitch (14)\n';
  it.each([
    'sc in first stitch, 2 sc in second stitch *7x* (21)',
    'sc in first stitch, 2x sc in second stitch *7 times* (21)',
    'sc in the next stitch, 2 sc in next stitch, 7x (21)',
    'sc in the next stitch, 2 sc in next stitch, 7 times (21)',
    'sc in first stitch, 2 sc in second stitch x7 (21)',
    'sc in first stitch, 2 sc in second stitch 7 times (21)',
  ])('%s', (list) => {
    const text = `${start}3. ${list}\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([7, 14, 21]);
    expect(complaints(text.replace('(21)', '(22)'))).toEqual(['3 count-mismatch']);
  });

  it('a place in a row is not one of a list', () => {
    const text =
      'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around. (12)\nRnd 3: Sc in next st, inc, sc in next 8 sts, inc, sc in next st. (14)\n';
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 14 proven']);
  });

  it('"forth" before a stitch is the fourth', () => {
    const text = `${start}3. (sc in 3 stitches, 2 sc in forth stitch) 3x, sc in last 2 stitches (17)\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([7, 14, 17]);
  });
});

describe('a start chain before several stitches in each place', () => {
  const text = (count: number) =>
    `Rnd 1: 12 dc in ring, join. (12)\nRnd 2: Ch 3 (counts as dc), 2 dc in each st around, join. (${count})\n`;
  it('is one of those in its own place where the count says so', () => {
    expect(complaints(text(24))).toEqual([]);
    expect(worked(text(24), 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    expect(conventions(text(24))).toContain('start-chain before several: one of them (count)');
  });
  it('has a place of its own else', () => {
    expect(worked(text(23), 'Rnd 2')).toEqual(['Rnd 2 23 proven']);
    expect(complaints(text(25))).toEqual(['2 count-mismatch']);
  });
});

describe('"ch" for the stitches of a row that has no chains', () => {
  const row = 'Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10 sts)\n';
  it.each(['Sc in each ch across.', 'Sc in next 10 ch.', 'Sc in each chain.'])('%s', (words) => {
    const text = `${row}Row 2: Ch 1, turn. ${words} (10 sts)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
    expect(compile(text).findings.map(({ code }) => code)).toContain('wrong-noun');
    expect(complaints(text.replace(/10 sts\)\n$/, '12 sts)\n'))).toEqual([
      '2 count-mismatch',
    ]);
  });

  it('a long chain at the start of the row is worked along', () => {
    const text = `${row}Row 2: Ch 5. Turn. Hdc in each ch. Continue with hdc in each st until the end. (14 sts)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 14 proven']);
  });
});

it('yarn rejoined to the cast-on edge works into the chains of the first row', () => {
  const text =
    'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch to end, turn. (20 sc)\nRow 2: Ch 1, sc in each sc to end. Fasten off. (20 sc)\nRow 3: Rejoin yarn to cast-on edge, ch 1, 1 sc in each ch to end. (20 sc)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 3')).toEqual(['Row 3 20 proven']);
  expect(complaints(text.replace(/20 sc\)\n$/, '22 sc)\n'))).toEqual(['4 count-mismatch']);
});

describe('a list that lost the star before it', () => {
  const start = '1. 6 sc using the magic ring technique (6)\n2. 2 sc in each sc (12)\n';
  it.each([
    '1 sc in next sc, 2 sc in next sc* 6 times (18)',
    '1 sc in next sc, 2 sc in next sc*, rep 6 times (18)',
    'Sc 1. 2 sc in next sc*. rep 6 times. (18 sts)',
  ])('%s', (list) => {
    const text = `${start}3. ${list}\n4. 1 sc in each sc (18)\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18, 18]);
    expect(complaints(text.replace('(18', '(17'))).toEqual(['3 count-mismatch']);
  });
});

it('"To make the ears:" begins another piece, its ring named behind the stitches', () => {
  const piece = '- 7 sc using magic ring technique (7)\n- 2 sc in each sc (14)\n';
  const text = `${piece}- sl st in next sc and fasten off.\n4To make the ears:\n${piece}5To make its tail:\n${piece}`;
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([7, 14, 7, 14, 7, 14]);
});

it('another country\'s word for one stitch says nothing of the terms', () => {
  const text =
    'DC = yo, insert hook into st, pull up a loop, yo, pull through 2 loops twice. (Australian/English terms= trbl.)\n1. Ch 11, sc in 2nd ch from hook and in each ch across. (10)\n';
  expect(complaints(text)).toEqual([]);
  expect(compile(text).manuscript.terms.terms).toBe('US');
});

it.each([
  'Ch 11. Row 1: Sc in 2nd ch from hook and across the row. (10)',
  'Ch 11. Row 1: In the second chain from the hook, make a sc. Then sc x8 for the rest of the row (except the last chain). In the last ch make a sc. (10)',
  'Rl: Ch 11, sc in 2nd ch from hook and in each ch. (10)\nR2: Ch 1, turn, sc in same st and across. (10)',
])('%s', (text) => {
  expect(complaints(text)).toEqual([]);
  expect(made(text).at(-1)).toBe(10);
  expect(worked(text.replaceAll('(10)', '(12)'), 'Row 1', 'R1').join()).not.toContain('proven');
});

describe('words that only blogs have', () => {
  const row = 'Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10 sts)\n';
  it.each([
    'Row 2: Ch 1, turn. Sc in each st of previous work. (10 sts)',
    'Row 2: Ch 1, turn. Sc in each st. 10 sts) Fasten off.',
    'Row 2: Fasten off, count 3 sts from the start and insert new yarn. Sc in each st. (10 sts)',
    'Row 2: Ch 1, turn, working back along the chain, sc in each st. (10 sts)',
  ])('%s', (words) => {
    expect(worked(row + words, 'Row 2')).toEqual(['Row 2 10 proven']);
    expect(worked(row + words.replace('10 sts)', '12 sts)'), 'Row 2')).toEqual(['Row 2 10 mismatch']);
  });

  it('yarn that is inserted is joined', () => {
    const text = `${row}Row 2: Ch 1, turn, sc in each st. Fasten off. (10)\nRow 3: Count 3 sts from the start and insert new yarn. Sc in each st. (10)\n`;
    expect(complaints(text)).toEqual([]);
  });

  it('rows by a number and a dash stand among notes too', () => {
    const text =
      'Stitches used:\nch - chain\n\nUsing both strands, chain 11. (This is short.)\n1 - sc in 2nd ch from hook and in each ch across.\n2 - ch 1, turn, sc in each sc. (10)\n';
    expect(worked(text, '1', '2')).toEqual(['1 10 unstated', '2 10 proven']);
  });
});

it('steps that are repeated by their numbers are the last rows', () => {
  const text =
    'Step 1: Chain 9\n\nStep 2: Single crochet in the second CH from the hook.  Repeat until you reach the end.  CH 2, turn.\n\nStep 3: Dc in every sc until you reach the end. Ch 1, turn.\n\nStep 4: Sc in every dc until you reach the end. Repeat steps 3 & 4 until you get the desired length.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([8, 8, 8, 8, 8]);
});

it('"2 dc dec" in one place is drawn together there, and counts among clusters', () => {
  const text =
    'Stitches: 3dc cluster = (yo and draw up a loop, yo and draw through 2 loops on hook) 3 times in next sp, yo and draw through all 4 loops on hook.\n\nCh 20. 2 dc dec in 4th chain from hook. *Skip next ch, 3 dc cluster in next ch. Rep from * to end. You will have 9 clusters.\n';
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('9 clusters', '7 clusters'))).toEqual(['3 count-mismatch']);
});

it('corners that a round does not have are not looked for in every stitch', () => {
  const text =
    'Rnd 1: 12 sc in magic ring. (12)\nRnd 2: 4 sc in each corner. Repeat until there are 12 rounds in all.\n';
  expect(Math.max(...made(text))).toBeLessThan(100);
});

it('a line that turns and works begins the next row, though it has no label', () => {
  const text =
    'The turning chain 3 will count as the first double crochet of each row.\nChain 6.\nDouble crochet in the 4th chain from the hook.\nChain 3. Skip the next chain. Make 2 double crochets in the last chain.\nChain 3 and turn. Make a double crochet in the first stitch of the row.\nChain 3. Skip the next double crochet and make a single crochet in the chain 3 space.\nChain 3. Skip the next double crochet and make 2 double crochets in the last stitch.\n';
  expect(complaints(text)).toEqual([]);
  expect(made(text)).toEqual([4, 5]);
});

it('what a round is about stands behind its number, above a list of what is done', () => {
  const text =
    'Round 1 — Center circle\n- Make a magic ring.\n- Work 12 dc into the ring.\n- Join with sl st to first dc.\n12 dc total\n\nRound 2 — Form 6 base points\n- Ch 3 (counts as 1 dc), 1 dc in the same st, ch 1, 2 dc in the next st.\n- *Skip 1 st, in next st make (2 dc, ch 1, 2 dc), repeat from * around\n- Join with sl st to the top of the beginning ch-3.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 unstated']);
});

it('"sc in each dc" before a chain goes to the next space, before the repeat as within it', () => {
  const text =
    'Ch 35.\nRow 1: Dc in 4th ch from hook, dc in next ch, *ch 3, skip 2 ch, sc in next 3 ch, ch 3, skip 2 ch, dc in next 3 ch; repeat from * across.\nRow 2: Ch 1, turn, sc in each dc, *ch 3, dc in each sc, ch 3, sc in each dc; repeat from * across. (21 sts, 6 ch-3 sps)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 2')).toEqual(['Row 2 21 proven']);
});

describe('rows and lengths in a beginner\'s words', () => {
  it('a row of chain stitches, an example of how many, and turning chains behind a full stop', () => {
    const text =
      '• Foundation row - make a row of chain stitches (for example 20).\n• Row 1 - miss 3 chain and treble into the next. Treble stitch to the end of the row. 3 ch. Turn.\n• Row 2 - starting from the right side of your work, treble till the end of the row.\n• Additional rows - continue this pattern till you have the desired length of fabric for your scarf.\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([18, 18, 18]);
  });

  it('a length told beside a chain, and stitches "in the round"', () => {
    const text =
      'Crochet a chain long enough to go around your head. Approx 18 inches.\nRow 1: the chain, approx 18 inches.\nRow 2: sc in each chain. Turn.\n';
    expect(complaints(text)).toEqual([]);
    const hat =
      'Rnd 1: 8 sc in magic ring (8)\nRnd 2: Ch 2, 2 sc in each stitch in the round (starting with the first). (16)\n';
    expect(complaints(hat)).toEqual([]);
    expect(worked(hat, 'Rnd 2')).toEqual(['Rnd 2 16 proven']);
  });
});

describe('several stitches in brackets, in a list', () => {
  it('stand in one place, with the count behind them', () => {
    const text =
      'Ball\nChain 2\nR1- 7 sc in 2nd ch from hook [7]\nR2- 3sc, (2sc), 2sc, (2sc) [9]\nR3- 2sc, (2sc) repeat 3 times [12]\nR4- *1 sc, (2sc)* repeat around [18]\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([7, 9, 12, 18]);
    expect(complaints(text.replace('[12]', '[13]'))).not.toEqual([]);
  });

  it('a count stays one', () => {
    const text =
      'R1: 6 sc in magic ring (6 sc)\nR2: 2 sc in each st around, (12 sc), join\nR3: 3 sc in each of next 4 sts, sc in next 8 sts, join (20 sc)\n';
    expect(worked(text, 'R2', 'R3')).toEqual(['R2 12 proven', 'R3 20 proven']);
  });
});

describe('rows that no label parts', () => {
  it('2 in each below the stitches of the first round', () => {
    const text =
      'Rnd 1: Ch 2. 6 sc in second ch. from hook.\n2 sc in each st. around (12 sts)\nRnd 2: [sc, 2sc in next st.] repeat around (18 sts)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18]);
  });

  it('a start chain below a round that is joined to its first stitch', () => {
    const text =
      'Using MC, ch 2.\n6 sc into the second ch from hook, and join with a sl st to first sc.\nCh 1 (counts as sc here and throughout), sc in same st, 2 sc in each sc around. Join with a sl st to first sc. (12 sc)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12]);
  });
});

it('an earflap whose "Ch 1" has a line of its own goes on from the hat', () => {
  const text =
    'Round 1: Magic ring, ch 1, 10 hdc in ring, join. (10)\nRound 2: Ch 1, 2 hdc in each st around, join. (20)\n\nFirst Earflap:\nCh 1\nRow 1: Sc 8, ch 1, turn.\nRow 2: Sc dec over first two sc. Sc next 4 sc. Sc dec over last two sc. Ch 1, turn. (6)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 8 unstated', 'Row 2 6 proven']);
});

describe('rows behind rounds, open at a handle', () => {
  const rounds =
    'R1: Ch2, 6sc in 2nd ch from hook. (6sc)\n\nR2: 2sc in ea st. (12sc)\n\nR3: (Sc in next st. 2sc in next st) around. (18sc)\n\nSIDES (begin working in rows)\n\n';
  it('leave what the first of them leaves', () => {
    const text = `${rounds}R1: Sl st in next st. Ch1, turn. Sc in the FLO of 16 sts.\n\nRs 2-11: Ch1, turn. Sc in ea st.\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'R1', 'R2')).toEqual(['R1 16 unstated', 'R2 16 unstated']);
  });
  it('but a count that is said holds', () => {
    const text = `${rounds}R1: Ch1, turn. Sc in 16 sts. (17)\n\nR2: Ch1, turn. Sc in ea st.\n`;
    expect(complaints(text)).not.toEqual([]);
  });
});

it('"until 3 stitches are left unworked" stops short, and "both in the same next stitch" is the next', () => {
  const text =
    'Row 1: Ch 22, sc in 2nd ch from hook and each ch across. (21)\nRow 2: Ch 1, turn, sc in the very first stitch, sc in each st until 3 stitches are left unworked. (18)\nRow 3: Ch 1, turn, (make 1 sc and 1 dc both in the same next stitch, skip next stitch) across. (18)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 18 proven', 'Row 3 18 proven']);
});

it('"US english terms" are US terms, and an order is no stitch', () => {
  const text =
    'This pattern is written in US english terms.\n\nR1: 6 sc in magic ring. (6)\nR2: 2 sc in each st. (12)\n';
  expect(complaints(text)).toEqual([]);
  expect(compile(text).manuscript.terms.terms).toBe('US');
  expect(compile('Written in English, UK terms.\n\nR1: 6 dc in magic ring.\n').manuscript.terms.terms).toBe('UK');
  const codes = complaints(`${text}R3: *Continue into next space from the skipped 10 on top. (12)\n`);
  expect(codes.join()).not.toContain('undefined-stitch');
});

describe('a sentence that is repeated in words without a star', () => {
  it.each([
    'Keep repeating this until you get to the end of the row.',
    'Continue like this to the end of the row.',
    'Do this all the way across.',
    'Repeat this all the way down the row.',
    'Keep going like this until you reach the end.',
    'Continue this pattern across the row.',
    'And so on to the end.',
  ])('%s', (words) => {
    const text = `Row 1: Ch 22, sc in 2nd ch from hook and each ch across. (21)\nRow 2: Ch 1, turn, sc in first st. Sc in next st, 2 sc in next st. ${words} (31)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 31 proven']);
    expect(worked(text.replace('(31)', '(33)'), 'Row 2').join()).not.toContain('proven');
  });
});

it('a dash that touches both sides parts the name of a stitch from how it is made', () => {
  const text =
    'Special stitches:\nShell-3 dc’s in the same space\n\nCh 20.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch* across. (13 sts)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 1')).toEqual(['Row 1 13 proven']);
});
