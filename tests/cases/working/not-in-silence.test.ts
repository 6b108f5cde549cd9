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

test('a bare picot stands on what was made last', () => {
  const text = `Rnd 1: 16 sc in magic ring; join.
Rnd 2: Ch 1, *sc in next 2 sc, picot; rep from * around; join. (16 sc, 8 picots)
`;
  expect(made(text)).toEqual([16, 16]);
});

const PETALS = `Ch 12, join to form a ring.
Rnd 1: Ch 3, 23 dc in ring, join.
Rnd 2: Ch 1, sc in same st, *ch 5, skip next dc, 2 tr in next dc; rep from * around, join.
`;

test('a last space that is not worked, where all before it are, is no row that came out', () => {
  const text = `Rnd 1: Ch 4, *dc in magic ring, ch 1; rep from * 8 times, join. (9 ch-1 sps)
Rnd 2: Ch 1, (2 sc in next sp) 7 times, join.
Rnd 3: Ch 1, sc in each sc around.
`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 14 unchecked']);
  expect(notes(text)).toContain('not-followed');
});

test('a reading that works them all is taken', () => {
  const text = `${PETALS}Rnd 3: Sc in first st, *(hdc, 3 dc, hdc) in next sp, sc between next 2 tr; rep from * around, join.\n`;
  expect(worked(text, 'Rnd 3')[0]).toMatch(/unstated$/);
  expect(made(text).at(-1)).toBeGreaterThanOrEqual(72);
});

test.each([
  ['Ch 1, *2 sc in next sp; rep from * around, join.', 'Rnd 2 18 unstated'],
  ['Ch 1, *2 sc in next sp, skip next sp; rep from * around, join.', 'Rnd 2 10 unstated'],
  ['Ch 1, (2 sc in next sp) 7 times, leave remaining sps unworked.', 'Rnd 2 14 unstated'],
])('no spaces are left: %s', (words, row) => {
  const text = `Rnd 1: Ch 4, *dc in magic ring, ch 1; rep from * 8 times, join. (9 ch-1 sps)
Rnd 2: ${words}
`;
  expect(worked(text, 'Rnd 2')).toEqual([row]);
});

test('"same sp as beginning 3 dc" is one place', () => {
  const text = `Ch 6, join to form ring.
Rnd 1: Ch 3, 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times; join. (4 ch-2 sps)
Rnd 2: Sl st to ch-2 sp, ch 3, 2 dc in same sp, ch 1, [(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1] 3 times, 3 dc in same sp as beginning 3 dc, ch 2; join.
`;
  expect(made(text)).toEqual([12, 24]);
});

const TWENTY_FOUR = 'Rnd 1: 24 dc in magic ring, join.\n';

test.each([
  ['(24 sts)', 'Rnd 2 24 proven'],
  ['(25 sts)', 'Rnd 2 24 mismatch'],
])('a second order "from *" that goes around is of all behind the star: %s', (count, row) => {
  const text = `${TWENTY_FOUR}Rnd 2: *Dc in next st, ch 1; rep from * twice, tr in next st; rep from * around. ${count}\n`;
  expect(worked(text, 'Rnd 2')[0]).toBe(row);
});

test('of which of two stars such an order speaks is not told', () => {
  const text = `${TWENTY_FOUR}Rnd 2: *Dc in next st, ch 1; rep from * twice, tr in next st, *sc in next st, ch 2; rep from * twice, hdc in next st; rep from * around.\n`;
  expect(worked(text, 'Rnd 2')[0]).toMatch(/unread$/);
});

test('"between * and *" is that repeat again', () => {
  const text = `${TWENTY_FOUR}Rnd 2: *Dc in next st, ch 1* 3 times, tr in next st, rep between * and * around.\n`;
  expect(worked(text, 'Rnd 2')[0]).toBe('Rnd 2 24 unstated');
});

test('working even on a bare chain is not checked: the stitch is not told', () => {
  const text = 'Ch 60.\nWork even in pattern until piece measures 20 cm.\n';
  expect(compile(text).rows.at(-1)?.verdict).toBe('unchecked');
});

test('working even on a row goes on in its stitch', () => {
  const text = `Ch 61.
Row 1: Sc in 2nd ch from hook and in each ch across. (60 sc)
Work even for 2 more rows.
`;
  expect(compile(text).rows.map(({ verdict }) => verdict)).toEqual([
    'proven',
    'unstated',
    'unstated',
  ]);
});

test('a row told by the name of a pattern is listed as taken for talk', () => {
  const text = `Wave pattern
Row 1: Dc in 4th ch from hook and in each ch across, turn.
BACK
Ch 60.
Work Wave Pattern Row 1 (see there). (58 sts)
`;
  expect(compile(text).notChecked.join(' ')).toContain('"Work Wave Pattern Row 1');
});

test('a comma too many before the other sizes', () => {
  const text = `Sizes: S (M, L)

Ch 66 (66, 70).
Row 1: Dc in 4th ch from hook (skipped ch count as dc), dc in next 35, (35, 37) ch, hdc in each ch to end. (64 (64, 68))
`;
  expect(compile(text).rows.map(({ verdict }) => verdict)).toEqual(['proven', 'proven', 'proven']);
});

const GRANNY = `Rnd 1: Ch 3, 2 dc in magic ring, ch 2, (3 dc in ring, ch 2) 3 times, join to top of ch 3.`;
const CORNERS =
  'Rnd 2: (Ch 3, 2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, join. (24 dc)';

test.each([
  ['Join B in any corner sp.'],
  ['Fasten off.\nJoin B in any ch-2 sp.'],
  ['Attach B with sl st to any corner sp.'],
])('a round begins where its yarn was joined in a line of its own: %s', (line) => {
  const text = `${GRANNY}\n${line}\n${CORNERS}\n`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
  expect(complaints(text)).toEqual([]);
});

test('behind a counted round too', () => {
  const text = `${GRANNY} (12 dc)\nJoin B in any corner sp.\n${CORNERS}\n`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 24 proven']);
});

test('yarn joined with a stitch is the first of the round', () => {
  const text = `Rnd 1: Ch 4 (counts as dc and ch 1), (dc in magic ring, ch 1) 11 times, join. Fasten off.
With B, join with sc in any ch-1 sp.
Rnd 2: 2 sc in same sp, 3 sc in each ch-1 sp around, join. (36 sc)
`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 36 proven']);
});

test('a join in the first stitch with new yarn closes the round', () => {
  const text = `Rnd 1: 12 sc in magic ring, join B with sl st in first sc. (12)
Rnd 2: Ch 1, 2 sc in each sc around, join. (24)
`;
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven']);
});

test('a ring of its own chain is no end of the row', () => {
  const text = `Rnd 1: 6 sc in magic ring, join. (6)
Rnd 2: Sc in next 3 sc, ch 10, sl st in 5th ch to make a ring, ch 5, sc in next 3 sc, join. (6 sc)
`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 6 proven']);
});

test('the chain that leads over a skip is repeated with it', () => {
  const text = `Ch 31.
Row 1: Sc in 2nd ch from hook and in each ch across. (30)
Row 2: Ch 3, skip 2 sts, dc in next st, repeat to end. (10 dc, 10 ch-3 sps)
`;
  expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
});

test('a chain to turn with is not repeated', () => {
  const text = `Ch 31.
Row 1: Sc in 2nd ch from hook and in each ch across. (30)
Row 2: Ch 3, dc in next st, ch 1, skip 1 st, repeat to end.
`;
  expect(conventions(text).join()).toContain('start-chain 3');
});

test('"in the 5 chain of the last row" is the loop', () => {
  const text = `Rnd 1: 16 sc in magic ring, join.
Rnd 2: Ch 5, skip 1 st, sc in next st, repeat around, join.
Rnd 3: *Ch 3, 1 sc in the 5 chain of the last row; repeat from * around.
`;
  expect(made(text)).toEqual([16, 8, 8]);
});

test('the first row of a piece under its name is no special stitch', () => {
  const text = `Special Stitches: Picot: ch 3, sl st in 3rd ch from hook.
Edging – Row 1: Ch 17, dc in 7th ch from hook and in each ch across. (11 dc)
Row 2: Dc in each dc across.
`;
  expect(compile(text).manuscript.specials.map(({ key }) => key)).toEqual(['picot']);
});

const TWELVE = 'Rnd 1: 12 dc in magic ring, join. (12)\n';

test.each([
  ['Ch 1, sc in next 3 sts, 2 sc in next st, continue in pattern around.', '13 unchecked'],
  ['Ch 1, sc in next 3 sts, 2 sc in next st. Continue in this pattern to end.', '15 unstated'],
  ['Ch 1, sc in first 4 sts, work in pattern to end.', '12 unstated'],
  ['(Ch 3, dc, ch 2, 2 dc) in first st, dc in next 2 sts. Continue in this manner around.', 'unread'],
])('going on in pattern: %s', (words, row) => {
  expect(worked(`${TWELVE}Rnd 2: ${words}\n`, 'Rnd 2')[0]).toContain(row);
});

const LOOPED = `Rnd 1: 12 sc in magic ring, join. (12)
Rnd 2: Ch 1, sc in first sc, *ch 5, sc in next sc; rep from * around, ch 5, join. (12 ch-5 loops)
`;

test.each([
  ['dc2tog over next 2 loops', 'Rnd 3 6 unstated'],
  ['2-dc cluster across next two loops', 'Rnd 3 6 unstated'],
  ['dc2tog in next loop', 'Rnd 3 12 unstated'],
])('one stitch over two loops: %s', (what, row) => {
  expect(worked(`${LOOPED}Rnd 3: *Ch 7, ${what}; rep from * around, join.\n`, 'Rnd 3')).toEqual([row]);
});

test('a cluster in each of two loops, where the count says so', () => {
  const text = `${LOOPED}Rnd 3: *Ch 7, dc2tog in next 2 loops; rep from * around, join. (12 dc)\n`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 12 proven']);
});

test('behind a join the same space is the place of the join', () => {
  const text = `Rnd 1: 16 sc in magic ring, join.
Rnd 2: Ch 7 (counts as dc and ch 4), sk 1 sc, *dc in next sc, ch 4, sk 1 sc; rep from * around, join in 3rd ch of ch-7.
Rnd 3: Ch 1, 1 sc, ch 3, 1 sc in same space, *ch 4, dc in next dc, ch 4, 1 sc, ch 3, 1 sc in next dc; rep from * all around ending to correspond, join in 1st sc.
`;
  expect(made(text)).toEqual([16, 8, 12]);
});

test('a chain that leads up to a whole shell is none of its stitches', () => {
  const text = `Shell: 2 dc, ch 2, 2 dc in same place.
Rnd 1: 16 dc in magic ring, join. (16)
Rnd 2: Ch 3, dc in same st, ch 2, 2 dc in same st, *sk 3 sts, shell in next st; rep from * around, join. (16 dc)
Rnd 3: Sl st to center of shell, ch 3, shell in same sp, *ch 2, shell in next shell; rep from * around, ch 2, join. (16 dc)
`;
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 16 proven']);
});

test('where a star is lost, and no count tells, neither the row nor what stands on it is checked', () => {
  const text = `Rnd 1: 12 sc in magic ring, join.
Rnd 2: Ch 4, dc in same st, ch 2, tr in next st, ch 2, dc in next st; rep from * around, join.
Rnd 3: Ch 1, *sc in next 4 sts; rep from * around, join.
Rnd 4: Ch 1, *sc in next 2 sts; rep from * around, join. (16)
`;
  expect(compile(text).rows.map(({ verdict }) => verdict)).toEqual([
    'unstated',
    'unchecked',
    'unchecked',
    'unchecked',
  ]);
  expect(complaints(text)).toEqual(['2 star-missing']);
});

test.each([
  ['(4 rows, total of 96 sts)', 'Row 5 24 proven'],
  ['(4 rows of 24 sts)', 'Row 5 24 proven'],
  ['(4 rows, total of 95 sts)', 'Row 5 24 mismatch'],
])('a sum over all rows of a label: %s', (count, row) => {
  const text = `Ch 25.
Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)
Rows 2-5: Ch 1, turn, sc in each sc across. ${count}
`;
  expect(worked(text, 'Row 5')).toEqual([row]);
});

test.each([
  ['10 times', []],
  ['9 times', ['2 stitches-left']],
])('loops up to the stitch where the round began: %s', (times, told) => {
  const text = `Rnd 1: 12 sc in magic ring, join. (12)
Rnd 2: *Ch 5, sc in next sc; rep from * ${times}, ch 2, dc in first sc.
`;
  expect(complaints(text)).toEqual(told);
});

test('a loop in whose middle a round begins may stay', () => {
  const text = `Rnd 1: 16 sc in magic ring, join.
Rnd 2: Ch 3, 2 dc in same st, *ch 7, sk 3 sts, 3 dc in next st; rep from * around, ch 7, join.
Rnd 3: Sl st to next dc, *ch 5, 3 dc in next loop, ch 5, sc in center dc of next dc group; rep from * around, ending with ch 5, 3 dc in next loop, ch 2, tr in same space with sl st.
Rnd 4: *Ch 7, sc in next loop; rep from * around, ending with ch 3, tr in tr.
`;
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 7 unstated']);
});

test.each([
  ['(6 dc2tog, 6 ch-7 loops)', 'Rnd 3 6 proven', false],
  ['(12 dc2tog, 6 ch-7 loops)', 'Rnd 3 6 unstated', true],
])('stitches drawn together are counted among others: %s', (count, row, isLeft) => {
  const text = `${LOOPED}Rnd 3: *Ch 7, dc2tog over next 2 loops; rep from * around, join. ${count}\n`;
  expect(worked(text, 'Rnd 3')).toEqual([row]);
  expect(/number was not compared/.test(compile(text).notChecked.join(' '))).toBe(isLeft);
});

test.each(['Dec row 1:', 'Decrease row 1:', 'Dec Row 1 -', 'Dec row:'])(
  'a row is not ended by the first word of the label below it: %s',
  (label) => {
    const text = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20)
Row 2: Sc in each sc across, ch 1, turn.
${label} Sc in first 8 sc, (dec over next 2 sts) twice, sc in last 8 sc, turn. (18)
`;
    expect(made(text)).toEqual([20, 20, 18]);
    expect(complaints(text)).toEqual([]);
  },
);

test('a row that ends in a decrease keeps it', () => {
  const text = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20)
Row 2: Ch 1, turn, sc in first 18 sc, dec.
Row 3: Ch 1, turn, sc in each sc across. (19)
`;
  expect(made(text)).toEqual([20, 19, 19]);
});

test('a skip told when all of the row is worked leaves its number open', () => {
  const text = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20)
Next 4 Rows: Working in pattern as established, sk first sc of each row (1 sc dec each row).
Next row: Sc in each sc. (16 sc)
`;
  expect(complaints(text)).toEqual([]);
  expect(compile(text).rows.map(({ verdict }) => verdict).slice(1, 5)).toEqual(
    Array(4).fill('unchecked'),
  );
});

test('a skip of the first stitch before the rest is worked', () => {
  const text = `Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across. (20)
Row 2: Ch 1, turn, sk first sc, sc in each sc across. (19)
`;
  expect(worked(text, 'Row 2')).toEqual(['Row 2 19 proven']);
});

const verdicts = (text: string): string[] => compile(text).rows.map(({ verdict }) => verdict);

const UNREAD_BENEATH = `Rnd 1: Ch 4, join. Ch 3, 17 dc in ring, join. (18 dc)
Rnd 2: Ch 6, *sk 2 dc, dc in next dc, ch 3; rep from * around, join. (6 dc)
Rnd 3: Ch 1, *sc in next sp, ch 4, plait the tassel over; rep from * around, join. (6 sc)
`;

test('spaces of a size that was not made are left open on a round that was not understood', () => {
  const text = `${UNREAD_BENEATH}Rnd 4: Ch 1, *7 sc in next sp, sc in next ch-9 sp; rep from * around, join.
Rnd 5: Ch 1, sc in each sc around, join.
`;
  expect(verdicts(text).slice(2)).toEqual(['unread', 'unchecked', 'unchecked']);
});

test('spaces that are there are worked on a round that was not understood', () => {
  const text = `${UNREAD_BENEATH}Rnd 4: Ch 1, 7 sc in each ch-4 sp around, join.
Rnd 5: Ch 1, sc in each sc around, join.
`;
  expect(verdicts(text).slice(2)).toEqual(['unread', 'unstated', 'unstated']);
  expect(made(text).slice(3)).toEqual([42, 42]);
});

const SHELLS = `Row 1: Ch 25, dc in 4th ch from hook and in each ch across, turn. (23 dc)
Row 2: Ch 3, dc in next dc, *sk 2 dc, shell in next dc, sk 2 dc, dc in next dc; rep from * across, dc in last 3 dc, turn.
Row 3: Ch 3, dc in next 3 dc, sc in next 60 dc, dc in last dc, turn.
`;

test('what stands on a row that was left open is open too', () => {
  const text = `${SHELLS}Row 4: Ch 1, sc in each st across, turn.
Row 5: Ch 1, sc in each st across, turn.
`;
  expect(verdicts(text).slice(2)).toEqual(['unchecked', 'unchecked', 'unchecked']);
});

test('a number told for the row that was left open holds for those on it', () => {
  const text = `${SHELLS.replace(/turn\.\n$/, 'turn. (65 sts)\n')}Row 4: Ch 1, sc in each st across, turn.
`;
  expect(verdicts(text).at(-1)).toBe('unstated');
});

const TREBLES = `Rnd 1: Ch 8, join. Ch 4, 23 tr in ring, join. (24 tr)
`;

test.each(['first tr of first cluster', '1st tr of the 3-tr cluster', 'a tr of beg cluster'])(
  'a start chain that counts as %s is no stitch beside it',
  (what) => {
    const text = `${TREBLES}Rnd 2: Ch 4 (counts as ${what}), holding back last loop of each tr, work 2 tr in same st, yo and draw through all loops on hook, *ch 3, sk 1 tr, 3-tr cluster in next tr; rep from * around, ch 3, join in top of first cluster. (12 clusters)
Rnd 3: Ch 1, sc in each cluster around, join. (12 sc)
`;
    expect(worked(text, 'Rnd 2', 'Rnd 3')).toEqual(['Rnd 2 12 proven', 'Rnd 3 12 proven']);
    expect(complaints(text)).toEqual([]);
  },
);

test('a start chain that counts as the first of the round is a stitch', () => {
  const text = `${TREBLES}Rnd 2: Ch 4 (counts as first tr of rnd), tr in same st, *2 tr in next tr; rep from * around, join. (48 tr)
`;
  expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 48 proven']);
});
