// Telling work from prose, and US terms from UK terms. Examples are invented.
import { describe, expect, test } from 'vitest';
import { readsAsWork, startsInstruction, termCues } from '../../../src/notation/index.ts';

const starts = (text: string) => startsInstruction(text, 0, text.length);

describe('lines that begin an instruction', () => {
  test.each([
    ['Rnd 4: sc around', 'label'],
    ['4. sc in each st (24)', 'label'],
    ['4) inc x 6 (12)', 'label'],
    ['Row 1', 'label'],
    ['1 row: 6 sc in MR', 'label'],
    ['Next rnd: in each 4ch loop work (1dc, 1htr)', 'label'],
    ['5. Fasten off.', 'label'],
    ['Ch 43.', 'command'],
    ['With A, ch 43.', 'command'],
    ['Fasten off.', 'command'],
    ['Join A with sl st in any corner sp', 'command'],
    ['Make a magic ring', 'command'],
    ['Repeat Rnd 2 (9) times.', 'command'],
    ['Start with the yellow. Chain 4 and join with a slip stitch.', 'command'],
    ['Sl st to corner sp, ch 3, 2 dc in same sp', 'likely'],
    ['*3ch, 2tr in same st, 3ch, ss in same st* five times', 'likely'],
  ])('%s', (text, kind) => {
    expect(starts(text)).toBe(kind);
  });
});

describe('lines that do not', () => {
  test.each([
    'Round neck cardigan',
    'Row houses are pretty',
    '4. Enjoy your new bag!',
    'Ch = chain',
    'sc - single crochet',
    'Dc: double crochet',
    'ch - chain, ss - slip stitch, dc - double crochet',
    'st(s) – stitch(es)',
    'inc = 2 sc in one st',
    'Shell: 5 dc in same st',
    'MR: magic ring',
    'Rounds 1 - 2 form the centre.',
    '1. Choose your yarn',
    '4mm hook + scraps',
    'Gauge: 16 sts x 18 rnds = 10 cm',
    'I love the round shape of this bag',
    'Weave in ends.',
    'All rounds are right-side rounds; do not turn.',
    '',
  ])('%s', (text) => {
    expect(starts(text)).toBeNull();
  });
});

test('the share of notation tells rows from prose', () => {
  const share = (text: string) => readsAsWork(text, 0, text.length);
  expect(share('sc in next 5 sts, inc, sc in next 5 sts')).toBeGreaterThan(0.9);
  expect(share('I love how this little bag turned out, do tell me yours')).toBeLessThan(0.4);
});

describe('cues for terms (project list of normal practice)', () => {
  const cues = (text: string) => {
    const { us, uk, stated } = termCues(text, 0, text.length);
    const words = (spans: readonly { from: number; to: number }[]) =>
      spans.map(({ from, to }) => text.slice(from, to)).join(' ');
    return `${words(us)}|${words(uk)}|${stated?.terms ?? ''}`;
  };
  test.each([
    ['2 sc in next st, hdc in next st', 'sc hdc||'],
    ['1htr in next st, miss 1 st', '|htr miss|'],
    ['skip 2 sts, sl st in next st', '||'],
    ['1 dc in 2nd ch from hook', '|dc|'],
    ['1 tr in 4th ch from hook', '|tr|'],
    ['dc in 4th ch from hook', '||'],
    ['Tension: 16 dc to 10 cm', '|Tension|'],
    ['UK terms used throughout', '||UK'],
    ['written in standard American terms', '||US'],
    ['single crochet as of old', '||'],
  ])('%s', (text, read) => {
    expect(cues(text)).toBe(read);
  });
});
