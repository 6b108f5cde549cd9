/** Places that are easily missed: each row is right, and is proven; sums beside each. */
import { expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const rows = (...lines: readonly string[]): string => `Sample (US terms)\n\n${lines.join('\n')}\n`;

it.each([
  [
    'every stitch and every chain: 11 + 10',
    rows(
      'Ch 12.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)',
      'Row 2: Ch 1, sc in first sc, (ch 1, sc in next sc) 10 times, turn. (11 sc, 10 ch)',
      'Row 3: Ch 1, sc in each sc & ch, turn. (21)',
    ),
    'Row 3',
    21,
  ],
  [
    'a turning chain behind an ending is the next row: 20 places again',
    rows(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Sc in first st, *ch 1, sk 1, sc in next st; rep from * across ending with sc in last st, ch 1, turn.',
      'Row 3: Sc in each sc and ch across. (20 sc)',
    ),
    'Row 3',
    20,
  ],
  [
    'two legs counted from the hook: 12 places make 1 + 8 + 1',
    rows(
      'Ch 14.',
      'Row 1: Dc2tog in 3rd and 4th ch from hook, dc in each of next 8 ch, dc2tog over last 2 ch, turn. (10)',
    ),
    'Row 1',
    10,
  ],
  [
    'skipped chains that are said to count',
    rows('Ch 12.', 'Row 1: Skip first 3 ch (counts as dc), dc in each ch across, turn. (10 dc)'),
    'Row 1',
    10,
  ],
  [
    'skipped chains that are said not to count',
    rows('Ch 12.', 'Row 1: Skip first 3 ch (does not count as a st), dc in each ch across. (9 dc)'),
    'Row 1',
    9,
  ],
  [
    'a post stitch around the stitch that was skipped',
    rows(
      'Ch 12.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (10 dc)',
      'Row 2: Ch 3 (counts as dc), (skip next st, dc in next st, FPdc around the skipped st) 4 times, dc in last st, turn. (10)',
    ),
    'Row 2',
    10,
  ],
])('%s', (_, text, label, made) => {
  expect(complaints(text)).toEqual([]);
  expect(worked(text, label)).toEqual([`${label} ${made} proven`]);
});

it.each([
  ['skip first 3 ch (counts as dc)', 'Skip first 3 ch (counts as dc), dc in each ch across, turn. (9 dc)'],
  ['skip first 3 ch (does not count)', 'Skip first 3 ch (does not count as a st), dc in each ch across. (10 dc)'],
])('%s: the words settle it, so that another count is a fault', (_, row) => {
  expect(complaints(rows('Ch 12.', `Row 1: ${row}`))).toEqual(['4 count-mismatch']);
});
