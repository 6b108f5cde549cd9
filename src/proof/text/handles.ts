/** Two chains over gaps in one round that look like a pair and are not equally long. */
import { numberIn } from '../../fabric/index.ts';
import { type Finding, handlesUnequal } from '../../finding/index.ts';
import type { ChainStep, Instruction } from '../../notation/index.ts';
import type { Scene } from '../scene.ts';
import { absolute, instructionsOf, rowIds } from './rows.ts';

/** Shorter chains are lace, buttonholes, thumb slits. */
const SHORTEST = 10;
/** Chains that differ by more are no pair: a strap and a loop. */
const MOST_APART = 0.2;

const ON_PURPOSE =
  /unequal|different lengths?|differ on purpose|(?:longer|shorter) (?:handle|strap|one|than)/i;

export interface Opening {
  readonly chain: ChainStep;
  readonly length: number;
  readonly over: number | null;
}

export function handles(scene: Scene): Finding[] {
  if (ON_PURPOSE.test(scene.manuscript.text)) return [];
  return [...instructionsOf(scene)].flatMap((row) => {
    const openings = openingsOf(row.placed.instruction);
    const [first, second] = openings;
    if (openings.length !== 2 || !first || !second) return [];
    const apart = Math.abs(first.length - second.length);
    if (apart === 0 || apart > MOST_APART * Math.max(first.length, second.length)) return [];
    const sum = `Over gaps of ${first.over ?? '?'} and ${second.over ?? '?'} stitches.`;
    return [
      handlesUnequal(
        absolute(row.placed, second.chain),
        { first: first.length, second: second.length },
        {
          sum,
          labels: [{ ...absolute(row.placed, first.chain), text: 'the first' }],
          rows: rowIds(scene, row),
        },
      ),
    ];
  });
}

/** "Ch 50, sk next 18 sts", at the top of the row. */
export function openingsOf({ steps }: Instruction): Opening[] {
  return steps.flatMap((step, i) => {
    const next = steps[i + 1];
    if (step.kind !== 'chain' || next?.kind !== 'skip') return [];
    const length = numberIn(step.n, 0);
    if (length === null || length < SHORTEST) return [];
    return [{ chain: step, length, over: numberIn(next.place.n, 0) }];
  });
}
