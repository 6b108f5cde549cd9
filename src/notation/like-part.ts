/** "Same as body until round 3", "Work as for the head to Rnd 9.": the first rows of another part. */
import { rowsOfPart } from './rows-again.ts';
import type { Step } from './tree.ts';

const LIKE_PART =
  /^(?:work |make |crochet |follow |start )?(?:the same as|same as|as|like)(?: for)?(?: the)? ([a-z][a-z' -]{1,30}?)(?: pattern)?,? (?:until|to|through|thru|up to)(?: and including)?(?: the end of)? (?:round|rnd|row|r) ?(\d{1,3})\.?$/i;

/** Names of what stands nearby; which part is meant is not plain. */
const NEARBY =
  /\b(?:above|before|below|previous|other|first|last|pattern|this|these|set|established)\b/i;

/** Whether a line is nothing but such an order. */
export const isLikePart = (words: string): boolean => {
  const found = words.length < 90 ? LIKE_PART.exec(words.trim()) : null;
  return found !== null && !NEARBY.test(found[1] ?? '');
};

/** Puts the order in place of the words that were taken for talk. */
export function likePart(steps: Step[], words: string): void {
  if (steps.length === 0 || words.length > 90 || !isLikePart(words)) return;
  const [, part = '', last = '1'] = LIKE_PART.exec(words.trim()) ?? [];
  const span = { from: steps[0]?.from ?? 0, to: steps.at(-1)?.to ?? 0 };
  const rows = Array.from({ length: Number(last) }, (_, i) => i + 1);
  steps.splice(0, steps.length, rowsOfPart(rows, part, span));
}

/**
 * "*Ch 3, hdc in each st around, sl st to top of ch 3. Repeat from * for 5 rounds.": the star goes round
 * once in each of them.
 */
export function starOfRounds(
  steps: Step[],
  counts: readonly { readonly unit: string | null }[],
): void {
  const [star] = steps;
  if (steps.length !== 1 || star?.kind !== 'repeat' || star.mark !== '*') return;
  const goesRound = star.steps.some(
    (step) => step.kind === 'work' && (step.place?.until ?? step.until)?.kind === 'end',
  );
  if (goesRound && counts.some(({ unit }) => unit === 'row')) steps.splice(0, 1, ...star.steps);
}
