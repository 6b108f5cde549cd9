/** Rows behind rows that are not there, names glued to their making, and lines broken before a place. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, made, worked } from './worked.ts';

describe('a row behind a gap in the numbers', () => {
  const text = (gap: string): string =>
    `US terms\n\nRow 1: Ch 50, sc in 2nd ch from hook, sc in each ch across, turn. (49 sts)\nRow 2: Ch 1, 2 sc in first st, sc in each st across, turn. (50 sts)\n${gap}Row 8: Ch 1, sc in each st across, turn. (49 sts)\n`;
  it('was worked into rows that are not there: it is not checked, and nothing else is said of it', () => {
    expect(complaints(text(''))).toEqual(['5 row-missing']);
    expect(worked(text(''), 'Row 8')).toEqual(['Row 8 50 unchecked']);
  });
  it('and is told where nothing is missing', () => {
    const all = text('Rows 3-7: Ch 1, sc in each st across, turn. (50 sts)\n');
    expect(complaints(all)).toEqual(['6 count-mismatch']);
    expect(worked(all, 'Row 8')).toEqual(['Row 8 50 mismatch']);
  });
  it('no row is a mismatch of which no finding speaks', () => {
    const { rows, findings } = compile(text(''), { fixes: false });
    const errors = findings.filter(({ severity }) => severity === 'error');
    expect([rows.some(({ verdict }) => verdict === 'mismatch'), errors.length]).toEqual([false, 0]);
  });
});

describe('a special stitch whose name is glued to its making', () => {
  for (const shell of ["Shell-3 dc's in the same space", 'Shell-3 dc in same st', 'Shell - 3 dc in same st']) {
    it(shell, () => {
      const text = `US terms\n\nSpecial stitches:\n${shell}\n\nCh 20.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across. (13 sts)\n`;
      expect(worked(text, 'Row 1')).toEqual(['Row 1 13 proven']);
    });
  }
  it('but a hyphen within a name is none', () => {
    const text =
      'US terms\n\nSpecial stitches:\nV-st: (dc, ch 1, dc) in same st\n\nCh 12.\nRow 1: V-st in 5th ch from hook, *sk 2 ch, V-st in next ch; rep from * to last ch, dc in last ch.\n';
    expect(complaints(text)).toEqual([]);
  });
});

it('a line that begins with the place of the stitch above goes on with its row', () => {
  const text =
    'US terms\n\nRow 1: 12 dc in a magic ring. (12)\nRow 2: *ch 1, 1dc into next st, 2dc\nInto next st*, repeat from * to * around.\nRow 3: Sc in each dc around. (18)\n';
  expect(made(text)).toEqual([12, 18, 18]);
});
