/**
 * How far the start of round wanders, and the ways to live with it. A third to half a stitch a round
 * in sc is common practice; the rest here is arithmetic on it.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compile, drawCharts, measure, type PieceLean } from '../../../src/index.ts';
import { type LeanPlace, remediesFor } from '../../../src/figures/lean-remedies.ts';

const leansOf = (text: string): readonly PieceLean[] => {
  const { manuscript, fabric } = compile(text, { fixes: false });
  return measure(manuscript, fabric).sizes[0]!.leans;
};

const bag = readFileSync('examples/low-tide-errand-bag.pattern.md', 'utf8');

/** An oval of 24 sc, then rounds of sc on it; `end` closes each round. */
const tube = (rounds: number, end: string, head = ''): string =>
  `---\nterms: US\ngauge: { sc: 20 sts x 20 rnds = 10 cm }\n${head}\n---\nCh 12.\n\nRnd 1: Sc in 2nd ch from hook, sc in next 9 ch, 3 sc in last ch; working along opposite side of foundation ch, sc in next 9 ch, 2 sc in same ch as first sc; ${end}. (24 sc)\n\nRnds 2-${rounds}: Ch 1, sc in each st around; ${end}. (24 sc)\n`;

describe('the lean of the errand bag', () => {
  const [motif, handles] = leansOf(bag);

  test('is told for the motif and for the handles', () => {
    expect(motif).toMatchObject({ what: 'motif', at: 'Rnd 12', until: 'Rnd 11' });
    expect(handles).toMatchObject({ what: 'handles', at: 'Rnd 25', until: 'Rnd 24' });
  });

  test('is 13 sc rounds up to the handles: 4 1/3 to 6 1/2 stitches, mesh not counted', () => {
    expect(handles!.lean.stitches.from).toBeCloseTo(13 / 3, 9);
    expect(handles!.lean.stitches.to).toBeCloseTo(13 / 2, 9);
    expect(handles!.lean.unknownRounds).toBe(11);
  });

  test('has four remedies for a motif and three for handles', () => {
    expect(motif!.remedies.map(({ name }) => name)).toEqual([
      'Turn',
      'Move the join on',
      'Move the start once',
      'Shift the chart',
    ]);
    expect(handles!.remedies).toHaveLength(3);
  });

  test('moves chart and start by whole boxes in mesh', () => {
    // The middle of 3 to 4 1/2 is 3 3/4 stitches: 2 boxes of 2.
    expect(motif!.remedies[3]!.words).toContain('2 boxes (4 sts) more before the chart');
    expect(motif!.remedies[2]!.words).toContain('Before Rnd 12');
  });

  test('stands under the chart, to the other side for left-handers', () => {
    const { manuscript, fabric } = compile(bag, { fixes: false });
    const words = (hand: 'right' | 'left') => drawCharts({ manuscript, fabric }, { hand })[0]!.words;
    expect(words('right')).toContain('wandered 3 to 5 stitches to the right');
    expect(words('left')).toContain('wandered 3 to 5 stitches to the left');
  });

  test('is her own where she measured it: 0.4 in sc, 0.1 in mesh', () => {
    const [own] = leansOf(bag.replace('hook: 4 mm', 'hook: 4 mm\nlean: { sc: 0.4, mesh: 0.1 }'));
    expect(own!.lean.stitches.from).toBeCloseTo(9 * 0.4 + 2 * 0.1, 9);
    expect(own!.lean.stitches.to).toBeCloseTo(9 * 0.4 + 2 * 0.1, 9);
    expect(own!.lean.unknownRounds).toBe(0);
  });
});

describe('which rounds lean', () => {
  test('joined ones do, and their join is moved on', () => {
    const [lean] = leansOf(tube(12, 'join'));
    expect(lean!.lean.stitches.to).toBeCloseTo(6, 9);
    expect(lean!.remedies[1]!.name).toBe('Move the join on');
  });

  test('turned ones hardly do', () => {
    expect(leansOf(tube(12, 'join, turn'))).toEqual([]);
  });

  test('two rounds are too few to see', () => {
    expect(leansOf(tube(2, 'join'))).toHaveLength(1);
    expect(leansOf(tube(2, 'join', 'lean: { sc: 0.3 }'))).toEqual([]);
  });

  test('a round base has no front, so a motif may stand anywhere on it', () => {
    const round = '---\nterms: US\n---\nRnd 1: 24 sc in magic ring; join. (24 sc)\n\nRnds 2-9: Ch 1, sc in each st around; join. (24 sc)\n\nRnd 10: Ch 1, sc in next 6 sts, ch 12, sk next 6 sts, sc in next 6 sts, ch 12, sk last 6 sts; join. (12 sc, 2 ch-12 sps)\n';
    expect(leansOf(round).map(({ what }) => what)).toEqual(['end']);
  });

  test('lace, of which hardly a round is known, is left alone', () => {
    expect(leansOf(readFileSync('examples/hoarfrost-doily.pattern.md', 'utf8'))).toEqual([]);
  });
});

describe('remedies compared', () => {
  const lean = (from: number, to: number, rounds: number) => ({
    stitches: { from: from * rounds, to: to * rounds },
    mm: { from: 0, to: 0 },
    perRound: { from, to },
    knownRounds: rounds,
    unknownRounds: 0,
    isTurned: false,
    isOwn: false,
    because: '',
  });
  const place = (rounds: number): LeanPlace => ({
    what: 'motif',
    at: 'Rnd 20',
    count: 80,
    rounds,
    isSpiral: true,
    boxStitches: 1,
  });

  test('a third to half a stitch: one more every 2nd or 3rd round, the count unchanged', () => {
    const [, marker] = remediesFor(lean(1 / 3, 1 / 2, 24), place(24));
    expect(marker!.words).toBe(
      'In every 2nd or 3rd round work 1 more st before you move the marker up; the count stays 80.',
    );
    // 5/12 a round lies farthest from both: a twelfth a round, 2 stitches in 24.
    expect(marker!.leavesUpTo).toBeCloseTo(2, 9);
  });

  test('exactly a third: every 3rd round, and nothing but a half stitch is left', () => {
    const [, marker] = remediesFor(lean(1 / 3, 1 / 3, 30), place(30));
    expect(marker!.words).toContain('In every 3rd round');
    expect(marker!.leavesUpTo).toBe(0.5);
  });

  test('a start moved once leaves half the range', () => {
    const [, , start] = remediesFor(lean(1 / 3, 1 / 2, 24), place(24));
    expect(start!.words).toBe('Before Rnd 20: sl st in next 10 sts; rounds begin here from now on.');
    expect(start!.leavesUpTo).toBeCloseTo(2, 9);
  });

  test('under a stitch there is nothing to mend', () => {
    expect(remediesFor(lean(0.3, 0.3, 3), place(3))).toEqual([]);
  });
});

describe('rounds through one loop', () => {
  const tube = (words: string) =>
    `---\nterms: US\ngauge: { sc: 16 sts x 18 rnds = 10 cm }\n---\nCh 40; join with sl st in first ch.\n\nRnd 1: Ch 1, sc in each ch around; join. (40 sc)\n\nRnds 2-20: Ch 1, ${words}; join. (40 sc)\n`;
  test('lean as only a swatch knows: no figure is told', () => {
    expect(leansOf(tube('sc in each st around'))).toHaveLength(1);
    expect(leansOf(tube('sc in back loop only of each st around'))).toEqual([]);
    expect(leansOf(tube('working in BLO, sc in each st around'))).toEqual([]);
  });
});
