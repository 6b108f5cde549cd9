/**
 * Every finding of the catalogue, raised and nearly raised, by the smallest pattern that shows it.
 *
 * The files beside this one hold cases: `=== CODE: what it shows` for one that raises the finding,
 * `=== near CODE: …` for one that must not. A line `#! CODE 8-15` says that the next line raises
 * CODE at these columns, counted from 1, the end exclusive (`8-2:4`: it ends two lines further on,
 * before column 4); it is no part of the pattern. A case raises what it says of error and warning
 * grade and nothing else; notes that it does not speak of are let pass.
 *
 * A case may be a command, `loopwright letter "TIDE"`, in one line. Its findings point into the words
 * or into the chart made of them: columns are counted there, and the line is that of the command.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogue, compile, type Finding, lineStarts, placeAt } from '../../src/index.ts';
import { isCommand, runCommand } from '../finding/command-example.ts';

interface Case {
  readonly name: string;
  readonly code: string;
  readonly isNear: boolean;
  readonly text: string;
  /** "3 count-mismatch 8-15", in the order of the lines. */
  readonly expected: readonly string[];
}

const here = new URL('./', import.meta.url);

const cases = readdirSync(here)
  .filter((name) => name.endsWith('.txt'))
  .flatMap((name) =>
    readFileSync(new URL(name, here), 'utf8').split(/^=== /m).slice(1).map(readCase),
  );

function readCase(block: string): Case {
  const [name = '', ...lines] = block.trimEnd().split('\n');
  const kept: string[] = [];
  const expected: string[] = [];
  for (const line of lines) {
    if (line.startsWith('#! ')) expected.push(`${kept.length + 1} ${line.slice(3)}`);
    else kept.push(line);
  }
  const isNear = name.startsWith('near ');
  const code = /^(?:near )?([\w-]+):/.exec(name)?.[1] ?? '';
  return { name, code, isNear, text: `${kept.join('\n')}\n`, expected };
}

/** Too long for a file of cases: made here. */
const long: readonly Case[] = [
  madeCase('file-too-large', 'x'.repeat(80).concat('\n').repeat(60_000)),
  madeCase('line-too-long', `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: ${'sc, '.repeat(70_000)}\n`),
];

function madeCase(code: string, text: string): Case {
  return { name: code, code, isNear: false, text, expected: [] };
}

/** What a command tells, as lines of the case; those of one code, at most one, are told apart by columns. */
function shownOfCommand(text: string, expected: readonly string[]): string[] {
  const codes = new Set(expected.map((line) => line.split(' ')[1]));
  return runCommand(text)
    .filter(({ finding }) => finding.severity !== 'note' || codes.has(finding.code))
    .map(({ finding, text: source }) => {
      const lines = lineStarts(source);
      const { column } = placeAt(lines, finding.from);
      return `1 ${finding.code} ${column}-${placeAt(lines, finding.to).column}`;
    });
}

function shown(text: string, expected: readonly string[]): string[] {
  if (isCommand(text)) return shownOfCommand(text, expected);
  const { findings, lines } = compile(text, { fixes: false });
  const codes = new Set(expected.map((line) => line.split(' ')[1]));
  const place = ({ code, from, to }: Finding): string => {
    const at = placeAt(lines, from);
    const end = placeAt(lines, to);
    const down = end.line > at.line ? `${end.line - at.line}:` : '';
    return `${at.line} ${code} ${at.column}-${down}${end.column}`;
  };
  return findings.filter(({ code, severity }) => severity !== 'note' || codes.has(code)).map(place);
}

describe('a pattern raises what it is meant to raise, at the words meant', () => {
  const raising = cases.filter(({ isNear }) => !isNear);
  test.each(raising)('$name', ({ text, code, expected }) => {
    expect(expected.map((line) => line.split(' ')[1])).toContain(code);
    expect(shown(text, expected)).toEqual(expected);
  });

  test.each(long)('$code, made', ({ text, code }) => {
    expect(compile(text, { fixes: false }).findings.map((one) => one.code)).toContain(code);
  });
});

describe('a near miss raises nothing', () => {
  test.each(cases.filter(({ isNear }) => isNear))('$name', ({ text, code }) => {
    expect(shown(text, [])).toEqual([]);
    const codes = isCommand(text)
      ? runCommand(text).map(({ finding }) => finding.code)
      : compile(text, { fixes: false }).findings.map((one) => one.code);
    expect(codes).not.toContain(code);
  });
});

describe('the catalogue', () => {
  const codes = catalogue.map(({ code }) => code).sort();
  const codesOf = (some: readonly Case[]): string[] =>
    [...new Set(some.map(({ code }) => code))].sort();

  test('has a case for every code, and no case is of a code that is not there', () => {
    expect(codesOf([...cases.filter(({ isNear }) => !isNear), ...long])).toEqual(codes);
  });

  test('has a near miss for every code', () => {
    const tooLong = new Set(long.map(({ code }) => code));
    const near = codesOf(cases.filter(({ isNear }) => isNear));
    expect(near).toEqual(codes.filter((code) => !tooLong.has(code)));
  });
});
