/**
 * Rounds as blogs tell them: to the maker, in steps, with counts in sentences. Each reads as the plain round
 * does, and a number that is one off is told.
 */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const CIRCLE = 'US terms\n\nRound 1: Ch 1, 12 sc in magic ring, join. (12 sc)\n\n';

describe('a round of 24 sc upon 12', () => {
  it.each([
    'In round 2, you chain 1 and work 2 sc in each stitch around. Join. (24 sc)',
    'For round 2 you will chain 1 and then work 2 sc in each stitch around. Join. (24 sc)',
    'Round 2: You will now chain 1 and work 2 sc in each stitch. Join. (24 sc)',
    "Round 2: You're going to be working 2 single crochet into every stitch. Join. (24 sc)",
    "Round 2: Into every single stitch you'll place 2 sc. Join. (24 sc)",
    'Round 2: Time to increase! Chain 1, work 2 sc in each stitch around. Join. (24 sc)',
    "Round 2: We're growing here. So 2 sc in each stitch around. Join. (24 sc)",
    'Round 2\nIn this round, you will work in every stitch. Chain 1, then 2 sc in the next stitch. Repeat this in every stitch around. Join. (24 sc)',
    'Rnd 2: Working in each st around: 2 sc. Join. (24 sc)',
    'Round #2: Chain 1, 2 sc in each stitch. Join. (24 sc)',
    'Round 2 (24 sc)\nChain 1, 2 sc in each stitch. Join.',
    'Round 2 [24 sc]: Chain 1, 2 sc in each stitch. Join.',
    'Round 2: 2 sc in each stitch. Join.\nYou will now have 24 sc in your circle. [24 sc]',
    'Round 2: 2 sc in each stitch. Join.\n(this makes 24 sc)',
    'Round 2: 2 sc in each stitch (24 sc all together). Join.',
    'Round 2: 2 sc in each of your 12 stitches so you end up with 24 sc. Join.',
    'Round 2: Standing sc in any st, 1 more sc in that stitch, 2 sc in each of next 11 sts. Join. (24 sc)',
    'Round 2\n* Ch 1\n* 2 sc in each stitch\n* Join with a sl st\n* 24 sc in total',
    'Round 2:\n- With colour B, ch 1\n- 2 sc in each stitch\n- Pull the yarn snug and join with sl st in first sc\n- (24 sc)',
    'Round 2\nStep 1: Chain 1.\nStep 2: Work 2 sc in each stitch around.\nStep 3: Join with a slip stitch. (24 sc)',
  ])('%s', (round) => {
    expect(complaints(CIRCLE + round)).toEqual([]);
    expect(worked(CIRCLE + round, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    const wrong = round.replace(/24(?!.*24)/s, '25');
    expect(complaints(CIRCLE + wrong)).not.toEqual([]);
  });

  it.each([
    'For rows 2-9, ch 3 counts as the first dc.',
    'In round 2 the stitches are worked in back loops.',
    'For row 2 you may use a larger hook.',
  ])('%s is no round', (note) => {
    const text = `${CIRCLE}${note}\n\nRound 2: 2 sc in each stitch. Join. (24 sc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  });
});

describe('six spaces upon 12 sc', () => {
  it.each([
    'Chain 1. Sc in the next stitch, ch 2, skip a stitch. Repeat this 6 times in total. Join.',
    'Chain 1. Sc in the next stitch, ch 2, skip a stitch. Continue this pattern to the end of the round and join.',
    '• Chain 1.\n• *Sc in the next stitch, ch 2, skip a stitch.* Repeat from * to * 5 more times.\n• Join.',
  ])('%s', (round) => {
    const text = (n: number): string => `${CIRCLE}Round 2: The Spaces\n${round}\n(${n} sc, ${n} ch-2 spaces)\n`;
    expect(complaints(text(6))).toEqual([]);
    expect(worked(text(6), 'Rnd 2')).toEqual(['Rnd 2 6 proven']);
    expect(complaints(text(7))).not.toEqual([]);
  });
});

it('a petal that begins and ends on its stitch, and petals counted as they are made', () => {
  const list = `${CIRCLE}Round 2: In each st work: sl st, ch 2, 2 dc, ch 2, sl st. (24 dc)\n`;
  expect(complaints(list)).toEqual([]);
  expect(worked(list, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  const making = `${CIRCLE}Round 2: *Ch 2, 2 dc in same st, ch 2, sl st in next st; rep from * making 12 petals in all.\n`;
  expect(worked(making, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
});

describe('a square in steps', () => {
  const square = (sides: number): string => `US terms

Round 1: The Middle
• Make a magic ring.
• Chain 3 (counts as a dc here and throughout).
• Work 2 dc into the ring, then chain 2.
• *3 dc into the ring, ch 2.* Repeat from * to * 2 more times.
• Slip stitch into the top of the ch 3.
Total: 12 dc and 4 corner spaces.

Round 2: Four Corners
• Slip stitch over to the first corner space.
• Chain 3, 2 dc, ch 2, 3 dc all into this same space. Chain 1.
• In each of the next 3 corner spaces, work 3 dc, ch 2, 3 dc. Chain 1 after each corner.
• Slip stitch into the top of the ch 3.
Total: 24 dc, 4 corner spaces and ${sides} side spaces.
`;
  it('makes the chain after each corner, and counts side spaces beside the corners', () => {
    expect(complaints(square(4))).toEqual([]);
    expect(worked(square(4), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven']);
    expect(complaints(square(5))).not.toEqual([]);
  });
});

it('"5 ch-2 points" are spaces of two chains, "make a loop" that is worked into is the ring', () => {
  const star = (n: number): string =>
    `US terms\n\nRnd 1: Make a loop (magic ring), *sc, ch 5* 5 times into the loop. Join.\n(5 sc, 5 ch-5 loops)\nRnd 2: Sl st into loop, ch 1, in each loop work (sc, hdc, dc, ch 2, dc, hdc, sc), join.\n30 sts, ${n} ch-2 points\n`;
  expect(complaints(star(5))).toEqual([]);
  expect(worked(star(5), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 5 proven', 'Rnd 2 30 proven']);
  expect(complaints(star(6))).not.toEqual([]);
});

describe('what is told around the work', () => {
  it('a sentence that announces the round makes nothing', () => {
    const text = (n: number): string =>
      `US terms\n\nIn round 1 you will make a ring and work 12 dc into it.\nStart with a magic ring. Chain 3, which counts as your first double crochet, and then work 11 more double crochet into the ring. Join. You should have ${n} double crochet.\n`;
    expect(complaints(text(12))).toEqual([]);
    expect(worked(text(12), 'Rnd 1')).toEqual(['Rnd 1 12 proven']);
    expect(complaints(text(13))).not.toEqual([]);
  });

  it('an order behind what is said of the chain is worked', () => {
    const text = (n: number): string =>
      `US terms\n\nRound 1: Work 3 ch as 1 dc and then work 11 more dc into the ring. Join. (${n} dc)\n`;
    expect(complaints(text(12))).toEqual([]);
    expect(complaints(text(14))).not.toEqual([]);
  });

  it('a chain that is half of the first cluster is no stitch', () => {
    const text = (n: number): string =>
      `US terms\n\nCh 6, sl st to form ring.\nRound 1: Ch 2 (counts as first half of dc2tog), dc in ring, ch 2, (dc2tog, ch 2) 5 times. Join. (${n} ch-2 sps, ${n} sts)\nRound 2: Ch 1, 3 sc in each ch-2 sp. Join. (18 sc)\n`;
    expect(complaints(text(6))).toEqual([]);
    expect(complaints(text(7))).not.toEqual([]);
  });

  it('the foot of a page within a row, and a count broken in its list', () => {
    const text = (n: number): string => `US terms

Rnd 1. Ch 4, sl st to form ring. Ch 3 (counts
as dc), 3 dc in ring, ch 3, *4 dc in ring, ch 3*,
rep from * to * once more. Join w sl st to
top of ch 3. 12 dc, 3 ch-3 sps
Rnd 2. Sl st in next 3 dc and in ch-3 sp. Ch
3, (3 dc, ch 3, 4 dc) in same sp, ch 1, *(4 dc,

Page 3 of 5                        (c) Nobody in particular

ch 3, 4 dc) in next ch-3 sp, ch 1*, rep from *
to * once more. Join. 24 dc, 3 ch-3 sps, ${n} ch-1
sps
`;
    expect(complaints(text(3))).toEqual([]);
    expect(worked(text(3), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven']);
    expect(complaints(text(4))).not.toEqual([]);
  });
});

describe('sides and corners of a square upon 12 sc', () => {
  it.each([
    'Ch 1, (sc, ch 2, sc) in same st, sc in next 2 sts. Do the same on the other three sides. Join.',
    'Ch 1, (sc, ch 2, sc) in same st, sc in next 2 sts. Repeat this for all four sides. Join.',
    'Ch 1. *(Sc, ch 2, sc) in next st, sc in next 2 sts*. Do this 4 times in total. Join.',
  ])('%s', (round) => {
    const text = (n: number): string => `${CIRCLE}Round 2: ${round} (${n} sc and 4 corner spaces)\n`;
    expect(complaints(text(16))).toEqual([]);
    expect(worked(text(16), 'Rnd 2')).toEqual(['Rnd 2 16 proven']);
    expect(complaints(text(17))).not.toEqual([]);
  });

  it('over how many sentences "the other sides" go back is not told', () => {
    const text = `${CIRCLE}Round 2: Ch 1. (Sc, ch 2, sc) in same st. Sc in next 2 sts. Do the same on the other three sides. Join. (16 sc)\n`;
    expect(worked(text, 'Rnd 2')).not.toEqual(['Rnd 2 16 proven']);
  });
});

it.each([
  '*Ch 4, work back along the chain: sl st in 2nd ch from hook, sc in next ch, hdc in next ch. Skip next sc, sl st in next sc. Repeat from * 5 more times.',
  'Make 6 petals as follows: *ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, sl st in next 2 sc. Repeat from * 5 times.',
  'And again work *ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, skip next sc, sl st in next sc*. Do this 6 times.',
])('petals along a chain: %s', (petals) => {
  const text = `${CIRCLE}Round 2: ${petals} (6 petals)\n`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2')[0]).toMatch(/^Rnd 2 12 /);
});

describe('what belongs to the yarn, the corner and the way of working', () => {
  it.each([
    '2 sc into each sc of last round, join with slip st to first sc - drawing through the next colour. (24 sc)',
    '2 sc into each sc of last round, drawing through next colour. Join. (24 sc)',
    '2 sc into each sc, working into the back 2 loops. Join. (24 sc)',
  ])('%s', (round) => {
    const text = `${CIRCLE}Round 2: ${round}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
    expect(complaints(text.replace('24 sc', '25 sc'))).not.toEqual([]);
  });

  it.each([
    '*make 1st corner, ch 4, skip 2 sts, sc in next st*',
    '*make corner ch 4, skip 2 sts, sc in next st*',
    '*sc in next st, make 2nd corner ch 4, skip 2 sts*',
  ])('%s', (pass) => {
    const text = (n: number): string =>
      `${CIRCLE}Round 2: Ch 1, ${pass}, repeat from * to * around. Join. (${n} sc, ${n} ch-4 sps)\n`;
    expect(complaints(text(4))).toEqual([]);
    expect(worked(text(4), 'Rnd 2')).toEqual(['Rnd 2 4 proven']);
    expect(complaints(text(5))).not.toEqual([]);
  });

  it('colours by the short forms of the list of materials', () => {
    const text = (n: number): string => `US terms

MATERIALS
Thread in dark red (DR), cream (Cr) and moss green (MG), 2 mm hook.

PATCH
Row 1: With DR, ch 11, sc in 2nd ch from hook, sc in next 4 ch, Cr sc in next 5 ch, turn. (10 sc)
Row 2: Ch 1, Cr sc in next 3 sts, MG sc in next 4 sts, DR 3 sc, turn. (${n} sc)
`;
    expect(complaints(text(10))).toEqual([]);
    expect(worked(text(10), 'Row 1', 'Row 2')).toEqual(['Row 1 10 proven', 'Row 2 10 proven']);
    expect(complaints(text(11))).not.toEqual([]);
  });

  it('spaces told without those within the V-stitches are not held against all', () => {
    const text = (n: number): string =>
      `${CIRCLE}Round 2: *(Dc, ch 1, dc) in next st, ch 1, skip 1 st; rep from * 5 times more. Join. (${n} dc, 6 ch-1 spaces, not including those of the pairs)\n`;
    expect(complaints(text(12))).toEqual([]);
    expect(complaints(text(13))).not.toEqual([]);
  });
});

describe('what pages and old leaflets have', () => {
  it('the numbers of pages between the rows are no counts', () => {
    const text = (n: number): string => `US terms

Ivy rose
1
Petals
ch 36
ROW 1: dc in 6th chain from hook, *ch 3, skip 1 ch, dc in next
ch*, repeat from * to * to end of chain 36.
ROW 2: ch 3, turn, in each ch-3 loop work 4 dc.
2
ROW 3: ch 1, turn, sc in each st across. (${n} sc)
Fasten off.
Roll up the strip and sew.
Sew on a pin.
3
Leaf
ch 6
Sc in 2nd ch from hook, hdc in next ch, dc in next ch, hdc in next ch, sc in last ch.
`;
    expect(complaints(text(60))).toEqual([]);
    expect(worked(text(60), 'Row 1', 'Row 2', 'Row 3')).toEqual([
      'Row 1 17 unstated',
      'Row 2 60 unstated',
      'Row 3 60 proven',
    ]);
    expect(complaints(text(61))).not.toEqual([]);
  });

  it.each([
    ['In each st work sc, ch 1. Join. (12 sc, 12 ch-1 sps)', 12],
    ['2 sc in each st. Cinch the ring closed. Join. (24 sc)', 24],
    ['*Work off the next 2 sc as 1 sc (a dec), sc in next sc. Repeat from * around. (8 sc)', 8],
  ] as const)('%s', (round, n) => {
    const text = `${CIRCLE}Round 2: ${round}\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual([`Rnd 2 ${n} proven`]);
    expect(complaints(text.replace(`(${n} sc`, `(${n + 1} sc`))).not.toEqual([]);
  });
});
