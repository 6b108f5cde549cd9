// The laws of reading and writing over the examples, and the house form against the bag, whose rows
// are written in it from the first.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Manuscript, readManuscript } from '../../src/manuscript/index.ts';
import { type Instruction, readInstruction, type Terms } from '../../src/notation/index.ts';
import { writeInstruction } from '../../src/notation/write/index.ts';
import { meaning } from './meaning.ts';

const FOLDER = new URL('../../examples/', import.meta.url);
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.pattern.md'));
const textOf = (name: string): string => readFileSync(new URL(name, FOLDER), 'utf8');

interface Row {
  readonly words: string;
  readonly tree: Instruction;
}

const rowsOf = ({ text, parts }: Manuscript): readonly Row[] =>
  parts.flatMap(({ instructions }) =>
    instructions.map(({ instruction, from, to }) => ({
      words: text.slice(from, to),
      tree: instruction,
    })),
  );

const write = ({ words, tree }: Row, from: Terms, to: Terms, sizes: number): string =>
  writeInstruction(tree, { from, to, sizes, quote: (span) => words.slice(span.from, span.to) });

const vocabularyOf = ({ specials, head, charts }: Manuscript) => ({
  specials: new Map(
    specials.flatMap(({ key, aliases }) => [key, ...aliases].map((name) => [name, key] as const)),
  ),
  sizes: head.sizes.length,
  charts: new Set(charts.map(({ name }) => name)),
  yarns: new Set(head.yarns),
});

describe.each(names)('%s', (name) => {
  const manuscript = readManuscript(textOf(name)).value;
  const { terms } = manuscript.terms;
  const known = vocabularyOf(manuscript);

  test('has rows, and each reads back to the same tree', () => {
    const rows = rowsOf(manuscript);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      const written = write(row, terms, terms, known.sizes);
      const again = readInstruction(written, 0, written.length, known);
      expect(meaning(again, terms), written).toEqual(meaning(row.tree, terms));
      expect(write({ words: written, tree: again }, terms, terms, known.sizes)).toBe(written);
    }
  });
});

test('the bag is written as it stands', () => {
  const rows = rowsOf(readManuscript(textOf('low-tide-errand-bag.pattern.md')).value);
  const asItStands = rows.map(({ words }) => words.replace(/\s+/g, ' ').trim());
  expect(rows.map((row) => write(row, 'US', 'US', 1))).toEqual(asItStands);
});
