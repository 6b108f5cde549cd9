/**
 * Words with more than one reading, where the count, the row's end or the next row settles which: the
 * row is proven, and the reading is told. Beside each stands a near miss: with a number changed no
 * reading fits, and the row is complained about. Sums beside each; common practice.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { sentenceFor } from '../../../cli/text/sentences.ts';
import { complaints, worked } from './worked.ts';

const piece = (...lines: readonly string[]): string => `Sample (US terms)\n\n${lines.join('\n')}\n`;

/** Readings that were told, as their sentences. */
const told = (text: string): string[] =>
  compile(text, { fixes: false })
    .conventions.filter(({ because }) => because === 'count' || because === 'custom')
    .map(({ what, reading }) => sentenceFor(what, reading, 'row'));

describe('the chain next to the hook, where the words name none', () => {
  it('is passed where the count says so: 21 - 1', () => {
    const text = piece('Ch 21.', 'Row 1: Sc across. (20 sc)', 'Row 2: Ch 1, turn, sc across. (20)');
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 20 proven', 'Row 2 20 proven']);
    expect(complaints(text)).toEqual([]);
    expect(told(text)).toContain(
      'The first row passes the chains that turn, as many as its stitch is high.',
    );
  });
  it('stands for a stitch where a later count says so: 22 - 3 + 1', () => {
    const text = piece('Ch 22.', 'Row 1: Dc in each ch across.', 'Row 2: Ch 3, turn, dc across. (20)');
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 20 unstated', 'Row 2 20 proven']);
  });
  it('is worked where that is the count', () => {
    const text = piece('Ch 20.', 'Row 1: Sc across. (20 sc)');
    expect(complaints(text)).toEqual([]);
    expect(told(text)).toEqual([]);
  });
  it('near miss: no reading makes 18 of 21', () => {
    expect(complaints(piece('Ch 21.', 'Row 1: Sc across. (18 sc)'))).toEqual(['4 count-mismatch']);
  });
});

describe('first, second, third inside a repeat', () => {
  const rows = (last: number): string =>
    piece(
      'Rnd 1: 18 sc in ring. (18)',
      'Rnd 2: *1 sc in first stitch, 1 sc in second stitch, 2 sc in next; rep from * around. (24)',
      `Rnd 3: *1 sc in first st, 1 sc in second st, 1 sc in third st, 2 sc in fourth st; rep from * around. (${last})`,
    );
  it('are the next ones of each pass: 6 x 4, 6 x 5', () => {
    expect(worked(rows(30), 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 24 proven', 'Rnd 3 30 proven']);
  });
  it('near miss: a wrong count is found', () => {
    expect(complaints(rows(32))).toEqual(['5 count-mismatch']);
  });
});

describe('stitches with no place', () => {
  it('go into a small ring of chain: 3 + 3 x 3', () => {
    const text = piece(
      'Ch 5, join.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc, *2 ch, 3 dc; rep from * twice, 2 ch, join. (9 dc, 3 sps)',
    );
    const four = text.replace('twice', '3 times').replace('(9 dc, 3', '(12 dc, 4');
    expect(worked(four, 'Rnd 1')).toEqual(['Rnd 1 12 proven']);
    expect(told(four)).toContain(
      'Stitches told with no place after a ring of chain go into the ring.',
    );
  });
  it('go along a long one', () => {
    const text = piece('Ch 48, join.', 'Rnd 1: Ch 1, 48 sc, join. (48)');
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 48 proven']);
  });
  it('go into a ring where nothing was made: 4 x 3', () => {
    const text = piece(
      'Rnd 1: Ch 3, 2 dc, ch 2, *3 dc, ch 2; rep from * 3 times, join to top of ch 3. (12 sts, 4 ch-spaces)',
    );
    expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 12 proven']);
    expect(told(text)).toContain('The first round is worked into a magic ring.');
    expect(complaints(text.replace('12 sts', '13 sts'))).toEqual(['3 count-mismatch']);
  });
});

describe('2 in the next 2', () => {
  const rows = (count: number): string =>
    piece(
      'Rnd 1: 15 hdc in ring. (15)',
      `Rnd 2: 2 hdc in first 2 sts, 1 hdc in next 8, 2 hdc in next 5 sts. (${count})`,
    );
  it('is two in each where the count says so: 4 + 8 + 10', () => {
    expect(worked(rows(22), 'Rnd 2')).toEqual(['Rnd 2 22 proven']);
    expect(told(rows(22))).toContain('"2 dc in next 2 sts" means 2 dc in each of them.');
  });
  it('is one in each where the count says so: 2 + 8 + 10', () => {
    expect(worked(rows(20), 'Rnd 2')).toEqual(['Rnd 2 20 proven']);
    expect(told(rows(20))).not.toContain('"2 dc in next 2 sts" means 2 dc in each of them.');
  });
  it('near miss: neither makes 21', () => {
    expect(complaints(rows(21))).toEqual(['4 count-mismatch']);
  });
});

describe('the last pass', () => {
  const lace = (sps: number): string =>
    piece(
      'Rnd 1: Ch 3 (counts as dc), 15 dc in ring, join. (16 dc)',
      'Rnd 2: Ch 1, sc in first st, *ch 5, sk 1, sc in next st; rep from * around, join. (8 sps)',
      `Rnd 3: Sl st in next sp, sc in same sp, *ch 6, sc in next sp; rep from * around, join. (${sps} sps)`,
    );
  it('of a round of loops ends with its chain: 8 loops on 16 stitches, and 8 on 8', () => {
    expect(worked(lace(8), 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 8 proven', 'Rnd 3 8 proven']);
  });
  it('near miss: nine loops are not to be had', () => {
    expect(complaints(lace(9))).toEqual(['5 count-mismatch']);
  });
  const offset = (count: number): string =>
    piece(
      'Rnd 1: 16 hdc in ring, join. (16)',
      `Rnd 2: Ch 1, 2 hdc in same st, *hdc in next st, 2 hdc in next st; rep from * around, join. (${count})`,
    );
  it('stops half-way where the count says so: 2 + 7 x 3 + 1', () => {
    expect(worked(offset(24), 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    expect(told(offset(24))).toContain('The last repeat of a row stops where the row ends.');
  });
  it('and where the first stitches and the rest make one pass, as rounds are often begun', () => {
    const silent = offset(24).replace('. (24)', '.');
    expect(worked(silent, 'Rnd 2')).toEqual(['Rnd 2 24 unstated']);
    expect(told(silent)).toContain('The last repeat of a row stops where the row ends.');
  });
  it('near miss: another count, or a rest that is no part of a pass begun', () => {
    expect(complaints(offset(25))).toEqual(['4 count-mismatch']);
    expect(complaints(offset(24).replace('hdc in next st, 2', 'hdc in next 3 sts, 2'))).toEqual([
      '4 count-mismatch',
    ]);
  });
  it('"from * to ** again" is worked: 5 x 3 + 2', () => {
    const text = piece(
      'Ch 18.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (17)',
      'Row 2: Ch 1, turn, *sc in next st, dc in next st**, hdc in next st; rep from * 4 times more, then from * to ** once more. (17)',
    );
    expect(worked(text, 'Row 2')).toEqual(['Row 2 17 proven']);
    expect(complaints(text.replace(' 4 times', ' 3 times'))).toEqual(['5 stitches-left']);
  });
});

describe('where a space is meant, or is not', () => {
  const square = (count: number): string =>
    piece(
      'Rnd 1: Ch 5 (counts as dc, ch 2), (3 dc in ring, ch 2) 3 times, 2 dc in ring, join. (12 dc)',
      `Rnd 2: Sl st in next sp, ch 1, *(2 dc, ch 2, 2 dc) in same sp, dc in each dc across; rep from * around, join. (${count} dc)`,
    );
  it('a side ends where the corner that follows is: 4 x (3 + 2 + 2)', () => {
    const text = square(28).replace(
      '*(2 dc, ch 2, 2 dc) in same sp, dc in each dc across; rep from * around',
      '(2 dc, ch 2, 2 dc) in same sp, *dc in each dc across, (2 dc, ch 2, 2 dc) in next sp; rep from * 2 more times, dc in each dc across',
    );
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 28 proven']);
    expect(complaints(text.replace('28 dc', '27 dc'))).toEqual(['4 count-mismatch']);
  });
  it('"same space" may be the stitch of the join: 16 + 16', () => {
    const text = piece(
      'Rnd 1: Ch 4 (counts as dc, ch 1), (dc, ch 1) in ring 15 times, join in 3rd ch. (16 dc)',
      'Rnd 2: Ch 1, sc in same space, *sc in next ch-1 space, sc in next dc; rep from * around, ending with sc in next ch-1 space, join. (32 sc)',
    );
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 32 proven']);
    expect(complaints(text.replace('32 sc', '34 sc'))).toEqual(['4 count-mismatch']);
  });
});

it('a row that is not understood, but makes what it states, is gone on from', () => {
  const text = piece(
    'Rnd 1: 6 sc in ring. (6)',
    'Rnd 2: 2 sc in each st bumblewise. (12)',
    'Rnd 3: Sc in each st around. (12)',
  );
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 12 proven']);
});

it('rows whose counts are met are not outvoted by rows that state none', () => {
  const text = piece(
    'Rnd 1: Ch 2, 10 dc in ring, sl st in top of first dc. (10)',
    'Rnd 2: Ch 2, 2 dc in each st around, join. (20)',
    'Rnd 3: Ch 2, *2 dc in next st, dc in next 4 sts; rep from * around, join. (24)',
    'Rnds 4-8: Rep rnd 3.',
  );
  // Only the fourth round does not divide: 24 / 5.
  expect(complaints(text)).toEqual(['6 repeat-remainder']);
});

describe('in the next st around', () => {
  const rows = (count: number): string =>
    piece(
      'Rnd 1: 16 sc in ring, join. (16)',
      `Rnd 2: Ch 1, sc in same st, 2 sc in next st around, join. (${count})`,
    );
  it('repeats the clauses before it too: 8 x 3', () => {
    expect(worked(rows(24), 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  });
  it('or is told of its own clause alone: 1 + 15 x 2', () => {
    expect(worked(rows(31), 'Rnd 2')).toEqual(['Rnd 2 31 proven']);
    expect(told(rows(31))).toContain('"Sc in next st, 2 sc in next st around" repeats the 2 sc only.');
  });
  it('near miss: neither makes 25', () => {
    expect(complaints(rows(25))).toEqual(['4 count-mismatch']);
  });
});

describe('same st at the start of a repeat', () => {
  const rows = (count: number): string =>
    piece(
      'Rnd 1: 6 sc in ring. (6)',
      'Rnd 2: Inc x 6. (12)',
      `Rnd 3: (3 sc in the same st, 2 sc) x 4. (${count})`,
    );
  it('is another in each pass where the count says so: 4 x 5', () => {
    expect(worked(rows(20), 'Rnd 3')).toEqual(['Rnd 3 20 proven']);
  });
  it('near miss: 21 is not to be had', () => {
    expect(complaints(rows(21))).toEqual(['5 stitches-left']);
  });
});

describe('where one piece ends and the next begins', () => {
  it('a long chain in a row 1 begins another piece: 2 + 5 + 4 + 5 + 2', () => {
    const text = piece(
      'Rnd 1: 8 sc in ring. (8)',
      'Rnd 2: Inc x 8. (16)',
      'Legs',
      '1st row: 8 ch, 1 inc, 5 sc, 4 sc in last, 5 sc, 1 inc. (18)',
    );
    expect(complaints(text)).toEqual([]);
  });
  it('a second chain goes on from the first: 3 + 20 + 4 + 20 on 22', () => {
    const text = piece(
      'Rnd 1: Ch 22.',
      'Ch 1, sc x 3 in 2nd ch from hook',
      'Sc in next 20 ch',
      'Sc x 4 in last ch, turn',
      'Sc in next 20 ch (on opposite side)',
      'Rnd 2: Sc in next 47 sts. (47)',
    );
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 47 proven']);
    expect(complaints(text.replace('Ch 22', 'Ch 23'))).not.toEqual([]);
  });
  it('a round that rows follow may leave stitches: 12 of 16', () => {
    const text = piece(
      'Rnd 1: 16 hdc in ring. (16)',
      'Row 2: Ch 2, hdc in next 12 sts. (12)',
      'Row 3: Ch 2, turn, hdc in next 12 sts. (12)',
    );
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('Ch 2, turn, ', ''))).toEqual(['4 stitches-left']);
  });
});

it('gaps stand for stitches in a count, and the lone space of a corner for none: 10 + 8', () => {
  const text = piece(
    'Ch 4, join.',
    'Row 1: Ch 3 (counts as dc), (4 dc, ch 2, 5 dc) in ring, turn. (10 dc)',
    'Row 2: Ch 3 (counts as dc), (ch 1, sk 1, dc in next st) twice, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in next st, (ch 1, sk 1, dc in next st) twice, turn. (14 sts)',
  );
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('14 sts', '13 sts'))).toEqual(['5 count-mismatch']);
});

it('plus signs may stand for stars, where the words repeat from them', () => {
  const text = piece(
    'Rnd 1: 16 hdc in ring, join. (16)',
    'Rnd 2: Ch 3 (counts as hdc, ch 1), sk 1, + hdc in next st, ch 1, sk 1 + repeat from + to + around, join. (8 ch-1 sps)',
  );
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 8 proven']);
});

it('a bracket of numbers with a star and a number behind it is work: 8 x 3', () => {
  const text = piece('R1: 8sc in MR (8)', 'R2: 8inc (16)', 'R3: (1sc, 1inc) * 8 (24)');
  expect(complaints(text)).toEqual([]);
});

describe('where what lies beneath is not known', () => {
  const rows = (last: number): string =>
    piece(
      'Rnd 5: Ch 3 (counts as dc), dc in next 5 sts, 2 dc in next st, *dc in next 6 sts, 2 dc in next st; rep from * around. (72 dc)',
      'Rnd 6: Ch 1, sc in each st around. (72)',
      `Rnd 7: Ch 1, *sc in next 8 sts, 2 sc in next st; rep from * around. (${last})`,
    );
  it('the stated count is where the work begins: 72 / 9 x 10', () => {
    expect(complaints(rows(80))).toEqual([]);
    expect(worked(rows(80), 'Rnd 5', 'Rnd 6', 'Rnd 7')).toEqual([
      expect.stringMatching(/unchecked$/),
      'Rnd 6 72 proven',
      'Rnd 7 80 proven',
    ]);
  });
  it('near miss: what is wrong behind it is found', () => {
    expect(complaints(rows(82))).toEqual(['5 count-mismatch']);
  });
});

it('a number behind a bracket and a star that a stitch follows is no number of times', () => {
  const text = piece(
    'R1: 12 dc in ring. (12 dc)',
    'R2: Ch 4 (counts as 1dc, 1ch) *1dc, 1ch, into next st, rep from * around, sl st to 3rd ch to join. (12dc, 12ch)',
  );
  expect(complaints(text)).toEqual([]);
});

it('"skip ch 3 to turn with" passes over what is no stitch', () => {
  const text = piece(
    'Ch 20, sl st to first ch to make a ring.',
    'Rnd 1: Ch 3, 1 dc in base of ch 3, 1 dc in each ch to end, skip ch 3 to turn with, sl st to first dc. (20 dc)',
    'Rnd 2: Ch 1, 1 sc in each dc to end, sl st to first sc. (20 sc)',
  );
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 20 proven', 'Rnd 2 20 proven']);
});

it('"until row 9" is the last row that there is to be', () => {
  const text = piece(
    'Ch 12.',
    'Row 1: Sc in 2nd ch from hook and across. (11)',
    'Rows 2-4: Ch 1, sc across. (11)',
    'Row 5: Ch 2, hdc across. (11)',
    'Rows 6-9: Repeat rows 2-5 until row 9 or until desired length.',
  );
  expect(complaints(text)).toEqual([]);
});

describe('a list that goes round though nothing says so', () => {
  const rows = (count: number): string =>
    piece('Rnd 1: 6 sc in ring. (6)', 'Rnd 2: 2 sc (12)', `Rnd 3: 2 sc, 1 sc, dec (${count})`);
  it('is repeated where the count says so: 6 x 2, 12 / 4 x 4', () => {
    expect(worked(rows(12), 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 12 proven', 'Rnd 3 12 proven']);
    expect(told(rows(12))).toContain('Stitches told once, with no place, are repeated to the end.');
  });
  it('near miss: no reading makes 14', () => {
    expect(complaints(rows(14))).not.toEqual([]);
  });
  it('near miss: a number too small by one is no list that stops half-way', () => {
    const text = piece('Rnd 1: 9 sc in ring. (9)', 'Rnd 2: 6 sc, dec. (8)');
    expect(complaints(text)).toEqual(['4 stitches-left']);
  });
});

describe('numbers that tell again what was made', () => {
  it('"to end, 24 sc" is a count: 25 - 1', () => {
    const text = piece('Ch 25.', 'Row 1: Sc in 2nd ch from hook and in each ch to end, 24 sc. Ch 1, turn.', 'Row 2: Sc across. (24)');
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('24 sc.', '26 sc.'))).not.toEqual([]);
  });
  it('"rep rnd 2 – 24 sts" names one round', () => {
    const text = piece('Rnd 1: 6 sc in ring. (6)', 'Rnd 2: Inc around – 12 sts', 'Rnd 3: Rep rnd 2 – 24 sts');
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 24 proven']);
  });
  it('a beginning told in two ways is worked once', () => {
    const text = piece('Rnd 1: Sc 8 in magic ring OR ch 2, sc 8 in 2nd ch from hook. (8)', 'Rnd 2: Inc 8. (16)');
    expect(complaints(text)).toEqual([]);
  });
});

it('rows worked flat on a round that is left: 18 on 12 of 18, and 24', () => {
  const text = piece(
    'Ch 6, join.',
    'Rnd 1: 12 sc in ring. (12)',
    'Rnd 2: *Sc in next sc, 2 sc in next sc; rep from * around. Ch 1, turn. (18)',
    'Rnd 3: (Sc in next sc, 2 sc in next sc) 6 times. Ch 1, turn. (18)',
    'Rnd 4: *Sc in next 2 sc, 2 sc in next sc; rep from * across. Ch 1, turn. (24)',
  );
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('turn. (24)', 'turn. (26)'))).toEqual(['7 count-mismatch']);
});

it('a chain and what is drawn together are the first cluster: 1 + 7', () => {
  const text = piece(
    'Ch 8, join.',
    'Rnd 1: Ch 3 (counts as dc), dc2tog in ring, ch 2, (cluster in ring, ch 2) 7 times, join. (8 clusters)',
  );
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('8 clusters', '9 clusters'))).toEqual(['4 count-mismatch']);
});

it('"sc first 2 sts together" is a decrease: 20 - 1 - 1', () => {
  const text = piece(
    'Ch 21.',
    'Row 1: Sc in 2nd ch from hook and in each ch across. (20)',
    'Row 2: Single crochet first 2 stitches together, sc in next 16 sts, sc last 2 sts together. (18)',
  );
  expect(worked(text, 'Row 2')).toEqual(['Row 2 18 proven']);
  expect(complaints(text.replace('next 16', 'next 15'))).not.toEqual([]);
});

it('"never counts" does not count, and a round may be named before it is told', () => {
  const text = piece(
    'Rnd 1: Ch 1, 9 hdc in magic ring, join. (9)',
    'Rnd 2: Ch 1 (never counts as first hdc), 2 hdc in each hdc around, join with sl st into first hdc. (18)',
    'Rnd 3: Decrease round. [Hdc 4, decrease] around. (15)',
  );
  expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 18 proven', 'Rnd 3 15 proven']);
});

it('numbers of a list before labels are none of the row before', () => {
  const text = piece(
    '  1. Round 1: Start with a Magic Ring. Work 8 sc into the ring. (8 sts)',
    '  2. Round 2: Ch 1 (does not count as a stitch), 2 sc in each stitch around. (16 sts)',
  );
  expect(complaints(text)).toEqual([]);
  expect(complaints(text.replace('(16', '(15'))).toEqual(['4 count-mismatch']);
});

it('words behind "counts as" go on working: 1 + 15', () => {
  const text = piece(
    'Ch 4, join.',
    'Rnd 1: Chain 3 to count as the first double crochet and work 15 more double crochet stitches into the ring. Join. (16 dc)',
  );
  expect(worked(text, 'Rnd 1')).toEqual(['Rnd 1 16 proven']);
});

it('"into the first stitch" of a chain of 2 is the first chain made: 6', () => {
  const text = piece('Start with 2 ch and then make 6 sc into the first stitch.', 'Rnd 1: 2 sc into each stitch. (12)');
  expect(complaints(text)).toEqual([]);
});

describe('what is told of the last places', () => {
  const ripple = (chains: number): string =>
    piece(
      `Ch ${chains}.`,
      'Row 1: Skip first 2 chs, dc in 3rd ch, *dc in next 6 chs, 3 dc in next ch, dc in next 6 chs, dc3tog over next 3 chs; rep from * to end, working dc2tog in last 2 chs. (48)',
    );
  it('may stand for the end of the last pass: 2 + 1 + 2 x 16 + 15 chains, 1 + 2 x 16 + 16', () => {
    expect(worked(ripple(50).replace('(48)', '(49)'), 'Row 1')).toEqual(['Row 1 49 proven']);
  });
  it('near miss: one chain more', () => {
    expect(complaints(ripple(51).replace(' (48)', ''))).not.toEqual([]);
  });
});

it('a stitch and a slip stitch that end a spiral are no round', () => {
  const text = piece(
    'Rnd 1: In magic ring, 12 hdc. (12)',
    'Rnd 2: 2 hdc in each st. (24)',
    '',
    'Sc in next st, then sl st in next st to join.',
    '',
    'Rnd 3: Ch 2, dc in each st around, join in first dc. (24)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 24 proven']);
});

it('a first space may stand in the chains that are passed: 34 - 6 = 1 + 9 x 3, and 1', () => {
  const text = piece('Ch 34.', 'Row 1: Dc in 7th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across. (10 sps)');
  expect(worked(text, 'Row 1')).toEqual(['Row 1 11 proven']);
  expect(complaints(text.replace('10 sps', '11 sps'))).toEqual(['4 count-mismatch']);
});


describe('a stitch told alone, with no place, where a count shows a whole row', () => {
  const text = piece(
    'Ch 12.',
    'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11)',
    'Rows 2-3: Turn and sc in back loops only. (11)',
  );
  it('goes to the end', () => {
    expect(worked(text, 'Row 3')).toEqual(['Row 3 11 proven']);
  });
  it('near miss: a count that neither one nor all make', () => {
    expect(complaints(text.replace('only. (11)', 'only. (12)'))).not.toEqual([]);
  });
});

it('"sc 2st. together" is a decrease: 6 x (3 + 1)', () => {
  const text = piece('Rnd 1: 30 sc in ring. (30)', 'Rnd 2: *1 sc in the next 3 st., sc 2st. together*. (24)');
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  expect(complaints(text.replace('(24)', '(30)'))).not.toEqual([]);
});

describe('a skip right behind a chain that counts', () => {
  const text = piece(
    'Rnd 1: 70 sc in ring, join. (70)',
    'Rnd 2: Ch 2 (counts as first dc), skip st and dc in each sc around, join. (70 dc)',
  );
  it('may name the place the chain has taken: 1 + 69', () => {
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 70 proven']);
  });
  it('passes over another where the count says so, or nothing does: 1 + 68', () => {
    expect(worked(text.replace('70 dc', '69 dc'), 'Rnd 2')).toEqual(['Rnd 2 69 proven']);
    expect(complaints(text.replace('70 dc', '68 dc'))).not.toEqual([]);
  });
});

describe('stitches drawn together are of the count that names their stitch', () => {
  const at = (count: string): string =>
    `Ch 17.\nRow 1: Hdc in 3rd ch from hook (skipped ch count as hdc) and in each ch across, turn. (16 hdc)\nRow 2: Ch 2 (counts as hdc), hdc in next 13 sts, hdc2tog, turn. (${count})\n`;
  it('alone, it counts them', () => {
    expect(complaints(at('15 hdc'))).toEqual([]);
    expect(complaints(at('14 hdc'))).toEqual(['3 count-mismatch']);
  });
  it('beside them, it may leave them out', () => {
    expect(complaints(at('14 hdc, 1 hdc2tog'))).toEqual([]);
  });
});
