// Shapes of British patterns, old books and filet leaflets. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { startsInstruction } from '../../../src/notation/index.ts';
import { tree } from './shown.ts';

describe('british and old rows', () => {
  test.each([
    ['Using a 4 mm hook make 61 ch.', '"Using a 4 mm hook"; ch 61'],
    ['With blue make 22[26:30]ch.', 'yarn with blue; ch 22/26/30'],
    ['Starting at wide end, ch 74.', '"Starting at wide end"; ch 74'],
    ['2nd.--1 chain, 1 plain on each stitch; turn.', '# 2: ch 1; 1 plain @each st; turn'],
    ['3rd.--4 chain, miss 1, *1 long on the next, 1 chain, miss 1; repeat from *', '# 3: ch 4; skip @next 1; *<1 long @next; ch 1; skip @next 1> ->end'],
    ['1 plain on each long and in each space', '1 plain @each long+space'],
    ['a chain 40 long', 'ch 40; UNREAD "long"'],
    ['1tr in each st. 33[37:41]tr.', '1 tr @each st = 33/37/41 tr'],
    ['1 dc in each st to end. Turn. 27 sts Fasten off.', '1 dc @each st ->end; turn; fasten-off = 27 stitch'],
    ['*1ch, miss 1, 1tr in next st; rep from * ending 1tr in 4th ch of t-ch', '*<ch 1; skip @next 1; 1 tr @next st> ->end ending with [1 tr @nth4 chain of (@this start-chain)]'],
    ['dc in next dc (1 bl over bl made at end of row), ch 2', 'dc @next dc; "(1 bl over bl made at end of row)"; ch 2'],
    ['Miss 3 ch (counts as 1 tr), 1 tr in next ch', 'skip @next 3 chain (=1 tr); 1 tr @next chain'],
    ['3 ch, miss first tr and 2 ch, 1 tr in next tr', 'ch 3; skip @first tr; skip @next 2 chain; 1 tr @next tr'],
    ['miss 2 tr and next 1ch sp, 1 dc in next tr', 'skip @next 2 tr; skip @next space1; 1 dc @next tr'],
    ['4 ch, (1 dtr, 1 ch, 2 dtr) same st, 1 tr in next st', 'ch 4; {1 dtr; ch 1; 2 dtr} @same st; 1 tr @next st'],
    ['Dc in next st. (7 om, 2 sm)', "dc @next st = 7 box 'open', 2 box 'filled'"],
  ])('%s', (text, read) => {
    expect(tree(text, { sizes: /[[]/.test(text) ? 3 : 1 })).toBe(read);
  });

  test.each([
    ['fm = filled mesh (4 dc)', null],
    ['(1trf = treble worked round the front: see below)', null],
    ['Each bar is dc, ch 3, dc (some call it the wide mesh).', null],
    ['Starting at wide end, ch 74.', 'command'],
    ['Last filled box of a row: 2 dc in sp, dc in 3rd ch.', 'likely'],
  ])('%s', (text, starts) => {
    expect(startsInstruction(text, 0, text.length)).toBe(starts);
  });
});
