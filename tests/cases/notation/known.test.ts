// What the manuscript has told before: special stitches, sizes, charts, yarns. Examples are invented.
import { describe, expect, test } from 'vitest';
import { NO_VOCABULARY, readOrders, readSpecial } from '../../../src/notation/index.ts';
import { tree } from './shown.ts';

describe('special stitches win over built-in words', () => {
  const specials = new Map([
    ['shell', 'shell'],
    ['sh', 'shell'],
    ['beg shell', 'beg shell'],
    ['cl', 'cluster'],
    ['v-st', 'v-st'],
    ['first open box', 'first open box'],
    ['open box', 'open box'],
  ]);
  test.each([
    ['Shell in next sp', '<shell> @next space'],
    ['5 shells, sc in next st', '5 <shell>; sc @next st'],
    ['*sk 2, sh in next st; rep from * around', '*<skip @next 2; <shell> @next st> ->end'],
    ['Beg shell in same sp, V-st in next V-st', "<beg shell> @same space; <v-st> @next group'v-st'"],
    ['cl in next ch-2 sp, ch 3', '<cluster> @next space2; ch 3'],
    ['Work first open box, work 3 open boxes', '<first open box>; 3 open-box'],
    ['shell in shell', "<shell> @this group'shell'"],
  ])('%s', (text, read) => {
    expect(tree(text, { specials })).toBe(read);
  });
});

describe('sizes', () => {
  test.each([
    ['Ch 28 [30].', 2, 'ch 28/30'],
    ['sc in next 20-24-24 sts', 3, 'sc @next 20/24/24 sts'],
    ['Ch 20 (24, 28)', 3, 'ch 20/24/28'],
    ['4(5) more sc', 2, '4/5 sc'],
    ['sc around. 22, 26, 30 sts', 3, 'sc ->end = 22/26/30 stitch'],
    ['inc x 6 (12)', 1, 'inc 6 = 12'],
    ['sc in next 4 (-, 6) sts', 3, 'sc @next 4/-/6 sts'],
    ['Rep last 2 rows 0 (1, 2) times', 3, 'last 2 rows x0/1/2'],
  ])('%s in %i sizes', (text, sizes, read) => {
    expect(tree(text, { sizes })).toBe(read);
  });
});

test('charts and yarns by name', () => {
  const charts = new Set(['Tide', 'Two Boats']);
  expect(tree('work chart Tide over next 21 boxes', { charts })).toBe('chart "Tide" over 21');
  expect(tree('work chart two boats over boxes 3-23', { charts })).toBe(
    'chart "Two Boats" boxes 3-23',
  );
  expect(tree('With Foam, ch 20', { yarns: new Set(['foam']) })).toBe('yarn with Foam; ch 20');
});

describe('definitions', () => {
  const define = (text: string) => readSpecial(text, 0, text.length, NO_VOCABULARY);
  test.each([
    ['Shell (sh): 5 dc in same st.', 'shell', ['sh'], false],
    ['V-st = (dc, ch 1, dc) in next st', 'v-st', [], false],
    ['Beginning cluster (beg cl) - ch 3, dc2tog in same st', 'beginning cluster', ['beg cl'], false],
    ['Puff: (yo, insert hook, draw up a loop) 3 times, yo, pull through', 'puff', [], true],
    ['First open box of a round: ch 4, sk next dc', 'first open box', [], false],
  ])('%s', (text, key, aliases, opaque) => {
    expect(define(text)).toMatchObject({ key, aliases, opaque });
  });

  test.each(['Gauge: 16 sts = 10 cm', 'Rnd 4: sc around', 'A flat bag worked in one piece.'])(
    '%s defines nothing',
    (text) => {
      expect(define(text)).toBeNull();
    },
  );
});

describe('standing orders in prose', () => {
  const orders = (text: string) => readOrders(text, 0, text.length);
  test.each([
    ['The ch 1 at the start of a round does not count as a stitch.', 'start-chain', { n: 1 }],
    ['Beg ch-3 counts as dc throughout.', 'start-chain', { n: 3 }],
    ['All rounds are right-side rounds; do not turn.', 'turning', { turn: false }],
    ['Turn at the end of each row.', 'turning', { turn: true }],
    ['"Join" means: sl st in first sc.', 'joining', { join: true }],
    ['Work in continuous rounds; do not join.', 'joining', { join: false }],
    ['Work in back loops only throughout.', 'loops', { loop: 'back' }],
    ['Ch 2 to turn each row.', 'turning-chain', { n: 2 }],
    ['Written in UK terms.', 'terms', { terms: 'UK' }],
    ['Chains count as stitches.', 'chains-count', { count: true }],
    ['"Rep from * 5 times" means 5 more times.', 'times', { more: true }],
  ])('%s', (text, kind, rest) => {
    expect(orders(text)).toContainEqual(expect.objectContaining({ kind, ...rest }));
  });

  test('the ch 1 does not count, the ch 3 does', () => {
    const [no] = orders('The ch 1 does not count as a st.');
    const [yes] = orders('Beg ch 3 counts as dc here and throughout.');
    expect(no?.kind === 'start-chain' && no.countsAs.counts).toBe(false);
    expect(yes?.kind === 'start-chain' && yes.countsAs).toMatchObject({ counts: true, stem: 'dc' });
  });

  test('plain prose orders nothing', () => {
    expect(orders('I made this on a rainy day and love the round shape.')).toEqual([]);
  });
});
