// Laws of the manuscript's reading, tried on random texts made of the pieces that real ones have.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readManuscript } from '../../src/manuscript/index.ts';

const pieces = [
  '---\n',
  'title: Disc\n',
  'sizes: [S, M]\n',
  '## Base\n',
  '# Disc\n',
  '## Notes\n',
  'Special stitches\n',
  'Shell: 5 dc in same st\n',
  'Rnd 1: 6 sc in magic ring (6)\n',
  'Rnd 2: *sc, inc; rep from * around. **(9)** ',
  'Rows 3-5: ',
  'Ch 11 (13). ',
  '(24 sts)\n',
  'Make 2.\n',
  'HEAD\n',
  '```chart Dot\n',
  '. open box\n',
  '.#.\n',
  '```\n',
  '2 Comments\n',
  'Join with sl st unless told otherwise. ',
  'UK terms ',
  '<br>&amp;&nbsp;',
  '**Rnd 4:** ',
  '\n',
  '\r\n',
  '\n\n',
  '• ',
  '\u00A0',
  '\uD83D',
  '[a](http://x) ',
];
const text = fc
  .array(fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 12 })), { maxLength: 40 })
  .map((parts) => parts.join(''));

test('no text makes the reader throw, and its spans lie in order inside the text', () => {
  fc.assert(
    fc.property(text, (pattern) => {
      const { value } = readManuscript(pattern);
      let at = 0;
      for (const part of value.parts) {
        for (const { from, to } of part.instructions) {
          expect(from).toBeGreaterThanOrEqual(at);
          expect(to).toBeGreaterThan(from);
          at = to;
        }
      }
      expect(at).toBeLessThanOrEqual(pattern.length);
    }),
    { numRuns: 400 },
  );
});

test('a reading that is handed the former one equals a reading from nothing', () => {
  fc.assert(
    fc.property(text, text, fc.nat(), (before, insert, at) => {
      const place = at % (before.length + 1);
      const after = before.slice(0, place) + insert + before.slice(place);
      const former = readManuscript(before).value;
      expect(readManuscript(after, { former })).toEqual(readManuscript(after));
    }),
    { numRuns: 200 },
  );
});

test('rows that did not change keep their very trees', () => {
  const pattern = 'US terms\n\nRnd 1: 6 sc in magic ring (6)\nRnd 2: inc x 6 (12)\n';
  const former = readManuscript(pattern).value;
  const next = readManuscript(pattern.replace('x 6 (12)', 'x 5 (11)'), { former }).value;
  const trees = (manuscript: typeof former) =>
    manuscript.parts.flatMap((part) => part.instructions.map(({ instruction }) => instruction));
  expect(trees(next)[0]).toBe(trees(former)[0]);
  expect(trees(next)[1]).not.toBe(trees(former)[1]);
});

test('a change of the sizes or special stitches reads the rows anew', () => {
  const pattern = 'US terms\n\nRnd 1: 6 sc in magic ring (6)\n';
  const former = readManuscript(pattern).value;
  const next = readManuscript(`Sizes: S (M)\n${pattern}`, { former }).value;
  expect(next.parts[0]?.instructions[0]?.instruction).not.toBe(
    former.parts[0]?.instructions[0]?.instruction,
  );
});
