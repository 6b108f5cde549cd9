/**
 * Rows behind one that was not understood: they are checked again where they show themselves how many places it
 * left. Our own reading of how rows stand on each other; texts of our own invention.
 */
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, conventions } from './worked.ts';

const verdicts = (text: string): string[] =>
  compile(text, { fixes: false }).rows.map(({ verdict }) => verdict);

const UNREAD = 'wimple the frond over 3 sts across.';
const TAKEN = 'row not understood: as many as beneath (count)';

const scarf = (count: string, behind: readonly string[]): string =>
  [
    'Ch 31.',
    'Row 1: Sc in 2nd ch from hook and in each ch across. (30)',
    `Row 2: Ch 1, turn, ${UNREAD}${count}`,
    ...behind,
  ].join('\n');

describe('a row that was not understood, with no count', () => {
  test('leaves what it stands on where the next count shows it', () => {
    const text = scarf('', ['Row 3: Ch 1, turn, sc in each st across. (30)']);
    expect(verdicts(text)).toEqual(['proven', 'unread', 'proven']);
    expect(conventions(text)).toContain(TAKEN);
  });

  test('rows without counts on the way, and those that repeat them, come out too', () => {
    const text = scarf('', [
      'Row 3: Ch 1, turn, sc in each st across.',
      'Rows 4-6: Rep Row 3.',
      'Row 7: Ch 1, turn, sc2tog, sc in each st to last 2 sts, sc2tog. (28)',
      'Row 8: Ch 1, turn, sc in each st across. (28)',
    ]);
    expect(verdicts(text)).toEqual([
      'proven',
      'unread',
      ...Array.from({ length: 4 }, () => 'unstated'),
      'proven',
      'proven',
    ]);
  });

  test('a repeat of several places that ends with the last of them shows it', () => {
    const text = scarf('', [
      'Row 3: Ch 1, turn, *sc in next 2 sts, dc in next st; rep from * across.',
    ]);
    expect(verdicts(text)).toEqual(['proven', 'unread', 'unstated']);
  });

  test('that no row behind it bears out leaves its edge open', () => {
    const plain = scarf('', ['Row 3: Ch 1, turn, sc in each st across.']);
    expect(verdicts(plain)).toEqual(['proven', 'unread', 'unchecked']);
    const first = scarf('', ['Row 3: Ch 1, turn, sc in next 12 sts, turn. (12)']);
    expect(verdicts(first)).toEqual(['proven', 'unread', 'unchecked']);
    expect(conventions(first)).not.toContain(TAKEN);
  });

  test('that made more or fewer puts no row behind it in the wrong', () => {
    for (const n of [29, 31, 33, 36]) {
      const text = scarf('', [
        'Row 3: Ch 1, turn, sc in each st across.',
        `Row 4: Ch 1, turn, sc in each st across. (${n})`,
        `Row 5: Ch 1, turn, sc in each st across. (${n})`,
      ]);
      expect(complaints(text)).toEqual(['3 unread']);
      expect(verdicts(text)).toEqual(['proven', 'unread', 'unchecked', 'unchecked', 'proven']);
    }
  });

  test('hides no wrong number behind the row that shows it', () => {
    const text = scarf('', [
      'Row 3: Ch 1, turn, sc in each st across. (30)',
      'Row 4: Ch 1, turn, sc in each st across. (31)',
      'Row 5: Ch 1, turn, sc in each st across. (30)',
    ]);
    expect(complaints(text)).toEqual(['3 unread', '5 count-mismatch']);
  });

  test('is so in each pass of an order that repeats it', () => {
    const text = scarf(' (30)', [
      'Row 3: Ch 1, turn, sc in each st across. (30)',
      'Rows 4-9: Rep Rows 2-3.',
      'Row 10: Ch 1, turn, sc in each st across. (30)',
    ]);
    expect(verdicts(text)).not.toContain('unchecked');
    expect(verdicts(text).at(-1)).toBe('proven');
  });

  test('leaves the spaces of a mesh where they are met again', () => {
    const mesh = (count: string): string =>
      [
        'Ch 34.',
        'Row 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across. (15 ch-1 sps)',
        `Row 2: Ch 4, turn, ${UNREAD}${count}`,
        'Row 3: Ch 4, turn, sk first ch-1 sp, dc in next dc, *ch 1, sk ch-1 sp, dc in next dc; rep from * across. (15 ch-1 sps)',
        'Row 4: Ch 1, turn, sc in first dc, *sc in next ch-1 sp, sc in next dc; rep from * across. (31 sc)',
      ].join('\n');
    for (const count of ['', ' (15 ch-1 sps)'])
      expect(verdicts(mesh(count))).toEqual(['proven', 'unread', 'proven', 'proven']);
    // It says itself that it leaves others.
    expect(verdicts(mesh(' (14 ch-1 sps)'))[2]).toBe('unchecked');
  });
});

describe('a row that was not understood and states its count', () => {
  const text =
    'Ch 32.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (31)\nRow 2: Ch 1, sc in each st across, turn. (31)\nRow 3: Ch 1, sc in first 24 sts, leaving rem sts unworked, turn. (24)\nRow 4: Ch 1, sc in each st across, turn. (24)\nRow 5: Ch 1, sc in first 24 sts, frobble the snood to the unworked sts, sc in next 7, turn. (31)\nRows 6-13: Rep Rows 2-5 twice.\nRow 14: Ch 1, sc in each st across, turn. (31)\nRow 15: Ch 1, sc in each st across, turn. (31)\n';
  test('leaves as many again where it is repeated on as many', () => {
    expect(verdicts(text)).not.toContain('unchecked');
    expect(verdicts(text).slice(-2)).toEqual(['proven', 'proven']);
  });
  test('hides no wrong number behind it', () => {
    for (const n of [30, 32, 35]) {
      const wrong = text.replace(/\(31\)\n$/, `(${n})\n`);
      expect(complaints(wrong)).toEqual(['6 unread', '9 count-mismatch']);
    }
  });
});
