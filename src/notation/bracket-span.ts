/** A bracket while it is being read. */
import type { Reader } from './reader.ts';

/** Tokens of the bracket that is being read; unclosed, it goes on to the end. */
export interface Bracket {
  readonly start: number;
  readonly close: number;
  readonly closed: boolean;
}

/** Puts the reader behind the bracket. */
export function leave(r: Reader, b: Bracket): void {
  r.at = b.closed ? b.close + 1 : b.close;
}
