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

test('a row whose count is of something that the hands do not count is named, and not called silent', () => {
  const text = `${sound}Rnd 3: Ch 3 (counts as dc), dc in next 2 sts, *ch 2, dc in next 3 sts; rep from * 2 more times, ch 2; join. (4 groups)\n`;
  const row = compile(text).rows.at(-1);
  expect([row?.verdict, row?.stated.length]).toEqual(['unstated', 1]);
  expect(said(text)).toContain('such as groups, and so not compared: round 3.');
  expect(said(text)).not.toContain('states no count');
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

const bag = (note: string, before: number): string =>
  `---\nterms: US\n---\n${note}\n\nRnd 1: 24 sc in magic ring; join. (24 sc)\n\nRnd 2: Ch 4 (counts as dc and ch 1), ` +
  'sk next st, *dc in next st, ch 1, sk next st; rep from * around; join with sl st in 3rd ch of beg ch-4. (12 boxes)\n\n' +
  `Rnd 3: Work ${before} open boxes, work chart Dot over next 2 boxes, work ${10 - before} open boxes; join. (12 boxes)\n\n` +
  '```chart Dot\nmesh: dc, ch 1\n. open box\n# filled box\n\n##\n```\n';

test('a chart in a round is named where nothing tells the front', () => {
  expect(said(bag('A bag for pegs.', 2))).toContain('Whether chart Dot stands in the middle of');
  expect(said(bag('Rounds start at the side.', 2))).not.toContain('chart Dot');
});

test('a chart that reaches round the side is named', () => {
  const text = bag('Rounds start at the side.', 5);
  expect(said(text)).toContain('Whether chart Dot is meant to reach round the side.');
});
