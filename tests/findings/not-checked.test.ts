/** What was not checked is said, and what was is not claimed to be unchecked. */
import { expect, test } from 'vitest';
import { compile } from '../../src/index.ts';

const said = (text: string): string => compile(text).notChecked.join('\n');
const sound = 'Terms: US\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: Inc in each st around. (12)\n';

test('gauge, size and yarn are never checked yet', () => {
  expect(said(sound)).toContain('how much yarn it takes is not checked');
});

test('a sound piece leaves no row out', () => {
  expect(said(sound)).not.toMatch(/row|round/i);
});

test('rows that were not understood are named', () => {
  const text = `${sound}Rnd 3: Wander twice about the blue tower.\nRnd 4: Sc in each st around.\n`;
  expect(said(text)).toContain('Not understood, and so not checked: round 3.');
});

test('rows without a count are counted', () => {
  expect(said(`${sound}Rnd 3: Sc in each st around.\n`)).toContain('1 row states no count');
});

test('rows to a length are named', () => {
  const text =
    'Terms: US\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\n' +
    'Row 2: Ch 1, sc in each st across, turn. (10 sc)\nRep row 2 until piece measures 20 cm.\n';
  expect(said(text)).toContain('How many rows are worked to a length');
});

test('an empty text has nothing to say', () => {
  expect(compile('').notChecked).toEqual([]);
});
