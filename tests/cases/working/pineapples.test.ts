/** Doilies as leaflets tell them: each text is right; sums by hand, readings common practice. */
import { compile } from '../../../src/index.ts';
import { expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const ring = (...lines: readonly string[]): string =>
  `Sample (US terms)\n\nCh 6, join to form a ring.\n${lines.join('\n')}\n`;

/** "5 ch-7" of the spaces that a row makes, in order of their lengths. */
function spaces(text: string, label: string): string {
  const row = compile(text, { fixes: false }).rows.findLast((r) => r.label === label);
  return (row?.spaces ?? []).map(({ chains, n }) => `${n} ch-${chains}`).join(', ');
}

const PINEAPPLES = ring(
  'Rnd 1: Ch 3, 24 dc in ring, join. (25 dc)',
  'Rnd 2: Sc in same place, *ch 6, sk 2 dc, sc in next dc, ch 4, sk 1 dc, sc in next dc. Rep from * around, ending with ch 4, sl st in first sc. (10 sc)',
  'Rnd 3: Sl st in next lp, ch 4, 8 tr in same lp, *ch 2, sc in next ch-4 lp, ch 2, 9 tr in next ch-6 lp. Rep from * around. Join last ch-2 with sl st to top of ch-4. (45 tr, 5 sc)',
  'Rnd 4: Ch 5, (tr in next tr, ch 1) 7 times, tr in next tr, *ch 4, tr in next tr, (ch 1, tr in next tr) 8 times. Rep from * around, ending with ch 1, dc in 4th ch of ch-5. (45 tr)',
  'Rnd 5: Ch 3, in loop just formed make dc, ch 2 and 2 dc, *(ch 3, sc in next ch-1 sp) 8 times, ch 3, in next ch-4 lp make 2 dc, ch 2 and 2 dc (shell made). Rep from * around. Join. (40 sc, 20 dc)',
  'Rnd 6: Sl st in next dc and in next sp, ch 3, in same sp make dc, ch 2 and 2 dc, *ch 4, skip next ch-3, sc in next ch-3 lp, (ch 3, sc in next lp) 6 times, ch 4, in sp of next shell make shell, ch 1 and shell. Rep from * around, ending with shell, ch 1, sl st in top of ch-3. (35 sc, 40 dc)',
);

it.each([
  ['an ending chain stands for that of the pass, which spans the last stitch', 'Rnd 2 10 proven', '5 ch-4, 5 ch-6'],
  ['loops by their lengths', 'Rnd 3 50 proven', '10 ch-2'],
  ['the last loop is closed with a dc', 'Rnd 4 45 proven', '40 ch-1, 5 ch-4'],
  ['the round begins in the loop just closed', 'Rnd 5 60 proven', '5 ch-2, 45 ch-3'],
  ['loops before the space of a shell are passed', 'Rnd 6 75 proven', '5 ch-1, 10 ch-2, 30 ch-3, 10 ch-4'],
] as const)('five pineapples: %s', (_, row, gaps) => {
  expect(complaints(PINEAPPLES)).toEqual([]);
  expect(worked(PINEAPPLES, row.slice(0, 5))).toEqual([row]);
  expect(spaces(PINEAPPLES, row.slice(0, 5))).toBe(gaps);
});

it('a count that a pineapple does not have is told', () => {
  const off = PINEAPPLES.replace('(40 sc, 20 dc)', '(40 sc, 24 dc)');
  expect(complaints(off)).toEqual(['8 count-mismatch']);
});

it('over the long stitch that closed the round, and then in the next loop: 8 x 3', () => {
  const text = ring(
    'Rnd 1: Ch 1, 8 sc in ring, join. (8 sc)',
    'Rnd 2: *Ch 9, sc in next sc, rep from * 6 times, ch 4, d tr in same place as beginning. (8 lps)',
    'Rnd 3: Ch 3, 2 dc over the d tr just made, *ch 3, 3 dc in next lp, rep from * all around, ch 3, join. (24 dc)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 24 proven']);
  expect(spaces(text, 'Rnd 3')).toBe('8 ch-3');
});

it.each([
  ['the first round, in its ring', 'Rnd 1 12 proven', '6 ch-4'],
  ['V-stitches from the loop that was closed: 5 x 2 + 2', 'Rnd 2 12 proven', '12 ch-3'],
  ['loops closed again', 'Rnd 3 12 proven', '12 ch-5'],
] as const)('a space closed with "join with" a stitch: %s', (_, row, gaps) => {
  const text = ring(
    'Rnd 1: Ch 3, dc in ring, (ch 4, 2 dc in ring) 5 times, ch 2 and join with hdc in top of ch 3 to form the last ch-4 sp. (12 dc, 6 ch-4 sps)',
    'Rnd 2: Ch 6 (counts as dc and ch-3 sp), *(dc, ch 3, dc) in next ch-4 sp, ch 3; rep from * 4 more times, dc in same st as first ch 6, ch 3, join with sl st in 3rd ch of ch 6. (12 dc)',
    'Rnd 3: Sl st in next sp, ch 1, sc in same sp, *ch 5, sc in next ch-3 sp; rep from * around, ch 2, join with dc in first sc. (12 ch-5 sps)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, row.slice(0, 5))).toEqual([row]);
  expect(spaces(text, row.slice(0, 5))).toBe(gaps);
});

it('petals worked again with other numbers, and the next loops behind them: 6 x 9', () => {
  const text = (again: string): string =>
    ring(
      'Rnd 1: Ch 1, 18 sc in ring, join. (18 sc)',
      'Rnd 2: Ch 1, sc in same place, *ch 4, sk 2 sc, sc in next sc; rep from * around, ending with ch 4, join. (6 lps)',
      'Rnd 3: In each lp around make sc, hdc, 5 dc, hdc and sc, join. (6 petals)',
      'Rnd 4: *Ch 5, sc between next 2 petals; rep from * around. (6 ch-5 lps)',
      `Rnd 5: ${again} (66 sts)`,
      'Rnd 6: Rep rnd 4, making ch 7 (instead of ch-5). (6 ch-7 lps)',
    );
  for (const words of ['Rep rnd 3, making 7 dc (instead of 5 dc).', 'Same as 3rd rnd, having 7 dc in each lp.']) {
    expect(complaints(text(words))).toEqual([]);
    expect(worked(text(words), 'Rnd 5', 'Rnd 6')).toEqual(['Rnd 5 66 proven', 'Rnd 6 6 proven']);
  }
  // No 6 dc stand there: which are to change is not known.
  expect(complaints(text('Rep rnd 3, making 7 dc (instead of 6 dc).'))).toEqual(['8 unread']);
});

it('shells that a round defines with its starting chain have all their stitches: 8 x 4', () => {
  const text = (name: string, begins: string): string =>
    ring(
      'Rnd 1: Ch 3, 23 dc in ring, join. (24 dc)',
      `Rnd 2: Ch 3, in same place make dc, ch 2 and 2 dc (${name}), *sk 2 dc, in next dc make 2 dc, ch 2 and 2 dc (another shell made); rep from * around, join. (32 dc)`,
      `Rnd 3: Sl st in next dc and in next sp, ${begins} *ch 1, shell over shell; rep from * around, ch 1, join. (32 dc)`,
    );
  const told = [
    text('shell made', 'ch 3, in same sp make dc, ch 2 and 2 dc,'),
    text('a starting shell', 'ch 3 and make a starting shell in same sp,'),
  ];
  for (const one of told) {
    expect(complaints(one)).toEqual([]);
    expect(worked(one, 'Rnd 3')).toEqual(['Rnd 3 32 proven']);
  }
});

it('groups of sc that grow between loops, each worked to its end: 8 x (3, 4, 5) and 8 x 3', () => {
  const text = ring(
    'Rnd 1: 16 sc in ring, join. (16 sc)',
    'Rnd 2: Sc in same place, *ch 4, sk 1 sc, sc in next sc; rep from * around, ending with ch 4. (8 lps)',
    'Rnd 3: *Sc in next sc, 2 sc in ch-4 sp, ch 3; rep from * around. (24 sc)',
    'Rnds 4-5: *Skip 1st sc, sc in each remaining sc of sc group, 2 sc in ch-3 sp, ch 3; rep from * around. (5 sc in each sc group on last rnd)',
    'Rnd 6: *Skip 1 sc, sc in next 3 sc, ch 3, sc in ch-3 sp, ch 3; rep from * around. (32 sc)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 5', 'Rnd 6')).toEqual(['Rnd 5 40 unstated', 'Rnd 6 32 proven']);
});

it('loops at the back of a flower, each longer than the last: 6 x (4, 5) chains, 6 x (6, 8) stitches', () => {
  const text =
    'US terms\n\nCh 5, join to form a ring, ch 1 and work 12 s c in ring, join.\n' +
    '2nd Row -* Ch 3, skip 1 s c, s c in next s c, repeat from * all around. (6 loops)\n' +
    '3rd Row - Ch 1 and over each loop work 1 s c, 4 d c, 1 s c, join. (36 sts)\n' +
    '4th Row -* Ch 4, sl st in back of work between next 2 petals, repeat from * 5 times. (6 ch-4 loops)\n' +
    '5th Row - Ch 1 and over each loop work 1 s c, 6 d c, 1 s c, join. (48 sts)\n' +
    '6th Row - Same as 4th row but having 5 chs in each loop. (6 ch-5 loops)\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Row 5', 'Row 6')).toEqual(['Row 5 48 proven', 'Row 6 0 proven']);
});

it('a loop over the last stitch closes where the round began, and loops worked again are of any length', () => {
  const text = ring(
    'Rnd 1: Ch 4, 15 tr in ring, join in 4th st of ch. (16 tr)',
    'Rnd 2: *Ch 7, skip next tr, sc in next tr, rep from * 6 times, ch 3, tr in same space as beginning. (8 lps)',
    'Rnd 3: *Ch 8, sc in next ch-7 lp; rep from * around, ending with ch 4, tr in tr. (8 lps)',
    'Rnd 4: Sl st to center of next lp, sc in same (ch 8) lp, *ch 5, sc in next lp; rep from * around, ending with ch 5, join. (8 ch-5 lps)',
    'Rnd 5: Sl st in next 2 ch, sc in same ch-5 lp, *ch 6, sc in next ch-5 lp; rep from * around, ending with ch 6, join. (8 ch-6 lps)',
    'Rnd 6: Same as last rnd but ch 7 instead of ch 6. (8 ch-7 lps)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 6')).toEqual(['Rnd 2 7 proven', 'Rnd 6 8 proven']);
});

it('round a ring as many chains as stitches lie between them', () => {
  const text = ring(
    'Rnd 1: Ch 6, 11 d tr in ring, with ch-1 between. Join to 5th st of ch-6. (12 sps)',
    'Rnd 2: *Sc in next sp, ch 4; rep from * around, ending with sl st in 1st sc made. (12 loops)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 12 proven']);
});

it('a second motif begins as the first did, and its joins are named', () => {
  const text = (rest: string): string =>
    'US terms\n\nFIRST MOTIF … Starting at center, ch 8. Join with sl st to form ring. 1st rnd: Ch 3, 24 dc in ring. Join. (25 dc) 2nd rnd: Sc in same place, *ch 5, sk 4 dc, sc in next dc; rep from * around. Join. (5 lps)\n\n' +
    `SECOND MOTIF … ${rest}\n`;
  const anew = text('Work as for 1st motif until 1st rnd is complete. 2nd rnd: Sc in same place, *ch 7, sk 4 dc, sc in next dc; rep from * around. Join. (5 ch-7 lps)');
  expect(complaints(anew)).toEqual([]);
  expect(worked(anew, 'Rnd 2').at(-1)).toBe('Rnd 2 5 proven');
  expect(complaints(anew.replace('5 ch-7', '6 ch-7'))).toEqual(['5 count-mismatch']);
  const joined = text('Work 1st 2 rnds as for First Motif. 3rd rnd: *3 sc in next loop, ch 2, sl st in corresponding loop on first motif, ch 2, 4 sc back in same loop on second motif, repeat from * once more and complete rnd as for first motif (no more joinings).');
  expect(complaints(joined)).toEqual([]);
  const { rows } = compile(joined, { fixes: false });
  expect(rows.at(-1)).toMatchObject({ label: 'Rnd 3', verdict: 'unchecked' });
});

it('rounds in a table without a bar before them, and a last gap that is one tall stitch: 12 x (1, 2, 3)', () => {
  const text =
    'US terms\n\nRnd | What to do |\n0 | ch 5, sl st in first ch to form a ring. |\n1 | ch 3 (= first dc), 11 dc in ring, sl st in first dc. (12 dc) |\n' +
    '2 | ch 4 (= first dc + ch 1), [dc in next st, ch 1] x repeat around, sl st in first dc. (12 dc) |\n' +
    '3 | sl st in next space, ch 3 (= first dc), 2 dc in same space, ch 2, [3 dc in next space, ch 2] x 10 times, 3 dc in next space, hdc in first dc (last ch-2 space is made). (36 dc) |\n' +
    '4 | ch 1, sc in same space, [ch 5, sc in next space] x 11 times, ch 5, sl st in first sc. (12 ch-5 sps) |\n';
  expect(complaints(text)).toEqual([]);
  expect(worked(text, '2', '3', '4')).toEqual(['2 12 proven', '3 36 proven', '4 12 proven']);
});

it('popcorns told by the loop that is dropped, the first of them with its chain: 8, and 8 x 3', () => {
  const text = ring(
    'Rnd 1: Ch 1, 16 sc in ring, join. (16 sc)',
    'Rnd 2: Ch 3, 4 dc in same sc, drop loop from hook, insert hook in top of ch 3, draw dropped loop through (starting pc st made), *ch 2, skip next sc, 5 dc in next sc, drop loop from hook, insert hook in first dc and draw dropped\nloop through; rep from * around, ch 2, join. (8 popcorns)',
    'Rnd 3: Ch 1, (sc in next popcorn, 2 sc in next sp) around, join. (24 sc)',
    'Rnd 4: Ch 3, make a starting pc st in same sc, *ch 3, skip 2 sc, pc st in next sc; rep from * around, ch 3, join. (8 popcorns)',
    'Rnd 5: Ch 1, (sc in next popcorn, 3 sc in next sp) around, join. (32 sc)',
  );
  expect(complaints(text)).toEqual([]);
  expect(worked(text, 'Rnd 2', 'Rnd 3', 'Rnd 4', 'Rnd 5')).toEqual([
    'Rnd 2 8 proven',
    'Rnd 3 24 proven',
    'Rnd 4 8 proven',
    'Rnd 5 32 proven',
  ]);
  expect(complaints(text.replace('(8 popcorns)', '(9 popcorns)'))).toEqual(['6 count-mismatch']);
});

it('what others call the stitches is no word on the terms of the pattern', () => {
  const text = (who: string): string =>
    `${who} UK terminology: sc = UK dc, tr = UK dtr.\n\nStart with a magic ring.\nRnd 1: Ch 4, 15 tr into ring, join. (16 tr)\nRnd 2: Ch 1, sc into same st, (ch 3, sc into next st) 15 times, ch 3, join to first sc. (16 sc)\n`;
  expect(complaints(text('For those of us using'))).toEqual([]);
  expect(compile(text('For those of us using'), { fixes: false }).terms).toBe('US');
});
