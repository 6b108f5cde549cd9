/**
 * Shapes that a line may begin with. Such a shape is asked of every line, and its first letter refuses
 * nearly all of them before a regular expression or a copy of the text is needed.
 */
export interface Opening {
  /** By the code of the first sign, both cases: 1 where the shape may begin so. */
  readonly first: Uint8Array;
  readonly shape: RegExp;
  /** No more signs than this are looked at. */
  readonly most: number;
}

const ASCII = 128;

/**
 * `first`: every sign that `shape`, which is anchored, can begin with, letters in small; signs beyond ASCII
 * are always let through.
 */
export function opening(first: string, most: number, shape: RegExp): Opening {
  const table = new Uint8Array(ASCII);
  for (const sign of first + first.toUpperCase()) table[sign.charCodeAt(0)] = 1;
  return { first: table, shape, most };
}

/** Whether the text from `from` on, and no farther than `to`, begins so. */
export function opensAs(
  { first, shape, most }: Opening,
  text: string,
  from: number,
  to: number,
): boolean {
  const code = text.charCodeAt(from);
  if (code < ASCII && first[code] === 0) return false;
  return shape.test(text.slice(from, Math.min(to, from + most)));
}

export const DIGITS = '0123456789';
export const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
