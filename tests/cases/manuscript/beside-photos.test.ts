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
