/** How rows start and end, and which words hold on behind them. Invented. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions, made, worked } from './worked.ts';

const ROW_1 = 'Ch 12.\nRow 1: Dc in 4th ch from hook and in each ch across. (10 dc)\n';

describe('"dc in 2nd st" behind a chain', () => {
  it('has the chain count, though it is a short one', () => {
    const text = `${ROW_1}Row 2: Ch 2, turn, dc in 2nd st and in each st across.\nRow 3: Ch 2, turn, dc in second dc and in each dc across. (10 dc)\n`;
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 unstated']);
    expect(conventions(text)).toContain('start-chain 2 for the first: counts (custom)');
  });
});

describe('"top of ch" at a row\'s end', () => {
  it.each(['top of ch', 'top of tch', 'top of the ch'])('%s', (place) => {
    const text = `${ROW_1}Row 2: Ch 3, turn, sk first st, dc in each st across, dc in ${place}. (10 dc)\n`;
    expect(worked(text, 'Row 2')).toEqual(['Row 2 10 proven']);
  });
});

it('"DNT" is short for do not turn', () => {
  const text =
    'Rnd 1: 6 sc in magic ring, join. (6) DNT\nRnd 2: Ch 1, 2 sc in each st, join. (12) DNT\n';
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 6 proven', 'Rnd 2 12 proven']);
});

it('a row that opens as its groups go on has a space in its first chain', () => {
  const text =
    'Ch 26.\nRow 1: Sc in 2nd ch from hook and in each ch across, ch 1, turn. (25 sc)\nRow 2: (Sc, ch 3, 3 dc) in first sc, *sk 3 sc, (sc, ch 3, 3 dc) in next sc; rep from * across to last 4 sc, sk 3 sc, sc in last sc. (6 ch-3 sps)\nRow 3: Ch 3, turn, 3 dc in first sc, (sc, ch 3, 3 dc) in each ch-3 sp across, ending with sc in last sp. (6 ch-3 sps)\nRows 4-9: Rep Row 3. (6 ch-3 sps)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 3')).toEqual(['Row 3 24 proven']);
});

describe('a cluster told by its making, without a number', () => {
  const base = 'Ch 8, join.\nRnd 1: Ch 3, 31 dc in ring, join in top of ch 3. (32 dc)\n';
  const HELD =
    'keeping last loop of each st on hook work 1 dc in each st, thread over and work off all loops at one time';
  it.each([
    `${base}Rnd 2: Ch 4, *cluster over next 4 dc (cluster: ${HELD}), ch 4; rep from * around, join. (8 clusters)\n`,
    `Special stitch\n\nCluster: ${HELD}\n\n${base}Rnd 2: Ch 4, *cluster over next 4 dc, ch 4; rep from * around, join. (8 clusters)\n`,
    `${base}Rnd 2: Ch 4, *${HELD.replace('each st,', 'each of next 4 dc,')}, ch 4; rep from * around, join. (8 clusters)\n`,
  ])('closes as many stitches as its use names', (text) => {
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 8 proven']);
  });
});

it('a count behind "top of ch." is the count, and no length of the chain', () => {
  const text =
    'UK terms\n\nRnd 1: Ch 3, 17 tr in magic ring, join in top of ch. 18 tr\nRnd 2: Ch 3, tr in same st, 2 tr in each tr around, ss in 3rd ch. 36 tr.\n';
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 18 proven', 'Rnd 2 36 proven']);
});

describe('a row and its repeats, each with a count of its own', () => {
  const row = 'Dec row: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn.';
  it('in brackets before the order', () => {
    const text = (n: number): string =>
      `Ch 22.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (21 sc)\n${row} (${n} sc) Rep Dec row 2 more times. (15 sc)\n`;
    expect(complaints(text(19))).toEqual([]);
    expect(worked(text(19), 'Dec row')).toEqual(['Dec row 19 proven']);
    expect(complaints(text(20))).not.toEqual([]);
  });
  it('a wrong one is told in each size', () => {
    const text = (counts: string): string =>
      `Sizes S (M, L)\n\nCh 22 (24, 26).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn—21 (23, 25) sc.\n${row.slice(0, -1)}—${counts} sc.\nRep Dec row 1 (2, 2) more times—17 (17, 19) sc.\n`;
    expect(complaints(text('19 (21, 23)'))).toEqual([]);
    expect(complaints(text('19 (21, 24)'))).not.toEqual([]);
    expect(complaints(text('19 (22, 23)'))).not.toEqual([]);
  });
});

it('a handle on a line of its own, told by its name, is a row of its own', () => {
  const text =
    'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each sc. (12 sc)\nRnds 3 & 4: Sc in each sc.\nHandle: Sl st in next 3 sc, ch 16, skip next 4 sc, sl st in next sc, turn.\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 4')).toEqual(['Rnd 4 12 unstated']);
  expect(made(text).at(-1)).toBe(0);
});

it('"(missed 3ch count as 1tr)" names the chains: one chain too many is told', () => {
  const text = (n: number): string =>
    `UK terms\n\nMake ${n}ch.\nRow 1: 1tr in 4th ch from hook (missed 3ch count as 1tr), 1tr in each ch to end, turn. (65tr)\nRow 2: 1ch, 1dc in each tr to end, turn. (65dc)\n`;
  expect(complaints(text(67))).toEqual([]);
  expect(complaints(text(68))).not.toEqual([]);
});

it('"here and throughout" in one part holds in the parts behind it', () => {
  const text = (n: number): string =>
    `US terms\n\nBACK\nCh 22.\nRow 1: Hdc in 3rd ch from hook (skipped 2 ch count as hdc), hdc in each ch to end, turn. (21 hdc)\nRow 2: Ch 2 (counts as hdc here and throughout), sk first st, hdc in each st to end. (21 hdc)\nFasten off.\n\nSLEEVE\nCh 12.\nRow 1: Hdc in 3rd ch from hook (skipped 2 ch count as hdc), hdc in each ch to end, turn. (11 hdc)\nRow 2: Ch 2, hdc in next ${n} hdc, leave rem sts unworked, turn. (9 hdc)\n`;
  expect(complaints(text(8))).toEqual([]);
  expect(complaints(text(9))).not.toEqual([]);
});

it('rows that grow fivefold are worked up to the limit without a hang', () => {
  const text =
    'Ch 42.\nRow 1: Dc in 4th ch from hook and in each ch across. (40 dc)\nRow 2: Ch 4, sk first st, *dc in next dc, ch 1, sk 1 dc; rep from * to last st, dc in last st.\nRow 3: Ch 3, *5 dc in next ch-1 sp, dc in next dc; rep from * to end.\nRows 4-60: Rep Rows 2 and 3.\n';
  const start = process.cpuUsage();
  compile(text, { fixes: false });
  const { user, system } = process.cpuUsage(start);
  // A walk that looked to the row's end at each stitch took minutes.
  expect((user + system) / 1e6).toBeLessThan(20);
});
