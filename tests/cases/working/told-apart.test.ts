// What a note says of chains, and start chains counted beside the stitches. Common practice.
import { expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';

const verdicts = (text: string): string =>
  compile(text)
    .rows.map(({ made, verdict }) => `${made} ${verdict}`)
    .join(', ');

const FIRST = 'Make 22 ch, 1 dc into 2nd ch from hook, 1 dc into each ch to end. Turn. (21 dc)\n';

test('a sentence about chains is no foundation', () => {
  const note = 'UK terms. 3 ch counts as first tr throughout.\n\n';
  const { conventions } = compile(note + FIRST);
  expect(verdicts(note + FIRST)).toBe('21 proven');
  expect(conventions.map(({ what }) => what)).toEqual([]);
});

test.each([
  ['(20 tr + 3 ch)', '21 proven, 21 proven'],
  ['(21 tr)', '21 proven, 21 proven'],
  ['(19 tr + 3 ch)', '21 proven, 21 mismatch'],
  ['(20 tr + 4 ch)', '21 proven, 21 mismatch'],
])('a start chain counted apart: %s', (count, worked) => {
  const row = `Row 2: 3 ch (counts as tr), 1 tr into each dc to end. Turn. ${count}\n`;
  expect(verdicts(`UK terms.\n\n${FIRST}\n${row}`)).toBe(worked);
});
