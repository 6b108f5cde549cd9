/** Shapes of published texts: terms named in passing, orders between rows, columns broken within a row. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

const termsOf = (text: string): string => compile(text, { fixes: false }).terms;

describe('the other name of a stitch states no terms', () => {
  it('"half treble (or half double in US terms)" is a UK pattern', () => {
    const text =
      'The stitches\n\nHalf Treble (or Half Double in US terms)\nSlip Stitch\n\nRnd 1: 9 half trebles in a magic ring. (9)\n';
    expect(termsOf(text)).toBe('UK');
    expect(complaints(text)).toEqual([]);
  });
  it('but "written in US terms" does', () => {
    expect(termsOf('Written in US terms.\n\nRnd 1: 9 tr in ring.\n')).toBe('US');
  });
});

// US tr is four chains tall; UK tr is three and UK dc one (tables of turning chains: tests/published).
describe('the height of a start chain speaks for UK terms', () => {
  for (const [words, terms] of [
    ['3ch (counts as 1st tr), 11tr into ring', 'UK'],
    ['1 ch (counts as a dc), 5 dc in ring', 'UK'],
    ['ch 3 (counts as first dc), 11 dc in ring', 'US'],
    ['ch 4 (counts as tr), 11 tr in ring', 'US'],
  ] as const) {
    it(words, () => {
      expect(termsOf(`Rnd 1: ${words}.\n`)).toBe(terms);
    });
  }
});

describe('rows told by an order in a paragraph of its own', () => {
  const text = (n: number): string =>
    `US terms\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and across. (11)\nRow 2: Sc across. (11)\nRow 3: Sc across. (11)\n\nRep rows 2 and 3. Fasten off.\n\nRow ${n}: Join yarn, sc across. (11)\n`;
  it('are not missing', () => expect(complaints(text(6))).toEqual([]));
});

describe('a row that breaks off before the stitch of its place goes on below a blank line', () => {
  it('"sc in each of / next 25 chs"', () => {
    const text =
      'US terms\n\nRow 1: With grey, ch 54, sc in 2nd ch from hook, sc in each of\n\nnext 25 chs, with red, sc in each of next 27 chs, turn. (53 sc) Row 2: Ch 1, sc in each st. (53 sc)\n';
    expect(worked(text, 'Row 1', 'Row 2')).toEqual(['Row 1 53 proven', 'Row 2 53 proven']);
  });
});

describe('what counts as the first stitch', () => {
  it('is the stitch worked, where its chain is among those named', () => {
    const text = (n: number): string =>
      `US terms\n\nRow 1: Ch 54, sc in 2nd ch from hook (first 2 chs count as first sc), sc in each ch across. (${n} sc)\n`;
    expect(complaints(text(53))).toEqual([]);
    expect(complaints(text(54))).not.toEqual([]);
  });
  it('and the chain, where it is not', () => {
    const text =
      'US terms\n\nRow 1: Ch 54, dc in 4th ch from hook (first 3 chs count as dc), dc in each ch across. (52 dc)\n';
    expect(complaints(text)).toEqual([]);
  });
});

describe('the other side of a chain, told in brackets', () => {
  const text = (turn: string, n: number): string =>
    `US terms\n\nCh 18\nRound 1: Hdc in the 2nd ch from the hook, hdc in each ch until you have 1 ch left, work 5 hdc into that one ch, ${turn} hdc in each ch until you have 1 ch left, work 4 hdc into that last ch. <${n}>\n`;
  for (const turn of [
    '(now you will be working on the other side of your chain)',
    '(you are now working along the opposite side of the foundation chain),',
  ]) {
    it(turn, () => {
      expect(worked(text(turn, 40), 'Rnd 1')).toEqual(['Rnd 1 40 proven']);
      expect(complaints(text(turn, 41))).not.toEqual([]);
    });
  }
  it('told of a later round is no order', () => {
    const later =
      'US terms\n\nCh 6\nRow 1: Sc in 2nd ch from hook and each ch across (you will work on the other side of the chain in the next round). (5)\n';
    expect(worked(later, 'Row 1')).toEqual(['Row 1 5 proven']);
  });
});

describe('a row of a part that is not there', () => {
  it('is said to be missing, and repeats not itself', () => {
    const text =
      'US terms\n\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10 sc)\nRows 2-8: Rep row 2 of Front.\n';
    expect(complaints(text)).toEqual(['4 row-reference-missing']);
  });
});

describe('colours by letter and rings worked into', () => {
  it('open rows of a numbered list', () => {
    const text =
      'UK terms\n\n1. Colour C: Work into a magic ring, ch 3 (1st tr), 15 tr (16 sts)\n2. Colour D: Join with dc, chain 5, *dc into next st, ch 5* repeat, (16 loops)\n';
    expect(complaints(text)).toEqual([]);
    expect(made(text)).toEqual([16, 16]);
  });
});

describe('rows of an example among the notes', () => {
  it('are no rows of the piece', () => {
    const text =
      'US terms\n\nNotes:\nThe rows lean.\nExample:\nch3, dc in first st, dc in each st, turn (45)\nch2, skip first st, hdc in each st, turn (45)\n\nFront (make 2)\nRow 1: Ch 43\nRow 2: Hdc in third ch from hook, hdc across, turn. (41)\n';
    expect(worked(text, 'Row 2')).toEqual(['Row 2 41 proven']);
    expect(complaints(text)).toEqual([]);
  });
});
