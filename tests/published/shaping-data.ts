/**
 * Published counts of shaping, each with where it was printed. "printed": as in the source;
 * "common": common practice; "derived": arithmetic from what the source prints.
 */
interface Printed<T> {
  readonly source: string;
  readonly basis: 'printed' | 'common' | 'derived';
  readonly value: T;
}

const CIRCLE = 'P3, "Crocheting a flat circle (6/8/12 with round counts)", a yarn shop blog';

export const CIRCLES = {
  sc: { source: CIRCLE, basis: 'printed', value: [6, 12, 18, 24, 30, 36, 42, 48, 54, 60] },
  hdc: { source: CIRCLE, basis: 'printed', value: [8, 16, 24, 32, 40, 48, 56, 64, 72, 80] },
  dc: { source: CIRCLE, basis: 'printed', value: [12, 24, 36, 48, 60, 72, 84, 96, 108, 120] },
} as const satisfies Record<string, Printed<readonly number[]>>;

/** Bases of bags in hdc. */
export const HDC_BASES: readonly Printed<readonly number[]>[] = [
  {
    source: 'P6, "Circular tote (hdc, 10 per round)", a craft blog, 2008, from an old magazine',
    basis: 'printed',
    value: [5, 10, 20, 30, 40, 50, 60, 70, 80],
  },
  {
    source: 'P7, "Raffia bag pattern in hdc (8 per round)", a yarn company leaflet, 2016',
    basis: 'printed',
    value: [8, 16, 24, 32, 40, 48, 56],
  },
];

/** Ten published rounds of a ball of twelve. */
export const SPHERE_12: Printed<readonly number[]> = {
  source: 'P17, "Crocheting the perfect sphere (12 rounds written out)", a crochet blog, 2021',
  basis: 'printed',
  value: [6, 12, 17, 21, 24, 25, 25, 24, 21, 17],
};

/** s_i = 2 (N + 1) sin(i pi / (N + 1)); floored, N = 12, it gives the ten counts above. */
export const SPHERES: Printed<readonly { rounded: number[]; floored: number[] }[]> = {
  source:
    'P16, "The ideal crochet sphere (counts proportional to sin of the polar angle)", a crochet ' +
    'and mathematics blog, 2010, with P18, "Perfect crochet sphere, part 1", 2011',
  basis: 'derived',
  value: [
    { rounded: [6, 12, 16, 18, 18, 16, 12, 6], floored: [6, 11, 15, 17, 17, 15, 11, 6] },
    {
      rounded: [6, 12, 17, 20, 22, 22, 20, 17, 12, 6],
      floored: [6, 11, 16, 20, 21, 21, 20, 16, 11, 6],
    },
    {
      rounded: [6, 12, 17, 21, 24, 26, 26, 24, 21, 17, 12, 6],
      floored: [6, 12, 17, 21, 24, 25, 25, 24, 21, 17, 12, 6],
    },
    {
      rounded: [6, 12, 18, 23, 27, 30, 33, 34, 34, 33, 30, 27, 23, 18, 12, 6],
      floored: [6, 12, 17, 22, 27, 30, 32, 33, 33, 32, 30, 27, 22, 17, 12, 6],
    },
    {
      rounded: [6, 12, 18, 24, 29, 33, 36, 39, 41, 42, 42, 41, 39, 36, 33, 29, 24, 18, 12, 6],
      floored: [6, 12, 18, 23, 28, 32, 36, 39, 40, 41, 41, 40, 39, 36, 32, 28, 23, 18, 12, 6],
    },
  ],
};

/** 6 to 36, six even rounds after the last increase, and back. */
export const CLASSIC_BALL: Printed<{ rounds: number; stitches: number }> = {
  source: 'common practice; the total by addition (6 + ... + 36, 6 x 36, 30 + ... + 6)',
  basis: 'common',
  value: { rounds: 17, stitches: 432 },
};

export const OVALS: readonly (Printed<readonly number[]> & { n: number; ends: 3 | 4 })[] = [
  {
    source: 'P9, "How to crochet an oval base (ch 7: 14, then 20)", a craft blog, 2017',
    basis: 'printed',
    n: 6,
    ends: 3,
    value: [14, 20],
  },
  {
    source: 'P9, first two rounds; then 2n + 2 + 6 (r - 1)',
    basis: 'derived',
    n: 6,
    ends: 3,
    value: [14, 20, 26, 32],
  },
  {
    source: 'common practice for bags: 2n + 4 + 8 (r - 1)',
    basis: 'common',
    n: 42,
    ends: 4,
    value: [88, 96, 104],
  },
];

/** The first count is a slip of the print: 2 x 30 + 2 = 62. */
export const MISPRINTED_OVAL: Printed<readonly number[]> & { n: number; right: number } = {
  source: 'P10, "Multicolor tote (ch 31; rounds printed 64 and 68)", a craft blog, 2008',
  basis: 'printed',
  n: 30,
  right: 62,
  value: [64, 68],
};

export const SOLID_SQUARE: Printed<{ sides: number[]; totals: number[] }> = {
  source:
    'P12, "Double crochet square (7, 11, 15 a side)", a crochet site, 2021, and P13, "Solid granny ' +
    'square (7, 11, 15, 19, 23 a side)", a craft blog, 2016; totals derived',
  basis: 'printed',
  value: { sides: [3, 7, 11, 15, 19, 23], totals: [12, 28, 44, 60, 76, 92] },
};

export const GRANNY: Printed<readonly number[]> = {
  source: 'P14, "Traditional granny square", a food and craft site: 4 r clusters of 3 dc',
  basis: 'derived',
  value: [12, 24, 36, 48],
};

export const SC_SQUARE: Printed<readonly number[]> = {
  source: 'common practice: 3 sc in each corner, 8 more a round',
  basis: 'common',
  value: [8, 16, 24, 32],
};

/** Rounds of the circle, then stitches between corners, worked in the spaces between stitches. */
export const CIRCLE_IN_SQUARE: Printed<{ circle: number[]; sides: number[] }> = {
  source:
    'P15, "Circle in a square motif (12, 24, 36, then 8, 11, 14 between corners)", a craft blog, 2013',
  basis: 'printed',
  value: { circle: [12, 24, 36], sides: [8, 11, 14] },
};

/** One more after every n stitches, what is left over dropped: rows 0 to 8. */
export const HYPERBOLIC: Printed<readonly { n: number; rows: number[] }[]> = {
  source:
    'P22, "Crocheting the hyperbolic plane" (Henderson, Taimina), The Mathematical Intelligencer ' +
    '23(2), 2001; row 2 at n = 4 printed in P24, "Hyperbolic model with rate 5/4"; others derived',
  basis: 'derived',
  value: [
    { n: 1, rows: [20, 40, 80, 160, 320] },
    { n: 2, rows: [20, 30, 45, 67, 100, 150, 225, 337, 505] },
    { n: 3, rows: [20, 26, 34, 45, 60, 80, 106, 141, 188] },
    { n: 4, rows: [20, 25, 31, 38, 47, 58, 72, 90, 112] },
    { n: 5, rows: [20, 24, 28, 33, 39, 46, 55, 66, 79] },
    { n: 6, rows: [20, 23, 26, 30, 35, 40, 46, 53, 61] },
  ],
};

export const PSEUDOSPHERE: Printed<readonly number[]> = {
  source: 'P23, "Hyperbolic pseudosphere 6, 12, 24, 48, 96", an art teaching blog, 2009',
  basis: 'printed',
  value: [6, 12, 24, 48, 96],
};

/** 96 - 2 x 21 stitches and two chains of 60; then every stitch and chain. */
export const STRAPS: Printed<{ body: number; under: number; chain: number; sc: number }> = {
  source:
    'P29, "Tote in dc with ch-60 straps (96 st body; 21 st skipped under each strap)", a designer site',
  basis: 'printed',
  value: { body: 96, under: 21, chain: 60, sc: 54 },
};
