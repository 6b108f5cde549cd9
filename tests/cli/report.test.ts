import { describe, expect, test } from 'vitest';
import { closing, report, shortReport } from '../../cli/text/report.ts';
import { assumptions, rowsSummary, statusOf } from '../../cli/text/summary.ts';
import { countMismatch, noun } from '../../src/finding/index.ts';
import { plain } from '../../src/index.ts';
import { checked, row, total } from './sample.ts';

const layout = { width: 80, color: false, paint: plain, table: 'shown' } as const;

test('the report on one file, whole', () => {
  const text = 'Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: Inc in each st around. (10 sc)\n';
  const at = { from: text.indexOf('(10'), to: text.indexOf('(10') + 7 };
  const words = { row: 'round 2', made: 12, unit: noun('sc'), stated: 10 };
  const shown = report(
    checked({
      text,
      rows: [
        row('Rnd 1', { used: 0 }),
        row('Rnd 2', { made: 12, stated: [{ n: 10, unit: 'sc' }], verdict: 'mismatch' }),
      ],
      findings: [countMismatch(at, words, { sum: '6 increases make 12.' })],
      conventions: [
        {
          what: 'start-chain',
          part: '',
          reading: 'The ch 1 at the start of a round does not count as a stitch.',
          alternatives: ['It counts as a stitch.'],
          because: 'custom',
          from: 0,
        },
      ],
      totals: [total({ rows: 2, proven: 1, mismatched: 1 })],
      notChecked: ['How the eyes are placed.'],
    }),
    layout,
  );
  expect(`\n${shown}`).toBe(`
disc.pattern.md  US terms

error[count-mismatch]  Round 2 makes 12 sc; the pattern says 10.
  disc.pattern.md:2:31
  2 | Rnd 2: Inc in each st around. (10 sc)
    |                               ^^^^^^^
  Sum: 6 increases make 12.

         used  made  stated  verdict
  Rnd 1     0     6  6 sc    proven
> Rnd 2     6    12  10 sc   mismatch

Taken for granted. A sentence among the notes would state it:
  - The ch 1 at the start of a round does not count as a stitch. (by custom)

Not checked:
  - How the eyes are placed.

2 rows: 1 proven, 1 with a count that differs. 1 error.
`);
});

test('of a good file among many there is one line', () => {
  const { line, rest } = shortReport(checked(), { ...layout, table: 'left-out' });
  expect(line).toBe('disc.pattern.md  1 row, proven. Nothing found.');
  expect(rest).toBe('');
});

describe('what many files came to', () => {
  const good = { status: 0, findings: [], totals: [total({ rows: 3, proven: 3 })] } as const;
  const bad = { ...good, status: 1, findings: [{ severity: 'error' }] } as const;
  test.each([
    [[good, good], 0, '2 files: all come out. 6 rows, all proven. Nothing found.\n'],
    [[good, bad], 0, '2 files: 1 comes out, 1 does not. 6 rows, all proven. 1 error.\n'],
    [[bad, bad], 0, '2 files: none comes out. 6 rows, all proven. 2 errors.\n'],
    [
      [good],
      1,
      '2 files: 1 comes out, 1 could not be checked. 3 rows, all proven. Nothing found.\n',
    ],
  ])('%#', (outcomes, faults, line) => {
    expect(closing(outcomes, faults, plain)).toBe(line);
  });
});

describe('rows in words', () => {
  test.each([
    [[], ['No row was worked.']],
    [[total({ rows: 4, unstated: 4 })], ['4 rows, all without a stated count.']],
    [
      [total({ rows: 4, proven: 2, unread: 1, unchecked: 1 })],
      ['4 rows: 2 proven, 1 not understood, 1 not checked.'],
    ],
    [
      [total({ size: 'S', rows: 4, proven: 4 }), total({ size: 'M', rows: 4, proven: 4 })],
      ['4 rows in each of 2 sizes, all proven.'],
    ],
    [
      [total({ size: 'S', rows: 4, proven: 4 }), total({ size: 'M', rows: 5, proven: 5 })],
      ['Size S: 4 rows, all proven.', 'Size M: 5 rows, all proven.'],
    ],
  ])('%#', (totals, lines) => {
    expect(rowsSummary({ totals })).toEqual(lines);
  });
});

test('readings that the pattern states are not assumptions; one for two parts is told once', () => {
  const one = (
    part: string,
    because: 'note' | 'custom' | 'count',
    reading = 'Ch 1 does not count.',
  ) => ({
    what: 'start-chain',
    part,
    reading,
    alternatives: [],
    because,
    from: 0,
  });
  expect(
    assumptions([
      one('A', 'note'),
      one('B', 'custom'),
      one('C', 'custom'),
      one('D', 'count', 'Other.'),
    ]),
  ).toEqual(['Ch 1 does not count. (by custom; B, C)', 'Other. (the counts ask for it; D)']);
});

describe('the exit status', () => {
  const note = countMismatch(
    { from: 0, to: 1 },
    { row: 'a', made: 1, unit: noun('sc'), stated: 2 },
  );
  test.each([
    ['all proven', checked(), 0],
    ['a count that is not stated', checked({ rows: [row('Rnd 1', { verdict: 'unstated' })] }), 0],
    [
      'a foundation without a number',
      checked({ rows: [row('Row 1', { verdict: 'unchecked' })] }),
      0,
    ],
    ['a row that was not understood', checked({ rows: [row('Rnd 1', { verdict: 'unread' })] }), 1],
    ['a warning', checked({ findings: [{ ...note, severity: 'warning' }] }), 0],
    ['an error', checked({ findings: [note] }), 1],
    [
      'a row that is not worked yet',
      checked({ findings: [{ ...note, code: 'not-worked', severity: 'note' }] }),
      1,
    ],
  ])('%s', (_, report, status) => {
    expect(statusOf(report)).toBe(status);
  });
});
