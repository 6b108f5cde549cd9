// Words that were mistyped, glued or scanned badly, read where the ordinary reading leaves them over.
// Examples are invented; the kinds of slip are those met in pasted text (survey, and common practice).
import { describe, expect, test } from 'vitest';
import { NO_VOCABULARY, readInstruction, startsInstruction } from '../../../src/notation/index.ts';
import { gluedWords, nearWord } from '../../../src/notation/near-words.ts';
import { tree } from './shown.ts';

const slipsOf = (text: string): string[] =>
  readInstruction(text, 0, text.length, NO_VOCABULARY).slips.map(
    ({ from, to, reading }) => `${text.slice(from, to)} = ${reading}`,
  );

describe('a row with slips reads as the row without', () => {
  test.each([
    ['Row 3: sc in eahc st aroudn.', 'Row 3: sc in each st around.', ['eahc = each', 'aroudn = around']],
    ['Row 3: 2 tripple crochet in next stich, dc in rest.', 'Row 3: 2 triple crochet in next stitch, dc in rest.', ['tripple = triple']],
    ['Row 3: dc innext st, ch 2, dc intonext sp.', 'Row 3: dc in next st, ch 2, dc into next sp.', ['innext = in next', 'intonext = into next']],
    ['Row 3: I s c in each s c across, ch l, turn.', 'Row 3: 1 s c in each s c across, ch 1, turn.', ['I = 1', 'l = 1']],
    ['Row 3: 1 de in each dc, Cn 3, tum.', 'Row 3: 1 dc in each dc, ch 3, turn.', ['de = dc', 'Cn = ch', 'tum = turn']],
    ['Rwo 3: sc in each st across.', 'Row 3: sc in each st across.', ['Rwo = row']],
    ['Rouonds 3-5: sc around.', 'Rounds 3-5: sc around.', ['Rouonds = rounds']],
  ])('%s', (written, meant, slips) => {
    expect(tree(written)).toBe(tree(meant));
    expect(slipsOf(written)).toEqual(slips);
    expect(slipsOf(meant)).toEqual([]);
  });

  test('two words of which the second has its capital lost no more than the blank', () => {
    expect(tree('2nd RowCh 3, dc in each st.')).toBe(tree('2nd Row Ch 3, dc in each st.'));
    expect(tree('4th RndSl st in next sp, ch 1.')).toBe(tree('4th Rnd Sl st in next sp, ch 1.'));
    expect(slipsOf('2nd RowCh 3, dc in each st.')).toEqual([]);
  });

  test('a command may begin with a slip', () => {
    const starts = (text: string) => startsInstruction(text, 0, text.length);
    expect(starts('Chian 24.')).toBe('command');
    expect(starts('Chair 24 is taken.')).toBe(null);
  });
});

describe('what is never guessed', () => {
  test.each(['sx', 'dx', 'tx', 'ds', 'hc', 'sr', 'fuor', 'thre', 'tow'])('%s', (word) => {
    expect(nearWord(word)).toBe(null);
    expect(slipsOf(`Row 3: 2 ${word} in next st, ${word} across.`)).toEqual([]);
  });

  test.each(['chin', 'tremble', 'cross', 'ground', 'shelf', 'spring', 'string', 'trend'])(
    'an English word of its own: %s',
    (word) => {
      expect(nearWord(word)).toBe(null);
      expect(gluedWords(word)).toBe(null);
    },
  );

  test('a letter "I" of somebody who tells what she did', () => {
    expect(slipsOf('Row 3: I chain 3 here, sc in each st.')).toEqual([]);
    expect(slipsOf('Row 3: sc in each st. I like blue.')).toEqual([]);
  });

  test('a name of the pattern’s own', () => {
    const yarns = new Set(['Singel']);
    const text = 'Row 3: With Singel, sc in each st.';
    expect(readInstruction(text, 0, text.length, { ...NO_VOCABULARY, yarns }).slips).toEqual([]);
  });
});
