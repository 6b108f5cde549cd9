// Rows that were worked without a finding though not as their words say, or that must say what they took for
// granted. Common practice.
import { expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, made, worked } from './worked.ts';

const notes = (text: string): string[] =>
  compile(text, { fixes: false })
    .findings.filter(({ code }) => code !== 'terms-inferred')
    .map(({ code }) => code);

const MIXED = `Ch 20.
Row 1: Sc in 2nd ch from hook, *dc in next ch, sc in next ch; rep from * across, turn. (19)
`;

test('"in each sc" over mixed stitches means all of them, and it is noticed', () => {
  const text = `${MIXED}Row 2: Ch 1, sc in each sc across.\n`;
  expect(made(text)).toEqual([19, 19]);
  expect(notes(text)).toEqual(['wrong-noun']);
});

test('a count tells that those of that name alone are meant', () => {
  const text = `${MIXED}Row 2: Ch 1, sc in each sc across. (10 sc)\n`;
  expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
  expect(conventions(text)).toContain('each of a name: those of that name (count)');
});

test('shells go into the stitches of that name', () => {
  const text = `${MIXED}Row 2: Ch 3, 3 dc in each dc across, dc in last sc.\n`;
  expect(made(text)).toEqual([19, 29]);
});

test('"dc in each dc" up to a last stitch leaves none out', () => {
  const text = `Ch 21.
Row 1: Dc in 4th ch from hook and in each ch across, turn. (19 dc)
Row 2: Ch 3, dc in each dc to end, sc in last st, turn.
Row 3: Ch 1, sc in each dc to end, sc in top of turning ch.
`;
  expect(made(text)).toEqual([19, 19, 19]);
});

const ROUND = 'Ch 6, join to form a ring.\nRnd 1: Ch 1, 16 sc in ring, join.\n';

test('a start chain that is a chain too tall leaves no space', () => {
  const text = `${ROUND}Rnd 2: Ch 4, dc in same space, *ch 3, skip 1 sc, 2 dc in next sc; rep from * around, ch 3, join.
Rnd 3: Ch 1, *3 sc in next sp; rep from * around, join.
`;
  expect(made(text)).toEqual([16, 16, 24]);
  expect(conventions(text)).toContain('gap of the start-chain 4: none (custom)');
});

test('where the row has such spaces, it leaves one', () => {
  const text = `${ROUND}Rnd 2: Ch 4, dc in same space, *ch 3, skip 1 sc, (dc, ch 1, dc) in next sc; rep from * around, ch 3, join.
Rnd 3: Ch 1, *3 sc in next sp; rep from * around, join.
`;
  expect(made(text)).toEqual([16, 16, 48]);
});

test('where a later row works into it, it leaves one', () => {
  const text = `${ROUND}Rnd 2: Ch 4, dc in same sc, *ch 3, skip 1 sc, 2 dc in next sc; rep from * around, ch 3, join.
Rnd 3: Sl st in ch-1 sp, ch 1, sc in same sp, *3 sc in next ch-3 sp; rep from * around, join. (25 sc)
`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 25 proven']);
  expect(conventions(text)).toContain('gap of the start-chain 4: a space (count)');
});

const LOOPS = `Rnd 1: 16 sc in magic ring; join.
Rnd 2: *Ch 6, sl st in 4th ch from hook for picot, ch 2, sk 1 sc, sc in next sc; rep from * around. `;

test.each([
  ['next loop', 8],
  ['next picot loop', 8],
  ['next picot-loop', 8],
  ['next sp', 8],
])('a loop with a picot is one: "in %s"', (place, n) => {
  const text = `${LOOPS}\nRnd 3: Ch 1, *2 sc in ${place}; rep from * around; join.\n`;
  expect(made(text)).toEqual([16, 8, n * 2]);
  expect(complaints(text)).toEqual([]);
});

test('its two sides are worked where the chains are named', () => {
  const text = `${LOOPS}
Rnd 3: *3 sc in next ch-2 sp, ch 2, sk picot, 3 sc in next ch-2 sp; rep from * around; join. (48 sc)
`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 48 proven']);
});

test.each([
  ['(8 picot loops)', 'Rnd 2 8 proven'],
  ['(9 picot loops)', 'Rnd 2 8 mismatch'],
])('picot loops are counted: %s', (count, row) => {
  expect(worked(`${LOOPS}${count}\n`, 'Rnd 2')).toEqual([row]);
});

test('the loop between picots is the loop on which they stand', () => {
  const text = `Rnd 1: 16 sc in magic ring; join.
Rnd 2: *Ch 3, picot, ch 3, picot, ch 3, sk 3 sc, sc in next sc; rep from * around.
Rnd 3: Sl st to center of next loop between picots, *ch 9, sc in center of next loop between picots; rep from * around.
`;
  expect(made(text)).toEqual([16, 4, 4]);
});

test('picots are places of their own where they are named', () => {
  const text = `Rnd 1: 16 sc in magic ring; join.
Rnd 2: Ch 1, *ch 3, sl st in 3rd ch from hook for picot, sc in next 2 sc; rep from * around; join.
Rnd 3: *Ch 5, sc in next picot; rep from * around. (8 ch-5 sps)
`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 8 proven']);
});

test('the word for a place that is left over behind a place is no talk', () => {
  const text = `${LOOPS}\nRnd 3: *3 sc in next sc space; rep from * around; join.\n`;
  expect(complaints(text)).toEqual(['3 unread']);
});
