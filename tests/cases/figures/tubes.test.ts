/** Where a piece in rounds starts decides what its first rounds are: a tube, a disc or an oval. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, measure } from '../../../src/index.ts';

const formsOf = (rows: string) => {
  const { manuscript, fabric } = compile(`---\nterms: US\ngauge: { sc: 16 sts x 16 rnds = 10 cm }\n---\n${rows}`, { fixes: false });
  return measure(manuscript, fabric).sizes[0]!.pieces[0]!.parts.map(({ form, rows: n }) => `${form} ${n}`);
};

test('a chain joined to a ring carries a tube from its first round on', () => {
  expect(formsOf('Ch 40; join with sl st in first ch.\n\nRnd 1: Ch 1, sc in each ch around; join. (40 sc)\n\nRnds 2-9: Ch 1, sc in each st around; join. (40 sc)\n')).toEqual(['tube 9']);
});

test('a magic ring carries a disc', () => {
  expect(formsOf('Rnd 1: 6 sc in magic ring. (6)\n\nRnd 2: 2 sc in each st around. (12)\n\nRnds 3-7: Sc in each st around. (12)\n')).toEqual(['round base 2', 'tube 5']);
});

test('a tube is as wide as the fabric that was counted, whatever its last round is', () => {
  const { manuscript, fabric } = compile('---\nterms: US\ngauge: { hdc: 14 sts x 10 rnds = 10 cm }\n---\nCh 42; join with sl st in first ch.\n\nRnds 1-9: Ch 1, hdc in each st around; join. (42 hdc)\n\nRnd 10: Ch 1, sc in each st around; join. (42 sc)\n', { fixes: false });
  const [tube] = measure(manuscript, fabric).sizes[0]!.pieces[0]!.parts;
  expect(tube!.measures.around!.how).toBe('swatch');
  expect(tube!.measures.around!.mm).toBeCloseTo(300, 6);
});

test('both sides of a chain carry an oval', () => {
  expect(formsOf('Ch 12.\n\nRnd 1: Sc in 2nd ch from hook, sc in next 9 ch, 3 sc in last ch; working along opposite side of foundation ch, sc in next 9 ch, 2 sc in same ch as first sc; join. (24 sc)\n\nRnds 2-6: Ch 1, sc in each st around; join. (24 sc)\n')).toEqual(['oval base 1', 'tube 5']);
});

const PANEL = 'Ch 21.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n\nRows 2-6: Ch 1, sc in each st across, turn. (20 sc)\n\n';
const piecesOf = (rows: string) => {
  const { manuscript, fabric } = compile(`---\nterms: US\ngauge: { sc: 16 sts x 16 rows = 10 cm }\n---\n${rows}`, { fixes: false });
  return measure(manuscript, fabric).sizes[0]!.pieces.map(({ parts }) => parts[0]!);
};

test('turned rows on an edge that is not known are flat: a strap, as wide as it is', () => {
  const [, strap] = piecesOf(`${PANEL}Fasten off.\n\n## Strap\n\nWith RS facing, sk next 12 sts of Row 6, join yarn with sl st in next st.\n\nRow 7: Ch 1, sc in same st, sc in next 3 sts, turn. (4 sc)\n\nRows 8-38: Ch 1, sc in each st across, turn. (4 sc)\n`);
  expect(strap!.form).toBe('flat piece');
  expect(strap!.measures.wide!.mm).toBeCloseTo(25, 6);
  expect(strap!.measures.long!.mm).toBeCloseTo(200, 6);
});

test('the second lobe of a heart is no edging', () => {
  const { manuscript, fabric } = compile(readFileSync('examples/driftwood-heart.pattern.md', 'utf8'), { fixes: false });
  const forms = measure(manuscript, fabric).sizes[0]!.pieces.map(({ parts }) => parts[0]!.form);
  expect(forms).toEqual(['shaped piece', 'shaped piece']);
});

/** 24 sc to 10 cm, 28 rounds to 10 cm. */
const partsAt = (rows: string) => {
  const { manuscript, fabric } = compile(`---\nterms: US\ngauge: { sc: 24 sts x 28 rnds = 10 cm }\n---\n${rows}`, { fixes: false });
  return measure(manuscript, fabric).sizes[0]!.pieces[0]!;
};
const BOTH_SIDES = 'Rnd 1: 2 sc in 2nd ch from hook, sc in next 8 ch, 2 sc in last ch; working along opposite side of foundation ch, 2 sc in same ch as last 2 sc, sc in next 8 ch, 2 sc in last ch. (24 sc)';
const GROWN = [28, 32, 36, 40, 44, 48].map((n, at) => `Rnd ${at + 2}: *2 sc in next st, sc in next ${n / 2 - 4} sts, 2 sc in next st; rep from * once more. (${n} sc)`).join('\n\n');

test('a toe that grows by 4 a round stands up: 10 chains wide, 48 stitches around, 7 rounds high', () => {
  const [toe, foot] = partsAt(`Ch 11.\n\n${BOTH_SIDES}\n\n${GROWN}\n\nRnds 8-35: Sc in each st around. (48 sc)\n`).parts;
  expect([toe!.form, toe!.labels, foot!.form, foot!.labels]).toEqual(['closed end', 'Rnds 1-7', 'tube', 'Rnds 8-35']);
  expect(toe!.measures['first edge']!.mm).toBeCloseTo(1000 / 24, 6);
  expect(toe!.measures.around!.mm).toBeCloseTo(200, 6);
  expect(toe!.measures.flat!.mm).toBeCloseTo(100, 6);
  expect(toe!.measures.high!.mm).toBeCloseTo(25, 6);
});

test('and in all it is as high as toe and foot together', () => {
  const { whole } = partsAt(`Ch 11.\n\n${BOTH_SIDES}\n\n${GROWN}\n\nRnds 8-35: Sc in each st around. (48 sc)\n`);
  expect(whole.high!.mm).toBeCloseTo(125, 6);
});

test('an oval that grows by 8 a round lies flat, and its rim goes with its length and width', () => {
  const rnd2 = 'Rnd 2: *(2 sc in next st) 2 times, sc in next 8 sts, (2 sc in next st) 2 times; rep from * once more. (32 sc)';
  const [base] = partsAt(`Ch 11.\n\n${BOTH_SIDES}\n\n${rnd2}\n`).parts;
  const { long, wide, around } = base!.measures;
  expect(base!.form).toBe('oval base');
  expect(around!.mm / (2 * (long!.mm - wide!.mm) + Math.PI * wide!.mm)).toBeCloseTo(1.1, 1);
});

test('both sides of a chain without growth are the fold of a pouch: a tube from its first round on', () => {
  const fold = BOTH_SIDES.replaceAll('2 sc in', 'sc in').replace('(24 sc)', '(20 sc)').replace('sc in 2nd ch', 'Sc in 2nd ch');
  const [pouch] = partsAt(`Ch 11.\n\n${fold}\n\nRnds 2-14: Sc in each st around. (20 sc)\n`).parts;
  expect([pouch!.form, pouch!.labels]).toEqual(['tube', 'Rnds 1-14']);
  expect(pouch!.measures.high!.mm).toBeCloseTo(50, 6);
});

test('a border along an edge that is not known is an edging, and no disc that grows out of nothing', () => {
  const border = 'With RS facing, join yarn in first st of last row.\n\nRnd 1: Ch 1, *3 sc in corner st, sc in next 18 sts, 3 sc in next st; working along row ends, work 6 sc evenly; rep from * once more; join. (60 sc)\n\nRnd 2: Ch 1, sc in each sc around; join. (60 sc)\n';
  const [, edge] = piecesOf(`## Panel\n\n${PANEL}Fasten off.\n\n## Border\n\n${border}`);
  expect([edge!.form, edge!.labels]).toEqual(['edging', 'Rnds 1-2']);
  expect(edge!.measures.wide!.mm).toBeCloseTo(12.5, 6);
});

test('loops hang from the row beneath: the edge is no longer for them', () => {
  const fan = 'Row 1: 6 sc in magic ring, turn. (6 sc)\n\nRow 2: Ch 1, 2 sc in each st across, turn. (12 sc)\n\nRow 3: Ch 1, 2 sc in each st across, turn. (24 sc)\n\nRow 4: Ch 1, sc in first st, *ch 5, sc in next st; rep from * across. (24 sc, 23 ch-5 sps)\n';
  const [shawl] = piecesOf(fan);
  expect(shawl!.form).toBe('centre-out piece');
  expect(shawl!.measures['last edge']!.mm).toBeCloseTo(24 * 6.25, 6);
});

test('a net of loops that stay as many is a tube as wide as the base', () => {
  const net = 'Rnd 1: 12 sc in magic ring; join. (12)\n\nRnd 2: Ch 1, sc in same st, ch 4, sk next st, *sc in next st, ch 4, sk next st; rep from * around; join. (6 sc, 6 ch-4 sps)\n\nRnds 3-9: Sl st in next 2 ch, ch 1, sc in same sp, ch 4, *sc in next ch-4 sp, ch 4; rep from * around; join. (6 sc, 6 ch-4 sps)\n';
  const part = partsAt(net).parts.at(-1)!;
  expect(part.form).toBe('tube');
  expect(part.measures.around!.mm).toBeCloseTo(50, 6);
  expect(part.measures.high!.how).toBe('estimate');
});

describe('corner to corner', () => {
  const first = 'Row 1: Ch 6, dc in 4th ch from hook and in next 2 ch, turn.';
  const more = (n: number) =>
    `Row ${n}: Ch 6, dc in 4th ch from hook and in next 2 ch, *sl st in ch-3 sp of next block, ch 3, 3 dc in same ch-3 sp; rep from * across, turn.`;
  const fewer = (n: number, blocks: number) =>
    `Row ${n}: Sl st in first 3 dc and in ch-3 sp, ch 3, 3 dc in same sp, *sl st in next ch-3 sp, ch 3, 3 dc in same sp; rep from * ${blocks - 2} more times, sl st in last ch-3 sp, turn.`;
  const pieceAt = (rows: readonly string[]) => {
    const { manuscript, fabric } = compile(`---\nterms: US\ngauge: { dc: 13 sts x 7 rows = 10 cm }\n---\n${[first, ...rows].join('\n\n')}\n`, { fixes: false });
    return measure(manuscript, fabric).sizes[0]!.pieces[0]!.parts[0]!;
  };

  test('a square is as wide and long as its blocks, not as its diagonal rows', () => {
    const part = pieceAt([2, 3, 4, 5, 6].map(more).concat([7, 8, 9].map((n) => fewer(n, 12 - n))));
    expect(part.form).toBe('corner to corner');
    // Six blocks of three stitches of 7.7 mm, a little less each: about 12 cm by eye, give or take 15 %.
    expect(part.measures.wide!.mm).toBeCloseTo((0.85 * 6 * 3 * 100) / 13, 6);
    expect(part.measures.wide!.how).toBe('estimate');
    expect(part.measures.long!.mm).toBeCloseTo(part.measures.wide!.mm, 6);
  });

  test('half of one has legs and no outline yet', () => {
    const part = pieceAt([2, 3, 4, 5, 6].map(more));
    expect(Object.keys(part.measures)).toEqual(['side']);
  });

  test('rows of shells are none', () => {
    const { manuscript, fabric } = compile('---\nterms: US\ngauge: { dc: 13 sts x 7 rows = 10 cm }\n---\nCh 23.\n\nRow 1: Dc in 5th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across, turn.\n\nRow 2: Ch 4, dc in next dc, *ch 1, dc in next dc; rep from * across, turn.\n', { fixes: false });
    expect(measure(manuscript, fabric).sizes[0]!.pieces[0]!.parts[0]!.form).not.toBe('corner to corner');
  });
});

test('a yoke that lies flat has a depth and no height', () => {
  const { manuscript, fabric } = compile('---\nterms: US\ngauge: { dc: 13 sts x 7 rnds = 10 cm }\n---\nCh 60; join with sl st in first ch.\n\nRnd 1: Ch 3 (counts as dc), dc in each ch around; join. (60 dc)\n\nRnd 2: Ch 3, 2 dc in next dc, *dc in next dc, 2 dc in next dc; rep from * around; join. (90 dc)\n\nRnds 3-8: Ch 3, dc in each dc around; join. (90 dc)\n', { fixes: false });
  const [, yoke] = measure(manuscript, fabric).sizes[0]!.pieces[0]!.parts;
  expect(yoke!.form).toBe('cone');
  expect(yoke!.measures.high).toBeUndefined();
  expect(yoke!.measures.deep!.mm).toBeCloseTo(100 / 7, 6);
});
