// Random instructions that a maker could have meant: each construct as the trade allows it, put
// together freely. Counts need not hold; whether a row can be worked is no matter of writing.
import fc from 'fast-check';
import type {
  Instruction,
  Noun,
  Numbers,
  Place,
  RowLabel,
  StatedCount,
  Step,
  StitchTerm,
  Times,
  WorkStep,
} from '../../src/notation/index.ts';
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

const STEMS = ['sc', 'hdc', 'dc', 'tr', 'dtr', 'trtr'];
const stem = fc.constantFrom(...STEMS);

/** A number for all sizes or, in one of four, a number a size. */
const several = (sizes: number, least: number, most: number): fc.Arbitrary<Numbers> => {
  const one = fc.integer({ min: least, max: most });
  const single = one.map((value) => numbers(value));
  if (sizes === 1) return single;
  const list = fc
    .array(one, { minLength: sizes, maxLength: sizes })
    .filter((values) => values.some((value) => value !== values[0]))
    .map((values) => numbers(...values));
  return fc.oneof({ weight: 3, arbitrary: single }, { weight: 1, arbitrary: list });
};

const plain: fc.Arbitrary<StitchTerm> = stem.map((word) => stitch({ stem: word }));

const post: fc.Arbitrary<StitchTerm> = fc
  .tuple(fc.constantFrom('dc', 'tr', 'hdc'), fc.constantFrom('front', 'back'))
  .map(([word, side]) => stitch({ stem: word, post: side as 'front' | 'back' }));

const together: fc.Arbitrary<StitchTerm> = fc
  .tuple(stem, fc.constantFrom(2, 3))
  .map(([word, legs]) => stitch({ shape: 'together', stem: word, legs }));

const shaped: fc.Arbitrary<StitchTerm> = fc.constantFrom(
  stitch({ shape: 'increase' }),
  stitch({ shape: 'together' }),
  stitch({ shape: 'v' }),
  stitch({ shape: 'shell' }),
  stitch({ shape: 'bobble' }),
  stitch({ shape: 'cluster', stem: 'dc', legs: 3 }),
);

/** What lies in the row beneath, singular; the place makes it plural beside a number. */
const below: fc.Arbitrary<Noun> = fc.oneof(
  { weight: 4, arbitrary: fc.constant(noun({})) },
  { weight: 2, arbitrary: stem.map((word) => noun({ kind: 'stem', stem: word })) },
  fc.integer({ min: 1, max: 7 }).map((n) => noun({ kind: 'space', chains: numbers(n) })),
  fc.constant(noun({ kind: 'space' })),
);

const spaceBelow: fc.Arbitrary<Noun> = fc
  .integer({ min: 1, max: 7 })
  .map((n) => noun({ kind: 'space', chains: numbers(n) }));

const nextSome = (sizes: number): fc.Arbitrary<Place> =>
  fc
    .tuple(several(sizes, 2, 60), below, fc.constantFrom('next', 'last', 'first'))
    .map(([n, what, pick]) =>
      place({ pick: pick as Place['pick'], n, nouns: [{ ...what, plural: true }] }),
    );

const startChain = (n: number): Place =>
  place({ pick: 'this', nouns: [noun({ kind: 'start-chain', chains: numbers(n) })] });

/** Single places that are named by something else, or by a part of a stitch. */
const NAMED: readonly Place[] = [
  place({ pick: 'this', nouns: [noun({ kind: 'ring' })] }),
  place({ pick: 'this', nouns: [noun({ kind: 'corner', corner: true })] }),
  place({ nouns: [noun({ kind: 'group', word: 'shell' })] }),
  place({ nouns: [noun({ kind: 'group', word: 'v-st' })] }),
  place({ nouns: [noun({ kind: 'space', word: 'shell' })] }),
  place({ nouns: [noun({ kind: 'picot', word: 'picot' })] }),
  place({ nouns: [noun({ kind: 'gap' })] }),
  place({ nouns: [noun({ kind: 'gap', stem: 'dc' })] }),
  place({ nouns: [noun({ skipped: true })] }),
  place({ pick: 'any' }),
  place({ loop: 'back' }),
  place({ loop: 'front' }),
  place({ loop: 'both' }),
  place({ loop: 'third' }),
  place({ rowsBelow: 1 }),
  place({ rowsBelow: 2, nouns: [noun({ kind: 'stem', stem: 'dc' })] }),
  place({ row: 3 }),
  place({ pick: 'top', nouns: [], of: startChain(3) }),
  place({ pick: 'nth', nth: 3, nouns: [noun({ kind: 'chain' })], of: startChain(5) }),
  place({
    pick: 'same',
    of: place({ pick: 'this', nouns: [noun({ kind: 'join' })] }),
  }),
  place({ pick: 'centre', of: place({ nouns: [noun({ kind: 'group', word: 'shell' })] }) }),
  place({
    joinedBy: 'or',
    nouns: [noun({ kind: 'stem', stem: 'dc' }), noun({ kind: 'space', chains: numbers(1) })],
  }),
];

const onePlace: fc.Arbitrary<Place> = fc.oneof(
  fc
    .tuple(below, fc.constantFrom('next', 'last', 'first', 'same'))
    .map(([what, pick]) => place({ pick: pick as Place['pick'], nouns: [what] })),
  spaceBelow.map((what) => place({ nouns: [{ ...what, corner: true }] })),
  fc.constantFrom(...NAMED),
);

const throughTheRow = (sizes: number): fc.Arbitrary<Place> =>
  fc
    .tuple(below, several(sizes, 1, 9), fc.constantFrom('around', 'across', 'last'))
    .map(([what, n, until]) =>
      place({
        pick: 'each',
        each: true,
        nouns: [what],
        until:
          until === 'last'
            ? {
                ...NOWHERE,
                kind: 'last',
                n,
                noun: noun({ plural: n.values.some((v) => v !== 1) }),
                chain: false,
              }
            : end(until),
      }),
    );

const workAlong = (sizes: number): fc.Arbitrary<WorkStep> =>
  fc.oneof(
    fc.tuple(plain, nextSome(sizes)).map(([s, p]) => work({ stitch: s, place: p })),
    fc.tuple(plain, onePlace).map(([s, p]) => work({ stitch: s, place: p })),
    fc
      .tuple(plain, several(sizes, 2, 9), onePlace)
      .map(([s, n, p]) => work({ stitch: s, n, place: p })),
    fc
      .tuple(plain, several(sizes, 2, 4), nextSome(sizes))
      .map(([s, n, p]) => work({ stitch: s, n, place: { ...p, each: true } })),
    fc.tuple(plain, throughTheRow(sizes)).map(([s, p]) => work({ stitch: s, place: p })),
    fc.tuple(plain, several(sizes, 2, 40)).map(([s, n]) => work({ stitch: s, n })),
    fc
      .tuple(plain, several(sizes, 2, 40))
      .map(([s, n]) => work({ stitch: s, n, numberAfter: true })),
  );

const workOther = (sizes: number): fc.Arbitrary<WorkStep> =>
  fc.oneof(
    together.map((s) => work({ stitch: s })),
    shaped.map((s) => work({ stitch: s })),
    fc.tuple(shaped, onePlace).map(([s, p]) => work({ stitch: s, place: p })),
    fc
      .tuple(fc.constantFrom('increase', 'together'), several(sizes, 2, 9))
      .map(([shape, n]) => work({ stitch: stitch({ shape: shape as 'increase' }), n })),
    post.map((s) => work({ stitch: s, place: place({ nouns: [noun({})] }) })),
    fc
      .tuple(stem, several(sizes, 9, 90))
      .map(([word, n]) =>
        work({ stitch: stitch({ stem: word, foundation: true }), n, numberAfter: true }),
      ),
    fc.constant(work({ stitch: stitch({ stem: 'ss' }), place: place({}) })),
  );

const walk = (sizes: number): fc.Arbitrary<Step> =>
  fc.oneof(
    { weight: 6, arbitrary: workAlong(sizes) },
    { weight: 3, arbitrary: workOther(sizes) },
    { weight: 2, arbitrary: several(sizes, 1, 20).map((n) => chain(n)) },
    {
      weight: 2,
      arbitrary: nextSome(sizes).map(
        (p): Step => ({
          ...NOWHERE,
          kind: 'skip',
          countsAs: null,
          place: { ...p, pick: 'next' },
        }),
      ),
    },
  );

const inOnePlace: fc.Arbitrary<Step> = fc
  .array(
    fc.oneof(
      plain.map((s) => work({ stitch: s })),
      fc
        .tuple(plain, fc.integer({ min: 2, max: 5 }))
        .map(([s, n]) => work({ stitch: s, n: numbers(n) })),
      fc.integer({ min: 1, max: 5 }).map((n) => chain(numbers(n))),
    ),
    { minLength: 2, maxLength: 5 },
  )
  .chain((steps) =>
    onePlace.map((p): Step => ({ ...NOWHERE, kind: 'group', steps, place: p, loose: false })),
  );

const bracketTimes = (sizes: number): fc.Arbitrary<Times> =>
  fc.oneof(
    several(sizes, 2, 12).map((n): Times => ({ ...NOWHERE, kind: 'times', n, more: false })),
    fc.constant<Times>({ ...NOWHERE, kind: 'until', until: end('around') }),
  );

const starTimes = (sizes: number): fc.Arbitrary<Times> =>
  fc.oneof(
    fc
      .tuple(several(sizes, 1, 12), fc.constantFrom(true, false, null))
      // "rep from * once" has one reading, once more; "*…* once" is no repeat.
      .filter(([n, more]) => more === true || !n.values.includes(1))
      .map(([n, more]): Times => ({ ...NOWHERE, kind: 'times', n, more })),
    throughTheRow(sizes).map(
      (p): Times => ({
        ...NOWHERE,
        kind: 'until',
        until: p.until ?? end('around'),
      }),
    ),
  );

const bracketed = (sizes: number): fc.Arbitrary<Step> =>
  fc
    .tuple(
      // "(2 sc) around" would be a count in brackets, and no maker writes it.
      fc.array(walk(sizes), { minLength: 2, maxLength: 4 }),
      bracketTimes(sizes),
    )
    .map(([steps, times]) => repeat({ mark: '(', steps, times }));

const starred = (sizes: number): fc.Arbitrary<Step> =>
  fc
    .tuple(
      fc.array(fc.oneof({ weight: 4, arbitrary: walk(sizes) }, inOnePlace, bracketed(sizes)), {
        minLength: 1,
        maxLength: 4,
      }),
      starTimes(sizes),
    )
    .map(([steps, times]) => repeat({ mark: '*', steps, times }));

/** "*…; rep from * around, ending with sc in last st", and its kin; only behind an order. */
const ended = (sizes: number): fc.Arbitrary<Step> =>
  fc
    .tuple(
      fc.array(walk(sizes), { minLength: 2, maxLength: 3 }),
      plain,
      fc.constantFrom('with', 'last', 'at', 'omit', 'outer'),
    )
    .map(([steps, made, how]) => {
      const lastStitch = work({ stitch: made, place: place({ pick: 'last' }) });
      const times: Times = { ...NOWHERE, kind: 'until', until: end('around') };
      const base = { mark: '*', steps, times };
      const mark: Step = { ...NOWHERE, kind: 'mark', mark: '**' };
      switch (how) {
        case 'at':
          return repeat({
            ...base,
            steps: [...steps, mark, lastStitch],
            ending: { ...NOWHERE, kind: 'at', mark: '**' },
          });
        case 'omit':
          return repeat({
            ...base,
            ending: { ...NOWHERE, kind: 'omit', steps: [chain(numbers(2))] },
          });
        case 'outer':
          return repeat({ ...base, mark: '**', steps: [lastStitch, repeat(base), lastStitch] });
        default:
          return repeat({
            ...base,
            ending: { ...NOWHERE, kind: 'with', steps: [lastStitch], last: how === 'last' },
          });
      }
    });

const middle = (sizes: number): fc.Arbitrary<readonly Step[]> =>
  fc
    .tuple(
      fc.array(fc.oneof({ weight: 4, arbitrary: walk(sizes) }, inOnePlace, bracketed(sizes)), {
        minLength: 1,
        maxLength: 5,
      }),
      fc.option(fc.oneof({ weight: 3, arbitrary: starred(sizes) }, ended(sizes)), { nil: null }),
      fc.option(walk(sizes), { nil: null }),
    )
    .map(([before, star, after]) =>
      [...before, star, after].filter((step): step is Step => step !== null),
    );

const start: fc.Arbitrary<readonly Step[]> = fc.constantFrom<readonly Step[]>(
  [],
  [chain(numbers(1))],
  [chain(numbers(3), { countsAs: countsAs(0, false) })],
  [chain(numbers(4), { countsAs: countsAs(1, false) })],
  [chain(numbers(1)), { ...NOWHERE, kind: 'turn', not: false }],
  [{ ...NOWHERE, kind: 'yarn', yarn: 'B', act: 'with' }],
  [{ ...NOWHERE, kind: 'ring' }, chain(numbers(1))],
  [{ ...NOWHERE, kind: 'loop', loop: 'back', row: null }],
  [join({ yarn: 'A', with: stitch({ stem: 'ss' }), place: place({ pick: 'any' }) })],
  [join({ yarn: 'B', with: stitch({ stem: 'sc' }), place: place({ pick: 'any' }) })],
);

function countsAs(chains: number, throughout: boolean) {
  return { ...NOWHERE, counts: true, named: false, stem: 'dc', stitches: 1, chains, throughout };
}

const closing: fc.Arbitrary<readonly Step[]> = fc.constantFrom<readonly Step[]>(
  [],
  [join({})],
  [join({ with: stitch({ stem: 'ss' }), place: place({ pick: 'first', nouns: [scNoun()] }) })],
  [join({}), { ...NOWHERE, kind: 'fasten-off', not: false }],
  [{ ...NOWHERE, kind: 'turn', not: false }],
  [{ ...NOWHERE, kind: 'spiral' }],
  [{ ...NOWHERE, kind: 'turn', not: true }],
  [
    { ...NOWHERE, kind: 'unworked', n: numbers(3) },
    { ...NOWHERE, kind: 'turn', not: false },
  ],
  [{ ...NOWHERE, kind: 'yarn', yarn: 'A', act: 'change' }],
  [
    join({
      with: stitch({ stem: 'ss' }),
      place: place({ pick: 'top', nouns: [], of: startChain(3) }),
    }),
  ],
);

function scNoun(): Noun {
  return noun({ kind: 'stem', stem: 'sc' });
}

const counts = (sizes: number): fc.Arbitrary<readonly StatedCount[]> =>
  fc.oneof(
    fc.constant([]),
    several(sizes, 3, 200).map((n) => [count(n)]),
    several(sizes, 3, 200).map((n) => [count(n, { unit: 'stitch' })]),
    fc
      .tuple(several(sizes, 3, 200), stem)
      .map(([n, word]) => [count(n, { unit: 'stem', stem: word })]),
    several(sizes, 3, 90).map((n) => [count(n, { unit: 'box' })]),
    fc
      .tuple(several(sizes, 3, 90), stem, several(sizes, 3, 90), fc.integer({ min: 1, max: 5 }))
      .map(([n, word, spaces, chains]) => [
        count(n, { unit: 'stem', stem: word }),
        count(spaces, { unit: 'space', chains: numbers(chains) }),
      ]),
  );

const labels: fc.Arbitrary<RowLabel> = fc
  .tuple(
    fc.constantFrom('row', 'round'),
    fc.integer({ min: 1, max: 80 }),
    fc.integer({ min: 0, max: 6 }),
    fc.constantFrom(null, 'RS', 'WS'),
  )
  .map(([word, first, more, side]) =>
    label({
      word: word as 'row' | 'round',
      numbers: Array.from({ length: more + 1 }, (_, i) => first + i),
      side: side as 'RS' | 'WS' | null,
    }),
  );

const worked = (sizes: number): fc.Arbitrary<Instruction> =>
  fc
    .tuple(labels, start, middle(sizes), closing, counts(sizes))
    .map(([head, first, steps, last, stated]) => ({
      label: head,
      steps: [...first, ...steps, ...last],
      counts: stated,
      orders: [],
      slips: [],
    }));

const ringed: fc.Arbitrary<Instruction> = fc
  .tuple(labels, stem, fc.integer({ min: 4, max: 20 }))
  .map(([head, word, n]) => ({
    label: head,
    steps: [
      work({
        n: numbers(n),
        stitch: stitch({ stem: word }),
        place: place({ pick: 'this', nouns: [noun({ kind: 'ring' })] }),
      }),
    ],
    counts: [count(numbers(n))],
    orders: [],
    slips: [],
  }));

const founded = (sizes: number): fc.Arbitrary<Instruction> =>
  fc
    .tuple(labels, stem, fc.integer({ min: 2, max: 8 }), counts(sizes))
    .map(([head, word, k, stated]) => ({
      label: head,
      steps: [
        work({
          stitch: stitch({ stem: word }),
          place: place({
            pick: 'nth',
            nth: k,
            fromHook: true,
            nouns: [noun({ kind: 'chain' })],
          }),
          alsoIn: [
            place({
              pick: 'each',
              each: true,
              nouns: [noun({ kind: 'chain' })],
              until: end('across'),
            }),
          ],
        }),
      ],
      counts: stated,
      orders: [],
      slips: [],
    }));

/** Both sides of a foundation chain. */
const oval: fc.Arbitrary<Instruction> = fc
  .tuple(labels, stem, fc.integer({ min: 4, max: 60 }), fc.boolean())
  .map(([head, word, n, named]) => {
    const inChains = (pick: 'next' | 'last', many: number) =>
      place({ pick, n: numbers(many), nouns: [noun({ kind: 'chain' })] });
    const along = work({ stitch: stitch({ stem: word }), place: inChains('next', n) });
    const atEnd = work({
      n: numbers(3),
      stitch: stitch({ stem: word }),
      place: inChains('last', 1),
    });
    const chains = named ? numbers(n + 2) : null;
    return {
      label: head,
      steps: [
        along,
        atEnd,
        { ...NOWHERE, kind: 'other-side', chains, rowEnds: false },
        along,
        join({}),
      ],
      counts: [count(numbers(2 * n + 3), { unit: 'stitch' })],
      orders: [],
      slips: [],
    };
  });

/** Which row, or which columns, of a chart. */
const CHART_PARTS = [
  { row: null, onwards: false, part: null },
  { row: 3, onwards: false, part: null },
  { row: 4, onwards: true, part: null },
  { row: null, onwards: false, part: { from: 11, to: 46 } },
] as const;

/** Boxes and charts. */
const filet = (sizes: number): fc.Arbitrary<Instruction> =>
  fc
    .tuple(
      labels,
      fc.array(fc.tuple(several(sizes, 1, 30), fc.constantFrom('open', 'filled', 'lacet', 'bar')), {
        minLength: 1,
        maxLength: 5,
      }),
      fc.option(several(sizes, 2, 40), { nil: null }),
      fc.constantFrom(...CHART_PARTS),
    )
    .map(([head, runs, over, told]) => {
      const boxes = runs.map(
        ([n, box]): Step => ({
          ...NOWHERE,
          kind: 'boxes',
          n,
          box: box as 'open',
          edge: null,
          until: null,
        }),
      );
      const chart: Step = {
        ...NOWHERE,
        kind: 'chart',
        name: 'Tide',
        n: over,
        fromBox: null,
        toBox: null,
        ...told,
      };
      const steps = over === null ? boxes : [...boxes, chart];
      return { label: head, steps: [...steps, join({})], counts: [], orders: [], slips: [] };
    });

const again: fc.Arbitrary<Instruction> = fc
  .tuple(labels, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 3 }), fc.boolean())
  .map(([head, first, more, from]) => ({
    label: head,
    steps: [
      rowsAgain({
        rows: Array.from({ length: more + 1 }, (_, i) => first + i),
        onward: from && more === 0,
      }),
    ],
    counts: [],
    orders: [],
    slips: [],
  }));

/**
 * "3 dc, ch 2, 3 dc in next sp" is a group without brackets, and no words tell it from a walk: a
 * stitch without a place, a chain, and a stitch in one place never follow each other here.
 */
function looksLikeGroup(steps: readonly Step[]): boolean {
  const inside = steps.some((step) => step.kind === 'repeat' && looksLikeGroup(step.steps));
  const here = steps.some((step, at) => {
    const [middle, last] = [steps[at + 1], steps[at + 2]];
    const opens = step.kind === 'work' && !step.place && !step.until;
    return opens && middle?.kind === 'chain' && last?.kind === 'work' && last.place !== null;
  });
  return inside || here;
}

/** An instruction in US terms of a pattern with so many sizes. */
export const instructionOf = (sizes: number): fc.Arbitrary<Instruction> =>
  fc
    .oneof(
      { weight: 8, arbitrary: worked(sizes) },
      ringed,
      founded(sizes),
      oval,
      filet(sizes),
      again,
    )
    .filter((instruction) => !looksLikeGroup(instruction.steps));
