// What a note says of chains, and start chains counted beside the stitches. Common practice.
import { expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';

const verdicts = (text: string): string =>
  compile(text)
    .rows.map(({ made, verdict }) => `${made} ${verdict}`)
    .join(', ');

const FIRST = 'Make 22 ch, 1 dc into 2nd ch from hook, 1 dc into each ch to end. Turn. (21 dc)\n';

test('a sentence about chains is no foundation', () => {
  const note = 'UK terms. 3 ch counts as first tr throughout.\n\n';
  const { conventions } = compile(note + FIRST);
  expect(verdicts(note + FIRST)).toBe('21 proven');
  expect(conventions.map(({ what }) => what)).toEqual([]);
});

test.each([
  ['(20 tr + 3 ch)', '21 proven, 21 proven'],
  ['(21 tr)', '21 proven, 21 proven'],
  ['(19 tr + 3 ch)', '21 proven, 21 mismatch'],
  ['(20 tr + 4 ch)', '21 proven, 21 mismatch'],
])('a start chain counted apart: %s', (count, worked) => {
  const row = `Row 2: 3 ch (counts as tr), 1 tr into each dc to end. Turn. ${count}\n`;
  expect(verdicts(`UK terms.\n\n${FIRST}\n${row}`)).toBe(worked);
});

const POPCORNS = `US terms

Popcorn (PC): 4 dc in same st, drop loop from hook, insert hook in first dc, pull loop through.
Beg PC: ch 3 (counts as dc), 3 dc in same st, drop loop, insert hook in top of ch-3, pull loop through.

Rnd 1: 8 sc in magic ring, join. (8 sc)
Rnd 2: Beg PC, ch 2, *PC in next st, ch 2; rep from * around, join. `;

test.each([
  ['(8 PC, 8 ch-2 sps)', '8 proven, 8 proven'],
  ['(7 PC, 8 ch-2 sps)', '8 proven, 8 mismatch'],
])('a beginning popcorn is one of the popcorns: %s', (count, worked) => {
  expect(verdicts(`${POPCORNS}${count}\n`)).toBe(worked);
});

test('a picot that is skipped uses no stitch', () => {
  const text = `US terms

Picot: ch 3, sl st in 3rd ch from hook.

Rnd 1: 12 sc in magic ring, join. (12 sc)
Rnd 2: Ch 1, *sc in next 3 sts, picot; rep from * around, join. (12 sc, 4 picots)
Rnd 3: Ch 1, *sc in next 3 sc, ch 2, skip picot; rep from * around, join. (12 sc, 4 ch-2 sps)
`;
  expect(verdicts(text)).toBe('12 proven, 12 proven, 12 proven');
});

test('half of a round that is turned is worked back on, without the other half', () => {
  const text = `US terms

Ch 20, sl st to form a ring.

Rnd 1: Ch 1, sc in each ch, sl st to join. (20)

## First side

Row 1: Ch 1, sc in next 10 sts, turn. (10)

Rows 2-4: Ch 1, sc in each st across, turn. (10)
`;
  expect(verdicts(text)).toBe('20 proven, 10 proven, 10 proven, 10 proven, 10 proven');
});
