/** The shape of pieces against geometry, published rules of shaping and a reference solver. */
import { describe, expect, it } from 'vitest';
import { energyOf } from '../../src/figures/shape/energy.ts';
import { relaxWhole } from '../../src/figures/shape/relax.ts';
import { SpringList, type Springs } from '../../src/figures/shape/springs.ts';
import { firstAnchorOf, lastAnchorOf } from '../../src/figures/shape/stitch-graph.ts';
import type { ShapedPiece } from '../../src/index.ts';
import { conjugateGradient } from './conjugate-gradient.ts';
import { joined, spiral } from './generate.ts';
import { girth, mean, radii, shaped } from './shaped.ts';
import * as DATA from './shaping-data.ts';

describe('circles lie flat by the height of the stitch', () => {
  // Width and height of sc and hdc: swatches of 20 x 20 stitches, "Yarn usage experiment", Interweave:
  // 0.3125 x 0.2875 in and 0.3375 x 0.4625 in. dc: twice the sc (the trade's round number, common practice).
  const GAUGES = {
    sc: 'sc: 32 sts x 34.8 rnds = 10 in',
    hdc: 'hdc: 29.6 sts x 21.6 rnds = 10 in',
    dc: 'dc: 32 sts x 17.4 rnds = 10 in',
  } as const;
  const HEIGHT_MM = { sc: 254 / 34.8, hdc: 254 / 21.6, dc: 254 / 17.4 } as const;

  it.each(['sc', 'hdc', 'dc'] as const)(`%s; ${DATA.CIRCLES.sc.source}`, (stitch) => {
    const counts = DATA.CIRCLES[stitch].value;
    const { piece } = shaped(`{ ${GAUGES[stitch]} }`, ...joined(counts, stitch, 1));
    expect(piece.girths.map(({ lies }) => lies)).toEqual(counts.map(() => 'flat'));
    expect(piece.dimensions.pose).toBe('flat');
    // Each round adds one row height to the radius (geometry).
    const radius = mean(radii(piece, piece.graph.rows.length - 1, 2));
    expect(radius / (counts.length * HEIGHT_MM[stitch])).toBeCloseTo(1, 1);
  });

  it('half as many increases make a cone of asin(1/2) from its axis (geometry)', () => {
    const counts = Array.from({ length: 14 }, (_, i) => 3 * (i + 1));
    // A stitch as wide as 6 of them make a flat circle: w = 2 pi h / 6.
    const { piece } = shaped('{ sc: 19.099 sts x 20 rnds = 10 cm }', ...spiral(counts));
    const { graph, at } = piece;
    const { from } = graph.rows[5]!;
    const top = graph.rows.at(-1)!;
    const height = at[3 * top.from + 2]! - at[3 * from + 2]!;
    const out = mean(radii(piece, graph.rows.length - 1, 2)) - mean(radii(piece, 5, 2));
    expect(Math.abs((Math.atan2(out, height) * 180) / Math.PI - 30)).toBeLessThan(3);
  });
});

describe('spheres', () => {
  // The ideal ball of N rounds: pi r is N + 1 row heights (P16, see shaping-data.ts).
  it.each(DATA.SPHERES.value.map(({ floored }) => floored))(
    `radius of the ball %j; ${DATA.SPHERES.source}`,
    (...counts: number[]) => {
      const { piece } = shaped('{ sc: 20 sts x 20 rnds = 10 cm }', ...spiral(counts));
      const ideal = ((counts.length + 1) * 5) / Math.PI;
      const rows = counts.map((_, i) => mean(radii(piece, i + 1, 3)));
      expect(piece.relaxed.settled).toBe(true);
      expect(Math.abs(mean(rows) / ideal - 1)).toBeLessThan(0.05);
    },
  );
});

describe('a cylinder', () => {
  const tube = [
    'Ch 40; join with sl st in first ch to form a ring.',
    'Rnds 1-20: Sc in each st around. (40 sc)',
  ];
  it('is as long round as its stitches are wide, 40 of 5 mm (geometry)', () => {
    const { piece } = shaped('{ sc: 20 sts x 20 rnds = 10 cm }', ...tube);
    for (const [row, { record }] of piece.graph.rows.entries()) {
      if (record) expect(Math.abs(girth(piece, row) / 200 - 1)).toBeLessThan(0.002);
    }
    // A state without strain exists, so the edges come to their lengths.
    expect(piece.relaxed.edgeErrorMm).toBeLessThan(0.005);
    expect(piece.dimensions.heightMm! / 100).toBeCloseTo(1, 2);
    expect(piece.relaxed.settled).toBe(true);
  });
});

describe('the hyperbolic plane', () => {
  it(`a stitch more after every one curves negatively; ${DATA.PSEUDOSPHERE.source}`, () => {
    const counts = DATA.PSEUDOSPHERE.value;
    const { piece } = shaped('{ sc: 20 sts x 20 rnds = 10 cm }', ...spiral(counts));
    expect(piece.girths.at(-1)?.lies).toBe('ruffles');
    // Gauss and Bonnet: the curvature within a round is 2 pi less what its length gains per height, and
    // on a surface of triangles it is what the angles at its nodes lack of 2 pi.
    const beneath = counts.at(-2)!;
    const gained = (counts.at(-1)! - beneath) * 5;
    const expected = 2 * Math.PI - gained / 5;
    const found = curvature(piece);
    expect(found).toBeLessThan(0);
    expect(found / expected).toBeGreaterThan(0.6);
    expect(found / expected).toBeLessThan(1.4);
  });

  it('a flat circle and a tube have none', () => {
    const flat = shaped('{ sc: 19.099 sts x 20 rnds = 10 cm }', ...spiral([6, 12, 18, 24, 30]));
    expect(Math.abs(curvature(flat.piece))).toBeLessThan(0.6);
  });
});

/** Sum over all nodes but the last round's of 2 pi less the angles of the triangles that meet there. */
function curvature({ graph, at }: ShapedPiece): number {
  const angles = new Float64Array(graph.n);
  const side = (a: number, b: number): number =>
    Math.hypot(...[0, 1, 2].map((c) => at[3 * a + c]! - at[3 * b + c]!));
  const add = (a: number, b: number, c: number): void => {
    if (a === b || b === c || a === c || a < 0 || b < 0 || c < 0) return;
    for (const [p, q, r] of [
      [a, b, c],
      [b, c, a],
      [c, a, b],
    ] as const) {
      const [x, y, z] = [side(p, q), side(p, r), side(q, r)];
      angles[p]! += Math.acos(Math.max(-1, Math.min(1, (x * x + y * y - z * z) / (2 * x * y))));
    }
  };
  for (const row of graph.rows) {
    for (let i = row.from; i < row.to && row.record; i++) {
      const next = graph.after[i]!;
      const [left, right] = [lastAnchorOf(graph, i), firstAnchorOf(graph, next)];
      add(i, next, left);
      add(next, right, left);
    }
  }
  let sum = 0;
  const { from: last } = graph.rows.at(-1)!;
  for (let i = 0; i < last; i++) sum += 2 * Math.PI - angles[i]!;
  return sum;
}

describe('springs at rest, against the conjugate gradients of fmin 0.0.4 (npm)', () => {
  it('a strained net comes to the same energy and the same places', () => {
    const { springs, at } = strainedNet(5);
    const own = relaxWhole({ springs, at, limits: { sweeps: 10, steps: 4000, restMm: 1e-7 } });
    const load = { springs, bends: null, contacts: null, stuffing: null };
    const reference = conjugateGradient(
      (x, gradient) => {
        const slope = new Float64Array(x.length);
        const energy = energyOf(Float64Array.from(x), load, slope);
        for (let i = 0; i < x.length; i++) gradient[i] = slope[i]!;
        return energy;
      },
      [...at],
      { maxIterations: 20_000 },
    );
    expect(own.settled).toBe(true);
    expect(own.energy).toBeGreaterThan(0.1);
    // The reference ends a little higher: it stops where its line search finds nothing better.
    expect(own.energy).toBeLessThanOrEqual(reference.fx);
    expect(reference.fx / own.energy).toBeLessThan(1.002);
    const off = lengths(springs, own.at, Float64Array.from(reference.x));
    expect(Math.max(...off)).toBeLessThan(0.05);
  });

  it('energy by hand: one spring of 3 mm drawn to 5 mm, stiffness 2, holds 4 and pulls with 4', () => {
    const list = new SpringList();
    list.add(0, 1, 3, 2);
    const gradient = new Float64Array(6);
    const load = { springs: list.finish(), bends: null, contacts: null, stuffing: null };
    expect(energyOf(Float64Array.of(0, 0, 0, 3, 4, 0), load, gradient)).toBe(4);
    expect([...gradient].map((v) => Number(v.toFixed(12)))).toEqual([-2.4, -3.2, 0, 2.4, 3.2, 0]);
  });
});

/** A square net whose rim is a fifth too short: it stands up as a dome and stays strained. */
function strainedNet(n: number): { springs: Springs; at: Float64Array } {
  const list = new SpringList();
  const at = new Float64Array(3 * n * n);
  const node = (x: number, y: number): number => y * n + x;
  for (let y = 0; y < n; y++) {
    for (let x = 0; x < n; x++) {
      const dome = 3 * Math.sin((Math.PI * x) / (n - 1)) * Math.sin((Math.PI * y) / (n - 1));
      at.set([5 * x, 5 * y, dome], 3 * node(x, y));
      const rim = (along: number): number => (along === 0 || along === n - 1 ? 4 : 5);
      if (x + 1 < n) list.add(node(x, y), node(x + 1, y), rim(y), 1);
      if (y + 1 < n) list.add(node(x, y), node(x, y + 1), rim(x), 1);
      if (x + 1 < n && y + 1 < n) {
        list.add(node(x, y), node(x + 1, y + 1), 5 * Math.SQRT2, 0.5);
        list.add(node(x + 1, y), node(x, y + 1), 5 * Math.SQRT2, 0.5);
      }
    }
  }
  return { springs: list.finish(), at };
}

/** How far each spring's length differs between two states: places but for turns and moves. */
function lengths({ a, b, n }: Springs, one: Float64Array, two: Float64Array): number[] {
  const of = (at: Float64Array, i: number): number =>
    Math.hypot(...[0, 1, 2].map((c) => at[3 * a[i]! + c]! - at[3 * b[i]! + c]!));
  return Array.from({ length: n }, (_, i) => Math.abs(of(one, i) - of(two, i)));
}
