/**
 * Hats, mittens, baskets and toys as makers tell them: openings gone round from either side, rounds in so
 * many stitches, chains that only talk tells of. Examples are invented; meanings are common practice.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

const mitten = (thumb: string): string => `Frost mitten (US terms)

Hand
Rnd 1: Ch 26, join with sl st in first ch. Ch 1, sc in each ch, join. (26)
Rnds 2-4: Ch 1, sc in each sc, join. (26)
Rnd 5: Ch 1, sc in next 8 sc, ch 6, skip next 6 sc, sc in next 12 sc, join. (26)
Rnd 6: Ch 1, sc in next 8 sc, sc in each of 6 ch, sc in next 12 sc, join. (26)
Rnd 7: Ch 1, sc in each sc, join. Fasten off. (26)

Thumb
${thumb}
Rnd 2: Ch 1, sc in each sc, join. (12)
`;

describe('a thumb that begins along the chain over its opening', () => {
  it.each([
    'Rnd 1: Join yarn in first ch, ch 1, sc in each of 6 ch, sc in 6 skipped sts, join. (12)',
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 6 skipped sts, join. (12)',
    'Rnd 1: Join yarn, 6 sc in the underside of ch-6, sc in 6 skipped sts. (12)',
  ])('%s', (thumb) => {
    const text = mitten(thumb);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 12 proven']);
    expect(complaints(text)).toEqual([]);
  });

  it.each([
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 6 skipped sts, join. (13)',
    'Rnd 1: Sc in underside of 6 ch, sc in each of the 7 skipped sts, join. (12)',
    'Rnd 1: Sc in underside of 5 ch, sc in each of the 6 skipped sts, join. (12)',
  ])('%s is told', (thumb) => {
    expect(complaints(mitten(thumb))[0]).toMatch(/^11 /);
  });
});

it('a joined round that is turned behind a chain goes along that chain first', () => {
  const text = `Cuff (US terms)
Rnd 1: Ch 20, sc in each ch, join with sl st in first sc. (20)
Rnd 2: Ch 1, turn; sc in next 18 sc, leaving last 2 sts unworked. (18)
Rnd 3: Ch 1, turn; sc in next 18 sc, ch 2, sl st in first sc. (20)
Rnd 4: Ch 1, turn; sc in next 2 ch, sc in next 18 sc, join. (20)\n`;
  expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 20 proven']);
  expect(complaints(text)).toEqual([]);
});

it('"24 dc around" are so many in all', () => {
  const text = `Cuff (US terms)
R1: Ch 24, sl st into first chain to form round, 24 dc around, sl st into first stitch to join.
R2: 24 dc around, sl st into first stitch to join.
R3: 22 dc around, sl st into first stitch to join.\n`;
  expect(made(text)).toEqual([24, 24, 22]);
  expect(complaints(text)).toEqual(['4 stitches-left']);
});

it('a chain joined "in the round" is a ring, and its join is a place', () => {
  const text = `Band (US terms)
Ch 14 and join in the round, taking care not to twist the chain.
Rnd 1: Sc in the same ch you sl st'ed into, and in each ch around. (14)
Rnd 2: Sc in the same st you joined in, then in each sc. (14)
Rnd 3: Sc in nt 6 sc, 2 sc in nt sc, sc in nt 7 sc. (15)\n`;
  expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
    'Rnd 1 14 proven',
    'Rnd 2 14 proven',
    'Rnd 3 15 proven',
  ]);
});

describe('what stands above the first row', () => {
  it.each([
    'Bodice: Starting at the waist with white, ch13.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (12)',
    'Abbreviations\nCh: chain\nSc: single crochet\nWritten pattern\nCh 13,\nRow 1: Sc in 2nd ch from hook and in each ch across. (12)',
    'Place a marker at the start of each row, leave a long tail, make a slip knot, ch 2 Row 1: 12 sc in 2nd ch from hook. (12)',
  ])('%s', (text) => {
    expect(worked(`${text}\n`, 'Row 1')).toEqual(['Row 1 12 proven']);
  });
});

it('yarn that is joined to go on changes the colour of the same piece', () => {
  const text = `Pot (US terms)
Body
Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each sc. (12)
Stripes:
Join colour B and continue working sc in each stitch around until the pot measures 10 cm.
Rim
Rnd 8: Sc in next 2 sc, ch 4, skip next 2 sc, sc in next 8 sc. (10)\n`;
  expect(worked(text, 'Rnd 8')).toEqual(['Rnd 8 10 proven']);
});

it('"(1 dec, 4 sc) (15)" and "dc2tog, twice" are work', () => {
  const text = `Cap (US terms)
Rnd 1: 9 sc in magic ring. (9)
Rnd 2: 2 sc in each sc. (18)
Rnd 3: (1 dec, 4 sc) (15)
Rnd 4: 5 sc, dec, dec, 6 sc. (13)
Rnd 5: (sc in next 4 sc, sc2tog), twice, sc in last st. (11)\n`;
  expect(complaints(text)).toEqual([]);
  const flap = `Flap (US terms)\nRow 1: Ch 5, sc in 2nd ch from hook and in each ch. (4)\nRow 2: Ch 1, turn, sc2tog, twice. (2)\n`;
  expect(worked(flap, 'Row 2')).toEqual(['Row 2 2 proven']);
});

it('"join yarn, with sc in unworked st" makes that stitch', () => {
  const text = mitten(
    'Rnd 1: With RS facing, join yarn, with sc in any unworked sc of Rnd 4, work 11 sc evenly spaced around thumb opening, join. (12)',
  );
  expect(complaints(text)).toEqual([]);
});

it('ten dc in the second chain speak for no terms', () => {
  const text = `Hat
Round 1: Ch 2, 10 dc in 2nd ch from hook. Join. (10)
Round 2: Ch 1, sc in each st around. Join. (10)
Round 3: Ch 1, hdc in each st around. Join. (10)\n`;
  expect(complaints(text)).toEqual([]);
});

describe('a round laid flat and closed', () => {
  const limb = (last: string): string =>
    `Otter arm (US terms)\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc around. (12)\nRnds 3-9: Sc around. (12)\n${last}\n`;
  it.each([
    ['Rnd 10: Fold flat, 6 sc through both layers to close. (6)', 6],
    ['Rnd 10: Working through both layers, sc in next 5 sts. (5)', 5],
    ['Flatten the arm and 6 sc through both layers. (6)', 6],
    ['Fold the arm flat and sc through both sides to close (6 sc). Fasten off.', 6],
  ])('%s', (last, n) => {
    const text = limb(last);
    expect(complaints(text)).toEqual([]);
    expect(made(text).at(-1)).toBe(n);
  });

  it('with a number that no round of twelve is closed by', () => {
    expect(worked(limb('Rnd 10: Fold flat, 8 sc through both layers. (8)'), 'Rnd 10')).toEqual([
      'Rnd 10 0 unchecked',
    ]);
    expect(complaints(limb('Rnd 10: Fold flat, 6 sc through both layers. (7)'))).toEqual(['5 count-mismatch']);
  });
});

describe('the last stitch stands in the foot of the start chain', () => {
  const bowl = `Ch 4, join with a sl st to form a ring. (US terms)
Rnd 1: Ch 3, 2 dc in each of next 3 ch, 1 dc in last st, join.
Rnd 2: Ch 3, 2 dc in each of next 7 dc, 1 dc in next st, join. (16)
Rnd 3: Ch 3, * 1 dc in next st, 2 dc in next st, repeat from * around, ending 1 dc in next st, 1 dc in last st, join. (24)\n`;
  it('in all rounds of the piece', () => {
    expect(worked(bowl, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
      'Rnd 1 8 unstated',
      'Rnd 2 16 proven',
      'Rnd 3 24 proven',
    ]);
    expect(complaints(bowl)).toEqual([]);
  });
  it('and a wrong count is still told', () => {
    expect(complaints(bowl.replace('(16)', '(17)')).length).toBeGreaterThan(0);
    expect(complaints(bowl.replace('(24)', '(25)'))).toEqual(['4 count-mismatch']);
  });
});

it('a few stitches at the end of a leg lead the yarn to its place', () => {
  const leg = (last: string): string =>
    `Leg (US terms)\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc around. (12)\nRnd 3: 12 sc (12)\nRnd 4: ${last}\n`;
  expect(complaints(leg('5 sc (5)'))).toEqual([]);
  expect(complaints(leg('5 sc (6)'))).not.toEqual([]);
  expect(complaints(leg('3 dec (3)'))).toEqual(['5 stitches-left']);
  expect(complaints(leg('10 sc (10)'))).toEqual(['5 stitches-left']);
});

it('a legend in noughts, talk below a star and pieces that are joined later are no work', () => {
  const text = `How rows are written (US terms)
Rnd 0 and Rnd 0: 0 sc; → 2 identical rounds
Rnd 0: *0 sc, 1 dec* = XX sc; → repeat to the end
Arms
Rnd 1: 6 sc in magic ring. (6)
Rnd 2: Inc around. (12)
*At this point, I like to fasten off so there is no seam between the two.
Rnd 3: Sc around. (12) Fasten off. Do not sew the arms; they will be joined directly to the body later. Legs and body follow, first the left leg.\n`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 12 proven']);
});

it('row ends, seams and finish-off stitches by the words of makers', () => {
  const cuff = `Cuff (US terms)
Row 1: Ch 9, sc in 2nd ch from hook and in each ch across. (8)
Rows 2-20: Ch 1, turn; sc in each sc across. (8)
Row 21: Ch 1, turn; aligning sts of Rows 1 and 20 and working through both thicknesses, sc in each st across. (8)
Rnd 22: Ch 1, rotate piece to work along row ends of cuff, sc in each row, join with sl st in first sc. (21)
Rnd 23: Ch 1, sc in each sc. (21)\n`;
  expect(complaints(cuff)).toEqual([]);
  expect(worked(cuff, 'Row 21', 'Rnd 23')).toEqual(['Row 21 8 proven', 'Rnd 23 21 proven']);
  const legs = `Legs (2) (US terms)
Rnd 1: 7 sc into magic ring; (7)
Rnd 2: 7 inc = 14 sc;
Make the second leg and do not cut the yarn.
Join the legs:
Rnd 3: Ch 3, align both legs, 1 sc in the invisible fasten-off stitch of the 1st leg, 13 sc around the 1st leg, 3 sc in the ch, 14 sc around the 2nd leg, 3 sc on the other side of the ch = 34 sc.\n`;
  expect(worked(legs, 'Rnd 3')).toEqual(['Rnd 3 34 proven']);
  const start = `Hat (US terms)\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc into each of your beginning 6 sc for a total of 12 stitches.\n`;
  expect(worked(start, 'Rnd 2')).toEqual(['Rnd 2 12 proven']);
});

describe('several rows in the line of a name', () => {
  it.each([
    'Body: R1 6 sc in MR (6) R2 inc x 6 (12) R3 (sc, inc) x 6 (18) R4-8 sc 18 (18)',
    'Arms (make 2): R1 6 sc in MR (6), R2 inc x6 (12), R3 (sc, inc) x 6 (18), R4-8 sc 18 (18)',
    'Legs (x2) - R1. 6 sc in MR (6); R2. inc around (12); R3. (sc, inc) x 6 (18); R4-R8. sc around (18). Fasten off.',
  ])('%s', (line) => {
    const text = `Field mouse (US terms)\n${line}\n`;
    expect(worked(text, 'R1', 'R2', 'R3', 'R4', 'R8').join()).toBe(
      'R1 6 proven,R2 12 proven,R3 18 proven,R4 18 proven,R8 18 proven',
    );
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('(12)', '(13)'))).toEqual(['2 count-mismatch']);
  });
});

it('"dc evenly around" without a number is one in each stitch of a round', () => {
  const text = `Hat (US terms)
Rnd 1: 10 dc in magic ring. (10)
Rnd 2: Ch 1, 2 dc in each st around, join. (20)
Rnds 3-5: Ch 1, dc evenly around, join.
Rnd 6: Ch 1, sc evenly around, join. (20)\n`;
  expect(made(text)).toEqual([10, 20, 20, 20, 20, 20]);
  expect(complaints(text)).toEqual([]);
  expect(worked(text.replace('join. (20)\n', 'join. (24)\n').replace('evenly around, join. (20)', 'evenly around, join. (24)'), 'Rnd 6')).not.toEqual(['Rnd 6 20 proven']);
});

it('lengths told in two ways, either of two numbers of times, footnotes and yarn that goes on', () => {
  const text = `Ears (US terms)
Rnd 1: 4 sc in magic ring. (4)
Rnd 2: 2 sc in each st. (8)
*do not tie off - continue to the big ear
Finish off small ear here. Continue for big ear.
Rnd 3: Sc around. (8)
Rnds 4-6: Repeat Round 3 two/three times – OR until it’s 4 inches in length – or you have the length you desire;
Repeat Rnd 3 until ear measures 8 cm from the tip of the toe, or 1 cm less than desired length.
Rnd 7: Work 8 sc evenly around. If you've divided your brim into 4 sections, you can evenly work 2 sc into each section. (8)\n`;
  expect(complaints(text)).toEqual([]);
});

describe('mittens as beginners write them', () => {
  const mitten = `With a 5 mm hook, ch 2. (US terms)
Round 1: Work eight sc in the second chain from hook. Do not turn
Round 2: Work two sc in each sc around (16 sc)
Round 3: Work (one sc, two sc) in next two sc. Repeat around (24 sc)
Round 4: one sc in each of next five sc, chain 6, skip next six sc, then work one sc in each remaining sc around (24 sc)
Round 5: sc around (24)
`;
  it('lists over several places, and a chain over the opening that counts', () => {
    expect(complaints(mitten)).toEqual([]);
    expect(worked(mitten, 'Rnd 3', 'Rnd 4', 'Rnd 5')).toEqual([
      'Rnd 3 24 proven',
      'Rnd 4 18 proven',
      'Rnd 5 24 proven',
    ]);
  });
  it.each([
    ['(24 sc)\nRound 4', '(25 sc)\nRound 4', 4],
    ['around (24 sc)\nRound 5', 'around (25 sc)\nRound 5', 5],
    ['chain 6', 'chain 7', 5],
  ])('%s to %s', (from, to, line) => {
    expect(complaints(mitten.replace(from, to))[0]).toMatch(new RegExp(`^${line} `));
  });
});

it('gaps between stitches, labels glued to their rows, rings with a base, yarn that is inserted', () => {
  const text = `STITCHES & ABBREVIATIONS (US terms)
sc inc – single crochet increase, 2 single crochet in one stitch

Hat

Round 1: Magic Circle with a base of 6 sc (6 sts)
Round 2: Sc inc in each st around (12 sts)
Round 3: Ch 2, hdc in each sc, join with a slip stitch. (12)
Round 4: Ch 1, sc in spaces between hdc from previous round, join with a slip stitch. (12) Fasten off.
Round 5: Count 5 sts from the start and insert new yarn. Sc in next 12 sts. (12)

Ears
- 1. 6sc in MR (6)
- 2. 6inc (12)
- 3.12sc
- 4. 12sc (12)\n`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 4', '3', '4')).toEqual([
    'Rnd 1 6 proven',
    'Rnd 2 12 proven',
    'Rnd 4 12 proven',
    '3 12 unstated',
    '4 12 proven',
  ]);
});

describe('legs joined, told in other words', () => {
  const legs = (join: string) => `Leg (make 2)
Start with black yarn:
R1: mc with 6 st = 6
R2: (inc) x 6 = 12
With white yarn:
R3-5: 12 sc

${join}
R6: sc in next 12 st of the first leg, sc in next 3 ch, sc in next 12 st of the second leg, sc in next 3 ch (opposite side) = 30
R7: 30 sc (30)\n`;
  it.each([
    'Stuff the legs and continue crocheting the body starting from the second leg.\nCrochet 3 ch from the second leg and join it with the first one with sl st.',
    'Ch 3 and join Leg 1.',
  ])('%s', (join) => {
    const text = legs(join);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'R1', 'R6', 'R7')).toEqual([
      'R1 6 proven',
      'R6 30 proven',
      'R7 30 proven',
    ]);
  });
  it('a ring told with one stitch too few', () => {
    const text = legs('Ch 3 and join Leg 1.').replace('6 st = 6', '5 st = 6');
    expect(complaints(text)[0]).toMatch(/^3 /);
  });
  it('a row that is left on the way', () => {
    const text = 'Rnd 1: 6 sc in MR (6)\nRnd 2: 3 sc. Do not finish row.\n';
    expect(complaints(text).filter((c) => c.includes('unread'))).toEqual([]);
  });
});

it('legends without numbers, and glossaries with the abbreviation last', () => {
  const text = `Examples of how to read this pattern:
R0: XX sc; → Single round (work the indicated stitches)
R0 and R0 – XX sc; → 2 identical rounds
R0: 0 sc, 1 inc, (00 sc, 2 inc) 5x, 0 sc = XX sc; → Round with repetitions
R0: * 1 sc, 1 inc * (XX); → Round with repetition across the entire round
Stitch Glossary:
Increase = inc
Slip Stitch = sl st
Single Crochet = sc
Arms (2)
R1: 6 sc inside of a magic ring
R2: * 2 sc, 1 inc * to eor = 8 sc\n`;
  expect(complaints(text)).toEqual([]);
  expect(compile(text).findings.filter((f) => f.code === 'special-unused')).toEqual([]);
});

describe('"(18 loops)" of a round without chains counts its stitches', () => {
  const ROUNDS = '1: 6 sc in magic ring (6 loops)\n2: 6 inc (12 loops)\n';
  it('and is met', () => {
    expect(complaints(ROUNDS)).toEqual([]);
    expect(worked(ROUNDS, '2')).toEqual(['2 12 proven']);
  });
  it('or not', () => expect(complaints(ROUNDS.replace('(12', '(13'))).toEqual(['2 count-mismatch']));
});

it('"RS Round 1:", "WS Round 2:" bear their side, and begin no parts', () => {
  const text =
    'RS Round 1: 10 sc in magic ring, join, turn. (10)\nWS Round 2: Ch 1, 2 sc in each st, join, turn. (20)\n';
  const { rows } = compile(text, { fixes: false });
  expect(rows.map(({ label, verdict }) => `${label} ${verdict}`)).toEqual([
    'Rnd 1 proven',
    'Rnd 2 proven',
  ]);
  expect(new Set(rows.map(({ part }) => part)).size).toBe(1);
  expect(rows.map(({ part }) => part)).not.toContain('RS');
});
