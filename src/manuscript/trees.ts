/** The trees of the instructions, read or taken from the former reading. */
import {
  type Instruction,
  readInstruction,
  type SpecialStitch,
  type Vocabulary,
} from '../notation/index.ts';
import type { Span } from '../source/index.ts';
import type { Chart, Head, Manuscript } from './manuscript.ts';
import { plainText } from './plain.ts';
import { spellingsOf } from './specials.ts';

export const vocabularyOf = (
  head: Head,
  specials: readonly SpecialStitch[],
  charts: readonly Chart[],
): Vocabulary => ({
  specials: spellingsOf(specials),
  sizes: head.sizes.length,
  charts: new Set(charts.map((chart) => chart.name)),
  yarns: new Set(head.yarns),
});

/**
 * A reader of instructions. A tree depends on its own words and on the vocabulary alone, and its
 * spans count from its start: the same words under the same vocabulary have the same tree.
 */
export function treeReader(
  text: string,
  known: Vocabulary,
  former: Manuscript | null,
): (span: Span) => Instruction {
  const had = former ? formerTrees(former, known) : null;
  if (!had) return ({ from, to }) => readInstruction(text, from, to, known);
  return ({ from, to }) => had.get(text.slice(from, to)) ?? readInstruction(text, from, to, known);
}

function formerTrees(former: Manuscript, known: Vocabulary): Map<string, Instruction> | null {
  const before = vocabularyOf(former.head, former.specials, former.charts);
  if (!sameVocabulary(before, known)) return null;
  const plain = plainText(former.text);
  const trees = new Map<string, Instruction>();
  for (const part of former.parts) {
    for (const { from, to, instruction } of part.instructions) {
      trees.set(plain.slice(from, to), instruction);
    }
  }
  return trees;
}

function sameVocabulary(a: Vocabulary, b: Vocabulary): boolean {
  return (
    a.sizes === b.sizes &&
    sameSet(a.charts, b.charts) &&
    sameSet(a.yarns, b.yarns) &&
    a.specials.size === b.specials.size &&
    [...a.specials].every(([spelling, key]) => b.specials.get(spelling) === key)
  );
}

const sameSet = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  a.size === b.size && [...a].every((item) => b.has(item));
