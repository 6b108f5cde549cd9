/** A pattern made to its shape, as the checks of this folder look at it. */
import { expect } from 'vitest';
import { compile, type Shape, type ShapedPiece, shapeOf } from '../../src/index.ts';

export interface ShapedPattern {
  readonly shape: Shape;
  readonly piece: ShapedPiece;
}

/** `gauge`: "20 sc x 20 rnds = 10 cm". The first piece, at rest. */
export function shaped(gauge: string, ...paragraphs: string[]): ShapedPattern {
  const head = `---\ntitle: Trial piece\nterms: US\ngauge: ${gauge}\n---\n\n## Piece\n\n`;
  const { manuscript, fabric, findings } = compile(`${head}${paragraphs.join('\n\n')}\n`, {
    fixes: false,
  });
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  const [piece] = step.value.pieces;
  if (!piece) throw new Error('no piece');
  return { shape: step.value, piece };
}

/** Distance from an axis through the mean of all stitches: x and y alone, or all three. */
export function radii({ graph, at }: ShapedPiece, row: number, axes: 2 | 3): number[] {
  const middle = [0, 0, 0];
  for (let i = 0; i < graph.n; i++) {
    for (let c = 0; c < 3; c++) middle[c]! += at[3 * i + c]! / graph.n;
  }
  const { from, to } = graph.rows[row]!;
  return Array.from({ length: to - from }, (_, k) => {
    let sum = 0;
    for (let c = 0; c < axes; c++) sum += (at[3 * (from + k) + c]! - middle[c]!) ** 2;
    return Math.sqrt(sum);
  });
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Length round a row, along its stitches, mm. */
export function girth({ graph, at }: ShapedPiece, row: number): number {
  const { from, to } = graph.rows[row]!;
  let sum = 0;
  for (let i = from; i < to; i++) {
    const next = i + 1 < to ? i + 1 : from;
    sum += Math.hypot(...[0, 1, 2].map((c) => at[3 * i + c]! - at[3 * next + c]!));
  }
  return sum;
}
