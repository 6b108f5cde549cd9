/** What of a row just worked the next one is told: its number, its count, whether it is a ring. */
import { isChainToldApart, startsCounted } from './compare-counts.ts';
import type { Fact } from './facts.ts';
import type { Hands } from './hands.ts';
import type { RowResult } from './row-setting.ts';
import { allSteps, type RowShape } from './shape.ts';
import type { Task } from './task.ts';

/** Understood, come out, and worked as often as the words say; rows to a length are worked once. */
export const isSureRow = ({ verdict }: RowResult, facts: readonly Fact[]): boolean =>
  (verdict === 'proven' || verdict === 'unstated') &&
  facts.every(({ kind }) => kind !== 'open-length');

/** "Work 40 sc evenly around the top", "40 hdc around": so many, whatever lies beneath. */
export function tellsItsNumber({ steps }: RowShape): boolean {
  const works = [...allSteps(steps)].filter(
    ({ kind }) => kind !== 'chain' && kind !== 'join' && kind !== 'turn' && kind !== 'remark',
  );
  const [work] = works;
  if (works.length !== 1 || work?.kind !== 'work') return false;
  const { stitch, n, place, alsoIn } = work;
  return stitch.shape === 'one' && !place && alsoIn.length === 0 && (n?.values[0] ?? 0) > 3;
}

/** "Shell in next sc", "V-st in next sp", where nothing says what such a stitch is made of. */
export const hasUnknownGroups = ({ steps }: RowShape): boolean =>
  [...allSteps(steps)].some(
    (step) =>
      step.kind === 'work' &&
      (step.stitch.shape === 'shell' || step.stitch.shape === 'v') &&
      step.stitch.special === null &&
      step.stitch.stem === null &&
      step.stitch.legs === null,
  );

/** The count that the next row may rather be worked on: stated, and not what was made. */
export function statedInstead(result: RowResult, task: Task, hands: Hands): number | null {
  const stated = hands.statedStitches;
  if (stated <= 0 || stated === result.tally.stitches) return null;
  if (hands.unread || hands.partly || result.edge.open) return stated;
  const differs = result.facts.some((f) => f.kind === 'count');
  if (!differs || task.asks.counts.length === 0) return null;
  // "(23 dc + ch 3)", where the chain counts: it is told beside the others.
  const isApart = startsCounted(result.tally) && isChainToldApart(hands, task.asks);
  return isApart ? stated + 1 : stated;
}

/** Is what was made closed to a ring? */
export function closes(result: RowResult, shape: RowShape, task: Task): boolean {
  if (shape.join || shape.spiral) return true;
  if (result.edge.kind === 'into') {
    const rowLike = task.instruction.label?.word === 'row' && !shape.goesRound;
    return !(shape.turnsAtEnd === true || (rowLike && result.turned));
  }
  if (result.edge.kind === 'foundation') {
    const inOnePlace = result.edge.n > 0 && result.used <= 1 && result.tally.stitches >= 4;
    return result.round || (inOnePlace && shape.turnsAtEnd !== true);
  }
  return result.edge.ring && result.round;
}
