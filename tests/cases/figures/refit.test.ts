/** Other counts at another gauge: each demand with a case and a near miss, and one piece made anew. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, gaugeFromWords, measure } from '../../../src/index.ts';

const HEAD = '---\nterms: US\ngauge:\n  sc: 20 sts x 20 rows = 10 cm\n---\n';

function refitOf(text: string, ...gauge: readonly string[]) {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const counts = gauge.map((words) => gaugeFromWords(words)!);
  const { counts: found, rows } = measure(manuscript, fabric, { gauge: counts }).sizes[0]!.refits[0]!;
  return { ...found!, rows };
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

const pieceOf = (text: string, ...gauge: readonly string[]) => {
  const { manuscript, fabric } = compile(text, { fixes: false });
  const asked = gauge.map((words) => gaugeFromWords(words)!);
  return measure(manuscript, fabric, { gauge: asked }).sizes[0]!.refits;
};

describe('pieces without an even row', () => {
  test('a shawl keeps its depth by rows: 6 of 20 mm for 8 of 15', () => {
    const head = HEAD.replace('sc: 20 sts x 20 rows', 'dc: 15 sts x 6 2/3 rows');
    const rows = [7, 14, 21, 28, 35, 42, 49, 56].map((n, at) =>
      at === 0
        ? 'Row 1: Ch 3 (counts as dc), 6 dc in magic ring, turn. (7 dc)'
        : `Row ${at + 1}: Ch 3, dc in same st, *dc in next st${', dc in next st'.repeat(Math.max(0, at - 1))}; rep from * across. (${n} dc)`,
    );
    const [shawl] = pieceOf(`${head}${rows.join('\n\n')}\n`, '15 sts x 5 rows = 10 cm in dc');
    expect(shawl!.counts).toBeNull();
    expect(shawl!.rows).toMatchObject([{ way: 'deep', more: -2, stitch: 'dc' }]);
    expect(shawl!.rows[0]!.size.mm).toBeCloseTo(120, 6);
  });

  test('a square by rounds, across', () => {
    const square = `---\nterms: US\ngauge: { dc: 15 sts x 5 rnds = 10 cm }\n---\nRnd 1: Ch 3, 2 dc in magic ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join. (12 dc, 4 ch-2 sps)\n\nRnd 2: Sl st to sp, (ch 3, 2 dc, ch 2, 3 dc) in sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times; join. (24 dc, 4 ch-2 sps)\n\nRnd 3: Sl st to sp, (ch 3, 2 dc, ch 2, 3 dc) in sp, dc in next 6 sts, *(3 dc, ch 2, 3 dc) in next ch-2 sp, dc in next 6 sts; rep from * 2 more times; join. (48 dc, 4 ch-2 sps)\n`;
    const [piece] = pieceOf(square, '15 sts x 7.5 rnds = 10 cm in dc');
    expect(piece!.counts).toBeNull();
    // 3 rounds of 20 mm, twice, are 4.5 of 13.3.
    expect(piece!.rows).toMatchObject([{ way: 'across', worked: 'rounds' }]);
    expect([1, 2]).toContain(piece!.rows[0]!.more);
  });

  test('a filled ball has none: it becomes larger or smaller', () => {
    const ball = `${HEAD}Rnd 1: 6 sc in magic ring. (6)\n\nRnd 2: 2 sc in each st around. (12)\n\nRnds 3-5: Sc in each st around. (12)\n\nRnd 6: (Sc2tog) 6 times. (6)\n`;
    expect(pieceOf(ball, AT_16)).toEqual([]);
  });
});

describe('the chain to begin with', () => {
  test('is the pattern’s own, so many longer or shorter', () => {
    expect(refitOf(band('sc in each st across'), AT_16).others.map(({ chains }) => chains)).toEqual([33, 34]);
  });

  test('in turned work rows change in twos where more rows follow', () => {
    const shaped = `${band('sc in each st across')}\nRow 31: Ch 1, sc2tog, sc in each st across, turn. (39 sc)\n`;
    expect(Math.abs(refitOf(shaped, '20 sts x 18 rows = 10 cm in sc').rows[0]!.more) % 2).toBe(0);
  });
});

describe('rows that keep the height', () => {
  test('30 rows of 5 mm are 24 of 6.25 mm', () => {
    const [part] = refitOf(band('sc in each st across'), AT_16).rows;
    expect(part).toMatchObject({ rows: 30, more: -6, stitch: 'sc', worked: 'rows' });
    expect(part!.size.mm).toBeCloseTo(150, 6);
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
    expect(best).toMatchObject({ count: 96, chains: 39 });
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
