// What stands between rows on pages with photographs and in narrow columns. All invented.
import { expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints } from '../working/worked.ts';

const rows = (text: string): string[] =>
  compile(text, { fixes: false }).rows.map(
    ({ label, made, verdict }) => `${label} ${made} ${verdict}`,
  );

test('captions and bare row numbers below photographs are no rows and no parts', () => {
  const text = `R1: Ch 2, 7 hdc in second ch from hook. (7)
R2: 2 hdc in each st around. (14)
 Round 2
R3-4: hdc around (14)
End of Round 4
R5-R6: hdc around (14)
Round 5
Before sewing up the toe
R7: inc in each st (28)
After Round 7

Round 8: hdc around (28)
`;
  expect(complaints(text)).toEqual([]);
  expect(rows(text).slice(-2)).toEqual(['R7 28 proven', 'Rnd 8 28 proven']);
  expect(compile(text).rows.length).toBe(8);
});

test('a number alone above its work is a row', () => {
  const text = 'Round 1\n7 sc in magic ring (7)\nRound 2\ninc in each st (14)\n';
  expect(rows(text)).toEqual(['Rnd 1 7 proven', 'Rnd 2 14 proven']);
});

test('words that a narrow column broke are whole', () => {
  const text = `Rnd 1: ch 4, join to form ring, ch 3, 11 dc in ring. (12 dc)
Rnd 2: Join next color in join-
ing, ch 1, 2 sc in same st, 2 sc in each st around, join. Fas-
ten off. (24 sc)
Rnd 3: Join in any st, ch 1, half-
double crochet in each st around. (24)
`;
  expect(rows(text)).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven', 'Rnd 3 24 proven']);
});

test('a gauge without the word is no row', () => {
  const text = '3"x3"=11 hdc x 8 rows\n\n1) 9 hdc in magic circle. (9)\n2) 2 hdc around, join (18)\n';
  expect(rows(text)).toEqual(['1 9 proven', '2 18 proven']);
});

test('a ring behind a sentence of prose, and a reference between dashes', () => {
  const text = `MITT:
The round begins at the palm. Work 4 ch with hook size 4 mm/US 6 and form 1 ring with 1 sl st in first ch. Work 13 dc in ring – read INFO.
ROUND 1: Work 1 dc in each dc = 13 dc.
ROUND 2: Work 1 dc in each of first 11 dc, 1 relief dc - see explanation above - around next dc, 2 dc in next dc = 14 dc.
`;
  expect(rows(text).slice(1)).toEqual(['Rnd 1 13 proven', 'Rnd 2 14 proven']);
});

test('rows without labels below headings and below a long first one', () => {
  const plum = `## Step 2: Plum

With red:
in a magic ring:
7 sc (7)
7 inc (14)
*1 inc 1 sc** 7 times (21)
Stuff
*1 dec 1 sc** 7 times (14)
7 dec (7)
`;
  expect(complaints(plum)).toEqual([]);
  expect(rows(plum).map((row) => row.slice(-9).trim())).toEqual(Array(5).fill('proven').map((word, i) => `${['7', '14', '21', '14', '7'][i]} ${word}`.slice(-9).trim()));
  const ball = `Adjustable loop, ch1, 5 sc in loop...pull tight and work over the tail for the next round to secure it.
2sc in each around.
*2sc, sc in next 1* around.
`;
  expect(rows(ball).map((row) => row.split(' ').at(-2))).toEqual(['5', '10', '15']);
});

test('numbers run on behind a row that has no bracket, and an optional round', () => {
  const text = `R1: 6 sc in MR (6) R2: 6 inc (12) R3-5: 12 sc (3 rounds) 6: (2 sc, 1 inc) * 4 (16) 7-8: 16 sc 9: (2 sc, 1 dec) * 4 (12)
Optional Rnd 10 -- sl st around.
`;
  expect(rows(text).slice(-4)).toEqual(['7 16 unstated', '8 16 unstated', '9 12 proven', 'Rnd 10 0 unstated']);
});

test('a shell named behind its stitches is known in the rounds after', () => {
  const text = `Ch 8, join to form a ring, ch 3 (counts as dc), 15 dc in ring, join. (16 dc)
2nd Rnd: Ch 3 (counts as dc), dc in same st, ch 3, 2 dc in same st, * ch 3, skip 3 dc, 2 dc, ch 3, 2 dc (shell) in next dc, repeat from * 2 more times, ch 3, join. (16 dc)
3rd Rnd: Sl st to center of shell, ch 3 (counts as dc), dc, ch 3, 2 dc in same space, *ch 5, shell in next shell; repeat from * around, ch 5, join. (16 dc)
`;
  expect(complaints(text)).toEqual([]);
});

test('a note on the start chain in front of the first chain holds', () => {
  const text = `ch3, Does NOT count as a stitch, you will slip to top of chain 3 to join
Start with Ch 4
Row 1: 11 dc in fourth ch from hook. Join in top of chain three with ss.
Row 2: ch3, (2 dc in next dc) repeat ( ) 10 more times, join (22 stitches)
`;
  expect(rows(text).at(-1)).toBe('Row 2 22 proven');
});
