/** A left-handed maker's piece is the mirror image, but for the words in its charts. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { patchesOf } from '../../../src/figures/shape/patches.ts';
import {
  compile,
  drawPieces,
  leftHanded,
  type ShapedPiece,
  shapeOf,
  toSvg,
} from '../../../src/index.ts';

function shaped(text: string, hand: 'right' | 'left'): { piece: ShapedPiece; svg: string } {
  const compiled = compile(text, { fixes: false });
  const { manuscript, fabric } = hand === 'left' ? leftHanded(compiled) : compiled;
  const run = shapeOf(manuscript, fabric, { hand });
  let step = run.next();
  while (!step.done) step = run.next();
  const drawing = drawPieces(step.value, fabric, { title: 'x', captionFor: () => ['x'] });
  return { piece: step.value.pieces[0]!, svg: toSvg(drawing) };
}

const banner = readFileSync('examples/harbour-name-banner.pattern.md', 'utf8');

test('the letters of a banner stand where they stand for a right-handed maker', () => {
  const [right, left] = [shaped(banner, 'right').piece, shaped(banner, 'left').piece];
  expect(left.graph.n).toBe(right.graph.n);
  const key = ({ graph, at }: ShapedPiece, i: number): string =>
    [graph.isChain[i], Math.round(at[3 * i]! / 2), Math.round(at[3 * i + 1]! / 2)].join();
  const seen = new Map<string, number>();
  for (let i = 0; i < right.graph.n; i++) {
    for (const x of [-0.5, 0.5]) {
      for (const y of [-0.5, 0.5]) {
        const [cx, cy] = [right.at[3 * i]! / 2 + x, right.at[3 * i + 1]! / 2 + y];
        seen.set([right.graph.isChain[i], Math.floor(cx + 0.5), Math.floor(cy + 0.5)].join(), 1);
      }
    }
  }
  const missed = Array.from({ length: left.graph.n }, (_, i) => i).filter(
    (i) => !seen.has(key(left, i)),
  );
  expect(missed.length / left.graph.n).toBeLessThan(0.01);
});

test('a chart that is not symmetrical is read from the other side, and the row ends are exchanged', () => {
  const [right, left] = [compile(banner, { fixes: false }), leftHanded(compile(banner))];
  const kindsOf = ({ nodes }: { nodes: { kind: ArrayLike<number> } }): string =>
    Array.from(nodes.kind).join();
  expect(kindsOf(left.fabric.cloths[0]!)).not.toBe(kindsOf(right.fabric.cloths[0]!));
});

const tube =
  '---\nterms: US\ngauge: { sc: 20 sts x 20 rnds = 10 cm }\n---\nCh 40; join with sl st in first ch to form a ring.\n\nRnds 1-13: Sc in each st around. (40 sc)\n';

test('the start of round wanders to the left, and the right side stays out', () => {
  const [right, left] = [shaped(tube, 'right'), shaped(tube, 'left')];
  expect(left.svg).toContain('wanders to the left');
  expect(left.svg).toContain('left-handed');
  for (let k = 0; k < right.piece.at.length; k++) {
    expect(left.piece.at[k]).toBe(k % 3 === 0 ? -right.piece.at[k]! : right.piece.at[k]);
  }
  // Corners run round each stitch the same way, seen from outside.
  const outward = ({ graph, at }: ShapedPiece): number => {
    const { corners } = patchesOf(graph, at);
    const from = 12 * (graph.n - 1);
    const p = (c: number): number[] => [0, 1, 2].map((k) => corners[from + 3 * c + k]!);
    const [a, b, c] = [p(0), p(1), p(2)] as [number[], number[], number[]];
    const u = b.map((v, k) => v - a[k]!);
    const w = c.map((v, k) => v - a[k]!);
    return (u[1]! * w[2]! - u[2]! * w[1]!) * a[0]! + (u[2]! * w[0]! - u[0]! * w[2]!) * a[1]!;
  };
  expect(Math.sign(outward(left.piece))).toBe(Math.sign(outward(right.piece)));
});
