/** The schematic: one scale, the sheet's own numbers, every kind of part, and the lean. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  compile,
  type Drawing,
  drawSchematic,
  measure,
  type SizeSheet,
  shortFigure,
  toSvg,
} from '../../src/index.ts';
import { type Mark, measureText, type PathStep } from '../../src/pictures/index.ts';

const sheetOf = (text: string): SizeSheet => {
  const { manuscript, fabric } = compile(text, { fixes: false });
  return measure(manuscript, fabric).sizes[0]!;
};
const example = (name: string) => sheetOf(readFileSync(`examples/${name}.pattern.md`, 'utf8'));
const drawn = (sheet: SizeSheet): Drawing => drawSchematic(sheet, { title: 'x', units: 'metric' })!;

/** All marks, out of their groups. */
function flat(marks: readonly Mark[]): Mark[] {
  return marks.flatMap((mark) => (mark.kind === 'group' ? flat(mark.marks) : [mark]));
}

/** Where each text ends on the page, in mm. */
function textEnds(marks: readonly Mark[], fromX = 0, fromY = 0): Point[] {
  return marks.flatMap((mark): Point[] => {
    if (mark.kind === 'group') {
      const [x, y] = mark.at ?? [0, 0];
      return textEnds(mark.marks, fromX + x, fromY + y);
    }
    if (mark.kind !== 'text') return [];
    return [
      [fromX + mark.at[0] + measureText(mark.text, mark.sizeMm, mark.weight), fromY + mark.at[1]],
    ];
  });
}

const wordsOf = (drawing: Drawing): string[] =>
  flat(drawing.marks).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

type Point = readonly [number, number];
const ends = (steps: readonly PathStep[]): Point[] =>
  steps.flatMap((step) =>
    step[0] === 'Z' ? [] : [[step.at(-2), step.at(-1)] as unknown as Point],
  );
const paths = (drawing: Drawing) => flat(drawing.marks).filter((mark) => mark.kind === 'path');
const closed = (drawing: Drawing) =>
  paths(drawing).filter(({ steps }) => steps.at(-1)?.[0] === 'Z');
const span = (points: readonly Point[], axis: 0 | 1): number =>
  Math.max(...points.map((at) => at[axis])) - Math.min(...points.map((at) => at[axis]));

describe('the errand bag', () => {
  const sheet = example('low-tide-errand-bag');
  const drawing = drawn(sheet);
  const parts = sheet.pieces[0]!.parts;
  const sides = parts.find(({ form }) => form === 'tube')!;
  const straps = parts.find(({ form }) => form === 'straps')!;

  test('is drawn to one scale', () => {
    const [tube, rim] = closed(drawing).map(({ steps }) => ends(steps));
    const scale = span(tube!, 0) / sides.measures.flat!.mm;
    expect(span(tube!, 1) / sides.measures.high!.mm).toBeCloseTo(scale, 6);
    expect(span(rim!, 1) / straps.measures.high!.mm).toBeCloseTo(scale, 6);
    const base = flat(drawing.marks).find((mark) => mark.kind === 'rect')!;
    expect(base.widthMm / parts[0]!.measures.long!.mm).toBeCloseTo(scale, 6);
    expect(base.heightMm / parts[0]!.measures.wide!.mm).toBeCloseTo(scale, 6);
  });

  test('has a handle as long as its strap over its opening', () => {
    const scale = span(ends(closed(drawing)[0]!.steps), 0) / sides.measures.flat!.mm;
    const arc = paths(drawing).find(({ steps }) => steps[1]?.[0] === 'C' && steps.length === 3)!;
    expect(lengthOf(arc.steps) / scale / straps.measures.strap!.mm).toBeCloseTo(1, 2);
    expect(span(ends(arc.steps), 0) / scale / straps.measures.opening!.mm).toBeCloseTo(1, 6);
  });

  test('shows where the middle by count comes to stand, to scale', () => {
    const scale = span(ends(closed(drawing)[0]!.steps), 0) / sides.measures.flat!.mm;
    const wedge = paths(drawing).filter(
      ({ stroke }) => typeof stroke === 'object' && stroke.dashMm !== undefined,
    );
    const last = sheet.leans.at(-1)!;
    expect(wedge.map(({ steps }) => span(ends(steps), 0) / scale)).toEqual([
      expect.closeTo(last.lean.mm.from, 6),
      expect.closeTo(last.lean.mm.to, 6),
    ]);
    expect(wordsOf(drawing).join(' ')).toContain(
      'middle by count at Rnd 12: 1.9 cm to 2.8 cm to the right',
    );
  });

  test('says what it does not draw', () => {
    expect(wordsOf(drawing).join(' ')).toContain('Not drawn: Handle openings');
  });
});

/** Length of a path of lines and cubics, by chords. */
function lengthOf(steps: readonly PathStep[]): number {
  let at: Point = [0, 0];
  let sum = 0;
  for (const step of steps) {
    if (step[0] === 'M') at = [step[1], step[2]];
    if (step[0] !== 'C') continue;
    const [, ax, ay, bx, by, x, y] = step;
    const [fromX, fromY] = at;
    for (let n = 1; n <= 200; n++) {
      const t = n / 200;
      const u = 1 - t;
      const next: Point = [
        u ** 3 * fromX + 3 * u * u * t * ax + 3 * u * t * t * bx + t ** 3 * x,
        u ** 3 * fromY + 3 * u * u * t * ay + 3 * u * t * t * by + t ** 3 * y,
      ];
      sum += Math.hypot(next[0] - at[0], next[1] - at[1]);
      at = next;
    }
  }
  return sum;
}

describe('shaped edges', () => {
  const sheet = example('driftwood-heart');
  const [heart] = sheet.pieces[0]!.parts;

  test('stand row upon row: a heart is alike on both sides up to its lobes', () => {
    const rows = heart!.outline!.slice(0, 8);
    const middle = (rows[0]!.leftMm + rows[0]!.rightMm) / 2;
    expect(heart!.outline).toHaveLength(11);
    for (const { leftMm, rightMm } of rows) {
      // Within half a stitch of 3 mm.
      expect(Math.abs((leftMm + rightMm) / 2 - middle)).toBeLessThan(1.5);
    }
  });

  test('are as wide as the sheet says at first, at most and at last', () => {
    const widths = heart!.outline!.map(({ leftMm, rightMm }) => rightMm - leftMm);
    expect(widths[0]).toBeCloseTo(heart!.measures['first edge']!.mm, 6);
    expect(Math.max(...widths)).toBeCloseTo(heart!.measures.wide!.mm, 6);
    expect(widths.at(-1)).toBeCloseTo(heart!.measures['last edge']!.mm, 6);
    const [outline] = closed(drawn(sheet));
    expect(span(ends(outline!.steps), 1) / span(ends(outline!.steps), 0)).toBeCloseTo(
      heart!.measures.long!.mm / heart!.measures.wide!.mm,
      1,
    );
  });

  test('one stitch less at the end of every row slants that side alone', () => {
    const rows = Array.from(
      { length: 8 },
      (_, at) => `Row ${at + 2}: Ch 1, sc in next ${18 - at} sts, sc2tog, turn. (${19 - at} sc)`,
    )
      .join('\n\n')
      .replace(
        /Row (3|5|7|9): Ch 1, sc in next (\d+) sts, sc2tog/g,
        'Row $1: Ch 1, sc2tog, sc in next $2 sts',
      );
    const sheetWedge = sheetOf(
      `---\nterms: US\ngauge: { sc: 20 sts x 20 rows = 10 cm }\n---\nCh 21.\n\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n\n${rows}\n`,
    );
    const { outline } = sheetWedge.pieces[0]!.parts[0]!;
    const [first, last] = [outline![0]!, outline!.at(-1)!];
    // Right-side rows end at the left, wrong-side rows begin there; Row 2 is a wrong-side row and ends at the right.
    expect(Math.abs(last.leftMm - first.leftMm)).toBeLessThan(3);
    expect(first.rightMm - last.rightMm).toBeGreaterThan(35);
  });

  test('are unknown where rows open from their start: it is drawn as its rows lie', () => {
    const shawl = example('evening-squall-shawl');
    expect(shawl.pieces[0]!.parts[0]!.form).toBe('centre-out piece');
    expect(Object.keys(shawl.pieces[0]!.parts[0]!.measures)).toEqual(['last edge', 'deep']);
    expect(closed(drawn(shawl))).toHaveLength(1);
  });
});

describe('lacets', () => {
  test('make a row no wider than its boxes: 35 at 14 to 10 cm', () => {
    const [panel] = example('reedbed-curtain-panel').pieces[0]!.parts;
    expect(panel!.form).toBe('flat piece');
    expect(panel!.measures.wide!.mm).toBeCloseTo((106 / 42) * 100, 6);
  });
});

const names = [
  'beachcomb-basket',
  'driftwood-heart',
  'estuary-otter',
  'evening-squall-shawl',
  'garden-wall-cushion',
  'hoarfrost-doily',
  'kettle-hot-pad',
  'low-tide-errand-bag',
  'reedbed-curtain-panel',
  'saltmarsh-ripple-blanket',
  'tidepool-square',
  'weather-watch-hat',
];

describe.each(names)('%s', (name) => {
  const sheet = example(name);
  const drawing = drawn(sheet);

  test("says the sheet's numbers of every part", () => {
    const words = wordsOf(drawing).join(' ');
    for (const { form, measures } of sheet.pieces.flatMap(({ parts }) => parts)) {
      for (const [what, figure] of Object.entries(measures)) {
        // Across is half of around over pi for tubes that lie flat; one of the two stands there.
        if ((what === 'across' && form === 'cone') || what === 'flat') continue;
        expect(words).toContain(shortFigure(figure, 'metric'));
      }
    }
  });

  test('keeps on the page, and gives the same bytes twice', () => {
    const svg = toSvg(drawing);
    expect(toSvg(drawn(sheet))).toBe(svg);
    for (const [x, y] of textEnds(drawing.marks)) {
      expect(x).toBeLessThan(drawing.widthMm);
      expect(y).toBeLessThan(drawing.heightMm);
    }
  });
});

describe('what opens from a start', () => {
  const shawl = (heading: string, gap: string) =>
    sheetOf(
      `---\nterms: US\ngauge: { dc: 15 sts x 7.5 rows = 10 cm }\n---\n## ${heading}\n\nRow 1: Ch 3 (counts as dc), 2 dc in magic ring${gap}, 3 dc in ring, turn.\n\n${[
        2, 3, 4, 5, 6, 7,
      ]
        .map((n) =>
          gap === ''
            ? `Row ${n}: Ch 3, 2 dc in each of next 4 sts, dc in each st across, turn.`
            : `Row ${n}: Ch 3, dc in same st, dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc to last st, 2 dc in last st, turn.`,
        )
        .join('\n\n')}\n`,
    );
  /** Length of a closed outline through straight lines. */
  const outline = (drawing: Drawing) => ends(closed(drawing)[0]!.steps);
  const between = ([a, b]: Point, [c, d]: Point): number => Math.hypot(a - c, b - d);

  test('a shawl with a point is two triangles as deep as its rows, its last edge their bases', () => {
    const sheet = shawl('Shawl', ', ch 2');
    const [part] = sheet.pieces[0]!.parts;
    const drawing = drawn(sheet);
    const [start, left, point, right] = outline(drawing) as [Point, Point, Point, Point];
    const scale = 90 / Math.max(span(outline(drawing), 0), span(outline(drawing), 1));
    expect(part!.form).toBe('centre-out piece');
    expect(part!.points).toBe(1);
    expect(scale).toBeCloseTo(1, 6);
    const perMm = between(left, point) / (part!.measures['last edge']!.mm / 2);
    expect(between(point, right)).toBeCloseTo(between(left, point), 6);
    // Height of the triangle over its base: twice its area by its base.
    const area = Math.abs(
      (left[0] - start[0]) * (point[1] - start[1]) - (point[0] - start[0]) * (left[1] - start[1]),
    );
    expect(area / between(left, point) / part!.measures.deep!.mm).toBeCloseTo(perMm, 6);
  });

  test('without a point it is a sector whose arc is the last edge', () => {
    const sheet = shawl('Shawl', '');
    const [part] = sheet.pieces[0]!.parts;
    const drawing = drawn(sheet);
    const [start, ...rim] = outline(drawing);
    const arc = rim.slice(1).reduce((sum, at, i) => sum + between(rim[i]!, at), 0);
    const { deep } = part!.measures;
    const perMm = between(start!, rim[0]!) / deep!.mm;
    expect(arc / part!.measures['last edge']!.mm / perMm).toBeCloseTo(1, 2);
    expect(wordsOf(drawing).join(' ')).toContain('pinned out, it takes another shape');
  });

  test('a shawl that would go round more than once is not drawn, and it is said why', () => {
    const ruffled = sheetOf(
      `---\nterms: US\ngauge: { dc: 15 sts x 10 rows = 10 cm }\n---\n## Panel\n\nCh 12.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\n\nFasten off.\n\n## Frill\n\nRow 1: Ch 3 (counts as dc), 6 dc in magic ring, turn. (7 dc)\n\nRow 2: Ch 3, 2 dc in same st, 3 dc in each st across, turn. (21 dc)\n\nRow 3: Ch 3, 2 dc in same st, 3 dc in each st across, turn. (63 dc)\n`,
    );
    const words = wordsOf(drawn(ruffled)).join(' ');
    expect(words).toMatch(
      /Not drawn: Frill, .*: its edge is longer than its depth lets it lie flat\./,
    );
  });

  test('a hexagon has six equal sides, as far apart as its rounds', () => {
    const rnd = (n: number) =>
      `Rnd ${n}: Ch 3 (counts as dc), dc in next ${n - 1} dc, (dc, ch 2, dc) in next ch-2 sp, *dc in next ${2 * (n - 1)} dc, (dc, ch 2, dc) in next ch-2 sp; rep from * 4 more times, dc in next ${n - 2} dc; join.`;
    const sheet = sheetOf(
      `---\nterms: US\ngauge: { tile: Rnds 1-3 = 9 cm across }\n---\n## Tile\n\nRnd 1: Ch 3 (counts as dc), dc in magic ring, ch 2, *2 dc in ring, ch 2; rep from * 4 more times; join. (12 dc, 6 ch-2 sps)\n\n${rnd(2).replace(', dc in next 0 dc', '')}\n\n${rnd(3)}\n`,
    );
    const [part] = sheet.pieces[0]!.parts;
    expect(part!.form).toBe('hexagon');
    expect(part!.measures.across!.mm).toBeCloseTo(90, 6);
    expect(part!.measures.side!.mm).toBeCloseTo(90 / Math.sqrt(3), 6);
    const corners = outline(drawn(sheet));
    const sides = corners.map((at, i) => between(at, corners[(i + 1) % 6]!));
    for (const side of sides) expect(side).toBeCloseTo(sides[0]!, 6);
  });
});

describe('edgings', () => {
  const panel =
    '---\nterms: US\ngauge: { sc: 16 sts x 16 rows = 10 cm }\n---\n## Panel\n\nCh 33.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (32 sc)\n\nRows 2-32: Ch 1, sc in each st across, turn. (32 sc)\n\n';
  const border = (n: number) =>
    `Fasten off.\n\n## Border\n\nWith RS facing, join yarn in first st of last row.\n\nRnd 1: Ch 1, *3 sc in corner st, sc in next 30 sts, 3 sc in next st; working along row ends, work ${n} sc evenly; rep from * once more; join. (${2 * n + 72} sc)\n\nRnd 2: Ch 1, sc in each sc around; join. (${2 * n + 72} sc)\n`;

  test('all round a panel make the whole larger by twice their rounds, and are drawn round it', () => {
    const sheet = sheetOf(panel + border(30));
    const { whole } = sheet.pieces[1]!;
    // 20 cm and two rounds of 6.25 mm on either side.
    expect(whole.wide!.mm).toBeCloseTo(225, 6);
    expect(whole.long!.mm).toBeCloseTo(225, 6);
    const [, outer, inner] = flat(drawn(sheet).marks).filter((mark) => mark.kind === 'rect');
    expect(inner!.widthMm / outer!.widthMm).toBeCloseTo(200 / 225, 6);
  });

  test('of another length than the outline tell no whole', () => {
    expect(sheetOf(panel + border(100)).pieces[1]!.whole).toEqual({});
  });

  test('along one edge are not drawn: they follow it', () => {
    const words = wordsOf(drawn(example('low-tide-errand-bag'))).join(' ');
    expect(words).toMatch(/Not drawn: Handle openings .*: it follows what it is worked along\./);
  });
});
