// The catalogue of messages: its own rules, and its examples against the engine.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/index.ts';
import { isCommand, runCommand } from './command-example.ts';

interface Entry {
  readonly code: string;
  readonly title: string;
  readonly wrong: string;
  readonly right: string;
  readonly words: readonly {
    readonly name: string;
    readonly type: string;
    readonly optional: boolean;
  }[];
}

// Plain JavaScript, as all scripts: they must run before anything is installed.
const script = new URL('../../scripts/catalogue/entry.mjs', import.meta.url).href;
const { readEntry, entryFaults } = (await import(script)) as {
  readEntry: (code: string, text: string) => Entry;
  entryFaults: (entries: readonly Entry[]) => readonly string[];
};

const folder = new URL('../../src/finding/catalogue/', import.meta.url);
const entries = readdirSync(folder).map((name) =>
  readEntry(name.replace('.md', ''), readFileSync(new URL(name, folder), 'utf8')),
);

describe('the rules for entries', () => {
  const text = readFileSync(new URL('count-mismatch.md', folder), 'utf8');
  const faults = (code: string, changed: string) => entryFaults([readEntry(code, changed)]);

  test('all entries keep them', () => {
    expect(entryFaults(entries)).toEqual([]);
  });

  test.each([
    ['bad code', 'Count', text, 'kebab-case'],
    ['bad severity', 'a', text.replace('severity: error', 'severity: fatal'), 'severity "fatal"'],
    ['no right example', 'a', text.replace('## Right', '## Left'), 'parts that an entry needs'],
    ['the same example twice', 'a', text.replace('6 times. (20)', '6 times. (18)'), 'same example'],
    ['an unknown placeholder', 'a', text.replace('{row}', '{row?}'), 'placeholder'],
    [
      'a number that is also words',
      'a',
      text.replace('{row}', '{made}'),
      'as a number and as words',
    ],
    ['a word of compilers', 'a', text.replace('; the', '; an unexpected'), '"unexpected"'],
    ['a shout', 'a', text.replace("#}.'", "#}!.'"), '"!"'],
    ['no full stop', 'a', text.replace("#}.'", "#}'"), 'no sentence'],
  ])('finds %s', (_, code, changed, fault) => {
    expect(faults(code, changed).join()).toContain(fault);
  });

  test('finds one title under two codes', () => {
    const twins = [readEntry('a', text), readEntry('b', text)];
    expect(entryFaults(twins)).toEqual(['b.md has the same title as a']);
  });

  test('tell the type of each word', () => {
    const entry = readEntry('a', text.replace('{stated #}.', '{stated #}[ in "{place}"].'));
    expect(
      entry.words.map(({ name, type, optional }) => `${name}${optional ? '?' : ''} ${type}`),
    ).toEqual(['made number', 'place? string', 'row string', 'stated number', 'unit Noun']);
  });
});

/** Their examples are too long to print; tests of the limits stand elsewhere. */
const shortened = new Set(['file-too-large', 'line-too-long']);

describe('an example raises its finding, and put right raises it no more', () => {
  const codes = (text: string) =>
    isCommand(text)
      ? runCommand(text).map(({ finding }) => finding.code)
      : compile(text, {}).findings.map(({ code }) => code);
  test.each(entries.filter(({ code }) => !shortened.has(code)))(
    '$code',
    ({ code, wrong, right }) => {
      expect(codes(wrong)).toContain(code);
      expect(codes(right)).not.toContain(code);
    },
  );
});
