// What is not understood is named, with the span of just those words, and nothing else is lost.
// Examples are invented.
import { describe, expect, test } from 'vitest';
import { NO_VOCABULARY, readInstruction } from '../../../src/notation/index.ts';
import { tree } from './shown.ts';

describe('strange words', () => {
  test.each([
    ['Row 7: K2, p2.', 'row 7: UNREAD "K2, p2"'],
    ['Rnd 4: sc in next 5, frob twice, sc in next 5', 'round 4: sc @next 5; UNREAD "frob twice"; sc @next 5'],
    ['Row 5: As row 3, but work 2 sc in last st.', 'row 5: rows 3; UNREAD "but work 2 sc in last st"'],
    [
      '8th rnd: Work as for previous rnd, having 1 more loop between groups.',
      'round 8: last 1 rows; UNREAD "having 1 more loop between groups"',
    ],
    ['Make ch 9 loops around.', 'UNREAD "Make ch 9 loops around"'],
    ['Rnd 4: Dec every 3rd st', 'round 4: tog; UNREAD "every 3rd st"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });

  test('the span of the unread words is theirs alone', () => {
    const text = 'xx Rnd 4: sc in next 5, frob twice, sc in next 5';
    const { steps } = readInstruction(text, 3, text.length, NO_VOCABULARY);
    const [unread] = steps.filter((step) => step.kind === 'unread');
    expect(text.slice(3 + (unread?.from ?? 0), 3 + (unread?.to ?? 0))).toBe('frob twice');
  });
});

describe('side jobs and advice are remarks, and their numbers are theirs', () => {
  test.each([
    'Place eyes between rnds 9 and 10, 5 sts apart.',
    'Stuff the head firmly.',
    'See photo.',
    'Note: the first 3 rows may curl.',
    'Insert safety eyes between Rnds 7 and 8, about 6 sts apart.',
    'Be careful not to twist the chain.',
    'Move the marker up each round.',
  ])('%s', (remark) => {
    const { steps, counts } = readInstruction(remark, 0, remark.length, NO_VOCABULARY);
    expect(steps.map((step) => step.kind)).toEqual(['remark']);
    expect(counts).toEqual([]);
    const after = tree(`Rnd 5: sc around. ${remark} (24)`);
    expect(after).toMatch(/^round 5: sc ->end; "/);
    expect(after).toMatch(/= 24$/);
  });
});

test('nesting goes to 64 and is unread beyond', () => {
  const deep = (n: number) => `${'('.repeat(n)}sc, dc${') x 2'.repeat(n)}`;
  expect(tree(deep(60))).not.toContain('UNREAD');
  expect(tree(deep(80))).toContain('UNREAD');
});
