/** Laws of the shape: the same bytes on every run, progress that may be stopped, no input that breaks it. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile, drawPieces, type Shape, shapeOf, toGlb, toSvg } from '../../src/index.ts';
import { ALL_LINES } from './lines.ts';

const QUICK = { steps: 12, restMm: 0.002 };

function whole(text: string, limits = QUICK): Shape {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const run = shapeOf(manuscript, fabric, { limits });
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value;
}

const examples = new URL('../../examples/', import.meta.url);
const texts = readdirSync(examples)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(new URL(name, examples), 'utf8')] as const);

describe('examples', () => {
  test.each(texts)('%s: twice the same bytes, no place that is not a number', (_, text) => {
    const [one, two] = [whole(text), whole(text)];
    expect(one.pieces.length).toBeGreaterThan(0);
    for (const [i, piece] of one.pieces.entries()) {
      expect(piece.at.every((v) => Number.isFinite(v))).toBe(true);
      expect(Buffer.from(piece.at.buffer).equals(Buffer.from(two.pieces[i]!.at.buffer))).toBe(true);
    }
  });

  test('the drawing and the model of a shape have the same bytes too', () => {
    const [, text] = texts.find(([name]) => name.startsWith('weather'))!;
    const { fabric } = compile(text, { fixes: false });
    const [one, two] = [whole(text), whole(text)];
    const drawn = (shape: Shape): string =>
      toSvg(drawPieces(shape, fabric, { title: 'x', captionFor: ({ name }) => [name] }));
    expect(drawn(one)).toBe(drawn(two));
    expect(toGlb(one, fabric, { generator: 'x' })).toEqual(toGlb(two, fabric, { generator: 'x' }));
  });
});

test('it tells how far it is, and can be left at any step', () => {
  const [, text] = texts.find(([name]) => name.startsWith('estuary'))!;
  const { manuscript, fabric } = compile(text, { fixes: false });
  const run = shapeOf(manuscript, fabric);
  const first = run.next();
  expect(first.done).toBe(false);
  expect(first.value).toMatchObject({ piece: 'Head', nth: 1, of: 8 });
  run.return(whole(''));
  expect(run.next().done).toBe(true);
});

test('no text breaks it', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...ALL_LINES), { maxLength: 8 }), (lines) => {
      const shape = whole(`## Piece\n\n${lines.map(({ text }) => text).join('\n\n')}\n`);
      for (const { at } of shape.pieces) expect(at.every((v) => Number.isFinite(v))).toBe(true);
    }),
    { numRuns: 60, seed: 5 },
  );
});
