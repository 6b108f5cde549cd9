/** One instruction in house form: "Rnd 4: Ch 1, 2 sc in next st, …; join. (36 sc)". */
import type { Instruction, StandingOrder, Step } from '../tree.ts';
import { writeCounts } from './counts.ts';
import { writeLabel } from './label.ts';
import { sentence, voiceOf, writeRow } from './list.ts';
import { orderWords } from './orders.ts';
import type { Voice, WriteOptions } from './voice.ts';

/**
 * Prints a tree so that reading it again gives the same tree in meaning: label, steps, standing
 * orders, counts, in this order whatever the order in the source. Stitch words go from the terms
 * `from` to the terms `to`; words that those terms do not know stay as they are.
 */
export function writeInstruction(instruction: Instruction, options: WriteOptions): string {
  const voice = voiceFor(instruction, options);
  const label = instruction.label === null ? '' : writeLabel(instruction.label, voice);
  const row = sentence(writeRow(instruction.steps, voice));
  const orders = unsaid(instruction).map((order) => sentence(orderWords(order, voice)));
  const counts = writeCounts(instruction.counts, voice).trim();
  return [label, row, ...orders, counts].filter((words) => words !== '').join(' ');
}

const voiceFor = (instruction: Instruction, options: WriteOptions): Voice =>
  voiceOf({ ...options, course: courseOf(instruction, options) });

/** Without a label ("Rep last 2 rnds 3 more times") the words themselves tell rounds from rows. */
function courseOf({ label, steps }: Instruction, { quote }: WriteOptions): 'row' | 'rnd' {
  if (label !== null && label.word !== '') return label.word === 'round' ? 'rnd' : 'row';
  const isRound = (step: Step): boolean => /\b(?:rounds?|rnds?|rds?)\b/i.test(quote?.(step) ?? '');
  return steps.some(isRound) ? 'rnd' : 'row';
}

/** Orders that no step says already: "(counts as dc here and throughout)" stands beside its chain. */
const unsaid = (instruction: Instruction): readonly StandingOrder[] =>
  instruction.orders.filter((order) => !instruction.steps.some((step) => says(step, order)));

const says = (step: Step, order: StandingOrder): boolean =>
  order.kind === 'start-chain' && 'countsAs' in step && step.countsAs?.throughout === true;
