/** Rows told by another part, and rounds told by one star. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

describe('the first rows of another part', () => {
  const head =
    'US terms\n\nHead\nRnd 1: 6 sc in a magic ring. (6)\nRnd 2: Inc around. (12)\nRnd 3: (Sc, inc) x 6. (18)\nRnd 4: (2 sc, inc) x 6. (24)\n\n';
  for (const words of [
    'Same as head until round 3',
    'Work as for the head to Rnd 3.',
    'Make the same as head up to round 3',
  ]) {
    it(words, () => {
      const text = (n: number): string => `${head}Arm\n${words}\nRnd 4: Sc around. (${n})\n`;
      expect(made(text(18))).toEqual([6, 12, 18, 24, 6, 12, 18, 18]);
      expect(complaints(text(18))).toEqual([]);
      expect(complaints(text(19))).toEqual(['11 count-mismatch']);
    });
  }
  it('of what stands above, nobody knows which part that is', () => {
    const text = `${head}Arm\nSame as above until round 3\n`;
    expect(complaints(text)).toEqual([]);
  });
});

describe('a star that goes all the way is a round each time', () => {
  it('"*Ch 1, sc in each st around, join. Repeat from * for 5 rounds."', () => {
    const text =
      'US terms\n\nRnd 1: 6 sc in a magic ring. (6)\nRnd 2: Inc around. (12)\n\n*Ch 1, sc in each st around, sl st in first sc. Repeat from * for 5 rounds.\n\nRnd 8: Sc around. (12)\n';
    expect(made(text)).toEqual([6, 12, 12, 12, 12, 12, 12, 12]);
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 8')).toEqual(['Rnd 8 12 proven']);
  });
});
