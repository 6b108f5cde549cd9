// Shapes that published patterns have and the reader once missed. Lines are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { tree } from './shown.ts';

describe('shapes of published rows', () => {
  test.each([
    ['[1 sc, 1 inc] repeat 6 times. (18 sts)', '[<1 sc; 1 inc> x6 = 18 stitch'],
    ['Make five single crochet stitches in the circle.', '5 sc @this ring'],
    [
      'make two single crochet stitches in each stitch around for a total of 10 stitches.',
      '2 sc @each st ->end = 10 stitch',
    ],
    ['Make 30 chain sts.', 'ch 30'],
    ['1 sc in the 8th chain st from the crochet hook', '1 sc @nth8 chain from-hook'],
    ['1 dc in each in next 8 sts', '1 dc @next each 8 sts'],
    ['10 sc, ch 5, 10 sc in each lp.', '?{10 sc; ch 5; 10 sc} @each space'],
    [
      '*ch 5, dc in next lp, rep from * around - end to corr, join.',
      '*<ch 5; dc @next space> ->end ending with ["to corr"]; join',
    ],
    [
      '*ch 4, sc in next dc, rep from * around (there will be 16 chain loops in round).',
      '*<ch 4; sc @next dc> ->end = 16 space',
    ],
    ['4 tr in next (ch 7) loop', '4 tr @next space7'],
    ['hdc in all the next sts', 'hdc @each sts'],
    ['1 dc in to the 1st dc', '1 dc @first dc'],
    ['2 sc in space indicated', '2 sc @this space'],
    ['Beg. at lower center back, ch 19.', '"Beg. at lower center back"; ch 19'],
    ['(2x, a)*6 (18)', '(<2 sc; tog> x6 = 18'],
    ['24x (24)', '24 sc = 24'],
    ['With MC and 4.5 hook, ch 38', 'yarn with MC; ch 38'],
    ['sc in last ch, changing to color A and 5.00 mm hook.', 'sc @last chain; yarn change A'],
    ['sc-ch 2-sc in 2nd ch from hook', '?{sc; ch 2; sc} @nth2 chain from-hook'],
    ['ch 21, change to 5.00mm hook, sc in 2nd ch from hook', 'ch 21; "change to 5.00mm hook"; sc @nth2 chain from-hook'],
    ['hdc worked in each of the next 60 sc', 'hdc @next each 60 sc'],
    ['(sc, inc) repeat 3 times', '(<sc; inc> x3'],
    ['(sc, inc) repeat 3 more times', '(<sc; inc> x3 more'],
    ['sc in 2nd ch from hook and across – 30 sc', 'sc @nth2 chain from-hook & @each chain ->end = 30 sc'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

const verdicts = (text: string): string[] =>
  compile(text, { fixes: false }).rows.map(({ label, verdict }) => `${label} ${verdict}`);

describe('rows of published patterns, worked', () => {
  test('stitches named without a number are as many as are made', () => {
    const text =
      'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each sc. (12)\n' +
      'Rnd 3: *2 sc in next sc, 1 sc in following st, repeat from * 5 more times. (18)\n' +
      'Rnd 4: *2 sc in next sc, 2 sc in following sts, repeat from * 5 more times. (24)';
    expect(verdicts(text)).toEqual(['Rnd 1 proven', 'Rnd 2 proven', 'Rnd 3 proven', 'Rnd 4 proven']);
  });

  test('the centre of three passes the three', () => {
    const text =
      'Ch 9.\nRow 1: Sc in 2nd ch from hook, ch 3, sk 2, sc in next 3 ch, ch 3, sk 1, sc in last ch. (5 sc)\n' +
      'Row 2: Ch 1, sc in first sc, ch 3, dc in center sc of next 3 sc, ch 3, sc in last sc. (3 sts)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven']);
  });

  test('a range counts the rows behind "then"', () => {
    const text =
      'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\n' +
      'Row 2: Ch 1, turn, sc in each sc across. (10)\nRow 3: Ch 1, turn, sc in each sc across. (10)\n' +
      'Rows 4-12: Repeat Rows 2 and 3 three more times, then repeat Rows 2, 3 and 2 once more.';
    expect(compile(text, { fixes: false }).findings.map(({ code }) => code)).not.toContain(
      'range-mismatch',
    );
  });

  test('a numbered row of strange words is a row that is not read, and never lost', () => {
    const text = '1. 6 sc in ring (6);\n2. 6 ving (12);\n3. (1 sc, inc)*6 (18);\n4. – 6. (3 rows) unchanged (18);';
    expect(verdicts(text)).toEqual(['1 proven', '2 unread', '3 proven', '4 proven', '5 proven', '6 proven']);
  });

  test('rows of a table with the letter R', () => {
    const text =
      '| R1 | 12 dc in magic ring, sl st in first dc (12) |\n| R2-R3 | ch 3 (counts as dc), dc in each dc around (12) |';
    expect(verdicts(text)).toEqual(['R1 proven', 'R2 proven', 'R3 proven']);
  });

  test('"work 5 sc across" from the hook is five', () => {
    const text = 'Ch 6.\nRow 1: Starting in 2nd ch from hook, work 5 sc across. (5)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });
});
