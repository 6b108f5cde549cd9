// Widths against Unicode Standard Annex 11 (East Asian Width: W and F take two cells, the others one)
// and Technical Standard 51 (emoji are wide; joined ones show as one). Signs picked from memory of
// their tables.
import { expect, test } from 'vitest';
import { printableText, widthOf } from '../../src/finding/index.ts';

test.each([
  ['sc in next st', 13],
  ['é', 1],
  ['e\u0301', 1],
  ['細編み', 6],
  ['한코', 4],
  ['ＡＢ', 4],
  ['ｶﾅ', 2],
  ['🧶', 2],
  ['👩🏽', 2],
  ['👩‍🎨', 2],
  ['❤', 1],
  ['❤\ufe0f', 2],
  ['🇫🇷', 2],
  ['×–“”½…', 6],
  ['a\u200bb', 2],
])('%s takes %i cells', (text, cells) => {
  expect(widthOf(text)).toBe(cells);
});

test('a text from a file cannot steer the terminal', () => {
  const shown = printableText('a\u001b[2Jb\u202ec\u0007d\r\ne\u0085');
  expect(shown).toBe('a\ufffd[2Jb\ufffdc\ufffdd e\ufffd');
});
