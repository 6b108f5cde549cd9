/**
 * The arithmetic of mesh against printed rules and worked examples. Sources by their mark in
 * docs/sources.md (filet): F1 to F10. Where a number is ours by arithmetic from a printed rule, it
 * says so.
 */
import { describe, expect, test } from 'vitest';
import {
  boxesOver,
  chainsForMore,
  chainsOfBar,
  foundationOf,
  type Mesh,
  startChains,
  stitchesOf,
} from '../../src/filet/index.ts';
import * as DATA from './filet-data.ts';

const dc = (gap: number): Mesh => ({ post: 'w1', gap });
const tr = (gap: number): Mesh => ({ post: 'w2', gap });

describe('foundation chain', () => {
  // `way` A gives the first post a base chain of its own, B lets it stand in the turning chain.
  test.each(DATA.CHAINS)('$way, $boxes boxes, gap $gap, first $first: $source', (row) => {
    const made = foundationOf(dc(row.gap), {
      boxes: row.boxes,
      first: row.first === 'solid' ? 'filled' : 'open',
      way: row.way === 'A' ? 'own' : 'shared',
    });
    expect(made).toEqual({ chains: row.chain, firstIn: row.nth });
  });

  test('what lies behind the hook is what the boxes need, whichever way (arithmetic)', () => {
    for (const way of ['own', 'shared'] as const)
      for (const first of ['open', 'filled'] as const)
        for (const gap of [0, 1, 2, 3]) {
          const { chains, firstIn } = foundationOf(dc(gap), { boxes: 7, first, way });
          // From the first stitch on: an open first box leaves all but post and gap, a filled
          // one all but its post; the skipped gap of an open box lies under the turning chain.
          const rest = stitchesOf(7, gap, 'flat') - 1 - (first === 'open' ? gap : 0);
          expect(chains - firstIn + 1).toBe(rest);
        }
  });
});

describe('stitches', () => {
  test('F5, F9: filled boxes side by side at ch 2 make 4, 7, 10, 13, 16, 19', () => {
    expect(DATA.SOLID.dc.map((_, i) => stitchesOf(i + 1, 2, 'flat'))).toEqual(DATA.SOLID.dc);
  });

  test('F10: 44 boxes at ch 1 are 89 stitches; F8: 9 boxes at ch 2 are 28; F16: 3n + 1', () => {
    expect(stitchesOf(44, 1, 'flat')).toBe(89);
    expect(stitchesOf(9, 2, 'flat')).toBe(28);
    expect(stitchesOf(33, 2, 'flat')).toBe(100);
  });

  test('a ring has no post more than boxes: 40 at ch 2 and 60 at ch 1 are 120 (arithmetic)', () => {
    expect(stitchesOf(40, 2, 'round')).toBe(120);
    expect(stitchesOf(60, 1, 'round')).toBe(120);
    expect(boxesOver(120, 2, 'round')).toEqual({ boxes: 40, left: 0 });
    expect(boxesOver(120, 2, 'flat')).toEqual({ boxes: 39, left: 2 });
    expect(boxesOver(0, 2, 'flat')).toEqual({ boxes: 0, left: -1 });
  });
});

describe('chains', () => {
  test('F1, F3, F12: ch 5 or ch 3 begins a row at ch 2; F14: ch 7 with tr and ch 3', () => {
    expect(startChains(dc(2), 'open')).toBe(5);
    expect(startChains(dc(1), 'open')).toBe(4);
    expect(startChains(dc(2), 'filled')).toBe(3);
    expect(startChains(tr(3), 'open')).toBe(7);
  });

  test('F6: ch 7 for one open box more, ch 10 for two; one filled box ch 5 (common practice)', () => {
    expect(chainsForMore(dc(2), 1, 'open')).toBe(7);
    expect(chainsForMore(dc(2), 2, 'open')).toBe(10);
    expect(chainsForMore(dc(2), 1, 'filled')).toBe(5);
  });

  test('F7: the bar over a lacet is ch 5', () => {
    expect(chainsOfBar(2)).toBe(5);
  });
});
