/** Rounds of lace that close upon their beginning. Each is right; sums by hand, readings common practice. */
import { compile } from '../../../src/index.ts';
import { expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const ring = (...lines: readonly string[]): string =>
  `Sample (US terms)\n\nCh 6, join to form a ring.\n${lines.join('\n')}\n`;

const LOOPS =
  'Rnd 1: Ch 3, 23 dc in ring, join. (24 dc)\n' +
  'Rnd 2: Ch 1, sc in same st, *ch 5, sk 1 dc, sc in next dc; rep from * around, ending with ch 5, sl st in first sc. (12 ch-5 lps)';

/** "5 ch-7" of the spaces that a row makes, in order of their lengths. */
function spaces(text: string, label: string): string[] {
  const row = compile(text, { fixes: false }).rows.findLast((r) => r.label === label);
  return (row?.spaces ?? []).map(({ chains, n }) => `${n} ch-${chains}`);
}

it.each([
  [
    'the last of two loops in brackets comes to the first sc: 4 x (3 dc + 2 sc)',
    ring(
      LOOPS,
      'Rnd 3: Sl st to center of next lp, sc in same lp, *ch 4, 3 dc in next lp, (ch 5, sc in next lp) twice; rep from * around. Join.',
    ),
    'Rnd 3 20 unstated',
    ['4 ch-4', '8 ch-5'],
  ],
  [
    'a pass ends in what the round begins with, and the last one stops before it: 6 x (2 + 13)',
    ring(
      'Rnd 1: Ch 5, tr in ring, ch 2, *2 tr in ring, ch 2; rep from * 4 more times, join in 5th ch of ch-5. (12 tr)',
      'Rnd 2: Sc in same st, ch 9, sc in next tr, *5 sc in next ch-2 sp, sc in next tr, ch 9, sc in next tr; rep from * around, 5 sc in last ch-2 sp, join.',
      'Rnd 3: Sl st to center of next lp, 9 sc in same lp, *ch 2, 9 sc in next lp; rep from * around, ch 2, join. (54 sc)',
    ),
    'Rnd 3 54 proven',
    ['6 ch-2'],
  ],
  [
    'the last pass stops at the chain that the ending names, where nothing is left then: 6 x (4 + 1)',
    ring(
      'Rnd 1: (Sc in ring, ch 7) 6 times, join.',
      'Rnd 2: Sl st in next lp, ch 5, dc in same lp, (ch 4, in next lp make dc, ch 2 and dc) 5 times; ch 4, join in 3rd ch of ch-5. (12 dc)',
      'Rnd 3: Sl st in next sp, ch 3, in same sp make dc, ch 2 and 2 dc; *ch 3, sc in next sp, ch 3, in next sp make 2 dc, ch 2 and 2 dc; rep from * around, ending with ch 3. Join. (24 dc, 6 sc)',
    ),
    'Rnd 3 30 proven',
    ['6 ch-2', '12 ch-3'],
  ],
  [
    'the gap in which the round begins is the one behind the last petal: 6 x 2',
    ring(
      'Rnd 1: Ch 1, 24 sc in ring, join.',
      'Rnd 2: Ch 1, sc in same st, (ch 4, sk 3 sc, sc in next sc) 5 times, ch 4, join. (6 lps)',
      'Rnd 3: In each lp around make sc, hdc, 3 dc, hdc and sc, join. (6 petals)',
      'Rnd 4: Ch 5, dc in same place as join, *ch 6, between next 2 petals make dc, ch 2 and dc; rep from * around, ending with ch 6. Join in 3rd ch of ch-5.',
    ),
    'Rnd 4 12 unstated',
    ['6 ch-2', '6 ch-6'],
  ],
  [
    'a first loop behind no star is repeated with its chain, and a treble in the ring closes the last',
    ring(
      'Rnd 1: Ch 8, sc in ring, repeat 4 more times, ending with ch 4, tr in ring to join. (6 ch 8 loops in ring)',
    ),
    'Rnd 1 5 proven',
    ['6 ch-8'],
  ],
  [
    'two loops alike behind no star: 8 loops over 16 stitches',
    ring(
      'Rnd 1: Ch 1, 16 sc in ring, join.',
      'Rnd 2: Ch 5, sk 1 sc, sc in next sc, ch 5, sk 1 sc, sc in next sc, repeat all around, join.',
    ),
    'Rnd 2 8 unstated',
    ['8 ch-5'],
  ],
  [
    'the way to the centre of the first loop is gone once: 8 loops',
    ring(
      'Rnd 1: Ch 1, 16 sc in ring, join.',
      'Rnd 2: *Ch 5, sk 1 sc, sc in next sc, rep from * around, join.',
      'Rnd 3: Sl st to center of ch, ch 7, sc in next lp, ch 7, sc in next lp, repeat all around, join.',
    ),
    'Rnd 3 7 unstated',
    ['8 ch-7'],
  ],
  [
    'from the centre of a loop on to the next, and a last chain back to it: 8 loops',
    ring(
      'Rnd 1: Ch 1, 16 sc in ring, join.',
      'Rnd 2: *Ch 5, sk 1 sc, sc in next sc, rep from * around, join.',
      'Rnd 3: Sl st to center of next lp, *ch 7, sc in next lp, rep from * around, ending with ch 7, join.',
    ),
    'Rnd 3 7 unstated',
    ['8 ch-7'],
  ],
] as const)('%s', (_, text, row, gaps) => {
  expect(complaints(text)).toEqual([]);
  expect(worked(text, row.split(' ').slice(0, 2).join(' '))).toEqual([row]);
  expect(spaces(text, row.split(' ').slice(0, 2).join(' '))).toEqual(gaps);
});

it('a wrong number of a round that closes upon its beginning is found', () => {
  const text = ring(
    LOOPS,
    'Rnd 3: Sl st to center of next lp, sc in same lp, *ch 4, 3 dc in next lp, (ch 5, sc in next lp) twice; rep from * around. Join. (12 dc, 9 sc)',
  );
  expect(complaints(text)).toEqual(['6 count-mismatch']);
});

it('a fan whose last stitch stands in the ring has no loop closed by it', () => {
  const text = ring('Row 1: Ch 4, (dc in ring, ch 1) 5 times, dc in ring, turn. (7 dc)');
  expect(worked(text, 'Row 1')).toEqual(['Row 1 7 proven']);
});
