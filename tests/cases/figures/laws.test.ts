/** What must hold of figures whatever the pattern: sizes scale, yarn grows, drawings say the text. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  compile,
  drawSchematic,
  gaugeFromWords,
  measure,
  shortFigure,
  toSvg,
} from '../../../src/index.ts';

const examples = ['beachcomb-basket', 'garden-wall-cushion', 'low-tide-errand-bag', 'weather-watch-hat'];
const compiled = (name: string) =>
  compile(readFileSync(`examples/${name}.pattern.md`, 'utf8'), { fixes: false });

const band = (rows: number, head = 'gauge: { sc: 16 sts x 18 rows = 10 cm }'): string =>
  `---\nterms: US\nyarn: { A: { ball: 50 g / 110 m } }\n${head}\n---\nCh 41.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\n\nRows 2-${rows}: Ch 1, sc in each st across, turn. (40 sc)\n`;

const sheetOf = (text: string, gauge?: string) => {
  const { manuscript, fabric } = compile(text, { fixes: false });
  return measure(manuscript, fabric, gauge ? { gauge: [gaugeFromWords(gauge)!] } : {}).sizes[0]!;
};

describe('figures', () => {
  test('a gauge of half as many stitches and rows doubles both sides, and yarn for a stitch', () => {
    const one = sheetOf(band(20));
    const two = sheetOf(band(20), '8 sts x 9 rows = 10 cm in sc');
    const [a, b] = [one, two].map((sheet) => sheet.pieces[0]!.parts[0]!.measures);
    expect(b!.wide!.mm / a!.wide!.mm).toBeCloseTo(2, 9);
    expect(b!.long!.mm / a!.long!.mm).toBeCloseTo(2, 9);
    expect(two.yarns[0]!.stitches.value / one.yarns[0]!.stitches.value).toBeCloseTo(2, 9);
  });

  test('more rows take more yarn and more time', () => {
    let last = { metres: 0, hours: 0 };
    for (const rows of [2, 5, 11, 40]) {
      const sheet = sheetOf(band(rows));
      const now = { metres: sheet.yarns[0]!.metres.value, hours: sheet.hours.to };
      expect(now.metres).toBeGreaterThan(last.metres);
      expect(now.hours).toBeGreaterThan(last.hours);
      last = now;
    }
  });

  test('a weighed swatch gives the weight of its own stitches, and a smaller spread', () => {
    const head = 'gauge: { sc: 16 sts x 18 rows = 10 cm }\nswatches: [400 sc weigh 20 g]';
    const sheet = sheetOf(band(10, head));
    // 400 sc weigh 20 g of a yarn of 2.2 m to the gram; the band has 41 chains and 9 turning chains more.
    const metres = (20 * 2.2 * (400 + 0.48 * 50)) / 400;
    expect(sheet.yarns[0]!.how).toBe('swatch');
    expect(sheet.yarns[0]!.stitches.value).toBeCloseTo(metres, 6);
    expect(sheet.yarns[0]!.metres.spread).toBeLessThan(0.06);
  });

  test("testers' pieces give back what they weighed, and ask for a smaller margin", () => {
    const head = 'gauge: { sc: 16 sts x 18 rows = 10 cm }\ntesters: [used 41 g, used 43 g]';
    const [need] = sheetOf(band(20, head)).yarns;
    expect(need!.how).toBe('swatch');
    expect((need!.stitches.value / 2.2 - 42) / 42).toBeCloseTo(0, 2);
    expect(need!.margin).toMatchObject({ share: 0.05, because: 'weighed on several pieces' });
  });

  test('another put-up gives other balls of the same metres', () => {
    const { manuscript, fabric } = compile(band(40), { fixes: false });
    const own = measure(manuscript, fabric).sizes[0]!.yarns[0]!;
    const other = measure(manuscript, fabric, {
      substitutes: [{ yarn: null, ball: { grams: 100, metres: 55 } }],
    }).sizes[0]!.yarns[0]!;
    expect(other.metres).toEqual(own.metres);
    expect(other.balls!.likely).toBe(Math.ceil((own.metres.value * 1.1) / 55));
    expect(other.grams!.value).toBeCloseTo((own.metres.value * 100) / 55, 6);
  });

  test('without gauge and yarn no size is claimed', () => {
    const text = 'Ch 11.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\n';
    const sheet = sheetOf(text);
    expect(sheet.pieces[0]!.parts[0]!.measures.wide!.how).toBe('assumed');
    expect(drawSchematic(sheet, { title: 'x', units: 'metric' })).toBeNull();
  });

  test.each(examples)('%s: the schematic says the numbers of the text, same bytes each time', (name) => {
    const { manuscript, fabric } = compiled(name);
    for (const size of measure(manuscript, fabric).sizes) {
      const drawing = drawSchematic(size, { title: name, units: 'both' })!;
      const svg = toSvg(drawing);
      expect(toSvg(drawSchematic(size, { title: name, units: 'both' })!)).toBe(svg);
      for (const { form, measures } of size.pieces.flatMap(({ parts }) => parts)) {
        if (form === 'tube') expect(svg).toContain(shortFigure(measures.flat!, 'both'));
      }
    }
  });

  test('the bag at 15 stitches keeps its word centred on 96 stitches', () => {
    const { manuscript, fabric } = compiled('low-tide-errand-bag');
    const gauge = ['15 sts x 17 rnds = 10 cm in sc', '7.5 boxes x 7 rnds = 10 cm'];
    const sheet = measure(manuscript, fabric, { gauge: gauge.map((words) => gaugeFromWords(words)!) });
    const [refit] = sheet.sizes[0]!.refits;
    expect(refit!.counts!.others.map(({ count, chains }) => [count, chains])).toEqual([
      [96, 39],
      [104, 43],
    ]);
    expect(refit!.counts!.least).toBeLessThanOrEqual(96);
  });

  test('the lean up to the word: a third to half a stitch in nine sc rounds', () => {
    const { manuscript, fabric } = compiled('low-tide-errand-bag');
    const { lean, until } = measure(manuscript, fabric).sizes[0]!.leans[0]!;
    expect(until).toBe('Rnd 11');
    expect(lean.stitches.from).toBeCloseTo(3, 9);
    expect(lean.stitches.to).toBeCloseTo(4.5, 9);
    expect(lean.unknownRounds).toBe(2);
  });
});
