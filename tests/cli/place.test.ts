// `loopwright place` as people run it: built, in a process of its own.
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runner } from './run.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const place = (...args: string[]) => runner(root)('place', ...args);
const bag = ['--pattern', 'examples/low-tide-errand-bag.pattern.md', '--row', '11'];

test('takes boxes, mesh and gauge from the pattern', () => {
  const { status, stdout } = place('--width', '21', ...bag);
  expect(status).toBe(0);
  // 52 boxes of dc and ch 1 at 8 boxes to 10 cm; the check values of the bag: 4 before, 5 after.
  expect(stdout).toContain('52 boxes around, 52 x 2 = 104 stitches');
  expect(stdout).toContain('boxes 3-23: 4 stitches before, 5 after');
  expect(stdout).toContain('52 boxes: 104 stitches, about 65 cm around; the piece as it is fits');
  // 104 stitches in boxes of 3 are 34 and 2 over; 12.5 mm for 2 stitches are 18.75 for 3.
  expect(stdout).toContain('34 boxes, 2 stitches left over. A box would be about 19 mm wide');
});

test('does not take another mesh than the row has', () => {
  const { status, stderr } = place('TIDE', ...bag, '--mesh', 'dc, ch 2');
  expect(status).toBe(2);
  expect(stderr).toContain('the open boxes of row 11 have ch 1');
});

test('says when it does not fit, and how it would run across the join', () => {
  const { status, stdout } = place('--width', '30', '--around', '52', '--mesh', 'dc, ch 1');
  expect(status).toBe(1);
  // 30 boxes on a front of 26: 2 over at each side, so from box 51 across the join to box 28.
  expect(stdout).toContain('boxes 51-52 and 1-28');
});

test('lists the second face half a round on', () => {
  const { stdout } = place('--width', '21', '--around', '52', '--mesh', 'dc, ch 1', '--faces', '2');
  expect(stdout).toContain('boxes 3-23: 4 stitches before, 5 after; second face boxes 29-49');
});
