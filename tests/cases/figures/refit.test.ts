/** Other counts at another gauge: each demand with a case and a near miss, and one piece made anew. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, gaugeFromWords, measure } from '../../../src/index.ts';

const HEAD = '---\nterms: US\ngauge:\n  sc: 20 sts x 20 rows = 10 cm\n---\n';

function refitOf(text: string, ...gauge: readonly string[]) {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const counts = gauge.map((words) => gaugeFromWords(words)!);
  return measure(manuscript, fabric, { gauge: counts }).sizes[0]!.refits[0]!;
}

const counts = (text: string, ...gauge: readonly string[]): number[] =>
  refitOf(text, ...gauge)
    .others.map(({ count }) => count)
    .sort((a, b) => a - b);

const band = (row: string): string =>
  `${HEAD}Ch 41.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\n\nRows 2-30: Ch 1, ${row}, turn. (40 sc)\n`;

const AT_16 = '16 sts x 16 rows = 10 cm in sc';

describe('what a count keeps', () => {
  test('nothing in a plain band: any count may be', () => {
    // 20 cm at 16 to 10 cm.
    expect(counts(band('sc in each st across'), AT_16)).toEqual([32, 33]);
  });

  test('a repeat to the end of the row, by the stitches that it takes', () => {
    const refit = refitOf(band('*sc in next 3 sts, FPsc in next st; rep from * across'), '15 sts x 16 rows = 10 cm in sc');
    expect(refit.demands.map(({ because }) => because)).toEqual(['Row 2 repeats over 4 stitches']);
    expect(refit.others.map(({ count }) => count % 4)).toEqual([0, 0]);
  });

  test('not a repeat with a number of times, which may be another number', () => {
    expect(refitOf(band('(sc in next 3 sts, FPsc in next st) 10 times'), AT_16).demands).toEqual([]);
  });

  test('the rounds of a base: whole ones', () => {
    const disc = `${HEAD}Rnd 1: 6 sc in magic ring. (6)\n\nRnd 2: 2 sc in each st around. (12)\n\nRnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18)\n\nRnds 4-12: Sc in each st around. (18)\n`;
    // 9 cm at 14 to 10 cm is 12.6.
    expect(counts(disc, '14 sts x 14 rows = 10 cm in sc')).toEqual([12]);
  });

  test('what the designer says of a multiple', () => {
    const text = band('sc in each st across').replace('Ch 41', 'Worked over a multiple of 10.\n\nCh 41');
    expect(counts(text, AT_16)).toEqual([30]);
  });
});

describe('rows that keep the height', () => {
  test('30 rows of 5 mm are 24 of 6.25 mm', () => {
    const [part] = refitOf(band('sc in each st across'), AT_16).rows;
    expect(part).toMatchObject({ rows: 30, more: -6, stitch: 'sc', worked: 'rows' });
    expect(part!.mm).toBeCloseTo(150, 6);
  });

  test('the same gauge changes nothing', () => {
    const same = refitOf(band('sc in each st across'), '20 sts x 20 rows = 10 cm in sc');
    expect(same.rows).toEqual([]);
    expect(same.others.map(({ count }) => count)).toContain(40);
  });
});

describe('the errand bag on the count that is named for 15 stitches', () => {
  const text = readFileSync('examples/low-tide-errand-bag.pattern.md', 'utf8');

  test('is proven up to its handles, with the word as near the middle and equal ends', () => {
    const refit = refitOf(text, '15 sts x 17 rnds = 10 cm in sc', '7.5 boxes x 7 rnds = 10 cm');
    const [best] = refit.others;
    expect(best).toMatchObject({ count: 96, chains: 38 });
    const made = text
      .slice(0, text.indexOf('Rnd 26:'))
      .replace(/next\n40/g, 'next 40')
      .replace(/\b(?:ch 43|next 40|88 sc|96 sc|104 sc|5?52 (?:open )?boxes|29 open|next 16|next 34|last 17)\b/g, (words) => {
        const less: Record<string, string> = { 'ch 43': 'ch 39', 'next 40': 'next 36', '88 sc': '80 sc', '96 sc': '88 sc', '104 sc': '96 sc', '29 open': '26 open', 'next 16': 'next 14', 'next 34': 'next 30', 'last 17': 'last 15' };
        return less[words] ?? words.replace('52', '48');
      })
      .replaceAll('Work 2 open', 'Work 1 open')
      .replaceAll('(68 sc, 2', '(60 sc, 2');
    const { findings, fabric } = compile(made, { fixes: false });
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(findings.filter(({ code }) => code === 'motif-off-centre')).toEqual([]);
    expect(fabric.cloths[0]!.rows.every(({ verdict }) => verdict === 'proven')).toBe(true);
    expect(fabric.cloths[0]!.rows.at(-1)!.tally.stitches).toBe(60);
  });
});
