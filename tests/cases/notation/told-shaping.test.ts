// Shaping told in words, and short signs of published rounds. Lines are invented; meanings are common practice.
import { expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { tree } from './shown.ts';

test.each([
  ['sc around, increasing in every 5th st.', '<4 sc; scinc> ->end'],
  ['Rnd 5: hdc in each st, inc in every third st (24)', 'round 5: <2 hdc; hdcinc> ->end = 24'],
  ['Rnd 3: Inc in every other st. [21]', 'round 3: <1 st; inc> ->end = 21'],
  ['Rnd 2: inc in every st (24)', 'round 2: inc @each st = 24'],
  ['sc in each st around, increasing 7 sc. (35)', 'scinc 7 evenly ->end = 35'],
  ['sc around, increasing 5 sts (35)', 'scinc 5 evenly ->end = 35'],
  [
    'sc in each sc around, increasing 4 sc at tip and 2 more at back.',
    'sc @each sc ->end; UNREAD "increasing 4 sc at tip and 2 more at back"',
  ],
  ['Rnd 3: hdc around with 3 hdc in each corner.', 'round 3: hdc @each st ->end; 3 hdc @each corner'],
  [
    'Rnd 6: Repeat Rnd 5, adding one more sc between the increases. (48)',
    'round 6: rows 5; UNREAD "adding one more sc between the increases" = 48',
  ],
  ['Rnd 6: Repeat Rnd 5, with B. (48)', 'round 6: rows 5; yarn with B = 48'],
  ['Rnd 1: 9 sc in ring. Join every round with a sl st.', 'round 1: 9 sc @this ring; join !joining'],
  ['Row 8: Work 14 stitches, turn, chain 1.', 'row 8: 14 st; turn; ch 1'],
  ['ch 2, *2 hdc, hdc 3 *around. join (35)', 'ch 2; *<2 hdc; hdc 3> ->end; join = 35'],
  ['*3 dc, ch 2, repeat from * in each st (9 petals)', '*<3 dc; ch 2> ->end = 9 group \'petal\''],
  ['7 thru 9 - sc around. (35)', '# 7,8,9: sc ->end = 35'],
  ['sc in next st around (1xSC,1x2SC).', 'sc @next st ->end; "(1xSC,1x2SC)"'],
  ['sc in each st. (7 wavelets, 28 sc)', "sc @each st = 7 group 'wavelet', 28 sc"],
  [
    'Work 5 ch with 4.5 mm hook and form 1 ring with 1 sl st in first ch. Work 14 dc in ring – read NOTE.',
    'ch 5; "with 4.5 mm hook"; join ring @first chain; 14 dc @this ring; "read NOTE"',
  ],
  ['Attach linseed in any ch-2 sp, ch 3', 'join yarn linseed @any space2; ch 3'],
] as const)('%s', (text, shown) => {
  expect(tree(text)).toBe(shown);
});

const rows = (text: string): string =>
  compile(text, { fixes: false })
    .rows.map(({ label, made, verdict }) => `${label} ${made} ${verdict}`)
    .join(', ');

test('a count is held against increases in every so-manieth stitch', () => {
  const start = 'Rnd 1: 14 sc in magic ring. (14)\n';
  expect(rows(`${start}Rnd 2: Sc around, inc in every 2nd st. (21)\n`)).toMatch('Rnd 2 21 proven');
  expect(rows(`${start}Rnd 2: Sc around, inc in every 2nd st. (22)\n`)).toMatch('Rnd 2 21 mismatch');
});

test('a round that changes an earlier one in words is not judged by it', () => {
  const text = `Rnd 1: 7 sc in magic ring. (7)
Rnd 2: *2 sc in next st; rep from * around. (14)
Rnd 3: Repeat rnd 2, adding one sc between the increases. (21)
Rnd 4: Sc in each st around. (21)
`;
  expect(rows(text)).toBe('Rnd 1 7 proven, Rnd 2 14 proven, Rnd 3 28 unread, Rnd 4 21 proven');
});

test.each([
  ['Chain 7 and slip stitch into the chain farthest from your hook to form a ring.', 'ch 7; join ring @first chain'],
  ['hdc in all stitches, join (should still have 36 stitches by the end of row 8).', 'hdc @each sts; join = 36 stitch'],
  ['sc in same st. Join. This round makes 18sc.', 'sc @same st; join = 18 sc'],
  ['Ch 3, work a (dc, ch 2) into the first space', 'ch 3; {dc; ch 2} @first space'],
  ['Fasten off round and weave in ends.', 'fasten-off; "weave in ends"'],
  ['Fasten and weave in ends.', 'fasten-off; "weave in ends"'],
  ['skip 2 more stitches, sc in next st', 'skip @next 2; sc @next st'],
  [
    '*Hdc in next st. In next st, dc, ch 3, sl st. Ch 3, repeat from * 4 times.',
    '*<hdc @next st; {dc; ch 3; ss} @next st; ch 3> x4 maybe more',
  ],
  ['*dc in st, dc around dc just made, skip next st* repeat', '*<dc @this st; dc @same dc; skip @next st> ->end'],
  ['8 sc into 2ndchain from hook', '8 sc @nth2 chain from-hook'],
  ['2ndround: sc around', 'round 2: sc ->end'],
  ['Increase every 2nd st working 1 sc into the next st, and then 2sc into the next st. Repeat around (21)', '"Increase every 2nd st"; <1 sc @next st; 2 sc @next st> ->end = 21'],
  ['*sc around the post, ch 3. Repeat from * around', '*<sc @next; ch 3> ->end'],
  [
    'Round 10: [sc 2, sc2tog], repeat around (9) *do not tie off - continue to the first leg',
    'round 10: [<sc 2; sc2tog> ->end; "do not tie off - continue to the first leg" = 9',
  ],
] as const)('%s', (text, shown) => {
  expect(tree(text)).toBe(shown);
});

test.each([
  ['Row 2: Ch 1, sc in next 5 sts. Turn, no chain', 'row 2: ch 1; sc @next 5 sts; turn; "no chain"'],
  ['rnd 4: sc in same loop, *ch 5, sc in next loop, repeat rnd, join', 'round 4: sc @same space; *<ch 5; sc @next space> ->end; join'],
  ['*2 dc, ch 2, 2 dc (shell) in next loop, repeat from * around', '*<?{2 dc; ch 2; 2 dc} @next space> ->end'],
  [
    '*ch 5, skip 6 dc, 2 dc, ch 3, 2 dc (fan) in next dc, repeat from * around',
    '*<ch 5; skip @next 6 dc; ?{2 dc; ch 3; 2 dc} @next dc> ->end',
  ],
  ['*1 inc 3 sc** 7 times (35)', '*<1 inc; 3 sc> x7 = 35'],
  ['work even 35 sc for 4 rounds', 'even sc 4 rows'],
  ['12 sc on the 2nd leg, 3 sc on chain (opposite side) [30]', 'piece on 2 leg; 12 sc; other-side; 3 sc = 30'],
  ['cluster over next 3 tr', 'tr3tog @next 3 tr'],
  ['dc into the ring seven (7) times. This equals 7 dc', '<dc @this ring> x7 = 7 dc'],
  ['sc in rest of the chs except the last, 3 sc in last ch', 'sc @each chains ->last 1; 3 sc @last chain'],
] as const)('%s', (text, shown) => {
  expect(tree(text)).toBe(shown);
});

test.each([
  ['(make 6 dc, decrease) around. (84 dc)', '(<6 dc; tog> ->end = 84 dc'],
  ['Rnds. 5-7: repeat rnd. 3.', 'round 5,6,7: rows 3'],
  ['do not join in this or following rnds, mark beginning sc.', 'spiral; "mark beginning sc"'],
  ['Rnd. 3: sc in each sc around, increase evenly by 7 sc.', 'round 3: scinc 7 evenly ->end'],
  ['8) (sc-dec, sc in next 2 sc) repeat around 21 sc', '# 8: (<sctog; sc @next 2 sc> ->end; "around" = 21 sc'],
  ['[skip next st, 3 dc in next st] Do this 7 times, join', '[<skip @next st; 3 dc @next st> x7; join'],
  ['3 ch, 1 tr into last st, turn. 112\nsts.', 'ch 3; 1 tr @last st; turn = 112 stitch'],
  ['2nd row: double every double crochet of the previous row = 18 dc;', 'row 2: UNREAD "double every double crochet of the previous row" = 18 dc'],
] as const)('%s', (text, shown) => {
  expect(tree(text)).toBe(shown);
});

test('a bracket with "8x" behind it is no count, whatever it begins with', () => {
  const start = 'Rnd 1: 18 sc in magic ring. (18)\n';
  expect(rows(`${start}Rnd 2: (1 sc, 1 inc) 8x, 2 sc (26)\n`)).toMatch('Rnd 2 26 proven');
  expect(rows(`${start}Rnd 2: (1 sc, 1 inc) 8x, 2 sc (27)\n`)).toMatch('Rnd 2 26 mismatch');
});

test('labels of lists, "1.)", leave no bracket open', () => {
  const text = '1.) 7 sc in magic ring (7)\n2.) 2 sc in each (14)\n3.) (sc, inc) 7 times (21)\n';
  const { rows: read, findings } = compile(text, { fixes: false });
  expect(read.map(({ verdict }) => verdict)).toEqual(['proven', 'proven', 'proven']);
  expect(findings.map(({ code }) => code)).not.toContain('unbalanced-bracket');
});

test('what goes into one stitch of a short chain begins each piece, and each copy of it', () => {
  const arm = 'R1: ch 2, 7 sc in first st (7)\nR2: inc in each (14)\n';
  const proven = 'R1 7 proven, R2 14 proven';
  expect(rows(`Arm (make 2)\n${arm}`)).toBe(`${proven}, ${proven}`);
  expect(rows(`Head\n${arm}\nEar\n${arm}`)).toBe(`${proven}, ${proven}`);
  expect(rows(`Head\n${arm}R3: ch 1, 4 sc in first st (4)\n`)).toMatch('R3 4 mismatch');
});

test('the centre of a ring is the ring', () => {
  const text = `Chain 4 and slip stitch into the first chain to make a circle. Chain 2.

Round 1: DC x 13 into the center of the ring. Slip stitch to the top of the Chain 2.

Round 2: Chain 2, 2 dc in each. (28)
`;
  expect(rows(text)).toBe('Rnd 1 14 unstated, Rnd 2 28 proven');
});
