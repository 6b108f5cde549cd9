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

test('two sides of an opening are worked apart, by the second from the first, and closed', () => {
  const text = `US terms

Ch 20, sl st to form a ring.

Rnd 1: Ch 1, sc in each ch, sl st to join. (20)

## First side

Row 1: Ch 1, sc in next 10 sts, turn. (10)

Rows 2-4: Ch 1, sc in each st across, turn. (10)

Fasten off.

## Second side

Join yarn in next unworked st of Rnd 1.

Row 1: Ch 1, sc in same place, sc in each of next 9 sts, turn. (10)

Rows 2-4: As first side.

## Top

Rnd 5: Ch 1, sc in each st of first side, sc in each st of second side, join. (20)
`;
  expect(verdicts(text)).toBe(
    '20 proven, 10 proven, 10 proven, 10 proven, 10 proven, ' +
      '10 proven, 10 unstated, 10 unstated, 10 unstated, 20 proven',
  );
  expect(verdicts(text.replace('next 9 sts', 'next 8 sts'))).toContain('mismatch');
});

test('an opening that a round skipped is worked later by the round that skipped it', () => {
  const text = `US terms

## Leg

Rnd 1: 12 sc in magic ring. (12)

Rnd 2: Ch 6, sk next 6 sts, sc in next 6 sts. (6 sc, 6 ch)

Rnd 3: Sc in each ch and each st around. (12)

## Heel

Join yarn to first skipped st of Rnd 2.

Rnd 1: Sc in each of the 6 skipped sts. (6)
`;
  expect(verdicts(text)).toContain('6 proven');
});

test('"Rnd 4 (5, 6)" is one round, whose number differs by size', () => {
  const text = `---
title: Cuff
terms: US
sizes: [S, M, L]
---
## Cuff

Ch 10 (12, 14), join to form a ring.

Rnd 1: Ch 1, sc in each ch around; join. (10 (12, 14) sc)

Rnds 2-3 (4, 5): Ch 1, sc in each st around; join. (10 (12, 14) sc)

Rnd 4 (5, 6): Ch 1, 2 sc in each st around; join. (20 (24, 28) sc)
`;
  const { rows, totals } = compile(text);
  expect(totals.map(({ rows: all, proven }) => `${proven} of ${all}`)).toEqual(['4 of 4', '5 of 5', '6 of 6']);
  expect(rows.filter(({ made }) => made >= 20).map(({ made }) => made)).toEqual([20, 24, 28]);
});

test('"S only:" before a row tells whose it is', () => {
  const text = `---
title: Toe
terms: UK
sizes: [S, M]
---
## Toe

Rnd 1: 8 dc into a magic ring. (8)

S only: Rnd 2: 2 dc into each dc. (16)

M only: Rnd 2: 3 dc into each dc. (24)

Rnd 3: 1 dc into each dc. 16 (24) dc
`;
  expect(verdicts(text)).toBe(
    '8 proven, 16 proven, 0 omitted, 16 proven, 8 proven, 0 omitted, 24 proven, 24 proven',
  );
});

test('a row over spaces of a row that was not understood is left open, not called wrong', () => {
  const rows = (second: string): string => `US terms

Rnd 1: Ch 4, join to form a ring, ch 3 (counts as dc), 2 dc in ring, ch 1, (3 dc, ch 1) 3 times in ring, join in 3rd ch of beg ch-3. (12 dc)

Rnd 2: ${second} (24 dc)

Rnd 3: Join B in any corner ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same ch-2 sp, *ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice more, ch 1, 3 dc in next ch-1 sp, ch 1, join. Fasten off. (36 dc)
`;
  expect(verdicts(rows('Frobnicate the corners as pictured.'))).toMatch(/ unread, \d+ unchecked$/);
  const read =
    'Join A in any ch-1 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-1 sp, ch 1; rep from * around, join. Fasten off.';
  expect(verdicts(rows(read))).toBe('12 proven, 24 proven, 36 proven');
});

test('"S only:" opens a row in pasted text too, in the order in which it is worked', () => {
  const text = `Cup cosy
Sizes: S (M)
US terms

Rnd 1: 6 (8) sc in magic ring. (6 (8))
Rnd 2: Inc in each st around. (12 (16))
Rnds 3-5 (6): Sc in each st around. (12 (16))
S only: Rnd 6: Sc in each st around. (12)
Rnd 7: Sc in each st around. (12 (16))
`;
  const rows = compile(text).rows.filter(({ size }) => size === 'S');
  expect(rows.map(({ label, verdict }) => `${label} ${verdict}`)).toEqual(
    [1, 2, 3, 4, 5, 6, 7].map((n) => `Rnd ${n} proven`),
  );
});
