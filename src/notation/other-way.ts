/** Another way to do the same: "OR ch 2, 8 sc in 2nd ch from hook", "or enough to measure 28 cm". */
import { clauseEnds, isOneOf, isWord, kindAt, type Reader, wordsOf } from './reader.ts';
import { putWords, type Run } from './run.ts';
import { W } from './senses.ts';
import { T } from './tokens.ts';

/** "8 sc in magic ring OR ch 2, 8 sc in 2nd ch from hook": the same beginning, told another way. */
export const otherBeginning = (r: Reader, run: Run): boolean =>
  isWord(r, W.ch, 1) &&
  run.out.some(
    (step) =>
      step.kind === 'work' && (step.stitch.foundation || step.place?.nouns[0]?.kind === 'ring'),
  );

/** All behind this word, up to the end of its clause. */
export function passClause(r: Reader, run: Run): void {
  const start = ++r.at;
  while (!clauseEnds(r)) r.at++;
  putWords(r, run, start, 'remark');
}

/** "Ch 42, or enough to measure 28 cm", "ch 30 or as long as you wish": the number stands before. */
export const asLongAs = (r: Reader, run: Run): boolean =>
  run.out.at(-1)?.kind === 'chain' && isOneOf(r, LONG_ENOUGH, 1);

const LONG_ENOUGH = wordsOf('enough as any until desired whatever however more length long');

/** All up to the full stop, or the count. */
export function passSentence(r: Reader, run: Run): void {
  const start = r.at;
  while (kindAt(r) !== T.end && kindAt(r) !== T.stop && kindAt(r) !== T.open) r.at++;
  putWords(r, run, start, 'remark');
}
