import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainText } from '../../../src/manuscript/plain.ts';

describe('plain text', () => {
  test.each([
    ['**Rnd 1:** 6 sc', '  Rnd 1:   6 sc'],
    ['*Rnd 1:* 6 sc', ' Rnd 1:  6 sc'],
    ['__2nd round:__ sc', '  2nd round:   sc'],
    ['sc around. **(18)**', 'sc around.   (18)  '],
    ['(sc, **inc**) x 6', '(sc,   inc  ) x 6'],
    ['**HEAD**', '  HEAD  '],
    ['6&nbsp;sc &times; 2', '6      sc ×       2'],
    ['it&#39;s', "it'    s"],
    ['[magic ring](https://a.b/c)', ' magic ring                '],
    [String.raw`\*sc, inc; rep from \*`, ' *sc, inc; rep from  *'],
  ])('%s', (text, plain) => {
    expect(plainText(text)).toBe(plain);
  });

  test.each([
    '*sc in next st, ch 2**, sk next st; rep from * across, ending last rep at **',
    '** 4 ch, *3 ch, 1 dc; rep from * twice; rep from ** around',
    '*sc, inc* around',
    '**sc, inc** x 6',
    '*33 sc* [33]',
    'rep between * and *',
    'snake_case_name',
    '(6 < 7)',
  ])('leaves %s', (text) => {
    expect(plainText(text)).toBe(text);
  });

  test('keeps its length, so that spans hold for both', () => {
    const pieces = ['**', '*', '__', '&amp;', '&#x2014;', '<br>', '<b>', '[a](#b)', '\\*', 'Rnd 1:', ' ', '\n', '(6)'];
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 4 }))), (parts) => {
        const text = parts.join('');
        expect(plainText(text)).toHaveLength(text.length);
      }),
    );
  });
});
