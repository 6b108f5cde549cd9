/**
 * The errand bag, whole: its check values were worked out by hand beside the pattern when it was
 * designed (sums of runs, stitches and chains), not by this program.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compile, type RowAccount } from '../src/index.ts';

const text = readFileSync(
  new URL('../examples/low-tide-errand-bag.pattern.md', import.meta.url),
  'utf8',
);
const compiled = compile(text);
const row = (label: string, instance = 1): RowAccount => {
  const found = compiled.rows.filter((r) => r.label === label && r.instance === instance);
  // "Rnd 1" is in the base and again in the handle openings: the first is the bag's.
  const [first] = found;
  if (!first) throw new Error(`no ${label}`);
  return first;
};

describe('the errand bag', () => {
  it('is proven in every row, without a finding', () => {
    expect(compiled.findings).toEqual([]);
    expect(compiled.rows.filter((r) => r.verdict !== 'proven')).toEqual([]);
    // 30 rounds and the handle opening, worked twice.
    expect(compiled.rows).toHaveLength(32);
  });

  it.each([
    ['Rnd 12', 63, 41],
    ['Rnd 13', 58, 46],
    ['Rnd 14', 57, 47],
    ['Rnd 15', 60, 44],
    ['Rnd 16', 57, 47],
    ['Rnd 17', 58, 46],
    ['Rnd 18', 67, 37],
  ])('%s of the chart has %i dc and %i ch-1 spaces', (label, dc, spaces) => {
    expect(row(label).byKind).toEqual({ dc });
    expect(row(label).spaces).toEqual([{ chains: 1, n: spaces }]);
    expect(row(label).boxes).toBe(52);
  });

  it('makes 2,348 sc, 628 dc and 659 chains in all', () => {
    const sum = (of: (r: RowAccount) => number): number =>
      compiled.rows.reduce((total, r) => total + of(r), 0);
    expect(sum((r) => r.byKind.sc ?? 0) + sum((r) => r.byKind.sc2tog ?? 0)).toBe(2348);
    expect(sum((r) => r.byKind.dc ?? 0)).toBe(628);
    const foundation = compiled.fabric.cloths[0];
    const chain = compiled.fabric.kinds.byName.get('chain');
    const chains = foundation?.nodes.kind
      .subarray(0, foundation.nodes.n)
      .filter((k) => k === chain);
    expect(chains).toHaveLength(659);
  });

  it('works both handle openings on their own skipped stitches and chain', () => {
    const openings = compiled.rows.filter((r) => r.part.startsWith('Handle openings'));
    expect(openings.map((r) => [r.instance, r.made])).toEqual([
      [1, 68],
      [2, 68],
    ]);
    const { nodes, rows } = compiled.fabric.cloths[0] ?? { nodes: null, rows: [] };
    const anchors = rows.slice(-2).map(({ nodes: { from, to } }) => {
      const all = nodes?.anchors.subarray(nodes.anchorFrom[from] ?? 0, nodes.anchorFrom[to] ?? 0);
      return new Set(all);
    });
    expect(anchors[0]?.size).toBe(68);
    expect([...(anchors[0] ?? [])].filter((place) => anchors[1]?.has(place))).toEqual([]);
  });
});
