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
    ['Row 3: sc in fisrt st, dc in evry st to end.', 'Row 3: sc in first st, dc in every st to end.', ['fisrt = first', 'evry = every']],
    ['Row 1: sc in 2nd ch form hook, mkae 2 sc in nextst.', 'Row 1: sc in 2nd ch from hook, make 2 sc in next st.', ['form = from', 'mkae = make', 'nextst = next st']],
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
  test.each(['sx', 'dx', 'tx', 'ds', 'hc', 'sr', 'fuor', 'thre', 'tow', 'fith', 'foruth', 'fist'])('%s', (word) => {
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

describe('other words for the usual orders', () => {
  test.each([
    ['Row 3: *sk 1, sc in next, continue from * across to end of row.', 'Row 3: *sk 1, sc in next, rep from * to end of row.'],
    ['Rnd 3: Work in 12 double crochets.', 'Rnd 3: 12 double crochets.'],
    ['Rnd 3: In the first stitch work in a single crochet then a half double crochet.', 'Rnd 3: In first st work sc, hdc.'],
    ['Rnd 3: *In next ch-1 sp, 2 dc, ch 1, 2 dc around. Join.', 'Rnd 3: *In next ch-1 sp, 2 dc, ch 1, 2 dc; rep from * around. Join.'],
    ['Rnd 3: *sc in next 2 sts, inc around. (16)', 'Rnd 3: *sc in next 2 sts, inc; rep from * around. (16)'],
    ['Row 3: work a raised dc around next dc.', 'Row 3: fpdc around next dc.'],
    ['Make a chain of forty-four stitches.', 'Make a chain of 44 stitches.'],
    ['Row 3: sc in each. Work 12 rows without increasing.', 'Row 3: sc in each. Work 12 rows even.'],
    ['Row 3: sc in next 3, dec. 2 sc tog., continue to end.', 'Row 3: sc in next 3, sc2tog, continue to end.'],
    ['Row 3: Repeat *sc in next st, dc in next st* across, ending with sc in last st.', 'Row 3: *Sc in next st, dc in next st; repeat from * across, ending with sc in last st.'],
    ['Row 3: 1 dc in 3rd. st from hook, dc in nx. 8 sts.', 'Row 3: 1 dc in 3rd st from hook, dc in next 8 sts.'],
    ['Start Row: 3 dc in 4th ch from hook.', 'Start Row: 3 dc in fourth ch from hook.'],
    ['Rnd 2: Ch 1, 2 sc in same space, 2 sc in next st, repeat to end.', 'Rnd 2: Ch 1, 2 sc in next st, 2 sc in next st, repeat to end.'],
    ['Rnd 2: SC 52 stitches all round.', 'Rnd 2: SC 52.'],
    ['Row 3: 1 sc in each sc, AT THE SAME TIME inc 3 sc evenly.', 'Row 3: sc in each sc across, inc 3 sc evenly.'],
    ['Row 3: 1 inc hdc, 14 hdc, 1 dec hdc, ch 1.', 'Row 3: 1 hdc inc, 14 hdc, 1 hdc dec, ch 1.'],
    ['Row 3: next 2 sc together, sc in next.', 'Row 3: 2 sc together, sc in next.'],
    ['Rnd 2: *INC *x4 (8)', 'Rnd 2: *INC* x 4 (8)'],
    ['Row 3: one hundred and five trebles in ring.', 'Row 3: 105 trebles in ring.'],
    ['Row 3: sc in next twenty one sts.', 'Row 3: sc in next 21 sts.'],
  ])('%s', (written, meant) => {
    expect(tree(written)).toBe(tree(meant));
  });

  test('a star before stitches that go around by themselves is not closed by the word', () => {
    expect(tree('Rnd 3: *ch 1, sc in each st around. Join.')).toContain('sc @each st');
    expect(tree('Rnd 3: *ch 1, sc in each st around. Join.')).not.toContain('x ->end');
  });

  test('a number of rows behind "row", and what the pattern skips or breaks off', () => {
    expect(tree('Row 3: sc across. Rep row 3 times.')).toBe('row 3: sc ->end; last 1 rows x3');
    expect(tree('Row 3: sc across. Cut off remaining chain.')).toBe('row 3: sc ->end; "Cut off remaining chain"');
    expect(tree('Ch 42, or enough to measure 28 cm.')).toBe('ch 42; "enough to measure 28 cm"');
  });
});

describe('stops and blanks that do not belong', () => {
  test.each([
    ['Rnd 1: Ch. 3. 1. d.c. in each s.c. working 5. d.c. in next s.c.', 'Rnd 1: Ch 3, 1 dc in each sc, 5 dc in next sc.'],
    ['Rnd 1: *Miss 2. s.c. 1. s.c. in next s.c. Ch. 2. Repeat from * to end.', 'Rnd 1: *Miss 2 sc, 1 sc in next sc, ch 2; repeat from * to end.'],
    ['Rnd 1: 1. s.c. in each Ch. to last Ch. 3. s.c. in last Ch.', 'Rnd 1: 1 sc in each ch to last ch, 3 sc in last ch.'],
    ['Rnd 1: 2 sdc in next st (s d c: thread over hook, insert in st, draw loop through).', 'Rnd 1: 2 sdc in next st.'],
    ['Rnd 1: working along opposite side of ch work 2 sc in each ch.', 'Rnd 1: working along opposite side of ch, 2 sc in each ch.'],
  ])('%s', (written, meant) => {
    const work = (text: string) => tree(text).replace(/; "[^"]*"/g, '');
    expect(work(written)).toBe(work(meant));
  });

  test('what one has made, and how wide it is', () => {
    expect(tree('I chained 33, resulting in a cloth.')).toBe('ch 33; "resulting in a cloth"');
    expect(tree('My cloth is about 9 inches across.')).toBe('"My cloth is about 9 inches across"');
    expect(tree('Row 4: sc around until piece measures 4 inches in diameter.')).not.toContain('UNREAD');
  });

  test('a place of the loop, told in a bracket before the work', () => {
    expect(tree('Row 1: (work in one loop of each chain, ch 1), sc.')).toContain('ch 1');
    expect(tree('Row 1: (work in one loop of each chain for a neat edge), sc in each ch.')).toBe(
      'row 1: "(work in one loop of each chain for a neat edge)"; sc @each chain',
    );
  });

  test('a number behind a stop that begins a row stays its number', () => {
    expect(tree('4. sc in each st.')).toBe('# 4: sc @each st');
    expect(tree('Row 4: ch 3. sc in each st.')).toBe('row 4: ch 3; sc @each st');
  });
});
