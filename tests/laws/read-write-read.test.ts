// Laws of reading and writing: what is written reads back to the same tree, writing what was
// written changes nothing, and there and back between US and UK terms is where one came from. The
// pairs of words are the trade's published ones (docs/sources.md); the laws are plain algebra.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Instruction,
  readInstruction,
  type Terms,
  type Vocabulary,
} from '../../src/notation/index.ts';
import { writeInstruction } from '../../src/notation/write/index.ts';
import type { Span } from '../../src/source/index.ts';
import { instructionOf } from './arbitrary-instruction.ts';
import { KNOWN_FAULTS } from './known-faults.ts';
import { ALL_LINES, type Line } from './lines.ts';
import { meaning } from './meaning.ts';

/** A tree with the text that its spans count in. */
interface Read {
  readonly text: string;
  readonly tree: Instruction;
}

const known = (sizes: number): Vocabulary => ({
  specials: new Map([
    ['ripple st', 'ripple st'],
    ['beg ripple', 'beg ripple'],
    ['3-dc fin', '3-dc fin'],
    ['3-tr fin', '3-tr fin'],
  ]),
  sizes,
  charts: new Set(['Tide']),
  yarns: new Set(['A', 'B', 'MC']),
});

const read = (text: string, sizes: number): Read => ({
  text,
  tree: readInstruction(text, 0, text.length, known(sizes)),
});

const write = ({ text, tree }: Read, from: Terms, to: Terms, sizes: number): string =>
  writeInstruction(tree, {
    from,
    to,
    sizes,
    quote: (span: Span) => text.slice(span.from, span.to),
  });

const other = (terms: Terms): Terms => (terms === 'US' ? 'UK' : 'US');

describe('lines of every construct', () => {
  test('are many', () => {
    expect(new Set(ALL_LINES.map(({ text }) => text)).size).toBeGreaterThanOrEqual(150);
  });

  test.each(ALL_LINES.map((line) => [line.text, line] as const))('%s', (_, line) => {
    holdLaws(line);
  });
});

function holdLaws({ text, terms, sizes }: Line): void {
  const first = read(text, sizes);
  const written = write(first, terms, terms, sizes);
  const second = read(written, sizes);
  expect(meaning(second.tree, terms), written).toEqual(meaning(first.tree, terms));
  expect(write(second, terms, terms, sizes)).toBe(written);
  const abroad = read(write(first, terms, other(terms), sizes), sizes);
  expect(meaning(abroad.tree, other(terms)), abroad.text).toEqual(meaning(first.tree, terms));
  expect(write(abroad, other(terms), terms, sizes)).toBe(written);
}

describe('random instructions', () => {
  test.each([1, 3])('with %i sizes', (sizes) => {
    fc.assert(
      fc.property(instructionOf(sizes), (tree) => {
        const text = writeInstruction(tree, { from: 'US', to: 'US', sizes });
        fc.pre(!KNOWN_FAULTS.some(({ shape }) => shape.test(text)));
        const again = read(text, sizes);
        expect(meaning(again.tree, 'US'), text).toEqual(meaning(tree, 'US'));
        holdLaws({ text, terms: 'US', sizes });
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });
});

test.each(KNOWN_FAULTS)(
  'still a fault of the reader: $why',
  ({ shows, sizes, isMended, shape }) => {
    expect(shows).toMatch(shape);
    expect(isMended(read(shows, sizes).tree)).toBe(false);
  },
);
