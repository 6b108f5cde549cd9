/**
 * "Size S: Ch 21. Size M: Ch 25. Size L: Ch 29." before the rows of all: a foundation for each size, told one
 * after the other. As one chain with a number for each size it is what "Ch 21 (25, 29)" is.
 */
import type { ChainStep, Instruction, Step } from '../notation/index.ts';
import { sizesNamed } from './sizes-named.ts';

/** The instruction, its chains made one where each of them is of another size; else as it is. */
export function chainsOfSizes(
  text: string,
  from: number,
  instruction: Instruction,
  sizes: readonly string[],
): Instruction {
  const { steps } = instruction;
  const chains = steps.filter(isPlainChain);
  if (sizes.length < 2 || chains.length !== sizes.length) return instruction;
  if (!steps.every((step) => isPlainChain(step) || step.kind === 'remark')) return instruction;
  const wordsBefore = chains.map((chain, i) =>
    text.slice(from + (chains[i - 1]?.to ?? 0), from + chain.from),
  );
  const wordsBehind = chains.map((chain, i) =>
    text.slice(from + chain.to, from + (chains[i + 1]?.from ?? steps.at(-1)?.to ?? chain.to)),
  );
  const owners = ownersIn(wordsBefore, sizes) ?? ownersIn(wordsBehind, sizes);
  const [first, last] = [chains[0], chains.at(-1)];
  if (!owners || !first || !last) return instruction;
  const values = sizes.map((_, size) => chains[owners.indexOf(size)]?.n?.values[0] ?? null);
  const n = { values, from: first.n?.from ?? first.from, to: last.n?.to ?? last.to };
  return { ...instruction, label: null, steps: [{ ...first, n, to: last.to }] };
}

const isPlainChain = (step: Step): step is ChainStep =>
  step.kind === 'chain' && step.n?.values.length === 1 && !step.open && step.countsAs === null;

/** Which size each of the words names; `null` where one names none or several, or two the same. */
function ownersIn(words: readonly string[], sizes: readonly string[]): readonly number[] | null {
  const owners = words.flatMap((said) => {
    const named = sizesNamed(said, sizes);
    return named.filter(Boolean).length === 1 ? [named.indexOf(true)] : [];
  });
  return new Set(owners).size === sizes.length && owners.length === sizes.length ? owners : null;
}
