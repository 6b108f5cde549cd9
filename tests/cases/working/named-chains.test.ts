/** Which starting chain a row names, and that a finding speaks of that one. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { tree } from '../notation/shown.ts';
import { complaints, worked } from './worked.ts';

const told = (text: string): string[] =>
  compile(text, { fixes: false })
    .findings.filter(({ code }) => code === 'space-size')
    .map(({ message }) => message);

const START = 'US terms. Ch-2 and ch-3 count as a stitch.\nRnd 1: Ch 2, 19 hdc in magic ring, join. (20 hdc)\n';

it('the join of a round names its own', () => {
  expect(told(`${START}Rnd 2: Ch 3, dc in next 19 sts, join to top of beg ch-2. (20 dc)\n`)).toEqual([
    '"ch-2" speaks of 2 chains; the starting chain in round 2 has 3.',
  ]);
  expect(told(`${START}Rnd 2: Ch 3, dc in next 19 sts, join to top of beg ch-3. (20 dc)\n`)).toEqual([]);
});

it('a stitch at the end of a row names that of the row beneath', () => {
  const rows =
    'US terms. Ch-3 counts as a stitch.\nRow 1: Ch 12, dc in 4th ch from hook and in each ch across, turn. (10 dc)\nRow 2: Ch 3, dc in next 9 sts, turn. (10 dc)\n';
  expect(told(`${rows}Row 3: Ch 3, dc in next 8 sts, dc in top of beg ch-4. (10 dc)\n`)).toEqual([
    '"ch-4" speaks of 4 chains; the starting chain in row 2 has 3.',
  ]);
});

describe('a foundation, and what is said of the chains of others', () => {
  const rounds = (chain: string): string =>
    `${chain}\nRnd 1: Ch 1, sc in each ch around, join. (90 sc)\nRnd 2: Ch 1, sc in each sc around, join. (90 sc)\n`;
  it.each([
    'Ch 90, join. I chained 100 for mine.',
    'Ch 90, join. For a looser fit, ch 100.',
    'Ch 90, join. Chain 100 for a larger size.',
    'Ch 90 (ch 100 for a looser fit), join.',
    'Ch 90, join. If you want it wider, ch 100.',
  ])('%s', (chain) => {
    expect(complaints(rounds(chain))).toEqual([]);
    expect(worked(rounds(chain), 'Rnd 1')).toEqual(['Rnd 1 90 proven']);
    expect(complaints(rounds(chain.replace('90', '89')))).not.toEqual([]);
  });
  it('two chains of a strap are two', () => {
    expect(tree('Ch 60 for the strap, join to other side, ch 60 back.')).toMatch(/^ch 60; .*; ch 60; /);
  });
});
