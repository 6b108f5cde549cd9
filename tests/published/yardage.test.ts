/**
 * What makers of yarn and patterns say that a plain piece takes, against the model without any weighing.
 * Numbers are the sources' own (counts, gauge, put-up, yardage); words are ours. None of these was used to
 * fit the model.
 *
 * Y1: a blanket of bulky plush, 69 dc wide and 46 in long at 7 dc and 3 rows to 4 in: 590 yd or 540 m (a
 *     yarn maker's leaflet, "Star of the Show Crochet Blanket", on a craft shop's pages). Some of its
 *     stitches are ch 1.
 * Y2: a cloth of 26 stitches and 27 rows in sc at 8 by 8 to 2 in: about 60 yd, 30 g ("The Alternate
 *     Dishcloth", a crochet blog).
 * Y3: a scarf of 21 stitches, sc and dc in turn, 60 in long at 12 stitches and 10 rows to 4 in: one skein of
 *     333 m is enough; 7 in wide (a yarn maker's leaflet, "Berry Stitch Scarf", on a craft shop's
 *     pages).
 */
import { describe, expect, test } from 'vitest';
import { compile, measure } from '../../src/index.ts';

function pieceOf(gauge: string, rows: string) {
  const text = `---\nterms: US\ngauge: { ${gauge} }\n---\n${rows}`;
  const { manuscript, fabric } = compile(text, { fixes: false });
  const proven = ['proven', 'unstated'];
  expect(fabric.cloths[0]!.rows.every(({ verdict }) => proven.includes(verdict))).toBe(true);
  const sheet = measure(manuscript, fabric).sizes[0]!;
  return { need: sheet.yarns[0]!, measures: sheet.pieces[0]!.parts[0]!.measures };
}

const blanket = pieceOf(
  'dc: 7 sts x 3 rows = 4 in',
  'Ch 71.\n\nRow 1: Dc in 4th ch from hook (3 skipped ch count as dc) and in each ch across, turn. (69 dc)\n\nRows 2-34: Ch 3 (counts as dc), dc in each dc across, turn. (69 dc)\n',
);
const cloth = pieceOf(
  'sc: 8 sts x 8 rows = 2 in',
  'Ch 27.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (26 sc)\n\nRows 2-27: Ch 2, sc in each sc across, turn. (26 sc)\n',
);
const scarf = pieceOf(
  'pattern: 12 sts x 10 rows = 4 in',
  'Ch 22.\n\nRow 1: Sc in 2nd ch from hook, *dc in next ch, sc in next ch; rep from * across, turn. (21 sts)\n\nRow 2: Ch 3 (counts as dc), *sc in next dc, dc in next sc; rep from * across, turn. (21 sts)\n\nRow 3: Ch 1, sc in first dc, *dc in next sc, sc in next dc; rep from * across, turn. (21 sts)\n\nRows 4-149: Rep Rows 2 and 3. (21 sts)\n',
);

describe('yardage of plain pieces, nothing weighed', () => {
  test('a plush blanket: within the range that the sheet prints, 8 % over', () => {
    const { value, spread } = blanket.need.metres;
    expect(Math.abs(value / 540 - 1)).toBeLessThan(spread);
    expect(value / 540).toBeCloseTo(1.08, 1);
  });

  test('a firm cotton cloth: a third under, within twice the range', () => {
    const { value, spread } = cloth.need.metres;
    const stated = 60 * 0.9144;
    expect(Math.abs(Math.log(value / stated))).toBeLessThan(2 * spread);
    expect(value / stated).toBeCloseTo(0.68, 1);
  });

  test('a scarf: one skein of 333 m is enough', () => {
    expect(scarf.need.metres.value).toBeLessThan(333);
    // It would be no bound if half a skein were told.
    expect(scarf.need.metres.value).toBeGreaterThan(333 / 2);
  });
});

describe('sizes that go with their counts and gauge', () => {
  test('the blanket is 46 in long', () => {
    expect(blanket.measures.long!.mm / 25.4 / 46).toBeCloseTo(1, 1);
  });

  test('the scarf is 7 in wide and 60 in long, at a gauge in pattern', () => {
    expect(scarf.measures.wide!.mm / 25.4).toBeCloseTo(7, 6);
    // 149 whole rows are 59.6 in.
    expect(scarf.measures.long!.mm / 25.4).toBeCloseTo(60, 0);
    expect(scarf.measures.long!.how).toBe('swatch');
  });
});
