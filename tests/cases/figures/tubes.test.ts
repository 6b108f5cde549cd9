/** Where a piece in rounds starts decides what its first rounds are: a tube, a disc or an oval. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
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
