/**
 * Area coverage against a reference rasteriser: resvg (https://github.com/linebender/resvg), which
 * draws the same outline, curves and all, many pixels to a box. A pixel of its own holds a share in
 * 256 steps, and the mean over a box is compared. Also polygons whose area is plain arithmetic.
 */
import { Resvg } from '@resvg/resvg-js';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { coverageOf } from '../../src/lettering/coverage.ts';
import { openFont } from '../../src/lettering/font.ts';
import { contoursOf, type Stroke } from '../../src/lettering/outline.ts';
import { fontBytes } from '../finding/command-example.ts';

/** Pixels across and down a box. */
const FINE = 32;

/** The strokes as an SVG path; `scale` and `move` put them where they stand, in boxes. */
function reference(strokes: readonly Stroke[], place: Place, width: number, height: number) {
  const d = strokes
    .map((stroke) => {
      if (stroke.type === 'Z') return 'Z';
      const points = [
        ...('x1' in stroke ? [stroke.x1, stroke.y1] : []),
        ...('x2' in stroke ? [stroke.x2, stroke.y2] : []),
        ...[stroke.x, stroke.y],
      ];
      return `${stroke.type}${points.join(' ')}`;
    })
    .join('');
  const matrix = [place.across, 0, 0, place.down, place.x, place.y].map((n) => n * FINE);
  const [w, h] = [width * FINE, height * FINE];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}"><path transform="matrix(${matrix.join(' ')})" d="${d}"/></svg>`;
  const { data } = PNG.sync.read(Buffer.from(new Resvg(svg).render().asPng()));
  const shares = new Float64Array(width * height);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      const box = Math.floor(y / FINE) * width + Math.floor(x / FINE);
      shares[box] = shares[box]! + data[(y * w + x) * 4 + 3]! / 255 / FINE ** 2;
    }
  }
  return shares;
}

interface Place {
  readonly across: number;
  readonly down: number;
  readonly x: number;
  readonly y: number;
}

function farthest(strokes: readonly Stroke[], place: Place, width: number, height: number): number {
  const contours = contoursOf(strokes, ({ x, y }) => ({
    x: x * place.across + place.x,
    y: y * place.down + place.y,
  }));
  const ours = coverageOf(contours, width, height);
  const theirs = reference(strokes, place, width, height);
  return Math.max(...ours.map((share, at) => Math.abs(share - theirs[at]!)));
}

describe('outlines of letters', () => {
  const { value: font } = openFont(fontBytes('sans.ttf'));
  const cases = [...'AOSegß&@8Å'].flatMap((sign) =>
    [1, 0.6, 1.5].map((aspect) => ({ sign, aspect })),
  );
  test.each(cases)('$sign in boxes $aspect times as wide as high', ({ sign, aspect }) => {
    const outline = font!.outlineOf(sign)!;
    const down = 9 / font!.capHeight;
    const place = { across: down / aspect, down, x: 0.37, y: 12 };
    const width = Math.ceil(outline.advance * place.across) + 2;
    // resvg tells shares in 256 steps and along slants by a grid of its own; 0.41 % of a box was seen.
    expect(farthest(outline.strokes, place, width, 16)).toBeLessThan(0.006);
  });
});

describe('contours that cross or lie over each other are covered once', () => {
  const place = { across: 1, down: 1, x: 0, y: 0 };
  const path = (points: readonly (readonly [number, number])[]): Stroke[] => [
    ...points.map(([x, y], i): Stroke => ({ type: i === 0 ? 'M' : 'L', x, y })),
    { type: 'Z' },
  ];
  const square = (x: number, y: number, side: number) =>
    path([
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ]);
  const star = path([0, 2, 4, 1, 3].map((i) => STAR[i]!));

  test.each([
    ['two squares', [...square(0.5, 0.5, 2.25), ...square(1.75, 1.1, 2.6)]],
    ['a star of five', star],
    ['a square twice', [...square(0.3, 0.3, 3), ...square(0.3, 0.3, 3)]],
    [
      'a square in a square the other way round',
      [
        ...square(0.3, 0.3, 3.4),
        ...path([
          [1, 1],
          [1, 2.5],
          [2.5, 2.5],
          [2.5, 1],
        ]),
      ],
    ],
  ] as const)('%s', (_, strokes) => {
    expect(farthest(strokes, place, 5, 5)).toBeLessThan(0.006);
  });
});

const STAR: readonly (readonly [number, number])[] = [
  [2.5, 0.2],
  [4.7, 1.8],
  [3.9, 4.4],
  [1.1, 4.4],
  [0.3, 1.8],
];

describe('areas by arithmetic', () => {
  const shares = (
    points: readonly (readonly [number, number])[],
    width: number,
    height: number,
  ) => [...coverageOf([points.map(([x, y]) => ({ x, y }))], width, height)];

  test('half a box on a slant', () => {
    expect(
      shares(
        [
          [0, 0],
          [1, 0],
          [0, 1],
        ],
        1,
        1,
      ),
    ).toEqual([0.5]);
  });

  test('a quarter in each of four boxes', () => {
    const [from, to] = [0.5, 1.5];
    const square = [
      [from, from],
      [to, from],
      [to, to],
      [from, to],
    ] as const;
    expect(shares(square, 2, 2)).toEqual([0.25, 0.25, 0.25, 0.25]);
  });

  test('a slant of one in three: 1/6, 1/2, 5/6', () => {
    const found = shares(
      [
        [0, 1],
        [3, 0],
        [3, 1],
      ],
      3,
      1,
    );
    for (const [at, share] of [1 / 6, 1 / 2, 5 / 6].entries())
      expect(found[at]).toBeCloseTo(share, 8);
  });

  test('what lies outside of the field is left out, what it casts into it is not', () => {
    expect(
      shares(
        [
          [-5, -5],
          [0.5, -5],
          [0.5, 9],
          [-5, 9],
        ],
        2,
        1,
      ),
    ).toEqual([0.5, 0]);
  });

  test('the whole is the area of the polygon (the shoelace formula)', () => {
    const points = [
      [0.3, 0.1],
      [7.2, 2.4],
      [5.5, 6.9],
      [3.1, 3.3],
      [1.2, 6.1],
    ] as const;
    const area = points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length]!;
      return sum + (x * nextY - nextX * y) / 2;
    }, 0);
    const sum = shares(points, 8, 8).reduce((all, share) => all + share, 0);
    expect(sum).toBeCloseTo(Math.abs(area), 6);
  });
});
