/** Squares from the centre, by the printed counts of shaping-data.ts. */
import { expect, it } from 'vitest';
import { dcCircle } from './generate.ts';
import { CIRCLE_IN_SQUARE, GRANNY, SC_SQUARE, SOLID_SQUARE } from './shaping-data.ts';
import { made, proven } from './worked.ts';

const RING = 'Ch 4, join with sl st in first ch to form a ring.';
const JOIN = 'join with sl st in top of ch-3';

it(`solid squares: ${SOLID_SQUARE.source}`, () => {
  const { sides, totals } = SOLID_SQUARE.value;
  const corner = '(2 dc, ch 2, 2 dc) in next ch-2 sp';
  const rounds = totals.map((total, i) => {
    const side = sides[i - 1];
    const after = 2 * (i - 1);
    const words =
      side === undefined
        ? '2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times'
        : `dc in next ${side - after - 1} dc, ${corner}, *dc in next ${side} dc, ${corner}; ` +
          `rep from * 2 more times${after > 0 ? `, dc in last ${after} dc` : ''}`;
    return `Rnd ${i + 1}: Ch 3 (counts as dc), ${words}; ${JOIN}. (${total} dc, 4 ch-2 sps)`;
  });
  const rows = proven(RING, ...rounds);
  expect(made(rows)).toEqual(totals);
  expect(made(rows).map((n) => n / 4)).toEqual(sides);
  for (const { spaces } of rows) expect(spaces).toEqual([{ chains: 2, n: 4 }]);
});

it(`grannies: ${GRANNY.source}`, () => {
  const rounds = GRANNY.value.map((dc, i) => {
    const between = i > 1 ? `(3 dc in next ch-1 sp, ch 1) ${i - 1} times, ` : '';
    const way = (rest: string): string => `ch 1, ${between}${rest}`;
    const words =
      i === 0
        ? 'Ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times'
        : 'Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same ' +
          `sp, ${way('')}*(3 dc, ch 2, 3 dc) in next ch-2 sp, ${way('')}` +
          'rep from * 2 more times';
    return `Rnd ${i + 1}: ${words.replace(', rep from', '; rep from')}; ${JOIN}. (${dc} dc)`;
  });
  const rows = proven(RING, ...rounds);
  expect(made(rows)).toEqual(GRANNY.value);
  expect(rows.map(({ spaces }) => spaces.find(({ chains }) => chains === 2)?.n)).toEqual(
    GRANNY.value.map(() => 4),
  );
});

it(`squares of sc: ${SC_SQUARE.source}`, () => {
  const rounds = SC_SQUARE.value.map((sc, i) => {
    const side = 2 * i - 1;
    const plain = `sc in next ${side} st${side > 1 ? 's' : ''}`;
    const words = i === 0 ? '8 sc in magic ring' : `(${plain}, 3 sc in next st) 4 times`;
    return `Rnd ${i + 1}: ${words}. (${sc} sc)`;
  });
  expect(made(proven(...rounds))).toEqual(SC_SQUARE.value);
});

// The later sides, 11 and 14, are worked in the spaces between stitches; the worker does not yet
// know how many of those a round has, so only the first is worked here, in the stitches themselves:
// 36 are four times 8 and a corner.
it(`a circle in a square: ${CIRCLE_IN_SQUARE.source}`, () => {
  const { circle, sides } = CIRCLE_IN_SQUARE.value;
  const [side = 0] = sides;
  const corner = '(2 dc, ch 2, 2 dc) in next st';
  const rows = proven(
    ...dcCircle(circle.length),
    `Rnd 4: Ch 3 (counts as dc), dc in next ${side - 1} sts, ${corner}, ` +
      `(dc in next ${side} sts, ${corner}) 3 times; ${JOIN}. (${4 * (side + 4)} dc)`,
  );
  expect(made(rows)).toEqual([...circle, 4 * (side + 4)]);
});
