// A wrong number that another reading of the row, or the row beneath, would take in: it is told all the
// same. Common practice; the numbers are of our own.
import { describe, expect, test } from 'vitest';
import { complaints } from './worked.ts';

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
