/** Words, heights and chains against what is printed; figures and sources in terms-data.ts. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/index.ts';
import { heightOf, STEMS, stemOf, wordFor } from '../../src/notation/index.ts';
import * as DATA from './terms-data.ts';
import { made, proven } from './worked.ts';

describe(`US and UK: ${DATA.PAIRS_SOURCE}`, () => {
  it.each(DATA.PAIRS)('US $us is UK $uk', ({ us, uk }) => {
    const stem = stemOf(us, 'US');
    expect(stem).not.toBeNull();
    expect(stemOf(uk, 'UK')).toBe(stem);
    if (stem) expect(wordFor(stem, 'US')).toBe(us);
    if (stem && uk !== 'ttr') expect(wordFor(stem, 'UK')).toBe(uk);
  });

  it.each(DATA.SHAPED_PAIRS)('US $us makes what UK $uk makes', ({ us, uk }) => {
    const kinds = [us, uk].map((word, i) => {
      const { fabric, rows, findings } = compile(
        `---\nterms: ${i === 0 ? 'US' : 'UK'}\n---\n\n## Piece\n\nCh 12.\n\n` +
          `Row 1: ${i === 0 ? 'Sc' : 'Dc'} in 2nd ch from hook and in each ch across. (11)\n\n` +
          `Row 2: Ch 1, turn, (${word} over next 2 sts) 5 times, ` +
          `${i === 0 ? 'sc' : 'dc'} in last st. (6)\n`,
      );
      expect(findings).toEqual([]);
      expect(rows.map(({ verdict }) => verdict)).toEqual(['proven', 'proven']);
      const { nodes } = fabric.cloths[0] ?? {};
      const used = [...(nodes?.kind.subarray(0, nodes.n) ?? [])];
      return used.map((kind) => fabric.kinds.kinds[kind]?.name);
    });
    expect(kinds[0]).toEqual(kinds[1]);
  });

  it('US stitches of the table come in the order of their heights', () => {
    const heights = DATA.HEIGHTS.map(({ us }) => STEMS.find((stem) => stem.us === us)?.height);
    expect(heights).toEqual([...heights].sort((a, b) => (a ?? 0) - (b ?? 0)));
  });
});

describe(`heights: ${DATA.HEIGHTS_SOURCE}`, () => {
  it.each(DATA.HEIGHTS)('$us is $height chains high', ({ us, height }) => {
    const stem = stemOf(us, 'US');
    expect(stem && heightOf(stem)).toBe(height);
  });
});

const N = 20;

describe(`turning chains: ${DATA.TURNING_SOURCE}`, () => {
  it.each(DATA.TURNING)('$stitch: ch $chain, first in ch $first', (row) => {
    const { stitch, chain, counts, first } = row;
    const start = N + chain - (counts ? 1 : 0);
    const rest = counts
      ? `${stitch} in next ${N - 2} sts, ${stitch} in top of turning ch`
      : `${stitch} in each st across`;
    const rows = proven(
      `Ch ${start}.`,
      `Row 1: ${stitch} in ${nth(first)} ch from hook and in each ch across. (${N} ${stitch})`,
      `Row 2: Ch ${chain}, turn, ${rest}. (${N} ${stitch})`,
      `Row 3: Ch ${chain}, turn, ${rest}. (${N} ${stitch})`,
    );
    expect(made(rows)).toEqual([N, N, N]);
  });

  it.each(DATA.SHORT_TURNING)(`$stitch: ch $chain; ${DATA.SHORT_SOURCE}`, ({ stitch, chain }) => {
    const start = `Ch ${chain} (does not count as a st), turn`;
    const rows = proven(
      `Ch ${N + 1}.`,
      `Row 1: Sc in 2nd ch from hook and in each ch across. (${N} sc)`,
      `Row 2: ${start}, ${stitch} in first st, ${stitch} in each st across. (${N} ${stitch})`,
      `Row 3: ${start}, ${stitch} in each st across. (${N} ${stitch})`,
    );
    expect(made(rows)).toEqual([N, N, N]);
  });

  it('a longer chain is a stitch and a space: ch 5 is dc and ch 2, met in its 3rd chain (T3)', () => {
    const open = '*ch 2, sk next 2 sts, dc in next st; rep from * across';
    const rows = proven(
      'Ch 21.',
      'Row 1: Dc in 4th ch from hook and in each ch across. (19 dc)',
      `Row 2: Ch 5 (counts as dc and ch 2), turn, sk next 2 sts, dc in next st, ${open}. ` +
        '(7 dc, 6 ch-2 sps)',
      'Row 3: Ch 5 (counts as dc and ch 2), turn, sk first ch-2 sp, dc in next dc, ' +
        '(ch 2, sk next ch-2 sp, dc in next dc) 4 times, ch 2, dc in 3rd ch of turning ch-5. ' +
        '(7 dc, 6 ch-2 sps)',
    );
    expect(made(rows)).toEqual([19, 7, 7]);
  });
});

describe(`foundation chains: ${DATA.FOUNDATION_SOURCE}`, () => {
  it.each(DATA.FOUNDATIONS)('$wanted $stitch: ch $chain, from the ch no. $nth', (row) => {
    const note = row.counts ? ' (skipped ch count as a st)' : '';
    const rows = proven(
      `Ch ${row.chain}.`,
      `Row 1: ${row.stitch} in ${nth(row.nth)} ch from hook${note} and in each ch across. ` +
        `(${row.wanted} ${row.stitch})`,
    );
    expect(made(rows)).toEqual([row.wanted]);
  });
});

const nth = (n: number): string => `${n}${n === 2 ? 'nd' : n === 3 ? 'rd' : 'th'}`;
