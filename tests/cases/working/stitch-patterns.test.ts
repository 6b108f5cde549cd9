/**
 * Texture, motifs and shells as stitch dictionaries and blogs write them. Sums beside each; what such
 * words mean is common practice.
 */
import { describe, expect, it } from 'vitest';
import { complaints, worked } from './worked.ts';

const piece = (...lines: readonly string[]): string => `Sample (US terms)\n\n${lines.join('\n')}\n`;

describe('a first row that begins with its place', () => {
  const row = (aside: string) =>
    piece(
      'Chain 32',
      `Row 1. In the 4th chain from your hook ${aside} make a dc. Dc in each stitch across – 30 stitches`,
    );
  it('counts the chains passed as it says: 1 + 29', () => {
    expect(worked(row('(turning chain counts as a stitch)'), 'Row 1')).toEqual(['Row 1 30 proven']);
  });
  it('near miss: they are no stitch', () => {
    expect(complaints(row('(turning chain does not count)'))).toEqual(['4 count-mismatch']);
  });
});

describe('orders for rows that are not written out', () => {
  const band = (...more: readonly string[]) =>
    piece(
      'Ch 15.',
      'Row 1 (WS): Sc in 2nd ch from hook and in each ch across, turn. (14 sc)',
      'Row 2: Ch 1, sc in first 3 sc, FPdc in next 2 sc, sc in next 4 sc, FPdc in next 2 sc, sc in next 3 sc, turn.',
      'Row 3: Ch 1, sc in each st across, turn.',
      ...more,
    );
  it('has odd rows that one order speaks for, and skips said behind some post stitches only', () => {
    const text = band(
      'Row 4: Ch 1, sc in first 4 sc, FPdc in next 2 dc 2 rows below, sk 2 sc, sc in next 2 sc, FPdc in next 2 dc 2 rows below, sc in last 4 sc, turn. (14)',
      'Rep row 3 for all odd rows.',
      'Row 6: Ch 1, sc in first 5 sc, FPdc in next 4 dc 2 rows below, sk 4 sc, sc in last 5 sc, turn. (14)',
    );
    expect(worked(text, 'Row 4', 'Row 6')).toEqual(['Row 4 14 proven', 'Row 6 14 proven']);
    expect(complaints(text)).toEqual([]);
  });
  it('near miss: row 5 is spoken for by none', () => {
    const text = band('Row 4: Rep row 2.', 'Rep row 3 for all even rows.', 'Row 6: Rep row 4.');
    expect(complaints(text)).toEqual(['9 row-missing']);
  });
  it('goes over the rows again behind one that repeats another', () => {
    const text = band('Row 4: Same as row 2. Rep rows 3 and 4 until it is long enough.');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Row 4')).toEqual(['Row 4 14 unstated']);
  });
});

describe('places in groups and beside joins', () => {
  // 28 sc and dc: 1 + 4 × 6 + 3; then 2 + 4 × 3 + 1 = 15.
  it('works "4th dc of same shell" in the shell stood in, and "next sc" behind a half shell', () => {
    const text = piece(
      'Ch 29.',
      'Row 1: Sc in 2nd ch from hook, (sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch) 4 times, sk 2 ch, 3 dc in last ch, ch 1, turn.',
      'Row 2: Sc in first dc and in next dc, *ch 1, dc in next sc, ch 1, sc in 2nd dc of next shell, ch 1, sc in 4th dc of same shell, rep from * across, end ch 1, dc in last sc, turn.',
    );
    expect(worked(text, 'Row 2')).toEqual(['Row 2 15 unstated']);
    expect(complaints(text)).toEqual([]);
  });
  // Eight petals in eight sc, eight small ones in the spaces between.
  it('takes "same space" for the stitch of the join where the round comes out only so', () => {
    const text = piece(
      'Special stitch',
      'Bud: (Yo, insert hook in st, draw up a loop, yo and draw through 2 loops) 3 times in same st, yo and draw through all 4 loops.',
      '',
      'Ch 5, join with sl st to form a ring.',
      '',
      'Round 1: Ch 1, [sc in ring, ch 1] 8 times, join with sl st in first sc. (8 sc)',
      'Round 2: (Ch 3, bud, ch 3, sl st) in same space, (sl st, ch 5, sl st) in next ch-1 space, *(sl st, ch 3, bud, ch 3, sl st) in next sc, (sl st, ch 5, sl st) in next ch-1 space; repeat from * around, join.',
    );
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 8 unstated']);
  });
  it('takes the ch 3 that an old leaflet ends a row in for the turning chain', () => {
    const text = piece(
      'Ch 10, 3 d c in 8th st from hook, ch 2, 3 d c in same space (shell), sk 1 ch, d c in last ch, turn.',
      '2nd Row—Ch 3, shell (3 d c, ch 2, 3 d c) in ch 2 loop of shell, d c in 3 ch, turn.',
      '3rd Row—Ch 3, (3 d c, ch 2, 3 d c, ch 2, 3 d c) in ch 2 loop of shell, d c in 3 ch, turn.',
    );
    expect(worked(text, 'Row 3')).toEqual(['Row 3 11 unstated']);
  });
});

describe('lists of short forms and stitches above the work', () => {
  it('are not worked', () => {
    const text = [
      'Stitches you need to know',
      'SK skip',
      'dc2tog - double crochet worked together in 2 consecutive stitches (dc decrease)',
      'Inc increase - 2 sc in same stitch',
      'Picot - ch 3, sl st in 3rd ch from hook',
      '',
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: (Sc in next st, picot) 6 times. (6 sc)',
    ].join('\n');
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 6 proven', 'Rnd 2 6 proven']);
  });
  it('leave the chain that stands behind them to the first row', () => {
    const text = [
      'Special stitches-decrease:',
      'At beginning of a row-ch 2, sk first st, dc in next st.',
      '',
      'With MC and 4.5 hook, ch 20',
      '',
      'Row 1-Sc in 2nd ch from hook, (sc in next 2 ch, sk next ch, 3 dc in next ch, sk next ch, sc in next ch)3x. Ch 1, turn. 19 sts',
    ].join('\n');
    expect(worked(text, 'Row 1')).toEqual(['Row 1 19 proven']);
  });
  it('reads an ordinal with a blank', () => {
    expect(worked(piece('Ch 12.', 'Row 1: Sc in 2 nd ch from hook and in each ch. (11)'), 'Row 1')).toEqual(
      ['Row 1 11 proven'],
    );
  });
});

describe('rows worked again', () => {
  it('may name the turning chain of the row that lay beneath them first', () => {
    const text = piece(
      'Ch 14.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (12)',
      'Row 2: Ch 2 (counts as hdc), hdc in next 10 dc, hdc in top of ch 3, turn. (12)',
      'Row 3: Ch 2, hdc in next 10 sts, hdc in top of ch 2, turn. (12)',
      'Rep rows 2 and 3 four times.',
    );
    expect(complaints(text)).toEqual([]);
  });
});

describe('lace of a stitch dictionary', () => {
  // Multiple of 8 + 1 stitches: 42 chains with the one to turn. 1 + 5 × (4 + 1) = 26; 1 + 5 × 2 = 11;
  // 1 + 1 + 5 × (1 + 4) - 1 = 26 with the last shell one shorter.
  const petals = (row3 = 'omitting 1tr at end of last rep') =>
    piece(
      'Multiple of 8 + 1.',
      '',
      'Row 1: 1sc into 2nd ch from hook, *2ch, skip 3ch, 4tr into next ch, 2ch, skip 3ch, 1sc into next ch; rep from * to end, turn.',
      'Row 2: 1ch, 1sc into first st, *3ch, skip 2ch and 1tr, 1sc into next tr, 3ch, skip 2tr and 2ch, 1sc into next sc; rep from * to end, turn.',
      `Row 3: 4ch (count as 1tr), 1tr into first st, *2ch, skip 3ch, 1sc into next sc, 2ch, skip 3ch, 4tr into next sc; rep from * to end ${row3}, turn.`,
      'Row 4: 1ch, 1sc into first st, *3ch, skip 2tr and 2ch, 1sc into next sc, 3ch, skip 2ch and 1tr, 1sc into next tr; rep from * ending last rep in top of tch, turn.',
    );
  it('skips lists of stitches, leaves stitches out of the last repeat and ends it in the turning chain', () => {
    expect(worked(petals(), 'Row 1', 'Row 2', 'Row 3', 'Row 4')).toEqual([
      'Row 1 26 unstated',
      'Row 2 11 unstated',
      'Row 3 26 unstated',
      'Row 4 11 unstated',
    ]);
    expect(complaints(petals())).toEqual([]);
  });
  it.each([
    ['Ch 1, sc in first st, skip 2 sts and 2 dc in next st (3)', 3],
    ['Ch 1, sc in first st, skip 1 sc, 1 sc and 1 sc in next st (2)', 2],
  ])('near miss: what has a place is worked: %s', (row, n) => {
    const text = piece('Ch 5.', 'Row 1: Sc in 2nd ch from hook and in each ch. (4)', `Row 2: ${row}`);
    expect(worked(text, 'Row 2')[0]).toContain(` ${n} `);
  });
  it('passes the stitches between a repeat that stops five before the end and the last one', () => {
    const row = (skip: number) =>
      piece(
        'Ch 32.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (31 sc)',
        `Row 2: Ch 5 (counts as tr and ch 1), tr in first sc, skip 4 sc, sc in next sc, *ch 1, skip ${skip} sc, (tr, ch 1) 5 times in next sc, skip 4 sc, sc in next sc; rep from * to last 5 sc, ch 1, tr in last sc, turn.`,
      );
    expect(complaints(row(4))).toEqual([]);
    expect(complaints(row(3))).not.toEqual([]);
  });
  it('has the main colour in "Using MC, ch 5"', () => {
    const text = piece('Using MC, ch 6.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (5)');
    expect(worked(text, 'Row 1')).toEqual(['Row 1 5 proven']);
  });
  it('holds a count that is told in two ways', () => {
    const text = (n: number) =>
      piece('Rnd 1: 6 sc in magic ring. (6)', `Rnd 2: 7 dc in each sc around. (6 shells or ${n} dc)`);
    expect(worked(text(42), 'Rnd 2')).toEqual(['Rnd 2 42 proven']);
    expect(complaints(text(36))).toEqual(['4 count-mismatch']);
  });
});

describe('ends of rows and of shawls', () => {
  // 2 + 3 × (4 + 3) = 23: the last three are two dc and the top of the chain.
  it('ends "dc in next 3 dc" of the last repeat in the chain', () => {
    const moon = (n: number) =>
      piece(
        'Ch 3, join with sl st in first ch to form a ring.',
        '',
        'Row 1: Ch 3, 9 dc in ring; do not join. (9)',
        'Row 2: Ch 3, turn, (2 dc in next dc, dc in next dc) across to last dc, dc in last dc. (13 dc)',
        'Row 3: Ch 3, turn, 2 dc in next dc, (ch 2, skip 2 dc, 3 dc in next dc) across. (4 ch-2 spaces)',
        'Row 4: Ch 3, turn, 2 dc in first ch-2 space, (ch 2, 3 dc in next ch-2 space) across. (3 ch-2 spaces)',
        `Row 5: Ch 3, turn, dc in next 2 dc, (4 dc in next ch-2 space, dc in next 3 dc) across, end last repeat with dc in top of beginning ch-3. (${n} dc)`,
      );
    expect(worked(moon(23), 'Row 5')).toEqual(['Row 5 23 proven']);
    expect(complaints(moon(25))).toEqual(['9 count-mismatch']);
  });
  it('makes another stitch in the last place behind a repeat', () => {
    const text = (n: number) =>
      piece(
        'Ch 14.',
        'Row 1: Dc in 4th ch from hook and in each ch across, turn. (12)',
        `Row 2: Ch 3 (counts as dc), dc in next st, [ch 1, skip 1, dc in next st], repeat between [ ] to end, work another dc in last st. (${n})`,
      );
    expect(worked(text(13), 'Row 2')[0]).toContain('proven');
    expect(complaints(text(14))).toEqual(['5 count-mismatch']);
  });
  it('parts a count from "ch" by a long dash, and holds what is told of a side for a side', () => {
    const text = piece(
      'Ch 4; join with sl st in first ch to form a ring.',
      '',
      'Round 1: Ch 3 (counts as dc), 2 dc in ring, [ch 1, 3 dc in ring] 3 times, ch 1; join with sl st in top of beginning ch—12 dc and 4 ch-1 sps.',
      'Round 2: Sl st to ch-1 sp, ch 3, (2 dc, ch 1, 3 dc) in same ch-1 sp, *ch 1, (3 dc, ch 1, 3 dc) in next ch-1 sp; repeat from * 2 more times, ch 1; join with sl st in top of beginning ch—4 corners and 1 ch-1 sp one each side between corners.',
    );
    expect(complaints(text)).toEqual([]);
    expect(worked(text, 'Rnd 1', 'Rnd 2')).toEqual(['Rnd 1 12 proven', 'Rnd 2 24 proven']);
  });
  it('knows stitches told by "for", without a sign', () => {
    const text = piece(
      'Special Stitches: For shell, 7 dc in given ch or st. For cluster (cl), keeping last lp of each on hook, dc in next 3 sts, yo and draw through all lps on hook.',
      '',
      'Ch 26.',
      '',
      'Row 1: Sc in 2nd ch from hook, *skip 2 ch, shell in next ch, skip 2 ch, sc in next ch; rep from * across. (33 sts)',
    );
    expect(worked(text, 'Row 1')).toEqual(['Row 1 33 proven']);
  });
});

describe('spaces, shells and first chains of a wrap', () => {
  // Nine spaces of one chain between ten dc, the last of them in the turning chain: 1 + 8 × 3 + 2 + 1 = 28.
  it('goes "to last space" where the turning chain has it', () => {
    const wrap = (n: number) =>
      piece(
        'Ch 12.',
        'Row 1: Dc in 5th ch from hook (counts as dc, ch 1, dc), *ch 1, dc in next ch; repeat from * to last ch; [ch 1, dc] twice all in last ch; turn – 10 dc.',
        `Row 2: Ch 3 (counts as dc), *2 dc in next space, dc in next dc; repeat from * to last space; 2 dc in last space, dc in 3rd ch of ch-4; turn – ${n} dc.`,
      );
    expect(worked(wrap(28), 'Row 1', 'Row 2')).toEqual(['Row 1 10 proven', 'Row 2 28 proven']);
    expect(complaints(wrap(27))).not.toEqual([]);
  });
  // 1 + 4 × 4 + 1
  it('works a stitch whose definition tells where it goes there', () => {
    const text = piece(
      'Special stitches',
      'Shell: (2 dc, ch 1, 2 dc) all in same space.',
      'Shell over shell: shell in the ch-1 space of shell below.',
      '',
      'Ch 18.',
      'Row 1: Dc in 4th ch from hook, *skip 2 ch, shell in next ch; rep from * to last 2 ch, skip 1 ch, dc in last ch; turn – 4 shells.',
      'Row 2: Ch 3, *shell over shell; repeat from * to last st; dc in top of ch-3; turn.',
    );
    expect(worked(text, 'Row 2')).toEqual(['Row 2 18 unstated']);
  });
  it('begins with a chain counted from the hook, and counts those before it as it says', () => {
    const text = (n: number) =>
      piece(
        'Ch 21.',
        `Row 1: Beginning with the third ch from hook (the first 2 chs count as the 1st dc of the row), dc into each chain across. (${n})`,
      );
    expect(worked(text(20), 'Row 1')).toEqual(['Row 1 20 proven']);
    expect(complaints(text(19))).toEqual(['4 count-mismatch']);
  });
});
