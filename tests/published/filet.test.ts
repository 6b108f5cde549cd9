/** Filet by its printed rules, worked as rows; figures and sources in filet-data.ts. */
import { describe, expect, it } from 'vitest';
import type { RowAccount } from '../../src/index.ts';
import * as DATA from './filet-data.ts';
import { proven } from './worked.ts';

/** A dc post is 3 chains high (common practice). */
const POST = 3;
const nth = (n: number): string => `${n}th`;

const chainsOf = (way: 'A' | 'B', boxes: number, gap: number, first: 'solid' | 'open') => {
  const own = way === 'A' ? 1 : 0;
  const open = first === 'open';
  return {
    chain: boxes * (gap + 1) + POST + own + (open ? gap : 0),
    nth: POST + 1 + own + (open ? 2 * gap : 0),
  };
};

describe('foundation chains', () => {
  it.each(DATA.CHAINS)('$way, $boxes boxes, gap $gap, first $first: $source', (row) => {
    const { boxes, gap } = row;
    expect(chainsOf(row.way, boxes, gap, row.first)).toEqual({ chain: row.chain, nth: row.nth });
    const p = gap + 1;
    const words =
      row.first === 'open'
        ? `Dc in ${nth(row.nth)} ch from hook, *ch ${gap}, sk next ${gap} ch, dc in next ch; ` +
          'rep from * across'
        : `Dc in ${nth(row.nth)} ch from hook and in each ch across`;
    const count =
      row.first === 'open' ? `${boxes + 1} dc, ${boxes} ch-${gap} sps` : `${boxes * p + 1} dc`;
    const [made] = proven(`Ch ${row.chain}.`, `Row 1: ${words}. (${count})`);
    expect(widthOf(made)).toBe(boxes * p + 1);
  });
});

describe(`stitches across: ${DATA.MESH_SOURCE}`, () => {
  it.each(DATA.FLAT)('$boxes flat boxes, gap $gap: $source', ({ boxes, gap, stitches }) => {
    const { chain, nth: first } = chainsOf('B', boxes, gap, 'open');
    const rows = proven(
      `Ch ${chain}.`,
      `Row 1: Dc in ${nth(first)} ch from hook, *ch ${gap}, sk next ${gap} ch, dc in next ch; ` +
        `rep from * across. (${boxes + 1} dc)`,
      `Row 2: Ch ${POST + gap}, turn, sk first ch-${gap} sp, *dc in next dc, ch ${gap}, ` +
        `sk next ch-${gap} sp; rep from * ${boxes - 2} more times, ` +
        `dc in 3rd ch of turning ch. (${boxes + 1} dc)`,
    );
    expect(rows.map(widthOf)).toEqual([stitches, stitches]);
  });

  it.each(DATA.ROUND)('$boxes boxes in a round, gap $gap: $source', ({ boxes, gap, stitches }) => {
    const rows = proven(
      `Ch ${stitches}, join with sl st in first ch to form a ring.`,
      `Rnd 1: Ch ${POST + gap} (counts as dc and ch ${gap}), sk next ${gap} ch, *dc in next ch, ` +
        `ch ${gap}, sk next ${gap} ch; rep from * around; join with sl st in 3rd ch of ` +
        `ch-${POST + gap}. (${boxes} dc, ${boxes} ch-${gap} sps)`,
      `Rnd 2: Work ${boxes} open boxes; join with sl st in 3rd ch of ch-${POST + gap}. ` +
        `(${boxes} boxes)`,
    );
    expect(rows.map(widthOf)).toEqual([stitches, stitches]);
    expect(rows.map((row) => row.byKind.dc)).toEqual([boxes, boxes]);
  });

  it(`solid boxes side by side: ${DATA.SOLID.source}`, () => {
    const counts = DATA.SOLID.dc.map((dc, i) => {
      const { chain, nth: first } = chainsOf('B', i + 1, 2, 'solid');
      const words = `Dc in ${nth(first)} ch from hook and in each ch across`;
      return proven(`Ch ${chain}.`, `Row 1: ${words}. (${dc} dc)`)[0]?.byKind.dc;
    });
    expect(counts).toEqual(DATA.SOLID.dc);
  });
});

/** Stitches and chains of gaps, as the next row finds them. */
const widthOf = (row: RowAccount | undefined): number =>
  (row?.made ?? 0) + (row?.spaces ?? []).reduce((sum, { chains, n }) => sum + chains * n, 0);

/** As printed for a gap of 2: chain, then the first stitch. */
describe("boxes added at a row's start", () => {
  it('F6, "Filet lessons, lesson 4 part 1": ch 7 for one open box, ch 10 for two, dc in the 8th', () => {
    const rows = proven(
      'Ch 14.',
      'Row 1: Work 3 open boxes. (3 boxes)',
      'Row 2: Ch 7, turn, dc in first dc, work 3 open boxes. (5 dc, 4 ch-2 sps)',
      'Row 3: Ch 10, turn, dc in 8th ch from hook, ch 2, sk next 2 ch, dc in next dc, ' +
        '*ch 2, sk next ch-2 sp, dc in next dc; rep from * 3 more times. (7 dc, 6 ch-2 sps)',
    );
    expect(rows.map(widthOf)).toEqual([10, 13, 19]);
  });

  it('ch 5 for one filled box, dc in the 4th and 5th chain (common practice)', () => {
    const rows = proven(
      'Ch 14.',
      'Row 1: Work 3 open boxes. (3 boxes)',
      'Row 2: Ch 5, turn, dc in 4th ch from hook, dc in next ch, dc in next dc, ' +
        '*ch 2, sk next ch-2 sp, dc in next dc; rep from * 2 more times. (7 dc, 3 ch-2 sps)',
    );
    expect(rows.map(widthOf)).toEqual([10, 13]);
  });
});

describe('lacet and bar: F7, "Lacet stitch" (quoting a thread maker), 2008', () => {
  it('ch 3, sc, ch 3 over two boxes, closed by ch 5, which is two boxes again', () => {
    const rows = proven(
      'Ch 20.',
      'Row 1: Work 5 open boxes. (5 boxes)',
      'Row 2: Work 1 open box, 1 lacet, 2 open boxes. (5 boxes)',
      'Row 3: Work 2 open boxes, 1 bar, 1 open box. (5 boxes)',
      'Row 4: Work 5 open boxes. (5 boxes)',
    );
    expect(rows[1]?.byKind.sc).toBe(1);
    expect(rows[1]?.spaces).toEqual([
      { chains: 2, n: 3 },
      { chains: 3, n: 2 },
    ]);
    expect(rows[2]?.spaces).toEqual([
      { chains: 2, n: 3 },
      { chains: 5, n: 1 },
    ]);
    expect([rows[2], rows[3]].map(widthOf)).toEqual([16, 16]);
  });
});

describe(`rose cloth: ${DATA.ROSE.source}`, () => {
  const { boxes, stitches, rows } = DATA.ROSE;

  it('runs add up', () => {
    for (const { runs, solid } of rows) {
      expect(runs.reduce((sum, n) => sum + n, 0)).toBe(boxes);
      expect(runs.reduce((sum, n, i) => sum + (i % 2 === 1 ? n : 0), 0)).toBe(solid);
    }
  });

  it('comes out in words', () => {
    const worked = proven(
      'Ch 200.',
      ...rows.map(
        ({ runs, dc }, i) => `Row ${i + 1}: ${inWords(runs, rows[i - 1]?.runs)}. (${dc} dc)`,
      ),
    );
    expectSums(worked);
  });

  it('comes out in boxes, the first row on its foundation chain', () => {
    const inBoxes = rows.map(({ runs }, i) => {
      const words = runs.map(
        (n, at) => `${n} ${at % 2 ? 'filled' : 'open'} box${n > 1 ? 'es' : ''}`,
      );
      return `Row ${i + 1}: Work ${words.join(', ')}. (${boxes} boxes)`;
    });
    expectSums(proven('Ch 200.', ...inBoxes));
  });

  const expectSums = (worked: readonly RowAccount[]): void => {
    expect(worked.map((row) => row.byKind.dc)).toEqual(rows.map(({ dc }) => dc));
    expect(worked.map((row) => row.spaces)).toEqual(
      rows.map(({ chains }) => [{ chains: 2, n: chains / 2 }]),
    );
    expect(worked.map(widthOf)).toEqual(rows.map(() => stitches));
  };
});

const boxesOf = (runs: readonly number[]): boolean[] =>
  runs.flatMap((n, at) => Array.from({ length: n }, () => at % 2 === 1));

/** A row of boxes stitch by stitch, over the row beneath (met from its other end) or a chain. */
function inWords(runs: readonly number[], beneath: readonly number[] | undefined): string {
  const below = beneath && boxesOf(beneath).reverse();
  const cells = boxesOf(runs);
  const words = cells.map((solid, i) => {
    const post = i === cells.length - 1 && below ? 'dc in 3rd ch of turning ch' : 'dc in next dc';
    if (!below) {
      if (i === 0) return 'dc in 8th ch from hook';
      return solid ? 'dc in next 3 ch' : 'ch 2, sk next 2 ch, dc in next ch';
    }
    const over = below[i] ? 'next 2 dc' : 'next ch-2 sp';
    if (i === 0) return `ch 5, turn, sk ${over}, ${post}`;
    if (!solid) return `ch 2, sk ${over}, ${post}`;
    return `${below[i] ? 'dc in next 2 dc' : '2 dc in next ch-2 sp'}, ${post}`;
  });
  return words.join(', ');
}
