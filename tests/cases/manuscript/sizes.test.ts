// Where a pattern says its sizes. Examples are invented.
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { readManuscript } from '../../../src/manuscript/index.ts';

const work = '\n\nCh 41 (45).\nRow 1: Sc in 2nd ch from hook and in each ch across. (40 (44))\n';

describe('sizes are found', () => {
  test.each([
    ['Sizes: S (M, L)', ['S', 'M', 'L']],
    ['Dune top - back - sizes S/M (L/XL), US terms', ['S/M', 'L/XL']],
    ['Quay hat. Two sizes: child (adult). Sc in a spiral.', ['child', 'adult']],
    ['XS (S, M, L)', ['XS', 'S', 'M', 'L']],
    ['Sizes XS (S, M, L, 1X, 2X)', ['XS', 'S', 'M', 'L', '1X', '2X']],
    ['Written for the first size; changes for larger sizes are in brackets.', ['size 1', 'size 2']],
    ['Sizes: 2/4 (6/8, 10/12)', ['2/4', '6/8', '10/12']],
    ['A mat of one size.', ['']],
  ])('%s', (head, sizes) => expect(readManuscript(head + work).value.head.sizes).toEqual(sizes));
});

describe('rows in a table', () => {
  test('are labelled rows with counts', () => {
    const text = [
      '| Row | Work | Count |',
      '|---|---|---|',
      '| Fnd | ch 12 | 12 |',
      '| 1 | sc in 2nd ch from hook and in each ch | 11 |',
      '| 2–5 | ch 1, turn, sc in each st | 11 |',
    ].join('\n');
    const [part] = readManuscript(text).value.parts;
    const labels = part?.instructions.map(({ instruction }) => instruction.label?.numbers ?? []);
    expect(labels).toEqual([[], [1], [2, 3, 4, 5]]);
    expect(part?.instructions.map(({ instruction }) => instruction.counts[0]?.n.values)).toEqual([
      [12],
      [11],
      [11],
    ]);
  });
});

describe('a foundation for each size, told one after the other', () => {
  const rows =
    'Row 1: Sc in 2nd ch from hook and in each ch across. (20 (24, 28))\nRow 2: Ch 1, turn, sc in each st. (20 (24, 28))\n';
  test.each([
    'Size S: Ch 21.\nSize M: Ch 25.\nSize L: Ch 29.\n',
    'Size L only: Ch 29.\nSize M only: Ch 25.\nSize S only: Ch 21.\n',
    'For size S, ch 21. For size M, ch 25. For size L, ch 29.\n',
    'Ch 21 for size S, ch 25 for size M, ch 29 for size L.\n',
  ])('%s', (chains) => {
    const worked = compile(`Sizes: S (M, L)\n\n${chains}${rows}`, { fixes: false });
    expect(worked.rows.map(({ made, verdict }) => `${made} ${verdict}`)).toEqual([
      ...['20 proven', '20 proven'],
      ...['24 proven', '24 proven'],
      ...['28 proven', '28 proven'],
    ]);
    const wrong = compile(`Sizes: S (M, L)\n\n${chains.replace('25', '26')}${rows}`, { fixes: false });
    expect(wrong.findings.filter(({ severity }) => severity === 'error')).toHaveLength(1);
  });
});
