/** Fixes are offered only after the text with them in place was proven again. */
import { describe, expect, test } from 'vitest';
import { applyEdits, compile } from '../../src/index.ts';

const titles = (text: string): Record<string, readonly string[]> =>
  Object.fromEntries(
    compile(text).findings.map(({ code, fixes }) => [code, fixes.map(({ title }) => title)]),
  );

const disc = (...rows: readonly string[]): string =>
  [
    'Terms: US',
    'Rnd 1: 6 sc in magic ring. (6)',
    'Rnd 2: Inc in each st around. (12)',
    ...rows,
    '',
  ].join('\n');

describe('what is offered', () => {
  test('the count that the words make', () => {
    const text = disc('Rnd 3: (Sc in next st, inc) 6 times. (20)');
    expect(titles(text)['count-mismatch']).toEqual(['change "20" to "18"']);
  });

  test('the number of repeats that fits, where the count follows from it', () => {
    const text = disc('Rnd 3: (Sc in next st, inc) 5 times. (18)');
    expect(titles(text)['stitches-left']).toEqual(['change "5 times" to "6 times"']);
  });

  test('no word of the trade for an English one', () => {
    const text = disc('Rnd 3: Sc in the stop of each st. (12)');
    expect(titles(text)).toEqual({ unread: [] });
  });

  test('less work and the count that is left, where the last stitches have no place', () => {
    const text = disc(
      'Rnd 3: *Sc in next st, inc; rep from * 5 more times. (18)',
      'Rnd 4: *Sc in next 2 sts, inc; rep from * 5 more times, sc in next st. (25)',
    );
    expect(titles(text)['round-overrun']).toEqual([
      'drop ", sc in next st" and change the count to 24',
    ]);
  });

  test('a number inside the repeat with which it divides', () => {
    const text = disc('Rnd 3: *Sc in next 4 sts, inc; rep from * around. (15)');
    expect(titles(text)['repeat-remainder']).toEqual(['change "4 sts" to "3 sts"']);
  });

  test('a number inside the repeat with which all passes fit, a single stitch without its number', () => {
    const text = disc(
      'Rnd 3: (Sc in next st, inc) 6 times. (18)',
      'Rnd 4: (Dec, sc in next 2 sts) 6 times. (12)',
    );
    expect(titles(text)['round-overrun']).toEqual(['change "2 sts" to "st"']);
  });

  test('the "around" that a row lacks', () => {
    const text = disc('Rnd 3: Sc in next st. (12)', 'Rnd 4: Sc in each st around. (12)');
    expect(titles(text)['stitches-left']).toEqual(['change "in next st" to "in each st around"']);
  });

  test('a foundation chain that is long enough', () => {
    const text =
      'Terms: US\nCh 30.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (30 sc)\n' +
      'Row 2: Ch 1, (sc in next 4 sts, 2 sc in next st) 6 times. (36 sc)\n';
    expect(titles(text)['count-mismatch']).toEqual(['make the foundation chain 31 long']);
  });

  test('a word of the trade that is misspelt by a letter', () => {
    const text = disc('Rnd 3: *Sc in nxet st, inc; rep from * around. (18)');
    expect(titles(text)['read-as']).toEqual(['change "nxet" to "next"']);
    const other = disc('Rnd 3: *Sc in naxt st, inc; rep from * around. (18)');
    expect(titles(other).unread).toEqual(['change "naxt" to "next"']);
  });

  test('no count of a row of which several are off', () => {
    const text =
      'Terms: US\nCh 24.\nRow 1: Dc in 6th ch from hook, *ch 1, dc in next ch; rep from * across. (19 dc, 20 ch-1 sps)\n';
    expect(titles(text)['count-mismatch']).toEqual([]);
  });

  test('the word of the right terms', () => {
    const text =
      'UK terms.\n\n11ch.\n\nRow 1: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. (10dc)\n' +
      '\nRow 2: 1ch, 1sc in each st to end. (10)\n';
    expect(titles(text)['foreign-term']).toEqual(['change "sc" to "dc"']);
  });

  test('the number that a row should bear', () => {
    const text = disc('Rnd 2: (Sc in next st, inc) 6 times. (18)');
    expect(titles(text)['row-doubled']).toEqual(['number it 3']);
  });

  test('both wordings of a number of times, and none chosen', () => {
    const text =
      'Terms: US\nRnd 1: 24 sc in magic ring. (24)\n' +
      'Rnd 2: *Ch 3, sk next 2 sts, sc in next st; rep from * 5 times; leave rem sts unworked.\n';
    expect(titles(text)['times-two-readings']).toEqual([
      'change "5 times" to "5 more times"',
      'change "5 times" to "4 more times"',
    ]);
  });

  test('the name of the space that is there', () => {
    const text = disc(
      'Rnd 3: *Sc in next st, ch 3, sk next st; rep from * around; join. (6 sc, 6 ch-3 sps)',
      'Rnd 4: Ch 1, 4 sc in each ch-2 sp around; join. (24 sc)',
    );
    expect(titles(text)['space-size']).toEqual(['change "ch-2 sp" to "ch-3 sp"']);
  });
});

describe('what is not offered', () => {
  test('a renumbering that only moves the gap', () => {
    const text = disc(
      'Rnd 4: (Sc in next st, inc) 6 times. (18)',
      'Rnd 5: (Sc in next 2 sts, inc) 6 times. (24)',
    );
    expect(titles(text)['row-missing']).toEqual([]);
  });

  test('a number of repeats that fits the places and breaks the count', () => {
    const text = disc('Rnd 3: (Sc in next st, inc) 7 times. (21)');
    expect(titles(text)['round-overrun']).toEqual([]);
  });

  test('anything beyond fifty findings of a file', () => {
    const rows = Array.from({ length: 60 }, (_, i) => `Rnd ${i + 3}: Sc in each st around. (13)`);
    const { findings } = compile(disc(...rows));
    expect(findings.filter(({ fixes }) => fixes.length > 0).length).toBeLessThanOrEqual(50);
    expect(findings.every(({ fixes }) => fixes.length <= 3)).toBe(true);
  });
});

test('a fix does what it promises', () => {
  const text = disc(
    'Rnd 3: (Sc in next st, inc) 6 times. (20)',
    'Rnd 4: (Sc in next 2 sts, inc) 5 times. (24)',
    'Rnd 4: (Sc in next 3 sts, inc) 6 times. (30)',
  );
  for (const { code, message, fixes } of compile(text).findings) {
    for (const { edits } of fixes) {
      const after = compile(applyEdits(text, edits)).findings;
      expect(after.some((one) => one.code === code && one.message === message)).toBe(false);
    }
  }
});
