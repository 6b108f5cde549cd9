/**
 * The yarn that a row is asked for in: by its label, "Row 3 (B)", or beside the rows that it repeats,
 * "Rows 4-5: As rows 2-3 in B".
 */
import type { Instruction, YarnStep } from '../notation/index.ts';
import { type Hands, takeYarnNamed } from './hands.ts';
import type { Task } from './task.ts';

/**
 * Takes up that yarn, and gives the task back as it is to be worked: a row repeated in another yarn does
 * not begin with its own.
 */
export function withItsYarn(hands: Hands, task: Task): Task {
  const { asks, instruction } = task;
  takeYarnNamed(hands, asks.label?.yarn ?? instruction.label?.yarn ?? null);
  const said = asks === instruction ? null : yarnOfAll(asks);
  if (said === null) return task;
  takeYarnNamed(hands, said.yarn);
  const [first, ...rest] = instruction.steps;
  if (first?.kind !== 'yarn' || first.act !== 'with') return task;
  return { ...task, instruction: { ...instruction, steps: rest } };
}

/** Once the rows are done that it asks for: "Rep rows 2-3. Change to A." */
export function changeBehind(hands: Hands, { steps }: Instruction): void {
  const again = steps.findIndex(isAgain);
  if (again < 0) return;
  takeYarnNamed(hands, steps.slice(again).find(isChange)?.yarn ?? null);
}

/** Named before the rows or with them; a change behind them comes when they are done. */
function yarnOfAll({ steps }: Instruction): YarnStep | null {
  const again = steps.findIndex(isAgain);
  if (again < 0) return null;
  const found = steps.find((step, at) => isTaken(step) || (at < again && isChange(step)));
  return found?.kind === 'yarn' ? found : null;
}

const isAgain = ({ kind }: Instruction['steps'][number]): boolean => kind === 'rows-again';
const isTaken = (step: Instruction['steps'][number]): step is YarnStep =>
  step.kind === 'yarn' && step.act === 'with';
const isChange = (step: Instruction['steps'][number]): step is YarnStep =>
  step.kind === 'yarn' && step.act === 'change';
