/**
 * Some senses of words. Such a set is asked at nearly every word, so it is a column with a place for
 * each sense instead of a table of hashes.
 */
import { W } from './senses.ts';

const SIZE = 1 + Math.max(...Object.values(W));

export class SenseSet {
  private readonly column: Uint8Array = new Uint8Array(SIZE);

  constructor(senses: readonly number[]) {
    for (const sense of senses) this.column[sense] = 1;
  }

  /** `sense` may be any, and -1 where no word stands. */
  has(sense: number): boolean {
    return sense > 0 && sense < SIZE && this.column[sense] === 1;
  }
}
