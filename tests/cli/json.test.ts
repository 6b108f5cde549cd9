// The shape of the JSON is a promise to programs: docs/check-json.md. SARIF is held against what the
// OASIS standard "SARIF Version 2.1.0" requires (sections 3.13, 3.14, 3.19, 3.27, 3.30, 3.55 to 3.57;
// from memory).
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { jsonOf } from '../../cli/json.ts';
import { sarifLog, sarifResults } from '../../cli/sarif.ts';
import { countMismatch, noun } from '../../src/finding/index.ts';
import { catalogue, lineStarts } from '../../src/index.ts';
import { checked, row } from './sample.ts';

const text = '🧶 Disc\r\nRnd 1: 6 sc in ring. (6)\r\nRnd 2: Inc in each\r\nst around. (10)\r\n';
const span = (words: string) => {
  const from = text.indexOf(words);
  return { from, to: from + words.length };
};
const words = { row: 'round 2', made: 12, unit: noun('stitches'), stated: 10 };
const finding = countMismatch(span('(10)'), words, {
  sum: '6 increases make 12.',
  labels: [{ ...span('Inc in each\r\nst around'), text: 'makes 12' }],
  rows: ['r2'],
  fixes: [{ title: 'change (10) to (12).', edits: [{ ...span('(10)'), insert: '(12)' }] }],
});
const sample = checked({
  text,
  lines: lineStarts(text),
  rows: [row('Rnd 1', { from: span('Rnd 1').from, spaces: [{ chains: 2, n: 3 }] })],
  findings: [finding],
  conventions: [
    { what: 'times', part: 'A', reading: 'a', alternatives: ['b'], because: 'count', from: 36 },
  ],
});

describe('JSON', () => {
  const report = JSON.parse(jsonOf(sample));

  test('has exactly the keys that are documented, at every level', () => {
    const page = readFileSync(new URL('../../docs/check-json.md', import.meta.url), 'utf8');
    const keys = new Set<string>();
    JSON.stringify(report, (key, value) => {
      if (!/^\d*$/.test(key) && key !== 'sc') keys.add(key);
      return value;
    });
    for (const key of keys) expect(page).toMatch(new RegExp(`\\b${key}\\b`));
    expect(Object.keys(report)).toEqual(
      'version file terms sizes conventions rows findings totals notChecked'.split(' '),
    );
    expect(Object.keys(report.rows[0])).toEqual(
      'id part instance label range line size used made chains spaces boxes byKind stated verdict'.split(
        ' ',
      ),
    );
    expect(Object.keys(report.findings[0])).toEqual(
      'code severity line column endLine endColumn message sum rows sizes labels fixes'.split(' '),
    );
    expect(Object.keys(report.totals[0])).toEqual(
      'size rows proven unstated inPart mismatched unread unchecked stitches'.split(' '),
    );
    expect(Object.keys(report.conventions[0])).toEqual(
      'what part reading alternatives because line column'.split(' '),
    );
  });

  test('counts lines and columns from 1 in UTF-16 units, with either kind of line end', () => {
    expect(report.rows[0].line).toBe(2);
    expect(report.findings[0]).toMatchObject({ line: 4, column: 12, endLine: 4, endColumn: 16 });
    const edit = { line: 4, column: 12, endLine: 4, endColumn: 16, insert: '(12)' };
    expect(report.findings[0].fixes[0].edits).toEqual([edit]);
    const label = { line: 3, column: 8, endLine: 4, endColumn: 10, text: 'makes 12' };
    expect(report.findings[0].labels).toEqual([label]);
  });

  test('has a line for each row, so that two reports compare well', () => {
    expect(
      jsonOf(sample)
        .split('\n')
        .filter((line) => line.includes('"Rnd 1"')),
    ).toHaveLength(1);
  });
});

describe('SARIF', () => {
  const log = JSON.parse(sarifLog(sarifResults(sample), '1.2.3'));
  const [run] = log.runs;
  const [result] = run.results;

  test('names its version, tool and rules', () => {
    expect(log.version).toBe('2.1.0');
    expect(run.tool.driver).toMatchObject({ name: 'Loopwright', semanticVersion: '1.2.3' });
    expect(run.tool.driver.rules).toHaveLength(catalogue.length);
    expect(run.columnKind).toBe('utf16CodeUnits');
  });

  test('has a result with level, message and place', () => {
    expect(run.tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId);
    expect(result.level).toBe('error');
    expect(result.message.text).toContain('Round 2 makes 12 stitches; the pattern says 10.');
    expect(result.locations[0].physicalLocation).toEqual({
      artifactLocation: { uri: 'disc.pattern.md' },
      region: { startLine: 4, startColumn: 12, endLine: 4, endColumn: 16 },
    });
    expect(result.relatedLocations[0].message.text).toBe('makes 12');
    expect(result.fixes[0].artifactChanges[0].replacements[0]).toEqual({
      deletedRegion: { startLine: 4, startColumn: 12, endLine: 4, endColumn: 16 },
      insertedContent: { text: '(12)' },
    });
  });

  test.each([
    ['my patterns/größe 1#.md', 'my%20patterns/gr%C3%B6%C3%9Fe%201%23.md'],
    ['stdin', 'stdin'],
    ['../a.md', '../a.md'],
  ])('names the file %s as a URI', (file, uri) => {
    const [found] = sarifResults({ ...sample, file }) as { locations: unknown }[];
    expect(JSON.stringify(found?.locations)).toContain(`"uri":"${uri}"`);
  });

  test('leaves no form of the catalogue in the texts of the rules', () => {
    for (const { shortDescription } of run.tool.driver.rules) {
      expect(shortDescription.text).not.toMatch(/[{}|]/);
    }
  });
});
