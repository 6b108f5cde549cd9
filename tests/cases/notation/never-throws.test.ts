// The reader takes any text: it never throws, its spans lie inside the text, and its cost stays in
// step with the length.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  NO_VOCABULARY,
  readInstruction,
  readOrders,
  readSpecial,
  readsAsWork,
  startsInstruction,
  termCues,
} from '../../../src/notation/index.ts';

const WORDS = (
  'sc hdc dc tr ss sl st ch sk miss next same each last first 2nd of to from in around * ** ( ) [ ] ' +
  '{ } , ; . : - = x × 1 2 3 6 24 rep from * twice times more ending with at ** join turn sp loop ' +
  'corner shell cluster inc dec 2tog fpdc blo (24) rnd row 4: rows 2-5 rep row counts as does not ' +
  'make marker stuff until piece measures 20 cm work even chart open boxes with A change to B | † ' +
  'holding back the last loop of each tr thread over and draw through all loops on hook'
).split(' ');

const known = {
  ...NO_VOCABULARY,
  specials: new Map([
    ['shell', 'shell'],
    ['beg shell', 'beg shell'],
  ]),
  sizes: 3,
};

function readAll(text: string): void {
  const read = readInstruction(text, 0, text.length, known);
  for (const step of [...read.steps, ...read.counts]) {
    expect(step.from).toBeGreaterThanOrEqual(0);
    expect(step.to).toBeGreaterThanOrEqual(step.from);
    expect(step.to).toBeLessThanOrEqual(text.length);
  }
  startsInstruction(text, 0, text.length);
  const share = readsAsWork(text, 0, text.length);
  expect(share).toBeGreaterThanOrEqual(0);
  expect(share).toBeLessThanOrEqual(1);
  readOrders(text, 0, text.length);
  readSpecial(text, 0, text.length, known);
  termCues(text, 0, text.length);
}

describe('the reader takes any text', () => {
  test('words of the notation in any order', () => {
    const text = fc
      .array(fc.tuple(fc.constantFrom(...WORDS), fc.constantFrom(' ', ' ', ' ', '')), {
        maxLength: 60,
      })
      .map((words) => words.map(([word, gap]) => word + gap).join(''));
    fc.assert(fc.property(text, readAll), { numRuns: 3000 });
  });

  test('any characters', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), readAll), {
      numRuns: 1000,
    });
  });

  test.each([
    ['brackets', '('],
    ['stars', '*sc '],
    ['double stars', '** * '],
    ['brackets of every kind', '([{'],
    ['closing brackets', ')]}'],
    ['opened and wrongly closed', '(sc] '],
    ['repeats', 'rep from * '],
    ['places', 'in next st of '],
    ['nested places', 'sc in 3rd ch of top of '],
    ['numbers', '2 (3, 4) '],
    ['counts', '= 24 sts '],
    ['in next', 'in next sp work '],
    ['ending', '*sc, rep from * ending with '],
  ])('a long run of %s', (_, piece) => {
    readAll(piece.repeat(2000));
  });
});
