// Holds the sizes of files and functions, so that one screen shows one idea.
import { describe, expect, test } from 'vitest';
import { functionsOf } from './house/functions.ts';
import { type Exception, sizeFaults } from './house/sizes.ts';
import { readSources } from './house/sources.ts';

/** Only tables of data, which nobody reads from top to bottom; each with its reason. */
const exceptions: readonly Exception[] = [];

test('files and functions of this repository are short', () => {
  expect(sizeFaults(readSources(['src', 'cli']), exceptions)).toEqual([]);
});

describe('the size rule on made-up sources', () => {
  const lines = (count: number) => 'const a = 1;\n'.repeat(count);
  const many = (count: number, each: number) =>
    Object.fromEntries(Array.from({ length: count }, (_, n) => [`src/${n}.ts`, lines(each)]));
  const faults = (files: Readonly<Record<string, string>>, excepted: readonly Exception[] = []) =>
    sizeFaults(new Map(Object.entries(files)), excepted);

  test('passes short files', () => {
    expect(faults(many(9, 150))).toEqual([]);
  });

  test('finds a median that is too long', () => {
    expect(faults(many(9, 151))).toEqual(['median file: 151 lines, over 150']);
  });

  test('finds a file that is too long for any', () => {
    const found = faults({ ...many(9, 10), 'src/long.ts': lines(801) });
    expect(found).toEqual(['src/long.ts: 801 lines, over 800']);
  });

  test('finds too many files over the usual length', () => {
    const found = faults({ ...many(18, 10), 'src/x.ts': lines(451), 'src/y.ts': lines(451) });
    expect(found).toHaveLength(1);
    expect(found[0]).toContain('2 of 20 files have over 450 lines');
  });

  test('lets a listed table be long, and wants no needless entry in the list', () => {
    const table = { path: 'src/table.ts', reason: 'data' };
    expect(faults({ ...many(9, 10), 'src/table.ts': lines(900) }, [table])).toEqual([]);
    expect(faults({ ...many(9, 10), 'src/table.ts': lines(90) }, [table])).toHaveLength(1);
    expect(faults(many(9, 10), [table])).toHaveLength(1);
  });

  test('finds a function that is too long', () => {
    const short = Array.from({ length: 30 }, (_, n) => `function s${n}() {\n}\n`).join('');
    const long = `${short}function long(): void {\n${'  a();\n'.repeat(99)}}\n`;
    expect(faults({ ...many(9, 10), 'src/a.ts': long })).toEqual([
      'src/a.ts:61 long: 101 lines, over 100',
    ]);
  });
});

describe('the function scanner', () => {
  const found = (text: string) => functionsOf(text).map(({ name, lines }) => `${name} ${lines}`);

  test.each([
    ['a declaration', 'function f(a: number): void {\n  g(a);\n}', ['f 3']],
    ['type parameters', 'function f<A extends B<C>>(a: A): A {\n  return a;\n}', ['f 3']],
    ['a type literal as result', 'function f(): { a: number } {\n  return { a: 1 };\n}', ['f 3']],
    ['a union of literals', 'function f(): { a: 1 } | { b: 2 }[] {\n  return g();\n}', ['f 3']],
    ['a type guard', "function f(a: A): a is { k: 'x' } {\n  return true;\n}", ['f 3']],
    ['parameters over lines', 'function f(\n  a: number,\n): void {\n}', ['f 4']],
    ['an arrow', 'const f = (a: number): void => {\n  g(a);\n};', ['arrow 3']],
    ['an arrow to an object', 'const f = () => ({\n  a: 1,\n});', ['arrow 3']],
    ['a method', 'const o = {\n  m(a: number): void {\n    g();\n  },\n};', ['m 3']],
    ['one inside another', 'function f() {\n  function g() {\n  }\n}', ['f 4', 'g 2']],
    ['a default in braces', 'function f({ a = 1 } = {}) {\n}', ['f 2']],
  ])('sees %s', (_, text, expected) => {
    expect(found(text)).toEqual(expected);
  });

  test.each([
    ['a branch', 'if (a) {\n  b();\n}'],
    ['a loop', 'for (const a of b) {\n}\nwhile (a) {\n}'],
    ['a call', 'f(a);\n{\n}'],
    ['a choice', 'const a = b ? f(1) : { c: 2 };'],
    ['a case', 'switch (a) {\n  case f(1): {\n    break;\n  }\n}'],
    ['a declaration without a body', 'declare function f(a: number): void;\nconst a = {};'],
    ['braces in text', "const a = 'f() {';\n// g() {\n"],
  ])('does not take %s for a function', (_, text) => {
    expect(found(text)).toEqual([]);
  });
});
