// A wrong number that another reading of the row, or the row beneath, would take in: it is told all the
// same. Common practice; the numbers are of our own.
import { describe, expect, test } from 'vitest';
import { complaints, worked } from './worked.ts';

const plain = (second: number, third: number): string =>
  'Rnd 1: 24 sc in ring, join. (24 sc)\n' +
  `Rnd 2: Ch 1, sc in same sp as joining and whatever you like around, join. (${second} sc)\n` +
  `Rnd 3: Ch 1, sc in same sp as joining and in each sc around, join. (${third} sc)\n` +
  `Rnd 4: Ch 1, sc in each sc around, join. (${third} sc)\n`;

describe('"sc in each sc around" says as many as the row beneath, even where that was not understood', () => {
  test('as many', () => {
    expect(complaints(plain(36, 36))).toEqual(['2 unread']);
  });
  test.each([35, 37, 38, 40])('36, and then %i', (other) => {
    expect(complaints(plain(36, other))).toContain('3 count-mismatch');
  });
});

const skipped = (third: number): string =>
  'Ch 26 and join with a sl st.\n' +
  'Rnd 1: Ch 1, sc in each ch around, join. (26 sc)\n' +
  'Rnd 2: Ch 2 (counts as first dc), skip st and dc in each sc around. Join with sl st to top of ch 2. (26 dc)\n' +
  `Rnd 3: Ch 2 (counts as first dc), skip st and dc in each dc around. Join with sl st to top of ch 2. (${third} dc)\n`;

describe('words that mean one thing in a proven row mean the same in the next', () => {
  test('read alike', () => {
    expect(complaints(skipped(26))).toEqual([]);
  });
  test('read otherwise', () => {
    expect(complaints(skipped(25))).toEqual(['4 reading-differs']);
  });
});

const yoke = (last: number): string =>
  'UK terms\n' +
  'Row 1: 37ch, 1tr in 4th ch from hook, 1tr in each ch to end, turn. (35tr)\n' +
  'Row 2: 3ch, 8tr, *(1tr, 1ch, 1tr) in next st, 7tr; rep from * to last 2 sts, 2tr, turn. (38 sts)\n' +
  'Row 3: 3ch, 9tr, *(1tr, 1ch, 1tr) in ch-sp, 9tr; rep from * to last ch-sp, (1tr, 1ch, 1tr) in ch-sp, 10tr, turn. (44 sts)\n' +
  `Row 4: 3ch, 10tr, *(1tr, 1ch, 1tr) in ch-sp, 11tr; rep from * to last ch-sp, (1tr, 1ch, 1tr) in ch-sp, 11tr, turn. (${last} sts)\n`;

describe('rows with the same spaces are counted alike', () => {
  test('without their chains', () => {
    expect(complaints(yoke(50))).toEqual([]);
  });
  test('one with them', () => {
    expect(complaints(yoke(53))).toEqual(['5 reading-differs']);
  });
});

const between = (spaces: number): string =>
  'Rnd 1: Ch 3 (counts as dc now and throughout), 9 dc in ring, sl st in top of ch 3 to join. (10 dc)\n' +
  `Rnd 2: Ch 3, dc between dc, ch 1, (dc in dc, dc between dc, ch 1) 9 times, sl st in top of ch 3 to join. (20 dc, ${spaces} ch-1 sps)\n`;

describe('where all counts but one are met in a reading that ends where the row does, that one is wrong', () => {
  test('met', () => {
    expect(complaints(between(10))).toEqual([]);
  });
  test.each([9, 11, 14])('%i spaces', (n) => {
    expect(complaints(between(n))).toEqual(['2 count-mismatch']);
  });
});

describe('one chain passed before hdc is no stitch', () => {
  test.each([
    [17, []],
    [18, ['2 count-mismatch']],
  ])('%i', (n, told) => {
    const row = `Ch 18.\nRow 1: Hdc in 2nd ch from hook and in each ch across, turn. (${n} hdc)\n`;
    expect(complaints(row)).toEqual(told);
  });
});

describe('words that tell how often, or how many, hold no count back', () => {
  const toy = (row: string): string => `Rnd 1: 9 sc in MR. (9)\nRnd 2: 2 sc in each st around. (18)\n${row}\n`;
  test.each([
    ['Rnds 3-5: sc around (18) - repeat 3 rows', []],
    ['Rnds 3-5: sc around (19) - repeat 3 rows', ['3 count-mismatch']],
    ['R3-7: sc all (18) (you will repeat this round till you have 7 rows)', []],
    ['R3-7: sc all (22) (you will repeat this round till you have 7 rows)', ['3 count-mismatch']],
    ['Rnd 3: 18 sc, no change (18)', []],
    ['Rnd 3: 17 sc, no change (18)', ['3 stitches-left']],
    ['Rnd 3: 18 sc, no change (22)', ['3 count-mismatch']],
    ['Rnd 3: sc in each st around, inc 6 sts evenly spaced. (24)', []],
    ['Rnd 3: sc in each st around, inc 10 sts evenly spaced. (24)', ['3 count-mismatch']],
  ])('%s', (row, told) => {
    expect(complaints(toy(row))).toEqual(told);
  });
});

const shoulders = (count: number): string =>
  'Ch 38.\nRow 1 (RS): Dc in 4th ch from hook (skipped ch count as dc), dc in each ch across. (36 dc)\n' +
  'Row 2 (first shoulder): Turn, ch 3 (counts as dc), dc in next 9 dc, leave remaining sts unworked. (10 dc)\nFasten off.\n' +
  'Row 2 (second shoulder): With RS facing, sk next 16 unworked sts of Row 1, join yarn with sl st in next st, ' +
  `ch 3 (counts as dc), dc in next 9 dc. (${count} dc)\nFasten off.\n`;

test.each([
  [10, []],
  [11, ['5 count-mismatch']],
  [14, ['5 count-mismatch']],
])("a second shoulder's row is held to its count of %i", (count, told) => {
  expect(complaints(shoulders(count))).toEqual(told);
});

const vest = (count: number): string =>
  'Vest - sizes S/M (L/XL), US terms\n\nCh 43 (47)\n' +
  'Row 1. Dc in 4th ch from hook (3 skipped ch = 1 dc), dc in each ch. Turn. {41 (45)}\n' +
  'Rows 2-6 (8). Ch 3 (= dc), dc in next 40 (44). Turn. {41 (45)}\n' +
  `Row 7 (9). Ch 1, sc 15 (17), leave the rest. Fasten off. {${count} (17)}\n`;

test.each([
  [15, []],
  [16, ['6 count-mismatch']],
  [19, ['6 count-mismatch']],
])('a row numbered for each size is held to its count of %i', (count, told) => {
  expect(complaints(vest(count))).toEqual(told);
});

describe('all stitches in the first chain of a short one: its other chains may stand for one', () => {
  test.each([
    ['Rnd 1: Ch 4, 13 dc in first ch, join. (14)', []],
    ['Rnd 1: Ch 4, 13 dc in first ch, join. (13)', []],
    ['Rnd 1: Ch 3, 7 hdc in first ch, join. (8)', []],
    ['Rnd 1: Ch 4, 13 dc in first ch, join. (15)', ['1 count-mismatch']],
    ['Rnd 1: Ch 2, 7 sc in first ch, join. (8)', ['1 count-mismatch']],
  ])('%s', (row, told) => {
    expect(complaints(`${row}\n`)).toEqual(told);
  });
});

test('counts that contradict each other over a round that was not understood are told', () => {
  const rounds = (last: number): string =>
    'Rnd 1: 16 sc in ring, join. (16 sc)\nRnd 2: Ch 1, sc in same st and whatever you like around, join. (24 sc)\n' +
    `Rnd 3: Ch 1, *2 sc in next sc, sc in each of next 2 sc; rep from * around, join. (${last} sc)\n`;
  expect(complaints(rounds(32))).toEqual(['2 unread']);
  expect(complaints(rounds(36))).toEqual(['2 unread', '3 count-mismatch']);
});

test('the join names the start chain of its own round, whatever lies beneath', () => {
  const rounds = (chain: number): string =>
    'Rnd 1: Ch 3, 11 dc in ring, join in top of ch-3. (12 dc)\nRnd 2: Ch 3, dc in same st and whatever you like around, join. (24 dc)\n' +
    `Rnd 3: Ch 3, dc in next dc, dc in each dc around, join in top of ch-${chain}. (24 dc)\n`;
  expect(complaints(rounds(3))).toEqual(['2 unread']);
  expect(complaints(rounds(2))).toEqual(['2 unread', '3 space-size']);
});

describe('rows that read otherwise than the first, and are proven so, hide no fault behind them', () => {
  const hat = (fifth: number): string =>
    'Rnd 1: 11 dc in magic ring, join. (11)\nRnd 2: Ch 3 (count as 1st dc, *2 dc in each dc around, join. (22)\n' +
    [3, 4, 5, 6, 7]
      .map((n) => `Rnd ${n}: Ch 3, inc, *${n - 2} dc, inc* rep from * to * around, join. (${n === 5 ? fifth : 11 * n})\n`)
      .join('');
  test('sound', () => {
    expect(complaints(hat(55))).not.toContain('5 repeat-remainder');
  });
  test.each([54, 56, 57])('%i for 55', (fifth) => {
    const told = complaints(hat(fifth)).filter((one) => /^[56] (?:repeat|count|round)/.test(one));
    expect(told).not.toEqual([]);
  });
});

test.each([
  ['hdc in free loops of next 11 chs', 28, []],
  ['hdc in unused loops of each of next 11 chs', 28, []],
  ['hdc in free loops of next 11 chs', 29, ['1 count-mismatch']],
  ['hdc in free loops of next 13 chs', 28, ['1 count-mismatch']],
])('along the loops left of a chain go as many as there are chains named: %s (%i)', (back, n, told) => {
  const row =
    'Rnd 1: Ch 14, hdc in 2nd ch from hook and in next 11 chs, 3 hdc in last ch. Working on opposite side of ' +
    `starting chain, ${back}, 2 hdc in last ch; join with sl st in first hdc. (${n} sts)\n`;
  expect(complaints(row).length > 0).toBe(told.length > 0);
});

test('a count for each of two sizes that nothing names is held to the first', () => {
  const hat = (first: number): string =>
    'Rnd 1: 12 dc in ring, join. (12 dc)\nRnd 2: Ch 2, 2 dc in each st, join in first dc. (24 dc)\n' +
    `Rnd 3 [4]: Ch 1, sc in each st around, join. (${first}, 28 sc)\n`;
  expect(complaints(hat(24))).toEqual([]);
  expect(complaints(hat(25))).toEqual(['3 count-mismatch']);
});

test.each([
  ['sc in all 9 stitches. (9)', []],
  ['sc in all 10 stitches. (9)', ['2 round-overrun']],
  ['sc in all 8 stitches. (9)', ['2 stitches-left']],
])('all that are named are all that there are: %s', (words, told) => {
  expect(complaints(`Rnd 1: 9 sc in MR. (9)\nRnd 2: ${words}\n`)).toEqual(told);
});

test('a count at the end of the last of several rows is none of those before it, where others stand between', () => {
  const text =
    'Row 1: Ch 9, sc in 2nd ch from hook and in each ch across, turn. (8 sc)\n' +
    'Rows 2, 4 & 6: Sc in each sc across, turn. (12 sc at end of row 6)\n' +
    'Rows 3, 5 & 7: 2 sc in first sc, sc in each sc to last, 2 sc in last sc, turn. (14 sc at end of row 7)\n' +
    'Row 8: Sc in each sc across. (14 sc)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 8')).toEqual(['Row 8 14 proven']);
  const alike = 'Rnd 1: 8 sc in ring, join. (8)\nRnds 2, 4 & 6: Ch 1, sc in each sc around, join. (9)\n';
  expect(complaints(alike)).toContain('2 count-mismatch');
});

test('a row with spaces that is proven by another reading is told itself, and not one of the rows behind it', () => {
  const shawl = (third: number): string =>
    'Ch-4 counts as dc + ch 1.\n\nSet up: Ch 4, join with sl st to form a ring.\n' +
    'Row 1: Ch 4, (3 dc, ch 2, 3 dc) in ring, ch 1, dc in ring. Turn. [2 groups, 8 dc]\n' +
    'Row 2: Ch 4, 3 dc in first ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in centre ch-2 sp, ch 1, 3 dc in last sp, ch 1, ' +
    'dc in 3rd ch of ch-4. Turn. [4 groups, 14 dc]\n' +
    `Row 3: Ch 4, 3 dc in first sp, ch 1, ${third} dc in next sp, ch 1, (3 dc, ch 2, 3 dc) in centre sp, ch 1, ` +
    '3 dc in next sp, ch 1, 3 dc in last sp, ch 1, dc in 3rd ch of ch-4. Turn. [6 groups, 20 dc]\n' +
    'Row 4: Ch 4, 3 dc in first sp, *ch 1, 3 dc in next ch-1 sp; rep from * to centre sp, ch 1, (3 dc, ch 2, 3 dc) ' +
    'in centre sp, **ch 1, 3 dc in next ch-1 sp; rep from ** to end, ch 1, dc in 3rd ch of ch-4. Turn. [8 groups, 26 dc]\n';
  expect(complaints(shawl(3))).toEqual([]);
  expect(complaints(shawl(4))).toEqual(['6 reading-differs']);
});
