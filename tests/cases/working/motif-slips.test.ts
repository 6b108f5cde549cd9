/** Rounds whose words bend the rules: chains that count in no later round, loops from the joined stitch. */
import { describe, expect, it } from 'vitest';
import { complaints, conventions, made, worked } from './worked.ts';

const US = 'US terms\n\n';

describe('a ch 3 that every round is joined to, and that counts in none but the first', () => {
  const disc = (second: number, third: number): string =>
    `${US}Round 1: Magic ring. Ch 3 (counts as the first dc), then work 11 dc into the ring. Join with a sl st to the top of the beginning ch-3. You should have 12 dc in total.\nRound 2: Ch 3, (dc in next dc, 2 dc in next dc) repeat around. Join with a sl st to the top of the beginning ch-3. You should have ${second} dc in total.\nRound 3: Ch 3, (dc in next 2 dc, 2 dc in next dc) repeat around. Join with a sl st to the top of the beginning ch-3. You should have ${third} dc in total.\nRound 4: Ch 3, (dc in next 3 dc, 2 dc in next dc) repeat around. Join with a sl st to the top of the beginning ch-3. You should have 30 dc in total.\n`;
  it('is read so where the counts of several rounds say it, and told', () => {
    expect(complaints(disc(18, 24))).toEqual([]);
    expect(conventions(disc(18, 24)).join()).toMatch(/does not count/);
  });
  it('but a wrong count among them is found', () => {
    expect(complaints(disc(19, 24))).not.toEqual([]);
    expect(complaints(disc(18, 25))).not.toEqual([]);
  });
  it('and one round alone proves nothing', () => {
    const one = (n: number): string =>
      `${US}Rnd 1: 12 dc in a magic ring, join. (12)\nRnd 2: Ch 3, (2 dc in next dc, dc in next dc) around to last dc, 2 dc in last dc, join with a sl st to the top of ch-3. (${n})\n`;
    expect(complaints(one(17))).not.toEqual([]);
  });
});

describe('loops from the joined stitch', () => {
  it('"repeat 5 times" may be five in all, and the last loop a petal too', () => {
    const text = (petals: number): string =>
      `${US}Round 4: 24 sc in a ring, join. (24)\nRound 5: **Ch4, skip 3sc, sc in next sc** repeat 5 times. Ch4, sk3 sc, sl st in first chain. This round makes ${petals} petals for the flower.\n`;
    expect(worked(text(6), 'Round 5', 'Rnd 5').join()).toMatch(/Rnd 5 5 proven/);
    expect(complaints(text(6))).toEqual([]);
    expect(worked(text(9), 'Rnd 5')[0]).not.toMatch(/proven/);
  });
  it('"repeat pattern to end" goes on from what is not in the first stitch', () => {
    const text = `${US}Rnd 1: 32 dc in a ring. Sl st to end. (32)\nRnd 2: Ch 1, sc 1 over the first st (of the row below), ch 3, skip 1, sc 1 in next st. Repeat pattern to end. Sl st to join round. (16 ch-3 sps)\n`;
    expect(worked(text, 'Rnd 2')).toEqual(['Rnd 2 16 proven']);
  });
});

describe('what the text says of its stitches', () => {
  it('"isn\'t counted as a stitch"', () => {
    const text = `${US}R1: Ch 1 (isn't counted as a stitch), [2 dc in ring, ch 1] 6 times, sl st in first dc. (12)\n`;
    expect(made(text)).toEqual([12]);
    expect(complaints(text)).toEqual([]);
  });
  it('a defined stitch may be called "Ending dc"', () => {
    const text = `${US}Special stitches\nEnding dc = 2 dc in last st\n\nRow 1: Ch 12, dc in 4th ch from hook and in each ch across, turn. (10)\nRow 2: Ch 3 (counts as dc), *dc in next 2 sts, ch 1, sk 1; rep from * across to last 3 sts, dc in next 2 sts. Ending dc. (11)\n`;
    expect(worked(text, 'Row 2')[0]).toMatch(/^Row 2 9 /);
  });
  it('steps that name their row work it, from a multiple in a list', () => {
    const text = `${US}✨ STEP 1: Foundation Chain\n- Make a slip knot\n- Chain a multiple of:\n- 6 + 2 extra chains\n👉 Example:\n- 26 chains\n✨ STEP 2: Row 1 (Foundation Row)\n- Start in the 4th chain from hook\n- Work:\n- 1 dc in each chain across\n- Turn\n✔ This creates the solid base row.\n`;
    expect(worked(text, 'Row 1')).toEqual(['Row 1 30 unstated']);
    expect(complaints(text)).toEqual([]);
  });
  it('a repeat of which nobody knows from where is told', () => {
    const text = `${US}Ch 32.\nRow 1: Dc in 4th ch from hook and in each ch across, turn. (30)\nRow 2: Ch 3 (counts as first dc). Skip 2 stitches. In next stitch work (dc, ch 1, dc). Skip 2 stitches. Repeat across row. End with 1 dc in final stitch. Turn.\n`;
    expect(complaints(text)).toEqual(['5 unread']);
  });
  it('"*…* repeat after the \'*\'" closes the repeat, and its count is held', () => {
    const text = (n: number): string =>
      `${US}Round 1: Ch 3, 11 dc in a magic ring, join. (12 dc)\nRound 2: Ch 1, sc in same st, *ch 2, skip 1 st, sc in next st* repeat after the '*' around, ch 2, join with sl st to first sc. (${n} sc)\n`;
    expect(worked(text(6), 'Round 2', 'Rnd 2').join()).toMatch(/6 proven/);
    expect(complaints(text(7))).not.toEqual([]);
  });
  it('"skip 2, 5 dc in same st, skip 2" is the stitch between, where the repeat asks for it', () => {
    const text = (n: number): string =>
      `${US}Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${n} sc)\nRow 2: Ch 1, turn, sc in first st, *skip 2 sts, dc 5 in same st, skip 2 sts, sc in next st; repeat from * across.\n`;
    expect(complaints(text(25))).toEqual([]);
    expect(complaints(text(27))).not.toEqual([]);
  });
  it.each([
    'In each ch-3 sp: 2 sc, ch 3, repeat around. (10 sc, SPS)',
    'In each ch-3 sp: 2 sc, ch 3. Join. (10 sc, SPS)',
    'Next, ch 1, *2 sc in next ch-3 sp, ch 3; rep from * around, join. (10 sc, SPS)',
  ])('%s', (round) => {
    const text = (sps: string): string =>
      `${US}Round 1: 10 sc in a magic ring. (10)\nRound 2: *Ch 3, sk 1, sc in next st; rep from * around. (5 ch-3 sps)\nRound 3: ${round.replace('SPS', sps)}\n`;
    expect(worked(text('5 ch-3 sps'), 'Rnd 3').join()).toMatch(/proven/);
    expect(complaints(text('6 ch-3 sps'))).not.toEqual([]);
  });
  it('"Between each petal: …" is where it goes, no name', () => {
    const text = (sps: number): string =>
      `${US}Round 1: 10 sc in a magic ring. (10)\nRound 2: *Ch 3, 3 dc in same st, ch 3, sl st in same st, sl st in next 2 sts; repeat from * 4 more times. (5 petals)\nRound 3: Between each petal: sc, ch 3, repeat around. (${sps} ch-3 sps)\n`;
    expect(worked(text(5), 'Rnd 3').join()).toMatch(/proven/);
    expect(complaints(text(6))).not.toEqual([]);
  });
});
