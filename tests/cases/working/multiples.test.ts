/**
 * Stitch patterns whose foundation is told as a multiple: the rows are worked on some number of repeats, and
 * the number is told. Sums beside each; that a dictionary gives the multiple with or without the chains to
 * turn is common practice.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, worked } from './worked.ts';

const REED = [
  'Row 1: Dc in 4th ch from hook, *skip 2 ch, (2 dc, ch 1, 2 dc) in next ch, skip 2 ch, dc in next ch; rep from * to last ch, dc in last ch. Turn.',
  'Row 2: Ch 3, skip first dc, dc in next dc, *(2 dc, ch 1, 2 dc) in next ch-1 sp, skip 2 dc, dc in next dc; rep from * to last st, dc in top of ch-3. Turn.',
];
const reed = (chain: string, ...rows: readonly string[]): string =>
  [chain, ...(rows.length > 0 ? rows : REED)].join('\n\n');

/** The number of chains that was taken, as it is told. */
const taken = (text: string): string[] =>
  compile(text, { fixes: false })
    .findings.filter(({ code }) => code === 'chosen-count')
    .map(({ message }) => message.replace(/.*worked here with /, ''));

// 3 passed, 1 dc, 5 repeats of 6, 1 dc: 35 chains; 1 + 1 + 5 × (4 + 1) + 1 = 28 dc.
describe('a foundation of which only the multiple is told', () => {
  it.each([
    'Chain a multiple of 6 plus 5.',
    'Foundation chain: multiple of 6 + 5 chains',
    'Ch in multiples of 6 + 3 (add 2 for the base chain).',
    'Stitch multiple: 6 + 5',
    'This stitch is a multiple of 6 + 3, plus 2 for the foundation chain.',
  ])('is worked on five repeats: %s', (chain) => {
    expect(worked(reed(chain), 'Row 1', 'Row 2')).toEqual(['Row 1 28 unstated', 'Row 2 28 unstated']);
    expect(complaints(reed(chain))).toEqual([]);
    expect(taken(reed(chain))).toEqual(['35 chains, 5 times 6 and 5.']);
  });
  it('takes the chains to turn with it, where a multiple of stitches leaves them unsaid', () => {
    expect(taken(reed('Multiple of 6 + 3'))).toEqual(['35 chains, 5 times 6 and 5.']);
  });
  it('near miss: a chain told to be a multiple that the row does not fit', () => {
    expect(complaints(reed('Chain a multiple of 6 plus 4.'))).toEqual(['3 repeat-remainder']);
  });
  it('takes the sample where one is told', () => {
    const text = reed('Chain a multiple of 6 plus 5; the sample has 41 chains.');
    expect(worked(text, 'Row 1')).toEqual(['Row 1 33 unstated']);
    expect(taken(text)).toEqual([]);
  });
  it('takes as many chains as the first stated count asks for: (53 - 3) ÷ 5 = 10 repeats', () => {
    const rows = REED.map((row) => `${row} (53 dc)`);
    const text = reed('Chain a multiple of 6 plus 5.', ...rows);
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 53 proven', 'Row 2 53 proven']);
    expect(taken(text)).toEqual(['65 chains, 10 times 6 and 5.']);
  });
  it('near miss: a later count that does not follow from the first', () => {
    const text = reed('Chain a multiple of 6 plus 5.', `${REED[0]} (53 dc)`, `${REED[1]} (54 dc)`);
    expect(complaints(text)).toEqual(['5 count-mismatch']);
  });
  it.each([
    ['an even number of stitches', 'Chain an even number.', '18 chains, 9 times 2 and 0.'],
    ['an odd number', 'Make an odd number of chains.', '19 chains, 9 times 2 and 1.'],
    ['a divisor', 'Chain any number divisible by 4, plus 1.', '21 chains, 5 times 4 and 1.'],
  ])('reads %s', (_, chain, told) => {
    const text = reed(chain, 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.');
    expect(taken(text)).toEqual([told]);
    expect(complaints(text)).toEqual([]);
  });
  it('near miss: a number beside the multiple is the number', () => {
    const text = reed('Ch 25 (a multiple of 4 ch plus 1).', 'Row 1: Sc in 2nd ch from hook and in each ch across. (24)');
    expect(taken(text)).toEqual([]);
    expect(worked(text, 'Row 1')).toEqual(['Row 1 24 proven']);
  });
});
