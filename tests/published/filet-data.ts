/** Filet: rules and counts as printed, or by arithmetic from the rules. */

export const MESH_SOURCE =
  'F1, "Figuring the starting chain for 3-dc and 4-dc mesh", a crochet site; F9, "Filet ground ' +
  'rules", a designer blog; F16, "Blanket planning: 3n + 1", a craft blog, 2009';

/** Stitches across: boxes times (gap + 1), and one in a flat row. */
export const FLAT = [
  { source: 'F10, a book review with the multiple 2 + 1', boxes: 44, gap: 1, stitches: 89 },
  {
    source: 'F8, "Filet crochet dishcloth (9 cells, 28 stitches)", 2008',
    boxes: 9,
    gap: 2,
    stitches: 28,
  },
] as const;

export const ROUND = [
  { source: 'derived: the first post is the last', boxes: 40, gap: 2, stitches: 120 },
  { source: 'derived: the first post is the last', boxes: 60, gap: 1, stitches: 120 },
] as const;

/** dc of 1 to 6 solid boxes side by side, gap 2. */
export const SOLID = {
  source: 'F5, "The Priscilla Filet Crochet Book", Boston, 1911; F9, "Filet ground rules"',
  dc: [4, 7, 10, 13, 16, 19],
} as const;

/**
 * Chains for W boxes with dc posts, first box solid or open. A: the first post has a base chain of
 * its own; B: it stands in the lowest turning chain. `nth` is the chain of the first dc.
 */
export const CHAINS = [
  { way: 'A', source: 'F1 (rule)', boxes: 20, gap: 1, first: 'solid', chain: 44, nth: 5 },
  { way: 'A', source: 'F1 (rule)', boxes: 20, gap: 1, first: 'open', chain: 45, nth: 7 },
  { way: 'A', source: 'F1 (rule)', boxes: 20, gap: 2, first: 'solid', chain: 64, nth: 5 },
  { way: 'A', source: 'F1 (rule)', boxes: 20, gap: 2, first: 'open', chain: 66, nth: 9 },
  {
    way: 'B',
    source: 'F2, "Star Book of Crochet, Book 3", 1936',
    boxes: 20,
    gap: 2,
    first: 'solid',
    chain: 63,
    nth: 4,
  },
  {
    way: 'B',
    source: 'F2, "Star Book of Crochet, Book 3", 1936',
    boxes: 20,
    gap: 2,
    first: 'open',
    chain: 65,
    nth: 8,
  },
  {
    way: 'B',
    source: 'F3, "Rose Filet Cloth", New Tablecloths',
    boxes: 65,
    gap: 2,
    first: 'open',
    chain: 200,
    nth: 8,
  },
  {
    way: 'B',
    source: 'F4, "Pillowcase lace (filet)", 2008',
    boxes: 9,
    gap: 2,
    first: 'open',
    chain: 32,
    nth: 8,
  },
] as const;

/** The rose cloth's first rows as runs of open (even places) and solid boxes; sums derived. */
export const ROSE = {
  source:
    'F3, "Rose Filet Cloth (row 1 to 3 written out)", American Thread Company, New Tablecloths',
  boxes: 65,
  stitches: 196,
  rows: [
    { runs: [1, 1, 15, 1, 25, 1, 19, 1, 1], solid: 4, dc: 74, chains: 122 },
    { runs: [1, 1, 19, 3, 23, 1, 15, 1, 1], solid: 6, dc: 78, chains: 118 },
    { runs: [1, 1, 15, 1, 22, 2, 21, 1, 1], solid: 5, dc: 76, chains: 120 },
  ],
} as const;
