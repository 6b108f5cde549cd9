/** Which starting chain a row names, and that a finding speaks of that one. */
import { expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';

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
