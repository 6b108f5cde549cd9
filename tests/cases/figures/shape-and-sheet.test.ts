/**
 * Two ways to one size: the sheet sums rows and counts, the shape brings stitches to rest. Where both speak of
 * the same length they have to agree within what each says that it may be off.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { measuresOf } from '../../../cli/shape-measures.ts';
import { compile, type Figure, measure, shapeOf } from '../../../src/index.ts';

interface Both {
  readonly sheet: (part: string, what: string) => Figure;
  readonly shape: (piece: string, what: string) => Figure;
}

function both(name: string): Both {
  const text = readFileSync(`examples/${name}.pattern.md`, 'utf8');
  const { manuscript, fabric } = compile(text, { fixes: false });
  const parts = measure(manuscript, fabric).sizes[0]!.pieces.flatMap((piece) => piece.parts);
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  const shape = step.value;
  return {
    sheet: (part, what) =>
      parts.find((one) => one.name.startsWith(part) && one.measures[what as 'wide'])!.measures[
        what as 'wide'
      ]!,
    shape: (piece, what) => {
      const found = shape.pieces.find((one) => one.name.startsWith(piece))!;
      return measuresOf(found, shape).find((one) => one.name === what)!.figure;
    },
  };
}

/** Part and measure of the sheet, measure of the shape; pieces are named after their first part or the title. */
const PAIRS: Record<string, readonly (readonly [string, string, string, string])[]> = {
  'harbour-name-banner': [
    ['Banner', 'wide', 'Harbour', 'wide'],
    ['Banner', 'long', 'Harbour', 'long'],
  ],
  'reedbed-curtain-panel': [
    ['Panel', 'wide', 'Reedbed', 'wide'],
    ['Panel', 'long', 'Reedbed', 'long'],
  ],
  'driftwood-heart': [
    ['Heart', 'wide', 'Driftwood', 'wide'],
    ['Heart', 'long', 'Driftwood', 'long'],
  ],
  'saltmarsh-ripple-blanket': [
    ['Blanket', 'wide', 'Saltmarsh', 'wide'],
    ['Blanket', 'long', 'Saltmarsh', 'long'],
  ],
  'garden-wall-cushion': [
    ['Front', 'wide', 'Front', 'wide'],
    ['Front', 'long', 'Front', 'long'],
    ['Back', 'wide', 'Back', 'wide'],
    ['Back', 'long', 'Back', 'long'],
  ],
  'hoarfrost-doily': [['Doily', 'across', 'Hoarfrost', 'across']],
  'tidepool-square': [['Square', 'across', 'Tidepool', 'square']],
  'kettle-hot-pad': [['Back', 'across', 'Back', 'across']],
  'beachcomb-basket': [
    ['Base', 'across', 'Beachcomb', 'across'],
    ['Sides', 'around', 'Beachcomb', 'round'],
  ],
  'low-tide-errand-bag': [
    ['Base', 'long', 'Low Tide', 'wide'],
    ['Sides', 'around', 'Low Tide', 'round'],
    ['Sides', 'high', 'Low Tide', 'high to the rim'],
  ],
  'weather-watch-hat': [
    ['Crown', 'across', 'Weather', 'across'],
    ['Sides', 'around', 'Weather', 'round'],
  ],
  'estuary-otter': [
    ['Head', 'across', 'Head', 'across'],
    ['Head', 'high', 'Head', 'high'],
    ['Body', 'around', 'Body', 'round'],
    ['Body', 'high', 'Body', 'high'],
    ['Tummy', 'long', 'Tummy', 'wide'],
    ['Tummy', 'wide', 'Tummy', 'long'],
    ['Muzzle', 'across', 'Muzzle', 'across'],
  ],
};

describe.each(Object.entries(PAIRS))('%s', (name, pairs) => {
  const { sheet, shape } = both(name);
  test.each(pairs)('%s %s is %s %s', (part, what, piece, seen) => {
    const [a, b] = [sheet(part, what), shape(piece, seen)];
    expect(Math.abs(a.mm - b.mm)).toBeLessThanOrEqual(a.mm * a.spread + b.mm * b.spread);
  });
});
