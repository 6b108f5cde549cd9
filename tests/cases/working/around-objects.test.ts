/** Bands, hoops and rings that are worked round as a ring of yarn is. */
import { describe, expect, it } from 'vitest';
import { complaints, conventions, worked } from './worked.ts';

describe('so many stitches around a thing are the first round', () => {
  for (const words of [
    'Join yarn to elastic hairtie with a sl st, ch 1, work 40 sc around the hairtie, join with sl st to the first sc',
    'Work 40 sc around elastic hair band, join',
    '40 sc in a plastic ring, sl st in first sc',
    'Work a total of 40 sc around the wooden hoop, join',
  ]) {
    it(words, () => {
      const text = (n: number): string =>
        `US terms\n\nRnd 1: ${words}.\nRnd 2: Ch 3, skip next sc, sc in next sc, (ch 3, skip next sc, sc in next sc) around. (${n} ch-3 loops)\n`;
      expect(worked(text(20), 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 40 unstated', 'Rnd 2 20 proven']);
      expect(complaints(text(21))).not.toEqual([]);
      expect(conventions(text(20)).join()).not.toContain('magic ring');
    });
  }
  it('but a band that was crocheted is no ring', () => {
    const text =
      'US terms\n\nBand\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)\n\nEdge\nRnd 1: 20 sc around band.\n';
    expect(complaints(text)).toEqual([]);
  });
});
