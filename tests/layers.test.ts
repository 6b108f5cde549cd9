// Holds the direction of the imports (docs/architecture.md): arrows go up the list of rooms only,
// through doors only, and no files load each other in a ring.
import { describe, expect, test } from 'vitest';
import { importsOf } from './house/imports.ts';
import { layerFaults, runTimeRings } from './house/layers.ts';
import { impurities } from './house/purity.ts';
import { readSources, runTimePackages } from './house/sources.ts';

describe('this repository', () => {
  const sources = readSources(['src', 'cli']);

  test('has sources to look at', () => {
    expect(sources.size).toBeGreaterThan(0);
  });

  test('keeps the order of the rooms, the doors and the packages', () => {
    expect(layerFaults(sources, runTimePackages())).toEqual([]);
  });

  test('has an engine that gives the same bytes on every run and machine', () => {
    expect(impurities(readSources(['src']))).toEqual([]);
  });
});

describe('the layer rule on made-up sources', () => {
  const doors = {
    'src/source/index.ts': "export { at } from './text.ts';",
    'src/source/text.ts': 'export const at = 1;',
    'src/fabric/index.ts': "export { work } from './work.ts';",
    'src/fabric/work.ts': "import { at } from '../source/index.ts';",
    'src/index.ts': "export { work } from './fabric/index.ts';",
  };

  test('passes a sound house', () => {
    expect(faultsWith({ 'cli/main.ts': "import { work } from '../src/index.ts';" })).toEqual([]);
  });

  test.each([
    ['src/source/a.ts', "import { work } from '../fabric/index.ts';", 'comes after source'],
    ['src/source/a.ts', "import type { W } from '../fabric/index.ts';", 'comes after source'],
    ['src/fabric/a.ts', "import { at } from '../source/text.ts';", 'not through src/source/index'],
    ['src/fabric/a.ts', "import { work } from '../index.ts';", 'comes after fabric'],
    ['src/fabric/a.ts', "import { run } from '../../cli/run.ts';", 'comes after fabric'],
    ['src/fabric/a.ts', "import { gone } from './gone.ts';", 'not there'],
    ['src/fabric/a.ts', "import { readFileSync } from 'node:fs';", 'also runs in the browser'],
    ['src/fabric/a.ts', "import path from 'path';", 'also runs in the browser'],
    ['src/fabric/a.ts', "import { Command } from 'commander';", 'imports the package commander'],
    ['src/fabric/a.ts', "import './work.ts';", 'for its effect only'],
    ['src/fabric/a.ts', "const a = await import('./work.ts');", 'at run time'],
    ['src/gauge/index.ts', "export * from '../source/index.ts';", 'names what it lets through'],
    ['src/utils/a.ts', 'export const a = 1;', 'in no room'],
    ['src/stray.ts', 'export const a = 1;', 'in no room'],
    ['cli/a.ts', "import { work } from '../src/fabric/index.ts';", 'front door'],
    ['cli/a.ts', "import fs from 'fs';", 'written node:fs'],
    ['cli/a.ts', "import { test } from 'vitest';", 'not among the dependencies'],
  ])('%s: %s', (path, text, fault) => {
    const faults = faultsWith({ 'cli/run.ts': '', [path]: text });
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(path);
    expect(faults[0]).toContain(fault);
  });

  test.each([
    ['src/manuscript/a.ts', "import { parseDocument } from 'yaml';"],
    ['src/fabric/a.ts', "import type { W } from './work.ts';"],
    ['src/fabric/a.ts', "// import { x } from '../proof/index.ts';"],
    ['src/fabric/a.ts', 'const words = "import { x } from \'node:fs\'";'],
    ['cli/a.ts', "import { readFile } from 'node:fs/promises';"],
    ['cli/a.ts', "import { Command } from 'commander';"],
    ['cli/a.ts', "const { run } = await import('./run.ts');"],
  ])('allows %s: %s', (path, text) => {
    expect(faultsWith({ 'cli/run.ts': '', [path]: text })).toEqual([]);
  });

  function faultsWith(files: Readonly<Record<string, string>>): readonly string[] {
    return layerFaults(new Map(Object.entries({ ...doors, ...files })), ['yaml', 'commander']);
  }
});

describe('rings', () => {
  const ring = (last: string) =>
    runTimeRings(
      new Map([
        ['src/fabric/a.ts', "import { b } from './b.ts';"],
        ['src/fabric/b.ts', "import { c } from './c.ts';"],
        ['src/fabric/c.ts', last],
      ]),
    );

  test('a ring of value imports is found and shown whole', () => {
    const shown = 'src/fabric/a.ts -> src/fabric/b.ts -> src/fabric/c.ts -> src/fabric/a.ts';
    expect(ring("import { a } from './a.ts';")).toEqual([shown]);
  });

  test('a re-export closes a ring', () => {
    expect(ring("export { a } from './a.ts';")).toHaveLength(1);
  });

  test('an inline type closes a ring, since the file is still loaded', () => {
    expect(ring("import { type A } from './a.ts';")).toHaveLength(1);
  });

  test('a type import closes none', () => {
    expect(ring("import type { A } from './a.ts';")).toEqual([]);
  });

  test('two ways to the same file are no ring', () => {
    expect(ring('export const c = 1;')).toEqual([]);
  });
});

describe('the import scanner', () => {
  const targets = (text: string) => importsOf(text).map(({ kind, target }) => `${kind} ${target}`);

  test('reads every form, over several lines too', () => {
    const text = [
      "import a from 'a';",
      "import * as b from 'b';",
      "import c, { d } from 'c';",
      "import type { E } from 'e';",
      "import {\n  f,\n  g,\n} from 'f';",
      "export { h } from 'h';",
      "export type { I } from 'i';",
      "export * as j from 'j';",
      "import 'k';",
      "const l = await import('l');",
    ].join('\n');
    expect(targets(text)).toEqual([
      'value a',
      'value b',
      'value c',
      'type e',
      'value f',
      'value h',
      'type i',
      'value j',
      'effect k',
      'load l',
    ]);
  });

  test('is not misled by comments, strings, templates and regular expressions', () => {
    const text = [
      "/* import a from 'a'; */",
      // biome-ignore lint/suspicious/noTemplateCurlyInString: the text under test is a template.
      "const b = `import b from 'b'; ${'x'} import c from 'c';`;",
      "const d = /'/; const e = 4 / 2; // '",
      "import f from 'f';",
    ].join('\n');
    expect(targets(text)).toEqual(['value f']);
  });

  test('counts lines from 1', () => {
    expect(importsOf("\n\nimport a from 'a';")[0]?.line).toBe(3);
  });
});

test('the purity check finds a call and passes its mention in a comment', () => {
  const sources = new Map([['src/units/a.ts', '// Math.random\nconst a = Math.random();']]);
  expect(impurities(sources)).toEqual([
    'src/units/a.ts:2 Math.random: the engine has no randomness: seeds are parameters',
  ]);
});
