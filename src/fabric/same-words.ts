/**
 * Words that hang on their own wording ("skip st" behind a start chain, "dc between dc") are read row by
 * row, as the count asks. A designer who writes the same words again means the same: a row whose count
 * is met only in another reading than a proven row before it is told.
 */
import type { Attempted } from './attempt.ts';
import type { Fact } from './facts.ts';

/** Readings of local doubts in proven rows so far, by doubt and words. */
export type Worded = Map<string, string>;

/** Facts of a row that reads the same words otherwise; what is read in it for the first time is noted. */
export function readOtherwise(
  worded: Worded,
  { asked, exceptions, result }: Attempted,
  text: string,
): Fact[] {
  if (result.verdict !== 'proven') return [];
  const facts: Fact[] = [];
  for (const question of asked) {
    if (!question.local) continue;
    const { doubt, from, to } = question;
    const exception = exceptions.find((one) => one.asked.doubt === doubt);
    const here = exception?.reading ?? question.reading;
    const key = `${doubt}: ${text.slice(from, to).toLowerCase().replace(/\s+/g, ' ')}`;
    const usual = worded.get(key);
    if (usual === undefined) worded.set(key, here);
    else if (usual !== here) facts.push({ kind: 'reading', doubt, here, usual, from, to });
  }
  return facts;
}
