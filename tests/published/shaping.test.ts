/**
 * Counts of shaped pieces that others have printed, or that mathematics gives. Each figure stands
 * with its source in shaping-data.ts; the words are made from it by generate.ts, and the program
 * has to find that they come out.
 */
import { describe, expect, it } from 'vitest';
import { dcCircle, joined, oval, ruffle, spiral } from './generate.ts';
import * as DATA from './shaping-data.ts';
import { made, proven, worked } from './worked.ts';

describe('flat circles', () => {
  it(`sc: ${DATA.CIRCLES.sc.source}`, () => {
    const { value } = DATA.CIRCLES.sc;
    expect(made(proven(...spiral(value)))).toEqual(value);
    expect(made(proven(...joined(value, 'sc', 1)))).toEqual(value);
  });

  it(`hdc: ${DATA.CIRCLES.hdc.source}`, () => {
    const { value } = DATA.CIRCLES.hdc;
    expect(made(proven(...spiral(value, 'hdc')))).toEqual(value);
    expect(made(proven(...joined(value, 'hdc', 2)))).toEqual(value);
  });

  it(`dc: ${DATA.CIRCLES.dc.source}`, () => {
    const { value } = DATA.CIRCLES.dc;
    expect(made(proven(...dcCircle(value.length)))).toEqual(value);
  });

  it.each(DATA.HDC_BASES)('$source', ({ value }) => {
    expect(made(proven(...joined(value, 'hdc', 1)))).toEqual(value);
  });
});

describe('balls', () => {
  it(DATA.SPHERE_12.source, () => {
    const { value } = DATA.SPHERE_12;
    expect(made(proven(...spiral(value)))).toEqual(value);
  });

  it.each(DATA.SPHERES.value)(`floored: $floored; ${DATA.SPHERES.source}`, (sphere) => {
    expect(byFormula(sphere.floored.length, Math.floor)).toEqual(sphere.floored);
    expect(byFormula(sphere.rounded.length, Math.round)).toEqual(sphere.rounded);
  });

  it('of every size from 8 to 20 rounds by the formula', () => {
    for (let n = 8; n <= 20; n++) {
      for (const counts of [byFormula(n, Math.floor), byFormula(n, Math.round)]) {
        expect(made(proven(...spiral(counts)))).toEqual(counts);
      }
    }
  });

  it(`classic: ${DATA.CLASSIC_BALL.source}`, () => {
    const up = [6, 12, 18, 24, 30, 36];
    const even = Array.from({ length: 6 }, () => 36);
    const rows = proven(...spiral([...up, ...even, ...up.slice(0, -1).reverse()]));
    expect(rows).toHaveLength(DATA.CLASSIC_BALL.value.rounds);
    const sum = made(rows).reduce((total, n) => total + n, 0);
    expect(sum).toBe(DATA.CLASSIC_BALL.value.stitches);
  });
});

/** The reals are not whole here and there only by rounding of the sine (2 x 13 sin 30 deg = 13). */
const byFormula = (n: number, whole: (x: number) => number): number[] =>
  Array.from({ length: n }, (_, i) =>
    whole(2 * (n + 1) * Math.sin(((i + 1) * Math.PI) / (n + 1)) + 1e-9),
  );

describe('ovals', () => {
  it.each(DATA.OVALS)('$source', ({ n, ends, value }) => {
    expect(made(proven(...oval(n, ends, value)))).toEqual(value);
  });

  it(`finds the misprint: ${DATA.MISPRINTED_OVAL.source}`, () => {
    const { n, right, value } = DATA.MISPRINTED_OVAL;
    const { rows, faults } = worked(...oval(n, 3, value));
    expect(faults).toEqual(['count-mismatch Rnd 1']);
    expect(made(rows)).toEqual([right, value[1]]);
    expect(rows.map(({ verdict }) => verdict)).toEqual(['mismatch', 'proven']);
  });
});

describe('hyperbolic planes', () => {
  it.each(DATA.HYPERBOLIC.value)(`one more after every $n; ${DATA.HYPERBOLIC.source}`, (plane) => {
    expect(made(proven(...ruffle(plane.rows, plane.n)))).toEqual(plane.rows);
  });

  it(DATA.PSEUDOSPHERE.source, () => {
    const { value } = DATA.PSEUDOSPHERE;
    expect(made(proven(...spiral(value)))).toEqual(value);
  });
});

it(`straps: ${DATA.STRAPS.source}`, () => {
  const { body, under, chain, sc } = DATA.STRAPS.value;
  const strap = `ch ${chain}, sk next ${under} sts`;
  const [, , straps, rim] = proven(
    `Ch ${body}, join with sl st in first ch to form a ring.`,
    `Rnd 1: Ch 1, sc in each ch around; join with sl st in first sc. (${body} sc)`,
    `Rnd 2: Ch 1, sc in each st around; join with sl st in first sc. (${body} sc)`,
    `Rnd 3: Ch 1, sc in next 13 sts, ${strap}, sc in next 27 sts, ${strap}, sc in last 14 sts; ` +
      `join with sl st in first sc. (${sc} sc, 2 ch-${chain} sps)`,
    `Rnd 4: Ch 1, sc in next 13 sts, sc in next ${chain} ch, sc in next 27 sts, ` +
      `sc in next ${chain} ch, sc in last 14 sts; join with sl st in first sc. ` +
      `(${sc + 2 * chain} sc)`,
  );
  expect(straps?.made).toBe(sc);
  expect(straps?.spaces).toEqual([{ chains: chain, n: 2 }]);
  expect(rim?.made).toBe(174);
});
