/** Lists of numbers with another length than the list of sizes. */
import { type Finding, sizesLengths } from '../../finding/index.ts';
import type { Instruction, Numbers } from '../../notation/index.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, type Placed, rowIds } from './rows.ts';

export function sizeLists(scene: Scene): Finding[] {
  const sizes = scene.manuscript.head.sizes.length;
  return oddOnes(scene).map(({ row, numbers }) => {
    const at = absolute(row.placed, numbers);
    return sizesLengths(at, { has: numbers.values.length, sizes }, { rows: rowIds(scene, row) });
  });
}

/** Where they stand, as "part instruction": what is worked from them says nothing. */
export const oddLists = (scene: Scene): ReadonlySet<string> =>
  new Set(oddOnes(scene).map(({ row }) => `${row.partIndex} ${row.index}`));

function oddOnes(scene: Scene): { row: Placed; numbers: Numbers }[] {
  const { head } = scene.manuscript;
  const sizes = head.sizes.length;
  if (sizes < 2) return [];
  const lists = [...instructionsOf(scene)].flatMap((row) => {
    const chain = chainList(row.placed.instruction, sizes);
    const all = chain
      ? [chain]
      : [...numbersIn(row.placed.instruction), ...bracketsBehind(scene, row)];
    return all.map((numbers) => ({ row, numbers }));
  });
  const long = lists.filter(({ numbers }) => numbers.values.length > 1);
  const odd = long.filter(({ numbers }) => numbers.values.length !== sizes);
  // Sizes that no line names were told from the first list: others must bear it out.
  return isGuess(head.sizes) && long.length - odd.length < 3 * odd.length ? [] : odd;
}

/**
 * "Ch 21 (25)." where there are three sizes: a number and a bracket that looks like a count. What a
 * bare chain makes is not counted, so the two are a list.
 */
export function chainList({ label, steps, counts }: Instruction, sizes: number): Numbers | null {
  const chain = steps.length === 1 ? steps[0] : undefined;
  const [count] = counts;
  if (label || sizes < 2 || chain?.kind !== 'chain' || !chain.n || !count) return null;
  const bare = count.unit === null || (count.unit === 'chain' && count.word === '');
  if (!bare || chain.n.values.length > 1) return null;
  return { from: chain.n.from, to: count.to, values: [...chain.n.values, ...count.n.values] };
}

/** "Sc in next 10 (12), sc2tog" where there are three sizes: a bracket right behind a number is no count. */
function bracketsBehind({ manuscript }: Scene, { placed }: Placed): Numbers[] {
  const { steps } = placed.instruction;
  return steps.flatMap((step, i) => {
    const before = steps[i - 1];
    if (step.kind !== 'remark' || before?.kind !== 'work') return [];
    const words = manuscript.text.slice(placed.from + before.from, placed.from + step.to + 1);
    const list = /\b(\d+) ?[([](\d+(?:[,/ -]+\d+)*)[)\]]$/.exec(words);
    if (!list) return [];
    const from = before.from + list.index;
    const values = [list[1], ...(list[2] ?? '').split(/\D+/)].map(Number);
    return [{ from, to: from + list[0].length, values }];
  });
}

const isGuess = (sizes: readonly string[]): boolean =>
  sizes.every((size, i) => size === `size ${i + 1}`);

/** Every list of numbers in a tree, in the order of the text, each once. */
function numbersIn(tree: unknown): Numbers[] {
  const found = new Map<string, Numbers>();
  const search = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (isNumbers(value)) found.set(`${value.from} ${value.to}`, value);
    else for (const inner of Object.values(value)) search(inner);
  };
  search(tree);
  return [...found.values()].sort((a, b) => a.from - b.from);
}

const isNumbers = (value: object): value is Numbers =>
  'values' in value && Array.isArray(value.values) && 'from' in value;
