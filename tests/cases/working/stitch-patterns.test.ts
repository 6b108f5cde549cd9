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
