import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../../src/manuscript/index.ts';
import { processorMs } from '../../processor-time.ts';
import { codesOf, instructions } from './read.ts';

// DESIGN's limits: 4 MB a file, 256 kB a line.
describe('limits', () => {
  const row = 'Rnd 1: 6 sc in magic ring. (6)\n';

  test('a file over 4 MB is refused unread', () => {
    const text = `US terms\n\n${row}${' '.repeat(4 * 1024 * 1024)}`;
    expect(codesOf(text)).toEqual(['file-too-large']);
    expect(instructions(text)).toEqual([]);
  });

  test('a line over 256 kB is refused, and its neighbours are read', () => {
    const text = `US terms\n\n${row}\n${'sc, '.repeat(70_000)}\n\nRnd 2: inc x 6 (12)`;
    expect(codesOf(text)).toEqual(['line-too-long']);
    expect(instructions(text)).toEqual([row.trim(), 'Rnd 2: inc x 6 (12)']);
  });

  // Shapes that make careless readers quadratic. A linear one takes each in a second, a quadratic one minutes.
  test.each([
    ['Rnd ', 200_000],
    ['Rnd 1: ', 60_000],
    ['```chart\n', 60_000],
    ['```chart A\n. open box\n...\n', 20_000],
    ['**', 60_000],
    ['*a ', 60_000],
    ['_', 120_000],
    ['&amp;', 30_000],
    ['<p>', 40_000],
    ['[a](', 40_000],
    ['(', 120_000],
    ['Shell: 5 dc in same st\n', 5000],
    ['Sizes: S (', 20_000],
    ['\n', 500_000],
    ['## A\n', 60_000],
    ['1. ', 60_000],
    [') 2. ', 60_000],
    ['- ', 100_000],
    ['US terms ', 30_000],
    ['HEAD\n\n', 30_000],
  ])('%j many times', (piece, times) => {
    const ms = processorMs(() => {
      readManuscript(piece.repeat(times));
      readManuscript(piece.repeat(times / 100).concat('\n', piece).repeat(100));
    });
    expect(ms).toBeLessThan(12_000);
  });
});
