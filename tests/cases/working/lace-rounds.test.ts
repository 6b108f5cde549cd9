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

it('labels and stitches that are broken over lines', () => {
  const text = `Ch 6
join with a slip stitch to form a ring.
Round
1:
Chain 3, 11 dc in ring,
join to top of the beginning chain 3 (12 dc)
Round
2:
Slip
Stitch 1 time to the next stitch (this keeps the sides
even).
Chain 3, dc in same stitch, 2 dc in each dc around. Join (24 dc)
Round
3:
Ch 1, sc in each dc around. Join (24 sc)
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
    'Rnd 1 12 proven',
    'Rnd 2 24 proven',
    'Rnd 3 24 proven',
  ]);
});

it.each([
  ['5 dc in next lp for a shell', 30],
  ['in next lp work 3 dc, ch 2, 3 dc for shell', 36],
  ['4 dc in next lp (this is a shell)', 24],
])('a shell told where it is first worked: %s', (first, stitches) => {
  const text = ring(
    'Rnd 1: (Sc in ring, ch 5) 6 times, join. (6 lps)',
    `Rnd 2: Sl st in next lp, ch 1, *${first}; rep from * around, join. (6 shells)`,
    'Rnd 3: *Ch 6, sc in next shell; rep from * around, join. (6 ch-6 lps)',
    'Rnd 4: Sl st in next lp, ch 1, *shell in next lp; rep from * around, join. (6 shells)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 4')).toEqual([`Rnd 4 ${stitches} proven`]);
});

it('stitches defined behind a glued dash, a name in brackets, or in a list with the name in full', () => {
  const text = `Stitches used:
Shell- dc2 ch2 dc2 (in one stitch)
Crossed treble (abbreviated Xtr). Skip 1 st, tr in next st, tr in skipped st.

Abbreviations: ch = chain; TP = Tall picot (ch 3, sl st in first ch, ch 4, sl st in same ch)

Make a magic ring.
Rnd 1: 12 sc in ring. (12 sc)
Rnd 2: *Shell in next st, sk 1 st; rep from * around. (24 dc)
Rnd 3: *Xtr; rep from * around. (24 tr)
`;
  expect(complaints(text).filter((one) => !one.includes('unused'))).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 24 proven', 'Rnd 3 24 proven']);
});

it.each([
  ['in next shell', 6],
  ['in centre dc of next shell', 6],
  ['in center dc of next 5-dc group', 6],
  ['in first dc of next shell', 6],
  ['in 3rd dc of next shell', 6],
  ['in first dc of next shell, ch 2, sc in last dc of same shell', 12],
  ['in first dc of next shell, ch 2, sk 3 dc, sc in last dc of shell', 12],
])('each of six solid shells once: sc %s', (place, stitches) => {
  const text = ring(
    'Rnd 1: (Sc in ring, ch 5) 6 times, join. (6 lps)',
    'Rnd 2: Sl st in next lp, ch 1, *5 dc in next lp; rep from * around, join. (30 dc)',
    `Rnd 3: *Ch 6, sc ${place}; rep from * around, join. (6 ch-6 lps)`,
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual([`Rnd 3 ${stitches} proven`]);
  expect(complaints(text.replace('6 ch-6', '7 ch-6'))).toEqual(['6 count-mismatch']);
});

it('a first group whose place the opening slip stitch shares', () => {
  const text = ring(
    'Rnd 1: (Sc in ring, ch 5) 6 times, join. (6 lps)',
    'Rnd 2: Sl st in next lp, ch 1, *(3 dc, ch 2, 3 dc) in next lp; rep from * around, join. (36 dc)',
    'Rnd 3: *Ch 6, sc in next shell; rep from * around, join. (6 ch-6 lps)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 6 proven']);
});

const LEAFLET = `US terms
Ch 8, join to form a ring, ch 3, 19 dc in ring, join in 3rd st of ch.
2nd Rnd: Ch 7, skip 1 dc, dc in next dc, * ch 4, skip 1 dc, dc in next dc, repeat from * all around, ch 4, join in 3rd st of ch.
3rd Rnd: Ch 3, * 5 dc in next loop, dc in next dc, repeat from * all around ending with 5 dc in last loop, join in 3rd st of ch. (60 dc)
4th Rnd: Ch 3 and working in dc, increase 4 dc evenly spaced, join (64 dc).
5th Rnd: Ch 3, 2 dc in same space, ch 3, 3 dc in same space, * ch 6, skip 7 dc, 5 trc in next dc, ch 6, skip 7 dc, 3 dc, ch 3, 3 dc (shell) in next dc, repeat from * all around ending with ch 6, skip 7 dc, 5 trc in next dc, ch 6, join. (24 dc, 20 trc)
6th Rnd: Sl st to center of shell, ch 3, 2 dc, ch 3, 3 dc in same space, * ch 6, 2 trc in each of the next 5 trc, ch 6, shell in next shell, repeat from * all around ending to correspond, ch 6, join. (24 dc, 40 trc)
7th Rnd: Sl st to center of shell, ch 3, 2 dc, ch 3, 3 dc in same space, * ch 6, 1 trc in each trc with ch 1 between each trc, ch 6, shell in next shell, repeat from * all around ending to correspond, join. (24 dc, 40 trc)
`;

it('a pineapple doily as leaflets print it: 4 shells of 6 and 4 pineapples', () => {
  expect(complaints(LEAFLET)).toEqual([]);
  expect(worked(LEAFLET, 'Rnd 5', 'Rnd 6', 'Rnd 7')).toEqual([
    'Rnd 5 44 proven',
    'Rnd 6 64 proven',
    'Rnd 7 64 proven',
  ]);
  expect(spaces(LEAFLET, 'Rnd 6')).toEqual(['4 ch-3', '8 ch-6']);
  expect(spaces(LEAFLET, 'Rnd 7')).toEqual(['36 ch-1', '4 ch-3', '8 ch-6']);
  expect(complaints(LEAFLET.replace('(24 dc, 20 trc)', '(24 dc, 24 trc)'))).toEqual([
    '6 count-mismatch',
  ]);
});

it('a bracket typed for a star, clusters over two loops, and a first cluster told by its making', () => {
  const text = ring(
    'Rnd 1: Ch 1, 24 sc in ring, join. (24 sc)',
    'Rnd 2: Sc in same st, (ch 3, sk 1 sc, sc in next sc. Rep rnd, join. (12 ch-3 lps)',
    'Rnd 3: Sl st in next lp, ch 4, tr in next lp, *ch 7, 2-tr cluster across next two lps; rep from * around, ch 7, join. (6 ch-7 lps)',
    'Rnd 4: Sl st to ch-7 lp, ch 3, 2 dc in same sp keeping last loop of each dc on hook, thread over and work off all loops at one time, ' +
      '*ch 4, cluster st in same sp (cluster st: 3 dc in same sp keeping last loop of each dc on hook, thread over and work off all loops), rep from * twice, ' +
      '*ch 5, 4 cluster sts with ch 4 between each cluster st in next lp, rep from * around, ch 5, join. (24 clusters)',
  );
  expect(complaints(text)).toEqual(['5 unbalanced-bracket']);
  expect(worked(text, 'Rnd 2', 'Rnd 4')).toEqual(['Rnd 2 12 proven', 'Rnd 4 24 proven']);
  expect(spaces(text, 'Rnd 3')).toEqual(['6 ch-7']);
});

it('stitches sought by their names in every pass, and those beside them passed: 8 x 3', () => {
  const text = ring(
    'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
    'Rnd 2: Ch 1, *sc in next sc, (hdc, dc, hdc) in next sc; rep from * around, join. (32 sts)',
    'Rnd 3: *Sc in next sc, ch 9, tr in next dc, ch 6; rep from * around, join. (8 ch-9 lps)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 16 proven']);
});

it('a round worked again with other chains', () => {
  const again = (words: string): string =>
    ring(
      'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
      'Rnd 2: *Ch 5, sk 1 sc, sc in next sc; rep from * around, join. (8 ch-5 lps)',
      'Rnd 3: Sl st to center of next lp, ch 1, sc in same lp, *ch 5, sc in next lp; rep from * around, ch 5, join. (8 ch-5 lps)',
      `Rnd 4: ${words} (8 ch-7 lps)`,
      'Rnd 5: Sl st to next lp, ch 1, 9 sc in each ch-7 lp around, join. (72 sc)',
    );
  for (const words of ['Same as last rnd but ch 7 instead of ch 5.', 'Repeat 3rd rnd having ch 7 between sc.']) {
    expect(complaints(again(words))).toEqual([]);
    expect(worked(again(words), 'Rnd 4', 'Rnd 5')).toEqual(['Rnd 4 8 proven', 'Rnd 5 72 proven']);
    expect(complaints(again(words).replace('8 ch-7', '9 ch-7'))).toEqual(['7 count-mismatch']);
  }
  // No chain of the round has that length: what is to change is not known.
  expect(complaints(again('Same as last rnd but ch 7 instead of ch 6.'))).toEqual(['7 unread']);
});

it.each([
  [
    'a picot stands on its chain, and the next round goes from picot to picot: 8 loops',
    ring(
      'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
      'Rnd 2: Ch 1, sc in same st, *ch 5, sk 1 sc, sc in next sc; rep from * around, ch 5, join. (8 ch-5 lps)',
      'Rnd 3: Sl st to center of next lp, ch 1, sc in same lp, *ch 3, picot, ch 3, sc in next lp; rep from * around, ch 3, picot, ch 3, join. (8 sc)',
      'Rnd 4: Sl st to picot, ch 1, sc in same picot, *ch 7, sc in next picot; rep from * around, ch 7, join. (8 ch-7 lps)',
    ),
    ['Rnd 3 8 proven', 'Rnd 4 8 proven'],
  ],
  [
    'groups in each sc over such groups go into those that are so called: 8 x 3',
    ring(
      'Rnd 1: Ch 1, 8 sc in ring, join. (8 sc)',
      'Rnd 2: Ch 1, (sc, 2 dc) in each sc around, join. (8 sc, 16 dc)',
      'Rnd 3: Ch 1, (sc, 2 dc) in each sc around, join. (8 sc, 16 dc)',
    ),
    ['Rnd 2 24 proven', 'Rnd 3 24 proven'],
  ],
  [
    'two stars that stand off from their words, each with its order: 4 x (2 + 2) loops',
    ring(
      'Rnd 1: Ch 3, 31 dc in ring, join. (32 dc)',
      'Rnd 2: Ch 1, sc in same st, * ch 5, sk 1 dc, sc in next dc, * ch 3, sk 1 dc, sc in next dc, repeat from * once, ch 5, sk 1 dc, sc in next dc, repeat from * all around, join. (8 ch-5 lps, 8 ch-3 lps)',
    ),
    ['Rnd 2 16 proven'],
  ],
  [
    'shells over sc and sc over shells, turned: 6 x 6 + 1',
    'US terms\nCh 38.\n' +
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (37 sts)\n' +
      'Row 2: Ch 3, 2 dc in same st, sc in 3rd dc of next shell, *5 dc in next sc, sc in 3rd dc of next shell; rep from * across, 3 dc in last sc, turn. (37 sts)\n' +
      'Row 3: Ch 1, sc in first dc, *5 dc in next sc, sc in centre dc of next shell; rep from * across, 5 dc in next sc, sc in top of tch, turn. (37 sts)\n',
    ['Row 2 37 proven', 'Row 3 37 proven'],
  ],
] as const)('%s', (_, text, rows) => {
  expect(complaints(text)).toEqual([]);
  expect(worked(text, ...rows.map((row) => row.split(' ').slice(0, 2).join(' ')))).toEqual(rows);
});

it('a last pass stops before the stitch that its starting chain stands for, in a bracket too: 16 x 5', () => {
  const text = ring(
    'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
    'Rnd 2: Ch 1, 3 sc in each sc around, join. (48 sc)',
    'Rnd 3: Ch 2 (counts as sc), *(hdc, dc, hdc) in next sc, (sc in next sc) twice, rep from * around, join. (80 sts)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 80 proven']);
  expect(complaints(text.replace('(80 sts)', '(81 sts)'))).toEqual(['6 count-mismatch']);
});
