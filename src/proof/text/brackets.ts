/** Brackets without a partner, told from the text of a row. */
import { type Finding, nestingTooDeep, unbalancedBracket } from '../../finding/index.ts';
import type { Span } from '../../source/index.ts';
import type { Scene } from '../scene.ts';
import { instructionsOf, type Placed, rowIds } from './rows.ts';

/** Brackets within brackets that are followed; deeper ones nobody reads either. */
const MOST_DEPTH = 64;

const PARTNER: Readonly<Record<string, string>> = { ')': '(', ']': '[', '}': '{' };

interface Lone extends Span {
  readonly bracket: string;
}

/** One a row: what follows from the first is no news. */
export function brackets(scene: Scene): Finding[] {
  const rows = [...instructionsOf(scene)].map((row) => ({ row, ...bracketsIn(scene, row) }));
  return rows.flatMap(({ row, lone, deepest }, i) => {
    if (deepest.depth > MOST_DEPTH) {
      const words = { depth: deepest.depth, limit: MOST_DEPTH };
      return [nestingTooDeep(deepest, words, { rows: rowIds(scene, row) })];
    }
    const [first] = lone;
    if (!first || isSplit(lone, rows[i + 1]?.lone, rows[i - 1]?.lone)) return [];
    return [unbalancedBracket(first, { bracket: first.bracket }, { rows: rowIds(scene, row) })];
  });
}

/** A bracket that opens in one order and closes in the next was cut by the line between them. */
function isSplit(
  lone: readonly Lone[],
  after: readonly Lone[] | undefined,
  before: readonly Lone[] | undefined,
): boolean {
  const own = lone[0]?.bracket ?? '';
  const opens = !(own in PARTNER);
  const other = (opens ? after : before)?.[0]?.bracket ?? '';
  return opens ? PARTNER[other] === own : PARTNER[own] === other;
}

function bracketsIn(
  { manuscript }: Scene,
  { placed }: Placed,
): { readonly lone: Lone[]; readonly deepest: Span & { depth: number } } {
  const start = placed.from + (placed.instruction.label?.to ?? 0);
  const words = manuscript.text.slice(start, placed.to);
  const open: Lone[] = [];
  const lone: Lone[] = [];
  let deepest = { depth: 0, from: start, to: start };
  for (const { 0: bracket, index } of words.matchAll(/[()[\]{}]/g)) {
    const span = { bracket, from: start + index, to: start + index + 1 };
    const partner = PARTNER[bracket];
    if (partner === undefined) {
      open.push(span);
      if (open.length > deepest.depth) deepest = { ...span, depth: open.length };
    }
    if (partner === undefined) continue;
    if (open.at(-1)?.bracket === partner) open.pop();
    else if (!isNoBracket(words, index)) lone.push(span);
  }
  return { lone: [...open, ...lone].sort((a, b) => a.from - b.from), deepest };
}

/** "4)" and "4.)" at the head of an order and ":)" after a remark are no closing brackets. */
function isNoBracket(words: string, at: number): boolean {
  const before = words.slice(0, at);
  return /^\s*(?:\w{0,6}\s?)?\d{0,3}[a-z]?\.?$/i.test(before) || /[:;]-?$/.test(before);
}
