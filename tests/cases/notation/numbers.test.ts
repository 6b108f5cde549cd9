// Numbers beside a stitch name, increases and decreases. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('numbers before and behind', () => {
  test.each([
    ['sc5', 'sc 5'],
    ['SC5, inc', 'sc 5; inc'],
    ['sc x5, sc × 5', 'sc 5; sc 5'],
    ['hdc x 5', 'hdc 5'],
    ['sc x 5 in next', 'sc 5 @next'],
    ['sc 3 in next st', 'sc 3 @next st'],
    ['sc 3 times in next', 'sc 3 @next'],
    ['sc x 3 in 2nd ch', 'sc 3 @nth2 chain'],
    ['5 sc, inc, 5 sc', '5 sc; inc; 5 sc'],
    ['5 dc in ch-3 sp', '5 dc @this space3'],
    ['4 hdc in last', '4 hdc @last'],
    ['*2hdc. Hdc in next 6.* (from 49 to 56)', '*<2 hdc; hdc @next 6> x?; "(from 49 to 56)"'],
    ['(sc, 2sc) x 4', '(<sc; 2 sc> x4'],
    ['6 inc', '6 inc'],
    ['6inc', '6 inc'],
    ['inc 6', 'inc 6'],
    ['inc (6 times)', 'inc 6'],
    ['3 dec', '3 tog'],
    ['6x, v, (5x, v) x 5, A', '6 sc; inc; (<5 sc; inc> x5; tog'],
    ['5x v', '5 sc; inc'],
    ['dc in next 2 ch sp', 'dc @next space2'],
    ['dc in next 3 ch sps', 'dc @next 3 spaces'],
    ['dc in next 2-ch sp', 'dc @next space2'],
    ['inc in next 4 sts', 'inc @next 4 sts'],
    ['inc around', 'inc ->end'],
    ['inc 3 sts evenly', 'inc 3 evenly'],
    ['2 sc, inc, (4 sc, inc) x 5, 2 sc', '2 sc; inc; (<4 sc; inc> x5; 2 sc'],
    ['2sc in 1 st', '2 sc @next 1 st'],
    ['work 2 in next', '2 st @next'],
    ['dc inc', 'dcinc'],
    ['sc 2 tog', 'sc2tog'],
    ['sc2tog over next 2', 'sc2tog @next 2'],
    ['2sctog', 'sc2tog'],
    ['sctog', 'sctog'],
    ['inv dec', 'invisible tog'],
    ['DC DEC over the next 3', 'dctog @next 3'],
    ['dec over next 2 sts', 'tog @next 2 sts'],
    ['sc2tog around', 'sc2tog ->end'],
    ['dec twice', 'tog 2'],
    ['dec (3 times), sc in next 6', 'tog 3; sc @next 6'],
    ['ch 2, dc in next (counts as dc2tog)', 'ch 2; dc @next (=1 dc)'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});
