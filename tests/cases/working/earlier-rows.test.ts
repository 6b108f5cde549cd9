/** Places of rows further down, headings that name a round twice, and counts behind an equals sign. */
import { expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const LAYERS = `US terms
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 2, 3 dc) 3 times in ring, ch 2, join. (12 dc, 4 ch-2 sps)
Rnd 2: Ch 1, sc in each st, 3 sc in each ch-2 sp around, join. (24 sc)
Rnd 3: Ch 1, sc in next 3 sts, dc in next ch-2 sp of rnd 1, sk 1 st, *sc in next 5 sts, dc in next ch-2 sp of rnd 1, sk 1 st; rep from * twice, sc in last 2 sts, join. (24 sts)
Rnd 4: Ch 1, sc in each st around. (24 sc)
`;

it('a round that goes into spaces of an earlier one takes each of them, and is not called wrong for it', () => {
  expect(complaints(LAYERS)).toEqual([]);
  expect(worked(LAYERS, 'Rnd 3', 'Rnd 4')).toEqual(['Rnd 3 24 proven', 'Rnd 4 24 proven']);
  expect(complaints(LAYERS.replace('around. (24 sc)', 'around. (25 sc)'))).toEqual([
    '5 count-mismatch',
  ]);
});

const NAMED_TWICE = `US terms
Rnd 1: Ch 2 (does not count as a st), 12 dc in ring; sl st into first dc. (= 12 DC) Fasten off.
Round 2
With B - join in any dc.
RND 2: Ch 3 (counts as 1 dc); dc in same dc; 2 dc in each dc around; sl st into 3rd of 3 ch. (= 24 DC)
RND 3: Ch 3 (counts as 1 dc), *FPdc around previous rounds dc, dc in next dc* repeat ** around (= 24 dc)
`;

it('a line that names the round below it is no round given twice', () => {
  expect(complaints(NAMED_TWICE)).toEqual([]);
  expect(worked(NAMED_TWICE, 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
    'Rnd 1 12 proven',
    'Rnd 2 24 proven',
    'Rnd 3 24 proven',
  ]);
  const worksTwice = NAMED_TWICE.replace('Round 2\n', 'Round 2: Ch 1, sc in each st around.\n');
  expect(complaints(worksTwice)).toContain('5 row-doubled');
});

it('a count behind an equals sign is held, not taken for what a chain stands for', () => {
  expect(complaints(NAMED_TWICE.replace('(= 24 DC)', '(= 23 DC)'))).toEqual(['5 count-mismatch']);
});

it('a repeat over stitches of an earlier row goes over each of them: 32 x 2, and as many loops', () => {
  const text = `US terms
Ch 6, join to form a ring.
1st Row. Ch 1, 16 sc in ring, join. (16 sc)
2nd Row. Ch 1, * 2 sc in next sc; rep from * around, join. (32 sc)
3rd Row. Ch 1, sc in each sc, join. (32 sc)
4th Row. * Ch 7, 2 dc over next sc of 2nd row, repeat from * all around, join.
5th Row. * Ch 7, sc in next loop, repeat from * all around, join.
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 4', 'Row 5')).toEqual(['Row 4 64 unstated', 'Row 5 32 unstated']);
});

it('a stitch around the joining stitch goes into the space that it closes', () => {
  const text = `US terms
Rnd 1: Ch 1, 24 sc in ring; join. (24 sc)
Rnd 2: Ch 1, sc in first st, *ch 7, sk next 2 sts, sc in next st*, repeat from * to * around to last two sts, ch 5, sk last two sts, dc in first sc. (8 sps)
Rnd 3: Ch 1, sc around joining dc, *ch 7, sc in next ch sp*, repeat from * to * around, ch 5, dc in first sc. (8 sps)
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 8 proven']);
});

it('a stitch that is missed at the base of a counted chain is the one that the chain stands on', () => {
  const text = `UK terms
Ch 21.
Row 1: 1dc in 2nd ch from hook, 1dc in each ch, turn. (20 dc)
Row 2: 3ch (counts as 1tr), miss st at base of 3ch, 1tr into each st to end, turn. (20 tr)
Row 3: 3ch (counts as 1tr), miss next 2 tr, 1tr into each st to end, turn. (18 tr)
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 20 proven', 'Row 3 18 proven']);
});

it('shaping that is spread over a row of stitches that are all named', () => {
  const text = `US terms
Ch 22
Row 1: Sc in 2nd ch from hook and in each ch to end. (21 sc)
Row 2: Ch 1, 1 sc in each sc, inc 3 sc evenly on row = 24 sc.
Row 3: Ch 1, 1 sc in each sc, at the same time, dec 4 sc evenly = 20 sc.
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 2', 'Row 3')).toEqual(['Row 2 24 proven', 'Row 3 20 proven']);
});

it('what is said of rows before they are written out is no repeat of them', () => {
  const text = `Work rounds 1 to 2 through the back loop keeping in mind the following increases:
Round 1: 12 sc in magic ring.
Round 2: 2 sc in each st. You will have a total of 24 stitches.
`;
  expect(complaints(text)).toEqual([]);
});

const FLOWER = `US terms
Ch 4, join with sl st to form ring.
Round 1: Ch 4 (counts as dc, ch 1), *dc in ring, ch 1; rep from * 4 more times, join. (6 dc)
Round 2: Ch 1, *4 dc in ch-sp, sc in next dc. Rep from * around. Join. (24 dc, 6 sc)
Round 3: Working in back of flower, *sc around the post, ch 3. Rep from * around, sl st to first sc. (6 ch-3 lps)
Round 4: Ch 1, *(sc, hdc, 3 dc, hdc, sc) in next ch-3 sp; rep from * around. Join. (42 sts)
Round 5: Ch 1, working behind petals, *sc around post of next sc, ch 5; rep from * around, join. (6 ch-5 sps)
Round 6: Ch 1, *(sc, hdc, 5 dc, hdc, sc) in next ch-5 sp; rep from * around. Join. (54 sts)
Round 7: *Ch 7, sl st behind next petal; rep from * around, join. (6 ch-7 sps)
`;

it('behind petals there is one place for each of them', () => {
  expect(complaints(FLOWER)).toEqual([]);
  expect(worked(FLOWER, 'Rnd 3', 'Rnd 5', 'Rnd 6', 'Rnd 7')).toEqual([
    'Rnd 3 6 proven',
    'Rnd 5 6 proven',
    'Rnd 6 54 proven',
    'Rnd 7 0 proven',
  ]);
  // A round that goes back behind others is not called wrong; the one that leans on it is.
  expect(worked(FLOWER.replace('(6 ch-3 lps)', '(7 ch-3 lps)'), 'Rnd 3')).toEqual(['Rnd 3 6 unchecked']);
  expect(complaints(FLOWER.replace('(54 sts)', '(55 sts)'))).toEqual(['8 count-mismatch']);
});

const OVERLAY = `US terms
Rnd 1: Ch 5, join to form ring, ch 3 (counts as dc), 11 dc in ring, join. (12 dc)
Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join. (24 dc)
Rnd 3: Ch 3, dc in same st, (ch 2, sk next st, 2 dc in next st) around, ch 2, join. (24 dc, 12 ch-2 sps)
Rnd 4: Join C with sc in first dc of any 2-dc pair, sc in next dc, *(tr, ch 2, tr) in next skipped st on rnd 2**, sc in next 2 dc; rep from * around ending last rep at **, join. (24 tr, 24 sc)
`;

it('stitches skipped here and there two rounds below are dipped into on the way', () => {
  expect(complaints(OVERLAY)).toEqual([]);
  expect(worked(OVERLAY, 'Rnd 4')).toEqual(['Rnd 4 48 proven']);
});

it.each([
  'Working in front loops of rnd 2, sc in each st around. (12 sc)',
  'Working in unused front loops of rnd 2, sc in each st around. (12 sc)',
  'In flo of the sts from rnd 2, *sc in next st; rep from * around. (12 sc)',
])('loops left free on an earlier round: %s', (words) => {
  const text = `US terms
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st. (12 sc)
Rnd 3: 2 sc in blo of each st. (24 sc)
Rnd 4: ${words}
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 12 proven']);
  expect(complaints(text.replace('around. (12 sc)', 'around. (13 sc)'))).toEqual(['5 count-mismatch']);
});
