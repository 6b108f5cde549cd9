/** Where a piece in rounds starts decides what its first rounds are: a tube, a disc or an oval. */
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
