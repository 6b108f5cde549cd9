// A foundation behind the materials, a list behind the work: all on one line, as scans leave it. Invented.
import { describe, expect, test } from 'vitest';
import { instructions, read } from './read.ts';

describe('run-on lines', () => {
  test('the chain behind the materials opens the work', () => {
    const text = 'Kettle mat. One ball of string, hook No. 4. Ch 12. Row 1: sc in 2nd ch from hook. Row 2: sc.';
    expect(instructions(text)).toEqual(['Ch 12.', 'Row 1: sc in 2nd ch from hook.', 'Row 2: sc.']);
  });
  test('a list of abbreviations ends the work', () => {
    const text = 'Ch 9.\nRow 1: sc in 2nd ch from hook. Row 2: sc, fasten off. ABBREVIATIONS: ch = chain sc = single crochet';
    expect(instructions(text).at(-1)).toBe('Row 2: sc, fasten off.');
  });
  test('a statement of terms is no work', () => {
    const text = 'Robin, UK terms, 3 mm hook. 2dc in next = increase.\n\nRnd 1: 6dc in magic loop.';
    expect(instructions(text)).toEqual(['Rnd 1: 6dc in magic loop.']);
    expect(read(text).terms.terms).toBe('UK');
  });
  test('a translating bracket with its number is no foreign word', () => {
    const text = 'Written in UK terms.\n\nRnd 1: 6dc [6sc] in ring.\nRnd 2: 2tr [2dc] in each st.';
    expect(read(text).terms.against).toEqual([]);
  });
});
