/** Rounds told in the words of toys, hats, bags and slippers. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

const disc = 'Rnd 1: 7 sc in magic ring. (7)\nRnd 2: 2 sc in each st around. (14)\n';

describe('how often', () => {
  it.each([
    'sc in next st, 2 sc in next st, repeat x 6 (21)',
    'sc in next st, 2 sc in next st, rep x 7 (21)',
    '*sc in next st, 2 sc in next st, repeat from * x 6 (21)',
  ])('%s', (words) => {
    expect(complaints(`${disc}Rnd 3: ${words}\n`)).toEqual([]);
    expect(worked(`${disc}Rnd 3: ${words}\n`, 'Rnd 3')).toEqual(['Rnd 3 21 proven']);
  });

  it('a number that fits neither is found', () => {
    const text = `${disc}Rnd 3: sc in next st, 2 sc in next st, repeat x 4 (21)\n`;
    expect(complaints(text)).toEqual(['3 stitches-left']);
  });
});

describe('increases spread over some of the round', () => {
  it.each([
    'sc in next 5 sc, inc 3 evenly across remaining 9 sc (17)',
    'inc 3 evenly across next 9 sc, sc in last 5 sc (17)',
  ])('%s', (words) => {
    expect(complaints(`${disc}Rnd 3: ${words}\n`)).toEqual([]);
    expect(worked(`${disc}Rnd 3: ${words}\n`, 'Rnd 3')).toEqual(['Rnd 3 17 proven']);
  });

  it('a wrong count is found', () => {
    const text = `${disc}Rnd 3: sc in next 5 sc, inc 3 evenly across remaining 9 sc (18)\n`;
    expect(complaints(text)).toEqual(['3 count-mismatch']);
  });
});

describe('an increase with how it is made', () => {
  it.each([
    'inc 1 sc in each st by working 2 sc in one (28)',
    '*1 sc, inc 1 sc by sc 2 in one*, repeat around (21)',
    '*inc in next st by working 2 sc in it, sc in next st; rep from * around (21)',
  ])('%s', (words) => {
    expect(complaints(`${disc}Rnd 3: ${words}\n`)).toEqual([]);
  });
});

describe('stitches left at the end', () => {
  it.each([
    'sc in every st, leave last 4 sts unworked. (10)',
    'sc in each st around, leaving last 4 sts unworked. (10)',
    'sc around, leaving 4 sts unworked. (10)',
    '*sc in next st, ch 1, sk next st; rep from * around, leaving last 4 sts unworked. (5 sc)',
    'sc in each st, leave the last st unworked. (13)',
  ])('%s', (words) => {
    const text = `${disc}Row 3: Ch 1, turn, ${words}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')[0]).toMatch(/proven$/);
  });

  it('a wrong number of them is found', () => {
    const text = `${disc}Row 3: Ch 1, turn, sc in each st, leaving last 3 sts unworked. (10)\n`;
    expect(complaints(text)).toEqual(['3 count-mismatch']);
  });

  it('rows told below the last one are rows of their own', () => {
    const text = `${disc}Row 3: ch 1, turn, sc in every st, leave last 4 sts unworked.\nCh 1, turn, sc in every st for the next 6 rows.\nFasten off.\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text).at(-1)).toBe(10);
    expect(made(text).length).toBeGreaterThan(3);
  });
});

describe('rounds shaped on until a number is reached', () => {
  it.each([
    'Continue increasing in this way, adding 7 stitches per round, until you have 63 sc.',
    'Continue to increase 7 sc in each round as before until you have 63 sc.',
  ])('%s', (words) => {
    const text = `${disc}Rnd 3: *2 sc in next st, sc in next st; rep from * around (21)\n${words}\nNext round: sc in each st around (63)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Next round')).toEqual(['Next round 63 proven']);
  });
});

describe('a list of rows whose numbers were pasted to the work', () => {
  const list = [
    'Head',
    '1. 7 sc in magic ring',
    '2. 7 inc (14)',
    '3.5 sc, 4 inc, 5 sc (18)',
    '4.18 sc (18)',
    '5-7. 3 rows (18)',
    '8-9. 2 rows',
    '10.(7 sc, dec) x 2 (16)',
    '',
  ].join('\n');

  it('is read row by row', () => {
    expect(complaints(list)).toEqual([]);
    expect(made(list)).toEqual([7, 14, 18, 18, 18, 18, 18, 18, 18, 16]);
  });

  it('a wrong count in it is found', () => {
    expect(complaints(list.replace('(16)', '(17)'))).toEqual(['8 count-mismatch']);
  });

  it('a size in millimetres is no row', () => {
    expect(made('Use a 3.5 mm hook.\n1. 7 sc in magic ring (7)\n2. 7 inc (14)\n')).toEqual([7, 14]);
  });
});

describe('what stands between the rounds', () => {
  it('how far eyes lie apart is no work', () => {
    const text = `${disc}Insert the eyes between round 1-2. 5sc apart.\nRnd 3: 14 sc (14)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 14 proven']);
  });

  it('the spiral is ended behind a full round', () => {
    const rows = '3. (Sc in next st, 2 sc in next st) repeat around until you reach the marked stitch.';
    for (const end of ['Skip next st, sl st. Remove stitch marker.', 'Skip next st, sl st in next st.']) {
      const text = `1. 7 sc in magic ring\n2. 2 sc in each st around. Mark the first stitch.\n${rows} ${end}\n`;
      expect(complaints(text)).toEqual([]);
      expect(made(text)).toEqual([7, 14, 21]);
    }
  });

  it('a change of colour tells where, and then the rows', () => {
    const rows = 'R1: Ch 9, sc in 2nd ch from hook and in each ch across (8)\nR2: ch 1, turn, sc in each st (8)\n';
    const text = `${rows}R3-R6: Change color (pink) at R3 and continue as R2\nR7: ch 1, turn, sc in each st (8)\n`;
    expect(made(text)).toEqual([8, 8, 8, 8, 8, 8, 8]);
  });
});

describe('beginnings', () => {
  it.each([
    'Ch 4 and loop to make a magic ring.\nRnd 1: 7 sc in ring. (7)',
    'R1: in a magic ring cast on 7 sc, join with sl st (7)',
    '5ch and join with slip stitch and make 3 ch counts as first treble and then do a further 6 treble into the circle (7)',
  ])('%s', (words) => {
    expect(complaints(`${words}\n`)).toEqual([]);
    expect(made(`${words}\n`).at(-1)).toBe(7);
  });

  it('"half treble" is a word of UK terms, and dc on a ch 3 is none', () => {
    const htr = 'Ch 4, join with ss.\nRound 1: 2ch, 9 half treble in ring, ss to top.\n';
    expect(compile(htr).terms).toBe('UK');
    const dc = 'Ch 2\nRound 1: Ch 3 (counts as a dc), 9 dc in 2nd ch from hook. Join.\n';
    expect(compile(dc).terms).toBe('US');
  });

  it('"1 sc in last un-worked st"', () => {
    expect(complaints(`${disc}Rnd 3: sc in next 13 sts, 2 sc in last un-worked st. (15)\n`)).toEqual([]);
  });
});

describe('two legs that are joined', () => {
  const leg = 'Rnd 1: 7 sc in magic ring (7)\nRnd 2: 7 inc (14)\nRnds 3-5: 14 sc (14)\n';
  const make =
    'Fasten off the first leg. Make the second leg and do not cut the yarn. In the next round, join the legs.\n';
  const body =
    'Rnd 6: Ch 3, align both legs, 1 sc in the last stitch of the 1st leg, 13 sc around the 1st leg, 3 sc in the chains, 14 sc around the 2nd leg, 3 sc on the other side of the chains (34)\nRnd 7: 34 sc (34)\n';

  it.each(['', 'Legs\n'])('of which only one is written out, below "%s"', (heading) => {
    expect(complaints(heading + leg + make + body)).toEqual([]);
    expect(worked(heading + leg + make + body, 'Rnd 6', 'Rnd 7')).toEqual([
      'Rnd 6 34 proven',
      'Rnd 7 34 proven',
    ]);
  });

  it('a stitch too few around one of them is found', () => {
    const text = leg + make + body.replace('14 sc around the 2nd', '13 sc around the 2nd');
    expect(complaints(text)).toEqual(['5 stitches-left']);
  });

  it('"Fasten off. Make a second leg and do not fasten off": the yarn of the second goes on', () => {
    const text = `Leg\n${leg}Fasten off. Make a second leg and do not fasten off.\nRnd 6: ch 2, sc in first leg and in next 13 sts around, sc in 2 ch, 14 sc around second leg, sc in 2 ch (32)\n`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('names and signs of these pieces', () => {
  it.each([
    ['(sc 3, sc 2 in last three sts) twice', 18],
    ['*1 sc into sc, 2 sc into sc (inc.1),* repeat from * to * to end', 18],
    ['sc in blp of each sc around', 12],
    ['*sc in next, sk-next st; rep from * around', 6],
    ['sc in next 4 sc, 3 sc in next sc, making the corner, sc in each st to end', 14],
    ['*2 sc in next sp, sc, rep from * around', 18],
  ])('%s', (words, count) => {
    const text = `Rnd 1: 6 sc in MR (6)\nRnd 2: 2 sc in each st (12)\nRnd 3: ${words} (${count})\n`;
    expect(complaints(text)).toEqual([]);
  });

  it('the number of the next part is no part of the row before it', () => {
    const text =
      '1. The Head (Pink) Round 1: 6 sc in MR = (6) Round 2: 6 inc = (12) Leave a tail and fasten off. 2. Ears (Make 2) Round 1: 5 sc in MR (5) Round 2: sc around (5)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 5, 5]);
  });

  it('a name that is given where it is made needs no definition', () => {
    const text =
      'Rnd 1: 12 dc in ring. (12)\nRnd 2: *1 dc in next st, ch 1, 1 dc in same st (“V” ST created), ch 1. Sk next st. Repeat from * to end. (6 “V” stitches)\n';
    expect(complaints(text)).toEqual([]);
  });
});

describe('lists of toys in numbers alone', () => {
  const toy =
    'R1: 6 sc in MR (6)\nR2: INC around. (12)\nR3: (1, INC) around (18)\nR4: 1, INC, 2, INC, 3, INC, 2, INC, 3, INC, 2 (23)\nR5: INC, 22 (24)\nR6: *2, dec* x 6 (18)\n';

  it('are stitches between the increases', () => {
    expect(complaints(toy)).toEqual([]);
    expect(made(toy)).toEqual([6, 12, 18, 23, 24, 18]);
  });

  it('a wrong number among them is found', () => {
    expect(complaints(toy.replace('1, INC, 2, INC, 3', '1, INC, 3, INC, 3'))).toEqual([
      '4 round-overrun',
    ]);
  });
});

describe('a ring that is filled', () => {
  it.each([
    'Ch 4, join.\nrnd 1: 4 ch (counts as 1 tr & 1 ch) *1 tr into ring, 1 ch rep from * to end, ss into 3rd ch. (8 tr & 8 1-ch sps)',
    'Make a magic ring.\nrnd 1: ch 1, *sc in ring, ch 3; rep from * around, join. (6 sc, 6 ch-3 sps)',
  ])('"to end" is as often as the count says, which proves nothing', (text) => {
    expect(complaints(text)).toEqual([]);
    expect(compile(text, { fixes: false }).rows[0]?.verdict).toBe('unchecked');
  });
});

describe('what is told beside the rows', () => {
  it('a decrease that everybody knows keeps its two stitches', () => {
    const text =
      'Stitch explanation;\nDecrease (sc2tog) – Insert hook into a st\nand draw up a loop. Insert hook into next st\nand draw up a loop.\nHEAD:\n1. row: magic ring and 7 sc into it.\n2. row: 2sc in each st around (14)\n3. row: (sc in each of next 5 sts, sc2tog)*2 (12)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 3')).toEqual(['Row 3 12 proven']);
  });

  it('the hook is no row', () => {
    const text =
      'Using your 5 mm (H) crochet hook (or size required for gauge):\nRnd 1: In a DMR (see notes) work 7 sc. [7 sc]\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([7]);
  });

  it('"U.K terminology used" states the terms', () => {
    expect(compile('U.K terminology used\nrnd 1: 3 ch, 9 tr in ring. (10)\n').terms).toBe('UK');
  });

  it.each(['Finish: sl st into next 3 st, tie off', 'Hanging loop: ch 6, skip next sc and sl st in second sc.'])(
    '%s',
    (line) => {
      expect(complaints(`${disc}Rnd 3: sc in each st.\n${line}\n`)).toEqual([]);
    },
  );

  it.each([
    'Join a new colour directly above a sc of Rnd 1. 1 ch, sc in each st (14)',
    'ch 1, sc in same st, scin next 13 sts (14)',
    'sl st in next st (middle st of 2 sc group from previous round), ch 1, sc in same st and in each st around (14)',
  ])('%s', (words) => {
    expect(complaints(`${disc}Rnd 3: ${words}\n`)).toEqual([]);
  });
});

describe('lists and endings of rounds', () => {
  it('"inc, sc around" is the whole list', () => {
    const text =
      'Row 1: Magic ring, 6 sc (6)\nRow 2: inc around (12)\nRow 3: inc, sc around (18)\nRow 4: sc, dec around (12)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 18, 12]);
  });

  it('"ending with sl st in turning chain" is the join', () => {
    const text =
      'Ch 4, join.\nRound 1: Ch 3 (counts as first dc here & throughout), 11 dc in ring. Join. (12)\nRound 2: Ch 3, *2 dc in next space, 1 dc in next space*, continue from * to * ending with sl st in turning chain. (18)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([12, 18]);
  });

  it.each([
    ['Decrease after every 5th stitch. (12)', 12],
    ['Decrease after every 5 sts (i.e. do 6th & 7th sts together) (12)', 12],
  ])('%s', (words, n) => {
    const text = `${disc}Rnd 3: ${words}\n`;
    expect(complaints(text)).toEqual([]);
    expect(made(text).at(-1)).toBe(n);
  });

  it('"inc after every 5th st" is left: in the fifth, or behind it?', () => {
    expect(complaints(`${disc}Rnd 3: inc after every 6th st (16)\n`)).toEqual(['3 unread']);
  });
});

describe('how a round of toys or bags begins', () => {
  it('"(Ch 3, dc), 2 dc in each st" holds both in the first', () => {
    const text =
      'Rnd 1: Ch 4, work 9dc in 4th ch from hook, join. (10dc)\nRnd 2: (Ch3, dc), work 2dc in each st around, join. (20dc)\n';
    expect(complaints(text)).toEqual([]);
  });

  it('a ch 3 that counts stands beside the stitches in the first chain', () => {
    const text =
      'Chain 2\nRound 1: Chain 3 (this counts as 1st dc). Make 9 dcs in 2nd chain from hook (to finish with 10 stitches).\nRound 2: do 2 dcs in every stitch (20 stitches).\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 20]);
  });

  it.each(['sc in 2nd ch and across', 'sc in 2nd ch from hook and across'])('%s (4)', (words) => {
    expect(complaints(`Row 1: Ch 5, ${words} (4)\n`)).toEqual([]);
  });
});

describe('what stands about the rounds', () => {
  it('"Make 4." tells of the part above it', () => {
    const text =
      'Head\n1st row: 6 sc in ring (6);\n2nd row: 6 inc (12), slip st, cut the yarn.\nLegs\nMake 4.\n1st row: 5 sc in ring (5);\n2nd row: 5 sc (5)\n';
    expect(complaints(text)).toEqual([]);
    expect(compile(text, { fixes: false }).rows).toHaveLength(2 + 4 * 2);
  });

  it('a count behind a note is the row\'s', () => {
    expect(worked('Rnd 1: 6 sc in ring.\nRnd 2: 6 inc – Note: pm on 1st sc (12)\n', 'Rnd 2')).toEqual([
      'Rnd 2 12 proven',
    ]);
  });

  it.each([
    'Foundation ring*: ch 3, sl st to join;\nRnd 1: ch 1, 6 sc in ring (6)',
    'Sc (single crochet) or UK (double crochet)\nRnd 1: 6 sc in magic ring (6)',
    'Rnd 1: 6 sc in magic ring. Rnd 1 will be on the inside when it is turned down. (6)',
    'Rnd 1: 6 sc in magic ring (6) Turn bootie right side out.',
    'Rnd 1: Ch 6. Being careful not to twist chain, join to first chain to form large ring. Ch 1, sc in each ch. (6)',
  ])('%s', (text) => {
    expect(complaints(`${text}\n`)).toEqual([]);
    expect(made(`${text}\n`)).toEqual([6]);
  });

  it('"(continue by second leg)" leads on to it, with the first half worked', () => {
    const text =
      'Legs (make two)\nStart with grey\n1) Magic ring, 6 sc (6)\n2) 6 inc (12)\n3-5) sc in each st around (12)\nCut the yarn.\n\nBody\nContinue with blue\n6) inc, 5 sc, 2 ch, (continue by second leg) 5 sc, 2 inc, 5 sc, 2 sc in the chains, 5 sc, inc (32)\n';
    expect(complaints(text)).toEqual([]);
    expect(worked(text, '6')).toEqual(['6 30 proven']);
  });
});

describe('where a piece or its other side begins', () => {
  const oval = '8 sc, 3 sc in the last chain, on the other side: 7 sc, inc (20)\nRnd 2: 20 sc (20)\n';

  it.each(['start in the 2nd chain from the hook:', 'in the 2nd chain from the hook:'])(
    '"%s" and "on the other side:" lead to work',
    (words) => {
      const text = `Chain 10.\nRnd 1: ${words} ${oval}`;
      expect(complaints(text)).toEqual([]);
      expect(made(text)).toEqual([20, 20]);
    },
  );

  it('"10 sc" there with nothing about the last chain all go into one', () => {
    expect(made('Ch 2.\nRnd 1: in the 2nd ch from hook: 8 sc, join (8)\n')).toEqual([8]);
  });

  it.each(['Foundation: Chain 10; work in spiral.', 'Snout\nFoundation chain: ch 10'])(
    '"%s" begins another piece',
    (words) => {
      const text = `Ear\n${disc}${words}\nRnd 1: start in the 2nd chain from the hook: ${oval}`;
      expect(complaints(text)).toEqual([]);
      expect(made(text)).toEqual([7, 14, 20, 20]);
    },
  );

  it('"Ties (make 2): Ch 30." is a part of its own', () => {
    const text = `${disc.trim()} Fasten off.\nTies (Make 2): Ch 30. Sl st in each ch across. Fasten off.\n`;
    expect(complaints(text)).toEqual([]);
    expect(compile(text, { fixes: false }).rows).toHaveLength(2 + 2);
  });

  it('"fix and cut the thread" is no work', () => {
    expect(complaints(`${disc}Rnd 3: sc in each st around (14); – fix and cut the thread.\n`)).toEqual([]);
  });

  it.each([5, 4])('"ch %i, skip first 3 sts" counts the one that the chain stands on', (n) => {
    const text = `${disc}Rnd 3: sc in next 13 sc, 2 sc in last sc, join (15)\nRnd 4: ch ${n}, skip first 3 sts, *dc in next st, ch ${n - 3}, skip next 2 sts; repeat from * around, join to 3rd ch of ch ${n} (5 dc)\n`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('words about the count and the way', () => {
  it('"= 24 sc" behind "on the second leg" is the count', () => {
    const text =
      'Legs:\nR1: 6 sc inside a magic ring = 6 sc\nR2: 6 inc = 12 sc\nFasten off the first leg.\nMake the second leg the same way, but do not fasten off.\nIn the next round, join the legs.\nR3: 12 sc on the first leg, 12 sc on the second leg = 24 sc.\nR4: * 3 sc, 1 inc * around = 30 sc\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([6, 12, 24, 30]);
  });

  it('"then 2 stitches in each stitch around" is work, and no count', () => {
    const text =
      'Ch 5, join to form a ring.\nRnd 1: ch 2 (counts as first st), 9 hdc in the ring. Join.\nRnd 2: ch 2 (counts as first st). Work one stitch in same st as joining, then 2 stitches in each stitch around. Join.\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([10, 20]);
  });

  it('"Worked in a spiral, …" is no row', () => {
    const text = `Worked in a spiral i.e. do not join at the end of each round, but go on with a sc into next st.\n${disc}`;
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([7, 14]);
  });
});

describe('words that look like rows or counts', () => {
  it('"rnd(s) = round (s)" is a short form', () => {
    expect(complaints(`rnd(s) = round (s)\n${disc}`)).toEqual([]);
    expect(made(`rnd(s) = round (s)\n${disc}`)).toEqual([7, 14]);
  });

  it('"it should be the last 2 sc of the round" counts nothing', () => {
    const text = `Rnd 1: 7 sc in magic ring and mark the last. It should be the last 2 sc of each round.\nRnd 2: 2 sc in each st around. (14)\n`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('"every 3rd st" on a round of twelve', () => {
  const rnd = (words: string): string =>
    `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc in each st around. (12)\nRnd 3: ${words}\n`;
  it.each([
    ['2 sc in every 3rd st around. (16)', 16],
    ['2 sc in every 5th st around. (14)', 14],
    ['2 sc in every other st around. (18)', 18],
    ['2 sc in every 3rd st to last 3 sts, sc in last 3 sts. (15)', 15],
    ['Sc in every third st around. (4)', 4],
  ])('%s', (words, made) => {
    expect(worked(rnd(words), 'Rnd 3')).toEqual([`Rnd 3 ${made} proven`]);
  });
  it('a wrong count is told', () =>
    expect(complaints(rnd('2 sc in every 3rd st around. (15)'))).toEqual(['3 count-mismatch']));
});
