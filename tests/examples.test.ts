/**
 * The pieces of `examples/` and `tests/fixtures/` against what they are known to be: sound pieces
 * raise nothing, planted faults are found at their row, and every count is the one that a separate
 * sum gave (`fixtures/counts.json`, worked out by hand and checked by a script that reads no
 * patterns).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Compiled, compile, type Finding, placeAt } from '../src/index.ts';
import { knownShort } from './known-short.ts';

interface Expected {
  readonly line: number;
  /** First and last line of the paragraph that holds the fault. */
  readonly row: readonly [number, number];
  readonly codes: readonly string[];
  readonly what: string;
}

interface Counted {
  readonly line: number;
  readonly made: number | readonly number[];
  /** By the number of chains. */
  readonly spaces?: Readonly<Record<string, number | readonly (number | null)[]>>;
}

/** The names that must hold, and those that are known to fall short and must be seen to. */
function sorted<T extends string>(all: readonly T[], short: readonly string[]): [T[], T[]] {
  const isShort = (name: T): boolean => short.includes(name);
  return [all.filter((name) => !isShort(name)), all.filter(isShort)];
}

const root = new URL('./fixtures/', import.meta.url);
const examples = new URL('../examples/', import.meta.url);

const read = (folder: URL, name: string): string => readFileSync(new URL(name, folder), 'utf8');
const names = (folder: URL, ending: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(ending) && name !== 'README.md')
    .sort();

const lineOf = (piece: Compiled, at: number): number => placeAt(piece.lines, at).line;
const grave = (found: Finding): boolean => found.severity !== 'note';
const shown = (piece: Compiled, found: Finding): string =>
  `line ${lineOf(piece, found.from)}: ${found.code}: ${found.message} ${found.sum}`.trim();

/** Last line of the row behind `line`: a number that only the next row disproves is found there. */
function endOfNextRow(text: string, line: number): number {
  const lines = text.split('\n');
  let at = line;
  while (at < lines.length && lines[at]?.trim() === '') at += 1;
  while (at < lines.length && lines[at]?.trim() !== '') at += 1;
  return at;
}

describe('examples', () => {
  test.each(names(examples, '.pattern.md'))('%s is proven without a finding', (name) => {
    const piece = compile(read(examples, name));
    expect(piece.findings.map((found) => shown(piece, found))).toEqual([]);
    expect(piece.rows.length).toBeGreaterThan(0);
    const open = piece.rows.filter((row) => row.verdict !== 'proven' && row.verdict !== 'omitted');
    expect(open.filter((row) => row.stated.length > 0)).toEqual([]);
  });
});

describe('planted faults', () => {
  const folder = new URL('faulty/', root);
  const faulty = names(folder, '.expected.json').map((name) => name.replace('.expected.json', ''));
  const texts = new Set(readdirSync(folder));

  const [sound, short] = sorted(faulty, knownShort.plantedFaults);
  const check = (name: string): void => {
    const file = texts.has(`${name}.txt`) ? `${name}.txt` : `${name}.pattern.md`;
    const text = read(folder, file);
    const expected: readonly Expected[] = JSON.parse(read(folder, `${name}.expected.json`));
    const piece = compile(text);
    const within = (found: Finding, fault: Expected): boolean => {
      const line = lineOf(piece, found.from);
      return line >= fault.row[0] && line <= endOfNextRow(text, fault.row[1]);
    };
    const missed = expected.filter(
      (fault) =>
        !piece.findings.some((found) => fault.codes.includes(found.code) && within(found, fault)),
    );
    expect(missed.map((fault) => `line ${fault.line}: ${fault.what}`)).toEqual([]);
    const beside = piece.findings.filter(
      (found) => grave(found) && !expected.some((fault) => within(found, fault)),
    );
    expect(beside.map((found) => shown(piece, found))).toEqual([]);
  };
  test.each(sound)('%s: each is found at its row, and nothing else', check);
  test.fails.each(short)('%s: not all yet', check);
});

describe('normal practice', () => {
  const folder = new URL('normal-practice/', root);
  const texts = [...names(folder, '.txt'), ...names(folder, '.pattern.md')];

  test.each(texts)('%s raises neither error nor warning', (name) => {
    const piece = compile(read(folder, name));
    expect(piece.findings.filter(grave).map((found) => shown(piece, found))).toEqual([]);
    expect(piece.rows.length).toBeGreaterThan(0);
  });
});

describe('bare texts', () => {
  const folder = new URL('bare/', root);
  const texts = names(folder, '.txt');

  const [sound, short] = sorted(texts, knownShort.bareTexts);
  const check = (name: string): void => {
    const piece = compile(read(folder, name));
    // What was not understood is said so, and is measured over all texts below.
    const wrong = piece.findings.filter((found) => grave(found) && found.code !== 'unread');
    expect(wrong.map((found) => shown(piece, found))).toEqual([]);
  };
  test.each(sound)('%s: nothing that is right is called wrong', check);
  test.fails.each(short)('%s: something right is still called wrong', check);

  // The aim is 95 in 100 rows read and 90 in 100 stated counts proven. These texts are harder than
  // most (scans, tables, rows without labels); the numbers are where we stand, to be raised.
  test('of all rows 97 in 100 are read, of the stated counts 88 in 100 are proven', () => {
    const rows = texts.flatMap((name) => compile(read(folder, name)).rows);
    const worked = rows.filter((row) => row.verdict !== 'omitted');
    const unread = worked.filter((row) => row.verdict === 'unread');
    const stated = worked.filter((row) => row.stated.length > 0);
    const proven = stated.filter((row) => row.verdict === 'proven');
    expect(unread.length / worked.length).toBeLessThan(0.03);
    expect(proven.length / stated.length).toBeGreaterThan(0.88);
  });
});

describe('counts worked out apart', () => {
  const counts: Readonly<Record<string, readonly Counted[]>> = JSON.parse(
    read(root, 'counts.json'),
  );
  const inSize = (n: number | readonly (number | null)[], nth: number): number | null =>
    typeof n === 'number' ? n : (n[nth] ?? null);

  const [sound, short] = sorted(Object.keys(counts), knownShort.countsWorkedOutApart);
  const check = (file: string): void => {
    const entries = counts[file] ?? [];
    const folder = file.startsWith('examples/') ? new URL('../', examples) : root;
    const piece = compile(read(folder, file));
    const worked = piece.sizes.flatMap((size, nth) =>
      entries.map((entry) => {
        // A label for many rows: its last row is meant. Rows told between two that were summed are not.
        const rows = piece.rows.filter(
          (one) => one.size === size && one.instance === 1 && lineOf(piece, one.from) >= entry.line,
        );
        const line = Math.min(...rows.map((one) => lineOf(piece, one.from)));
        const row = rows.findLast((one) => lineOf(piece, one.from) === line);
        const spaces = (row?.spaces ?? []).map(({ chains, n }) => [String(chains), n]);
        return { line: entry.line, nth, made: row?.made, spaces: Object.fromEntries(spaces) };
      }),
    );
    const summed = piece.sizes.flatMap((_, nth) =>
      entries.map((entry) => ({
        line: entry.line,
        nth,
        made: inSize(entry.made, nth),
        spaces: Object.fromEntries(
          Object.entries(entry.spaces ?? {}).flatMap(([chains, n]) =>
            inSize(n, nth) === null ? [] : [[chains, inSize(n, nth)]],
          ),
        ),
      })),
    );
    expect(worked).toEqual(summed);
  };
  test.each(sound)('%s', check);
  test.fails.each(short)('%s: not all counts yet', check);
});
