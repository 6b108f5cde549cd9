/** Instructions one after the other, and what is asked of them again and again. */
import type { PlacedInstruction } from '../../manuscript/index.ts';
import type { Step } from '../../notation/index.ts';
import type { Span } from '../../source/index.ts';
import { firstWords, labelName } from '../names.ts';
import { type Scene, wordsAt } from '../scene.ts';

export interface Placed {
  readonly placed: PlacedInstruction;
  readonly partIndex: number;
  /** Index within its part. */
  readonly index: number;
}

export function* instructionsOf({ manuscript }: Scene): Generator<Placed> {
  for (const [partIndex, part] of manuscript.parts.entries()) {
    for (const [index, placed] of part.instructions.entries()) yield { placed, partIndex, index };
  }
}

/** Whether rows are for some sizes only, as their label or the heading above them says. */
export const isForSizes = ({ placed }: Pick<Placed, 'placed'>): boolean =>
  placed.sizes !== '' || (placed.instruction.label?.sizes ?? '') !== '';

/** Adds to the list under a key. */
export function append<T>(lists: Map<string, T[]>, key: string, item: T): void {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** Every step, inner ones after the one that holds them. */
export function* stepsIn(steps: readonly Step[]): Generator<Step> {
  for (const step of steps) {
    yield step;
    if (step.kind === 'group' || step.kind === 'repeat') yield* stepsIn(step.steps);
    if (step.kind === 'repeat' && step.ending && 'steps' in step.ending) {
      yield* stepsIn(step.ending.steps);
    }
  }
}

export const absolute = ({ from }: PlacedInstruction, span: Span): Span => ({
  from: from + span.from,
  to: from + span.to,
});

/** "round 4", or the first words of an order without a label. */
export function nameOf(scene: Scene, placed: PlacedInstruction): string {
  const { label } = placed.instruction;
  return label ? labelName(label, label.numbers[0]) : `"${firstWords(wordsAt(scene, placed))}"`;
}

/** The label's words, or the row's first. */
export function labelSpan(placed: PlacedInstruction): Span {
  const { label } = placed.instruction;
  if (label && label.to > label.from) return absolute(placed, label);
  return { from: placed.from, to: placed.to };
}

/** Ids of the rows that an instruction was worked as. */
export const rowIds = ({ ids }: Scene, { partIndex, index }: Placed): string[] => [
  ...(ids.get(partIndex)?.get(index) ?? []),
];
