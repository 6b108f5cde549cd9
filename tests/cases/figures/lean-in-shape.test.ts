/**
 * The lean in the pictures of the shape: the same figure as on the sheet, once and not twice. A third to
 * half a stitch a round in sc is common practice, drawn at its middle; the rest is arithmetic on it.
 */
import { describe, expect, test } from 'vitest';
import {
  compile,
  drawPieces,
  type Shape,
  type ShapedPiece,
  shapeOf,
  toSvg,
} from '../../../src/index.ts';

function shaped(text: string): { shape: Shape; piece: ShapedPiece; svg: string } {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const run = shapeOf(manuscript, fabric);
  let step = run.next();
  while (!step.done) step = run.next();
  const shape = step.value;
  const drawing = drawPieces(shape, fabric, { title: 'x', captionFor: ({ name }) => [name] });
  return { shape, piece: shape.pieces[0]!, svg: toSvg(drawing) };
}

const tube = (rounds: string, head = ''): string =>
  `---\nterms: US\ngauge: { sc: 20 sts x 20 rnds = 10 cm, dc: 20 sts x 10 rnds = 10 cm }\n${head}---\nCh 40; join with sl st in first ch to form a ring.\n\n${rounds}\n`;

/**
 * Stitches by which the first stitch of the last round stands to the right of that of the first, seen
 * from outside, the first round at the bottom.
 */
function wandered({ graph, at }: ShapedPiece): number {
  const rounds = graph.rows.filter(({ record }) => record);
  let sum = 0;
  for (let k = 1; k < rounds.length; k++) {
    const [p, q] = [rounds[k - 1]!.from, rounds[k]!.from];
    const [a, b] = [p, q].map((i) => Math.atan2(at[3 * i + 1]!, at[3 * i]!)) as [number, number];
    const off = b - a;
    // From outside, counter-clockwise seen from above is to the right.
    sum += off - 2 * Math.PI * Math.round(off / (2 * Math.PI));
  }
  return (sum * 40) / (2 * Math.PI);
}

const inks = (svg: string): number => svg.split('stroke-width="0.35"').length - 1;

describe('a tube of 13 rounds of sc', () => {
  const joined = 'Rnds 1-13: Ch 1, sc in each st around; join. (40 sc)';
  const spiral = 'Rnds 1-13: Sc in each st around. (40 sc)';

  test.each([
    ['joined', joined],
    ['in a spiral', spiral],
  ])('%s: its start is 12 x 5/12 = 5 stitches to the right at the top', (_, rounds) => {
    const { piece } = shaped(tube(rounds));
    expect(piece.relaxed.settled).toBe(true);
    expect(wandered(piece)).toBeCloseTo(5, 1);
    // Leaning strains nothing: the tube is as round and as high as an upright one.
    expect(piece.relaxed.edgeErrorMm).toBeLessThan(0.005);
    expect(piece.dimensions.heightMm! / 65).toBeCloseTo(1, 2);
  });

  test('is drawn: one line a round, at both stitches beside it, and words that say what it is', () => {
    const { svg } = shaped(tube(spiral));
    expect(inks(svg)).toBe(26);
    expect(svg).toContain('wanders to the right');
    expect(svg).toContain('common practice');
  });

  test('by her own swatch: 0.2 a round, and -0.2 is to the left', () => {
    expect(wandered(shaped(tube(spiral, 'lean: { sc: 0.2 }\n')).piece)).toBeCloseTo(2.4, 1);
    const left = shaped(tube(spiral, 'lean: { sc: -0.2 }\n'));
    expect(wandered(left.piece)).toBeCloseTo(-2.4, 1);
    expect(left.svg).toContain('wanders to the left');
  });
});

describe('what does not lean', () => {
  test('turned rounds stand upright, and bear no line', () => {
    const { piece, svg } = shaped(
      tube('Rnds 1-13: Ch 1, sc in each st around; join, turn. (40 sc)'),
    );
    expect(Math.abs(wandered(piece))).toBeLessThan(0.6);
    expect(inks(svg)).toBe(0);
  });

  test('rounds of dc, which nobody has measured, stand upright; beside sc their line is broken', () => {
    const dc = 'Rnds 1-6: Ch 3, dc in next 39 sts; join. (40 dc)';
    expect(Math.abs(wandered(shaped(tube(dc)).piece))).toBeLessThan(0.1);
    expect(inks(shaped(tube(dc)).svg)).toBe(0);
    const { svg } = shaped(tube(`${dc}\n\nRnds 7-14: Ch 1, sc in each st around; join. (40 sc)`));
    expect(svg.split('stroke-dasharray').length - 1).toBe(12);
    expect(inks(svg)).toBe(28);
    expect(svg).toContain('only your own swatch tells');
  });
});

test('a flat circle keeps its size: it turns round by round', () => {
  const rounds = [
    'Rnd 1: 6 sc in magic ring. (6 sc)',
    'Rnd 2: 2 sc in each st around. (12 sc)',
    ...[1, 2, 3, 4].map(
      (k) =>
        `Rnd ${k + 2}: *Sc in next ${k} sts, 2 sc in next st; rep from * around. (${6 * (k + 2)} sc)`,
    ),
  ].join('\n\n');
  const { piece } = shaped(
    `---\nterms: US\ngauge: { sc: 19.1 sts x 20 rnds = 10 cm }\n---\n${rounds}\n`,
  );
  expect(piece.dimensions.pose).toBe('flat');
  expect(piece.dimensions.widthMm / 60).toBeCloseTo(1, 1);
});

test('the model has the line too, in a primitive of its own', async () => {
  const { toGlb } = await import('../../../src/index.ts');
  const text = tube('Rnds 1-13: Sc in each st around. (40 sc)');
  const { fabric } = compile(text, { fixes: false });
  const glb = toGlb(shaped(text).shape, fabric, { generator: 'x' });
  const length = new DataView(glb.buffer).getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(glb.subarray(20, 20 + length)));
  const [, lines] = json.meshes[0].primitives;
  expect(lines.mode).toBe(1);
  // Two ends a round, on both faces.
  expect(json.accessors[lines.attributes.POSITION].count).toBe(52);
});

