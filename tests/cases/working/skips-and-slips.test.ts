/** A skip without its number, places in other words, and rows that lean on what was not followed. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, worked } from './worked.ts';

describe('a skip without a number passes one', () => {
  for (const words of ['*sc, ch, sk* around', '*sc in next st, ch 1, sk; rep from * around']) {
    it(words, () => {
      const text = (n: number): string =>
        `US terms\n\nRnd 1: 12 sc in a magic ring. (12)\nRnd 2: ${words}. (${n} sc)\n`;
      expect(worked(text(6), 'Rnd 2')).toEqual(['Rnd 2 6 proven']);
      expect(complaints(text(7))).not.toEqual([]);
    });
  }
});

describe('places in other words', () => {
  it('the first available stitch is the first', () => {
    const text =
      'US terms\n\nRnd 1: 12 sc in a magic ring. (12)\nRnd 2: Sc in first available st and in next 3, 2 sc in next st, sc in next 7. (13)\n';
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 13 proven']);
  });
  it('"each if next" is "each of next"', () => {
    const text =
      'US terms\n\nCh 5.\nRow 1: Sc in 2nd ch from hook, hdc in each if next 2 ch, sc in next ch. (4)\n';
    expect(worked(text, 'Row 1')).toEqual(['Row 1 4 proven']);
  });
});

describe('a row is no mismatch where no finding says so', () => {
  it('though it tells how many more there are', () => {
    const text =
      'US terms\n\nRnd 1: 13 sc in a magic ring.\nRnd 2: Working in flo *sc, ch 5, sc in 2nd ch from hook, hdc in next 3 ch, sc in sc from beg*. Repeat from * to * around for a total of 13 petals. Ch 1, turn.\nRnd 3: Working in flo of sc from round 1, *sl st, ch 6, sc*. Repeat from * to * around for a total of 13 more petals.\n';
    const { rows, findings } = compile(text, { fixes: false });
    const told = findings.some(({ severity }) => severity === 'error');
    expect(rows.some(({ verdict }) => verdict === 'mismatch')).toBe(told);
  });
});
