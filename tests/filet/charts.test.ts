/** Which rows and columns of a chart a row of the pattern works. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type ChartUse, placeBelow, usesOf } from '../../src/fabric/index.ts';
import { compile } from '../../src/index.ts';

const CHART =
  '```chart Dot\nmesh: dc, ch 2\n. open box\n# filled box\n\n.#.#.\n##.##\n.###.\n....#\n```\n';

const flat = (rows: string): string =>
  `---\nterms: US\n---\nCh 20.\n\nRow 1 (RS): Work 1 filled box, 4 open boxes. (5 boxes)\n\n` +
  `Row 2: Work 1 open box, 3 filled boxes, 1 open box. (5 boxes)\n\n${rows} (5 boxes)\n\n${CHART}`;

function usesIn(text: string): readonly ChartUse[] {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const [chart] = manuscript.charts;
  const [cloth] = fabric.cloths;
  return chart && cloth ? usesOf(chart, fabric, cloth) : [];
}

describe('the first rows are written out, and the chart goes on', () => {
  test.each([
    'Rows 3 and 4: Work rows 3 and 4 of chart Dot.',
    'Rows 3-4: Follow rows 3-4 of chart.',
    'Rows 3 and 4: Work chart Dot, beginning with row 3.',
    'Rows 3-4: Work chart Dot from row 3.',
    // The range ends with the chart's last row by number.
    'Rows 3 and 4: Continue to follow chart Dot.',
    'Rows 3 and 4: Cont in filet, following chart.',
  ])('%s', (rows) => {
    const { findings } = compile(flat(rows), { fixes: false });
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(usesIn(flat(rows)).map(({ row, record }) => [record.number, row + 1])).toEqual([
      [3, 3],
      [4, 4],
    ]);
  });

  test('one row that is named is worked in every row of the range', () => {
    const uses = usesIn(flat('Rows 3 and 4: Work row 2 of chart Dot.'));
    expect(uses.map(({ row }) => row + 1)).toEqual([2, 2]);
  });
});

describe('a round', () => {
  const round = (work: string): string =>
    '---\nterms: US\n---\nCh 48, join with sl st in first ch to form a ring.\n\n' +
    'Rnd 1: Work 16 open boxes; join. (16 boxes)\n\n' +
    `Rnds 2-5: ${work}; join. (16 boxes)\n\n${CHART}`;

  test('runs the chart across the join in two parts', () => {
    const text = round(
      'Work boxes 3-5 of chart Dot, work 11 open boxes, work boxes 1-2 of chart Dot',
    );
    expect(compile(text).rows.map(({ verdict }) => verdict)).not.toContain('mismatch');
    const [first] = usesIn(text);
    // Boxes 1 and 2 of "....#" from the right: filled, open; they are the round's last.
    expect(first?.cells?.slice(-2)).toEqual(['filled', 'open']);
    expect(first).toMatchObject({ starts: [14], acrossJoin: 2, before: null });
    expect(first?.after).toEqual({ boxes: [11], kind: 'open' });
  });

  test('begins the chart again where the rounds are as many as it has', () => {
    const text = round('*Work chart Dot, work 3 open boxes; rep from * around').replace(
      '```chart',
      'Rnds 6-9: *Work chart Dot, work 3 open boxes; rep from * around; join. (16 boxes)\n\n```chart',
    );
    expect(usesIn(text).map(({ row }) => row)).toEqual([0, 1, 2, 3, 0, 1, 2, 3]);
    expect(compile(text).rows.map(({ verdict }) => verdict)).not.toContain('mismatch');
  });

  test('has the chart twice, and each time its next row', () => {
    const uses = usesIn(
      round('Work chart Dot, work 3 open boxes, work chart Dot, work 3 open boxes'),
    );
    expect(uses.map(({ row, times, starts }) => [row, times, ...starts])).toEqual([
      [0, 2, 0, 8],
      [1, 2, 0, 8],
      [2, 2, 0, 8],
      [3, 2, 0, 8],
    ]);
    expect(uses[0]?.after).toEqual({ boxes: [3], kind: 'open' });
  });
});

describe('lobes', () => {
  const text = readFileSync(
    new URL('../../examples/driftwood-heart.pattern.md', import.meta.url),
    'utf8',
  );

  test('are worked each by itself, the second on what the first left', () => {
    const uses = usesIn(text).filter(({ part }) => part !== null);
    expect(uses.map(({ row, part }) => [row + 1, part?.from, part?.to])).toEqual([
      [9, 1, 6],
      [10, 2, 6],
      [11, 3, 5],
      [9, 8, 13],
      [10, 8, 12],
      [11, 9, 11],
    ]);
  });

  test('the second lobe stands on the posts that the chart shows beneath it', () => {
    const { fabric } = compile(text, { fixes: false });
    const [cloth] = fabric.cloths;
    const rows = cloth?.rows ?? [];
    const below = rows.find(({ number }) => number === 8);
    const lobe = rows.findLast(({ number }) => number === 9);
    if (!cloth || !below || !lobe) throw new Error('the heart has no row 8 or 9');
    // Row 8 is made from left to right: 3 + 3 + 3 + 6 + 3 of its stitches and chains lie left of
    // the post on which the second lobe begins, over the left edge of the middle box.
    const first =
      lobe.nodes.from +
      [...cloth.nodes.kind.slice(lobe.nodes.from, lobe.nodes.to)].findIndex(
        (kind) => fabric.kinds.kinds[kind]?.class === 'start',
      );
    expect(placeBelow({ fabric, cloth }, first, below)).toBe(18);
  });

  test('a number changed in a lobe is found there', () => {
    const wrong = text.replace(
      '8-13 of row 9 of chart Heart. (6 boxes)',
      '8-13 of row 9 of chart Heart. (7 boxes)',
    );
    const codes = compile(wrong, { fixes: false }).findings.map(({ code }) => code);
    expect(codes).toContain('count-mismatch');
  });
});
