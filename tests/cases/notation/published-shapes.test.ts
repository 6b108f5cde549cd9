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
    ['fan of (2 dc, ch 3, 2 dc) in next ch 3 sp', '"fan of"; {2 dc; ch 3; 2 dc} @next space3'],
    ['cluster of (3 tr) in next st', 'tr3cluster @next st'],
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
    ['Starting chain: ch 24.', '# "Starting chain": ch 24'],
    [
      'SC into the backloop of the second CH from the hook and across',
      'sc @nth2 chain from-hook back-loop & @each chain back-loop ->end',
    ],
    ['Rows 3 and 4 form pat. Rep Rows 3 and 4 twice more.', '"Rows 3 and 4 form pat"; rows 3,4 x2'],
    ['Rep 7-10 for 3 more times.', 'rows 7,8,9,10 x3'],
    ['7 dc in ch 3 sp - shell made. Ch 3.', '7 dc @this space3; "shell made"; ch 3'],
    ['2 dc(s) in next ch', '2 dc @next chain'],
    ['Rep Row 3 changing to CA in last st.', 'rows 3'],
    ['Rep Rows 2 and 3 twenty-three (23) times.', 'rows 2,3 x23'],
    ['Rep Rows 2-5 until 8 (10 1/2, 12)" from beg, end Row 5.', 'rows 2,3,4,5 to ? mm ending 5'],
    ['(1 hdc. Ch 1. 1 hdc - V-st made) in next hdc.', '{1 hdc; ch 1; 1 hdc; "V-st made"} @next hdc'],
    ['fpdc in next 2 stitches from row below previous row', 'front-post dc @next 2 sts 2 below'],
    ['*sc in next 3, dc in next 3* repeat 25 times until last 2 sts', '*<sc @next 3; dc @next 3> x25 maybe more'],
    ['dc across in each ch spot', 'dc @each space ->end'],
    ['1 sc in each ch across; turn 29 sc.', '1 sc @each chain ->end; turn = 29 sc'],
    ['Rep rows 1-2 6 times more. Make one more.', 'rows 1,2 x6; "Make one more"'],
    ['[Rep rows 2 and 3 consecutively] 4 times.', 'rows 2,3 x4'],
    ['[sc in next ch-1 sp, ch 1] Rep the steps in brackets across the rest of the row.', '[<sc @next space1; ch 1> ->end'],
    ['*ch 5, sk 2, sc in next ch; rep from *, forming 14 loops.', '*<ch 5; skip @next 2; sc @next chain> ->end = 14 space \'loop\''],
    ['dc in 4th ch from hook, dc 3 more times in same ch', 'dc @nth4 chain from-hook; dc 3 @same chain'],
    ['changing to MC, drawing it up from 2 rows below.', 'yarn change MC; "drawing it up from 2 rows below"'],
    ['Change to B at end of row 12 and change to 4 mm hook.', 'yarn change B; "change to 4 mm hook"'],
    ['sc in each st. Each block consists of ch 3 and 3 dc.', 'sc @each st; "Each block consists of ch 3 and 3 dc"'],
    ['Work a row of sc around the neck edge.', 'sc ->end'],
    ['(3 tr, ch 1, 3 tr) for a fan in next sp', '{3 tr; ch 1; 3 tr} @next space'],
    ['Ch 2, turn. (15 tuft stitches – remember that the ch 2 counts)', 'ch 2; turn = 15 group \'tuft\''],
    ['sc in each st to 1 st before centre st, 3 sc in centre st', 'sc @each st ->1 before @centre st; 3 sc @centre st'],
    ['sc in each underarm ch across', 'sc @each chain ->end'],
    ['sk next ch-2 sp, next 43 sts and next ch-2 sp, sc in last st', 'skip @next space2; skip @next 43 sts; skip @next space2; sc @last st'],
    ['3 sc in last ch, sc in each of 9 ch on the other side', '3 sc @last chain; other-side; sc @next each 9 chain'],
    ['sc into back of 2nd ch from hook', 'sc @nth2 chain from-hook third-loop'],
    ['Rotate work 180 degrees. Sc in next 9 ch', '"Rotate work 180 degrees"; sc @next 9 chain'],
    ['Rep Dec row 3 more times—12 sts.', 'dec row x3 = 12 stitch'],
    ['Repeat the increase round twice.', 'inc row x2'],
    ['1 tr in each remaining ch. 3 ch, turn.', '1 tr @each chain; ch 3; turn'],
    ['Work 4 more rows on these 25 sts.', 'even 4 rows'],
    ['sk 2 ch, 5dc group in next ch', 'skip @next 2 chain; 5 dc @next chain'],
    ['Starting at neck edge chain (ch) 24 loosely to measure about 20 cm.', '"Starting at neck edge"; ch 24; "to measure about 20 cm"'],
    ['Starting on the third chain from hook, add one double crochet over each chain.', 'skip @first 2 chain; 1 dc @each chain'],
    ['hdc across in each previous hdc', 'hdc @each hdc ->end'],
    ['hdc in the remaining chs in the row. Ch 2', 'hdc @each chains; ch 2'],
    ['Ch 54 stitches or desired width of shawl.', 'ch 54; "or desired width of shawl"'],
    ['1 sc in next dc. Turn. 4 sts before centre ch-2 sp.', '1 sc @next dc; turn = 4 stitch partial'],
    ['sc in next 12 sts - 12 sts for hood.', 'sc @next 12 sts = 12 stitch'],
    ['sc in each of the hood sts', 'sc @each sts'],
    ['Chain 35 (+1 turning chain).', 'ch 36'],
    ['turn. <45(61) sts + 3 chs>', 'turn = 45, 61 stitch, 3 chain'],
    ['Repeat 3rd to 5th rows incl 6 more times.', 'rows 3,4,5 x6'],
    ['Rep rows 2-5 until you run out of yarn.', 'rows 2,3,4,5 to ? mm'],
    ['Rep rows 2-4 until piece measures 60 cm, ending by working Row 3.', 'rows 2,3,4 to 600 mm ending 3'],
    ['Rows 4-5: CC2, as rows 2-3', 'row 4,5: "CC2"; rows 2,3'],
    ['Ch 70 in the grey wool.', 'ch 70; yarn with grey'],
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

  test('a shell in the last chain ends a repeat, and does not lead around to the other side', () => {
    const text =
      'Ch 22.\nRow 1: Dc in 4th ch from hook, *sk 2 ch, sc in next ch, sk 2 ch, 5 dc in next ch; ' +
      'rep from * across, turn. (20 sts)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('chains passed before single crochet hang as the first loop', () => {
    const text =
      'Ch 22.\nRow 1: Sc in 6th ch from hook, *ch 5, sk 3 ch, sc in next ch; rep from * 3 more times. (5 ch-5 loops)\n' +
      'Row 2: Ch 6, turn, sc in first ch-5 loop, *ch 5, sc in next loop; rep from * 3 more times. (5 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven']);
  });

  test('two chains that are said to count as a single crochet', () => {
    const text = 'Ch 14.\nRow 1: Skip 2 ch (count as 1 sc), 1 sc into each ch to end, turn. (13 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('slip stitch rows with a chain more that is skipped', () => {
    const text =
      'Row 1: Ch 11, ch 1 more, sk ch just made, sl st in back bar of each ch across, turn. (11 sts)\n' +
      'Row 2: Ch 1, sk ch just made, sl st in each back lp across, turn. (11 sts)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven']);
  });

  test('the third chain of the chain is that of the turning chain', () => {
    const text =
      'Ch 29.\nRow 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, ch 5, turn.\n' +
      'Row 2: Sk first dc, dc in next dc, *ch 2, dc in next dc; rep from * 5 times, ch 2, dc in 3rd st of ch. (9 dc)';
    expect(verdicts(text).at(-1)).toBe('Row 2 proven');
  });

  test('rows of one paragraph with no sign behind their numbers', () => {
    const text =
      'Ch 10. Row 1 (RS) 1htr in 3rd ch from hook, 1htr in each ch to end, turn [8 sts] Row 2 ch2 (does not count ' +
      'as a st), 2htr in first st, 1htr in each st to end, turn [9 sts] Row 3 ch2, 1htr in each st to end, turn [9 sts]';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven', 'Row 3 proven']);
  });

  test('sizes that stand in turn within brackets and without', () => {
    const text =
      'Sizes S (M) L (XL)\n\nCh 22 (22) 28 (34)\nRow 1: Sc in 2nd ch from hook and in each ch across. ' +
      '(21, 21, 27, 33 sc)';
    expect(verdicts(text)).toEqual(Array.from({ length: 4 }, () => 'Row 1 proven'));
  });

  test('a list explains its stitches in sentences, and the ring of chain below it begins the work', () => {
    const text =
      'fpdc. Work dc around front post of the dc on row below\n\n' +
      'With 6 mm hook ch20 loosely, sl st to first ch to make a ring, ch3, work 1dc in base of ch3, ' +
      '1dc in each ch to end, sl st to first dc. (20dc)';
    expect(verdicts(text)).toEqual([' proven']);
  });

  test('a row that is repeated by its name', () => {
    const text =
      'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\n' +
      'Dec row: Ch 1, turn, sc2tog, sc in each sc to last 2 sts, sc2tog. (18 sc)\nRep Dec row twice more. (14 sc)\n' +
      'Next row: Ch 1, turn, sc in each sc across. (14 sc)';
    expect(verdicts(text)).toEqual([
      'Row 1 proven', 'Dec row proven', ' unstated', ' proven', 'Next row proven',
    ]);
  });

  test('blocks from corner to corner, more and fewer', () => {
    const text =
      'Row 1: Ch 6, dc in 4th ch from hook and in next 2 ch, turn. (1 block)\n' +
      'Row 2: Ch 6, dc in 4th ch from hook and in next 2 ch, sl st in ch-3 sp of next block, ch 3, 3 dc in same sp, turn. (2 blocks)\n' +
      'Row 3: Ch 6, dc in 4th ch from hook and in next 2 ch, *sl st in next ch-3 sp, ch 3, 3 dc in same sp; rep from * across, turn. (3 blocks)\n' +
      'Row 4: Sl st in next 3 dc and in ch-3 sp, ch 3, 3 dc in same sp, *sl st in next ch-3 sp, ch 3, 3 dc in same sp; rep from * to last block, sl st in last ch-3 sp, turn. (2 blocks)\n' +
      'Row 5: Sl st in next 3 dc and in ch-3 sp, ch 3, 3 dc in same sp, sl st in last ch-3 sp. (1 block)';
    expect(verdicts(text)).toEqual([1, 2, 3, 4, 5].map((n) => `Row ${n} proven`));
    expect(verdicts(text.replace('(3 blocks)', '(4 blocks)'))).toContain('Row 3 mismatch');
  });

  test('the centre stitch of a row of an odd number', () => {
    const text =
      'Ch 2.\nRow 1: 3 sc in 2nd ch from hook. Turn. (3 sc)\n' +
      'Row 2: Ch 1, 2 sc in first st, 3 sc in centre st, 2 sc in last st. Turn. (7 sc)\n' +
      'Row 3: Ch 1, 2 sc in first st, sc in each st to centre st, 3 sc in centre st, sc in each st to last st, 2 sc in last st. (11 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven', 'Row 3 proven']);
  });

  test('a strap behind a piece that is fastened off has a chain of its own', () => {
    const text =
      'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc) Fasten off.\n' +
      'For the strap, ch 30. Sc in 2nd ch from hook and in each ch across. (29 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', ' proven']);
  });

  test('a foundation row in a paragraph, and one that is not understood', () => {
    const run = 'Ch 20. Foundation Row (RS): Sc in 2nd ch from hook and in each ch across, turn. (19 sc) Row 1: Ch 1, sc in each sc. (19 sc)';
    expect(verdicts(run)).toEqual(['Foundation Row (RS) proven', 'Row 1 proven']);
    const strange = 'Ch 21.\nFoundation Row: Grimble the wobbit twice.\nRow 1: Ch 1, turn, sc in each sc across. (20 sc)';
    expect(verdicts(strange)).toEqual(['Foundation Row unread', 'Row 1 unchecked']);
  });

  test('a scanner reads an l for a 1', () => {
    const text = 'Ch 21.\nlst Row: Sc in 2nd ch from hook and in each ch across. 20 sc.\n2nd to 2lst Rows: Ch 1, turn, sc in each sc across.';
    expect(verdicts(text)[0]).toBe('Row 1 proven');
    expect(verdicts(text)).toHaveLength(21);
  });

  test('rows of a paragraph without labels end with their turns', () => {
    const text =
      'Chain 23 with Color A. 1 dc in 8th ch from hook, * ch 2, skip 2 ch, dc in next ch; repeat from * across, ch 5 and turn. ' +
      '1 dc in next dc, * ch 2, dc in next dc; rep from * across, ending with ch 2, 1 dc in 3rd ch of turning ch. (7 dc)';
    expect(verdicts(text)).toEqual([' unstated', ' proven']);
  });

  test('a bracket that a column breaks goes on below the blank line', () => {
    const text =
      'Row 1 (RS): Ch 17, dc in 4th ch from hook, [sk next 2 chs, 3 dc\n\nin next ch, sk next 2 chs, dc in next ch] twice, dc in last ch, turn. (11 dc)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('a chain of its own behind talk that passed for work begins the piece', () => {
    const text =
      '5dc group. 5dc in to same space or stitch\n\nWith color 1 ch22, 1dc in 4th ch from hook, 1 dc in each ch to end. Turn. (20dc)';
    expect(verdicts(text).at(-1)).toBe(' proven');
  });

  test('a part named before its work in one line, and the start chain counted apart', () => {
    const text =
      'UK terms\n\nBack - With colour 1 make 41ch loosely, 1tr into 4th ch from hook 1tr into each ch to end. Turn. (38tr + 3ch)\n' +
      'Next Row - 3ch, 1tr into each tr to end, 1tr into top of 3ch. Turn. (38tr + 3ch)\nFasten off.';
    expect(verdicts(text)).toEqual([' proven', 'Next Row proven']);
  });

  test('the first chain made is the last of the first row', () => {
    const text =
      'Ch 35.\nRow 1: Dc in 5th ch from hook, dc in next 4 ch, *ch 3, skip 3 ch, dc in next 5 ch* until there are 4 groups of 5 dc, ' +
      'end row with ch 1, dc in first ch made, turn.';
    expect(verdicts(text)).toEqual(['Row 1 unstated']);
  });

  test('another way to begin a first row is not worked beside it', () => {
    const text = 'Row 1: Make 17 foundation sc or chain 18, sc in 2nd ch from hook and in each ch across. (17 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('a note on spaces says nothing of start chains', () => {
    const text =
      'Notes\nCh sps do not count as sts.\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)\n' +
      'Row 2: Ch 3, turn, sk first st, dc in each st across. (11 dc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven']);
  });

  test('a count behind a dash is no range of rows', () => {
    const text =
      'Ch 17.\nRow 1: Dc in 4th ch from hook and in each ch across; turn – 15 dc. Row 2: Ch 3 (counts as dc), 2 dc in next dc, ' +
      'dc in each dc to last 2 dc, 2 dc in next dc, dc in last dc; turn – 17 dc. Row 3: Repeat Row 2 – 19 dc.';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven', 'Row 3 proven']);
  });

  test('sentences end rows of a leaflet that has a stop behind every stitch', () => {
    const text =
      'Beg at lower back edge, with A, ch 26. See diagram on page 4.\n1st row: (RS). 1 dc in 4th ch from hook (counts as 2 dc). ' +
      '1 dc in next ch. *Ch 2. Skip next 2 ch. 1 dc in each of next 2 ch. Rep from * to last ch. 1 dc in last ch. Turn. 24 sts.';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('a double crochet in the first stitch opens a round, and closes one only at its end', () => {
    const text =
      'Ch 14, join with a slip st to form a ring.\nRnd 1: Ch 4 (counts as dc, ch 1), dc in first st, dc in next 13 ch, ' +
      'join with a slip st to third ch of beg ch-4. (15 dc)';
    expect(verdicts(text)).toEqual(['Rnd 1 proven']);
  });

  test('rows told by their number behind a row, and before one', () => {
    const text =
      'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)\nRow 2: Ch 1, turn, sc in each sc. Work 3 more rows of these 10 sc.\n' +
      'Row 6: Ch 1, turn, sc in each sc across. (10 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 unstated', ' unstated', ' unstated', ' unstated', 'Row 6 proven']);
  });

  test('what stands beneath the first row of an excerpt is not known', () => {
    const text = 'Next Row (WS): Ch 2 (counts as first sc), sc in next ch-1 sp, ch 1, sc in next st. Turn.';
    expect(verdicts(text)).toEqual(['Next Row (WS) unchecked']);
  });

  test('an edging as long as the maker likes leaves open how many loops there are', () => {
    const text =
      'Ch 6. 1st row: D c in 1st st of ch. * Ch 6, d c in next st. Repeat from * for length required. Ch 8, turn. ' +
      '2nd row: 1 half d c in last ch-6 loop, * ch 3, 1 half d c in next ch-6 loop. Repeat from * to end of row, turn.';
    expect(verdicts(text)).toEqual(['Row 1 unchecked', 'Row 2 unchecked']);
  });

  test('notes in brackets and gauges beside the chain are no work', () => {
    const text = '(add 1 for base chain)\nShawl: Ch 62 to measure 43" (15 ch to 4").\nRow 1: Sc in 2nd ch from hook and in each ch. (61)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('a chain of two before a skipped first stitch stands for it', () => {
    const text =
      'Ch 23\nRow 1: Dc in 4th ch from hook and in each ch across. (21 dc)\n' +
      'Row 2: Ch 2, turn; skip first st, dc in each dc across, dc in top of turning ch.\nRow 3: Ch 1, turn, sc in each st. (21 sc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 unstated', 'Row 3 proven']);
  });

  test('words of an order to repeat that were not understood are not passed over', () => {
    const text =
      'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12)\nRow 2: Ch 1, sc in each sc, turn. (12)\n' +
      'Row 3: Rep row 2, then sc2tog over last 2 sts. (11)\nRow 4: Ch 1, sc in each sc, turn. (11)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven', 'Row 3 unread', 'Row 4 proven']);
  });

  test('a few chains at a row’s end make stitches more', () => {
    const text =
      'Size XS (M)\n\nFOUNDATION CHAIN: Ch 46(62).\nROW 1: HDC into 2nd ch from hook, HDC in each ch until end, ch 3, turn.\n' +
      '<45(61) sts + 3 chs>\nROW 2: HDC into 2nd ch from hook, HDC in next ch, BLO HDC across, HDC in last st, turn.<47(63)>';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven', 'Row 1 proven', 'Row 2 proven']);
  });

  test('chains passed are counted with the stitches worked beside them', () => {
    const text =
      'Ch 21.\nRow 1: 2 dc in 3rd ch from hook (counts as 3 dc), skip 2 ch, 1 sc in next ch, *skip 2 ch, 5 dc in next ch, skip 2 ch, ' +
      '1 sc in next ch; rep from * to last 3 ch, skip 2 ch, 3 dc in last ch, turn. (19 sts)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('rows repeated, and one of them once more', () => {
    const text =
      'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each sc, turn.\nRow 3: Ch 3, dc in each st, turn.\n' +
      'Rows 4 – 12: Repeat rows 2 – 3, and row 2 once more. (12 sts)';
    expect(compile(text, { fixes: false }).findings.map(({ code }) => code)).not.toContain('range-mismatch');
  });

  test('what lies beneath an unread row has no known spaces', () => {
    const text =
      'Ch 12.\nRow 1: Sc in 2nd ch from hook, ch 2, grue 4, sc in last ch.\nRow 2: Ch 1, sc in first sc, 2 sc in next ch-1 sp.';
    expect(compile(text, { fixes: false }).findings.map(({ code }) => code)).not.toContain('space-size');
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

  test('a list behind a skip may go into one stitch', () => {
    const text =
      'Ch 24\nRow 1: Dc in 4th ch from hook and in each ch across. (22 dc)\n' +
      'Row 2: Ch 1 (counts as sc), 2 dc in first st, *skip 2 sts and work sc, 2 dc in next st; rep from * to last 3 sts; skip 2, sc in last st.\n' +
      'Row 3: Ch 3, skip first st, dc in each st across. (22 dc)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 unstated', 'Row 3 proven']);
  });

  test('a chain among the notes begins the piece when row 1 follows', () => {
    const text =
      'Pattern Notes\nTurn each row.\nPattern\nUsing MC, ch 5.\nRow 1 (RS): 3 dc in 4th ch from hook, dc in last ch. (5 dc)';
    expect(verdicts(text)).toEqual(['Row 1 proven']);
  });

  test('what the spaces take may stand behind the row', () => {
    const text =
      'Ch 22\nRow 1: Sc in 2nd ch from hook and in each ch across (21)\n' +
      'Row 2: sc in next 3 sts, [ch 2, skip 2 sts, sc in next 5 sts] 2x, ch 2, skip 2 sts, sc in next 2 sts, ch 2, turn.\n' +
      'Row 3: hdc across row, ch 2, turn (put 2 hdc in each chsp)\nRow 4: hdc across, ch 1, turn (21)';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 unstated', 'Row 3 unstated', 'Row 4 proven']);
  });

  test('rows in one paragraph, some of them "Next 3 Rows"', () => {
    const text =
      'Ch 13. Row 1 (RS): Sc in 2nd ch from hook and in each ch across; turn – 12 sc. Row 2: Ch 1, sc in each sc across; turn. ' +
      'Rows 1 and 2 form pat. Next 2 Rows: Rep Row 2. Next Row (Decrease): Ch 1, sc2tog, sc in each sc across; turn – 11 sc. ' +
      'Rep last 3 rows 3 more times – 8 sts at shoulder. Fasten off.';
    const all = verdicts(text);
    expect(all.filter((row) => row.includes('proven')).length).toBe(3);
    expect(all.filter((row) => /unread|mismatch|unchecked/.test(row))).toEqual([]);
  });

  test('colours told row by row are no rows', () => {
    const text =
      'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across – 19 sc\nRow 2: Ch 1, sc in each sc across; turn.\n' +
      'Rows 3-9: Rep Row 2 in the following color sequence:\n2 rows CB\n1 row CC\n2 rows CA\n2 rows CB.';
    expect(verdicts(text).filter((row) => !/proven|unstated/.test(row))).toEqual([]);
    expect(verdicts(text).length).toBe(9);
  });

  test('shells in each space leave the last space to what the row ends with', () => {
    const text =
      'Ch 22.\nRow 1: Sc in 2nd ch from hook and in each ch across. (21 sc)\n' +
      'Row 2: (sc, ch 3, 3 dc) in 1st sc, *skip 3 sc, (sc, ch 3, 3 dc) in next sc; rep from * across to last 4 sc, skip next 3 sc, sc in last sc.\n' +
      'Row 3: Ch 3, turn, 3 dc in 1st sc, (sc, ch 3, 3 dc) in each ch-sp across, ending with sc in last space.';
    expect(compile(text, { fixes: false }).findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('chains at a row’s start are worked along, and the row goes on', () => {
    const text =
      'BACK Ch 24. Row 1: Hdc in 3rd ch from hook and in each ch across - 22 hdc. Row 2: Ch 2, turn, hdc in each st across. ' +
      'Do not fasten off. Shape Sleeves Row 1: Ch 12, turn, hdc in 3rd ch from hook and in next 9 ch, hdc in each st across - 32 hdc. ' +
      'Row 2: Ch 12, turn, hdc in 3rd ch from hook and in next 9 ch, hdc in each st across - 42 hdc.';
    expect(verdicts(text).filter((row) => row.endsWith('proven')).length).toBe(3);
    expect(verdicts(text).filter((row) => /mismatch|unread|unchecked/.test(row))).toEqual([]);
  });

  test('a piece that turns first stands on what is not told', () => {
    const text =
      'BACK:\nCh 31.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across - 30 sc.\nFasten off.\n' +
      'RIGHT SHOULDER:\nRow 1 (RS): Ch 1, turn, sc in first 14 sts for right shoulder; leave rem sts unworked.';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 1 unchecked']);
  });

  test('definitions, the piece and its rows in one paragraph', () => {
    const text =
      'Special Abbreviations Shell = (Dc, [ch 1, dc] 4 times) all in indicated st. Picot = Ch 3, slip st in 3rd ch from hook. ' +
      'BLANKET Ch 26. Row 1 (Right Side): Sc in 2nd ch from hook, * skip 2 ch, shell in next ch, skip 2 ch, sc in next ch; ' +
      'repeat from * across; turn 4 shells. Row 2: Ch 1, sc in each sc and in each dc; turn 25 sc.';
    expect(verdicts(text)).toEqual(['Row 1 proven', 'Row 2 proven']);
  });

  test('a chain with no number has no chain too few', () => {
    const text =
      'Chain a multiple of 2 plus 1.\nRow 1: Sc in 2nd ch from hook and in each ch across. Turn.\nRow 2: Ch 1, sc in each sc.';
    expect(verdicts(text).filter((row) => row.includes('mismatch'))).toEqual([]);
  });

  test('the count of a range goes on where its first row stands on what is not told', () => {
    const text = 'Row 10: Sc2tog across.\nRow 11: Ch 1, sc across.\nRows 12-14: Work even. (6 sc)';
    expect(verdicts(text)).toEqual([
      'Row 10 unchecked',
      'Row 11 unchecked',
      'Row 12 unchecked',
      'Row 13 proven',
      'Row 14 proven',
    ]);
  });

  test('the start chain told apart with its length behind the word', () => {
    const text =
      'Ch 23.\n1st Row – 1dc in 4th ch from hook, 1dc in each ch to end. Turn. (20dc + ch3)\n' +
      '2nd Row – ch3, 1dc in each dc to end, 1dc in top of ch3. Turn. (20dc + ch3)';
    expect(verdicts(text).every((row) => row.endsWith('proven'))).toBe(true);
  });

  test('groups of a special stitch, from a chain far from the hook', () => {
    const text =
      'CL (Cluster) = [Yarn over and draw up a loop, yarn over and draw through 2 loops] twice all in specified stitch, yarn over and ' +
      'draw through all 3 loops on hook.\nCh 23.\nRow 1 (Wrong Side): (CL, ch 2, CL) all in 5th ch from hook, skip next ch, dc in next ch, ' +
      '* skip next ch, (CL, ch 2, CL) all in next ch, skip next ch, dc in next ch; rep from * across; turn - 5 cluster groups.\n' +
      'Row 2 (Right Side): Ch 3, (CL, ch 2, CL) all in next ch-2 sp, * FPdc around next dc, (CL, ch 2, CL) all in next ch-2 sp; ' +
      'rep from * to last st; dc in top of beg ch; turn.';
    expect(verdicts(text).filter((row) => /mismatch|unread/.test(row))).toEqual([]);
  });
});
