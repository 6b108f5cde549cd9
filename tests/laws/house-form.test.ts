// The house form, from trees built by hand: what the writer prints, seen without the reader. The
// expected lines are of our own making; hyphen, bracket and repeat usage are common practice, and
// the pairs of US and UK words are the trade's published ones (docs/sources.md).
import { describe, expect, test } from 'vitest';
import type { Instruction, Step } from '../../src/notation/index.ts';
import { writeInstruction, writeOrder, writeSpecial } from '../../src/notation/write/index.ts';
import {
  chain,
  count,
  end,
  join,
  label,
  NOWHERE,
  noun,
  numbers,
  place,
  repeat,
  rowsAgain,
  stitch,
  work,
} from './build.ts';

const sc = stitch({ stem: 'sc' });
const dc = stitch({ stem: 'dc' });
const next = place({});
const nextSome = (...n: number[]) =>
  place({ n: numbers(...n), nouns: [noun({ plural: n.some((value) => value !== 1) })] });
const rnd = (n: number) => label({ numbers: [n] });
const asDc = {
  ...NOWHERE,
  counts: true,
  named: false,
  stem: 'dc',
  stitches: 1,
  chains: 1,
  throughout: false,
};

const told = (steps: readonly Step[], said: Partial<Instruction> = {}): Instruction => ({
  label: null,
  steps,
  counts: [],
  orders: [],
  slips: [],
  ...said,
});

const chain3OfBeg = place({
  pick: 'nth',
  nth: 3,
  nouns: [noun({ kind: 'chain' })],
  of: place({ pick: 'this', nouns: [noun({ kind: 'start-chain', chains: numbers(4) })] }),
});

const cases: readonly (readonly [us: string, uk: string, tree: Instruction])[] = [
  [
    'Rnd 4: Ch 1, 2 sc in next st, *sc in next 3 sts, 2 sc in next st; rep from * 5 more times; join. (36 sc)',
    'Rnd 4: Ch 1, 2 dc in next st, *dc in next 3 sts, 2 dc in next st; rep from * 5 more times; join. (36 dc)',
    told(
      [
        chain(numbers(1)),
        work({ n: numbers(2), stitch: sc, place: next }),
        repeat({
          steps: [
            work({ stitch: sc, place: nextSome(3) }),
            work({ n: numbers(2), stitch: sc, place: next }),
          ],
          times: { ...NOWHERE, kind: 'times', n: numbers(5), more: true },
        }),
        join({}),
      ],
      { label: rnd(4), counts: [count(numbers(36), { unit: 'stem', stem: 'sc' })] },
    ),
  ],
  [
    'Rnd 10: Ch 4 (counts as dc and ch 1), sk next st; join with sl st in 3rd ch of beg ch-4. (52 boxes)',
    'Rnd 10: Ch 4 (counts as tr and ch 1), miss next st; join with ss in 3rd ch of beg ch-4. (52 boxes)',
    told(
      [
        chain(numbers(4), { countsAs: asDc }),
        { ...NOWHERE, kind: 'skip', countsAs: null, place: next },
        join({ with: stitch({ stem: 'ss' }), place: chain3OfBeg }),
      ],
      { label: rnd(10), counts: [count(numbers(52), { unit: 'box' })] },
    ),
  ],
  [
    'Row 2: Sc in next 20 (24, 28) sts, sc2tog, FPdc around next st; turn. (22 (26, 30) sts)',
    'Row 2: Dc in next 20 (24, 28) sts, dc2tog, FPtr around next st; turn. (22 (26, 30) sts)',
    told(
      [
        work({ stitch: sc, place: nextSome(20, 24, 28) }),
        work({ stitch: stitch({ shape: 'together', stem: 'sc', legs: 2 }) }),
        work({ stitch: stitch({ stem: 'dc', post: 'front' }), place: next }),
        { ...NOWHERE, kind: 'turn', not: false },
      ],
      {
        label: label({ word: 'row', numbers: [2] }),
        counts: [count(numbers(22, 26, 30), { unit: 'stitch' })],
      },
    ),
  ],
  [
    'Fsc 36.',
    'Fdc 36.',
    told([
      work({
        n: numbers(36),
        numberAfter: true,
        stitch: stitch({ stem: 'sc', foundation: true }),
      }),
    ]),
  ],
  [
    'Rnds 4-9 (WS): (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in each dc around; join. Fasten off. (68 dc, 2 ch-50 sps)',
    'Rnds 4-9 (WS): (2 tr, ch 2, 2 tr) in next ch-2 sp, tr in each tr around; join. Fasten off. (68 tr, 2 ch-50 sps)',
    told(
      [
        {
          ...NOWHERE,
          kind: 'group',
          steps: [
            work({ n: numbers(2), stitch: dc }),
            chain(numbers(2)),
            work({ n: numbers(2), stitch: dc }),
          ],
          place: place({ nouns: [noun({ kind: 'space', chains: numbers(2) })] }),
          loose: false,
        },
        work({
          stitch: dc,
          place: place({
            pick: 'each',
            each: true,
            nouns: [noun({ kind: 'stem', stem: 'dc' })],
            until: end('around'),
          }),
        }),
        join({}),
        { ...NOWHERE, kind: 'fasten-off', not: false },
      ],
      {
        label: label({ numbers: [4, 5, 6, 7, 8, 9], side: 'WS' }),
        counts: [
          count(numbers(68), { unit: 'stem', stem: 'dc' }),
          count(numbers(2), { unit: 'space', chains: numbers(50) }),
        ],
      },
    ),
  ],
  [
    'Rnd 3: (Sc in next st, inc) twice, *sc* 6 times, *sc in next st; rep from * 5 times.',
    'Rnd 3: (Dc in next st, inc) twice, *dc* 6 times, *dc in next st; rep from * 5 times.',
    told(
      [
        repeat({
          mark: '{',
          steps: [
            work({ stitch: sc, place: next }),
            work({ stitch: stitch({ shape: 'increase' }) }),
          ],
          times: { ...NOWHERE, kind: 'times', n: numbers(2), more: false },
        }),
        repeat({
          steps: [work({ stitch: sc })],
          times: { ...NOWHERE, kind: 'times', n: numbers(6), more: false },
        }),
        repeat({
          steps: [work({ stitch: sc, place: next })],
          times: { ...NOWHERE, kind: 'times', n: numbers(5), more: null },
        }),
      ],
      { label: rnd(3) },
    ),
  ],
  [
    'Rnds 19 and 20: Rep Rnds 2, 4 and 6.',
    'Rnds 19 and 20: Rep Rnds 2, 4 and 6.',
    told([rowsAgain({ rows: [2, 4, 6] })], { label: label({ numbers: [19, 20] }) }),
  ],
  [
    'Row 5: Flub in next st.',
    'Row 5: Flub in next st.',
    told([work({ stitch: stitch({ stem: 'flub' }), place: next })], {
      label: label({ word: 'row', numbers: [5] }),
    }),
  ],
];

describe('an instruction in house form', () => {
  test.each(cases)('%s', (us, uk, tree) => {
    expect(writeInstruction(tree, { from: 'US', to: 'US', sizes: 3 })).toBe(us);
    expect(writeInstruction(tree, { from: 'US', to: 'UK', sizes: 3 })).toBe(uk);
  });

  test('one number for all sizes stands where all sizes agree, and only there', () => {
    const of = (...values: number[]) =>
      writeInstruction(told([chain(numbers(...values))]), { from: 'US', to: 'US', sizes: 3 });
    expect(of(20, 20, 20)).toBe('Ch 20.');
    expect(of(20, 20, 22)).toBe('Ch 20 (20, 22).');
    // Two numbers for three sizes are the designer's slip: it stays visible.
    expect(of(20, 20)).toBe('Ch 20 (20).');
  });

  test('words that were not read are carried as they stand', () => {
    const text = 'sc, 2tr/dc in hole.';
    const tree = told([
      { ...work({ stitch: sc }), from: 0, to: 2 },
      { kind: 'unread', says: 'work', from: 4, to: 18 },
    ]);
    const quote = ({ from, to }: { from: number; to: number }) => text.slice(from, to);
    expect(writeInstruction(tree, { from: 'US', to: 'UK', sizes: 1, quote })).toBe(
      'Dc, 2tr/dc in hole.',
    );
  });
});

test.each([
  [0, 'Ch 3 counts as dc here and throughout.', 'Ch 3 counts as tr here and throughout.'],
  [1, 'Ch 3 to turn each row.', 'Ch 3 to turn each row.'],
])('standing order %i: %s', (which, us, uk) => {
  const order = (
    [
      {
        ...NOWHERE,
        kind: 'start-chain',
        n: 3,
        countsAs: { ...asDc, chains: 0, throughout: true },
      },
      { ...NOWHERE, kind: 'turning-chain', n: 3 },
    ] as const
  )[which as 0 | 1];
  expect(writeOrder(order, { from: 'US', to: 'US', sizes: 1 })).toBe(us);
  expect(writeOrder(order, { from: 'US', to: 'UK', sizes: 1 })).toBe(uk);
});

test('a special stitch: its name goes into the other terms with its steps', () => {
  const special = {
    ...NOWHERE,
    key: '3-dc cl',
    name: '3-dc cl',
    aliases: [],
    steps: [
      work({
        stitch: stitch({ shape: 'together', stem: 'dc', legs: 3 }),
        place: place({ pick: 'same' }),
      }),
    ],
    opaque: false,
    inline: false,
  };
  expect(writeSpecial(special, { from: 'US', to: 'US', sizes: 1 })).toBe(
    '3-dc cl: Dc3tog in same st.',
  );
  expect(writeSpecial(special, { from: 'US', to: 'UK', sizes: 1 })).toBe(
    '3-tr cl: Tr3tog in same st.',
  );
});
