/**
 * "Row 4: Sc in each st across. (20)" and below it "Take one away on every third row until …": an order behind the
 * count that closes a row, in a sentence of its own. Where it is not understood it is read by itself, so that the
 * row is judged by its own words.
 */
import type { Instruction, Step } from '../notation/index.ts';
import type { Span } from '../source/index.ts';

/** Where the order behind the row begins; `null` where nothing is to be parted. `read`: the tree of a stretch. */
export function tailOf(
  text: string,
  { from, to }: Span,
  { label, steps, counts }: Instruction,
  read: (span: Span) => Instruction,
): number | null {
  if (label === null) return null;
  const unread = steps.find((step) => isOrder(step) || isAgain(text, from, step));
  if (!unread) return null;
  const last = from + unread.from;
  const count = counts.findLast((stated) => stated.to <= unread.from);
  const behind = count ? sentenceBehind(text, from + count.to, last) : null;
  // Talk behind it may have hidden the count.
  for (const at of behind === null ? linesBehind(text, { from, to }, last) : [behind]) {
    const row = read({ from, to: at });
    const works = row.steps.some(({ kind }) => WORKS.has(kind));
    if (works && row.counts.length > 0 && !row.steps.some(isUnread)) return at;
  }
  return null;
}

const WORKS: ReadonlySet<Step['kind']> = new Set<Step['kind']>(['work', 'group', 'repeat', 'even']);

const isUnread = ({ kind }: Step): boolean => kind === 'unread';

/** Words that were not understood and may order work: no talk. */
const isOrder = (step: Step): boolean => step.kind === 'unread' && step.says === 'work';

/** "Repeat this way, growing by one on every third row." on a line of its own, taken for talk. */
const isAgain = (text: string, base: number, { kind, from, to }: Step): boolean =>
  kind === 'remark' &&
  /\n\s*$/.test(text.slice(base, base + from)) &&
  AGAIN.test(text.slice(base + from, base + to));

const AGAIN =
  /^(?:rep(?:eat)?|increas(?:e|ing)|decreas(?:e|ing))\b.*\b(?:every|each|rows?|rounds?|until)\b/i;

/** The tree of such an order: what sounds like work was not understood, whatever else it may be. */
export function asOrder(text: string, base: number, instruction: Instruction): Instruction {
  const steps = instruction.steps.map(
    (step, i): Step =>
      step.kind === 'remark' && i === 0 && AGAIN.test(text.slice(base + step.from, base + step.to))
        ? { kind: 'unread', says: 'work', from: step.from, to: step.to }
        : step,
  );
  return { ...instruction, steps };
}

/** The first sentence that begins behind the count and no further on than `last`. */
function sentenceBehind(text: string, from: number, last: number): number | null {
  let at = from;
  while (/[\s.,;:)\]}"'”*–-]/.test(text[at] ?? 'x')) at++;
  return at <= last && /\p{Lu}/u.test(text[at] ?? '') ? at : null;
}

/** Lines of the row that begin with a capital below one that ends with a count, up to `last`. */
function linesBehind(text: string, { from, to }: Span, last: number): number[] {
  const words = text.slice(from, Math.min(to, last + 1));
  return [...words.matchAll(BELOW_COUNT)].map(({ index, 0: found }) => from + index + found.length);
}

const BELOW_COUNT = /[([]\d{1,4} ?\p{L}{0,12}[)\]][.;]?[ \t]*\r?\n\s*(?=\p{Lu})/gu;
