// Stars, brackets, endings, repeats inside repeats. Examples are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { tree } from './shown.ts';

describe('repeats', () => {
  test.each([
    ['*sc in next 3, inc; rep from * around.', '*<sc @next 3; inc> ->end'],
    ['* 2 tr in next, tr in next 4, repeat from *', '*<2 tr @next; tr @next 4> ->end'],
    ['*sc, inc; rep from * 5 times', '*<sc; inc> x5 maybe more'],
    ['*sc, inc; rep from * to end', '*<sc; inc> ->end'],
    ['*sc, inc; rep from * 5 more times', '*<sc; inc> x5 more'],
    ['*sc, inc; rep from * once', '*<sc; inc> x1 more'],
    ['*sc, inc; rep from * twice more', '*<sc; inc> x2 more'],
    ['*sc, inc; rep from * once more', '*<sc; inc> x1 more'],
    ['*sc, inc* around', '*<sc; inc> ->end'],
    ['*3 sc, inc* x 7', '*<3 sc; inc> x7'],
    ['*sc, inc* repeat', '*<sc; inc> ->end'],
    ['*sc, inc, repeat between * * 3 more times', '*<sc; inc> x3 more'],
    ['*sc, inc* 3 times, ch 3, rep from *to* once', '*<sc; inc> x3; ch 3; again *<sc; inc> x1 more'],
    ['*sc, inc*, repeat *-* 4 times', '*<sc; inc> x4 maybe more'],
    ['** sc, inc * around', '**<sc; inc> ->end'],
    ['*sc, inc. *Repeat around', '*<sc; inc> ->end'],
    ['(sc, inc)*6', '(<sc; inc> x6'],
    ['[sc, inc] 6x', '[<sc; inc> x6'],
    ['{sc, inc} 6 times', '{<sc; inc> x6'],
    ['|inc, sc 2| x 6', '|<inc; sc 2> x6'],
    ['(4 HDC; INC) x 9 times', '(<4 hdc; inc> x9'],
    ['sc, inc * 6', '<sc; inc> x6'],
    ['(sc, inc)6', '(<sc; inc> x6'],
    ['hdc in each of 4, 2 hdc in next, 9 times', '<hdc @next each 4; 2 hdc @next> x9'],
    ['Sc in next 8, 2 sc in next. Repeat around', '<sc @next 8; 2 sc @next> ->end'],
    ['(4 chain, miss 3, 1 plain 5 times)', '(<ch 4; skip @next 3; 1 plain> x5'],
    ['(sc, inc) around', '(<sc; inc> ->end'],
    ['(2 dc, ch 2, 2 dc) in corner', '{2 dc; ch 2; 2 dc} @this corner'],
    ['(sc, hdc) all in next', '{sc; hdc} @all next'],
    ['[dc, ch 1, dc] in same sp', '{dc; ch 1; dc} @same space'],
    ['in next sp work (3 tr, 2 ch, 3 tr)', '{3 tr; ch 2; 3 tr} @next space'],
    ['3 dc, ch 2, 3 dc in next ch-2 sp', '?{3 dc; ch 2; 3 dc} @next space2'],
    ['*dc in next 3, ch 1; rep from * ending with sc in last st.', '*<dc @next 3; ch 1> ->end ending with [sc @last st]'],
    ['*dc, ch 1; rep from * across, ending row with 2 sc in last dc', '*<dc; ch 1> ->end ending with [2 sc @last dc]'],
    ['*dc, ch 1; rep from * across, ending last rep with 3 dc in last st, turn', '*<dc; ch 1> ->end ending last with [3 dc @last st]; turn'],
    ['*dc in next 3, **ch 1, sk 1; rep from * ending last rep at **; join', '*<dc @next 3; mark **; ch 1; skip @next 1> ->end ending at **; join'],
    ['*dc, ch 2; rep from * around, omit last ch 2, join', '*<dc; ch 2> ->end ending without [ch 2]; join'],
    ['*dc, ch 2; rep from * around, end ch 3, join', '*<dc; ch 2> ->end ending with [ch 3]; join'],
    ['*dc, ch 2; rep from * around ending to correspond', '*<dc; ch 2> ->end ending with ["to correspond"]'],
    ['*(dc, ch 1) twice in next, sk 2; rep from * around', '*<{(<dc; ch 1> x2} @next; skip @next 2> ->end'],
    ['** 4 ch, sc in next, * 3 ch, sc in next; rep from * twice, sk 1; rep from ** around', '**<ch 4; sc @next; *<ch 3; sc @next> x2 maybe more; skip @next 1> ->end'],
    ['[*sc, inc* dc] 4 more times, then rep between * and * only', '[<*<sc; inc> x?; dc> x4 more; again [<*<sc; inc> x?; dc> ->end; "only"'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});
