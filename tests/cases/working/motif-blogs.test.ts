/** Motifs on pages with pictures and lists, and rounds that go into what others made. */
import { describe, expect, it } from 'vitest';
import { complaints, made, worked } from './worked.ts';

const US = 'US terms\n\n';

describe('rounds with a title above steps in a list', () => {
  const page = (spaces: number): string =>
    `🧵 Abbreviations (US Terms)\n- sc = single crochet\n- dc = double crochet\n\n🌸 Pattern Overview\n- Starts from a center ring\n✨ ROUND 1: Center Ring\n- Make a magic ring (or ch 4 and join)\n- Ch 3 (counts as first dc)\n- Work 15 dc into the ring\n- Pull tight\n- Join with sl st\n✔ Total: 16 stitches\n\n✨ ROUND 2: Even Structure\n- Ch 1\n- Work:\n- 1 sc in each stitch around\n- Join\n✔ This stabilizes the center\n✨ ROUND 3: Petal Spaces\n- Ch 1\n- In each stitch:\n- (sc, ch 2, sc) in same stitch\n- Repeat around\n- Join\n✔ You now have ${spaces} chain spaces\n`;
  it('are worked and counted', () => {
    expect(worked(page(16), 'Rnd 1', 'Rnd 2', 'Rnd 3')).toEqual([
      'Rnd 1 16 proven',
      'Rnd 2 16 unstated',
      'Rnd 3 32 proven',
    ]);
    expect(complaints(page(16))).toEqual([]);
    expect(complaints(page(17))).not.toEqual([]);
  });
  it('names of steps are none of the work, and "for all remaining corners" is not passed over', () => {
    const text = `${US}Round 1: The Foundation\n- The Start: In a ring, ch 3 (counts as your first dc). Work 2 dc into the ring. Ch 2 (this is your corner).\n- The Pattern: [Work 3 dc into the ring, ch 2] three more times.\n- Join: sl st into the top of the initial ch 3.\nRound 2: Growing the Corners\n- Travel: sl st into the next 2 stitches and into the corner space.\n- First Corner: ch 3 (counts as dc), 2 dc, ch 2, 3 dc (all in that same corner space).\n- Repeat: Repeat this for all remaining corners.\n- Join: sl st into the top of the ch 3.\n`;
    expect(worked(text, 'Rnd 1', 'Rnd 2')[0]).toBe('Rnd 1 12 unstated');
    expect(worked(text, 'Rnd 2')[0]).toMatch(/unread$/);
  });
});

describe('"in next sc" of a round of sc and taller stitches', () => {
  const doily = (words: string): string =>
    `${US}Rnd 1: 12 dc in a ring, join. (12)\nRnd 2: *Sc in next dc, 3 dc in next dc; rep from * around, join. (24 sts)\nRnd 3: ${words}\n`;
  it('goes round by the sc alone', () => {
    const text = doily(
      'Sc in same sc, ch 5, *sc in next sc, ch 5; rep from * around, join. (6 sc)',
    );
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 6 proven']);
    expect(complaints(text)).toEqual([]);
    expect(complaints(text.replace('6 sc', '7 sc'))).not.toEqual([]);
  });
});

describe('"in sp of next shell"', () => {
  const shells = (words: string): string =>
    `${US}Rnd 1: 16 dc in ring. Join.\nRnd 2: Ch 3, (dc, ch 2, 2 dc) in same st, ch 2, skip 1 dc, *(2 dc, ch 2, 2 dc) in next dc, ch 2, skip 1 dc; rep from * around, join. (32 dc)\nRnd 3: Sl st in next dc and in next sp, ch 3, dc in same sp, ${words}\n`;
  it('is the space that the shell holds, though others are as long', () => {
    const text = shells(
      '(ch 4, 2 dc in sp of next shell, ch 4, 2 dc in next shell) 3 times, ch 4, 2 dc in sp of next shell, ch 4, join. (16 dc)',
    );
    expect(worked(text, 'Rnd 3')).toEqual(['Rnd 3 16 proven']);
    expect(complaints(text.replace('3 times', '4 times'))).not.toEqual([]);
  });
});

describe('words of blogs', () => {
  it('"continue around from *", "3 turning chains"', () => {
    const text = `${US}Rnd 1: 12 sc in a ring, join. (12)\nRnd 2: *Sc in next st, 2 sc in next st, continue around from *, join. (18)\nRnd 3: *Sc in next st, skip 2 sts, 5 dc in next st, skip 2 sts, continue around from *, join with the beginning stitch. (18)\nRnd 4: Work 3 turning chains, 1 dc in the first stitch, 2 dc in each stitch around, join. (36)\n`;
    expect(made(text)).toEqual([12, 18, 18, 36]);
    expect(complaints(text)).toEqual([]);
  });
  it('"Rounds 2-7" under a picture is no row, but one that is missing is', () => {
    const rows = (label: string): string =>
      `${US}Rnd 1: 6 sc in a ring, join. (6)\nRnd 2: 2 sc in each st around. (12)\nRnd 3: (Sc, 2 sc in next) around. (18)\n\n${label}\n\nRnd 4: (2 sc, 2 sc in next) around. (24)\n`;
    expect(complaints(rows('Rounds 2-7'))).toEqual([]);
    const gap = `${US}Rnd 1: 6 sc in a ring, join. (6)\nRnds 2-3\n\nRnd 4: Sc in each st around. (6)\n`;
    expect(complaints(gap)).toContain('4 row-empty');
  });
  it('"9-10 in (23-25 cm)" is one size', () => {
    const text = `${US}Finished size: ~9–10 in (23–25 cm) after blocking\nRnd 1: 12 sc in a ring, join. (12)\n`;
    expect(made(text)).toEqual([12]);
  });
});
