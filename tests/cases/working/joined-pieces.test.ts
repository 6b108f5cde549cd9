/**
 * Legs into a body, arms into a round: the row that brings pieces together is proven like any other.
 * The sums are common practice: both rings and the chain between them twice.
 */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const legs = (row: string): string => `Fern the hedgehog (US terms)

Leg (make 2)
Rnd 1: 6 sc in magic ring. (6)
Rnd 2: Inc around. (12)
Rnds 3-6: Sc in each st around. (12)
Fasten off the first leg. Do not fasten off the second leg.

Body
${row}`;

describe('two legs of 12', () => {
  it.each([
    ['Rnd 1: From the second leg, ch 4, join to first leg, sc in each of its 12 sts, sc in 4 ch, sc in 12 sts of second leg, sc in other side of 4 ch. (32)', 32],
    ['Rnd 1: Ch 3, sc in each st of first leg (12), sc in each ch (3), sc in each st of second leg (12), sc in each ch (3). (30)', 30],
    ['Rnd 1: Ch 3, join to first leg with sl st, sc in next 12 sts, sc in next 3 ch, sc in next 12 sts of second leg, sc along other side of ch. (30)', 30],
    ['Rnd 1: Ch 3, join to first leg with a sc, sc in next 11 sts of first leg, sc in next 3 ch, sc in next 12 sts of second leg, sc in other side of 3 ch. (30)', 30],
    ['Ch 3. Join to first leg.\nRnd 1: Sc 12 around the first leg, sc 3 along the chain, sc 12 around the second leg, sc 3 along the other side of the chain. (30)', 30],
    ['Rnd 1: Sc in next 6 sts of second leg, sc in next 12 sts of first leg, sc in remaining 6 sts of second leg. (24)', 24],
    ['Rnd 1: Holding legs together, sc in next 12 sts of first leg, sc in next 12 sts of second leg. (24)', 24],
    ['Rnd 1: Ch 2, join to first leg, sc in each st around. (28)', 28],
    ['Rnd 1: Ch 3, join to first leg, (5 sc, inc) x 2, sc in next 3 ch, sc in next 12 sts of second leg, sc in other side of 3 ch. (32)', 32],
  ])('%s', (row, made) => {
    const text = `${legs(row)}\nRnd 2: Sc in each st around. (${made})\n`;
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual([`Rnd 1 ${made} proven`, `Rnd 2 ${made} proven`]);
    expect(complaints(text)).toEqual([]);
  });
});

it('chains left for the next round are places there', () => {
  const text = `${legs('Rnd 1: Sc in each st of first leg, ch 3, sc in each st of second leg, ch 3; join. (24 sc, 6 ch)')}
Rnd 2: Ch 1, sc in each st and ch around; join. (30)\n`;
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 24 proven', 'Rnd 2 30 proven']);
});

describe('a number changed by one is found', () => {
  const right =
    'Rnd 1: Ch 3, join to first leg, sc in next 12 sts of first leg, sc in next 3 ch, sc in next 12 sts of second leg, sc in other side of 3 ch. (30)';
  it.each([
    ['Ch 3', 'Ch 4'],
    ['Ch 3', 'Ch 2'],
    ['12 sts of first', '13 sts of first'],
    ['12 sts of first', '11 sts of first'],
    ['next 3 ch', 'next 4 ch'],
    ['12 sts of second', '11 sts of second'],
    ['other side of 3', 'other side of 2'],
    ['(30)', '(31)'],
  ])('%s to %s', (from, to) => {
    const text = `${legs(right.replace(from, to))}\nRnd 2: Sc in each st around. (30)\n`;
    expect(complaints(text)[0]).toMatch(/^(10|11) /);
  });
});

it('sleeves into a body, stitches beneath the arms left', () => {
  const text = `Otto (US terms)

Arms (make 2)
Rnd 1: 4 sc in magic ring. (4)
Rnd 2: Inc around. (8)
Rnds 3-5: Sc around. (8)
Fasten off.

Body
Rnd 1: 6 sc in magic ring. (6)
Rnd 2: Inc around. (12)
Rnd 3: (Sc, inc) x 6. (18)
Rnd 4: Sc in next 4 sts of body, sc in next 6 sts of first arm, skip next 2 sts of body, sc in next 7 sts of body, sc in next 6 sts of second arm, skip next 2 sts of body, sc in last 3 sts of body. (26)
Rnd 5: Sc around. (26)
`;
  expect(worked(text, 'Rnd 4', 'Rnd 5')).toEqual(['Rnd 4 26 proven', 'Rnd 5 26 proven']);
  expect(complaints(text)).toEqual([]);
});

it('a second leg that is only told of is as the first', () => {
  const text = `Legs and body (US terms)

Rnd 1: 6 sc in magic ring. (6)
Rnd 2: Inc around. (12)
Fasten off. Make the second leg the same, do not fasten off.
Rnd 3: From the second leg, ch 2, join to first leg with sc, sc in next 11 sts of first leg, sc in next 2 ch, sc in next 12 sts of second leg, sc in other side of 2 ch. (28)
`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 28 proven']);
});
