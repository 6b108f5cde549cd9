/** Where a part begins, by its name between rows; and what its first row says of its start chain. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/index.ts';
import { complaints, worked } from './worked.ts';

const parts = (text: string): string[] =>
  compile(text, { fixes: false }).rows.map(({ part, made }) => `${part} ${made}`);

describe('a name between a row and the first row of another part needs no blank line', () => {
  for (const [name, first] of [
    ['Slipper Body', 'Round 1:\nCh 1, 1 sc in each stitch around.'],
    ['Slipper Body', 'Step 1: Ch 1, 1 sc in each stitch around.'],
    ['Cuff:', 'Rnd 1: Ch 1, 1 sc in each stitch around.'],
  ]) {
    it(`${name} above ${first?.slice(0, 8)}`, () => {
      const text = `US terms\n\nSlipper Sole\nRound 1:\nCh 1, 6 sc in a magic ring.\nSlip stitch to join.\n${name}\n${first}\n`;
      expect(parts(text)).toEqual(['Slipper Sole 6', `${name?.replace(':', '')} 6`]);
      expect(complaints(text)).toEqual([]);
    });
  }
  it('words of work or of a later row are no name', () => {
    const ring = 'US terms\n\nCh 1, 6 sc in ring.\nMagic ring\nRound 1: Ch 1, 6 sc in ring. (6)\n';
    expect(compile(ring, { fixes: false }).rows.map(({ part }) => part)).not.toContain('Magic ring');
    const later =
      'US terms\n\nRnd 1: 6 sc in a magic ring. (6)\nTurning Point\nRnd 2: 2 sc in each st. (12)\n';
    expect(worked(later, 'Rnd 2')).toEqual(['Rnd 2 12 proven']);
  });
});

describe('a name above its colour, its chain or its copies', () => {
  it('begins a part behind talk too', () => {
    const text =
      "US terms\n\nHead\nR1: 6 sc in a magic ring. (6)\nDon't stuff with fiberfill.\nMuzzle\nR1: 6 sc in a magic ring. (6)\nCollar\nMake 20 ch.\nR1: From the 2nd ch from hook: 19 sc. (19)\n";
    expect(parts(text)).toEqual(['Head 6', 'Muzzle 6', 'Collar 19']);
    expect(complaints(text)).toEqual([]);
  });
  it('"EAR (Make 2 in pink and purple)" are two, and no inches', () => {
    const text =
      'US terms\n\nHEAD\nR1: 6 sc in a magic ring. (6)\nEAR (Make 2 in pink and purple)\nR1: 6 sc in a magic ring. (6)\n';
    expect(compile(text, { fixes: false }).manuscript.parts.map(({ copies }) => copies)).toEqual([1, 2]);
  });
  it('"Join edges of the half-ring" below a row is none of its work', () => {
    const text =
      'US terms\n\nCh 24.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (23)\nRow 2: 1 ch, 23 sc (23)\nJoin edges of the half-ring with sl st on the wood ring.\n';
    expect(worked(text, 'Row 2')).toEqual(['Row 2 23 proven']);
    expect(complaints(text)).toEqual([]);
  });
});

describe('the start chain of a first row is told apart from its stitches', () => {
  const text = (n: number): string =>
    `US terms\n\nCap - With 4.50mm hook and main color yarn, ch6, sl st to first ch to make a\nring. ch3, work 12dc in ring, sl st to top of ch3. (${n}dc + ch3)\n\n2nd Round - ch3, 1dc in base of ch3, 2dc in each dc to end, sl st to top of ch3. (25dc + ch3)\n`;
  it('though the ring was a chain too', () => {
    expect(compile(text(12), { fixes: false }).rows.map(({ made, verdict }) => [made, verdict])).toEqual(
      [
        [13, 'proven'],
        [26, 'proven'],
      ],
    );
    expect(complaints(text(11))).not.toEqual([]);
    expect(complaints(text(14))).not.toEqual([]);
  });
});

describe('foundation chains whose label has their word, and those begun with the main colour', () => {
  const ROW = 'Row 1: Sc in 2nd ch from hook and in each ch across. (15)';
  it.each([
    'Foundation chain: 16',
    'Foundation chain: 16 sts.',
    'Starting chain: 16 ch',
    'Starting with MC, ch 16.',
  ])('%s', (chain) => {
    expect(worked(`${chain}\n${ROW}\n`, 'Row 1')).toEqual(['Row 1 15 proven']);
    expect(complaints(`${chain}\n${ROW.replace('15', '16')}\n`)).not.toEqual([]);
  });
});
