// Shapes of hats, toys, doilies, slippers and baskets that the reader once missed. Lines are invented; meanings are common practice.
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { instructions } from '../manuscript/read.ts';
import { tree } from './shown.ts';

describe('shapes of rounds', () => {
  test.each([
    ['sc in same st and the next 4 sts', 'sc @same st & @next 4 sts'],
    ['* 1 sc, 2 dc, 1 sc ** into the same ch-1 space; repeat from * to ** into the next 5 ch-1 spaces', '*<?{1 sc; 2 dc; 1 sc} @same space1> x5 more'],
    ['*(2 tr, ch 1, 2 tr), ch 1, into the next corner space. Rep from * 2 times.', '*<?{2 tr; ch 1; 2 tr; ch 1} @next corner> x2 maybe more'],
    ['*tr2tog, ch 2, tr2tog, ch 2** in next ch 3 sp. Rep * to ** around.', '*<?{tr2tog; ch 2; tr2tog; ch 2} @next space3> ->end'],
    ['alternate fp/bp dc around. join.', '<front-post dc; back-post dc> ->end; join'],
    ['alternating fpdc and bpdc around', '<front-post dc; back-post dc> ->end'],
    ['MR 7 (7)', 'ring; 7 st = 7'],
    ['Cast on 4 ch, knit 20 sc', 'ch 4; 20 sc'],
    ['SI st in next 4 ch', 'ss @next 4 chain'],
    ['in ch-2 sp between dc-groups make 2 dc, ch 1 and 2 dc', '{2 dc; ch 1; 2 dc} @this space2'],
    ['* ch 5, sc in next loop, rep from * all around in same manner, join.', '*<ch 5; sc @next space> ->end; "in same manner"; join'],
    ['(3 tr) between each (2 tr) cluster from prev rnd', "{3 tr} @each gap'cluster'"],
    ['Make 5 sc evenly across the ends of rows 4 to 9.', '5 sc evenly'],
    ['ch 60. join with first ch. if you want it looser, ch 70. Mine are ch 60. ch 1.', 'ch 60; join; "with first ch. if you want it looser, ch 70"; "Mine are ch 60"; ch 1'],
    ['Ch 1, (working in back of chain) sc in same ch as joining', 'ch 1; loop third; sc @same chain of (@this join)'],
    ['Work the fhdc until you have 40 sts. Join.', '40 foundation hdc; join'],
    ['(work into BLs of each st for this rnd only) 1 sc in each st around', 'loop back; 1 sc @each st ->end'],
    ['hdc in the BLO (back loop only) in each st around (48)', 'back-loop hdc @each st ->end = 48'],
    ['With A start at center of the sole with chain of 14 stitches.', 'yarn with A; "start at center of the sole with"; ch 14'],
    ['Increase by making two hdc in each stitch around (16 hdc total)', '2 hdc @each st ->end = 16 hdc'],
    ['Work 44 csc per round.', '44 waistcoat sc'],
    ['sc in each sc and ch-1 space around to last sc and ch-1 space, sc2tog', 'sc @each sc+space1 ->last 1 sc; sc2tog'],
    ['Add another nine double crochets into the ring, for a total of ten.', '9 dc @this ring = 10'],
    ['Fasten, cut the yarn.', 'fasten-off; fasten-off'],
    ['12 sc in ring, 12 petals total', "12 sc @this ring = 12 group 'petal'"],
    ['Work 1 hhdc in the 1st st and each st around', '1 herringbone hdc @first st & @each st ->end'],
    ['1ch into ch space work 1tr, 1dtr, 1tr, *into next chain space work 1dc, 1tr, 1dc, rep from *', 'ch 1; {1 tr; 1 dtr; 1 tr} @this space; *<{1 dc; 1 tr; 1 dc} @next space> ->end'],
    ['1 sc in each st (11 + 11 = 22 dc)', '1 sc @each st = 22 dc'],
    ['ch 3, *(3 tr) between each (2 tr) cluster, do not skip any gaps. 11 times. Join.', "ch 3; *<{3 tr} @next gap'cluster'; \"do not skip any gaps\"> x11; join"],
    ['R: 3– R: 5 – Repeat R: 2', '# 3,4,5: rows 2'],
    ['1ch (turning chain), 1dc into each of the next 20sts working only into the back loop of each st, turn.', 'ch 1; "(turning chain)"; 1 dc @next each 20 sts; loop back; turn'],
    ['Create a Magic Loop (click to see how it is made) with 7hdc', 'ring; 7 hdc'],
    ['Join the last stitch on the round with a slip stitch, cut your yarn about 4 inches long', 'join; fasten-off'],
    ['3 sc in last ch. Do not turn. Rotate work 180 degrees. Sc in bottom loop of next 4 ch sts', '3 sc @last chain; no turn; "Rotate work 180 degrees"; other-side; sc @next 4 chain'],
    ['Turn the slipper inside out', '"Turn the slipper inside out"'],
    ['ch 1, turn work reversed side, sc in every st, leave last 4 sts unworked.', 'ch 1; turn; sc @each st; unworked 4'],
    ['1 relief dc around next dc, 2 dc in next dc', '1 front-post dc @next dc; 2 dc @next dc'],
    ['Chain 3, (double crochet in the next st, chain 1) do what is in between the parenthesis 9 times', 'ch 3; (<dc @next st; ch 1> x9'],
    ['*2 sc in first sc, sc in each of next 2 sc* [repeat from *to* around (20 sc)]', '*<2 sc @first sc; sc @next each 2 sc> ->end = 20 sc'],
    ['Join C with sc in first dc of any 2-dc pair, sc in next dc', "join yarn C with sc @first dc of (@any dc'group'); sc @next dc"],
    ['2 FPdc around dc just below/same st', '2 front-post dc @same dc'],
    ['Round 6 – 9 creates the front/toe of the slipper. 30 sc around.', 'round 6,7,8,9: "creates the front/toe of the slipper"; 30 sc ->end'],
    ['Ch 2, * 2 hdc in next st, hdc in next 7 st; repeat from * around, join. — 72 hdc (*at this point the crown measures 6 in (15 cm))', 'ch 2; *<2 hdc @next st; hdc @next 7 st> ->end; join; "(*at this point the crown measures 6 in (15 cm))" = 72 hdc'],
    ['*Sk 1 dc, 2 FPdc around dc, ch 2* Repeat from * to * around (4x), join to FPdc w/ sl st (sk ch-2)', '*<skip @next 1 dc; 2 front-post dc @this dc; ch 2> x4 maybe more; join @this dc; "(sk ch-2)"'],
    ['Ch 1, in first st *make 2 hdc, hdc in next st*, repeat around, sl st to join in first st (24)', 'ch 1; "in first st"; *<2 hdc; hdc @next st> ->end; join @first st = 24'],
    ['Skip 16 sts from 1st earflap along Rnd 14. Join yarn with a slip stitch to the 17th stitch.', 'skip @next 16 sts of row 14; join yarn yarn @nth17 st'],
    ['Chain: (ch) 8, join to form a ring', 'ch 8; join ring'],
    ['Base - With 6.00mm hook ch51', '"Base - With 6.00mm hook"; ch 51'],
    ['Rnd 23 – Drawstring Round – ch 5, skip first 3 sc', 'round 23: ch 5; skip @first 3 sc'],
    ['3trc in first st, sk next st, slp st in next st; complete a total of 12 times - 12 shells', "<3 tr @first st; skip @next st; ss @next st> x12 = 12 group 'shell'"],
    ['Ch 2. Work your first CL into the same stitch.', 'ch 2; cluster @same st'],
    ['{2trc, ch 1, 3 trc} in this first corner space', '{2 tr; ch 1; 3 tr} @first corner'],
    ['(cluster stitch, chain 2) in the same space and in each chain 1 space around.', '{cluster; ch 2} @same space; {cluster; ch 2} @each space1 ->end'],
    ['Rnd 1: Magic ring 10 – 10st', 'round 1: ring; 10 st = 10 stitch'],
    ['2sc10 – 20st', '2 sc @next each 10 = 20 stitch'],
    ['Turn work round, 1 dc in next ch', 'turn; 1 dc @next chain'],
    ['Otherwise, just continue with same color. **Ch4, skip (sk) 3sc, sc in next sc** repeat 5 times.', '"Otherwise, just continue with same color"; **<ch 4; skip @next 3 sc; sc @next sc> x5 maybe more'],
    ['Next *5 htr into next st, sl st into next st; rep from * 3 more times', '*<5 htr @next st; ss @next st> x3 more'],
    ['Working into the bottom bump of each stitch, slip stitch in the 3rd chain from the hook and in each chain across', 'loop third; ss @nth3 chain from-hook & @each chain ->end'],
    ['Continue rounds in this manner, increasing by 6 sc in each round, until you have 60 sc.', 'not-worked "Continue rounds in this manner, increasing by 6 sc in each round, until you have 60 sc" = 60 sc'],
    ['rotate work so that you will start working on the opposite side of the starting chain, work 2 dc in first ch', 'other-side; 2 dc @first chain'],
    ['21CH,from the second chain on the hook,20sc,skip1 sc', 'ch 21; sc @nth2 chain from-hook; sc @next 19 chain; skip @next 1 sc'],
  ])('%s', (text, read) => {
    expect(tree(text)).toBe(read);
  });
});

const rows = (text: string): string[] =>
  compile(text, { fixes: false }).rows.map(({ label, made, verdict }) => `${label} ${made} ${verdict}`);

describe('rounds of published pieces, worked', () => {
  test('a count behind the first round, with side jobs behind it', () => {
    const text =
      'Rnd 1: Ch 1. 9 sc in ring. 9 sc. PM in last st. See page 4.\nRnd 2: 2 sc in each sc around. 18 sc.';
    expect(rows(text)).toEqual(['Rnd 1 9 proven', 'Rnd 2 18 proven']);
  });
  test('stitches that a ring is given without their name', () => {
    expect(rows('Rnd 1: MR 7 (7)\nRnd 2: 2 sc in each (14)')).toEqual([
      'Rnd 1 7 proven',
      'Rnd 2 14 proven',
    ]);
  });
  test('a space and a stitch left for the decrease: 24 places make 22 and 1', () => {
    const text =
      'Ch 24 and join to work in the round.\nRnd 1: ch 1, sc in each st around. Join. (24 sc)\n' +
      'Rnd 2: *sc in next st, ch 1, skip next st* repeat around. Join.\n' +
      'Rnd 3: Hdc in each sc and ch-1 space around to last sc and ch-1 space, hdc2tog. Join. (23 hdc)';
    expect(rows(text).at(-1)).toBe('Rnd 3 23 proven');
  });
  test('a part of the piece or a word before the label', () => {
    const text =
      'Rnd 1: 6 sc in ring (6)\nBrim - rnd 2: change to B. 2 sc in each (12)\nFor Round 3: sc around (12)\n' +
      'In Rnd 4: sc around (12)';
    expect(instructions(text)).toHaveLength(4);
    expect(rows(text).at(-1)).toBe('Rnd 4 12 proven');
  });
  test('a star closed by two, and its place behind: 8 spaces of 5', () => {
    const text =
      'Ch 5, join with sl st to form a ring.\nRound 1: Ch 4 (counts as 1 dc, ch 1), *1 dc into ring, ch 1**; ' +
      'repeat from * to ** 6 times. Join with a sl st into 3rd ch. (There should be 8 ch-1 spaces in the round.)\n' +
      'Round 2: Join B into any ch-1 space, ch 1 and *1 sc, 3 dc, 1 sc** into the same ch-1 space; ' +
      'repeat from * to ** into the next 7 ch-1 spaces. Join. (40 sts)';
    expect(rows(text)).toEqual(['Rnd 1 8 proven', 'Rnd 2 40 proven']);
  });
  test('a chain that every round is joined to and that never counts: 14, 28, 28', () => {
    const text =
      'Rnd 1: Chain 2. Make 14 dc into the ring. Join with a slip stitch at the top of the chain 2.\n' +
      'Rnd 2: Chain 2. Make 2 dc in each stitch. You should have 28 stitches. Slip stitch in the chain from before.\n' +
      'Rnd 3: Chain 2. Make 1 dc in each stitch. Slip stitch into the chain 2 from before. (28)';
    expect(rows(text)).toEqual(['Rnd 1 14 unstated', 'Rnd 2 28 proven', 'Rnd 3 28 proven']);
  });
  test('a part of the round from where yarn is joined, with its count', () => {
    const text =
      'Rnd 1: 12 sc in ring. (12)\nRnd 2: 2 sc in each st around. (24)\n\nToe: fold in half, count back 8 sts, ' +
      'attach yarn there. Ch 2 (counts as hdc), hdc in next 11 sts, for a total of 12 sts.';
    expect(rows(text).at(-1)).toBe(' 12 proven');
  });
  test('groups of two with groups in the gaps between them: 3 + 11 x 3', () => {
    const text =
      'Rnd 1: ch 3, 11 tr in ring. Join with sl st into top of ch 3. (12 sts)\n' +
      'Rnd 2: ch 3, tr into same sp, *(2 tr) between next sts, do not skip any gaps. 11 times. Join. (24 sts)\n' +
      'Rnd 3: ch 3, 2 tr into same sp, *(3 tr) between each (2 tr) cluster, do not skip any gaps. 11 times. Join. (36 sts)';
    expect(rows(text).at(-1)).toBe('Rnd 3 36 proven');
  });
  test('spaces that are the gaps of a first round', () => {
    const text =
      'Rnd 1: ch 4 (counts as tr), 11 tr in ring. Join. (12)\nRnd 2: 1 dc, ch 2 in each space around. (12 dc, 12 sps)';
    expect(rows(text).at(-1)).toBe('Rnd 2 12 proven');
  });
  test('the next part of a pattern in one paragraph', () => {
    const text =
      'Row 1: 6 sc in ring. Row 2: 2 sc in each sc (12 sc) Row 3: sc in each sc. Do not finish off. ' +
      'Handle: sc in next 5 sc, ch 10, skip next 4 sc, sc in next 3 sc. End off.';
    expect(instructions(text).at(-1)).toMatch(/^Handle/);
  });
  test('a round worked in part, turned, and worked back past its start: 3 + 10 of 18', () => {
    const text =
      'R1: Ch 2, 6 sc in second ch from hook. (6)\nR2: 2 sc in each sc around. (12)\nR3: (sc, 2 sc in next) around (18)\n' +
      'Row 1: Do not ch. Sc in next 3 sts, turn.\nRow 2: Ch 1, sc in next 13 sts, turn.\nRow 3: ch 1, sc in each st, turn. (13)';
    expect(rows(text).slice(3)).toEqual(['Row 1 3 unstated', 'Row 2 13 unstated', 'Row 3 13 proven']);
  });
  test('what is told of rows is no row, and a number in a list no next one', () => {
    const text =
      'Note: Round 1 – 3 starts the toe of the slipper by making a circle.\nRound 1: ch 2, 6 sc in second ch from hook: 6 sc\n' +
      'Round 2: Chain (ch) 1. 2 sc in each sc around: 12 sc\nRound 3 – 4 creates the toe. 12 sc around.\nRnd 4 may be repeated as desired.';
    expect(rows(text)).toEqual([
      'Rnd 1 6 proven',
      'Rnd 2 12 proven',
      'Rnd 3 12 unstated',
      'Rnd 4 12 unstated',
    ]);
  });
  test('steps of a list that name their rounds', () => {
    const text =
      '1. Magic Ring: Work 10 double crochet stitches into the ring. Join. (10 stitches)\n' +
      '2. Increase Round: Chain 2 (does not count), work 2 double crochet stitches in each stitch around. Join. (20 stitches)\n' +
      '3. (Dc, Sc) Round: Chain 2, *1 double crochet in the next stitch, 1 single crochet in the next stitch. Repeat from * around. (20 stitches)';
    expect(rows(text)).toEqual(['1 10 proven', '2 20 proven', '3 20 proven']);
  });
  test('a label below its row is what stands under a picture', () => {
    const text = 'R1: 6 sc in ring (6)\nR2: 2 sc in each sc around. (12)\n Round 2\nR3: sc around (12)';
    expect(compile(text).findings.map(({ code }) => code)).not.toContain('row-empty');
  });
  test('a turning chain with a line of its own is no foundation', () => {
    const text = 'CH 22.\n\nHDC in each CH. (21 HDC)\n\nCH 1, turn.\n\nHDC in each HDC across. (21 HDC)\n\nCH 1, turn.\n\nHDC in each HDC across. (21 HDC)';
    expect(rows(text)).toEqual([' 21 proven', ' 21 proven', ' 21 proven']);
  });
  test('a list told once goes round where the count says so: 6 x 3, 6 x 4', () => {
    const text =
      'Rnd 1: 12 dc in ring, join (12)\nRnd 2: Chain 2 (not counted), 1 dc in the first stitch, 2 dc in the next, join (18 stitches).\n' +
      'Rnd 3: Chain 2, 1 dc in the next 2 stitches, 2 dc in the next, join (24 stitches).';
    expect(rows(text).slice(1)).toEqual(['Rnd 2 18 proven', 'Rnd 3 24 proven']);
  });
  test('two in every other stitch, and one in each of the others: 6 x 3', () => {
    expect(rows('Rnd 1: 12 sc in ring (12)\nRnd 2. Sc2 into every 2nd stitch (18)').at(-1)).toBe('Rnd 2 18 proven');
    expect(rows('Rnd 1: 12 sc in ring (12)\nRnd 2. Sc2 into every 2nd stitch (12)').at(-1)).toBe('Rnd 2 12 proven');
  });
  test('the second ear flap of a hat, told from the first', () => {
    const text =
      'Rnd 1: 24 hdc in ring, join (24 hdc)\nFirst Earflap\nRnd 2: Ch 1, hdc in each of the next 4 hdc; turn. (4 hdc)\n' +
      'Rnd 3: Ch 1, hdc2tog over next 2 hdc, hdc2tog over last 2 hdc; turn\nRnd 4: Ch 1, hdc2tog. Fasten off.\n' +
      'Second Earflap\nSkip 8 sts from 1st earflap along Rnd 1. Join yarn with a slip stitch to the 9th stitch.\n' +
      'Rnd 2: Ch 1, hdc in each of the next 4 hdc; turn. (4 hdc)';
    expect(rows(text).at(-1)).toBe('Rnd 2 4 proven');
  });
  test('the space behind the last stitch: 12 stitches and 12 spaces', () => {
    const text =
      'Rnd 1: 24 sc in ring. (24)\nRnd 2: 1dc in first st, ch 2, sk next st, 1dc in next st; repeat [ch 2, sk next st, 1dc in next st] to end, ending with ch 2; slip st in first st to join\n' +
      'Rnd 3: 1sc in first st, 1sc in ch-2 space, 1sc in next st; repeat [1sc in ch-2 space, 1sc in next st] to end - 24sts';
    expect(rows(text).at(-1)).toBe('Rnd 3 24 proven');
  });
});

describe('rounds of toys and hats, in more words of their own', () => {
  test.each([
    ['Rnd 3: hdc once into next st and twice into the second st', 'round 3: hdc 1 @next st; 2 st @nth2 st'],
    ['Rnd 4: working all sts for this round in 3rd loop of hdc, sc in each st around', 'round 4: loop third; sc @each st ->end'],
    ['Rnd 4: sc in backloops only', 'round 4: back-loop sc'],
    ['Rnd 4: 8 sc in BLO of rnd 3', 'round 4: 8 back-loop sc'],
    ['Rnd 9: 8 sc in FLO of rnd 3', 'round 9: piece on  round; 8 front-loop sc'],
    ['Rnd 5: *make Front Post into next dc, back post into next dc*, repeat from * to * around', 'round 5: *<front-post dc @next dc; back-post dc @next dc> ->end'],
    ['Rnd 6: Repeat and follow Round 3 and Round 4', 'round 6: rows 3,4'],
    ['R13+14: 1 sc in each stitch around', '# 13,14: 1 sc @each st ->end'],
    ['Rnd 2: dc the back loop in the same stitch', 'round 2: back-loop dc @same st'],
    ['Rnd 2: inc * 2, 1 turning chain (4)', 'round 2: <inc> x2; ch 1; turn = 4'],
    ['Rnd 2: (sc, inc) х 3 (9)', 'round 2: (<sc; inc> x3 = 9'],
    ['Rnd 5: * working behind ch-3 loops, tr in next st; repeat from * around', 'round 5: *<"working behind ch-3 loops"; tr @next st> ->end'],
    ['Change the color to milk.', 'yarn change milk'],
    ['Finish, weave in ends.', 'fasten-off; "weave in ends"'],
    ['Rnd 1: 12 dc in forth ch from hook', 'round 1: 12 dc @nth4 chain from-hook'],
  ])('%s', (text, shown) => expect(tree(text)).toBe(shown));
  test('a count for each round of a range: 8, 12, 18, 27', () => {
    const text =
      'Ch 3, join to form a ring.\nRND 1: Ch 1, 8 sc in ring, join.\n' +
      'RND 2-4: (2 sc in next st, sc in next st) around, join. (12 sts)(18 sts)(27 sts)';
    expect(rows(text)).toEqual(['Rnd 1 8 unstated', 'Rnd 2 12 proven', 'Rnd 3 18 proven', 'Rnd 4 27 proven']);
  });
  test('"3 sc inc" without its comma, where only so the count is met: 2 + 1 + 3 + 2', () => {
    expect(rows('Rnd 1: 6 sc in ring (6)\nRnd 2: inc, sc, 3 sc inc. (8)').at(-1)).toBe('Rnd 2 8 proven');
    expect(rows('Rnd 1: 6 sc in ring (6)\nRnd 2: inc, 2 sc, 3 sc inc. (10)').at(-1)).toBe('Rnd 2 10 proven');
  });
  test('increases and decreases whose places are left open: 20 - 2', () => {
    const text = 'Rnd 1: 20 sc in ring (20)\nRnd 2: make 2 dec (18)\nRnd 3: 2 inc (20)\nRnd 4: dec (10)';
    expect(rows(text).slice(1)).toEqual(['Rnd 2 18 proven', 'Rnd 3 20 proven', 'Rnd 4 10 proven']);
  });
  test('stitches on the arm are of another piece: unchecked, its count carried on', () => {
    const text =
      'Rnd 1: 6 sc in ring (6)\nRnd 2: 2 sc in each st. (12)\nRnd 3: 4 sc, 4 sc on the arm, 4 sc, 4 sc on the arm, 4 sc. (20)\nRnd 4: sc around. (20)';
    expect(rows(text).slice(2)).toEqual(['Rnd 3 20 unchecked', 'Rnd 4 20 proven']);
  });
  test('rows without labels, a line and a count each: 6, 12, 18, 24', () => {
    const lines = ['6 sc in magic ring (6)', 'inc around (12)', 'In white: (1 sc, inc) *6 (18), cut the yarn', 'In peach: (2 sc, inc) *6 (24)'];
    const all = [' 6 proven', ' 12 proven', ' 18 proven', ' 24 proven'];
    expect(rows(`Body:\n${lines.join('\n')}`)).toEqual(all);
    expect(rows(`Body:\n${lines.map((line) => `- ${line}`).join('\n')}`)).toEqual(all);
  });
  test('a list multiplied by its last number goes on so above a change of colour: 3 x 4', () => {
    const text = 'R1: 6 sc in ring\nR2: sc, inc x3 (9)\nR3: 2 sc, inc x3 (12)\nChange the color to white.\nR4: 12 sc';
    expect(rows(text)[2]).toBe('R3 12 proven');
  });
  test('a chain of three whose one loop is the ring', () => {
    const text = 'CH 3.\nRow 1: In initial chain work (DC, CH 1) six times. SL ST in top of first DC.';
    expect(compile(text).findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
  test('"6 loops with 5 hdc each" are 30', () => {
    const text =
      'Ch 6; join in ring with Sl St.\nRound 1: Ch 1, work 12 SC in ring, join.\nRound 2: *Ch 4, skip next st, 1 SC in next st*; repeat between * * 5 more times. [6 ch4 spaces made]\n' +
      'Round 3: * 5 hdc in first ch 4 loop*, repeat around. (6 loops with 5 hdc each)';
    expect(rows(text).at(-1)).toBe('Rnd 3 30 proven');
  });
});

describe('rounds of doilies and scrubbies, in more words of their own', () => {
  test.each([
    ['Row 3: ch 1 tightly, working in front loops of previous row: sc in first 2 sts', 'row 3: ch 1; "tightly"; loop front; sc @first 2 sts'],
    ['Row 3: Ch 1, (hdc in next 2 sts, 2 hdc in next st) repeat around ending with 1 hdc in last 2 sts, join', 'row 3: ch 1; (<hdc @next 2 sts; 2 hdc @next st> ->end ending with [1 hdc @last 2 sts]; join'],
    ['Row 3: (hdc in next 2 sts, 2 hdc in next st) repeat pattern ending with 1 hdc in last 2 sts', 'row 3: (<hdc @next 2 sts; 2 hdc @next st> ->end ending with [1 hdc @last 2 sts]'],
    ['4th Rnd: Ch 3 and working in dc, increase 4 dc evenly spaced, join (64 dc).', 'round 4: ch 3; "working in dc"; dcinc 4 evenly; join = 64 dc'],
    ['With brown acrylic, ch 2.', 'yarn with brown; ch 2'],
    ['Rnd 3: sc2tog around. Cut a VERY long tail (about 18-24" long). Sew up the hole.', 'round 3: sc2tog ->end; "Cut a VERY long tail (about 18-24" long)"; "Sew up the hole"'],
  ])('%s', (text, shown) => expect(tree(text)).toBe(shown));
  test('a picot closed by a single crochet takes no stitch of the round: 3 x 4', () => {
    for (const picot of ['ch 4, sc in 4th ch from hook', 'ch 9, sc in 5th ch from hook (picot made), ch 4']) {
      const text = `Rnd 1: 12 dc in ring, join (12)\nRnd 2: ch 1, *${picot}, sc in next 3 sts; rep from * around (12)`;
      expect(rows(text).at(-1)).toBe('Rnd 2 12 proven');
    }
    const leaf = 'Rnd 1: 12 dc in ring, join (12)\nRnd 2: *ch 6, sc in 3rd ch from hook, hdc in next 3 ch, sl st in next st; rep from * around';
    expect(compile(leaf).rows.at(-1)?.made).toBe(48);
  });
  test('all in the one chain that begins the round', () => {
    const text = '1st Rnd: Chain 4, dc in 1st st of ch, * ch 3, 2 dc in same space, repeat from * 6 times, ch 3, join in 4th st of ch.';
    expect(compile(text).findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
  test('the round ends on the stitch it began on: 8 loops on 8 sc', () => {
    const text =
      'Rnd 1: 8 sc in ring, join (8)\n2nd Round. * Ch 10, sc in next sc, repeat from * 6 times, ch 4, dtr in same space as beginning.';
    expect(compile(text).findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });
  test('rounds without labels that each go around: 5, 10, 15, 20', () => {
    const text =
      'Adjustable loop, ch1, 5 sc in loop.\n2sc in each around.\n*2sc, sc in next 1* around.\n*2sc, sc in next 2* around.\n' +
      'sc in each st around.\n*sc2tog, sc in next 2* around.';
    expect(rows(text)).toEqual([' 5 unstated', ' 10 unstated', ' 15 unstated', ' 20 unstated', ' 20 unstated', ' 15 unstated']);
  });
  test('an ordinal and its "rnd:" on two lines', () => {
    const text = 'Ch 16, join.\n1st\nrnd: Ch 3, 31 dc in ring. Join. (32)\n2nd rnd: Ch 3, dc in each dc around. Join. (32)\n3rd\nrnd: Ch 3, dc in each dc around. Join. (32)';
    expect(rows(text)).toEqual(['Rnd 1 32 proven', 'Rnd 2 32 proven', 'Rnd 3 32 proven']);
  });
});

describe('rounds of dragons and cacti, in more words of their own', () => {
  test.each([
    ['R8: (22 sc, sc2tog/dec) * 2 times, 1 ss, 1 ch [46]', '# 8: (<22 sc; sc2tog> x2; join; ch 1 = 46'],
    ['Round 6-11: 6 rounds, each round 30 sc (30 stitches). Attach the eyes and then go on.', 'round 6..11: "each round"; 30 sc; "Attach the eyes and then go on" = 6 row, 30 stitch'],
    ['Row 13: 9sc, FLO (inc, 2sc) x 6, then for both loops 3sc (36)', 'row 13: 9 sc; loop front; (<inc; 2 sc> x6; loop both; 3 sc = 36'],
    ['R1: 8 sc in the round, 1 ss, 1 ch [8]', '# 1: 8 sc; join; ch 1 = 8'],
    ['Round 2: (1 increase) repeat till end of the round (12 stitches).', 'round 2: (<1 inc> ->end = 12 stitch'],
  ])('%s', (text, shown) => expect(tree(text)).toBe(shown));
  test('a count alone is worked even', () => {
    const text = 'Row 1: 6sc in an MR (6)\nRow 2: 6inc (12)\nRow 3-5: (12)\nRow 6: (1sc, inc) x 6 (18)';
    expect(rows(text).slice(2)).toEqual(['Row 3 12 proven', 'Row 4 12 proven', 'Row 5 12 proven', 'Row 6 18 proven']);
  });
  test('a stitch on the first of the same round only shifts its start', () => {
    const text =
      'Round 1: 7 sc in ring (7)\nRound 2: 2 sc in each sc around. Sc in first sc of this round. (14)\n' +
      'Rounds 3-4 (2 rounds): Sc in each sc around. On last round, sc in first sc of round.\nRound 5: sc around (14)';
    expect(rows(text).slice(1)).toEqual(['Rnd 2 14 proven', 'Rnd 3 14 unstated', 'Rnd 4 14 unstated', 'Rnd 5 14 proven']);
  });
  test('rounds run on with their numbers glued: 6, 12, 24, 23', () => {
    const text =
      'With green, ch 2.\nRnd1:Work 6 sc in second ch from hook.  Rnd2:work 2 sc in each sc around-12 sc.  Rnd3:Work 2 sc in each sc around-24 sc.  ' +
      'Rnd4:Work 1 sc in each of first 16 sc, 2 sc tog, 1 sc in each remaining sc around-23 sc.';
    expect(compile(text).rows.map(({ made }) => made)).toEqual([6, 12, 24, 23]);
  });
  test('stitches worked together with a leg: unchecked, its count carried on', () => {
    const text = 'Rnd 1: 12 sc in ring (12)\nRnd 2: 6 sc, 4 sc tog with leg, 2 sc (12)\nRnd 3: 12 sc (12)';
    expect(rows(text).slice(1)).toEqual(['Rnd 2 12 unchecked', 'Rnd 3 12 proven']);
  });
  test('chains counted behind the join that closes them', () => {
    const text = 'Chain 4, sl st to join. (4)\nRounds 1-3: 2 sc in each st around. (8) (16) (32)';
    expect(rows(text)).toEqual(['Rnd 1 8 proven', 'Rnd 2 16 proven', 'Rnd 3 32 proven']);
  });
});

describe('how often, behind a list, in more words of their own', () => {
  test('"continue this pattern around", a comma before "x 6", "x twice": 12, 18, 24, 30, 34', () => {
    const text =
      'Round 1: 6 SC in ring - 6 SC\nRound 2: 2 SC in each stitch around - 12 SC\n' +
      'Round 3: (SC in 1st stitch, 2SC in 2nd stitch); continue this pattern around - 18 SC\n' +
      'Round 4: (SC in 1st 2 stitches, 2 SC in 3rd stitch); continue this pattern around - 24 SC\n' +
      'Round 5: *3 sc, inc 1*, x 6 (30 sts)\nRound 6: (2 inc, 13 sc) x twice (34 sts)';
    expect(rows(text).map((row) => row.split(' ').slice(2).join(' '))).toEqual(
      [6, 12, 18, 24, 30, 34].map((n) => `${n} proven`),
    );
  });
  test('"join the end of the round with a sl st in the first sc" is a join', () => {
    expect(tree('Rnd 1: 5 sc in ring. Join the end of the round with a slst in the first sc. (5 sc)')).not.toContain('UNREAD');
  });
});
