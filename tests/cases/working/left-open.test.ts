/** Rows of which it is not known what they stand on are left open, not judged. All invented. */
import { expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const LEGS = `US terms
Row 1: 7 sc in magic ring (7)
Row 2: 2 sc in each (14)
Row 3: Ch 9, skip 1 st and sl st into 2nd stitch. Repeat 6 times.
Row 4: Sc2tog. Repeat to end (should have 7 stitches).
Row 5: Sc in each st (7)
`;

it('a row above one of chains and slip stitches alone goes into an earlier one', () => {
  expect(complaints(LEGS)).toEqual([]);
  expect(worked(LEGS, 'Row 4', 'Row 5')).toEqual(['Row 4 0 unchecked', 'Row 5 7 proven']);
  expect(complaints(LEGS.replace('each st (7)', 'each st (8)'))).toEqual(['6 count-mismatch']);
});

const UNREAD = `US terms
Rnd 1: 8 sc in magic ring (8)
Rnd 2: Florbish the brim all the way (20)
Rnd 3: *Sc in next 6 sts, inc; rep from * around. (24)
Rnd 4: *Sc in next 3 sts, inc; rep from * around. (30)
`;

it('a walk that does not come out on a row that was not understood proves nothing', () => {
  expect(complaints(UNREAD)).toEqual(['3 unread']);
  expect(worked(UNREAD, 'Rnd 3', 'Rnd 4')).toEqual(['Rnd 3 16 unchecked', 'Rnd 4 30 proven']);
});

it('rounds repeated for another piece leave the edge of the first alone', () => {
  const text = `US terms
Round 1. Ch 2, 7 sc in 2nd ch from hook. (7)
Round 2. 2 sc in each sc around. (14)
Round 3. Sc in each sc around. (14)

Repeat rounds 1-2, and leave a long tail.
`;
  expect(complaints(text)).toEqual([]);
});

it('loops that begin and end in the first stitch use it', () => {
  const text = `US terms
Round 1: 20 sc in ring, join with sl st. (20 sc)
Round 2: *Ch 5, skip 3 sc, sc in next sc* repeat 4 times. Ch 5, skip 3 sc, sl st in first ch.
`;
  expect(complaints(text)).toEqual([]);
});

const UNWRITTEN = `US terms

Notes:
Count beginning ch-3 as 1 dc.

Round 1: Make 11 dc into magic loop. (11 dc)
Round 2: Increase in each dc around. (22 dc)
Round 3: Dc in same st as joining, dc in next dc. (Increase in next dc, dc in next dc) around. (33 dc)
Round 4: Dc in each dc around. (33 dc)
`;

it('a beginning chain that notes count and no round writes is one stitch', () => {
  expect(complaints(UNWRITTEN)).toEqual([]);
  expect(worked(UNWRITTEN, 'Round 3', 'Rnd 3')[1]).toBe('Rnd 3 32 unchecked');
  expect(complaints(UNWRITTEN.replace('(33 dc)\nRound 4', '(35 dc)\nRound 4'))).not.toEqual([]);
  const written = UNWRITTEN.replace('Round 4: ', 'Round 4: Ch 3, ');
  expect(complaints(written)).not.toEqual([]);
});

it('"each next" is every one of them', () => {
  const text = `US terms
Start with a magic ring with 7 sc.
2 rnd: 2 sc in each next sc (14)
3 rnd: 1 sc in each next sc (14)
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 14 proven', 'Rnd 3 14 proven']);
  expect(complaints(text.replace('each next sc (14)', 'each next sc (15)'))).not.toEqual([]);
});
