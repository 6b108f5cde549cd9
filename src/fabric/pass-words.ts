/**
 * Words that were not understood, in a row that comes out without them. Where they name neither a number nor
 * a stitch, nothing that is worked is missing: they are told in a note, and the row is judged by the rest of its
 * words. A row that states no count shows less, so there every one of them must be a word of talk.
 */
import { fact, type Hands, spanAt } from './hands.ts';
import { allSteps, type RowShape } from './shape.ts';

/** `agrees`: the row states counts, and all of them are met. */
export function passWords(hands: Hands, { steps }: RowShape, agrees: boolean): void {
  const { edge } = hands;
  if (edge.kind !== 'row' && edge.kind !== 'foundation') return;
  if (hands.used === 0 || hands.nodes.n === hands.rowFrom) return;
  const unread = [...allSteps(steps)].filter((step) => step.kind === 'unread');
  const says = (step: (typeof unread)[number]): boolean =>
    step.says === 'nothing' || (agrees && step.says === 'no number');
  if (unread.length === 0 || !unread.every(says)) return;
  hands.unread = false;
  hands.facts = hands.facts.filter(({ kind }) => kind !== 'unread');
  for (const step of unread) fact(hands, { kind: 'words-passed', agrees, ...spanAt(hands, step) });
}
