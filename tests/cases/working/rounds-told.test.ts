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
