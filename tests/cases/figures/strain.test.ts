/**
 * Strain against unrest: what can have its size comes to it within 0.02 mm, what cannot balances its pulls.
 * Sums by hand; equilibrium as mechanics has it: no force is left, and no small push lowers the energy.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { energyOf } from '../../../src/figures/shape/energy.ts';
import { relaxWhole } from '../../../src/figures/shape/relax.ts';
import { SpringList } from '../../../src/figures/shape/springs.ts';
import { strainOf } from '../../../src/figures/shape/strain.ts';
import { compile, type ShapedPiece, shapeOf } from '../../../src/index.ts';

function pieces(text: string): readonly ShapedPiece[] {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value.pieces;
}

const example = (name: string): string => readFileSync(`examples/${name}.pattern.md`, 'utf8');

describe('pieces whose stitches can all have their size come to it', () => {
  test.each([
    'harbour-name-banner',
    'reedbed-curtain-panel',
    'driftwood-heart',
    'low-tide-errand-bag',
  ])('%s: at rest, 0.02 mm off in the mean at most', (name) => {
    for (const { relaxed, strain } of pieces(example(name))) {
      expect(relaxed.settled).toBe(true);
      expect(strain.meanMm).toBeLessThanOrEqual(0.02);
    }
  });
});

describe('pieces whose stitches cannot', () => {
  test.each([
    'tidepool-square',
    'kettle-hot-pad',
    'weather-watch-hat',
    'estuary-otter',
  ])('%s: strained, named by its row, and at rest all the same', (name) => {
    const strained = pieces(example(name)).filter(({ strain }) => strain.meanMm > 0.02);
    expect(strained.length).toBeGreaterThan(0);
    for (const { relaxed, strain } of strained) {
      expect(relaxed.settled).toBe(true);
      expect(relaxed.unsettledMm).toBeLessThan(0.002);
      expect(strain.meanShare).toBeLessThan(0.05);
      expect(strain.most!.share).toBeGreaterThanOrEqual(strain.meanShare);
    }
  });

  test('a triangle of 1, 1 and 3 mm: the short sides give a third each, the long one as much', () => {
    const list = new SpringList();
    list.add(0, 1, 1, 1);
    list.add(1, 2, 1, 1);
    list.add(0, 2, 3, 1);
    const springs = list.finish();
    const start = Float64Array.of(0, 0, 0, 1.2, 0.1, 0, 2.5, 0, 0);
    const limits = { steps: 500, restMm: 1e-9 };
    const { at, edgeErrorMm, energy, settled } = relaxWhole({ springs, at: start, limits });
    expect(settled).toBe(true);
    expect(edgeErrorMm).toBeCloseTo(1 / 3, 6);
    expect(energy).toBeCloseTo(1 / 6, 6);
    const load = { springs, bends: null, contacts: null, stuffing: null };
    const none = new Float64Array(9);
    for (let k = 0; k < 9; k++) {
      for (const push of [0.01, -0.01]) {
        const pushed = at.slice();
        pushed[k]! += push;
        expect(energyOf(pushed, load, none)).toBeGreaterThanOrEqual(energy - 1e-12);
      }
    }
  });
});

test('strain by hand: springs of 2 and 4 mm, both drawn to 3 mm', () => {
  const [piece] = pieces('## Strip\n\nCh 3.\n\nRow 1: Sc in 2nd ch from hook and in next ch. (2 sc)\n');
  const list = new SpringList();
  list.add(0, 1, 2, 1);
  list.add(0, 2, 4, 1);
  // Across the fabric, not a stitch: left out.
  list.add(1, 2, 1, 0.15);
  const at = new Float64Array(3 * piece!.graph.n);
  at.set([0, 0, 0, 3, 0, 0, 0, 3, 0]);
  const { meanMm, meanShare } = strainOf(piece!.graph, at, list.finish());
  expect(meanMm).toBe(1);
  expect(meanShare).toBeCloseTo((1 / 2 + 1 / 4) / 2, 12);
});
