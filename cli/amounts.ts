/** Numbers among the options, read with a word on what is wrong with them. */
import { InvalidArgumentError } from 'commander';

/** A whole number of boxes or rows from `least` on. */
export const boxes =
  (least: number) =>
  (words: string): number => {
    const n = Number(words);
    if (/^\d{1,5}$/.test(words) && n >= least) return n;
    throw new InvalidArgumentError(`It takes a whole number from ${least} on.`);
  };

/** A part from 0 to 1, as "0.5", ".5" or "50%". */
export function share(words: string): number {
  const [, digits, percent] = /^(\d*\.?\d+)(%?)$/.exec(words) ?? [];
  const n = Number(digits) / (percent ? 100 : 1);
  if (n >= 0 && n <= 1) return n;
  throw new InvalidArgumentError('It takes a part from 0 to 1, as 0.5 or 50%.');
}
